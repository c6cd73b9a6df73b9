//! Moisture at baling, heat in the stack and how it is stored.
//!
//! The moisture of hay as it was baled or bought is not its dry matter when it is fed: it dries in the stack.

use super::error::ForageError;
use super::published::{
    HEAT, HEAT_FIELD, HEAT_WATCH_DAYS, MOISTURE_BULK, MOISTURE_FIELD, MOISTURE_FIRE,
    MOISTURE_IDEAL, MOISTURE_MOST,
};
use crate::units::{LocalDate, Temperature};

/// How a hay is baled.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum BaleKind {
    /// A small square bale.
    SmallSquare,
    /// A round bale.
    Round,
    /// A large square bale.
    LargeSquare,
}

/// How moisture stands to what keeps.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum MoistureVerdict {
    /// Dry enough for horses.
    Dry,
    /// Within what its bale may have, and moist enough to mould without a preservative: watch it.
    Watch {
        /// What its bale may have at most, in percent.
        most: f64,
    },
    /// Too wet for its bale.
    TooWet {
        /// What its bale may have at most, in percent.
        most: f64,
    },
    /// So wet that it heats and may burn.
    Fire,
}

/// The most moisture that a bale may have, in percent; the strictest where nobody said how it is baled, and that of a
/// heap for loose hay.
pub fn most_moisture(bale: Option<BaleKind>, loose: bool) -> f64 {
    let [small_square, round, large_square] = *MOISTURE_MOST;
    match (bale, loose) {
        (_, true) => *MOISTURE_BULK,
        (Some(BaleKind::SmallSquare), false) => small_square,
        (Some(BaleKind::Round), false) => round,
        (Some(BaleKind::LargeSquare) | None, false) => large_square,
    }
}

/// Judges the moisture of hay, in percent as fed.
///
/// # Errors
/// A moisture that no hay has.
pub fn judge_moisture(
    percent: f64,
    bale: Option<BaleKind>,
    loose: bool,
) -> Result<MoistureVerdict, ForageError> {
    let percent = MOISTURE_FIELD.check(percent)?;
    let most = most_moisture(bale, loose);
    Ok(if *MOISTURE_FIRE < percent {
        MoistureVerdict::Fire
    } else if most < percent {
        MoistureVerdict::TooWet { most }
    } else if *MOISTURE_IDEAL < percent {
        MoistureVerdict::Watch { most }
    } else {
        MoistureVerdict::Dry
    })
}

/// What a temperature inside the stack asks for. Authors differ; the stricter line holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum HeatVerdict {
    /// As it may be.
    Normal,
    /// Measure it every day.
    Daily,
    /// Pull the stack apart.
    PullApart,
    /// Ring the fire service before it is pulled apart.
    FireService,
    /// An emergency: it may burn, and its gases with it.
    Emergency,
}

/// Judges a temperature inside the stack.
///
/// # Errors
/// A temperature that no hay has.
pub fn judge_heat(temperature: Temperature) -> Result<HeatVerdict, ForageError> {
    HEAT_FIELD.check(temperature.to_celsius())?;
    let [daily, apart, fire, emergency] = (*HEAT).map(Temperature::celsius);
    Ok(if emergency <= temperature {
        HeatVerdict::Emergency
    } else if fire <= temperature {
        HeatVerdict::FireService
    } else if apart <= temperature {
        HeatVerdict::PullApart
    } else if daily <= temperature {
        HeatVerdict::Daily
    } else {
        HeatVerdict::Normal
    })
}

/// A rod that stood in the stack.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Rod {
    /// Read with a thermometer.
    Read(Temperature),
    /// It could be held in the hand.
    Held,
    /// It was too hot to hold: over 49 degrees, and nobody knows how far over.
    TooHot,
}

impl Rod {
    /// What it asks for; a rod too hot to hold asks for a thermometer at once, and for the daily look at the least.
    ///
    /// # Errors
    /// A temperature that no hay has.
    pub fn judge(self) -> Result<HeatVerdict, ForageError> {
        match self {
            Self::Read(temperature) => judge_heat(temperature),
            Self::Held => Ok(HeatVerdict::Normal),
            Self::TooHot => Ok(HeatVerdict::Daily),
        }
    }
}

/// The last day on which new hay is watched for heat: three weeks from the day it was baled, else from the day it was
/// bought.
pub fn watch_until(baled: Option<LocalDate>, bought: Option<LocalDate>) -> Option<LocalDate> {
    let days = chrono::Days::new((*HEAT_WATCH_DAYS).unsigned_abs());
    baled.or(bought)?.checked_add_days(days)
}

/// Something about how a lot is stored that spoils it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum StoredBadly {
    /// It stands on the bare ground.
    OnGround,
    /// It is not covered.
    Uncovered,
    /// No air goes through.
    NoAir,
}

impl StoredBadly {
    /// All of them, in the order in which a person is asked.
    pub const ALL: [Self; 3] = [Self::OnGround, Self::Uncovered, Self::NoAir];
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn nineteen_percent_is_well_in_a_small_bale_alone() {
        let at = |bale| judge_moisture(19.0, bale, false).unwrap();
        assert!(matches!(
            at(Some(BaleKind::SmallSquare)),
            MoistureVerdict::Watch { .. }
        ));
        for bale in [Some(BaleKind::Round), Some(BaleKind::LargeSquare), None] {
            assert!(matches!(at(bale), MoistureVerdict::TooWet { .. }));
        }
        assert_eq!(
            judge_moisture(12.0, None, true).unwrap(),
            MoistureVerdict::Dry
        );
        assert_eq!(
            judge_moisture(26.0, Some(BaleKind::SmallSquare), false).unwrap(),
            MoistureVerdict::Fire
        );
        assert!(judge_moisture(0.0, None, false).is_err());
    }

    #[test]
    fn a_stack_asks_for_more_the_hotter_it_is() {
        let at = |celsius| judge_heat(Temperature::celsius(celsius)).unwrap();
        assert_eq!(at(30.0), HeatVerdict::Normal);
        assert_eq!(at(55.0), HeatVerdict::Daily);
        assert_eq!(at(62.0), HeatVerdict::PullApart);
        assert_eq!(at(66.0), HeatVerdict::FireService);
        assert_eq!(at(72.0), HeatVerdict::Emergency);
        assert_eq!(Rod::TooHot.judge(), Ok(HeatVerdict::Daily));
        assert!(judge_heat(Temperature::celsius(500.0)).is_err());
    }

    #[test]
    fn new_hay_is_watched_for_three_weeks() {
        let day = |text: &str| text.parse().unwrap();
        let until = watch_until(Some(day("2026-06-20")), Some(day("2026-07-30")));
        assert_eq!(until, Some(day("2026-07-11")));
        assert_eq!(watch_until(None, None), None);
    }
}
