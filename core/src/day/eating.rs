//! Small-holed nets slow down as they empty.
//!
//! In the net trial the mean rates and the times to finish do not go together for small holes: 1 % of body weight at
//! the mean rate of a small-holed net would be gone in about 5.2 h and took 6.5 h. A constant rate makes such a net last
//! about a fifth too short. How a net slows between full and empty was not published, so the whole of it is taken as
//! one factor on the time. [`super::rate`] takes the likely and the slow end from the times to finish, which hold the
//! slowing, and the fast end from the mean rate, which does not: a wait is judged as if nothing slowed.

use super::published::{
    HOURS_LARGE, HOURS_LOOSE, HOURS_MEDIUM, HOURS_SMALL, RATE_LARGE, RATE_LOOSE, RATE_MEDIUM,
    RATE_SMALL,
};
use super::rate::NetKind;

/// How much longer a net lasts than its mean rate says: 1 from the floor and from large holes.
///
/// `hours x rate` of the net over `hours x rate` from the floor, for the same meal of 1 % of body weight (Glunk 2014).
pub fn slowing(net: NetKind) -> f64 {
    let (hours, rate) = match net {
        NetKind::Loose => (HOURS_LOOSE, RATE_LOOSE),
        NetKind::LargeHoles => (HOURS_LARGE, RATE_LARGE),
        NetKind::MediumHoles => (HOURS_MEDIUM, RATE_MEDIUM),
        NetKind::SmallHoles | NetKind::DoubleSmall => (HOURS_SMALL, RATE_SMALL),
    };
    (*hours * *rate / (*HOURS_LOOSE * *RATE_LOOSE)).max(1.0)
}

/// By what part a constant rate makes a net of this kind last too short.
pub fn underestimate(net: NetKind) -> f64 {
    1.0 - 1.0 / slowing(net)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_constant_rate_makes_a_small_net_last_a_fifth_too_short() {
        assert!((underestimate(NetKind::SmallHoles) - 0.2).abs() < 0.015);
        assert!((underestimate(NetKind::MediumHoles) - 0.2).abs() < 0.02);
        assert!(underestimate(NetKind::LargeHoles).abs() < f64::EPSILON);
        assert!(underestimate(NetKind::Loose).abs() < f64::EPSILON);
    }
}
