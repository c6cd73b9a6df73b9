//! Soaking: recipe, timeline from instants, expected loss as a band, dry matter lost, throw-away time.

pub mod published;
