//! The last word on every plan.

pub mod published;
