//! The labels of the invented yard.

/// What the banner of the invented yard says.
pub trait ExampleWords {
    /// That these are not the person's own records.
    fn example_yard(&self) -> &'static str;
    /// The way out, which removes it.
    fn leave_example(&self) -> &'static str;
}
