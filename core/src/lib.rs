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
    allow(
        clippy::unwrap_used,
        clippy::expect_used,
        clippy::panic,
        clippy::indexing_slicing,
        clippy::float_cmp
    )
)]

// The rooms in the order of the loop; each uses those above it only.
pub mod animal;
pub mod assess;
pub mod day;
pub mod forage;
pub mod graze;
pub mod limits;
pub mod log;
pub mod plan;
pub mod progress;
pub mod ration;
pub mod round;
pub mod safety;
pub mod soak;
pub mod sources;
pub mod units;
pub mod work;

/// Every constant of the trade, with its source, room by room.
pub fn constants() -> Vec<sources::Constant> {
    [
        sources::constants(),
        animal::published::constants(),
        assess::published::constants(),
        limits::published::constants(),
        limits::stage::published::constants(),
        forage::published::constants(),
        soak::published::constants(),
        ration::published::constants(),
        ration::catalogue::published::constants(),
        ration::solve::published::constants(),
        graze::intake::published::constants(),
        graze::sward::published::constants(),
        graze::plants::published::constants(),
        graze::strip::published::constants(),
        graze::sun::published::constants(),
        graze::window::published::constants(),
        graze::season::published::constants(),
        work::published::constants(),
        day::published::constants(),
        progress::published::constants(),
        plan::published::constants(),
        safety::published::constants(),
        round::published::constants(),
        log::published::constants(),
    ]
    .concat()
}
