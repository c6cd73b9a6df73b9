//! What the reckoning of grass rests on.

use tussock_core::graze::intake::{Trial, Tried, published as p};
use tussock_core::sources::Constant;

/// A trial with its sources.
#[derive(Clone, Debug, PartialEq)]
pub struct TrialRow {
    /// What was seen and what is reckoned.
    pub tried: Tried,
    /// Where what was seen stands.
    pub from: Vec<Constant>,
}

/// The trials the model was tuned to.
pub fn trials() -> Vec<TrialRow> {
    let constants = p::constants();
    Trial::ALL
        .into_iter()
        .map(|trial| {
            let tried = trial.tried();
            TrialRow {
                from: tried
                    .seen_from
                    .iter()
                    .filter_map(|id| constants.iter().find(|constant| constant.id == *id))
                    .cloned()
                    .collect(),
                tried,
            }
        })
        .collect()
}

/// A number that the reckoning rests on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Base {
    /// Hours in which two thirds of what is eaten without end are eaten.
    FirstHours,
    /// The least: what floors are judged with.
    Least,
    /// What an animal comes to that is new to it.
    New,
    /// What a horse comes to that is used to it.
    UsedHorse,
    /// What any other comes to that is used to it.
    UsedPony,
    /// Weeks until it is used to it.
    Weeks,
    /// The most: what ceilings are judged with.
    Most,
    /// The sugar that ceilings are judged with.
    SugarMost,
    /// The part that a muzzle took off least.
    MuzzleLeast,
    /// What it is taken to take off.
    MuzzleLikely,
    /// What it took off at least, by season, in the other trial.
    MuzzleSeasons,
    /// What it took off most.
    MuzzleMost,
    /// The longest it stays on.
    MuzzleLongest,
}

impl Base {
    /// The model of intake itself.
    pub const MODEL: [Self; 8] = [
        Self::FirstHours,
        Self::Least,
        Self::New,
        Self::UsedHorse,
        Self::UsedPony,
        Self::Weeks,
        Self::Most,
        Self::SugarMost,
    ];
    /// The muzzle.
    pub const MUZZLE: [Self; 5] = [
        Self::MuzzleLeast,
        Self::MuzzleLikely,
        Self::MuzzleSeasons,
        Self::MuzzleMost,
        Self::MuzzleLongest,
    ];

    /// Where it stands.
    pub fn constant(self) -> Constant {
        match self {
            Self::FirstHours => p::FIRST_HOURS.row(),
            Self::Least => p::LOWER.row(),
            Self::New => p::UNADAPTED.row(),
            Self::UsedHorse => p::ADAPTED_HORSE.row(),
            Self::UsedPony => p::ADAPTED_PONY.row(),
            Self::Weeks => p::ADAPTED_WEEKS.row(),
            Self::Most => p::UPPER.row(),
            Self::SugarMost => p::SUGAR_MOST.row(),
            Self::MuzzleLeast => p::MUZZLE_LEAST.row(),
            Self::MuzzleLikely => p::MUZZLE_LIKELY.row(),
            Self::MuzzleSeasons => p::MUZZLE_SEASONS_LEAST.row(),
            Self::MuzzleMost => p::MUZZLE_MOST.row(),
            Self::MuzzleLongest => p::MUZZLE_LONGEST.row(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_trial_and_every_number_says_where_it_stands() {
        let known = tussock_core::constants();
        for row in trials() {
            assert_eq!(row.from.len(), row.tried.seen_from.len(), "{row:?}");
        }
        for base in Base::MODEL.into_iter().chain(Base::MUZZLE) {
            assert!(known.contains(&base.constant()), "{base:?}");
        }
    }
}
