//! What grows on a paddock.
