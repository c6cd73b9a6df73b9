//! Foods in English.

use super::English;
use super::numbers::sized;
use super::stock::figure_of;
use crate::forms::food::{Field, LineWrong, Wrong};
use crate::views::foods::{FoodRow, Numbers};
use crate::words::{FoodsWords, HorsesWords, LogWords, RationWords, SourceWords, UnitWords};
use tussock_core::log::bodies::LabelBasis;
use tussock_core::ration::{CountedIn, FoodClass, FromText, KnownNumber, TypicalFood};
use tussock_core::sources::Constant;
use tussock_core::units::PricePerKg;
use tussock_core::units::printed::{BasesSaid, Warranted};

impl FoodsWords for English {
    fn foods(&self) -> &'static str {
        "Foods"
    }
    fn foods_count(&self, own: usize) -> String {
        match own {
            0 => "none of the yard's own yet".to_owned(),
            _ => format!("{own} of the yard's own"),
        }
    }
    fn foods_sentence(&self, own: usize) -> String {
        match own {
            0 => "No food of the yard's own yet".to_owned(),
            _ => format!("{} here", self.count(own, "food", "foods")),
        }
    }
    fn own_foods(&self) -> &'static str {
        "The yard's own"
    }
    fn typical_foods(&self) -> &'static str {
        "Typical foods"
    }
    fn typical_foods_mean(&self) -> &'static str {
        "What such foods usually hold, each number with its source. The bag in the shed may differ."
    }
    fn food_line(&self, row: &FoodRow) -> String {
        let numbers = match &row.numbers {
            Numbers::Label(lines) => {
                format!("label with {}", self.count(*lines, "line", "lines"))
            }
            Numbers::Typical(_) => "typical numbers".to_owned(),
            Numbers::NotKnown => "no numbers typed".to_owned(),
            Numbers::Wrong(_) => "its label cannot be reckoned with: look at it again".to_owned(),
        };
        format!("{}, {numbers}", self.food_class(row.class))
    }
    fn per_kg(&self, price: PricePerKg) -> String {
        format!(
            "{} {} a kg",
            figure_of(price.minor, price.currency),
            price.currency.code()
        )
    }
    fn add_food(&self) -> &'static str {
        "Add a food"
    }
    fn typical_sentence(&self, food: TypicalFood) -> String {
        self.typical_food(food).to_owned()
    }
    fn food_number(&self, number: &KnownNumber) -> String {
        let unit = match number.unit {
            CountedIn::PercentAsFed => "% as fed",
            CountedIn::PercentOfDry => "% of dry matter",
            CountedIn::MgPerKgDry => "mg a kg of dry matter",
            CountedIn::IuPerKgDry => "IU a kg of dry matter",
            CountedIn::McalPerKgDry => "Mcal a kg of dry matter",
            CountedIn::GPerKg => "g a kg as fed",
            CountedIn::MgPerKg => "mg a kg as fed",
            CountedIn::IuPerKg => "IU a kg as fed",
        };
        format!("{} {unit}", sized(number.value))
    }
    fn food_number_from(&self, number: &KnownNumber) -> String {
        self.constant(&Constant {
            id: "",
            value: String::new(),
            unit: "",
            work: number.work,
            place: number.place,
            mark: number.mark,
        })
    }
    fn what_is_in_it(&self) -> &'static str {
        "What is in it"
    }
    fn not_known_of_it(&self) -> &'static str {
        "not known"
    }
    fn where_from(&self) -> &'static str {
        "where it comes from"
    }
    fn typical_caution(&self) -> &'static str {
        "Typical numbers are of such foods in general. Type the label of the bag when it is there."
    }
    fn take_into_shed(&self) -> &'static str {
        "Take it into the shed"
    }
    fn which_food(&self) -> &'static str {
        "Which food is it?"
    }
    fn no_such_food(&self) -> &'static str {
        "This food is not here"
    }
    fn food_field(&self, field: Field) -> &'static str {
        match field {
            Field::Name => "Name of the food",
            Field::Dry => "Dry matter",
            Field::Serving => "A serving weighs",
            Field::Rate => "How much to feed a day",
            Field::Scoop => "A level scoop weighs",
            Field::Pack => "A pack weighs",
            Field::Price => "Price of a pack",
            Field::Currency => "Currency",
        }
    }
    fn food_field_hint(&self, field: Field) -> Option<&'static str> {
        match field {
            Field::Name => Some("As it is called in the yard."),
            Field::Dry => Some("Of the label, or 100 less the moisture. May be left out."),
            Field::Serving => {
                Some("Where the label counts by the serving. A bare number is grams.")
            }
            Field::Rate => Some("What the label says for 100 kg of body weight."),
            Field::Scoop => {
                Some("Weigh a level scoop once on the kitchen scale. A bare number is grams.")
            }
            Field::Pack => Some("A bare number is kilograms."),
            Field::Price => None,
            Field::Currency => Some("Three letters, like GBP."),
        }
    }
    fn food_field_unit(&self, field: Field) -> Option<&'static str> {
        match field {
            Field::Dry => Some("%"),
            Field::Rate => Some("g"),
            Field::Serving | Field::Scoop => Some("g"),
            Field::Pack => Some("kg"),
            Field::Name | Field::Price | Field::Currency => None,
        }
    }
    fn food_class_asked(&self) -> &'static str {
        "What is it?"
    }
    fn food_class_means(&self, class: FoodClass) -> &'static str {
        match class {
            FoodClass::Legume => "chaff or pellets; counts as forage",
            FoodClass::Fibre => "beet pulp, hulls, fibre cubes",
            FoodClass::Cereal => "oats, bran",
            FoodClass::Protein => "linseed, soybean meal",
            FoodClass::Fat => "oil, rice bran oil",
            FoodClass::Balancer => "little of it, with what hay lacks",
            FoodClass::MineralMix => "a mix or a lick",
            FoodClass::Source => "salt, a sulphate, vitamin E",
            FoodClass::Compound => "mixes, cubes and nuts",
            FoodClass::Other => "or not known",
        }
    }
    fn stands_in(&self, food: TypicalFood) -> String {
        format!(
            "The typical numbers of {} stand in until a label is typed.",
            super::fields::small(self.typical_food(food))
        )
    }
    fn label_head(&self) -> &'static str {
        "What the label says"
    }
    fn label_caution(&self) -> &'static str {
        "A label says what the maker says: nobody here checked it."
    }
    fn label_basis_asked(&self) -> &'static str {
        "What are the shares on the label of?"
    }
    fn food_basis(&self, basis: LabelBasis) -> &'static str {
        match basis {
            LabelBasis::AsFed => "The food as it lies in the bag",
            LabelBasis::DryMatter => "Its dry matter",
        }
    }
    fn bases_said(&self, said: BasesSaid) -> Option<&'static str> {
        match (said.as_fed, said.dry_matter) {
            (true, true) => {
                Some("The text speaks of as fed and of dry matter: look which column is meant.")
            }
            (true, false) => Some("The text speaks of as fed."),
            (false, true) => Some("The text speaks of dry matter."),
            (false, false) => None,
        }
    }
    fn label_line(&self, line: usize) -> String {
        format!("Line {}", line + 1)
    }
    fn line_of_what(&self) -> &'static str {
        "Of what"
    }
    fn line_number(&self) -> &'static str {
        "How much"
    }
    fn line_in_what(&self) -> &'static str {
        "In which unit"
    }
    fn line_choose(&self) -> &'static str {
        "Choose"
    }
    fn add_line(&self) -> &'static str {
        "Add a line"
    }
    fn remove_line(&self, line: usize) -> String {
        format!("Take line {} off", line + 1)
    }
    fn paste_label(&self) -> &'static str {
        "Paste a label"
    }
    fn pasted_text(&self) -> &'static str {
        "Text of the label"
    }
    fn pasted_text_hint(&self) -> &'static str {
        "Paste it here. Nothing is taken before each number was looked at beside its line."
    }
    fn pasted_found(&self, waiting: usize, found: usize) -> String {
        if found == 0 {
            return "No number with a name was found yet".to_owned();
        }
        let found = self.count(found, "number", "numbers");
        match waiting {
            0 => format!("{found} found, all looked at"),
            _ => format!("{found} found, {waiting} to look at"),
        }
    }
    fn pasted_read(&self, found: &FromText) -> String {
        let what = match found.content {
            Some(content) => self.content(content),
            None => "Not known of what",
        };
        let unit = match found.unit {
            Some(unit) => self.label_unit(unit),
            None => "in a unit to choose",
        };
        format!("{what}: {} {unit}", sized(found.value))
    }
    fn pasted_doubts(&self, found: &FromText) -> Vec<String> {
        let mut doubts = Vec::new();
        if found.content.is_none() {
            doubts.push("Its name says nothing that is reckoned with.".to_owned());
        }
        if found.unit.is_none() {
            doubts.push(if found.unit_said.is_empty() {
                "No unit stands beside it.".to_owned()
            } else {
                format!(
                    "Its unit, {}, does not say how much in what.",
                    found.unit_said
                )
            });
        }
        match found.warranted {
            Some(Warranted::Least) => doubts.push("It is the least that is warranted.".to_owned()),
            Some(Warranted::Most) => doubts.push("It is the most that is warranted.".to_owned()),
            None => {}
        }
        if found.one_of_several {
            doubts.push("One of several readings or columns: one at most is right.".to_owned());
        }
        doubts
    }
    fn accept_line(&self) -> &'static str {
        "Accept"
    }
    fn not_this_line(&self) -> &'static str {
        "Not this"
    }
    fn line_accepted(&self) -> &'static str {
        "Accepted"
    }
    fn line_not_taken(&self) -> &'static str {
        "Not taken"
    }
    fn decide_again(&self) -> &'static str {
        "Look again"
    }
    fn pasted_not_read(&self) -> &'static str {
        "Lines of which nothing was read"
    }
    fn close_pasted(&self) -> &'static str {
        "Close the pasted text"
    }
    fn pack_head(&self) -> &'static str {
        "Pack, price and scoop"
    }
    fn save_food(&self) -> &'static str {
        "Save food"
    }
    fn remove_food(&self) -> &'static str {
        "Remove this food"
    }
    fn food_wrong(&self, wrong: &Wrong) -> String {
        match wrong {
            Wrong::NoName => "Type a name, so that a ration can say what is in it.".to_owned(),
            Wrong::NoClass => self.choice_wanted().to_owned(),
            Wrong::NoBasis => {
                "Choose it: as fed and dry matter differ by a tenth and more.".to_owned()
            }
            Wrong::Parse(_, error) => self.parse_error(error),
            Wrong::Money(error) => self.money_error(error),
            Wrong::Line(line, wrong) => {
                format!("{}: {}", self.label_line(*line), self.line_wrong(wrong))
            }
            Wrong::Label(_, finding) => self.label_finding(finding).sentence,
            Wrong::Log(error) => self.log_error(error),
        }
    }
    fn line_wrong(&self, wrong: &LineWrong) -> String {
        match wrong {
            LineWrong::NoContent => "Choose of what it is, or take the line off".to_owned(),
            LineWrong::NoUnit => "Choose the unit that stands on the label".to_owned(),
            LineWrong::Number(error) => self.parse_error(error),
            LineWrong::Log(error) => self.log_error(error),
        }
    }
}
