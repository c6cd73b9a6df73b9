//! The animals of the yard.

use crate::parts::{Action, ActionRow, Cord, Frame, FrameKind, Hang, Sentence, State, Tag};
use crate::places::{Places, Saving, Unread};
use crate::world::World;
use leptos::prelude::*;
use tussock_flow::routes::{Place, Route};
use tussock_flow::views::horses;
use tussock_flow::words::{AnimalWords, English, HorsesWords};

/// The animals, and the way to a new one.
#[component]
pub fn List() -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let shelf = world.shelf(horses::list_needs);
    let animals = Memo::new(move |_| match shelf.get() {
        Some(Ok(shelf)) => shelf.animals(),
        _ => Vec::new(),
    });
    let said = move || match animals.with(Vec::len) {
        0 if shelf.get().is_none() => words.opening().to_owned(),
        0 => words.no_horse_yet().to_owned(),
        count => words.how_many(count),
    };
    let foot = move || {
        view! {
            <Saving />
            <ActionRow>
                <Action says=words.add_an_animal() press=Route::NewHorse.to_string() />
            </ActionRow>
        }
    };
    view! {
        <Frame
            kind=FrameKind::Place
            what=words.horses()
            foot=foot
            places=move || view! { <Places here=Place::Horses /> }
        >
            <Sentence said=Signal::derive(said) />
            <Unread shelf />
            <Cord name=words.horses()>
                <For
                    each=move || animals.get()
                    key=|animal| animal.id.clone()
                    children=move |animal| {
                        view! {
                            <Hang>
                                <Tag
                                    state=Signal::stored(State::Later)
                                    word=Signal::stored(words.kind(animal.kind).to_owned())
                                    what=Signal::stored(animal.name.clone())
                                    press=Route::Horse(animal.id.clone()).to_string()
                                />
                            </Hang>
                        }
                    }
                />
            </Cord>
        </Frame>
    }
}
