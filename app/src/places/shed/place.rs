//! The shed: nets to weigh, tubs, hay, the weather of the day.

use super::work::{Work, shape, yard};
use crate::device::clock::DeviceZone;
use crate::device::ids;
use crate::parts::{
    Action, ActionRow, Cord, Frame, FrameKind, Hang, Offer, Quiet, QuietRow, Row, Rows, Sentence,
    Several, State, StateShape, Tag,
};
use crate::places::{Places, Saving, Unread};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::{AnimalId, TubId};
use tussock_core::log::bodies::Chip;
use tussock_core::units::Instant;
use tussock_flow::forms::shed::{CHIPS, chip};
use tussock_flow::routes::{Place, Route};
use tussock_flow::views::shed::{Shed as View, shed};
use tussock_flow::views::tub::Tub;
use tussock_flow::words::{
    English, HorsesWords, LogWords, NetsWords, ShedWords, SoakWords, TubWords, UnitWords,
};

/// What a tag of the cord shows.
#[derive(Clone, PartialEq)]
struct Shown {
    state: State,
    word: String,
    lead: Option<String>,
    what: String,
    second: String,
    route: Route,
}

/// The shed.
#[component]
pub fn Shed() -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let work = Work::of(world);
    let failed = RwSignal::new(false);
    let view_of = Memo::new(move |_| {
        work.now
            .with(|now| now.as_ref().map(|(shelf, today)| shed(shelf, today)))
    });
    let due = Memo::new(move |_| {
        let now = world.now.get();
        view_of.with(|view| {
            let tub = view.as_ref()?.due_tub(now)?;
            Some((tub.soak.id.0.clone(), name_of(tub), tub.state(now).step()))
        })
    });
    let said = move || {
        if let Some((_, name, _)) = due.get() {
            let now = world.now.get();
            let state = view_of.with(|view| view.as_ref()?.due_tub(now).map(|tub| tub.state(now)));
            if let Some(state) = state {
                return words.tub_wants(&name, &state);
            }
        }
        match view_of.get() {
            None => words.opening().to_owned(),
            Some(view) => match view.to_weigh() {
                0 if view.nets.is_empty() => words.shed_empty().to_owned(),
                0 => words.nothing_to_weigh().to_owned(),
                count => words.nets_to_weigh(count),
            },
        }
    };
    let tags = Memo::new(move |_| {
        let now = world.now.get();
        view_of.with(|view| {
            view.as_ref()
                .map(|view| cord(view, now))
                .unwrap_or_default()
        })
    });
    let hung = move || {
        tags.get()
            .into_iter()
            .map(|tag| {
                let second = Some(tag.second).filter(|second| !second.is_empty());
                view! {
                    <Hang>
                        <Tag
                            state=Signal::stored(tag.state)
                            word=Signal::stored(tag.word)
                            lead=tag.lead
                            what=Signal::stored(tag.what)
                            second=second
                            press=tag.route.to_string()
                        />
                    </Hang>
                }
            })
            .collect_view()
    };
    let lots = move || {
        let rows = view_of.get().map(|view| view.lots).unwrap_or_default();
        if rows.is_empty() {
            return view! { <p class="soft">{words.no_hay_here()}</p> }.into_any();
        }
        let rows = rows
            .into_iter()
            .map(|row| {
                let state = shape(row.standing());
                view! {
                    <Row
                        name=row.name.clone()
                        second=words.lot_line(&row)
                        press=Route::Hay(row.id).to_string()
                        shape=move || view! { <StateShape state=Signal::stored(state) /> }
                    />
                }
            })
            .collect_view();
        view! { <Rows name=words.hay_here()>{rows}</Rows> }.into_any()
    };
    let chips = Signal::derive(move || {
        view_of.with(|view| {
            view.as_ref()
                .map(|view| view.weather.chips.clone())
                .unwrap_or_default()
        })
    });
    let about = yard(world);
    let choose = Callback::new(move |(which, on): (Chip, bool)| {
        let Some(weather) = view_of.with_untracked(|view| Some(view.as_ref()?.weather.clone()))
        else {
            return;
        };
        let act = chip(&about, &weather, which, on, &ids::new());
        leptos::task::spawn_local(async move {
            failed.try_set(world.act(act, None).await.is_err());
        });
    });
    let carried = Signal::derive(move || {
        let carried = view_of.with(|view| view.as_ref().is_some_and(|view| view.weather.carried));
        let said = if carried {
            words.weather_carried()
        } else {
            words.weather_hint()
        };
        Some(said.to_owned())
    });
    let action = Memo::new(move |_| {
        if let Some((id, name, step)) = due.get() {
            let does = words.tub_action(step).unwrap_or_default();
            return (format!("{does}: {name}"), Route::Tub(TubId(id)));
        }
        view_of.with(|view| {
            let view = view.as_ref();
            let next = view.and_then(View::next_nets);
            match next {
                Some(day) => (
                    words.weigh_nets().to_owned(),
                    Route::Nets(AnimalId(day.about.id().to_owned())),
                ),
                None if view.is_some_and(|view| view.lots.is_empty()) => {
                    (words.add_hay().to_owned(), Route::NewHay)
                }
                None => (words.start_a_soak().to_owned(), Route::NewTub),
            }
        })
    });
    let foot = move || {
        view! {
            <QuietRow>
                <Quiet says=words.add_hay() press=Route::NewHay.to_string() />
                <Quiet says=words.start_a_soak() press=Route::NewTub.to_string() />
            </QuietRow>
            <Saving failed=failed />
            <ActionRow>
                <Action
                    says=Signal::derive(move || action.get().0)
                    press=Signal::derive(move || action.get().1.to_string())
                />
            </ActionRow>
        }
    };
    view! {
        <Frame
            kind=FrameKind::Place
            what=words.shed()
            when=Signal::derive(move || Some(words.time_at(world.now.get(), &DeviceZone)))
            foot=foot
            places=move || view! { <Places here=Place::Shed /> }
        >
            <Sentence said=Signal::derive(said) />
            <Unread shelf=work.shelf />
            <Cord name=words.nets_and_tubs()>{hung}</Cord>
            <h2>{words.hay_here()}</h2>
            {lots}
            <Several
                legend=words.weather_today()
                offers=CHIPS.iter().map(|chip| Offer::new(*chip, words.chip(*chip))).collect()
                chosen=chips
                on_choose=choose
                hint=carried
            />
        </Frame>
    }
}

fn name_of(tub: &Tub) -> String {
    let words = English::default();
    let name = tub.soak.tub_name.clone();
    name.unwrap_or_else(|| words.the_tub().to_owned())
}

/// Tubs by what is next at them, then the nets of each.
fn cord(view: &View, now: Instant) -> Vec<Shown> {
    let words = English::default();
    let tubs = view.tubs.iter().map(|tub| {
        let (at, standing) = tub.next(now);
        let state = tub.state(now);
        let hay = tub.soak.hay.map(|hay| words.feed(hay));
        let name = Some(tub.soak.name.clone()).filter(|name| !name.is_empty());
        Shown {
            state: shape(standing),
            word: words.tub_stands(&state),
            lead: Some(words.time_at(at, &DeviceZone)),
            what: format!("{}: {}", name_of(tub), words.tub_next(&state)),
            second: joined([name, hay]),
            route: Route::Tub(TubId(tub.soak.id.0.clone())),
        }
    });
    let nets = view.nets.iter().map(|day| {
        let left = day.to_weigh();
        let time = day.next().map(|(_, net)| words.time(net.visit));
        let weighed = words.weighed_of(day.weighed(), day.nets.len(), day.hay(), words.for_today());
        Shown {
            state: if left == 0 { State::Done } else { State::Due },
            word: words.nets_left(left),
            lead: None,
            what: words.nets_for(&day.name),
            second: joined([time, Some(weighed)]),
            route: Route::Nets(AnimalId(day.about.id().to_owned())),
        }
    });
    tubs.chain(nets).collect()
}

fn joined(parts: [Option<String>; 2]) -> String {
    parts.into_iter().flatten().collect::<Vec<_>>().join(", ")
}
