//! "Saved. Undo", over the action.

use leptos::prelude::*;

use super::press::once;

/// The line that says a save is on the disk and takes it back. It stands in the foot over the action and covers nothing;
/// the screen takes `said` away after 10 s.
#[component]
pub fn Undo(
    /// What is said, for example "Saved."; nothing while there is nothing to take back.
    #[prop(into)]
    said: Signal<Option<String>>,
    /// The word for taking it back.
    #[prop(into)]
    undo: Signal<String>,
    /// Takes it back.
    #[prop(into)]
    on_undo: Callback<()>,
) -> impl IntoView {
    let button = move || {
        said.with(Option::is_some).then(|| {
            view! { <button class="quiet" type="button" on:click=once(on_undo)>{undo}</button> }
        })
    };
    view! {
        <div class="undo">
            <p role="status">{move || said.get()}</p>
            {button}
        </div>
    }
}
