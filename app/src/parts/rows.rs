//! Plain rows of 56 px.

use leptos::prelude::*;

use super::Press;
use super::press::once;

/// A list of [`Row`]s.
#[component]
pub fn Rows(
    /// What the list is, for screen readers.
    #[prop(into)]
    name: Signal<String>,
    /// The rows.
    children: Children,
) -> impl IntoView {
    view! { <ul class="rows" aria-label=name>{children()}</ul> }
}

/// A plain row of [`Rows`]: a name, what stands at its right, and a second line. It is a list item: on a cord use a
/// [`Quiet`](super::Quiet) link in an untied [`Hang`](super::Hang) instead.
#[component]
pub fn Row(
    /// The name.
    #[prop(into)]
    name: Signal<String>,
    /// What stands at the right.
    #[prop(optional, into)]
    value: MaybeProp<String>,
    /// Whether that is the number of the row, in bold.
    #[prop(optional)]
    strong: bool,
    /// The second line.
    #[prop(optional, into)]
    second: MaybeProp<String>,
    /// What it leads to.
    #[prop(optional, into)]
    press: Option<Press>,
    /// Stands before the name: a [`StateShape`](super::StateShape), whose word is in the second line.
    #[prop(optional, into)]
    shape: ViewFn,
) -> impl IntoView {
    let inside = view! {
        {shape.run()}
        <span class="row-name">{name}</span>
        " "
        {move || value.get().map(|text| view! { <span class="row-value" class:strong=strong>{text}</span>" " })}
        {move || second.get().map(|text| view! { <span class="row-second">{text}</span> })}
    };
    let row = match press {
        Some(Press::Route(href)) => view! { <a class="row" href=href>{inside}</a> }.into_any(),
        Some(Press::Act(act)) => {
            view! { <button class="row" type="button" on:click=once(act)>{inside}</button> }
                .into_any()
        }
        None => view! { <div class="row">{inside}</div> }.into_any(),
    };
    view! { <li>{row}</li> }
}
