//! Nets and tubs.

use super::base::{Distance, FeedWeight};
use crate::log::stored::{Name, twin};

twin! {
    /// A net.
    NetV1 {
        /// What is on its tag.
        name: Name,
        /// Its own weight, dry and empty.
        own_weight: Option<FeedWeight>,
        /// The width of its holes.
        hole: Option<Distance>,
        /// How much hay goes into it.
        capacity: Option<FeedWeight>,
    }
}
twin! {
    /// A soak tub.
    TubV1 {
        /// What it is called.
        name: Name,
        /// How much hay goes into it.
        capacity: Option<FeedWeight>,
    }
}
