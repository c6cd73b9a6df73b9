//! Choices as big keys: one of several, or several.

use leptos::prelude::*;

use super::ids;

/// Something to choose.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Offer<T> {
    /// What it stands for.
    pub value: T,
    /// Its word.
    pub word: String,
    /// A second line; empty for none.
    pub second: String,
}

impl<T> Offer<T> {
    /// An offer with a word alone.
    pub fn new(value: T, word: impl Into<String>) -> Self {
        Self {
            value,
            word: word.into(),
            second: String::new(),
        }
    }

    /// The same offer with a second line.
    #[must_use]
    pub fn with(mut self, second: impl Into<String>) -> Self {
        self.second = second.into();
        self
    }
}

/// One of several, as radio keys of 64 px. Nothing is preset unless the screen presets it.
#[component]
pub fn Choice<T>(
    /// What is asked.
    #[prop(into)]
    legend: Signal<String>,
    /// The offers, in order.
    offers: Vec<Offer<T>>,
    /// What is chosen.
    #[prop(into)]
    chosen: Signal<Option<T>>,
    /// A key was chosen.
    #[prop(into)]
    on_choose: Callback<T>,
    /// A line under the question.
    #[prop(optional, into)]
    hint: MaybeProp<String>,
) -> impl IntoView
where
    T: Clone + PartialEq + Send + Sync + 'static,
{
    let keys = offers.into_iter().map(
        |Offer {
             value,
             word,
             second,
         }| {
            let choose = value.clone();
            KeyFace {
                word,
                second,
                on: Signal::derive(move || chosen.with(|chosen| chosen.as_ref() == Some(&value))),
                flip: Callback::new(move |_| on_choose.run(choose.clone())),
            }
        },
    );
    keys_view("radio", legend, hint, keys.collect())
}

/// Several of several, as keys of 64 px that each stand on or off.
#[component]
pub fn Several<T>(
    /// What is asked.
    #[prop(into)]
    legend: Signal<String>,
    /// The offers, in order.
    offers: Vec<Offer<T>>,
    /// What is chosen.
    #[prop(into)]
    chosen: Signal<Vec<T>>,
    /// A key was put on or off.
    #[prop(into)]
    on_choose: Callback<(T, bool)>,
    /// A line under the question.
    #[prop(optional, into)]
    hint: MaybeProp<String>,
) -> impl IntoView
where
    T: Clone + PartialEq + Send + Sync + 'static,
{
    let keys = offers.into_iter().map(
        |Offer {
             value,
             word,
             second,
         }| {
            let choose = value.clone();
            KeyFace {
                word,
                second,
                on: Signal::derive(move || chosen.with(|chosen| chosen.contains(&value))),
                flip: Callback::new(move |on| on_choose.run((choose.clone(), on))),
            }
        },
    );
    keys_view("checkbox", legend, hint, keys.collect())
}

/// A key without its type, so that the view is made once for every type.
struct KeyFace {
    word: String,
    second: String,
    on: Signal<bool>,
    flip: Callback<bool>,
}

fn keys_view(
    kind: &'static str,
    legend: Signal<String>,
    hint: MaybeProp<String>,
    keys: Vec<KeyFace>,
) -> AnyView {
    let group = ids::fresh("choice");
    let hint_id = ids::fresh("choice-hint");
    let keys = keys.into_iter().map(|KeyFace { word, second, on, flip }| {
        let second = (!second.is_empty()).then(|| view! { " "<span>{second}</span> });
        view! {
            <label class="option">
                <input
                    type=kind
                    name=group.clone()
                    prop:checked=on
                    on:change:target=move |event| flip.run(event.target().checked())
                />
                <span class="option-face"><span class="option-word">{word}</span>{second}</span>
            </label>
        }
    }).collect_view();
    let hint_line = hint_id.clone();
    view! {
        <fieldset class="choice" aria-describedby=move || hint.with(Option::is_some).then(|| hint_id.clone())>
            <legend>{legend}</legend>
            {move || hint.get().map(|text| view! { <p class="hint" id=hint_line.clone()>{text}</p> })}
            <div class="keys">{keys}</div>
        </fieldset>
    }
    .into_any()
}
