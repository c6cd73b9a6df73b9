//! A session of work: on the clock or written down, and the act that writes it.
//!
//! A session on the clock is the instants of its taps, kept with the form, so that a phone that died meanwhile goes on
//! where it was.

#[cfg(test)]
mod tests;

use super::correct::clock;
use super::look_over::answer_of;
use crate::acts::{Act, New};
use tussock_core::animal::{Animal, Answer};
use tussock_core::log::bodies::base::{BodyWeight, JobKey};
use tussock_core::log::bodies::{WorkBeats, WorkSessionV1};
use tussock_core::log::{Body, Known, LogError, Subject};
use tussock_core::round::{JobKind, Key, Slot, Subject as Of};
use tussock_core::sources::RecordId;
use tussock_core::units::parse::{MassUnit, ParseError, body_mass, number};
use tussock_core::units::{Bounds, Instant, LocalStamp, Span, Zone};
use tussock_core::work::published::{HEART_BELIEVED, LONGEST_MINUTES};
use tussock_core::work::{Gait, GaitTimes, How, Surface, Tap, Timed, timed};

/// The field of the taps.
pub const TAPS: &str = "taps";
/// The field of how it worked.
pub const HOW: &str = "how";
/// The field of the ground.
pub const SURFACE: &str = "surface";
/// The field of when it ended.
pub const ENDED: &str = "ended";
/// The field of the heart rate.
pub const HEART: &str = "heart";
/// The field of whether it settled.
pub const SETTLED: &str = "settled";
/// The field of whether it went sound.
pub const SOUND: &str = "sound";
/// The field of rider and tack.
pub const LOAD: &str = "load";
/// The field of remarks.
pub const NOTE: &str = "note";

/// The ways to work with their texts.
pub const HOWS: [(How, &str); 4] = [
    (How::Ridden, "ridden"),
    (How::Led, "led"),
    (How::Lunged, "lunged"),
    (How::Free, "free"),
];
/// The grounds with their texts.
pub const SURFACES: [(Surface, &str); 3] = [
    (Surface::Soft, "soft"),
    (Surface::Firm, "firm"),
    (Surface::Hard, "hard"),
];

/// The field of the minutes of a gait.
pub const fn field(gait: Gait) -> &'static str {
    match gait {
        Gait::Walk => "walk",
        Gait::Trot => "trot",
        Gait::Canter => "canter",
    }
}

/// What a text stands for.
pub fn chosen<T: Copy>(of: &[(T, &'static str)], text: &str) -> Option<T> {
    of.iter()
        .find(|(_, word)| *word == text)
        .map(|(value, _)| *value)
}

/// The text of a choice.
pub fn text_of<T: Copy + PartialEq>(of: &[(T, &'static str)], value: T) -> &'static str {
    of.iter()
        .find(|(other, _)| *other == value)
        .map_or("", |(_, word)| word)
}

/// The word of a tap.
const fn word_of(tap: Tap) -> &'static str {
    match tap {
        Tap::Gait(gait) => field(gait),
        Tap::Stop => "stop",
    }
}

/// The taps as they are kept: `walk 1777960800000, trot 1777961100000`. What cannot be read is left out.
pub fn taps(text: &str) -> Vec<(Instant, Tap)> {
    let tap = |word: &str| match word {
        "stop" => Some(Tap::Stop),
        word => Gait::ALL
            .into_iter()
            .find(|gait| field(*gait) == word)
            .map(Tap::Gait),
    };
    text.split(',')
        .filter_map(|part| {
            let (word, at) = part.trim().split_once(' ')?;
            Some((Instant::from_ms(at.parse().ok()?), tap(word)?))
        })
        .collect()
}

/// The taps with one more.
pub fn tapped(text: &str, tap: Tap, at: Instant) -> String {
    let one = format!("{} {}", word_of(tap), at.to_ms());
    if text.trim().is_empty() {
        one
    } else {
        format!("{text}, {one}")
    }
}

/// The session on the clock as it stands.
pub fn on_the_clock(text: &str, now: Instant) -> Timed {
    timed(&taps(text), now)
}

/// What was typed.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct Typed {
    /// The taps; empty for a session that is written down.
    pub taps: String,
    /// Minutes of walk, trot and canter; empty for those on the clock, or none.
    pub minutes: [String; 3],
    /// When it ended; empty for now, or for the stop of the clock.
    pub ended: String,
    /// How it worked.
    pub how: String,
    /// On what.
    pub surface: String,
    /// The heart rate.
    pub heart: String,
    /// Whether it settled.
    pub settled: String,
    /// Whether it went sound.
    pub sound: String,
    /// Rider and tack.
    pub load: String,
    /// Remarks.
    pub note: String,
}

/// What is wrong with a field.
#[derive(Clone, Debug, PartialEq)]
pub enum Wrong {
    /// The text of this field cannot be read.
    Parse(&'static str, ParseError),
    /// When it ended cannot be read.
    Ended(String),
    /// No minutes at all.
    NoMinutes,
    /// The clock was left running: the minutes are typed.
    LeftRunning,
    /// Nobody said how it worked.
    NoHow,
    /// Nobody said whether it goes sound, or that nobody looked.
    NoSound,
    /// It cannot be stored.
    Log(LogError),
}

impl Wrong {
    /// The field it is shown at.
    pub const fn field(&self) -> &'static str {
        match self {
            Self::Parse(field, _) => field,
            Self::Ended(_) => ENDED,
            Self::NoMinutes | Self::LeftRunning => field(Gait::Walk),
            Self::NoHow => HOW,
            Self::NoSound => SOUND,
            Self::Log(_) => NOTE,
        }
    }
}

impl Typed {
    /// What a form holds; `text` gives the text of a field.
    pub fn of(text: impl Fn(&str) -> String) -> Self {
        Self {
            taps: text(TAPS),
            minutes: Gait::ALL.map(|gait| text(field(gait))),
            ended: text(ENDED),
            how: text(HOW),
            surface: text(SURFACE),
            heart: text(HEART),
            settled: text(SETTLED),
            sound: text(SOUND),
            load: text(LOAD),
            note: text(NOTE),
        }
    }

    /// The minutes: those that were typed, else those on the clock.
    fn times(&self, clock: &Timed, wrong: &mut Vec<Wrong>) -> GaitTimes {
        let mut times = GaitTimes::default();
        for (gait, text) in Gait::ALL.into_iter().zip(&self.minutes) {
            if text.trim().is_empty() {
                times = times.with(gait, clock.times.of(gait));
                continue;
            }
            match minutes(gait, text) {
                Ok(time) => times = times.with(gait, time),
                Err(error) => wrong.push(Wrong::Parse(field(gait), error)),
            }
        }
        times
    }

    /// The act that writes it, or everything that is wrong.
    ///
    /// # Errors
    /// A field that is empty, cannot be read or cannot be.
    pub fn act(
        &self,
        animal: &Animal,
        now: Instant,
        zone: &impl Zone,
        record: &str,
    ) -> Result<Act, Vec<Wrong>> {
        let mut wrong = Vec::new();
        let on_clock = on_the_clock(&self.taps, now);
        let times = self.times(&on_clock, &mut wrong);
        let typed = self.minutes.iter().any(|text| !text.trim().is_empty());
        if wrong.is_empty() && times.total() == Span::ZERO {
            wrong.push(Wrong::NoMinutes);
        }
        if on_clock.left_running() && !typed {
            wrong.push(Wrong::LeftRunning);
        }
        let end = ended(&self.ended, on_clock.stopped.unwrap_or(now), zone)
            .ok_or_else(|| wrong.push(Wrong::Ended(self.ended.trim().to_owned())));
        let how = chosen(&HOWS, &self.how).ok_or_else(|| wrong.push(Wrong::NoHow));
        let sound = answer_of(&self.sound).ok_or_else(|| wrong.push(Wrong::NoSound));
        let heart = heart(&self.heart).map_err(|error| wrong.push(Wrong::Parse(HEART, error)));
        let load = load(&self.load).map_err(|error| wrong.push(error));
        let (Ok(end), Ok(how), Ok(sound), Ok(heart), Ok(load), true) =
            (end, how, sound, heart, load, wrong.is_empty())
        else {
            return Err(wrong);
        };
        let start = match (on_clock.started, self.ended.trim().is_empty()) {
            (Some(start), true) if !typed => start,
            _ => end - times.total(),
        };
        let log = |error: LogError| vec![Wrong::Log(error)];
        let body = WorkSessionV1::of(start, &times, how, sound).map_err(log)?;
        let key = Key::Day {
            kind: JobKind::Exercise,
            subject: Of::Animal(animal.id.clone()),
            day: zone.to_local(start).date,
            slot: Slot::default(),
        };
        let body = WorkSessionV1 {
            surface: chosen(&SURFACES, &self.surface),
            load: load.filter(|_| how == How::Ridden),
            heart,
            settled: answer_of(&self.settled).unwrap_or(Answer::NotKnown),
            note: Some(self.note.trim().to_owned()).filter(|note| !note.is_empty()),
            job: Some(JobKey::of(&key).map_err(log)?),
            ..body
        };
        Ok(Act::Add(New {
            id: RecordId(record.to_owned()),
            subject: Subject::animal(&animal.id),
            at: Some(end),
            known: Known::Seen,
            body: Body::WorkSession(body),
        }))
    }
}

/// Minutes as typed.
///
/// # Errors
/// No number, or more than is believed.
pub fn minutes(gait: Gait, text: &str) -> Result<Span, ParseError> {
    let key = match gait {
        Gait::Walk => "walk_minutes",
        Gait::Trot => "trot_minutes",
        Gait::Canter => "canter_minutes",
    };
    let typed = Bounds::new(key, 0.0, *LONGEST_MINUTES).check(number(text)?)?;
    // At most ten hours, so that the seconds are whole and small.
    #[allow(clippy::cast_possible_truncation, reason = "checked just above")]
    let seconds = (typed * 60.0).round() as i64;
    Ok(Span::ms(seconds.saturating_mul(1000)))
}

/// When it ended: what was typed, today or, where that is still to come, yesterday; else `now`.
fn ended(text: &str, now: Instant, zone: &impl Zone) -> Option<Instant> {
    if text.trim().is_empty() {
        return Some(now);
    }
    let time = clock(text).ok()?;
    let today = zone.to_local(now).date;
    let on = |date| zone.to_instant(LocalStamp { date, time }).planned();
    if on(today) <= now {
        Some(on(today))
    } else {
        today.pred_opt().map(on)
    }
}

fn heart(text: &str) -> Result<Option<WorkBeats>, ParseError> {
    if text.trim().is_empty() {
        return Ok(None);
    }
    let [least, most] = *HEART_BELIEVED;
    let beats = Bounds::new("heart_beats_per_min", least, most).check(number(text)?)?;
    #[allow(clippy::cast_possible_truncation, reason = "checked just above")]
    let whole = beats.round() as i64;
    Ok(WorkBeats::new(whole).ok())
}

fn load(text: &str) -> Result<Option<BodyWeight>, Wrong> {
    if text.trim().is_empty() {
        return Ok(None);
    }
    let mass = body_mass(text, MassUnit::Kg).map_err(|error| Wrong::Parse(LOAD, error))?;
    BodyWeight::of(mass, Some(text.trim().to_owned()))
        .map(Some)
        .map_err(Wrong::Log)
}
