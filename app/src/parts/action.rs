//! The one primary action of a screen, and the back key beside it in a flow.

use leptos::prelude::*;

use super::press::once;
use super::{Drawing, Icon, Press};

/// The primary action: a verb and its object. One a screen.
#[component]
pub fn Action(
    /// The words.
    #[prop(into)]
    says: Signal<String>,
    /// What it leads to.
    #[prop(into)]
    press: Press,
    /// While true it is at work and takes no press.
    #[prop(optional, into)]
    busy: Signal<bool>,
) -> impl IntoView {
    match press {
        Press::Route(href) => view! { <a class="action" href=href>{says}</a> }.into_any(),
        Press::Act(act) => {
            let pressed = once(act);
            view! {
                <button
                    class="action"
                    type="button"
                    aria-busy=move || busy.get().then_some("true")
                    aria-disabled=move || busy.get().then_some("true")
                    on:click=move |event| {
                        if !busy.get_untracked() {
                            pressed(event);
                        }
                    }
                >
                    {says}
                </button>
            }
            .into_any()
        }
    }
}

/// The way back out of a flow.
#[derive(Debug, Clone, Copy)]
pub struct Back {
    /// What a screen reader says for it.
    pub name: Signal<String>,
    /// Where it leads.
    pub press: Press,
}

/// The row the action stands in; in a flow with the back key beside it. The setting for the hand mirrors it.
#[component]
pub fn ActionRow(
    /// The back key, in a flow.
    #[prop(optional, into)]
    back: Option<Back>,
    /// The [`Action`].
    children: Children,
) -> impl IntoView {
    let back = back.map(|Back { name, press }| match press {
        Press::Route(href) => {
            view! { <a class="back" href=href aria-label=name><Icon of=Drawing::Back /></a> }.into_any()
        }
        Press::Act(act) => view! {
            <button class="back" type="button" aria-label=name on:click=once(act)><Icon of=Drawing::Back /></button>
        }
        .into_any(),
    });
    view! { <div class="act-row">{back}{children()}</div> }
}
