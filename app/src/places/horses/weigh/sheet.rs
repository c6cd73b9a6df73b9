//! The form of a weighing beside its animal: what is typed, what it says, what is asked back.

use crate::form::Form;
use leptos::prelude::*;
use tussock_core::animal::Animal;
use tussock_core::assess::{Before, Doubt, DoubtAnswer, LengthKind, Measure};
use tussock_core::units::LocalDate;
use tussock_flow::acts::Act;
use tussock_flow::forms::weight::{Filled, How, NotYet, Seen, Wrong};
use tussock_flow::words::{AssessWords, English, LogWords, MeasureWords, UnitWords};

/// The animal as the form stands beside it.
#[derive(Clone, PartialEq)]
pub(super) struct Beside {
    /// The animal.
    pub(super) animal: Animal,
    /// What was taken before.
    pub(super) before: Before,
    /// The local day.
    pub(super) today: LocalDate,
}

/// A weighing that is typed.
#[derive(Clone, Copy)]
pub(super) struct Sheet {
    pub(super) words: English,
    pub(super) form: Form,
    /// The animal, once it is read.
    pub(super) beside: Memo<Option<Beside>>,
    /// What was wrong when it was saved.
    pub(super) wrong: RwSignal<Vec<Wrong>>,
    /// It was to be saved, and something was asked back.
    pub(super) asked: RwSignal<bool>,
}

#[allow(
    clippy::redundant_closure_for_method_calls,
    reason = "a method of one lifetime is no answer for every form"
)]
impl Sheet {
    /// The form as it is filled now; tracked, `None` until the animal is read.
    pub(super) fn filled<T>(self, ask: impl FnOnce(&Filled<'_>) -> T) -> Option<T> {
        let text = |name: &str| self.form.held(name).unwrap_or_default();
        self.beside.with(|beside| {
            let beside = beside.as_ref()?;
            Some(ask(&Filled {
                animal: &beside.animal,
                before: &beside.before,
                today: beside.today,
                text: &text,
            }))
        })
    }

    /// What the figures so far say.
    pub(super) fn seen(self) -> Memo<Option<Seen>> {
        Memo::new(move |_| self.filled(|filled| filled.seen()).flatten())
    }

    /// What is asked back and not answered, once it was to be saved.
    pub(super) fn open(self, seen: Memo<Option<Seen>>) -> Memo<Vec<Doubt>> {
        Memo::new(move |_| {
            let asked = seen.with(|seen| seen.as_ref().map(|seen| seen.doubts.asked.clone()));
            match asked {
                Some(asked) if self.asked.get() => self
                    .filled(|filled| filled.open(&asked))
                    .unwrap_or_default(),
                _ => Vec::new(),
            }
        })
    }

    pub(super) fn how(self) -> Memo<How> {
        Memo::new(move |_| self.filled(|filled| filled.how()).unwrap_or(How::Tape))
    }

    pub(super) fn kind(self) -> Memo<LengthKind> {
        Memo::new(move |_| {
            self.filled(|filled| filled.kind())
                .unwrap_or(LengthKind::Wrap)
        })
    }

    /// The field in which a measure, or the scale, is taken once more.
    pub(super) fn once_more(self, measure: Option<Measure>) -> Memo<Option<&'static str>> {
        Memo::new(move |_| self.filled(|filled| filled.once_more(measure)).flatten())
    }

    /// Answers a question: sets what the answer sets.
    pub(super) fn answer(self, doubt: &Doubt, answer: DoubtAnswer) {
        let sets = untrack(|| self.filled(|filled| filled.answer(doubt, answer)));
        for (field, text) in sets.unwrap_or_default() {
            self.form.set(&field, text);
        }
    }

    /// The act that saves it; else what is wrong or asked back stands on the screen.
    pub(super) fn act(self, record: &str) -> Option<Act> {
        match untrack(|| self.filled(|filled| filled.act(record)))? {
            Ok(act) => {
                self.wrong.set(Vec::new());
                Some(act)
            }
            Err(NotYet::Wrong(wrong)) => {
                self.wrong.set(wrong);
                None
            }
            Err(NotYet::Asked(_)) => {
                self.wrong.set(Vec::new());
                self.asked.set(true);
                None
            }
        }
    }

    /// What is wrong with a field.
    pub(super) fn said_of(self, field: &'static str) -> Signal<Option<String>> {
        let words = self.words;
        let how = self.how();
        Signal::derive(move || {
            let wrong = self.wrong.get();
            let wrong = wrong.iter().find(|wrong| wrong.field(how.get()) == field)?;
            Some(match wrong {
                Wrong::Parse(_, error) => words.parse_error(error),
                Wrong::Assess(error) => words.assess_error(error),
                Wrong::NoDifference => words.no_difference().to_owned(),
                Wrong::Log(error) => words.log_error(error),
            })
        })
    }
}
