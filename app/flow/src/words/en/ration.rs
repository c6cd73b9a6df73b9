//! The ration and its balance.

use super::English;
use super::fields::small;
use super::numbers::sized;
use crate::words::{LimitsWords, RationWords, Said, UnitWords};
use tussock_core::limits::{Amount, Nutrient};
use tussock_core::ration::{Content, Dose, FoodClass, Line, RationError, Standing, TypicalFood};

impl RationWords for English {
    fn standing_word(&self, standing: &Standing) -> &'static str {
        match standing {
            Standing::Within => "within",
            Standing::Short { .. } => "short",
            Standing::Over { .. } => "over",
            Standing::NotKnown => "not known",
        }
    }

    fn standing(&self, line: &Line) -> String {
        match line.standing {
            Standing::Within => "within".to_owned(),
            Standing::Short { by } => self.short_by(line.nutrient, by),
            Standing::Over { most } => line.supplied.map_or_else(
                || format!("over {}", self.amount(line.nutrient, most)),
                |supplied| {
                    format!(
                        "over: {}, at most {}",
                        self.amount_beside(line.nutrient, supplied, most),
                        self.amount(line.nutrient, most)
                    )
                },
            ),
            Standing::NotKnown => "not known".to_owned(),
        }
    }

    fn short_by(&self, nutrient: Nutrient, by: Amount) -> String {
        format!("short by {}", self.amount(nutrient, by))
    }

    fn dose(&self, dose: &Dose) -> Said {
        let a_day = self.bucket(dose.a_day);
        let sentence = match dose.feeds {
            Some(1) => format!("{a_day} a day in 1 feed"),
            Some(feeds) => format!("{a_day} a day in {feeds} feeds"),
            None => format!("{a_day} a day: ask what sugar and starch it holds before it is fed"),
        };
        let decided = dose.decided_by.map_or_else(
            || "The rate of the label decides the amount.".to_owned(),
            |nutrient| {
                format!(
                    "{} decides the amount.",
                    super::fields::capital(self.nutrient(nutrient))
                )
            },
        );
        let short = if dose.stays_short.is_empty() {
            String::new()
        } else {
            format!(" Still short: {}.", self.nutrients(&dose.stays_short))
        };
        Said::because(sentence, format!("{decided}{short}"))
    }

    fn typical_food(&self, food: TypicalFood) -> &'static str {
        match food {
            TypicalFood::BeetPulp => "Beet pulp without molasses",
            TypicalFood::BeetPulpMolassed => "Beet pulp with molasses",
            TypicalFood::SoyaHulls => "Soya hulls",
            TypicalFood::LucerneChaff => "Lucerne chaff",
            TypicalFood::LucernePellets => "Lucerne pellets",
            TypicalFood::WheatBran => "Wheat bran",
            TypicalFood::Oats => "Oats",
            TypicalFood::Linseed => "Linseed, cooked",
            TypicalFood::SoybeanMeal => "Soybean meal",
            TypicalFood::Oil => "Vegetable oil",
            TypicalFood::Salt => "Salt",
            TypicalFood::Limestone => "Limestone",
            TypicalFood::DicalciumPhosphate => "Dicalcium phosphate",
            TypicalFood::MagnesiumOxide => "Magnesium oxide",
            TypicalFood::CopperSulphate => "Copper sulphate",
            TypicalFood::ZincSulphate => "Zinc sulphate",
            TypicalFood::VitaminE => "Vitamin E powder",
            TypicalFood::SeleniumYeast => "Selenium yeast",
            TypicalFood::DhaSource => "Dried algae with DHA",
            TypicalFood::LiveYeast => "Live yeast",
            TypicalFood::Balancer => "Typical balancer",
            TypicalFood::LowSugarFeed => "Typical fibre feed low in sugar",
        }
    }

    fn food_class(&self, class: FoodClass) -> &'static str {
        match class {
            FoodClass::Legume => "Lucerne",
            FoodClass::Fibre => "Fibre in a bucket",
            FoodClass::Cereal => "Cereals",
            FoodClass::Protein => "Protein",
            FoodClass::Fat => "Oil and fat",
            FoodClass::Balancer => "Balancer",
            FoodClass::MineralMix => "Minerals and vitamins",
            FoodClass::Source => "Single mineral or vitamin",
            FoodClass::Compound => "Compound feed",
            FoodClass::Other => "Other",
        }
    }

    fn content(&self, content: Content) -> &'static str {
        match content {
            Content::DryMatter => "Dry matter",
            Content::Energy => "Digestible energy",
            Content::NeutralFibre => "Fibre (NDF)",
            Content::SugarStarch => "Sugar and starch",
            Content::Starch => "Starch",
            Content::Dha => "DHA (omega-3)",
            Content::Of(nutrient) => self.nutrient(nutrient),
        }
    }

    fn ration_error(&self, error: &RationError) -> String {
        match error {
            RationError::OutOfRange(error) => self.out_of_range(error),
            RationError::Content { nutrient, value } if value.is_finite() => format!(
                "{} {} a kg of {} cannot be: type what the label says, 0 or more",
                sized(*value),
                self.nutrient_unit(nutrient.unit()),
                small(self.nutrient(*nutrient))
            ),
            RationError::Content { nutrient, value: _ } => {
                format!(
                    "{} is no number: type what the label says",
                    self.nutrient(*nutrient)
                )
            }
        }
    }
}
