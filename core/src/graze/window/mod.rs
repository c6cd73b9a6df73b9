//! When grass is open (practice rule 16).
//!
//! [`window`] gives the stretches of a day, or what closes it, each as a value. How long an animal is out within them is
//! not decided here: the room limits its hours by what it eats. Nothing here makes grass safe.

mod asked;
mod closed;
mod opens;
pub mod published;
mod sugar;

pub use asked::{DayWeather, Night, Sky, WindowFor};
pub use closed::{Care, Closed};
pub use opens::{Begins, Stretch, WhyTo, Window, window};
pub use sugar::{day_of_mean, sugar_at, sugar_shape};

#[cfg(test)]
mod tests;
