//! The sentence each screen opens with.

use leptos::prelude::*;

/// Whether a part holds the screen's one sentence.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Rank {
    /// It is the sentence of the screen, the `h1`.
    Sentence,
    /// The sentence stands elsewhere.
    #[default]
    Line,
}

/// The one sentence that is the answer of the screen: its `h1`, 28 px, two lines at most. It can take the focus, so that
/// a change of route is read out.
#[component]
pub fn Sentence(
    /// The sentence.
    #[prop(into)]
    said: Signal<String>,
) -> impl IntoView {
    view! { <h1 class="sentence" tabindex="-1">{said}</h1> }
}
