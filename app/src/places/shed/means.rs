//! What this device reminds with: a row a means, switched by a tap, with the truth about it under it.

use crate::device::{awake, badge, clock, notification, settings, sound, vibration};
use crate::parts::{Press, Row, Rows};
use crate::world::World;
use leptos::prelude::*;
use tussock_flow::views::remind::{Has, Means, Stands};
use tussock_flow::words::{English, RemindWords};

/// Whether this device has it.
fn here(means: Means) -> Has {
    match means {
        Means::Sound => sound::here(),
        Means::Notification => notification::here(),
        Means::Awake => awake::here(),
        Means::Badge => badge::here(),
    }
}

/// The rows of these means. What is on is a small setting of this device, read with each beat.
#[component]
pub(super) fn MeansRows(
    /// Which.
    which: Vec<Means>,
) -> impl IntoView {
    let words = English::default();
    let rows = which
        .into_iter()
        .map(|means| view! { <OneMeans means /> })
        .collect_view();
    view! {
        <h2>{words.while_open()}</h2>
        <Rows name=words.while_open()>{rows}</Rows>
    }
}

#[component]
fn OneMeans(means: Means) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let has = Memo::new(move |_| {
        world.now.track();
        here(means)
    });
    let stands = Memo::new(move |_| {
        world.now.track();
        Stands::of(settings::reminders().is_on(means), has.get())
    });
    let second = Signal::derive(move || {
        let line = words.means_line(means, has.get());
        Some(if means == Means::Sound {
            format!("{line} {}", words.shakes(vibration::here()))
        } else {
            line.to_owned()
        })
    });
    let press = Callback::new(move |()| flip(world, means));
    let value = Signal::derive(move || Some(words.means_stand(stands.get()).to_owned()));
    view! { <Row name=words.means(means) value=value second=second press=Press::from(press) /> }
}

/// Switches a means on or off. What needs the person's leave asks for it here, on its own tap, and nowhere else.
fn flip(world: World, means: Means) {
    if here(means) == Has::NotHere {
        return;
    }
    let on = !settings::reminders().is_on(means);
    match means {
        // So that it is heard what will ring.
        Means::Sound if on => {
            sound::wake();
            sound::play();
            vibration::shake();
        }
        Means::Notification if on => {
            leptos::task::spawn_local(async move {
                let allowed = notification::ask().await;
                set(world, means, allowed);
            });
            return;
        }
        Means::Awake => awake::try_again(),
        Means::Badge if !on => badge::show(0),
        Means::Sound | Means::Notification | Means::Badge => {}
    }
    set(world, means, on);
}

fn set(world: World, means: Means, on: bool) {
    settings::set_reminders(settings::reminders().with(means, on));
    // The beat on which the rows and the bell read it.
    world.now.set(clock::now());
}
