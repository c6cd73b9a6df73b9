//! The slip.
