//! What was left of a net, as a part of what hung in it.

use super::error::DayError;
use super::published::{EYE_BAND, SCALE_WITHIN, WET_BAND};
use crate::limits::Ends;
use crate::units::{AsFed, DryMatter};

/// How what was left was judged.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Left {
    /// By eye: a part of the net, 0 to 1.
    ByEye {
        /// The part.
        part: f64,
    },
    /// Dry hay, weighed without the net.
    Dry {
        /// The weight.
        hay: AsFed,
    },
    /// Wet hay against the wet weight of the same net, both without the net.
    Wet {
        /// What is left.
        left: AsFed,
        /// What it weighed, wet, when it was hung.
        hung: AsFed,
    },
}

/// The part of a net that was left, 0 to 1, with its ends. `hay` is what was weighed into it; `None` comes back where that
/// is needed and nobody knows it.
///
/// By eye: half a quarter either way, nothing for an empty net. Dry: the two weights, a step of the scale either way. Wet:
/// the two wet weights, and the band of rain and drying ([`WET_BAND`], ours): wet hay says nothing as if it were dry.
///
/// # Errors
/// More than hung, soaked hay weighed as dry.
pub fn left_part(
    left: Left,
    hay: Option<AsFed>,
    soaked: bool,
) -> Result<Option<Ends<f64>>, DayError> {
    let within = *SCALE_WITHIN;
    let part = match left {
        Left::ByEye { part } => {
            let part = part.clamp(0.0, 1.0);
            let band = if 0.0 < part { *EYE_BAND } else { 0.0 };
            Ends::new(part - band, part, part + band)
        }
        Left::Dry { .. } if soaked => return Err(DayError::WetAsDry),
        Left::Dry { hay: left } => {
            let Some(hung) = hay.filter(|hay| AsFed::ZERO < *hay) else {
                return Ok(None);
            };
            let (left, hung) = (left.to_kg(), hung.to_kg());
            if hung + within < left {
                return Err(DayError::MoreLeftThanHung);
            }
            Ends::new((left - within) / hung, left / hung, (left + within) / hung)
        }
        Left::Wet { left, hung } => {
            let (left, hung) = (left.to_kg(), hung.to_kg());
            if hung <= 0.0 || hung + within < left {
                return Err(DayError::MoreLeftThanHung);
            }
            let [rain, drying] = *WET_BAND;
            Ends::new(left / hung * rain, left / hung, left / hung * drying)
        }
    };
    Ok(Some(part.map(|end| end.clamp(0.0, 1.0))))
}

/// The dry matter that was left of what hung, end by end: never more than hung.
pub fn left_dry(part: Ends<f64>, hung: Ends<DryMatter>) -> Ends<DryMatter> {
    part.with(hung, |part, hung| hung * part.clamp(0.0, 1.0))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn ends(left: Left, hay: f64, soaked: bool) -> [f64; 3] {
        let part = left_part(left, Some(AsFed::kg(hay)), soaked)
            .unwrap()
            .unwrap();
        [part.least, part.likely, part.most]
    }

    fn near(found: [f64; 3], wanted: [f64; 3]) -> bool {
        found.iter().zip(wanted).all(|(a, b)| (a - b).abs() < 1e-9)
    }

    #[test]
    fn by_eye_is_a_quarter_give_or_take_half_of_one() {
        let eye = |part| ends(Left::ByEye { part }, 4.0, true);
        assert!(near(eye(0.0), [0.0, 0.0, 0.0]));
        assert!(near(eye(0.25), [0.125, 0.25, 0.375]));
        assert!(near(eye(1.0), [0.875, 1.0, 1.0]));
    }

    #[test]
    fn dry_hay_goes_by_its_two_weights() {
        let left = Left::Dry {
            hay: AsFed::kg(1.0),
        };
        assert!(near(ends(left, 4.0, false), [0.2375, 0.25, 0.2625]));
        assert_eq!(left_part(left, None, false), Ok(None));
        assert_eq!(
            left_part(left, Some(AsFed::kg(0.9)), false),
            Err(DayError::MoreLeftThanHung)
        );
    }

    #[test]
    fn soaked_hay_is_never_weighed_as_dry() {
        let dry = Left::Dry {
            hay: AsFed::kg(1.0),
        };
        assert_eq!(
            left_part(dry, Some(AsFed::kg(4.0)), true),
            Err(DayError::WetAsDry)
        );
        // 2 kg of 9.1 kg wet are 22 %; weighed as dry they would be half of 4 kg.
        let wet = Left::Wet {
            left: AsFed::kg(2.0),
            hung: AsFed::kg(9.1),
        };
        let part = ends(wet, 4.0, true);
        assert!(near(part, [2.0 / 9.1 * 0.9, 2.0 / 9.1, 2.0 / 9.1 * 1.25]));
    }

    #[test]
    fn dry_matter_left_is_joined_end_by_end() {
        let hung = Ends::new(3.0, 3.2, 3.4).map(DryMatter::kg);
        let left = left_dry(Ends::new(0.1, 0.25, 1.0), hung);
        assert!((left.likely.to_kg() - 0.8).abs() < 1e-9);
        assert!((left.most.to_kg() - 3.4).abs() < 1e-9);
    }
}
