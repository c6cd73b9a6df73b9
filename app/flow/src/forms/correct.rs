//! A time of a soak, corrected.

use super::tub::Wrong;
use crate::acts::Act;
use crate::views::tub::{Logged, Tub};
use tussock_core::log::Body;
use tussock_core::log::bodies::soak_times;
use tussock_core::units::{Instant, LocalStamp, LocalTime, Zone};

/// A time on the clock as typed: `6:05`, `06.05`, `0605`, `605`.
///
/// # Errors
/// A text that is no time.
pub fn clock(typed: &str) -> Result<LocalTime, Wrong> {
    let wrong = || Wrong::Time(typed.trim().to_owned());
    let text = typed.trim();
    let (hours, minutes) = match text.split_once([':', '.', ',', ' ']) {
        Some(parts) => parts,
        None if (3..=4).contains(&text.len()) && text.is_ascii() => {
            text.split_at(text.len().saturating_sub(2))
        }
        None => (text, "00"),
    };
    let whole = |text: &str| text.trim().parse::<u32>().map_err(|_| wrong());
    LocalTime::from_hms_opt(whole(hours)?, whole(minutes)?, 0).ok_or_else(wrong)
}

/// The act that corrects when a step happened: that time on the day it was logged, or the day before where it would be
/// still to come.
///
/// # Errors
/// A text that is no time, a time to come, steps out of their order.
pub fn correct(
    tub: &Tub,
    step: &Logged,
    typed: &str,
    now: Instant,
    zone: &impl Zone,
) -> Result<Act, Wrong> {
    let time = clock(typed)?;
    let day = zone.to_local(step.at).date;
    let on = |date| zone.to_instant(LocalStamp { date, time }).planned();
    let at = match day.pred_opt() {
        Some(before) if now < on(day) => on(before),
        _ => on(day),
    };
    if now < at {
        return Err(Wrong::ToCome);
    }
    let steps = tub.steps.iter().map(|other| {
        let when = if other.id == step.id { at } else { other.at };
        (&other.id, when, &other.body.happened)
    });
    if let Some(times) = soak_times(&tub.soak.id, steps) {
        times.check().map_err(Wrong::Soak)?;
    }
    Ok(Act::Change {
        id: step.id.clone(),
        body: Body::SoakStep(step.body.clone()),
        at: Some(at),
    })
}
