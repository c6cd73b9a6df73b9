//! One pass with the scale over all that is to be weighed: several animals and groups, several days.

use super::{DayNet, NetState, NetsDay, nets_days};
use crate::shelf::Shelf;
use crate::views::round::Today;
use tussock_core::units::AsFed;

/// The nets that one pass with the scale fills.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Pass {
    /// The days of each animal or group that has nets.
    pub days: Vec<NetsDay>,
}

impl Pass {
    /// Every net with its day and its number in that day, in the order of the pass: by day, then by visit, then by name.
    /// All that hang at one visit are filled together, whoever they are for.
    pub fn order(&self) -> Vec<(&NetsDay, usize, &DayNet)> {
        let mut all: Vec<(&NetsDay, usize, &DayNet)> = self
            .days
            .iter()
            .flat_map(|day| (1..).zip(&day.nets).map(move |(nth, net)| (day, nth, net)))
            .collect();
        all.sort_by_key(|(day, _, net)| (day.day, net.visit));
        all
    }

    /// The next net to weigh.
    pub fn next(&self) -> Option<(&NetsDay, usize, &DayNet)> {
        self.order()
            .into_iter()
            .find(|(_, _, net)| net.state == NetState::ToWeigh)
    }

    /// How many are to be weighed.
    pub fn to_weigh(&self) -> usize {
        self.days.iter().map(NetsDay::to_weigh).sum()
    }

    /// How many were weighed.
    pub fn weighed(&self) -> usize {
        self.days.iter().map(NetsDay::weighed).sum()
    }

    /// How many there are.
    pub fn count(&self) -> usize {
        self.days.iter().map(|day| day.nets.len()).sum()
    }

    /// Whether every net was weighed.
    pub fn all_weighed(&self) -> bool {
        self.weighed() == self.count()
    }

    /// The hay that was weighed, and that of the pass.
    pub fn hay(&self) -> [AsFed; 2] {
        let both: Vec<[AsFed; 2]> = self.days.iter().map(NetsDay::hay).collect();
        [
            both.iter().map(|[weighed, _]| *weighed).sum(),
            both.iter().map(|[_, all]| *all).sum(),
        ]
    }

    /// The one animal or group it is for; `None` when there are several.
    pub fn only(&self) -> Option<&str> {
        let (first, rest) = self.days.split_first()?;
        let alone = rest.iter().all(|day| day.about == first.about);
        alone.then_some(first.name.as_str())
    }
}

/// The ids of the animals and groups that have a plan, by name.
pub fn subjects(today: &Today) -> Vec<&str> {
    let mut found: Vec<(&str, &str)> = today
        .due
        .plans
        .iter()
        .map(|plan| (plan.name.as_str(), plan.subject.parts().1))
        .collect();
    found.sort_unstable();
    found.dedup();
    found.into_iter().map(|(_, id)| id).collect()
}

/// The pass over today and so many days ahead, of one animal or group or of all.
pub fn pass(shelf: &Shelf, today: &Today, whose: Option<&str>, ahead: usize) -> Pass {
    let last = today.day.iter_days().nth(ahead).unwrap_or(today.day);
    let whose = whose.map_or_else(|| subjects(today), |id| vec![id]);
    Pass {
        days: whose
            .into_iter()
            .flat_map(|id| nets_days(shelf, today, id, last))
            .collect(),
    }
}
