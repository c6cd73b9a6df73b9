//! Reminders of a tub and of the day, through to the files.

use super::*;
use crate::calendar::{self, tests::of, tests::read};
use crate::views::remind::{
    Deadline, Reminders, Ring, RingsFor, TubReminder, day_reminder, due, fresh, tub_reminder,
};
use crate::words::{RemindWords, UnitWords};

impl Yard {
    fn reminder(&self, now: Instant) -> TubReminder {
        let today = self.today(now);
        let soak = TubId(today.due.soaks.first().unwrap().id.0.clone());
        tub_reminder(&self.shelf, &today, &soak).unwrap()
    }

    fn rings(&self, now: Instant) -> Vec<Ring> {
        due(&self.today(now), now)
    }
}

fn step(ring: &Ring) -> Option<Deadline> {
    match ring.what {
        RingsFor::Tub { what, .. } => Some(what),
        RingsFor::BringIn { .. } => None,
    }
}

fn file(of: &TubReminder) -> String {
    calendar::tub(of, &English::default()).text()
}

/// Id, number, start, status and bells of each event of a file.
fn events(text: &str) -> Vec<(String, u32, String, String, usize)> {
    read(text)
        .events
        .iter()
        .map(|event| {
            let text = |name| of(event, name).unwrap().to_owned();
            (
                text("UID"),
                text("SEQUENCE").parse().unwrap(),
                text("DTSTART"),
                text("STATUS"),
                event.alarms.len(),
            )
        })
        .collect()
}

#[test]
fn the_file_of_a_tub_has_its_times_in_utc_and_its_ids_for_ever() {
    let mut yard_of = bramble();
    yard_of.tick(at(5, "06:05:00"), JobKind::StartSoak);
    let now = at(5, "06:10:00");
    let first = yard_of.reminder(now);
    let soak = first.soak.0.clone();
    let made = events(&file(&first));
    assert_eq!(
        made.iter()
            .map(|(id, _, start, status, bells)| (
                id.as_str(),
                start.as_str(),
                status.as_str(),
                *bells
            ))
            .collect::<Vec<_>>(),
        [
            (
                format!("lift-out.{soak}@tussock").as_str(),
                "20260505T060500Z",
                "CONFIRMED",
                2
            ),
            (
                format!("feed.{soak}@tussock").as_str(),
                "20260505T062000Z",
                "CONFIRMED",
                1
            ),
            (
                format!("throw-away.{soak}@tussock").as_str(),
                "20260505T170500Z",
                "CONFIRMED",
                2
            ),
        ]
    );
    // The same records make the same file.
    assert_eq!(
        file(&first),
        file(&yard_of.reminder(now + tussock_core::units::Span::minutes(1)))
    );

    // A corrected time: the same ids, a higher number, other times.
    let tub = yard_of.soak(now);
    let started = tub.correctable()[0].clone();
    let act = soaking::correct(&tub, &started, "5.55", now, &zone()).unwrap();
    yard_of.act(now, &act);
    let corrected = events(&file(&yard_of.reminder(now)));
    for (before, after) in made.iter().zip(&corrected) {
        assert_eq!(before.0, after.0);
        assert!(before.1 < after.1);
    }
    assert_eq!(corrected[0].2, "20260505T055500Z");

    // Lifted out early: that bell is taken out, the others follow.
    let early = at(5, "06:40:00");
    yard_of.go_on(early);
    let lifted = events(&file(&yard_of.reminder(early)));
    assert_eq!((lifted[0].3.as_str(), lifted[0].4), ("CANCELLED", 0));
    assert_eq!(
        (lifted[1].2.as_str(), lifted[1].3.as_str()),
        ("20260505T055500Z", "CONFIRMED")
    );
    assert!(corrected[0].1 < lifted[0].1);

    // Stopped: everything is taken out, with a higher number still.
    let id = TubId(soak);
    let stop = soaking::stop(&yard_of.soak(early), "stop").unwrap();
    let late = at(5, "06:45:00");
    yard_of.act(late, &stop);
    let over = tub_reminder(&yard_of.shelf, &yard_of.today(late), &id).unwrap();
    assert!(over.is_over());
    for (before, after) in lifted.iter().zip(events(&file(&over))) {
        assert_eq!(
            (before.0.as_str(), "CANCELLED", 0),
            (after.0.as_str(), after.3.as_str(), after.4)
        );
        assert!(before.1 < after.1);
    }
}

#[test]
fn warm_weather_brings_the_throwing_away_forward_with_a_higher_number() {
    let mut yard_of = bramble();
    yard_of.tick(at(5, "06:05:00"), JobKind::StartSoak);
    let now = at(5, "08:00:00");
    let before = yard_of.reminder(now);
    let weather = weather(&yard_of.shelf, yard_of.today(now).day);
    yard_of.act(
        now,
        &chip(&yard(), &weather, Chip::OverTwentyFive, true, "warm"),
    );
    let after = yard_of.reminder(now);
    assert_eq!(before.deadlines[2].at, at(5, "18:05:00"));
    assert_eq!(after.deadlines[2].at, at(5, "10:05:00"));
    assert!(calendar::sequence(before.revised) < calendar::sequence(after.revised));
}

#[test]
fn what_is_next_is_named_and_throwing_away_comes_before_all_else() {
    let mut yard_of = bramble();
    yard_of.tick(at(5, "06:05:00"), JobKind::StartSoak);
    let next = |yard: &Yard, now| {
        let next = yard.reminder(now).next(now).unwrap();
        (next.what, next.at)
    };
    let now = at(5, "06:23:00");
    assert_eq!(next(&yard_of, now), (Deadline::LiftOut, at(5, "07:05:00")));
    let late = at(5, "07:30:00");
    assert_eq!(next(&yard_of, late).0, Deadline::LiftOut);
    let evening = at(5, "18:05:00");
    assert_eq!(
        next(&yard_of, evening),
        (Deadline::ThrowAway, at(5, "18:05:00"))
    );
}

#[test]
fn a_clock_that_was_set_back_does_not_lose_the_tub() {
    let mut yard_of = bramble();
    let start = at(5, "06:05:00");
    yard_of.tick(start, JobKind::StartSoak);
    let there = yard_of.reminder(start);
    let back = at(5, "03:05:00");
    let still = yard_of.reminder(back);
    assert_eq!(still.deadlines, there.deadlines);
    assert_eq!(still.tub, there.tub);
    assert_eq!(still.next(back).unwrap().what, Deadline::LiftOut);
}

#[test]
fn a_deadline_rings_once_when_it_comes_and_not_a_minute_before() {
    let mut yard_of = bramble();
    yard_of.tick(at(5, "06:05:00"), JobKind::StartSoak);
    assert!(yard_of.rings(at(5, "07:04:59")).is_empty());
    let first = fresh(&yard_of.rings(at(5, "07:05:00")), &[]);
    assert_eq!(first.rings.len(), 1);
    assert_eq!(step(&first.rings[0]), Some(Deadline::LiftOut));
    // Again, after a reload, from what was kept.
    let again = fresh(&yard_of.rings(at(5, "07:20:00")), &first.told);
    assert!(again.rings.is_empty());
    assert_eq!(again.told, first.told);

    // The clock set back three hours: not due; and forward again: told already.
    assert!(yard_of.rings(at(5, "04:05:00")).is_empty());
    assert!(
        fresh(&yard_of.rings(at(5, "07:06:00")), &first.told)
            .rings
            .is_empty()
    );

    // A page that slept through everything is told what is to be done now, once.
    let slept = yard_of.rings(at(5, "18:05:00"));
    assert_eq!(slept.len(), 1);
    assert_eq!(step(&slept[0]), Some(Deadline::ThrowAway));
    assert_eq!(
        step(&yard_of.rings(at(5, "18:04:59"))[0]),
        Some(Deadline::LiftOut)
    );
    let words = English::default();
    assert_eq!(
        words.ring_line(&slept[0], at(5, "18:15:00"), &zone()),
        "at 18:05, 10 min late, Bramble"
    );

    // A corrected time is another deadline and rings anew.
    let now = at(5, "07:06:00");
    let tub = yard_of.soak(now);
    let started = tub.correctable()[0].clone();
    let act = soaking::correct(&tub, &started, "6.06", now, &zone()).unwrap();
    yard_of.act(now, &act);
    assert_eq!(fresh(&yard_of.rings(now), &first.told).rings.len(), 1);
}

#[test]
fn what_was_told_is_kept_in_bounds_and_what_is_due_is_never_forgotten() {
    let ring = |number: usize| Ring {
        key: format!("lift_out/{number}/1"),
        what: RingsFor::Tub {
            what: Deadline::LiftOut,
            soak: number.to_string(),
            tub: None,
        },
        at: at(5, "07:05:00"),
        whose: String::new(),
    };
    let due: Vec<Ring> = (0..200).map(ring).collect();
    let all = fresh(&due, &[]);
    assert_eq!(all.rings.len(), 200);
    assert!(fresh(&due, &all.told).rings.is_empty());
    // All are over: the newest 64 stay.
    let later = fresh(&[], &all.told);
    assert_eq!(later.told.len(), 64);
    assert_eq!(later.told.last(), all.told.last());
}

#[test]
fn the_day_rings_at_visits_and_before_them_until_the_review() {
    let yard_of = bramble();
    let now = at(5, "05:50:00");
    let today = yard_of.today(now);
    let day = day_reminder(&yard_of.shelf, &today);
    let words = English::default();
    let said: Vec<String> = day
        .bells
        .iter()
        .map(|bell| format!("{} {}", words.time(bell.time), words.bell_of_day(bell)))
        .collect();
    assert_eq!(
        said,
        [
            "06:05 Bramble: soak the hay for 07:20",
            "07:20 Bramble: hang 2 nets",
            "18:00 Bramble: hang 2 nets",
        ]
    );
    assert!(day.gone.is_empty() && day.past.is_empty());

    let calendar = read(&calendar::day(&day, &words).text());
    assert_eq!(calendar.events.len(), day.bells.len());
    for (event, bell) in calendar.events.iter().zip(&day.bells) {
        let start = of(event, "DTSTART").unwrap();
        assert!(!start.ends_with('Z'));
        assert_eq!(
            of(event, "RRULE").unwrap(),
            format!(
                "FREQ=DAILY;UNTIL={}T{}",
                bell.last.format("%Y%m%d"),
                bell.time.format("%H%M%S")
            )
        );
        assert_eq!(event.alarms.len(), 1);
        assert!(
            of(event, "UID")
                .unwrap()
                .ends_with(".animal.bramble@tussock")
        );
    }

    // Past the review nothing rings, and it says whose.
    let after = yard_of.today(at(5, "05:50:00") + tussock_core::units::Span::hours(24 * 60));
    let day = day_reminder(&yard_of.shelf, &after);
    assert!(day.bells.is_empty());
    assert_eq!(day.past[0].0, "Bramble");
}

#[test]
fn a_new_plan_takes_out_what_it_rings_no_more() {
    let mut yard_of = bramble();
    let now = at(6, "08:00:00");
    let before = day_reminder(&yard_of.shelf, &yard_of.today(now));
    let Ok(Body::Plan(mut plan)) = Body::read(yard_of.shelf.get("plan").unwrap()) else {
        panic!("the plan is there");
    };
    plan.nets.retain(|net| !net.soaked);
    plan.visits.remove(0);
    plan.from = "2026-05-07".parse().unwrap();
    plan.review = "2026-05-21".parse().unwrap();
    let about = Subject::animal(&AnimalId("bramble".into()));
    yard_of.add(now, "plan-2", about, Body::Plan(plan));
    let today = yard_of.today(now);
    let after = day_reminder(&yard_of.shelf, &today);
    assert_eq!(after.bells.len(), 1);
    assert_eq!(after.bells[0].first.to_string(), "2026-05-07");
    assert_eq!(after.bells[0].last.to_string(), "2026-05-21");
    let text = calendar::day(&after, &English::default()).text();
    let mut made: Vec<(String, String, usize)> = events(&text)
        .into_iter()
        .map(|(id, _, _, status, bells)| (id, status, bells))
        .collect();
    made.sort();
    let row = |id: &str, status: &str, bells| {
        (
            format!("{id}.animal.bramble@tussock"),
            status.to_owned(),
            bells,
        )
    };
    assert_eq!(
        made,
        [
            row("soak.1", "CANCELLED", 0),
            row("visit.1", "CONFIRMED", 1),
            row("visit.2", "CANCELLED", 0),
        ]
    );
    assert!(calendar::sequence(before.revised) < calendar::sequence(after.revised));
}

#[test]
fn nothing_is_on_until_somebody_switches_it_on() {
    let none = Reminders::default();
    assert!(!none.any() && !none.rings());
    let kept = serde_json::to_string(&none.with(crate::views::remind::Means::Badge, true)).unwrap();
    let read: Reminders = serde_json::from_str(&kept).unwrap();
    assert!(read.badge && read.any() && !read.rings());
    // A later version may have kept more, an earlier one less.
    let read: Reminders = serde_json::from_str("{\"sound\":true,\"smoke\":true}").unwrap();
    assert!(read.sound && !read.awake);
}
