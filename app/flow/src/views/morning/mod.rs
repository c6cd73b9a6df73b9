//! An owner's morning as acts: nets filled, hay soaked, lifted out, fed, thrown away.

mod grass;
mod hanging;
mod jobs;
mod lots;
mod pass;
mod relaid;
mod reminders;
mod soaks;
mod weighing;

use crate::acts::{Act, Context, New, apply};
use crate::forms::nets::{Wrong, all_to_target, own_weight, weighed};
use crate::forms::round::{Refused, Ticking};
use crate::forms::shed::chip;
use crate::forms::tub as soaking;
use crate::shelf::Shelf;
use crate::views::filled::stock;
use crate::views::nets::{NetState, NetsDay, OwnFrom, nets_day};
use crate::views::round::{Today, about, needs, standing, ticks, today};
use crate::views::shed::{Standing, shed, weather};
use crate::views::tub::{TubSeen, seen, wanted};
use crate::words::{English, NetsWords, RoundWords, TubWords};
use tussock_core::animal::{
    Animal, AnimalId, Appetite, Goal, Health, Kind, LotId, Phase, StageFacts, State, Temperament,
    TubId, Workload, YardId,
};
use tussock_core::day::OnScale;
use tussock_core::forage::ForageClass;
use tussock_core::log::bodies::base::{BodyHundredths, Count, FeedGrams};
use tussock_core::log::bodies::{
    AnimalV2, Chip, JobAnswer, LotV1, NetShareV1, PlanV1, RecipeV1, SoakMinutes,
};
use tussock_core::log::{Body, Case, DeviceId, Known, Name, Record, Subject, ZoneTable};
use tussock_core::round::{JobKind, JobState};
use tussock_core::soak::{Air, TubState, TubStep, Water};
use tussock_core::sources::RecordId;
use tussock_core::units::{AsFed, Instant, LocalStamp, LocalTime, PartOfBody, Zone};

pub(super) fn zone() -> ZoneTable {
    Case::read(include_str!(
        "../../../../../core/examples/cases/two-cobs-and-a-shetland.json"
    ))
    .unwrap()
    .zone
}

/// A time of 5 May 2026 and the days after it.
pub(super) fn at(day: u32, time: &str) -> Instant {
    let date = format!("2026-05-{day:02}").parse().unwrap();
    let time = time.parse::<LocalTime>().unwrap();
    zone().to_instant(LocalStamp { date, time }).planned()
}

pub(super) fn yard() -> Subject {
    Subject::yard(&YardId("y".into()))
}

/// The records with a clock and a counter for ids.
pub(super) struct Yard {
    pub(super) shelf: Shelf,
    made: u32,
}

impl Yard {
    pub(super) fn act(&mut self, now: Instant, act: &Act) {
        let context = Context {
            now,
            offset_min: 60,
            zone: "Europe/London".into(),
            yard: YardId("y".into()),
            by: None,
            device: DeviceId::from_text("abcdefgh").unwrap(),
            last: self.shelf.records().map(|record| record.stamp).max(),
        };
        for row in apply(act, &self.shelf, &context, None).unwrap().writes.rows {
            self.shelf.put(Record::from_text(&row.json).unwrap());
        }
    }

    fn add(&mut self, now: Instant, id: &str, subject: Subject, body: Body) {
        let new = New {
            id: RecordId(id.into()),
            subject,
            at: None,
            known: Known::Seen,
            body,
        };
        self.act(now, &Act::Add(new));
    }

    pub(super) fn id(&mut self) -> String {
        self.made += 1;
        format!("made-{}", self.made)
    }

    pub(super) fn today(&self, now: Instant) -> Today {
        today(&self.shelf, now, &zone())
    }

    pub(super) fn nets(&self, now: Instant) -> NetsDay {
        let today = self.today(now);
        nets_day(&self.shelf, &today, "bramble", today.day).unwrap()
    }

    pub(super) fn weigh(&mut self, now: Instant, typed: &str) {
        let day = self.nets(now);
        let id = self.id();
        let act = weighed(&day.about, day.next().unwrap().1, typed, &id).unwrap();
        self.act(now, &act);
    }

    /// Ticks the first job of a kind.
    pub(super) fn tick(&mut self, now: Instant, kind: JobKind) {
        let today = self.today(now);
        let job = today
            .round
            .jobs
            .iter()
            .find(|job| job.kind == kind)
            .unwrap();
        let (shelf, yard) = (self.shelf.clone(), yard());
        let act = Ticking {
            shelf: &shelf,
            today: &today,
            yard: &yard,
            tub_name: &|nth| English::default().tub_name(nth),
        }
        .tick(job, &mut || self.id())
        .unwrap();
        self.act(now, &act);
    }

    pub(super) fn soak(&self, now: Instant) -> crate::views::tub::Tub {
        let today = self.today(now);
        let id = TubId(today.due.soaks[0].id.0.clone());
        match seen(&self.shelf, &today, &id) {
            TubSeen::Open(open) => *open,
            other => panic!("{other:?}"),
        }
    }

    pub(super) fn go_on(&mut self, now: Instant) {
        let (tub, today) = (self.soak(now), self.today(now));
        let act = soaking::next(&tub, &today, now, || self.id())
            .unwrap()
            .unwrap();
        self.act(now, &act);
    }
}

/// Bramble, two soaked nets of 3.60 kg at 07:20 and two dry ones at 18:00, from yesterday on.
pub(super) fn bramble() -> Yard {
    let mut yard_of = Yard {
        shelf: Shelf::default(),
        made: 0,
    };
    let start = at(4, "20:00:00");
    let id = AnimalId("bramble".into());
    let animal = Animal {
        id: id.clone(),
        name: "Bramble".into(),
        kind: Kind::Pony,
        body_type: None,
        sex: None,
        born: None,
        height: None,
        state: State::Adult,
        stage: StageFacts::default(),
        work: Workload::Maintenance(Temperament::Average),
        health: Health {
            appetite: Appetite::Eating,
            ..Health::default()
        },
        goal: Goal::Lose,
        phase: Phase::New,
        target: None,
    };
    let body = Body::Animal(AnimalV2::of(&animal).unwrap());
    yard_of.add(start, "bramble", Subject::animal(&id), body);
    let lot = LotId("lane-field".into());
    let body = Body::Lot(LotV1::of_class("Lane field", ForageClass::Meadow).unwrap());
    yard_of.add(start, "lane-field", Subject::lot(&lot), body);
    let net = |time: &str, soaked| NetShareV1 {
        visit: time.parse().unwrap(),
        lot: lot.clone(),
        as_fed_g: FeedGrams::new(3_600).unwrap(),
        soaked,
        net: None,
    };
    let plan = PlanV1 {
        rules: Name::new("1").unwrap(),
        from: "2026-05-05".parse().unwrap(),
        review: "2026-05-18".parse().unwrap(),
        decided_by: None,
        inputs: Vec::new(),
        weight_g: None,
        level: BodyHundredths::of(PartOfBody::percent(1.5)).unwrap(),
        lowest: BodyHundredths::of(PartOfBody::percent(1.5)).unwrap(),
        amounts: Vec::new(),
        visits: vec!["07:20:00".parse().unwrap(), "18:00:00".parse().unwrap()],
        nets: vec![
            net("07:20:00", true),
            net("07:20:00", true),
            net("18:00:00", false),
            net("18:00:00", false),
        ],
        soaking: Some(RecipeV1 {
            water: Water::TapSummer,
            minutes: SoakMinutes::new(60).unwrap(),
        }),
        look_over_days: Count::new(1).unwrap(),
        work_a_week: None,
        gap_accepted_min: None,
        job: None,
    };
    yard_of.add(start, "plan", Subject::animal(&id), Body::Plan(plan));
    yard_of
}

pub(super) fn kg(mass: AsFed) -> f64 {
    (mass.to_kg() * 100.0).round() / 100.0
}
