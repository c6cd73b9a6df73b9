//! The labels of the measuring guide and of the measures over time.

use crate::views::guide::Picture;
use tussock_core::animal::Kind;

/// What the pictures of the tape, and the measures so far, say.
pub trait GuideWords {
    /// The sentence of the guide.
    fn guide_for(&self, name: &str) -> String;
    /// What holds for every measure.
    fn guide_first(&self) -> &'static str;
    /// The head of a picture: the measure.
    fn picture_head(&self, picture: Picture) -> &'static str;
    /// What a picture shows, for who does not see it.
    fn picture_shows(&self, picture: Picture, kind: Kind) -> String;
    /// How the measure is taken, under its picture.
    fn picture_how(&self, picture: Picture) -> &'static str;
    /// The measures over time: there are none.
    fn nothing_measured(&self) -> &'static str;
    /// The change of the belly since the first time, as a row.
    fn belly_since_first(&self) -> &'static str;
    /// The table of measures.
    fn all_measures(&self) -> &'static str;
}
