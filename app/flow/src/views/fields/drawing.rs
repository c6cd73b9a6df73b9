//! The strip as a plain scaled rectangle: both fences and blades of grass between them.

use tussock_core::graze::strip::Fences;

/// How wide the drawing is.
const WIDE: f64 = 320.0;
/// What is left free at each side of it, and above and below.
const EDGE: f64 = 8.0;
/// The most that a strip is drawn deep.
const DEEP: f64 = 180.0;
/// The distance of the two strokes of the lead fence.
const PAIR: f64 = 6.0;
/// The distance of blades along and across.
const BLADES: [f64; 2] = [14.0, 18.0];
/// How high a blade stands.
const BLADE: f64 = 8.0;

/// The strip from above, to scale. The lead fence lies at the top, for the animals move towards it.
#[derive(Clone, Debug, PartialEq)]
pub struct StripDrawing {
    /// The width of the drawing.
    pub wide: f64,
    /// Its height.
    pub high: f64,
    /// The strip: left, top, width, depth.
    pub strip: [f64; 4],
    /// The blades of grass in it, as a path.
    pub blades: String,
    /// The lead fence, two strokes, as a path.
    pub lead: String,
    /// Where the back fence lies nearest, as a path; `None` where none stands.
    pub back: Option<String>,
}

impl StripDrawing {
    /// The drawing of fences; `None` where there is nothing to draw.
    pub fn of(fences: &Fences) -> Option<Self> {
        let (lead, onward) = (fences.lead.to_m(), fences.onward.to_m());
        let behind = fences.back.map(|[near, _]| near.to_m());
        let deep = behind.unwrap_or(onward).max(onward);
        if !(lead > 0.0 && onward > 0.0 && deep.is_finite()) {
            return None;
        }
        let scale = ((WIDE - 2.0 * EDGE) / lead).min(DEEP / deep);
        let (width, depth) = (lead * scale, onward * scale);
        let left = (WIDE - width) / 2.0;
        let top = EDGE + PAIR;
        let across = |y: f64| format!("M{:.1} {y:.1}H{:.1}", left - 4.0, left + width + 4.0);
        Some(Self {
            wide: WIDE,
            high: top + deep * scale + EDGE,
            strip: [left, top, width, depth],
            blades: blades(left, top, width, depth),
            lead: format!("{}{}", across(top - PAIR), across(top)),
            back: behind.map(|behind| across(top + behind * scale)),
        })
    }
}

/// Upright blades, as the grass of every picture.
fn blades(left: f64, top: f64, width: f64, depth: f64) -> String {
    let [along, down] = BLADES;
    let mut path = Vec::new();
    let mut y = top + BLADE + 4.0;
    while y < top + depth - 1.0 {
        let mut x = left + along / 2.0;
        while x < left + width - 1.0 {
            path.push(format!("M{x:.1} {y:.1}v-{BLADE}"));
            x += along;
        }
        y += down;
    }
    path.concat()
}

#[cfg(test)]
mod tests {
    use super::*;
    use tussock_core::graze::strip::{back_fence, paces};
    use tussock_core::units::Length;

    fn fences(lead: f64, onward: f64, back: bool) -> Fences {
        let (lead, onward) = (Length::m(lead), Length::m(onward));
        Fences {
            lead,
            lead_paces: paces(lead),
            onward,
            onward_paces: paces(onward),
            back: back.then(|| back_fence(onward)),
        }
    }

    #[test]
    fn it_is_to_scale_and_stays_in_its_frame() {
        for (lead, onward, back) in [(40.0, 8.0, true), (5.0, 60.0, false), (500.0, 0.2, true)] {
            let drawn = StripDrawing::of(&fences(lead, onward, back)).unwrap();
            let [left, top, width, depth] = drawn.strip;
            assert!((width / depth - lead / onward).abs() < 1e-6 * lead / onward);
            assert!(left >= 0.0 && left + width <= drawn.wide);
            assert!(top + depth <= drawn.high);
            assert_eq!(drawn.back.is_some(), back);
        }
        assert_eq!(StripDrawing::of(&fences(40.0, 0.0, true)), None);
    }
}
