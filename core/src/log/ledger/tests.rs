//! From the records of a case, an issued plan and what was logged since.

use super::*;
use crate::day::{HowKnown, LeftOver};
use crate::log::bodies::base::{FeedGrams, FeedWeight, JobKey};
use crate::log::bodies::*;
use crate::log::{Answer as Answers, Case, DeviceId, Known, Origin, Stamp, Subject as About};
use crate::round::{JobKind, Key, PlanSlot, slots};
use crate::safety::SafetyVerdict;
use crate::sources::RecordId;
use crate::units::{DryMatter, LocalTime, Span};

mod grass;
mod share;

struct Told {
    case: Case,
    records: Vec<Record>,
    plan: IssuedPlan,
    first: LocalDate,
}

impl Told {
    /// The case, and its plan as issued at its time; the ledger is asked for from the day after.
    fn issued() -> Self {
        let text = include_str!("../../../examples/cases/bramble.json");
        let case = Case::read(text).unwrap();
        let (subject, answer) = case.answers().remove(0);
        let Answers::Animal(SafetyVerdict::Allowed(plan)) = answer else {
            panic!("{answer:?}")
        };
        let body = PlanV1::of(&plan, &[], None).unwrap();
        let first = case.zone.to_local(case.now).date + Days::new(1);
        let mut told = Self {
            records: case.log.current().cloned().collect(),
            plan: issued(&body, bramble(), "", case.now),
            first,
            case,
        };
        told.add(
            "plan-1",
            subject,
            told.case.now,
            Known::Seen,
            &Body::Plan(body),
        );
        told
    }

    fn add(&mut self, id: &str, subject: About, at: Instant, known: Known, body: &Body) {
        let stamp = Stamp::first(at, DeviceId::of_number(7));
        let origin = Origin {
            yard: self.records[0].yard.clone(),
            subject,
            at,
            offset_min: 60,
            zone: "Europe/London".to_owned(),
            by: None,
            known,
        };
        let record = Record::new(RecordId(id.to_owned()), origin, stamp, body).unwrap();
        self.records.push(record);
    }

    fn at(&self, day: u64, hour: i64) -> Instant {
        let midnight = (self.first + Days::new(day))
            .and_time(LocalTime::MIN)
            .and_utc();
        Instant::from_ms(midnight.timestamp_millis()) + Span::hours(hour)
    }

    fn key(&self, day: u64, slot: &PlanSlot) -> Key {
        Key::Day {
            kind: slot.kind,
            subject: bramble(),
            day: self.first + Days::new(day),
            slot: slot.slot,
        }
    }

    fn nets(&self) -> Vec<PlanSlot> {
        let nets = slots(&self.plan).into_iter();
        nets.filter(|slot| slot.kind == JobKind::HangNet).collect()
    }

    /// Every net and feed of a day, taken as planned.
    fn as_planned(&mut self, day: u64) {
        for (index, slot) in slots(&self.plan).iter().enumerate() {
            let key = self.key(day, slot);
            self.answer(
                &format!("day-{day}-{index}"),
                &key,
                JobAnswer::AsPlanned,
                day,
            );
        }
    }

    fn answer(&mut self, id: &str, key: &Key, answer: JobAnswer, day: u64) {
        let body = Body::Job(JobV1 {
            job: JobKey::of(key).unwrap(),
            answer,
            note: None,
            not_soaked: None,
        });
        let known = match answer {
            JobAnswer::NotKnown => Known::NotKnown,
            JobAnswer::NotDone => Known::Seen,
            _ => Known::Assumed,
        };
        self.add(id, about(), self.at(day, 20), known, &body);
    }

    /// The first net of a day, hung as the plan says, seen.
    fn hang(&mut self, id: &str, day: u64, hay_g: i64, soaked_by: Option<&str>) {
        let slot = self.nets().remove(0);
        let body = Body::NetHung(NetHungV1 {
            net: None,
            filling: None,
            lot: slot.lot.clone(),
            hay: Some(feed(hay_g)),
            soak: soaked_by.map(|id| RecordId(id.to_owned())),
            not_soaked: None,
            job: Some(JobKey::of(&self.key(day, &slot)).unwrap()),
        });
        self.add(id, about(), self.at(day, 8), Known::Seen, &body);
    }

    fn left(&mut self, id: &str, day: u64, of: &str, left: LeftAmount) {
        let body = Body::LeftOver(LeftOverV1 {
            hung: Some(RecordId(of.to_owned())),
            net: None,
            lot: None,
            left,
            job: None,
        });
        self.add(id, about(), self.at(day, 22), Known::Seen, &body);
    }

    fn week(&self, days: u64, of: &Subject) -> Ledger {
        let records: Vec<&Record> = self.records.iter().collect();
        let last = self.first + Days::new(days - 1);
        ledger_of(
            &records,
            of,
            (self.first, last),
            self.at(days, 0),
            &self.case.zone,
        )
    }
}

fn bramble() -> Subject {
    Subject::Animal(AnimalId("bramble".to_owned()))
}

fn about() -> About {
    About::animal(&AnimalId("bramble".to_owned()))
}

fn feed(g: i64) -> FeedWeight {
    FeedWeight {
        g: FeedGrams::new(g).unwrap(),
        typed: None,
    }
}

fn near(a: DryMatter, b: DryMatter) {
    assert!((a.to_kg() - b.to_kg()).abs() < 1e-9, "{a:?}, {b:?}");
}

#[test]
fn a_week_of_all_as_planned_is_the_plan_and_all_assumed() {
    let mut told = Told::issued();
    for day in 0..7 {
        told.as_planned(day);
    }
    let week = told.week(7, &bramble());
    assert_eq!(week.days.len(), 7);
    let totals = week.totals();
    near(totals.eaten.dry.likely, totals.planned.unwrap());
    assert!(!totals.eaten.at_least);
    let shares = totals.offered_known.unwrap();
    assert!((shares.assumed - 1.0).abs() < 1e-9);
    // And the plan's own amounts, seven times.
    let Some(Body::Plan(plan)) = told.records.last().map(|_| {
        let record = told.records.iter().find(|r| r.id.0 == "plan-1").unwrap();
        Body::read(record).unwrap()
    }) else {
        panic!()
    };
    let a_day: DryMatter = plan
        .amounts
        .iter()
        .map(|amount| amount.dry_matter_g.dry())
        .sum();
    near(totals.eaten.dry.likely, a_day * 7.0);
}

#[test]
fn a_day_nobody_answered_is_not_known_and_lowers_nothing() {
    let mut told = Told::issued();
    for day in [0, 1, 3, 4, 5, 6] {
        told.as_planned(day);
    }
    let totals = told.week(7, &bramble()).totals();
    assert!(totals.eaten.at_least);
    let shares = totals.offered_known.unwrap();
    assert!((shares.not_known - 1.0 / 7.0).abs() < 1e-9, "{shares:?}");
    assert!((shares.seen + shares.assumed + shares.not_known - 1.0).abs() < 1e-12);
    near(
        totals.eaten.dry.likely,
        totals.planned.unwrap() * (6.0 / 7.0),
    );
    let level = told
        .week(7, &bramble())
        .level(crate::units::BodyMass::kg(300.0))
        .unwrap();
    assert!(level.at_least);
}

#[test]
fn days_away_are_as_planned_or_not_known_as_was_said() {
    let mut told = Told::issued();
    let away = Key::Away {
        from: told.first,
        to: told.first + Days::new(1),
    };
    told.answer("away", &away, JobAnswer::SomebodyElse, 1);
    let totals = told.week(2, &bramble()).totals();
    near(totals.eaten.dry.likely, totals.planned.unwrap());
    assert!((totals.offered_known.unwrap().assumed - 1.0).abs() < 1e-12);
    let mut told = Told::issued();
    told.answer("away", &away, JobAnswer::NotKnown, 1);
    let totals = told.week(2, &bramble()).totals();
    assert!(totals.eaten.at_least);
    assert!((totals.offered_known.unwrap().not_known - 1.0).abs() < 1e-12);
}

#[test]
fn a_net_counts_once_however_often_it_is_entered() {
    let mut told = Told::issued();
    told.as_planned(0);
    let before = told.week(1, &bramble()).totals().eaten.dry.likely;
    let hay = FeedGrams::of(told.nets()[0].amount).unwrap().get();
    // On two devices, beside the answer of the whole visit, and filled the day before.
    told.hang("hung-1", 0, hay, None);
    told.hang("hung-2", 0, hay, None);
    let filled = Body::NetFilled(NetFilledV1 {
        net: None,
        lot: told.nets()[0].lot.clone().unwrap(),
        hay: feed(hay),
        reading: None,
        own_weight: None,
        target: None,
        slices: None,
        to_soak: false,
        job: None,
    });
    told.add("filled", about(), told.at(0, 6), Known::Seen, &filled);
    let after = told.week(1, &bramble()).totals();
    near(after.eaten.dry.likely, before);
    assert!(after.offered_known.unwrap().seen > 0.0);
}

#[test]
fn what_is_left_comes_off_and_a_later_look_takes_the_place_of_an_earlier() {
    let mut told = Told::issued();
    told.as_planned(0);
    told.hang("hung", 0, 2_000, None);
    let whole = told.week(1, &bramble()).totals();
    let half = LeftAmount::ByEye {
        quarters: Quarters::Two,
    };
    told.left("left-1", 0, "hung", half.clone());
    told.left("left-2", 0, "hung", half);
    let totals = told.week(1, &bramble()).totals();
    near(
        totals.offered.dry.likely - totals.left.dry.likely,
        totals.eaten.dry.likely,
    );
    near(totals.offered.dry.likely, whole.offered.dry.likely);
    let serving = |told: &Told| {
        let week = told.week(1, &bramble());
        week.days[0]
            .servings
            .iter()
            .find(|serving| serving.known == HowKnown::Seen)
            .cloned()
            .unwrap()
    };
    assert!(
        matches!(serving(&told).left, LeftOver::Part(part) if (part.likely - 0.5).abs() < 1e-9)
    );
    // Soaked hay that is left is wet: its weight says nothing, and against the same net's wet weight it does.
    let slot = told.nets().remove(0);
    let dry = LeftAmount::Dry { hay: feed(500) };
    told.left("left-3", 0, "hung", dry);
    if slot.soaked {
        assert_eq!(serving(&told).left, LeftOver::CannotTell);
        assert!(told.week(1, &bramble()).totals().eaten.at_least);
    } else {
        assert!(matches!(serving(&told).left, LeftOver::Dry(_)));
    }
    let wet = LeftAmount::Wet {
        left: feed(1_000),
        hung: feed(4_000),
    };
    told.left("left-4", 0, "hung", wet);
    assert!(
        matches!(serving(&told).left, LeftOver::Part(part) if (part.likely - 0.25).abs() < 1e-9)
    );
}

#[test]
fn soaked_hay_counts_with_what_is_left_of_it() {
    let mut told = Told::issued();
    told.hang("hung", 0, 2_000, None);
    let dry_of = |told: &Told| {
        let week = told.week(1, &bramble());
        week.days[0]
            .servings
            .iter()
            .find(|serving| serving.known == HowKnown::Seen)
            .and_then(|serving| serving.offered)
            .unwrap()
    };
    let before = dry_of(&told);
    assert!(before.in_order());
    let start = Body::SoakStep(SoakStepV1 {
        happened: SoakStep::Started {
            start: SoakStart {
                tub: None,
                lot: told.nets()[0].lot.clone().unwrap(),
                hay: Some(feed(2_000)),
                nets: Vec::new(),
                hangs: None,
                recipe: RecipeV1 {
                    water: crate::soak::Water::TapWinter,
                    minutes: SoakMinutes::new(720).unwrap(),
                },
            },
        },
        job: None,
    });
    told.add("soak", about(), told.at(0, -6), Known::Seen, &start);
    told.hang("hung", 0, 2_000, Some("soak"));
    told.records.retain({
        let mut seen = false;
        move |record| {
            let first = record.id.0 == "hung" && !seen;
            seen |= record.id.0 == "hung";
            !first
        }
    });
    let overnight = dry_of(&told);
    assert!(
        overnight.likely < before.likely * 0.95,
        "{overnight:?}, {before:?}"
    );
    assert!(overnight.least < overnight.likely && overnight.likely < overnight.most);
}

#[test]
fn todays_visits_to_come_are_neither_eaten_nor_missing() {
    let told = Told::issued();
    let records: Vec<&Record> = told.records.iter().collect();
    let ledger = ledger_of(
        &records,
        &bramble(),
        (told.first, told.first),
        told.at(0, 0),
        &told.case.zone,
    );
    assert!(ledger.days[0].runs);
    assert!(ledger.days[0].servings.is_empty());
    assert!(DryMatter::ZERO < ledger.days[0].to_come);
    assert!(!ledger.totals().eaten.at_least);
    assert_eq!(ledger.level(crate::units::BodyMass::kg(300.0)), None);
}
