//! Water. It is always in front of the animal; these figures say how much must be there and what to expect.

use super::error::{LimitsError, WEIGHT};
use super::published::{
    WATER_BANDS_FOR_KG, WATER_COLD_CUT, WATER_DRY_HAY, WATER_IDLE_20, WATER_IDLE_30, WATER_IN_MILK,
    WATER_LEAST, WATER_WORK_20, WATER_WORK_30,
};
use crate::animal::{State, Workload};
use crate::sources::{Provenance, Published};
use crate::units::BodyMass;
use std::fmt;

/// A volume of water.
#[derive(Clone, Copy, PartialEq, PartialOrd)]
pub struct Litres(f64);

impl Litres {
    /// From litres.
    pub const fn l(value: f64) -> Self {
        Self(value)
    }

    /// As litres.
    pub const fn to_l(self) -> f64 {
        self.0
    }
}

impl fmt::Debug for Litres {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} L", self.0)
    }
}

/// The day's weather as it matters for drinking.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum WaterWeather {
    /// Water near freezing.
    NearFreezing,
    /// Cool.
    Cool,
    /// About 20 degrees.
    Mild,
    /// About 30 degrees.
    Hot,
}

/// Water a day.
#[derive(Clone, Debug, PartialEq)]
pub struct WaterNeed {
    /// The least that must be there: at rest and cool, and almost double on dry hay alone.
    pub least: Litres,
    /// What an animal like it usually drinks, from and to, where it is published.
    pub usual: Option<[Litres; 2]>,
    /// By what part near-freezing water cuts drinking, from and to, when that is the weather.
    pub cold_cut: Option<[f64; 2]>,
    /// Where it comes from.
    pub from: Provenance,
}

/// Water a day for an animal of a weight. The bands were published for 500 kg and are scaled by weight.
///
/// # Errors
/// A weight that is not believed.
pub fn water_need(
    weight: BodyMass,
    state: State,
    work: Workload,
    weather: WaterWeather,
    dry_hay_only: bool,
) -> Result<WaterNeed, LimitsError> {
    WEIGHT.check(weight.to_kg())?;
    // The rate is by 100 kg of body.
    let at_rest = *WATER_LEAST * weight.to_kg() / 100.0;
    let from = Provenance::new().constant(&WATER_LEAST);
    let (least, from) = if dry_hay_only {
        (at_rest * *WATER_DRY_HAY, from.constant(&WATER_DRY_HAY))
    } else {
        (at_rest, from)
    };
    let at_work = !matches!(work, Workload::Maintenance(_));
    let band: Option<Published<[f64; 2]>> = match (state, weather, at_work) {
        (State::Lactating, ..) => Some(WATER_IN_MILK),
        (_, WaterWeather::Mild, false) => Some(WATER_IDLE_20),
        (_, WaterWeather::Mild, true) => Some(WATER_WORK_20),
        (_, WaterWeather::Hot, false) => Some(WATER_IDLE_30),
        (_, WaterWeather::Hot, true) => Some(WATER_WORK_30),
        (_, WaterWeather::Cool | WaterWeather::NearFreezing, _) => None,
    };
    let (usual, from) = match band {
        Some(band) => {
            let scale = weight.to_kg() / *WATER_BANDS_FOR_KG;
            let litres = band.map(|litres| Litres(litres * scale));
            (
                Some(litres),
                from.constant(&band).constant(&WATER_BANDS_FOR_KG),
            )
        }
        None => (None, from),
    };
    let (cold_cut, from) = if weather == WaterWeather::NearFreezing {
        (Some(*WATER_COLD_CUT), from.constant(&WATER_COLD_CUT))
    } else {
        (None, from)
    };
    Ok(WaterNeed {
        least: Litres(least),
        usual,
        cold_cut,
        from,
    })
}
