//! What two people scored on one day, shown when both are saved.

use crate::device::clock::DeviceZone;
use crate::parts::{
    Action, ActionRow, Back, Column, Frame, FrameKind, Picture, Press, Sentence, SiteCord,
    SiteCords, Table,
};
use crate::places::{Saving, Unread};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::AnimalId;
use tussock_core::assess::Site;
use tussock_flow::routes::Route;
use tussock_flow::views::condition::{Two, needs, two};
use tussock_flow::words::{AssessWords, ConditionWords, English, HorsesWords};

/// What two people scored.
#[component]
pub fn ConditionTwo(
    /// Of which animal.
    animal: AnimalId,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let id = StoredValue::new(animal);
    let shelf = world.shelf(move || needs(&id.get_value()));
    let minute = world.minute();
    let both = Memo::new(move |_| match (shelf.get(), minute.get()) {
        (Some(Ok(shelf)), now) => two(&shelf, &id.get_value(), now, &DeviceZone),
        _ => None,
    });
    let name = Signal::derive(move || match shelf.get() {
        Some(Ok(shelf)) => shelf
            .animal(&id.get_value())
            .map(|animal| animal.name)
            .unwrap_or_default(),
        _ => String::new(),
    });
    let said = Signal::derive(move || match both.get() {
        Some(both) => words.two_scored(&both),
        None if shelf.get().is_none() => words.opening().to_owned(),
        None => words.not_here().to_owned(),
    });
    let horse = StoredValue::new(Route::Horse(id.get_value()).to_string());
    let foot = move || {
        view! {
            <Saving />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(horse.get_value()) }>
                <Action says=words.on_with_it() press=horse.get_value() />
            </ActionRow>
        }
    };
    view! {
        <Frame kind=FrameKind::Flow what=name foot=foot>
            <Sentence said=said />
            <Unread shelf />
            {move || both.get().map(|both| drawn(&both, said))}
        </Frame>
    }
}

/// The picture with its table, whose is whose, and what becomes of it.
fn drawn(both: &Two, said: Signal<String>) -> AnyView {
    let words = English::default();
    let scale = both.second.score.scale();
    let compared = both.apart.is_ok();
    let figure = |score: Option<f64>| {
        score.map_or_else(
            || words.left_out().to_owned(),
            |score| words.step_figure(score),
        )
    };
    let first = |site: Site| both.first.site(site).filter(|_| compared);
    let cords: Vec<SiteCord> = scale
        .sites()
        .iter()
        .map(|site| SiteCord {
            name: words.site(*site).to_owned(),
            now: both.second.site(*site),
            last: None,
            other: first(*site),
            said: figure(both.second.site(*site)),
        })
        .collect();
    let rows: Vec<Vec<String>> = scale
        .sites()
        .iter()
        .map(|site| {
            vec![
                words.site(*site).to_owned(),
                figure(both.second.site(*site)),
                figure(first(*site)),
            ]
        })
        .collect();
    let columns = [words.whose(&both.second), words.whose(&both.first)];
    let table = move || {
        let [second, first] = columns.clone();
        view! {
            <Table
                caption=words.site_by_site()
                columns=vec![
                    Column::words(words.site_column()),
                    Column::numbers(second),
                    Column::numbers(first),
                ]
                rows=Signal::stored(rows.clone())
            />
        }
    };
    let bounds = scale.bounds();
    view! {
        <Picture sentence=said numbers_word=words.all_numbers() numbers=table>
            <SiteCords sites=Signal::stored(cords.clone()) ends=(bounds.min, bounds.max) />
        </Picture>
        <p>{words.whose_is_whose(both)}</p>
        <p class="soft">{words.both_count()}</p>
    }
    .into_any()
}
