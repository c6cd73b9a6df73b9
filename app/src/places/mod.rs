//! The screens, a folder a place, and the way from an address to its screen.

pub mod first;
pub mod horses;

use crate::device::{address, clock, settings};
use crate::keep::KeepError;
use crate::parts::shell;
use crate::world::World;
use leptos::ev;
use leptos::prelude::*;
use tussock_flow::routes::Route;

/// Opens the disk while the shell is on the screen, then draws the app in its place.
#[component]
pub fn Opening() -> impl IntoView {
    let opened = LocalResource::new(|| async {
        let route = address::here();
        let example = matches!(route, Route::Example) || settings::in_example();
        World::open(example, route).await
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
    window_event_listener(ev::hashchange, move |_| world.route.set(address::here()));
    // The beat of the countdowns; what they show is reckoned from instants, so a missed beat loses nothing.
    let beat = set_interval_with_handle(move || world.now.set(clock::now()), std::time::Duration::from_secs(1));
    on_cleanup(move || {
        if let Ok(beat) = beat {
            beat.clear();
        }
    });
    window_event_listener_untyped("visibilitychange", move |_| world.now.set(clock::now()));
    window_event_listener_untyped(shell::UPDATE, move |_| world.update.set(true));
    move || screen(world)
}

fn screen(world: World) -> AnyView {
    shell::show_app();
    match world.route.get() {
        Route::Home => view! { <first::Home /> }.into_any(),
        route => view! { <horses::List route /> }.into_any(),
    }
}

/// Why the disk could not be opened, in the words of the screens.
pub(crate) type Trouble = KeepError;
