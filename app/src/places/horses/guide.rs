//! Where the tape goes: the pictures of the animal's kind, one after another.

use crate::parts::{Action, ActionRow, Back, Frame, FrameKind, Press, Sentence, TapeDrawing};
use crate::places::Unread;
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::{AnimalId, Kind};
use tussock_flow::routes::Route;
use tussock_flow::rows::Range;
use tussock_flow::views::guide::{Picture, drawn};
use tussock_flow::words::{BesideWords, English, GuideWords, HorsesWords, Task};

/// The measuring guide beside one animal. The draft of its weighing lies on the disk meanwhile.
#[component]
pub fn Guide(
    /// Which.
    animal: AnimalId,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let weigh = Route::Weigh(animal.clone()).to_string();
    let id = StoredValue::new(animal);
    let shelf = world.shelf(move || vec![Range::One(id.get_value().as_str().to_owned())]);
    let animal = Memo::new(move |_| match shelf.get() {
        Some(Ok(shelf)) => shelf
            .animals()
            .into_iter()
            .find(|animal| animal.id == id.get_value()),
        _ => None,
    });
    let name = Signal::derive(move || animal.get().map(|animal| animal.name).unwrap_or_default());
    let said = Signal::derive(move || match animal.get() {
        None if shelf.get().is_none() => words.opening().to_owned(),
        None => words.not_here().to_owned(),
        Some(animal) => words.guide_for(&animal.name),
    });
    let to_weigh = StoredValue::new(weigh.clone());
    let foot = move || {
        view! {
            <ActionRow back=Back { name: words.back().into(), press: Press::from(weigh.clone()) }>
                <Action
                    says=Signal::derive(move || words.do_task(Task::Weigh, &name.get()))
                    press=to_weigh.get_value()
                />
            </ActionRow>
        }
    };
    let kind = Memo::new(move |_| animal.get().map(|animal| animal.kind));
    view! {
        <Frame kind=FrameKind::Flow what=name foot=foot>
            <Sentence said=said />
            <Unread shelf />
            {move || kind.get().map(pictures)}
        </Frame>
    }
}

fn pictures(kind: Kind) -> impl IntoView {
    let words = English::default();
    let pictures = Picture::of(kind)
        .into_iter()
        .map(|picture| {
            view! {
                <h2>{words.picture_head(picture)}</h2>
                <TapeDrawing name=words.picture_shows(picture, kind) of=drawn(picture, kind) />
                <p>{words.picture_how(picture)}</p>
            }
        })
        .collect_view();
    view! {
        <p>{words.guide_first()}</p>
        {pictures}
    }
}
