//! A yard.

use super::base::MicroDegrees;
use crate::log::stored::{Name, choice, twin};
use serde_json::Value;

choice! {
    /// A part of the world whose plants and hazards a yard goes by.
    Region {
        /// The British Isles.
        BritishIsles = "british_isles",
        /// The rest of Europe.
        Europe = "europe",
        /// North America.
        NorthAmerica = "north_america",
        /// Australia.
        Australia = "australia",
        /// New Zealand.
        NewZealand = "new_zealand",
        /// Southern Africa.
        SouthernAfrica = "southern_africa",
        /// The tropics.
        Tropics = "tropics",
    }
}

impl Region {
    /// All of them, in the order in which they are asked.
    pub const ALL: [Self; 7] = [
        Self::BritishIsles,
        Self::Europe,
        Self::NorthAmerica,
        Self::Australia,
        Self::NewZealand,
        Self::SouthernAfrica,
        Self::Tropics,
    ];
}

twin! {
    /// Where a yard lies, for the sun.
    PlaceV2 {
        /// Latitude, north positive.
        latitude: MicroDegrees,
        /// Longitude, east positive.
        longitude: MicroDegrees,
        /// The name of the zone its clocks go by, as `Europe/London`, when somebody said or the device knew.
        zone: Option<Name>,
    }
}
twin! {
    /// A yard: where animals live and whose they are.
    YardV2 {
        /// Its name.
        name: Name,
        /// Where it lies, when somebody said.
        place: Option<PlaceV2>,
        /// The regions whose plants and hazards somebody ticked.
        regions: Vec<Region>,
        /// The currency of its prices, when somebody said.
        currency: Option<Name>,
        /// The vet's telephone number, for the call sheet.
        vet_telephone: Option<String>,
        /// Remarks.
        note: Option<String>,
    }
}

impl YardV2 {
    /// A yard of which only the name was said.
    pub const fn named(name: Name) -> Self {
        Self {
            name,
            place: None,
            regions: Vec::new(),
            currency: None,
            vet_telephone: None,
            note: None,
        }
    }
}

/// A yard of the first version says nothing of regions or of its zone, and nothing is invented.
pub(crate) const fn yard_with_regions(body: Value) -> Value {
    body
}
