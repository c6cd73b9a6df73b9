//! The day in the paddock: the cord from 04 to 22, its open stretch in blades, and the sugar of an average day beside it.

use leptos::prelude::*;
use tussock_flow::views::paddock::picture::DayCord as Drawn;

/// Where the cord lies from the left: it makes room as the text grows. Down, everything is in percent of its length.
const CORD: &str = "3.9rem";
/// How wide an open stretch is, in CSS pixels.
const WIDE: f64 = 20.0;
/// Where the line of the sugar begins, and how far it bows out.
const SUGAR: (&str, &str) = ("5.1rem", "1.1rem");
/// Blades stand so far apart, in percent of the cord.
const BLADES: f64 = 2.0;

/// A label: how far down, the time, and the word.
#[derive(Debug, Clone, PartialEq)]
pub struct DayLabel {
    /// In percent of the cord.
    pub y: f64,
    /// The time; empty for a length of time.
    pub time: String,
    /// The word.
    pub word: String,
    /// Whether it is now.
    pub now: bool,
}

/// The drawing, without its table. Labels are HTML over it, so that they grow with the text.
#[component]
pub fn DayCord(
    /// What is drawn.
    cord: Drawn,
    /// The labels.
    labels: Vec<DayLabel>,
) -> impl IntoView {
    let percent = |at: f64| format!("{at:.2}%");
    let strokes = |at: f64, beside: f64| {
        view! {
            <svg x=CORD y=percent(at)>
                <path class="stroke-ink" d=format!("M-11 {beside}H11") stroke-width="3" />
            </svg>
        }
    };
    let open = cord
        .open
        .iter()
        .map(|(from, long)| {
            let half = WIDE / 2.0;
            let edge = view! {
                <svg x=CORD>
                    <rect class="fill-ground stroke-ink" x=-half width=WIDE y=percent(*from) height=percent(*long) stroke-width="2" />
                </svg>
            };
            let mut blades = Vec::new();
            let mut at = from + BLADES;
            while at < from + long {
                blades.push(view! {
                    <svg x=CORD y=percent(at)>
                        <path class="stroke-ink" d="M-5 -2v-6M0 -2v-8M5 -2v-6" stroke-width="2" />
                    </svg>
                });
                at += BLADES;
            }
            view! { {edge} {blades} }
        })
        .collect_view();
    let closes = cord
        .closes
        .iter()
        .map(|at| view! { {strokes(*at, -3.0)} {strokes(*at, 3.0)} })
        .collect_view();
    let sugar = cord.sugar.map(|d| {
        let (from, wide) = SUGAR;
        view! {
            <svg x=from width=wide height="100%" viewBox="0 0 100 100" preserveAspectRatio="none">
                <path class="stroke-line" d=d stroke-width="2" vector-effect="non-scaling-stroke" />
            </svg>
        }
    });
    let now = cord.now.map(|at| {
        view! {
            <line class="stroke-ink" x1=CORD x2=CORD y1="0" y2=percent(at) stroke-width="4" />
            <circle class="fill-twine" cx=CORD cy=percent(at) r="8" />
        }
    });
    let labels = labels
        .into_iter()
        .map(|label| {
            view! {
                <foreignObject x="0" y=percent(label.y) width="100%" height="1">
                    <p class="day-label" data-now=label.now.then_some("")>
                        <span>{label.time}</span>
                        <span>{label.word}</span>
                    </p>
                </foreignObject>
            }
        })
        .collect_view();
    view! {
        <svg class="day-cord" aria-hidden="true">
            <line class="stroke-line" x1=CORD x2=CORD y1="0" y2="100%" stroke-width="4" stroke-dasharray="5 2" />
            {sugar}
            {cord.sunrise.map(|at| strokes(at, 0.0))}
            {cord.sunset.map(|at| strokes(at, 0.0))}
            {open}
            {closes}
            {now}
            {labels}
        </svg>
    }
}
