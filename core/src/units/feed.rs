//! Feed: as fed and dry matter are two things, and meet only through a dry-matter fraction.

use super::bounds::{Bounds, OutOfRange};
use super::quantity::{BodyMass, Energy, NutrientMass, PartOfBody, quantity};
use std::fmt;
use std::ops::{Add, Div, Mul, Sub};

quantity!(
    /// A mass of feed as it lies in the net or the bucket, water and all.
    AsFed, kg, to_kg, "kg as fed"
);
quantity!(
    /// A mass of dry matter.
    DryMatter, kg, to_kg, "kg dry matter"
);
quantity!(
    /// A content as a share of dry matter: 12 % is 0.12.
    ShareOfDm, fraction, to_fraction, "of dry matter"
);
quantity!(
    /// A content as a share of the feed as fed: 12 % is 0.12.
    ShareOfAsFed, fraction, to_fraction, "as fed"
);
quantity!(
    /// Energy in a kilogram of dry matter.
    EnergyDensity, mcal_per_kg, to_mcal_per_kg, "Mcal/kg dry matter"
);

/// The part of a feed that is dry matter: more than 0, at most 1.
#[derive(Clone, Copy, PartialEq, PartialOrd)]
pub struct DryFraction(f64);

impl DryFraction {
    /// What is allowed, in percent. Under 5 % no feed can be handled and a misplaced decimal is likelier.
    pub const BOUNDS: Bounds = Bounds::new(
        "dry_matter_percent",
        super::published::LOWEST_DRY_PERCENT,
        100.0,
    );

    /// From percent of the feed as fed.
    pub fn percent(value: f64) -> Result<Self, OutOfRange> {
        Ok(Self(Self::BOUNDS.check(value)? / 100.0))
    }

    /// For a constant whose value is known to lie in the range when the program is built.
    ///
    /// A percentage outside the bounds is clamped to them; the room's tests look at every such constant.
    pub const fn constant_percent(value: f64) -> Self {
        let bounded = value.clamp(Self::BOUNDS.min, Self::BOUNDS.max);
        Self(bounded / 100.0)
    }

    /// As percent of the feed as fed.
    pub const fn to_percent(self) -> f64 {
        self.0 * 100.0
    }

    /// As a fraction.
    pub const fn to_fraction(self) -> f64 {
        self.0
    }
}

impl fmt::Debug for DryFraction {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} % dry", self.to_percent())
    }
}

impl AsFed {
    /// The dry matter in it.
    pub fn dry(self, dry: DryFraction) -> DryMatter {
        DryMatter::kg(self.to_kg() * dry.to_fraction())
    }
}

impl DryMatter {
    /// The feed as fed that holds it.
    pub fn as_fed(self, dry: DryFraction) -> AsFed {
        AsFed::kg(self.to_kg() / dry.to_fraction())
    }

    /// This much of an animal's weight.
    pub fn part_of(self, body: BodyMass) -> PartOfBody {
        PartOfBody::fraction(self.to_kg() / body.to_kg())
    }
}

impl PartOfBody {
    /// This part of an animal's weight, as dry matter.
    pub fn of(self, body: BodyMass) -> DryMatter {
        DryMatter::kg(self.to_fraction() * body.to_kg())
    }
}

impl ShareOfDm {
    /// From percent of dry matter.
    pub const fn percent(value: f64) -> Self {
        Self::fraction(value / 100.0)
    }

    /// As percent of dry matter.
    pub const fn to_percent(self) -> f64 {
        self.to_fraction() * 100.0
    }

    /// From milligrams in a kilogram of dry matter (ppm).
    pub const fn mg_per_kg(value: f64) -> Self {
        // numeric: 1e6 mg in a kg
        Self::fraction(value / 1e6)
    }

    /// As milligrams in a kilogram of dry matter (ppm).
    pub const fn to_mg_per_kg(self) -> f64 {
        // numeric: 1e6 mg in a kg
        self.to_fraction() * 1e6
    }

    /// How much of it lies in a mass of dry matter.
    pub fn in_dry(self, dry: DryMatter) -> NutrientMass {
        NutrientMass::g(self.to_fraction() * dry.to_kg() * 1000.0)
    }

    /// The same content as a share of the feed as fed.
    pub fn as_fed(self, dry: DryFraction) -> ShareOfAsFed {
        ShareOfAsFed::fraction(self.to_fraction() * dry.to_fraction())
    }
}

impl ShareOfAsFed {
    /// From percent of the feed as fed.
    pub const fn percent(value: f64) -> Self {
        Self::fraction(value / 100.0)
    }

    /// As percent of the feed as fed.
    pub const fn to_percent(self) -> f64 {
        self.to_fraction() * 100.0
    }

    /// The same content as a share of dry matter.
    pub fn of_dry(self, dry: DryFraction) -> ShareOfDm {
        ShareOfDm::fraction(self.to_fraction() / dry.to_fraction())
    }
}

impl EnergyDensity {
    /// From megajoules in a kilogram of dry matter.
    pub const fn mj_per_kg(value: f64) -> Self {
        Self::mcal_per_kg(Energy::mj(value).to_mcal())
    }

    /// As megajoules in a kilogram of dry matter.
    pub const fn to_mj_per_kg(self) -> f64 {
        Energy::mcal(self.to_mcal_per_kg()).to_mj()
    }

    /// The energy in a mass of dry matter.
    pub fn in_dry(self, dry: DryMatter) -> Energy {
        Energy::mcal(self.to_mcal_per_kg() * dry.to_kg())
    }
}
