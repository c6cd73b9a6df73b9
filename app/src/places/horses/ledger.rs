//! What an animal or a group really ate: the last seven days against the plan.

use crate::device::clock::DeviceZone;
use crate::parts::{
    Action, ActionRow, Back, Caution, Column, Frame, FrameKind, Press, Quiet, QuietRow, Row, Rows,
    Sentence, Table,
};
use crate::places::Unread;
use crate::world::World;
use leptos::prelude::*;
use tussock_core::round::Subject;
use tussock_flow::routes::Route;
use tussock_flow::views::ledger::{Week, needs, week};
use tussock_flow::words::{English, HorsesWords, LedgerWords, NotEatingWords, UnitWords};

/// The ledger of an animal or a group.
#[component]
pub fn Ledger(
    /// Whose.
    of: Subject,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let (back, on) = match &of {
        Subject::Animal(id) => (Route::Horse(id.clone()), Route::Plan(id.clone())),
        Subject::Group(id) => (Route::Group(id.clone()), Route::Group(id.clone())),
        Subject::Yard(_) => (Route::Horses, Route::Horses),
    };
    let on_says = match &of {
        Subject::Animal(_) => words.ledger_to_the_plan(),
        Subject::Group(_) | Subject::Yard(_) => words.ledger_to_the_group(),
    };
    let on = on.to_string();
    let of = StoredValue::new(of);
    let minute = world.minute();
    let now = minute.get_untracked();
    let shelf = world.shelf(move || needs(now));
    let seen = Memo::new(move |_| match (shelf.get(), minute.get()) {
        (Some(Ok(shelf)), now) => of.with_value(|of| week(&shelf, of, now, &DeviceZone)),
        _ => None,
    });
    let said = move || match seen.get() {
        None if shelf.get().is_none() => words.opening().to_owned(),
        None => words.not_here().to_owned(),
        Some(week) => words.eaten_in_a_week(&week),
    };
    let not_eating = StoredValue::new(of.with_value(|of| match of {
        Subject::Animal(id) => Some(Route::NotEating(id.clone()).to_string()),
        Subject::Group(id) => Some(Route::WhoWillNotEat(id.clone()).to_string()),
        Subject::Yard(_) => None,
    }));
    let foot = move || {
        let on = on.clone();
        let not_eating = not_eating.get_value().map(|to| {
            view! { <QuietRow><Quiet says=words.will_not_eat() press=to /></QuietRow> }
        });
        view! {
            {not_eating}
            <ActionRow back=Back { name: words.back().into(), press: Press::from(back.to_string()) }>
                <Action says=on_says press=on />
            </ActionRow>
        }
    };
    view! {
        <Frame
            kind=FrameKind::Flow
            what=Signal::derive(move || seen.get().map(|week| week.name).unwrap_or_default())
            foot=foot
        >
            <Sentence said=Signal::derive(said) />
            <Unread shelf />
            {move || seen.get().filter(|week| !week.is_blank).map(|week| shown(&week))}
        </Frame>
    }
}

fn shown(week: &Week) -> AnyView {
    let words = English::default();
    let level = week
        .level
        .as_ref()
        .map(|level| view! { <p>{words.level_eaten(level)} "."</p> });
    let offered = week
        .totals
        .offered_known
        .as_ref()
        .map(|shares| view! { <p>{words.ledger_shares(shares)}</p> });
    let left = week
        .totals
        .left_known
        .as_ref()
        .map(|shares| view! { <p>{words.ledger_left_shares(shares)}</p> });
    let at_least = week
        .totals
        .eaten
        .at_least
        .then(|| view! { <Caution said=words.ledger_at_least_why() /> });
    let rows = week
        .days
        .iter()
        .map(|day| {
            view! {
                <Row
                    name=words.day(day.day)
                    value=words.ledger_day(day)
                    strong=true
                    second=words.ledger_day_known(day)
                />
            }
        })
        .collect_view();
    let [day, offered_head, left_head, eaten_head, plan_head] = words.ledger_columns();
    let columns = vec![
        Column::words(day),
        Column::numbers(offered_head),
        Column::numbers(left_head),
        Column::numbers(eaten_head),
        Column::numbers(plan_head),
    ];
    let mut table: Vec<Vec<String>> = week.days.iter().map(|day| words.ledger_row(day)).collect();
    table.push(words.ledger_week_row(week));
    view! {
        <p>{words.ledger_plan(week)}</p>
        {level}
        {offered}
        {left}
        {at_least}
        <p class="soft">{words.ledger_grass(week)}</p>
        <h2>{words.ledger_days()}</h2>
        <Rows name=words.ledger_days()>{rows}</Rows>
        <Table caption=words.ledger_table() columns=columns rows=Signal::stored(table) />
    }
    .into_any()
}
