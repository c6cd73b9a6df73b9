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
