//! What the repository's cases can carry of grass.

use super::*;
use crate::acts::{Act, New};
use crate::forms::grazing::{Typed, act, stays_in};
use crate::forms::start::{Answers, Ever, Ids, Named, Sort, Visits};
use crate::views::test_yard::{at, written, zone};
use tussock_core::animal::{Insulin, InsulinTest, Laminitis, VetFlag, YardId};
use tussock_core::assess::Ribs;
use tussock_core::forage::ForageClass;
use tussock_core::graze::intake::Shortened;
use tussock_core::log::bodies::{AnimalV2, PaddockV2, VisitsV1};
use tussock_core::log::{Case, Known, Name};
use tussock_core::sources::RecordId;
use tussock_core::units::{DryMatter, Span};

fn yard() -> (Shelf, Case) {
    let case = Case::read(include_str!(
        "../../../../../core/examples/cases/two-cobs-and-a-shetland.json"
    ))
    .unwrap();
    let mut shelf = Shelf::default();
    for record in case.log.current() {
        shelf.put(record.clone());
    }
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

fn goes(shelf: &Shelf, case: &Case, id: &str) -> GoesOut {
    goes_out(shelf, &AnimalId(id.into()), case.now, &case.zone).unwrap()
}

fn asked(time: &str, out: &GoesOut) -> GrazingV1 {
    let typed = Typed {
        time: time.into(),
        ..Typed::default()
    };
    typed.body(out.before.as_ref(), out.today).unwrap()
}

fn carries(shelf: &Shelf, case: &Case, id: &str, time: &str) -> Carried {
    let out = goes(shelf, case, id);
    carried(shelf, &out.whose, &asked(time, &out), case.now, &case.zone).unwrap()
}

/// The shelf with an animal changed.
fn changed(shelf: &Shelf, case: &Case, id: &str, change: impl Fn(&mut AnimalV2)) -> Shelf {
    let held = shelf.get(id).map(Body::read);
    let Some(Ok(Body::Animal(mut body))) = held else {
        return shelf.clone();
    };
    change(&mut body);
    let act = Act::Change {
        id: RecordId(id.into()),
        body: Body::Animal(body),
        at: None,
    };
    written(shelf, &act, case.now)
}

#[test]
fn an_address_is_an_animals_or_a_groups_and_nothing_else() {
    let (shelf, case) = yard();
    assert!(matches!(
        goes(&shelf, &case, "moss").whose,
        Whose::Animal(_)
    ));
    let group = goes(&shelf, &case, "top-field");
    assert!(matches!(group.whose, Whose::Group(_)));
    assert!(!group.is_out_by_it());
    let nobody = AnimalId("nobody".into());
    assert_eq!(goes_out(&shelf, &nobody, case.now, &case.zone), None);
}

#[test]
fn what_is_carried_is_never_longer_than_what_is_asked_and_says_why_it_is_shorter() {
    let (shelf, case) = yard();
    for id in ["moss", "top-field"] {
        match carries(&shelf, &case, id, "10 h") {
            Carried::Open(open) => {
                assert!(open.time < open.asked && !open.why.is_empty(), "{open:?}");
                assert!(open.grass.in_order() && DryMatter::ZERO <= open.hay_less);
            }
            Carried::NoRoom { asked, why, .. } => {
                assert_eq!(asked, Span::hours(10));
                assert!(!why.is_empty());
            }
            other => assert!(matches!(other, Carried::Closed { .. }), "{id}: {other:?}"),
        }
    }
}

#[test]
fn a_sign_or_lameness_closes_it_whatever_is_asked() {
    let (shelf, case) = yard();
    let lame = changed(&shelf, &case, "moss", |body| {
        body.health.flags.push(VetFlag::Lame);
    });
    let foundered = changed(&shelf, &case, "moss", |body| {
        body.health.laminitis = Laminitis::Active;
    });
    for (shelf, who) in [(&lame, "lame"), (&foundered, "in an episode")] {
        for id in ["moss", "top-field"] {
            let carried = carries(shelf, &case, id, "30");
            assert!(
                matches!(carried, Carried::Closed { .. } | Carried::Refused { .. }),
                "{who}: {carried:?}"
            );
        }
    }
}

#[test]
fn a_turnout_too_short_to_be_worth_it_is_no_room_without_a_reason() {
    let (shelf, case) = yard();
    let short = carries(&shelf, &case, "moss", "5");
    assert!(
        matches!(&short, Carried::NoRoom { why, .. } if why.is_empty() || why.contains(&Shortened::HayLeavesNoRoom)),
        "{short:?}"
    );
}

#[test]
fn what_was_decided_stands_until_it_stays_in() {
    let (shelf, case) = yard();
    let out = goes(&shelf, &case, "moss");
    let subject = out.whose.subject();
    let shelf = written(
        &shelf,
        &act(&subject, asked("1 h 20", &out), "g1"),
        case.now,
    );
    let out = goes(&shelf, &case, "moss");
    assert!(out.is_out_by_it());
    assert_eq!(out.before.as_ref().unwrap().minutes.get(), 80);
    let stopped = stays_in(out.before.as_ref().unwrap(), out.today);
    let shelf = written(&shelf, &act(&subject, stopped, "g2"), case.now);
    let out = goes(&shelf, &case, "moss");
    assert!(!out.is_out_by_it() && out.before.is_some());
}

#[test]
fn paddocks_are_offered_by_name() {
    let (shelf, case) = yard();
    let add = |shelf: &Shelf, id: &str, name: &str| {
        let act = Act::Add(New {
            id: RecordId(id.into()),
            subject: Subject::paddock(&PaddockId(id.into())),
            at: None,
            known: Known::Seen,
            body: Body::Paddock(PaddockV2::named(Name::new(name).unwrap())),
        });
        written(shelf, &act, case.now)
    };
    let shelf = add(&add(&shelf, "b", "Top field"), "a", "Bottom field");
    let names: Vec<String> = goes(&shelf, &case, "moss")
        .paddocks
        .into_iter()
        .map(|(_, name)| name)
        .collect();
    assert_eq!(names, ["Bottom field", "Top field"]);
}

/// A horse, with the six answers of a first plan.
fn horse(ribs: Ribs) -> Shelf {
    let answers = Answers {
        name: "Fern".into(),
        sort: Some(Sort::Horse),
        age: "12".into(),
        girth: "190".into(),
        ribs: Some(ribs),
        ever: Some(Ever::No),
        hay: Some(ForageClass::Grass),
        visits: Some(Visits::Two),
    };
    let record = |id: &str| RecordId(id.to_owned());
    let ids = Ids {
        yard: YardId("yard".into()),
        animal: AnimalId("fern".into()),
        weight: record("weight"),
        condition: record("condition"),
        lot: record("lot"),
        visits: record("visits"),
    };
    let named = Named {
        animal: "Horse".into(),
        lot: "Grass hay".into(),
        yard: "Yard".into(),
        sort: "Horse".into(),
    };
    let day = zone().to_local(at(0)).date;
    written(
        &Shelf::default(),
        &answers.act(&ids, &named, day).unwrap(),
        at(0),
    )
}

#[test]
fn a_horse_that_a_test_says_is_clear_goes_out_for_a_while_and_a_muzzle_is_no_licence() {
    let shelf = cleared(&horse(Ribs::FeltEasily));
    let id = AnimalId("fern".into());
    let out = goes_out(&shelf, &id, at(0), &zone()).unwrap();
    let of = |time: &str, muzzle: bool| {
        let asked = GrazingV1 {
            muzzle,
            ..asked(time, &out)
        };
        carried(&shelf, &out.whose, &asked, at(0), &zone()).unwrap()
    };
    let Carried::Open(free) = of("4 h", false) else {
        panic!("{:?}", of("4 h", false))
    };
    assert!(
        free.time <= Span::hours(3) && !free.why.is_empty(),
        "{free:?}"
    );
    // Nobody looked at a paddock: no hay comes off.
    assert_eq!(free.hay_less, DryMatter::ZERO);
    let Carried::Open(muzzled) = of("14 h", true) else {
        panic!("{:?}", of("14 h", true))
    };
    assert!(muzzled.time <= Span::hours(10), "{muzzled:?}");
    assert!(!muzzled.why.is_empty());
}

/// The same with an insulin test that found nothing.
fn cleared(shelf: &Shelf) -> Shelf {
    let Some(Ok(Body::Animal(mut body))) = shelf.get("fern").map(Body::read) else {
        panic!("fern is there")
    };
    body.health.insulin = Insulin::Tested(InsulinTest {
        dysregulated: false,
        by: "The vet".into(),
        on: zone().to_local(at(0)).date,
        test: "Oral sugar test".into(),
    });
    let act = Act::Change {
        id: RecordId("fern".into()),
        body: Body::Animal(body),
        at: None,
    };
    written(shelf, &act, at(0))
}

#[test]
fn a_plan_asks_the_disk_for_what_its_grass_hangs_on() {
    let moss = AnimalId("moss".into());
    for ranges in [
        needs(&moss),
        crate::views::plan::needs(&moss),
        crate::views::group::needs(),
    ] {
        for kind in [Kind::Grazing, Kind::Sward] {
            let of =
                |range: &Range| matches!(range, Range::Kind { kind: of, .. } if of == kind.word());
            assert!(ranges.iter().any(of), "{kind:?}");
        }
    }
}
