//! The offer of a newer build: on the places only, and never while a form in any tab holds what is not saved.

use crate::parts::{Quiet, QuietRow, shell};
use crate::world::{World, reading};
use leptos::prelude::*;
use tussock_flow::words::{English, HorsesWords};

/// Says that a newer build is here and takes it on one tap; says nothing while there is none, or a draft stands.
#[component]
pub(crate) fn UpdateOffer() -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let offered = reading(move || {
        let waits = world.update.get();
        async move { waits && nothing_unsaved(world).await }
    });
    let take = Callback::new(move |()| {
        leptos::task::spawn_local(async move {
            // A form may have been begun in another tab since the offer was drawn.
            if nothing_unsaved(world).await {
                shell::apply_update();
            }
        });
    });
    view! {
        <Show when=move || offered.get() == Some(true)>
            <QuietRow>
                <span class="soft" role="status">{words.newer_version()}</span>
                <Quiet says=words.use_it() press=take />
            </QuietRow>
        </Show>
    }
}

/// A disk that does not answer may hold a draft.
async fn nothing_unsaved(world: World) -> bool {
    !world.has_drafts().await.unwrap_or(true)
}
