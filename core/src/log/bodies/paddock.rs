//! A paddock.

use super::base::{Count, Millimetres, SquareMetres, whole_number};
use crate::graze::sward::SwardKind;
use crate::log::stored::{Name, twin, words};
use crate::units::{Length, LocalDate};
use serde_json::Value;

words!(SwardKind {
    MixedWithRyegrass = "mixed_with_ryegrass",
    Ryegrass = "ryegrass",
    Meadow = "meadow",
    Fescue = "fescue",
    WarmSeason = "warm_season",
    CloverRich = "clover_rich",
});

whole_number! {
    /// A length on the ground, in millimetres.
    // numeric: 10 cm to 10 km
    GroundMillimetres = (100, 10_000_000)
}

impl GroundMillimetres {
    /// To the nearest millimetre.
    ///
    /// Errors: shorter or longer than is believed.
    pub fn of(length: Length) -> Result<Self, crate::log::LogError> {
        super::base::from_measure(length.to_cm() * 10.0, Self::RANGE, Self::new)
    }

    /// As a length.
    pub fn length(self) -> Length {
        Length::cm(self.get() as f64 / 10.0)
    }
}

twin! {
    /// How a paddock is grazed in strips.
    StripV2 {
        /// The width across which the fence stands.
        width_mm: GroundMillimetres,
        /// A fence behind the animals keeps them off what they have grazed.
        back_fence: bool,
        /// The height that is left standing.
        residual_mm: Millimetres,
        /// For how many days a strip is made.
        days: Count,
    }
}
twin! {
    /// A paddock. Its id is the id of the record.
    PaddockV2 {
        /// Its name.
        name: Name,
        /// Its area, when somebody measured it.
        area_m2: Option<SquareMetres>,
        /// It lies in shade for most of the morning; `None` when nobody said.
        shade: Option<bool>,
        /// What grows there, when somebody said.
        kind: Option<SwardKind>,
        /// The plants that were seen there, by the keys of the catalogue of plants. Keys of a later release are kept.
        plants: Vec<Name>,
        /// How it is grazed in strips, when it is.
        strip: Option<StripV2>,
        /// Since when it rests; `None` while it is grazed.
        rest_from: Option<LocalDate>,
        /// Remarks.
        note: Option<String>,
    }
}

impl PaddockV2 {
    /// A paddock of which only the name was said.
    pub const fn named(name: Name) -> Self {
        Self {
            name,
            area_m2: None,
            shade: None,
            kind: None,
            plants: Vec::new(),
            strip: None,
            rest_from: None,
            note: None,
        }
    }
}

/// A paddock of the first version says only its name, its area and remarks, and nothing is invented.
pub(crate) const fn paddock_with_sward(body: Value) -> Value {
    body
}
