//! Animals on one hay: the least that each may get of what is offered keeps its floor, what hangs is what is offered, and
//! the shares add up, whatever they weigh and whatever level each may have.

use crate::seed::config;
use proptest::prelude::*;
use std::path::PathBuf;
use tussock_core::animal::{VetPermit, VetWord};
use tussock_core::log::bodies::PlanV1;
use tussock_core::log::{Body, Case, GatheredGroup, Kind, Record, gather_group};
use tussock_core::safety::{GroupVerdict, judge_group};
use tussock_core::units::{BodyMass, PartOfBody};

fn field() -> GatheredGroup {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR"))
        .join("../core/examples/cases/two-cobs-and-a-shetland.json");
    let case = Case::read(&std::fs::read_to_string(path).unwrap()).unwrap();
    let records: Vec<&Record> = case.log.current().collect();
    let group = records
        .iter()
        .filter(|record| record.kind == Kind::Group)
        .find_map(|record| match Body::read(record) {
            Ok(Body::Group(body)) => Some(body.group(&record.id)),
            _ => None,
        })
        .unwrap();
    gather_group(&records, &group, case.now, &case.zone, &case.wish)
}

/// Of each member: how many times as heavy it is, and the level that is asked for with a vet's word.
type Moved = (f64, Option<f64>);

fn moved() -> impl Strategy<Value = Vec<Moved>> {
    prop::collection::vec((0.5_f64..1.5, prop::option::of(1.0_f64..1.6)), 1..=3)
}

fn of(members: &[Moved]) -> GatheredGroup {
    let mut all = field();
    all.members.truncate(members.len());
    for (member, (weight, level)) in all.members.iter_mut().zip(members) {
        for dated in &mut member.weights {
            let moved = |kg: BodyMass| BodyMass::kg(kg.to_kg() * weight);
            dated.weight.value = moved(dated.weight.value);
            dated.weight.low = moved(dated.weight.low);
            dated.weight.high = moved(dated.weight.high);
        }
        if let Some(level) = level {
            let level = PartOfBody::percent(*level);
            member.asked = Some(level);
            member.words.push(VetWord {
                animal: member.animal.id.clone(),
                permit: VetPermit::LowestLevel(level),
                vet: "The vet".to_owned(),
                practice: "The practice".to_owned(),
                given: member.day,
                how: "by telephone".to_owned(),
                expires: member.day + chrono::Days::new(20),
                written: None,
            });
        }
    }
    all
}

/// Half of what is tried may be refused, not more.
fn tried() -> proptest::test_runner::Config {
    let mut config = config();
    config.max_global_rejects = config.cases;
    config
}

proptest! {
    #![proptest_config(tried())]

    #[test]
    fn no_member_is_under_its_floor_and_nothing_is_counted_twice(members in moved()) {
        let plan = of(&members).draft().ok().and_then(|draft| match judge_group(draft) {
            GroupVerdict::Allowed(plan) => Some(plan),
            GroupVerdict::Refused(_) => None,
        });
        prop_assume!(plan.is_some());
        let plan = plan.unwrap();
        let draft = plan.planned();
        let tiny = 1e-6;
        for member in &draft.members {
            let alone = &member.alone;
            let floor = alone.allowance.floor.of(alone.weight.value).to_kg();
            prop_assert!(
                floor <= member.share.least.to_kg() + tiny,
                "{}: {:?} under {floor}", alone.animal.name, member.share
            );
            if !alone.vet_list.is_empty() {
                // The shy and the thin are not to be cut by eating with others. A step of the scale is the scale's.
                prop_assert!(alone.dry_matter.to_kg() <= member.share.likely.to_kg() + 0.1);
            }
        }
        // The likely shares without the buckets are the forage that is offered.
        let likely: f64 = draft
            .members
            .iter()
            .map(|member| member.share.likely.to_kg() - member.bought().to_kg())
            .sum();
        prop_assert!((likely - draft.forage.to_kg()).abs() < tiny);
        let issued = PlanV1::of_group(&plan, &[], None).unwrap().unwrap();
        let hung: f64 = issued.nets.iter().map(|net| net.as_fed_g.as_fed().to_kg()).sum();
        let laid: f64 = draft.layout.hangings.iter().map(|hanging| hanging.as_fed.to_kg()).sum();
        prop_assert!((hung - laid).abs() < 0.01, "{hung} {laid}");
        let dry: f64 = issued.amounts.iter().map(|amount| amount.dry_matter_g.dry().to_kg()).sum();
        prop_assert!((dry - draft.forage.to_kg()).abs() < 0.01, "{dry} {:?}", draft.forage);
        let places = if draft.members.len() == 1 { 1 } else { draft.members.len() + 1 };
        for visit in issued.visits {
            let here = issued.nets.iter().filter(|net| net.visit == visit).count();
            prop_assert!(here == 0 || here == places, "{here} nets at {places} places");
        }
    }
}
