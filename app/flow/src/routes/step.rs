//! The sites of the walk-round.

/// One of the sites of the walk-round, by its number in walking order, 1 to 6; 7 is the summary. On a scale of fewer sites
/// what lies behind the last one is the summary too.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Step(u8);

impl Step {
    /// The first site.
    pub const FIRST: Self = Self(1);
    /// The summary after the last site.
    pub const SUMMARY: Self = Self(7);

    /// From 1 to 7.
    pub fn new(number: u8) -> Option<Self> {
        (Self::FIRST.0..=Self::SUMMARY.0)
            .contains(&number)
            .then_some(Self(number))
    }

    /// 1 to 7.
    pub const fn number(self) -> u8 {
        self.0
    }

    /// The step after this one; the summary stays.
    #[must_use]
    pub const fn next(self) -> Self {
        if self.0 < Self::SUMMARY.0 {
            Self(self.0 + 1)
        } else {
            self
        }
    }
}
