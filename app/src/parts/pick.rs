//! A key that takes a picture: with the camera, or from the pictures that are there.

use leptos::prelude::*;

use crate::device::picture::{Chosen, chosen};

/// As what it stands on the screen.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PickAs {
    /// The primary action; a phone opens its camera.
    Action,
    /// A quiet link; a phone offers its pictures, and its camera too.
    Quiet,
}

/// The key. The browser's own chooser lies unseen over it, so that no leave is asked for and every browser can do it.
#[component]
pub fn Pick(
    /// The words.
    #[prop(into)]
    says: Signal<String>,
    /// As what.
    shown_as: PickAs,
    /// A file was taken or chosen.
    #[prop(into)]
    on_pick: Callback<Chosen>,
    /// While true it is at work and takes nothing.
    #[prop(into)]
    busy: Signal<bool>,
) -> impl IntoView {
    let class = match shown_as {
        PickAs::Action => "action pick",
        PickAs::Quiet => "quiet pick",
    };
    view! {
        <label
            class=class
            aria-busy=move || busy.get().then_some("true")
            aria-disabled=move || busy.get().then_some("true")
        >
            <span>{says}</span>
            <input
                type="file"
                accept="image/*"
                capture=(shown_as == PickAs::Action).then_some("environment")
                on:change:target=move |event| {
                    let file = chosen(&event.target());
                    if let Some(file) = file.filter(|_| !busy.get_untracked()) {
                        on_pick.run(file);
                    }
                }
            />
        </label>
    }
}
