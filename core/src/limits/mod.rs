//! What an animal needs and what it may have.

pub mod published;
