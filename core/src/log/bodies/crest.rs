//! A crest score.

use super::base::{JobKey, whole_number};
use crate::log::stored::twin;

whole_number! {
    /// A whole crest score, 0 to 5.
    // numeric: the published scale ends at 5
    CrestPoints = (0, 5)
}
twin! {
    /// A crest score.
    CrestV1 {
        /// The score.
        score: CrestPoints,
        /// The job that this does.
        job: Option<JobKey>,
    }
}

impl CrestV1 {
    /// The twin of a score.
    pub fn of(crest: crate::assess::Crest) -> Self {
        Self {
            // Both are a whole score from 0 to 5.
            score: CrestPoints(i64::from(crest.score())),
            job: None,
        }
    }

    /// The score.
    ///
    /// Errors: those of [`crate::assess::Crest::new`].
    pub fn crest(&self) -> Result<crate::assess::Crest, crate::assess::AssessError> {
        crate::assess::Crest::new(u8::try_from(self.score.get()).unwrap_or(u8::MAX))
    }
}
