//! What to watch in store, in English.

use super::English;
use super::numbers::up_to;
use crate::views::stock::StorageNote;
use crate::words::{Said, UnitWords};
use tussock_core::forage::{HeatVerdict, MoistureVerdict, Rod, StoredBadly};
use tussock_core::units::LocalDate;

/// Something to watch in store.
pub(super) fn note(words: &English, note: &StorageNote) -> Said {
    match note {
        StorageNote::Moisture { percent, verdict } => moisture(*percent, *verdict),
        StorageNote::Heat { on, rod, verdict } => words.heat(*on, *rod, *verdict),
        StorageNote::WatchHeat { until, by_purchase } => Said::because(
            format!("Look for heat in the stack until {}", words.day(*until)),
            if *by_purchase {
                "New hay is watched for three weeks. Nobody said when it was baled: the day it was bought stands in."
            } else {
                "New hay is watched for three weeks from the day it was baled."
            },
        ),
        StorageNote::Stored(bad) => match bad {
            StoredBadly::OnGround => Said::because(
                "It stands on the ground: put it on pallets or poles",
                "The lowest bales draw water and mould.",
            ),
            StoredBadly::Uncovered => Said::because(
                "It is not covered: cover it, or feed it first",
                "Hay outdoors loses a twentieth to a fifth of its dry matter and more, from memory.",
            ),
            StoredBadly::NoAir => Said::because(
                "No air goes through: leave a gap at the walls and under the roof",
                "Damp that cannot leave turns into mould.",
            ),
        },
    }
}

impl English {
    fn heat(&self, on: LocalDate, rod: Rod, verdict: HeatVerdict) -> Said {
        let on = self.day(on);
        let read = match rod {
            Rod::Read(temperature) => {
                format!("{} in the stack on {on}", self.temperature(temperature))
            }
            Rod::Held => format!("The rod could be held on {on}"),
            Rod::TooHot => format!("The rod was too hot to hold on {on}"),
        };
        match verdict {
            HeatVerdict::Normal => Said::plain(read),
            HeatVerdict::Daily => Said::because(
                format!("{read}: measure it every day"),
                "From 49 °C hay is measured daily. A rod too hot to hold is over that, and nobody knows how far: use a thermometer.",
            ),
            HeatVerdict::PullApart => Said::because(
                format!("{read}: pull the stack apart, with somebody by"),
                "From 60 °C. Never alone, and with water at hand.",
            ),
            HeatVerdict::FireService => Said::because(
                format!("{read}: ring the fire service before you touch it"),
                "From 65 °C. Air that gets in can set it alight.",
            ),
            HeatVerdict::Emergency => Said::because(
                format!("{read}: emergency, ring the fire service now and keep away"),
                "From 71 °C there are hot spots, and the gases burn.",
            ),
        }
    }
}

fn moisture(percent: f64, verdict: MoistureVerdict) -> Said {
    let figure = format!("Moisture {} %", up_to(percent, 1));
    match verdict {
        MoistureVerdict::Dry => Said::plain(format!("{figure} when it came, dry enough")),
        MoistureVerdict::Watch { most } => Said::because(
            format!("{figure}: look for mould and heat"),
            format!(
                "Its kind of bale may have up to {} %; over 15 % it may mould without a preservative.",
                up_to(most, 0)
            ),
        ),
        MoistureVerdict::TooWet { most } => Said::because(
            format!("{figure}, too wet: look for heat every day, and for mould before feeding"),
            format!("Its kind of bale keeps up to {} %.", up_to(most, 0)),
        ),
        MoistureVerdict::Fire => Said::because(
            format!("{figure}: it heats and may burn. Keep it out of the barn"),
            "Over 25 % hay heats. Measure it every day.",
        ),
    }
}
