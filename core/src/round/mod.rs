//! The jobs due, derived from accepted plans, open tubs and nets, answered keys and now.

pub mod published;
