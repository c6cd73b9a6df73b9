//! Weighbridge day, in English.

use super::English;
use crate::words::{UnitWords, WeighbridgeWords};
use tussock_core::units::{BodyMass, LocalDate};

impl WeighbridgeWords for English {
    fn weighbridge_day(&self) -> &'static str {
        "Weigh them all"
    }

    fn weighed_of(&self, saved: usize, all: usize) -> String {
        format!("{saved} of {all} weighed today")
    }

    fn line_by_line(&self) -> &'static str {
        "Type what the scale shows and go to the next line: each line is saved as you leave it."
    }

    fn all_on_the_scale(&self) -> &'static str {
        "In the order in which they were weighed last time"
    }

    fn weighbridge_heads(&self) -> [&'static str; 3] {
        ["The scale shows", "Last time", "Today"]
    }

    fn last_on_scale(&self, last: Option<(LocalDate, BodyMass)>) -> String {
        match last {
            Some((day, mass)) => format!("{}, {}", self.body(mass), self.day(day)),
            None => "never on a scale".to_owned(),
        }
    }

    fn saved_today(&self, saved: Option<BodyMass>) -> String {
        match saved {
            Some(mass) => format!("saved: {}", self.body(mass)),
            None => "not yet".to_owned(),
        }
    }

    fn finish_weighing(&self) -> &'static str {
        "Finish weighing"
    }

    fn some_lines_open(&self) -> &'static str {
        "A line is not saved yet: mend or answer what stands beside it."
    }
}
