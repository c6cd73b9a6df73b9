//! The vet's word in English.

use super::English;
use super::fields::small;
use crate::forms::vet::How;
use crate::words::{AnimalWords, UnitWords, VetWords};
use tussock_core::animal::VetWord;

impl VetWords for English {
    fn what_the_vet_said(&self, name: &str) -> String {
        format!("What the vet said of {name}")
    }
    fn about_what(&self) -> &'static str {
        "The vet allows"
    }
    fn lowest_level_label(&self) -> &'static str {
        "Lowest level"
    }
    fn lowest_level_hint(&self) -> &'static str {
        "Dry matter a day, in percent of its weight, as 1.25. Never under 1."
    }
    fn percent_sign(&self) -> &'static str {
        "%"
    }
    fn vet_label(&self) -> &'static str {
        "The vet's name"
    }
    fn practice_label(&self) -> &'static str {
        "Practice"
    }
    fn may_be_left_out(&self) -> &'static str {
        "May be left out."
    }
    fn how_given(&self) -> &'static str {
        "How was it said?"
    }
    fn given_by(&self, how: How) -> &'static str {
        match how {
            How::Telephone => "By telephone",
            How::Visit => "At a visit",
            How::Writing => "In writing",
        }
    }
    fn given_label(&self) -> &'static str {
        "Said on"
    }
    fn given_hint(&self) -> &'static str {
        "As 5.5.2026. Left out: today."
    }
    fn expires_label(&self) -> &'static str {
        "Holds until"
    }
    fn expires_hint(&self) -> &'static str {
        "Left out: eight weeks from then. After that the plan goes back."
    }
    fn save_vets_word(&self) -> &'static str {
        "Save the vet's word"
    }
    fn vet_wanted(&self) -> &'static str {
        "Write the vet's name: a word without one is none."
    }
    fn given_wrong(&self) -> &'static str {
        "Write the day as 5.5.2026, today or earlier."
    }
    fn expires_wrong(&self) -> &'static str {
        "Write the day as 5.5.2026, not before it was said."
    }
    fn only_what_was_said(&self) -> &'static str {
        "Write down only what the vet said of this animal. It stands on every plan until it ends."
    }
    fn words_written_down(&self) -> &'static str {
        "Written down so far"
    }
    fn word_in_full(&self, word: &VetWord, holds: bool) -> String {
        let practice = match word.practice.as_str() {
            "" => String::new(),
            practice => format!(", {practice}"),
        };
        let end = self.date(word.expires);
        let end = if holds {
            format!(
                "Holds until {end}. After that the plan goes back to what holds without it: ask the vet again before then"
            )
        } else {
            format!(
                "Ended on {end}. The plan has gone back to what holds without it: ask the vet again"
            )
        };
        format!(
            "{}: {}{practice}, {}, {}. {end}.",
            self.vet_permit(word.permit),
            word.vet,
            small(&word.how),
            self.date(word.given)
        )
    }
    fn taken_back(&self) -> &'static str {
        "The vet takes it back"
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use tussock_core::animal::{AnimalId, VetPermit};
    use tussock_core::units::PartOfBody;

    #[test]
    fn a_word_says_what_by_whom_until_when_and_what_then() {
        let word = VetWord {
            animal: AnimalId("moss".into()),
            permit: VetPermit::LowestLevel(PartOfBody::percent(1.25)),
            vet: "A. Marsh".into(),
            practice: "Hill practice".into(),
            given: "2026-05-01".parse().unwrap(),
            how: "By telephone".into(),
            expires: "2026-06-26".parse().unwrap(),
            written: None,
        };
        let say = English::default();
        let held = say.word_in_full(&word, true);
        for part in [
            "1.25 %",
            "A. Marsh, Hill practice, by telephone",
            "Holds until",
            "After that the plan goes back",
        ] {
            assert!(held.contains(part), "{held}");
        }
        assert!(say.word_in_full(&word, false).contains("Ended on"));
    }
}
