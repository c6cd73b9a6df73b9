//! The cheapest mend of a ration: hay, and of the foods on offer so much that every limit is kept.
//!
//! [`mend`] turns hay, foods and limits into a problem of [`super::solve`], and its answer back into amounts that can be
//! weighed, what decided them, and what would mend it when nothing fits. Hay that nobody tested is taken with care: a
//! need is met at the low end of its class, a ceiling kept at the high end ([`published::HAY_CARE`]). What nobody knows of
//! a food counts for nothing towards a need.
//!
//! A limit that the hay alone breaks is no limit of the foods: they may not make it worse, and the balance says it
//! (iron, sugar of the hay). A need of which nobody knows what the hay brings is not asked, but for what hay often
//! lacks ([`published::ASKED_WHOLE`]); the balance shows it as not known.

mod explain;
mod limit;
pub mod published;
mod rows;
mod steps;
mod topping;
mod wanted;

pub use explain::{Closest, Decides, Mended, MendedBy, Missed, Pays};
pub use limit::Limit;
pub use topping::{NotOffered, Topping};
pub use wanted::{Aim, FoodChoice, ForageChoice, Wanted};

use super::solve::{Answer, Problem, Solution, SolveError, cheapest, fewest, next_sets, shortfall};
use explain::{closest, mended};
use rows::{Asks, Rows};

/// What comes of it.
#[derive(Clone, Debug, PartialEq)]
pub enum Mends {
    /// A ration that keeps every limit; proven to be the one that was asked for before amounts were made whole.
    Found(Mended),
    /// It keeps every limit, and it was not proven in time that none is better.
    NotProven(Mended),
    /// Nothing fits; what comes closest.
    NothingFits(Closest),
    /// No ration was found in the time that is allowed, nor was it proven that there is none.
    NotKnown,
}

impl Mends {
    /// The ration, proven or not.
    pub const fn ration(&self) -> Option<&Mended> {
        match self {
            Self::Found(mended) | Self::NotProven(mended) => Some(mended),
            Self::NothingFits(_) | Self::NotKnown => None,
        }
    }
}

/// Finds the mend that is asked for: first with care for hay that nobody tested and zinc to copper as usual, then without
/// one or both. Neither is a reason to refuse a ration, and each is said ([`Mended::with_care`],
/// [`Mended::zinc_to_copper`]).
///
/// # Errors
/// A number that is none, bounds that are crossed, or an answer that could not be held against the limits.
pub fn mend(
    wanted: &Wanted<'_>,
    forages: &[ForageChoice<'_>],
    foods: &[FoodChoice<'_>],
) -> Result<Mends, SolveError> {
    let mut last = Tried::Nothing;
    for asks in Asks::IN_ORDER {
        let rows = Rows::new(wanted, forages, foods, asks);
        last = attempt(&rows)?;
        if !matches!(last, Tried::Nothing | Tried::NotInSteps) {
            return Ok(last.into());
        }
    }
    let rows = Rows::new(wanted, forages, foods, Asks::LEAST);
    let problem = rows.problem()?;
    let problem = if last == Tried::NotInSteps {
        steps::every_food(&rows, &problem)?
    } else {
        problem
    };
    Ok(Mends::NothingFits(closest(&rows, &shortfall(&problem)?)))
}

/// What one attempt came to.
#[derive(PartialEq)]
enum Tried {
    Found(Mended),
    NotProven(Mended),
    NotKnown,
    Nothing,
    /// It would fit, in amounts that nobody can weigh.
    NotInSteps,
}

impl From<Tried> for Mends {
    fn from(tried: Tried) -> Self {
        match tried {
            Tried::Found(mended) => Self::Found(mended),
            Tried::NotProven(mended) => Self::NotProven(mended),
            Tried::NotKnown | Tried::Nothing | Tried::NotInSteps => Self::NotKnown,
        }
    }
}

fn attempt(rows: &Rows<'_>) -> Result<Tried, SolveError> {
    let problem = rows.problem()?;
    let answer = if rows.wanted.aim == Aim::FewestFoods {
        fewest(&problem)?
    } else {
        cheapest(&problem)?
    };
    Ok(match answer {
        Answer::Cheapest(solution) => match steps::whole(rows, &problem, &solution)? {
            Some(whole) => Tried::Found(mended(rows, &solution, &whole)),
            None => Tried::NotInSteps,
        },
        Answer::CutOff {
            best: Some(solution),
            ..
        } => match steps::whole(rows, &problem, &solution)? {
            Some(whole) => Tried::NotProven(mended(rows, &solution, &whole)),
            None => Tried::NotInSteps,
        },
        Answer::CutOff { best: None, .. } | Answer::WithoutEnd { .. } => Tried::NotKnown,
        Answer::NothingFits => Tried::Nothing,
    })
}

/// The next best sets of foods after the first, each with its own amounts; fewer when there are no more.
///
/// # Errors
/// As of [`mend`].
pub fn next_mends(
    wanted: &Wanted<'_>,
    forages: &[ForageChoice<'_>],
    foods: &[FoodChoice<'_>],
    how_many: usize,
) -> Result<Vec<Mended>, SolveError> {
    for asks in Asks::IN_ORDER {
        let rows = Rows::new(wanted, forages, foods, asks);
        let problem: Problem = rows.problem()?;
        let answer = cheapest(&problem)?;
        let Some(first) = answer.solution() else {
            continue;
        };
        let mut found: Vec<Mended> = Vec::new();
        let mut sets = vec![
            steps::whole(&rows, &problem, first)?
                .as_ref()
                .map(Solution::used),
        ];
        // What differs in less than a step is the same ration.
        for solution in next_sets(&problem, first, how_many)? {
            let whole = steps::whole(&rows, &problem, &solution)?;
            let set = whole.as_ref().map(Solution::used);
            if whole.is_some() && sets.contains(&set) {
                continue;
            }
            found.push(mended(
                &rows,
                &solution,
                whole.as_ref().unwrap_or(&solution),
            ));
            sets.push(set);
        }
        return Ok(found);
    }
    Ok(Vec::new())
}
