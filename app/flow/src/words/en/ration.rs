//! The ration and its balance.

use super::English;
use super::fields::small;
use super::numbers::{between, sized, up_to, up_to_beside};
use crate::words::{LimitsWords, RationWords, Said, UnitWords};
use tussock_core::limits::{Amount, Nutrient};
use tussock_core::ration::{
    Content, DayStarch, DecidedBy, Dose, FoodClass, ForageVerdict, LabelField, LabelFinding,
    LabelUnit, Line, Measure, RationError, Standing, TypicalFood,
};
use tussock_core::units::PartOfBody;

/// Beyond what any label holds: such a number is not written out, and such a bound is none.
const UNREADABLE: f64 = 1e12;

impl English {
    /// A number of a label with its unit: "25 %".
    fn of_label(&self, value: f64, unit: LabelUnit) -> String {
        if value.abs() < UNREADABLE {
            format!("{} {}", sized(value), self.label_unit(unit))
        } else {
            "what stands there".to_owned()
        }
    }

    /// "0 to 100 %"; "0 IU/kg or more" where nothing bounds it.
    fn allowed_of_label(&self, [least, most]: [f64; 2], unit: LabelUnit) -> String {
        if most < UNREADABLE {
            let both = between(&sized(least), &sized(most), "to");
            format!("{both} {}", self.label_unit(unit))
        } else {
            format!("{} {} or more", sized(least), self.label_unit(unit))
        }
    }

    /// What the number may have been meant in.
    fn meant(&self, value: f64, likely: Option<LabelUnit>) -> String {
        likely.map_or_else(
            || "Look at the label again.".to_owned(),
            |unit| {
                format!(
                    "Look at the label again: {} would be usual.",
                    self.of_label(value, unit)
                )
            },
        )
    }
}

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
        let decided = match dose.decided_by {
            DecidedBy::Need(nutrient) => format!(
                "{} decides the amount.",
                super::fields::capital(self.nutrient(nutrient))
            ),
            DecidedBy::Rate => "The rate of the label decides the amount.".to_owned(),
            DecidedBy::Ration => "As the ration was decided.".to_owned(),
        };
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

    fn label_unit(&self, unit: LabelUnit) -> &'static str {
        match unit {
            LabelUnit::Percent => "%",
            LabelUnit::McalPerKg => "Mcal/kg",
            LabelUnit::MjPerKg => "MJ/kg",
            LabelUnit::PerKg(measure) => match measure {
                Measure::Gram => "g/kg",
                Measure::Milligram => "mg/kg",
                Measure::Microgram => "µg/kg",
                Measure::InternationalUnit => "IU/kg",
            },
            LabelUnit::PerServing(measure) => match measure {
                Measure::Gram => "g in a serving",
                Measure::Milligram => "mg in a serving",
                Measure::Microgram => "µg in a serving",
                Measure::InternationalUnit => "IU in a serving",
            },
            LabelUnit::Per100KgBody(measure) => match measure {
                Measure::Gram => "g for 100 kg of body weight",
                Measure::Milligram => "mg for 100 kg of body weight",
                Measure::Microgram => "µg for 100 kg of body weight",
                Measure::InternationalUnit => "IU for 100 kg of body weight",
            },
        }
    }

    fn label_field(&self, field: LabelField) -> &'static str {
        match field {
            LabelField::DryMatter => "Dry matter",
            LabelField::Serving => "What a serving weighs",
            LabelField::Rate => "How much to feed",
        }
    }

    #[allow(clippy::too_many_lines, reason = "one arm a finding")]
    fn label_finding(&self, finding: &LabelFinding) -> Said {
        match *finding {
            LabelFinding::Impossible {
                content,
                value,
                unit,
                allowed,
                likely,
            } => Said::because(
                format!(
                    "{}: {} cannot be, and the line is left out",
                    self.content(content),
                    self.of_label(value, unit)
                ),
                format!(
                    "It can be {}. {}",
                    self.allowed_of_label(allowed, unit),
                    self.meant(value, likely)
                ),
            ),
            LabelFinding::Unlikely {
                content,
                value,
                unit,
                allowed,
                likely,
            } => Said::because(
                format!(
                    "{}: {} is unlikely in such a food",
                    self.content(content),
                    self.of_label(value, unit)
                ),
                format!(
                    "Usual is {}. {}",
                    self.allowed_of_label(allowed, unit),
                    self.meant(value, likely)
                ),
            ),
            LabelFinding::UnitOfOtherSort { content, unit } => Said::because(
                format!(
                    "{} is not counted in {}, and the line is left out",
                    self.content(content),
                    self.label_unit(unit)
                ),
                "Vitamins A, D and E are counted in IU, minerals by mass, energy in Mcal or MJ.",
            ),
            LabelFinding::Needs {
                content,
                unit,
                field,
            } => Said::because(
                format!("{} is left out", self.content(content)),
                format!(
                    "{} is needed to reckon with {}.",
                    self.label_field(field),
                    self.label_unit(unit)
                ),
            ),
            LabelFinding::Field {
                field,
                value,
                allowed: [least, most],
            } => Said::because(
                if value.abs() < UNREADABLE {
                    let said = self.label_field(field);
                    format!(
                        "{said}: {} cannot be and is taken as not said",
                        sized(value)
                    )
                } else {
                    format!("{} is taken as not said", self.label_field(field))
                },
                format!(
                    "It can be {}.",
                    between(&sized(least), &sized(most.min(UNREADABLE)), "to")
                ),
            ),
            LabelFinding::GivenTwice { content } => Said::plain(format!(
                "{} stands there twice with different numbers: the first is kept",
                self.content(content)
            )),
            LabelFinding::PartOverWhole {
                part,
                value,
                whole,
                most,
            } => Said::because(
                format!(
                    "{} is more than {}",
                    self.content(part),
                    small(self.content(whole))
                ),
                format!(
                    "It is a part of it: {} % of {} %. Look at the label again.",
                    up_to_beside(value, most, 1),
                    sized(most)
                ),
            ),
            LabelFinding::PartsOverWhole { sum, most } => Said::because(
                "Protein, fibre, sugar and starch are together more than the food",
                format!(
                    "They make {} %, at most {} %. If the numbers are of dry matter, say so.",
                    up_to_beside(sum, most, 0),
                    sized(most)
                ),
            ),
        }
    }

    fn forage_verdict(&self, verdict: ForageVerdict) -> Said {
        let of = |part: PartOfBody, beside: PartOfBody| {
            up_to_beside(part.to_percent(), beside.to_percent(), 2)
        };
        match verdict {
            ForageVerdict::Enough { of_body } => Said::plain(format!(
                "Enough forage: {} % of body weight as dry matter",
                up_to(of_body.to_percent(), 2)
            )),
            ForageVerdict::UnderStart { of_body, start } => Said::because(
                format!(
                    "Less than an animal starts with: {} % of body weight as dry matter, {} % is the start",
                    of(of_body, start),
                    up_to(start.to_percent(), 2)
                ),
                "Forage and feed together. Less than that is a restriction, and the rules of restriction hold.",
            ),
            ForageVerdict::UnderFloor { of_body, floor } => Said::because(
                format!(
                    "Too little forage: {} % of body weight as dry matter, never under {} %",
                    of(of_body, floor),
                    up_to(floor.to_percent(), 2)
                ),
                "Feed more forage.",
            ),
            ForageVerdict::NotKnown => Said::plain("How much forage there is, is not known"),
        }
    }

    fn day_starch(&self, verdict: DayStarch) -> String {
        match verdict {
            DayStarch::ByMeal => "each bucket keeps its own limit".to_owned(),
            DayStarch::Within { holds } => format!(
                "within the limit of a day: at most {} of starch",
                self.nutrient_mass(holds)
            ),
            DayStarch::Over { holds, limit } => format!(
                "over the limit of a day: {} g of starch, under {} g is allowed",
                up_to_beside(holds.to_g(), limit.to_g(), 0),
                up_to(limit.to_g(), 1)
            ),
            DayStarch::NotKnown => "not known: a label does not say its starch".to_owned(),
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
