//! A label as pasted text, read into proposals.
//!
//! Nothing here is taken: each proposal stands beside the line it was read from, and the person accepts it or does not.
//! A name that is not known, a compound, a unit that is not understood stay unsaid.

use super::names::{PHRASES, SYMBOLS};
use super::{LabelUnit, Measure};
use crate::ration::content::Content;
use crate::units::printed::{
    BasesSaid, Counted, Named, Per, PrintedNumber, PrintedUnit, Warranted, bases_said, named,
    printed,
};

/// A number of a pasted text, with what it may say.
#[derive(Clone, Debug, PartialEq)]
pub struct FromText {
    /// The line as it stands.
    pub line: String,
    /// Of what; `None` when the words before the number name nothing that is reckoned with, or several things.
    pub content: Option<Content>,
    /// The number as it stands in the line.
    pub number: String,
    /// As it is read.
    pub value: f64,
    /// The unit as it stands in the line; empty where there is none.
    pub unit_said: String,
    /// In which unit; `None` when none is there or it is not understood.
    pub unit: Option<LabelUnit>,
    /// Whether it is warranted as the least or the most.
    pub warranted: Option<Warranted>,
    /// Another number of this line is of the same thing, or this number has two readings: one at most is right.
    pub one_of_several: bool,
}

/// What was read of a pasted text.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct PastedLabel {
    /// The numbers with a name or with a unit that is understood, in the order of the text.
    pub found: Vec<FromText>,
    /// Lines with numbers of which none was read.
    pub not_read: Vec<String>,
    /// What the text says of its basis: a hint only.
    pub bases: BasesSaid,
}

/// Reads a pasted label.
pub fn read_label(text: &str) -> PastedLabel {
    let mut read = PastedLabel {
        bases: bases_said(text),
        ..PastedLabel::default()
    };
    for line in printed(text) {
        let mut found: Vec<FromText> = Vec::new();
        // Which of them are of one thing: the place of the first.
        let mut things: Vec<usize> = Vec::new();
        let (mut content, mut thing) = (None, 0);
        for (at, number) in line.numbers.iter().enumerate() {
            if !number.goes_on {
                content = content_of(number);
                thing = at;
            }
            let unit = number.unit.and_then(label_unit);
            if content.is_none() && unit.is_none() {
                continue;
            }
            for value in &number.readings {
                things.push(thing);
                found.push(FromText {
                    line: line.line.to_owned(),
                    content,
                    number: number.number.to_owned(),
                    value: *value,
                    unit_said: number.unit_said.to_owned(),
                    unit,
                    warranted: number.warranted,
                    one_of_several: false,
                });
            }
        }
        if found.is_empty() {
            read.not_read.push(line.line.to_owned());
        }
        for (proposal, thing) in found.iter_mut().zip(&things) {
            proposal.one_of_several = things.iter().filter(|other| *other == thing).count() > 1;
        }
        read.found.append(&mut found);
    }
    read
}

/// What a number is of.
fn content_of(number: &PrintedNumber<'_>) -> Option<Content> {
    let named = named(number.before, PHRASES, SYMBOLS);
    // "Energy 10.4 MJ DE/kg": the unit says which energy; without it nobody knows.
    let digestible = number.unit.is_some_and(|unit| unit.digestible)
        || number
            .before
            .split(|c: char| !c.is_alphanumeric())
            .any(|word| word == "DE");
    match named {
        Named::One(content) => Some(content),
        Named::Other if digestible && is_bare_energy(number.before) => Some(Content::Energy),
        Named::Other | Named::Nothing => None,
    }
}

/// Whether the words name energy and do not say which.
fn is_bare_energy(before: &str) -> bool {
    let lower = before.to_lowercase();
    lower.contains("energy")
        && !["metaboli", "gross", "net "]
            .iter()
            .any(|other| lower.contains(other))
}

/// The unit of a line of a label.
const fn label_unit(unit: PrintedUnit) -> Option<LabelUnit> {
    let measure = match unit.counted {
        Counted::Gram => Measure::Gram,
        Counted::Milligram => Measure::Milligram,
        Counted::Microgram => Measure::Microgram,
        Counted::InternationalUnit => Measure::InternationalUnit,
        Counted::Percent => {
            return match unit.per {
                Per::Kilogram => Some(LabelUnit::Percent),
                Per::Serving | Per::HundredKgBody => None,
            };
        }
        Counted::Megajoule => {
            return match unit.per {
                Per::Kilogram => Some(LabelUnit::MjPerKg),
                Per::Serving | Per::HundredKgBody => None,
            };
        }
        Counted::Megacalorie => {
            return match unit.per {
                Per::Kilogram => Some(LabelUnit::McalPerKg),
                Per::Serving | Per::HundredKgBody => None,
            };
        }
    };
    Some(match unit.per {
        Per::Kilogram => LabelUnit::PerKg(measure),
        Per::Serving => LabelUnit::PerServing(measure),
        Per::HundredKgBody => LabelUnit::Per100KgBody(measure),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::limits::Nutrient;

    /// An invented label with the traps that labels hold.
    const LABEL: &str = "\
Stable Mix No. 4, 20 kg
Analytical constituents (as fed): Crude protein 14,5 %, crude fibre 9.0 %
Calcium (min) 3.0 % (max) 4.0 %
Ca 1.2% P 0.5%
Sugar 4 %, starch 6 %
Sugar and starch 10 % (of which starch 6 %)
Digestible energy 10.4 MJ/kg
Energy 11 MJ ME/kg
Nutritional additives per kg
E4 Copper (as copper sulphate pentahydrate) 400 mg/kg
Copper sulphate 1,600 mg/kg
3b8.10 Selenium (sodium selenite) 2 ppm
Vitamin E (3a700, alpha-tocopherol) 2,500 IU/kg
Vitamin D3 3 000 IU
Zinc 120 mg/100g
Sodium chloride 1 %
Batch 4711 use before 12.05.2027
Feed 100 g per 100 kg body weight";

    fn read() -> Vec<(Option<Content>, String, String)> {
        read_label(LABEL)
            .found
            .into_iter()
            .map(|found| {
                let unit = found.unit.map_or("?", LabelUnit::word);
                (found.content, found.value.to_string(), unit.to_owned())
            })
            .collect()
    }

    fn of(nutrient: Nutrient) -> Option<Content> {
        Some(Content::Of(nutrient))
    }

    #[test]
    fn a_label_is_read_line_by_line_and_nothing_is_guessed() {
        let wanted: Vec<(Option<Content>, &str, &str)> = vec![
            (of(Nutrient::CrudeProtein), "14.5", "%"),
            (None, "9", "%"),
            (of(Nutrient::Calcium), "3", "%"),
            (of(Nutrient::Calcium), "4", "%"),
            (of(Nutrient::Calcium), "1.2", "%"),
            (of(Nutrient::Phosphorus), "0.5", "%"),
            (None, "4", "%"),
            (Some(Content::Starch), "6", "%"),
            (Some(Content::SugarStarch), "10", "%"),
            (Some(Content::Starch), "6", "%"),
            (Some(Content::Energy), "10.4", "MJ/kg"),
            (of(Nutrient::Copper), "400", "mg/kg"),
            (None, "1.6", "mg/kg"),
            (None, "1600", "mg/kg"),
            (of(Nutrient::Selenium), "2", "mg/kg"),
            (of(Nutrient::VitaminE), "2.5", "IU/kg"),
            (of(Nutrient::VitaminE), "2500", "IU/kg"),
            (of(Nutrient::VitaminD), "3000", "?"),
            (of(Nutrient::Zinc), "120", "?"),
            (None, "1", "%"),
            (None, "100", "g/100kg"),
        ];
        let wanted: Vec<_> = wanted
            .into_iter()
            .map(|(content, value, unit)| (content, value.to_owned(), unit.to_owned()))
            .collect();
        assert_eq!(read(), wanted);
    }

    #[test]
    fn what_was_not_read_and_what_has_two_readings_is_said() {
        let read = read_label(LABEL);
        assert_eq!(
            read.not_read,
            [
                "Stable Mix No. 4, 20 kg",
                "Energy 11 MJ ME/kg",
                "Batch 4711 use before 12.05.2027",
            ]
        );
        assert!(read.bases.as_fed && !read.bases.dry_matter);
        let several: Vec<&str> = read
            .found
            .iter()
            .filter(|found| found.one_of_several)
            .map(|found| found.number.as_str())
            .collect();
        assert_eq!(several, ["3.0", "4.0", "1,600", "1,600", "2,500", "2,500"]);
        let zinc = read
            .found
            .iter()
            .find(|found| found.number == "120")
            .unwrap();
        assert_eq!(zinc.unit_said, "mg/100g");
    }

    #[test]
    fn energy_is_digestible_where_it_says_so() {
        for (text, is_read) in [
            ("Energy 10.4 MJ DE/kg", true),
            ("Energy (DE) 10.4 MJ/kg", true),
            ("DE 2.5 Mcal/kg", true),
            ("Digestible energy 2.5 Mcal/kg", true),
            ("Energy 10.4 MJ/kg", false),
            ("Metabolisable energy 10.4 MJ/kg", false),
        ] {
            let found = read_label(text).found;
            assert_eq!(found.len(), 1, "{text}");
            let energy = found.iter().all(|f| f.content == Some(Content::Energy));
            assert_eq!(energy, is_read, "{text}");
        }
    }

    #[test]
    fn every_name_is_in_lower_case_and_every_content_has_one() {
        for (phrase, _) in PHRASES {
            assert_eq!(*phrase, phrase.to_lowercase());
        }
        for content in Content::all() {
            let phrase = PHRASES.iter().any(|(_, of)| *of == Some(content));
            assert!(phrase, "{content:?}");
        }
    }
}
