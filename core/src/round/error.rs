//! The one error of this room.

/// What is wrong.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum RoundError {
    /// A text that is no key of a job.
    NotAKey {
        /// The text.
        text: String,
    },
}

impl std::fmt::Display for RoundError {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{self:?}")
    }
}

impl std::error::Error for RoundError {}
