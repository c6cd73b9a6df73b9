//! What it should weigh, as a range.

use super::age::under_three;
use super::choose::known_height;
use super::equation::MeasuredType;
use super::error::{AssessError, Refused};
use super::finding::Finding;
use super::published as p;
use super::ribs::ConditionRange;
use super::tape::{Measure, Tape};
use super::weight::{WeightEstimate, WeightMethod};
use crate::animal::{Animal, Kind, State};
use crate::sources::{Provenance, Published};
use crate::units::{BodyMass, LocalDate};

/// What a target is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Aim {
    /// Condition 5.
    ConditionFive,
    /// Condition 7 first: above 8, condition says too little to reckon down to 5.
    ConditionSevenFirst,
}

/// A target weight as a range.
#[derive(Clone, Debug, PartialEq)]
pub struct Target {
    /// What it is for.
    pub aim: Aim,
    /// The target as reckoned: the middle of the range of condition, 3.6 % of body weight a unit.
    pub value: BodyMass,
    /// The low end: over the range of condition, and 3.2 to 4.0 % a unit.
    pub low: BodyMass,
    /// The high end of the same.
    pub high: BodyMass,
    /// The low end when the weight itself lies at the low end of its band.
    pub lowest: BodyMass,
    /// The high end when the weight itself lies at the high end of its band.
    pub highest: BodyMass,
    /// The published ideal weight, where type, length and height allow one.
    pub ideal: Option<WeightEstimate>,
    /// What it came from.
    pub from: Provenance,
}

/// The target weight: body weight x (1 - p x (condition - 5)), p from 3.2 to 4.0 % (Heusner 1993, scaled; ours), for
/// condition 3 to 8. Above 8 it is a first target, for condition 7. The percentages are assumed the same for every size
/// and kind. With a tape, the published ideal weight stands beside it where there is one.
///
/// # Errors
/// [`Refused::TargetInFoal`], [`Refused::TargetGrowing`]; condition under 3, which is for the vet.
pub fn target(
    animal: &Animal,
    weight: &WeightEstimate,
    condition: ConditionRange,
    tape: Option<&Tape>,
    day: LocalDate,
) -> Result<(Target, Vec<Finding>), AssessError> {
    if animal.state == State::Pregnant {
        return Err(AssessError::Refused(Refused::TargetInFoal));
    }
    if animal.state == State::Growing || under_three(animal, day)? {
        return Err(AssessError::Refused(Refused::TargetGrowing));
    }
    let mut findings = Vec::new();
    let (aim, at) = if p::TARGET_FROM.max < condition.middle() {
        findings.push(Finding::FirstAimForSeven);
        (Aim::ConditionSevenFirst, &p::FIRST_CONDITION)
    } else {
        p::TARGET_FROM.check(condition.middle())?;
        (Aim::ConditionFive, &p::TARGET_CONDITION)
    };
    // Linear in each, so the ends of the range lie at the ends of condition and percentage.
    let factor = |percent: &Published<f64>, condition: f64| {
        1.0 - percent.value / 100.0 * (condition - at.value)
    };
    let corners = [
        factor(&p::PER_UNIT_LOW, condition.low()),
        factor(&p::PER_UNIT_HIGH, condition.low()),
        factor(&p::PER_UNIT_LOW, condition.high()),
        factor(&p::PER_UNIT_HIGH, condition.high()),
    ];
    let least = corners.into_iter().fold(f64::INFINITY, f64::min);
    let most = corners.into_iter().fold(0.0, f64::max);
    let value = weight.value * factor(&p::PER_UNIT_MIDDLE, condition.middle());
    let ideal = tape.and_then(|tape| ideal_weight(animal, tape, day).ok());
    if let (Aim::ConditionFive, Some(ideal)) = (aim, &ideal) {
        let differs = ((ideal.value - value) / value).abs();
        if p::IDEAL_DIFFERS.value / 100.0 < differs {
            findings.push(Finding::IdealWeightDiffers {
                by_condition: value,
                by_measures: ideal.value,
            });
        }
    }
    let from = weight
        .from
        .clone()
        .constant(&p::PER_UNIT_LOW)
        .constant(&p::PER_UNIT_MIDDLE)
        .constant(&p::PER_UNIT_HIGH)
        .constant(at);
    let target = Target {
        aim,
        value,
        low: weight.value * least,
        high: weight.value * most,
        lowest: weight.low * least,
        highest: weight.high * most,
        ideal,
        from,
    };
    Ok((target, findings))
}

/// The published ideal weight from length and height (Martinson 2014, Catalano 2016), with a band of twice its root mean
/// square error.
///
/// # Errors
/// No equation for the kind or type, under three years, under 112 cm, a measure missing or a length of the wrong kind.
pub fn ideal_weight(
    animal: &Animal,
    tape: &Tape,
    day: LocalDate,
) -> Result<WeightEstimate, AssessError> {
    let kind = match animal.kind {
        Kind::Horse | Kind::Pony => animal.body_type.and_then(MeasuredType::of),
        Kind::Miniature | Kind::Donkey | Kind::Mule => None,
    }
    .ok_or(AssessError::Refused(Refused::NoIdealWeight))?;
    if under_three(animal, day)? {
        return Err(AssessError::Refused(Refused::TargetGrowing));
    }
    tape.check()?;
    let height = known_height(animal, tape)?.ok_or(AssessError::Missing(Measure::Height))?;
    p::FOUR_MEASURES_HEIGHT.check(height.to_cm())?;
    let (length, given) = tape.length.ok_or(AssessError::Missing(Measure::Length))?;
    let wanted = kind.length_kind();
    if given != wanted {
        return Err(AssessError::WrongLength { wanted, given });
    }
    WeightEstimate::twice(
        kind.ideal(length, height),
        kind.ideal_error(),
        WeightMethod::Ideal(kind),
        Provenance::new()
            .constant(kind.ideal_slopes())
            .constant(kind.ideal_intercept()),
    )
}
