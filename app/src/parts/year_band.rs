//! The year of grass as a band: its parts along twelve months, and now.

use leptos::prelude::*;

/// A part of the year: where it begins and how long it is, in percent, and whether it is the flush.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct YearStretch {
    /// Its beginning.
    pub from: f64,
    /// Its length.
    pub long: f64,
    /// Whether it is drawn in blades: the flush.
    pub blades: bool,
}

/// The drawing, without its table.
#[component]
pub fn YearBand(
    /// The parts.
    parts: Vec<YearStretch>,
    /// Where today lies.
    now: f64,
    /// The first letters of the months.
    months: [&'static str; 12],
) -> impl IntoView {
    let percent = |at: f64| format!("{at:.2}%");
    let drawn = parts
        .into_iter()
        .map(|part| {
            let mut blades = Vec::new();
            let mut at = part.from + 1.0;
            while part.blades && at < part.from + part.long {
                blades.push(view! {
                    <svg x=percent(at)><path class="stroke-ink" d="M0 34v-14" stroke-width="2" /></svg>
                });
                at += 1.2;
            }
            view! {
                <rect class="fill-ground stroke-line" x=percent(part.from) width=percent(part.long) y="8" height="28" stroke-width="2" />
                {blades}
            }
        })
        .collect_view();
    let letters = months
        .into_iter()
        .map(|month| view! { <span>{month}</span> })
        .collect_view();
    view! {
        <svg class="year-band" aria-hidden="true">
            {drawn}
            <svg x=percent(now)><path class="stroke-twine" d="M0 2V42" stroke-width="4" /></svg>
        </svg>
        <p class="year-months" aria-hidden="true">{letters}</p>
    }
}
