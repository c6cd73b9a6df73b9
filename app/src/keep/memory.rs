//! The store for private windows and tests: the same answers, gone with the page.

use std::collections::BTreeMap;
use tussock_flow::rows::{Range, Row, Writes};

/// Everything in memory.
#[derive(Default)]
pub(super) struct Memory {
    records: BTreeMap<String, Row>,
    past: Vec<Row>,
    pictures: BTreeMap<String, Vec<u8>>,
    drafts: BTreeMap<String, String>,
    meta: BTreeMap<String, String>,
}

impl Memory {
    pub(super) fn write(&mut self, writes: &Writes) {
        for row in &writes.rows {
            self.past
                .extend(self.records.insert(row.id.clone(), row.clone()));
        }
        for picture in &writes.pictures {
            self.pictures
                .insert(picture.sha256.clone(), picture.bytes.clone());
        }
        for key in &writes.clear_drafts {
            self.drafts.remove(key);
        }
        self.meta.extend(writes.meta.clone());
    }

    pub(super) fn read(&self, range: &Range) -> Vec<Row> {
        let newest = |keep: &dyn Fn(&Row) -> bool, from: i64, limit: u32| {
            let mut rows: Vec<Row> = self
                .records
                .values()
                .filter(|row| keep(row) && from <= row.at)
                .cloned()
                .collect();
            rows.sort_by(|a, b| (b.at, &b.id).cmp(&(a.at, &a.id)));
            rows.truncate(limit as usize);
            rows
        };
        match range {
            Range::One(id) => self.records.get(id).cloned().into_iter().collect(),
            Range::Kind { kind, from, limit } => newest(&|row| &row.kind == kind, *from, *limit),
            Range::Subject {
                subject,
                from,
                limit,
            } => newest(&|row| &row.subject == subject, *from, *limit),
        }
    }

    pub(super) fn count(&self, kind: &str) -> u32 {
        u32::try_from(self.records.values().filter(|row| row.kind == kind).count())
            .unwrap_or(u32::MAX)
    }

    pub(super) fn keep_draft(&mut self, key: &str, json: &str) {
        self.drafts.insert(key.to_owned(), json.to_owned());
    }

    pub(super) fn drop_draft(&mut self, key: &str) {
        self.drafts.remove(key);
    }

    pub(super) fn draft(&self, key: &str) -> Option<String> {
        self.drafts.get(key).cloned()
    }

    pub(super) fn drafts(&self) -> u32 {
        u32::try_from(self.drafts.len()).unwrap_or(u32::MAX)
    }

    pub(super) fn picture(&self, sha256: &str) -> Option<Vec<u8>> {
        self.pictures.get(sha256).cloned()
    }

    pub(super) fn meta(&self, key: &str) -> Option<String> {
        self.meta.get(key).cloned()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use tussock_flow::rows::PictureRow;

    fn row(id: &str, at: i64, stamp: &str) -> Row {
        Row {
            id: id.into(),
            kind: "weight".into(),
            yard: "y".into(),
            subject: "a".into(),
            at,
            stamp: stamp.into(),
            json: format!("{{\"stamp\":\"{stamp}\"}}"),
        }
    }

    #[test]
    fn a_new_version_moves_the_old_one_to_the_past() {
        let mut memory = Memory::default();
        memory.write(&Writes {
            rows: vec![row("w", 1, "1"), row("v", 2, "1")],
            ..Writes::default()
        });
        memory.write(&Writes {
            rows: vec![row("w", 1, "2")],
            ..Writes::default()
        });
        assert_eq!(memory.past.len(), 1);
        let found = memory.read(&Range::Subject {
            subject: "a".into(),
            from: 0,
            limit: 1,
        });
        assert_eq!(found.first().map(|row| row.id.as_str()), Some("v"));
        assert_eq!(
            memory
                .read(&Range::One("w".into()))
                .first()
                .map(|row| row.stamp.as_str()),
            Some("2")
        );
    }

    #[test]
    fn a_picture_lies_beside_its_record_and_the_same_one_twice_is_one() {
        let mut memory = Memory::default();
        let picture = PictureRow {
            sha256: "5a".into(),
            bytes: vec![1, 2, 3],
        };
        for id in ["p", "q"] {
            memory.write(&Writes {
                rows: vec![row(id, 1, "1")],
                pictures: vec![picture.clone()],
                ..Writes::default()
            });
        }
        assert_eq!(memory.picture("5a"), Some(vec![1, 2, 3]));
        assert_eq!(memory.picture("5b"), None);
        assert_eq!((memory.pictures.len(), memory.records.len()), (1, 2));
    }
}
