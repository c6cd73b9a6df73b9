//! Strips and tracks.
