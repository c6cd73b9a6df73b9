//! A constant with its source.

use super::works::Work;
use std::fmt::Debug;
use std::ops::Deref;

/// How far a value can be trusted.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Mark {
    /// Read in the publication (mostly its abstract, a fact sheet or a table).
    Published,
    /// Worked out from values that were read.
    WorkedOut,
    /// From memory, not read.
    FromMemory,
    /// A rule the trade follows, without a source.
    CommonPractice,
    /// Our own judgement, without a published source.
    Ours,
}

/// A constant of the trade: its value, the work it is from, the place in it, and its mark.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Published<T> {
    /// A stable key, `room.name`.
    pub id: &'static str,
    /// The value; a bare number is in the unit named by `unit`.
    pub value: T,
    /// The unit, as it is written in the publication; empty when the type says it.
    pub unit: &'static str,
    /// The publication.
    pub work: Work,
    /// Where in it: table, equation, page, or "abstract".
    pub place: &'static str,
    /// How far it can be trusted.
    pub mark: Mark,
}

/// A constant reads as its value.
impl<T> Deref for Published<T> {
    type Target = T;
    fn deref(&self) -> &T {
        &self.value
    }
}

impl<T: Debug> Published<T> {
    /// The constant as a row of the list of sources.
    pub fn row(&self) -> Constant {
        Constant {
            id: self.id,
            value: format!("{:?}", self.value),
            unit: self.unit,
            work: self.work,
            place: self.place,
            mark: self.mark,
        }
    }
}

/// One row of the list of constants.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Constant {
    /// A stable key, `room.name`.
    pub id: &'static str,
    /// The value as text, with its unit where the type has one.
    pub value: String,
    /// The unit of a bare number.
    pub unit: &'static str,
    /// The publication.
    pub work: Work,
    /// Where in it.
    pub place: &'static str,
    /// How far it can be trusted.
    pub mark: Mark,
}

/// Lists a room's constants: `list_constants![GIRTH_DIVISOR, FORAGE_FLOOR];` defines the room's `constants()`.
macro_rules! list_constants {
    ($($name:ident),* $(,)?) => {
        /// Every constant of this room, for the list of sources.
        pub fn constants() -> Vec<$crate::sources::Constant> {
            vec![$($name.row()),*]
        }
    };
}
pub(crate) use list_constants;
