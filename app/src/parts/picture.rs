//! A picture with its table.

use leptos::prelude::*;

/// A picture: one image named by its sentence, and the same numbers as a table under "All numbers".
#[component]
pub fn Picture(
    /// The sentence that is its name.
    #[prop(into)]
    sentence: Signal<String>,
    /// The words "All numbers".
    #[prop(into)]
    numbers_word: Signal<String>,
    /// The same numbers, a [`Table`](super::Table).
    #[prop(into)]
    numbers: ViewFn,
    /// The SVG, and its labels as HTML text.
    children: Children,
) -> impl IntoView {
    view! {
        <figure class="picture-frame">
            <div class="picture" role="img" aria-label=sentence>{children()}</div>
            <details class="numbers">
                <summary>{numbers_word}</summary>
                {numbers.run()}
            </details>
        </figure>
    }
}
