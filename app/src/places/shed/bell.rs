//! What rings while the app is open, whatever screen is in sight.

use super::work::Work;
use crate::device::clock::{self, DeviceZone};
use crate::device::{awake, badge, bell, settings, sound};
use crate::world::World;
use leptos::ev;
use leptos::prelude::*;
use tussock_flow::views::remind::{Reminders, Ring, due, open_tubs};
use tussock_flow::words::{English, RemindWords};

/// The bell: it shows nothing, and reads nothing from the disk while nothing is switched on.
#[component]
pub fn Bell() -> impl IntoView {
    let world = World::here();
    let on = Memo::new(move |_| {
        world.now.track();
        settings::reminders()
    });
    let any = Memo::new(move |_| on.get().any());
    move || any.get().then(|| view! { <Ringing on /> })
}

#[component]
fn Ringing(on: Memo<Reminders>) -> impl IntoView {
    let world = World::here();
    let work = Work::of(world);
    // A browser lets a page sound only once it was tapped: any tap will do.
    let tapped = window_event_listener(ev::click, move |_| {
        if on.get_untracked().sound {
            sound::wake();
        }
    });
    on_cleanup(move || {
        tapped.remove();
        awake::keep(false);
    });
    Effect::new(move |_| {
        let (now, on) = (world.now.get(), on.get());
        work.now.with(|read| {
            let Some((_, today)) = read else {
                return;
            };
            awake::keep(on.awake && open_tubs(today));
            if on.rings() {
                bell::ring(due(today, now), on, said);
            }
        });
    });
    let count = Memo::new(move |_| {
        let summary = work
            .now
            .with(|read| Some(read.as_ref()?.1.round.summary()))?;
        on.get().badge.then_some(summary.late + summary.due)
    });
    Effect::new(move |_| {
        if let Some(count) = count.get() {
            badge::show(count);
        }
    });
}

fn said(ring: &Ring) -> (String, String) {
    let words = English::default();
    (
        words.ring_head(ring),
        words.ring_line(ring, clock::now(), &DeviceZone),
    )
}
