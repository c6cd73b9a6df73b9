//! The records of many weeks, and beside them what they say, kept in plain fields.

use super::steps::{Flagged, Look, Said, Step, Weighed};
use serde_json::{Value, json};
use std::path::PathBuf;
use tussock_core::animal::{
    Animal, AnimalId, Answer, Appetite, Goal, Handful, Laminitis, Phase, VetFlag,
};
use tussock_core::assess::{LengthKind, Reading, ScaleInstrument, ScaleWeight, Tape};
use tussock_core::log::bodies::{AnimalV2, PlanV1, WeightV1};
use tussock_core::log::{
    Body, Case, DeviceId, Gathered, Kind, Record, Stamp, Subject, Wish, gather,
};
use tussock_core::soak::{Recipe, Water};
use tussock_core::sources::RecordId;
use tussock_core::units::{BodyMass, Instant, Length, LocalDate, Span, Zone};

/// A weight that was read.
#[derive(Clone, Copy, Debug)]
pub(super) struct Read {
    pub(super) kg: f64,
    /// What the same tape says of a fat donkey.
    pub(super) fat: Option<f64>,
    pub(super) on_scale: bool,
}

/// A vet's word with its days, and the day it was written down.
#[derive(Clone, Copy, Debug)]
pub(super) struct Word {
    pub(super) level: Option<f64>,
    pub(super) given: LocalDate,
    pub(super) expires: LocalDate,
    pub(super) known: LocalDate,
}

/// Whose weeks they are.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Who {
    Pony,
    Donkey,
}

/// The records, and what they say.
pub(super) struct History {
    pub(super) who: Who,
    case: Case,
    now: Instant,
    records: Vec<Record>,
    stamp: Option<Stamp>,
    id: AnimalId,
    wish: Wish,
    animal: Animal,
    kg: f64,
    pub(super) recipe: Recipe,
    pub(super) weighed: Vec<Read>,
    pub(super) scores: Vec<(LocalDate, f64)>,
    pub(super) signs: [Answer; 8],
    /// The day the last sign was seen that still stands.
    pub(super) sign_since: Option<LocalDate>,
    pub(super) laminitis: Laminitis,
    pub(super) phase: Phase,
    pub(super) goal: Goal,
    pub(super) appetite: Appetite,
    pub(super) flags: Vec<VetFlag>,
    pub(super) words: Vec<Word>,
    /// The plans that were taken, with their levels in percent.
    pub(super) plans: Vec<(LocalDate, f64)>,
}

fn case(name: &str) -> Case {
    let folder = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../core/examples/cases");
    let text = std::fs::read_to_string(folder.join(format!("{name}.json"))).unwrap();
    Case::read(&text).unwrap()
}

impl History {
    /// A sound pony of 372 kg, or a donkey of 185 kg, that nobody weighed, scored or looked over yet, with a tested hay and
    /// one that is not.
    pub(super) fn new(who: Who) -> Self {
        let (case, other) = (
            case("bramble-tested-hay"),
            match who {
                Who::Pony => case("bramble"),
                Who::Donkey => case("donkey"),
            },
        );
        let of_the_yard = |record: &&Record| {
            !matches!(
                record.kind,
                Kind::Animal | Kind::Weight | Kind::Condition | Kind::LookOver
            )
        };
        let mut records: Vec<Record> = case.log.current().filter(of_the_yard).cloned().collect();
        let own = |record: &&Record| matches!(record.kind, Kind::Lot | Kind::Animal);
        records.extend(other.log.current().filter(own).cloned());
        let at = records
            .iter()
            .position(|record| record.kind == Kind::Animal)
            .unwrap();
        let Body::Animal(body) = Body::read(&records[at]).unwrap() else {
            panic!("no animal");
        };
        let mut animal = body.animal(&records[at].id);
        animal.health.laminitis = Laminitis::Never;
        animal.phase = Phase::Losing;
        let mut history = Self {
            who,
            now: case.now,
            wish: case.wish.clone(),
            id: animal.id.clone(),
            records,
            stamp: None,
            kg: if who == Who::Pony { 372.0 } else { 185.0 },
            recipe: Recipe::minutes(Water::TapSummer, 60).unwrap(),
            weighed: Vec::new(),
            scores: Vec::new(),
            signs: [Answer::NotKnown; 8],
            sign_since: None,
            laminitis: animal.health.laminitis,
            phase: animal.phase,
            goal: animal.goal,
            appetite: animal.health.appetite,
            flags: Vec::new(),
            words: Vec::new(),
            plans: Vec::new(),
            animal,
            case,
        };
        history.say();
        history.feed(true, 60);
        history
    }

    pub(super) fn day(&self) -> LocalDate {
        self.case.zone.to_local(self.now).date
    }

    fn tick(&mut self) -> Stamp {
        let device = DeviceId::from_text("laws0002").unwrap();
        let stamp = Stamp::tick(self.stamp.as_ref(), None, self.now, device).unwrap();
        self.stamp = Some(stamp);
        stamp
    }

    fn write(&mut self, kind: Kind, body: Value) {
        let stamp = self.tick();
        let id = RecordId(format!(
            "{}-{}",
            kind.word().replace('_', "-"),
            self.records.len()
        ));
        let like = self.records[0].clone();
        self.records.push(Record {
            id,
            kind,
            subject: Subject::animal(&self.id),
            at: self.now,
            stamp,
            after: None,
            body,
            ..like
        });
    }

    /// Writes down what is said of the animal.
    fn say(&mut self) {
        let stamp = self.tick();
        self.animal.health.laminitis = self.laminitis;
        self.animal.health.appetite = self.appetite;
        self.animal.health.flags.clone_from(&self.flags);
        self.animal.phase = self.phase;
        self.animal.goal = self.goal;
        let body = Body::Animal(AnimalV2::of(&self.animal).unwrap());
        let at = self
            .records
            .iter()
            .position(|r| r.kind == Kind::Animal)
            .unwrap();
        self.records[at] = self.records[at].next(stamp, None, &body).unwrap();
    }

    fn feed(&mut self, tested: bool, minutes: u32) {
        self.recipe = Recipe::minutes(Water::TapSummer, minutes).unwrap();
        let lot = if tested { "barn-two" } else { "meadow" };
        self.write(
            Kind::Feeding,
            json!({"hays": [{"lot": lot, "percent": 100}], "balancer": "balancer", "net_kind": "small_holes",
                "soaking": {"water": "tap_summer", "minutes": minutes}}),
        );
    }

    /// Lets a step happen.
    pub(super) fn happen(&mut self, step: Step) {
        self.now = self.now + Span::hours(24 * step.days);
        let day = self.day();
        let (lightest, heaviest) = if self.who == Who::Pony {
            (250.0, 520.0)
        } else {
            (120.0, 200.0)
        };
        self.kg = (self.kg * step.change).clamp(lightest, heaviest);
        self.wish.asked = step.asked;
        self.weigh(step.weighed);
        if let Some(tenths) = step.score {
            self.write(
                Kind::Condition,
                json!({"taken": {"how": "overall", "scale": "nine_step", "tenths": tenths}}),
            );
            self.scores.push((day, f64::from(tenths) / 10.0));
        }
        if let Some(look) = step.look {
            self.look(look, day);
        }
        if let Some(health) = step.health {
            self.laminitis = health.laminitis;
            self.phase = health.phase;
            self.goal = health.goal;
            self.appetite = if health.eats {
                Appetite::Eating
            } else {
                Appetite::Off {
                    last_seen_eating: None,
                    handful: Handful::NotTried,
                    dull: Answer::NotKnown,
                }
            };
            let before = |ago: i64| day - chrono::TimeDelta::days(ago);
            self.flags = health
                .flags
                .into_iter()
                .map(|flag| match flag {
                    Flagged::Lame => VetFlag::Lame,
                    Flagged::PainRelief => VetFlag::PainRelief,
                    Flagged::BoxRest => VetFlag::BoxRest,
                    Flagged::Sglt2Inhibitor => VetFlag::Sglt2Inhibitor,
                    Flagged::Sick => VetFlag::Sick,
                    Flagged::Trimmed(ago) => VetFlag::TrimmedOrShod { on: before(ago) },
                    Flagged::Corticosteroid(ago) => VetFlag::Corticosteroid { last: before(ago) },
                    Flagged::Surgery(ago) => VetFlag::SurgeryOrTransport { on: before(ago) },
                })
                .collect();
            self.say();
        }
        if let Some(said) = step.word {
            self.word(said, day);
        }
        if let Some((tested, minutes)) = step.feeding {
            self.feed(tested, minutes);
        }
    }

    fn weigh(&mut self, how: Weighed) {
        let (reading, fat) = match how {
            Weighed::Not => return,
            Weighed::Scale => {
                let scale = ScaleWeight {
                    mass: BodyMass::kg(self.kg),
                    instrument: ScaleInstrument::AnimalScale,
                };
                (Reading::Scale(scale), None)
            }
            Weighed::Tape => {
                // A girth that gives this weight with a length of its own: of a pony girth squared times length over
                // 11,900, of a donkey girth to 2.12 times length to 0.688 over 3801.
                let (girth, length, kind): (f64, f64, _) = match self.who {
                    Who::Pony => {
                        let girth = (self.kg * 11_900.0 / 150.0).sqrt();
                        (girth, 150.0, LengthKind::Wrap)
                    }
                    Who::Donkey => {
                        let power = self.kg * 3801.0 / 95.0_f64.powf(0.688);
                        (power.powf(1.0 / 2.12), 95.0, LengthKind::ElbowToTuber)
                    }
                };
                let tape = Tape {
                    length: Some((Length::cm(length), kind)),
                    ..Tape::girth(Length::cm(girth))
                };
                // Of a fat donkey of 105 cm girth to 2.575 times height to 0.240 over 3968.
                let fat = girth.powf(2.575) * 105.0_f64.powf(0.240) / 3968.0;
                let fat = (self.who == Who::Donkey).then_some(fat);
                (Reading::Tape(tape), fat)
            }
        };
        let body = Body::Weight(WeightV1::of(&reading).unwrap());
        self.write(Kind::Weight, body.to_value().unwrap());
        self.weighed.push(Read {
            kg: self.kg,
            fat,
            on_scale: how == Weighed::Scale,
        });
    }

    fn look(&mut self, look: Look, day: LocalDate) {
        const NAMES: [&str; 8] = [
            "gait",
            "stance",
            "turning",
            "shifting_weight",
            "strong_pulse",
            "foot_pain",
            "warm_hoof",
            "lying_more",
        ];
        let mut body = serde_json::Map::new();
        for (at, name) in NAMES.iter().enumerate() {
            let (word, answer) = match look {
                Look::Sign(sign) if sign == at => ("yes", Answer::Yes),
                Look::LeftOut(sign) if sign == at => ("not_known", Answer::NotKnown),
                _ => ("no", Answer::No),
            };
            body.insert((*name).to_owned(), Value::from(word));
            // A sign stands until somebody looks again and says it is gone.
            if self.signs[at] != Answer::Yes || answer != Answer::NotKnown {
                self.signs[at] = answer;
            }
        }
        if matches!(look, Look::Sign(0..6)) {
            self.sign_since = Some(day);
        } else if !self.signs[..6].contains(&Answer::Yes) {
            self.sign_since = None;
        }
        self.write(Kind::LookOver, Value::Object(body));
    }

    fn word(&mut self, said: Said, day: LocalDate) {
        let given = day + chrono::TimeDelta::days(said.given);
        let expires = given + chrono::TimeDelta::days(said.days);
        let permit = match said.level {
            Some(level) => json!({"about": "lowest_level", "hundredths": level}),
            None => json!({"about": "work"}),
        };
        let id = self.id.0.clone();
        self.write(
            Kind::VetWord,
            json!({"animal": id, "permit": permit, "vet": "The vet", "practice": "The practice",
                "given": given.to_string(), "how": "by telephone", "expires": expires.to_string()}),
        );
        self.words.push(Word {
            level: said.level.map(|level| f64::from(level) / 100.0),
            given,
            expires,
            known: day,
        });
    }

    /// What the records say now.
    pub(super) fn gathered(&self) -> Gathered {
        let records: Vec<&Record> = self.records.iter().collect();
        let gathered = gather(&records, &self.id, self.now, &self.case.zone, &self.wish).unwrap();
        assert_eq!(gathered.problems, [], "every record is read");
        gathered
    }

    /// Takes a plan.
    pub(super) fn take(&mut self, issued: PlanV1) {
        let level = issued.level.part().to_percent();
        self.plans.push((issued.from, level));
        let body = Body::Plan(issued).to_value().unwrap();
        self.write(Kind::Plan, body);
    }
}
