//! Two lots beside each other.

use super::work::Work;
use crate::device::clock::DeviceZone;
use crate::form::Form;
use crate::parts::{
    Action, ActionRow, Back, Choice, Frame, FrameKind, Offer, Press, Row, Rows, Sentence,
};
use crate::places::Unread;
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::LotId;
use tussock_flow::routes::Route;
use tussock_flow::views::compare::{Pair, offered, pair};
use tussock_flow::words::{
    English, HayWords, HorsesWords, LotsWords, ShedWords, StockWords, TubWords,
};

/// Two lots, chosen and compared: sugar first, then what a kilogram of dry matter costs as it is eaten.
#[component]
pub fn Compare() -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let form = Form::open(world, Route::Compare.to_string());
    let work = Work::with_stock(world);
    let lots = Memo::new(move |_| {
        work.now
            .with(|now| now.as_ref().map(|(shelf, _)| offered(shelf)))
    });
    let (first, second) = (form.text("first"), form.text("second"));
    let chosen = move |text: Signal<String>| {
        Signal::derive(move || {
            let id = text.get();
            (!id.is_empty()).then_some(LotId(id))
        })
    };
    let found = Memo::new(move |_| {
        work.now.with(|now| {
            let (shelf, today) = now.as_ref()?;
            let [first, second] = [LotId(first.get()), LotId(second.get())];
            pair(shelf, today, &first, &second, &DeviceZone)
        })
    });
    let said = move || match (lots.get(), found.get()) {
        (None, _) => words.opening().to_owned(),
        (_, Some(pair)) => words.compared(&pair).sentence,
        (Some(lots), None) if lots.len() < 2 => words.not_two_hays().to_owned(),
        (Some(_), None) => words.which_two().to_owned(),
    };
    let choice = move |legend: &'static str, field: &'static str, text: Signal<String>| {
        let offers = lots
            .get()
            .unwrap_or_default()
            .into_iter()
            .map(|(id, name)| Offer::new(id, name))
            .collect();
        view! {
            <Choice
                legend=legend
                offers=offers
                chosen=chosen(text)
                on_choose=move |id: LotId| form.set(field, id.0)
            />
        }
    };
    let choices = move || {
        let two = lots.with(|lots| lots.as_ref().is_some_and(|lots| 1 < lots.len()));
        two.then(|| {
            view! {
                {choice(words.one_hay(), "first", first)}
                {choice(words.other_hay(), "second", second)}
            }
        })
    };
    let foot = move || {
        let action = move || {
            let two = lots.with(|lots| lots.as_ref().is_none_or(|lots| 1 < lots.len()));
            let (says, route) = if two {
                (words.to_the_shed(), Route::Shed)
            } else {
                (words.add_hay(), Route::NewHay)
            };
            view! { <Action says=says press=route.to_string() /> }
        };
        view! {
            <ActionRow back=Back { name: words.back().into(), press: Press::from(Route::Shed.to_string()) }>
                {action}
            </ActionRow>
        }
    };
    view! {
        <Frame kind=FrameKind::Flow what=words.shed() foot=foot>
            <Sentence said=Signal::derive(said) />
            <Unread shelf=work.shelf />
            {move || found.get().map(|pair| beside(&pair))}
            {choices}
        </Frame>
    }
}

/// What is known of the two.
fn beside(pair: &Pair) -> AnyView {
    let words = English::default();
    let [sugar, cost, left] = words.compared_heads();
    let lots = pair
        .lots
        .iter()
        .map(|lot| {
            let name = lot.name.clone();
            let known = [
                (sugar, words.compared_sugar(lot)),
                (cost, words.compared_cost(lot)),
                (left, words.compared_stock(lot)),
            ];
            let rows = known
                .into_iter()
                .map(|(name, known)| view! { <Row name=name second=known /> })
                .collect_view();
            view! {
                <h2>{name.clone()}</h2>
                <Rows name=name>{rows}</Rows>
            }
        })
        .collect_view();
    view! {
        {words.compared(pair).why.map(|why| view! { <p>{why}</p> })}
        {lots}
        <p class="soft">{words.judged_for()} " " {words.cost_by()}</p>
    }
    .into_any()
}
