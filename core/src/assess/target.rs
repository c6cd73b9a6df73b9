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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::animal::{Birth, BodyType};
    use crate::assess::choose::tests::{animal, tape, today};
    use crate::assess::{
        ConditionScale, ConditionScore, LengthKind, Ribs, ScaleInstrument, ScaleWeight,
    };
    use crate::units::Length;
    use proptest::prelude::*;

    fn weighed(kg: f64) -> WeightEstimate {
        crate::assess::weight::on_scale(&ScaleWeight {
            mass: BodyMass::kg(kg),
            instrument: ScaleInstrument::AnimalScale,
        })
        .unwrap()
    }

    fn scored(condition: f64) -> ConditionRange {
        ConditionScore::overall(ConditionScale::NineStep, condition)
            .unwrap()
            .on_nine()
    }

    fn of(kg: f64, condition: f64) -> (Target, Vec<Finding>) {
        let cob = animal(Kind::Horse, None);
        target(&cob, &weighed(kg), scored(condition), None, today()).unwrap()
    }

    #[test]
    fn a_fat_cob_of_500_kg_should_weigh_440_to_452() {
        let (target, findings) = of(500.0, 8.0);
        assert_eq!(target.aim, Aim::ConditionFive);
        assert!((target.low.to_kg() - 440.0).abs() < 1e-9);
        assert!((target.high.to_kg() - 452.0).abs() < 1e-9);
        assert!((target.value.to_kg() - 446.0).abs() < 1e-9);
        // With the scale's own 1 %.
        assert!((target.lowest.to_kg() - 435.6).abs() < 1e-9);
        assert!((target.highest.to_kg() - 456.52).abs() < 1e-9);
        assert!(findings.is_empty() && target.ideal.is_none());
    }

    #[test]
    fn above_eight_the_first_aim_is_seven() {
        let (target, findings) = of(500.0, 9.0);
        assert_eq!(target.aim, Aim::ConditionSevenFirst);
        assert_eq!(findings, [Finding::FirstAimForSeven]);
        assert!((target.low.to_kg() - 460.0).abs() < 1e-9);
        assert!((target.high.to_kg() - 468.0).abs() < 1e-9);
    }

    #[test]
    fn a_thin_one_should_weigh_more_and_a_very_thin_one_is_for_the_vet() {
        let (target, _) = of(400.0, 4.0);
        assert!((target.low.to_kg() - 412.8).abs() < 1e-9);
        assert!((target.high.to_kg() - 416.0).abs() < 1e-9);
        let cob = animal(Kind::Horse, None);
        assert!(matches!(
            super::target(&cob, &weighed(400.0), scored(2.5), None, today()),
            Err(AssessError::OutOfRange(error)) if error.bounds.min == 3.0
        ));
    }

    #[test]
    fn one_answer_about_the_ribs_gives_a_target_too() {
        let cob = animal(Kind::Horse, None);
        let by_ribs = |ribs: Ribs| target(&cob, &weighed(500.0), ribs.condition(), None, today());
        let (pressed, _) = by_ribs(Ribs::FeltWithPressure).unwrap();
        assert!((pressed.low.to_kg() - 460.0).abs() < 1e-9);
        assert!((pressed.high.to_kg() - 484.0).abs() < 1e-9);
        let (not_felt, findings) = by_ribs(Ribs::NotFelt).unwrap();
        assert_eq!(not_felt.aim, Aim::ConditionSevenFirst);
        assert_eq!(findings, [Finding::FirstAimForSeven]);
        assert!(by_ribs(Ribs::Seen).unwrap().0.low > BodyMass::kg(500.0));
    }

    #[test]
    fn beside_it_stands_the_published_ideal_weight() {
        let pony = animal(Kind::Pony, Some(BodyType::Pony));
        let mut taken = tape(160.0, 130.0, LengthKind::Wrap);
        taken.height = Some(Length::cm(125.0));
        let aim = |kg| target(&pony, &weighed(kg), scored(7.0), Some(&taken), today()).unwrap();
        let (near, findings) = aim(330.0);
        assert!((near.ideal.unwrap().value.to_kg() - 312.0).abs() < 1e-9);
        assert!(findings.is_empty());
        let (_, findings) = aim(300.0);
        assert!(matches!(
            findings.as_slice(),
            [Finding::IdealWeightDiffers { .. }]
        ));
    }

    #[test]
    fn the_ideal_weight_keeps_to_its_own_animals() {
        let mut pony = animal(Kind::Pony, Some(BodyType::Pony));
        let mut taken = tape(160.0, 130.0, LengthKind::Straight);
        taken.height = Some(Length::cm(125.0));
        assert!(matches!(
            ideal_weight(&pony, &taken, today()),
            Err(AssessError::WrongLength { .. })
        ));
        taken.length = Some((Length::cm(100.0), LengthKind::Wrap));
        taken.height = Some(Length::cm(111.0));
        assert!(matches!(
            ideal_weight(&pony, &taken, today()),
            Err(AssessError::OutOfRange(error)) if error.bounds.min == 112.0
        ));
        pony.born = Some(Birth::Year(2023));
        let growing = Err(AssessError::Refused(Refused::TargetGrowing));
        assert_eq!(ideal_weight(&pony, &taken, today()), growing);
        let donkey = animal(Kind::Donkey, Some(BodyType::Pony));
        let none = Err(AssessError::Refused(Refused::NoIdealWeight));
        assert_eq!(ideal_weight(&donkey, &taken, today()), none);
    }

    #[test]
    fn a_mare_in_foal_and_a_growing_animal_have_no_target() {
        let mut fern = animal(Kind::Pony, None);
        fern.state = State::Pregnant;
        let aim = |animal: &Animal| target(animal, &weighed(300.0), scored(7.0), None, today());
        assert_eq!(aim(&fern), Err(AssessError::Refused(Refused::TargetInFoal)));
        fern.state = State::Adult;
        fern.born = Some(Birth::Year(2024));
        assert_eq!(
            aim(&fern),
            Err(AssessError::Refused(Refused::TargetGrowing))
        );
    }

    proptest! {
        #[test]
        fn the_target_lies_in_its_range_and_the_range_in_the_wider_one(
            kg in 60.0..900.0_f64,
            low in 3.0..8.9_f64,
            wide in 0.0..2.0_f64,
        ) {
            let condition = ConditionRange::new(low, (low + wide).min(9.0)).unwrap();
            let cob = animal(Kind::Horse, None);
            let (t, _) = target(&cob, &weighed(kg), condition, None, today()).unwrap();
            prop_assert!(t.lowest <= t.low && t.low <= t.value && t.value <= t.high && t.high <= t.highest);
        }

        #[test]
        fn the_fatter_the_further(kg in 60.0..900.0_f64, half in 6_u8..=15) {
            let at = |half: u8| of(kg, f64::from(half) / 2.0).0.value;
            prop_assert!(at(half + 1) < at(half));
        }
    }
}
