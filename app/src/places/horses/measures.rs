//! The measures of one animal over time.

use crate::device::clock::DeviceZone;
use crate::parts::{
    Action, ActionRow, Back, Caution, Column, Frame, FrameKind, Press, Quiet, QuietRow, Row, Rows,
    Sentence, Table,
};
use crate::places::Unread;
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::AnimalId;
use tussock_core::assess::Change;
use tussock_flow::routes::Route;
use tussock_flow::views::horses;
use tussock_flow::views::measures::{ALL, Taped, belly_since_first, history};
use tussock_flow::words::{
    AssessWords, BesideWords, ConditionWords, English, GuideWords, HorsesWords, MeasureWords, Said,
    Task, UnitWords,
};

/// The measures over time: what changed, whether it is more than noise, and all of them.
#[component]
pub fn Measures(
    /// Whose.
    animal: AnimalId,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let back = Route::Horse(animal.clone()).to_string();
    let weigh = StoredValue::new(Route::Weigh(animal.clone()).to_string());
    let guide = StoredValue::new(Route::Measure(animal.clone()).to_string());
    let id = StoredValue::new(animal);
    let shelf = world.shelf(move || horses::one_needs(&id.get_value()));
    let minute = world.minute();
    let seen = Memo::new(move |_| match (shelf.get(), minute.get()) {
        (Some(Ok(shelf)), now) => {
            let animals = shelf.animals();
            let animal = animals
                .into_iter()
                .find(|animal| animal.id == id.get_value())?;
            let taped = history(&shelf, &animal, now, &DeviceZone);
            Some((animal, taped))
        }
        _ => None,
    });
    let name = Signal::derive(move || {
        seen.with(|seen| seen.as_ref().map(|(animal, _)| animal.name.clone()))
            .unwrap_or_default()
    });
    let said = Signal::derive(move || {
        seen.with(|seen| match seen {
            None if shelf.with(Option::is_none) => words.opening().to_owned(),
            None => words.not_here().to_owned(),
            Some((animal, taped)) => {
                words.measures_of(&animal.name, belly_since_first(taped).as_ref())
            }
        })
    });
    let foot = move || {
        view! {
            <QuietRow>
                <Quiet says=words.where_the_tape_goes() press=guide.get_value() />
            </QuietRow>
            <ActionRow back=Back { name: words.back().into(), press: Press::from(back.clone()) }>
                <Action
                    says=Signal::derive(move || words.do_task(Task::Weigh, &name.get()))
                    press=weigh.get_value()
                />
            </ActionRow>
        }
    };
    view! {
        <Frame kind=FrameKind::Flow what=name foot=foot>
            <Sentence said=said />
            <Unread shelf />
            {move || seen.with(|seen| seen.as_ref().map(|(_, taped)| shown(taped)))}
        </Frame>
    }
}

fn row(name: &'static str, change: &Change) -> impl IntoView + use<> {
    let words = English::default();
    view! {
        <Row
            name=name
            value=words.changed(change)
            strong=change.is_more_than_noise()
            second=words.change_means(change)
        />
    }
}

fn caution(said: Said) -> impl IntoView {
    let words = English::default();
    view! { <Caution said=said.sentence why=words.why()><p>{said.why}</p></Caution> }
}

fn shown(taped: &[Taped]) -> AnyView {
    let words = English::default();
    let Some(newest) = taped.first() else {
        return view! { <p>{words.nothing_measured()}</p> }.into_any();
    };
    let changes: Vec<&Change> = newest
        .measures
        .iter()
        .filter_map(|(_, change)| change.as_ref())
        .collect();
    let belly = belly_since_first(taped);
    let some = !changes.is_empty() || belly.is_some();
    let rows = changes
        .into_iter()
        .map(|change| row(words.measure(change.measure), change))
        .collect_view();
    let belly = belly
        .as_ref()
        .map(|change| row(words.belly_since_first(), change));
    let rows = some.then(|| {
        view! {
            <h2>{words.since_last_time()}</h2>
            <Rows name=words.since_last_time()>{rows}{belly}</Rows>
        }
    });
    let neck = taped
        .iter()
        .find_map(|taped| taped.neck)
        .map(|(ratio, line)| caution(words.neck_to_height(ratio, line)));
    let why = words.measures_why();
    let columns = words
        .measure_heads()
        .into_iter()
        .map(Column::words)
        .collect();
    view! {
        {rows}
        {neck}
        <p>{why.sentence} ". " {why.why}</p>
        <Table
            caption=words.all_measures()
            columns=columns
            rows=Signal::stored(taped.iter().map(|taped| cells(taped, words)).collect::<Vec<_>>())
            wide=true
        />
    }
    .into_any()
}

/// A line of the table, a text for each head.
fn cells(taped: &Taped, words: English) -> Vec<String> {
    let of = |measure| {
        taped
            .measures
            .iter()
            .find(|(earlier, _)| earlier.measure == measure)
            .map_or_else(
                || words.not_taken().to_owned(),
                |(earlier, _)| words.measured(earlier),
            )
    };
    let neck = taped.neck.map_or_else(
        || words.not_taken().to_owned(),
        |(ratio, _)| words.ratio(ratio),
    );
    [words.day(taped.day)]
        .into_iter()
        .chain(ALL.map(of))
        .chain([neck])
        .collect()
}
