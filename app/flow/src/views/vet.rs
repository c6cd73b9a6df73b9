//! The vets' words of an animal: what holds, and what has ended.

use crate::acts::Act;
use crate::shelf::Shelf;
use tussock_core::animal::{AnimalId, VetScope, VetWord};
use tussock_core::log::{Body, Kind};
use tussock_core::sources::RecordId;
use tussock_core::units::LocalDate;

/// A vet's word as it stands on a day.
#[derive(Clone, Debug, PartialEq)]
pub struct Held {
    /// The record.
    pub record: RecordId,
    /// The word.
    pub word: VetWord,
    /// Whether it holds.
    pub holds: bool,
}

/// The words that hold, and in each matter without one the last that has ended; the matters in the order in which a
/// person is asked.
pub fn held(shelf: &Shelf, animal: &AnimalId, day: LocalDate) -> Vec<Held> {
    let words: Vec<Held> = shelf
        .bodies(&Kind::VetWord)
        .into_iter()
        .filter_map(|(record, body)| match body {
            Body::VetWord(body) if body.animal == *animal => {
                let word = body.word();
                Some(Held {
                    record: record.id.clone(),
                    holds: word.holds_on(day),
                    word,
                })
            }
            _ => None,
        })
        .collect();
    [
        VetScope::LowestLevel,
        VetScope::Work,
        VetScope::ReturnToGrass,
    ]
    .into_iter()
    .flat_map(|scope| {
        let of = |holds: bool| {
            words
                .iter()
                .filter(move |held| held.word.permit.scope() == scope && held.holds == holds)
                .cloned()
        };
        let mut held: Vec<Held> = of(true).collect();
        if held.is_empty() {
            held.extend(
                of(false)
                    .filter(|held| held.word.expires < day)
                    .max_by_key(|held| held.word.expires),
            );
        }
        held
    })
    .collect()
}

/// The act that takes a word back: the vet no longer says so. It stays in the records, marked.
pub fn taken_back(held: &Held) -> Act {
    Act::Remove(held.record.clone())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::views::beside::visit;
    use crate::views::test_yard::{add, after, animal, at, shelf_of, written, zone};
    use tussock_core::animal::{VetFlag, VetPermit};
    use tussock_core::log::bodies::VetWordV1;
    use tussock_core::units::{PartOfBody, Zone};

    fn word(permit: VetPermit, given: &str, expires: &str) -> Body {
        let word = VetWord {
            animal: AnimalId("moss".into()),
            permit,
            vet: "A. Marsh".into(),
            practice: String::new(),
            given: given.parse().unwrap(),
            how: "By telephone".into(),
            expires: expires.parse().unwrap(),
            written: None,
        };
        Body::VetWord(VetWordV1::of(&word).unwrap())
    }

    #[test]
    fn what_holds_stands_first_and_what_ended_only_where_nothing_holds() {
        let id = AnimalId("moss".into());
        let level = |percent| VetPermit::LowestLevel(PartOfBody::percent(percent));
        let shelf = shelf_of(&[add("moss", &animal("moss"), 0)]);
        let shelf = after(
            &shelf,
            &[
                (
                    "w1",
                    "moss",
                    word(level(1.25), "2026-03-01", "2026-04-01"),
                    0,
                ),
                (
                    "w2",
                    "moss",
                    word(level(1.3), "2026-05-01", "2026-06-01"),
                    0,
                ),
                (
                    "w3",
                    "moss",
                    word(VetPermit::Work, "2026-03-01", "2026-04-20"),
                    0,
                ),
                (
                    "w4",
                    "moss",
                    word(VetPermit::Work, "2026-02-01", "2026-03-01"),
                    0,
                ),
            ],
        );
        let today = zone().to_local(at(1)).date;
        let found: Vec<(String, bool)> = held(&shelf, &id, today)
            .into_iter()
            .map(|held| (held.record.0, held.holds))
            .collect();
        assert_eq!(found, [("w2".into(), true), ("w3".into(), false)]);
    }

    #[test]
    fn a_word_that_is_taken_back_lifts_nothing_any_more() {
        let id = AnimalId("moss".into());
        let mut moss = animal("moss");
        moss.health.flags = vec![VetFlag::Lame];
        let shelf = shelf_of(&[add("moss", &moss, 0)]);
        assert!(visit(&shelf, &id, at(1), &zone()).unwrap().stop.is_some());
        let today = zone().to_local(at(1)).date;
        let level = VetPermit::LowestLevel(PartOfBody::percent(1.5));
        let given = word(level, &today.to_string(), "2026-08-01");
        let shelf = after(&shelf, &[("w", "moss", given, 1)]);
        assert_eq!(visit(&shelf, &id, at(1), &zone()).unwrap().stop, None);
        let taken = taken_back(&held(&shelf, &id, today)[0]);
        let shelf = written(&shelf, &taken, at(1));
        assert_eq!(held(&shelf, &id, today), []);
        assert!(visit(&shelf, &id, at(1), &zone()).unwrap().stop.is_some());
    }
}
