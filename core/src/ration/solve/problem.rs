//! The problem: columns, rows, and how many foods may be bought.

use super::error::SolveError;
use super::published as p;
use crate::units::{Bounds, OutOfRange};

/// One amount that is to be found.
#[derive(Clone, Debug, PartialEq)]
pub struct Column {
    /// The caller's name for it; comes back in errors.
    pub name: String,
    /// The least it may be, in its own unit; below every number when there is none.
    pub lower: f64,
    /// The most it may be; above every number when there is none. Equal to `lower`, it is locked.
    pub upper: f64,
    /// What one unit of it costs; a gain is below nothing.
    pub cost: f64,
    /// A usual amount of it, above nothing: what a change of its bounds is measured by.
    pub scale: f64,
    /// The size of one dose, when only whole doses can be given; a locked amount stays as it is locked.
    pub dose: Option<f64>,
    /// Whether it counts as a bought food when it is used.
    pub bought: bool,
}

impl Column {
    /// An amount of nothing or more, at a cost; a usual amount is 1, any part of a dose can be given, it is not bought.
    pub fn new(name: &str, cost: f64) -> Self {
        Self {
            name: name.to_owned(),
            lower: 0.0,
            upper: f64::INFINITY,
            cost,
            scale: 1.0,
            dose: None,
            bought: false,
        }
    }

    /// The same between two bounds.
    #[must_use]
    pub fn between(mut self, lower: f64, upper: f64) -> Self {
        (self.lower, self.upper) = (lower, upper);
        self
    }

    /// The same in whole doses.
    #[must_use]
    pub fn in_doses(mut self, dose: f64) -> Self {
        self.dose = Some(dose);
        self
    }

    /// The same as a bought food.
    #[must_use]
    pub fn bought(mut self) -> Self {
        self.bought = true;
        self
    }

    /// Whether it is locked.
    pub fn is_locked(&self) -> bool {
        self.lower >= self.upper
    }
}

/// A sum of amounts between two limits.
#[derive(Clone, Debug, PartialEq)]
pub struct Row {
    /// The caller's name for it; comes back in errors.
    pub name: String,
    /// What one unit of each column brings, as many as there are columns.
    pub terms: Vec<f64>,
    /// The least the sum may be, in the row's own unit; below every number when there is none.
    pub lower: f64,
    /// The most it may be; above every number when there is none.
    pub upper: f64,
    /// Above nothing: a shortfall of so much in this row weighs as much as one of another row's scale in that.
    pub scale: f64,
}

impl Row {
    /// A sum between two limits; its scale is the larger of the finite limits without their signs, or 1 when that is
    /// next to nothing.
    pub fn new(name: &str, terms: Vec<f64>, lower: f64, upper: f64) -> Self {
        let larger = [lower, upper]
            .into_iter()
            .filter(|limit| limit.is_finite())
            .fold(0.0, |larger: f64, limit| larger.max(limit.abs()));
        Self {
            name: name.to_owned(),
            terms,
            lower,
            upper,
            scale: p::SOLVE_SCALE.check(larger).unwrap_or(1.0),
        }
    }
}

/// A problem that was let in: every number finite and within its range, bounds in order, every row as long as there are
/// columns.
#[derive(Clone, Debug, PartialEq)]
pub struct Problem {
    pub(super) columns: Vec<Column>,
    pub(super) rows: Vec<Row>,
    pub(super) at_most_bought: Option<usize>,
}

fn named(name: &str) -> impl Fn(OutOfRange) -> SolveError + '_ {
    |error| SolveError::OutOfRange {
        name: Some(name.to_owned()),
        error,
    }
}

/// A bound may be without end on its own side.
fn bounds(name: &str, lower: f64, upper: f64) -> Result<(), SolveError> {
    let check = |field: &'static str, value: f64, without_end: f64| {
        let range = Bounds {
            field,
            ..*p::SOLVE_SIZE
        };
        if value.is_infinite() && value.is_sign_positive() == without_end.is_sign_positive() {
            return Ok(());
        }
        range.check(value).map(|_| ()).map_err(named(name))
    };
    check("lower", lower, f64::NEG_INFINITY)?;
    check("upper", upper, f64::INFINITY)?;
    if lower > upper {
        return Err(SolveError::Crossed {
            name: name.to_owned(),
            lower,
            upper,
        });
    }
    Ok(())
}

impl Problem {
    /// Lets a problem in. At most so many bought columns may be used; `None` for any number.
    ///
    /// # Errors
    /// No column or too many columns or rows; a number that is not finite or too large; a scale or dose that is not
    /// above nothing; bounds that are crossed or hold no whole dose; a row of another length.
    pub fn new(
        columns: Vec<Column>,
        rows: Vec<Row>,
        at_most_bought: Option<usize>,
    ) -> Result<Self, SolveError> {
        let whole = |error| SolveError::OutOfRange { name: None, error };
        p::SOLVE_COLUMNS
            .check(columns.len() as f64)
            .map_err(whole)?;
        p::SOLVE_ROWS.check(rows.len() as f64).map_err(whole)?;
        for column in &columns {
            let name = column.name.as_str();
            bounds(name, column.lower, column.upper)?;
            let cost = Bounds {
                field: "cost",
                ..*p::SOLVE_SIZE
            };
            cost.check(column.cost).map_err(named(name))?;
            p::SOLVE_SCALE.check(column.scale).map_err(named(name))?;
            if let Some(dose) = column.dose {
                let range = Bounds {
                    field: "dose",
                    ..*p::SOLVE_SCALE
                };
                range.check(dose).map_err(named(name))?;
                let (least, most) = doses(column.lower, column.upper, dose);
                if least > most && !column.is_locked() {
                    return Err(SolveError::NoWholeDose {
                        name: column.name.clone(),
                        dose,
                        lower: column.lower,
                        upper: column.upper,
                    });
                }
            }
        }
        for row in &rows {
            let name = row.name.as_str();
            if row.terms.len() != columns.len() {
                return Err(SolveError::Shape {
                    name: row.name.clone(),
                    given: row.terms.len(),
                    columns: columns.len(),
                });
            }
            let term = Bounds {
                field: "term",
                ..*p::SOLVE_SIZE
            };
            for value in &row.terms {
                term.check(*value).map_err(named(name))?;
            }
            bounds(name, row.lower, row.upper)?;
            p::SOLVE_SCALE.check(row.scale).map_err(named(name))?;
        }
        Ok(Self {
            columns,
            rows,
            at_most_bought,
        })
    }

    /// The columns, as they were given.
    pub fn columns(&self) -> &[Column] {
        &self.columns
    }

    /// The rows, as they were given.
    pub fn rows(&self) -> &[Row] {
        &self.rows
    }

    /// How many bought columns may be used; `None` for any number.
    pub fn at_most_bought(&self) -> Option<usize> {
        self.at_most_bought
    }
}

/// The least and most whole doses within two bounds; a bound that is a whole dose but for its last bits counts as one.
pub(super) fn doses(lower: f64, upper: f64, dose: f64) -> (f64, f64) {
    (
        (lower / dose - *p::SOLVE_WHOLE).ceil(),
        (upper / dose + *p::SOLVE_WHOLE).floor(),
    )
}
