//! The bar of the five places.

use leptos::prelude::*;

use super::{Drawing, Icon};

/// A place in the bar. Only places that do something are given.
#[derive(Debug, Clone)]
pub struct PlaceTab {
    /// Its icon.
    pub icon: Drawing,
    /// Its word.
    pub word: Signal<String>,
    /// Its route.
    pub href: String,
    /// Whether it is the current place.
    pub here: Signal<bool>,
}

/// The place bar: at the foot of a phone, a rail at the side from 600 px. Gone in a flow.
#[component]
pub fn PlaceBar(
    /// What the navigation is, for screen readers.
    #[prop(into)]
    name: Signal<String>,
    /// The places, in order.
    tabs: Vec<PlaceTab>,
) -> impl IntoView {
    let tabs = tabs.into_iter().map(|tab| {
        let here = tab.here;
        view! {
            <li>
                <a class="place" href=tab.href aria-current=move || here.get().then_some("page")>
                    <Icon of=tab.icon />
                    <span>{tab.word}</span>
                </a>
            </li>
        }
    }).collect_view();
    view! { <nav class="places" aria-label=name><ul>{tabs}</ul></nav> }
}
