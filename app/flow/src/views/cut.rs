//! The cut drawings: what the hand feels at a site, as if sliced there.
//!
//! Our own drawings, as pure geometry: a step in, points out. They show which way a site changes, not how thick
//! anything is: no figure here is of the trade.

#[cfg(test)]
mod tests;

use tussock_core::assess::{ConditionScale, Site};

/// The width of a drawing.
pub const WIDTH: f64 = 320.0;
/// The height of a drawing.
pub const HEIGHT: f64 = 140.0;

/// The highest step of the crest.
const CREST_TOP: f64 = 5.0;
/// The step of the crest from which it leans.
const CREST_LEANS: f64 = 4.0;
/// Points on each side of the middle.
const SAMPLES: i32 = 24;
/// Skin lies at least this far over a bone.
const SKIN: f64 = 3.0;
/// The middle of a drawing.
const MIDDLE: f64 = WIDTH / 2.0;

/// A point: right and down.
pub type Point = (f64, f64);

/// A bone.
#[derive(Clone, Debug, PartialEq)]
pub enum Bone {
    /// One that is cut across: its middle and its radius.
    Round {
        /// Its middle.
        at: Point,
        /// Its radius.
        radius: f64,
    },
    /// One that is seen from its edge.
    Edge(Vec<Point>),
}

/// A drawing: the bones, and the surface from left to right.
#[derive(Clone, Debug, PartialEq)]
pub struct Cut {
    /// The bones; the same at every step.
    pub bones: Vec<Bone>,
    /// The surface the hand feels; `None` until a step is chosen.
    pub surface: Option<Vec<Point>>,
}

/// The drawing of a site of a scale; half steps lie between. `None` for a site of the other scale.
pub fn cut(scale: ConditionScale, site: Site, step: Option<f64>) -> Option<Cut> {
    if !scale.sites().contains(&site) {
        return None;
    }
    let shape: fn(f64, f64) -> Point = match site {
        Site::Neck => neck,
        Site::Withers => withers,
        Site::BehindShoulder => shoulder,
        Site::Ribs => ribs,
        Site::Loin => loin,
        Site::TailHead => tail_head,
        Site::BackAndRibs => back_and_ribs,
        Site::Pelvis => pelvis,
    };
    let bones = bones(site);
    let bounds = scale.bounds();
    let along = |step: f64| (step - bounds.min) / (bounds.max - bounds.min);
    let part = step.map(|step| along(step).clamp(0.0, 1.0));
    Some(Cut {
        surface: part.map(|part| surface(&bones, |u| shape(part, u))),
        bones,
    })
}

/// The drawing of the crest, 0 to 5: the neck sliced across, seen from the front.
pub fn crest(score: Option<u8>) -> Cut {
    let bones = vec![
        round(MIDDLE, 118.0, 12.0),
        Bone::Edge(vec![(MIDDLE, 104.0), (MIDDLE, 66.0)]),
    ];
    let score = score.map(|score| f64::from(score).clamp(0.0, CREST_TOP));
    Cut {
        surface: score.map(|score| surface(&bones, |u| crest_at(score, u))),
        bones,
    }
}

/// The points as the `d` of a path, joined smoothly (a Catmull-Rom curve).
pub fn path(points: &[Point]) -> String {
    let Some(first) = points.first() else {
        return String::new();
    };
    let at = |index: usize| points.get(index).copied();
    let mut d = format!("M{:.1} {:.1}", first.0, first.1);
    for (index, (start, end)) in points.iter().zip(points.iter().skip(1)).enumerate() {
        let before = index.checked_sub(1).and_then(at).unwrap_or(*start);
        let after = at(index + 2).unwrap_or(*end);
        // A sixth of the way between the neighbours is what makes the curve pass through every point.
        let out = (
            start.0 + (end.0 - before.0) / 6.0,
            start.1 + (end.1 - before.1) / 6.0,
        );
        let into = (
            end.0 - (after.0 - start.0) / 6.0,
            end.1 - (after.1 - start.1) / 6.0,
        );
        let part = format!(
            "C{:.1} {:.1} {:.1} {:.1} {:.1} {:.1}",
            out.0, out.1, into.0, into.1, end.0, end.1
        );
        d.push_str(&part);
    }
    d
}

/// The surface of a shape over its bones, from left (-1) to right (1).
fn surface(bones: &[Bone], shape: impl Fn(f64) -> Point) -> Vec<Point> {
    (-SAMPLES..=SAMPLES)
        .map(|sample| {
            let (x, y) = shape(f64::from(sample) / f64::from(SAMPLES));
            (x, over(bones, x, y))
        })
        .collect()
}

/// No surface runs through a bone that is cut across.
fn over(bones: &[Bone], x: f64, y: f64) -> f64 {
    bones.iter().fold(y, |y, bone| match bone {
        Bone::Round { at, radius } if (x - at.0).abs() < *radius => {
            let up = (radius * radius - (x - at.0) * (x - at.0)).sqrt();
            y.min(at.1 - up - SKIN)
        }
        Bone::Round { .. } | Bone::Edge(_) => y,
    })
}

fn round(x: f64, y: f64, radius: f64) -> Bone {
    Bone::Round { at: (x, y), radius }
}

/// The spine, sliced across, with its point at a height.
fn spine(top: f64) -> Bone {
    Bone::Edge(vec![
        (152.0, 116.0),
        (158.0, top),
        (162.0, top),
        (168.0, 116.0),
    ])
}

/// A rise around 0 of the given width, 1 at its top.
fn rise(z: f64, width: f64) -> f64 {
    (-(z / width) * (z / width)).exp()
}

/// How far a site is thinner than the middle of the scale, 1 at its end.
fn thin(part: f64) -> f64 {
    (1.0 - 2.0 * part).max(0.0)
}

/// How far it is fatter than the middle, 1 at its end.
fn fat(part: f64) -> f64 {
    (2.0 * part - 1.0).max(0.0)
}

fn bones(site: Site) -> Vec<Bone> {
    match site {
        Site::Neck => vec![
            round(MIDDLE, 104.0, 13.0),
            Bone::Edge(vec![(MIDDLE, 88.0), (MIDDLE, 52.0)]),
        ],
        Site::Withers => vec![
            Bone::Edge(vec![(151.0, 122.0), (MIDDLE, 46.0), (169.0, 122.0)]),
            Bone::Edge(vec![(112.0, 128.0), (132.0, 96.0)]),
            Bone::Edge(vec![(208.0, 128.0), (188.0, 96.0)]),
        ],
        Site::BehindShoulder => vec![
            Bone::Edge(vec![(30.0, 88.0), (146.0, 76.0)]),
            round(200.0, 104.0, 9.0),
            round(245.0, 104.0, 9.0),
            round(290.0, 104.0, 9.0),
        ],
        Site::Ribs => (0..6)
            .map(|rib| round(RIB_FIRST + RIB_APART * f64::from(rib), 96.0, 10.0))
            .collect(),
        Site::Loin => vec![
            spine(54.0),
            Bone::Edge(vec![(150.0, 104.0), (76.0, 112.0)]),
            Bone::Edge(vec![(170.0, 104.0), (244.0, 112.0)]),
        ],
        Site::TailHead => vec![
            round(MIDDLE, 66.0, 12.0),
            round(66.0, 94.0, 12.0),
            round(254.0, 94.0, 12.0),
        ],
        Site::BackAndRibs => {
            let mut bones = vec![spine(54.0)];
            for (out, y) in [(60.0, 74.0), (95.0, 90.0), (130.0, 112.0)] {
                bones.push(round(MIDDLE - out, y, 7.0));
                bones.push(round(MIDDLE + out, y, 7.0));
            }
            bones
        }
        Site::Pelvis => vec![
            spine(50.0),
            round(62.0, 86.0, 13.0),
            round(258.0, 86.0, 13.0),
        ],
    }
}

/// Where the first rib lies and how far ribs lie apart in the drawing.
const RIB_FIRST: f64 = 40.0;
const RIB_APART: f64 = 48.0;

/// Sliced across, seen from the front: a tent over the vertebra that fills to a pillar with a crest.
fn neck(part: f64, u: f64) -> Point {
    let half = 30.0 + 46.0 * part;
    let top = 42.0 - 8.0 * part - 14.0 * fat(part);
    let bend = 0.8 + 2.2 * part;
    (MIDDLE + half * u, top + (132.0 - top) * u.abs().powf(bend))
}

/// Sliced across: a blade that becomes a mound.
fn withers(part: f64, u: f64) -> Point {
    let top = 38.0 - 16.0 * fat(part);
    let bend = 0.42 * (6.0_f64).powf(part);
    (MIDDLE + 130.0 * u, top + (124.0 - top) * u.abs().powf(bend))
}

/// Sliced along: the blade at the left, then ribs.
fn shoulder(part: f64, u: f64) -> Point {
    let x = MIDDLE + 148.0 * u;
    let cover = 10.0 * part;
    let blade = 84.0 - 12.0 * (x - 30.0) / 116.0 - cover;
    let side = 88.0 - cover;
    let along = ((x - 146.0) / 34.0).clamp(0.0, 1.0);
    let level = blade.max(60.0 - cover);
    let y = level + (side - level) * along * along * (3.0 - 2.0 * along);
    let hollow = 30.0 * thin(part) * rise(x - 176.0, 17.0);
    let pad = 46.0 * fat(part) * rise(x - 184.0, 44.0);
    (x, y + hollow - pad)
}

/// Sliced along the side: grooves between ribs, then one smooth cover.
fn ribs(part: f64, u: f64) -> Point {
    let x = MIDDLE + 150.0 * u;
    let cover = 4.0 + 44.0 * part.powf(1.8);
    let groove = 26.0 * (1.0 - part / 0.6).max(0.0);
    let between = 0.5 - 0.5 * ((x - RIB_FIRST) / RIB_APART * std::f64::consts::TAU).cos();
    (x, 86.0 - cover + groove * between)
}

/// Sliced across the back: a ridge with sunken sides, level, then a gutter between pads.
fn loin(part: f64, u: f64) -> Point {
    let side = u.abs();
    let back = 46.0 - 26.0 * fat(part) + 58.0 * side.powf(1.8);
    let sunk = 32.0 * thin(part) * rise(side - 0.28, 0.15);
    let pads = 14.0 * fat(part) * rise(side - 0.3, 0.2);
    let gutter = 22.0 * fat(part) * rise(u, 0.09);
    (MIDDLE + 145.0 * u, back + sunk - pads + gutter)
}

/// Sliced across the root of the tail: bone standing clear, then pads on both sides.
fn tail_head(part: f64, u: f64) -> Point {
    let side = u.abs();
    let back = 50.0 - 3.0 * part + 46.0 * side.powf(1.6);
    let hollow = 40.0 * thin(part) * rise(side - 0.32, 0.16);
    let pads = 34.0 * fat(part) * rise(side - 0.32, 0.24);
    (MIDDLE + 145.0 * u, back + hollow - pads)
}

/// Where the first rib of the back lies beside the middle, and how far ribs lie apart, as parts of half the width.
const BACK_RIB: f64 = 0.41;
const BACK_RIBS_APART: f64 = 0.24;

/// Sliced across behind the saddle, from spine to flank: a ridge over ribs that are seen, then one cover with a gutter.
fn back_and_ribs(part: f64, u: f64) -> Point {
    let side = u.abs();
    let back =
        44.0 - 24.0 * fat(part) + 62.0 * side.powf(1.8) + 8.0 * thin(part) * (side / 0.4).min(1.0);
    let sunk = 26.0 * thin(part) * rise(side - 0.2, 0.11);
    let turn = (side - BACK_RIB).max(0.0) / BACK_RIBS_APART * std::f64::consts::TAU;
    let grooves = 12.0 * thin(part) * (0.5 - 0.5 * turn.cos());
    let pads = 16.0 * fat(part) * rise(side - 0.26, 0.2);
    let gutter = 22.0 * fat(part) * rise(u, 0.09);
    (MIDDLE + 145.0 * u, back + sunk + grooves - pads + gutter)
}

/// Sliced across the rump from hip to hip, seen from behind: sunken, flat, round, then two mounds.
fn pelvis(part: f64, u: f64) -> Point {
    let side = u.abs();
    let back = 42.0 - 14.0 * fat(part) + 50.0 * side * side;
    let sunk = 38.0 * thin(part) * rise(side - 0.36, 0.2);
    let hips = 8.0 * thin(part) * rise(side - 0.68, 0.15);
    let pads = 20.0 * fat(part) * rise(side - 0.38, 0.26);
    let gutter = 20.0 * fat(part) * rise(u, 0.1);
    (MIDDLE + 145.0 * u, back + sunk + hips - pads + gutter)
}

/// The top of the neck, sliced across: it rises, thickens, and at last leans over.
fn crest_at(score: f64, u: f64) -> Point {
    let part = score / CREST_TOP;
    let over = (score - CREST_LEANS).max(0.0);
    let top = 60.0 - 44.0 * part + 14.0 * over;
    let half = 52.0 + 10.0 * part;
    let bend = 0.9 + 1.9 * part;
    let lean = 56.0 * over * (1.0 - u * u);
    (
        MIDDLE + half * u + lean,
        top + (134.0 - top) * u.abs().powf(bend),
    )
}
