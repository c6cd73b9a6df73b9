//! The invented yard in English.

use super::English;
use crate::words::ExampleWords;

impl ExampleWords for English {
    fn example_yard(&self) -> &'static str {
        "Example yard. Everything in it is invented."
    }
    fn leave_example(&self) -> &'static str {
        "Leave and remove it"
    }
}
