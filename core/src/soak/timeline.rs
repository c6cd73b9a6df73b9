//! The deadlines of one soak, from stored instants. The clock of throwing away starts when the hay is first wet.

use super::air::Air;
use super::error::SoakError;
use super::published as p;
use super::recipe::{Recipe, is_long};
use crate::sources::Provenance;
use crate::units::{Instant, Span};

/// How a soak ended.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Ended {
    /// Eaten.
    Eaten,
    /// Thrown away.
    ThrownAway,
    /// Stopped, for another reason.
    Stopped,
}

/// What was stored of one soak. Every instant may be corrected later.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct SoakTimes {
    /// When the hay was first wet.
    pub wetted: Instant,
    /// When it was lifted out.
    pub lifted: Option<Instant>,
    /// When it was hung or given.
    pub fed: Option<Instant>,
    /// When and how it ended.
    pub ended: Option<(Instant, Ended)>,
}

impl SoakTimes {
    /// Hay that went in and of which nothing more is known.
    pub const fn started(wetted: Instant) -> Self {
        Self {
            wetted,
            lifted: None,
            fed: None,
            ended: None,
        }
    }

    /// Whether the steps stand in their order.
    pub fn check(&self) -> Result<(), SoakError> {
        let steps = [
            Some(self.wetted),
            self.lifted,
            self.fed,
            self.ended.map(|(at, _)| at),
        ];
        let mut before = self.wetted;
        for at in steps.into_iter().flatten() {
            if at < before {
                return Err(SoakError::OutOfOrder {
                    earlier: before,
                    later: at,
                });
            }
            before = at;
        }
        Ok(())
    }

    /// How long it lay in the water: until it was lifted, or as the recipe plans.
    pub fn soaked_for(&self, recipe: Recipe) -> Span {
        self.lifted
            .map_or(recipe.soak(), |lifted| lifted.since(self.wetted))
    }
}

/// Why the throw-away time is earlier than twelve hours after wetting.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Shortened {
    /// The air is over 20 degrees.
    Over20,
    /// The air is over 25 degrees.
    Over25,
    /// It lay in the water for more than two hours.
    LongSoak,
}

/// The deadlines of one soak, as absolute instants.
#[derive(Clone, Debug, PartialEq)]
pub struct Timeline {
    /// When it was first wet.
    pub wetted: Instant,
    /// When it is to be lifted out.
    pub lift_out: Instant,
    /// From when it is drained enough, ten minutes after lifting.
    pub drained_from: Instant,
    /// By when it is drained, a quarter of an hour after lifting: feed it now.
    pub drained: Instant,
    /// When what is left is thrown away. A net must be *eaten* by then.
    pub throw_away: Instant,
    /// Why that is earlier than twelve hours after wetting, or six after lifting where the soak is long.
    pub shortened: Option<Shortened>,
    /// The rules behind it.
    pub provenance: Provenance,
}

impl Timeline {
    /// The latest instant to hang a net that takes so long to eat.
    pub fn hang_by(&self, eating: Span) -> Instant {
        self.throw_away - eating
    }
}

/// The deadlines of a soak in this air; `air` is the warmest since the hay was first wet, see [`Air::warmest`].
///
/// Soaks planned for up to two hours: thrown away 12 h after wetting, 6 h over 20 degrees, 4 h over 25, however late it
/// was lifted, and not later than 6 h after lifting when it lay in the water for more than two hours. Soaks planned for
/// longer: 6 h after lifting out or after the time planned for it, whichever is earlier; and where the air is 16 degrees
/// or more, which such a soak does not allow, not later than a short one.
pub fn timeline(recipe: Recipe, times: &SoakTimes, air: Air) -> Timeline {
    let lift_out = times.wetted + recipe.soak();
    let lifted = times.lifted.unwrap_or(lift_out);
    let keeps = air.keeps();
    let by_air = times.wetted + **keeps;
    let by_lift = lifted.min(lift_out) + *p::KEEPS_LONG;
    let late_lift = times
        .lifted
        .filter(|lifted| is_long(lifted.since(times.wetted)))
        .map(|lifted| lifted + *p::KEEPS_LONG);
    let heat = match air {
        Air::HardFrost | Air::Under16 | Air::Mild => None,
        Air::Over20 => Some(Shortened::Over20),
        Air::Over25 => Some(Shortened::Over25),
    };
    let long = Some(Shortened::LongSoak);
    let (throw_away, shortened) = match (recipe.is_long(), late_lift) {
        (true, _) if air.allows_long_soak() || by_lift < by_air => (by_lift, long),
        (false, Some(late)) if late < by_air => (late, long),
        _ => (by_air, heat),
    };
    Timeline {
        wetted: times.wetted,
        lift_out,
        drained_from: lifted + *p::DRAIN_FROM,
        drained: lifted + *p::DRAIN_TO,
        throw_away,
        shortened,
        provenance: Provenance::new()
            .constant(if shortened == long {
                &p::KEEPS_LONG
            } else {
                keeps
            })
            .constant(&p::DRAIN_FROM)
            .constant(&p::DRAIN_TO),
    }
}
