//! A key as wide as its column.

use leptos::prelude::*;

use super::press::once;

/// A key that does something at once, as wide as its column, with a line under it.
#[component]
pub fn WideKey(
    /// The words on it.
    #[prop(into)]
    says: Signal<String>,
    /// A line under it: what it does.
    #[prop(into)]
    means: Signal<String>,
    /// What it does. A second tap within 600 ms is not passed on.
    #[prop(into)]
    act: Callback<()>,
) -> impl IntoView {
    view! {
        <div class="wide-key">
            <button class="key" type="button" data-long="" on:click=once(act)>{says}</button>
            <p class="hint">{means}</p>
        </div>
    }
}

/// A key that does something at once, for a group of keys side by side.
#[component]
pub fn ActKey(
    /// The words on it.
    #[prop(into)]
    says: Signal<String>,
    /// What it does. A second tap within 600 ms is not passed on.
    #[prop(into)]
    act: Callback<()>,
) -> impl IntoView {
    view! { <button class="key" type="button" data-long="" on:click=once(act)>{says}</button> }
}
