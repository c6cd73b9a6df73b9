//! The tape and the scale.

mod measures;
mod said;
mod sheet;

use crate::device::clock::DeviceZone;
use crate::form::Form;
use crate::parts::{
    Action, ActionRow, Back, Caution, Choice, Frame, FrameKind, Offer, Press, Quiet, QuietRow,
    Sentence,
};
use crate::places::{Saving, Unread, draft_line};
use crate::world::World;
use leptos::prelude::*;
use measures::{ByTape, OnScale};
use said::{Asked, WhatItSays};
use sheet::{Beside, Sheet};
use tussock_core::animal::AnimalId;
use tussock_flow::forms::weight::{HOW, HOWS, How, text_of};
use tussock_flow::routes::Route;
use tussock_flow::views::{horses, measures as taken};
use tussock_flow::words::{English, HorsesWords, MeasureWords};

/// Weighing one animal, by tape or scale.
#[component]
pub fn Weigh(
    /// Which.
    animal: AnimalId,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let form = Form::open_today(world, Route::Weigh(animal.clone()).to_string());
    let id = StoredValue::new(animal.clone());
    let shelf = world.shelf(move || horses::one_needs(&id.get_value()));
    let minute = world.minute();
    let beside = Memo::new(move |_| match (shelf.get(), minute.get()) {
        (Some(Ok(shelf)), now) => {
            let beside = horses::beside(&shelf, &id.get_value(), now, &DeviceZone)?;
            let weight = beside.weight.map(|dated| dated.weight.value);
            let before = taken::before(&shelf, &beside.animal, weight, now, &DeviceZone);
            Some(Beside {
                animal: beside.animal,
                before,
                today: beside.today,
            })
        }
        _ => None,
    });
    let sheet = Sheet {
        words,
        form,
        beside,
        wrong: RwSignal::new(Vec::new()),
        asked: RwSignal::new(false),
    };
    let name = Signal::derive(move || {
        beside
            .get()
            .map(|beside| beside.animal.name)
            .unwrap_or_default()
    });
    let taken_before =
        move || beside.with(|beside| beside.as_ref().is_some_and(|b| b.before.tape.is_some()));
    let how = sheet.how();
    let seen = sheet.seen();
    let open = sheet.open(seen);
    let asked = NodeRef::<leptos::html::Div>::new();
    let failed = RwSignal::new(false);
    let busy = RwSignal::new(false);
    let save = Callback::new(move |()| {
        let Some(act) = sheet.act(&form.id("id")) else {
            // What is asked stands under the last field: it is brought in sight.
            request_animation_frame(move || {
                if let Some(asked) = asked.get_untracked() {
                    asked.scroll_into_view();
                }
            });
            return;
        };
        busy.set(true);
        leptos::task::spawn_local(async move {
            let done = form.save(act).await;
            busy.try_set(false);
            if done.is_ok() {
                world.go(&Route::Horse(id.get_value()));
            } else {
                failed.try_set(true);
            }
        });
    });
    let back = Route::Horse(animal).to_string();
    let foot = move || {
        view! {
            <div role="alert">
                <Show when=move || open.with(|open| !open.is_empty())>
                    <p class="soft small">{words.answer_first()}</p>
                </Show>
            </div>
            <Saving failed=failed />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(back.clone()) }>
                <Action says=words.save_weight() press=save busy=Signal::derive(move || busy.get() || beside.with(Option::is_none)) />
            </ActionRow>
        }
    };
    view! {
        <Frame kind=FrameKind::Flow what=name foot=foot>
            <Sentence said=Signal::derive(move || words.tape_or_scale(&name.get())) />
            <Unread shelf />
            {draft_line(form)}
            <Choice
                legend=words.how_weighed()
                offers=vec![Offer::new(How::Tape, words.by_tape()), Offer::new(How::Scale, words.by_scale())]
                chosen=Signal::derive(move || Some(how.get()))
                on_choose=move |how: How| form.set(HOW, text_of(how, &HOWS).to_owned())
            />
            <QuietRow>
                <Show when=move || how.get() == How::Tape>
                    <Quiet says=words.where_the_tape_goes() press=Route::Measure(id.get_value()).to_string() />
                </Show>
                <Show when=taken_before>
                    <Quiet says=words.measures_so_far() press=Route::Measures(id.get_value()).to_string() />
                </Show>
            </QuietRow>
            <Show
                when=move || how.get() == How::Tape
                fallback=move || view! { <OnScale sheet /> }
            >
                <ByTape sheet />
            </Show>
            <WhatItSays sheet seen />
            <Asked sheet open at=asked />
            <Caution said=words.no_dose() />
        </Frame>
    }
}
