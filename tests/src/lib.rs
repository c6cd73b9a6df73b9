//! Checks `tussock-core` from outside.
//!
//! - [`reference`] reads the tables of published and independently computed values under `data/`; the test binary
//!   `reference` holds the core against them, `laws` against laws, `golden` against stored files, and `house` holds
//!   the sources themselves to the rules of the house.
//! - `vectors/` holds the generators of what another program computed, with their output beside them.

pub mod reference;
pub mod zone;
