//! How much grass stands on a paddock.
