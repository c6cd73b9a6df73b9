//! Where an animal stands in the loop.

/// The phase sets limits, allowed steps, review and look-over intervals.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Default)]
pub enum Phase {
    /// The first fourteen days at the starting level: two weighings, then decide.
    #[default]
    New,
    /// Losing towards its target.
    Losing,
    /// The weight has stood still on a ration that should move it.
    Plateau,
    /// At target.
    Holding,
    /// Too thin.
    NeedsWeight,
    /// An episode: the vet is in charge.
    Episode,
    /// After an episode, until the vet says it is over.
    Recovering,
    /// Somebody else feeds it for a while.
    OtherHands,
}
