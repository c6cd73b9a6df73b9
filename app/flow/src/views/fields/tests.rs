//! A paddock through a day: the boot in one tap, readings, a strip that follows the plans.

use super::*;
use crate::acts::{Act, New};
use crate::forms::readings::{Taken, Way};
use crate::forms::sward::{Tapped, tap};
use crate::views::test_yard::{at, shelf_of, written, zone};
use tussock_core::animal::Answer;
use tussock_core::graze::plants::PlantId;
use tussock_core::graze::season::Noted;
use tussock_core::graze::strip::{StripAgainst, of_paces};
use tussock_core::graze::sward::SwardFinding;
use tussock_core::graze::sward::SwardKind;
use tussock_core::limits::Ends;
use tussock_core::log::bodies::base::SquareMetres;
use tussock_core::log::bodies::{GrazingMinutes, GrazingV1, SeasonNoteV1, YardV2};
use tussock_core::log::{Known, Name, Subject};
use tussock_core::sources::RecordId;
use tussock_core::units::{DryMatter, Length};

fn top() -> PaddockId {
    PaddockId("top".into())
}

fn paddock() -> PaddockV2 {
    PaddockV2 {
        area_m2: Some(SquareMetres::new(8000).unwrap()),
        ..PaddockV2::named(Name::new("Top field").unwrap())
    }
}

fn add(id: &str, subject: Subject, body: Body) -> Act {
    Act::Add(New {
        id: RecordId(id.into()),
        subject,
        at: None,
        known: Known::Seen,
        body,
    })
}

fn yard() -> Shelf {
    let act = add("top", Subject::paddock(&top()), Body::Paddock(paddock()));
    written(&shelf_of(&[]), &act, at(0))
}

fn tapped(shelf: &Shelf, what: Tapped, day: i64, id: &str) -> Shelf {
    let look = look(shelf, &top(), &zone());
    let today = zone().to_local(at(day)).date;
    written(shelf, &tap(&top(), &look, what, today, id), at(day))
}

fn on(shelf: &Shelf, day: i64) -> OnField {
    field(shelf, &top(), at(day), &zone()).unwrap()
}

#[test]
fn a_tap_is_a_look_of_today_and_the_next_one_changes_it() {
    let shelf = tapped(&yard(), Tapped::Leaf(Leaf::Ankle), 1, "one");
    let shelf = tapped(&shelf, Tapped::Seeding(true), 1, "two");
    let shelf = tapped(&shelf, Tapped::Leaf(Leaf::AboveAnkle), 1, "three");
    assert_eq!(shelf.of_kind(&Kind::Sward).len(), 1);
    let seen = on(&shelf, 1);
    assert!(seen.looked_today());
    assert_eq!(seen.look.leaf.unwrap().0, Leaf::AboveAnkle);
    assert_eq!(seen.look.seeding_on(seen.day), Answer::Yes);
    // The next day nobody has looked, and seed heads are not carried over.
    let next = on(&shelf, 2);
    assert!(!next.looked_today());
    assert_eq!(next.look.seeding_on(next.day), Answer::NotKnown);
    let shelf = tapped(&shelf, Tapped::Seeding(false), 2, "four");
    assert_eq!(shelf.of_kind(&Kind::Sward).len(), 2);
    // Who says only that, says nothing of the height.
    let later = on(&shelf, 2);
    assert!(!later.looked_today());
    assert_eq!(later.look.leaf.unwrap().0, Leaf::AboveAnkle);
}

#[test]
fn readings_hold_until_the_boot_says_otherwise() {
    let heights = (0..30).fold(Taken::of(Way::Cm, ""), |taken, n| {
        taken.with(if n % 2 == 0 { "11" } else { "13" }).unwrap()
    });
    let shelf = written(&yard(), &heights.act(&top(), "read").unwrap(), at(1));
    let read = on(&shelf, 1);
    let standing = read.standing.as_ref().unwrap().as_ref().unwrap();
    assert_eq!(standing.readings.as_ref().unwrap().count, 30);
    assert!(read.findings().is_empty());
    assert!(read.whole.unwrap().in_order());
    let shelf = tapped(&shelf, Tapped::Leaf(Leaf::BelowAnkle), 2, "boot");
    let boot = on(&shelf, 2);
    assert!(boot.bare());
    assert!(matches!(boot.findings()[0], SwardFinding::Bare { .. }));
    assert_eq!(boot.look.judged.unwrap().by, By::Boot(Leaf::BelowAnkle));
}

#[test]
fn nobody_looked_says_nothing_of_grass() {
    let seen = on(&yard(), 1);
    assert_eq!((seen.standing, seen.whole, seen.days), (None, None, None));
    assert!(seen.regrows.is_empty() && seen.kind_stands_in);
    assert!(field(&yard(), &PaddockId("moor".into()), at(1), &zone()).is_none());
}

#[test]
fn the_list_is_by_name_and_says_what_was_seen() {
    let shelf = tapped(&yard(), Tapped::Leaf(Leaf::Ankle), 1, "one");
    let bog = PaddockId("bog".into());
    let body = PaddockV2 {
        rest_from: Some(zone().to_local(at(0)).date),
        ..PaddockV2::named(Name::new("bog").unwrap())
    };
    let shelf = written(
        &shelf,
        &add("bog", Subject::paddock(&bog), Body::Paddock(body)),
        at(1),
    );
    let rows = fields(&shelf, &zone());
    let names: Vec<&str> = rows.iter().map(|row| row.name.as_str()).collect();
    assert_eq!(names, ["bog", "Top field"]);
    assert!(rows[0].resting.is_some() && rows[0].looked.is_none());
    assert_eq!(rows[1].leaf.unwrap().0, Leaf::Ankle);
}

#[test]
fn what_was_seen_harms_anywhere_and_what_is_known_only_where_it_is_ticked() {
    let body = PaddockV2 {
        kind: Some(SwardKind::Fescue),
        plants: vec![Name::new(PlantId::Ragwort.key()).unwrap()],
        ..paddock()
    };
    let act = Act::Change {
        id: RecordId("top".into()),
        body: Body::Paddock(body),
        at: None,
    };
    let shelf = written(&yard(), &act, at(1));
    let seen = on(&shelf, 1);
    assert!(seen.dangers.iter().all(|danger| danger.seen));
    assert_eq!(seen.dangers[0].hazard.plant, PlantId::Ragwort);
    let yard = YardV2 {
        regions: tussock_core::graze::plants::Region::ALL.to_vec(),
        ..YardV2::named(Name::new("Yard").unwrap())
    };
    let id = tussock_core::animal::YardId("y".into());
    let shelf = written(
        &shelf,
        &add("y", Subject::yard(&id), Body::Yard(yard)),
        at(1),
    );
    let ticked = on(&shelf, 1);
    let fescue = |danger: &Danger| danger.hazard.plant == PlantId::TallFescue && !danger.seen;
    assert!(ticked.dangers.iter().any(fescue));
}

#[test]
fn a_strip_waits_for_what_it_needs() {
    let ask = Asked {
        days: 1,
        width: Some(Length::m(30.0)),
        back_fence: false,
        whom: None,
    };
    let none = strip_of(&yard(), &top(), &ask, at(1), &zone()).unwrap();
    assert_eq!(none.strip, Err(NoStrip::NobodyOut));
    assert!(none.flush_not_known);
    assert!(strip_of(&yard(), &PaddockId("moor".into()), &ask, at(1), &zone()).is_none());
}

/// A strip as the screen works it out, for one that goes out.
fn for_one(eats: Eats, ask: &Asked) -> Result<StripTold, NoStrip> {
    let shelf = tapped(&yard(), Tapped::Leaf(Leaf::AboveAnkle), 1, "one");
    let one = Out {
        id: "moss".into(),
        name: "Moss".into(),
        paddock: Some(top()),
        animals: 1,
        eats,
        recent_case: false,
    };
    let chosen: Vec<&Out> = [&one]
        .into_iter()
        .filter(|out| out.most().is_some())
        .collect();
    super::strip::told(&on(&shelf, 1), std::slice::from_ref(&one), &chosen, ask)
}

#[test]
fn a_strip_holds_no_more_than_the_plan_carries_and_says_when_hay_is_short() {
    let ask = Asked {
        days: 1,
        width: Some(of_paces(40.0)),
        back_fence: true,
        whom: None,
    };
    let grass = Eats::Grass {
        grass: Ends::new(0.4, 1.2, 2.4).map(DryMatter::kg),
        hay_less: DryMatter::kg(0.4),
    };
    let told = for_one(grass.clone(), &ask).unwrap();
    assert!((told.asked - DryMatter::kg(2.4)).to_kg().abs() < 1e-9);
    assert!(told.strip.finds.most <= told.asked * (1.0 + 1e-9));
    assert!(told.strip.finds.in_order() && !told.several_days && !told.more_than_all);
    let short = for_one(
        Eats::Grass {
            grass: Ends::new(2.3, 2.35, 2.4).map(DryMatter::kg),
            hay_less: DryMatter::kg(2.3),
        },
        &ask,
    )
    .unwrap();
    assert!(short.hay_short.is_some());
    for eats in [Eats::NoRoom, Eats::NoGrass, Eats::NoPlan] {
        assert_eq!(for_one(eats, &ask), Err(NoStrip::NobodyChosen));
    }
    let no_width = Asked { width: None, ..ask };
    assert_eq!(for_one(grass, &no_width), Err(NoStrip::NoWidth));
}

#[test]
fn a_note_of_the_flush_stands_against_a_strip() {
    let note = SeasonNoteV1 {
        date: zone().to_local(at(0)).date,
        what: Noted::FlushBegan,
        note: None,
    };
    let id = tussock_core::animal::YardId("y".into());
    let noted = written(
        &yard(),
        &add("note", Subject::yard(&id), Body::SeasonNote(note)),
        at(0),
    );
    let ask = Asked {
        days: 1,
        width: None,
        back_fence: false,
        whom: None,
    };
    let seen = strip_of(&noted, &top(), &ask, at(1), &zone()).unwrap();
    assert_eq!(seen.against.len(), 1);
    assert_eq!(seen.against[0].what, StripAgainst::Flush);
    assert!(!seen.flush_not_known);
}

#[test]
fn who_goes_out_is_told_with_what_the_plan_says() {
    let moss = crate::views::test_yard::animal("moss");
    let shelf = shelf_of(&[crate::views::test_yard::add("moss", &moss, 0)]);
    let decided = GrazingV1 {
        paddock: Some(top()),
        from: zone().to_local(at(0)).date,
        minutes: GrazingMinutes::new(60).unwrap(),
        muzzle: false,
        adapted_since: None,
        out: None,
        stopped: false,
    };
    let go = |body: GrazingV1, id: &str, shelf: &Shelf, day: i64| {
        let act = add(id, Subject::animal(&moss.id), Body::Grazing(body));
        written(shelf, &act, at(day))
    };
    let out = go(decided.clone(), "out", &shelf, 0);
    let found = grazers(&out, at(1), &zone());
    assert_eq!(found.len(), 1);
    assert_eq!(found[0].paddock, Some(top()));
    // Never weighed: no plan counts its grass.
    assert_eq!(found[0].eats, Eats::NoPlan);
    let stopped = GrazingV1 {
        stopped: true,
        ..decided
    };
    let stopped = go(stopped, "stop", &out, 1);
    assert!(grazers(&stopped, at(2), &zone()).is_empty());
}
