//! When grass is open.
