//! Changing over to another ration, day by day.

use super::mend_shown::slip_view;
use super::ration::told;
use crate::device::clock::DeviceZone;
use crate::form::Form;
use crate::parts::{
    Action, ActionRow, Back, Choice, Cord, Frame, FrameKind, Hang, Offer, Press, Sentence, State,
    Tag,
};
use crate::places::Unread;
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::AnimalId;
use tussock_core::limits::Nutrient;
use tussock_flow::routes::Route;
use tussock_flow::views::change_over::{Change, Days, change_of, needs};
use tussock_flow::words::{BalanceWords, BesideWords, ChangeOverWords, English, HorsesWords};

/// The field of how long it takes.
const WEEKS: &str = "weeks";
/// The word of two weeks; anything else is three.
const TWO: &str = "two";

/// Changing over to another ration.
#[component]
pub fn ChangeOver(
    /// Whose.
    animal: AnimalId,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let form = Form::open(world, Route::ChangeOver(animal.clone()).to_string());
    let id = StoredValue::new(animal.clone());
    let shelf = world.shelf(move || id.with_value(needs));
    let minute = world.minute();
    let better = Memo::new(move |_| form.held(WEEKS).as_deref() != Some(TWO));
    let seen = Memo::new(move |_| match (shelf.get(), minute.get()) {
        (Some(Ok(shelf)), now) => {
            id.with_value(|id| change_of(&shelf, id, better.get(), now, &DeviceZone))
        }
        _ => None,
    });
    let said = Signal::derive(move || {
        seen.with(|seen| match seen {
            None if shelf.get().is_none() => words.opening().to_owned(),
            None => words.not_here().to_owned(),
            Some(seen) if seen.refused => words.no_change_while_refused().sentence,
            Some(seen) => words.change_sentence(seen.change.as_ref()),
        })
    });
    let back = Route::Ration(animal).to_string();
    let foot = move || {
        let back = Back {
            name: words.back().into(),
            press: Press::from(back.clone()),
        };
        let says = Signal::derive(move || {
            let to_plan = seen.with(|seen| {
                let change = seen.as_ref().and_then(|seen| seen.change.as_ref());
                change.is_some_and(|change| change.to_plan)
            });
            let says = if to_plan {
                words.to_the_plan()
            } else {
                words.see_plan()
            };
            says.to_owned()
        });
        let plan = Route::Plan(id.get_value()).to_string();
        view! { <ActionRow back=back><Action says=says press=plan /></ActionRow> }
    };
    let body = move || {
        seen.with(|seen| {
            let seen = seen.as_ref()?;
            Some(match &seen.change {
                None if seen.refused => {
                    view! { <p>{words.no_change_while_refused().why}</p> }.into_any()
                }
                None => view! { <p>{words.nothing_to_change_over()}</p> }.into_any(),
                Some(change) => shown(change),
            })
        })
    };
    let changes = Memo::new(move |_| {
        seen.with(|seen| seen.as_ref().is_some_and(|seen| seen.change.is_some()))
    });
    let offers = move || {
        [true, false]
            .map(|better| Offer::new(better, words.weeks(better)))
            .to_vec()
    };
    let choose = Callback::new(move |better: bool| {
        form.set(
            WEEKS,
            if better {
                String::new()
            } else {
                TWO.to_owned()
            },
        );
    });
    view! {
        <Frame
            kind=FrameKind::Flow
            what=Signal::derive(move || seen.with(|seen| seen.as_ref().map(|seen| seen.animal.name.clone()).unwrap_or_default()))
            when=words.changing_over()
            foot=foot
        >
            <Sentence said=said />
            <Unread shelf />
            {body}
            <Show when=move || changes.get()>
                <Choice
                    legend=words.how_long()
                    offers=offers()
                    chosen=Signal::derive(move || Some(better.get()))
                    on_choose=choose
                />
            </Show>
        </Frame>
    }
}

fn shown(change: &Change) -> AnyView {
    let words = English::default();
    let tags = change
        .days
        .iter()
        .map(|days| {
            let state = state_of(change, days);
            let word = words.days_word(change, days);
            let (lead, fed) = (words.days_lead(days), words.fed_on(days));
            view! { <Hang><Tag state=state word=word what=lead second=fed /></Hang> }
        })
        .collect_view();
    let breaks = change.days.iter().any(|days| days.breaks);
    let mut short: Vec<Nutrient> = change
        .days
        .iter()
        .flat_map(|days| days.short.iter().copied())
        .collect();
    short.sort_unstable();
    short.dedup();
    let kept = if breaks {
        view! { <p>{words.breaks_on()} "."</p> }.into_any()
    } else if short.is_empty() {
        told(words.keeps_every_day())
    } else {
        told(words.short_on_the_way(&short))
    };
    let watch = words.what_to_watch().map(told).into_iter().collect_view();
    view! {
        <Cord name=words.days_of_the_change()>{tags}</Cord>
        {kept}
        {watch}
        {slip_view(&change.slip)}
        {told(words.balance_is_no_diagnosis())}
    }
    .into_any()
}

fn state_of(change: &Change, days: &Days) -> State {
    match change.day {
        _ if days.breaks => State::Care,
        _ if days.today => State::Due,
        Some(day) if days.stage.last.is_some_and(|last| last < day) => State::Done,
        _ => State::Later,
    }
}
