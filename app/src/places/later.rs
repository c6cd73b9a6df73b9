//! The screens behind the first ones, in a wasm of their own.
//!
//! The build for hosting cuts the app here, so that the first screens need not wait for the rest. The rest is fetched as
//! soon as the app has started, and the service worker keeps both parts: without signal nothing is missing. A screen that
//! is opened before it has come waits for it, and says so when it does not come.

use super::{horses, plan, round, shed, start};
use crate::parts::{Action, ActionRow, Frame, FrameKind, Sentence};
use leptos::prelude::*;
use tussock_flow::routes::Route;
use tussock_flow::words::{English, HorsesWords};
use wasm_split_helpers::SplitLoaderError;

/// Draws a screen of the later part.
type Draw = fn(Route) -> AnyView;

/// Whether the later part is here.
#[derive(Clone, Copy)]
enum Part {
    Coming,
    Here(Draw),
    Missing,
}

/// The later part of the app, given once as a context.
#[derive(Clone, Copy)]
pub(crate) struct Rest(RwSignal<Part>);

impl Rest {
    /// Begins to fetch it.
    pub(crate) fn fetch() -> Self {
        let rest = Self(RwSignal::new(Part::Coming));
        rest.ask();
        rest
    }

    fn ask(self) {
        leptos::task::spawn_local(async move {
            self.0.set(rest().await.map_or(Part::Missing, Part::Here));
        });
    }

    /// A screen of it, when it is here.
    pub(crate) fn screen(self, route: Route) -> AnyView {
        (move || match self.0.get() {
            Part::Coming => ().into_any(),
            Part::Here(draw) => draw(route.clone()),
            Part::Missing => view! { <NotHere rest=self /> }.into_any(),
        })
        .into_any()
    }
}

/// The part did not come: no signal on the very first visit.
#[component]
fn NotHere(rest: Rest) -> impl IntoView {
    let words = English::default();
    let again = Callback::new(move |()| {
        rest.0.set(Part::Coming);
        rest.ask();
    });
    let foot = move || {
        view! { <ActionRow><Action says=words.try_again() press=again /></ActionRow> }
    };
    view! {
        <Frame kind=FrameKind::Flow what="Tussock" foot=foot>
            <Sentence said=words.rest_not_here() />
            <p>{words.rest_not_here_why()}</p>
        </Frame>
    }
}

#[cfg(split)]
#[wasm_split_helpers::wasm_split(later, fallible)]
fn rest() -> Result<Draw, SplitLoaderError> {
    Ok(draw)
}

/// Where the app is not cut, the rest is here.
#[cfg(not(split))]
async fn rest() -> Result<Draw, SplitLoaderError> {
    std::future::ready(Ok(draw as Draw)).await
}

fn draw(route: Route) -> AnyView {
    match route {
        Route::Start => view! { <start::Start /> }.into_any(),
        Route::Round => view! { <round::Round /> }.into_any(),
        Route::Details(animal) => view! { <horses::Details animal /> }.into_any(),
        Route::Condition(animal, _) => view! { <horses::Condition animal /> }.into_any(),
        Route::Crest(animal) => view! { <horses::Crest animal /> }.into_any(),
        Route::LookOver(animal) => view! { <horses::LookOver animal /> }.into_any(),
        Route::NewGroup => view! { <horses::NewGroup /> }.into_any(),
        Route::Group(group) => view! { <horses::Group group /> }.into_any(),
        Route::Plan(animal) => view! { <plan::Plan animal /> }.into_any(),
        Route::VetWord(animal) => view! { <plan::VetWord animal /> }.into_any(),
        Route::Shed => view! { <shed::Shed /> }.into_any(),
        Route::Visits => view! { <shed::Visits /> }.into_any(),
        Route::NewHay => view! { <shed::NewHay /> }.into_any(),
        Route::Hay(lot) => view! { <shed::Hay lot /> }.into_any(),
        Route::Nets(animal) => view! { <shed::Nets animal /> }.into_any(),
        Route::NewTub => view! { <shed::NewTub /> }.into_any(),
        Route::Soaks => view! { <shed::Soaks /> }.into_any(),
        Route::AddTub => view! { <shed::AddTub /> }.into_any(),
        Route::TubForm(tub) => view! { <shed::TubForm tub /> }.into_any(),
        Route::Tub(tub) => view! { <shed::Tub tub /> }.into_any(),
        _ => view! { <horses::List /> }.into_any(),
    }
}
