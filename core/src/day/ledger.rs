//! What was really eaten: dry matter offered, left and eaten, by day and by week, against the plan.
//!
//! A [`Serving`] is one net, one feed or one turnout. It is counted where it is offered, once: a net that was filled is not
//! eaten, and one that was hung is. Soaked hay counts with the dry matter that is left of it after soaking. Grass counts
//! with what a model says is eaten in its hours, with wide ends; it is assumed, never seen. What nobody knows is never
//! nothing: it makes a sum "at least" ([`Sum::at_least`]).

use super::left::left_dry;
use crate::animal::{FoodId, LotId, PaddockId};
use crate::limits::Ends;
use crate::units::{BodyMass, DryMatter, LocalDate, PartOfBody};

/// What it is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Source {
    /// Forage of a lot; `None` when nobody said which.
    Forage(Option<LotId>),
    /// Bought feed; `None` for a typical balancer.
    Feed(Option<FoodId>),
    /// Grass of a turnout, by a model of what is eaten in its hours; `None` when nobody said on which paddock.
    Grass(Option<PaddockId>),
}

/// How an amount is known.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum HowKnown {
    /// Somebody saw or weighed it.
    Seen,
    /// Taken as planned; nobody said otherwise.
    Assumed,
    /// Nobody knows.
    NotKnown,
}

/// What was left of a serving.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum LeftOver {
    /// Nobody said: nothing, taken as planned.
    NotSaid,
    /// A part of what was offered, 0 to 1, with its ends: by eye in quarters, or wet against the same net's wet weight.
    Part(Ends<f64>),
    /// Dry hay, weighed.
    Dry(DryMatter),
    /// It was weighed in a way that says nothing of its dry matter: wet hay without the wet weight of the net.
    CannotTell,
}

/// One net, one feed or one turnout.
#[derive(Clone, Debug, PartialEq)]
pub struct Serving {
    /// The day it belongs to.
    pub day: LocalDate,
    /// What it is.
    pub from: Source,
    /// The dry matter that the plan meant here, or that was likely in the turnout that was decided on; `None` for what
    /// nobody asked for.
    pub planned: Option<DryMatter>,
    /// The dry matter that was offered, after soaking; `None` when nobody knows.
    pub offered: Option<Ends<DryMatter>>,
    /// How that is known.
    pub known: HowKnown,
    /// What was left of it.
    pub left: LeftOver,
}

impl Serving {
    /// Whether it is grass.
    pub const fn is_grass(&self) -> bool {
        matches!(self.from, Source::Grass(_))
    }

    /// How the amount offered is known: an amount that is not there is not known, whatever was said.
    pub const fn how_offered(&self) -> HowKnown {
        match self.offered {
            Some(_) => self.known,
            None => HowKnown::NotKnown,
        }
    }

    /// How it is known what was left.
    pub const fn how_left(&self) -> HowKnown {
        match (self.offered, self.left) {
            (None, _) | (_, LeftOver::CannotTell) => HowKnown::NotKnown,
            (_, LeftOver::NotSaid) => HowKnown::Assumed,
            (_, LeftOver::Part(_) | LeftOver::Dry(_)) => HowKnown::Seen,
        }
    }

    /// The dry matter that was left; `None` when nobody knows. No more than was offered.
    pub fn left_dry(&self) -> Option<Ends<DryMatter>> {
        let offered = self.offered?;
        match self.left {
            LeftOver::NotSaid => Some(Ends::exactly(DryMatter::ZERO)),
            LeftOver::Part(part) => Some(left_dry(part, offered)),
            LeftOver::Dry(dry) => {
                Some(offered.map(|offered| dry.max(DryMatter::ZERO).min(offered)))
            }
            LeftOver::CannotTell => None,
        }
    }

    /// The dry matter that was eaten: offered less left. `None` when nobody knows.
    ///
    /// The least is eaten of the least that was offered when the most of it was left.
    pub fn eaten(&self) -> Option<Ends<DryMatter>> {
        let offered = self.offered?;
        if let LeftOver::Part(part) = self.left {
            let gone = |left: f64| 1.0 - left.clamp(0.0, 1.0);
            let eaten = Ends::new(gone(part.most), gone(part.likely), gone(part.least));
            return Some(offered.with(eaten, |dry, part| dry * part));
        }
        Some(offered.with(self.left_dry()?, |offered, left| offered - left))
    }

    /// This serving's part of what a group was offered, as a band.
    #[must_use]
    pub fn share(mut self, part: Option<Ends<f64>>) -> Self {
        self.planned = part.and_then(|part| Some(self.planned? * part.likely));
        self.offered = part.and_then(|part| Some(self.offered?.with(part, |dry, part| dry * part)));
        self.left = match (self.left, part) {
            // What one of several left of a pile is not known by its weight.
            (LeftOver::Dry(dry), Some(part)) => LeftOver::Dry(dry * part.likely),
            (left, _) => left,
        };
        self
    }

    /// What it weighs in a share: the amount, or the planned one where nobody knows it.
    fn weight(&self) -> f64 {
        let known = self.offered.map(|offered| offered.likely);
        known.or(self.planned).map_or(0.0, DryMatter::to_kg)
    }
}

/// A sum of servings.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sum {
    /// What is known of it.
    pub dry: Ends<DryMatter>,
    /// A part of it is not known, so it is at least this.
    pub at_least: bool,
}

impl Sum {
    /// Adds up what each serving gives; one that gives nothing known makes the sum "at least".
    pub fn of<'a>(
        servings: impl IntoIterator<Item = &'a Serving>,
        amount: impl Fn(&Serving) -> Option<Ends<DryMatter>>,
    ) -> Self {
        let nothing = Self {
            dry: Ends::exactly(DryMatter::ZERO),
            at_least: false,
        };
        servings
            .into_iter()
            .fold(nothing, |sum, serving| match amount(serving) {
                Some(dry) => Self {
                    dry: sum.dry.with(dry, |a, b| a + b),
                    ..sum
                },
                None => Self {
                    at_least: true,
                    ..sum
                },
            })
    }
}

/// The parts of an amount by how they are known; they add up to 1.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Shares {
    /// Seen.
    pub seen: f64,
    /// Assumed.
    pub assumed: f64,
    /// Not known; weighed by what was planned.
    pub not_known: f64,
}

impl Shares {
    /// The shares by dry matter offered; `None` when there is none to share out.
    pub fn of<'a>(
        servings: impl IntoIterator<Item = &'a Serving>,
        how: impl Fn(&Serving) -> HowKnown,
    ) -> Option<Self> {
        let mut kg = Self {
            seen: 0.0,
            assumed: 0.0,
            not_known: 0.0,
        };
        for serving in servings {
            let weight = serving.weight();
            match how(serving) {
                HowKnown::Seen => kg.seen += weight,
                HowKnown::Assumed => kg.assumed += weight,
                HowKnown::NotKnown => kg.not_known += weight,
            }
        }
        let all = kg.seen + kg.assumed + kg.not_known;
        (0.0 < all).then(|| Self {
            seen: kg.seen / all,
            assumed: kg.assumed / all,
            not_known: kg.not_known / all,
        })
    }
}

/// One day.
#[derive(Clone, Debug, PartialEq)]
pub struct DayOfLedger {
    /// The day.
    pub day: LocalDate,
    /// Whether a plan held.
    pub has_plan: bool,
    /// What was offered, and what was to be and nobody answered.
    pub servings: Vec<Serving>,
    /// Dry matter of the plan that is still to come, today.
    pub to_come: DryMatter,
    /// The day is not over.
    pub runs: bool,
}

impl DayOfLedger {
    /// Nobody said anything of it: no plan and no entry.
    pub const fn is_blank(&self) -> bool {
        self.servings.is_empty() && !self.has_plan
    }

    /// Whether grass is among what is known of it or ought to be.
    pub fn has_grass(&self) -> bool {
        self.servings.iter().any(Serving::is_grass)
    }
}

/// Days of one animal or group, rising. Grass is among the servings where a turnout was logged, and where somebody decided
/// on turnout and nobody said whether it went out: then it is not known.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct Ledger {
    /// The days.
    pub days: Vec<DayOfLedger>,
}

/// What a day or a week comes to.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Totals {
    /// What the plan meant to be fed of what is over; `None` where no plan held on any of the days. Grass is in none of it:
    /// its likely amount would hide hay that is over the plan.
    pub planned: Option<DryMatter>,
    /// Offered.
    pub offered: Sum,
    /// LeftOver.
    pub left: Sum,
    /// Eaten.
    pub eaten: Sum,
    /// Of what was eaten, forage.
    pub forage: Sum,
    /// Of what was eaten, bought feed.
    pub feed: Sum,
    /// Of what was eaten, grass: by a model, with both ends.
    pub grass: Sum,
    /// How what was offered is known.
    pub offered_known: Option<Shares>,
    /// How what was left is known.
    pub left_known: Option<Shares>,
}

impl Totals {
    /// Of some days. A day without a plan and without an entry makes every sum "at least": it is not known.
    pub fn of(days: &[&DayOfLedger]) -> Self {
        let all = || days.iter().flat_map(|day| &day.servings);
        let blank = days.iter().any(|day| day.is_blank());
        let sum = |servings: &mut dyn Iterator<Item = &Serving>,
                   amount: fn(&Serving) -> Option<Ends<DryMatter>>| {
            let sum = Sum::of(servings, amount);
            Sum {
                at_least: sum.at_least || blank,
                ..sum
            }
        };
        let forage = |serving: &&Serving| matches!(serving.from, Source::Forage(_));
        let feed = |serving: &&Serving| matches!(serving.from, Source::Feed(_));
        Self {
            planned: days.iter().any(|day| day.has_plan).then(|| {
                let fed = all().filter(|serving| !serving.is_grass());
                fed.filter_map(|serving| serving.planned).sum()
            }),
            offered: sum(&mut all(), |serving| serving.offered),
            left: sum(&mut all(), Serving::left_dry),
            eaten: sum(&mut all(), Serving::eaten),
            forage: sum(&mut all().filter(forage), Serving::eaten),
            feed: sum(&mut all().filter(feed), Serving::eaten),
            grass: sum(
                &mut all().filter(|serving| serving.is_grass()),
                Serving::eaten,
            ),
            offered_known: Shares::of(all(), Serving::how_offered),
            // Nobody looks for what is left of grass.
            left_known: Shares::of(
                all().filter(|serving| !serving.is_grass()),
                Serving::how_left,
            ),
        }
    }
}

/// What was really eaten a day, as a part of body weight; grass that was logged is in it, with its ends.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LevelEaten {
    /// The mean of the days that are over.
    pub level: Ends<PartOfBody>,
    /// How many days those are.
    pub days: u32,
    /// A part is not known, so it is at least this.
    pub at_least: bool,
}

impl Ledger {
    /// What all its days come to.
    pub fn totals(&self) -> Totals {
        Totals::of(&self.days.iter().collect::<Vec<_>>())
    }

    /// What was really eaten a day by the days that are over; `None` when none is, or nobody said anything of any.
    pub fn level(&self, weight: BodyMass) -> Option<LevelEaten> {
        let over: Vec<&DayOfLedger> = self.days.iter().filter(|day| !day.runs).collect();
        let days = u32::try_from(over.len()).ok().filter(|days| 0 < *days)?;
        if weight <= BodyMass::ZERO || over.iter().all(|day| day.servings.is_empty()) {
            return None;
        }
        let eaten = Totals::of(&over).eaten;
        Some(LevelEaten {
            level: eaten.dry.map(|dry| (dry / f64::from(days)).part_of(weight)),
            days,
            at_least: eaten.at_least,
        })
    }
}

#[cfg(test)]
mod tests;
