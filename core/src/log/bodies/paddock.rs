//! A paddock.

use super::base::SquareMetres;
use crate::log::stored::{Name, twin};

twin! {
    /// A paddock.
    PaddockV1 {
        /// Its name.
        name: Name,
        /// Its area, when somebody measured it.
        area_m2: Option<SquareMetres>,
        /// Remarks: shade, water, what grows there.
        note: Option<String>,
    }
}
