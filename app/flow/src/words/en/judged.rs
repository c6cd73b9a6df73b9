//! What else a ration is judged by, in English.

use super::English;
use crate::views::balance::Judged;
use crate::words::{ForageWords, LimitsWords, RationWords, Said, UnitWords};
use tussock_core::limits::{Nutrient, UpperVerdict};
use tussock_core::ration::SugarRow;

/// Its name.
pub(super) const fn name(judged: &Judged) -> &'static str {
    match judged {
        Judged::Forage { .. } => "Forage",
        Judged::Sugar { .. } => "Sugar and starch of the day",
        Judged::Buckets { .. } => "Each bucket",
        Judged::DayStarch(_) => "Starch of the buckets",
        Judged::CalciumToPhosphorus(_) => "Calcium to phosphorus",
        Judged::ZincToCopper(_) => "Zinc to copper",
        Judged::IronToCopper(_) => "Iron to copper",
        Judged::AddedSelenium(_) => "Added selenium",
        Judged::Lucerne { .. } => "Lucerne",
        Judged::Straw(_) => "Straw",
        Judged::Fibre { .. } => "Fibre (NDF)",
    }
}

/// How it stands.
pub(super) fn stands(words: &English, judged: &Judged) -> Said {
    match judged {
        Judged::Forage { verdict, of_dry } => {
            let said = words.forage_verdict(*verdict);
            match of_dry {
                Some(part) => {
                    let share = format!("{} of all dry matter is forage.", words.percent(*part));
                    let why = said.why.map_or_else(String::new, |why| format!(" {why}"));
                    Said::because(said.sentence, format!("{share}{why}"))
                }
                None => said,
            }
        }
        Judged::Sugar { row, limited: true } if row.judged.is_none() => {
            Said::plain("not known: nobody knows the sugar of what it eats")
        }
        Judged::Sugar { row, .. } => sugar_of_day(words, row),
        Judged::Buckets { count, verdict } => {
            let of = if *count == 1 {
                String::new()
            } else {
                format!(", in {count} buckets")
            };
            Said::plain(format!("{}{of}", words.meal_verdict(*verdict)))
        }
        Judged::DayStarch(verdict) => Said::plain(words.day_starch(*verdict)),
        Judged::CalciumToPhosphorus(verdict)
        | Judged::ZincToCopper(verdict)
        | Judged::IronToCopper(verdict) => Said::plain(words.ratio_verdict(*verdict)),
        Judged::AddedSelenium(UpperVerdict::NotKnown) => {
            Said::plain("not known: a label does not say its selenium")
        }
        Judged::AddedSelenium(verdict) => {
            Said::plain(words.upper_verdict(Nutrient::Selenium, *verdict))
        }
        Judged::Lucerne { verdict, mixed } => {
            let said = words.cap_verdict(*verdict);
            if *mixed {
                Said::because(
                    said,
                    "Some of the hay is grass and legume mixed: it may be more.",
                )
            } else {
                Said::plain(said)
            }
        }
        Judged::Straw(verdict) => Said::plain(words.cap_verdict(*verdict)),
        Judged::Fibre { fibre, unknown } => match fibre {
            None => Said::plain("not known"),
            Some(share) => {
                let share = words.share(*share);
                Said::plain(English::not_known_of(*unknown).map_or_else(
                    || format!("{share} of dry matter"),
                    |not| format!("at least {share} of dry matter, {not}"),
                ))
            }
        },
    }
}

fn sugar_of_day(words: &English, row: &SugarRow) -> Said {
    let known = words.nutrient_mass(row.known);
    let held = English::not_known_of(row.unknown).map_or_else(
        || format!("About {known} a day."),
        |not| format!("At least {known} a day, {not}."),
    );
    match &row.judged {
        None => Said::plain(held.trim_end_matches('.')),
        Some(judged) => {
            let limit = words.share(judged.limit);
            let mean = judged.belief.map_or_else(String::new, |belief| {
                let share = words.share_beside(belief.mean, judged.limit);
                format!("About {share} of all dry matter, limit {limit}. ")
            });
            let doubts: Vec<String> = judged
                .doubts
                .iter()
                .map(|doubt| format!("{}.", words.doubt(*doubt)))
                .collect();
            let why = format!("{mean}{held} {}", doubts.join(" "));
            Said::because(words.verdict(judged.verdict), why.trim_end())
        }
    }
}
