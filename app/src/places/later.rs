//! The screens behind the first ones, in parts of their own, by what is done there.
//!
//! The build for hosting cuts the app here, so that the first screens need not wait for the rest, and a screen waits for
//! its own part only. What several parts need is a part too, and comes with the first of them. All are fetched one after
//! another as soon as the app has started, the one of the place in sight first, and the service worker keeps them all:
//! without signal nothing is missing. A screen that is opened before its part has come waits for it, and says so when it
//! does not come.

use super::{desk, horses, paddock, plan, round, shed, start};
use crate::parts::{Action, ActionRow, Frame, FrameKind, Sentence};
use leptos::prelude::*;
use std::future::Future;
use std::pin::Pin;
use tussock_core::round::Subject;
use tussock_flow::routes::{Place, Route};
use tussock_flow::words::{English, HorsesWords};
use wasm_split_helpers::SplitLoaderError;

/// What a part draws.
#[derive(Clone, Copy)]
struct Drawn {
    /// One of its screens.
    screen: fn(Route) -> AnyView,
    /// What rings, whatever screen is in sight.
    bell: Option<fn() -> AnyView>,
}

/// A part on its way.
type Coming = Pin<Box<dyn Future<Output = Result<Drawn, SplitLoaderError>>>>;

/// Whether a part is here.
#[derive(Clone, Copy)]
enum State {
    Awaited,
    Here(Drawn),
    Missing,
}

/// A part of the app.
#[derive(Clone, Copy)]
struct Part {
    fetch: fn() -> Coming,
    state: RwSignal<State>,
    /// Whether it is on its way.
    asked: StoredValue<bool>,
}

impl Part {
    fn new(fetch: fn() -> Coming) -> Self {
        Self {
            fetch,
            state: RwSignal::new(State::Awaited),
            asked: StoredValue::new(false),
        }
    }

    /// Fetches it, unless it is here or on its way.
    fn ask(self) -> impl Future<Output = ()> {
        let here = matches!(self.state.get_untracked(), State::Here(_));
        let due = !here && !self.asked.get_value();
        if due {
            self.asked.set_value(true);
        }
        async move {
            if due {
                let came = (self.fetch)().await;
                self.asked.set_value(false);
                match came {
                    Ok(drawn) => self.state.set(State::Here(drawn)),
                    // The screen that says so stays as it is.
                    Err(_) if matches!(self.state.get_untracked(), State::Missing) => {}
                    Err(_) => self.state.set(State::Missing),
                }
            }
        }
    }
}

/// In which part a screen lies.
#[derive(Clone, Copy)]
enum Behind {
    /// What is done beside an animal, and the start.
    Horses,
    /// What an animal or a group is fed: plan, day, vet's word, ledger, group.
    Plans,
    /// The shed and the round.
    Shed,
    /// The desk: rations and foods.
    Desk,
    /// Grass.
    Paddock,
}

const fn behind(route: &Route) -> Behind {
    match route.place() {
        Some(Place::Round | Place::Shed) => Behind::Shed,
        Some(Place::Desk) => Behind::Desk,
        Some(Place::Paddock) => Behind::Paddock,
        None | Some(Place::Horses) => match route {
            Route::Ration(_) | Route::Mend(_) | Route::ChangeOver(_) => Behind::Desk,
            Route::Plan(_)
            | Route::PlanAt(..)
            | Route::Day(_)
            | Route::GroupDay(_)
            | Route::VetWord(_)
            | Route::Ledger(_)
            | Route::GroupLedger(_)
            | Route::NewGroup
            | Route::Group(_) => Behind::Plans,
            _ => Behind::Horses,
        },
    }
}

/// Names the parts, with the screens that each holds and what it draws. The compiler asks for every part.
macro_rules! parts {
    ($($part:ident: $behind:pat => $drawn:expr,)+) => {
        $(
            #[cfg(split)]
            #[wasm_split_helpers::wasm_split($part, fallible)]
            fn $part() -> Result<Drawn, SplitLoaderError> {
                Ok($drawn)
            }

            /// Where the app is not cut, every part is here.
            #[cfg(not(split))]
            async fn $part() -> Result<Drawn, SplitLoaderError> {
                std::future::ready(Ok($drawn)).await
            }
        )+

        /// The parts of the app that are fetched behind the first screen.
        #[derive(Clone, Copy)]
        pub(crate) struct Parts {
            $($part: Part,)+
        }

        impl Parts {
            fn new() -> Self {
                Self {
                    $($part: Part::new(|| Box::pin($part())),)+
                }
            }

            /// The part that holds a screen.
            const fn of(self, route: &Route) -> Part {
                match behind(route) {
                    $($behind => self.$part,)+
                }
            }

            fn all(self) -> impl Iterator<Item = Part> {
                [$(self.$part,)+].into_iter()
            }
        }
    };
}

parts! {
    horses: Behind::Horses => Drawn { screen: beside_an_animal, bell: None },
    plans: Behind::Plans => Drawn { screen: what_it_is_fed, bell: None },
    shed: Behind::Shed => Drawn { screen: in_the_shed, bell: Some(bell) },
    desk: Behind::Desk => Drawn { screen: at_the_desk, bell: None },
    paddock: Behind::Paddock => Drawn { screen: at_grass, bell: None },
}

impl Parts {
    /// Begins to fetch them, the one of the screen in sight first.
    pub(crate) fn fetch(here: &Route) -> Self {
        let parts = Self::new();
        parts.bring(parts.of(here));
        parts
    }

    /// Fetches what is missing, one part after another.
    fn bring(self, first: Part) {
        let coming = first.ask();
        leptos::task::spawn_local(async move {
            coming.await;
            for part in self.all().filter(|part| part.state != first.state) {
                part.ask().await;
            }
        });
    }

    /// What rings, when it is here.
    pub(crate) fn bell(self) -> AnyView {
        self.all()
            .map(|part| {
                move || match part.state.get() {
                    State::Here(drawn) => drawn.bell.map(|bell| bell()),
                    State::Awaited | State::Missing => None,
                }
            })
            .collect_view()
            .into_any()
    }

    /// A screen behind the first ones, when its part is here.
    pub(crate) fn screen(self, route: Route) -> AnyView {
        let part = self.of(&route);
        // Out of its turn, and again if it did not come.
        leptos::task::spawn_local(part.ask());
        (move || match part.state.get() {
            State::Awaited => ().into_any(),
            State::Here(drawn) => (drawn.screen)(route.clone()),
            State::Missing => view! { <NotHere parts=self part /> }.into_any(),
        })
        .into_any()
    }
}

/// The part did not come: no signal on the very first visit.
#[component]
fn NotHere(parts: Parts, part: Part) -> impl IntoView {
    let words = English::default();
    let again = Callback::new(move |()| {
        part.state.set(State::Awaited);
        parts.bring(part);
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

fn bell() -> AnyView {
    view! { <shed::Bell /> }.into_any()
}

fn beside_an_animal(route: Route) -> AnyView {
    match route {
        Route::Start => view! { <start::Start /> }.into_any(),
        Route::Details(animal) => view! { <horses::Details animal /> }.into_any(),
        Route::Weigh(animal) => view! { <horses::Weigh animal /> }.into_any(),
        Route::Weight(animal) => view! { <horses::Weight animal /> }.into_any(),
        Route::Measure(animal) => view! { <horses::Guide animal /> }.into_any(),
        Route::Measures(animal) => view! { <horses::Measures animal /> }.into_any(),
        Route::Weighbridge => view! { <horses::Weighbridge /> }.into_any(),
        Route::Condition(animal, _) => view! { <horses::Condition animal /> }.into_any(),
        Route::ConditionTwo(animal) => view! { <horses::ConditionTwo animal /> }.into_any(),
        Route::Crest(animal) => view! { <horses::Crest animal /> }.into_any(),
        Route::LookOver(animal) => view! { <horses::LookOver animal /> }.into_any(),
        Route::Work(animal) => view! { <horses::Work animal /> }.into_any(),
        Route::WorkTimed(animal) => view! { <horses::WorkTimed animal /> }.into_any(),
        Route::WorkDone(animal) => view! { <horses::WorkDone animal /> }.into_any(),
        Route::Photos(animal) => view! { <horses::Photos animal /> }.into_any(),
        Route::PhotosOf(animal, pose) => view! { <horses::OnePose animal pose /> }.into_any(),
        Route::Photo(animal, photo) => view! { <horses::OnePhoto animal photo /> }.into_any(),
        Route::NotEating(animal) => view! { <horses::NotEating animal /> }.into_any(),
        Route::Visit => view! { <horses::Visit /> }.into_any(),
        Route::VisitReport => view! { <horses::VisitReport /> }.into_any(),
        Route::WhoWillNotEat(group) => view! { <horses::WhoWillNotEat group /> }.into_any(),
        Route::Horse(animal) => view! { <horses::One animal /> }.into_any(),
        Route::NextStep(animal) => view! { <horses::NextStep animal /> }.into_any(),
        Route::LookBack(animal) => view! { <horses::LookBack animal /> }.into_any(),
        _ => view! { <horses::List /> }.into_any(),
    }
}

fn what_it_is_fed(route: Route) -> AnyView {
    match route {
        Route::Plan(animal) => view! { <plan::Plan animal asked=None /> }.into_any(),
        Route::PlanAt(animal, level) => {
            view! { <plan::Plan animal asked=Some(level) /> }.into_any()
        }
        Route::Day(animal) => view! { <plan::Day of=Subject::Animal(animal) /> }.into_any(),
        Route::GroupDay(group) => view! { <plan::Day of=Subject::Group(group) /> }.into_any(),
        Route::VetWord(animal) => view! { <plan::VetWord animal /> }.into_any(),
        Route::Ledger(animal) => view! { <horses::Ledger of=Subject::Animal(animal) /> }.into_any(),
        Route::GroupLedger(group) => {
            view! { <horses::Ledger of=Subject::Group(group) /> }.into_any()
        }
        Route::NewGroup => view! { <horses::NewGroup /> }.into_any(),
        Route::Group(group) => view! { <horses::Group group /> }.into_any(),
        _ => view! { <horses::List /> }.into_any(),
    }
}

fn in_the_shed(route: Route) -> AnyView {
    match route {
        Route::Round => view! { <round::Round /> }.into_any(),
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
        _ => view! { <shed::Shed /> }.into_any(),
    }
}

fn at_the_desk(route: Route) -> AnyView {
    match route {
        Route::Ration(animal) => view! { <desk::Ration animal /> }.into_any(),
        Route::Mend(animal) => view! { <desk::Mend animal /> }.into_any(),
        Route::ChangeOver(animal) => view! { <desk::ChangeOver animal /> }.into_any(),
        Route::Foods => view! { <desk::Foods /> }.into_any(),
        Route::NewFood => view! { <desk::NewFood /> }.into_any(),
        Route::Food(food) => view! { <desk::Food food /> }.into_any(),
        Route::TypicalFood(food) => view! { <desk::Typical food /> }.into_any(),
        _ => view! { <desk::Desk /> }.into_any(),
    }
}

fn at_grass(route: Route) -> AnyView {
    match route {
        Route::GrassPlace => view! { <paddock::GrassPlace /> }.into_any(),
        Route::Grazing(of) => view! { <paddock::Grazing of /> }.into_any(),
        Route::GrassModel => view! { <paddock::GrassModel /> }.into_any(),
        Route::PaddockOf(animal) => view! { <paddock::Paddock of=Some(animal) /> }.into_any(),
        Route::GrassWeek => view! { <paddock::Week /> }.into_any(),
        Route::Season => view! { <paddock::Season /> }.into_any(),
        Route::NewField => view! { <paddock::NewField /> }.into_any(),
        Route::Field(paddock) => view! { <paddock::Field paddock /> }.into_any(),
        Route::FieldForm(paddock) => view! { <paddock::FieldForm paddock /> }.into_any(),
        Route::Readings(paddock) => view! { <paddock::Readings paddock /> }.into_any(),
        Route::Strip(paddock) => view! { <paddock::Strip paddock /> }.into_any(),
        Route::Plants => view! { <paddock::Plants /> }.into_any(),
        _ => view! { <paddock::Paddock of=None /> }.into_any(),
    }
}
