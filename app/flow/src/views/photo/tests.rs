//! Then and now, what comes next, how much room.

use super::*;
use crate::views::beside::{Last, Standing, visit};
use crate::views::test_yard::{Entry, add, after, animal, at, shelf_of, zone};
use crate::words::{BesideWords, English, PhotoWords, Task};
use tussock_core::log::bodies::{Dated, PictureBytes, Pixels};

fn body(pose: Pose, picture: &str) -> Body {
    Body::Photo(PhotoV1 {
        pose,
        sha256: PictureSum::of(picture.as_bytes()),
        width_px: Pixels::new(1280).unwrap(),
        height_px: Pixels::new(960).unwrap(),
        bytes: PictureBytes::new(200_000).unwrap(),
        dated: Dated::Taken,
    })
}

fn yard(entries: &[Entry<'_>]) -> Shelf {
    let two = shelf_of(&[
        add("moss", &animal("moss"), 0),
        add("fern", &animal("fern"), 0),
    ]);
    after(&two, entries)
}

fn seen(shelf: &Shelf, day: i64) -> Photos {
    photos(shelf, &AnimalId("moss".into()), at(day), &zone()).unwrap()
}

#[test]
fn the_first_stands_beside_the_newest_and_can_be_stepped_on() {
    let shelf = yard(&[
        ("a", "moss", body(Pose::Side, "1"), 1),
        ("b", "moss", body(Pose::Side, "2"), 5),
        ("c", "moss", body(Pose::Side, "3"), 9),
        ("d", "moss", body(Pose::Side, "4"), 12),
        ("e", "fern", body(Pose::Side, "5"), 13),
    ]);
    let photos = seen(&shelf, 14);
    let side = photos.of(Pose::Side).unwrap();
    let id = |photo: Option<&Photo>| photo.map(|photo| photo.id.0.clone());
    assert_eq!(id(side.now()).as_deref(), Some("d"));
    assert_eq!(side.steps(), 2);
    let then: Vec<_> = (0..5).map(|later| id(side.then(later)).unwrap()).collect();
    assert_eq!(then, ["a", "b", "c", "c", "c"]);
    // One alone has none beside it.
    let one = seen(&yard(&[("a", "moss", body(Pose::Side, "1"), 1)]), 2);
    let side = one.of(Pose::Side).unwrap();
    assert_eq!((side.then(0), side.steps()), (None, 0));
    assert!(one.of(Pose::Crest).unwrap().now().is_none());
    assert_eq!(one.find(&RecordId("a".into())), side.now());
}

#[test]
fn the_pose_that_was_longest_not_taken_comes_next() {
    assert_eq!(seen(&yard(&[]), 1).next(), Pose::Side);
    assert_eq!(seen(&yard(&[]), 1).days(), None);
    let shelf = yard(&[
        ("a", "moss", body(Pose::Side, "1"), 9),
        ("b", "moss", body(Pose::Behind, "2"), 9),
    ]);
    assert_eq!(seen(&shelf, 9).next(), Pose::Crest);
    let shelf = after(&shelf, &[("c", "moss", body(Pose::Crest, "3"), 2)]);
    assert_eq!(seen(&shelf, 12).next(), Pose::Crest);
    assert_eq!(seen(&shelf, 12).days(), Some(3));
}

#[test]
fn room_counts_each_picture_once_and_all_animals() {
    let shelf = yard(&[
        ("a", "moss", body(Pose::Side, "1"), 1),
        ("b", "moss", body(Pose::Side, "1"), 2),
        ("c", "fern", body(Pose::Side, "2"), 2),
    ]);
    let room = seen(&shelf, 3).room;
    assert_eq!(
        room,
        Room {
            photographs: 2,
            taken_back: 0,
            bytes: 400_000,
            more: false
        }
    );
    let words = English::default();
    assert_eq!(words.room(room), "2 photographs take 400 kB");
    let back = Room {
        taken_back: 1,
        bytes: 2_140_000,
        more: true,
        ..room
    };
    assert_eq!(
        words.room(back),
        "At least 2 photographs take 2.1 MB, 1 taken back and still kept"
    );
    let space = Space {
        used: 4e8,
        given: 12.4e9,
    };
    assert_eq!(
        words.space(Some(space)),
        "Room for about 12 GB more, by what the browser says"
    );
    assert!(!space.is_nearly_full());
    let full = Space {
        used: 10e9,
        given: 12.4e9,
    };
    assert!(full.is_nearly_full() && full.left() < 3e9);
    assert!(
        Space {
            used: 2.0,
            given: 1.0
        }
        .left()
            <= 0.0
    );
}

#[test]
fn a_picture_is_named_by_animal_pose_and_day() {
    let words = English::default();
    let shelf = yard(&[
        ("a", "moss", body(Pose::Side, "1"), 1),
        ("b", "moss", body(Pose::Behind, "2"), 1),
        ("c", "moss", body(Pose::Crest, "3"), 1),
    ]);
    let photos = seen(&shelf, 3);
    let said: Vec<String> = Pose::ALL
        .into_iter()
        .map(|pose| words.picture("Moss", photos.of(pose).unwrap().now().unwrap()))
        .collect();
    assert_eq!(
        said,
        [
            "Moss from the side, 6 May 2026",
            "Moss from behind, 6 May 2026",
            "The crest of Moss, 6 May 2026"
        ]
    );
    let mut photo = photos.of(Pose::Side).unwrap().now().unwrap().clone();
    assert_eq!(words.day_of(&photo), "6 May 2026");
    photo.body.dated = Dated::File;
    assert_eq!(words.day_of(&photo), "6 May 2026, as its file says");
    assert_eq!(words.size_of(&photo), "1280 by 960 pixels, 200 kB");
    assert_eq!(
        words.photographed("Moss", None),
        "Moss was never photographed"
    );
    assert_eq!(
        words.photographed("Moss", Some(12)),
        "Moss was last photographed 12 days ago"
    );
}

#[test]
fn a_photograph_is_never_due_and_the_side_stands_for_the_animal() {
    let of = |shelf: &Shelf, day: i64| {
        let visit = visit(shelf, &AnimalId("moss".into()), at(day), &zone()).unwrap();
        let step = visit
            .steps
            .iter()
            .find(|step| step.task == Task::Photograph)
            .unwrap()
            .clone();
        (step, visit)
    };
    let (never, visit) = of(&yard(&[]), 1);
    assert_eq!((never.standing, never.last), (Standing::Open, None));
    assert_eq!(visit.photo, None);
    let shelf = yard(&[
        ("a", "moss", body(Pose::Side, "1"), 1),
        ("b", "moss", body(Pose::Crest, "2"), 2),
    ]);
    let (done, visit) = of(&shelf, 4);
    assert_eq!((done.standing, done.days), (Standing::Done, Some(2)));
    let last = done.last.unwrap();
    assert_eq!(last, Last::Photographs(vec![Pose::Side, Pose::Crest]));
    assert_eq!(
        English::default().last(&last),
        "from the side and the crest"
    );
    assert_eq!(visit.photo.unwrap().id.0, "a");
    let (old, visit) = of(&shelf, 400);
    assert_eq!(old.standing, Standing::Open);
    assert_ne!(visit.first_due(), Some(Task::Photograph));
}
