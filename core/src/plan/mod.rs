//! Joins the loop into a draft, with reasons.

pub mod published;
