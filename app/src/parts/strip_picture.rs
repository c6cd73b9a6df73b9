//! A strip from above, to scale: the lead fence in two strokes, the back fence in one, blades of grass in the strip.

use leptos::prelude::*;
use tussock_flow::views::fields::StripDrawing;

/// The drawing with its words along the fences. It stands in a [`Picture`](super::Picture), whose sentence and table say
/// the same.
#[component]
pub fn StripPicture(
    /// What is drawn.
    drawn: StripDrawing,
    /// What stands along the lead fence.
    lead: String,
    /// What stands beside the move.
    onward: String,
    /// What stands along the back fence; `None` where none stands.
    back: Option<String>,
) -> impl IntoView {
    let StripDrawing {
        wide,
        high,
        strip: [x, y, width, height],
        blades,
        lead: lead_fence,
        back: back_fence,
    } = drawn;
    let back_fence = back_fence.map(|d| view! { <path class="stroke-ink" d=d stroke-width="3" /> });
    let back = back.map(|back| view! { <p class="soft small" aria-hidden="true">{back}</p> });
    view! {
        <p class="soft small" aria-hidden="true">{lead}</p>
        <svg viewBox=format!("0 0 {wide} {high:.1}") aria-hidden="true">
            <rect class="fill-ground stroke-line" x=x y=y width=width height=height stroke-width="1.5" />
            <path class="stroke-ink" d=blades stroke-width="1.5" />
            <path class="stroke-ink" d=lead_fence stroke-width="3" />
            {back_fence}
        </svg>
        <p class="soft small" aria-hidden="true">{onward}</p>
        {back}
    }
}
