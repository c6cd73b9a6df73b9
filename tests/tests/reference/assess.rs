//! Weight, condition, crest and target, against published equations and weighed donkeys, through the room's door.

use tussock_core::animal::{
    Animal, AnimalId, Birth, BodyType, Goal, Health, Kind, Phase, StageFacts, State, Temperament,
    Workload,
};
use tussock_core::assess::{
    ConditionRange, ConditionScale, ConditionScore, Crest, CrestFlag, LengthKind, Reading,
    ScaleInstrument, ScaleWeight, Site, Tape, Target, ideal_weight, target, weigh,
    weigh_in_condition,
};
use tussock_core::units::{BodyMass, Length, LocalDate};
use tussock_tests::reference::{Formula, Formulas, Inputs, RowCounts};

pub fn formulas() -> Formulas {
    vec![
        ("assess.horse_kg", horse_kg as Formula),
        ("assess.horse_lb", horse_lb),
        ("assess.pony_kg", |i| {
            let tape = girth_and_length(i, LengthKind::Wrap)?;
            kg(&grown(Kind::Pony, None), tape)
        }),
        ("assess.icelandic_kg", |i| {
            let tape = girth_and_length(i, LengthKind::Wrap)?;
            kg(&grown(Kind::Horse, Some(BodyType::Icelandic)), tape)
        }),
        ("assess.young_lb", young_lb),
        ("assess.young_metric_divisor", young_metric_divisor),
        ("assess.four_measures_kg", four_measures_kg),
        ("assess.ideal_kg", ideal_kg),
        ("assess.donkey_kg", |i| {
            let tape = girth_and_length(i, LengthKind::ElbowToTuber)?;
            kg(&grown(Kind::Donkey, None), tape)
        }),
        ("assess.donkey_girth_kg", |i| {
            kg(&grown(Kind::Donkey, None), Tape::girth(cm(i, "girth_cm")?))
        }),
        ("assess.donkey_young_kg", donkey_young_kg),
        ("assess.donkey_fat_kg", donkey_fat_kg),
        ("assess.target_low_kg", |i| {
            Ok(horse_target(i.number("kg")?, i.number("condition")?)?
                .low
                .to_kg())
        }),
        ("assess.target_high_kg", |i| {
            Ok(horse_target(i.number("kg")?, i.number("condition")?)?
                .high
                .to_kg())
        }),
        ("assess.unit_of_condition_kg", |i| {
            let weight = i.number("kg")?;
            // One unit above the condition a target is for.
            Ok(weight - horse_target(weight, 6.0)?.low.to_kg())
        }),
        ("assess.crest_flag", crest_flag),
        ("assess.condition_nine", |i| {
            condition(
                i,
                ConditionScale::NineStep,
                &[
                    "neck",
                    "withers",
                    "behind_shoulder",
                    "ribs",
                    "loin",
                    "tail_head",
                ],
            )
        }),
        ("assess.condition_five", |i| {
            condition(i, ConditionScale::FiveStep, &["neck", "back", "pelvis"])
        }),
    ]
}

pub fn rows() -> RowCounts {
    vec![
        ("carroll_huntington_1988", 8),
        ("catalano_2016", 4),
        ("extension_tape", 9),
        ("fitzgerald_2019", 3),
        ("henneke_1983", 2),
        ("heusner_1993", 4),
        ("icelandic_weight", 1),
        ("martinson_2014", 13),
        ("milner_rougier_2014", 21),
        ("miranda_donkey", 1),
        ("pearson_ouassat_1996", 5),
        ("pearson_ouassat_2000", 1),
        ("west_africa_donkey", 2),
    ]
}

fn today() -> LocalDate {
    LocalDate::from_ymd_opt(2026, 5, 5).unwrap_or_default()
}

fn grown(kind: Kind, body_type: Option<BodyType>) -> Animal {
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
        work: Workload::Maintenance(Temperament::Average),
        health: Health::default(),
        goal: Goal::Lose,
        phase: Phase::New,
        target: None,
    }
}

fn cm(inputs: &Inputs, key: &str) -> Result<Length, String> {
    inputs.number(key).map(Length::cm)
}

fn inches(inputs: &Inputs, key: &str) -> Result<Length, String> {
    inputs.number(key).map(Length::inches)
}

fn girth_and_length(inputs: &Inputs, kind: LengthKind) -> Result<Tape, String> {
    Ok(Tape {
        length: Some((cm(inputs, "length_cm")?, kind)),
        ..Tape::girth(cm(inputs, "girth_cm")?)
    })
}

fn mass(animal: &Animal, tape: Tape) -> Result<BodyMass, String> {
    weigh(animal, &Reading::Tape(tape), today())
        .map(|(weight, _)| weight.value)
        .map_err(|e| format!("{e:?}"))
}

fn kg(animal: &Animal, tape: Tape) -> Result<f64, String> {
    mass(animal, tape).map(BodyMass::to_kg)
}

fn horse_kg(inputs: &Inputs) -> Result<f64, String> {
    let tape = girth_and_length(inputs, LengthKind::Wrap)?;
    kg(&grown(Kind::Horse, None), tape)
}

fn horse_lb(inputs: &Inputs) -> Result<f64, String> {
    let tape = Tape {
        length: Some((inches(inputs, "length_in")?, LengthKind::Wrap)),
        ..Tape::girth(inches(inputs, "girth_in")?)
    };
    mass(&grown(Kind::Horse, None), tape).map(BodyMass::to_lb)
}

/// A young horse; of foals the length is not asked.
fn young(inputs: &Inputs) -> Result<(Animal, bool), String> {
    let (born, has_length) = match inputs.text("age")? {
        "yearling" => ((2025, 4, 20), true),
        "weanling" => ((2025, 10, 20), true),
        "foal" => ((2026, 4, 10), false),
        _ => return Err(inputs.unknown("age")),
    };
    let (year, month, day) = born;
    let born = LocalDate::from_ymd_opt(year, month, day).unwrap_or_default();
    let animal = Animal {
        born: Some(Birth::Day(born)),
        state: State::Growing,
        ..grown(Kind::Horse, None)
    };
    Ok((animal, has_length))
}

fn young_lb(inputs: &Inputs) -> Result<f64, String> {
    let (animal, has_length) = young(inputs)?;
    let length = if has_length {
        Some((inches(inputs, "length_in")?, LengthKind::Wrap))
    } else {
        None
    };
    let tape = Tape {
        length,
        ..Tape::girth(inches(inputs, "girth_in")?)
    };
    mass(&animal, tape).map(BodyMass::to_lb)
}

/// Girth squared times length over the weight, in cm and kg: the imperial divisor as it works out in metric.
fn young_metric_divisor(inputs: &Inputs) -> Result<f64, String> {
    let (animal, _) = young(inputs)?;
    let (girth, length) = (140.0_f64, 125.0_f64);
    let tape = Tape {
        length: Some((Length::cm(length), LengthKind::Wrap)),
        ..Tape::girth(Length::cm(girth))
    };
    Ok(girth.powi(2) * length / kg(&animal, tape)?)
}

fn typed(inputs: &Inputs) -> Result<(Animal, LengthKind), String> {
    let (kind, body, length) = match inputs.text("type")? {
        "arabian" => (Kind::Horse, BodyType::Arabian, LengthKind::Wrap),
        "pony" => (Kind::Pony, BodyType::Pony, LengthKind::Wrap),
        "stock" => (Kind::Horse, BodyType::Stock, LengthKind::Wrap),
        "draft" => (Kind::Horse, BodyType::Draft, LengthKind::Straight),
        "warmblood" => (Kind::Horse, BodyType::Warmblood, LengthKind::Straight),
        _ => return Err(inputs.unknown("type")),
    };
    Ok((grown(kind, Some(body)), length))
}

fn four_measures_kg(inputs: &Inputs) -> Result<f64, String> {
    let (animal, length) = typed(inputs)?;
    let tape = Tape {
        height: Some(cm(inputs, "height_cm")?),
        neck: Some(cm(inputs, "neck_cm")?),
        ..girth_and_length(inputs, length)?
    };
    kg(&animal, tape)
}

fn ideal_kg(inputs: &Inputs) -> Result<f64, String> {
    let (animal, length) = typed(inputs)?;
    let tape = Tape {
        length: Some((cm(inputs, "length_cm")?, length)),
        height: Some(cm(inputs, "height_cm")?),
        // The girth does not enter the ideal weight.
        ..Tape::girth(Length::cm(180.0))
    };
    ideal_weight(&animal, &tape, today())
        .map(|weight| weight.value.to_kg())
        .map_err(|e| format!("{e:?}"))
}

fn donkey_young_kg(inputs: &Inputs) -> Result<f64, String> {
    let animal = Animal {
        born: Some(Birth::Year(2024)),
        ..grown(Kind::Donkey, None)
    };
    let umbilical = cm(inputs, "umbilical_cm")?;
    let tape = Tape {
        length: Some((cm(inputs, "length_cm")?, LengthKind::ElbowToTuber)),
        umbilical_girth: Some(umbilical),
        // The heart girth does not enter the equation of the young.
        ..Tape::girth(umbilical)
    };
    kg(&animal, tape)
}

fn donkey_fat_kg(inputs: &Inputs) -> Result<f64, String> {
    let tape = Tape {
        height: Some(cm(inputs, "height_cm")?),
        ..Tape::girth(cm(inputs, "girth_cm")?)
    };
    let fat = ConditionRange::new(7.0, 8.0).map_err(|e| format!("{e:?}"))?;
    let donkey = grown(Kind::Donkey, None);
    weigh_in_condition(&donkey, &Reading::Tape(tape), Some(fat), today())
        .map(|(weight, _)| weight.value.to_kg())
        .map_err(|e| format!("{e:?}"))
}

fn horse_target(kg: f64, condition: f64) -> Result<Target, String> {
    let horse = grown(Kind::Horse, None);
    let scale = Reading::Scale(ScaleWeight {
        mass: BodyMass::kg(kg),
        instrument: ScaleInstrument::AnimalScale,
    });
    let (weight, _) = weigh(&horse, &scale, today()).map_err(|e| format!("{e:?}"))?;
    let range = ConditionScore::overall(ConditionScale::NineStep, condition)
        .map_err(|e| format!("{e:?}"))?
        .on_nine();
    target(&horse, &weight, range, None, today())
        .map(|(target, _)| target)
        .map_err(|e| format!("{e:?}"))
}

fn crest_flag(inputs: &Inputs) -> Result<f64, String> {
    let score = match inputs.text("crest")? {
        "2" => 2,
        "3" => 3,
        "4" => 4,
        _ => return Err(inputs.unknown("crest")),
    };
    match Crest::new(score).map_err(|e| format!("{e:?}"))?.flag() {
        CrestFlag::None => Ok(0.0),
        CrestFlag::Flag => Ok(1.0),
        CrestFlag::Strong => Ok(2.0),
    }
}

/// A score by all its sites, whose inputs are named in walking order.
fn condition(inputs: &Inputs, scale: ConditionScale, names: &[&str]) -> Result<f64, String> {
    let scored = scale
        .sites()
        .iter()
        .zip(names)
        .map(|(site, name)| Ok((*site, inputs.number(name)?)))
        .collect::<Result<Vec<(Site, f64)>, String>>()?;
    ConditionScore::by_sites(scale, &scored)
        .map(|(score, _)| score.value())
        .map_err(|e| format!("{e:?}"))
}
