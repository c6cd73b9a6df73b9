//! Moisture and heat of stored hay.

use tussock_core::forage::{BaleKind, HeatVerdict, MoistureVerdict, judge_heat, judge_moisture};
use tussock_core::units::Temperature;
use tussock_core::units::parse::temperature;
use tussock_tests::reference::{Formulas, Inputs};

pub(super) fn formulas() -> Formulas {
    vec![
        ("forage.moisture", |i| {
            let bale = match i.text("bale")? {
                "small_square" => BaleKind::SmallSquare,
                "round" => BaleKind::Round,
                "large_square" => BaleKind::LargeSquare,
                _ => return Err(i.unknown("bale")),
            };
            judge_moisture(i.number("percent")?, Some(bale), false)
                .map(|verdict| match verdict {
                    MoistureVerdict::Dry => 0.0,
                    MoistureVerdict::Watch { .. } => 1.0,
                    MoistureVerdict::TooWet { .. } => 2.0,
                    MoistureVerdict::Fire => 3.0,
                })
                .map_err(|e| format!("{e:?}"))
        }),
        ("forage.heat", |i| {
            judge_heat(typed(i)?)
                .map(|verdict| match verdict {
                    HeatVerdict::Normal => 0.0,
                    HeatVerdict::Daily => 1.0,
                    HeatVerdict::PullApart => 2.0,
                    HeatVerdict::FireService => 3.0,
                    HeatVerdict::Emergency => 4.0,
                })
                .map_err(|e| format!("{e:?}"))
        }),
        ("forage.stack_celsius", |i| {
            typed(i).map(Temperature::to_celsius)
        }),
    ]
}

fn typed(i: &Inputs) -> Result<Temperature, String> {
    temperature(i.text("typed")?).map_err(|e| format!("{e:?}"))
}
