//! The invented yard: opened from the first screen, always marked, removed in one tap.

use crate::device::{address, clock};
use crate::keep;
use crate::parts::{Banner, FrameBanner, Notice, Press};
use crate::world::{EXAMPLE, World};
use leptos::prelude::*;
use tussock_core::log::Kind;
use tussock_flow::example;
use tussock_flow::routes::Route;
use tussock_flow::words::{English, ExampleWords, HorsesWords};

/// Opens the invented yard: fills it the first time, then shows its animals.
#[component]
pub fn Example() -> impl IntoView {
    let world = World::here();
    leptos::task::spawn_local(async move {
        if !world.example {
            // Another address was open: the page starts again with the invented yard's own database.
            address::reload();
            return;
        }
        let filled = world.holds(Kind::Animal.word()).await;
        if matches!(filled, Ok(false))
            && let Ok(act) = example::yard(&world.yard(), clock::now())
        {
            // What cannot be written leaves an empty yard, and its list says so.
            let _ = world.act(act, None).await;
        }
        world.go(&Route::Horses);
    });
}

/// The banner over every screen of the invented yard; over a person's own, that this window keeps nothing where it
/// does not.
pub(crate) fn banner(world: World) -> FrameBanner {
    let words = English::default();
    let leave = Callback::new(move |()| {
        leptos::task::spawn_local(async move {
            // A database that is still held is deleted when this page lets go of it, which the reload does.
            keep::delete(EXAMPLE);
            address::go(&Route::Home);
            address::reload();
        });
    });
    FrameBanner(ViewFn::from(move || {
        if world.example {
            return view! { <Banner said=words.example_yard() leave=words.leave_example() press=Press::from(leave) /> }
                .into_any();
        }
        world
            .vanishes()
            .then(|| view! { <Notice said=words.vanishes() /> })
            .into_any()
    }))
}
