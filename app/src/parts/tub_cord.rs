//! The cord of a soak: its tags in their order, not to scale.

use leptos::prelude::*;

use super::{State, Tag};

/// A tag of a soak.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct TubTag {
    /// Its state.
    pub state: State,
    /// The word of the state.
    pub word: String,
    /// The time.
    pub time: String,
    /// The step.
    pub what: String,
    /// Its second line; empty for none.
    pub second: String,
}

/// The cord of a soak. Two slashes between the tags say that it is not to scale; the part that is reached is solid.
#[component]
pub fn TubCord(
    /// What the list is, for screen readers.
    #[prop(into)]
    name: Signal<String>,
    /// The tags, in the order of time.
    #[prop(into)]
    tags: Signal<Vec<TubTag>>,
) -> impl IntoView {
    let drawn = move || {
        tags.get()
            .into_iter()
            .enumerate()
            .map(|(at, tag)| {
                let reached = tag.state == State::Done;
                let second = Some(tag.second).filter(|second| !second.is_empty());
                let cut = (0 < at).then(|| {
                    view! {
                        <svg class="cord-cut" viewBox="0 0 24 16" width="24" height="16" aria-hidden="true">
                            <path class="stroke-line" d="M4 14 12 2M12 14 20 2" stroke-width="2" />
                        </svg>
                    }
                });
                view! {
                    <li data-reached=reached.then_some("")>
                        {cut}
                        <Tag
                            state=Signal::stored(tag.state)
                            word=Signal::stored(tag.word)
                            lead=Some(tag.time)
                            what=Signal::stored(tag.what)
                            second=second
                        />
                    </li>
                }
            })
            .collect_view()
    };
    view! { <ol class="cord" aria-label=name>{drawn}</ol> }
}
