//! Where things hang on the cord of a nutrient, in percent of its width.
//!
//! The knots are set level: the need is always at 36, the ceiling always at 84, so that trouble lines up down the page.
//! Lengths in different rows do not compare.

/// Where the knot of the need lies.
pub const NEED: f64 = 36.0;
/// Where the knots of the ceiling lie, and the frayed end of a cord without one.
pub const CEILING: f64 = 84.0;
/// The right end.
pub const END: f64 = 100.0;
/// So many needs over the need lies the frayed end of a cord without a ceiling.
const NEEDS_TO_THE_END: f64 = 2.0;

/// What is fixed on a cord, in the nutrient's own unit, above nothing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Knots {
    /// A need and a ceiling above it.
    Both {
        /// The need.
        need: f64,
        /// The ceiling.
        ceiling: f64,
    },
    /// A need; no ceiling is published.
    Need(
        /// The need.
        f64,
    ),
    /// A ceiling without a need.
    Ceiling(
        /// The ceiling.
        f64,
    ),
}

impl Knots {
    /// The knots of a cord. `None` where there is nothing to tie, and where the ceiling is not above the need: then words
    /// stand there and no cord.
    pub fn of(need: Option<f64>, ceiling: Option<f64>) -> Option<Self> {
        let sound = |value: &f64| value.is_finite() && *value > 0.0;
        match (need.filter(sound), ceiling) {
            (Some(need), Some(ceiling)) => {
                (ceiling.is_finite() && need < ceiling).then_some(Self::Both { need, ceiling })
            }
            (Some(need), None) => Some(Self::Need(need)),
            (None, ceiling) => ceiling.filter(sound).map(Self::Ceiling),
        }
    }

    /// Where a supply hangs, 0 to 100; what is under nothing or no number hangs at nothing.
    pub fn position(self, supply: f64) -> f64 {
        if supply.is_nan() {
            return 0.0;
        }
        let at = match self {
            Self::Both { need, .. } | Self::Need(need) if supply < need => NEED * supply / need,
            Self::Both { ceiling, .. } | Self::Ceiling(ceiling) if ceiling < supply => {
                CEILING + (END - CEILING) * ((supply - ceiling) / ceiling).min(1.0)
            }
            Self::Both { need, ceiling } => {
                NEED + (CEILING - NEED) * (supply - need) / (ceiling - need)
            }
            Self::Need(need) => {
                NEED + (CEILING - NEED) * ((supply - need) / (NEEDS_TO_THE_END * need)).min(1.0)
            }
            Self::Ceiling(ceiling) => CEILING * supply / ceiling,
        };
        at.clamp(0.0, END)
    }

    /// Whether there is a knot of the need.
    pub const fn has_need(self) -> bool {
        matches!(self, Self::Both { .. } | Self::Need(_))
    }

    /// Whether there is a knot of the ceiling; without it the end is frayed.
    pub const fn has_ceiling(self) -> bool {
        matches!(self, Self::Both { .. } | Self::Ceiling(_))
    }
}

/// The cord of a row.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cord {
    /// Whether the knot of the need is tied, at [`NEED`].
    pub need: bool,
    /// Whether the knots of the ceiling are tied, at [`CEILING`]; without them the end there is frayed.
    pub ceiling: bool,
    /// Where the tag hangs; `None` when nothing is known of the supply.
    pub at: Option<f64>,
    /// The least and the most that it may be, where those are known.
    pub band: Option<[f64; 2]>,
    /// Where it hung before, drawn as an outline.
    pub was: Option<f64>,
    /// Whether it is dotted behind the tag: something in the ration is not known in it.
    pub dotted: bool,
}

impl Cord {
    /// A cord between knots.
    pub fn between(knots: Knots, supply: Option<f64>, dotted: bool) -> Self {
        Self {
            need: knots.has_need(),
            ceiling: knots.has_ceiling(),
            at: supply
                .filter(|supply| supply.is_finite())
                .map(|supply| knots.position(supply)),
            band: None,
            was: None,
            dotted,
        }
    }

    /// Where the cord ends.
    pub const fn end(&self) -> f64 {
        if self.ceiling { END } else { CEILING }
    }
}
