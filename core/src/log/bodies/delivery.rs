//! What came of a lot, how it is stored, and what is left of it when somebody counts.

use super::base::{Count, FeedWeight, Reported, from_measure, whole_number};
use super::reported::percent;
use crate::forage::{BaleKind, Delivery, Held, Rod, StoredBadly};
use crate::log::error::{LogError, Path};
use crate::log::stored::{tagged, twin, words};
use crate::units::{AsFed, LocalDate, Temperature};

words!(BaleKind {
    SmallSquare = "small_square",
    Round = "round",
    LargeSquare = "large_square",
});
words!(StoredBadly {
    OnGround = "on_ground",
    Uncovered = "uncovered",
    NoAir = "no_air",
});

whole_number! {
    /// A mass of a whole lot, in grams.
    // numeric: to 1,000 t
    LotGrams = (0, 1_000_000_000)
}
whole_number! {
    /// Bales, in tenths: half a bale is 5.
    // numeric: to 100,000 bales
    BaleTenths = (0, 1_000_000)
}
whole_number! {
    /// A temperature in a stack, in tenths of a degree Celsius.
    // numeric: what a thermometer for hay can show
    StackTenths = (-1_000, 5_000)
}

twin! {
    /// A mass of a whole lot, with what was typed.
    LotWeight {
        /// Grams.
        g: LotGrams,
        /// As typed.
        typed: Option<String>,
    }
}

/// An amount of a lot: bought, or counted.
#[derive(Clone, Debug, PartialEq)]
pub enum HeldV1 {
    /// Bales.
    Bales {
        /// How many, in tenths.
        tenths: BaleTenths,
    },
    /// By weight.
    Weight {
        /// How much.
        weight: LotWeight,
    },
}

tagged!(HeldV1, by "in" {
    Bales = "bales" { tenths: tenths },
    Weight = "weight" { weight: weight },
});

/// A rod that stood in the stack.
#[derive(Clone, Debug, PartialEq)]
pub enum RodV1 {
    /// Read with a thermometer.
    Read {
        /// What it read.
        celsius: StackTenths,
    },
    /// It could be held in the hand.
    Held {},
    /// It was too hot to hold.
    TooHot {},
}

tagged!(RodV1, by "how" {
    Read = "read" { celsius: celsius_tenths },
    Held = "held" {},
    TooHot = "too_hot" {},
});

twin! {
    /// The heat of the stack on a day.
    HeatV1 {
        /// The day.
        on: LocalDate,
        /// What the rod said.
        rod: RodV1,
    }
}
twin! {
    /// What came of a lot, and how it is stored.
    DeliveryV1 {
        /// How much was bought.
        bought: Option<HeldV1>,
        /// How it is baled.
        bale: Option<BaleKind>,
        /// Bales that were weighed.
        bales: Vec<FeedWeight>,
        /// Slices that were weighed.
        slices: Vec<FeedWeight>,
        /// Moisture as it was baled or bought, in `%`.
        moisture: Option<Reported>,
        /// The day it was baled.
        baled_on: Option<LocalDate>,
        /// What spoils it in store.
        stored: Vec<StoredBadly>,
        /// The heat of the stack, as it was looked at.
        heat: Vec<HeatV1>,
        /// Days from ordering to delivery.
        lead_days: Option<Count>,
    }
}
twin! {
    /// What is left of the lot that the record is about, counted. From then on only what is weighed out since goes off.
    LotCountV1 {
        /// How much.
        left: HeldV1,
        /// Remarks.
        note: Option<String>,
    }
}

impl LotWeight {
    /// To the nearest gram, beside what was typed.
    ///
    /// # Errors
    /// More than is believed.
    pub fn of(mass: AsFed, typed: Option<String>) -> Result<Self, LogError> {
        let g = from_measure(mass.to_kg() * 1000.0, LotGrams::RANGE, LotGrams::new)?;
        Ok(Self { g, typed })
    }

    /// As feed as fed.
    pub fn as_fed(&self) -> AsFed {
        AsFed::kg(self.g.get() as f64 / 1000.0)
    }
}

impl BaleTenths {
    /// To the nearest tenth of a bale.
    ///
    /// # Errors
    /// More than is believed.
    pub fn of(bales: f64) -> Result<Self, LogError> {
        from_measure(bales * 10.0, Self::RANGE, Self::new)
    }

    /// As bales.
    pub fn bales(self) -> f64 {
        self.get() as f64 / 10.0
    }
}

impl StackTenths {
    /// To the nearest tenth of a degree.
    ///
    /// # Errors
    /// More than is believed.
    pub fn of(temperature: Temperature) -> Result<Self, LogError> {
        from_measure(temperature.to_celsius() * 10.0, Self::RANGE, Self::new)
    }

    /// As a temperature.
    pub fn temperature(self) -> Temperature {
        Temperature::celsius(self.get() as f64 / 10.0)
    }
}

impl HeldV1 {
    /// As the room `forage` takes it.
    pub fn held(&self) -> Held {
        match self {
            Self::Bales { tenths } => Held::Bales(tenths.bales()),
            Self::Weight { weight } => Held::Weight(weight.as_fed()),
        }
    }
}

impl RodV1 {
    /// As the room `forage` takes it.
    pub fn rod(&self) -> Rod {
        match self {
            Self::Read { celsius } => Rod::Read(celsius.temperature()),
            Self::Held {} => Rod::Held,
            Self::TooHot {} => Rod::TooHot,
        }
    }
}

impl DeliveryV1 {
    /// Nothing was said yet.
    pub const fn empty() -> Self {
        Self {
            bought: None,
            bale: None,
            bales: Vec::new(),
            slices: Vec::new(),
            moisture: None,
            baled_on: None,
            stored: Vec::new(),
            heat: Vec::new(),
            lead_days: None,
        }
    }

    /// As the room `forage` takes it.
    ///
    /// Error: a moisture whose unit is not understood.
    pub(super) fn delivery(&self, path: &Path<'_>) -> Result<Delivery, LogError> {
        let weights = |samples: &[FeedWeight]| samples.iter().map(|one| one.g.as_fed()).collect();
        let moisture = match &self.moisture {
            Some(reported) => Some(percent(reported, &path.key("moisture"))?),
            None => None,
        };
        Ok(Delivery {
            bought: self.bought.as_ref().map(HeldV1::held),
            bale: self.bale,
            bales: weights(&self.bales),
            slices: weights(&self.slices),
            moisture,
            baled_on: self.baled_on,
            stored: self.stored.clone(),
            heat: self
                .heat
                .iter()
                .map(|seen| (seen.on, seen.rod.rod()))
                .collect(),
            lead_days: self.lead_days.map(Count::get),
        })
    }
}
