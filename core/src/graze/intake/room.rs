//! How long an animal may be at grass, and how much less hay that asks for: with both ends (practice rule 5).

use super::eaten::{OutFor, eaten, eaten_from, reached, time_to};
use super::published as p;
use crate::limits::Ends;
use crate::sources::Provenance;
use crate::units::{BodyMass, DryMatter, EnergyDensity, ShareOfDm, Span};

/// The hay of a day beside the grass.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HayBeside {
    /// Dry matter of the day without grass, hay and bought feed, with its ends: how dry the hay is and what soaking takes.
    pub dry: Ends<DryMatter>,
    /// The forage of it, likely: what can hang less.
    pub forage: DryMatter,
    /// The energy of that forage, with the end that gives least.
    pub energy: EnergyDensity,
}

/// A limit on the sugar of the whole day, and what is believed of the hay's.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SugarBeside {
    /// The limit of the whole day's dry matter.
    pub limit: ShareOfDm,
    /// What nine of ten such hays lie under; `None` when nobody knows the hay's sugar.
    pub hay: Option<ShareOfDm>,
}

/// What bounds the hours at grass.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RoomFor {
    /// How it would be at grass; its time is what is asked for.
    pub out: OutFor,
    /// Its weight.
    pub weight: Ends<BodyMass>,
    /// Its hay.
    pub hay: HayBeside,
    /// Whether the dry matter of its plan is a limit. One that may eat more is bounded by none, and keeps all its hay.
    pub measured: bool,
    /// The sugar limit of its day; `None` for an animal that has none.
    pub sugar: Option<SugarBeside>,
    /// Whether it is at risk: insulin-dysregulated, ever laminitic, or not known.
    pub at_risk: bool,
}

/// Why the time is shorter than what was asked for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Shortened {
    /// The most it may eat there would take the day too far over its dry matter.
    DryMatter,
    /// The most it may eat there would take the day's sugar over the limit.
    Sugar,
    /// The hay alone leaves no room for the sugar of grass.
    HayLeavesNoRoom,
    /// Longer than an animal at risk stays out.
    AtRisk,
    /// Longer than a muzzle stays on.
    Muzzle,
}

/// The time at grass that a plan can carry, and what it changes.
#[derive(Clone, Debug, PartialEq)]
pub struct GrassRoom {
    /// What was asked for.
    pub asked: Span,
    /// What the plan can carry: at most what was asked for; nothing when there is no room.
    pub time: Span,
    /// Why it is shorter.
    pub shortened: Vec<Shortened>,
    /// Dry matter of grass in that time.
    pub grass: Ends<DryMatter>,
    /// The hay that may hang less on such a day: the least that it eats of grass, and no more than half of its forage.
    pub hay_less: DryMatter,
    /// Where it comes from.
    pub from: Provenance,
}

/// How long it may be at grass of what is asked.
///
/// The hay goes down by the least that it may eat there. The time is so short that the most it may eat there beside that
/// hay stays within one step of the rules over its plan, and, where sugar is limited, within that limit. A muzzle counts
/// with what it holds back least, so that no time rests on it.
pub fn room(of: &RoomFor) -> GrassRoom {
    let asked = of.out.time;
    let mut shortened = Vec::new();
    let mut time = asked;
    let mut bound = |most: Option<Span>, why: Shortened| {
        if let Some(most) = most.filter(|most| *most < time) {
            time = most;
            shortened.clear();
            shortened.push(why);
        }
    };
    if of.at_risk {
        bound(Some(*p::AT_RISK_LONGEST), Shortened::AtRisk);
    }
    if of.out.muzzle {
        bound(Some(*p::MUZZLE_LONGEST), Shortened::Muzzle);
    }
    if of.measured {
        bound(by_dry_matter(of), Shortened::DryMatter);
    }
    if let Some(sugar) = &of.sugar {
        match sugar.hay.filter(|hay| *hay < sugar.limit) {
            None => bound(Some(Span::ZERO), Shortened::HayLeavesNoRoom),
            Some(hay) => bound(by_sugar(of, sugar.limit, hay), Shortened::Sugar),
        }
    }
    let time = in_steps(time);
    let grass = eaten(&OutFor { time, ..of.out }, of.weight);
    GrassRoom {
        asked,
        time,
        shortened,
        hay_less: if of.measured {
            hay_less(grass.least, &of.hay)
        } else {
            DryMatter::ZERO
        },
        grass,
        from: eaten_from(of.out.muzzle)
            .constant(&p::OVER)
            .constant(&p::ENERGY_LEAST)
            .constant(&p::SUGAR_MOST)
            .constant(&p::AT_RISK_LONGEST),
    }
}

/// What may hang less: the hay that the least of the grass takes the place of, in dry matter and in energy, and no more
/// than half of the forage, so that a day without grass is never far from one with it.
pub fn hay_less(least: DryMatter, hay: &HayBeside) -> DryMatter {
    (least * takes_place(hay)).min(hay.forage / 2.0)
}

/// The hay that a time really spent at grass takes the place of: by the least that the lightest it may be eats there.
/// Nothing where nobody knows of leaf to eat.
pub fn hay_given_way(out: &OutFor, weight: Ends<BodyMass>, hay: &HayBeside) -> DryMatter {
    hay_less(eaten(out, weight).least, hay)
}

/// The dry matter of hay that a kilogram of dry grass takes the place of: where the hay holds more energy, less.
fn takes_place(hay: &HayBeside) -> f64 {
    let of_grass = *p::ENERGY_LEAST;
    if of_grass < hay.energy {
        of_grass / hay.energy
    } else {
        1.0
    }
}

/// Whole steps of time, and nothing under the shortest.
fn in_steps(time: Span) -> Span {
    let step = p::STEP.to_ms();
    let whole = Span::ms(time.to_ms().div_euclid(step) * step);
    if whole < *p::SHORTEST {
        Span::ZERO
    } else {
        whole
    }
}

/// What is eaten in a day without end, at the ends: whole grazing, for the shape of the curve is the same at all hours.
fn without_end(of: &RoomFor) -> Ends<DryMatter> {
    let day = Span::hours(crate::units::published::HOURS_PER_DAY);
    let whole = eaten(
        &OutFor {
            time: day,
            ..of.out
        },
        of.weight,
    );
    whole.map(|dry| dry / reached(day))
}

/// The longest time in which the most of grass, less the hay it takes the place of, stays within what is let over.
fn by_dry_matter(of: &RoomFor) -> Option<Span> {
    let over = p::OVER.of(of.weight.least) - (of.hay.dry.most - of.hay.dry.likely);
    let grass = without_end(of);
    let gives_way = grass.least * takes_place(&of.hay);
    let a_part = grass.most - gives_way;
    let free = of.hay.forage / 2.0;
    if over <= DryMatter::ZERO {
        return Some(Span::ZERO);
    }
    let part = over / a_part;
    // Once the hay cannot go down any more, every bit of grass comes on top.
    if free < gives_way * part {
        time_to((over + free) / grass.most)
    } else {
        time_to(part)
    }
}

/// The longest time in which grass at the end that is sweetest, beside hay at the end that is sweetest, keeps the limit.
fn by_sugar(of: &RoomFor, limit: ShareOfDm, hay: ShareOfDm) -> Option<Span> {
    // (hay (D - r) + s g) / (D - r + g) <= L, with the least dry matter of hay beside the most of grass. Less taken off
    // the hay than its share only brings the day nearer to the hay.
    let grass = without_end(of);
    let dear = *p::SUGAR_MOST - limit;
    if dear <= ShareOfDm::ZERO {
        return None;
    }
    let spare = (limit - hay).to_fraction();
    let gives_way = grass.least * takes_place(&of.hay);
    let per_part = grass.most.to_kg() * dear.to_fraction() + gives_way.to_kg() * spare;
    time_to(of.hay.dry.least.to_kg() * spare / per_part)
}
