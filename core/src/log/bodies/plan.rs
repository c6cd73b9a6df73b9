//! An issued plan: frozen with its inputs, its amounts and the version of the rules. It is never worked out again.

use super::base::{BodyGrams, BodyHundredths, Count, FeedGrams, JobKey};
use super::soak_step::RecipeV1;
use crate::animal::{FoodId, LotId, NetId, PersonId};
use crate::forage::Verdict;
use crate::log::error::{LogError, Path};
use crate::log::stamp::Stamp;
use crate::log::stored::{Name, Stored, choice, text, twin};
use crate::sources::RecordId;
use crate::units::{LocalDate, LocalTime};
use serde_json::Value;

impl Stored for Stamp {
    fn read(value: Option<&Value>, path: &Path<'_>) -> Result<Self, LogError> {
        Self::read(text(value, path)?, path)
    }

    fn write(&self) -> Option<Value> {
        Some(Value::from(self.to_string()))
    }
}

twin! {
    /// A record that the plan was made from.
    InputV1 {
        /// Which record.
        record: RecordId,
        /// In which version.
        stamp: Stamp,
    }
}
choice! {
    /// What was said of the sugar of a forage, without its chance.
    SugarSaid {
        /// Within the limit.
        Within = "within",
        /// Over it.
        Over = "over",
        /// Not proven.
        NotProven = "not_proven",
    }
}

impl From<Verdict> for SugarSaid {
    fn from(verdict: Verdict) -> Self {
        match verdict {
            Verdict::Within { .. } => Self::Within,
            Verdict::Over { .. } => Self::Over,
            Verdict::NotProven { .. } => Self::NotProven,
        }
    }
}

twin! {
    /// An amount a day of one feed. Neither a lot nor a food stands for a typical balancer.
    AmountV1 {
        /// The lot, for forage.
        lot: Option<LotId>,
        /// The food, for anything else.
        food: Option<FoodId>,
        /// Dry matter as eaten.
        dry_matter_g: FeedGrams,
        /// As weighed out, before soaking.
        as_fed_g: FeedGrams,
        /// It is soaked.
        soaked: bool,
        /// In how many feeds a day, for anything else than forage; `None` when nobody knows.
        feeds: Option<Count>,
        /// What was said of its sugar as it is fed; `None` for bought feed, and where no limit is asked.
        sugar: Option<SugarSaid>,
    }
}
twin! {
    /// A net of the day.
    NetShareV1 {
        /// The visit at which it is hung.
        visit: LocalTime,
        /// The lot in it.
        lot: LotId,
        /// As weighed out, before soaking.
        as_fed_g: FeedGrams,
        /// It is soaked.
        soaked: bool,
        /// Which net.
        net: Option<NetId>,
    }
}
twin! {
    /// An issued plan for the animal or group that the record is about.
    PlanV1 {
        /// The version of the rules.
        rules: Name,
        /// The first day.
        from: LocalDate,
        /// The day of the next review.
        review: LocalDate,
        /// Who decided.
        decided_by: Option<PersonId>,
        /// The records it was made from.
        inputs: Vec<InputV1>,
        /// The weight it was reckoned on.
        weight_g: Option<BodyGrams>,
        /// Dry matter a day that is allowed, as a part of that weight; what is weighed out comes as near as steps allow.
        level: BodyHundredths,
        /// The lowest level that was allowed.
        lowest: BodyHundredths,
        /// The amounts of a day.
        amounts: Vec<AmountV1>,
        /// When somebody comes, rising, whether a net is hung then or not.
        visits: Vec<LocalTime>,
        /// The nets of a day.
        nets: Vec<NetShareV1>,
        /// Water and time of what is soaked.
        soaking: Option<RecipeV1>,
        /// Days between look-overs.
        look_over_days: Count,
        /// Sessions of work a week; `None` when no work was planned.
        work_a_week: Option<Count>,
        /// The longest gap without forage that the person accepted, in minutes; `None` when it is over the line and
        /// nobody accepted it.
        gap_accepted_min: Option<GapMinutes>,
        /// The job that this does.
        job: Option<JobKey>,
    }
}

super::base::whole_number! {
    /// A gap without forage, in minutes.
    // numeric: a day
    GapMinutes = (0, 1_440)
}
