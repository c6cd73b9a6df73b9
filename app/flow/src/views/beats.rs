//! A session drawn as long as its minutes: a walk in strokes of four, a trot of two, a canter of three.

use std::fmt::Write as _;
use tussock_core::units::Span;
use tussock_core::work::{Gait, GaitTimes};

/// The width of the drawing.
pub const WIDE: f64 = 320.0;
/// From one stroke of a group to the next.
const STROKE: f64 = 4.0;
/// From one group to the next.
const GROUP: f64 = 24.0;
/// The room before the first group of a stretch.
const BEFORE: f64 = 5.0;
/// The upper and the lower end of a stroke.
const ENDS: (f64, f64) = (4.0, 20.0);

/// The part of a session in one gait.
#[derive(Clone, Debug, PartialEq)]
pub struct Stretch {
    /// The gait.
    pub gait: Gait,
    /// Where it begins.
    pub from: f64,
    /// Where it ends.
    pub to: f64,
    /// Its strokes, as the data of a path.
    pub path: String,
}

/// The stretches of a session, walk first. `longest` is as long as the whole width; a session that is longer fills it.
pub fn stretches(times: &GaitTimes, longest: Span) -> Vec<Stretch> {
    let whole = longest.max(times.total()).to_hours();
    if whole <= 0.0 {
        return Vec::new();
    }
    let mut from = 0.0;
    let mut found = Vec::new();
    for gait in Gait::ALL {
        let part = times.of(gait).to_hours() / whole;
        if part <= 0.0 {
            continue;
        }
        let to = from + part * WIDE;
        found.push(Stretch {
            gait,
            from,
            to,
            path: strokes(gait, from, to),
        });
        from = to;
    }
    found
}

/// Groups of as many strokes as the gait has beats, as many as find room; a stretch too short for one has one all the same.
fn strokes(gait: Gait, from: f64, to: f64) -> String {
    let beats = gait.beats();
    let wide = STROKE * f64::from(beats.saturating_sub(1));
    let (top, foot) = ENDS;
    let mut path = String::new();
    let mut at = (from + BEFORE)
        .min(f64::midpoint(from, to) - wide / 2.0)
        .max(from);
    loop {
        for beat in 0..beats {
            let x = at + STROKE * f64::from(beat);
            // Writing to a text cannot fail.
            let _ = write!(path, "M{x:.1} {top}V{foot}");
        }
        at += GROUP;
        if to < at + wide + 1.0 {
            return path;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn count(path: &str) -> usize {
        path.matches('M').count()
    }

    #[test]
    fn a_session_is_as_long_as_its_minutes_and_each_gait_has_its_beats() {
        let asked = GaitTimes::minutes(10, 15, 5);
        let drawn = stretches(&asked, asked.total());
        assert_eq!(drawn.len(), 3);
        assert!((drawn[2].to - WIDE).abs() < 1e-9);
        assert!((drawn[0].to - WIDE / 3.0).abs() < 1e-9);
        for (stretch, beats) in drawn.iter().zip([4, 2, 3]) {
            assert_eq!(count(&stretch.path) % beats, 0, "{:?}", stretch.gait);
        }
        // What was done lies under what was asked, at the same scale.
        let done = stretches(&GaitTimes::minutes(10, 5, 0), asked.total());
        assert!((done[1].to - WIDE / 2.0).abs() < 1e-9);
        let over = stretches(&GaitTimes::minutes(60, 0, 0), asked.total());
        assert!((over[0].to - WIDE).abs() < 1e-9);
    }

    #[test]
    fn nothing_draws_nothing_and_a_minute_has_one_group() {
        assert!(stretches(&GaitTimes::default(), Span::minutes(30)).is_empty());
        let one = stretches(&GaitTimes::minutes(0, 1, 0), Span::minutes(30));
        assert_eq!(count(&one[0].path), 2);
        assert!(stretches(&GaitTimes::default(), Span::ZERO).is_empty());
    }
}
