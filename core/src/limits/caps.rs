//! How much of the forage may be straw or lucerne, and how fast a donkey may lose.

use super::error::{LimitsError, WEIGHT};
use super::published::{
    DONKEY_LOSS_DAYS, DONKEY_LOSS_KG, DONKEY_LOSS_PART, LUCERNE_MOST, LUCERNE_USUAL, STRAW,
    STRAW_CHANGEOVER_BETTER, STRAW_CHANGEOVER_LEAST, STRAW_DONKEY_LEAST, STRAW_DONKEY_MOST,
    STRAW_GOOD_TEETH,
};
use crate::animal::{Kind, Teeth};
use crate::sources::Provenance;
use crate::units::{BodyMass, DryMatter};
use std::fmt;

/// A part of the forage's dry matter: 30 % is 0.3.
#[derive(Clone, Copy, PartialEq, PartialOrd)]
pub struct ForagePart(f64);

impl ForagePart {
    /// From a fraction.
    pub const fn fraction(value: f64) -> Self {
        Self(value)
    }

    /// As a fraction.
    pub const fn to_fraction(self) -> f64 {
        self.0
    }

    /// As percent.
    pub const fn to_percent(self) -> f64 {
        self.0 * 100.0
    }
}

impl fmt::Debug for ForagePart {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} % of forage", self.to_percent())
    }
}

/// Straw it may have: clean cereal straw without ears, water always.
#[derive(Clone, Debug, PartialEq)]
pub struct StrawCap {
    /// What it should have at least: donkeys with good teeth, in front of them always.
    pub least: Option<ForagePart>,
    /// What it may have at most; nothing with poor teeth (ours).
    pub most: ForagePart,
    /// The changeover in days, shortest and better.
    pub changeover_days: [i64; 2],
    /// Where it comes from.
    pub from: Provenance,
}

/// The straw cap of an animal. A donkey whose teeth nobody looked at has the cap of horses.
pub fn straw_cap(kind: Kind, teeth: Teeth) -> StrawCap {
    let from = Provenance::new();
    let (least, most, from) = match teeth {
        Teeth::Poor => (None, ForagePart(0.0), from),
        Teeth::Good if kind.is_donkey() => (
            Some(ForagePart(*STRAW_DONKEY_LEAST)),
            ForagePart(*STRAW_DONKEY_MOST),
            from.constant(&STRAW_DONKEY_LEAST)
                .constant(&STRAW_DONKEY_MOST),
        ),
        Teeth::Good => (
            None,
            ForagePart(*STRAW_GOOD_TEETH),
            from.constant(&STRAW_GOOD_TEETH),
        ),
        Teeth::NotKnown => (None, ForagePart(*STRAW), from.constant(&STRAW)),
    };
    StrawCap {
        least,
        most,
        changeover_days: [*STRAW_CHANGEOVER_LEAST, *STRAW_CHANGEOVER_BETTER],
        from: from
            .constant(&STRAW_CHANGEOVER_LEAST)
            .constant(&STRAW_CHANGEOVER_BETTER),
    }
}

/// How a part of the forage stands to its cap.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum CapVerdict {
    /// Within it.
    Within {
        /// The part.
        part: ForagePart,
    },
    /// Between the usual and the most: watch the animal.
    Watch {
        /// The part.
        part: ForagePart,
    },
    /// Over it.
    Over {
        /// The part.
        part: ForagePart,
        /// The cap.
        most: ForagePart,
    },
    /// There is no forage to be a part of, or an amount is no number.
    NotKnown,
}

/// Judges a mass within the forage against a cap. Both are dry matter.
pub fn judge_cap(mass: DryMatter, forage: DryMatter, most: ForagePart) -> CapVerdict {
    if !(mass.is_finite() && forage.is_finite() && forage > DryMatter::ZERO) {
        return CapVerdict::NotKnown;
    }
    let part = ForagePart(mass / forage);
    if part <= most {
        CapVerdict::Within { part }
    } else {
        CapVerdict::Over { part, most }
    }
}

/// Lucerne it may have. Some animals do worse on it.
#[derive(Clone, Debug, PartialEq)]
pub struct LucerneCap {
    /// Up to here is usual.
    pub usual: ForagePart,
    /// At most.
    pub most: ForagePart,
    /// Where it comes from.
    pub from: Provenance,
}

/// The lucerne cap.
pub fn lucerne_cap() -> LucerneCap {
    LucerneCap {
        usual: ForagePart(*LUCERNE_USUAL),
        most: ForagePart(*LUCERNE_MOST),
        from: Provenance::new()
            .constant(&LUCERNE_USUAL)
            .constant(&LUCERNE_MOST),
    }
}

/// Judges lucerne within the forage, both dry matter.
pub fn judge_lucerne(lucerne: DryMatter, forage: DryMatter) -> CapVerdict {
    let cap = lucerne_cap();
    match judge_cap(lucerne, forage, cap.most) {
        CapVerdict::Within { part } if part > cap.usual => CapVerdict::Watch { part },
        verdict => verdict,
    }
}

/// The most a donkey may lose in a month: 5 kg, and never more than 3 % of its weight.
///
/// # Errors
/// A weight that is not believed.
pub fn donkey_loss_cap(weight: BodyMass) -> Result<BodyMass, LimitsError> {
    WEIGHT.check(weight.to_kg())?;
    Ok(BodyMass::kg(*DONKEY_LOSS_KG).min(weight * *DONKEY_LOSS_PART))
}

/// How a donkey's loss stands to its cap.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum DonkeyLossVerdict {
    /// Within it.
    Within,
    /// Too fast.
    TooFast {
        /// What it lost, as of a month.
        a_month: BodyMass,
        /// The cap.
        most: BodyMass,
    },
    /// No days, or no number.
    NotKnown,
}

/// Judges a donkey's loss over some days from a weight.
///
/// # Errors
/// A weight that is not believed.
pub fn judge_donkey_loss(
    weight: BodyMass,
    lost: BodyMass,
    days: u32,
) -> Result<DonkeyLossVerdict, LimitsError> {
    let most = donkey_loss_cap(weight)?;
    if days == 0 || !lost.is_finite() {
        return Ok(DonkeyLossVerdict::NotKnown);
    }
    let a_month = lost * (*DONKEY_LOSS_DAYS / f64::from(days));
    Ok(if a_month <= most {
        DonkeyLossVerdict::Within
    } else {
        DonkeyLossVerdict::TooFast { a_month, most }
    })
}
