//! The six answers in English.

use super::English;
use crate::forms::start::{Ever, Sort, Visits};
use crate::words::{ForageWords, StartWords, UnitWords};
use tussock_core::forage::ForageClass;

impl StartWords for English {
    fn six_answers(&self) -> &'static str {
        "A few answers, then a first plan"
    }
    fn first_plan(&self) -> &'static str {
        "First plan"
    }
    fn which_sort(&self) -> &'static str {
        "What is it, about how high?"
    }
    fn sort(&self, sort: Sort) -> &'static str {
        match sort {
            Sort::SmallPony => "Pony under 112 cm",
            Sort::Pony => "Pony 112 to 148 cm",
            Sort::Horse => "Horse",
            Sort::Miniature => "Miniature",
            Sort::Donkey => "Donkey",
            Sort::Mule => "Mule or hinny",
        }
    }
    fn rough_height_hint(&self) -> &'static str {
        "A rough height is kept as one. Until somebody measures a pony, it is treated as a small one."
    }
    fn age_label(&self) -> &'static str {
        "Age"
    }
    fn years(&self) -> &'static str {
        "years"
    }
    fn ribs_question(&self) -> &'static str {
        "Its ribs are"
    }
    fn ribs_hint(&self) -> &'static str {
        "Lay a flat hand on its side, behind the elbow, and draw it back."
    }
    fn ever_question(&self) -> &'static str {
        "Ever footsore, or laminitis?"
    }
    fn ever(&self, ever: Ever) -> &'static str {
        match ever {
            Ever::No => "No, as far as I know",
            Ever::SoundNow => "It had, sound now",
            Ever::HasItNow => "It has it now",
            Ever::NotKnown => "I do not know",
        }
    }
    fn hay_question(&self) -> &'static str {
        "The hay is said to be"
    }
    fn hay_offer(&self, class: ForageClass) -> String {
        match class {
            ForageClass::Grass => "Grass hay, or I do not know".to_owned(),
            class => self.forage_class(class),
        }
    }
    fn hay_hint(&self) -> &'static str {
        "A word says little of sugar. The plan says what a test would change."
    }
    fn visits_question(&self) -> &'static str {
        "Somebody comes"
    }
    fn visit_count(&self, visits: Visits) -> String {
        match visits {
            Visits::One => "Once a day".to_owned(),
            Visits::Two => "Twice a day".to_owned(),
            Visits::Three | Visits::Four => {
                format!("{} a day", self.count(visits.count(), "time", "times"))
            }
        }
    }
    fn visits_hint(&self) -> &'static str {
        "The times shown stand until they are corrected."
    }
    fn name_may_wait(&self) -> &'static str {
        "May be left out, and changed later."
    }
    fn yard_name(&self) -> &'static str {
        "Yard"
    }
    fn make_first_plan(&self) -> &'static str {
        "Make the first plan"
    }
    fn still_open(&self) -> &'static str {
        "Something is still open. It is marked above."
    }
    fn answer_wanted(&self) -> &'static str {
        "Choose one."
    }
}
