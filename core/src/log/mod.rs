//! The records: stored twins of the domain types, canonical text, merge, export and import.

pub mod published;
