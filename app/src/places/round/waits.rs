//! The animals whose real day is worse than the wait that was accepted, by more than an hour.

use crate::device::clock::DeviceZone;
use crate::parts::{Caution, Press, Quiet, QuietRow, StopBlock};
use crate::places::shed::Work;
use leptos::prelude::*;
use tussock_core::animal::AnimalId;
use tussock_core::day::{RealDay, RealVerdict};
use tussock_flow::routes::Route;
use tussock_flow::views::day::alarms;
use tussock_flow::words::{DayScreenWords, English};

/// What is told of them above the jobs.
pub(super) fn waits(work: Work) -> impl IntoView {
    let told = Memo::new(move |_| {
        work.now.with(|now| {
            now.as_ref()
                .map(|(shelf, today)| alarms(shelf, today.now, &DeviceZone))
                .unwrap_or_default()
        })
    });
    move || told.with(|told| told_view(told))
}

/// One stop at most, the others as cautions, each with its way to the day.
fn told_view(told: &[(AnimalId, String, RealDay)]) -> AnyView {
    let words = English::default();
    let now = |real: &RealDay| real.beside == RealVerdict::FeedNow;
    let first = told.iter().position(|(_, _, real)| now(real));
    told.iter()
        .enumerate()
        .map(|(index, (animal, name, real))| {
            let said = words.real_is_worse(name, real);
            let day = Press::from(Route::Day(animal.clone()).to_string());
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
