//! Foods, labels and rations, against the tables and worked examples they come from.

use tussock_core::animal::{Kind, LotId, RiskLevel, State, Teeth, Temperament, Workload};
use tussock_core::forage::{
    Analyte, Basis, Fed, ForageClass, LabReport, Lot, RawReport, estimate, supply,
};
use tussock_core::limits::{
    Ends, MealVerdict, NeedFor, Needs, Nutrient, RatioVerdict, Stage, needs,
};
use tussock_core::ration::{
    Against, Bucket, Content, DayStarch, Food, FoodClass, FoodLabel, Forage, LabelBasis, LabelLine,
    LabelUnit, Ration, RawLabel, TypicalFood, Whole, check_label, whole,
};
use tussock_core::units::{AsFed, BodyMass, DryFraction, DryMatter};
use tussock_tests::reference::{Formula, Formulas, Inputs, RowCounts};

pub fn formulas() -> Formulas {
    vec![
        ("ration.content", content as Formula),
        ("ration.by_hand_mcal", |i| {
            Ok(by_hand(i)?.energy.supplied.likely.to_mcal())
        }),
        ("ration.by_hand_protein", |i| {
            let found = by_hand(i)?;
            let row = found
                .rows
                .iter()
                .find(|row| row.line.nutrient == Nutrient::CrudeProtein)
                .ok_or("no protein")?;
            row.line
                .supplied
                .and_then(|amount| Nutrient::CrudeProtein.in_unit(amount))
                .ok_or_else(|| "not known".to_owned())
        }),
        ("ration.label", label),
        ("ration.hay_sugar", |i| Ok(of_hay(i)?.sugar.known.to_g())),
        ("ration.hay_sugar_by_weight", |i| {
            Ok(of_hay(i)?.sugar.known.to_g() / i.number("weight")?)
        }),
        ("ration.bucket_over", bucket_over),
        ("ration.day_starch", day_starch),
        ("ration.calcium_to_phosphorus", calcium_to_phosphorus),
        ("ration.lucerne_percent", lucerne_percent),
    ]
}

pub fn rows() -> RowCounts {
    vec![("nasem_2021", 27), ("ration_by_hand", 26)]
}

pub fn food(inputs: &Inputs) -> Result<TypicalFood, String> {
    Ok(match inputs.text("food")? {
        "beet_pulp" => TypicalFood::BeetPulp,
        "beet_pulp_molassed" => TypicalFood::BeetPulpMolassed,
        "soya_hulls" => TypicalFood::SoyaHulls,
        "lucerne_chaff" => TypicalFood::LucerneChaff,
        "lucerne_pellets" => TypicalFood::LucernePellets,
        "wheat_bran" => TypicalFood::WheatBran,
        "oats" => TypicalFood::Oats,
        "salt" => TypicalFood::Salt,
        "copper_sulphate" => TypicalFood::CopperSulphate,
        "zinc_sulphate" => TypicalFood::ZincSulphate,
        _ => return Err(inputs.unknown("food")),
    })
}

/// A number of the catalogue on dry matter.
fn content(inputs: &Inputs) -> Result<f64, String> {
    let content =
        Content::from_key(inputs.text("content")?).ok_or_else(|| inputs.unknown("content"))?;
    food(inputs)?
        .number(content)
        .map(|stated| stated.value)
        .ok_or_else(|| "not known".to_owned())
}

fn refused(error: impl std::fmt::Debug) -> String {
    format!("{error:?}")
}

/// The needs of a grown horse at rest.
fn at_rest(weight: BodyMass) -> Result<Needs, String> {
    let whose = NeedFor {
        kind: Kind::Horse,
        stage: Stage::Adult,
        work: Workload::Maintenance(Temperament::Average),
        current: weight,
        target: Some(weight),
    };
    needs(&whose).map(|(needs, _)| needs).map_err(refused)
}

fn held(ration: &Ration<'_>, kg: f64, risk: RiskLevel) -> Result<Whole, String> {
    let weight = BodyMass::kg(kg);
    let needs = at_rest(weight)?;
    let against = Against {
        kind: Kind::Horse,
        state: State::Adult,
        weight: Ends::exactly(weight),
        teeth: Teeth::Good,
        risk,
        needs: &needs,
    };
    whole(ration, &against).map_err(refused)
}

fn of_label(per_kg: Vec<(Nutrient, f64)>) -> FoodLabel {
    FoodLabel {
        id: None,
        name: String::new(),
        class: FoodClass::Other,
        dry_percent: None,
        per_kg,
        energy_mcal_per_kg: None,
        fibre_percent: None,
        dha_percent: None,
        sugar_starch_percent: None,
        starch_percent: None,
        rate_g_per_kg: None,
        record: None,
    }
}

/// A ration of feeds whose energy and protein are given as fed.
fn by_hand(inputs: &Inputs) -> Result<Whole, String> {
    let feed = |name: &str| {
        let kg = inputs.number(&format!("{name}_kg"))?;
        let protein = inputs.number(&format!("{name}_protein"))?;
        let mut label = of_label(vec![(Nutrient::CrudeProtein, protein * 10.0)]);
        label.energy_mcal_per_kg = Some(inputs.number(&format!("{name}_mcal"))?);
        Ok::<_, String>((AsFed::kg(kg), Food::read(label).map_err(refused)?))
    };
    let foods = ["hay", "oil", "lucerne", "grain"]
        .into_iter()
        .map(feed)
        .collect::<Result<Vec<_>, _>>()?;
    let ration = Ration {
        forage: Vec::new(),
        grass: DryMatter::ZERO,
        buckets: vec![Bucket {
            foods: foods.iter().map(|(fed, food)| (*fed, food)).collect(),
        }],
    };
    held(&ration, 500.0, RiskLevel::Clear)
}

/// A content of a label in the nutrient's own unit in a kilogram as fed.
fn label(inputs: &Inputs) -> Result<f64, String> {
    let content =
        Content::from_key(inputs.text("content")?).ok_or_else(|| inputs.unknown("content"))?;
    let unit = LabelUnit::from_word(inputs.text("unit")?).ok_or_else(|| inputs.unknown("unit"))?;
    let basis = match inputs.optional_text("basis") {
        None | Some("as_fed") => LabelBasis::AsFed,
        Some("dry_matter") => LabelBasis::DryMatter,
        Some(_) => return Err(inputs.unknown("basis")),
    };
    let raw = RawLabel {
        id: None,
        name: String::new(),
        class: FoodClass::Balancer,
        basis,
        dry_percent: inputs.optional_number("dry")?,
        serving_g: inputs.optional_number("serving_g")?,
        rate_g_per_kg: inputs.optional_number("rate")?,
        lines: vec![LabelLine {
            content,
            value: inputs.number("value")?,
            unit,
        }],
        record: None,
    };
    let (read, findings) = check_label(&raw);
    let value = match content {
        Content::Energy => read.energy_mcal_per_kg,
        Content::SugarStarch => read.sugar_starch_percent,
        Content::Of(nutrient) => read
            .per_kg
            .iter()
            .find(|(of, _)| *of == nutrient)
            .map(|(_, value)| *value),
        _ => return Err(inputs.unknown("content")),
    };
    match (value, findings.as_slice()) {
        (Some(value), []) => Ok(value),
        _ => Err(refused(findings)),
    }
}

/// Hay alone, tested for its sugar.
fn of_hay(inputs: &Inputs) -> Result<Whole, String> {
    let raw = RawReport {
        values: vec![
            (Analyte::Wsc, inputs.number("wsc")?),
            (Analyte::Starch, inputs.number("starch")?),
        ],
        ..RawReport::empty(Basis::DryMatter)
    };
    let mut lot = Lot::of_class(LotId("a".into()), "Hay", ForageClass::Grass);
    lot.reports.push(LabReport::read(raw).map_err(refused)?.0);
    let supply = supply(&lot, Fed::Dry);
    let sugar = estimate(&lot, Fed::Dry);
    let ration = Ration {
        forage: vec![Forage {
            fed: AsFed::kg(inputs.number("kg")?),
            dry: DryFraction::percent(inputs.number("dry")?).map_err(refused)?,
            class: ForageClass::Grass,
            supply: &supply,
            sugar: Some(&sugar),
        }],
        ..Ration::default()
    };
    held(&ration, 500.0, RiskLevel::AtRisk)
}

/// One bucket of one feed with so much sugar and starch, or starch, as fed.
fn one_bucket(inputs: &Inputs, risk: RiskLevel) -> Result<Whole, String> {
    let mut label = of_label(Vec::new());
    label.sugar_starch_percent = inputs.optional_number("sugar_starch")?;
    label.starch_percent = inputs.optional_number("starch")?;
    let food = Food::read(label).map_err(refused)?;
    let ration = Ration {
        forage: Vec::new(),
        grass: DryMatter::ZERO,
        buckets: vec![Bucket {
            foods: vec![(AsFed::kg(inputs.number("kg")?), &food)],
        }],
    };
    held(&ration, inputs.number("weight")?, risk)
}

fn bucket_over(inputs: &Inputs) -> Result<f64, String> {
    match one_bucket(inputs, RiskLevel::Proven)?.buckets.as_slice() {
        [MealVerdict::Within] => Ok(0.0),
        [MealVerdict::Over { .. }] => Ok(1.0),
        _ => Err("not known".to_owned()),
    }
}

fn day_starch(inputs: &Inputs) -> Result<f64, String> {
    match one_bucket(inputs, RiskLevel::Clear)?.day_starch {
        DayStarch::Within { holds } | DayStarch::Over { holds, .. } => Ok(holds.to_g()),
        DayStarch::ByMeal | DayStarch::NotKnown => Err("not known".to_owned()),
    }
}

/// Grass hay and lucerne hay of their classes, by dry matter.
fn mixed(inputs: &Inputs) -> Result<Whole, String> {
    let hay = |class| supply(&Lot::of_class(LotId("a".into()), "Hay", class), Fed::Dry);
    let (grass, lucerne) = (hay(ForageClass::TimothyOrchard), hay(ForageClass::Lucerne));
    let dry = DryFraction::percent(100.0).map_err(refused)?;
    let forage = |fed, class, supply| Forage {
        fed: AsFed::kg(fed),
        dry,
        class,
        supply,
        sugar: None,
    };
    let ration = Ration {
        forage: vec![
            forage(inputs.number("grass")?, ForageClass::TimothyOrchard, &grass),
            forage(inputs.number("lucerne")?, ForageClass::Lucerne, &lucerne),
        ],
        ..Ration::default()
    };
    held(&ration, 500.0, RiskLevel::AtRisk)
}

fn calcium_to_phosphorus(inputs: &Inputs) -> Result<f64, String> {
    match mixed(inputs)?.calcium_to_phosphorus {
        RatioVerdict::Usual { ratio } | RatioVerdict::Wide { ratio } => Ok(ratio),
        other => Err(refused(other)),
    }
}

fn lucerne_percent(inputs: &Inputs) -> Result<f64, String> {
    use tussock_core::limits::CapVerdict;
    match mixed(inputs)?.forage.lucerne {
        CapVerdict::Within { part }
        | CapVerdict::Watch { part }
        | CapVerdict::Over { part, .. } => Ok(part.to_percent()),
        CapVerdict::NotKnown => Err("not known".to_owned()),
    }
}
