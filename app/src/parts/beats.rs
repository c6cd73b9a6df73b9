//! Sessions of work as cords: strokes in the beats of each gait.

use leptos::prelude::*;

/// A stretch of a session: where it begins and ends, and the strokes of its gait as the data of a path.
#[derive(Debug, Clone, PartialEq)]
pub struct Beats {
    /// Where it begins.
    pub from: f64,
    /// Where it ends.
    pub to: f64,
    /// The strokes.
    pub path: String,
}

/// A session under its words.
#[derive(Debug, Clone, PartialEq)]
pub struct BeatRow {
    /// What it is, with its minutes.
    pub words: String,
    /// Its stretches.
    pub beats: Vec<Beats>,
}

/// Sessions one under another, at one scale: what was done lies under what was asked. A knot stands between two gaits.
#[component]
pub fn BeatCords(
    /// The width of the drawing that the stretches are reckoned in.
    wide: f64,
    /// The sessions.
    #[prop(into)]
    rows: Signal<Vec<BeatRow>>,
) -> impl IntoView {
    let drawn = move || {
        rows.get()
            .into_iter()
            .map(|row| {
                let end = row.beats.last().map_or(0.0, |beats| beats.to);
                let inside = row
                    .beats
                    .into_iter()
                    .map(|beats| {
                        let knot = format!("M{:.1} 2V26", beats.from.max(1.5));
                        view! {
                            <path class="stroke-ink" d=beats.path stroke-width="2" />
                            <path class="stroke-line" d=knot stroke-width="1.5" />
                        }
                    })
                    .collect_view();
                view! {
                    <p class="beat-words" aria-hidden="true">{row.words}</p>
                    <svg viewBox=format!("0 0 {wide} 28") aria-hidden="true">
                        <path class="stroke-line" d=format!("M0 24H{end:.1}") stroke-width="4" />
                        {inside}
                    </svg>
                }
            })
            .collect_view()
    };
    view! { <div class="beats">{drawn}</div> }
}
