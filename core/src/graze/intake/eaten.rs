//! What is eaten in so many hours at grass.

use super::published as p;
use crate::animal::Kind;
use crate::limits::Ends;
use crate::sources::Provenance;
use crate::units::{BodyMass, DryMatter, PartOfBody, Span};

/// How long and how an animal is at grass on a day.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OutFor {
    /// What it is.
    pub kind: Kind,
    /// How long; less than nothing counts as nothing, more than a day as a day.
    pub time: Span,
    /// Weeks of such turnout behind it; `None` when nobody knows.
    pub weeks: Option<f64>,
    /// Whether it wears a muzzle.
    pub muzzle: bool,
    /// Whether there is leaf to eat: on a bare paddock, or one that nobody looked at, the least is nothing.
    pub leaf: bool,
}

/// What it eats of grass, as a part of its weight, by the model I (1 - e^(-h / 10.7)).
///
/// The ends do not lean on what is likely: the least is that of eight hours in February (Dowler), under the muzzle that
/// held back most; the most is 4.5 % a day, under the muzzle that held back least, whatever the animal is used to. What is
/// likely rises from 2.0 % to 3.0 % (horses) or 3.8 % (all others; none is published for donkeys) over six weeks.
pub fn part_eaten(out: &OutFor) -> Ends<PartOfBody> {
    let of = |whole: PartOfBody| whole * reached(out.time);
    let weeks = out.weeks.unwrap_or(0.0).clamp(0.0, *p::ADAPTED_WEEKS);
    let used_to_it = if out.kind == Kind::Horse {
        *p::ADAPTED_HORSE
    } else {
        *p::ADAPTED_PONY
    };
    let likely = *p::UNADAPTED + (used_to_it - *p::UNADAPTED) * (weeks / *p::ADAPTED_WEEKS);
    let left = if out.muzzle {
        Ends::new(
            1.0 - *p::MUZZLE_MOST,
            1.0 - *p::MUZZLE_LIKELY,
            1.0 - *p::MUZZLE_LEAST,
        )
    } else {
        Ends::exactly(1.0)
    };
    let least = if out.leaf {
        of(*p::LOWER)
    } else {
        PartOfBody::ZERO
    };
    Ends::new(least, of(likely), of(*p::UPPER)).with(left, |eaten, left| eaten * left)
}

/// The same in dry matter: the least of the lightest it may be, the most of the heaviest.
pub fn eaten(out: &OutFor, body: Ends<BodyMass>) -> Ends<DryMatter> {
    part_eaten(out).with(body, PartOfBody::of)
}

/// What [`eaten`] comes from.
pub fn eaten_from(muzzle: bool) -> Provenance {
    let from = Provenance::new()
        .constant(&p::FIRST_HOURS)
        .constant(&p::LOWER)
        .constant(&p::UNADAPTED)
        .constant(&p::ADAPTED_PONY)
        .constant(&p::UPPER);
    if muzzle {
        from.constant(&p::MUZZLE_MOST)
            .constant(&p::MUZZLE_LIKELY)
            .constant(&p::MUZZLE_LEAST)
    } else {
        from
    }
}

/// The part of what is eaten without end that is eaten in a time.
pub(super) fn reached(time: Span) -> f64 {
    let hours = time.to_hours().clamp(p::HOURS.min, p::HOURS.max);
    1.0 - (-hours / *p::FIRST_HOURS).exp()
}

/// The time in which that part is eaten; `None` when no time is long enough.
pub(super) fn time_to(part: f64) -> Option<Span> {
    let left = 1.0 - part;
    if left <= 0.0 {
        return None;
    }
    let hours = (-*p::FIRST_HOURS * left.ln()).max(0.0);
    let minutes = (hours * crate::units::published::MINUTES_PER_HOUR as f64).floor();
    // numeric: a day has 1,440 minutes
    (minutes <= 1_440.0).then(|| {
        #[allow(
            clippy::cast_possible_truncation,
            reason = "bounded by a day just above"
        )]
        Span::minutes(minutes as i64)
    })
}
