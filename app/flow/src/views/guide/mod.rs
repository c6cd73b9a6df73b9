//! The measuring guide: our own line drawings of where the tape goes, one measure a picture.
//!
//! Pure geometry. A horse and a donkey from the side, and from above where a length needs it: wrapped around the buttock
//! and in a straight line look the same from the side. No figure here is of the trade.

mod shapes;
#[cfg(test)]
mod tests;

use tussock_core::animal::Kind;
use tussock_core::assess::{LengthKind, Measure};

use super::cut::{Point, path};
use shapes::{DONKEY, FROM_ABOVE, HORSE, Shape};

/// Where the ground is.
const GROUND: f64 = 208.0;
/// The width of every drawing.
pub const WIDTH: f64 = 320.0;
/// The height of a drawing from the side.
pub const SIDE: f64 = 220.0;
/// The height of a drawing from above.
pub const ABOVE: f64 = 124.0;

/// A picture of the guide.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Picture {
    /// Around the chest.
    HeartGirth,
    /// Around the belly.
    BellyGirth,
    /// Around the neck.
    Neck,
    /// A length, of its kind.
    Length(LengthKind),
    /// At the withers.
    Height,
}

impl Picture {
    /// The pictures of a kind of animal, those of every week first. A mule is measured as a horse.
    pub fn of(kind: Kind) -> Vec<Self> {
        let lengths: &[LengthKind] = match kind {
            Kind::Donkey => &[LengthKind::ElbowToTuber],
            Kind::Horse | Kind::Pony | Kind::Miniature | Kind::Mule => {
                &[LengthKind::Wrap, LengthKind::Straight]
            }
        };
        let mut all = vec![Self::HeartGirth, Self::BellyGirth, Self::Neck];
        all.extend(lengths.iter().map(|length| Self::Length(*length)));
        all.push(Self::Height);
        all
    }

    /// The measure it is of.
    pub const fn measure(self) -> Measure {
        match self {
            Self::HeartGirth => Measure::HeartGirth,
            Self::BellyGirth => Measure::UmbilicalGirth,
            Self::Neck => Measure::Neck,
            Self::Length(_) => Measure::Length,
            Self::Height => Measure::Height,
        }
    }
}

/// What a line of a drawing is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Ink {
    /// The animal.
    Animal,
    /// The animal's far side, and the ground.
    Far,
    /// The tape.
    Tape,
    /// The tape behind the animal.
    TapeBehind,
    /// Where the tape begins and ends.
    End,
    /// A line that is held square to the tape: a stick, or a wall.
    Square,
}

/// A line of a drawing.
#[derive(Clone, Debug, PartialEq)]
pub struct Line {
    /// What it is.
    pub ink: Ink,
    /// Its points.
    pub points: Vec<Point>,
    /// Joined smoothly, else straight.
    pub smooth: bool,
}

impl Line {
    /// The line as the `d` of a path.
    pub fn path(&self) -> String {
        if self.smooth {
            return path(&self.points);
        }
        let corners: Vec<String> = self
            .points
            .iter()
            .map(|(x, y)| format!("{x:.1} {y:.1}"))
            .collect();
        format!("M{}", corners.join("L"))
    }
}

/// A drawing: from the side, and for lengths from above.
#[derive(Clone, Debug, PartialEq)]
pub struct Drawn {
    /// From the side.
    pub side: Vec<Line>,
    /// From above; empty where one side says it all.
    pub above: Vec<Line>,
}

/// The points of shoulder and buttock from above, and where a line along the body is held.
const SHOULDER_ABOVE: Point = (106.0, 67.0);
const BUTTOCK_ABOVE: Point = (283.0, 58.0);
const BESIDE: f64 = 108.0;

fn shape(kind: Kind) -> &'static Shape {
    match kind {
        Kind::Donkey => &DONKEY,
        Kind::Horse | Kind::Pony | Kind::Miniature | Kind::Mule => &HORSE,
    }
}

fn smooth(ink: Ink, points: &[Point]) -> Line {
    Line {
        ink,
        points: points.to_vec(),
        smooth: true,
    }
}

fn straight(ink: Ink, points: &[Point]) -> Line {
    Line {
        ink,
        points: points.to_vec(),
        smooth: false,
    }
}

/// A short stroke across a tape at its end, as a knot: upright, or level.
fn end(at: Point, upright: bool) -> Line {
    let (x, y) = at;
    let half = 9.0;
    if upright {
        straight(Ink::End, &[(x, y - half), (x, y + half)])
    } else {
        straight(Ink::End, &[(x - half, y), (x + half, y)])
    }
}

/// A tape around a body: its near half, and its far half behind it.
fn around(top: Point, bottom: Point) -> [Line; 2] {
    let bulge = 6.0;
    let half = |side: f64| {
        let at = |part: f64, out: f64| {
            (
                top.0 + (bottom.0 - top.0) * part + side * out,
                top.1 + (bottom.1 - top.1) * part,
            )
        };
        [
            top,
            at(0.25, bulge * 0.8),
            at(0.5, bulge),
            at(0.75, bulge * 0.8),
            bottom,
        ]
    };
    [
        smooth(Ink::TapeBehind, &half(-1.0)),
        smooth(Ink::Tape, &half(1.0)),
    ]
}

/// The drawing of a measure on a kind of animal.
pub fn drawn(picture: Picture, kind: Kind) -> Drawn {
    let of = shape(kind);
    let far = of.far.iter().map(|points| smooth(Ink::Far, points));
    let ground = straight(Ink::Far, &[(20.0, GROUND + 6.0), (300.0, GROUND + 6.0)]);
    let near = of.near.iter().map(|points| smooth(Ink::Animal, points));
    let mut side: Vec<Line> = far.chain([ground]).chain(near).collect();
    let mut above = Vec::new();
    match picture {
        Picture::HeartGirth => side.extend(around(of.withers, of.girth)),
        Picture::BellyGirth => side.extend(around(of.loin, of.navel)),
        Picture::Neck => {
            let (top, under) = of.neck;
            side.extend(around(top, under));
            // Halfway from poll to withers.
            side.extend([end(of.poll, true), end(of.withers, true)]);
        }
        Picture::Height => {
            let stick = of.withers.0;
            side.extend([
                straight(Ink::Tape, &[(stick, GROUND + 6.0), of.withers]),
                straight(
                    Ink::Square,
                    &[
                        (stick - 30.0, of.withers.1 - 3.0),
                        (stick + 30.0, of.withers.1 - 3.0),
                    ],
                ),
                end((stick, GROUND + 6.0), false),
            ]);
        }
        Picture::Length(length) => {
            let from = match length {
                LengthKind::ElbowToTuber => of.elbow,
                LengthKind::Wrap | LengthKind::Straight => of.shoulder,
            };
            side.extend(along(length, from, of.buttock));
            above = from_above(length);
        }
    }
    Drawn { side, above }
}

/// A length from the side.
fn along(length: LengthKind, from: Point, to: Point) -> Vec<Line> {
    match length {
        LengthKind::Wrap => {
            let middle = (
                f64::midpoint(from.0, to.0),
                f64::midpoint(from.1, to.1) + 5.0,
            );
            vec![
                smooth(Ink::Tape, &[from, middle, (to.0 - 12.0, to.1 + 6.0), to]),
                end(from, true),
                end(to, false),
            ]
        }
        LengthKind::Straight => vec![
            straight(Ink::Tape, &[from, (to.0, from.1)]),
            straight(
                Ink::Square,
                &[(to.0 + 2.0, to.1 - 40.0), (to.0 + 2.0, GROUND + 6.0)],
            ),
            end(from, true),
        ],
        LengthKind::ElbowToTuber => vec![
            straight(Ink::Tape, &[from, to]),
            end(from, true),
            end(to, true),
        ],
    }
}

/// A length from above; a donkey's needs none.
fn from_above(length: LengthKind) -> Vec<Line> {
    let body = smooth(Ink::Animal, FROM_ABOVE);
    match length {
        LengthKind::ElbowToTuber => Vec::new(),
        LengthKind::Wrap => vec![
            body,
            smooth(
                Ink::Tape,
                &[
                    SHOULDER_ABOVE,
                    (140.0, 83.0),
                    (176.0, 89.0),
                    (212.0, 86.0),
                    (246.0, 83.0),
                    (272.0, 74.0),
                    BUTTOCK_ABOVE,
                ],
            ),
            end(SHOULDER_ABOVE, true),
            end(BUTTOCK_ABOVE, false),
        ],
        LengthKind::Straight => vec![
            body,
            straight(
                Ink::Square,
                &[SHOULDER_ABOVE, (SHOULDER_ABOVE.0, BESIDE + 8.0)],
            ),
            straight(
                Ink::Square,
                &[
                    (BUTTOCK_ABOVE.0 + 3.0, 30.0),
                    (BUTTOCK_ABOVE.0 + 3.0, BESIDE + 8.0),
                ],
            ),
            straight(
                Ink::Tape,
                &[(SHOULDER_ABOVE.0, BESIDE), (BUTTOCK_ABOVE.0 + 3.0, BESIDE)],
            ),
        ],
    }
}
