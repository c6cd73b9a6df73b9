//! Quiet links: what is there beside the action.

use leptos::prelude::*;

use super::Press;
use super::press::once;

/// A quiet link, underlined, at least 48 px.
#[component]
pub fn Quiet(
    /// The words.
    #[prop(into)]
    says: Signal<String>,
    /// What it leads to.
    #[prop(into)]
    press: Press,
) -> impl IntoView {
    match press {
        Press::Route(href) => view! { <a class="quiet" href=href>{says}</a> }.into_any(),
        Press::Act(act) => {
            view! { <button class="quiet" type="button" on:click=once(act)>{says}</button> }
                .into_any()
        }
    }
}

/// A row of quiet links, over the action or at the end of a list.
#[component]
pub fn QuietRow(
    /// The links.
    children: Children,
) -> impl IntoView {
    view! { <div class="quiet-row">{children()}</div> }
}
