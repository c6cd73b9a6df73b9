//! The plan, and the look-over it rests on.

use super::Said;
use tussock_core::animal::{AnimalId, Answer};
use tussock_core::graze::intake::Shortened;
use tussock_core::plan::{
    BucketLine, EnergyLine, GrassLine, HayLine, Lever, PlanError, Raised, Separate, Signs,
};
use tussock_core::work::WorkLine;

/// A sign of the look-over. The core holds the answers as the fields of [`Signs`]; a screen asks them one by one.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Sign {
    /// Its gait.
    Gait,
    /// How it stands.
    Stance,
    /// How it turns.
    Turning,
    /// Shifting its weight.
    ShiftingWeight,
    /// A strong pulse at the foot.
    StrongPulse,
    /// Pain in a foot.
    FootPain,
    /// A warm hoof.
    WarmHoof,
    /// Lying down more.
    LyingMore,
}

impl Sign {
    /// All of them, in the order in which a person looks: from a distance first, then by hand.
    pub const ALL: &'static [Self] = &[
        Self::Gait,
        Self::Turning,
        Self::Stance,
        Self::ShiftingWeight,
        Self::LyingMore,
        Self::FootPain,
        Self::StrongPulse,
        Self::WarmHoof,
    ];

    /// The answer to it. A new sign of the core does not compile here until it has its question.
    pub const fn of(self, signs: &Signs) -> Answer {
        let Signs {
            gait,
            stance,
            turning,
            shifting_weight,
            strong_pulse,
            foot_pain,
            warm_hoof,
            lying_more,
        } = *signs;
        match self {
            Self::Gait => gait,
            Self::Stance => stance,
            Self::Turning => turning,
            Self::ShiftingWeight => shifting_weight,
            Self::StrongPulse => strong_pulse,
            Self::FootPain => foot_pain,
            Self::WarmHoof => warm_hoof,
            Self::LyingMore => lying_more,
        }
    }

    /// Writes the answer to it.
    pub const fn answer(self, signs: &mut Signs, answer: Answer) {
        match self {
            Self::Gait => signs.gait = answer,
            Self::Stance => signs.stance = answer,
            Self::Turning => signs.turning = answer,
            Self::ShiftingWeight => signs.shifting_weight = answer,
            Self::StrongPulse => signs.strong_pulse = answer,
            Self::FootPain => signs.foot_pain = answer,
            Self::WarmHoof => signs.warm_hoof = answer,
            Self::LyingMore => signs.lying_more = answer,
        }
    }
}

/// Words for a plan.
pub trait PlanWords {
    /// The plain question of a sign.
    fn sign_question(&self, sign: Sign) -> &'static str;
    /// What to look at or feel for.
    fn sign_how(&self, sign: Sign) -> &'static str;
    /// The sign as something seen: "a strong pulse at the foot".
    fn sign(&self, sign: Sign) -> &'static str;
    /// What a look-over says: a sign, look again, not complete, or no signs seen.
    fn signs(&self, signs: &Signs) -> Said;
    /// What would change the plan most.
    fn lever(&self, lever: &Lever) -> Said;
    /// Grass in this plan.
    fn grass(&self, grass: &GrassLine) -> Said;
    /// Why a time at grass is shorter than what was asked for.
    fn shortened(&self, why: Shortened) -> &'static str;
    /// Work in this plan.
    fn work(&self, work: &WorkLine) -> Said;
    /// Why the forage is more than the level gives.
    fn raised(&self, raised: Raised) -> Said;
    /// A forage of the day: what is weighed out, soaked or not.
    fn hay(&self, hay: &HayLine) -> Said;
    /// The energy of the day.
    fn energy_line(&self, energy: &EnergyLine) -> Said;
    /// The bought feed of the day.
    fn bucket_line(&self, line: &BucketLine) -> Said;
    /// Why two animals need separating at hay time; `name` gives the name of an animal.
    fn separate(&self, why: &Separate, name: &dyn Fn(&AnimalId) -> String) -> Said;
    /// Why no draft could be made.
    fn plan_error(&self, error: &PlanError) -> Said;
}
