//! A lot as a stock: what is left, how long it lasts, by when to order, who eats it, what it costs, what to watch.

use super::work::Work;
use crate::device::clock::DeviceZone;
use crate::parts::{Caution, Quiet, QuietRow, Row, Rows};
use leptos::prelude::*;
use tussock_core::animal::LotId;
use tussock_core::forage::Lot;
use tussock_flow::routes::Route;
use tussock_flow::views::stock::{Stock, stock, storage};
use tussock_flow::words::{English, StockWords, TubWords};

/// What is done with a lot beside changing it.
pub(super) fn links(id: &LotId) -> AnyView {
    let words = English::default();
    let count = Route::CountHay(id.clone()).to_string();
    let night = Route::Tonight(id.clone()).to_string();
    view! {
        <QuietRow>
            <Quiet says=words.count_what_is_left() press=count />
            <Quiet says=words.compare_hays() press=Route::Compare.to_string() />
            <Quiet says=words.hay_runs_out() press=night />
        </QuietRow>
    }
    .into_any()
}

/// What to watch in store.
pub(super) fn store(lot: &Lot, work: Work) -> AnyView {
    let words = English::default();
    let lot = lot.clone();
    (move || {
        let today = work
            .now
            .with(|now| now.as_ref().map(|(_, today)| today.day))?;
        let notes = storage(&lot, today)
            .iter()
            .map(|note| {
                let said = words.storage_note(note);
                match (words.storage_cautions(note), said.why) {
                    (true, Some(why)) => {
                        view! { <Caution said=said.sentence why=words.why_asked()><p>{why}</p></Caution> }.into_any()
                    }
                    (true, None) => view! { <Caution said=said.sentence /> }.into_any(),
                    (false, why) => view! {
                        <p>{said.sentence} "."</p>
                        {why.map(|why| view! { <p class="soft">{why}</p> })}
                    }
                    .into_any(),
                }
            })
            .collect_view();
        Some(notes)
    })
    .into_any()
}

/// The stock of a lot, as it stands now.
pub(super) fn stock_of(id: &LotId, priced: bool, work: Work) -> AnyView {
    let id = id.clone();
    let held = Memo::new(move |_| {
        work.now.with(|now| {
            let (shelf, today) = now.as_ref()?;
            Some((stock(shelf, today, &id, &DeviceZone)?, today.day))
        })
    });
    (move || {
        held.get()
            .map(|(stock, today)| shown(&stock, today, priced))
    })
    .into_any()
}

fn shown(stock: &Stock, today: tussock_core::units::LocalDate, priced: bool) -> AnyView {
    let words = English::default();
    let unknown = stock
        .left
        .as_ref()
        .err()
        .map(|why| view! { <Caution said=words.left_unknown(*why) /> });
    let because = words
        .count_because(stock)
        .into_iter()
        .map(|said| view! { <Caution said=said /> })
        .collect_view();
    let order = stock.lasting.as_ref().map(|lasting| {
        let said = words.order_line(lasting, today);
        if stock.order_now(today) {
            view! { <Caution said=said /> }.into_any()
        } else {
            view! { <p>{said} "."</p> }.into_any()
        }
    });
    let cost = match &stock.cost {
        Some(cost) => view! {
            <p>{words.cost_line(cost)} "."</p>
            <p class="soft">{words.cost_by()}</p>
        }
        .into_any(),
        None => view! { <p class="soft">{words.cost_unknown(priced)} "."</p> }.into_any(),
    };
    let eaters = if stock.eaters.is_empty() {
        view! { <p class="soft">{words.nobody_eats_it()}</p> }.into_any()
    } else {
        let rows = stock
            .eaters
            .iter()
            .map(|eater| {
                view! {
                    <Row name=eater.name.clone() value=words.eater_a_day(eater) strong=true second=words.eater_line(eater) />
                }
            })
            .collect_view();
        view! { <Rows name=words.who_eats_it()>{rows}</Rows> }.into_any()
    };
    view! {
        <h2>{words.stock_head()}</h2>
        <p>{words.left_line(stock)} "."</p>
        {unknown}
        {because}
        <p>{words.lasts_line(stock)} "."</p>
        {order}
        {cost}
        <p class="soft">{words.went_line(stock)} "."</p>
        <p class="soft">{words.bale_line(stock)} "."</p>
        <p class="soft">{words.slice_line(stock)} "."</p>
        <h2>{words.who_eats_it()}</h2>
        {eaters}
    }
    .into_any()
}
