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

impl LookOverV1 {
    /// Whether it counts as the look-over of its days: somebody looked at all of it, or saw a sign. A warm hoof or lying
    /// more does not: it is looked at again.
    pub fn counts(&self) -> bool {
        let again = [self.warm_hoof, self.lying_more].contains(&Answer::Yes);
        !again && self.clean() != Answer::NotKnown
    }

    /// Whether nothing was found: no as soon as one sign was seen, not known while one was not looked at.
    pub fn clean(&self) -> Answer {
        let signs = [
            self.gait,
            self.stance,
            self.turning,
            self.shifting_weight,
            self.strong_pulse,
            self.foot_pain,
            self.warm_hoof,
            self.lying_more,
        ];
        if signs.contains(&Answer::Yes) {
            Answer::No
        } else if signs.contains(&Answer::NotKnown) {
            Answer::NotKnown
        } else {
            Answer::Yes
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_look_over_is_clean_only_when_every_sign_was_looked_for() {
        let mut look = LookOverV1 {
            gait: Answer::No,
            stance: Answer::No,
            turning: Answer::No,
            shifting_weight: Answer::No,
            strong_pulse: Answer::No,
            foot_pain: Answer::No,
            warm_hoof: Answer::No,
            lying_more: Answer::No,
            note: None,
            job: None,
        };
        assert_eq!(look.clean(), Answer::Yes);
        look.strong_pulse = Answer::NotKnown;
        assert_eq!(look.clean(), Answer::NotKnown);
        look.warm_hoof = Answer::Yes;
        assert_eq!(look.clean(), Answer::No);
    }
}
