//! A look over for signs of laminitis.

use super::base::JobKey;
use crate::animal::Answer;
use crate::log::stored::twin;

twin! {
    /// A look over. Every sign is yes, no, or nobody looked; nothing is preset.
    LookOverV1 {
        /// Its gait is not as usual.
        gait: Answer,
        /// It stands unlike itself.
        stance: Answer,
        /// It turns with difficulty.
        turning: Answer,
        /// It shifts its weight from foot to foot.
        shifting_weight: Answer,
        /// A strong pulse at the foot.
        strong_pulse: Answer,
        /// Pain in a foot.
        foot_pain: Answer,
        /// A warm hoof.
        warm_hoof: Answer,
        /// It lies down more than usual.
        lying_more: Answer,
        /// Remarks.
        note: Option<String>,
        /// The job that this does.
        job: Option<JobKey>,
    }
}
