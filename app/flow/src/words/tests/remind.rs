//! Reminders: every means, on every device, says what rings and what does not.

use super::{check, check_head, every, tongues};
use crate::views::remind::{DailyBell, Deadline, Has, Means, Ring, RingsFor, Sent, Stands};
use crate::words::RemindWords;
use tussock_core::animal::AnimalId;
use tussock_core::round::{Subject, Waits};
use tussock_core::units::{Instant, LocalDate, LocalTime, Zone};

struct Utc;

impl Zone for Utc {
    fn offset_min(&self, _: Instant) -> i32 {
        0
    }
}

fn has() -> Vec<Has> {
    every![
        Has::Available => Has::Available,
        Has::NotHere => Has::NotHere,
        Has::Denied => Has::Denied,
    ]
}

fn deadlines() -> Vec<Deadline> {
    every![
        Deadline::LiftOut => Deadline::LiftOut,
        Deadline::Feed => Deadline::Feed,
        Deadline::ThrowAway => Deadline::ThrowAway,
    ]
}

fn bell(soak: bool, nets: usize, feeds: usize) -> DailyBell {
    let day = |day| LocalDate::from_ymd_opt(2026, 5, day).unwrap();
    DailyBell {
        subject: Subject::Animal(AnimalId("bramble".into())),
        name: "Bramble".into(),
        visit: 1,
        soak,
        time: LocalTime::from_hms_opt(6, 5, 0).unwrap(),
        hung: LocalTime::from_hms_opt(7, 20, 0).unwrap(),
        first: day(5),
        last: day(18),
        review: day(18),
        nets,
        feeds,
    }
}

#[test]
fn every_means_says_what_rings_and_what_does_not() {
    let means = every![
        Means::Sound => Means::Sound,
        Means::Notification => Means::Notification,
        Means::Awake => Means::Awake,
        Means::Badge => Means::Badge,
    ];
    let stands = every![
        Stands::On => Stands::On,
        Stands::Off => Stands::Off,
        Stands::NotHere => Stands::NotHere,
        Stands::Refused => Stands::Refused,
    ];
    let sent = every![
        Sent::Shared => Sent::Shared,
        Sent::Saved => Sent::Saved,
        Sent::Left => Sent::Left,
        Sent::Failed => Sent::Failed,
    ];
    for words in tongues() {
        for means in &means {
            check(words.means(*means));
            for has in has() {
                let line = words.means_line(*means, has);
                check(line);
                assert!(line.ends_with('.'), "{line}");
            }
        }
        // What is there says what happens when the page is closed or out of sight.
        for means in &means {
            let line = words.means_line(*means, Has::Available);
            assert!(
                ["closed", "in sight"]
                    .iter()
                    .any(|said| line.contains(said)),
                "{line}"
            );
        }
        for has in has() {
            check(words.shakes(has));
            check(words.file_truth(has));
        }
        for stands in &stands {
            check(words.means_stand(*stands));
        }
        for sent in &sent {
            check(words.sent(*sent));
        }
        check(words.closed_truth());
    }
}

#[test]
fn every_head_fits_and_every_bell_is_said() {
    let now = Instant::from_ms(1_777_978_800_000);
    for words in tongues() {
        for what in deadlines() {
            check_head(words.clock_of(what, false));
            check_head(words.clock_of(what, true));
            check(words.deadline(what));
            check(words.bell_of_tub_why(what));
            for (tub, whose) in [(Some("Tub 2"), "Bramble"), (None, "")] {
                check(&words.bell_of_tub(what, tub, whose));
                let ring = Ring {
                    key: String::new(),
                    what: RingsFor::Tub {
                        what,
                        soak: "s".into(),
                        tub: tub.map(str::to_owned),
                    },
                    at: now,
                    whose: whose.into(),
                };
                check(&words.ring_head(&ring));
                check(&words.ring_line(&ring, now, &Utc));
            }
        }
        for paddock in [Some("Top field"), None] {
            let ring = Ring {
                key: String::new(),
                what: RingsFor::BringIn {
                    paddock: paddock.map(str::to_owned),
                    waits: paddock.map(|_| Waits::Vet),
                },
                at: now,
                whose: "Moss".into(),
            };
            check(&words.ring_head(&ring));
            check(&words.ring_line(&ring, now, &Utc));
        }
        for head in [
            words.tub_is_over(),
            words.no_tub_to_remind(),
            words.no_bells(),
            words.reminders(),
            &words.bells_a_day(1),
            &words.bells_a_day(12),
        ] {
            check_head(head);
        }
        check(&words.own_timer(now, &Utc));
        for bell in [
            bell(true, 0, 0),
            bell(false, 1, 1),
            bell(false, 2, 2),
            bell(false, 0, 1),
        ] {
            check(&words.bell_of_day(&bell));
            check(&words.bell_until(&bell));
            check(&words.bell_of_day_why(bell.review));
            check(&words.review_past(&bell.name, bell.review));
        }
    }
}
