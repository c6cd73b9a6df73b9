//! The labels of the paddock.

/// What the paddock says.
pub trait PaddockWords {
    /// The place.
    fn paddock(&self) -> &'static str;
}
