//! What a sward grows by season, when it is back, and how long it rests.

use super::published::{
    GROWTH_AUTUMN, GROWTH_EARLY_SPRING, GROWTH_PEAK_SPRING, GROWTH_SUMMER, GROWTH_WINTER, HEIGHT,
    REST_AUTUMN, REST_SPRING, REST_SUMMER,
};
use crate::graze::GrazeError;
use crate::limits::Ends;
use crate::units::{Length, LocalDate, SwardDensity, SwardGrowth};
use chrono::Days;

/// A season of growth.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum GrowthSeason {
    /// Growth begins.
    EarlySpring,
    /// The flush.
    PeakSpring,
    /// Summer.
    Summer,
    /// Autumn, with rain.
    Autumn,
    /// Winter.
    Winter,
}

impl GrowthSeason {
    /// All, in the order of the year.
    pub const ALL: [Self; 5] = [
        Self::EarlySpring,
        Self::PeakSpring,
        Self::Summer,
        Self::Autumn,
        Self::Winter,
    ];
}

/// What grows in a day: slow, middle, fast. From memory, for unfertilised horse pasture.
pub fn growth(season: GrowthSeason) -> Ends<SwardGrowth> {
    let [slow, fast] = match season {
        GrowthSeason::EarlySpring => *GROWTH_EARLY_SPRING,
        GrowthSeason::PeakSpring => *GROWTH_PEAK_SPRING,
        GrowthSeason::Summer => *GROWTH_SUMMER,
        GrowthSeason::Autumn => *GROWTH_AUTUMN,
        GrowthSeason::Winter => *GROWTH_WINTER,
    };
    Ends::new(slow, f64::midpoint(slow, fast), fast).map(SwardGrowth::kg_per_ha_day)
}

/// In how many days a sward is back.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RegrowthDays {
    /// At the soonest.
    pub soonest: f64,
    /// Likely.
    pub likely: f64,
    /// At the latest; `None` where it may not grow at all.
    pub latest: Option<f64>,
}

/// In how many days a sward has grown from one height to another: (to − from) × density / growth.
///
/// # Errors
/// A height outside 0 to 200 cm.
pub fn regrowth(
    from: Length,
    to: Length,
    density: SwardDensity,
    season: GrowthSeason,
) -> Result<RegrowthDays, GrazeError> {
    HEIGHT.check(from.to_cm())?;
    HEIGHT.check(to.to_cm())?;
    let wanted = density.over((to - from).max(Length::ZERO));
    let growth = growth(season);
    Ok(RegrowthDays {
        soonest: growth.most.days_for(wanted),
        likely: growth.likely.days_for(wanted),
        latest: (growth.least > SwardGrowth::ZERO).then(|| growth.least.days_for(wanted)),
    })
}

/// How long a grazed part rests.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Rest {
    /// The shortest, in days.
    pub from: u64,
    /// The longest, in days.
    pub to: u64,
}

impl Rest {
    /// The days between which it ends, for a rest that began on a day; `None` past the end of the calendar.
    pub fn ends(self, began: LocalDate) -> Option<(LocalDate, LocalDate)> {
        Some((
            began.checked_add_days(Days::new(self.from))?,
            began.checked_add_days(Days::new(self.to))?,
        ))
    }
}

/// How long a grazed part rests in a season; `None` in winter, when it rests until growth begins. Height decides over
/// days: rest ends at the regrown height.
pub fn rest(season: GrowthSeason) -> Option<Rest> {
    let [from, to] = match season {
        GrowthSeason::EarlySpring | GrowthSeason::PeakSpring => *REST_SPRING,
        GrowthSeason::Summer => *REST_SUMMER,
        GrowthSeason::Autumn => *REST_AUTUMN,
        GrowthSeason::Winter => return None,
    };
    Some(Rest { from, to })
}
