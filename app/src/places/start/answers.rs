//! From the draft to the answers, and what is said of each.

use crate::form::Form;
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::AnimalId;
use tussock_core::forage::ForageClass;
use tussock_core::sources::RecordId;
use tussock_flow::forms::start::{
    Answers, Asked, Ever, Ids, Named, RIBS, Sort, Visits, Wrong, hays, of_key,
};
use tussock_flow::words::{
    AnimalWords, AssessWords, English, ForageWords, LogWords, StartWords, UnitWords,
};

/// The answers as they stand now.
pub(super) fn answers(form: Form) -> Answers {
    let hays: Vec<ForageClass> = hays().collect();
    Answers {
        name: form.now("name"),
        sort: of_key(Sort::ALL, &form.now("sort")),
        age: form.now("age"),
        girth: form.now("girth"),
        ribs: of_key(RIBS, &form.now("ribs")),
        ever: of_key(Ever::ALL, &form.now("ever")),
        hay: of_key(&hays, &form.now("hay")),
        visits: of_key(Visits::ALL, &form.now("visits")),
    }
}

/// The ids of this form, each made once.
pub(super) fn ids(form: Form, world: World) -> Ids {
    let record = |name: &str| RecordId(form.id(name));
    Ids {
        yard: world.yard(),
        animal: AnimalId(form.id("animal-id")),
        weight: record("weight-id"),
        condition: record("condition-id"),
        lot: record("lot-id"),
        visits: record("visits-id"),
    }
}

/// The names of what nobody named.
pub(super) fn named(answers: &Answers) -> Named {
    let words = English::default();
    let sort = answers.sort.unwrap_or(Sort::Horse);
    Named {
        animal: words.kind(sort.kind()).to_owned(),
        lot: words.forage_class(answers.hay.unwrap_or_default()),
        yard: words.yard_name().to_owned(),
        sort: words.sort(sort).to_owned(),
    }
}

/// What is chosen, from the draft.
pub(super) fn of_list<T>(form: Form, field: &'static str, offers: Vec<T>) -> Signal<Option<T>>
where
    T: Copy + Send + Sync + 'static,
{
    let text = form.text(field);
    Signal::derive(move || text.with(|text| of_key(&offers, text)))
}

/// The line under a question: that it wants an answer, else its hint.
pub(super) fn say(
    wrong: RwSignal<Vec<Wrong>>,
    asked: Asked,
    hint: &'static str,
) -> Signal<Option<String>> {
    let words = English::default();
    Signal::derive(move || {
        let open = wrong.with(|wrong| wrong.contains(&Wrong::Unanswered(asked)));
        let text = if open { words.answer_wanted() } else { hint };
        (!text.is_empty()).then(|| text.to_owned())
    })
}

/// What is wrong with the age.
pub(super) fn age_error(wrong: RwSignal<Vec<Wrong>>) -> Signal<Option<String>> {
    said(wrong, |words, wrong| match wrong {
        Wrong::Age(error) => Some(words.parse_error(error)),
        _ => None,
    })
}

/// What is wrong with the girth.
pub(super) fn girth_error(wrong: RwSignal<Vec<Wrong>>) -> Signal<Option<String>> {
    said(wrong, |words, wrong| match wrong {
        Wrong::Girth(error) => Some(words.parse_error(error)),
        Wrong::Assess(error) => Some(words.assess_error(error)),
        _ => None,
    })
}

/// What is wrong with the name.
pub(super) fn name_error(wrong: RwSignal<Vec<Wrong>>) -> Signal<Option<String>> {
    said(wrong, |words, wrong| match wrong {
        Wrong::Name(error) => Some(words.log_error(error)),
        _ => None,
    })
}

fn said(
    wrong: RwSignal<Vec<Wrong>>,
    of: fn(&English, &Wrong) -> Option<String>,
) -> Signal<Option<String>> {
    let words = English::default();
    Signal::derive(move || wrong.with(|wrong| wrong.iter().find_map(|wrong| of(&words, wrong))))
}
