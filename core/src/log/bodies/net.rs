//! Nets and tubs.

use super::base::{Distance, FeedWeight};
use crate::day::NetKind;
use crate::log::stored::{Name, twin, words};

words!(NetKind {
    Loose = "loose",
    LargeHoles = "large_holes",
    MediumHoles = "medium_holes",
    SmallHoles = "small_holes",
    DoubleSmall = "double_small",
});

twin! {
    /// A net.
    NetV1 {
        /// What is on its tag.
        name: Name,
        /// What the forage is eaten from, as the eating rate goes by it.
        net_kind: Option<NetKind>,
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
