//! Jobs of a whole day, days away, and all as planned.

use super::*;
use crate::animal::VetScope;

#[test]
fn days_away_are_one_card_and_its_answer_covers_them() {
    let mut yard = Yard::bramble();
    yard.answer(
        key("hang_net/animal:bramble/2026-05-07/2.1"),
        at("2026-05-07", "17:35"),
    );
    // 8 May was a Friday; on Monday somebody is back.
    let now = at("2026-05-11", "06:00");
    let round = yard.at(now);
    let away = round.away.clone().unwrap();
    assert_eq!((away.from, away.to), (day("2026-05-08"), day("2026-05-10")));
    let old = |job: &Job| job.visit.is_some_and(|visit| visit.day <= away.to);
    assert!(!round.jobs.iter().any(old));
    assert!(of(&round, "hang_net/animal:bramble/2026-05-11/1.1").is_some());
    yard.answer(away.key, now);
    let after = yard.at(now);
    assert_eq!(after.away, None);
    assert!(!after.jobs.iter().any(old));
    // The answer to the card says nothing of the day it was given on.
    let next = yard.at(at("2026-05-12", "07:00")).away.unwrap();
    assert_eq!((next.from, next.to), (day("2026-05-11"), day("2026-05-11")));
}

#[test]
fn a_missed_day_is_a_card_only_after_a_whole_day() {
    let mut yard = Yard::bramble();
    yard.answer(
        key("hang_net/animal:bramble/2026-05-07/1.1"),
        at("2026-05-07", "06:35"),
    );
    assert_eq!(yard.at(at("2026-05-08", "22:00")).away, None);
    let away = yard.at(at("2026-05-09", "06:00")).away.unwrap();
    assert_eq!((away.from, away.to), (day("2026-05-08"), day("2026-05-08")));
}

fn watched(looked_over: Option<&str>, weighed: Option<&str>) -> Watched {
    Watched {
        work: None,
        animal: AnimalId("bramble".to_owned()),
        name: "bramble".to_owned(),
        from: day("2026-05-02"),
        look_over_days: 7,
        looked_over: looked_over.map(day),
        weighed: weighed.map(day),
        weigh_again: false,
        at: time("06:30"),
    }
}

#[test]
fn a_look_over_stays_and_a_weighing_expires() {
    let yard = Yard {
        watched: vec![watched(Some("2026-05-01"), Some("2026-05-01"))],
        ..Yard::default()
    };
    assert!(yard.at(at("2026-05-06", "12:00")).jobs.is_empty());
    let eve = yard.at(at("2026-05-07", "12:00"));
    assert_eq!(eve.jobs.len(), 2);
    assert!(eve.jobs.iter().all(|job| job.state == JobState::Later));
    let today = yard.at(at("2026-05-08", "05:00"));
    assert!(today.jobs.iter().all(|job| job.state == JobState::Due));
    let weeks_on = yard.at(at("2026-05-23", "12:00"));
    assert_eq!(
        keys(&weeks_on),
        [
            "look_over/animal:bramble/2026-05-08/0.0",
            "weigh/animal:bramble/2026-05-22/0.0"
        ]
    );
    assert!(
        weeks_on
            .jobs
            .iter()
            .all(|job| matches!(job.state, JobState::Late { .. }))
    );
}

#[test]
fn a_look_over_that_was_answered_comes_again_after_its_interval() {
    let mut yard = Yard {
        watched: vec![watched(Some("2026-05-01"), Some("2026-05-15"))],
        ..Yard::default()
    };
    yard.answer(
        key("look_over/animal:bramble/2026-05-08/0.0"),
        at("2026-05-08", "07:00"),
    );
    let next = yard.at(at("2026-05-15", "07:00"));
    assert_eq!(keys(&next), ["look_over/animal:bramble/2026-05-15/0.0"]);
}

#[test]
fn a_review_is_that_of_the_plan_issued_last() {
    let mut yard = Yard::bramble();
    let review = "review_plan/animal:bramble/2026-05-16/0.0";
    assert!(of(&yard.at(at("2026-05-14", "12:00")), review).is_none());
    assert!(of(&yard.at(at("2026-05-15", "12:00")), review).is_some());
    assert!(of(&yard.at(at("2026-06-15", "12:00")), review).is_some());
    yard.plans.push(IssuedPlan {
        issued: at("2026-05-15", "18:00"),
        from: day("2026-05-16"),
        review: day("2026-05-30"),
        ..plan("bramble", Vec::new())
    });
    assert!(of(&yard.at(at("2026-05-16", "12:00")), review).is_none());
}

#[test]
fn the_last_day_of_a_vets_word_is_a_job() {
    let word = |scope| HeldWord {
        animal: AnimalId("bramble".to_owned()),
        name: "bramble".to_owned(),
        scope,
        expires: day("2026-06-26"),
        at: time("06:30"),
    };
    let yard = Yard {
        words: vec![word(VetScope::LowestLevel), word(VetScope::Work)],
        ..Yard::default()
    };
    assert!(yard.at(at("2026-06-24", "12:00")).jobs.is_empty());
    let round = yard.at(at("2026-06-26", "12:00"));
    assert_eq!(round.jobs.len(), 2);
    assert_eq!(round.jobs[0].scope, Some(VetScope::LowestLevel));
    let late = yard.at(at("2026-06-27", "00:00"));
    assert!(matches!(late.jobs[0].state, JobState::Late { .. }));
}

#[test]
fn all_as_planned_is_the_nets_and_feeds_of_a_visit_and_never_a_soak_or_a_look_over() {
    let mut yard = with_yesterday(Yard::bramble());
    yard.plans.push(plan("moss", vec![net("06:30", false)]));
    yard.watched = vec![watched(Some("2026-04-28"), None)];
    let round = yard.at(at("2026-05-05", "06:30"));
    let visit = Visit {
        day: day("2026-05-05"),
        time: time("06:30"),
    };
    let texts: Vec<String> = round
        .as_planned(visit)
        .iter()
        .map(ToString::to_string)
        .collect();
    assert_eq!(
        texts,
        [
            "hang_net/animal:bramble/2026-05-05/1.1",
            "hang_net/animal:bramble/2026-05-05/1.2",
            "hang_net/animal:moss/2026-05-05/1.1",
        ]
    );
}

#[test]
fn a_look_again_marks_what_feeds_the_animal_alone_or_with_its_group() {
    let mut yard = Yard::bramble();
    let now = at("2026-05-05", "08:30");
    yard.stopped = vec![Stopped {
        out_with: Vec::new(),
        animal: AnimalId("bramble".to_owned()),
        name: "bramble".to_owned(),
        groups: Vec::new(),
        stops: Vec::new(),
        again: crate::plan::LookAgain {
            soon: Some(at("2026-05-05", "10:00")),
            tonight: None,
        },
        sign: true,
    }];
    let round = yard.at(now);
    let look = of(&round, "look_again/animal:bramble/2026-05-05/0.1").unwrap();
    assert_eq!(look.state, JobState::Later);
    let net = of(&round, "hang_net/animal:bramble/2026-05-05/2.1").unwrap();
    assert_eq!(net.waits, Some(Waits::Look));
    // Fed with others, the group's hay waits too.
    let group = Subject::Group(crate::animal::GroupId("hill".to_owned()));
    yard.plans[0].subject = group.clone();
    yard.stopped[0].groups = vec![crate::animal::GroupId("hill".to_owned())];
    let round = yard.at(now);
    let nets = round.jobs.iter().filter(|job| job.subject == group);
    assert!(
        nets.filter(|job| job.kind == JobKind::HangNet)
            .all(|job| job.waits == Some(Waits::Look))
    );
}

#[test]
fn the_sessions_of_a_week_are_spread_and_a_missed_one_is_made_up_for() {
    // Monday to Sunday; whoever works every time it is due rests where there is room.
    for (a_week, rests) in [
        (5, vec!["2026-05-05", "2026-05-08"]),
        (
            3,
            vec!["2026-05-05", "2026-05-06", "2026-05-08", "2026-05-10"],
        ),
    ] {
        let mut done = 0;
        let mut rested = Vec::new();
        for date in 4..=10 {
            let date = format!("2026-05-{date:02}");
            let mut pony = watched(Some(&date), Some(&date));
            pony.work = Some(WatchedWork {
                a_week,
                done,
                today: false,
            });
            let yard = Yard {
                watched: vec![pony.clone()],
                ..Yard::default()
            };
            let work = of(
                &yard.at(at(&date, "09:00")),
                &format!("exercise/animal:bramble/{date}/0.0"),
            )
            .is_some();
            if work {
                done += 1;
                pony.work = Some(WatchedWork {
                    a_week,
                    done,
                    today: true,
                });
                let yard = Yard {
                    watched: vec![pony],
                    ..Yard::default()
                };
                let after = yard.at(at(&date, "10:00"));
                assert!(after.jobs.iter().all(|job| job.kind != JobKind::Exercise));
            } else {
                rested.push(date);
            }
        }
        assert_eq!(
            (done, rested),
            (
                a_week,
                rests.into_iter().map(str::to_owned).collect::<Vec<_>>()
            )
        );
    }
    // Nothing done by Thursday: due every day that is left, and never more than one at a time.
    let mut pony = watched(Some("2026-05-07"), Some("2026-05-07"));
    pony.work = Some(WatchedWork {
        a_week: 5,
        done: 0,
        today: false,
    });
    let yard = Yard {
        watched: vec![pony],
        ..Yard::default()
    };
    let round = yard.at(at("2026-05-07", "09:00"));
    let due: Vec<&Job> = round
        .jobs
        .iter()
        .filter(|job| job.kind == JobKind::Exercise)
        .collect();
    assert_eq!(due.len(), 1);
    assert_eq!(due[0].state, JobState::Due);
}
