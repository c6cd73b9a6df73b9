//! The times somebody comes.

use crate::log::stored::twin;
use crate::units::{LocalDate, LocalTime};

twin! {
    /// The times of a day at which somebody comes, by the clock on the wall.
    VisitsV1 {
        /// Rising.
        times: Vec<LocalTime>,
        /// The first day on which they hold.
        from: Option<LocalDate>,
    }
}
