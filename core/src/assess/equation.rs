//! The published equations, as they stand in print. Lengths in cm, weights in kg, unless a name says otherwise.

use super::published as p;
use crate::animal::BodyType;
use crate::sources::Published;
use crate::units::{BodyMass, Length};

/// A straight line read backwards: `(x - intercept) / slope`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Line {
    /// Taken from x.
    pub intercept: f64,
    /// What is left is divided by it.
    pub slope: f64,
}

/// Exponents of four measures in cm.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PowerLaw {
    /// Of heart girth.
    pub girth: f64,
    /// Of body length.
    pub length: f64,
    /// Of height.
    pub height: f64,
    /// Of neck.
    pub neck: f64,
}

/// Kilograms for each cm of body length and of height.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PerLengthAndHeight {
    /// For each cm of body length.
    pub length: f64,
    /// For each cm of height.
    pub height: f64,
}

/// Exponents of a girth and of one other measure in cm, and the divisor that gives kg.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DonkeyLaw {
    /// Of the girth.
    pub girth: f64,
    /// Of the other measure; 0 where there is none.
    pub other: f64,
    /// The divisor.
    pub divisor: f64,
}

/// The body types with an equation of four measures and an ideal weight.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum MeasuredType {
    /// Arabian (Martinson 2014).
    Arabian,
    /// Pony (Martinson 2014).
    Pony,
    /// Stock type (Martinson 2014).
    Stock,
    /// Draught (Catalano 2016).
    Draft,
    /// Warmblood (Catalano 2016).
    Warmblood,
}

/// Which equation gave a weight.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Equation {
    /// Girth squared times wrap length over 11,900 (Carroll & Huntington 1988).
    GirthLength,
    /// Girth squared times length over 11,400, grown Icelandic horses.
    GirthLengthIcelandic,
    /// Girth, length, height and neck.
    FourMeasures(MeasuredType),
    /// Girth alone, with a typical length for the girth (ours).
    GirthAlone,
    /// Foals of 1 to 6 weeks, by girth.
    Foal,
    /// Weanlings, by girth and length.
    Weanling,
    /// Yearlings, by girth and length.
    Yearling,
    /// Grown donkeys, by girth and elbow length (Pearson & Ouassat 1996).
    Donkey,
    /// Grown donkeys, by girth alone (Pearson & Ouassat 1996).
    DonkeyGirth,
    /// Donkeys under three years, by girth at the navel and elbow length (Pearson & Ouassat 1996).
    DonkeyYoung,
    /// Fat donkeys in little work, by girth and height (Svendsen 1997).
    DonkeyFat,
}

/// `girth^2 x length / divisor`, cm and kg.
pub(super) fn girth_length(girth: Length, length: Length, divisor: &Published<f64>) -> BodyMass {
    BodyMass::kg(girth.to_cm().powi(2) * length.to_cm() / divisor.value)
}

/// `girth^2 x length / divisor`, inches and pounds.
pub(super) fn girth_length_imperial(
    girth: Length,
    length: Length,
    divisor: &Published<f64>,
) -> BodyMass {
    BodyMass::lb(girth.to_inches().powi(2) * length.to_inches() / divisor.value)
}

/// `(girth - intercept) / slope`, inches and pounds.
pub(super) fn foal(girth: Length) -> BodyMass {
    BodyMass::lb((girth.to_inches() - p::FOAL.intercept) / p::FOAL.slope)
}

/// `girth^a x other^b / divisor`, cm and kg.
pub(super) fn donkey(law: &Published<DonkeyLaw>, girth: Length, other: Length) -> BodyMass {
    BodyMass::kg(girth.to_cm().powf(law.girth) * other.to_cm().powf(law.other) / law.divisor)
}

impl MeasuredType {
    /// The measured type of a body type, where there is one.
    pub const fn of(body: BodyType) -> Option<Self> {
        match body {
            BodyType::Arabian => Some(Self::Arabian),
            BodyType::Pony => Some(Self::Pony),
            BodyType::Stock => Some(Self::Stock),
            BodyType::Draft => Some(Self::Draft),
            BodyType::Warmblood => Some(Self::Warmblood),
            BodyType::Thoroughbred
            | BodyType::Icelandic
            | BodyType::Shetland
            | BodyType::Saddle
            | BodyType::Miniature
            | BodyType::Donkey => None,
        }
    }

    /// Whether it is of the set of 2016, with the straight length; else of 2014, with the wrap length.
    const fn is_2016(self) -> bool {
        matches!(self, Self::Draft | Self::Warmblood)
    }

    /// The length its equations are for.
    pub const fn length_kind(self) -> super::LengthKind {
        if self.is_2016() {
            super::LengthKind::Straight
        } else {
            super::LengthKind::Wrap
        }
    }

    pub(super) const fn exponents(self) -> &'static Published<PowerLaw> {
        if self.is_2016() {
            &p::FOUR_MEASURES_2016
        } else {
            &p::FOUR_MEASURES_2014
        }
    }

    pub(super) const fn divisor(self) -> &'static Published<f64> {
        match self {
            Self::Arabian => &p::DIVISOR_ARABIAN,
            Self::Pony => &p::DIVISOR_PONY,
            Self::Stock => &p::DIVISOR_STOCK,
            Self::Draft => &p::DIVISOR_DRAFT,
            Self::Warmblood => &p::DIVISOR_WARMBLOOD,
        }
    }

    /// Root mean square error of the weight.
    pub(super) const fn error(self) -> &'static Published<f64> {
        if self.is_2016() {
            &p::ERROR_2016
        } else {
            &p::ERROR_2014
        }
    }

    /// `girth^a x length^b x height^c x neck^d / divisor`.
    pub(super) fn weight(
        self,
        girth: Length,
        length: Length,
        height: Length,
        neck: Length,
    ) -> BodyMass {
        let by = self.exponents().value;
        let product = girth.to_cm().powf(by.girth)
            * length.to_cm().powf(by.length)
            * height.to_cm().powf(by.height)
            * neck.to_cm().powf(by.neck);
        BodyMass::kg(product / self.divisor().value)
    }

    pub(super) const fn ideal_slopes(self) -> &'static Published<PerLengthAndHeight> {
        if self.is_2016() {
            &p::IDEAL_2016
        } else {
            &p::IDEAL_2014
        }
    }

    pub(super) const fn ideal_intercept(self) -> &'static Published<f64> {
        match self {
            Self::Arabian => &p::IDEAL_LESS_ARABIAN,
            Self::Pony => &p::IDEAL_LESS_PONY,
            Self::Stock => &p::IDEAL_LESS_STOCK,
            Self::Draft => &p::IDEAL_LESS_DRAFT,
            Self::Warmblood => &p::IDEAL_LESS_WARMBLOOD,
        }
    }

    /// Root mean square error of the ideal weight.
    pub(super) const fn ideal_error(self) -> &'static Published<f64> {
        if self.is_2016() {
            &p::ERROR_IDEAL_2016
        } else {
            &p::ERROR_IDEAL_2014
        }
    }

    /// `a x length + b x height - intercept`.
    pub(super) fn ideal(self, length: Length, height: Length) -> BodyMass {
        let slopes = self.ideal_slopes().value;
        BodyMass::kg(
            slopes.length * length.to_cm() + slopes.height * height.to_cm()
                - self.ideal_intercept().value,
        )
    }
}
