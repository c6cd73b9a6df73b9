//! What stands over a whole screen: the banner of the example yard, and what holds of everything typed here.

use leptos::prelude::*;

use super::{Press, Quiet};

/// The banner that says these are not the person's own records. It never leaves while that is so.
#[component]
pub fn Banner(
    /// What it says, "Example yard".
    #[prop(into)]
    said: Signal<String>,
    /// The words of the way out.
    #[prop(into)]
    leave: Signal<String>,
    /// The way out.
    #[prop(into)]
    press: Press,
) -> impl IntoView {
    view! { <div class="banner"><p><strong>{said}</strong></p><Quiet says=leave press /></div> }
}

/// A lasting line over the screen. Nobody closes it; it goes when its cause goes.
#[component]
pub fn Notice(
    /// What it says.
    #[prop(into)]
    said: Signal<String>,
) -> impl IntoView {
    view! { <div class="banner"><p><strong>{said}</strong></p></div> }
}
