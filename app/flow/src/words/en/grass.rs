//! Grass in a plan, in English.

use super::English;
use crate::words::{PlanWords, Said, UnitWords};
use tussock_core::plan::GrassDay;
use tussock_core::safety::Caution;
use tussock_core::units::Span;

impl English {
    /// A day with grass.
    pub(super) fn grass_day(&self, day: &GrassDay) -> Said {
        let room = &day.room;
        let why: Vec<&str> = room
            .shortened
            .iter()
            .map(|why| self.shortened(*why))
            .collect();
        let shorter = if why.is_empty() {
            String::new()
        } else {
            let asked = self.span(room.asked);
            format!(" Asked for {asked}: {}.", self.list(&why))
        };
        if room.time <= Span::ZERO {
            return Said::because("No room for grass in this plan", shorter.trim().to_owned());
        }
        let muzzle = if day.grazing.muzzle { ", muzzled" } else { "" };
        Said::because(
            format!("At most {} of grass a day{muzzle}", self.span(room.time)),
            format!(
                "It eats {} there. On such a day its hay is less by the least of that: {}.{shorter}",
                self.dry_ends(room.grass),
                self.dry(room.hay_less),
            ),
        )
    }
}

/// What must be known about grass beside a plan.
pub(super) fn grass_caution(caution: &Caution) -> Said {
    match caution {
        Caution::GrassByModel { muzzle } => Said::because(
            "Grass is counted by a model with wide ends: weigh it every week",
            if *muzzle {
                "The model was tuned to few animals, and muzzles held back from 30 to 83 %. No time here rests on the \
                     muzzle: check it every day, and never more than 10 hours in a day."
            } else {
                "The model was tuned to few animals on other grass."
            },
        ),
        Caution::NoRoomForGrass => Said::because(
            "No grass: this plan has no room for it",
            "Less hay would take it under its floor, or grass would take the day over its limit.",
        ),
        Caution::GrassNotCounted => Said::because(
            "Limit the hours and the area of grass: it is not counted here",
            "What it eats there comes on top of this plan.",
        ),
        _ => Said::because(
            "No grass, not even an hour: bare paddock or yard only",
            "Nothing here makes grass a small risk for this animal. A bare paddock is not forage either.",
        ),
    }
}
