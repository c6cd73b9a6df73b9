//! A session of work, written down.

use super::after::{After, Minutes, Writing};
use crate::form::Form;
use crate::parts::{Action, ActionRow, Back, Field, Frame, FrameKind, Press, Sentence};
use crate::places::{Saving, Unread, draft_line};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::AnimalId;
use tussock_flow::forms::work::ENDED;
use tussock_flow::routes::Route;
use tussock_flow::views::horses::one_needs;
use tussock_flow::words::{English, HorsesWords, SessionWords};

/// What work an animal did: minutes of each gait and what was seen after it.
#[component]
pub fn WorkDone(
    /// Which.
    animal: AnimalId,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let form = Form::open(world, Route::WorkDone(animal.clone()).to_string());
    let writing = Writing::new(world, form);
    let id = StoredValue::new(animal.clone());
    let shelf = world.shelf(move || one_needs(&id.get_value()));
    let held = Memo::new(move |_| match shelf.get() {
        Some(Ok(shelf)) => shelf.animal(&id.get_value()),
        _ => None,
    });
    let name = Signal::derive(move || held.get().map(|animal| animal.name).unwrap_or_default());
    let save = Callback::new(move |()| {
        if let Some(animal) = held.get_untracked() {
            writing.save(&animal);
        }
    });
    let back = Route::Work(animal).to_string();
    let foot = move || {
        view! {
            <Saving failed=writing.failed />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(back.clone()) }>
                <Action
                    says=words.save_work()
                    press=save
                    busy=Signal::derive(move || writing.busy.get() || held.with(Option::is_none))
                />
            </ActionRow>
        }
    };
    view! {
        <Frame kind=FrameKind::Flow what=name foot=foot>
            <Sentence said=Signal::derive(move || words.what_was_done(&name.get())) />
            <Unread shelf />
            {draft_line(form)}
            <Minutes writing clock=Callback::new(|_| None) />
            <Field
                label=words.when_ended()
                hint=words.when_ended_hint()
                value=form.text(ENDED)
                on_input=form.typed(ENDED)
                error=writing.said(ENDED)
            />
            <After writing />
        </Frame>
    }
}
