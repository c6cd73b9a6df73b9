//! Ticks on the round.

use super::*;
use crate::routes::Route;
use crate::views::round::route;
use tussock_core::log::Kind as Of;

#[test]
fn all_as_planned_answers_a_visit_and_leaves_what_must_be_seen() {
    let mut yard_of = bramble();
    let now = at(5, "18:05:00");
    let today = yard_of.today(now);
    let visit = today.visit().unwrap();
    let (shelf, about_yard) = (yard_of.shelf.clone(), yard());
    let ticking = Ticking {
        shelf: &shelf,
        today: &today,
        yard: &about_yard,
        tub_name: &|nth| English::default().tub_name(nth),
    };
    let look = today
        .round
        .jobs
        .iter()
        .find(|job| job.kind == JobKind::LookOver)
        .unwrap();
    assert_eq!(
        ticking.tick(look, &mut || "x".into()),
        Err(Refused::OwnScreen)
    );
    let act = ticking.as_planned(visit, &mut || yard_of.id()).unwrap();
    yard_of.act(now, &act);
    let after = yard_of.today(now);
    assert!(after.visit().is_none());
    assert!(
        after
            .round
            .jobs
            .iter()
            .any(|job| job.kind == JobKind::LookOver)
    );
    assert_eq!(after.round.summary().done, 2);
    let hung = yard_of.shelf.of_kind(&tussock_core::log::Kind::NetHung);
    assert!(hung.iter().all(|record| record.known == Known::Assumed));
}

#[test]
fn what_comes_after_midnight_stands_apart_and_is_not_counted() {
    let yard_of = bramble();
    let today = yard_of.today(at(5, "05:50:00"));
    let [now, after] = today.parted(&zone());
    assert!(
        now.iter()
            .all(|job| zone().to_local(job.due).date == today.day)
    );
    assert!(!after.is_empty());
    assert_eq!(now.len() + after.len(), today.round.jobs.len());
    let counted = today.summary(&zone());
    assert_eq!(counted.late + counted.due + counted.later, now.len());
    // Late in the evening nothing more comes today, and tomorrow's first job is still there to open.
    let late = yard_of.today(at(5, "23:30:00"));
    assert_eq!(late.summary(&zone()).later, 0);
    assert!(!late.parted(&zone())[1].is_empty());
}

#[test]
fn days_away_are_one_card_with_one_answer() {
    let mut yard_of = bramble();
    let now = at(9, "06:00:00");
    let today = yard_of.today(now);
    let days = today.round.away.clone().unwrap();
    let (shelf, about_yard) = (yard_of.shelf.clone(), yard());
    let act = Ticking {
        shelf: &shelf,
        today: &today,
        yard: &about_yard,
        tub_name: &|nth| English::default().tub_name(nth),
    }
    .away(&days, JobAnswer::SomebodyElse, "away")
    .unwrap();
    yard_of.act(now, &act);
    assert!(yard_of.today(now).round.away.is_none());
}

#[test]
fn a_job_to_come_is_not_ticked_by_the_primary_action() {
    let yard_of = bramble();
    let now = at(5, "12:00:00");
    let today = yard_of.today(now);
    let first = today.first();
    assert!(first.is_none_or(|job| job.state != JobState::Later));
    assert!(!needs(now).is_empty());
    let whose = about(&today.round.jobs[0].subject);
    assert_eq!(whose.id(), "bramble");
}

#[test]
fn what_stands_is_asked_for_however_old_it_is() {
    let now = at(5, "06:00:00");
    for kind in [Of::Condition, Of::Crest, Of::LookOver, Of::Weight] {
        let asked = crate::views::round::needs(now).into_iter().any(|range| {
            matches!(range, crate::rows::Range::Kind { kind: of, from: 0, .. } if of == kind.word())
        });
        assert!(asked, "{kind:?}");
    }
}

#[test]
fn a_stop_is_opened_and_never_ticked() {
    let mut yard_of = bramble();
    let now = at(5, "06:30:00");
    let signs = tussock_core::plan::Signs {
        strong_pulse: tussock_core::animal::Answer::Yes,
        ..Default::default()
    };
    yard_of.act(
        now,
        &Act::Add(New {
            id: RecordId("look".into()),
            subject: Subject::animal(&AnimalId("bramble".into())),
            at: None,
            known: Known::Seen,
            body: Body::LookOver(crate::forms::look_over::body(&signs)),
        }),
    );
    let today = yard_of.today(now);
    let first = today.first().unwrap();
    assert_eq!(first.kind, JobKind::Stop);
    assert!(!ticks(first));
    assert_eq!(standing(first), Standing::Stop);
    assert_eq!(route(first), Route::LookOver(AnimalId("bramble".into())));
}
