//! Animals made by seed, and what a tape or a scale says of them.

use std::f64::consts::TAU;
use tussock_core::animal::{
    Animal, AnimalId, Goal, Health, Kind, PersonId, Phase, StageFacts, State, Temperament, Workload,
};
use tussock_core::assess::{Equation, ScaleInstrument, WeightEstimate, WeightMethod};
use tussock_core::progress::{Change, DatedChange, GutFill, Trend, Weighing};
use tussock_core::sources::{Provenance, RecordId};
use tussock_core::units::{BodyMass, LocalDate};

/// Chance by seed: splitmix64, and normal numbers from two of it.
pub(crate) struct Chance(u64);

impl Chance {
    pub(crate) fn new(seed: u64) -> Self {
        Self(seed.wrapping_mul(0x9E37_79B9_7F4A_7C15) ^ 0x5DEE_CE66)
    }

    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        z ^ (z >> 31)
    }

    /// Between 0 and 1.
    pub(crate) fn part(&mut self) -> f64 {
        (self.next() >> 11) as f64 / (1_u64 << 53) as f64
    }

    pub(crate) fn normal(&mut self, spread: f64) -> f64 {
        let (a, b) = (self.part(), self.part());
        (-2.0 * (1.0 - a).ln()).sqrt() * (TAU * b).cos() * spread
    }

    pub(crate) fn below(&mut self, end: u64) -> u64 {
        self.next() % end
    }
}

pub(crate) fn day(number: i64) -> LocalDate {
    let start: LocalDate = "2026-01-05".parse().unwrap();
    start + chrono::Duration::days(number)
}

fn estimate(kg: f64, band: f64, method: WeightMethod) -> WeightEstimate {
    WeightEstimate {
        value: BodyMass::kg(kg),
        low: BodyMass::kg(kg - band),
        high: BodyMass::kg(kg + band),
        method,
        from: Provenance::new(),
    }
}

/// What a tape says: the band of girth and length.
pub(crate) fn tape(on: i64, kg: f64, by: &str, number: usize) -> Weighing {
    Weighing {
        day: day(on),
        weight: estimate(kg, kg * 0.1, WeightMethod::Tape(Equation::GirthLength)),
        by: Some(PersonId(by.to_owned())),
        record: RecordId(format!("tape-{on:05}-{number:03}")),
    }
}

/// What a scale for animals says.
pub(crate) fn scale(on: i64, kg: f64, number: usize) -> Weighing {
    let method = WeightMethod::Scale(ScaleInstrument::AnimalScale);
    Weighing {
        day: day(on),
        weight: estimate(kg, kg * 0.01, method),
        by: None,
        record: RecordId(format!("scale-{on:05}-{number:03}")),
    }
}

/// What a weighbridge for vehicles says.
pub(crate) fn weighbridge(on: i64, kg: f64, number: usize) -> Weighing {
    let method = WeightMethod::Scale(ScaleInstrument::VehicleWeighbridge);
    Weighing {
        day: day(on),
        weight: estimate(kg, 20.0, method),
        by: None,
        record: RecordId(format!("bridge-{on:05}-{number:03}")),
    }
}

pub(crate) fn gut_fill(on: i64, what: GutFill) -> DatedChange {
    DatedChange {
        day: day(on),
        change: Change::GutFill(what),
    }
}

pub(crate) fn fit(weighings: &[Weighing], changes: &[DatedChange], on: i64) -> Trend {
    Trend::fit(weighings, changes, day(on)).unwrap()
}

pub(crate) fn animal(kind: Kind) -> Animal {
    Animal {
        id: AnimalId("animal".to_owned()),
        name: "Bramble".to_owned(),
        kind,
        body_type: None,
        sex: None,
        born: None,
        height: None,
        state: State::Adult,
        stage: StageFacts::default(),
        work: Workload::Maintenance(Temperament::Low),
        health: Health::default(),
        goal: Goal::Lose,
        phase: Phase::Losing,
        target: None,
    }
}
