//! Grass today.

use crate::parts::{Frame, FrameKind, Sentence};
use crate::places::Places;
use leptos::prelude::*;
use tussock_core::animal::AnimalId;
use tussock_flow::routes::Place;
use tussock_flow::words::{English, HorsesWords, PaddockWords};

/// Grass today.
#[component]
pub fn Paddock(
    /// For whom; the first that may go out when nobody is named.
    of: Option<AnimalId>,
) -> impl IntoView {
    let words = English::default();
    let _ = of;
    view! {
        <Frame kind=FrameKind::Place what=words.paddock() places=move || view! { <Places here=Place::Paddock /> }>
            <Sentence said=words.opening() />
        </Frame>
    }
}
