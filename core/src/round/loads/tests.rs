//! Loads of an ordinary morning, and what holds for all of them.

use super::super::tests::{Britain, animal, day, net, plan, time};
use super::super::{IssuedPlan, RoundFor, round};
use super::*;
use crate::soak::{Air, SoakTimes, Water};
use crate::sources::RecordId;
use proptest::prelude::*;

fn at(clock: &str) -> Instant {
    super::super::state::at(&Britain, day("2026-05-05"), time(clock))
}

fn tub(name: &str, kg: Option<f64>) -> TubRoom {
    TubRoom {
        id: TubId(name.to_owned()),
        capacity: kg.map(AsFed::kg),
    }
}

fn three(nets: usize) -> Vec<IssuedPlan> {
    ["bramble", "fern", "moss"]
        .map(|name| plan(name, vec![net("06:30", true); nets]))
        .to_vec()
}

fn of(plans: &[IssuedPlan], soaks: &[OpenSoak], tubs: &[TubRoom], now: Instant) -> Vec<Load> {
    let due = round(&RoundFor {
        now,
        zone: &Britain,
        plans,
        watched: &[],
        words: &[],
        stopped: &[],
        soaks,
        dry: &[],
        turnouts: &[],
        out: &[],
        answered: &[],
    });
    let mut loads = loads(&due, soaks, tubs, now);
    loads.retain(|load| load.visit.day == day("2026-05-05"));
    loads
}

fn names(load: &Load) -> Vec<&str> {
    load.parts.iter().map(|part| part.name.as_str()).collect()
}

#[test]
fn nets_of_one_visit_lie_in_one_tub_and_are_lifted_out_together() {
    let loads = of(&three(2), &[], &[tub("a", None)], at("05:00"));
    assert_eq!(loads.len(), 1);
    let load = &loads[0];
    assert_eq!(names(load), ["bramble", "fern", "moss"]);
    assert!(
        load.parts
            .iter()
            .all(|part| part.whole && part.hangs.len() == 2)
    );
    assert_eq!(load.goes_in, at("05:15"));
    assert_eq!(load.lift_out, at("06:15"));
    assert!((load.hay.to_kg() - 21.6).abs() < 1e-9);
}

#[test]
fn what_does_not_fit_goes_into_the_next_tub_with_an_animals_nets_together() {
    let tubs = [tub("a", Some(11.0)), tub("b", Some(15.0))];
    let loads = of(&three(2), &[], &tubs, at("05:00"));
    assert_eq!(loads.len(), 2);
    assert_eq!(names(&loads[0]), ["bramble"]);
    assert_eq!(names(&loads[1]), ["fern", "moss"]);
    assert!(
        loads
            .iter()
            .all(|load| load.filling == 1 && !load.over_full)
    );
}

#[test]
fn one_small_tub_is_filled_again_and_the_first_filling_goes_in_earlier() {
    let loads = of(&three(2), &[], &[tub("a", Some(8.0))], at("02:00"));
    let fillings: Vec<(u32, Instant, Instant)> = loads
        .iter()
        .map(|load| (load.filling, load.goes_in, load.lift_out))
        .collect();
    assert_eq!(
        fillings,
        [
            (1, at("03:15"), at("04:15")),
            (2, at("04:15"), at("05:15")),
            (3, at("05:15"), at("06:15")),
        ]
    );
}

#[test]
fn a_net_that_is_more_than_the_tub_holds_says_so() {
    let loads = of(&three(1)[..1], &[], &[tub("a", Some(3.0))], at("05:00"));
    assert!(loads[0].over_full);
    assert_eq!(loads[0].filling, 1);
}

#[test]
fn a_tub_with_hay_in_the_water_is_not_free_until_that_is_out() {
    let soak = |started: &str| OpenSoak {
        id: RecordId("s".to_owned()),
        tub: Some(TubId("a".to_owned())),
        tub_name: None,
        subject: animal("other"),
        name: String::new(),
        lot: LotId("back-field".to_owned()),
        recipe: Recipe::usual(Water::TapSummer),
        times: SoakTimes::started(at(started)),
        air: Air::Mild,
        hay: None,
        started_by: None,
        hangs: Vec::new(),
    };
    let tubs = [tub("a", None), tub("b", None)];
    let busy = of(&three(1), &[soak("04:45")], &tubs, at("05:00"));
    assert_eq!(busy[0].tub, Some(TubId("b".to_owned())));
    let out_by_then = of(&three(1), &[soak("04:10")], &tubs, at("05:00"));
    assert_eq!(out_by_then[0].tub, Some(TubId("a".to_owned())));
    // None is free: another one, not there yet.
    let none = of(&three(1), &[soak("04:45")], &tubs[..1], at("05:00"));
    assert_eq!(none[0].tub, None);
}

proptest! {
    #[test]
    fn every_net_lies_in_one_load_and_no_tub_in_two_at_once(
        nets in 1_usize..4,
        rooms in prop::collection::vec(prop::option::of(3.0_f64..20.0), 0..4)
    ) {
        let tubs: Vec<TubRoom> = rooms
            .iter()
            .enumerate()
            .map(|(index, room)| tub(&index.to_string(), *room))
            .collect();
        let plans = three(nets);
        let loads = of(&plans, &[], &tubs, at("00:30"));
        let mut hangs: Vec<&Key> = loads
            .iter()
            .flat_map(|load| load.parts.iter().flat_map(|part| &part.hangs))
            .collect();
        prop_assert_eq!(hangs.len(), 3 * nets);
        hangs.sort();
        hangs.dedup();
        prop_assert_eq!(hangs.len(), 3 * nets);
        for load in &loads {
            let room = tubs
                .iter()
                .find(|tub| Some(&tub.id) == load.tub.as_ref())
                .and_then(|tub| tub.capacity);
            if let Some(room) = room {
                prop_assert_eq!(load.over_full, room.to_kg() + 0.001 < load.hay.to_kg());
                prop_assert!(!load.over_full || load.parts.len() == 1 && load.parts[0].hangs.len() == 1);
            }
            prop_assert!(load.lift_out <= at("06:30"));
        }
        for (index, one) in loads.iter().enumerate() {
            for other in &loads[..index] {
                let apart = other.lift_out <= one.goes_in || one.lift_out <= other.goes_in;
                prop_assert!(one.tub != other.tub || apart, "{one:?} {other:?}");
            }
        }
    }
}
