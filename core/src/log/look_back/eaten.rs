//! What was eaten otherwise than planned in the days before an episode, and what of it is not known.

use super::count;
use crate::day::{DayOfLedger, HowKnown, Totals};
use crate::progress::published::OFF_PLAN;
use crate::progress::{Changed, Happened, NotLogged};
use crate::units::LocalDate;

/// The days on which the known offer of hay and feed differed from the plan by more than a tenth.
pub(super) fn off_plan(days: &[DayOfLedger]) -> Option<Happened> {
    let off: Vec<(LocalDate, f64)> = days
        .iter()
        .filter(|day| !day.runs)
        .filter_map(|day| {
            let fed = DayOfLedger {
                servings: day
                    .servings
                    .iter()
                    .filter(|serving| !serving.is_grass())
                    .cloned()
                    .collect(),
                ..day.clone()
            };
            let totals = Totals::of(&[&fed]);
            let planned = totals.planned.filter(|dry| 0.0 < dry.to_kg())?;
            let part = totals.offered.dry.likely / planned - 1.0;
            // What nobody knows is not less than planned.
            let known = !totals.offered.at_least || 0.0 < part;
            (known && *OFF_PLAN < part.abs()).then_some((day.day, part))
        })
        .collect();
    let (on, _) = off.first()?;
    let (_, most) = off
        .iter()
        .max_by(|(_, a), (_, b)| a.abs().total_cmp(&b.abs()))?;
    Some(Happened {
        on: *on,
        what: Changed::OffPlan {
            days: count(off.len()),
            most: *most,
        },
    })
}

/// The days on which something that was to be fed is not known, or nothing was planned and nothing logged.
pub(super) fn eaten_not_known(days: &[DayOfLedger]) -> Option<NotLogged> {
    let blank = |day: &&DayOfLedger| {
        day.is_blank()
            || day
                .servings
                .iter()
                .any(|serving| !serving.is_grass() && serving.how_offered() == HowKnown::NotKnown)
    };
    let days = count(days.iter().filter(|day| !day.runs).filter(blank).count());
    (0 < days).then_some(NotLogged::Eaten { days })
}
