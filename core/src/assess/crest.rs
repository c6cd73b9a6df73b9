//! The crest of the neck, 0 to 5 (Carter et al. 2009). Whole points, as published.

use super::error::AssessError;
use super::published::{CREST, CREST_STRONG};
use crate::animal::published::CREST_AT_RISK;

/// A crest score: 0 no crest, 1 felt only, 2 seen and soft, 3 thick and mounded, 4 cannot be cupped, 5 hangs over.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Crest(u8);

/// What a crest says. Condition does not come into it: a lean animal with a crest is flagged all the same.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum CrestFlag {
    /// Under 3.
    None,
    /// 3: five times the odds of insulin dysregulation in 26 ponies, whatever their condition (Fitzgerald 2019).
    Flag,
    /// 4 and more.
    Strong,
}

impl Crest {
    /// From a whole score, 0 to 5.
    pub fn new(score: u8) -> Result<Self, AssessError> {
        CREST.check(f64::from(score))?;
        Ok(Self(score))
    }

    /// The score.
    pub const fn score(self) -> u8 {
        self.0
    }

    /// Whether it is a sign of danger.
    pub fn flag(self) -> CrestFlag {
        let score = f64::from(self.0);
        if *CREST_STRONG <= score {
            CrestFlag::Strong
        } else if *CREST_AT_RISK <= score {
            CrestFlag::Flag
        } else {
            CrestFlag::None
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_crest_of_three_is_flagged_and_of_four_strongly() {
        let flags: Vec<_> = (0..=5).map(|s| Crest::new(s).unwrap().flag()).collect();
        assert_eq!(
            flags,
            [
                CrestFlag::None,
                CrestFlag::None,
                CrestFlag::None,
                CrestFlag::Flag,
                CrestFlag::Strong,
                CrestFlag::Strong
            ]
        );
    }

    #[test]
    fn there_is_no_crest_of_six() {
        assert!(matches!(
            Crest::new(6),
            Err(AssessError::OutOfRange(error)) if error.bounds.field == "crest"
        ));
    }
}
