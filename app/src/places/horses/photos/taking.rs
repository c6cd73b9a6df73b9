//! Taking a photograph: it is made small, kept at once, and can be undone as any save.

use crate::device::picture::{self, Chosen};
use crate::device::{clock, ids};
use crate::keep::KeepError;
use crate::parts::{Pick, PickAs};
use crate::world::{Failed, World};
use leptos::prelude::*;
use tussock_core::animal::AnimalId;
use tussock_core::log::Picture;
use tussock_core::log::bodies::Pose;
use tussock_core::units::Instant;
use tussock_flow::forms::photo::{act, taken};
use tussock_flow::views::photo::Trouble;
use tussock_flow::words::{English, PhotoWords};

/// What a screen that takes photographs of one animal has under way.
#[derive(Clone, Copy)]
pub(super) struct Taking {
    world: World,
    animal: StoredValue<AnimalId>,
    /// One is made small or written.
    pub(super) busy: RwSignal<bool>,
    /// Why the last one was not kept.
    pub(super) trouble: RwSignal<Option<Trouble>>,
}

impl Taking {
    pub(super) fn of(world: World, animal: StoredValue<AnimalId>) -> Self {
        Self {
            world,
            animal,
            busy: RwSignal::new(false),
            trouble: RwSignal::new(None),
        }
    }

    /// Keeps a file in a pose.
    fn file(self, pose: Pose, chosen: Chosen) {
        self.busy.set(true);
        self.trouble.set(None);
        leptos::task::spawn_local(async move {
            let made = picture::of_file(&chosen).await;
            self.keep(pose, made, Some(chosen.at)).await;
        });
    }

    /// Keeps a picture in a pose, or says why not; `file` is when its file was made. Tells whether it is kept.
    pub(super) async fn keep(
        self,
        pose: Pose,
        made: Result<Picture, Trouble>,
        file: Option<Instant>,
    ) -> bool {
        let written = match made {
            Ok(picture) => self.write(pose, picture, file).await,
            Err(trouble) => Err(trouble),
        };
        self.busy.try_set(false);
        // What was said before was cleared when this one began; what was said since stays.
        match written {
            Ok(()) => true,
            Err(trouble) => {
                self.trouble.try_set(Some(trouble));
                false
            }
        }
    }

    async fn write(
        self,
        pose: Pose,
        picture: Picture,
        file: Option<Instant>,
    ) -> Result<(), Trouble> {
        let animal = self.animal.try_get_value().ok_or(Trouble::NotSaved)?;
        let when = taken(file, clock::now());
        let act =
            act(&animal, pose, picture, when, &ids::new()).map_err(|_| Trouble::NotAPicture)?;
        match self.world.act(act, None).await {
            Ok(_) => Ok(()),
            Err(Failed::Keep(KeepError::Full)) => Err(Trouble::Full),
            Err(_) => Err(Trouble::NotSaved),
        }
    }

    /// What is under way and what went wrong, over the keys.
    pub(super) fn said(self) -> impl IntoView {
        let words = English::default();
        view! {
            <p class="soft" role="status">
                {move || self.busy.get().then(|| words.making_small())}
            </p>
            <div role="alert">
                {move || {
                    self.trouble.get().map(|trouble| {
                        view! { <p class="error">{words.photo_trouble(trouble)}</p> }
                    })
                }}
            </div>
        }
    }

    /// The primary action: the phone's camera.
    pub(super) fn action(self, pose: Signal<Pose>) -> impl IntoView {
        let words = English::default();
        let says = Signal::derive(move || words.take(pose.get()).to_owned());
        self.pick(says, PickAs::Action, pose)
    }

    /// The quiet link: a picture that is there.
    pub(super) fn choose(self, pose: Signal<Pose>) -> impl IntoView {
        let words = English::default();
        self.pick(
            Signal::stored(words.choose_picture().to_owned()),
            PickAs::Quiet,
            pose,
        )
    }

    fn pick(self, says: Signal<String>, shown_as: PickAs, pose: Signal<Pose>) -> impl IntoView {
        let on_pick = Callback::new(move |file| self.file(pose.get_untracked(), file));
        view! { <Pick says=says shown_as=shown_as on_pick=on_pick busy=self.busy /> }
    }
}
