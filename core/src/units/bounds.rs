//! A range a value must lie in, and the error that names field, value and range.

use std::fmt;

/// A closed range for a field, in the unit that its name says.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bounds {
    /// The field as a stable key, such as `girth_cm`: the unit is part of it.
    pub field: &'static str,
    /// The smallest value allowed.
    pub min: f64,
    /// The largest value allowed.
    pub max: f64,
}

impl Bounds {
    /// A range from `min` to `max`, both allowed.
    pub const fn new(field: &'static str, min: f64, max: f64) -> Self {
        Self { field, min, max }
    }

    /// Gives the value back when it is finite and within the range.
    pub fn check(self, value: f64) -> Result<f64, OutOfRange> {
        if value.is_finite() && self.min <= value && value <= self.max {
            Ok(value)
        } else {
            Err(OutOfRange {
                bounds: self,
                value,
            })
        }
    }
}

/// A value outside its range, or not finite.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OutOfRange {
    /// The range that was asked for.
    pub bounds: Bounds,
    /// The value that was given.
    pub value: f64,
}

impl fmt::Display for OutOfRange {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(
            f,
            "{}: {} is outside {} to {}",
            self.bounds.field, self.value, self.bounds.min, self.bounds.max
        )
    }
}

impl std::error::Error for OutOfRange {}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_value_is_refused_with_its_field_and_range() {
        let girth = Bounds::new("girth_cm", 40.0, 300.0);
        assert_eq!(girth.check(180.0), Ok(180.0));
        let error = girth.check(1800.0).unwrap_err();
        assert_eq!(error.to_string(), "girth_cm: 1800 is outside 40 to 300");
    }

    #[test]
    fn what_is_not_finite_never_passes() {
        let any = Bounds::new("any", f64::MIN, f64::MAX);
        for value in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
            assert!(any.check(value).is_err());
        }
    }
}
