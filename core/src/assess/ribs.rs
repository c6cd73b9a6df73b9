//! Condition as a range, and the range one answer about the ribs gives.

use super::error::AssessError;
use super::published as p;

/// Condition on the scale 1 to 9, as a range: what stands in for a score that was not taken on that scale.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ConditionRange {
    low: f64,
    high: f64,
}

impl ConditionRange {
    /// From two ends on the scale 1 to 9, in either order.
    pub fn new(low: f64, high: f64) -> Result<Self, AssessError> {
        p::CONDITION_NINE.check(low)?;
        p::CONDITION_NINE.check(high)?;
        Ok(Self::of((low.min(high), low.max(high))))
    }

    /// Of a pair that lies on the scale in order; the room's tests look at every such constant.
    pub(super) const fn of((low, high): (f64, f64)) -> Self {
        Self { low, high }
    }

    /// The thinnest it may be.
    pub const fn low(self) -> f64 {
        self.low
    }

    /// The fattest it may be.
    pub const fn high(self) -> f64 {
        self.high
    }

    /// The range that holds both.
    #[must_use]
    pub const fn and(self, other: Self) -> Self {
        Self {
            low: self.low.min(other.low),
            high: self.high.max(other.high),
        }
    }

    /// Halfway.
    pub const fn middle(self) -> f64 {
        f64::midpoint(self.low, self.high)
    }
}

/// What the ribs say, as one answer.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Ribs {
    /// They are seen.
    Seen,
    /// Not seen, felt easily.
    FeltEasily,
    /// Felt only with pressure.
    FeltWithPressure,
    /// Not felt.
    NotFelt,
}

impl Ribs {
    /// The condition this answer stands for, 1 to 9. An animal whose ribs are seen may be thinner than the range: all six
    /// sites say.
    pub const fn condition(self) -> ConditionRange {
        ConditionRange::of(match self {
            Self::Seen => p::RIBS_SEEN.value,
            Self::FeltEasily => p::RIBS_FELT_EASILY.value,
            Self::FeltWithPressure => p::RIBS_FELT_WITH_PRESSURE.value,
            Self::NotFelt => p::RIBS_NOT_FELT.value,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_harder_the_ribs_are_to_find_the_fatter_it_is() {
        let answers = [
            Ribs::Seen,
            Ribs::FeltEasily,
            Ribs::FeltWithPressure,
            Ribs::NotFelt,
        ];
        for pair in answers.windows(2) {
            assert!(pair[0].condition().high() <= pair[1].condition().low());
        }
        for answer in answers {
            let range = answer.condition();
            assert_eq!(ConditionRange::new(range.low(), range.high()), Ok(range));
        }
        assert_eq!(Ribs::FeltEasily.condition().middle(), 5.0);
    }

    #[test]
    fn a_range_lies_on_the_scale() {
        assert!(ConditionRange::new(0.5, 4.0).is_err());
        assert!(ConditionRange::new(4.0, 9.5).is_err());
        assert_eq!(ConditionRange::new(7.0, 6.0).unwrap().low(), 6.0);
    }
}
