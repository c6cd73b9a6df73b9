//! The group of the repository's case on its screen.

use super::*;
use crate::forms::group::change;
use crate::views::day::{DayOffer, day as day_of};
use crate::views::plan::{Offer, plan as plan_of};
use crate::views::test_yard::written;
use crate::words::{English, GroupWords};
use tussock_core::animal::{Kind, VetFlag, YardId};
use tussock_core::log::Case;
use tussock_core::log::bodies::{AnimalV2, VisitsV1};
use tussock_core::round::Subject as Of;
use tussock_core::units::AsFed;

fn yard() -> (Shelf, Case) {
    let case = Case::read(include_str!(
        "../../../../../core/examples/cases/two-cobs-and-a-shetland.json"
    ))
    .unwrap();
    let mut shelf = Shelf::default();
    for record in case.log.current() {
        shelf.put(record.clone());
    }
    // The visits of a case stand beside its records.
    let visits = Act::Add(New {
        id: RecordId("visits".into()),
        subject: Subject::yard(&YardId("hill".into())),
        at: None,
        known: Known::Seen,
        body: Body::Visits(VisitsV1 {
            times: case.visits.clone(),
            from: None,
        }),
    });
    (written(&shelf, &visits, case.now), case)
}

fn top_field(shelf: &Shelf, case: &Case) -> Herd {
    herd(shelf, &GroupId("top-field".into()), case.now, &case.zone).unwrap()
}

#[test]
fn a_minute_later_the_group_reads_the_same_and_a_day_later_it_does_not() {
    let (shelf, case) = yard();
    let at = |ms: i64| {
        let now = Instant::from_ms(case.now.to_ms() + ms);
        herd(&shelf, &GroupId("top-field".into()), now, &case.zone).unwrap()
    };
    let herd = at(0);
    assert!(herd != at(60_000) && herd.reads_as(&at(60_000)));
    assert!(!herd.reads_as(&at(86_400_000)));
}

#[test]
fn two_cobs_and_a_shetland_share_what_is_offered() {
    let (shelf, case) = yard();
    let herd = top_field(&shelf, &case);
    let Fed::Together(plan) = &herd.fed else {
        panic!("fed together: {:?}", herd.fed)
    };
    let draft = plan.planned();
    assert_eq!(draft.places, herd.members.len() + 1);
    let each: AsFed = draft
        .members
        .iter()
        .flat_map(|member| &member.alone.hays)
        .map(|hay| hay.weigh_out)
        .sum();
    let all: AsFed = draft.hays.iter().map(|hay| hay.weigh_out).sum();
    let raised = draft.raised.as_ref().map_or(1.0, |raised| raised.factor);
    assert!((all.to_kg() - each.to_kg() * raised).abs() < 0.11);
    // All of it hangs, at a place more than there are animals, and alike to a step of the scale.
    let day = draft.day();
    assert_eq!(day.len(), case.visits.len());
    let hung: f64 = day
        .iter()
        .flat_map(|at| &at.nets)
        .map(|net| net.to_kg())
        .sum();
    assert!((hung - all.to_kg()).abs() < 0.11, "{hung} {all:?}");
    for at in day.iter().filter(|at| !at.nets.is_empty()) {
        assert_eq!(at.nets.len(), draft.places);
        let words = English::default().nets_apart(&at.nets);
        assert!(words.starts_with("4 nets apart, "), "{words}");
    }
    assert!(
        draft
            .members
            .iter()
            .any(|m| m.alone.animal.kind == Kind::Pony)
    );
}

#[test]
fn a_member_that_got_at_grain_stops_the_ration_for_all() {
    let (shelf, case) = yard();
    let mut member = top_field(&shelf, &case).members.first().unwrap().clone();
    member
        .health
        .flags
        .push(VetFlag::GotAtGrain { at: case.now });
    let change = Act::Change {
        id: RecordId(member.id.0.clone()),
        body: Body::Animal(AnimalV2::of(&member).unwrap()),
        at: None,
    };
    let herd = top_field(&written(&shelf, &change, case.now), &case);
    assert!(matches!(&herd.fed, Fed::Refused(refused) if refused.len() == 1));
}

/// The shelf after today's plan for the group was used.
fn used(shelf: &Shelf, case: &Case, name: &str) -> Shelf {
    let act = top_field(shelf, case)
        .use_it(|of| format!("{name}-{of}"))
        .unwrap()
        .unwrap();
    written(shelf, &act, case.now)
}

fn animal(id: &str) -> AnimalId {
    AnimalId(id.into())
}

#[test]
fn using_the_plan_issues_the_groups_hay_and_a_part_for_each_and_undo_takes_all_back() {
    let (shelf, case) = yard();
    let herd = top_field(&shelf, &case);
    assert_eq!(herd.first(), Some(GroupOffer::Use));
    let after = used(&shelf, &case, "a");
    let plans = after.bodies(&tussock_core::log::Kind::Plan);
    assert_eq!(plans.len(), 1 + herd.members.len());
    let herd = top_field(&after, &case);
    let held = herd.in_use.clone().unwrap();
    assert!(held.holds && !held.would_differ, "{held:?}");
    assert!(held.joined.is_empty() && held.left.is_empty());
    assert_eq!(herd.first(), Some(GroupOffer::WeighNets));
    // Saved twice it is saved once.
    let again = used(&after, &case, "a");
    assert_eq!(
        again.bodies(&tussock_core::log::Kind::Plan).len(),
        plans.len()
    );
    let mut back = after.clone();
    for (record, _) in &plans {
        back = written(&back, &Act::Remove(record.id.clone()), case.now);
    }
    assert_eq!(top_field(&back, &case).in_use, None);
}

#[test]
fn a_long_wait_of_a_group_is_accepted_once_and_kept_by_the_next_plan() {
    let (shelf, case) = yard();
    let two = Act::Add(New {
        id: RecordId("two-visits".into()),
        subject: Subject::yard(&YardId("hill".into())),
        at: None,
        known: Known::Seen,
        body: Body::Visits(VisitsV1 {
            times: Visits::Two.times(),
            from: None,
        }),
    });
    let shelf = used(&written(&shelf, &two, case.now), &case, "a");
    let of = Of::Group(GroupId("top-field".into()));
    let seen = |shelf: &Shelf| day_of(shelf, &of, case.now, &case.zone).unwrap();
    let view = seen(&shelf);
    assert_eq!(view.first(), DayOffer::Accept);
    let shelf = written(&shelf, &view.accept().unwrap().unwrap(), case.now);
    assert_eq!(seen(&shelf).first(), DayOffer::WeighNets);
    let shelf = used(&shelf, &case, "b");
    assert_eq!(seen(&shelf).first(), DayOffer::WeighNets);
    // A member's day is the group's.
    let own = day_of(&shelf, &Of::Animal(animal("teasel")), case.now, &case.zone).unwrap();
    assert!(own.held.is_none());
    assert_eq!(
        own.fed_with.map(|group| group.name).as_deref(),
        Some("Top field")
    );
}

#[test]
fn a_member_that_gets_a_plan_of_its_own_leaves_the_group_and_the_group_says_so() {
    let (shelf, case) = yard();
    let shelf = used(&shelf, &case, "a");
    let teasel = animal("teasel");
    let view = plan_of(&shelf, &teasel, case.now, &case.zone).unwrap();
    assert_eq!(view.first(), Offer::SeeGroup(GroupId("top-field".into())));
    assert!(view.beside().contains(&Offer::FeedApart));
    assert_eq!(view.accepted, None);
    let apart = view.use_it(&RecordId("own".into())).unwrap().unwrap();
    let shelf = written(&shelf, &apart, case.now);
    let view = plan_of(&shelf, &teasel, case.now, &case.zone).unwrap();
    assert_eq!(view.fed_with, None);
    assert!(view.accepted.is_some());
    let herd = top_field(&shelf, &case);
    assert_eq!(herd.members.len(), 2);
    let held = herd.in_use.clone().unwrap();
    assert_eq!(held.left, std::slice::from_ref(&teasel));
    assert!(!held.holds);
    assert_eq!(herd.first(), Some(GroupOffer::Use));
    // Put back, its own later plan still holds, and that is said; the group's next plan feeds it again.
    let all: Vec<AnimalId> = herd.yard.iter().map(|animal| animal.id.clone()).collect();
    let back = change(&herd.group, &all, &shelf.groups(), herd.today).unwrap();
    let shelf = written(&shelf, &back, case.now);
    let herd = top_field(&shelf, &case);
    assert_eq!(herd.own.len(), 1);
    let shelf = used(&shelf, &case, "b");
    let herd = top_field(&shelf, &case);
    assert!(herd.own.is_empty() && herd.in_use.unwrap().holds);
}

#[test]
fn the_cautions_of_every_member_stand_by_name_where_the_plan_is_decided() {
    let (shelf, case) = yard();
    let herd = top_field(&shelf, &case);
    let Fed::Together(plan) = &herd.fed else {
        panic!("fed together")
    };
    let said = cautions(plan, &English::default());
    assert!(!said.is_empty());
    let names: Vec<&str> = herd
        .members
        .iter()
        .map(|member| member.name.as_str())
        .collect();
    for caution in &said {
        assert!(
            names.iter().any(|name| caution.sentence.starts_with(name)),
            "{caution:?}"
        );
    }
}
