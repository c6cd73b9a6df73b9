//! How it goes, the look-back and what would now differ, from the records of a case and what is written down after it.

use super::*;
use crate::animal::{
    Answer as Seen, Group, GroupId, LotId, Member, PersonId, Phase, VetPermit, VetWord,
};
use crate::assess::Crest;
use crate::log::bodies::base::BodyHundredths;
use crate::log::bodies::{
    AnimalV2, Chip, CrestV1, GroupV1, LookOverV1, LotV1, PlanV1, SugarSaid, VetWordV1, WeatherV2,
    WorkSessionV1,
};
use crate::log::{
    Answer, Case, DeviceId, Difference, Known, Origin, Stamp, Subject as About, differences,
    looked_back,
};
use crate::progress::{Changed, GrassWeather, Happened, NotLogged, Step, decide};
use crate::safety::{Plan, SafetyVerdict};
use crate::sources::RecordId;
use crate::units::Span;
use crate::work::{GaitTimes, How};

mod grass;

pub(in crate::log) struct Yard {
    pub(in crate::log) case: Case,
    pub(in crate::log) records: Vec<Record>,
    plan: Box<Plan>,
    made: i64,
}

pub(in crate::log) fn bramble() -> AnimalId {
    AnimalId("bramble".to_owned())
}

impl Yard {
    pub(in crate::log) fn new() -> Self {
        let text = include_str!("../../../examples/cases/bramble.json");
        let case = Case::read(text).unwrap();
        let (_, answer) = case.answers().remove(0);
        let Answer::Animal(SafetyVerdict::Allowed(plan)) = answer else {
            panic!("{answer:?}")
        };
        Self {
            records: case.log.current().cloned().collect(),
            case,
            plan,
            made: 0,
        }
    }

    pub(in crate::log) fn later(&self, days: i64) -> Instant {
        self.case.now + Span::hours(24 * days)
    }

    pub(in crate::log) fn day(&self, days: i64) -> LocalDate {
        self.case.zone.to_local(self.later(days)).date
    }

    fn stamp(&mut self, at: Instant) -> Stamp {
        self.made += 1;
        Stamp::first(at + Span::minutes(self.made), DeviceId::of_number(7))
    }

    pub(in crate::log) fn add(&mut self, days: i64, body: &Body) -> RecordId {
        self.add_about(&About::animal(&bramble()), days, body)
    }

    pub(in crate::log) fn add_about(&mut self, about: &About, days: i64, body: &Body) -> RecordId {
        let at = self.later(days);
        let stamp = self.stamp(at);
        let origin = Origin {
            yard: self.records[0].yard.clone(),
            subject: about.clone(),
            at,
            offset_min: 60,
            zone: "Europe/London".to_owned(),
            by: None,
            known: Known::Seen,
        };
        let id = RecordId(format!("made-{}", self.made));
        self.records
            .push(Record::new(id.clone(), origin, stamp, body).unwrap());
        id
    }

    pub(in crate::log) fn issue(&mut self, days: i64, percent: f64) {
        let mut body = PlanV1::of(&self.plan, &[], None::<PersonId>).unwrap();
        body.from = self.day(days);
        body.level = BodyHundredths::of(PartOfBody::percent(percent)).unwrap();
        self.add(days, &Body::Plan(body));
    }

    /// The animal's record in its next version.
    pub(in crate::log) fn change(&mut self, days: i64, change: impl Fn(&mut AnimalV2)) {
        let at = self.later(days);
        let stamp = self.stamp(at);
        let on = self.day(days);
        let held = self
            .records
            .iter_mut()
            .find(|record| record.id.0 == bramble().0)
            .unwrap();
        let Ok(Body::Animal(before)) = Body::read(held) else {
            panic!("no animal")
        };
        let mut next = before.clone();
        change(&mut next);
        let next = Body::Animal(next.dated(Some(&before), on));
        *held = held.next(stamp, None, &next).unwrap();
    }

    fn goes(&self, days: i64) -> HowItGoes {
        let records: Vec<&Record> = self.records.iter().collect();
        let beside = Beside::default();
        how_it_goes(
            &records,
            &bramble(),
            self.later(days),
            &self.case.zone,
            &beside,
            None,
        )
        .unwrap()
    }
}

#[test]
fn four_weeks_at_the_starting_level_run_on_over_a_review_and_end_with_more() {
    let mut yard = Yard::new();
    assert_eq!(yard.goes(0).facts.days_at_start, 0);
    yard.issue(0, 1.5);
    yard.issue(14, 1.5);
    assert_eq!(yard.goes(28).facts.days_at_start, 28);
    yard.issue(28, 1.25);
    assert_eq!(yard.goes(35).facts.days_at_start, 35);
    yard.issue(40, 2.0);
    assert_eq!(yard.goes(60).facts.days_at_start, 0);
    yard.issue(60, 1.5);
    assert_eq!(yard.goes(65).facts.days_at_start, 5);
}

#[test]
fn the_plan_that_feeds_it_is_what_it_is_on_be_it_its_groups() {
    let mut yard = Yard::new();
    assert_eq!(yard.goes(0).facts.level, None);
    yard.issue(0, 1.5);
    let member = Member {
        animal: bramble(),
        from: yard.day(0),
        to: Some(yard.day(20)),
    };
    let group = Group {
        id: GroupId("field".to_owned()),
        name: "Top field".to_owned(),
        members: vec![member],
    };
    let about = About::group(&group.id);
    let body = GroupV1::of(&group).unwrap();
    let id = yard.add_about(&about, 0, &Body::Group(body));
    yard.records
        .iter_mut()
        .filter(|record| record.id == id)
        .for_each(|record| record.id = RecordId("field".to_owned()));
    let mut theirs = PlanV1::of(&yard.plan, &[], None::<PersonId>).unwrap();
    theirs.from = yard.day(5);
    theirs.review = yard.day(12);
    theirs.level = BodyHundredths::of(PartOfBody::percent(1.7)).unwrap();
    yard.add_about(&about, 5, &Body::Plan(theirs));
    let level = |days: i64| {
        let level = BodyHundredths::of(yard.goes(days).facts.level?);
        level.ok().map(BodyHundredths::get)
    };
    assert_eq!(level(4), Some(150));
    assert_eq!(level(6), Some(170));
    assert_eq!(yard.goes(6).facts.review, Some(yard.day(12)));
    // Out of the group its own plan holds again.
    assert_eq!(level(22), Some(150));
}

#[test]
fn a_phase_has_its_day_and_the_one_it_came_from() {
    let mut yard = Yard::new();
    yard.change(3, |animal| animal.phase = Phase::Losing);
    yard.change(9, |animal| animal.note = Some("moved fields".to_owned()));
    let facts = yard.goes(10).facts;
    assert_eq!(facts.phase, Phase::Losing);
    assert_eq!(facts.days_in_phase, Some(7));
    assert_eq!(facts.phase_before, Some(Phase::New));
    yard.change(12, |animal| animal.phase = Phase::OtherHands);
    assert_eq!(yard.goes(12).facts.phase_before, Some(Phase::Losing));
}

#[test]
fn only_a_vets_word_given_in_this_phase_speaks_of_it() {
    let mut yard = Yard::new();
    let word = |yard: &Yard, days: i64| {
        let given = yard.day(days);
        Body::VetWord(
            VetWordV1::of(&VetWord {
                animal: bramble(),
                permit: VetPermit::LowestLevel(PartOfBody::percent(1.5)),
                vet: "A. Marsh".to_owned(),
                practice: String::new(),
                given,
                how: "by telephone".to_owned(),
                expires: given + Days::new(40),
                written: None,
            })
            .unwrap(),
        )
    };
    let before = word(&yard, 1);
    yard.add(1, &before);
    yard.change(3, |animal| {
        animal.phase = Phase::Episode;
        animal.health.laminitis = Laminitis::Active;
    });
    assert!(!yard.goes(4).facts.vet_spoke);
    assert_eq!(yard.goes(4).facts.stop, Some(HowSoon::Today));
    let since = word(&yard, 4);
    yard.add(4, &since);
    assert!(yard.goes(5).facts.vet_spoke);
}

#[test]
fn without_a_trend_nothing_changes_by_itself() {
    let mut yard = Yard::new();
    yard.issue(0, 1.5);
    yard.change(14, |animal| animal.phase = Phase::Losing);
    let decision = decide(&yard.goes(60).facts);
    assert_eq!((decision.step, decision.row), (Step::Keep, "too short"));
}

#[test]
fn what_would_now_differ_is_named_and_what_is_the_same_is_not() {
    let yard = Yard::new();
    let held = PlanV1::of(&yard.plan, &[], None).unwrap();
    assert_eq!(differences(&held, &held), []);
    let mut today = held.clone();
    today.level = BodyHundredths::of(PartOfBody::percent(1.25)).unwrap();
    today.amounts[0].soaked = !held.amounts[0].soaked;
    let said = held.amounts[0].sugar;
    today.amounts[0].sugar = Some(SugarSaid::Over);
    assert_ne!(said, Some(SugarSaid::Over));
    let lot = held.amounts[0].lot.clone().unwrap();
    let found = differences(&held, &today);
    assert_eq!(
        found,
        [
            Difference::Level {
                held: held.level.part(),
                now: today.level.part(),
            },
            Difference::Soaked {
                lot: lot.clone(),
                now: today.amounts[0].soaked,
            },
            Difference::Sugar {
                lot: lot.clone(),
                held: said,
                now: Some(SugarSaid::Over),
            },
        ]
    );
    assert!(!found[0].is_of_what_is_fed() && found[1].is_of_what_is_fed());
    // Another lot in its place: one goes, one comes.
    let mut other = held.clone();
    let meadow = LotId("another".to_owned());
    other.amounts[0].lot = Some(meadow.clone());
    let fed = held.amounts[0].as_fed_g.as_fed();
    let found = differences(&held, &other);
    assert!(found.contains(&Difference::Hay {
        lot,
        held: Some(fed),
        now: None
    }));
    assert!(found.contains(&Difference::Hay {
        lot: meadow,
        held: None,
        now: Some(fed)
    }));
}

#[test]
fn the_look_back_lists_the_month_before_an_episode_and_what_nobody_logged() {
    let mut yard = Yard::new();
    let mut lot = LotV1::of_class("Second cut", crate::forage::ForageClass::Meadow).unwrap();
    lot.opened_on = Some(yard.day(20));
    yard.add(20, &Body::Lot(lot));
    let frost = |yard: &Yard, days| {
        Body::Weather(WeatherV2 {
            date: yard.day(days),
            chips: vec![Chip::HardFrost],
            carried: false,
        })
    };
    for days in [22, 23] {
        let body = frost(&yard, days);
        yard.add(days, &body);
    }
    for (days, score) in [(2, 2), (24, 4)] {
        yard.add(days, &Body::Crest(CrestV1::of(Crest::new(score).unwrap())));
    }
    let no = Seen::No;
    yard.add(
        25,
        &Body::LookOver(LookOverV1 {
            gait: no,
            stance: no,
            turning: no,
            shifting_weight: no,
            strong_pulse: no,
            foot_pain: no,
            warm_hoof: Seen::Yes,
            lying_more: no,
            note: None,
            job: None,
        }),
    );
    yard.change(26, |animal| {
        animal.health.flags.push(VetFlag::TrimmedOrShod {
            on: animal.phase_since.unwrap_or(LocalDate::MIN),
        });
        animal.health.flags.push(VetFlag::GotAtGrain {
            at: Instant::from_ms(0),
        });
    });
    let records: Vec<&Record> = yard.records.iter().collect();
    let began = yard.day(28);
    let back = looked_back(&records, &bramble(), began, yard.later(28), &yard.case.zone).unwrap();
    let kinds: Vec<&Changed> = back.happened.iter().map(|one| &one.what).collect();
    assert!(matches!(kinds[0], Changed::EarlySign), "{kinds:?}");
    assert!(matches!(kinds[1], Changed::CrestUp { .. }), "{kinds:?}");
    assert!(kinds.contains(&&Changed::Weather {
        weather: GrassWeather::HardFrost,
        days: 2
    }));
    let opened =
        |what: &&&Changed| matches!(what, Changed::LotOpened { name, .. } if name == "Second cut");
    assert_eq!(kinds.iter().filter(opened).count(), 1);
    // What lies before the month is no part of it.
    assert!(!kinds.contains(&&Changed::GotAtGrain) && !kinds.contains(&&Changed::TrimmedOrShod));
    assert!(back.not_logged.contains(&NotLogged::Grass));
    assert!(
        back.not_logged.contains(&NotLogged::Weather { days: 29 }),
        "{:?}",
        back.not_logged
    );
    assert!(
        back.happened
            .iter()
            .all(|one| back.from <= one.on && one.on <= began)
    );
}

#[test]
fn work_that_was_logged_is_no_gap_of_the_look_back() {
    let mut yard = Yard::new();
    let began = yard.day(40);
    let back = |yard: &Yard| {
        let records: Vec<&Record> = yard.records.iter().collect();
        looked_back(&records, &bramble(), began, yard.later(40), &yard.case.zone).unwrap()
    };
    assert!(back(&yard).not_logged.contains(&NotLogged::Work));
    let times = GaitTimes {
        walk: Span::minutes(10),
        ..GaitTimes::default()
    };
    // The first lies before the days that are looked at.
    for days in [2, 20, 23] {
        let start = yard.later(days);
        let session = WorkSessionV1::of(start, &times, How::Led, Seen::Yes).unwrap();
        yard.add(days, &Body::WorkSession(session));
    }
    let back = back(&yard);
    assert!(!back.not_logged.contains(&NotLogged::Work));
    let worked = Happened {
        on: yard.day(20),
        what: Changed::Worked { sessions: 2 },
    };
    assert!(back.happened.contains(&worked), "{:?}", back.happened);
}
