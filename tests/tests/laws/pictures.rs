//! Laws of a picture: whatever a camera writes beside it, only the picture is taken in, and it is found by its sum.

use proptest::collection::vec;
use proptest::prelude::*;
use tussock_core::animal::AnimalId;
use tussock_core::log::bodies::{Dated, PhotoV1, Pose};
use tussock_core::log::{
    Body, Bundle, Known, Log, LogError, Origin, Picture, PictureSum, Record, Stamp, Subject,
    pictures,
};
use tussock_core::sources::RecordId;
use tussock_core::units::Instant;

/// A segment: its marker, its length, what it holds.
fn segment(marker: u8, held: &[u8]) -> Vec<u8> {
    let length = u16::try_from(held.len() + 2).unwrap().to_be_bytes();
    [&[0xFF, marker], length.as_slice(), held].concat()
}

/// A JPEG of this size with other segments at its front, between its tables and scan, and behind its end.
fn jpeg((width, height): (u16, u16), coded: &[u8], beside: &[Vec<u8>]) -> Vec<u8> {
    let (w, h) = (width.to_be_bytes(), height.to_be_bytes());
    let beside = beside.concat();
    [
        [0xFF, 0xD8].as_slice(),
        &beside,
        &segment(0xDB, &[1; 65]),
        &segment(0xC2, &[8, h[0], h[1], w[0], w[1], 1, 1, 0x11, 0]),
        &beside,
        &segment(0xC4, &[0; 17]),
        &segment(0xDA, &[1, 1, 0, 0, 63, 0]),
        coded,
        &[0xFF, 0xD9],
        &beside,
    ]
    .concat()
}

/// What cameras and programs write: any marker of theirs but those of the picture itself, with a word to look for.
fn told() -> impl Strategy<Value = Vec<u8>> {
    (0xE1_u8..=0xEF, vec(any::<u8>(), 0..40)).prop_map(|(marker, held)| {
        let marker = if marker == 0xEE { 0xFE } else { marker };
        segment(marker, &[held.as_slice(), b"Hill Farm"].concat())
    })
}

/// Coded data: a byte that begins a marker is always followed by nothing or is a restart.
fn coded() -> impl Strategy<Value = Vec<u8>> {
    let piece = prop_oneof![
        8 => (0_u8..=0xFE).prop_map(|byte| vec![byte]),
        1 => Just(vec![0xFF, 0]),
        1 => (0xD0_u8..=0xD7).prop_map(|restart| vec![0xFF, restart]),
    ];
    vec(piece, 1..60).prop_map(|pieces| pieces.concat())
}

proptest! {
    #![proptest_config(crate::seed::config())]

    #[test]
    fn nothing_but_the_picture_is_taken_in(
        size in (1_u16..=1280, 1_u16..=1280),
        coded in coded(),
        beside in vec(told(), 0..4),
    ) {
        let plain = jpeg(size, &coded, &[]);
        let picture = Picture::of_jpeg(&jpeg(size, &coded, &beside)).unwrap();
        prop_assert_eq!(picture.bytes(), plain.as_slice());
        prop_assert_eq!(picture.size(), (i64::from(size.0), i64::from(size.1)));
        prop_assert_eq!(picture.sum(), &PictureSum::of(&plain));
        // What was taken in is taken in as it is.
        prop_assert_eq!(&Picture::of_jpeg(picture.bytes()).unwrap(), &picture);
    }

    #[test]
    fn no_bytes_break_the_reader(bytes in vec(any::<u8>(), 0..400)) {
        let framed = [[0xFF, 0xD8].as_slice(), &bytes].concat();
        for bytes in [bytes, framed] {
            if let Ok(picture) = Picture::of_jpeg(&bytes) {
                prop_assert_eq!(&Picture::of_jpeg(picture.bytes()).unwrap(), &picture);
            }
        }
    }

    #[test]
    fn a_picture_that_breaks_off_is_refused(
        coded in coded(),
        beside in vec(told(), 0..2),
        part in 0.0_f64..1.0,
    ) {
        let whole = jpeg((640, 480), &coded, &beside);
        let end = whole.len() - beside.concat().len() - 2;
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a part of a length")]
        let cut = (part * end as f64) as usize;
        prop_assert_eq!(Picture::of_jpeg(&whole[..cut]), Err(LogError::NotAPicture));
    }
}

/// A photograph of Moss; `after` makes it a later version that is taken back.
fn photo(id: &str, picture: &Picture, stamp: &str, gone: bool) -> Record {
    let origin = Origin {
        yard: tussock_core::animal::YardId("yard".to_owned()),
        subject: Subject::animal(&AnimalId("moss".to_owned())),
        at: Instant::from_ms(1_777_960_800_000),
        offset_min: 60,
        zone: "Europe/London".to_owned(),
        by: None,
        known: Known::Seen,
    };
    let body = PhotoV1::of(Pose::Side, picture, Dated::Taken).unwrap();
    let stamp = Stamp::from_text(stamp).unwrap();
    let mut record =
        Record::new(RecordId(id.to_owned()), origin, stamp, &Body::Photo(body)).unwrap();
    record.gone = gone;
    record
}

#[test]
fn an_export_names_the_pictures_that_travel_beside_it_and_they_are_known_by_their_bytes() {
    let made = |width| Picture::of_jpeg(&jpeg((width, 480), &[1, 2, 3], &[])).unwrap();
    let (side, back) = (made(640), made(641));
    let mut log = Log::new();
    for record in [
        photo("a", &side, "1777960800123-0001-moss0001", false),
        // The same picture under another record, and one that was taken back.
        photo("b", &side, "1777960800123-0002-moss0001", false),
        photo("c", &back, "1777960800123-0003-moss0001", true),
    ] {
        log.add(record).unwrap();
    }
    let bundle = Bundle {
        app: "0.1.0".to_owned(),
        made_at: Instant::from_ms(1_777_960_800_000),
        log,
        extra: serde_json::Map::new(),
    };
    let text = bundle.to_text().unwrap();
    let read = Bundle::read(&text).unwrap();
    assert_eq!(read.to_text().unwrap(), text);
    let named: Vec<PictureSum> = pictures(&read.log).into_iter().collect();
    let mut both = vec![side.sum().clone(), back.sum().clone()];
    both.sort();
    assert_eq!(named, both);
    // Another picture, or a part of it, is not the one that a record names.
    let Ok(Body::Photo(body)) = Body::read(read.log.current().next().unwrap()) else {
        panic!("a photograph")
    };
    assert_eq!(body.check(side.bytes()), Ok(()));
    assert!(body.check(back.bytes()).is_err());
    assert!(body.check(&side.bytes()[1..]).is_err());
}
