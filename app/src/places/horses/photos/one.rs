//! One photograph, large: its day, which can be set right, and the way to take it back.

use super::{name_of, view_of};
use crate::device::clock::{self, DeviceZone};
use crate::form::Form;
use crate::parts::{
    Action, ActionRow, Back, Field, Frame, FrameKind, Press, Quiet, QuietRow, Sentence,
};
use crate::places::horses::shown::{PhotoSize, ShownPhoto};
use crate::places::{Saving, Unread, draft_line};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::AnimalId;
use tussock_core::sources::RecordId;
use tussock_core::units::Zone;
use tussock_flow::forms::photo::{day_act, said_day, take_back};
use tussock_flow::routes::Route;
use tussock_flow::views::photo::Photo;
use tussock_flow::words::{English, HorsesWords, PhotoWords, UnitWords};

/// The field of the day.
const DAY: &str = "day";

/// One photograph of an animal.
#[component]
pub fn OnePhoto(
    /// Which animal.
    animal: AnimalId,
    /// Which record.
    photo: RecordId,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let form = Form::open(
        world,
        Route::Photo(animal.clone(), photo.clone()).to_string(),
    );
    let id = StoredValue::new(animal.clone());
    let (shelf, view) = view_of(world, id);
    let name = name_of(view);
    let of = Memo::new(move |_| {
        view.with(|view| view.as_ref().and_then(|view| view.find(&photo).cloned()))
    });
    let said = Signal::derive(move || match of.get() {
        Some(photo) => words.picture(&name.get(), &photo),
        None if shelf.with(Option::is_none) => words.opening().to_owned(),
        None => words.photo_not_here().to_owned(),
    });
    let wrong = RwSignal::new(false);
    let failed = RwSignal::new(false);
    let busy = RwSignal::new(false);
    let text = form.text(DAY);
    let minute = world.minute();
    let day = Signal::derive(move || {
        let today = DeviceZone.to_local(minute.get()).date;
        text.with(|text| said_day(text, today))
    });
    let leave = move |photo: &Photo| world.go(&Route::PhotosOf(id.get_value(), photo.body.pose));
    let save = Callback::new(move |()| {
        let (Some(photo), Some(day)) = (of.get_untracked(), day.get_untracked()) else {
            wrong.set(true);
            return;
        };
        wrong.set(false);
        let act = day_act(&photo, day, clock::now(), &DeviceZone);
        busy.set(true);
        leptos::task::spawn_local(async move {
            let done = form.save(act).await;
            busy.try_set(false);
            if done.is_ok() {
                leave(&photo);
            } else {
                failed.try_set(true);
            }
        });
    });
    let back_it_goes = Callback::new(move |()| {
        let Some(photo) = of.get_untracked() else {
            return;
        };
        leptos::task::spawn_local(async move {
            if world.act(take_back(&photo), None).await.is_ok() {
                leave(&photo);
            } else {
                failed.try_set(true);
            }
        });
    });
    let back = Signal::derive(move || {
        let id = id.get_value();
        let route = of.with(|of| match of {
            Some(photo) => Route::PhotosOf(id, photo.body.pose),
            None => Route::Photos(id),
        });
        route.to_string()
    });
    let there = Memo::new(move |_| of.with(Option::is_some));
    let foot = move || {
        view! {
            <QuietRow>
                <Show when=move || there.get()>
                    <Quiet says=words.take_photo_back() press=back_it_goes />
                </Show>
            </QuietRow>
            <Saving failed=failed />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(back) }>
                <Action says=words.save_day() press=save busy=busy />
            </ActionRow>
        }
    };
    let shown = move || {
        of.get().map(|photo| {
            let named = photo.clone();
            let alt = Signal::derive(move || words.picture(&name.get(), &named));
            let (day, size) = (words.day_of(&photo), words.size_of(&photo));
            view! {
                <ShownPhoto photo alt size=PhotoSize::Wide />
                <p>{day}</p>
                <p class="soft">{size}</p>
            }
        })
    };
    view! {
        <Frame kind=FrameKind::Flow what=name foot=foot>
            <Sentence said=said />
            <Unread shelf />
            {draft_line(form)}
            {shown}
            <Field
                label=words.taken_on()
                hint=words.taken_on_hint()
                value=text
                on_input=form.typed(DAY)
                error=Signal::derive(move || {
                    (wrong.get() && day.get().is_none()).then(|| words.taken_on_wrong().to_owned())
                })
                echo=Signal::derive(move || day.get().map(|day| words.date(day)))
            />
        </Frame>
    }
}
