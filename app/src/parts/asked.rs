//! A question asked back before something is kept.

use leptos::prelude::*;

use super::{ActKey, Caution};

/// An answer to a question asked back: the words on its key, and what it does.
pub type AskedKey = (String, Callback<()>);

/// A question asked back: a caution with its reason, and its answers as keys side by side.
#[component]
pub fn AskedBack(
    /// What is asked.
    #[prop(into)]
    said: String,
    /// The word that opens the reason.
    #[prop(into)]
    why_word: Signal<String>,
    /// The reason; empty for none.
    #[prop(into)]
    why: String,
    /// The answers.
    keys: Vec<AskedKey>,
) -> impl IntoView {
    let caution = if why.is_empty() {
        view! { <Caution said=said.clone() /> }.into_any()
    } else {
        view! { <Caution said=said.clone() why=why_word><p>{why}</p></Caution> }.into_any()
    };
    let keys = keys
        .into_iter()
        .map(|(says, act)| view! { <ActKey says act /> })
        .collect_view();
    view! {
        <div class="asked" role="group" aria-label=said>
            {caution}
            <div class="asked-keys">{keys}</div>
        </div>
    }
}
