//! A record with its body.

use super::bodies::Body;
use super::envelope::Record;
use super::gather::Problem;
use crate::units::Instant;

/// A record with its body, when it holds and is read.
pub(super) struct Entry<'a> {
    pub record: &'a Record,
    pub body: Body,
}

/// What can be read of the records that hold and that somebody picks, oldest first, and what cannot.
pub(super) fn read<'r>(
    records: &[&'r Record],
    picks: impl Fn(&Record) -> bool,
) -> (Vec<Entry<'r>>, Vec<Problem>) {
    let mut problems = Vec::new();
    let mut entries: Vec<Entry<'r>> = records
        .iter()
        .copied()
        .filter(|record| !record.gone && picks(record))
        .filter_map(|record| match Body::read(record) {
            Ok(body) => Some(Entry { record, body }),
            Err(error) => {
                problems.push(Problem::Log(error));
                None
            }
        })
        .collect();
    entries.sort_by_key(|entry| (entry.record.at, entry.record.stamp));
    (entries, problems)
}

/// Those up to an instant.
pub(super) fn up_to<'r>(records: &[&'r Record], now: Instant) -> Vec<Entry<'r>> {
    read(records, |record| record.at <= now).0
}
