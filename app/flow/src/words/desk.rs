//! The labels of the desk.

/// What the desk says.
pub trait DeskWords {
    /// The place.
    fn desk(&self) -> &'static str;
    /// The sentence: what is there to be worked on.
    fn desk_sentence(&self, animals: usize) -> String;
    /// The rations of the animals, as a list.
    fn rations(&self) -> &'static str;
    /// What a row of it leads to.
    fn ration_of(&self) -> &'static str;
    /// Nobody is there yet whose ration could be looked at.
    fn no_rations(&self) -> &'static str;
}
