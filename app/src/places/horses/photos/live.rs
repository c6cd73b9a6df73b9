//! The camera's view with the last photograph pale over it, so that the next is taken from the same place.

use super::taking::Taking;
use crate::device::camera::Live;
use crate::device::clock::{self, DeviceZone};
use crate::device::picture;
use crate::parts::{Action, ActionRow, Back, Frame, FrameKind, Press, Quiet, QuietRow, Sentence};
use crate::places::horses::shown::{PhotoSize, ShownPhoto};
use leptos::html;
use leptos::prelude::*;
use tussock_core::log::bodies::Pose;
use tussock_core::units::Zone;
use tussock_flow::views::photo::{Photo, Trouble};
use tussock_flow::words::{English, HorsesWords, PhotoWords};

/// The live view. What is taken is kept at once, and the view closes.
#[component]
pub(super) fn LiveView(
    /// From where.
    pose: Pose,
    /// The last one of it.
    last: Memo<Option<Photo>>,
    /// The animal's name.
    name: Signal<String>,
    /// The camera, which is on.
    camera: StoredValue<Option<Live>, LocalStorage>,
    /// What keeps it.
    taking: Taking,
    /// Lets the camera go and leaves the view.
    close: Callback<()>,
) -> impl IntoView {
    let words = English::default();
    let node = NodeRef::<html::Video>::new();
    Effect::new(move |_| {
        if let Some(video) = node.get() {
            camera.with_value(|live| {
                if let Some(live) = live {
                    live.show_in(&video);
                }
            });
        }
    });
    // Nothing can be taken before the first picture has come.
    let ready = RwSignal::new(false);
    let waits = Signal::derive(move || taking.busy.get() || !ready.get());
    let pale = RwSignal::new(true);
    let flip = Callback::new(move |()| pale.update(|pale| *pale = !*pale));
    // The one that was the last when the view opened; what is taken now does not come over itself.
    let ghost = StoredValue::new(last.get_untracked());
    let said = Signal::derive(move || {
        let today = DeviceZone.to_local(clock::now()).date;
        ghost.with_value(|ghost| {
            ghost.as_ref().map_or_else(
                || words.posed(&name.get(), pose),
                |ghost| words.lay_over(ghost, today),
            )
        })
    });
    let take = Callback::new(move |()| {
        let Some(video) = node.get_untracked() else {
            return;
        };
        taking.busy.set(true);
        leptos::task::spawn_local(async move {
            let made = picture::of_view(&video).await;
            let kept = taking.keep(pose, made, None).await;
            // A view that is not there yet can be tried again; all else is told on the screen behind.
            if kept || taking.trouble.try_get_untracked() != Some(Some(Trouble::CameraFailed)) {
                close.run(());
            }
        });
    });
    let foot = move || {
        view! {
            {taking.said()}
            <QuietRow>
                <Quiet
                    says=Signal::derive(move || words.show_ghost(pale.get()).to_owned())
                    press=flip
                />
            </QuietRow>
            <ActionRow back=Back { name: words.back().into(), press: Press::from(close) }>
                <Action says=words.take_now() press=take busy=waits />
            </ActionRow>
        }
    };
    let over = move || {
        pale.get()
            .then(|| ghost.get_value())
            .flatten()
            .map(|photo| {
                let named = photo.clone();
                let alt = Signal::derive(move || words.ghost(&name.get(), &named));
                view! { <div class="ghost"><ShownPhoto photo alt size=PhotoSize::Wide /></div> }
            })
    };
    view! {
        <Frame kind=FrameKind::Flow what=name foot=foot>
            <Sentence said=said />
            <div class="live">
                <video on:loadeddata=move |_| ready.set(true) node_ref=node autoplay=true playsinline=true prop:muted=true aria-label=words.live_view()></video>
                {over}
            </div>
        </Frame>
    }
}
