//! Instants and the clock on the wall, in zones made from a table.

use crate::seed::config;
use proptest::prelude::*;
use tussock_core::units::{Instant, LocalStamp, Resolved, Span, Zone};
use tussock_tests::zone::TableZone;

const DAY_MS: i64 = 24 * 60 * 60 * 1000;
/// 2000-01-01 in milliseconds of UTC.
const START: i64 = 946_684_800_000;

/// Zones from 12 h west to 13 h east that change the clock by up to two hours, at least three days apart.
fn zone() -> impl Strategy<Value = TableZone> {
    let change = (3_i64..200, 0..DAY_MS / 1000, -8_i32..=8);
    (-48_i32..=52, prop::collection::vec(change, 0..8)).prop_map(|(first, changes)| {
        let first = first * 15;
        let (mut at, mut offset) = (START, first);
        let mut table = Vec::new();
        for (days, seconds, quarters) in changes {
            at += days * DAY_MS + seconds * 1000;
            offset = (offset + quarters * 15).clamp(-720, 780);
            table.push((Instant::from_ms(at), offset));
        }
        TableZone::new(first, &table)
    })
}

/// Instants over the years of the table, one in two of them near a change.
fn zone_and_instant() -> impl Strategy<Value = (TableZone, Instant)> {
    (
        zone(),
        any::<prop::sample::Index>(),
        any::<bool>(),
        0..4000 * DAY_MS,
        -3..=3_i64,
        0..3_600_000_i64,
    )
        .prop_map(|(zone, which, near, far, hours, ms)| {
            let at = match zone.changes() {
                [] => START + far,
                _ if !near => START + far,
                changes => which.get(changes).0.to_ms() + hours * 3_600_000 + ms,
            };
            (zone, Instant::from_ms(at))
        })
}

fn minutes_between(later: LocalStamp, earlier: LocalStamp) -> i64 {
    (later.date.and_time(later.time) - earlier.date.and_time(earlier.time)).num_minutes()
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn an_instant_is_found_again_from_the_clock_on_the_wall((zone, at) in zone_and_instant()) {
        match zone.to_instant(zone.to_local(at)) {
            Resolved::One(found) => prop_assert_eq!(found, at),
            Resolved::Twice(first, second) => {
                prop_assert!(first < second);
                prop_assert!(at == first || at == second);
            }
            Resolved::Missing(found) => prop_assert!(false, "{at:?} was on the wall, {found:?}"),
        }
    }

    #[test]
    fn a_planned_time_is_on_the_wall_or_as_much_later_as_the_clock_went_forward(
        (zone, near) in zone_and_instant(), minutes in -180_i64..180
    ) {
        // A time on the wall near a change: what the clock shows now, moved by hand.
        let shown = zone.to_local(near);
        let moved = shown.date.and_time(shown.time) + chrono::Duration::minutes(minutes);
        let stamp = LocalStamp { date: moved.date(), time: moved.time() };
        let resolved = zone.to_instant(stamp);
        let wall = zone.to_local(resolved.planned());
        match resolved {
            Resolved::One(_) => prop_assert_eq!(wall, stamp),
            Resolved::Twice(first, second) => {
                prop_assert_eq!(wall, stamp);
                prop_assert_eq!(zone.to_local(second), stamp);
                let back = zone.offset_min(first) - zone.offset_min(second);
                prop_assert_eq!(second.since(first), Span::minutes(i64::from(back)));
            }
            Resolved::Missing(at) => {
                let before = at - Span::minutes(minutes_between(wall, stamp));
                let forward = zone.offset_min(at) - zone.offset_min(before);
                prop_assert!(forward > 0);
                prop_assert_eq!(minutes_between(wall, stamp), i64::from(forward));
            }
        }
    }

    #[test]
    fn an_instant_beyond_the_calendar_does_not_break(ms in any::<i64>(), zone in zone()) {
        let local = zone.to_local(Instant::from_ms(ms));
        let _ = zone.to_instant(local);
    }
}
