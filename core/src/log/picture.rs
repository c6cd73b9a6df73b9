//! A picture as it is kept: a JPEG that holds the picture and nothing else.
//!
//! A camera writes more into the file: where and when it was taken, with what, whose it is, and a small copy of the whole.
//! A picture must not say where somebody lives, so all of that is left out here, whatever drew the picture: what stays
//! are the segments without which it cannot be drawn (ITU T.81). It is named by its sum. Records hold the sum; the
//! pictures lie beside them and travel beside their document.

use super::bodies::Body;
use super::error::{Allowed, Form, LogError, Path};
use super::kind::Kind;
use super::merge::Log;
use super::stored::{Stored, text};
use super::sum::{is_sum, sum};
use serde_json::Value;
use std::collections::BTreeSet;
use std::fmt;

/// The longest side of a picture, in pixels.
// numeric: ours: over what a phone's screen shows of it, and enough to see a crest
pub const LONGEST_SIDE: i64 = 1_280;
/// The most bytes of a picture.
// numeric: ours: a thousand of them are 300 MB
pub const MOST_BYTES: i64 = 300_000;

/// What begins every marker.
// numeric: ITU T.81
const MARK: u8 = 0xFF;
/// The start of a picture.
// numeric: ITU T.81
const START: u8 = 0xD8;
/// The end of a picture.
// numeric: ITU T.81
const END: u8 = 0xD9;
/// The start of a scan, whose coded data follow its segment.
// numeric: ITU T.81
const SCAN: u8 = 0xDA;
/// The quantisation tables.
// numeric: ITU T.81
const TABLES: u8 = 0xDB;
/// The interval of restarts.
// numeric: ITU T.81
const RESTARTS: u8 = 0xDD;

/// The sum of a picture's bytes.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct PictureSum(String);

impl PictureSum {
    /// Of these bytes.
    pub fn of(bytes: &[u8]) -> Self {
        Self(sum(bytes))
    }

    /// From its text.
    ///
    /// Error: not 64 digits and letters from a to f.
    pub fn new(text: &str) -> Result<Self, LogError> {
        Self::checked(text, &Path::Root.key("sha256"))
    }

    fn checked(text: &str, path: &Path<'_>) -> Result<Self, LogError> {
        if is_sum(text) {
            Ok(Self(text.to_owned()))
        } else {
            Err(path.refuse(text, Allowed::Form(Form::Sha256)))
        }
    }

    /// Its text.
    pub fn as_str(&self) -> &str {
        &self.0
    }
}

impl Stored for PictureSum {
    fn read(value: Option<&Value>, path: &Path<'_>) -> Result<Self, LogError> {
        Self::checked(text(value, path)?, path)
    }

    fn write(&self) -> Option<Value> {
        Some(Value::from(self.as_str()))
    }
}

/// A picture with its size and sum.
#[derive(Clone, PartialEq, Eq)]
pub struct Picture {
    bytes: Vec<u8>,
    size: (i64, i64),
    sum: PictureSum,
}

/// By its sum: the bytes say nothing to a reader.
impl fmt::Debug for Picture {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Picture")
            .field("size", &self.size)
            .field("sum", &self.sum)
            .finish_non_exhaustive()
    }
}

impl Picture {
    /// From a JPEG, of which the picture alone is taken.
    ///
    /// Errors: [`LogError::NotAPicture`]; a side or a size over what is kept, with the range.
    pub fn of_jpeg(jpeg: &[u8]) -> Result<Self, LogError> {
        let (bytes, size) = bare(jpeg).ok_or(LogError::NotAPicture)?;
        let within = |value: i64, max: i64, field: &str| {
            if (1..=max).contains(&value) {
                Ok(())
            } else {
                let range = Allowed::Range { min: 1, max };
                Err(Path::Root.key(field).refuse(&value.to_string(), range))
            }
        };
        within(size.0, LONGEST_SIDE, "width_px")?;
        within(size.1, LONGEST_SIDE, "height_px")?;
        let held = i64::try_from(bytes.len()).unwrap_or(i64::MAX);
        within(held, MOST_BYTES, "bytes")?;
        let sum = PictureSum::of(&bytes);
        Ok(Self { bytes, size, sum })
    }

    /// Its bytes.
    pub fn bytes(&self) -> &[u8] {
        &self.bytes
    }

    /// Width and height, in pixels.
    pub const fn size(&self) -> (i64, i64) {
        self.size
    }

    /// Its sum.
    pub const fn sum(&self) -> &PictureSum {
        &self.sum
    }
}

/// The pictures that the records of a log name, in whatever version: what travels beside its document.
pub fn pictures(log: &Log) -> BTreeSet<PictureSum> {
    log.all()
        .filter(|record| record.kind == Kind::Photo)
        .filter_map(|record| match Body::read(record) {
            Ok(Body::Photo(photo)) => Some(photo.sha256),
            _ => None,
        })
        .collect()
}

/// What is read from the front.
struct Reader<'a>(&'a [u8]);

impl<'a> Reader<'a> {
    fn take(&mut self, count: usize) -> Option<&'a [u8]> {
        let (taken, rest) = self.0.split_at_checked(count)?;
        self.0 = rest;
        Some(taken)
    }

    fn byte(&mut self) -> Option<u8> {
        let (first, rest) = self.0.split_first()?;
        self.0 = rest;
        Some(*first)
    }

    /// The next marker; any number of fill bytes may stand before it.
    fn marker(&mut self) -> Option<u8> {
        if self.byte()? != MARK {
            return None;
        }
        loop {
            let next = self.byte()?;
            if next != MARK {
                return Some(next);
            }
        }
    }

    /// What a segment holds, without its length.
    fn segment(&mut self) -> Option<&'a [u8]> {
        let length = whole(self.take(2)?)?;
        self.take(usize::try_from(length).ok()?.checked_sub(2)?)
    }

    /// The coded data of a scan: up to the next marker that is neither a stuffed byte nor a restart.
    fn coded(&mut self) -> Option<&'a [u8]> {
        // numeric: the restarts of ITU T.81
        let inside = |next: u8| matches!(next, 0 | MARK | 0xD0..=0xD7);
        let end = self.0.windows(2).position(|pair| match pair {
            [MARK, next] => !inside(*next),
            _ => false,
        })?;
        self.take(end)
    }
}

/// A number of two bytes.
fn whole(bytes: &[u8]) -> Option<i64> {
    let [high, low] = bytes else {
        return None;
    };
    Some(i64::from(u16::from_be_bytes([*high, *low])))
}

/// The picture alone, with its width and height; `None` when it is no JPEG, or breaks off.
fn bare(jpeg: &[u8]) -> Option<(Vec<u8>, (i64, i64))> {
    let mut reader = Reader(jpeg);
    if reader.take(2)? != [MARK, START] {
        return None;
    }
    let mut out = vec![MARK, START];
    let (mut size, mut drawn) = (None, false);
    loop {
        let marker = reader.marker()?;
        if marker == END {
            break;
        }
        let segment = reader.segment()?;
        if !draws(marker, segment) {
            continue;
        }
        if is_frame(marker) {
            // numeric: precision, then two bytes of height and two of width
            size = Some((whole(segment.get(3..5)?)?, whole(segment.get(1..3)?)?));
        }
        let length = u16::try_from(segment.len() + 2).ok()?;
        out.extend([MARK, marker]);
        out.extend(length.to_be_bytes());
        out.extend(segment);
        if marker == SCAN {
            out.extend(reader.coded()?);
            drawn = true;
        }
    }
    out.extend([MARK, END]);
    size.filter(|_| drawn).map(|size| (out, size))
}

/// Whether a frame begins here: its segment says how high and wide the picture is.
const fn is_frame(marker: u8) -> bool {
    // numeric: the frames of ITU T.81, without tables and extensions that share their range
    matches!(marker, 0xC0..=0xCF) && !matches!(marker, 0xC4 | 0xC8 | 0xCC)
}

/// Whether the picture cannot be drawn without this segment. Of what programs add, only how the colours are coded counts.
fn draws(marker: u8, segment: &[u8]) -> bool {
    match marker {
        // numeric: frames and their tables
        0xC0..=0xCF => true,
        SCAN | TABLES | RESTARTS => true,
        // numeric: ITU T.871: the picture's density; with a length of its own it would hold a small copy
        0xE0 => segment.starts_with(b"JFIF\0") && segment.len() == 14,
        // numeric: how three or four colours are coded
        0xEE => segment.starts_with(b"Adobe") && segment.len() == 12,
        _ => false,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn segment(marker: u8, held: &[u8]) -> Vec<u8> {
        let length = u16::try_from(held.len() + 2).unwrap().to_be_bytes();
        [&[MARK, marker], length.as_slice(), held].concat()
    }

    /// A picture of this size that no program could draw, but that is built as one.
    fn jpeg(width: u16, height: u16, beside: &[Vec<u8>]) -> Vec<u8> {
        let [high, low] = height.to_be_bytes();
        let [wide, narrow] = width.to_be_bytes();
        [
            vec![MARK, START],
            beside.concat(),
            segment(TABLES, &[0; 65]),
            segment(0xC0, &[8, high, low, wide, narrow, 1, 1, 0x11, 0]),
            segment(0xC4, &[0; 17]),
            segment(SCAN, &[1, 1, 0, 0, 63, 0]),
            vec![1, MARK, 0, 2, MARK, 0xD0, 3],
            vec![MARK, END],
        ]
        .concat()
    }

    #[test]
    fn what_a_camera_writes_beside_the_picture_is_left_out() {
        let plain = jpeg(400, 300, &[]);
        let beside = [
            segment(0xE0, b"JFIF\0\x01\x02\0\0\x01\0\x01\0\0"),
            segment(0xE1, b"Exif\0\0II*\0 51.5 N 0.1 W"),
            segment(0xE2, b"ICC_PROFILE\0"),
            segment(0xED, b"Photoshop 3.0\0 A. Marsh"),
            segment(0xFE, b"Hill Farm"),
        ];
        let mut told = jpeg(400, 300, &beside);
        // What some phones hang on behind the end: a film, a second picture.
        told.extend(b"ftyp a film of the yard");
        let picture = Picture::of_jpeg(&told).unwrap();
        assert_eq!(picture.size(), (400, 300));
        let jfif = jpeg(400, 300, &beside[..1]);
        assert_eq!(picture.bytes(), jfif);
        assert_eq!(Picture::of_jpeg(&plain).unwrap().bytes(), plain);
        assert_eq!(*picture.sum(), PictureSum::of(&jfif));
        assert_eq!(
            PictureSum::new(picture.sum().as_str()).unwrap(),
            *picture.sum()
        );
    }

    #[test]
    fn what_is_no_picture_breaks_off_or_is_too_large_is_refused() {
        let whole = jpeg(400, 300, &[]);
        for end in 0..whole.len() {
            assert_eq!(Picture::of_jpeg(&whole[..end]), Err(LogError::NotAPicture));
        }
        assert_eq!(Picture::of_jpeg(b"\x89PNG\r\n"), Err(LogError::NotAPicture));
        for (width, height, field) in [
            (1_281, 1, "width_px"),
            (1, 1_281, "height_px"),
            (1, 0, "height_px"),
        ] {
            let error = Picture::of_jpeg(&jpeg(width, height, &[])).unwrap_err();
            assert_eq!(error.place().unwrap().field, field);
        }
        let mut heavy = whole.clone();
        let coded = vec![7; 300_000];
        heavy.splice(heavy.len() - 2..heavy.len() - 2, coded);
        let error = Picture::of_jpeg(&heavy).unwrap_err();
        assert_eq!(error.place().unwrap().field, "bytes");
    }
}
