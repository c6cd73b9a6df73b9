//! A page of text that a person writes or changes.

use super::ids;
use leptos::prelude::*;

/// The rows it begins with; it can be pulled taller.
const ROWS: u32 = 14;

/// A field for a page of text.
#[component]
pub fn Page(
    /// Its label.
    #[prop(into)]
    label: Signal<String>,
    /// A line under the label.
    #[prop(into)]
    hint: Signal<String>,
    /// The text as it stands.
    #[prop(into)]
    value: Signal<String>,
    /// The text after each change.
    #[prop(into)]
    on_input: Callback<String>,
) -> impl IntoView {
    let id = ids::fresh("page");
    let hint_id = format!("{id}-hint");
    view! {
        <div class="field">
            <label class="field-label" for=id.clone()>{label}</label>
            <p class="hint" id=hint_id.clone()>{hint}</p>
            <div class="entry">
                <textarea
                    id=id
                    rows=ROWS
                    aria-describedby=hint_id
                    prop:value=value
                    on:input:target=move |event| on_input.run(event.target().value())
                ></textarea>
            </div>
        </div>
    }
}
