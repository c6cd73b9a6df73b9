//! The cheapest ration, as a general problem: amounts within bounds, sums of them within limits, least cost.
//!
//! - [`Problem`] holds columns (amounts with bounds, cost, whole doses, whether they count as a bought food) and rows
//!   (a sum of amounts between two limits), refused at the door when anything in it cannot be.
//! - [`cheapest`] answers it, [`fewest`] with the fewest bought foods first, [`next_sets`] with the next cheapest sets of
//!   foods, [`shortfall`] with what comes closest when nothing fits and what would mend it.
//! - Inside: `scaled` brings the numbers to one size, `tableau` exchanges variables, `simplex` finds the best corner,
//!   `branch` the whole doses and the number of foods, `certify` holds each answer against the problem as it was given.
//!
//! It knows no food and no nutrient: names are the caller's. It reads no clock and no chance: it is cut off by counting,
//! and the same problem always gives the same answer. Nothing leaves it that was not held against the problem itself;
//! what cannot be is a [`SolveError`].

mod answer;
mod branch;
mod certify;
mod error;
mod next;
mod problem;
pub mod published;
mod scaled;
mod shortfall;
mod simplex;
mod tableau;
#[cfg(test)]
mod tests;

pub use answer::{Amount, Answer, Certificate, Solution, Stands, Sum};
pub use branch::cheapest;
pub use error::{Residual, SolveError};
pub use next::{fewest, next_sets};
pub use problem::{Column, Problem, Row};
pub use shortfall::{Mend, Mended, Missing, Shortfall, Side, shortfall};
