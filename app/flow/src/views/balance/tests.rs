//! The balance.
