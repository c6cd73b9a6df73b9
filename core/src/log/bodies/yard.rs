//! A yard.

use super::base::MicroDegrees;
use crate::graze::plants::Region;
use crate::log::stored::{Name, twin, words};
use serde_json::Value;

words!(Region {
    BritishIsles = "british_isles",
    Europe = "europe",
    NorthAmerica = "north_america",
    Australia = "australia",
    NewZealand = "new_zealand",
    SouthernAfrica = "southern_africa",
    Tropics = "tropics",
});

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
