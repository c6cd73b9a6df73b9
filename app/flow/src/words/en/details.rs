//! An animal's details in English.

use super::English;
use crate::forms::details::Field;
use crate::words::{DetailsWords, HorsesWords};

impl DetailsWords for English {
    fn details_of(&self, name: &str) -> String {
        format!("What is known of {name}")
    }

    fn details_label(&self, field: Field) -> &'static str {
        match field {
            Field::Name => self.name(),
            Field::Kind => self.what_is_it(),
            Field::BodyType => "Body type",
            Field::Sex => "Sex",
            Field::Born => "Born",
            Field::Height => self.height_label(),
            Field::State => "Now",
            Field::Covered => "Covered on",
            Field::Foaled => "Foaled on",
            Field::Grown => "Grown, it will weigh about",
            Field::Work => "Work",
            Field::Goal => "Its weight should",
            Field::Laminitis => "Laminitis, or footsore without a reason",
            Field::LaminitisEnded => "The last episode ended on",
            Field::Insulin => "Insulin test",
            Field::InsulinOn => "Tested on",
            Field::InsulinBy => "Tested by",
            Field::InsulinTest => "Which test",
            Field::Ppid => "PPID",
            Field::Teeth => "Teeth",
            Field::NativeOrCob => "A native or cob type?",
        }
    }

    fn details_hint(&self, field: Field) -> Option<&'static str> {
        match field {
            Field::Born => Some(
                "The year, the month as 5.2014, or the day as 1.5.2014. The needs of one that grows go by the month. May be left out.",
            ),
            Field::Covered => {
                Some("The day as 1.5.2025. Her needs go by the month in foal. May be left out.")
            }
            Field::Foaled => {
                Some("The day as 1.5.2025. Her needs go by the month in milk. May be left out.")
            }
            Field::Grown => {
                Some("As 500 or 1100 lb, by its parents. Its needs go by it. May be left out.")
            }
            Field::Height => Some(self.height_hint()),
            Field::LaminitisEnded => Some("The day as 1.5.2025. May be left out."),
            Field::InsulinOn => Some("The day as 1.5.2025: a result grows old."),
            Field::Laminitis => {
                Some("While it has it, the vet decides: there is no plan without the vet's word.")
            }
            Field::NativeOrCob => Some("Such types are treated as at risk until a test says not."),
            Field::BodyType => Some("It chooses the weight equation."),
            Field::Name
            | Field::Kind
            | Field::Sex
            | Field::State
            | Field::Work
            | Field::Goal
            | Field::Insulin
            | Field::InsulinBy
            | Field::InsulinTest
            | Field::Ppid
            | Field::Teeth => None,
        }
    }

    fn not_known(&self) -> &'static str {
        "Not known"
    }

    fn insulin_said(&self, dysregulated: Option<bool>) -> &'static str {
        match dysregulated {
            Some(true) => "Insulin-dysregulated",
            Some(false) => "In order",
            None => "Not tested",
        }
    }

    fn day_wanted(&self) -> &'static str {
        "Type the day as 1.5.2025: it has to be today or earlier."
    }

    fn look_above(&self) -> &'static str {
        "Not saved yet: a field above needs another look."
    }

    fn save_details(&self) -> &'static str {
        "Save details"
    }
}
