//! The large slot: a line that says what the number is, then the number.

use leptos::html::Input;
use leptos::prelude::*;

use super::{Rank, ids};

/// A number with its unit, as text.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Figure {
    /// The number, as shown.
    pub number: String,
    /// Its unit; empty for none.
    pub unit: String,
}

/// The large slot with a number that is told. One figure is set very large; two ("12 h 10 min") share one line.
#[component]
pub fn LargeSlot(
    /// Says what the number is.
    #[prop(into)]
    line: Signal<String>,
    /// One figure, or two.
    #[prop(into)]
    figures: Signal<Vec<Figure>>,
    /// The line under it; its room is kept when it is empty.
    #[prop(optional, into)]
    note: MaybeProp<String>,
    /// Whether it is the sentence of the screen.
    #[prop(optional)]
    rank: Rank,
) -> impl IntoView {
    let drawn = move || {
        figures
            .get()
            .into_iter()
            .map(|figure| {
                view! {
                    <span class="nowrap">
                        <span class="num">{figure.number}</span>
                        " "
                        <span class="unit">{figure.unit}</span>
                    </span>
                }
            })
            .collect_view()
    };
    let inside = view! {
        <span class="slot-line">{line}</span>
        " "
        <span class="slot-figures" data-figures=move || { if 1 < figures.with(Vec::len) { "two" } else { "one" } }>
            {drawn}
        </span>
    };
    let head = match rank {
        Rank::Sentence => view! { <h1 class="slot" tabindex="-1">{inside}</h1> }.into_any(),
        Rank::Line => view! { <p class="slot">{inside}</p> }.into_any(),
    };
    view! {
        {head}
        <p class="slot-note">{move || note.get()}</p>
    }
}

/// What ties a [`ReadingSlot`] to its pad: the input, and whether the phone's own keyboard is wanted.
#[derive(Debug, Clone, Copy)]
pub struct Entry {
    /// The input in the slot.
    pub field: NodeRef<Input>,
    /// Whether the phone's keyboard takes the place of the pad.
    pub phone: RwSignal<bool>,
}

impl Entry {
    /// A new tie, for one screen.
    pub fn new() -> Self {
        Self {
            field: NodeRef::new(),
            phone: RwSignal::new(false),
        }
    }

    /// Puts the cursor into the slot. With the pad in use no keyboard opens by it.
    pub fn focus(self) {
        if let Some(field) = self.field.get_untracked() {
            // A field that has just left the page cannot take the cursor, and need not.
            let _ = field.focus();
        }
    }
}

impl Default for Entry {
    fn default() -> Self {
        Self::new()
    }
}

/// The large slot with a number that is typed: a real input of the same size, so that the keys of a keyboard work as
/// the pad's do. Until the first key it shows `target` in its place.
#[component]
pub fn ReadingSlot(
    /// Says what the number is; changes with the first key ("Hang until the scale reads", "The scale reads").
    #[prop(into)]
    line: Signal<String>,
    /// The unit.
    #[prop(into)]
    unit: Signal<String>,
    /// Shown until something is typed.
    #[prop(optional, into)]
    target: Signal<String>,
    /// What was typed.
    #[prop(into)]
    value: Signal<String>,
    /// The typed text after each change.
    #[prop(into)]
    on_input: Callback<String>,
    /// The enter key.
    #[prop(optional, into)]
    on_enter: Option<Callback<()>>,
    /// The tie to its [`Pad`](super::Pad).
    entry: Entry,
    /// The line under it, told to screen readers when it changes; its room is kept when it is empty.
    #[prop(optional, into)]
    note: MaybeProp<String>,
    /// Whether it is the sentence of the screen.
    #[prop(optional)]
    rank: Rank,
) -> impl IntoView {
    let id = ids::fresh("reading");
    let note_id = ids::fresh("reading-note");
    let label = view! { <label class="slot-line" for=id.clone()>{line}</label> };
    let head = match rank {
        Rank::Sentence => view! { <h1 tabindex="-1">{label}</h1> }.into_any(),
        Rank::Line => view! { <p>{label}</p> }.into_any(),
    };
    let shown = move || {
        if value.with(String::is_empty) {
            target.get()
        } else {
            value.get()
        }
    };
    view! {
        <div class="slot">
            {head}
            <div class="slot-figures">
                <input
                    class="num"
                    id=id
                    node_ref=entry.field
                    type="text"
                    inputmode=move || if entry.phone.get() { "decimal" } else { "none" }
                    autocomplete="off"
                    enterkeyhint="done"
                    aria-describedby=note_id.clone()
                    data-digits=move || shown().chars().filter(char::is_ascii_digit).count().clamp(1, 7).to_string()
                    data-point=move || shown().contains(['.', ',']).then_some("")
                    placeholder=target
                    prop:value=value
                    on:input:target=move |event| on_input.run(event.target().value())
                    on:keydown=move |event| {
                        if event.key() == "Enter" && let Some(act) = on_enter {
                            act.run(());
                        }
                    }
                />
                <span class="unit">{unit}</span>
            </div>
            <p class="slot-note" id=note_id role="status">{move || note.get()}</p>
        </div>
    }
}
