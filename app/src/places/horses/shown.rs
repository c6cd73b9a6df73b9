//! A kept photograph on the screen: read from the disk when it comes in sight, and let go with the screen.

use crate::device::picture::Shown;
use crate::device::sight::{self, Watch};
use crate::world::World;
use leptos::html;
use leptos::prelude::*;
use tussock_flow::views::photo::Photo;
use tussock_flow::words::{English, PhotoWords};

/// How large it stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum PhotoSize {
    /// A small square in a list.
    Square,
    /// As wide as its column.
    Wide,
}

/// The picture of a photograph. Its place is kept before it is read, so that nothing moves when it comes.
#[component]
pub(super) fn ShownPhoto(
    /// Which.
    photo: Photo,
    /// What it shows, in words.
    #[prop(into)]
    alt: Signal<String>,
    /// How large.
    size: PhotoSize,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let node = NodeRef::<html::Img>::new();
    let address = RwSignal::new(None::<String>);
    let missing = RwSignal::new(false);
    let held = StoredValue::new_local(None::<Shown>);
    let watch = StoredValue::new_local(None::<Watch>);
    let (width, height) = (photo.body.width_px.get(), photo.body.height_px.get());
    let sum = StoredValue::new(photo.body.sha256.as_str().to_owned());
    let read = move || {
        let Some(sum) = sum.try_get_value() else {
            return;
        };
        leptos::task::spawn_local(async move {
            // A disk that does not answer shows the same as one without the picture: the words and the empty place.
            let bytes = world.picture(&sum).await.ok().flatten();
            let Some(shown) = bytes.as_deref().and_then(Shown::of) else {
                missing.try_set(true);
                return;
            };
            let at = shown.address().to_owned();
            // With the screen gone, what is held goes here, and its address with it.
            if held.try_update_value(|held| *held = Some(shown)).is_some() {
                address.try_set(Some(at));
            }
        });
    };
    Effect::new(move |_| {
        if let Some(image) = node.get() {
            match sight::when_seen(&image, read) {
                Some(watching) => watch.set_value(Some(watching)),
                None => read(),
            }
        }
    });
    let class = match size {
        PhotoSize::Square => "photo square",
        PhotoSize::Wide => "photo",
    };
    let not_here = move || {
        (size == PhotoSize::Wide && missing.get())
            .then(|| view! { <span class="soft small">{words.picture_not_here()}</span> })
    };
    view! {
        <img
            node_ref=node
            class=class
            src=move || address.get()
            alt=alt
            width=width.to_string()
            height=height.to_string()
            decoding="async"
        />
        {not_here}
    }
}
