//! What can be reckoned from a label, and what cannot be.

use super::super::class::FoodClass;
use super::super::content::Content;
use super::super::food::FoodLabel;
use super::super::published::{BELIEVED, ENERGY, LABEL_SERVING, PARTS_WHOLE, RATE};
use super::{LabelBasis, LabelField, LabelFinding, LabelLine, LabelUnit, Measure, RawLabel};
use crate::limits::{Nutrient, NutrientUnit};
use crate::units::{Bounds, DryFraction, Energy};
use std::collections::BTreeMap;

/// The dry matter, serving and rate that the lines are reckoned with, once checked.
struct Reckoning {
    dry: Option<DryFraction>,
    basis: LabelBasis,
    serving_kg: Option<f64>,
    /// Kilograms of feed for 100 kg of body weight.
    rate_kg: Option<f64>,
}

/// What a number of a unit is in a kilogram as fed: grams, international units or Mcal.
enum Factor {
    /// Multiply by it.
    By(f64),
    /// The unit is of the other sort.
    OtherSort,
    /// Something is missing.
    Lacks(LabelField),
}

/// What a content is counted in, in a kilogram as fed.
#[derive(PartialEq)]
enum Sort {
    Mass,
    Units,
    Energy,
}

const fn sort(content: Content) -> Sort {
    match content {
        Content::Energy => Sort::Energy,
        Content::Of(nutrient) => match nutrient.unit() {
            NutrientUnit::Gram | NutrientUnit::Milligram => Sort::Mass,
            NutrientUnit::InternationalUnit => Sort::Units,
        },
        Content::DryMatter
        | Content::NeutralFibre
        | Content::SugarStarch
        | Content::Starch
        | Content::Dha => Sort::Mass,
    }
}

impl Reckoning {
    /// What turns a number of a unit into grams, units or Mcal in a kilogram as fed.
    fn factor(&self, content: Content, unit: LabelUnit) -> Factor {
        let counted = |measure: Measure| match (sort(content), measure.grams()) {
            (Sort::Mass, Some(grams)) => Some(grams),
            (Sort::Units, None) => Some(1.0),
            _ => None,
        };
        let own = match (unit, sort(content)) {
            // A percent is ten grams in a kilogram.
            (LabelUnit::Percent, Sort::Mass) => Some(10.0),
            (LabelUnit::McalPerKg, Sort::Energy) => Some(1.0),
            (LabelUnit::MjPerKg, Sort::Energy) => Some(Energy::mj(1.0).to_mcal()),
            (
                LabelUnit::PerKg(measure)
                | LabelUnit::PerServing(measure)
                | LabelUnit::Per100KgBody(measure),
                _,
            ) => counted(measure),
            _ => None,
        };
        let Some(own) = own else {
            return Factor::OtherSort;
        };
        let part = if unit.is_content() {
            match (self.basis, self.dry) {
                (LabelBasis::AsFed, _) => Ok(1.0),
                (LabelBasis::DryMatter, Some(dry)) => Ok(dry.to_fraction()),
                (LabelBasis::DryMatter, None) => Err(LabelField::DryMatter),
            }
        } else if matches!(unit, LabelUnit::PerServing(_)) {
            self.serving_kg
                .map(|kg| 1.0 / kg)
                .ok_or(LabelField::Serving)
        } else {
            self.rate_kg.map(|kg| 1.0 / kg).ok_or(LabelField::Rate)
        };
        match part {
            Ok(part) => Factor::By(own * part),
            Err(field) => Factor::Lacks(field),
        }
    }
}

/// What is possible of a content in a kilogram as fed: grams, Mcal; `None` where nothing bounds it.
fn possible(content: Content) -> Option<[f64; 2]> {
    match sort(content) {
        Sort::Mass => Some([0.0, 1000.0]),
        Sort::Energy => Some([ENERGY.min, ENERGY.max]),
        Sort::Units => None,
    }
}

/// What such a food usually holds of a nutrient in a kilogram as fed: grams or international units. A single substance
/// may be all of it, and what a person did not class is not judged.
fn usual(content: Content, class: FoodClass) -> Option<[f64; 2]> {
    let Content::Of(nutrient) = content else {
        return None;
    };
    let believed = BELIEVED.value.iter().find(|row| row.nutrient == nutrient)?;
    let most = match class {
        FoodClass::Source | FoodClass::Other => return None,
        FoodClass::MineralMix => believed.mix,
        FoodClass::Balancer => believed.balancer,
        FoodClass::Legume
        | FoodClass::Fibre
        | FoodClass::Cereal
        | FoodClass::Protein
        | FoodClass::Fat
        | FoodClass::Compound => believed.feed,
    };
    let scale = match nutrient.unit() {
        NutrientUnit::Milligram => 1.0 / 1000.0,
        NutrientUnit::Gram | NutrientUnit::InternationalUnit => 1.0,
    };
    Some([believed.least * scale, most * scale])
}

/// Reads a label: what could be brought to a kilogram as fed, and what was found.
pub fn check_label(raw: &RawLabel) -> (FoodLabel, Vec<LabelFinding>) {
    let mut findings = Vec::new();
    let mut field = |field, value: Option<f64>, bounds: Bounds| {
        let value = value?;
        if bounds.check(value).is_err() {
            findings.push(LabelFinding::Field {
                field,
                value,
                allowed: [bounds.min, bounds.max],
            });
            return None;
        }
        Some(value)
    };
    let dry_percent = field(LabelField::DryMatter, raw.dry_percent, DryFraction::BOUNDS);
    let serving = field(LabelField::Serving, raw.serving_g, *LABEL_SERVING);
    let rate = field(LabelField::Rate, raw.rate_g_per_kg, *RATE);
    let with = Reckoning {
        dry: dry_percent.and_then(|percent| DryFraction::percent(percent).ok()),
        basis: raw.basis,
        serving_kg: serving.map(|g| g / 1000.0),
        // Grams a kilogram are a tenth of kilograms for 100 kg.
        rate_kg: rate.map(|g| g / 10.0),
    };
    let mut read = BTreeMap::new();
    for line in &raw.lines {
        if let Some(value) = read_line(line, raw.class, &with, &mut findings) {
            let before = *read.entry(line.content).or_insert(value);
            if (before - value).abs() > f64::EPSILON * before.abs() {
                findings.push(LabelFinding::GivenTwice {
                    content: line.content,
                });
            }
        }
    }
    findings.extend(contradictions(&read, dry_percent));
    (label(raw, dry_percent, rate, &read), findings)
}

/// One line in grams, units or Mcal in a kilogram as fed; `None` when it is left out.
fn read_line(
    line: &LabelLine,
    class: FoodClass,
    with: &Reckoning,
    findings: &mut Vec<LabelFinding>,
) -> Option<f64> {
    let LabelLine {
        content,
        value,
        unit,
    } = *line;
    let by = match with.factor(content, unit) {
        Factor::By(by) => by,
        Factor::OtherSort => {
            findings.push(LabelFinding::UnitOfOtherSort { content, unit });
            return None;
        }
        Factor::Lacks(field) => {
            findings.push(LabelFinding::Needs {
                content,
                unit,
                field,
            });
            return None;
        }
    };
    let in_kg = value * by;
    let inside = |[least, most]: [f64; 2], in_kg: f64| least <= in_kg && in_kg <= most;
    let typed = |[least, most]: [f64; 2]| [least / by, most / by];
    let can_be = possible(content).unwrap_or([0.0, f64::MAX]);
    let range = usual(content, class);
    let likely = || {
        let wanted = range.unwrap_or(can_be);
        swapped(unit)
            .into_iter()
            .find(|other| match with.factor(content, *other) {
                Factor::By(by) => inside(wanted, value * by),
                Factor::OtherSort | Factor::Lacks(_) => false,
            })
    };
    if !in_kg.is_finite() || !inside(can_be, in_kg) {
        findings.push(LabelFinding::Impossible {
            content,
            value,
            unit,
            allowed: typed(can_be),
            likely: likely(),
        });
        return None;
    }
    if let Some(range) = range
        && in_kg > 0.0
        && !inside(range, in_kg)
    {
        findings.push(LabelFinding::Unlikely {
            content,
            value,
            unit,
            allowed: typed(range),
            likely: likely(),
        });
    }
    Some(in_kg)
}

/// The units with which one is mistaken, the likeliest first: the same amount counted in another measure, and energy in
/// megajoules.
fn swapped(unit: LabelUnit) -> Vec<LabelUnit> {
    let masses = [Measure::Milligram, Measure::Gram, Measure::Microgram];
    let others: Vec<LabelUnit> = match unit {
        LabelUnit::Percent | LabelUnit::PerKg(_) => masses
            .into_iter()
            .map(LabelUnit::PerKg)
            .chain([LabelUnit::Percent])
            .collect(),
        LabelUnit::PerServing(_) => masses.into_iter().map(LabelUnit::PerServing).collect(),
        LabelUnit::Per100KgBody(_) => masses.into_iter().map(LabelUnit::Per100KgBody).collect(),
        LabelUnit::McalPerKg => vec![LabelUnit::MjPerKg],
        LabelUnit::MjPerKg => Vec::new(),
    };
    others.into_iter().filter(|other| *other != unit).collect()
}

/// Parts that are more than their whole.
fn contradictions(read: &BTreeMap<Content, f64>, dry_percent: Option<f64>) -> Vec<LabelFinding> {
    // Ten grams in a kilogram are a percent.
    let percent = |content| read.get(&content).map(|grams| grams / 10.0);
    let protein = Content::Of(Nutrient::CrudeProtein);
    let pairs = [
        (Content::Starch, Content::SugarStarch),
        (Content::Of(Nutrient::Lysine), protein),
    ];
    let mut findings: Vec<LabelFinding> = pairs
        .into_iter()
        .filter_map(|(part, whole)| {
            let (value, most) = (percent(part)?, percent(whole)?);
            (value > most).then_some(LabelFinding::PartOverWhole {
                part,
                value,
                whole,
                most,
            })
        })
        .collect();
    let sum: f64 = [protein, Content::NeutralFibre, Content::SugarStarch]
        .into_iter()
        .filter_map(percent)
        .sum();
    let most = dry_percent.unwrap_or(100.0) + *PARTS_WHOLE;
    if sum > most {
        findings.push(LabelFinding::PartsOverWhole { sum, most });
    }
    findings
}

/// The label with every content in a kilogram as fed, in its own unit.
fn label(
    raw: &RawLabel,
    dry_percent: Option<f64>,
    rate: Option<f64>,
    read: &BTreeMap<Content, f64>,
) -> FoodLabel {
    let percent = |content| read.get(&content).map(|grams| grams / 10.0);
    let per_kg = Nutrient::ALL
        .into_iter()
        .filter_map(|nutrient| {
            let value = *read.get(&Content::Of(nutrient))?;
            Some((
                nutrient,
                match nutrient.unit() {
                    NutrientUnit::Milligram => value * 1000.0,
                    NutrientUnit::Gram | NutrientUnit::InternationalUnit => value,
                },
            ))
        })
        .collect();
    FoodLabel {
        id: raw.id.clone(),
        name: raw.name.clone(),
        class: raw.class,
        dry_percent: dry_percent.or_else(|| percent(Content::DryMatter)),
        per_kg,
        energy_mcal_per_kg: read.get(&Content::Energy).copied(),
        fibre_percent: percent(Content::NeutralFibre),
        dha_percent: percent(Content::Dha),
        sugar_starch_percent: percent(Content::SugarStarch),
        starch_percent: percent(Content::Starch),
        rate_g_per_kg: rate,
        record: raw.record.clone(),
    }
}
