//! What phases and the next step are decided on.

use crate::animal::{Answer, Goal, Phase};
use crate::assess::ConditionRange;
use crate::limits::{Ends, RestrictionBar};
use crate::units::{BodyMass, Length, LocalDate, PartOfBody};

/// How soon a vet is rung.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum HowSoon {
    /// Before anything is cut.
    First,
    /// This morning.
    ThisMorning,
    /// Today.
    Today,
    /// Now.
    Now,
}

/// A reading that lies far under where the animal was.
#[derive(Clone, Copy, Debug, PartialEq, Default)]
pub enum FastLoss {
    /// None.
    #[default]
    None,
    /// One reading: it is measured again.
    Once {
        /// The part of body weight it lies under.
        part: f64,
    },
    /// Measured again, and still nobody can tell.
    NotSure {
        /// The chance that it is too fast.
        chance: f64,
    },
    /// Measured again, and likely so.
    Confirmed {
        /// The chance.
        chance: f64,
    },
}

/// The chances of the weekly rate: a loss as a part of body weight. They add up to 1.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RateBands {
    /// It loses under 0.25 % a week, stands still, or gains.
    pub under_quarter: f64,
    /// 0.25 to 0.5 %.
    pub to_half: f64,
    /// 0.5 to 1 %.
    pub to_one: f64,
    /// Over 1 %.
    pub over_one: f64,
}

/// How fast it changes, as the trend says.
#[derive(Clone, Debug, PartialEq)]
pub struct Pace {
    /// What it loses a week, with the ends of the 80 % band; negative where it gains.
    pub lost_a_week: Ends<BodyMass>,
    /// The same as a part of its weight.
    pub part_a_week: Ends<f64>,
    /// The chances of the bands of the rate.
    pub bands: RateBands,
    /// The chance that it gains.
    pub gaining: f64,
    /// Weeks the rate is reckoned over, from its baseline.
    pub weeks: f64,
    /// Readings in them, without the odd ones.
    pub readings: usize,
}

/// How its weight stands to its target.
#[derive(Clone, Copy, Debug, PartialEq, Default)]
pub struct TargetStands {
    /// The chance that it is at its target or under it.
    pub reached: f64,
    /// The chance that it is within the band around its target in which a weight holds.
    pub in_band: f64,
    /// The chance that it is over that band.
    pub over_band: f64,
    /// The last readings that lie over that band, one after another.
    pub readings_over: u32,
    /// By how much its girth grew since it holds; `None` where nobody taped it then or now.
    pub girth_up: Option<Length>,
}

/// What was really eaten, as the ledger says.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Eaten {
    /// Dry matter eaten a day as a part of body weight, of what is known. Grass that was logged is in it with both ends, so
    /// that what is certain to be eaten is its least.
    pub level: Ends<PartOfBody>,
    /// The same as the plan meant it; `None` where no plan held.
    pub planned: Option<PartOfBody>,
    /// The part of what was offered that somebody saw. Grass is never seen: it is a model's.
    pub seen: f64,
    /// The part of what was offered that nobody knows; turnout that was decided on and that nobody spoke of is in it.
    pub not_known: f64,
    /// Over how many days.
    pub days: u32,
}

/// What is known of the hay it eats.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HayKnown {
    /// Tested.
    Tested,
    /// Not tested.
    NotTested {
        /// Days it still lasts, when known.
        lasts: Option<i64>,
    },
    /// There is none.
    None,
}

/// Everything that phases and the next step are decided on.
#[allow(
    clippy::struct_excessive_bools,
    reason = "each is a fact of its own, as a row of the table asks for it"
)]
#[derive(Clone, Debug, PartialEq)]
pub struct Facts {
    /// The local day.
    pub day: LocalDate,
    /// Its phase.
    pub phase: Phase,
    /// Its phase before this one, when known.
    pub phase_before: Option<Phase>,
    /// Days it has been in its phase, when known.
    pub days_in_phase: Option<i64>,
    /// What is wanted of its weight.
    pub goal: Goal,
    /// It is one of those in which not eating enough is for the vet the same day.
    pub fat_in_blood_risk: bool,
    /// Donkey rules hold.
    pub donkey: bool,
    /// Something stops it now, and how soon the vet is rung.
    pub stop: Option<HowSoon>,
    /// A warm hoof or lying more stands, or a look again is still to be made.
    pub look_again: bool,
    /// It has laminitis now.
    pub laminitis_now: bool,
    /// A sign of laminitis stands.
    pub sign_stands: bool,
    /// Whether its last look-over was clean.
    pub look_over_clean: Answer,
    /// It is lame, on pain relief, on box rest or sick.
    pub not_sound: bool,
    /// A vet's word that holds was given since its episode or recovery began.
    pub vet_spoke: bool,
    /// A vet's word on the lowest level that holds.
    pub vets_level: Option<PartOfBody>,
    /// Its last condition.
    pub condition: Option<ConditionRange>,
    /// Its last scores, the newest first.
    pub scores: Vec<ConditionRange>,
    /// Days on which it was weighed since it is in its phase.
    pub weighings: u32,
    /// It was weighed ever.
    pub weighed: bool,
    /// How fast it changes.
    pub pace: Option<Pace>,
    /// A reading far under where it was.
    pub fast_loss: FastLoss,
    /// The chance that a donkey loses faster than donkeys may.
    pub donkey_too_fast: f64,
    /// How it stands to its target.
    pub target: Option<TargetStands>,
    /// The level of the plan that holds.
    pub level: Option<PartOfBody>,
    /// Its starting level.
    pub start: PartOfBody,
    /// The level below, to be asked for at a review; `None` at the bottom.
    pub next_down: Option<PartOfBody>,
    /// The plan is raised to a floor already: a lower level would take nothing away.
    pub floor_reached: bool,
    /// What stands in the way of less.
    pub bars: Vec<RestrictionBar>,
    /// Days at the starting level that were really fed.
    pub days_at_start: i64,
    /// The day of the review; `None` without a plan.
    pub review: Option<LocalDate>,
    /// What was really eaten.
    pub eaten: Option<Eaten>,
    /// It is at grass, and what it eats there is not counted.
    pub grass_not_counted: bool,
    /// What is known of its hay.
    pub hay: HayKnown,
}

impl Facts {
    /// Whether the review has come; without a plan there is nothing to wait for.
    pub fn review_is_due(&self) -> bool {
        self.review.is_none_or(|review| review <= self.day)
    }
}
