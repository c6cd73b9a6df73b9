//! Today's strip of a paddock, from what is typed, what stands there and what the plans say.

use super::grazers::{Eats, Out, grazers};
use super::paddock::{OnField, field, residual};
use super::plants_of;
use crate::shelf::Shelf;
use crate::views::paddock::season;
use tussock_core::animal::PaddockId;
use tussock_core::graze::GrazeError;
use tussock_core::graze::season::Flush;
use tussock_core::graze::strip::{Strip, StripAgainst, StripFor, StripWhere, may_strip, strip};
use tussock_core::units::{DryMatter, Instant, Length, Zone};

/// Why there is no strip.
#[derive(Clone, Debug, PartialEq)]
pub enum NoStrip {
    /// Nobody goes out by a decision: say first who does, and how long.
    NobodyOut,
    /// Nobody of those who go out was chosen.
    NobodyChosen,
    /// Nobody looked how high it stands.
    NobodyLooked,
    /// The width cannot be read yet.
    NoWidth,
    /// The reckoning refused it.
    Refused(GrazeError),
}

/// What stands against a strip, with whether it stops it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Against {
    /// What.
    pub what: StripAgainst,
    /// No strip at all, and the vet first.
    pub stops: bool,
}

/// A strip with what it means beside the plans.
#[derive(Clone, Debug, PartialEq)]
pub struct StripTold {
    /// The strip.
    pub strip: Strip,
    /// The most their plans carry in a day, which it holds at the most.
    pub asked: DryMatter,
    /// What they may find less in a day than the hay that hangs less for it: then the hay of a day without grass hangs.
    pub hay_short: Option<DryMatter>,
    /// It lasts more than a day, and may be eaten on the first.
    pub several_days: bool,
    /// It is longer than the paddock: the area is more than all of it.
    pub more_than_all: bool,
}

/// The strip of a paddock on a day.
#[derive(Clone, Debug, PartialEq)]
pub struct StripSeen {
    /// The paddock.
    pub field: OnField,
    /// Those that graze there, else all that go out in the yard. Who has no grass in its plan cannot be chosen.
    pub out: Vec<Out>,
    /// The strip.
    pub strip: Result<StripTold, NoStrip>,
    /// What stands against it.
    pub against: Vec<Against>,
    /// Nobody knows whether it is the flush: neither place nor note says it.
    pub flush_not_known: bool,
}

/// What is asked of a strip; `width` is `None` while it cannot be read.
#[derive(Clone, Debug, PartialEq)]
pub struct Asked {
    /// How many days, 1 to 7.
    pub days: u32,
    /// How wide.
    pub width: Option<Length>,
    /// Whether a back fence stands.
    pub back_fence: bool,
    /// For whom, by the id of the animal or group; `None` for all that graze there.
    pub whom: Option<Vec<String>>,
}

/// Today's strip of a paddock; `None` when the paddock is not there.
pub fn strip_of(
    shelf: &Shelf,
    id: &PaddockId,
    asked: &Asked,
    now: Instant,
    zone: &impl Zone,
) -> Option<StripSeen> {
    let field = field(shelf, id, now, zone)?;
    let out = if field.out.is_empty() {
        grazers(shelf, now, zone)
    } else {
        field.out.clone()
    };
    let chosen: Vec<&Out> = out
        .iter()
        .filter(|out| out.most().is_some())
        .filter(|out| {
            asked
                .whom
                .as_ref()
                .is_none_or(|whom| whom.contains(&out.id))
        })
        .collect();
    let flush = season(shelf, field.day).flush;
    let against = against(&field, flush.is_on(), &chosen);
    let strip = told(&field, &out, &chosen, asked);
    Some(StripSeen {
        flush_not_known: matches!(flush, Flush::NotKnown),
        against,
        strip,
        out,
        field,
    })
}

pub(super) fn told(
    field: &OnField,
    out: &[Out],
    chosen: &[&Out],
    asked: &Asked,
) -> Result<StripTold, NoStrip> {
    if out.is_empty() {
        return Err(NoStrip::NobodyOut);
    }
    let most: DryMatter = chosen.iter().filter_map(|out| out.most()).sum();
    if most <= DryMatter::ZERO {
        return Err(NoStrip::NobodyChosen);
    }
    let standing = match &field.standing {
        None => return Err(NoStrip::NobodyLooked),
        Some(Err(error)) => return Err(NoStrip::Refused(*error)),
        Some(Ok(standing)) => standing,
    };
    let width = asked.width.ok_or(NoStrip::NoWidth)?;
    let strip = strip(&StripFor {
        asked: most,
        days: asked.days,
        available: standing.available,
        width,
        back_fence: asked.back_fence,
    })
    .map_err(NoStrip::Refused)?;
    let less: DryMatter = chosen
        .iter()
        .filter_map(|out| match &out.eats {
            Eats::Grass { hay_less, .. } => Some(*hay_less),
            Eats::NoRoom | Eats::NoGrass | Eats::NoPlan => None,
        })
        .sum();
    Ok(StripTold {
        hay_short: (strip.finds.least < less).then(|| less - strip.finds.least),
        several_days: 1 < asked.days,
        more_than_all: field.area().is_some_and(|area| area < strip.area),
        asked: most,
        strip,
    })
}

fn against(field: &OnField, flush: bool, chosen: &[&Out]) -> Vec<Against> {
    let plants = plants_of(&field.body);
    let height = match &field.standing {
        Some(Ok(standing)) => standing.height,
        _ => None,
    };
    let found = may_strip(&StripWhere {
        flush,
        recent_case: chosen.iter().any(|out| out.recent_case),
        seeding: field.look.seeding_on(field.day),
        kind: field.kind,
        plants: &plants,
        height,
    });
    let stops = |what: &StripAgainst| matches!(what, StripAgainst::RecentCase);
    let mut against: Vec<Against> = found
        .into_iter()
        .map(|what| Against {
            stops: stops(&what),
            what,
        })
        .collect();
    against.sort_by_key(|against| !against.stops);
    against
}

/// The height that is left standing on the paddock of a strip.
pub fn left_standing(field: &OnField) -> Length {
    residual(&field.body)
}
