//! English, in British spelling.

mod horses;

use super::Shown;

/// English, with how the person wants numbers shown. It is small and copied freely.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct English {
    /// Units and region.
    pub shown: Shown,
}

impl English {
    /// English with these units and this region.
    pub const fn new(shown: Shown) -> Self {
        Self { shown }
    }
}
