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
    WeightEstimate::percent(
        value,
        &p::BAND_DONKEY,
        WeightMethod::Tape(equation),
        Provenance::new().constant(law).constant(holds),
    )
}
