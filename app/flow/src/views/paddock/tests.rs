mod holds;

use super::*;
use crate::acts::{Act, New};
use crate::forms::turnout;
use crate::views::test_yard::{add, animal, at, shelf_of, written, zone};
use tussock_core::animal::{
    Animal, AnimalId, Answer, Group, GroupId, Insulin, InsulinTest, Laminitis, Member, YardId,
};
use tussock_core::assess::{Reading, ScaleInstrument, ScaleWeight};
use tussock_core::graze::season::Noted;
use tussock_core::graze::sward::Leaf;
use tussock_core::graze::window::{Care, Closed};
use tussock_core::log::bodies::base::MicroDegrees;
use tussock_core::log::bodies::{
    Chip, GrazingMinutes, GrazingV1, GroupV1, PaddockV2, PlaceV2, SwardV1, WeatherV2, WeightV1,
};
use tussock_core::log::{Case, Known, Name, Subject};
use tussock_core::sources::RecordId;
use tussock_core::units::{BodyMass, Span};

/// Seven in the morning of a day, by the yard's clock.
fn seven(day: i64) -> Instant {
    at(day) - Span::hours(5)
}

fn put(shelf: &Shelf, id: &str, subject: Subject, body: Body, now: Instant) -> Shelf {
    let new = New {
        id: RecordId(id.into()),
        subject,
        at: None,
        known: Known::Seen,
        body,
    };
    written(shelf, &Act::Add(new), now)
}

fn y() -> Subject {
    Subject::yard(&YardId("y".into()))
}

fn field() -> Subject {
    Subject::paddock(&PaddockId("top".into()))
}

fn moss() -> Subject {
    Subject::animal(&AnimalId("moss".into()))
}

fn placed(shelf: &Shelf) -> Shelf {
    let yard = YardV2 {
        place: Some(PlaceV2 {
            latitude: MicroDegrees::new(52_000_000).unwrap(),
            longitude: MicroDegrees::new(-2_500_000).unwrap(),
            zone: Some(Name::new("Europe/London").unwrap()),
        }),
        ..YardV2::named(Name::new("Hill Farm").unwrap())
    };
    put(shelf, "y", y(), Body::Yard(yard), at(-30))
}

fn chips(shelf: &Shelf, id: &str, chips: &[Chip], day: i64) -> Shelf {
    let date = zone().to_local(at(day)).date;
    let row = WeatherV2 {
        date,
        chips: chips.to_vec(),
        carried: false,
    };
    put(
        shelf,
        id,
        y(),
        Body::Weather(row),
        seven(day) - Span::hours(1),
    )
}

fn noted(shelf: &Shelf, what: Noted, day: i64) -> Shelf {
    let today = zone().to_local(at(day)).date;
    let act = turnout::note(&y(), what, "", "", today, "note").unwrap();
    written(shelf, &act, at(day))
}

fn lean(name: &str) -> Animal {
    let mut lean = animal(name);
    lean.health.native_or_cob = Answer::No;
    lean.health.laminitis = Laminitis::Never;
    lean.health.insulin = Insulin::Tested(InsulinTest {
        dysregulated: false,
        by: "Vet".into(),
        on: "2026-04-01".parse().unwrap(),
        test: "oral sugar".into(),
    });
    lean
}

/// A yard with one animal, a paddock with leaf above the ankle, a night over 5 and a sunny day.
fn a_yard(of: &Animal) -> Shelf {
    let shelf = shelf_of(&[add("moss", of, -30)]);
    let paddock = Body::Paddock(PaddockV2::named(Name::new("Top field").unwrap()));
    let shelf = put(&placed(&shelf), "top", field(), paddock, at(-29));
    let sward = Body::Sward(SwardV1 {
        leaf: Some(Leaf::AboveAnkle),
        seeding: Answer::No,
        heights_mm: Vec::new(),
        plate: None,
        note: None,
    });
    let shelf = put(&shelf, "sward", field(), sward, at(-1));
    chips(&shelf, "w", &[Chip::NightOverFive, Chip::Sunny], 0)
}

/// With a weight, and hay whose sugar a laboratory found to be low: its plan has room for grass.
fn with_room(shelf: &Shelf) -> Shelf {
    let reading = Reading::Scale(ScaleWeight {
        mass: BodyMass::kg(372.0),
        instrument: ScaleInstrument::AnimalScale,
    });
    let weight = Body::Weight(WeightV1::of(&reading).unwrap());
    let mut shelf = put(shelf, "kg", moss(), weight, at(-5));
    let tested = include_str!("../../../../../core/examples/cases/bramble-tested-hay.json");
    let tested = Case::read(tested).unwrap();
    for record in tested.log.current() {
        if matches!(record.kind, Kind::Lot | Kind::Food) {
            shelf.put(record.clone());
        }
    }
    shelf
}

fn goes_of(shelf: &Shelf, now: Instant) -> Goes {
    let seen = paddock(shelf, now, &zone(), &Chosen::default());
    seen.of(Some("moss")).unwrap().clone()
}

fn decided(muzzle: bool) -> Body {
    Body::Grazing(GrazingV1 {
        paddock: Some(PaddockId("top".into())),
        from: "2026-04-20".parse().unwrap(),
        minutes: GrazingMinutes::new(60).unwrap(),
        muzzle,
        adapted_since: None,
        out: None,
        stopped: false,
    })
}

#[test]
fn one_at_risk_has_no_grass_in_the_flush_and_one_that_is_only_fat_has_it_with_care() {
    let at_risk = goes_of(&a_yard(&animal("moss")), seven(0));
    assert_eq!(at_risk.stands, Stands::Closed);
    assert_eq!(at_risk.window.closed, [Closed::Flush, Closed::NotInPlan]);
    assert!(!at_risk.may_go(seven(0)));
    let fat = goes_of(&a_yard(&lean("moss")), seven(0));
    assert!(matches!(fat.stands, Stands::Open(_)), "{:?}", fat.stands);
    assert!(fat.window.care.contains(&Care::Flush));
    assert!(fat.may_go(seven(0)));
    assert_eq!(fat.paddock.unwrap().1, "Top field");
}

#[test]
fn after_the_flush_one_at_risk_is_asked_how_it_goes_out() {
    // Nobody knows its risk: what is not counted in its plan is closed too.
    let not_known = noted(&a_yard(&animal("moss")), Noted::FlushOver, -3);
    let goes = goes_of(&with_room(&not_known), seven(0));
    assert_eq!(goes.plan, ByPlan::NotCounted);
    assert_eq!(goes.window.closed, [Closed::NotInPlan]);
    let mut native = animal("moss");
    native.health.native_or_cob = Answer::Yes;
    let shelf = noted(&a_yard(&native), Noted::FlushOver, -3);
    let shelf = with_room(&shelf);
    let goes = goes_of(&shelf, seven(0));
    assert_eq!(goes.plan, ByPlan::NotDecided);
    assert_eq!(goes.window.closed, [Closed::NotInPlan]);
    assert!(!goes.may_go(seven(0)), "nobody decided");
    let shelf = put(&shelf, "g", moss(), decided(false), at(-1));
    let goes = goes_of(&shelf, seven(0));
    assert!(matches!(goes.stands, Stands::Open(_)), "{goes:?}");
    assert!(goes.may_go(seven(0)));
}

#[test]
fn the_chips_close_it_and_a_night_nobody_spoke_of_does_too() {
    let over = noted(&a_yard(&animal("moss")), Noted::FlushOver, -3);
    let over = put(&with_room(&over), "g", moss(), decided(false), at(-1));
    let cases: [(&[Chip], &[Closed]); 3] = [
        (&[Chip::NightFiveOrUnder], &[Closed::ColdNight]),
        (&[Chip::Sunny], &[Closed::NightNotSaid]),
        (&[Chip::NightOverFive, Chip::DrySpell], &[Closed::Drought]),
    ];
    for (said, wanted) in cases {
        let shelf = chips(&over, "w2", said, 0);
        let goes = goes_of(&shelf, seven(0) + Span::minutes(1));
        assert_eq!(goes.window.closed, wanted, "{said:?}");
    }
}

#[test]
fn the_night_before_does_not_speak_of_this_one() {
    let shelf = noted(&a_yard(&animal("moss")), Noted::FlushOver, -3);
    let shelf = chips(&shelf, "w2", &[Chip::NightOverFive, Chip::DrySpell], 0);
    let next = paddock(&shelf, seven(1), &zone(), &Chosen::default());
    assert_eq!(next.weather.chips, [Chip::DrySpell]);
    assert!(next.weather.carried);
    let goes = next.of(None).unwrap();
    assert!(goes.window.closed.contains(&Closed::NightNotSaid));
}

#[test]
fn on_the_day_of_a_clock_change_the_cord_goes_by_the_clock() {
    // Summer time begins on 29 March 2026: five in the morning is four hours after midnight.
    let shelf = shelf_of(&[add("moss", &lean("moss"), -60)]);
    let now = Instant::from_ms(1_774_756_800_000);
    let seen = paddock(&shelf, now, &zone(), &Chosen::default());
    let local = zone().to_local(now);
    assert_eq!(local.date, seen.day);
    let goes = seen.of(None).unwrap();
    let drawn = picture::cord(&goes.window, now, &zone());
    assert_eq!(drawn.now, Some(picture::down(5.0)), "{local:?}");
    assert_eq!(drawn.closes, [picture::down(9.0)]);
}

#[test]
fn a_resting_paddock_is_closed() {
    let shelf = a_yard(&lean("moss"));
    let paddock = Body::Paddock(PaddockV2 {
        rest_from: Some("2026-05-01".parse().unwrap()),
        ..PaddockV2::named(Name::new("Top field").unwrap())
    });
    let act = Act::Change {
        id: RecordId("top".into()),
        body: paddock,
        at: None,
    };
    let goes = goes_of(&written(&shelf, &act, at(-1)), seven(0));
    assert_eq!(goes.window.closed, [Closed::Resting { until: None }]);
}

#[test]
fn without_a_place_the_clock_tells_it_and_one_at_risk_waits_for_the_season() {
    let shelf = shelf_of(&[add("moss", &lean("moss"), -30)]);
    let shelf = chips(&shelf, "w", &[Chip::NightOverFive, Chip::Sunny], 0);
    let goes = goes_of(&shelf, seven(0));
    assert!(matches!(goes.stands, Stands::Open(_)));
    assert_eq!(goes.window.sun, None);
    let drawn = picture::cord(&goes.window, seven(0), &zone());
    assert!(drawn.sugar.is_none() && drawn.sunset.is_none() && drawn.now.is_some());
    let shelf = shelf_of(&[add("moss", &animal("moss"), -30)]);
    let shelf = chips(&shelf, "w", &[Chip::NightOverFive, Chip::Sunny], 0);
    let goes = goes_of(&shelf, seven(0));
    assert_eq!(
        goes.window.closed,
        [Closed::FlushNotKnown, Closed::NotInPlan]
    );
}

#[test]
fn it_is_out_until_grass_closes_then_late_and_comes_in() {
    let shelf = a_yard(&lean("moss"));
    let goes = goes_of(&shelf, seven(0));
    let (by, why) = goes.by_if_out(seven(0));
    assert_eq!(by, seven(0) + Span::hours(2));
    assert_eq!(why, WhyBy::Closes);
    let how = turnout::Goes {
        paddock: Some(PaddockId("top".into())),
        muzzle: false,
        by: Some(by),
    };
    let shelf = written(&shelf, &turnout::turn_out(&moss(), how, "out"), seven(0));
    let out = goes_of(&shelf, seven(0) + Span::minutes(30));
    assert_eq!(out.stands, Stands::Out);
    assert_eq!(out.out.as_ref().unwrap().by, by);
    let late = goes_of(&shelf, by);
    assert_eq!(late.stands, Stands::Late);
    let going = late.out.unwrap();
    let shelf = written(&shelf, &turnout::bring_in(&going.id, &going.body, by), by);
    let home = goes_of(&shelf, by + Span::minutes(1));
    assert!(home.out.is_none());
    assert_eq!(home.had, Span::hours(2));
    assert_eq!(home.outings.len(), 1);
    assert_eq!(home.outings[0].paddock.as_deref(), Some("Top field"));
}

#[test]
fn what_went_out_while_closed_is_late_at_once_and_a_muzzle_ends_it_too() {
    let shelf = a_yard(&animal("moss"));
    let act = turnout::turn_out(&moss(), turnout::Goes::default(), "out");
    let shelf = written(&shelf, &act, seven(0));
    let goes = goes_of(&shelf, seven(0) + Span::minutes(1));
    assert_eq!(goes.stands, Stands::Late);
    assert_eq!(goes.out.unwrap().why, WhyBy::Closed);
}

#[test]
fn the_most_at_risk_of_a_group_sets_it_for_all() {
    let fern = lean("fern");
    let shelf = a_yard(&animal("moss"));
    let shelf = crate::views::test_yard::after(&shelf, &[add("fern", &fern, -30)]);
    let group = Group {
        id: GroupId("both".into()),
        name: "Both".into(),
        members: ["moss", "fern"]
            .map(|id| Member {
                animal: AnimalId(id.into()),
                from: "2026-04-10".parse().unwrap(),
                to: None,
            })
            .to_vec(),
    };
    let about = Subject::group(&group.id);
    let body = Body::Group(GroupV1::of(&group).unwrap());
    let shelf = put(&shelf, "both", about.clone(), body, at(-20));
    let shelf = put(&shelf, "g", about, decided(false), at(-1));
    let seen = paddock(&shelf, seven(0), &zone(), &Chosen::default());
    assert_eq!(seen.goes.len(), 1, "its members go with it");
    let goes = seen.of(None).unwrap();
    assert!(goes.group && goes.at_risk());
    assert_eq!(goes.set_by.as_deref(), Some("moss"));
    assert_eq!(goes.window.closed.first(), Some(&Closed::Flush));
}

#[test]
fn the_week_is_told_without_a_forecast() {
    let shelf = noted(&a_yard(&lean("moss")), Noted::FlushOver, -3);
    let goes = goes_of(&shelf, seven(0));
    let days = week(&shelf, &goes, seven(0), &zone());
    assert_eq!(days.len(), 7);
    assert!(days[0].today && !days[1].today);
    for day in &days[1..] {
        assert!(day.window.care.contains(&Care::IfNightOver5));
        assert!(day.window.closed.is_empty());
    }
}

#[test]
fn the_cord_of_a_day_is_drawn_to_scale() {
    let goes = goes_of(&a_yard(&lean("moss")), seven(0));
    let drawn = picture::cord(&goes.window, seven(0), &zone());
    assert_eq!(drawn.now, Some(picture::down(7.0)));
    assert_eq!(drawn.closes, [picture::down(9.0)]);
    assert!(drawn.sunrise.unwrap() < drawn.now.unwrap());
    assert!(drawn.sugar.unwrap().starts_with('M'));
    assert!(drawn.labels.is_sorted_by(|a, b| a.y <= b.y));
}
