//! A yard.

use super::base::MicroDegrees;
use crate::log::stored::{Name, twin};

twin! {
    /// Where a yard lies, for the sun.
    PlaceV1 {
        /// Latitude, north positive.
        latitude: MicroDegrees,
        /// Longitude, east positive.
        longitude: MicroDegrees,
    }
}
twin! {
    /// A yard: where animals live and whose they are.
    YardV1 {
        /// Its name.
        name: Name,
        /// Where it lies, when somebody said.
        place: Option<PlaceV1>,
        /// The currency of its prices, when somebody said.
        currency: Option<Name>,
        /// The vet's telephone number, for the call sheet.
        vet_telephone: Option<String>,
        /// Remarks.
        note: Option<String>,
    }
}
