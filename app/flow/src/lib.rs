//! What the screens do, without a browser: routes, acts, views and words.
//!
//! Neither leptos nor web-sys is known here, and no clock: now, zone and new ids are arguments. All of it is tested
//! natively. There is no arithmetic of the trade; that is `tussock_core`.
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

pub mod acts;
pub mod calendar;
pub mod example;
pub mod forms;
pub mod routes;
pub mod rows;
pub mod shelf;
pub mod views;
pub mod words;
