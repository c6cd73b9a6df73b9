//! The seven states and their shapes. A shape never stands without its word.

use leptos::prelude::*;

/// A state, told by word, shape and position before ink.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum State {
    /// Done, within, settled: a filled circle.
    Done,
    /// Comes later: an open circle.
    Later,
    /// Due now: a filled diamond in twine.
    Due,
    /// Late: a filled diamond in a second diamond.
    Late,
    /// Wants care: an open triangle with a bar.
    Care,
    /// A stop that is true now, and only then: a filled square, ink and ground change places.
    Stop,
    /// Not known, untested: a dotted circle with a question mark.
    NotKnown,
}

impl State {
    /// Every state, in the order of the visual language.
    pub const ALL: [Self; 7] = [
        Self::Done,
        Self::Later,
        Self::Due,
        Self::Late,
        Self::Care,
        Self::Stop,
        Self::NotKnown,
    ];

    /// The value of `data-state`, by which the style sheet knows it.
    pub const fn as_str(self) -> &'static str {
        match self {
            Self::Done => "done",
            Self::Later => "later",
            Self::Due => "due",
            Self::Late => "late",
            Self::Care => "care",
            Self::Stop => "stop",
            Self::NotKnown => "not-known",
        }
    }
}

/// The shape of a state, 20 px, without its word: the part around it sets the word beside it.
#[component]
pub fn StateShape(
    /// Which state.
    #[prop(into)]
    state: Signal<State>,
) -> impl IntoView {
    view! {
        <svg class="shape" data-state=move || state.get().as_str() viewBox="0 0 20 20" aria-hidden="true">
            {move || drawing(state.get())}
        </svg>
    }
}

fn drawing(state: State) -> AnyView {
    match state {
        State::Done => view! { <circle cx="10" cy="10" r="7.5" fill="currentColor" /> }.into_any(),
        State::Later => {
            view! { <circle cx="10" cy="10" r="6.5" stroke="currentColor" stroke-width="2.5" /> }.into_any()
        }
        State::Due => view! { <path d="M10 1 19 10 10 19 1 10Z" fill="currentColor" /> }.into_any(),
        State::Late => view! {
            <path d="M10-1.5 21.5 10 10 21.5-1.5 10Z" stroke="currentColor" stroke-width="2" />
            <path d="M10 3 17 10 10 17 3 10Z" fill="currentColor" />
        }
        .into_any(),
        State::Care => view! {
            <path d="M10 2.5 18.2 17.200H1.800Z" stroke="currentColor" stroke-width="2" />
            <path d="M10 7v7.5" stroke="currentColor" stroke-width="2.5" />
        }
        .into_any(),
        State::Stop => view! { <path d="M3 3H17V17H3Z" fill="currentColor" /> }.into_any(),
        State::NotKnown => view! {
            <circle cx="10" cy="10" r="8.5" stroke="currentColor" stroke-width="1.8" stroke-dasharray="1.8 2.651" />
            <path d="M7.6 8.200a2.5 2.5 0 1 1 3.7 2.200c-.9.5-1.3 1-1.3 1.9" stroke="currentColor" stroke-width="1.8" />
            <circle cx="10" cy="14.6" r="1.2" fill="currentColor" />
        }
        .into_any(),
    }
}

/// A shape with its word beside it, for lines that are not tags.
#[component]
pub fn Stated(
    /// Which state.
    #[prop(into)]
    state: Signal<State>,
    /// Its word.
    #[prop(into)]
    word: Signal<String>,
) -> impl IntoView {
    view! {
        <span class="stated">
            <StateShape state />
            <span>{word}</span>
        </span>
    }
}
