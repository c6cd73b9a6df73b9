//! From a reading to a weight: which equation the animal and its measures allow.

use super::age::{AgeClass, age_class, under_three};
use super::donkey;
use super::error::AssessError;
use super::finding::Finding;
use super::horse;
use super::published as p;
use super::ribs::ConditionRange;
use super::tape::{LengthKind, Measure, Reading, Tape};
use super::weight::{WeightEstimate, on_scale};
use crate::animal::{Animal, Kind, State};
use crate::units::{Length, LocalDate};

/// The weight of an animal from a reading on a day, and what is worth saying beside it.
///
/// The closest published equation for the kind, body type, age and measures is used; where it does not hold, the next
/// one, with a [`Finding::FellBack`]. A tape of the girth alone gives a weight too, with a wide band.
///
/// # Errors
/// A measure out of range or missing, a length of the wrong kind, an age or a weight no equation was made for.
pub fn weigh(
    animal: &Animal,
    reading: &Reading,
    day: LocalDate,
) -> Result<(WeightEstimate, Vec<Finding>), AssessError> {
    weigh_in_condition(animal, reading, None, day)
}

/// Like [`weigh`], with the condition last scored: fat donkeys in little work have an equation of their own.
pub fn weigh_in_condition(
    animal: &Animal,
    reading: &Reading,
    condition: Option<ConditionRange>,
    day: LocalDate,
) -> Result<(WeightEstimate, Vec<Finding>), AssessError> {
    let tape = match reading {
        Reading::Scale(scale) => return Ok((on_scale(scale)?, Vec::new())),
        Reading::Tape(tape) => tape,
    };
    tape.check()?;
    let case = Case {
        animal,
        tape,
        height: known_height(animal, tape)?,
        condition,
    };
    let mut findings = Vec::new();
    if animal.state == State::Pregnant {
        findings.push(Finding::InFoal);
    }
    let weight = match animal.kind {
        Kind::Donkey => {
            let young = under_three(animal, day)?;
            case.note_proportion(&mut findings);
            case.note_age(&mut findings);
            donkey::weight(&case, young, &mut findings)?
        }
        Kind::Horse | Kind::Pony | Kind::Miniature | Kind::Mule => {
            let age = age_class(animal, day)?;
            case.note_proportion(&mut findings);
            if age == AgeClass::NotKnown {
                findings.push(Finding::AgeNotKnown);
            }
            horse::weight(&case, age, &mut findings)?
        }
    };
    Ok((weight, findings))
}

/// An animal with its tape.
pub(super) struct Case<'a> {
    pub(super) animal: &'a Animal,
    pub(super) tape: &'a Tape,
    /// The height of the tape, else the animal's own.
    pub(super) height: Option<Length>,
    /// Condition on the scale 1 to 9, when it was scored.
    pub(super) condition: Option<ConditionRange>,
}

impl Case<'_> {
    /// A measure that the equation cannot do without.
    pub(super) fn need(value: Option<Length>, measure: Measure) -> Result<Length, AssessError> {
        value.ok_or(AssessError::Missing(measure))
    }

    /// The length, if it is of the kind an equation is for.
    pub(super) fn length(&self, wanted: LengthKind) -> Result<Length, AssessError> {
        match self.tape.length {
            Some((length, given)) if given == wanted => Ok(length),
            Some((_, given)) => Err(AssessError::WrongLength { wanted, given }),
            None => Err(AssessError::Missing(Measure::Length)),
        }
    }

    fn note_age(&self, findings: &mut Vec<Finding>) {
        if self.animal.born.is_none() && self.animal.state != State::Growing {
            findings.push(Finding::AgeNotKnown);
        }
    }

    /// Says when length and girth do not go together: a slipped tape, or a length of another kind.
    fn note_proportion(&self, findings: &mut Vec<Finding>) {
        let Some((length, kind)) = self.tape.length else {
            return;
        };
        let usual = match kind {
            LengthKind::Wrap | LengthKind::Straight => p::USUAL_PROPORTION,
            LengthKind::ElbowToTuber => p::USUAL_PROPORTION_DONKEY,
        };
        let length_to_girth = length / self.tape.heart_girth;
        if usual.check(length_to_girth).is_err() {
            findings.push(Finding::UnusualProportion { length_to_girth });
        }
    }
}

/// The height of the tape, else the animal's own; refuses one that is not believed.
pub(super) fn known_height(animal: &Animal, tape: &Tape) -> Result<Option<Length>, AssessError> {
    let height = tape.height.or(animal.height);
    if let Some(height) = height {
        Measure::Height.bounds().check(height.to_cm())?;
    }
    Ok(height)
}

#[cfg(test)]
pub(super) mod tests {
    use super::*;
    use crate::animal::{
        AnimalId, Birth, BodyType, Goal, Health, Phase, StageFacts, Temperament, Workload,
    };
    use crate::assess::{Equation, ScaleWeight, WeightMethod};
    use crate::units::BodyMass;
    use proptest::prelude::*;

    pub(in crate::assess) fn today() -> LocalDate {
        "2026-05-05".parse().unwrap()
    }

    /// Bramble, Moss and Fern by turns: grown, idle, nothing else known.
    pub(in crate::assess) fn animal(kind: Kind, body_type: Option<BodyType>) -> Animal {
        Animal {
            id: AnimalId("bramble".to_owned()),
            name: "Bramble".to_owned(),
            kind,
            body_type,
            sex: None,
            born: Some(Birth::Year(2014)),
            height: None,
            state: State::Adult,
            stage: StageFacts::default(),
            work: Workload::Maintenance(Temperament::Low),
            health: Health::default(),
            goal: Goal::Lose,
            phase: Phase::New,
            target: None,
        }
    }

    pub(in crate::assess) fn tape(girth: f64, length: f64, kind: LengthKind) -> Tape {
        Tape {
            length: Some((Length::cm(length), kind)),
            ..Tape::girth(Length::cm(girth))
        }
    }

    pub(in crate::assess) fn four(
        girth: f64,
        length: f64,
        kind: LengthKind,
        height: f64,
        neck: f64,
    ) -> Tape {
        Tape {
            height: Some(Length::cm(height)),
            neck: Some(Length::cm(neck)),
            ..tape(girth, length, kind)
        }
    }

    pub(in crate::assess) fn by_tape(
        animal: &Animal,
        tape: Tape,
    ) -> Result<(WeightEstimate, Vec<Finding>), AssessError> {
        weigh(animal, &Reading::Tape(tape), today())
    }

    pub(in crate::assess) fn equation(weight: &WeightEstimate) -> Equation {
        match weight.method {
            WeightMethod::Tape(equation) => equation,
            _ => panic!("not from a tape: {weight:?}"),
        }
    }

    pub(in crate::assess) fn near(weight: &WeightEstimate, kg: f64, low: f64, high: f64) {
        for (is, should) in [(weight.value, kg), (weight.low, low), (weight.high, high)] {
            assert!((is.to_kg() - should).abs() < 0.06, "{weight:?}");
        }
    }

    #[test]
    fn a_slip_of_the_pen_is_refused_and_an_odd_proportion_named() {
        let cob = animal(Kind::Horse, None);
        for girth in [18.0, 1800.0, f64::NAN, f64::INFINITY] {
            assert!(matches!(
                by_tape(&cob, Tape::girth(Length::cm(girth))),
                Err(AssessError::OutOfRange(error)) if error.bounds.field == "heart_girth_cm"
            ));
        }
        let (_, findings) = by_tape(&cob, tape(180.0, 116.0, LengthKind::Wrap)).unwrap();
        assert!(matches!(
            findings.as_slice(),
            [Finding::UnusualProportion { .. }]
        ));
        let mut known = animal(Kind::Horse, None);
        known.height = Some(Length::cm(15.2));
        assert!(by_tape(&known, Tape::girth(Length::cm(180.0))).is_err());
    }

    #[test]
    fn a_scale_weight_is_what_the_scale_says() {
        let reading = Reading::Scale(ScaleWeight {
            mass: BodyMass::kg(312.0),
            instrument: crate::assess::ScaleInstrument::AnimalScale,
        });
        let foal = Animal {
            born: Some(Birth::Year(2026)),
            ..animal(Kind::Miniature, None)
        };
        let (weight, findings) = weigh(&foal, &reading, today()).unwrap();
        near(&weight, 312.0, 308.9, 315.1);
        assert!(findings.is_empty() && weight.is_scale());
    }

    fn any_animal() -> impl Strategy<Value = Animal> {
        let kind = prop::sample::select(vec![
            Kind::Horse,
            Kind::Pony,
            Kind::Miniature,
            Kind::Donkey,
            Kind::Mule,
        ]);
        let body = prop::option::of(prop::sample::select(vec![
            BodyType::Arabian,
            BodyType::Pony,
            BodyType::Stock,
            BodyType::Draft,
            BodyType::Warmblood,
            BodyType::Icelandic,
            BodyType::Shetland,
            BodyType::Saddle,
        ]));
        let born = prop::option::of(2018..=2026);
        let state = prop::sample::select(vec![State::Adult, State::Growing, State::Pregnant]);
        (kind, body, born, state).prop_map(|(kind, body, born, state)| Animal {
            born: born.map(Birth::Year),
            state,
            ..animal(kind, body)
        })
    }

    fn any_tape() -> impl Strategy<Value = Tape> {
        let kind = prop::sample::select(vec![
            LengthKind::Wrap,
            LengthKind::Straight,
            LengthKind::ElbowToTuber,
        ]);
        let cm = |range: std::ops::Range<f64>| range.prop_map(Length::cm);
        (
            cm(60.0..240.0),
            prop::option::of((cm(60.0..200.0), kind)),
            prop::option::of(cm(70.0..185.0)),
            prop::option::of(cm(50.0..140.0)),
            prop::option::of(cm(70.0..260.0)),
        )
            .prop_map(
                |(heart_girth, length, height, neck, umbilical_girth)| Tape {
                    heart_girth,
                    length,
                    height,
                    neck,
                    umbilical_girth,
                },
            )
    }

    proptest! {
        #[test]
        fn the_band_holds_the_weight(animal in any_animal(), tape in any_tape()) {
            if let Ok((weight, _)) = by_tape(&animal, tape) {
                prop_assert!(BodyMass::ZERO <= weight.low);
                prop_assert!(weight.low < weight.value && weight.value < weight.high);
                prop_assert!(weight.high.is_finite());
                prop_assert!(!weight.from.sources().is_empty());
            }
        }

        #[test]
        fn a_bigger_girth_is_never_lighter(
            animal in any_animal(),
            tape in any_tape(),
            more in 0.0..20.0_f64,
        ) {
            let bigger = Tape {
                heart_girth: tape.heart_girth + Length::cm(more),
                umbilical_girth: tape.umbilical_girth.map(|girth| girth + Length::cm(more)),
                ..tape
            };
            if let (Ok((before, _)), Ok((after, _))) = (by_tape(&animal, tape), by_tape(&animal, bigger)) {
                prop_assert!(before.value <= after.value);
                prop_assert_eq!(before.method, after.method);
            }
        }

        #[test]
        fn girth_and_length_scale_as_a_volume(girth in 120.0..200.0_f64, by in 0.8..1.2_f64) {
            let cob = animal(Kind::Horse, None);
            let of = |scale: f64| {
                let tape = tape(girth * scale, girth * 0.9 * scale, LengthKind::Wrap);
                by_tape(&cob, tape).unwrap().0.value.to_kg()
            };
            prop_assert!((of(by) / of(1.0) - by.powi(3)).abs() < 1e-9);
        }

        #[test]
        fn inches_and_centimetres_weigh_the_same(animal in any_animal(), tape in any_tape()) {
            let inches = |length: Length| Length::inches(length.to_inches());
            let same = Tape {
                heart_girth: inches(tape.heart_girth),
                length: tape.length.map(|(length, kind)| (inches(length), kind)),
                height: tape.height.map(inches),
                neck: tape.neck.map(inches),
                umbilical_girth: tape.umbilical_girth.map(inches),
            };
            if let (Ok((cm, _)), Ok((inch, _))) = (by_tape(&animal, tape), by_tape(&animal, same)) {
                prop_assert!((cm.value / inch.value - 1.0).abs() < 1e-9);
            }
        }
    }
}
