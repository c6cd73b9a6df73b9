//! The solver on 5,000 rations made from seeds, judged by two other programs.
//!
//! - `judged`: status and cost as HiGHS has them, every row, bound, dose and number of foods held against the ration.
//! - `prices`: shadow prices against what the cost does when a limit is moved to either side.
//! - `microlp`: the same by a solver of another kind, which runs here.
//! - `sets`: further sets of foods and the fewest foods, against trying every choice.
//! - `shortfalls`: what comes closest when nothing fits, and what would mend it.
//!
//! `rations` makes them; `tests/vectors/rations_highs.py` makes the same and asks HiGHS.

mod judged;
mod microlp;
mod prices;
mod rations;
mod sets;
mod shortfalls;
