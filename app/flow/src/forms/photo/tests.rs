//! Making small, dating, keeping, taking back.

use super::*;
use crate::acts::apply;
use crate::shelf::Shelf;
use crate::views::photo::photos;
use crate::views::test_yard::{add, animal, at, context, shelf_of, written, zone};
use proptest::prelude::*;
use tussock_core::log::MOST_BYTES;

fn moss() -> AnimalId {
    AnimalId("moss".into())
}

/// A picture that is built as one.
fn picture(seed: u8) -> Picture {
    let jpeg = [
        [0xFF, 0xD8].as_slice(),
        // A frame of 4 by 3, and a scan.
        &[0xFF, 0xC0, 0, 11, 8, 0, 3, 0, 4, 1, 1, 0x11, 0],
        &[0xFF, 0xDA, 0, 8, 1, 1, 0, 0, 63, 0, seed],
        &[0xFF, 0xD9],
    ]
    .concat();
    Picture::of_jpeg(&jpeg).unwrap()
}

fn keep(seed: u8, record: &str) -> Act {
    act(
        &moss(),
        Pose::Side,
        picture(seed),
        (at(3), Dated::Taken),
        record,
    )
    .unwrap()
}

fn the_one(shelf: &Shelf) -> Photo {
    let seen = photos(shelf, &moss(), at(3), &zone()).unwrap();
    let [only] = seen.of(Pose::Side).unwrap().photos.as_slice() else {
        panic!("one photograph")
    };
    only.clone()
}

proptest! {
    #[test]
    fn a_picture_is_never_made_larger_keeps_its_proportions_and_ends_small(
        width in 1_u32..20_000,
        height in 1_u32..20_000,
    ) {
        let tries = tries(width, height);
        prop_assert_eq!(tries[0].quality, 0.8);
        for one in &tries {
            prop_assert!(one.width <= width && one.height <= height);
            prop_assert!((1..=1280).contains(&one.width) && (1..=1280).contains(&one.height));
            // To half a pixel of either side.
            let (w, h) = (f64::from(one.width), f64::from(one.height));
            let across = w * f64::from(height) - h * f64::from(width);
            let half = f64::from(width.max(height)) / 2.0 + f64::from(width.min(height)) / 2.0;
            prop_assert!(across.abs() <= half || w.min(h) <= 1.0, "{one:?}");
        }
        for pair in tries.windows(2) {
            let area = |one: &Try| one.width * one.height;
            let smaller = area(&pair[1]) <= area(&pair[0]);
            let worse = pair[1].quality < pair[0].quality || area(&pair[1]) < area(&pair[0]);
            prop_assert!(smaller && worse || area(&pair[0]) <= 1280, "{pair:?}");
        }
        // Three bytes a point before it is packed: the last try cannot miss by much.
        let last = tries.last().unwrap();
        prop_assert!(i64::from(last.width * last.height) <= MOST_BYTES);
    }
}

#[test]
fn a_large_picture_begins_at_the_longest_side_and_a_small_one_as_it_is() {
    let first = |width, height| tries(width, height).first().copied();
    assert_eq!(
        first(4032, 3024),
        Some(Try {
            width: 1280,
            height: 960,
            quality: 0.8
        })
    );
    assert_eq!(
        first(300, 400),
        Some(Try {
            width: 300,
            height: 400,
            quality: 0.8
        })
    );
    assert_eq!(tries(300, 400).len(), 3);
    assert_eq!(first(0, 400), None);
}

#[test]
fn a_file_of_before_keeps_its_day_and_one_just_made_has_now() {
    let now = at(20);
    assert_eq!(taken(None, now), (now, Dated::Taken));
    assert_eq!(
        taken(Some(now - Span::minutes(2)), now),
        (now, Dated::Taken)
    );
    assert_eq!(taken(Some(at(3)), now), (at(3), Dated::File));
    // A clock that is ahead, and a file without a date.
    assert_eq!(taken(Some(at(21)), now), (now, Dated::Taken));
    assert_eq!(taken(Some(Instant::from_ms(0)), now), (now, Dated::Taken));
}

#[test]
fn the_picture_goes_to_the_disk_in_the_batch_of_its_record() {
    let shelf = shelf_of(&[add("moss", &animal("moss"), 0)]);
    let outcome = apply(&keep(1, "p1"), &shelf, &context(&shelf, at(3)), None).unwrap();
    let [row] = outcome.writes.rows.as_slice() else {
        panic!("one record")
    };
    let [kept] = outcome.writes.pictures.as_slice() else {
        panic!("one picture")
    };
    assert_eq!(kept.sha256, picture(1).sum().as_str());
    assert!(row.json.contains(&kept.sha256));
    // Saved twice, it is one record, and the same picture under the same sum.
    let shelf = written(&shelf, &keep(1, "p1"), at(3));
    let again = apply(&keep(1, "p1"), &shelf, &context(&shelf, at(3)), None).unwrap();
    assert!(again.writes.rows.is_empty() && again.saved.is_empty());
    the_one(&shelf).body.check(&kept.bytes).unwrap();
    assert!(the_one(&shelf).body.check(picture(2).bytes()).is_err());
}

#[test]
fn what_is_taken_back_is_gone_from_sight_and_undone_it_is_there_again() {
    let shelf = shelf_of(&[add("moss", &animal("moss"), 0)]);
    let shelf = written(&shelf, &keep(1, "p1"), at(3));
    let photo = the_one(&shelf);
    let outcome = apply(&take_back(&photo), &shelf, &context(&shelf, at(4)), None).unwrap();
    assert!(outcome.writes.pictures.is_empty());
    let gone = written(&shelf, &take_back(&photo), at(4));
    let seen = photos(&gone, &moss(), at(4), &zone()).unwrap();
    assert!(seen.of(Pose::Side).unwrap().photos.is_empty());
    assert_eq!((seen.room.photographs, seen.room.taken_back), (1, 1));
    let back = written(&gone, &Act::Undo(outcome.saved), at(4));
    assert_eq!(the_one(&back), photo);
}

#[test]
fn a_day_that_is_said_is_noon_of_it_and_never_still_to_come() {
    let shelf = shelf_of(&[add("moss", &animal("moss"), 0)]);
    let shelf = written(&shelf, &keep(1, "p1"), at(3));
    let today = zone().to_local(at(20)).date;
    assert_eq!(said_day("1.1.2027", today), None);
    assert_eq!(said_day("lately", today), None);
    let day = said_day("3.3.2026", today).unwrap();
    let said = written(
        &shelf,
        &day_act(&the_one(&shelf), day, at(20), &zone()),
        at(20),
    );
    assert_eq!(
        (the_one(&said).day, the_one(&said).body.dated),
        (day, Dated::Said)
    );
    let early = at(20) - Span::hours(6);
    let same_day = day_act(
        &the_one(&shelf),
        zone().to_local(early).date,
        early,
        &zone(),
    );
    let Act::Change { at, .. } = same_day else {
        panic!("a change")
    };
    assert_eq!(at, Some(early));
}
