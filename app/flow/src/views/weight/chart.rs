//! The picture of a weight: the trend as a cord with its pale strand, each reading as an upright stroke as long as it can
//! be out, the forecast as two edges, the target as a band. Weeks run along; the scale of weight does not begin at zero.

use std::collections::BTreeSet;
use std::fmt::Write as _;
use tussock_core::limits::Ends;
use tussock_core::progress::{Aim, Change, Trend};
use tussock_core::units::{BodyMass, LocalDate};

/// The width of the picture.
pub const WIDE: f64 = 360.0;
/// Its height.
pub const HIGH: f64 = 220.0;
/// What is left free at each side.
const EDGE: f64 = 8.0;
/// The scale spans at least so much of the body weight, so that noise looks small.
const LEAST_SPAN: f64 = 0.12;
/// The past that is shown at most, in days: half a year.
const PAST_DAYS: i64 = 182;
/// How far ahead is shown at most, in weeks.
const AHEAD_WEEKS: u32 = 12;
/// The cord has a corner at least every so many days.
const STEP_DAYS: i64 = 7;

/// A reading.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stroke {
    /// Where it lies along.
    pub x: f64,
    /// Its upper end.
    pub top: f64,
    /// Its lower end.
    pub foot: f64,
    /// From a scale: a wide one.
    pub scale: bool,
    /// All others contradict it: a dotted one.
    pub odd: bool,
}

/// The target as a band.
#[derive(Clone, Debug, PartialEq)]
pub struct Band {
    /// Its upper edge.
    pub top: f64,
    /// Its height.
    pub high: f64,
    /// The hatching, as the data of a path.
    pub hatch: String,
}

/// The picture.
#[derive(Clone, Debug, PartialEq)]
pub struct Chart {
    /// The trend, as the data of a path.
    pub cord: String,
    /// Its strand.
    pub strand: String,
    /// The edges of the forecast: the low and the high one.
    pub ahead: Option<[String; 2]>,
    /// The target.
    pub band: Option<Band>,
    /// The readings.
    pub strokes: Vec<Stroke>,
    /// Where the amounts of the ration changed.
    pub knots: Vec<f64>,
    /// Where today lies.
    pub now: f64,
    /// The weight at the upper edge.
    pub most: BodyMass,
    /// The weight at the lower edge.
    pub least: BodyMass,
    /// The first day that is shown.
    pub from: LocalDate,
    /// The last day that is shown.
    pub to: LocalDate,
}

/// The scales of a picture.
struct Scales {
    from: LocalDate,
    days: f64,
    least: f64,
    span: f64,
}

impl Scales {
    fn x(&self, day: LocalDate) -> f64 {
        let part = (day - self.from).num_days() as f64 / self.days;
        EDGE + part * (WIDE - 2.0 * EDGE)
    }

    fn y(&self, mass: BodyMass) -> f64 {
        let part = (mass.to_kg() - self.least) / self.span;
        HIGH - EDGE - part * (HIGH - 2.0 * EDGE)
    }
}

impl Chart {
    /// The picture of a trend.
    pub fn of(trend: &Trend, aim: Option<Aim>) -> Self {
        let shown_from = earlier(trend.day, PAST_DAYS);
        let first = trend.readings.first().map_or(trend.day, |read| read.day);
        let from = first.max(shown_from);
        let levels = trend.levels(&days(from, trend.day));
        let ahead: Vec<(LocalDate, Ends<BodyMass>)> = (1..=AHEAD_WEEKS)
            .filter_map(|week| {
                let day = later(trend.day, i64::from(week) * STEP_DAYS);
                Some((day, trend.ahead(week)?))
            })
            .collect();
        let to = ahead
            .last()
            .map_or(trend.day, |(day, _)| *day)
            .max(later(from, STEP_DAYS));
        let shown = || trend.readings.iter().filter(|read| from <= read.day);
        let mut all: Vec<f64> = Vec::new();
        for (_, ends) in levels.iter().chain(&ahead) {
            all.extend([ends.least.to_kg(), ends.most.to_kg()]);
        }
        for read in shown().filter(|read| !read.odd) {
            all.extend([
                (read.on_footing - read.error).to_kg(),
                (read.on_footing + read.error).to_kg(),
            ]);
        }
        if let Some(aim) = aim {
            all.extend([aim.low.to_kg(), aim.high.to_kg()]);
        }
        let (least, most) = ends(&all, trend.level.likely.to_kg());
        let scales = Scales {
            from,
            days: ((to - from).num_days() as f64).max(1.0),
            least,
            span: most - least,
        };
        let strokes = shown()
            .map(|read| Stroke {
                x: scales.x(read.day),
                top: scales.y(read.on_footing + read.error).max(0.0),
                foot: scales.y(read.on_footing - read.error).min(HIGH),
                scale: read.is_scale,
                odd: read.odd,
            })
            .collect();
        let changed = trend.changes().iter();
        let knots = changed
            .filter(|change| change.change == Change::Amounts && from <= change.day)
            .map(|change| scales.x(change.day))
            .collect();
        let begin = levels.last().copied();
        let edge = |of: fn(&Ends<BodyMass>) -> BodyMass| {
            let points = begin.iter().chain(&ahead);
            path(points.map(|(day, ends)| (scales.x(*day), scales.y(of(ends)))))
        };
        Self {
            cord: path(
                levels
                    .iter()
                    .map(|(day, ends)| (scales.x(*day), scales.y(ends.likely))),
            ),
            strand: strand(&levels, &scales),
            ahead: (!ahead.is_empty()).then(|| [edge(|ends| ends.least), edge(|ends| ends.most)]),
            band: aim.map(|aim| band(aim, &scales)),
            strokes,
            knots,
            now: scales.x(trend.day),
            most: BodyMass::kg(most),
            least: BodyMass::kg(least),
            from,
            to,
        }
    }
}

/// The least and the most that are shown, at least so far apart.
fn ends(all: &[f64], middle: f64) -> (f64, f64) {
    let least = all.iter().copied().fold(middle, f64::min);
    let most = all.iter().copied().fold(middle, f64::max);
    let wanted = middle * LEAST_SPAN;
    let short = (wanted - (most - least)).max(0.0) / 2.0;
    (least - short, most + short)
}

fn strand(levels: &[(LocalDate, Ends<BodyMass>)], scales: &Scales) -> String {
    let upper = levels.iter().map(|(day, ends)| (day, ends.most));
    let lower = levels.iter().rev().map(|(day, ends)| (day, ends.least));
    let points = upper.chain(lower);
    let mut data = path(points.map(|(day, mass)| (scales.x(*day), scales.y(mass))));
    data.push('Z');
    data
}

fn band(aim: Aim, scales: &Scales) -> Band {
    let top = scales.y(aim.high);
    let high = (scales.y(aim.low) - top).max(2.0);
    let mut hatch = String::new();
    let apart = WIDE / 24.0;
    let mut x = EDGE;
    while x + high < WIDE - EDGE {
        // Writing to a text cannot fail.
        let _ = write!(hatch, "M{x:.1} {:.1}L{:.1} {top:.1}", top + high, x + high);
        x += apart;
    }
    Band { top, high, hatch }
}

fn path(points: impl Iterator<Item = (f64, f64)>) -> String {
    let mut data = String::new();
    for (index, (x, y)) in points.enumerate() {
        let to = if index == 0 { 'M' } else { 'L' };
        // Writing to a text cannot fail.
        let _ = write!(data, "{to}{x:.1} {y:.1}");
    }
    data
}

fn days(from: LocalDate, to: LocalDate) -> BTreeSet<LocalDate> {
    let count = (to - from).num_days().max(0) / STEP_DAYS;
    let mut found: BTreeSet<LocalDate> = (0..=count)
        .map(|step| later(from, step * STEP_DAYS))
        .collect();
    found.insert(to);
    found
}

fn later(day: LocalDate, days: i64) -> LocalDate {
    day.checked_add_signed(chrono::TimeDelta::days(days))
        .unwrap_or(day)
}

fn earlier(day: LocalDate, days: i64) -> LocalDate {
    later(day, -days)
}
