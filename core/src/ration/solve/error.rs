//! Why a problem was refused, or an answer kept back.

use crate::units::OutOfRange;

/// Why a problem was refused, or an answer kept back.
#[derive(Clone, Debug, PartialEq)]
pub enum SolveError {
    /// A number of the problem outside its range, or not a number.
    OutOfRange {
        /// The column or row it belongs to; none where it belongs to the whole problem.
        name: Option<String>,
        /// Field, value and range.
        error: OutOfRange,
    },
    /// The lower bound of a column or row stands above its upper bound.
    Crossed {
        /// The column or row.
        name: String,
        /// Its lower bound.
        lower: f64,
        /// Its upper bound.
        upper: f64,
    },
    /// No whole number of doses lies within the bounds of a column.
    NoWholeDose {
        /// The column.
        name: String,
        /// One dose.
        dose: f64,
        /// Its lower bound.
        lower: f64,
        /// Its upper bound.
        upper: f64,
    },
    /// A row has another number of coefficients than there are columns.
    Shape {
        /// The row.
        name: String,
        /// How many it has.
        given: usize,
        /// How many there are columns.
        columns: usize,
    },
    /// The answer could not be held against the problem closely enough, so that there is none.
    NotCertified {
        /// What was measured.
        residual: Residual,
        /// How far it was off.
        value: f64,
        /// How far it may be off.
        allowed: f64,
    },
    /// The corners were walked for as long as is allowed, and no end was reached.
    NotSettled {
        /// How many exchanges are allowed.
        allowed: usize,
    },
}

/// What an answer is measured by.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Residual {
    /// The worst row, as a share of the larger of 1, its limit and the sum of its terms without their signs.
    Rows,
    /// The worst price, as a share of what it is made up of.
    Prices,
    /// The cost less what the prices prove to be the least, as a share of the cost.
    Gap,
    /// A proof that nothing fits, or that the cost has no end.
    Proof,
}
