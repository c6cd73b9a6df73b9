//! The answer to a job that leaves no other entry.

use super::base::JobKey;
use crate::log::stored::{choice, twin};

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
    }
}
