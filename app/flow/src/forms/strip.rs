//! Today's strip of a paddock and the track around it, as typed.

use crate::acts::Act;
use crate::views::fields::{Asked, TrackSeen, track_of};
use tussock_core::animal::PaddockId;
use tussock_core::graze::strip::of_paces;
use tussock_core::graze::strip::published::{DAYS, WIDTH};
use tussock_core::log::bodies::base::{Count, Millimetres};
use tussock_core::log::bodies::{GroundMillimetres, PaddockV2, StripV2};
use tussock_core::log::{Body, LogError};
use tussock_core::sources::RecordId;
use tussock_core::units::Length;
use tussock_core::units::parse::{Ground, ParseError, ground, number};

/// The days that a strip may last, in the order of their keys.
pub const STRIP_DAYS: [u32; 7] = [1, 2, 3, 4, 5, 6, 7];

/// A field of the form.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Field {
    /// How wide the strip is.
    Width,
    /// The longer side of the field, for a track.
    TrackLength,
    /// Its shorter side.
    TrackSide,
    /// How wide the track is.
    TrackWidth,
    /// How many animals go on it.
    Animals,
}

impl Field {
    /// All, in the order of the screen.
    pub const ALL: [Self; 5] = [
        Self::Width,
        Self::TrackLength,
        Self::TrackSide,
        Self::TrackWidth,
        Self::Animals,
    ];

    /// Its name in a draft.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Width => "width",
            Self::TrackLength => "track-length",
            Self::TrackSide => "track-side",
            Self::TrackWidth => "track-width",
            Self::Animals => "animals",
        }
    }
}

/// What is wrong with the strip.
#[derive(Clone, Debug, PartialEq)]
pub enum Wrong {
    /// The width.
    Width(ParseError),
    /// It cannot be stored.
    Log(LogError),
}

/// What is typed.
#[derive(Clone, Debug, PartialEq)]
pub struct Typed {
    /// How many days it lasts.
    pub days: u32,
    /// How wide it is, in metres or paces.
    pub width: String,
    /// Whether a back fence stands.
    pub back_fence: bool,
    /// For whom; `None` for all that graze there.
    pub whom: Option<Vec<String>>,
    /// The sides of the field, the width of the track and the animals on it.
    pub track: [String; 4],
}

impl Typed {
    /// What is stored of a paddock's strip.
    pub fn of(body: Option<&PaddockV2>) -> Self {
        let strip = body.and_then(|body| body.strip.as_ref());
        Self {
            days: strip
                .and_then(|strip| u32::try_from(strip.days.get()).ok())
                .filter(|days| DAYS.check(f64::from(*days)).is_ok())
                .unwrap_or(1),
            width: strip.map_or_else(String::new, |strip| {
                format!("{:.1} m", strip.width_mm.length().to_m())
            }),
            back_fence: strip.is_some_and(|strip| strip.back_fence),
            whom: None,
            track: <[String; 4]>::default(),
        }
    }

    /// The text of a field.
    pub fn text(&self, field: Field) -> &str {
        let [length, side, width, animals] = &self.track;
        match field {
            Field::Width => &self.width,
            Field::TrackLength => length,
            Field::TrackSide => side,
            Field::TrackWidth => width,
            Field::Animals => animals,
        }
    }

    /// The same with another text in a field.
    #[must_use]
    pub fn with(mut self, field: Field, text: String) -> Self {
        let [length, side, width, animals] = &mut self.track;
        *match field {
            Field::Width => &mut self.width,
            Field::TrackLength => length,
            Field::TrackSide => side,
            Field::TrackWidth => width,
            Field::Animals => animals,
        } = text;
        self
    }

    /// The width.
    ///
    /// # Errors
    /// What is no length on the ground, or none that is believed.
    pub fn width(&self) -> Result<Length, ParseError> {
        let width = on_ground(&self.width)?;
        WIDTH.check(width.to_m())?;
        Ok(width)
    }

    /// What is asked of the strip.
    pub fn asked(&self) -> Asked {
        Asked {
            days: self.days,
            width: self.width().ok(),
            back_fence: self.back_fence,
            whom: self.whom.clone(),
        }
    }

    /// Why a text of the track is not understood; `None` where it is, or where none stands.
    pub fn track_wrong(&self, field: Field) -> Option<ParseError> {
        let text = self.text(field);
        if text.trim().is_empty() {
            return None;
        }
        match field {
            Field::Width | Field::TrackLength | Field::TrackSide | Field::TrackWidth => {
                on_ground(text).err()
            }
            Field::Animals => animals(text).err(),
        }
    }

    /// The track.
    pub fn track(&self) -> TrackSeen {
        let side = |field| on_ground(self.text(field)).ok();
        track_of(
            side(Field::TrackLength),
            side(Field::TrackSide),
            side(Field::TrackWidth),
            animals(self.text(Field::Animals)).ok(),
        )
    }

    /// The act that keeps the strip with its paddock.
    ///
    /// # Errors
    /// A width that is not understood, or what cannot be stored.
    pub fn act(&self, id: &PaddockId, before: &PaddockV2, residual: Length) -> Result<Act, Wrong> {
        let width = self.width().map_err(Wrong::Width)?;
        let strip = StripV2 {
            width_mm: GroundMillimetres::of(width).map_err(Wrong::Log)?,
            back_fence: self.back_fence,
            residual_mm: Millimetres::of(residual).map_err(Wrong::Log)?,
            days: Count::new(i64::from(self.days)).map_err(Wrong::Log)?,
        };
        Ok(Act::Change {
            id: RecordId(id.0.clone()),
            body: Body::Paddock(PaddockV2 {
                strip: Some(strip),
                ..before.clone()
            }),
            at: None,
        })
    }
}

fn on_ground(typed: &str) -> Result<Length, ParseError> {
    Ok(match ground(typed)? {
        Ground::Measured(length) => length,
        Ground::Paces(paces) => of_paces(paces),
    })
}

/// A whole number of animals.
fn animals(typed: &str) -> Result<u32, ParseError> {
    let read = number(typed)?;
    let not_whole = || ParseError::NotANumber {
        typed: typed.to_owned(),
    };
    // numeric: far more than any track holds, and below what a whole number holds
    if !(0.0..=10_000.0).contains(&read) || 0.0 < read.fract() {
        return Err(not_whole());
    }
    #[allow(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "whole, not negative and small, as checked just above"
    )]
    Ok(read as u32)
}

#[cfg(test)]
mod tests {
    use super::*;
    use tussock_core::log::Name;

    fn paddock() -> PaddockV2 {
        PaddockV2::named(Name::new("Top field").unwrap())
    }

    fn typed(width: &str) -> Typed {
        Typed {
            width: width.into(),
            ..Typed::of(None)
        }
    }

    #[test]
    fn a_width_is_measured_or_paced() {
        assert!((typed("30").width().unwrap().to_m() - 30.0).abs() < 1e-9);
        assert!((typed("40 paces").width().unwrap().to_m() - 30.0).abs() < 1e-9);
        assert!(matches!(
            typed("900 m").width(),
            Err(ParseError::OutOfRange(_))
        ));
        assert_eq!(typed("").width(), Err(ParseError::Empty));
    }

    #[test]
    fn a_strip_is_kept_with_its_paddock_and_comes_back() {
        let id = PaddockId("top".into());
        let strip = Typed {
            days: 3,
            back_fence: true,
            ..typed("40 paces")
        };
        let act = strip.act(&id, &paddock(), Length::cm(7.5)).unwrap();
        let Act::Change {
            body: Body::Paddock(body),
            ..
        } = act
        else {
            panic!("{act:?}");
        };
        let back = Typed::of(Some(&body));
        assert_eq!((back.days, back.back_fence), (3, true));
        assert_eq!(back.width, "30.0 m");
        assert!(
            strip
                .clone()
                .with(Field::Width, "wide".into())
                .act(&id, &body, Length::cm(7.5))
                .is_err()
        );
    }

    #[test]
    fn a_track_waits_for_all_its_numbers() {
        let all = [
            (Field::TrackLength, "60"),
            (Field::TrackSide, "100 m"),
            (Field::TrackWidth, "4"),
        ]
        .into_iter()
        .fold(typed(""), |typed, (field, text)| {
            typed.with(field, text.into())
        });
        assert!(all.track().is_none());
        let three = all.clone().with(Field::Animals, "3".into());
        let track = three.track().unwrap().unwrap();
        assert_eq!(track.hay.len(), 4);
        let half = all.with(Field::Animals, "2.5".into());
        assert!(half.track_wrong(Field::Animals).is_some());
    }
}
