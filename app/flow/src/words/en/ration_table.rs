//! The table of a balance, in English.

use super::English;
use super::numbers::percent_above_nothing;
use crate::views::balance::{EnergyLine, NutrientRow};
use crate::words::{BalanceWords, LimitsWords, SourceWords};
use tussock_core::limits::{Amount, Nutrient, NutrientUnit, UpperContent};
use tussock_core::ration::FedContent;
use tussock_core::sources::{Provenance, Source};
use tussock_core::units::NutrientMass;

/// Of a share in a kilogram.
const GRAMS: f64 = 1000.0;

/// A nutrient as a row.
pub(super) fn nutrient(words: &English, row: &NutrientRow) -> Vec<String> {
    let nutrient = row.nutrient;
    let of_kg = |part: f64| match nutrient.unit() {
        NutrientUnit::InternationalUnit => None,
        NutrientUnit::Gram | NutrientUnit::Milligram => {
            Some(Amount::Mass(NutrientMass::g(part * GRAMS)))
        }
    };
    let in_fed = row.in_fed.and_then(|content| match content {
        FedContent::Share(share) => of_kg(share.to_fraction()),
        FedContent::IuPerKg(units) => Some(nutrient.amount(units)),
    });
    let in_dry = row.in_dry.and_then(|content| match content {
        UpperContent::Share(share) => of_kg(share.to_fraction()),
        UpperContent::IuPerKg(units) => Some(nutrient.amount(units)),
    });
    let least = 0.0 < row.is.unknown;
    vec![
        words.nutrient(nutrient).to_owned(),
        words.row_has(row),
        words.row_needs(row),
        words.row_ceiling(row),
        in_a_kg(words, nutrient, in_fed, least),
        in_a_kg(words, nutrient, in_dry, least),
        not_known_in(row.is.unknown),
        marks(words, &row.from),
    ]
}

/// Energy as a row.
pub(super) fn energy(words: &English, line: &EnergyLine) -> Vec<String> {
    vec![
        words.energy_name().to_owned(),
        words.energy_has(line),
        words.energy_needs(line),
        words.energy_ceiling().to_owned(),
        "not reckoned".to_owned(),
        "not reckoned".to_owned(),
        not_known_in(line.unknown),
        marks(words, &line.from),
    ]
}

fn in_a_kg(words: &English, nutrient: Nutrient, amount: Option<Amount>, least: bool) -> String {
    amount.map_or_else(
        || "not known".to_owned(),
        |amount| {
            let least = if least { "at least " } else { "" };
            format!("{least}{} a kg", words.amount(nutrient, amount))
        },
    )
}

fn not_known_in(unknown: f64) -> String {
    if 0.0 < unknown {
        percent_above_nothing(unknown)
    } else {
        "none of it".to_owned()
    }
}

/// How far the figures can be trusted: every mark behind them, each once.
fn marks(words: &English, from: &Provenance) -> String {
    let constants = tussock_core::constants();
    let mut marks: Vec<&'static str> = Vec::new();
    for source in from.sources() {
        let mark = match source {
            Source::Constant(id) => constants
                .iter()
                .find(|constant| constant.id == *id)
                .map(|constant| words.mark(constant.mark)),
            Source::Record(_) => Some("your records"),
            Source::Default(_) => Some("a default"),
        };
        if let Some(mark) = mark.filter(|mark| !marks.contains(mark)) {
            marks.push(mark);
        }
    }
    marks.join(", ")
}
