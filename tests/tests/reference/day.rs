//! Eating times and gaps.

use tussock_core::day::{DayNeeds, EatingRate, NetKind, eating_time, lay_out};
use tussock_core::sources::Provenance;
use tussock_core::units::{BodyMass, DryFraction, DryMatter, LocalTime};
use tussock_tests::reference::{Formulas, Inputs, RowCounts};

pub fn formulas() -> Formulas {
    vec![
        ("day.hours", |i| {
            Ok(eating_time(body(i)?, net(i)?, kg(i)?).hours.likely)
        }),
        ("day.slowing", |i| Ok(net(i)?.slowing())),
        ("day.mean_rate", |i| {
            let meal = DryMatter::kg(1.0);
            let at = |net| Ok::<_, String>(eating_time(body(i)?, net, meal).at_mean_rate);
            Ok(at(NetKind::Loose)? / at(net(i)?)?)
        }),
        ("day.hours_at", |i| {
            Ok(steady(i.number("kg_per_h")?).hours_for(kg(i)?).likely)
        }),
        ("day.double_over_single", |i| {
            let hours = |net| Ok::<_, String>(eating_time(body(i)?, net, kg(i)?).hours.likely);
            Ok(hours(NetKind::DoubleSmall)? / hours(NetKind::SmallHoles)?)
        }),
        ("day.longest_gap", longest_gap),
    ]
}

pub fn rows() -> RowCounts {
    vec![("ellis_2015", 1), ("glunk_2014_nets", 12)]
}

fn body(i: &Inputs) -> Result<BodyMass, String> {
    Ok(BodyMass::kg(i.number("body_kg")?))
}

fn kg(i: &Inputs) -> Result<DryMatter, String> {
    Ok(DryMatter::kg(i.number("kg")?))
}

fn net(i: &Inputs) -> Result<NetKind, String> {
    Ok(match i.text("net")? {
        "loose" => NetKind::Loose,
        "large" => NetKind::LargeHoles,
        "medium" => NetKind::MediumHoles,
        "small" => NetKind::SmallHoles,
        other => return Err(format!("no net {other:?}")),
    })
}

fn steady(kg_per_h: f64) -> EatingRate {
    EatingRate {
        slow: kg_per_h,
        likely: kg_per_h,
        fast: kg_per_h,
        from: Provenance::new(),
    }
}

/// The longest gap of equal meals at equal distances.
fn longest_gap(i: &Inputs) -> Result<f64, String> {
    let meals = i.number("meals")?;
    let mut visits = Vec::new();
    let mut hour: f64 = 6.0;
    while hour < 30.0 - 1e-9 {
        let seconds = (hour % 24.0 * 3600.0).round();
        #[allow(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "seconds of a day"
        )]
        let time = LocalTime::from_num_seconds_from_midnight_opt(seconds as u32, 0);
        visits.push(time.ok_or("no time")?);
        hour += 24.0 / meals;
    }
    let day = DayNeeds {
        visits: &visits,
        forage: kg(i)?,
        dry: DryFraction::constant_percent(100.0),
        rate: &steady(i.number("kg_per_h")?),
        most_at_once: None,
        eaten_within_h: None,
        aways: &[],
        straw_part: None,
    };
    lay_out(&day)
        .map(|layout| layout.likely_h)
        .map_err(|e| format!("{e:?}"))
}
