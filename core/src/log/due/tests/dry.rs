//! Hay that somebody said is not soaked today, and hay of one visit in two tubs.

use super::*;
use crate::soak::NotSoaked;

fn said(start: &Key, why: NotSoaked) -> Body {
    Body::Job(JobV1 {
        job: JobKey::of(start).unwrap(),
        answer: JobAnswer::NotDone,
        note: None,
        not_soaked: Some(why),
    })
}

#[test]
fn what_is_not_soaked_today_hangs_lighter_until_it_is_taken_back() {
    let mut told = Told::issued().with_first_day();
    let now = told.tomorrow(4, 50);
    let start = told.keys(now, JobKind::StartSoak).remove(0);
    told.add(
        "dry-1",
        Told::bramble(),
        now,
        &said(&start, NotSoaked::HoseBan),
    );
    let due = told.due(now);
    assert_eq!(due.dry.len(), 1);
    assert_eq!(
        (due.dry[0].why, &due.dry[0].start),
        (NotSoaked::HoseBan, &start)
    );
    let round = told.round(now);
    assert!(!round.jobs.iter().any(|job| job.key == start));
    let dry: Vec<_> = round
        .jobs
        .iter()
        .filter(|job| job.not_soaked == Some(NotSoaked::HoseBan))
        .collect();
    assert!(!dry.is_empty());
    assert!(
        dry.iter()
            .all(|job| job.amount < job.before_soaking && !job.soaked)
    );
    let last = told.records.pop().unwrap();
    let later = Stamp::first(now + Span::minutes(1), DeviceId::of_number(7));
    told.records.push(last.marked_gone(later, None, true));
    assert!(told.due(now).dry.is_empty());
    assert!(told.keys(now, JobKind::StartSoak).contains(&start));
}

#[test]
fn a_soak_for_one_net_of_a_visit_is_not_the_soak_of_all() {
    let mut told = Told::issued().with_first_day();
    let now = told.tomorrow(4, 50);
    let start = told.keys(now, JobKind::StartSoak).remove(0);
    let Body::SoakStep(mut body) = started(Some(JobKey::of(&start).unwrap())) else {
        panic!("no start")
    };
    let elsewhere = Key::from_text("hang_net/animal:nobody/2026-05-05/1.1").unwrap();
    if let SoakStep::Started { start } = &mut body.happened {
        start.hangs = Some(vec![JobKey::of(&elsewhere).unwrap()]);
    }
    told.add("soak-1", Told::bramble(), now, &Body::SoakStep(body));
    let due = told.due(now);
    assert_eq!(due.soaks[0].hangs, [elsewhere]);
    // Its nets are still to be soaked.
    assert!(told.keys(now, JobKind::StartSoak).contains(&start));
}
