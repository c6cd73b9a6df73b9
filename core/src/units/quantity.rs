//! Scalar quantities: one type each, one constructor and one getter a unit.

use super::published::{
    CM_PER_INCH, FAHRENHEIT_AT_ZERO, FAHRENHEIT_PER_CELSIUS, INCHES_PER_HAND, KG_PER_LB,
    LB_PER_STONE, MJ_PER_MCAL,
};
use std::fmt;
use std::ops::{Add, Div, Mul, Sub};

/// Makes a newtype over `f64` with the few operations that have a meaning: sum, difference, scaling, ratio.
macro_rules! quantity {
    ($(#[$doc:meta])* $name:ident, $base:ident, $to_base:ident, $unit:literal) => {
        $(#[$doc])*
        #[derive(Clone, Copy, PartialEq, PartialOrd, Default)]
        pub struct $name(f64);

        impl $name {
            /// None of it.
            pub const ZERO: Self = Self(0.0);

            #[doc = concat!("From a number of ", $unit, ".")]
            #[allow(clippy::self_named_constructors, reason = "the unit is the name: Iu::iu")]
            pub const fn $base(value: f64) -> Self {
                Self(value)
            }

            #[doc = concat!("As a number of ", $unit, ".")]
            pub const fn $to_base(self) -> f64 {
                self.0
            }

            /// The smaller of two.
            #[must_use]
            pub fn min(self, other: Self) -> Self {
                Self(self.0.min(other.0))
            }

            /// The larger of two.
            #[must_use]
            pub fn max(self, other: Self) -> Self {
                Self(self.0.max(other.0))
            }

            /// Whether the number behind it is finite.
            pub fn is_finite(self) -> bool {
                self.0.is_finite()
            }
        }

        impl fmt::Debug for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                write!(f, concat!("{} ", $unit), self.0)
            }
        }

        impl Add for $name {
            type Output = Self;
            fn add(self, other: Self) -> Self {
                Self(self.0 + other.0)
            }
        }

        impl Sub for $name {
            type Output = Self;
            fn sub(self, other: Self) -> Self {
                Self(self.0 - other.0)
            }
        }

        impl Mul<f64> for $name {
            type Output = Self;
            fn mul(self, factor: f64) -> Self {
                Self(self.0 * factor)
            }
        }

        impl Div<f64> for $name {
            type Output = Self;
            fn div(self, divisor: f64) -> Self {
                Self(self.0 / divisor)
            }
        }

        impl Div for $name {
            type Output = f64;
            fn div(self, other: Self) -> f64 {
                self.0 / other.0
            }
        }

        impl std::iter::Sum for $name {
            fn sum<I: Iterator<Item = Self>>(parts: I) -> Self {
                parts.fold(Self(0.0), Add::add)
            }
        }
    };
}
pub(super) use quantity;

quantity!(
    /// A speed over level ground.
    Speed, m_per_min, to_m_per_min, "m/min"
);
quantity!(
    /// A length on the animal, of the tape, of a sward or over land.
    Length, cm, to_cm, "cm"
);
quantity!(
    /// The weight of an animal's body. It never mixes with the mass of feed.
    BodyMass, kg, to_kg, "kg body"
);
quantity!(
    /// Digestible energy, unless a name says otherwise.
    Energy, mcal, to_mcal, "Mcal"
);
quantity!(
    /// The mass of a nutrient.
    NutrientMass, g, to_g, "g"
);
quantity!(
    /// International units of a vitamin.
    Iu, iu, to_iu, "IU"
);
quantity!(
    /// A part of body weight, such as dry matter a day: 1.5 % is 0.015.
    PartOfBody, fraction, to_fraction, "of body weight"
);
quantity!(
    /// A temperature, or a difference of two.
    Temperature, celsius, to_celsius, "degC"
);

impl Length {
    /// From inches.
    pub const fn inches(value: f64) -> Self {
        Self::cm(value * CM_PER_INCH)
    }

    /// From whole hands and inches above them: 14.2 hands is `hands(14, 2.0)`.
    pub fn hands(hands: u8, inches: f64) -> Self {
        Self::inches(f64::from(hands) * INCHES_PER_HAND + inches)
    }

    /// As inches.
    pub const fn to_inches(self) -> f64 {
        self.to_cm() / CM_PER_INCH
    }
}

impl BodyMass {
    /// From pounds.
    pub const fn lb(value: f64) -> Self {
        Self::kg(value * KG_PER_LB)
    }

    /// From stones.
    pub const fn stone(value: f64) -> Self {
        Self::lb(value * LB_PER_STONE)
    }

    /// As pounds.
    pub const fn to_lb(self) -> f64 {
        self.to_kg() / KG_PER_LB
    }
}

impl Energy {
    /// From megajoules.
    pub const fn mj(value: f64) -> Self {
        Self::mcal(value / MJ_PER_MCAL)
    }

    /// As megajoules.
    pub const fn to_mj(self) -> f64 {
        self.to_mcal() * MJ_PER_MCAL
    }
}

impl NutrientMass {
    /// From milligrams.
    pub const fn mg(value: f64) -> Self {
        Self::g(value / 1000.0)
    }

    /// As milligrams.
    pub const fn to_mg(self) -> f64 {
        self.to_g() * 1000.0
    }
}

impl PartOfBody {
    /// From percent of body weight.
    pub const fn percent(value: f64) -> Self {
        Self::fraction(value / 100.0)
    }

    /// As percent of body weight.
    pub const fn to_percent(self) -> f64 {
        self.to_fraction() * 100.0
    }
}

impl Temperature {
    /// From degrees Fahrenheit, as a reading.
    pub const fn fahrenheit(value: f64) -> Self {
        Self::celsius((value - FAHRENHEIT_AT_ZERO) / FAHRENHEIT_PER_CELSIUS)
    }

    /// As degrees Fahrenheit, as a reading.
    pub const fn to_fahrenheit(self) -> f64 {
        self.to_celsius() * FAHRENHEIT_PER_CELSIUS + FAHRENHEIT_AT_ZERO
    }
}
