//! What closes grass, and what asks for care.

use super::asked::{Night, Sky, WindowFor};
use super::published::{AFTER_FREEZE, BARE, LEAF_LEFT_ALONE};
use crate::animal::Answer;
use crate::graze::season::Flush;
use crate::units::{Instant, Length, LocalDate, Span};
use chrono::Duration;

/// Why grass is closed on a day.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Closed {
    /// Grass is in its flush, and the animal is at risk.
    Flush,
    /// Whether grass is in its flush is not known, and the animal is at risk: no place and no note, or grass follows the
    /// rain.
    FlushNotKnown,
    /// The night was at 5 degrees or under, and the animal is at risk.
    ColdNight,
    /// A hard frost lies on the grass this morning.
    Frost,
    /// A hard freeze within the last seven days.
    HardFreeze {
        /// The last day to keep off.
        until: LocalDate,
    },
    /// A dry spell, and the animal is at risk.
    Drought,
    /// The grass is seeding, and the animal is at risk.
    Seeding,
    /// Nobody said what the night was, and the animal is at risk.
    NightNotSaid,
    /// The leaf is under 5 cm: that is no forage.
    Bare,
    /// The leaf is under 7.5 cm: it is left alone to grow.
    ShortLeaf,
    /// A sign, lameness, an episode, or no vet's word. Set by the one who asks.
    Stopped,
    /// The hay leaves no room for the least that would be eaten. Set by the one who asks.
    HayLeavesNoRoom,
    /// The animal is at risk, and its plan has no grass, or there is no plan. Set by the one who asks.
    NotInPlan,
    /// The paddock rests. Set by the one who asks.
    Resting {
        /// The first day it may be grazed again, when somebody said.
        until: Option<LocalDate>,
    },
}

/// What asks for care and closes nothing.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Care {
    /// Grass is in its flush: hours and area are limited more.
    Flush,
    /// The flush may begin any day.
    FlushNear {
        /// Its usual first day.
        usual: LocalDate,
    },
    /// Whether grass is in its flush is not known: no place, or grass follows the rain.
    FlushNotKnown,
    /// Rain after a dry time makes grass grow again.
    AutumnGrowth,
    /// The night was at 5 degrees or under: the sugar of yesterday is still there.
    ColdNight,
    /// Nobody said what the night was.
    NightNotSaid,
    /// The day is to come: it holds if the night stays over 5 degrees.
    IfNightOver5,
    /// Nobody said what the sky is, so it is taken for clear.
    SkyNotSaid,
    /// A dry spell: sugar stays in grass that does not grow.
    Drought,
    /// The grass is seeding: its sugar is in stem and head.
    Seeding,
    /// Nobody said whether it is seeding.
    SeedingNotSaid,
    /// Nobody said how high the leaf stands.
    LeafNotSaid,
    /// The evening stretch holds if the evening stays mild, and better under cloud.
    EveningIfMild,
    /// Nobody said where the yard lies: told by the clock alone.
    NoPlace,
    /// The sun does not rise: no sugar is made, and it is dark.
    NoSun,
    /// The sun does not set: sugar is made all night, and the clock is all there is.
    NoNight,
    /// It is dark until then.
    DarkUntil(Instant),
    /// The clock is not that of the place: the times go by the sun alone.
    ClockOfElsewhere {
        /// How far the clock is ahead of the sun.
        ahead: Span,
    },
}

/// Whether rule 16 closes for this animal what it only limits for one that is only fat.
pub(super) fn at_risk(ask: &WindowFor<'_>) -> bool {
    ask.risk.restricts_meals()
}

fn freeze_until(ask: &WindowFor<'_>) -> Option<LocalDate> {
    let weather = &ask.weather;
    let today = weather.frost.then_some(ask.day);
    let last = today.or_else(|| weather.last_hard_freeze.filter(|d| *d <= ask.day))?;
    last.checked_add_signed(Duration::days(*AFTER_FREEZE))
        .filter(|until| ask.day <= *until)
}

/// What closes the day, and what asks for care, in the order of the rule.
pub(super) fn judged(ask: &WindowFor<'_>) -> (Vec<Closed>, Vec<Care>) {
    let (mut closed, mut care) = (Vec::new(), Vec::new());
    let risk = at_risk(ask);
    let mut either = |shut: Closed, else_care: Care| {
        if risk {
            closed.push(shut);
        } else {
            care.push(else_care);
        }
    };
    match ask.season.flush {
        Flush::On(_) => either(Closed::Flush, Care::Flush),
        Flush::NotKnown => either(Closed::FlushNotKnown, Care::FlushNotKnown),
        Flush::Near { .. } | Flush::Off(_) => {}
    }
    match ask.weather.night {
        Night::Cold => either(Closed::ColdNight, Care::ColdNight),
        Night::NotSaid if !ask.to_come => either(Closed::NightNotSaid, Care::NightNotSaid),
        Night::Over5 | Night::Mild | Night::NotSaid => {}
    }
    if ask.weather.dry_spell {
        either(Closed::Drought, Care::Drought);
    }
    if ask.seeding == Answer::Yes {
        either(Closed::Seeding, Care::Seeding);
    }
    if ask.weather.frost {
        closed.push(Closed::Frost);
    }
    if let Some(until) = freeze_until(ask) {
        closed.push(Closed::HardFreeze { until });
    }
    match ask.leaf {
        Some(leaf) if leaf.likely < Length::cm(*BARE) => closed.push(Closed::Bare),
        Some(leaf) if leaf.likely < Length::cm(*LEAF_LEFT_ALONE) => closed.push(Closed::ShortLeaf),
        Some(_) => {}
        None => care.push(Care::LeafNotSaid),
    }
    for other in ask.also {
        if !closed.contains(other) {
            closed.push(*other);
        }
    }
    care.extend(unsaid(ask));
    (closed, care)
}

/// What nobody said, and what the season adds.
fn unsaid(ask: &WindowFor<'_>) -> Vec<Care> {
    let mut care = Vec::new();
    if let Flush::Near { usual } = ask.season.flush {
        care.push(Care::FlushNear { usual });
    }
    if ask.season.autumn && !ask.season.flush.is_on() {
        care.push(Care::AutumnGrowth);
    }
    if ask.to_come && ask.weather.night == Night::NotSaid {
        care.push(Care::IfNightOver5);
    }
    if ask.weather.sky == Sky::NotSaid && !ask.shade {
        care.push(Care::SkyNotSaid);
    }
    if ask.seeding == Answer::NotKnown {
        care.push(Care::SeedingNotSaid);
    }
    care
}
