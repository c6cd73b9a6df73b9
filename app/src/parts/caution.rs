//! A caution, where the decision is taken.

use leptos::prelude::*;

use super::{State, StateShape};

/// A caution: triangle, one sentence, and "Why". It cannot be closed; it goes when its cause goes.
#[component]
pub fn Caution(
    /// The sentence.
    #[prop(into)]
    said: Signal<String>,
    /// The word that opens the reason.
    #[prop(optional, into)]
    why: Signal<String>,
    /// The reason; without it there is no "Why".
    #[prop(optional)]
    children: Option<Children>,
) -> impl IntoView {
    view! {
        <div class="caution">
            <StateShape state=State::Care />
            <div>
                <p>{said}</p>
                {children.map(|reason| view! { <details><summary>{why}</summary>{reason()}</details> })}
            </div>
        </div>
    }
}
