//! Entries that may have been made twice. They are shown, never dropped: two equal entries can both be true.

use super::canonical::canonical;
use super::envelope::Record;
use super::error::LogError;
use super::kind::Kind;
use super::merge::Log;
use super::subject::Subject;
use crate::units::Span;
use std::collections::BTreeMap;

/// Pairs of records of one kind about one subject with the same body, not further apart in time than `within`; the
/// earlier first. Deleted records are left out.
///
/// Errors: those of [`canonical`].
pub fn alike(log: &Log, within: Span) -> Result<Vec<(&Record, &Record)>, LogError> {
    let mut same: BTreeMap<(&Kind, &Subject, String), Vec<&Record>> = BTreeMap::new();
    for record in log.current().filter(|record| !record.gone) {
        let key = (&record.kind, &record.subject, canonical(&record.body)?);
        same.entry(key).or_default().push(record);
    }
    let mut pairs = Vec::new();
    for records in same.values_mut() {
        records.sort_by_key(|record| record.at);
        for pair in records.windows(2) {
            if let [first, second] = pair
                && second.at.since(first.at) <= within
            {
                pairs.push((*first, *second));
            }
        }
    }
    Ok(pairs)
}
