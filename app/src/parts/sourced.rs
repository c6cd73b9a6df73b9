//! A number that knows where it comes from.

use leptos::prelude::*;

use super::ids;

/// A number with a dotted underline. Pressed, it shows value, mark and citation at the foot of the page, until the
/// person presses elsewhere or Escape.
#[component]
pub fn Sourced(
    /// The number with its unit, as it stands in the text.
    #[prop(into)]
    shown: Signal<String>,
    /// Added for screen readers, for example "where it comes from".
    #[prop(into)]
    asks: Signal<String>,
    /// What the value is, in full.
    #[prop(into)]
    value: Signal<String>,
    /// The mark: published, worked out, from memory, common practice, ours.
    #[prop(into)]
    mark: Signal<String>,
    /// Work and place.
    #[prop(into)]
    citation: Signal<String>,
) -> impl IntoView {
    let id = ids::fresh("source");
    view! {
        <button class="sourced" type="button" popovertarget=id.clone()>
            {shown}
            <span class="only-read">" "{asks}</span>
        </button>
        <span class="source" id=id popover="auto">
            <span class="value">{value}</span>
            <span>{mark}</span>
            <span class="soft">{citation}</span>
        </span>
    }
}
