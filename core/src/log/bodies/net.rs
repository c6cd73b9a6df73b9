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
        /// It hangs one in another; `None` when nobody said.
        double: Option<bool>,
    }
}

impl NetV1 {
    /// What it is eaten from, as the eating rate goes by it: what is said, else by the width of its holes.
    pub fn eaten_from(&self) -> NetKind {
        let hole = self.hole.as_ref().map(|hole| hole.mm.length());
        self.net_kind
            .unwrap_or_else(|| NetKind::of_net(hole, self.double == Some(true)))
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
