//! When somebody comes: the times of a day, corrected in one form.

use super::work::yard;
use crate::form::Form;
use crate::parts::{Action, ActionRow, Back, Field, Frame, FrameKind, Keyboard, Press, Sentence};
use crate::places::{Saving, Unread, draft_line};
use crate::world::World;
use leptos::prelude::*;
use tussock_flow::forms::visits::{FIELDS, Wrong, act, held, needs, times};
use tussock_flow::routes::Route;
use tussock_flow::words::{English, HorsesWords, ShedWords, UnitWords, VisitsWords};

/// The times somebody comes.
#[component]
pub fn Visits() -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let form = Form::open(world, Route::Visits.to_string());
    let shelf = world.shelf(needs);
    let stands = Memo::new(move |_| match shelf.get() {
        Some(Ok(shelf)) => Some(held(&shelf)),
        _ => None,
    });
    // A field nobody touched shows the time that stands.
    let text = move |place: usize, field: &'static str| {
        form.held(field).unwrap_or_else(|| {
            stands
                .with(|stands| {
                    let time = stands.as_ref()?.as_ref()?.1.times.get(place)?;
                    Some(words.time(*time))
                })
                .unwrap_or_default()
        })
    };
    let typed = move || -> Vec<String> {
        FIELDS
            .into_iter()
            .enumerate()
            .map(|(place, field)| text(place, field))
            .collect()
    };
    let wrong = RwSignal::new(Vec::<Wrong>::new());
    let failed = RwSignal::new(false);
    let busy = RwSignal::new(false);
    let save = Callback::new(move |()| {
        let Some(stands) = stands.get_untracked() else {
            return;
        };
        match times(&untrack(typed)) {
            Err(faults) => wrong.set(faults),
            Ok(times) => {
                wrong.set(Vec::new());
                busy.set(true);
                let act = act(stands, &yard(world), times, &form.id("id"));
                leptos::task::spawn_local(async move {
                    let done = form.save(act).await;
                    busy.try_set(false);
                    if done.is_ok() {
                        world.go(&Route::Shed);
                    } else {
                        failed.try_set(true);
                    }
                });
            }
        }
    });
    let foot = move || {
        view! {
            <Saving failed=failed />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(Route::Shed.to_string()) }>
                <Action says=words.save_visits() press=save busy=Signal::derive(move || busy.get() || stands.with(Option::is_none)) />
            </ActionRow>
        }
    };
    let fields = FIELDS
        .into_iter()
        .enumerate()
        .map(|(place, field)| {
            let error = Signal::derive(move || {
                let faults = wrong.get();
                let fault = faults.iter().find(|fault| fault.field() == place)?;
                Some(words.visits_wrong(fault))
            });
            view! {
                <Field
                    label=words.visit(place + 1)
                    value=Signal::derive(move || text(place, field))
                    on_input=form.typed(field)
                    error=error
                    keyboard=Keyboard::Decimal
                />
            }
        })
        .collect_view();
    view! {
        <Frame kind=FrameKind::Flow what=words.shed() foot=foot>
            <Sentence said=words.when_somebody_comes() />
            <Unread shelf />
            {draft_line(form)}
            <p>{words.visit_hint()}</p>
            {fields}
            <p class="soft">{words.plans_follow_visits()}</p>
        </Frame>
    }
}
