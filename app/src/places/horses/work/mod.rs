//! The work of one animal: what is asked of this week, what was done, and the way to the next session.

mod after;
mod done;
mod timed;

pub use done::WorkDone;
pub use timed::WorkTimed;

use crate::device::clock::DeviceZone;
use crate::parts::{
    Action, ActionRow, Back, BeatCords, BeatRow, Beats, Caution, Column, Frame, FrameKind, Picture,
    Press, Quiet, QuietRow, Rank, Row, Rows, Sentence, StopBlock, Table,
};
use crate::places::{Saving, Unread};
use crate::world::{World, reading};
use leptos::prelude::*;
use tussock_core::animal::AnimalId;
use tussock_core::units::Span;
use tussock_core::work::{Gait, GaitTimes, WorkLine};
use tussock_flow::forms::work::{TAPS, on_the_clock};
use tussock_flow::routes::Route;
use tussock_flow::views::beats::{WIDE, stretches};
use tussock_flow::views::work::{WorkView, needs, work};
use tussock_flow::words::{
    BesideWords, English, HorsesWords, PlanScreenWords, PlanWords, SafetyWords, Said, WorkWords,
};

/// Where the action leads, and what it says.
fn action(view: &WorkView, going: bool, words: English) -> (String, Route) {
    let id = view.animal.id.clone();
    if going {
        return (words.go_on_with_work().to_owned(), Route::WorkTimed(id));
    }
    match (&view.stop, view.standing.line) {
        (Some(_), _) => (words.look_again_now().to_owned(), Route::LookOver(id)),
        (None, WorkLine::VetsWordFirst) => (
            words
                .meanwhile(&tussock_core::safety::Meanwhile::WriteDownVetsWord)
                .sentence,
            Route::VetWord(id),
        ),
        (None, WorkLine::AskFirst) => (words.say_in_details().to_owned(), Route::Details(id)),
        (None, WorkLine::None | WorkLine::NotPlannedHere(_)) => {
            (words.write_down_work().to_owned(), Route::WorkDone(id))
        }
        (None, WorkLine::Recovered { .. } | WorkLine::Donkey { .. } | WorkLine::Sound { .. }) => {
            (words.start_work().to_owned(), Route::WorkTimed(id))
        }
    }
}

/// The work of one animal.
#[component]
pub fn Work(
    /// Which.
    animal: AnimalId,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let id = StoredValue::new(animal.clone());
    let shelf = world.shelf(move || needs(&id.get_value()));
    let minute = world.minute();
    let view = Memo::new(move |_| match (shelf.get(), minute.get()) {
        (Some(Ok(shelf)), now) => work(&shelf, &id.get_value(), now, &DeviceZone),
        _ => None,
    });
    let key = Route::WorkTimed(animal.clone()).to_string();
    let draft = reading(move || {
        let key = key.clone();
        async move { world.draft(&key).await.ok().flatten() }
    });
    let going = Memo::new(move |_| {
        let taps = draft.get().flatten()?.fields.get(TAPS).cloned()?;
        Some(on_the_clock(&taps, minute.get()).started.is_some())
    });
    let name = Signal::derive(move || {
        view.with(|view| view.as_ref().map(|view| view.animal.name.clone()))
            .unwrap_or_default()
    });
    let said = move || match view.get() {
        None if shelf.get().is_none() => words.opening().to_owned(),
        None => words.not_here().to_owned(),
        Some(view) => words.work_head(&view),
    };
    let head = move || match view.get().and_then(|view| view.stop) {
        Some(stop) => view! {
            <StopBlock order=words.stop_order(&stop) rank=Rank::Sentence>
                <p>{words.stop_why(&stop)}</p>
            </StopBlock>
        }
        .into_any(),
        None => view! { <Sentence said=Signal::derive(said) /> }.into_any(),
    };
    let leads = Memo::new(move |_| {
        view.get()
            .map(|view| action(&view, going.get() == Some(true), words))
    });
    let back = Route::Horse(animal).to_string();
    let act = move || match leads.get() {
        Some((says, route)) => view! { <Action says=says press=route.to_string() /> }.into_any(),
        None => view! { <Action says=words.horses() press=Route::Horses.to_string() /> }.into_any(),
    };
    let foot = move || {
        view! {
            <Show when=move || leads.get().is_some_and(|(_, route)| !matches!(route, Route::WorkDone(_)))>
                <QuietRow>
                    <Quiet says=words.write_down_work() press=Route::WorkDone(id.get_value()).to_string() />
                </QuietRow>
            </Show>
            <Saving />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(back.clone()) }>
                {act}
            </ActionRow>
        }
    };
    view! {
        <Frame kind=FrameKind::Flow what=name foot=foot>
            {head}
            <Unread shelf />
            {move || view.get().map(|view| inside(&view, words))}
        </Frame>
    }
}

/// A sentence with what stands behind it.
fn told(said: Said) -> AnyView {
    view! {
        <p>{said.sentence}</p>
        {said.why.map(|why| view! { <p class="soft">{why}</p> })}
    }
    .into_any()
}

fn inside(view: &WorkView, words: English) -> AnyView {
    view! {
        {closed(view, words)}
        {asked(view, words)}
        {picture(view, words)}
        {done(view, words)}
        {energy(view, words)}
        {view.moving.as_ref().map(|moving| view! {
            <h2>{words.moving_head()}</h2>
            {told(words.moving(moving))}
        })}
    }
    .into_any()
}

/// Why no work is planned, where that is not the sentence itself.
fn closed(view: &WorkView, words: English) -> AnyView {
    if view.asked.is_some() {
        return ().into_any();
    }
    let said = if view.standing.stops.is_empty() {
        words.work(&view.standing.line)
    } else {
        words.work_stops(&view.standing.stops)
    };
    let why = said.why.unwrap_or_default();
    view! { <Caution said=said.sentence why=words.why()><p>{why}</p></Caution> }.into_any()
}

fn asked(view: &WorkView, words: English) -> AnyView {
    let Some(asked) = &view.asked else {
        return ().into_any();
    };
    view! {
        <h2>{words.asked_head()}</h2>
        {told(words.work_asked(asked))}
        {told(words.how_hard(asked))}
        {view.standing.word_until.map(|until| view! { <p>{words.work_word_until(until)}</p> })}
    }
    .into_any()
}

/// A session as a row of the picture.
fn row(word: &str, times: &GaitTimes, longest: Span, words: English) -> BeatRow {
    BeatRow {
        words: format!("{word}: {}", words.gait_times(times)),
        beats: stretches(times, longest)
            .into_iter()
            .map(|stretch| Beats {
                from: stretch.from,
                to: stretch.to,
                path: stretch.path,
            })
            .collect(),
    }
}

/// The session asked, and under it the last one done.
fn picture(view: &WorkView, words: English) -> AnyView {
    let last = view.done.first();
    let asked = view.asked.as_ref();
    let times = [
        asked.map(|asked| asked.times),
        last.map(|done| done.session.times),
    ];
    let Some(longest) = times.iter().flatten().map(GaitTimes::total).max() else {
        return ().into_any();
    };
    let rows: Vec<BeatRow> = words
        .beats_rows()
        .into_iter()
        .zip(times)
        .filter_map(|(word, times)| Some(row(word, &times?, longest, words)))
        .collect();
    let [gait, of_asked, of_done] = words.beats_table();
    let minutes = move |times: Option<GaitTimes>, gait: Gait| {
        times.map_or_else(String::new, |times| times.of(gait).to_minutes().to_string())
    };
    let cells: Vec<Vec<String>> = Gait::ALL
        .into_iter()
        .map(|gait| {
            let [asked, done] = times.map(|times| minutes(times, gait));
            vec![words.gait(gait).to_owned(), asked, done]
        })
        .collect();
    let table = move || {
        let columns = vec![
            Column::words(gait),
            Column::numbers(of_asked),
            Column::numbers(of_done),
        ];
        view! { <Table caption=words.all_numbers() columns rows=Signal::stored(cells.clone()) /> }
    };
    view! {
        <Picture
            sentence=words.beats_name(asked, last)
            numbers_word=words.all_numbers()
            numbers=table
        >
            <BeatCords wide=WIDE rows=Signal::stored(rows) />
        </Picture>
    }
    .into_any()
}

fn done(view: &WorkView, words: English) -> AnyView {
    if view.done.is_empty() {
        return ().into_any();
    }
    let weeks = std::iter::once(&view.week)
        .chain(&view.before)
        .map(|week| {
            view! { <Row name=words.week_name(week, view.today) value=words.week_line(week) /> }
        })
        .collect_view();
    let sessions = view
        .done
        .iter()
        .map(|done| view! { <Row name=words.session_name(done) second=words.session_line(done) /> })
        .collect_view();
    view! {
        <h2>{words.done_head()}</h2>
        <Rows name=words.done_head()>{weeks}{sessions}</Rows>
    }
    .into_any()
}

fn energy(view: &WorkView, words: English) -> AnyView {
    match &view.energy {
        Some(energy) => told(words.week_energy(energy)),
        None if view.animal.kind.is_donkey() && !view.done.is_empty() => told(words.no_energy()),
        None => ().into_any(),
    }
}
