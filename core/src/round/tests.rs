//! An ordinary yard: Bramble with two visits and soaked hay, Moss in the dry.

mod days;
mod grass;
mod tubs;
mod visits;

use super::*;
use crate::animal::{AnimalId, LotId};
use crate::soak::{Air, Recipe, SoakTimes, Water};
use crate::sources::RecordId;
use crate::units::{AsFed, Instant, LocalDate, LocalTime, Zone};

/// The clock of Britain in 2026.
#[derive(Debug)]
pub(super) struct Britain;

impl Zone for Britain {
    fn offset_min(&self, at: Instant) -> i32 {
        // 2026-03-29 and 2026-10-25, 01:00 UTC.
        if (1_774_746_000_000..1_792_890_000_000).contains(&at.to_ms()) {
            60
        } else {
            0
        }
    }
}

pub(super) fn day(text: &str) -> LocalDate {
    text.parse().unwrap()
}

pub(super) fn time(text: &str) -> LocalTime {
    format!("{text}:00").parse().unwrap()
}

fn at(date: &str, clock: &str) -> Instant {
    super::state::at(&Britain, day(date), time(clock))
}

pub(super) fn animal(name: &str) -> Subject {
    Subject::Animal(AnimalId(name.to_owned()))
}

pub(super) fn net(visit: &str, soaked: bool) -> PlannedNet {
    PlannedNet {
        visit: time(visit),
        lot: LotId("back-field".to_owned()),
        hay: AsFed::kg(3.6),
        soaked,
        net: None,
        less_for_grass: None,
    }
}

pub(super) fn plan(name: &str, nets: Vec<PlannedNet>) -> IssuedPlan {
    IssuedPlan {
        subject: animal(name),
        name: name.to_owned(),
        issued: at("2026-05-01", "10:00"),
        from: day("2026-05-02"),
        review: day("2026-05-16"),
        visits: vec![time("06:30"), time("17:30")],
        nets,
        recipe: Some(Recipe::usual(Water::TapSummer)),
        feeds: Vec::new(),
        word_ended: false,
        anew: Vec::new(),
        part: false,
        changed: false,
        rests: Vec::new(),
    }
}

#[derive(Default)]
struct Yard {
    plans: Vec<IssuedPlan>,
    watched: Vec<Watched>,
    words: Vec<HeldWord>,
    stopped: Vec<Stopped>,
    soaks: Vec<OpenSoak>,
    turnouts: Vec<TurnoutPlanned>,
    out: Vec<OpenTurnout>,
    dry: Vec<DryVisit>,
    answered: Vec<Answered>,
}

impl Yard {
    fn bramble() -> Self {
        let nets = vec![net("06:30", true), net("06:30", true), net("17:30", false)];
        Self {
            plans: vec![plan("bramble", nets)],
            ..Self::default()
        }
    }

    fn answer(&mut self, key: Key, at: Instant) {
        self.answered.push(Answered { at, key });
    }

    fn at(&self, now: Instant) -> Round {
        round(&RoundFor {
            now,
            zone: &Britain,
            plans: &self.plans,
            watched: &self.watched,
            words: &self.words,
            stopped: &self.stopped,
            soaks: &self.soaks,
            dry: &self.dry,
            turnouts: &self.turnouts,
            out: &self.out,
            answered: &self.answered,
        })
    }
}

fn keys(round: &Round) -> Vec<String> {
    round.jobs.iter().map(|job| job.key.to_string()).collect()
}

fn key(text: &str) -> Key {
    Key::from_text(text).unwrap()
}

fn of<'a>(round: &'a Round, text: &str) -> Option<&'a Job> {
    round.jobs.iter().find(|job| job.key == key(text))
}

fn soak(started: Instant, by: Option<&str>) -> OpenSoak {
    OpenSoak {
        id: RecordId("soak-1".to_owned()),
        tub: None,
        tub_name: Some("tub 2".to_owned()),
        subject: animal("bramble"),
        name: "bramble".to_owned(),
        lot: LotId("back-field".to_owned()),
        recipe: Recipe::usual(Water::TapSummer),
        times: SoakTimes::started(started),
        air: Air::Mild,
        hay: Some(AsFed::kg(7.2)),
        started_by: by.map(key),
        hangs: Vec::new(),
    }
}

/// Yesterday was done, so that nobody was away.
fn with_yesterday(mut yard: Yard) -> Yard {
    let done = key("hang_net/animal:bramble/2026-05-04/2.1");
    yard.answer(done, at("2026-05-04", "17:35"));
    yard
}
