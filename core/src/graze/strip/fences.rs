//! Where the fences of a strip stand, in metres and in paces.

use super::published::{BACK_FENCE, LEAD_DAYS, LEAD_STANDS, PACE};
use crate::limits::Ends;
use crate::units::{Area, Length};

/// The days that a lead fence stands before it is moved for the first time (Longland 2021).
pub const LEAD_STANDS_DAYS: u32 = LEAD_STANDS.value;

/// The fences of a strip.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fences {
    /// How long the lead fence is: the width of the strip.
    pub lead: Length,
    /// The same in paces: with a long pace, an ordinary one, a short one.
    pub lead_paces: Ends<f64>,
    /// How far on the lead fence is set.
    pub onward: Length,
    /// The same in paces.
    pub onward_paces: Ends<f64>,
    /// How far behind the lead fence the back fence stands, near and far; it is never set into the strip of today.
    pub back: Option<[Length; 2]>,
}

/// How many paces a length is: with a long pace, an ordinary one and a short one.
pub fn paces(length: Length) -> Ends<f64> {
    let [short, ordinary, long] = *PACE;
    Ends::new(long, ordinary, short).map(|pace| length.to_m() / pace)
}

/// How long so many paces of an ordinary person are.
pub fn of_paces(paces: f64) -> Length {
    let [_, ordinary, _] = *PACE;
    Length::m(paces * ordinary)
}

/// How far a lead fence is moved in a day after the first two: 1/26 of the length that remains then, the same each day.
pub fn lead_move(remaining: Length) -> Length {
    remaining / *LEAD_DAYS
}

/// How far behind the lead fence a back fence stands: 7 to 12 m, and never nearer than the strip is deep.
pub fn back_fence(onward: Length) -> [Length; 2] {
    BACK_FENCE.map(|metres| Length::m(metres).max(onward))
}

pub(super) fn fences(area: Area, width: Length, back: bool) -> Fences {
    let onward = area.along(width);
    Fences {
        lead: width,
        lead_paces: paces(width),
        onward,
        onward_paces: paces(onward),
        back: back.then(|| back_fence(onward)),
    }
}
