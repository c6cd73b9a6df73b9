//! The stop block: ink and ground change places.

use leptos::prelude::*;

use super::{Rank, State, StateShape};

/// The loudest sign there is, for a stop that is true now. At most one a screen, at most 240 px high.
#[component]
pub fn StopBlock(
    /// The order, for example "Stop grazing and work. Soft bed. Vet today."
    #[prop(into)]
    order: Signal<String>,
    /// Whether the order is the sentence of the screen.
    #[prop(optional)]
    rank: Rank,
    /// The reason, and what to do instead.
    #[prop(optional)]
    children: Option<Children>,
) -> impl IntoView {
    let order = match rank {
        Rank::Sentence => view! { <h1 class="order" tabindex="-1">{order}</h1> }.into_any(),
        Rank::Line => view! { <p class="order">{order}</p> }.into_any(),
    };
    view! {
        <div class="stop-block" role="alert">
            <StateShape state=State::Stop />
            {order}
            {children.map(|children| view! { <div>{children()}</div> })}
        </div>
    }
}
