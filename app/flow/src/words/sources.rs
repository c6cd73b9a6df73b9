//! Marks and citations.

use tussock_core::sources::{Constant, Mark, Source, Work};

/// Where a number comes from.
pub trait SourceWords {
    /// How far a value can be trusted: "published".
    fn mark(&self, mark: Mark) -> &'static str;
    /// What that mark means.
    fn mark_means(&self, mark: Mark) -> &'static str;
    /// A citation as one line.
    fn citation(&self, work: Work) -> String;
    /// A constant as one line: what it is from, where in it, and its mark.
    fn constant(&self, constant: &Constant) -> String;
    /// A source of a figure; `None` for the id of a constant that is not in the list.
    fn source(&self, source: &Source) -> Option<String>;
}
