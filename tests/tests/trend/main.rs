//! The weight trend on animals made by seed: how often its bands hold, what wild readings and a change of instrument do to
//! it, how often it rings the vet for nothing and how soon it rings when it must.
//!
//! The numbers are printed: `cargo test -p tussock-tests --test trend -- --nocapture`. The seed is fixed, so that a run is
//! the same everywhere.

mod alarms;
mod cover;
mod herd;
mod robust;
mod trials;
