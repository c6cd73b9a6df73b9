//! Weight from tape or scale, condition, crest and target weight, each with its error.

pub mod published;
