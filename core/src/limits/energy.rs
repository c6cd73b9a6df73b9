//! Digestible energy: what it needs, and what it may not go under.
//!
//! Energy and protein follow the body there is: they are reckoned on **current** weight, for it is the current body that
//! is warmed and carried. Minerals and vitamins follow the target weight, see [`super::needs`].

use super::error::{LimitsError, WEIGHT};
use super::published::{
    ENERGY_AVERAGE, ENERGY_ELEVATED, ENERGY_FLOOR, ENERGY_FLOOR_WITHOUT_VET, ENERGY_HEAVY,
    ENERGY_LIGHT, ENERGY_LOW, ENERGY_MODERATE, ENERGY_VERY_HEAVY,
};
use crate::animal::{Kind, State, Temperament, Workload};
use crate::sources::{Provenance, Published};
use crate::units::{BodyMass, Energy};

/// A need of digestible energy a day.
#[derive(Clone, Debug, PartialEq)]
pub struct EnergyNeed {
    /// How much.
    pub energy: Energy,
    /// Where it comes from.
    pub from: Provenance,
}

/// The need of a grown horse or pony a day; NRC 2007, ch. 1. `weight` is its current weight.
///
/// # Errors
/// A weight that is not believed.
pub fn energy_need(work: Workload, weight: BodyMass) -> Result<EnergyNeed, LimitsError> {
    WEIGHT.check(weight.to_kg())?;
    let (base, factor) = match work {
        Workload::Maintenance(Temperament::Low) => (ENERGY_LOW, None),
        Workload::Maintenance(Temperament::Average) => (ENERGY_AVERAGE, None),
        Workload::Maintenance(Temperament::Elevated) => (ENERGY_ELEVATED, None),
        Workload::Light => (ENERGY_AVERAGE, Some(ENERGY_LIGHT)),
        Workload::Moderate => (ENERGY_AVERAGE, Some(ENERGY_MODERATE)),
        Workload::Heavy => (ENERGY_AVERAGE, Some(ENERGY_HEAVY)),
        Workload::VeryHeavy => (ENERGY_ELEVATED, Some(ENERGY_VERY_HEAVY)),
    };
    let from = Provenance::new().constant(&base);
    Ok(match factor {
        None => EnergyNeed {
            energy: upkeep(base, weight),
            from,
        },
        Some(factor) => EnergyNeed {
            energy: upkeep(base, weight) * *factor,
            from: from.constant(&factor),
        },
    })
}

/// Maintenance at a rate a kilogram.
fn upkeep(rate: Published<f64>, weight: BodyMass) -> Energy {
    Energy::mcal(*rate * weight.to_kg())
}

/// Energy an animal is not to go under.
#[derive(Clone, Debug, PartialEq)]
pub struct EnergyFloor {
    /// Average maintenance, of which the floors are parts.
    pub average: Energy,
    /// Not under this without a vet's word.
    pub without_vet: Energy,
    /// Never under this.
    pub never_under: Energy,
    /// Where it comes from.
    pub from: Provenance,
}

/// The floors of a horse or pony of a weight; give the highest likely weight, for a floor is judged on what leaves the
/// animal least. `None` for donkeys and mules: the horse equation is not used for them.
///
/// # Errors
/// A weight that is not believed.
pub fn energy_floor(kind: Kind, weight: BodyMass) -> Result<Option<EnergyFloor>, LimitsError> {
    WEIGHT.check(weight.to_kg())?;
    if kind.is_donkey() {
        return Ok(None);
    }
    let average = upkeep(ENERGY_AVERAGE, weight);
    Ok(Some(EnergyFloor {
        average,
        without_vet: average * *ENERGY_FLOOR_WITHOUT_VET,
        never_under: average * *ENERGY_FLOOR,
        from: Provenance::new()
            .constant(&ENERGY_AVERAGE)
            .constant(&ENERGY_FLOOR_WITHOUT_VET)
            .constant(&ENERGY_FLOOR),
    }))
}

/// How a day's energy stands to the floors. `share` is of average maintenance.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum EnergyVerdict {
    /// At or above the floor that holds.
    Enough {
        /// Of average maintenance.
        share: f64,
    },
    /// Under the floor that only a vet's word opens, and no word holds.
    NeedsVetsWord {
        /// Of average maintenance.
        share: f64,
    },
    /// Under the floor that nothing opens.
    NeverAllowed {
        /// Of average maintenance.
        share: f64,
    },
    /// A donkey or mule: it goes by weight and condition.
    ByWeightAndCondition,
    /// Growing, in foal or in milk: its need is higher and is not published here, so this is no clearance.
    NotPublishedHere(State),
}

/// Judges the energy of a day: `least` is the end that gives the animal least, `weight` its highest likely weight,
/// `vets_word` whether a vet's word on the lowest level holds today.
///
/// # Errors
/// A weight that is not believed.
pub fn judge_energy(
    kind: Kind,
    state: State,
    weight: BodyMass,
    least: Energy,
    vets_word: bool,
) -> Result<EnergyVerdict, LimitsError> {
    let Some(floor) = energy_floor(kind, weight)? else {
        return Ok(EnergyVerdict::ByWeightAndCondition);
    };
    let share = least / floor.average;
    // What is not a number is never enough: the comparisons are written so that it fails them.
    let reaches = |bound: Energy| least >= bound;
    Ok(if !reaches(floor.never_under) {
        EnergyVerdict::NeverAllowed { share }
    } else if !reaches(floor.without_vet) && !vets_word {
        EnergyVerdict::NeedsVetsWord { share }
    } else if state == State::Adult {
        EnergyVerdict::Enough { share }
    } else {
        EnergyVerdict::NotPublishedHere(state)
    })
}
