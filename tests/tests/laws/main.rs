//! Laws that hold for every input: round trips, invariance, order, conservation.
//!
//! The seed of a run is printed with a failure; `PROPTEST_RNG_SEED=<seed>` runs it again and `PROPTEST_CASES=<n>` sets
//! how many cases each law is tried on. A failing case is kept in `tests/tests/proptest-regressions/` and tried first from
//! then on: commit it with the mending.

mod cheapest;
mod day;
mod eats;
mod floors;
mod grass;
mod ledger;
mod log;
mod lots;
mod mends;
mod money;
mod nets;
mod parsing;
mod pictures;
mod printed;
mod quantities;
mod rest;
mod seed;
mod showing;
mod sward;
mod throw_away;
mod together;
mod weeks;
mod window;
mod work;
mod worth;
mod zones;
