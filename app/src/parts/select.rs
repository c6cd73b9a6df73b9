//! One of many, where keys would fill the screen: the browser's own list.

use leptos::prelude::*;

use super::{State, StateShape, ids};

/// A list that opens, 64 px; what is offered is a key and its word each.
#[component]
pub fn Select(
    /// Its label.
    #[prop(into)]
    label: Signal<String>,
    /// What stands there while nothing is chosen.
    #[prop(into)]
    nothing: String,
    /// The offers, in order: key and word.
    offers: Vec<(String, String)>,
    /// The key that is chosen; empty for none.
    #[prop(into)]
    chosen: Signal<String>,
    /// A key was chosen; empty for none.
    #[prop(into)]
    on_choose: Callback<String>,
    /// What is wrong.
    #[prop(optional, into)]
    error: MaybeProp<String>,
) -> impl IntoView {
    let id = ids::fresh("select");
    let error_id = format!("{id}-error");
    let wrong = Memo::new(move |_| error.with(Option::is_some));
    let described = {
        let error_id = error_id.clone();
        move || wrong.get().then(|| error_id.clone())
    };
    let offers = std::iter::once((String::new(), nothing))
        .chain(offers)
        .map(|(key, word)| {
            let own = key.clone();
            let on = move || chosen.with(|chosen| *chosen == own);
            view! { <option value=key prop:selected=on>{word}</option> }
        })
        .collect_view();
    view! {
        <div class="field">
            <label class="field-label" for=id.clone()>{label}</label>
            <div class="entry" data-invalid=move || wrong.get().then_some("")>
                <select
                    id=id
                    aria-describedby=described
                    aria-invalid=move || wrong.get().then_some("true")
                    on:change:target=move |event| on_choose.run(event.target().value())
                >
                    {offers}
                </select>
            </div>
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
