//! The weight of a donkey. Charts and equations do not hold for miniature or mammoth donkeys: the published range of
//! weights is kept, and outside it a scale is needed.

use super::choose::Case;
use super::equation::{DonkeyLaw, Equation, donkey};
use super::error::AssessError;
use super::finding::{Fallback, Finding};
use super::published as p;
use super::tape::{LengthKind, Measure};
use super::weight::{WeightEstimate, WeightMethod};
use crate::animal::Workload;
use crate::sources::{Provenance, Published};
use crate::units::{Bounds, Length};

/// The weight of a donkey by the equation its age, condition and measures allow.
pub(super) fn weight(
    case: &Case<'_>,
    under_three: bool,
    findings: &mut Vec<Finding>,
) -> Result<WeightEstimate, AssessError> {
    if under_three {
        let length = case.length(LengthKind::ElbowToTuber)?;
        let girth = Case::need(case.tape.umbilical_girth, Measure::UmbilicalGirth)?;
        return by(
            Equation::DonkeyYoung,
            &p::DONKEY_YOUNG,
            girth,
            length,
            &p::DONKEY_YOUNG_WEIGHT,
        );
    }
    let girth = case.tape.heart_girth;
    if is_fat(case) {
        match case.height {
            Some(height) => {
                return by(
                    Equation::DonkeyFat,
                    &p::DONKEY_FAT,
                    girth,
                    height,
                    &p::DONKEY_WEIGHT,
                )
                .map(|mut weight| {
                    weight.from = weight.from.constant(&p::DONKEY_FAT_FROM);
                    weight
                });
            }
            None => findings.push(Finding::FellBack(Fallback::Missing {
                wanted: None,
                measure: Measure::Height,
            })),
        }
    }
    match case.tape.length {
        Some((length, LengthKind::ElbowToTuber)) => by(
            Equation::Donkey,
            &p::DONKEY,
            girth,
            length,
            &p::DONKEY_WEIGHT,
        ),
        other => {
            findings.push(match other {
                Some((_, given)) => Finding::FellBack(Fallback::WrongLength {
                    wanted: LengthKind::ElbowToTuber,
                    given,
                }),
                None => Finding::LengthNotTaken,
            });
            // The exponent of the other measure is 0 here, so the girth stands in for it without effect.
            by(
                Equation::DonkeyGirth,
                &p::DONKEY_GIRTH,
                girth,
                girth,
                &p::DONKEY_WEIGHT,
            )
        }
    }
}

/// Fat and in little work, as far as anybody scored it: the whole range of condition is 7 or more.
fn is_fat(case: &Case<'_>) -> bool {
    let fat = case
        .condition
        .is_some_and(|condition| *p::DONKEY_FAT_FROM <= condition.low());
    fat && matches!(case.animal.work, Workload::Maintenance(_) | Workload::Light)
}

fn by(
    equation: Equation,
    law: &Published<DonkeyLaw>,
    girth: Length,
    other: Length,
    holds: &Published<Bounds>,
) -> Result<WeightEstimate, AssessError> {
    let value = donkey(law, girth, other);
    holds.check(value.to_kg())?;
    let band = match equation {
        Equation::DonkeyGirth => &p::BAND_DONKEY_GIRTH,
        _ => &p::BAND_DONKEY,
    };
    WeightEstimate::percent(
        value,
        band,
        WeightMethod::Tape(equation),
        Provenance::new().constant(law).constant(holds),
    )
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::animal::{Birth, Kind};
    use crate::assess::choose::tests::{animal, by_tape, equation, near, tape, today};
    use crate::assess::{ConditionRange, Reading, Tape, weigh_in_condition};

    #[test]
    fn a_grown_donkey_goes_by_girth_and_elbow_length() {
        let donkey = animal(Kind::Donkey, None);
        let (weight, findings) =
            by_tape(&donkey, tape(115.0, 90.0, LengthKind::ElbowToTuber)).unwrap();
        near(&weight, 135.9, 115.5, 156.3);
        assert!(findings.is_empty());
        let (weight, findings) = by_tape(&donkey, Tape::girth(Length::cm(115.0))).unwrap();
        near(&weight, 132.1, 99.1, 165.1);
        assert_eq!(findings, [Finding::LengthNotTaken]);
        let (weight, findings) = by_tape(&donkey, tape(115.0, 100.0, LengthKind::Wrap)).unwrap();
        assert_eq!(equation(&weight), Equation::DonkeyGirth);
        assert!(matches!(
            findings.as_slice(),
            [Finding::FellBack(Fallback::WrongLength { .. })]
        ));
    }

    #[test]
    fn a_fat_donkey_and_a_young_one_have_their_own_equations() {
        let donkey = animal(Kind::Donkey, None);
        let fat = ConditionRange::new(7.0, 8.0).ok();
        let mut taken = tape(125.0, 100.0, LengthKind::ElbowToTuber);
        let weigh_fat = |tape| weigh_in_condition(&donkey, &Reading::Tape(tape), fat, today());
        let (_, findings) = weigh_fat(taken).unwrap();
        assert_eq!(
            findings,
            [Finding::FellBack(Fallback::Missing {
                wanted: None,
                measure: Measure::Height
            })]
        );
        taken.height = Some(Length::cm(105.0));
        let (weight, findings) = weigh_fat(taken).unwrap();
        assert_eq!(equation(&weight), Equation::DonkeyFat);
        near(&weight, 193.2, 164.2, 222.2);
        assert!(findings.is_empty());
        let mut young = animal(Kind::Donkey, None);
        young.born = Some(Birth::Year(2024));
        let mut taken = tape(105.0, 75.0, LengthKind::ElbowToTuber);
        assert_eq!(
            by_tape(&young, taken),
            Err(AssessError::Missing(Measure::UmbilicalGirth))
        );
        taken.umbilical_girth = Some(Length::cm(110.0));
        let (weight, _) = by_tape(&young, taken).unwrap();
        near(&weight, 83.6, 71.1, 96.1);
    }

    #[test]
    fn a_mammoth_donkey_needs_a_scale() {
        let donkey = animal(Kind::Donkey, None);
        match by_tape(&donkey, tape(160.0, 125.0, LengthKind::ElbowToTuber)) {
            Err(AssessError::OutOfRange(error)) => {
                assert_eq!(error.bounds.field, "donkey_weight_kg");
                assert_eq!(error.bounds.max, 252.0);
            }
            other => panic!("{other:?}"),
        }
    }
}
