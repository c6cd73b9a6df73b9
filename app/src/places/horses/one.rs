//! Beside one animal.

use crate::device::clock::DeviceZone;
use crate::parts::{
    Action, ActionRow, Back, Caution, Cord, Frame, FrameKind, Hang, Press, Sentence, State, Tag,
};
use crate::places::{Saving, Unread};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::AnimalId;
use tussock_core::assess::WeightMethod;
use tussock_flow::routes::Route;
use tussock_flow::views::horses::{self, Beside};
use tussock_flow::words::{AnimalWords, English, HorsesWords, UnitWords};

/// One animal: its weight with its band, and what is done beside it.
#[component]
pub fn One(
    /// Which.
    animal: AnimalId,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let id = animal.clone();
    let shelf = world.shelf(move || horses::one_needs(&id));
    let id = StoredValue::new(animal.clone());
    let beside = Memo::new(move |_| match shelf.get() {
        Some(Ok(shelf)) => horses::beside(
            &shelf,
            &id.get_value(),
            world.now.get_untracked(),
            &DeviceZone,
        ),
        _ => None,
    });
    let said = move || match beside.get() {
        None if shelf.get().is_none() => words.opening().to_owned(),
        None => words.not_here().to_owned(),
        Some(Beside {
            animal,
            weight: None,
            ..
        }) => words.never_weighed(&animal.name),
        Some(Beside {
            animal,
            weight: Some(dated),
            ..
        }) => {
            let either = (dated.weight.high - dated.weight.low) / 2.0;
            words.weighs(
                &animal.name,
                &words.body(dated.weight.value),
                &words.body(either),
            )
        }
    };
    let weighed = Signal::derive(move || {
        beside.get().and_then(|beside| beside.weight).map(|dated| {
            let how = if matches!(dated.weight.method, WeightMethod::Scale(_)) {
                words.by_scale()
            } else {
                words.by_tape()
            };
            words.weighed(how, &words.day(dated.day))
        })
    });
    let state = Signal::derive(move || {
        if weighed.with(Option::is_some) {
            State::Done
        } else {
            State::Due
        }
    });
    let weigh = Signal::stored(Route::Weigh(animal).to_string());
    let foot = move || {
        view! {
            <Saving />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(Route::Horses.to_string()) }>
                <Action says=words.weigh() press=weigh />
            </ActionRow>
        }
    };
    view! {
        <Frame
            kind=FrameKind::Flow
            what=Signal::derive(move || beside.get().map(|beside| beside.animal.name).unwrap_or_default())
            when=Signal::derive(move || beside.get().map(|beside| words.kind(beside.animal.kind).to_owned()))
            foot=foot
        >
            <Sentence said=Signal::derive(said) />
            <Unread shelf />
            <Show when=move || weighed.with(Option::is_some)>
                <Caution said=words.no_dose() />
            </Show>
            <Cord name=words.horses()>
                <Hang>
                    <Tag
                        state=state
                        word=Signal::stored(String::new())
                        what=words.weigh()
                        second=weighed
                        press=weigh
                    />
                </Hang>
            </Cord>
        </Frame>
    }
}
