//! Starting a soak.

use super::begin::{Begin, NEW, WATERS};
use crate::parts::{
    Action, ActionRow, Back, Caution, Choice, Field, Frame, FrameKind, Keyboard, Offer, Press,
    Quiet, QuietRow, Sentence,
};
use crate::places::{Saving, Unread, draft_line};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::LotId;
use tussock_core::soak::{Recipe, Water};
use tussock_core::units::LocalDate;
use tussock_core::units::parse::MassUnit;
use tussock_flow::routes::Route;
use tussock_flow::views::tub::Wanted;
use tussock_flow::words::{
    English, HorsesWords, ShedWords, SoakWords, SoaksWords, TubWords, UnitWords,
};

/// A new soak: for whom, from which hay, how much, in what water and how long.
#[component]
pub fn NewTub() -> impl IntoView {
    let words = English::default();
    let begin = Begin::of(World::here());
    let none = Memo::new(move |_| begin.no_hay());
    let save = Callback::new(move |()| begin.save());
    // Nothing can be begun before the records are read.
    let busy = Signal::derive(move || begin.busy.get() || begin.work.now.with(Option::is_none));
    let action = move || {
        if none.get() {
            let new = Route::NewHay.to_string();
            view! { <Action says=words.add_hay() press=new /> }.into_any()
        } else {
            view! { <Action says=words.start_the_soak() press=save busy /> }.into_any()
        }
    };
    let soak_planned = move || {
        let everyone = begin.everyone;
        everyone.with(|all| all.iter().any(|wanted| wanted.job.is_some()))
    };
    let foot = move || {
        view! {
            <Show when=soak_planned>
                <QuietRow>
                    <Quiet says=words.not_soaked_instead() press=Route::Soaks.to_string() />
                </QuietRow>
            </Show>
            <Saving failed=begin.failed />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(Route::Shed.to_string()) }>
                {action}
            </ActionRow>
        }
    };
    let said = Signal::derive(move || {
        let said = if none.get() {
            words.no_lot_yet()
        } else {
            words.soak_what()
        };
        said.to_owned()
    });
    let findings = move || {
        begin
            .findings()
            .into_iter()
            .map(|said| view! { <Caution said=said /> })
            .collect_view()
    };
    let liquor = words
        .all_liquor()
        .into_iter()
        .map(|(_, said)| view! { <Caution said=said.sentence why=words.why_asked()>{said.why}</Caution> })
        .collect_view();
    view! {
        <Frame kind=FrameKind::Flow what=words.shed() foot=foot>
            <Sentence said />
            <Unread shelf=begin.work.shelf />
            {draft_line(begin.form)}
            <Show when=move || !none.get()>
                {move || whose_keys(&begin)}
                {move || lot_keys(&begin)}
                {amounts(&begin)}
                {move || tub_keys(&begin)}
                {findings}
            </Show>
            {liquor}
        </Frame>
    }
}

/// For whom.
fn whose_keys(begin: &Begin) -> AnyView {
    let (words, begin) = (English::default(), *begin);
    let today = begin
        .work
        .now
        .with(|now| now.as_ref().map(|(_, today)| today.day));
    let offers = begin
        .everyone
        .get()
        .into_iter()
        .map(|wanted| {
            let second = planned(&wanted, today);
            let word = if wanted.name.is_empty() {
                words.for_the_yard().to_owned()
            } else {
                wanted.name
            };
            Offer::new(wanted.key, word).with(second)
        })
        .collect::<Vec<_>>();
    view! {
        <Choice
            legend=words.soak_for()
            offers=offers
            chosen=Signal::derive(move || begin.chosen.get().map(|wanted| wanted.key))
            on_choose=move |key: String| begin.form.set("whose", key)
        />
    }
    .into_any()
}

/// From which hay.
fn lot_keys(begin: &Begin) -> AnyView {
    let (words, begin) = (English::default(), *begin);
    let offers = begin
        .hays
        .get()
        .into_iter()
        .map(|(id, name)| Offer::new(id, name))
        .collect();
    view! {
        <Choice
            legend=words.soak_lot()
            offers=offers
            chosen=Signal::derive(move || begin.lot.get())
            on_choose=move |id: LotId| begin.form.set("lot", id.0)
            hint=begin.say("lot")
        />
    }
    .into_any()
}

/// How much hay, in what water, how long.
fn amounts(begin: &Begin) -> AnyView {
    let (words, begin) = (English::default(), *begin);
    let form = begin.form;
    let hay_hint = Signal::derive(move || {
        let amount = begin.chosen.get().and_then(|wanted| wanted.amount);
        Some(match amount {
            Some(amount) => words.soak_hay_planned(&words.feed(amount)),
            None => words.soak_hay_hint().to_owned(),
        })
    });
    let minutes_hint = Signal::derive(move || {
        let least = begin.water.get().at_least();
        let minutes = begin.recipe.get().map_or(least, Recipe::soak);
        Some(words.soak_minutes_hint(minutes.to_minutes()))
    });
    let waters = WATERS
        .iter()
        .map(|(water, _)| Offer::new(*water, words.water_chip(*water)))
        .collect();
    let choose_water = Callback::new(move |water: Water| {
        if let Some((_, key)) = WATERS.iter().find(|(offered, _)| *offered == water) {
            form.set("water", (*key).to_owned());
        }
    });
    view! {
        <Field
            label=words.soak_hay()
            hint=hay_hint
            value=form.text("hay")
            on_input=form.typed("hay")
            error=begin.say("hay")
            unit=words.mass_unit(MassUnit::Kg).to_owned()
            keyboard=Keyboard::Decimal
        />
        <Choice
            legend=words.soak_water_asked()
            offers=waters
            chosen=Signal::derive(move || Some(begin.water.get()))
            on_choose=choose_water
        />
        <Field
            label=words.soak_minutes()
            hint=minutes_hint
            value=form.text("minutes")
            on_input=form.typed("minutes")
            error=begin.say("minutes")
            keyboard=Keyboard::Numeric
        />
    }
    .into_any()
}

/// In which tub.
fn tub_keys(begin: &Begin) -> AnyView {
    let (words, begin) = (English::default(), *begin);
    let tubs = begin.tubs.get();
    let nth = tubs.len().saturating_add(1);
    let offers = tubs
        .into_iter()
        .map(|tub| {
            let second = if tub.in_use { words.tub_in_use() } else { "" };
            Offer::new(tub.id.0, tub.name).with(second)
        })
        .chain([Offer::new(NEW.to_owned(), words.tub_name(nth))])
        .collect();
    view! {
        <Choice
            legend=words.soak_tub()
            offers=offers
            chosen=Signal::derive(move || Some(begin.tub.get()))
            on_choose=move |key: String| begin.form.set("tub", key)
        />
    }
    .into_any()
}

/// What is planned for somebody, as a second line.
fn planned(wanted: &Wanted, today: Option<LocalDate>) -> String {
    let words = English::default();
    let amount = wanted.amount.map(|amount| words.feed(amount));
    let time = wanted
        .visit
        .map(|(day, time)| words.due(day, time, today.unwrap_or(day)));
    [time, amount]
        .into_iter()
        .flatten()
        .collect::<Vec<_>>()
        .join(", ")
}
