//! An animal or group at grass, from when it went out.

use super::base::JobKey;
use crate::animal::PaddockId;
use crate::log::stored::twin;
use crate::units::{Instant, Span};

twin! {
    /// The animal or group that the record is about went out to grass at the record's instant. Bringing it in is a change of
    /// this record.
    TurnoutV1 {
        /// Onto which paddock; `None` when paddocks are not told apart.
        paddock: Option<PaddockId>,
        /// With a muzzle.
        muzzle: bool,
        /// When it is to be brought in, when somebody said.
        bring_in_by: Option<Instant>,
        /// When it came in; `None` while it is out.
        came_in: Option<Instant>,
        /// The job that this does.
        job: Option<JobKey>,
    }
}

impl TurnoutV1 {
    /// Whether it was out at an instant; `out` is the instant of the record.
    pub fn is_out(&self, out: Instant, at: Instant) -> bool {
        out <= at && self.came_in.is_none_or(|came_in| at < came_in)
    }

    /// How long it was out; `None` while it is, and where it is said to have come in before it went out.
    pub fn time(&self, out: Instant) -> Option<Span> {
        self.came_in
            .filter(|came_in| out <= *came_in)
            .map(|came_in| came_in.since(out))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn it_is_out_until_somebody_says_that_it_came_in() {
        let at = Instant::from_ms;
        let mut turnout = TurnoutV1 {
            paddock: None,
            muzzle: false,
            bring_in_by: Some(at(50)),
            came_in: None,
            job: None,
        };
        assert!(!turnout.is_out(at(10), at(9)));
        assert!(
            turnout.is_out(at(10), at(1_000)),
            "nothing brings it in but a person"
        );
        assert_eq!(turnout.time(at(10)), None);
        turnout.came_in = Some(at(60));
        assert!(turnout.is_out(at(10), at(59)));
        assert!(!turnout.is_out(at(10), at(60)));
        assert_eq!(turnout.time(at(10)), Some(Span::ms(50)));
        assert_eq!(
            turnout.time(at(61)),
            None,
            "it cannot come in before it goes out"
        );
    }
}
