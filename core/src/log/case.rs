//! A case: an export with `now`, `zone` and `visits` beside its records, so that a plan can be made without a clock.
//!
//! ```text
//! {"format":"tussock-log","version":1,"app":"0.1.0","made_at":1777960800000,
//!  "now":1777960800000,
//!  "zone":{"name":"Europe/London","before_min":0,"changes":[{"at":1774746000000,"offset_min":60}]},
//!  "visits":["06:30","12:30","17:30","22:00"],
//!  "subject":"animal:moss",
//!  "records":[…]}
//! ```
//!
//! It needs no other format: a reader of bundles reads it too. `counts` and `sha256` may be missing, because a person
//! writes it; `subject` may be missing, and then the case is about every animal in it.

use super::bundle::Bundle;
use super::error::{Allowed, LogError, Path};
use super::merge::Log;
use super::stored::{Stored, twin};
use super::subject::Subject;
use crate::units::{Instant, LocalTime, Zone};

twin! {
    /// A change of the clock.
    ClockChange {
        /// From when on.
        at: Instant,
        /// The offset from UTC from then on, in minutes east.
        offset_min: OffsetMin,
    }
}

super::bodies::base::whole_number! {
    /// An offset of a wall clock from UTC, in minutes east.
    // numeric: eighteen hours, as in the envelope
    OffsetMin = (-1_080, 1_080)
}

twin! {
    /// A zone as a table of the changes of its clock.
    ZoneTable {
        /// The IANA name.
        name: super::stored::Name,
        /// The offset before the first change, in minutes east.
        before_min: OffsetMin,
        /// The changes, rising.
        changes: Vec<ClockChange>,
    }
}

impl Zone for ZoneTable {
    fn offset_min(&self, at: Instant) -> i32 {
        let offset = self
            .changes
            .iter()
            .rev()
            .find(|change| change.at <= at)
            .map_or(&self.before_min, |change| &change.offset_min);
        i32::try_from(offset.get()).unwrap_or_default()
    }
}

/// A case.
#[derive(Clone, Debug, PartialEq)]
pub struct Case {
    /// The records.
    pub log: Log,
    /// The time of the case.
    pub now: Instant,
    /// Where it is.
    pub zone: ZoneTable,
    /// When somebody comes, rising.
    pub visits: Vec<LocalTime>,
    /// The animal or group it is about; `None` for every animal in it.
    pub subject: Option<Subject>,
}

impl Case {
    /// Reads a case.
    ///
    /// Errors: those of [`Bundle::read_unsealed`], and those of the fields beside the records.
    pub fn read(text: &str) -> Result<Self, LogError> {
        let bundle = Bundle::read_unsealed(text)?;
        let root = Path::Root;
        let field = |key: &str| bundle.extra.get(key);
        let zone = ZoneTable::read(field("zone"), &root.key("zone"))?;
        let risen = |pair: &[ClockChange]| match pair {
            [first, second] => first.at < second.at,
            _ => true,
        };
        if !zone.changes.windows(2).all(risen) {
            let path = root.key("zone");
            return Err(path.key("changes").refuse("", Allowed::Rising));
        }
        let visits = Vec::<LocalTime>::read(field("visits"), &root.key("visits"))?;
        if !visits.is_sorted_by(|a, b| a < b) {
            return Err(root.key("visits").refuse("", Allowed::Rising));
        }
        let subject = match field("subject") {
            None => None,
            some => {
                let path = root.key("subject");
                Some(Subject::read(super::stored::text(some, &path)?, &path)?)
            }
        };
        Ok(Self {
            now: Instant::read(field("now"), &root.key("now"))?,
            zone,
            visits,
            subject,
            log: bundle.log,
        })
    }
}
