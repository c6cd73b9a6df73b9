//! The desk in English.

use super::English;
use crate::words::{DeskWords, UnitWords};

impl DeskWords for English {
    fn desk(&self) -> &'static str {
        "Desk"
    }
    fn desk_sentence(&self, animals: usize) -> String {
        match animals {
            0 => "Nothing on the desk yet".to_owned(),
            _ => format!("{} to look at", self.count(animals, "ration", "rations")),
        }
    }
    fn rations(&self) -> &'static str {
        "Rations"
    }
    fn ration_of(&self) -> &'static str {
        "What it gets against what it needs"
    }
    fn no_rations(&self) -> &'static str {
        "Add a horse first: a ration is held against what it needs."
    }
}
