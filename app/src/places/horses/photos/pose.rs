//! The photographs of one pose: then and now side by side, all of them, and the next one.

use super::live::LiveView;
use super::taking::Taking;
use super::{name_of, view_of};
use crate::device::camera::{self, Live};
use crate::parts::{ActionRow, Back, Frame, FrameKind, Press, Quiet, QuietRow, Sentence};
use crate::places::horses::shown::{PhotoSize, ShownPhoto};
use crate::places::{Saving, Unread};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::AnimalId;
use tussock_core::log::bodies::Pose;
use tussock_flow::routes::Route;
use tussock_flow::views::photo::{OfPose, Photo};
use tussock_flow::words::{English, HorsesWords, PhotoWords};

/// The photographs of an animal in one pose.
#[component]
pub fn OnePose(
    /// Which animal.
    animal: AnimalId,
    /// From where.
    pose: Pose,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let id = StoredValue::new(animal.clone());
    let (shelf, view) = view_of(world, id);
    let name = name_of(view);
    let taking = Taking::of(world, id);
    let of =
        Memo::new(move |_| view.with(|view| view.as_ref().and_then(|view| view.of(pose).cloned())));
    let last = Memo::new(move |_| of.with(|of| of.as_ref().and_then(OfPose::now).cloned()));
    let said = Signal::derive(
        move || match of.with(|of| of.as_ref().map(|of| of.photos.len())) {
            Some(count) => words.so_many(&name.get(), pose, count),
            None if shelf.with(Option::is_none) => words.opening().to_owned(),
            None => words.not_here().to_owned(),
        },
    );
    // The camera, while it is on. It is let go when the page goes out of sight, and with the screen.
    let camera = StoredValue::new_local(None::<Live>);
    let on = RwSignal::new(false);
    let close = Callback::new(move |()| {
        on.try_set(false);
        camera.try_set_value(None);
    });
    let out_of_sight = window_event_listener_untyped("visibilitychange", move |_| close.run(()));
    on_cleanup(move || out_of_sight.remove());
    let open = Callback::new(move |()| {
        taking.trouble.set(None);
        leptos::task::spawn_local(async move {
            match camera::open().await {
                // With the screen gone, the camera is let go here.
                Ok(live) => {
                    if camera.try_update_value(|held| *held = Some(live)).is_some() {
                        on.try_set(true);
                    }
                }
                Err(trouble) => {
                    taking.trouble.try_set(Some(trouble));
                }
            }
        });
    });
    let here = StoredValue::new(Signal::stored(pose));
    let back = StoredValue::new(Route::Photos(animal).to_string());
    let foot = move || {
        view! {
            {taking.said()}
            <QuietRow>
                {taking.choose(here.get_value())}
                <Show when=move || last.with(Option::is_some)>
                    <Quiet says=words.take_over_last() press=open />
                </Show>
            </QuietRow>
            <Saving />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(back.get_value()) }>
                {taking.action(here.get_value())}
            </ActionRow>
        }
    };
    let kept = move || {
        view! {
            <Frame kind=FrameKind::Flow what=name foot=foot>
                <Sentence said=said />
                <Unread shelf />
                <ThenAndNow of name />
                <p>{words.how_to_stand(pose)}</p>
                <p class="soft">{words.worth_of_photo()}</p>
                <AllOfPose of name id />
            </Frame>
        }
    };
    // A page that comes back in sight without the camera is not drawn anew.
    let shown = Memo::new(move |_| on.get());
    move || {
        if shown.get() {
            view! { <LiveView pose last name camera taking close /> }.into_any()
        } else {
            kept().into_any()
        }
    }
}

/// The newest, and beside it the first or a later one.
#[component]
fn ThenAndNow(of: Memo<Option<OfPose>>, name: Signal<String>) -> impl IntoView {
    let words = English::default();
    let later = RwSignal::new(0_usize);
    let steps = Memo::new(move |_| of.with(|of| of.as_ref().map_or(0, OfPose::steps)));
    let now = Memo::new(move |_| of.with(|of| of.as_ref().and_then(OfPose::now).cloned()));
    let then = Memo::new(move |_| {
        let later = later.get().min(steps.get());
        of.with(|of| of.as_ref().and_then(|of| of.then(later)).cloned())
    });
    let figure = move |photo: Photo, said: String| {
        let named = photo.clone();
        let alt = Signal::derive(move || words.picture(&name.get(), &named));
        view! {
            <figure>
                <ShownPhoto photo alt size=PhotoSize::Wide />
                <figcaption>{said}</figcaption>
            </figure>
        }
    };
    let earlier = Callback::new(move |()| later.update(|at| *at = at.saturating_sub(1)));
    let on = Callback::new(move |()| {
        let last = steps.get_untracked();
        later.update(|at| *at = (*at + 1).min(last));
    });
    view! {
        <Show when=move || then.with(Option::is_some)>
            <section class="group">
                <h2>{words.then_and_now()}</h2>
                <div class="then-now">
                    {move || then.get().map(|photo| {
                        let said = words.then(&photo);
                        figure(photo, said)
                    })}
                    {move || now.get().map(|photo| {
                        let said = words.now(&photo);
                        figure(photo, said)
                    })}
                </div>
                <QuietRow>
                    <Show when=move || 0 < later.get().min(steps.get())>
                        <Quiet says=words.earlier() press=earlier />
                    </Show>
                    <Show when=move || later.get() < steps.get()>
                        <Quiet says=words.later() press=on />
                    </Show>
                </QuietRow>
            </section>
        </Show>
    }
}

/// All of a pose, the newest first; each opens.
#[component]
fn AllOfPose(
    of: Memo<Option<OfPose>>,
    name: Signal<String>,
    id: StoredValue<AnimalId>,
) -> impl IntoView {
    let words = English::default();
    let photos = Memo::new(move |_| {
        of.with(|of| of.as_ref().map(|of| of.photos.clone()))
            .unwrap_or_default()
    });
    view! {
        <Show when=move || photos.with(|photos| !photos.is_empty())>
            <section class="group">
                <h2>{words.all_photos()}</h2>
                <ul class="photos">
                    <For
                        each=move || photos.get()
                        key=|photo| (photo.id.0.clone(), photo.day, photo.body.dated)
                        children=move |photo| {
                            let named = photo.clone();
                            let alt = Signal::derive(move || words.picture(&name.get(), &named));
                            let href = Route::Photo(id.get_value(), photo.id.clone()).to_string();
                            let day = words.day_of(&photo);
                            view! {
                                <li>
                                    <a href=href>
                                        <ShownPhoto photo alt size=PhotoSize::Wide />
                                        <span>{day}</span>
                                    </a>
                                </li>
                            }
                        }
                    />
                </ul>
            </section>
        </Show>
    }
}
