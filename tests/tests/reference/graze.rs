//! When grass is open, the sugar of a day, and the year of grass.

use chrono::Duration;
use tussock_core::animal::{Answer, RiskLevel};
use tussock_core::graze::season::published::EPISODES;
use tussock_core::graze::season::{Flush, Known, SeasonOn, season_on};
use tussock_core::graze::sun::Latitude;
use tussock_core::graze::window::published::{
    COLD_NIGHT_READ, FESCUE_MEAN, FESCUE_RISE, HARD_FREEZE, LEAF_AFTER_LIGHT,
};
use tussock_core::graze::window::{
    Closed, DayWeather, Night, Sky, Window, WindowFor, sugar_at, window,
};
use tussock_core::limits::Ends;
use tussock_core::units::{Length, LocalDate, Temperature};
use tussock_tests::reference::{Formulas, Inputs, RowCounts};
use tussock_tests::zone::TableZone;

pub fn formulas() -> Formulas {
    vec![
        ("graze.rise_of_mean", |i| {
            let at = month(i, "month")?;
            Ok(100.0 * FESCUE_RISE[at] / FESCUE_MEAN[at])
        }),
        ("graze.mean_of_mean", |i| {
            Ok(FESCUE_MEAN[month(i, "month")?] / FESCUE_MEAN[month(i, "other")?])
        }),
        ("graze.sugar_at", |i| {
            Ok(sugar_at(
                i.number("mean")?,
                i.number("swing")?,
                i.number("hour")?,
            ))
        }),
        ("graze.leaf_after_light", |_| Ok(*LEAF_AFTER_LIGHT)),
        ("graze.morning_stretches", |i| {
            let night = Night::of_lowest(Temperature::celsius(i.number("lowest")?));
            let risk = match i.text("risk")? {
                "at_risk" => RiskLevel::AtRisk,
                "clear" => RiskLevel::Clear,
                other => return Err(format!("no risk {other:?}")),
            };
            Ok(told(risk, "2026-07-14", night, None, 15.0)?.opens.len() as f64)
        }),
        ("graze.days_off", |i| {
            let freeze = date("2026-11-01")?;
            let leaf = i.number("leaf")?;
            let mut days = 0;
            for after in 1..30 {
                let day = (freeze + Duration::days(after)).to_string();
                let told = told(RiskLevel::Clear, &day, Night::Over5, Some(freeze), leaf)?;
                let shut = |c: &Closed| matches!(c, Closed::HardFreeze { .. });
                days += u32::from(told.closed.iter().any(shut));
            }
            Ok(f64::from(days))
        }),
        ("graze.open_after_freeze", |i| {
            let freeze = date("2026-11-01")?;
            let leaf = i.number("leaf")?;
            let told = told(
                RiskLevel::Clear,
                "2026-11-09",
                Night::Over5,
                Some(freeze),
                leaf,
            )?;
            Ok(told.opens.len() as f64)
        }),
        ("graze.read_celsius", |i| {
            let read = match i.text("which")? {
                "cold_night" => *COLD_NIGHT_READ,
                "hard_freeze" => *HARD_FREEZE,
                other => return Err(format!("no temperature {other:?}")),
            };
            Ok(Temperature::fahrenheit(read).to_celsius())
        }),
        ("graze.episodes", |_| {
            let [episodes, years] = *EPISODES;
            Ok(100.0 * episodes / years)
        }),
        ("graze.flush_on", |i| {
            Ok(f64::from(u8::from(season(i)?.flush.is_on())))
        }),
        ("graze.autumn_on", |i| {
            Ok(f64::from(u8::from(season(i)?.autumn)))
        }),
    ]
}

pub fn rows() -> RowCounts {
    vec![
        ("mayland_2003", 1),
        ("menzies_gow_2010", 3),
        ("pollard_2019", 1),
        ("shewmaker_2006", 6),
        ("umn_grazing", 7),
    ]
}

fn date(text: &str) -> Result<LocalDate, String> {
    text.parse().map_err(|e| format!("{text}: {e}"))
}

/// Which of the four months that were sampled.
fn month(i: &Inputs, key: &str) -> Result<usize, String> {
    let wanted = i.text(key)?;
    ["5", "7", "8", "9"]
        .iter()
        .position(|m| *m == wanted)
        .ok_or_else(|| format!("no month {wanted}"))
}

fn season(i: &Inputs) -> Result<SeasonOn, String> {
    let latitude = Latitude::degrees(i.number("north")?).map_err(|e| format!("{e:?}"))?;
    Ok(season_on(Some(latitude), date(i.text("day")?)?, &[]))
}

/// A sunny morning out of the flush, told by the clock.
fn told(
    risk: RiskLevel,
    day: &str,
    night: Night,
    last_hard_freeze: Option<LocalDate>,
    leaf: f64,
) -> Result<Window, String> {
    let ask = WindowFor {
        risk,
        day: date(day)?,
        to_come: false,
        place: None,
        weather: DayWeather {
            night,
            frost: false,
            sky: Sky::Sunny,
            dry_spell: false,
            last_hard_freeze,
        },
        season: SeasonOn {
            flush: Flush::Off(Known::ByLatitude),
            autumn: false,
            part: None,
        },
        leaf: Some(Ends::exactly(Length::cm(leaf))),
        seeding: Answer::No,
        shade: false,
        also: &[],
    };
    Ok(window(&ask, &TableZone::new(0, &[])))
}
