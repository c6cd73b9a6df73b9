//! A night without a lot: what stands in for the hay of each animal that eats it.

use super::work::Work;
use crate::device::clock::DeviceZone;
use crate::parts::{Action, ActionRow, Back, Frame, FrameKind, Press, Row, Rows, Sentence};
use crate::places::Unread;
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::LotId;
use tussock_flow::routes::Route;
use tussock_flow::views::tonight::{ForOne, night};
use tussock_flow::words::{English, HayWords, HorsesWords, LotsWords, ShedWords};

/// A night without a lot.
#[component]
pub fn Tonight(
    /// Which.
    lot: LotId,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let work = Work::of(world);
    let hay = Route::Hay(lot.clone()).to_string();
    let id = StoredValue::new(lot);
    let seen = Memo::new(move |_| {
        work.now.with(|now| {
            let (shelf, today) = now.as_ref()?;
            Some(night(shelf, today, &id.get_value(), &DeviceZone))
        })
    });
    let said = move || match seen.get() {
        None => words.opening().to_owned(),
        Some(None) => words.no_such_hay().to_owned(),
        Some(Some(night)) => words.night_sentence(&night),
    };
    let inside = move || {
        let night = seen.get().flatten()?;
        if night.animals.is_empty() {
            return Some(view! { <p>{words.night_for_nobody()}</p> }.into_any());
        }
        let animals = night.animals.iter().map(for_one).collect_view();
        let rules = words
            .night_rules()
            .into_iter()
            .map(|rule| view! { <p>{rule}</p> })
            .collect_view();
        Some(
            view! { <p class="soft">{words.night_figures(&night)}</p> {animals} {rules} }
                .into_any(),
        )
    };
    let foot = move || {
        let hay = hay.clone();
        view! {
            <ActionRow back=Back { name: words.back().into(), press: Press::from(Route::Shed.to_string()) }>
                <Action says=words.to_the_hay() press=hay />
            </ActionRow>
        }
    };
    view! {
        <Frame kind=FrameKind::Flow what=words.shed() foot=foot>
            <Sentence said=Signal::derive(said) />
            <Unread shelf=work.shelf />
            {inside}
        </Frame>
    }
}

fn for_one(one: &ForOne) -> AnyView {
    let words = English::default();
    let name = one.name.clone();
    let Some(ways) = &one.ways else {
        return view! { <h2>{name}</h2> <p>{words.night_not_known()} "."</p> }.into_any();
    };
    let rows = words
        .night_ways(one, ways)
        .into_iter()
        .map(|(way, figure, known)| {
            view! { <Row name=way value=figure strong=true second=known /> }
        })
        .collect_view();
    view! {
        <h2>{name.clone()}</h2>
        <p>{words.missing_tonight(ways)} "."</p>
        <Rows name=name>{rows}</Rows>
    }
    .into_any()
}
