//! Laws: more minutes are never less energy, more work never builds up less, taps lose no time.

use super::tests::{animal, session};
use super::*;
use crate::animal::{Answer, Kind, Laminitis, SaidOn, Temperament, Workload};
use crate::limits::Ends;
use crate::units::{BodyMass, Instant, LocalDate, Span};
use proptest::prelude::*;

fn a_gait() -> impl Strategy<Value = Gait> {
    prop::sample::select(&Gait::ALL[..])
}

fn a_how() -> impl Strategy<Value = How> {
    prop::sample::select(vec![How::Ridden, How::Led, How::Lunged, How::Free])
}

fn monday() -> LocalDate {
    "2026-03-02".parse().unwrap()
}

fn after(days: u64) -> LocalDate {
    monday() + chrono::Days::new(days)
}

fn sessions() -> impl Strategy<Value = Vec<Session>> {
    prop::collection::vec((0_u64..70, 0_u32..60), 0..40).prop_map(|days| {
        days.into_iter()
            .enumerate()
            .map(|(index, (day, minutes))| Session {
                record: crate::sources::RecordId(format!("work-{index}")),
                ..session(&after(day).to_string(), minutes, Answer::Yes)
            })
            .collect()
    })
}

proptest! {
    #[test]
    fn more_minutes_are_never_less_energy_and_a_faster_gait_is_never_cheaper(
        (walk, trot, canter) in (0_u32..200, 0_u32..200, 0_u32..200),
        gait in a_gait(),
        more in 0_u32..200,
        how in a_how(),
        kg in 60.0_f64..900.0,
        band in (0.0_f64..0.3, 0.0_f64..0.3),
        load in prop::option::of(20.0_f64..120.0),
    ) {
        let body = Ends::new(kg * (1.0 - band.0), kg, kg * (1.0 + band.1)).map(BodyMass::kg);
        let load = load.map(BodyMass::kg);
        let of = |times: &GaitTimes| {
            session_energy(Kind::Horse, body, times, how, load).unwrap().unwrap().energy
        };
        let times = GaitTimes::minutes(walk, trot, canter);
        let longer = times.with(gait, Span::minutes(i64::from(more)));
        let (short, long) = (of(&times), of(&longer));
        prop_assert!(short.in_order() && long.in_order());
        prop_assert!(0.0 <= short.least.to_mcal());
        prop_assert!(short.least <= long.least && short.likely <= long.likely && short.most <= long.most);
        let slow = of(&times.with(Gait::Walk, Span::minutes(i64::from(more))));
        let fast = of(&times.with(Gait::Trot, Span::minutes(i64::from(more))));
        prop_assert!(slow.likely <= fast.likely);
    }

    #[test]
    fn another_session_never_builds_up_less(
        done in sessions(),
        extra in (0_u64..70, 15_u32..60),
        today in 0_u64..80,
    ) {
        let from = CountsFrom { since: None, work: Workload::Maintenance(Temperament::Low) };
        let mut more = done.clone();
        more.push(session(&after(extra.0).to_string(), extra.1, Answer::Yes));
        let (before, then) = (built(&done, from, after(today)), built(&more, from, after(today)));
        prop_assert!(before <= 3 && then <= 3);
        prop_assert!(before <= then, "{before} {then}");
        let line = standing(&WorkFor {
            animal: &animal(Laminitis::Never),
            day: after(today),
            words: &[],
            said: SaidOn::default(),
            sign: false,
        })
        .line;
        let minutes = |built| asked(line, built).unwrap().times.total();
        prop_assert!(minutes(before) <= minutes(then));
    }

    #[test]
    fn taps_lose_no_time_and_a_phone_that_was_dead_meanwhile_says_the_same(
        steps in prop::collection::vec((0_i64..40, a_gait()), 1..12),
        end in 0_i64..40,
        asleep in 0_i64..5_000,
    ) {
        let mut at = Instant::from_ms(1_777_935_600_000);
        let start = at;
        let mut taps = Vec::new();
        for (minutes, gait) in steps {
            taps.push((at, Tap::Gait(gait)));
            at = at + Span::minutes(minutes);
        }
        at = at + Span::minutes(end);
        let going = timed(&taps, at);
        prop_assert_eq!(going.times.total(), at.since(start));
        taps.push((at, Tap::Stop));
        let over = timed(&taps, at + Span::minutes(asleep));
        prop_assert_eq!(over.times, going.times);
        prop_assert_eq!(over.stopped, Some(at));
    }
}
