//! From the records of a case, an issued plan and what was logged since.

use super::*;
use crate::animal::{Answer, LotId, TubId, VetPermit};
use crate::log::bodies::base::{FeedGrams, FeedWeight, JobKey};
use crate::log::bodies::*;
use crate::log::{Answer as Answers, Case, DeviceId, Known, Name, Origin, Stamp};
use crate::round::{JobKind, JobState, Key};
use crate::safety::SafetyVerdict;
use crate::soak::Water;
use crate::sources::RecordId;
use crate::units::{PartOfBody, Span};

mod dry;
mod grass;
mod stops;
mod worked;

/// The records of a case with what is logged after it.
struct Told {
    case: Case,
    records: Vec<Record>,
}

impl Told {
    /// The case, and its plan as issued at its time.
    fn issued() -> Self {
        let text = include_str!("../../../examples/cases/bramble.json");
        let case = Case::read(text).unwrap();
        let (subject, answer) = case.answers().remove(0);
        let Answers::Animal(SafetyVerdict::Allowed(plan)) = answer else {
            panic!("{answer:?}")
        };
        let mut told = Self {
            records: case.log.current().cloned().collect(),
            case,
        };
        let body = Body::Plan(PlanV1::of(&plan, &[], None).unwrap());
        told.add("plan-1", subject, told.case.now, &body);
        told
    }

    fn bramble() -> About {
        About::animal(&AnimalId("bramble".to_owned()))
    }

    fn add(&mut self, id: &str, subject: About, at: Instant, body: &Body) {
        let stamp = Stamp::first(at, DeviceId::of_number(7));
        let origin = Origin {
            yard: self.records[0].yard.clone(),
            subject,
            at,
            offset_min: 60,
            zone: "Europe/London".to_owned(),
            by: None,
            known: Known::Seen,
        };
        let record = Record::new(RecordId(id.to_owned()), origin, stamp, body).unwrap();
        self.records.push(record);
    }

    fn due(&self, now: Instant) -> Due {
        let records: Vec<&Record> = self.records.iter().collect();
        Due::of(&records, now, &self.case.zone)
    }

    fn round(&self, now: Instant) -> Round {
        let records: Vec<&Record> = self.records.iter().collect();
        round_of(&records, now, &self.case.zone)
    }

    /// An instant of the day after the case, by the wall clock of Britain in summer.
    fn tomorrow(&self, hour: i64, minute: i64) -> Instant {
        let midnight = self.case.zone.to_local(self.case.now).date;
        let midnight = midnight.and_time(LocalTime::MIN).and_utc();
        Instant::from_ms(midnight.timestamp_millis()) + Span::minutes((24 + hour - 1) * 60 + minute)
    }

    /// Every net of the first day is hung, so that nobody was away.
    fn with_first_day(mut self) -> Self {
        let evening = self.tomorrow(-2, 0);
        let day = self.case.zone.to_local(evening).date;
        let mut keys = self.keys(evening, JobKind::HangNet);
        keys.retain(|key| matches!(key, Key::Day { day: of, .. } if *of == day));
        assert!(!keys.is_empty());
        for (index, key) in keys.into_iter().enumerate() {
            let done = Body::Job(JobV1 {
                job: JobKey::of(&key).unwrap(),
                answer: JobAnswer::AsPlanned,
                note: None,
                not_soaked: None,
            });
            self.add(&format!("job-{index}"), Self::bramble(), evening, &done);
        }
        self
    }

    fn keys(&self, now: Instant, kind: JobKind) -> Vec<Key> {
        let jobs = self.round(now).jobs;
        let of_kind = jobs.into_iter().filter(|job| job.kind == kind);
        of_kind.map(|job| job.key).collect()
    }
}

fn feed(g: i64) -> FeedWeight {
    FeedWeight {
        g: FeedGrams::new(g).unwrap(),
        typed: None,
    }
}

fn started(job: Option<JobKey>) -> Body {
    Body::SoakStep(SoakStepV1 {
        happened: SoakStep::Started {
            start: SoakStart {
                tub: Some(TubId("tub-2".to_owned())),
                lot: LotId("back-field".to_owned()),
                hay: Some(feed(3_600)),
                nets: Vec::new(),
                recipe: RecipeV1 {
                    water: Water::TapSummer,
                    minutes: SoakMinutes::new(60).unwrap(),
                },
                hangs: None,
            },
        },
        job,
    })
}

fn step(happened: SoakStep) -> Body {
    Body::SoakStep(SoakStepV1 {
        happened,
        job: None,
    })
}

#[test]
fn an_issued_plan_gives_the_nets_of_every_visit() {
    let told = Told::issued().with_first_day();
    let due = told.due(told.tomorrow(5, 0));
    assert!(due.problems.is_empty(), "{:?}", due.problems);
    let [plan] = due.plans.as_slice() else {
        panic!("{:?}", due.plans)
    };
    assert_eq!(plan.name, "Bramble");
    assert_eq!(plan.visits.len(), told.case.visits.len());
    assert!(plan.nets.iter().any(|net| net.soaked) && plan.recipe.is_some());
    let round = told.round(told.tomorrow(5, 0));
    let today = told.case.zone.to_local(told.tomorrow(5, 0)).date;
    let nets = round.jobs.iter().filter(|job| {
        job.kind == JobKind::HangNet && job.visit.is_some_and(|visit| visit.day == today)
    });
    assert_eq!(nets.count(), plan.nets.len());
    assert_eq!(round.away, None);
    assert!(
        round
            .jobs
            .iter()
            .any(|job| job.kind == JobKind::FeedBalancer)
    );
}

#[test]
fn an_entry_that_does_a_job_silences_it_and_a_deleted_one_does_not() {
    let mut told = Told::issued().with_first_day();
    let now = told.tomorrow(6, 20);
    let key = told.keys(now, JobKind::HangNet).remove(0);
    let hung = Body::NetHung(NetHungV1 {
        net: None,
        filling: None,
        lot: None,
        hay: None,
        soak: None,
        not_soaked: None,
        job: Some(JobKey::of(&key).unwrap()),
    });
    told.add("hung-1", Told::bramble(), now, &hung);
    assert!(!told.keys(now, JobKind::HangNet).contains(&key));
    assert_eq!(told.round(now).summary().done, 1);
    let last = told.records.pop().unwrap();
    let later = Stamp::first(now + Span::minutes(1), DeviceId::of_number(7));
    told.records.push(last.marked_gone(later, None, true));
    assert!(told.keys(now, JobKind::HangNet).contains(&key));
}

#[test]
fn a_soak_is_followed_through_its_steps() {
    let mut told = Told::issued().with_first_day();
    let tub = Body::Tub(TubV1 {
        name: Name::new("Tub by the tap").unwrap(),
        capacity: None,
    });
    let yard = About::yard(&told.records[0].yard);
    told.add("tub-2", yard, told.case.now, &tub);
    let start = told
        .keys(told.tomorrow(4, 50), JobKind::StartSoak)
        .remove(0);
    let body = started(Some(JobKey::of(&start).unwrap()));
    told.add("soak-1", Told::bramble(), told.tomorrow(5, 0), &body);
    let soak = || RecordId("soak-1".to_owned());

    let round = told.round(told.tomorrow(6, 0));
    assert!(!round.jobs.iter().any(|job| job.key == start));
    let lift = round.jobs.iter().find(|job| job.kind == JobKind::LiftOut);
    let lift = lift.unwrap();
    assert_eq!(lift.state, JobState::Due);
    assert_eq!(lift.tub_name.as_deref(), Some("Tub by the tap"));
    assert_eq!(lift.name, "Bramble");
    assert!(
        round
            .jobs
            .iter()
            .any(|job| job.soak == Some(soak()) && job.kind == JobKind::HangNet)
    );

    let lifted = step(SoakStep::Lifted { soak: soak() });
    told.add("lifted-1", Told::bramble(), told.tomorrow(6, 2), &lifted);
    assert!(told.keys(told.tomorrow(6, 3), JobKind::LiftOut).is_empty());
    let thrown = told.keys(told.tomorrow(17, 0), JobKind::ThrowAway);
    assert_eq!(thrown.len(), 1);
    let over = step(SoakStep::ThrownAway { soak: soak() });
    told.add("over-1", Told::bramble(), told.tomorrow(17, 1), &over);
    assert!(told.due(told.tomorrow(17, 2)).soaks.is_empty());
    assert!(
        told.keys(told.tomorrow(17, 2), JobKind::ThrowAway)
            .is_empty()
    );
}

#[test]
fn heat_since_the_hay_was_wet_brings_its_end_forward() {
    let mut told = Told::issued().with_first_day();
    told.add(
        "soak-1",
        Told::bramble(),
        told.tomorrow(5, 0),
        &started(None),
    );
    let at_noon = told.tomorrow(12, 0);
    let state = |told: &Told| {
        let jobs = told.round(at_noon).jobs;
        let mut thrown = jobs
            .into_iter()
            .filter(|job| job.kind == JobKind::ThrowAway);
        thrown.next().unwrap().state
    };
    assert_eq!(state(&told), JobState::Later);
    let chips = Body::Weather(WeatherV2 {
        date: told.case.zone.to_local(at_noon).date,
        chips: vec![Chip::OverTwenty],
        carried: false,
    });
    let yard = About::yard(&told.records[0].yard);
    told.add("weather-1", yard, told.tomorrow(11, 0), &chips);
    let by = Span::minutes(60);
    assert_eq!(state(&told), JobState::Late { by });
}

#[test]
fn a_look_over_counts_when_every_sign_was_looked_for() {
    let mut told = Told::issued();
    let watched = |told: &Told| told.due(told.tomorrow(7, 0)).watched.remove(0);
    let before = watched(&told);
    assert_eq!(before.animal.as_str(), "bramble");
    let look = |lying_more| {
        Body::LookOver(LookOverV1 {
            gait: Answer::No,
            stance: Answer::No,
            turning: Answer::No,
            shifting_weight: Answer::No,
            strong_pulse: Answer::No,
            foot_pain: Answer::No,
            warm_hoof: Answer::No,
            lying_more,
            note: None,
            job: None,
        })
    };
    let morning = told.tomorrow(6, 30);
    told.add("look-1", Told::bramble(), morning, &look(Answer::NotKnown));
    assert_eq!(watched(&told).looked_over, before.looked_over);
    told.add("look-2", Told::bramble(), morning, &look(Answer::No));
    let today = told.case.zone.to_local(morning).date;
    assert_eq!(watched(&told).looked_over, Some(today));
}

#[test]
fn of_vets_words_only_one_whose_end_matters_is_asked_about() {
    let mut told = Told::issued();
    let from = told.due(told.case.now).plans[0].from;
    let word = |days: i64| {
        let level = PartOfBody::percent(1.25);
        Body::VetWord(VetWordV1 {
            animal: AnimalId("bramble".to_owned()),
            permit: VetPermit::LowestLevel(level),
            vet: Name::new("The vet").unwrap(),
            practice: String::new(),
            given: from,
            how: String::new(),
            expires: from + chrono::TimeDelta::days(days),
        })
    };
    let now = told.tomorrow(7, 0);
    // Over before the plan was made.
    told.add("word-1", Told::bramble(), told.case.now, &word(-3));
    assert!(told.due(now).words.is_empty());
    told.add("word-2", Told::bramble(), told.case.now, &word(1));
    assert_eq!(told.keys(now, JobKind::VetWordExpires).len(), 1);
    told.add("word-3", Told::bramble(), now, &word(56));
    let words = told.due(now).words;
    assert_eq!(words.len(), 1);
    assert!(told.keys(now, JobKind::VetWordExpires).is_empty());
}

#[test]
fn the_plan_of_an_animal_rests_while_its_group_has_a_later_one() {
    let mut told = Told::issued();
    let at = told.case.now + Span::hours(1);
    let group = Body::Group(GroupV1 {
        name: Name::new("The hill").unwrap(),
        members: vec![crate::animal::Member {
            animal: AnimalId("bramble".to_owned()),
            from: told.due(told.case.now).plans[0].from,
            to: None,
        }],
    });
    let about = About::group(&GroupId("hill-group".to_owned()));
    told.add("hill-group", about.clone(), at, &group);
    assert_eq!(told.due(at).plans.len(), 1);
    let Body::Plan(plan) = told
        .records
        .iter()
        .find(|record| record.id.0 == "plan-1")
        .map(|record| Body::read(record).unwrap())
        .unwrap()
    else {
        panic!("no plan")
    };
    told.add("plan-2", about, at, &Body::Plan(plan));
    let due = told.due(at);
    let today = told.case.zone.to_local(at).date;
    let fed: Vec<&str> = due
        .plans
        .iter()
        .filter(|plan| plan.feeds_on(today))
        .map(|plan| plan.name.as_str())
        .collect();
    assert_eq!(fed, ["The hill"]);
    assert_eq!(due.watched.len(), 1);
    assert_eq!(due.watched[0].name, "Bramble");
}

#[test]
fn an_animal_that_is_gone_has_no_jobs() {
    let mut told = Told::issued();
    let at = told.case.now + Span::minutes(1);
    let stamp = Stamp::first(at, DeviceId::of_number(7));
    for record in &mut told.records {
        if record.id.0 == "bramble" {
            *record = record.marked_gone(stamp, None, true);
        }
    }
    assert!(told.round(told.tomorrow(6, 0)).jobs.is_empty());
}

#[test]
fn a_soak_of_a_minute_is_named_and_still_thrown_away_in_time() {
    let mut told = Told::issued().with_first_day();
    let Body::SoakStep(mut body) = started(None) else {
        panic!("no step")
    };
    if let SoakStep::Started { start } = &mut body.happened {
        start.recipe.minutes = SoakMinutes::new(1).unwrap();
    }
    let wetted = told.tomorrow(5, 0);
    told.add("soak-1", Told::bramble(), wetted, &Body::SoakStep(body));
    let due = told.due(told.tomorrow(6, 0));
    assert!(matches!(
        due.problems.as_slice(),
        [Problem::Log(crate::log::LogError::OutOfRange { .. })]
    ));
    assert_eq!(told.keys(told.tomorrow(18, 0), JobKind::ThrowAway).len(), 1);
}
