//! The shed: nets to weigh, tubs, hay and the weather of the day.

use crate::shelf::Shelf;
use crate::views::nets::{NetsDay, nets_day, subjects};
use crate::views::round::Today;
use crate::views::tub::{Tub, tub};
use crate::views::{hanging, hay};
use tussock_core::animal::LotId;
use tussock_core::forage::{ForageClass, Verdict};
use tussock_core::log::bodies::{Chip, WeatherV2};
use tussock_core::log::published::WEATHER_LOOKED_BACK_DAYS;
use tussock_core::log::{Body, Kind, Subject as About};
use tussock_core::soak::Air;
use tussock_core::sources::RecordId;
use tussock_core::units::{Instant, LocalDate};

/// How a tag stands: the seven states of the visual language.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Standing {
    /// Done, within.
    Done,
    /// Comes later.
    Later,
    /// Due now.
    Due,
    /// Late.
    Late,
    /// Wants care.
    Care,
    /// A stop that is true now.
    Stop,
    /// Not known.
    NotKnown,
}

/// A lot as a row.
#[derive(Clone, Debug, PartialEq)]
pub struct LotRow {
    /// Which.
    pub id: LotId,
    /// Its name.
    pub name: String,
    /// What it is said to be.
    pub class: ForageClass,
    /// A laboratory reported on it.
    pub tested: bool,
    /// The verdict on its sugar for the strictest animal here; `None` when no rule asks for one.
    pub verdict: Option<Verdict>,
}

impl LotRow {
    /// How the row stands.
    pub const fn standing(&self) -> Standing {
        match self.verdict {
            Some(Verdict::Within { .. }) => Standing::Done,
            Some(Verdict::Over { .. } | Verdict::NotProven { chance: Some(_) }) => Standing::Care,
            Some(Verdict::NotProven { chance: None }) | None => Standing::NotKnown,
        }
    }
}

/// The chips of the day.
#[derive(Clone, Debug, PartialEq)]
pub struct Weather {
    /// Today's record, when somebody set a chip today.
    pub record: Option<RecordId>,
    /// The day.
    pub day: LocalDate,
    /// The chips that hold.
    pub chips: Vec<Chip>,
    /// They are carried over from an earlier day.
    pub carried: bool,
}

impl Weather {
    /// The air for soaking: mild when no chip speaks of it.
    pub fn air(&self) -> Air {
        let day = WeatherV2 {
            date: self.day,
            chips: self.chips.clone(),
            carried: self.carried,
        };
        day.air().unwrap_or(Air::Mild)
    }
}

/// The shed.
#[derive(Clone, Debug, PartialEq)]
pub struct Shed {
    /// The nets of today, an animal or group a row; those without nets are left out.
    pub nets: Vec<NetsDay>,
    /// The nets that hang and of which nobody said what was left: in front of whom, its name, since when, how many.
    pub hanging: Vec<(About, String, Instant, usize)>,
    /// The soaks that are going on, the next due first.
    pub tubs: Vec<Tub>,
    /// The hay, by name.
    pub lots: Vec<LotRow>,
    /// The chips of the day.
    pub weather: Weather,
}

impl Shed {
    /// How many nets are to be weighed for today.
    pub fn to_weigh(&self) -> usize {
        self.nets.iter().map(NetsDay::to_weigh).sum()
    }

    /// The first subject with nets to weigh.
    pub fn next_nets(&self) -> Option<&NetsDay> {
        self.nets.iter().find(|day| 0 < day.to_weigh())
    }

    /// The tub at which something must be done now.
    pub fn due_tub(&self, now: Instant) -> Option<&Tub> {
        self.tubs.iter().find(|tub| tub.state(now).is_due())
    }
}

/// The shed from the records of [`super::round::needs`].
pub fn shed(shelf: &Shelf, today: &Today) -> Shed {
    let mut tubs: Vec<Tub> = today
        .due
        .soaks
        .iter()
        .map(|soak| tub(shelf, soak))
        .collect();
    tubs.sort_by_key(|tub| {
        let line = &tub.line;
        let next = match (tub.soak.times.lifted, tub.soak.times.fed) {
            (None, _) => line.lift_out,
            (Some(_), None) => line.drained,
            (Some(_), Some(_)) => line.throw_away,
        };
        (next, tub.soak.id.clone())
    });
    Shed {
        nets: subjects(today)
            .into_iter()
            .filter_map(|id| nets_day(shelf, today, id, today.day))
            .collect(),
        hanging: hanging::all(shelf, today),
        tubs,
        lots: hay::rows(shelf),
        weather: weather(shelf, today.day),
    }
}

/// The chips of a day: those that were set on it, else those of the day before it, carried over. Of a dry spell that was said
/// last nobody's silence is the end: it is carried for as long as it closes grass, so that a row without it takes it off.
pub fn weather(shelf: &Shelf, day: LocalDate) -> Weather {
    let mut last = None;
    for (record, body) in shelf.bodies(&Kind::Weather) {
        if let Body::Weather(mut body) = body
            && (0..=*WEATHER_LOOKED_BACK_DAYS).contains(&(day - body.date).num_days())
        {
            if 1 < (day - body.date).num_days() {
                body.chips.retain(|chip| *chip == Chip::DrySpell);
            }
            let order = (body.date, record.stamp);
            if last.as_ref().is_none_or(|(before, _, _)| *before < order) {
                last = Some((order, record.id.clone(), body.chips));
            }
        }
    }
    match last {
        Some(((date, _), record, chips)) => Weather {
            record: (date == day).then_some(record),
            day,
            carried: date < day && !chips.is_empty(),
            chips,
        },
        None => Weather {
            record: None,
            day,
            chips: Vec::new(),
            carried: false,
        },
    }
}
