//! The day in the paddock as a cord from 04 to 22, to scale by the clock of the yard.

use std::fmt::Write as _;
use tussock_core::graze::sun::{SunDay, hour_by_sun};
use tussock_core::graze::window::{Begins, Stretch, Window, sugar_shape};
use tussock_core::units::{Instant, Span, Zone};

/// The first hour of the cord.
pub const FROM: f64 = 4.0;
/// Its last hour.
pub const TO: f64 = 22.0;
/// Labels stand at least so far apart, in percent of the cord.
const APART: f64 = 6.5;

/// What a label says.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Label {
    /// The sun rises.
    Sunrise,
    /// Grass opens by the clock, or late in the evening.
    Opens,
    /// It is open for so long.
    OpenFor(Span),
    /// Grass closes.
    Closes,
    /// Now.
    Now,
    /// The sun sets.
    Sunset,
}

/// A label beside the cord.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Marked {
    /// How far down it stands, in percent; never on another.
    pub y: f64,
    /// When; `None` for a length of time.
    pub at: Option<Instant>,
    /// What.
    pub what: Label,
}

/// The cord of a day.
#[derive(Clone, Debug, PartialEq)]
pub struct DayCord {
    /// Where the sun rises, in percent: one stroke.
    pub sunrise: Option<f64>,
    /// Where grass closes: two strokes.
    pub closes: Vec<f64>,
    /// The open stretches: their upper end and their length.
    pub open: Vec<(f64, f64)>,
    /// Now; `None` outside the cord.
    pub now: Option<f64>,
    /// Where the sun sets.
    pub sunset: Option<f64>,
    /// The sugar of an average day as the data of a path in a field of 100 by 100; `None` without a sun to go by.
    pub sugar: Option<String>,
    /// The labels, from above.
    pub labels: Vec<Marked>,
}

/// Where an hour of the clock lies, in percent of the cord.
pub fn down(hour: f64) -> f64 {
    ((hour - FROM) / (TO - FROM) * 100.0).clamp(0.0, 100.0)
}

/// The hour on the clock of the yard; after midnight it goes on counting.
fn hour(window: &Window, at: Instant, zone: &impl Zone) -> f64 {
    let local = zone.to_local(at);
    // numeric: seconds of an hour, hours of a day
    let seconds = local
        .time
        .signed_duration_since(chrono::NaiveTime::MIN)
        .num_seconds();
    let days = (local.date - window.day).num_days();
    seconds as f64 / 3_600.0 + 24.0 * days as f64
}

/// The cord of a window.
pub fn cord(window: &Window, now: Instant, zone: &impl Zone) -> DayCord {
    let hour_of = |at| hour(window, at, zone);
    let inside = |at: Instant| {
        let hour = hour_of(at);
        (FROM..=TO).contains(&hour).then(|| down(hour))
    };
    let sunrise = window.sun.and_then(SunDay::sunrise);
    let sunset = window.sun.and_then(SunDay::sunset);
    let stretches: Vec<&Stretch> = window
        .opens
        .iter()
        .filter(|stretch| hour_of(stretch.from) < TO)
        .collect();
    let mut labels: Vec<Marked> = Vec::new();
    let mut put = |at: Option<Instant>, y: Option<f64>, what: Label| {
        labels.extend(y.map(|y| Marked { y, at, what }));
    };
    put(sunrise, sunrise.and_then(inside), Label::Sunrise);
    for stretch in &stretches {
        let (from, to) = (down(hour_of(stretch.from)), down(hour_of(stretch.to)));
        if stretch.begins != Begins::Sunrise {
            put(Some(stretch.from), Some(from), Label::Opens);
        }
        let long = stretch.to.since(stretch.from);
        put(None, Some(f64::midpoint(from, to)), Label::OpenFor(long));
        put(Some(stretch.to), Some(to), Label::Closes);
    }
    put(Some(now), inside(now), Label::Now);
    put(sunset, sunset.and_then(inside), Label::Sunset);
    DayCord {
        sunrise: sunrise.and_then(inside),
        closes: stretches.iter().map(|s| down(hour_of(s.to))).collect(),
        open: stretches
            .iter()
            .map(|s| {
                let (from, to) = (down(hour_of(s.from)), down(hour_of(s.to)));
                (from, to - from)
            })
            .collect(),
        now: inside(now),
        sunset: sunset.and_then(inside),
        sugar: window.sun.map(|sun| {
            let ahead = hour_of(sun.noon()) - hour_by_sun(sun.noon(), sun.noon());
            sugar(ahead)
        }),
        labels: apart(labels),
    }
}

/// Labels that stand one under another, in the order of the day.
fn apart(mut labels: Vec<Marked>) -> Vec<Marked> {
    labels.sort_by(|a, b| a.y.total_cmp(&b.y));
    let mut least = 0.0_f64;
    for label in &mut labels {
        label.y = label.y.max(least);
        least = label.y + APART;
    }
    // What was pushed beyond the end goes back up.
    let mut most = 100.0_f64;
    for label in labels.iter_mut().rev() {
        label.y = label.y.min(most);
        most = label.y - APART;
    }
    labels
}

/// The line of an average day's sugar, whose clock is so many hours ahead of the sun.
fn sugar(ahead: f64) -> String {
    let mut data = String::new();
    let mut hour = FROM;
    while hour <= TO {
        let to = if data.is_empty() { 'M' } else { 'L' };
        let x = 100.0 * sugar_shape(hour - ahead);
        // Writing to a text cannot fail.
        let _ = write!(data, "{to}{x:.1} {:.1}", down(hour));
        hour += 0.5;
    }
    data
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_cord_runs_from_four_to_ten_and_labels_do_not_lie_on_each_other() {
        assert!(down(4.0).abs() < 1e-9 && (down(22.0) - 100.0).abs() < 1e-9);
        assert!((down(13.0) - 50.0).abs() < 1e-9);
        let at = |y| Marked {
            y,
            at: None,
            what: Label::Now,
        };
        let set = apart(vec![at(99.0), at(1.0), at(2.0), at(98.0)]);
        for pair in set.windows(2) {
            assert!(pair[1].y - pair[0].y >= APART - 1e-9, "{set:?}");
        }
        assert!(set.last().unwrap().y <= 100.0);
    }
}
