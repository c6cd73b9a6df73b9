//! The cord down which tags hang, and the one along which small tags hang side by side.

use leptos::prelude::*;

use super::{State, StateShape};

/// A cord down the page, an ordered list; its children are [`Hang`].
#[component]
pub fn Cord(
    /// What the list is, for screen readers.
    #[prop(into)]
    name: Signal<String>,
    /// The tags, each in a [`Hang`].
    children: Children,
) -> impl IntoView {
    view! { <ol class="cord" aria-label=name>{children()}</ol> }
}

/// One place on a [`Cord`], tied to it by its string.
#[component]
pub fn Hang(
    /// Whether the cord is already reached here (drawn in solid ink).
    #[prop(optional, into)]
    reached: Signal<bool>,
    /// Stands on the cord without a string: a line that is no tag, such as "4 done this morning".
    #[prop(optional)]
    untied: bool,
    /// The tag.
    children: Children,
) -> impl IntoView {
    view! {
        <li class:untied=untied data-reached=move || reached.get().then_some("")>{children()}</li>
    }
}

/// A cord along the page from which small tags hang, such as the nets of the day; its children are [`HungTag`]. In a
/// window under 640 px high it gives its room to the pad: a line of words beside it must say the same.
#[component]
pub fn Hung(
    /// What the list is, for screen readers.
    #[prop(into)]
    name: Signal<String>,
    /// The small tags.
    children: Children,
) -> impl IntoView {
    view! { <ol class="hung" aria-label=name>{children()}</ol> }
}

/// A small tag on a [`Hung`] cord.
#[component]
pub fn HungTag(
    /// Its state.
    #[prop(into)]
    state: Signal<State>,
    /// The word of the state, read out, and shown where there is room.
    #[prop(into)]
    word: Signal<String>,
    /// What it holds, for example "3.6".
    #[prop(into)]
    what: Signal<String>,
    /// Whether it is the one in hand.
    #[prop(optional, into)]
    here: Signal<bool>,
) -> impl IntoView {
    view! {
        <li data-state=move || state.get().as_str() aria-current=move || here.get().then_some("step")>
            <StateShape state />
            <span>{what}</span>
            " "
            <span class="word">{word}</span>
        </li>
    }
}
