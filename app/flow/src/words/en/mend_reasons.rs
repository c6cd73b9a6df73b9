//! What decides a mend, what it misses, and why it failed, in English.

use super::English;
use super::fields::capital;
use super::numbers::{sized, up_to};
use crate::views::mend::MendView;
use crate::words::{LimitsWords, MendReasonWords, MendWords, UnitWords};
use tussock_core::limits::{Nutrient, NutrientUnit};
use tussock_core::ration::mend::{Aim, Closest, Decides, Limit, MendedBy, Missed};
use tussock_core::ration::solve::{Residual, SolveError};

const fn unit_of(nutrient: Nutrient) -> &'static str {
    match nutrient.unit() {
        NutrientUnit::Gram => "g",
        NutrientUnit::Milligram => "mg",
        NutrientUnit::InternationalUnit => "IU",
    }
}

/// The unit of a limit, and how much of it is spoken of at a time.
const fn spoken(limit: Limit) -> (&'static str, f64) {
    match limit {
        Limit::Need(nutrient) | Limit::Ceiling(nutrient) => match nutrient.unit() {
            NutrientUnit::Gram => (unit_of(nutrient), 1.0),
            NutrientUnit::Milligram => (unit_of(nutrient), 10.0),
            NutrientUnit::InternationalUnit => (unit_of(nutrient), 100.0),
        },
        Limit::Energy => ("Mcal", 1.0),
        Limit::DryMatter
        | Limit::Forage
        | Limit::PartOf(_)
        | Limit::Straw
        | Limit::StrawAtLeast
        | Limit::Lucerne => ("kg of dry matter", 1.0),
        Limit::AddedSelenium | Limit::ZincOverCopper | Limit::ZincNotFarOver => ("mg", 1.0),
        Limit::VitaminEByBody => ("IU", 100.0),
        Limit::CalciumOverPhosphorus
        | Limit::CalciumNotFarOver
        | Limit::BucketSugar
        | Limit::BucketStarch
        | Limit::Sugar => ("g", 1.0),
    }
}

impl MendReasonWords for English {
    fn why_so(&self) -> &'static str {
        "What decides it"
    }

    fn decides(&self, view: &MendView, decides: &Decides) -> [String; 2] {
        let (unit, times) = spoken(decides.limit);
        let by = decides.price * times;
        let costs = match (view.aim, view.now.currency()) {
            (Aim::Cheapest, Some(currency)) => self.small_cost(by, currency),
            (Aim::Cheapest, None) => return [self.limit(decides.limit), String::new()],
            (Aim::FewestFoods | Aim::Lightest, _) => format!("{} g of food", sized(by * 1000.0)),
        };
        let more = if decides.at_least { "more" } else { "less" };
        [
            self.limit(decides.limit),
            format!("each {} {unit} {more} costs {costs} a day", sized(times)),
        ]
    }

    fn nothing_decides(&self) -> &'static str {
        "No limit is near: the dry matter alone decides how much hay there is."
    }

    fn limit(&self, limit: Limit) -> String {
        match limit {
            Limit::DryMatter => "Dry matter of the day".to_owned(),
            Limit::Forage => "Forage, at least".to_owned(),
            Limit::PartOf(_) => "The parts of the hays".to_owned(),
            Limit::Energy => "Energy".to_owned(),
            Limit::Need(nutrient) => capital(self.nutrient(nutrient)),
            Limit::Ceiling(nutrient) => format!("{}, at most", capital(self.nutrient(nutrient))),
            Limit::AddedSelenium => "Selenium that is added, at most".to_owned(),
            Limit::VitaminEByBody => "Vitamin E by body weight, at most".to_owned(),
            Limit::CalciumOverPhosphorus => "Calcium not under phosphorus".to_owned(),
            Limit::CalciumNotFarOver => "Calcium to phosphorus, at most".to_owned(),
            Limit::ZincOverCopper => "Zinc to copper, at least".to_owned(),
            Limit::ZincNotFarOver => "Zinc to copper, at most".to_owned(),
            Limit::Straw => "Straw, at most".to_owned(),
            Limit::StrawAtLeast => "Straw, at least".to_owned(),
            Limit::Lucerne => "Lucerne, at most".to_owned(),
            Limit::BucketSugar => "Sugar and starch of the buckets".to_owned(),
            Limit::BucketStarch => "Starch of the buckets".to_owned(),
            Limit::Sugar => "Sugar of the day".to_owned(),
        }
    }

    fn would_pay(&self, view: &MendView, food: usize, under: f64) -> Option<[String; 2]> {
        let candidate = view.candidate(food)?;
        let price = candidate.of.price?;
        // At less than the smallest coin nobody sells it.
        if under < 1.0 {
            return None;
        }
        Some([
            self.candidate_name(candidate),
            format!(
                "would pay under {} a kg; it costs {}",
                self.minor_of(under, price.currency),
                self.minor_of(price.minor, price.currency)
            ),
        ])
    }

    fn what_is_missed(&self) -> &'static str {
        "What would still be missed"
    }

    fn missed(&self, missed: &Missed) -> [String; 2] {
        let (unit, _) = spoken(missed.limit);
        let by = sized(missed.by);
        let word = if missed.over { "over by" } else { "short by" };
        [self.limit(missed.limit), format!("{word} {by} {unit}")]
    }

    fn would_mend(&self) -> &'static str {
        "What alone would mend it"
    }

    fn mended_by(&self, view: &MendView, by: &MendedBy) -> String {
        let name = |food: usize| {
            view.candidate(food)
                .map_or_else(String::new, |one| self.candidate_name(one))
        };
        match *by {
            MendedBy::Food { food, to } => {
                format!("{}: {} a day", name(food), self.bucket(to))
            }
            MendedBy::LessFood { food, to } => {
                format!("{}: at most {} a day", name(food), self.bucket(to))
            }
            MendedBy::DryMatter { to } => {
                format!(
                    "{} kg of dry matter a day in all, if the limits of the animal allow it",
                    up_to(to, 1)
                )
            }
            MendedBy::MoreFoods { to } => {
                format!("{} instead", self.count(to, "bought food", "bought foods"))
            }
        }
    }

    fn nothing_alone_mends(&self, closest: &Closest) -> &'static str {
        if closest.missed.is_empty() {
            "Look at what is set by hand."
        } else {
            "No single food does. Offer typical foods too, or take out what is set by hand."
        }
    }

    fn solve_error(&self, error: &SolveError) -> String {
        match error {
            SolveError::OutOfRange { name, error } => {
                let of = name.as_deref().unwrap_or("the ration");
                format!("A number of {of} cannot be: {}", self.out_of_range(error))
            }
            SolveError::Crossed { name, lower, upper } => format!(
                "The least of {name} ({}) is more than its most ({})",
                sized(*lower),
                sized(*upper)
            ),
            SolveError::NoWholeDose {
                name,
                dose,
                lower,
                upper,
            } => format!(
                "No whole number of doses of {} of {name} lies between {} and {}",
                sized(*dose),
                sized(*lower),
                sized(*upper)
            ),
            SolveError::Shape {
                name,
                given,
                columns,
            } => format!("{name} has {given} numbers for {columns} foods"),
            SolveError::NotCertified { residual, .. } => {
                let what = match residual {
                    Residual::Rows => "its limits",
                    Residual::Prices => "its prices",
                    Residual::Gap => "its cost",
                    Residual::Proof => "its proof",
                };
                format!("The answer did not hold against {what} and is not shown")
            }
            SolveError::NotSettled { .. } => {
                "No end was reached in the steps that are allowed".to_owned()
            }
        }
    }
}
