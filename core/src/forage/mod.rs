//! Hay and its like: lots, lab reports, typical classes, energy from analysis, the sugar verdict.

pub mod published;
