//! The day's visits and nets.

use super::Said;
use tussock_core::day::{DayError, GapVerdict, Layout, Mend, NetKind};

/// Words for the layout of a day.
pub trait DayWords {
    /// What would shorten the longest wait.
    fn mend(&self, mend: Mend) -> String;
    /// What the longest wait means.
    fn gap_verdict(&self, verdict: GapVerdict) -> Said;
    /// The longest wait of a layout, with what it means.
    fn longest_gap(&self, layout: &Layout) -> Said;
    /// "Small holes, about 3 cm".
    fn net_kind(&self, kind: NetKind) -> &'static str;
    /// Why a day cannot be laid out.
    fn day_error(&self, error: &DayError) -> String;
}
