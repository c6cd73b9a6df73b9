//! The weight of an animal over time: what it loses or gains, how sure that is, and when its target comes.

use crate::device::clock::DeviceZone;
use crate::parts::{
    Action, ActionRow, Back, Caution, Column, Cord, Frame, FrameKind, Hang, Press, Rank, Sentence,
    State, StopBlock, Table, Tag, WeightChart,
};
use crate::places::Unread;
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::AnimalId;
use tussock_core::progress::Forecast;
use tussock_flow::routes::{Route, Step};
use tussock_flow::views::beside::Standing;
use tussock_flow::views::weight::{Asks, Trend, Weight as Seen, needs, weight};
use tussock_flow::words::{
    BesideWords, ConditionWords, English, HorsesWords, Said, UnitWords, WeightWords,
};

/// The weight of an animal.
#[component]
pub fn Weight(
    /// Which.
    animal: AnimalId,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let id = StoredValue::new(animal.clone());
    let shelf = world.shelf(move || id.with_value(needs));
    let minute = world.minute();
    let seen = Memo::new(move |_| match (shelf.get(), minute.get()) {
        (Some(Ok(shelf)), now) => id.with_value(|id| weight(&shelf, id, now, &DeviceZone)),
        _ => None,
    });
    let said = Signal::derive(move || match seen.get() {
        None if shelf.get().is_none() => words.opening().to_owned(),
        None => words.not_here().to_owned(),
        Some(seen) => words.weight_sentence(&seen),
    });
    let head = move || match seen.get().and_then(|seen| seen.stop) {
        Some(stop) => view! {
            <StopBlock order=words.stop_order(&stop) rank=Rank::Sentence>
                <p>{words.stop_why(&stop)}</p>
            </StopBlock>
            <p>{said}</p>
        }
        .into_any(),
        None => view! { <Sentence said=said /> }.into_any(),
    };
    let back = Route::Horse(animal.clone()).to_string();
    let add = Route::Weigh(animal).to_string();
    let foot = move || {
        let back = Back {
            name: words.back().into(),
            press: Press::from(back.clone()),
        };
        let add = add.clone();
        view! {
            <ActionRow back=back><Action says=words.add_a_weight() press=add /></ActionRow>
        }
    };
    view! {
        <Frame
            kind=FrameKind::Flow
            what=Signal::derive(move || seen.get().map(|seen| seen.animal.name).unwrap_or_default())
            foot=foot
        >
            {head}
            <Unread shelf />
            {move || seen.get().map(|seen| shown(&seen))}
        </Frame>
    }
}

fn shown(seen: &Seen) -> AnyView {
    let words = English::default();
    let Ok(trend) = &seen.trend else {
        return ().into_any();
    };
    let pace = words
        .weight_pace(trend)
        .map(|pace| view! { <p>{pace} "."</p> });
    let settles = trend
        .settling_until
        .map(|until| told(words.gut_settles(until)));
    let chart = &trend.chart;
    let days = [
        words.day(chart.from),
        words.day(seen.today),
        words.day(chart.to),
    ];
    let columns = words.weight_columns();
    let columns = columns
        .into_iter()
        .enumerate()
        .map(|(at, head)| match at {
            1 | 2 => Column::numbers(head),
            _ => Column::words(head),
        })
        .collect();
    let rows: Vec<Vec<String>> = trend
        .readings
        .iter()
        .map(|read| words.weight_row(read))
        .collect();
    view! {
        {pace}
        {settles}
        <WeightChart
            name=words.weight_picture(seen)
            chart=chart.clone()
            most=words.body(chart.most)
            least=words.body(chart.least)
            days=days
        />
        <p class="hint">{words.weight_marks()}</p>
        {tags(seen, trend)}
        <p>{words.weighs_now(trend)}</p>
        {told(words.weight_why())}
        <Table caption=words.weight_table() columns=columns rows=Signal::stored(rows) />
    }
    .into_any()
}

/// A caution with what stands behind it.
fn told(said: Said) -> AnyView {
    let words = English::default();
    let why = said.why.map(|why| view! { <p>{why}</p> });
    view! { <Caution said=said.sentence why=words.why()>{why}</Caution> }.into_any()
}

/// What is asked, the target, and the score that comes next.
fn tags(seen: &Seen, trend: &Trend) -> AnyView {
    let words = English::default();
    let animal = seen.animal.id.clone();
    let asks = trend
        .asks
        .iter()
        .map(|asks| {
            let said = words.weight_asks(asks);
            let (state, to) = match asks {
                Asks::MeasureAgain(_) => (State::Due, Route::Weigh(animal.clone())),
                Asks::FeedMore { .. } => (State::Care, Route::Plan(animal.clone())),
                Asks::Plateau(_) => (State::Care, Route::Ledger(animal.clone())),
            };
            let word = words.weight_asks_word(asks);
            view! {
                <Hang><Tag state=state word=word what=said.sentence second=said.why.unwrap_or_default() press=Press::from(to.to_string()) /></Hang>
            }
        })
        .collect_view();
    let target_state = match &trend.forecast {
        Some(Forecast::Reached { .. }) => State::Done,
        Some(Forecast::Within { .. } | Forecast::NotWithin { .. }) => State::Later,
        Some(Forecast::NotOnCourse { .. }) => State::Care,
        Some(Forecast::NotKnown) | None => State::NotKnown,
    };
    let target_word = words.target_word(trend.forecast.as_ref());
    let target = if let (Some(target), Some(forecast)) = (words.target_tag(trend), &trend.forecast)
    {
        (target, words.forecast(forecast))
    } else {
        let said = words.no_target();
        (said.sentence, said.why.unwrap_or_default())
    };
    let lags = words.condition_lags(seen);
    let due = seen.score_from.is_none_or(|from| from <= seen.today);
    let (score_state, score_word) = if due {
        (State::Due, words.standing(Standing::Due))
    } else {
        (State::Later, words.standing(Standing::Later))
    };
    let score = Route::Condition(animal, Step::FIRST).to_string();
    view! {
        <Cord name=words.weight_so_far()>
            {asks}
            <Hang><Tag state=target_state word=target_word what=target.0 second=target.1 /></Hang>
            <Hang>
                <Tag state=score_state word=score_word what=lags.sentence second=lags.why.unwrap_or_default() press=Press::from(score) />
            </Hang>
        </Cord>
    }
    .into_any()
}
