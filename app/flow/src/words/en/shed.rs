//! The shed in English.

use super::English;
use crate::words::{ShedWords, UnitWords};

impl ShedWords for English {
    fn shed(&self) -> &'static str {
        "Shed"
    }
    fn nets_to_weigh(&self, count: usize) -> String {
        format!("{} to weigh for today", self.count(count, "net", "nets"))
    }
    fn nothing_to_weigh(&self) -> &'static str {
        "Every net is filled for today"
    }
    fn shed_empty(&self) -> &'static str {
        "No nets planned for today"
    }
    fn weigh_nets(&self) -> &'static str {
        "Weigh nets"
    }
    fn nets_and_tubs(&self) -> &'static str {
        "Nets and tubs"
    }
    fn nets_for(&self, name: &str) -> String {
        format!("Nets for {name}")
    }
    fn nets_left(&self, left: usize) -> String {
        if left == 0 {
            "filled".to_owned()
        } else {
            format!("{left} to weigh")
        }
    }
    fn hay_here(&self) -> &'static str {
        "Hay"
    }
    fn no_hay_here(&self) -> &'static str {
        "No hay written down yet"
    }
    fn add_hay(&self) -> &'static str {
        "Add hay"
    }
    fn start_a_soak(&self) -> &'static str {
        "Start a soak"
    }
    fn weather_today(&self) -> &'static str {
        "Weather today"
    }
    fn weather_carried(&self) -> &'static str {
        "Carried over from the day before."
    }
    fn weather_hint(&self) -> &'static str {
        "Soaking, throwing away and grass go by it."
    }
}
