use super::*;
use crate::views::test_yard::{at, written, zone};

fn hill_farm() -> YardV2 {
    YardV2 {
        vet_telephone: Some("01632 960 123".to_owned()),
        note: Some("Second gate".to_owned()),
        ..YardV2::named(Name::new("Hill Farm").unwrap())
    }
}

fn typed(latitude: &str, longitude: &str) -> Typed {
    Typed {
        latitude: latitude.to_owned(),
        longitude: longitude.to_owned(),
        zone: "Europe/London".to_owned(),
        regions: vec![Region::BritishIsles],
    }
}

#[test]
fn a_place_is_kept_to_a_hundredth_of_a_degree() {
    let place = typed("51.20847", "3.39612 W").place().unwrap().unwrap();
    assert_eq!(place.latitude.get(), 51_210_000);
    assert_eq!(place.longitude.get(), -3_400_000);
    assert_eq!(place.zone.unwrap().as_str(), "Europe/London");
    assert_eq!(coarse_text(-3.396_12), "-3.40");
}

#[test]
fn nothing_typed_is_no_place_and_one_figure_alone_is_refused() {
    assert_eq!(typed(" ", "").place(), Ok(None));
    let wrong = typed("51.2", "").place().unwrap_err();
    assert_eq!(wrong, [Wrong::Degrees(Unread::Empty(Field::Longitude))]);
    let fields: Vec<Option<Field>> = typed("95", "far")
        .place()
        .unwrap_err()
        .iter()
        .map(Wrong::field)
        .collect();
    assert_eq!(fields, [Some(Field::Latitude), Some(Field::Longitude)]);
}

#[test]
fn what_the_yard_says_of_itself_stays_and_comes_back() {
    let id = YardId("y".to_owned());
    let shelf = written(
        &Shelf::default(),
        &Act::Add(New {
            id: RecordId("y".to_owned()),
            subject: Subject::yard(&id),
            at: None,
            known: Known::Seen,
            body: Body::Yard(hill_farm()),
        }),
        at(0),
    );
    let there = yard(&shelf, &id);
    assert_eq!(there, Some(hill_farm()));
    let act = typed("-33.9", "18.4").act(&id, there.as_ref(), "Yard");
    let shelf = written(&shelf, &act.unwrap(), at(1));
    let held = yard(&shelf, &id).unwrap();
    assert_eq!(held.vet_telephone, hill_farm().vet_telephone);
    assert_eq!(held.name.as_str(), "Hill Farm");
    assert_eq!(held.regions, [Region::BritishIsles]);
    // Elsewhere, the clock that was written down stays until somebody chooses another.
    let shown = Typed::of(Some(&held), "Europe/Paris");
    assert_eq!(shown, typed("-33.90", "18.40"));
    // And a place can be taken away.
    let act = typed("", "").act(&id, Some(&held), "Yard").unwrap();
    let shelf = written(&shelf, &act, at(2));
    assert_eq!(yard(&shelf, &id).unwrap().place, None);
}

#[test]
fn a_yard_that_is_not_written_down_is_written_with_its_place() {
    let id = YardId("y".to_owned());
    let act = typed("51.2", "-3.4").act(&id, None, "Yard").unwrap();
    let shelf = written(&Shelf::default(), &act, at(0));
    let held = yard(&shelf, &id).unwrap();
    assert_eq!(held.name.as_str(), "Yard");
    assert!(held.place.is_some());
    assert_eq!(Typed::of(None, "Europe/London").zone, "Europe/London");
}

#[test]
fn a_swapped_side_is_told_by_the_sun() {
    let noon = |latitude: &str, longitude: &str| typed(latitude, longitude).noon(at(0), &zone());
    assert!(noon("51.2", "3.4 W").unwrap().fits);
    // Summer time: the sun is highest after one.
    assert_eq!(
        noon("51.2", "3.4 W").unwrap().at.format("%H").to_string(),
        "13"
    );
    assert!(!noon("51.2", "120 W").unwrap().fits);
    assert_eq!(noon("51.2", ""), None);
    assert_eq!(noon("95", "3.4 W"), None);
}
