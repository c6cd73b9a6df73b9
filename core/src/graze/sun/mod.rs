//! The sun of a place and a day.
