//! Throwing away soaked hay: after twelve hours and not a minute before, sooner in heat and after long soaks, by stored
//! instants alone: whatever the clock on the wall does meanwhile.

use crate::seed::config;
use proptest::prelude::*;
use tussock_core::soak::{Air, Recipe, SoakTimes, TubState, Water, state, timeline};
use tussock_core::units::{Instant, LocalStamp, Resolved, Span, Zone};
use tussock_flow::words::{English, SoakWords};
use tussock_tests::zone::TableZone;

/// 2026-03-29 01:00 UTC, an hour forward, and 2026-10-25 01:00 UTC, an hour back.
const FORWARD: i64 = 1_774_746_000_000;
const BACK: i64 = 1_792_890_000_000;

fn britain() -> TableZone {
    let at = Instant::from_ms;
    TableZone::new(0, &[(at(FORWARD), 60), (at(BACK), 0)])
}

fn water() -> impl Strategy<Value = Water> {
    prop::sample::select(vec![Water::TapWinter, Water::TapSummer, Water::HandHot])
}

fn air() -> impl Strategy<Value = Air> {
    prop::sample::select(vec![
        Air::HardFrost,
        Air::Under16,
        Air::Mild,
        Air::Over20,
        Air::Over25,
    ])
}

/// Starts anywhere within two days of a change of the clock, or on an ordinary day.
fn wetted() -> impl Strategy<Value = Instant> {
    let near = prop::sample::select(vec![FORWARD, BACK, 1_780_000_000_000]);
    (near, -2880_i64..2880).prop_map(|(at, minutes)| Instant::from_ms(at) + Span::minutes(minutes))
}

fn is_stop(recipe: Recipe, times: SoakTimes, air: Air, now: Instant) -> bool {
    matches!(
        state(Some((recipe, times)), air, now),
        TubState::ThrowAway { .. }
    )
}

fn keeps(air: Air) -> i64 {
    match air {
        Air::HardFrost | Air::Under16 | Air::Mild => 12 * 60,
        Air::Over20 => 6 * 60,
        Air::Over25 => 4 * 60,
    }
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn a_short_soak_is_a_stop_by_the_air_and_not_a_minute_before(
        water in water(), minutes in 5_u32..=120, air in air(), wetted in wetted(),
        lifted in prop::option::of(5_i64..=120)
    ) {
        let recipe = Recipe::minutes(water, minutes).unwrap();
        let times = SoakTimes {
            lifted: lifted.map(|after| wetted + Span::minutes(after)),
            ..SoakTimes::started(wetted)
        };
        let end = wetted + Span::minutes(keeps(air));
        prop_assert!(!is_stop(recipe, times, air, end - Span::minutes(1)));
        prop_assert!(!is_stop(recipe, times, air, Instant::from_ms(end.to_ms() - 1)));
        prop_assert!(is_stop(recipe, times, air, end));
        let mut fed = times;
        fed.fed = Some(times.lifted.unwrap_or(wetted));
        prop_assert!(!is_stop(recipe, fed, air, end - Span::minutes(1)));
        prop_assert!(is_stop(recipe, fed, air, end));
    }

    #[test]
    fn a_long_soak_is_a_stop_six_hours_after_lifting_and_in_warm_air_no_later_than_a_short_one(
        water in water(), minutes in 121_u32..=960, air in air(), wetted in wetted(),
        early in prop::option::of(0_i64..=60)
    ) {
        let recipe = Recipe::minutes(water, minutes).unwrap();
        let out = wetted + recipe.soak();
        let lifted = early.map(|early| out - Span::minutes(early));
        let times = SoakTimes { lifted, ..SoakTimes::started(wetted) };
        let by_lift = lifted.unwrap_or(out) + Span::hours(6);
        let by_air = wetted + Span::minutes(keeps(air));
        let allowed = matches!(air, Air::HardFrost | Air::Under16);
        let end = if allowed { by_lift } else { by_lift.min(by_air) };
        prop_assert!(!is_stop(recipe, times, air, end - Span::minutes(1)));
        prop_assert!(is_stop(recipe, times, air, end));
    }

    #[test]
    fn the_clock_on_the_wall_moves_no_deadline(
        minutes in 5_u32..=120, wetted in wetted(), away in -12_i32..=12
    ) {
        // Told by the wall of Britain, across a change of its clock and from another zone: the same twelve hours.
        let recipe = Recipe::minutes(Water::TapSummer, minutes).unwrap();
        let line = timeline(recipe, &SoakTimes::started(wetted), Air::Mild);
        let home = britain();
        let abroad = TableZone::new(away * 60, &[]);
        for zone in [&home, &abroad] {
            let wall = zone.to_local(line.throw_away);
            // An hour that comes twice names two instants, of which the deadline is one.
            let named = match zone.to_instant(wall) {
                Resolved::One(at) => at == line.throw_away,
                Resolved::Twice(first, second) => [first, second].contains(&line.throw_away),
                Resolved::Missing(_) => false,
            };
            prop_assert!(named);
        }
        prop_assert_eq!(line.throw_away.since(line.wetted), Span::hours(12));
    }
}

#[test]
fn over_both_changes_of_the_clock_twelve_hours_are_eleven_or_thirteen_on_the_wall() {
    let zone = britain();
    let words = English::default();
    let recipe = Recipe::usual(Water::TapWinter);
    let on = |date: &str, time: &str| {
        let stamp = LocalStamp {
            date: date.parse().unwrap(),
            time: time.parse().unwrap(),
        };
        zone.to_instant(stamp).planned()
    };
    for (date, after) in [("2026-03-28", "11:00:00"), ("2026-10-24", "09:00:00")] {
        let wetted = on(date, "22:00:00");
        let times = SoakTimes::started(wetted);
        let line = timeline(recipe, &times, Air::Mild);
        assert_eq!(line.throw_away.since(wetted), Span::hours(12));
        assert_eq!(zone.to_local(line.throw_away).time, after.parse().unwrap());
        assert!(!is_stop(
            recipe,
            times,
            Air::Mild,
            line.throw_away - Span::minutes(1)
        ));
        assert!(is_stop(recipe, times, Air::Mild, line.throw_away));
        let said = words.tub(
            &state(Some((recipe, times)), Air::Mild, line.throw_away),
            &zone,
        );
        assert!(said.sentence.starts_with("Throw away"), "{}", said.sentence);
    }
}
