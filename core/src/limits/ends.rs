//! The two ends of an uncertain quantity, and what is likely between them.

/// A quantity that is not known exactly. Floors are judged on the end that leaves the animal least, ceilings on the end
/// that gives it most; what is likely is for showing and for weighing out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Ends<T> {
    /// The least it may be.
    pub least: T,
    /// What it likely is.
    pub likely: T,
    /// The most it may be.
    pub most: T,
}

impl<T> Ends<T> {
    /// The three values, in rising order.
    pub const fn new(least: T, likely: T, most: T) -> Self {
        Self {
            least,
            likely,
            most,
        }
    }

    /// The same thing done to all three; it must not turn the order round.
    pub fn map<U>(self, change: impl Fn(T) -> U) -> Ends<U> {
        Ends {
            least: change(self.least),
            likely: change(self.likely),
            most: change(self.most),
        }
    }

    /// Two uncertain quantities joined end by end.
    pub fn with<U, V>(self, other: Ends<U>, join: impl Fn(T, U) -> V) -> Ends<V> {
        Ends {
            least: join(self.least, other.least),
            likely: join(self.likely, other.likely),
            most: join(self.most, other.most),
        }
    }
}

impl<T: Copy> Ends<T> {
    /// A quantity known exactly.
    pub const fn exactly(value: T) -> Self {
        Self::new(value, value, value)
    }
}

impl<T: PartialOrd> Ends<T> {
    /// Whether the three stand in rising order.
    pub fn in_order(&self) -> bool {
        self.least <= self.likely && self.likely <= self.most
    }
}
