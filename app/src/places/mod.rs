//! The screens, a folder a place, and the way from an address to its screen.

pub mod desk;
pub mod example;
pub mod first;
pub mod horses;
mod later;
pub mod paddock;
pub(crate) mod pasted;
pub mod plan;
pub mod round;
pub mod shed;
pub mod start;
mod update;

use crate::device::{address, clock};
use crate::form::Form;
use crate::keep::KeepError;
use crate::parts::{Caution, Drawing, PlaceBar, PlaceTab, Quiet, QuietRow, Undo, shell};
use crate::world::{Reading, World, reading};
use leptos::ev;
use leptos::prelude::*;
use std::time::Duration;
use tussock_core::units::Zone;
use tussock_flow::routes::{Place, Route, Step};
use tussock_flow::shelf::Shelf;
use tussock_flow::words::{DeskWords, English, HorsesWords, PaddockWords, RoundWords, ShedWords};

pub(crate) use update::UpdateOffer;

/// Why the disk could not be opened.
pub(crate) type Trouble = KeepError;

/// Opens the disk while the shell is on the screen, then draws the app in its place.
#[component]
pub fn Opening() -> impl IntoView {
    let opened = reading(|| async {
        let route = address::here();
        World::open(route == Route::Example, route).await
    });
    move || {
        opened.get().map(|opened| match opened {
            Ok(world) => view! { <App world /> }.into_any(),
            Err(error) => view! { <first::NoDisk error /> }.into_any(),
        })
    }
}

/// The app: one screen an address.
#[component]
pub fn App(
    /// What the screens stand in.
    world: World,
) -> impl IntoView {
    provide_context(world);
    provide_context(example::banner(world));
    window_event_listener(ev::hashchange, move |_| {
        world.route.set(address::here());
        // Once it is drawn.
        request_animation_frame(shell::arrive);
    });
    // The beat of the countdowns; what they show is reckoned from instants, so a missed beat loses nothing.
    if let Ok(beat) =
        set_interval_with_handle(move || world.now.set(clock::now()), Duration::from_secs(1))
    {
        on_cleanup(move || beat.clear());
    }
    window_event_listener_untyped("visibilitychange", move |_| world.now.set(clock::now()));
    // A link of the shell may have been tapped while the disk was opened, before anybody listened.
    world.route.set(address::here());
    // And a newer build may have been told of.
    world.update.set(shell::waiting_build().is_some());
    window_event_listener_untyped(shell::UPDATE, move |_| world.update.set(true));
    // The walk-round is one screen and one form: it follows its own steps.
    let shown = Memo::new(move |_| match world.route.get() {
        Route::Condition(animal, _) | Route::ConditionWho(animal) => {
            Route::Condition(animal, Step::FIRST)
        }
        route => route,
    });
    let later = later::Parts::fetch(&world.route.get_untracked());
    view! {
        {later.bell()}
        {move || screen(shown.get(), later)}
    }
}

fn screen(route: Route, later: later::Parts) -> AnyView {
    if route != Route::Home {
        shell::show_app();
    }
    match route {
        Route::Home => view! { <first::Home /> }.into_any(),
        Route::Example => view! { <example::Example /> }.into_any(),
        Route::Horses => view! { <horses::List /> }.into_any(),
        Route::NewHorse => view! { <horses::New /> }.into_any(),
        behind => later.screen(behind),
    }
}

/// The place bar, with the places that do something.
#[component]
pub(crate) fn Places(
    /// The current place.
    here: Place,
) -> impl IntoView {
    let words = English::default();
    let tabs = [
        (Place::Round, Drawing::Round, words.round(), Route::Round),
        (
            Place::Horses,
            Drawing::Horses,
            words.horses(),
            Route::Horses,
        ),
        (Place::Shed, Drawing::Shed, words.shed(), Route::Shed),
        (
            Place::Paddock,
            Drawing::Paddock,
            words.paddock(),
            Route::Paddock,
        ),
        (Place::Desk, Drawing::Desk, words.desk(), Route::Desk),
    ]
    .into_iter()
    .map(|(place, icon, word, route)| PlaceTab {
        icon,
        word: Signal::stored(word.to_owned()),
        href: route.to_string(),
        here: Signal::stored(place == here),
    })
    .collect();
    view! { <PlaceBar name=words.places() tabs /> }
}

/// The line above the action: what was just saved and its undo, or that it was not saved.
#[component]
pub(crate) fn Saving(
    /// Whether the last save failed.
    #[prop(optional, into)]
    failed: Signal<bool>,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let said = Signal::derive(move || world.just_saved().map(|_| words.saved().to_owned()));
    let undo = Callback::new(move |()| {
        leptos::task::spawn_local(async move {
            // What cannot be taken back stays as it is, and the line stays with it.
            let _ = world.undo().await;
        });
    });
    view! {
        <Show when=move || failed.get()>
            <p class="error" role="alert">{words.not_saved()}</p>
        </Show>
        <Undo said undo=words.undo() on_undo=undo />
    }
}

/// Says when the records of a screen cannot be read.
#[component]
pub(crate) fn Unread(
    /// The records.
    shelf: Reading<Result<Shelf, KeepError>>,
) -> impl IntoView {
    let words = English::default();
    move || {
        matches!(shelf.get(), Some(Err(_))).then(|| view! { <Caution said=words.cannot_read() /> })
    }
}

/// Says that a form came back as it was left, and when that was; and throws it away.
pub(crate) fn draft_line(form: Form) -> impl IntoView {
    let words = English::default();
    let throw = Callback::new(move |()| form.throw_away());
    move || {
        form.found.get().map(|at| {
            let today = clock::DeviceZone.to_local(clock::now()).date;
            let said = words.draft_from(at, today, &clock::DeviceZone);
            view! {
                <QuietRow>
                    <span class="soft">{said}</span>
                    <Quiet says=words.throw_draft_away() press=throw />
                </QuietRow>
            }
        })
    }
}
