//! The photographs of one animal: a pose a tag with its last picture, and how much room they take.

mod live;
mod one;
mod pose;
mod taking;

pub use one::OnePhoto;
pub use pose::OnePose;

use super::shown::{PhotoSize, ShownPhoto};
use crate::device::clock::DeviceZone;
use crate::device::room;
use crate::keep::KeepError;
use crate::parts::{
    ActionRow, Back, Caution, Cord, Frame, FrameKind, Hang, Press, QuietRow, Sentence, State, Tag,
};
use crate::places::{Saving, Unread};
use crate::world::{Reading, World, reading};
use leptos::prelude::*;
use taking::Taking;
use tussock_core::animal::AnimalId;
use tussock_core::log::bodies::Pose;
use tussock_flow::routes::Route;
use tussock_flow::shelf::Shelf;
use tussock_flow::views::beside::Standing;
use tussock_flow::views::photo::{self, OfPose, Photos as View, Space};
use tussock_flow::words::{BesideWords, English, HorsesWords, PhotoWords, UnitWords};

/// The photographs that the disk holds of one animal; `None` while it is read, or when the animal is not there.
fn view_of(
    world: World,
    id: StoredValue<AnimalId>,
) -> (Reading<Result<Shelf, KeepError>>, Memo<Option<View>>) {
    let shelf = world.shelf(move || photo::needs(&id.get_value()));
    let minute = world.minute();
    let view = Memo::new(move |_| match (shelf.get(), minute.get()) {
        (Some(Ok(shelf)), now) => photo::photos(&shelf, &id.get_value(), now, &DeviceZone),
        _ => None,
    });
    (shelf, view)
}

/// The name of the animal in a view.
fn name_of(view: Memo<Option<View>>) -> Signal<String> {
    Signal::derive(move || {
        view.with(|view| view.as_ref().map(|view| view.animal.name.clone()))
            .unwrap_or_default()
    })
}

/// All photographs of one animal.
#[component]
pub fn Photos(
    /// Which.
    animal: AnimalId,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let id = StoredValue::new(animal.clone());
    let (shelf, view) = view_of(world, id);
    let name = name_of(view);
    let taking = Taking::of(world, id);
    let next = Memo::new(move |_| view.with(|view| view.as_ref().map_or(Pose::Side, View::next)));
    let next = Signal::from(next);
    let said = Signal::derive(move || {
        view.with(|view| match view {
            Some(view) => words.photographed(&view.animal.name, view.days()),
            None if shelf.with(Option::is_none) => words.opening().to_owned(),
            None => words.not_here().to_owned(),
        })
    });
    let back = Route::Horse(animal).to_string();
    let foot = move || {
        view! {
            {taking.said()}
            <QuietRow>{taking.choose(next)}</QuietRow>
            <Saving />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(back.clone()) }>
                {taking.action(next)}
            </ActionRow>
        }
    };
    // With the days, so that a phone that is taken up again tomorrow counts on.
    let poses = Memo::new(move |_| {
        let aged = |view: &View| -> Vec<(OfPose, Option<i64>)> {
            let days = |of: &OfPose| of.now().map(|photo| view.days_since(photo));
            view.poses.iter().map(|of| (of.clone(), days(of))).collect()
        };
        view.with(|view| view.as_ref().map(aged).unwrap_or_default())
    });
    view! {
        <Frame kind=FrameKind::Flow what=name foot=foot>
            <Sentence said=said />
            <Unread shelf />
            <Cord name=words.poses()>
                {move || {
                    poses
                        .get()
                        .into_iter()
                        .map(|(of, days)| view! { <Hang><PoseTag of days id name /></Hang> })
                        .collect_view()
                }}
            </Cord>
            <p>{move || words.how_to_stand(next.get())}</p>
            <p class="soft">{words.worth_of_photo()}</p>
            <RoomTaken view />
        </Frame>
    }
}

/// A pose, with its last picture.
#[component]
fn PoseTag(
    of: OfPose,
    days: Option<i64>,
    id: StoredValue<AnimalId>,
    name: Signal<String>,
) -> impl IntoView {
    let words = English::default();
    let last = of.now().cloned();
    let (state, standing, second) = match &last {
        None => (State::Later, Standing::Open, words.no_photo().to_owned()),
        Some(photo) => {
            let ago = words.ago(days.unwrap_or_default());
            let second = format!("{}, {ago}", words.date(photo.day));
            (State::Done, Standing::Done, second)
        }
    };
    let picture = last.map(|photo| {
        ViewFn::from(move || {
            let (photo, named) = (photo.clone(), photo.clone());
            let alt = Signal::derive(move || words.picture(&name.get(), &named));
            view! { <ShownPhoto photo alt size=PhotoSize::Square /> }
        })
    });
    view! {
        <Tag
            state=Signal::stored(state)
            word=words.standing(standing)
            what=words.pose(of.pose)
            second=Signal::stored(Some(second))
            press=Route::PhotosOf(id.get_value(), of.pose).to_string()
            picture=picture
        />
    }
}

/// What the photographs take, and what is left.
#[component]
fn RoomTaken(view: Memo<Option<View>>) -> impl IntoView {
    let words = English::default();
    let taken = Memo::new(move |_| {
        view.with(|view| view.as_ref().map(|view| view.room))
            .unwrap_or_default()
    });
    // Asked again when more is taken.
    let space = reading(move || {
        taken.track();
        room::space()
    });
    let full = move || matches!(space.get(), Some(Some(space)) if Space::is_nearly_full(space));
    view! {
        <section class="group">
            <h2>{words.room_heading()}</h2>
            <p>{move || words.room(taken.get())}</p>
            <p class="soft">{move || space.get().map(|space| words.space(space))}</p>
            <Show when=full>
                <Caution said=words.nearly_full() />
            </Show>
        </section>
    }
}
