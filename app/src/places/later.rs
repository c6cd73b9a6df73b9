//! The screens behind the first ones, in a wasm of their own.
//!
//! The build for hosting cuts the app here, so that the first screens need not wait for the rest. The rest is fetched as
//! soon as the app has started, and the service worker keeps both parts: without signal nothing is missing. A screen that
//! is opened before it has come waits for it, and says so when it does not come.

use super::{horses, plan, round, shed, start};
use crate::parts::{Action, ActionRow, Frame, FrameKind, Sentence};
use leptos::prelude::*;
use tussock_core::round::Subject;
use tussock_flow::routes::Route;
use tussock_flow::words::{English, HorsesWords};
use wasm_split_helpers::SplitLoaderError;

/// What the later part draws.
#[derive(Clone, Copy)]
pub(crate) struct Later {
    /// One of its screens.
    screen: fn(Route) -> AnyView,
    /// What rings, whatever screen is in sight.
    bell: fn() -> AnyView,
}

/// Whether the later part is here.
#[derive(Clone, Copy)]
enum Part {
    Coming,
    Here(Later),
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

    /// What rings, when it is here.
    pub(crate) fn bell(self) -> AnyView {
        (move || match self.0.get() {
            Part::Here(later) => Some((later.bell)()),
            Part::Coming | Part::Missing => None,
        })
        .into_any()
    }

    /// A screen of it, when it is here.
    pub(crate) fn screen(self, route: Route) -> AnyView {
        (move || match self.0.get() {
            Part::Coming => ().into_any(),
            Part::Here(later) => (later.screen)(route.clone()),
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
fn rest() -> Result<Later, SplitLoaderError> {
    Ok(Later { screen: draw, bell })
}

/// Where the app is not cut, the rest is here.
#[cfg(not(split))]
async fn rest() -> Result<Later, SplitLoaderError> {
    std::future::ready(Ok(Later { screen: draw, bell })).await
}

fn bell() -> AnyView {
    view! { <shed::Bell /> }.into_any()
}

fn draw(route: Route) -> AnyView {
    match route {
        Route::Start => view! { <start::Start /> }.into_any(),
        Route::Round => view! { <round::Round /> }.into_any(),
        Route::Details(animal) => view! { <horses::Details animal /> }.into_any(),
        Route::Condition(animal, _) => view! { <horses::Condition animal /> }.into_any(),
        Route::Crest(animal) => view! { <horses::Crest animal /> }.into_any(),
        Route::LookOver(animal) => view! { <horses::LookOver animal /> }.into_any(),
        Route::NotEating(animal) => view! { <horses::NotEating animal /> }.into_any(),
        Route::Visit => view! { <horses::Visit /> }.into_any(),
        Route::VisitReport => view! { <horses::VisitReport /> }.into_any(),
        Route::NewGroup => view! { <horses::NewGroup /> }.into_any(),
        Route::Group(group) => view! { <horses::Group group /> }.into_any(),
        Route::Day(animal) => view! { <plan::Day animal /> }.into_any(),
        Route::Plan(animal) => view! { <plan::Plan animal /> }.into_any(),
        Route::VetWord(animal) => view! { <plan::VetWord animal /> }.into_any(),
        Route::Ledger(animal) => view! { <horses::Ledger of=Subject::Animal(animal) /> }.into_any(),
        Route::GroupLedger(group) => {
            view! { <horses::Ledger of=Subject::Group(group) /> }.into_any()
        }
        Route::Shed => view! { <shed::Shed /> }.into_any(),
        Route::Visits => view! { <shed::Visits /> }.into_any(),
        Route::NewHay => view! { <shed::NewHay /> }.into_any(),
        Route::Hay(lot) => view! { <shed::Hay lot /> }.into_any(),
        Route::CountHay(lot) => view! { <shed::CountHay lot /> }.into_any(),
        Route::Tonight(lot) => view! { <shed::Tonight lot /> }.into_any(),
        Route::Compare => view! { <shed::Compare /> }.into_any(),
        Route::WorthOfTest(lot) => view! { <shed::WorthOfTest lot /> }.into_any(),
        Route::Nets(animal) => view! { <shed::Nets animal /> }.into_any(),
        Route::WeighNets => view! { <shed::WeighNets /> }.into_any(),
        Route::Hanging(animal) => view! { <shed::Hanging animal /> }.into_any(),
        Route::YardNets => view! { <shed::YardNets /> }.into_any(),
        Route::NewNet => view! { <shed::NewNet /> }.into_any(),
        Route::Net(net) => view! { <shed::Net net /> }.into_any(),
        Route::NewTub => view! { <shed::NewTub /> }.into_any(),
        Route::Soaks => view! { <shed::Soaks /> }.into_any(),
        Route::AddTub => view! { <shed::AddTub /> }.into_any(),
        Route::TubForm(tub) => view! { <shed::TubForm tub /> }.into_any(),
        Route::Tub(tub) => view! { <shed::Tub tub /> }.into_any(),
        Route::Remind(tub) => view! { <shed::Remind tub /> }.into_any(),
        Route::Reminders => view! { <shed::Reminders /> }.into_any(),
        _ => view! { <horses::List /> }.into_any(),
    }
}
