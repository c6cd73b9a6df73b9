//! The year of grass.
