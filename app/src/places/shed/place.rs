//! The shed: nets to weigh, tubs, hay, the weather of the day.

use super::work::{Work, shape, yard};
use crate::device::clock::DeviceZone;
use crate::device::ids;
use crate::parts::{
    Action, ActionRow, Cord, Frame, FrameKind, Hang, Offer, Quiet, QuietRow, Row, Rows, Sentence,
    Several, State, StateShape, Tag,
};
use crate::places::{Places, Saving, Unread, UpdateOffer};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::{AnimalId, TubId};
use tussock_core::log::bodies::Chip;
use tussock_core::units::Instant;
use tussock_flow::forms::shed::{CHIPS, chip};
use tussock_flow::routes::{Place, Route};
use tussock_flow::views::shed::{Shed as View, shed};
use tussock_flow::views::stock::{StockRow, rows};
use tussock_flow::views::tub::Tub;
use tussock_flow::words::{
    English, HangingWords, HorsesWords, LogWords, LotsWords, NetWords, NetsWords, RemindWords,
    ShedWords, SoaksWords, StockWords, TubWords, UnitWords, VisitsWords,
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

/// Everything the parts of this screen share.
#[derive(Clone, Copy)]
struct AtShed {
    world: World,
    view: Memo<Option<View>>,
    stock: Memo<Option<Vec<StockRow>>>,
    failed: RwSignal<bool>,
}

/// The shed.
#[component]
pub fn Shed() -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let work = Work::with_stock(world);
    let at = AtShed {
        world,
        view: Memo::new(move |_| {
            work.now
                .with(|now| now.as_ref().map(|(shelf, today)| shed(shelf, today)))
        }),
        stock: Memo::new(move |_| {
            work.now.with(|now| {
                let (shelf, today) = now.as_ref()?;
                Some(rows(shelf, today, &DeviceZone))
            })
        }),
        failed: RwSignal::new(false),
    };
    let tags = Memo::new(move |_| {
        let now = world.now.get();
        at.view.with(|view| {
            view.as_ref()
                .map(|view| cord(view, now))
                .unwrap_or_default()
        })
    });
    let action = Memo::new(move |_| at.action());
    // A tub that is due takes the action; the nets stay a touch away.
    let aside = Memo::new(move |_| {
        let now = world.now.get();
        at.view.with(|view| {
            view.as_ref()
                .is_some_and(|view| view.due_tub(now).is_some() && 0 < view.to_weigh())
        })
    });
    let foot = move || {
        view! {
            <QuietRow>
                <Show when=move || aside.get()>
                    <Quiet says=words.weigh_nets() press=Route::WeighNets.to_string() />
                </Show>
                <Quiet says=words.add_hay() press=Route::NewHay.to_string() />
                <Quiet says=words.soaks_and_tubs() press=Route::Soaks.to_string() />
                <Quiet says=words.the_nets() press=Route::YardNets.to_string() />
                <Quiet says=words.when_somebody_comes() press=Route::Visits.to_string() />
                <Quiet says=words.reminders() press=Route::Reminders.to_string() />
            </QuietRow>
            <UpdateOffer />
            <Saving failed=at.failed />
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
            <Sentence said=Signal::derive(move || at.said()) />
            <Unread shelf=work.shelf />
            {work.waiting(None)}
            <Cord name=words.nets_and_tubs()>
                {move || tags.get().into_iter().map(hung).collect_view()}
            </Cord>
            <h2>{words.hay_here()}</h2>
            {move || at.lots()}
            {at.weather()}
        </Frame>
    }
}

impl AtShed {
    /// The tub at which something must be done, else how many nets are to be weighed.
    fn said(self) -> String {
        let words = English::default();
        let now = self.world.now.get();
        self.view.with(|view| {
            let Some(view) = view else {
                return words.opening().to_owned();
            };
            if let Some(tub) = view.due_tub(now) {
                return words.tub_wants(&name_of(tub), &tub.state(now));
            }
            match view.to_weigh() {
                0 if view.nets.is_empty() => words.shed_empty().to_owned(),
                0 => words.nothing_to_weigh().to_owned(),
                count => words.nets_to_weigh(count),
            }
        })
    }

    fn action(self) -> (String, Route) {
        let words = English::default();
        let now = self.world.now.get();
        self.view.with(|view| {
            let view = view.as_ref();
            if let Some(tub) = view.and_then(|view| view.due_tub(now)) {
                let route = Route::Tub(TubId(tub.soak.id.0.clone()));
                return (words.open_tub(&name_of(tub)), route);
            }
            match view.and_then(View::next_nets) {
                Some(_) => (words.weigh_nets().to_owned(), Route::WeighNets),
                None if view.is_some_and(|view| view.lots.is_empty()) => {
                    (words.add_hay().to_owned(), Route::NewHay)
                }
                None => (words.start_a_soak().to_owned(), Route::NewTub),
            }
        })
    }

    fn lots(self) -> AnyView {
        let words = English::default();
        let rows = self.stock.get().unwrap_or_default();
        let several = 1 < rows.len();
        if rows.is_empty() {
            return view! { <p class="soft">{words.no_hay_here()}</p> }.into_any();
        }
        let rows = rows
            .into_iter()
            .map(|row| {
                let state = shape(row.standing());
                let days = row.stock.as_ref().and_then(|stock| words.days_left(stock));
                view! {
                    <Row
                        name=row.lot.name.clone()
                        value=days
                        strong=true
                        second=words.stock_line(&row)
                        press=Route::Hay(row.lot.id).to_string()
                        shape=move || view! { <StateShape state=Signal::stored(state) /> }
                    />
                }
            })
            .collect_view();
        let compare = several.then(|| {
            view! {
                <QuietRow>
                    <Quiet says=words.compare_two() press=Route::Compare.to_string() />
                </QuietRow>
            }
        });
        view! { <Rows name=words.hay_here()>{rows}</Rows> {compare} }.into_any()
    }

    /// The chips of the day.
    fn weather(self) -> AnyView {
        let words = English::default();
        let chips = Signal::derive(move || {
            self.view.with(|view| {
                view.as_ref()
                    .map(|view| view.weather.chips.clone())
                    .unwrap_or_default()
            })
        });
        let hint = Signal::derive(move || {
            let carried = self
                .view
                .with(|view| view.as_ref().is_some_and(|view| view.weather.carried));
            let said = if carried {
                words.weather_carried()
            } else {
                words.weather_hint()
            };
            Some(said.to_owned())
        });
        let about = yard(self.world);
        let choose = Callback::new(move |(which, on): (Chip, bool)| {
            let weather = self
                .view
                .with_untracked(|view| Some(view.as_ref()?.weather.clone()));
            if let Some(weather) = weather {
                let act = chip(&about, &weather, which, on, &ids::new());
                leptos::task::spawn_local(async move {
                    self.failed
                        .try_set(self.world.act(act, None).await.is_err());
                });
            }
        });
        let offers = CHIPS
            .iter()
            .map(|chip| Offer::new(*chip, words.chip(*chip)))
            .collect();
        view! {
            <Several legend=words.weather_today() offers=offers chosen=chips on_choose=choose hint=hint />
        }
        .into_any()
    }
}

fn hung(tag: Shown) -> AnyView {
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
    .into_any()
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
    let hanging = view
        .hanging
        .iter()
        .map(|(about, name, since, count)| Shown {
            state: State::Later,
            word: words.hangs().to_owned(),
            lead: None,
            what: words.nets_hang(name, *count),
            second: words.hangs_since(*since, view.weather.day, &DeviceZone),
            route: Route::Hanging(AnimalId(about.id().to_owned())),
        });
    tubs.chain(nets).chain(hanging).collect()
}

fn joined(parts: [Option<String>; 2]) -> String {
    parts.into_iter().flatten().collect::<Vec<_>>().join(", ")
}
