//! A paddock today: what stands there, how long it lasts, when it is back, what harms.

use super::grazers::{Eats, Out, grazers};
use super::seen::{Look, look};
use super::{area_of, one, plants_of, regions};
use crate::shelf::Shelf;
use tussock_core::animal::PaddockId;
use tussock_core::graze::GrazeError;
use tussock_core::graze::plants::{Hazard, Region, hazards_in, hazards_of, known_in};
use tussock_core::graze::sward::published::{REGROWN, RESIDUAL};
use tussock_core::graze::sward::{
    GrowthSeason, RegrowthDays, Rest, Standing, SwardFinding, SwardKind, days_of_grass, density,
    regrowth, rest, standing,
};
use tussock_core::limits::Ends;
use tussock_core::log::bodies::PaddockV2;
use tussock_core::units::{Area, DryMatter, Instant, Length, LocalDate, Zone};

/// When a sward is back, in a season.
#[derive(Clone, Debug, PartialEq)]
pub struct Regrows {
    /// The season.
    pub season: GrowthSeason,
    /// In how many days; `None` where it is regrown.
    pub days: Option<RegrowthDays>,
    /// How long it rests; `None` in winter, when it rests until growth begins.
    pub rest: Option<Rest>,
}

/// A hazard of a paddock.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Danger {
    /// What it is.
    pub hazard: &'static Hazard,
    /// Somebody saw the plant here; else it is only what such a sward is known for.
    pub seen: bool,
}

/// A paddock on a day.
#[derive(Clone, Debug, PartialEq)]
pub struct OnField {
    /// Which.
    pub id: PaddockId,
    /// What is stored of it.
    pub body: PaddockV2,
    /// The local day.
    pub day: LocalDate,
    /// What was seen.
    pub look: Look,
    /// What kind of sward it is reckoned as.
    pub kind: SwardKind,
    /// Nobody said the kind, and the default stands in.
    pub kind_stands_in: bool,
    /// What stands there; `None` where nobody looked.
    pub standing: Option<Result<Standing, GrazeError>>,
    /// The same on the whole of it; `None` where nobody said how large it is.
    pub whole: Option<Ends<DryMatter>>,
    /// Who grazes there.
    pub out: Vec<Out>,
    /// Nobody grazes there by name, and these are all that go out in the yard.
    pub out_of_yard: bool,
    /// For how many days it lasts them; `None` where something of it is not known.
    pub days: Option<Ends<f64>>,
    /// When it is back, by season.
    pub regrows: Vec<Regrows>,
    /// The regions that were ticked.
    pub regions: Vec<Region>,
    /// What harms.
    pub dangers: Vec<Danger>,
}

impl OnField {
    /// Its area.
    pub fn area(&self) -> Option<Area> {
        area_of(&self.body)
    }

    /// Whether its height was seen on this day.
    pub fn looked_today(&self) -> bool {
        self.look
            .judged
            .as_ref()
            .is_some_and(|looked| looked.on == self.day)
    }

    /// The findings of what stands there.
    pub fn findings(&self) -> &[SwardFinding] {
        match &self.standing {
            Some(Ok(standing)) => &standing.findings,
            Some(Err(_)) | None => &[],
        }
    }

    /// Whether it is bare, or may be.
    pub fn bare(&self) -> bool {
        let mut found = self.findings().iter();
        found.any(|finding| matches!(finding, SwardFinding::Bare { .. }))
    }
}

/// The height that is left standing on a paddock.
pub(super) fn residual(body: &PaddockV2) -> Length {
    body.strip
        .as_ref()
        .map_or(*RESIDUAL, |strip| strip.residual_mm.length())
}

/// A paddock on a day; `None` when it is not there.
pub fn field(shelf: &Shelf, id: &PaddockId, now: Instant, zone: &impl Zone) -> Option<OnField> {
    let body = one(shelf, id)?;
    let look = look(shelf, id, zone);
    let kind = body.kind.unwrap_or(SwardKind::MixedWithRyegrass);
    let standing = look
        .judged
        .as_ref()
        .map(|looked| standing(looked.by.measured(), kind, None, residual(&body)));
    let available = match &standing {
        Some(Ok(standing)) => Some(standing.available),
        _ => None,
    };
    let area = area_of(&body);
    let (out, out_of_yard) = on_it(grazers(shelf, now, zone), id);
    // What one of them eats that no plan counts is not nothing: then the days are not known.
    let asked: Option<DryMatter> = out
        .iter()
        .map(|out| match &out.eats {
            Eats::Grass { grass, .. } => Some(grass.likely),
            Eats::NoRoom | Eats::NoGrass => Some(DryMatter::ZERO),
            Eats::NoPlan => None,
        })
        .sum();
    let regions = regions(shelf);
    Some(OnField {
        id: id.clone(),
        day: zone.to_local(now).date,
        kind,
        kind_stands_in: body.kind.is_none(),
        whole: available
            .zip(area)
            .map(|(available, area)| available.map(|mass| mass.on(area))),
        days: available
            .zip(area)
            .zip(asked)
            .and_then(|((available, area), asked)| days_of_grass(available, area, asked).ok()),
        regrows: regrows(standing.as_ref(), kind),
        dangers: dangers(&body, kind, &regions),
        standing,
        out,
        out_of_yard,
        regions,
        look,
        body,
    })
}

/// Those that graze on a paddock, else all that go out; and whether it is all.
pub(super) fn on_it(out: Vec<Out>, id: &PaddockId) -> (Vec<Out>, bool) {
    let here: Vec<Out> = out
        .iter()
        .filter(|out| out.paddock.as_ref() == Some(id))
        .cloned()
        .collect();
    if here.is_empty() {
        // Whoever is said to be on another paddock does not eat here.
        let anywhere: Vec<Out> = out
            .into_iter()
            .filter(|out| out.paddock.is_none())
            .collect();
        let any = !anywhere.is_empty();
        (anywhere, any)
    } else {
        (here, false)
    }
}

fn regrows(standing: Option<&Result<Standing, GrazeError>>, kind: SwardKind) -> Vec<Regrows> {
    let height = match standing {
        Some(Ok(standing)) => standing.height,
        _ => None,
    };
    let Some(from) = height.map(|height| height.likely) else {
        return Vec::new();
    };
    GrowthSeason::ALL
        .into_iter()
        .map(|season| Regrows {
            season,
            days: (from < *REGROWN)
                .then(|| regrowth(from, *REGROWN, density(kind, None).likely, season).ok())
                .flatten(),
            rest: rest(season),
        })
        .collect()
}

/// What was seen first, then what such a sward is known for where the person is.
fn dangers(body: &PaddockV2, kind: SwardKind, regions: &[Region]) -> Vec<Danger> {
    let plants = plants_of(body);
    let seen = hazards_of(&plants).map(|hazard| Danger { hazard, seen: true });
    let known = known_in(kind);
    let may = hazards_in(regions)
        .filter(|hazard| known.contains(&hazard.plant) && !plants.contains(&hazard.plant))
        .map(|hazard| Danger {
            hazard,
            seen: false,
        });
    seen.chain(may).collect()
}
