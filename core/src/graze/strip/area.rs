//! How large a strip is.

use super::fences::{Fences, fences};
use super::published::{DAYS, GRAZED_BY_DAYS, GRAZED_LEAST, GRAZED_LIKELY, MASS, PART, WIDTH};
use crate::graze::GrazeError;
use crate::limits::Ends;
use crate::sources::Provenance;
use crate::units::{Area, DryMatter, Length, OutOfRange, SwardMass};

/// What a strip is asked for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StripFor {
    /// The most that the animals may eat of it in a day, all together.
    pub asked: DryMatter,
    /// How many days it lasts, 1 to 7.
    pub days: u32,
    /// What stands above the residual.
    pub available: Ends<SwardMass>,
    /// How wide it is: the length of the lead fence, 1 to 500 m.
    pub width: Length,
    /// Whether a back fence stands.
    pub back_fence: bool,
}

/// A strip.
#[derive(Clone, Debug, PartialEq)]
pub struct Strip {
    /// How large it is made: for the most that may stand there.
    pub area: Area,
    /// How large it would be for what likely stands there; `None` where likely nothing does.
    pub by_likely: Option<Area>,
    /// How large it would be for the least that may stand there; `None` where nothing may.
    pub by_least: Option<Area>,
    /// What the animals find in it in a day. The most is what was asked; the least must be made up in hay.
    pub finds: Ends<DryMatter>,
    /// Its fences.
    pub fences: Fences,
    /// What it came from.
    pub from: Provenance,
}

/// The area that holds so much dry matter: dry matter / (mass × grazed part).
///
/// # Errors
/// Nothing asked; a mass outside 0 to 10 000 kg/ha or none; a part outside 0.1 to 1.
pub fn area_for(asked: DryMatter, mass: SwardMass, part: f64) -> Result<Area, GrazeError> {
    let part = PART.check(part)?;
    MASS.check(mass.to_kg_per_ha())?;
    if !asked.is_finite() || asked <= DryMatter::ZERO {
        return Err(GrazeError::NothingAsked);
    }
    if mass <= SwardMass::ZERO {
        return Err(GrazeError::NothingToGraze { most: mass });
    }
    Ok(Area::hectares(asked.to_kg() / (mass.to_kg_per_ha() * part)))
}

/// The part of a strip that is grazed when it lasts so many days, 1 to 7.
///
/// # Errors
/// Days outside 1 to 7.
pub fn grazed_by_days(days: u32) -> Result<f64, GrazeError> {
    DAYS.check(f64::from(days))?;
    let place = usize::try_from(days.saturating_sub(1)).unwrap_or(usize::MAX);
    GRAZED_BY_DAYS
        .get(place)
        .copied()
        .ok_or(GrazeError::OutOfRange(OutOfRange {
            bounds: *DAYS,
            value: f64::from(days),
        }))
}

/// Today's strip. It is sized at the end that gives the animals most: the most that may stand there, the most of it
/// grazed.
///
/// # Errors
/// Days, width or mass outside their range; nothing asked; nothing to graze even at the most.
pub fn strip(wanted: &StripFor) -> Result<Strip, GrazeError> {
    WIDTH.check(wanted.width.to_m())?;
    let most = grazed_by_days(wanted.days)?;
    let part = Ends::new(GRAZED_LEAST.min(most), GRAZED_LIKELY.min(most), most);
    let days = f64::from(wanted.days);
    let asked = wanted.asked * days;
    let available = wanted.available;
    for mass in [available.least, available.likely] {
        MASS.check(mass.to_kg_per_ha())?;
    }
    let area = area_for(asked, available.most, part.most)?;
    let finds = available.with(part, |mass, part| mass.on(area) * part / days);
    Ok(Strip {
        area,
        by_likely: area_for(asked, available.likely, part.likely).ok(),
        by_least: area_for(asked, available.least, part.least).ok(),
        finds,
        fences: fences(area, wanted.width, wanted.back_fence),
        from: Provenance::new()
            .constant(&GRAZED_BY_DAYS)
            .constant(&GRAZED_LIKELY)
            .constant(&GRAZED_LEAST),
    })
}
