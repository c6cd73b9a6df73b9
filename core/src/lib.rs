//! The trade of feeding equids that grow fat or founder on grass, as pure functions and plain data.
//!
//! The rooms follow the loop of the work, and each may use those before it only:
//! `units`, `sources`, `animal`, `assess`, `limits`, `forage`, `soak`, `ration`, `graze`, `work`, `day`,
//! `progress`, `plan`, `safety`, `round`, `log`.
//!
//! What this crate does not do: it reads no clock, no storage, no browser and no chance; time, zone, ids and
//! places are arguments. It makes no sentences: findings and errors are enums with typed values. It does not
//! panic on input. It is no diagnosis, and it defers to the vet.
#![forbid(unsafe_code)]
#![deny(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    clippy::float_cmp
)]
#![cfg_attr(
    test,
    allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::indexing_slicing, clippy::float_cmp)
)]
