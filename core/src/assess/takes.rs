//! One measure taken up to three times in one go.

use super::error::AssessError;
use super::published as p;
use super::tape::Measure;
use crate::sources::Published;
use crate::units::Bounds;
use std::iter::Sum;
use std::ops::Div;

/// One reading of a measure.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Take<T> {
    /// What was read.
    pub value: T,
    /// A person left it out of the mean.
    pub left_out: bool,
}

impl<T> Take<T> {
    /// A reading that counts.
    pub const fn of(value: T) -> Self {
        Self {
            value,
            left_out: false,
        }
    }
}

/// The readings of one measure in one go, in the order they were taken: one to three, and one at least counts.
#[derive(Clone, Debug, PartialEq)]
pub struct Takes<T>(Vec<Take<T>>);

/// Whether the readings that count lie together.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Agreement {
    /// One reading, or all within the line of each other.
    Together,
    /// Two that lie apart: a third decides.
    Apart,
    /// Of three this one, by its place, lies away from the other two.
    Odd(usize),
    /// Of three no two lie together.
    Scattered,
}

impl<T> Takes<T>
where
    T: Copy + Sum<T> + Div<f64, Output = T> + Div<T, Output = f64> + PartialOrd,
{
    /// The readings.
    ///
    /// # Errors
    /// None that counts, or more than three.
    pub fn new(takes: Vec<Take<T>>) -> Result<Self, AssessError> {
        let counted = takes.iter().filter(|take| !take.left_out).count();
        let most = *p::TAKES as f64;
        Bounds::new("takes", 1.0, most).check(counted as f64)?;
        Bounds::new("takes", 1.0, most).check(takes.len() as f64)?;
        Ok(Self(takes))
    }

    /// One reading.
    pub fn once(value: T) -> Self {
        Self(vec![Take::of(value)])
    }

    /// All of them, in the order they were taken.
    pub fn all(&self) -> &[Take<T>] {
        &self.0
    }

    /// How many count.
    pub fn count(&self) -> usize {
        self.0.iter().filter(|take| !take.left_out).count()
    }

    /// The mean of those that count.
    pub fn mean(&self) -> T {
        let counted = || {
            self.0
                .iter()
                .filter(|take| !take.left_out)
                .map(|take| take.value)
        };
        counted().sum::<T>() / (self.count() as f64)
    }

    /// Whether they lie within so many percent of each other.
    pub fn agreement(&self, line: &Published<f64>) -> Agreement {
        let mut counted: Vec<(usize, T)> = self
            .0
            .iter()
            .enumerate()
            .filter(|(_, take)| !take.left_out)
            .map(|(place, take)| (place, take.value))
            .collect();
        counted.sort_by(|(_, a), (_, b)| a.partial_cmp(b).unwrap_or(std::cmp::Ordering::Equal));
        let line = line.value / 100.0;
        let apart = |less: T, more: T| 1.0 + line < more / less;
        match counted.as_slice() {
            [(_, a), (_, b)] if apart(*a, *b) => Agreement::Apart,
            [(low, a), (_, b), (high, c)] if apart(*a, *c) => {
                match (apart(*a, *b), apart(*b, *c)) {
                    (true, true) => Agreement::Scattered,
                    (true, false) => Agreement::Odd(*low),
                    (false, true) => Agreement::Odd(*high),
                    (false, false) => Agreement::Together,
                }
            }
            _ => Agreement::Together,
        }
    }
}

impl Measure {
    /// How far readings of this measure in one go may lie apart, in percent of it.
    pub const fn apart(self) -> &'static Published<f64> {
        match self {
            Self::HeartGirth | Self::UmbilicalGirth | Self::Height => &p::TAKES_APART_GIRTH,
            Self::Neck | Self::Length => &p::TAKES_APART_LENGTH,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::Length;
    use proptest::prelude::*;

    fn takes(cm: &[f64]) -> Takes<Length> {
        Takes::new(cm.iter().map(|cm| Take::of(Length::cm(*cm))).collect()).unwrap()
    }

    fn girths(cm: &[f64]) -> Agreement {
        takes(cm).agreement(Measure::HeartGirth.apart())
    }

    #[test]
    fn two_that_differ_want_a_third_and_of_three_the_odd_one_is_named() {
        assert_eq!(girths(&[152.0]), Agreement::Together);
        assert_eq!(girths(&[152.0, 154.5]), Agreement::Together);
        assert_eq!(girths(&[152.0, 156.0]), Agreement::Apart);
        assert_eq!(girths(&[152.0, 156.0, 152.5]), Agreement::Odd(1));
        assert_eq!(girths(&[147.0, 152.0, 153.0]), Agreement::Odd(0));
        assert_eq!(girths(&[147.0, 152.0, 158.0]), Agreement::Scattered);
        assert_eq!(girths(&[151.0, 153.0, 155.0]), Agreement::Together);
    }

    #[test]
    fn what_was_left_out_does_not_count() {
        let mut three = vec![152.0, 160.0, 153.0]
            .into_iter()
            .map(|cm| Take::of(Length::cm(cm)))
            .collect::<Vec<_>>();
        three[1].left_out = true;
        let takes = Takes::new(three).unwrap();
        assert_eq!(takes.mean(), Length::cm(152.5));
        assert_eq!((takes.count(), takes.all().len()), (2, 3));
        assert_eq!(
            takes.agreement(Measure::HeartGirth.apart()),
            Agreement::Together
        );
    }

    #[test]
    fn none_or_four_are_refused() {
        assert!(Takes::<Length>::new(Vec::new()).is_err());
        let out = Take {
            value: Length::cm(150.0),
            left_out: true,
        };
        assert!(Takes::new(vec![out]).is_err());
        assert!(Takes::new(vec![Take::of(Length::cm(150.0)); 4]).is_err());
    }

    proptest! {
        #[test]
        fn the_mean_lies_among_the_readings_whatever_their_order(
            cm in prop::collection::vec(60.0..240.0_f64, 1..=3),
        ) {
            let mean = takes(&cm).mean().to_cm();
            let low = cm.iter().copied().fold(f64::INFINITY, f64::min);
            let high = cm.iter().copied().fold(0.0, f64::max);
            prop_assert!(low - 1e-9 <= mean && mean <= high + 1e-9);
            let mut back = cm.clone();
            back.reverse();
            prop_assert!((takes(&back).mean().to_cm() - mean).abs() < 1e-9);
            let plain = |agreement| match agreement {
                Agreement::Odd(_) => Agreement::Odd(0),
                other => other,
            };
            prop_assert_eq!(plain(girths(&cm)), plain(girths(&back)));
        }
    }
}
