//! Work from records: after which an animal was not sound, and what its plan asks for.

use super::stops::look;
use super::*;
use crate::animal::Answer as Seen;
use crate::log::{Wish, gather};
use crate::safety::{Refusal, VetUrgency};
use crate::work::WorkLine;

fn worked(start: Instant, sound: Seen, job: Option<JobKey>) -> Body {
    let times = crate::work::GaitTimes::minutes(10, 15, 0);
    let body = crate::log::bodies::WorkSessionV1::of(start, &times, crate::work::How::Led, sound);
    Body::WorkSession(crate::log::bodies::WorkSessionV1 {
        job,
        ..body.unwrap()
    })
}

#[test]
fn work_after_which_it_was_not_sound_stops_it_until_a_look_over_says_that_it_goes_as_usual() {
    let mut told = Told::issued().with_first_day();
    let stands = |told: &Told, now| {
        let records: Vec<&Record> = told.records.iter().collect();
        let who = AnimalId("bramble".to_owned());
        let gathered = gather(&records, &who, now, &told.case.zone, &Wish::default()).unwrap();
        (gathered.work(), gathered.stops())
    };
    let clean = look(Seen::No, Seen::No);
    told.add("l0", Told::bramble(), told.tomorrow(6, 0), &clean);
    // Sound work takes nothing away and adds nothing.
    let sound = worked(told.tomorrow(7, 0), Seen::Yes, None);
    told.add("w0", Told::bramble(), told.tomorrow(7, 25), &sound);
    let (before, none) = stands(&told, told.tomorrow(7, 30));
    assert!(before.stops.is_empty() && none.is_empty());
    let lame = worked(told.tomorrow(8, 0), Seen::No, None);
    told.add("w1", Told::bramble(), told.tomorrow(8, 25), &lame);
    let now = told.tomorrow(8, 30);
    let (work, stops) = stands(&told, now);
    assert_eq!(work.stops, [crate::work::WorkStop::Sign]);
    assert_eq!(stops, [(Refusal::LaminitisSign, VetUrgency::Today)]);
    assert_eq!(told.round(now).jobs[0].kind, JobKind::Stop);
    // A later sound session is no look-over.
    told.add("w2", Told::bramble(), told.tomorrow(9, 25), &sound);
    assert_eq!(stands(&told, told.tomorrow(9, 30)).0.stops, work.stops);
    told.add("l1", Told::bramble(), told.tomorrow(10, 0), &clean);
    let (after, none) = stands(&told, told.tomorrow(10, 1));
    assert!(after.stops.is_empty() && none.is_empty());
}

#[test]
fn a_vets_word_about_work_lifts_no_lameness_that_comes_after_it() {
    let mut told = Told::issued().with_first_day();
    let from = told.due(told.case.now).plans[0].from;
    let word = Body::VetWord(VetWordV1 {
        animal: AnimalId("bramble".to_owned()),
        permit: VetPermit::Work,
        vet: Name::new("The vet").unwrap(),
        practice: String::new(),
        given: from + chrono::TimeDelta::days(1),
        how: String::new(),
        expires: from + chrono::TimeDelta::days(50),
    });
    let lame = |hour| worked(told.tomorrow(hour, 0), Seen::No, None);
    let (first, second) = (lame(5), lame(8));
    told.add("w1", Told::bramble(), told.tomorrow(5, 25), &first);
    told.add("word", Told::bramble(), told.tomorrow(6, 0), &word);
    let line = |told: &Told, now| {
        let records: Vec<&Record> = told.records.iter().collect();
        let who = AnimalId("bramble".to_owned());
        let gathered = gather(&records, &who, now, &told.case.zone, &Wish::default()).unwrap();
        gathered.work().line
    };
    let opened = line(&told, told.tomorrow(6, 30));
    assert!(opened.a_week().is_some(), "{opened:?}");
    told.add("w2", Told::bramble(), told.tomorrow(8, 25), &second);
    assert_eq!(line(&told, told.tomorrow(8, 30)), WorkLine::None);
}

#[test]
fn work_is_due_from_the_plan_that_asks_for_it_and_a_session_does_it() {
    let mut told = Told::issued().with_first_day();
    for record in &mut told.records {
        if record.id.0 == "plan-1" {
            let Body::Plan(plan) = Body::read(record).unwrap() else {
                panic!("no plan")
            };
            let asks = PlanV1 {
                work_a_week: Some(crate::log::bodies::base::Count::new(3).unwrap()),
                ..plan
            };
            record.body = Body::Plan(asks).to_value().unwrap();
        }
    }
    let from = told.due(told.case.now).plans[0].from;
    let now = told.tomorrow(6, 0);
    // It had laminitis: nothing is due before the vet's word.
    assert!(told.keys(now, JobKind::Exercise).is_empty());
    let word = Body::VetWord(VetWordV1 {
        animal: AnimalId("bramble".to_owned()),
        permit: VetPermit::Work,
        vet: Name::new("The vet").unwrap(),
        practice: String::new(),
        given: from,
        how: String::new(),
        expires: from + chrono::TimeDelta::days(50),
    });
    told.add("word", Told::bramble(), told.case.now, &word);
    let days: Vec<i64> = (0..7)
        .filter(|day| {
            let at = told.tomorrow(24 * day + 6, 0);
            !told.keys(at, JobKind::Exercise).is_empty()
        })
        .collect();
    assert!(!days.is_empty());
    let due = told.tomorrow(24 * days[0] + 6, 0);
    let key = told.keys(due, JobKind::Exercise).remove(0);
    let done = worked(due, Seen::Yes, Some(JobKey::of(&key).unwrap()));
    told.add("w1", Told::bramble(), due + Span::minutes(25), &done);
    let after = due + Span::minutes(30);
    assert!(told.keys(after, JobKind::Exercise).is_empty());
    // A sign leaves no work due.
    let at = told.tomorrow(24 * days[1] + 6, 0);
    let sign = look(Seen::Yes, Seen::No);
    told.add("l1", Told::bramble(), at, &sign);
    assert!(
        told.keys(at + Span::minutes(1), JobKind::Exercise)
            .is_empty()
    );
}
