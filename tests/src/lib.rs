//! Checks `tussock-core` from outside.
//!
//! - [`reference`] reads the tables of published and independently computed values under `data/`; the test binary
//!   `reference` holds the core against them, `laws` against laws, `golden` against stored files, and `house` holds
//!   the sources themselves to the rules of the house.
//! - `answer` lets a page ask for the plan of a case, so that the browser's answer can be held against the command's.
//! - [`seeded`] makes rations of any size, and `timed` lets a page solve them, for `cargo xtask measure`.
//! - `vectors/` holds the generators of what another program computed, with their output beside them.

#[cfg(target_arch = "wasm32")]
pub mod answer;
pub mod reference;
pub mod seeded;
#[cfg(target_arch = "wasm32")]
pub mod timed;
pub mod zone;
