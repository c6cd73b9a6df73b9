//! What rings every day: the routine of all animals as one calendar file, and the count on the app's icon.

use super::means::MeansRows;
use super::remind::{closed, send, sent_line};
use super::work::Work;
use crate::parts::{
    Action, ActionRow, Back, Caution, Frame, FrameKind, Press, Row, Rows, Sentence,
};
use crate::places::Unread;
use crate::world::World;
use leptos::prelude::*;
use tussock_flow::calendar;
use tussock_flow::routes::Route;
use tussock_flow::views::remind::{DayReminder, Means, day_reminder};
use tussock_flow::words::{English, HorsesWords, RemindWords, ShedWords, UnitWords};

/// Reminders of the day.
#[component]
pub fn Reminders() -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let work = Work::of(world);
    let of = Memo::new(move |_| {
        work.now.with(|now| {
            let (shelf, today) = now.as_ref()?;
            Some(day_reminder(shelf, today))
        })
    });
    let sent = RwSignal::new(None);
    let said = Signal::derive(move || {
        of.with(|of| match of {
            None => words.opening().to_owned(),
            Some(of) if of.bells.is_empty() => words.no_bells().to_owned(),
            Some(of) => words.bells_a_day(of.bells.len()),
        })
    });
    let press = Callback::new(move |()| {
        let file = of.with_untracked(|of| Some(calendar::day(of.as_ref()?, &words)));
        if let Some(file) = file {
            send(&file, sent);
        }
    });
    // A file without anything in it is none.
    let nothing = Memo::new(move |_| {
        of.with(|of| {
            of.as_ref()
                .is_none_or(|of| of.bells.is_empty() && of.gone.is_empty())
        })
    });
    let foot = move || {
        view! {
            {sent_line(sent)}
            <ActionRow back=Back { name: words.back().into(), press: Press::from(Route::Shed.to_string()) }>
                {move || {
                    if nothing.get() {
                        let route = Route::Horses.to_string();
                        view! { <Action says=words.to_a_plan() press=route /> }.into_any()
                    } else {
                        view! { <Action says=words.file_of_day() press=press /> }.into_any()
                    }
                }}
            </ActionRow>
        }
    };
    view! {
        <Frame kind=FrameKind::Flow what=words.shed() foot=foot>
            <Sentence said=said />
            <Unread shelf=work.shelf />
            {work.waiting(None)}
            {move || of.with(|of| of.as_ref().map(past))}
            {move || of.with(|of| of.as_ref().map(bells))}
            {closed()}
            <MeansRows which=vec![Means::Sound, Means::Notification, Means::Awake, Means::Badge] />
        </Frame>
    }
}

fn past(of: &DayReminder) -> impl IntoView + use<> {
    let words = English::default();
    of.past
        .iter()
        .map(|(name, review)| {
            let said = words.review_past(name, *review);
            view! { <Caution said=said /> }
        })
        .collect_view()
}

fn bells(of: &DayReminder) -> Option<impl IntoView + use<>> {
    let words = English::default();
    if of.bells.is_empty() {
        return None;
    }
    let rows = of
        .bells
        .iter()
        .map(|bell| {
            let (what, until) = (words.bell_of_day(bell), words.bell_until(bell));
            view! { <Row name=what value=words.time(bell.time) second=until /> }
        })
        .collect_view();
    Some(view! {
        <h2>{words.bells()}</h2>
        <Rows name=words.bells()>{rows}</Rows>
    })
}
