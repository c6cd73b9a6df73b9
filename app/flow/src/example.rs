//! The invented yard: three animals that do not exist, on a farm that does not exist. Every figure in it is invented.
//!
//! Its days are counted back from the first opening, so that it is always a week old.

mod grass;

use crate::acts::{Act, New};
use tussock_core::animal::{
    Animal, AnimalId, Answer, Appetite, Birth, BodyType, Goal, Health, Kind, Laminitis, LotId,
    Phase, Sex, StageFacts, State, Teeth, Temperament, Workload, YardId,
};
use tussock_core::assess::{
    ConditionScale, ConditionScore, Crest, LengthKind, Reading, ScaleInstrument, ScaleWeight, Site,
    Tape,
};
use tussock_core::forage::ForageClass;
use tussock_core::limits::Nutrient;
use tussock_core::log::bodies::base::{Decimal, FeedWeight, Reported};
use tussock_core::log::bodies::{
    AnimalV2, ConditionV1, CrestV1, FoodV2, LabelLineV2, LookOverV1, LotV1, VisitsV1, WeightV1,
};
use tussock_core::log::{Body, Known, LogError, Name, Subject};
use tussock_core::ration::{Content, FoodClass, TypicalFood};
use tussock_core::sources::RecordId;
use tussock_core::units::{AsFed, BodyMass, Currency, Instant, Length, LocalTime, Money, Span};

/// Everything the invented yard holds when it is opened for the first time.
///
/// # Errors
/// A figure that cannot be stored; the tests write every one of them.
pub fn yard(yard: &YardId, now: Instant) -> Result<Act, ExampleFault> {
    let days = |count: i64| now - Span::hours(count * 24);
    let mut acts = vec![
        add(
            "yard",
            Subject::yard(yard),
            days(60),
            Body::Yard(grass::yard()?),
        ),
        add(
            "visits",
            Subject::yard(yard),
            days(30),
            Body::Visits(VisitsV1 {
                times: visits(),
                from: None,
            }),
        ),
        add(
            "meadow",
            Subject::lot(&LotId("meadow".to_owned())),
            days(20),
            Body::Lot(LotV1::of_class("Meadow, June cut", ForageClass::Meadow)?),
        ),
    ];
    for (id, food) in [
        ("minerals", minerals()?),
        ("salt", salt()?),
        ("pulp", pulp()?),
    ] {
        acts.push(add(id, Subject::yard(yard), days(20), Body::Food(food)));
    }
    for who in [bramble(), moss(), fern()] {
        acts.extend(animal(&who, &days)?);
    }
    acts.extend(grass::acts(yard, now, &days)?);
    Ok(Act::All(acts))
}

/// Why the invented yard cannot be written.
#[derive(Clone, Debug, PartialEq)]
pub enum ExampleFault {
    /// A figure that cannot be stored.
    Log(LogError),
    /// A figure that cannot be.
    Assess(tussock_core::assess::AssessError),
}

impl From<LogError> for ExampleFault {
    fn from(error: LogError) -> Self {
        Self::Log(error)
    }
}

impl From<tussock_core::assess::AssessError> for ExampleFault {
    fn from(error: tussock_core::assess::AssessError) -> Self {
        Self::Assess(error)
    }
}

/// An invented animal and what was measured of it.
struct Invented {
    animal: Animal,
    weights: Vec<(i64, Reading)>,
    sites: [f64; 6],
    crest: u8,
}

fn add(id: &str, subject: Subject, at: Instant, body: Body) -> Act {
    Act::Add(New {
        id: RecordId(id.to_owned()),
        subject,
        at: Some(at),
        known: Known::Seen,
        body,
    })
}

fn animal(who: &Invented, days: &impl Fn(i64) -> Instant) -> Result<Vec<Act>, ExampleFault> {
    let id = &who.animal.id;
    let about = || Subject::animal(id);
    let named = |what: &str| format!("{}-{what}", id.as_str());
    let mut acts = vec![add(
        id.as_str(),
        about(),
        days(30),
        Body::Animal(AnimalV2::of(&who.animal)?),
    )];
    for (count, (ago, reading)) in who.weights.iter().enumerate() {
        acts.push(add(
            &named(&format!("weight-{count}")),
            about(),
            days(*ago),
            Body::Weight(WeightV1::of(reading)?),
        ));
    }
    let sites: Vec<(Site, f64)> = ConditionScale::NineStep
        .sites()
        .iter()
        .copied()
        .zip(who.sites)
        .collect();
    let (score, _) = ConditionScore::by_sites(ConditionScale::NineStep, &sites)?;
    acts.push(add(
        &named("condition"),
        about(),
        days(7),
        Body::Condition(ConditionV1::of(&score)?),
    ));
    acts.push(add(
        &named("crest"),
        about(),
        days(7),
        Body::Crest(CrestV1::of(Crest::new(who.crest)?)),
    ));
    acts.push(add(
        &named("look"),
        about(),
        days(1),
        Body::LookOver(LookOverV1 {
            gait: Answer::No,
            stance: Answer::No,
            turning: Answer::No,
            shifting_weight: Answer::No,
            strong_pulse: Answer::No,
            foot_pain: Answer::No,
            warm_hoof: Answer::No,
            lying_more: Answer::No,
            note: None,
            job: None,
        }),
    ));
    Ok(acts)
}

/// A price in the invented yard's currency.
fn price(minor: i64) -> Option<Money> {
    let currency = Currency::from_code("GBP").ok()?;
    Some(Money { minor, currency })
}

fn pack(kg: f64) -> Result<Option<FeedWeight>, LogError> {
    FeedWeight::of(AsFed::kg(kg), None).map(Some)
}

/// A food of which nobody typed a label.
fn unlabelled(name: &str, typical: TypicalFood) -> Result<FoodV2, LogError> {
    Ok(FoodV2::typical(Name::new(name)?, typical))
}

/// A mix of minerals and vitamins that does not exist, with its label.
fn minerals() -> Result<FoodV2, LogError> {
    let line = |content, value: &str, unit: &str| {
        Ok::<_, LogError>(LabelLineV2 {
            content: Some(content),
            name: None,
            reported: Reported {
                value: Decimal::new(value)?,
                unit: Name::new(unit)?,
                typed: Some(value.to_owned()),
            },
        })
    };
    let of = Content::Of;
    Ok(FoodV2 {
        class: FoodClass::MineralMix,
        profile: None,
        label: vec![
            line(of(Nutrient::CrudeProtein), "20", "%")?,
            line(of(Nutrient::Calcium), "6", "%")?,
            line(of(Nutrient::Phosphorus), "3", "%")?,
            line(of(Nutrient::Magnesium), "2", "%")?,
            line(of(Nutrient::Sodium), "1.5", "%")?,
            line(of(Nutrient::Copper), "700", "mg/kg")?,
            line(of(Nutrient::Zinc), "2400", "mg/kg")?,
            line(of(Nutrient::Manganese), "900", "mg/kg")?,
            line(of(Nutrient::Iodine), "7", "mg/kg")?,
            line(of(Nutrient::Selenium), "6", "mg/kg")?,
            line(of(Nutrient::VitaminE), "5000", "IU/kg")?,
            line(Content::SugarStarch, "9", "%")?,
        ],
        rate: Some(Reported {
            value: Decimal::new("0.6")?,
            unit: Name::new("g/kg")?,
            typed: Some("0.6".to_owned()),
        }),
        scoop: pack(0.04)?,
        pack: pack(10.0)?,
        price: price(2_800),
        ..unlabelled("Yard minerals", TypicalFood::Balancer)?
    })
}

fn salt() -> Result<FoodV2, LogError> {
    Ok(FoodV2 {
        pack: pack(10.0)?,
        price: price(650),
        ..unlabelled("Plain salt", TypicalFood::Salt)?
    })
}

fn pulp() -> Result<FoodV2, LogError> {
    Ok(FoodV2 {
        pack: pack(20.0)?,
        price: price(1_450),
        ..unlabelled("Beet pulp, no molasses", TypicalFood::BeetPulp)?
    })
}

fn visits() -> Vec<LocalTime> {
    [(6, 15), (12, 0), (17, 30), (21, 30)]
        .into_iter()
        .filter_map(|(hour, minute)| LocalTime::from_hms_opt(hour, minute, 0))
        .collect()
}

fn described(id: &str, name: &str, kind: Kind, born: i32, height: f64) -> Animal {
    Animal {
        id: AnimalId(id.to_owned()),
        name: name.to_owned(),
        kind,
        body_type: None,
        sex: Some(Sex::Gelding),
        born: Some(Birth::Year(born)),
        height: Some(Length::cm(height)),
        state: State::Adult,
        stage: StageFacts::default(),
        work: Workload::Maintenance(Temperament::Average),
        health: Health {
            laminitis: Laminitis::Never,
            teeth: Teeth::Good,
            appetite: Appetite::Eating,
            native_or_cob: Answer::Yes,
            ..Health::default()
        },
        goal: Goal::Lose,
        phase: Phase::New,
        target: None,
    }
}

fn tape(girth: f64, length: f64, kind: LengthKind) -> Reading {
    Reading::Tape(Tape {
        length: Some((Length::cm(length), kind)),
        ..Tape::girth(Length::cm(girth))
    })
}

fn bramble() -> Invented {
    let mut animal = described("bramble", "Bramble", Kind::Pony, 2014, 137.0);
    animal.body_type = Some(BodyType::Pony);
    animal.health.laminitis = Laminitis::Ever { last: None };
    let scale = ScaleWeight {
        mass: BodyMass::kg(372.0),
        instrument: ScaleInstrument::AnimalScale,
    };
    Invented {
        animal,
        weights: vec![
            (21, tape(172.0, 156.0, LengthKind::Wrap)),
            (7, Reading::Scale(scale)),
        ],
        sites: [7.5, 7.0, 7.0, 7.5, 7.5, 7.0],
        crest: 3,
    }
}

fn moss() -> Invented {
    Invented {
        animal: described("moss", "Moss", Kind::Horse, 2011, 148.0),
        weights: vec![(7, tape(183.0, 164.0, LengthKind::Wrap))],
        sites: [6.5, 6.5, 6.0, 6.5, 7.0, 6.5],
        crest: 2,
    }
}

fn fern() -> Invented {
    let mut animal = described("fern", "Fern", Kind::Donkey, 2009, 105.0);
    animal.sex = Some(Sex::Female);
    animal.goal = Goal::Hold;
    Invented {
        animal,
        weights: vec![(7, tape(118.0, 88.0, LengthKind::ElbowToTuber))],
        sites: [5.5, 5.0, 5.5, 5.5, 6.0, 5.5],
        crest: 2,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::acts::{Context, apply};
    use crate::shelf::Shelf;
    use tussock_core::log::{DeviceId, Record, Wish, gather};
    use tussock_core::safety::{SafetyVerdict, judge};
    use tussock_core::units::Zone;

    struct Utc;

    impl Zone for Utc {
        fn offset_min(&self, _: Instant) -> i32 {
            0
        }
    }

    #[test]
    fn every_invented_animal_gets_a_plan() {
        let now = Instant::from_ms(1_777_960_800_000);
        let yard_id = YardId("yard".into());
        let context = Context {
            now,
            offset_min: 0,
            zone: "UTC".into(),
            yard: yard_id.clone(),
            by: None,
            device: DeviceId::of_number(7),
            last: None,
        };
        let outcome = apply(
            &yard(&yard_id, now).unwrap(),
            &Shelf::default(),
            &context,
            None,
        )
        .unwrap();
        let shelf = Shelf::of(outcome.writes.rows);
        assert!(shelf.unread.is_empty());
        assert_eq!(shelf.animals().len(), 3);
        let records: Vec<&Record> = shelf.records().collect();
        for animal in shelf.animals() {
            let gathered = gather(&records, &animal.id, now, &Utc, &Wish::default()).unwrap();
            assert!(gathered.problems.is_empty(), "{:?}", gathered.problems);
            let verdict = judge(gathered.draft().unwrap());
            assert!(
                matches!(verdict, SafetyVerdict::Allowed(_)),
                "{}: {verdict:?}",
                animal.name
            );
        }
    }
}
