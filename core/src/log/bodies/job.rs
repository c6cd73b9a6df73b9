//! The answer to a job that leaves no other entry.

use super::base::JobKey;
use crate::log::error::LogError;
use crate::log::stored::{choice, twin};
use crate::round::Key;
use crate::soak::NotSoaked;

choice! {
    /// What became of a job.
    JobAnswer {
        /// Done.
        Done = "done",
        /// Done as planned, said for a whole visit or for days.
        AsPlanned = "as_planned",
        /// Not done.
        NotDone = "not_done",
        /// Somebody else was to do it.
        SomebodyElse = "somebody_else",
        /// Nobody knows.
        NotKnown = "not_known",
    }
}
twin! {
    /// The answer to a job.
    JobV1 {
        /// Which job.
        job: JobKey,
        /// What became of it.
        answer: JobAnswer,
        /// Remarks.
        note: Option<String>,
        /// Why hay was not soaked, of a soak that was not done.
        not_soaked: Option<NotSoaked>,
    }
}

impl JobKey {
    /// The key of a job of the round.
    ///
    /// # Errors
    /// Ids so long that the text does not fit.
    pub fn of(key: &Key) -> Result<Self, LogError> {
        Self::new(&key.to_string())
    }

    /// The key as the round reads it; `None` for one of a later release.
    pub fn key(&self) -> Option<Key> {
        Key::from_text(self.as_str()).ok()
    }
}
