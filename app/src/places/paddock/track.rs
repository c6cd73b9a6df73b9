//! A track around the field instead of a strip: how long it is, and where hay and water lie.

use super::field::told;
use super::strip::Fencing;
use crate::parts::{Caution, Row, Rows};
use leptos::prelude::*;
use tussock_flow::forms::strip::{Field as Which, Typed};
use tussock_flow::words::{English, StripWords, SwardWords};

/// The fields of a track, and the track they make.
pub(super) fn section(fencing: Fencing) -> AnyView {
    let words = English::default();
    let fields = [
        Which::TrackLength,
        Which::TrackSide,
        Which::TrackWidth,
        Which::Animals,
    ]
    .into_iter()
    .map(|which| fencing.field(which))
    .collect_view();
    let track = move || match fencing.typed.with(Typed::track)? {
        Err(error) => Some(view! { <Caution said=words.graze_error(&error) /> }.into_any()),
        Ok(track) => {
            let rows = words
                .track_rows(&track)
                .into_iter()
                .map(|[what, how]| view! { <Row name=what value=how /> })
                .collect_view();
            let findings = track
                .findings
                .iter()
                .map(|finding| told(words.track_finding(finding)))
                .collect_view();
            Some(view! { <Rows name=words.track_head()>{rows}</Rows> {findings} }.into_any())
        }
    };
    view! {
        <details class="numbers">
            <summary>{words.track_head()}</summary>
            <p>{words.track_is()}</p>
            {fields}
            <div role="status">{track}</div>
        </details>
    }
    .into_any()
}
