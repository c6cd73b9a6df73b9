//! A visit to the yard: whom to see, then what is shared and each animal in turn.

use super::one::route_of;
use crate::device::clock::{self, DeviceZone};
use crate::form::Form;
use crate::keep::KeepError;
use crate::parts::{
    Action, ActionRow, Back, Cord, Frame, FrameKind, Hang, Offer, Press, Quiet, QuietRow, Row,
    Rows, Sentence, Several, State, Tag,
};
use crate::places::{Saving, Unread, draft_line};
use crate::world::{Reading, World};
use leptos::prelude::*;
use tussock_core::animal::AnimalId;
use tussock_core::log::bodies::SharedFact;
use tussock_core::units::Zone;
use tussock_flow::forms::group::{chosen, with};
use tussock_flow::forms::yard_visit::{as_before, start};
use tussock_flow::routes::Route;
use tussock_flow::shelf::Shelf;
use tussock_flow::views::yard_visit::since::{Since, since};
use tussock_flow::views::yard_visit::{
    FactState, Next, Seen, Underway, before, needs, under_way, underway,
};
use tussock_flow::words::{BesideWords, English, HorsesWords, YardVisitWords};

/// The field of the animals that are seen.
const ANIMALS: &str = "animals";

/// The visit that is under way, or the start of one.
#[component]
pub fn Visit() -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let shelf = world.shelf(needs);
    let minute = world.minute();
    // Which of the two it is: the rest of each is drawn once.
    let under = Memo::new(move |_| match (shelf.get(), minute.get()) {
        (Some(Ok(shelf)), now) => Some(under_way(&shelf, now).is_some()),
        (Some(Err(_)), _) => Some(false),
        (None, _) => None,
    });
    move || match under.get() {
        None => view! {
            <Frame kind=FrameKind::Flow what=words.the_visit()>
                <Sentence said=words.opening() />
            </Frame>
        }
        .into_any(),
        Some(true) => view! { <UnderWay shelf /> }.into_any(),
        Some(false) => view! { <Start shelf /> }.into_any(),
    }
}

/// Whom to see.
#[component]
fn Start(shelf: Reading<Result<Shelf, KeepError>>) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let form = Form::open_today(world, Route::Visit.to_string());
    let minute = world.minute();
    let yard = Memo::new(move |_| match shelf.get() {
        Some(Ok(shelf)) => shelf.animals(),
        _ => Vec::new(),
    });
    let last = Memo::new(move |_| match (shelf.get(), minute.get()) {
        (Some(Ok(shelf)), now) => before(&shelf, now).and_then(|held| held.body.ended),
        _ => None,
    });
    // Everybody, until somebody is left out.
    let text = move || {
        form.held(ANIMALS).unwrap_or_else(|| {
            let yard = yard.get();
            let ids: Vec<&str> = yard.iter().map(|animal| animal.id.as_str()).collect();
            ids.join(" ")
        })
    };
    let wrong = RwSignal::new(false);
    let failed = RwSignal::new(false);
    let busy = RwSignal::new(false);
    let press = Callback::new(move |()| {
        match start(&world.yard(), &chosen(&untrack(text)), &form.id("id")) {
            Err(_) => wrong.set(true),
            Ok(act) => {
                busy.set(true);
                leptos::task::spawn_local(async move {
                    failed.try_set(form.save(act).await.is_err());
                    busy.try_set(false);
                });
            }
        }
    });
    let hint = Signal::derive(move || {
        Some(if wrong.get() {
            words.somebody_wanted().to_owned()
        } else {
            words.whom_to_see_hint().to_owned()
        })
    });
    let on_choose = Callback::new(move |(animal, within): (AnimalId, bool)| {
        wrong.set(false);
        form.set(ANIMALS, with(&untrack(text), &animal, within));
    });
    let foot = move || {
        view! {
            <Saving failed=failed />
            <ActionRow back=back()>
                <Action says=words.start_visit() press=press busy=busy />
            </ActionRow>
        }
    };
    view! {
        <Frame kind=FrameKind::Flow what=words.the_visit() foot=foot>
            <Sentence said=words.whom_to_see() />
            <Unread shelf />
            {draft_line(form)}
            {move || {
                let today = DeviceZone.to_local(clock::now()).date;
                let ended = last.get()?;
                Some(view! { <p class="soft">{words.last_visit(ended, today, &DeviceZone)}</p> })
            }}
            {move || {
                let offers: Vec<Offer<AnimalId>> = yard
                    .get()
                    .iter()
                    .map(|animal| Offer::new(animal.id.clone(), animal.name.clone()))
                    .collect();
                view! {
                    <Several
                        legend=words.horses()
                        offers=offers
                        chosen=Signal::derive(move || chosen(&text()))
                        on_choose=on_choose
                        hint=hint
                    />
                }
            }}
        </Frame>
    }
}

fn back() -> Back {
    Back {
        name: English::default().back().into(),
        press: Press::from(Route::Horses.to_string()),
    }
}

/// The visit as it stands.
#[component]
fn UnderWay(shelf: Reading<Result<Shelf, KeepError>>) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let minute = world.minute();
    let visit = Memo::new(move |_| match (shelf.get(), minute.get()) {
        (Some(Ok(shelf)), now) => underway(&shelf, now, &DeviceZone),
        _ => None,
    });
    let changed = Memo::new(move |_| match (shelf.get(), visit.get()) {
        (Some(Ok(shelf)), Some(visit)) => since(&shelf, &visit.held, clock::now(), &DeviceZone),
        _ => None,
    });
    let failed = RwSignal::new(false);
    let unasked = Callback::new(move |()| {
        let Some(visit) = visit.get_untracked() else {
            return;
        };
        let act = as_before(&visit.held, &visit.open_facts());
        leptos::task::spawn_local(async move {
            failed.try_set(world.act(act, None).await.is_err());
        });
    });
    let next = Signal::derive(move || visit.get().map_or(Next::Summary, |visit| visit.next()));
    let leads = Signal::derive(move || {
        match next.get() {
            Next::Step(animal, _, task) => route_of(task, animal),
            Next::Summary => Route::VisitReport,
        }
        .to_string()
    });
    let said = Signal::derive(move || {
        visit.with(|visit| {
            visit
                .as_ref()
                .map(|visit| words.visit_sentence(visit))
                .unwrap_or_default()
        })
    });
    let began = Signal::derive(move || {
        visit.with(|visit| {
            let today = DeviceZone.to_local(clock::now()).date;
            visit
                .as_ref()
                .map(|visit| words.visit_began(visit.held.began, today, &DeviceZone))
        })
    });
    let foot = move || {
        view! {
            <QuietRow>
                <Quiet says=words.to_summary_now() press=Route::VisitReport.to_string() />
            </QuietRow>
            <Saving failed=failed />
            <ActionRow back=back()>
                <Action says=Signal::derive(move || words.next_step(&next.get())) press=leads />
            </ActionRow>
        }
    };
    view! {
        <Frame kind=FrameKind::Flow what=words.the_visit() when=began foot=foot>
            <Sentence said=said />
            <Unread shelf />
            {move || changed.with(|changed| changes(changed.as_ref()))}
            {move || visit.with(|visit| visit.as_ref().map(|visit| shared(visit, unasked)))}
            <Cord name=words.horses()>
                {move || {
                    visit.with(|visit| {
                        visit.as_ref().map(|visit| {
                            visit.animals.iter().map(animal_tag).collect_view()
                        })
                    })
                }}
            </Cord>
        </Frame>
    }
}

/// What changed since the last visit, first of all.
pub(super) fn changes(changed: Option<&Since>) -> AnyView {
    let words = English::default();
    let Some(changed) = changed else {
        return view! { <p class="soft">{words.first_visit()}</p> }.into_any();
    };
    let today = DeviceZone.to_local(clock::now()).date;
    let head = words.changed_since(changed.ended, today, &DeviceZone);
    let yard = changed
        .yard
        .iter()
        .map(|change| view! { <p>{words.yard_change(change)}</p> })
        .collect_view();
    let rows = changed
        .animals
        .iter()
        .map(|(name, changes)| {
            let said: Vec<String> = changes.iter().map(|change| words.change(change)).collect();
            let said = if said.is_empty() {
                words.nothing_changed().to_owned()
            } else {
                said.join("; ")
            };
            view! { <Row name=name.clone() value=String::new() second=said /> }
        })
        .collect_view();
    view! {
        <h2>{head.clone()}</h2>
        {yard}
        <Rows name=head>{rows}</Rows>
    }
    .into_any()
}

/// Where a shared fact is written down.
fn route_of_fact(fact: SharedFact) -> Route {
    match fact {
        SharedFact::Hay => Route::Shed,
        SharedFact::Visits => Route::Visits,
        SharedFact::Nets => Route::YardNets,
        SharedFact::Weather => Route::Soaks,
    }
}

/// What the animals share, asked once.
fn shared(visit: &Underway, as_before: Callback<()>) -> impl IntoView + use<> {
    let words = English::default();
    let open = visit.open_facts();
    let rows = visit
        .facts
        .iter()
        .map(|(fact, state)| {
            let state_of = match state {
                FactState::Open => State::Due,
                FactState::AsBefore | FactState::Changed => State::Done,
            };
            let (fact, state) = (*fact, *state);
            view! {
                <Hang reached=Signal::stored(state != FactState::Open)>
                    <Tag
                        state=Signal::stored(state_of)
                        word=Signal::stored(words.fact_state(state).to_owned())
                        what=words.shared_fact(fact)
                        press=route_of_fact(fact).to_string()
                    />
                </Hang>
            }
        })
        .collect_view();
    let key = (!open.is_empty()).then(|| {
        let says = words.all_as_before(&open);
        view! { <QuietRow><Quiet says=says press=as_before /></QuietRow> }
    });
    view! {
        <h2>{words.for_all_of_them()}</h2>
        <Cord name=words.for_all_of_them()>{rows}</Cord>
        {key}
    }
}

fn animal_tag(seen: &Seen) -> impl IntoView + use<> {
    let words = English::default();
    let animal = &seen.visit.animal;
    let (state, word) = match &seen.visit.stop {
        Some(stop) => (State::Stop, words.stop_word(stop).to_owned()),
        None if seen.open.is_empty() => (State::Done, words.seen_word(seen)),
        None => (State::Due, words.seen_word(seen)),
    };
    let (reached, name, second) = (seen.open.is_empty(), animal.name.clone(), words.seen(seen));
    let route = Route::Horse(animal.id.clone()).to_string();
    view! {
        <Hang reached=Signal::stored(reached)>
            <Tag
                state=Signal::stored(state)
                word=Signal::stored(word)
                what=Signal::stored(name)
                second=Signal::stored(Some(second))
                press=route
            />
        </Hang>
    }
}
