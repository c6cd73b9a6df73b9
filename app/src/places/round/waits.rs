//! The animals and groups whose real day is worse than the wait that was accepted, by more than an hour, and those that no
//! plan gives hay.

use crate::device::clock::DeviceZone;
use crate::parts::{Caution, Press, Quiet, QuietRow, StopBlock};
use crate::places::shed::Work;
use leptos::prelude::*;
use tussock_core::animal::{AnimalId, YardId};
use tussock_core::day::{RealDay, RealVerdict};
use tussock_core::round::Subject;
use tussock_flow::routes::Route;
use tussock_flow::views::day::alarms;
use tussock_flow::words::{DayScreenWords, English, GroupWords};

/// What is told of them above the jobs.
pub(super) fn waits(work: Work) -> impl IntoView {
    let told = Memo::new(move |_| {
        work.now.with(|now| {
            now.as_ref()
                .map(|(shelf, today)| alarms(shelf, today.now, &DeviceZone))
                .unwrap_or_default()
        })
    });
    move || {
        let without = work.now.with(|now| {
            let (_, today) = now.as_ref()?;
            Some(without_hay(&today.due.without_hay))
        });
        view! { {without} {told.with(|told| told_view(told))} }
    }
}

/// Those that left their group and have no plan of their own that feeds them, each with the way to its plan.
fn without_hay(animals: &[(AnimalId, String)]) -> AnyView {
    let words = English::default();
    animals
        .iter()
        .map(|(animal, name)| {
            let plan = Route::Plan(animal.clone()).to_string();
            let says = words.see_what_stops(name);
            view! {
                <Caution said=words.without_hay(name) />
                <QuietRow><Quiet says=says press=plan /></QuietRow>
            }
        })
        .collect_view()
        .into_any()
}

/// One stop at most, the others as cautions, each with its way to the day.
fn told_view(told: &[(Subject, String, RealDay)]) -> AnyView {
    let words = English::default();
    let now = |real: &RealDay| real.beside == RealVerdict::FeedNow;
    let first = told.iter().position(|(_, _, real)| now(real));
    told.iter()
        .enumerate()
        .map(|(index, (of, name, real))| {
            let said = words.real_is_worse(name, real);
            let day = match of {
                Subject::Group(group) => Route::GroupDay(group.clone()),
                Subject::Animal(AnimalId(id)) | Subject::Yard(YardId(id)) => {
                    Route::Day(AnimalId(id.clone()))
                }
            };
            let day = Press::from(day.to_string());
            let says = words.see_the_day(name);
            let block = if Some(index) == first {
                view! { <StopBlock order=said><p>{words.feed_what()}</p></StopBlock> }.into_any()
            } else {
                view! { <Caution said=said /> }.into_any()
            };
            view! { {block} <QuietRow><Quiet says=says press=day /></QuietRow> }
        })
        .collect_view()
        .into_any()
}
