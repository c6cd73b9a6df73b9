//! The year of grass.
//!
//! - [`year`] is the calendar of a latitude, moved by what a person noted.
//! - [`season_on`] says of a day whether grass is in its flush, and [`until_flush`] how long is left before it.
//!
//! What this part does not do: it measures no growth. A calendar is what usually comes; what a person saw this year holds
//! before it.

mod flush;
mod part;
pub mod published;
mod year;

pub use flush::{Flush, Known, SeasonOn, UntilFlush, season_on, until_flush};
pub use part::{Note, Noted, Watch, YearPart};
pub use year::{Band, year};

#[cfg(test)]
mod tests;
