//! A field of a form: label, hint, what was typed, what was understood, what is wrong.

use leptos::html;
use leptos::prelude::*;

use super::{State, StateShape, ids};

/// The keyboard a phone opens for a field. The input is always `type=text`: number inputs drop and round what is typed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Keyboard {
    /// Letters.
    #[default]
    Text,
    /// Digits and a decimal mark.
    Decimal,
    /// Digits.
    Numeric,
    /// A telephone number.
    Telephone,
    /// Letters, for finding.
    Search,
}

impl Keyboard {
    const fn as_str(self) -> &'static str {
        match self {
            Self::Text => "text",
            Self::Decimal => "decimal",
            Self::Numeric => "numeric",
            Self::Telephone => "tel",
            Self::Search => "search",
        }
    }
}

/// A field, 64 px.
#[component]
pub fn Field(
    /// Its label.
    #[prop(into)]
    label: Signal<String>,
    /// A line under the label: how to measure, which forms are understood.
    #[prop(optional, into)]
    hint: MaybeProp<String>,
    /// The text as it was typed.
    #[prop(into)]
    value: Signal<String>,
    /// The text after each change.
    #[prop(into)]
    on_input: Callback<String>,
    /// The person has left the field or confirmed it.
    #[prop(optional, into)]
    on_leave: Option<Callback<()>>,
    /// The enter key.
    #[prop(optional, into)]
    on_enter: Option<Callback<()>>,
    /// What is wrong, with a way to mend it.
    #[prop(optional, into)]
    error: MaybeProp<String>,
    /// What was understood, for example "143 cm".
    #[prop(optional, into)]
    echo: MaybeProp<String>,
    /// The unit at the right edge, where it is fixed.
    #[prop(optional, into)]
    unit: MaybeProp<String>,
    /// Which keyboard a phone opens.
    #[prop(optional)]
    keyboard: Keyboard,
    /// What a password keeper or the browser may fill in: the value of `autocomplete`.
    #[prop(default = "off")]
    fills: &'static str,
    /// The input, where something outside puts the person into it.
    #[prop(optional)]
    node: NodeRef<html::Input>,
    /// The id of the input, where something outside refers to it.
    #[prop(optional, into)]
    id: Option<String>,
) -> impl IntoView {
    let id = id.unwrap_or_else(|| ids::fresh("field"));
    let (hint_id, echo_id, error_id) = (
        format!("{id}-hint"),
        format!("{id}-echo"),
        format!("{id}-error"),
    );
    // A number is echoed as it is typed: its line keeps its room, so that nothing below moves under the thumb.
    let kept = matches!(keyboard, Keyboard::Decimal | Keyboard::Numeric).then_some("");
    let wrong = Memo::new(move |_| error.with(Option::is_some));
    let described = {
        let (hint_id, echo_id, error_id) = (hint_id.clone(), echo_id.clone(), error_id.clone());
        move || {
            let mut ids = vec![echo_id.as_str()];
            if hint.with(Option::is_some) {
                ids.insert(0, &hint_id);
            }
            if wrong.get() {
                ids.insert(0, &error_id);
            }
            ids.join(" ")
        }
    };
    view! {
        <div class="field">
            <label class="field-label" for=id.clone()>{label}</label>
            {move || hint.get().map(|text| view! { <p class="hint" id=hint_id.clone()>{text}</p> })}
            <div class="entry" data-invalid=move || wrong.get().then_some("")>
                <input
                    node_ref=node
                    id=id
                    type="text"
                    inputmode=keyboard.as_str()
                    autocomplete=fills
                    enterkeyhint=if keyboard == Keyboard::Search { "search" } else { "next" }
                    aria-describedby=described
                    aria-invalid=move || wrong.get().then_some("true")
                    prop:value=value
                    on:input:target=move |event| on_input.run(event.target().value())
                    on:blur=move |_| {
                        if let Some(act) = on_leave {
                            act.run(());
                        }
                    }
                    on:keydown=move |event| {
                        if event.key() == "Enter" && let Some(act) = on_enter {
                            act.run(());
                        }
                    }
                />
                {move || unit.get().map(|text| view! { <span class="entry-unit">{text}</span> })}
            </div>
            <p class="echo" id=echo_id data-kept=kept>{move || echo.get()}</p>
            <div role="alert">
                {move || error.get().map(|text| {
                    view! {
                        <p class="error" id=error_id.clone()>
                            <StateShape state=State::Care />
                            <span>{text}</span>
                        </p>
                    }
                })}
            </div>
        </div>
    }
}
