//! What stands above the residual, with both ends, and how many days it lasts.

use super::published::{
    AREA, CLICKS, DENSITY, DENSITY_OTHER, GRAZED, MASS_OUT_BY, MEAN_OUT_BY, PLATE, RESIDUAL_CHOSEN,
    STAND_EXCELLENT, STAND_FAIR, STAND_GOOD,
};
use super::{Leaf, Readings, SwardFinding, look, readings};
use crate::graze::GrazeError;
use crate::limits::Ends;
use crate::sources::Provenance;
use crate::units::{Area, DryMatter, Length, SwardDensity, SwardMass};

/// What kind of sward it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum SwardKind {
    /// Mixed, with ryegrass: what is taken where nobody says.
    MixedWithRyegrass,
    /// Mostly ryegrass.
    Ryegrass,
    /// Old meadow of many kinds.
    Meadow,
    /// Mostly fescue.
    Fescue,
    /// Warm-season grasses.
    WarmSeason,
    /// Much clover.
    CloverRich,
}

impl SwardKind {
    /// All, the default first.
    pub const ALL: [Self; 6] = [
        Self::MixedWithRyegrass,
        Self::Ryegrass,
        Self::Meadow,
        Self::Fescue,
        Self::WarmSeason,
        Self::CloverRich,
    ];
}

/// How densely it stands, as somebody who walked it says.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Stand {
    /// Thin, with soil to be seen.
    Fair,
    /// Ordinary.
    Good,
    /// Dense, no soil to be seen.
    Excellent,
}

/// What was looked at.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Measured<'a> {
    /// By the boot.
    Boot(Leaf),
    /// Heights across the paddock.
    Heights(&'a [Length]),
    /// A rising plate: the mean of its clicks of half a centimetre.
    Plate {
        /// The mean, 0 to 60.
        clicks: f64,
    },
}

/// What stands on a paddock.
#[derive(Clone, Debug, PartialEq)]
pub struct Standing {
    /// Its height; `None` by the plate, which presses it.
    pub height: Option<Ends<Length>>,
    /// The heights summed up, where they were read.
    pub readings: Option<Readings>,
    /// What stands above the residual.
    pub available: Ends<SwardMass>,
    /// What was left standing in the reckoning.
    pub residual: Length,
    /// What it asks for, and what its number does not hold.
    pub findings: Vec<SwardFinding>,
    /// What it came from.
    pub from: Provenance,
}

/// Widens a value by the error of a sward's mass.
fn out_by<T: Copy + std::ops::Mul<f64, Output = T>>(value: T) -> Ends<T> {
    Ends::new(
        value * (1.0 - *MASS_OUT_BY),
        value,
        value * (1.0 + *MASS_OUT_BY),
    )
}

/// What a centimetre of a sward weighs: by its stand where somebody said it, else by its kind.
///
/// Mixed pasture and ryegrass: 132 kg a hectare and centimetre, ± 30 %. For other kinds no number was read, so they get
/// the whole of the grazing stick. A stand gets its band of the stick, and not less than ± 30 % about its middle.
pub fn density(kind: SwardKind, stand: Option<Stand>) -> Ends<SwardDensity> {
    if let Some(stand) = stand {
        let [low, high] = match stand {
            Stand::Fair => *STAND_FAIR,
            Stand::Good => *STAND_GOOD,
            Stand::Excellent => *STAND_EXCELLENT,
        };
        let [low, high] = [low, high].map(SwardDensity::lb_per_acre_inch);
        let about = out_by((low + high) / 2.0);
        return Ends::new(about.least.min(low), about.likely, about.most.max(high));
    }
    match kind {
        SwardKind::MixedWithRyegrass | SwardKind::Ryegrass => out_by(*DENSITY),
        SwardKind::Meadow | SwardKind::Fescue | SwardKind::WarmSeason | SwardKind::CloverRich => {
            let [least, likely, most] = *DENSITY_OTHER;
            Ends::new(least, likely, most).map(SwardDensity::lb_per_acre_inch)
        }
    }
}

/// The mean of a plate's clicks; `None` of none.
pub fn mean_clicks(clicks: &[i64]) -> Option<f64> {
    let sum: i64 = clicks.iter().sum();
    (!clicks.is_empty()).then(|| sum as f64 / clicks.len() as f64)
}

/// All that stands by a rising plate, from the least to the most of two formulas, ± 30 %.
///
/// # Errors
/// Clicks outside 0 to 60.
pub fn plate(clicks: f64) -> Result<Ends<SwardMass>, GrazeError> {
    let clicks = CLICKS.check(clicks)?;
    let [one, other] = *PLATE;
    let of = |[each, none]: [f64; 2]| SwardMass::kg_per_ha(each * clicks + none);
    let (one, other) = (of(one), of(other));
    Ok(Ends::new(
        out_by(one.min(other)).least,
        (one + other) / 2.0,
        out_by(one.max(other)).most,
    ))
}

/// What stands above the residual: (height − residual) × density, each at its end; by the plate all that stands, less
/// what the residual holds at the likely density.
///
/// # Errors
/// A height, clicks or a residual outside its range; no heights.
pub fn standing(
    measured: Measured<'_>,
    kind: SwardKind,
    stand: Option<Stand>,
    residual: Length,
) -> Result<Standing, GrazeError> {
    RESIDUAL_CHOSEN.check(residual.to_cm())?;
    let density = density(kind, stand);
    let mut from = match (stand, kind) {
        (Some(Stand::Fair), _) => Provenance::new().constant(&STAND_FAIR),
        (Some(Stand::Good), _) => Provenance::new().constant(&STAND_GOOD),
        (Some(Stand::Excellent), _) => Provenance::new().constant(&STAND_EXCELLENT),
        (None, SwardKind::MixedWithRyegrass | SwardKind::Ryegrass) => {
            Provenance::new().constant(&DENSITY)
        }
        (None, _) => Provenance::new().constant(&DENSITY_OTHER),
    }
    .constant(&MASS_OUT_BY);
    let mut findings = Vec::new();
    let (height, read, available) = match measured {
        Measured::Plate { clicks } => {
            from = from.constant(&PLATE);
            findings.push(SwardFinding::PlateOfItsOwn);
            let left = density.likely.over(residual);
            let above = plate(clicks)?.map(|all| (all - left).max(SwardMass::ZERO));
            (None, None, above)
        }
        Measured::Boot(leaf) => (Some(leaf.height()), None, Ends::exactly(SwardMass::ZERO)),
        Measured::Heights(heights) => {
            from = from.constant(&MEAN_OUT_BY);
            let (read, few) = readings(heights)?;
            findings.extend(few);
            (
                Some(read.height()),
                Some(read),
                Ends::exactly(SwardMass::ZERO),
            )
        }
    };
    let available = height.map_or(available, |height| {
        height.with(density, |height, density| {
            density.over((height - residual).max(Length::ZERO))
        })
    });
    if let Some(height) = height {
        findings.splice(0..0, look(height, residual));
    }
    if stand.is_none() && !matches!(kind, SwardKind::MixedWithRyegrass | SwardKind::Ryegrass) {
        findings.push(SwardFinding::DensityNotKnown);
    }
    Ok(Standing {
        height,
        readings: read,
        available,
        residual,
        findings,
        from,
    })
}

/// For how many days what stands lasts, growth left out: available × area × grazed part / asked a day.
///
/// # Errors
/// An area outside its range; nothing asked.
pub fn days_of_grass(
    available: Ends<SwardMass>,
    area: Area,
    asked: DryMatter,
) -> Result<Ends<f64>, GrazeError> {
    AREA.check(area.to_sq_m())?;
    if !asked.is_finite() || asked <= DryMatter::ZERO {
        return Err(GrazeError::NothingAsked);
    }
    let [least, likely, most] = *GRAZED;
    Ok(
        available.with(Ends::new(least, likely, most), |mass, grazed| {
            mass.on(area) * grazed / asked
        }),
    )
}

/// What was offered an animal a day, from what stood and the days that animals spent on it; `None` without a day.
pub fn offered(stood: DryMatter, animal_days: f64) -> Option<DryMatter> {
    (animal_days.is_finite() && animal_days > 0.0).then(|| stood / animal_days)
}
