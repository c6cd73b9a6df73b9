//! The day in the paddock: the cord from 04 to 22, its open stretch in blades, and the sugar of an average day beside it.

use leptos::prelude::*;
use tussock_flow::views::paddock::picture::DayCord as Drawn;

/// Where the cord lies, in CSS pixels from the left; down, everything is in percent of its length.
const CORD: f64 = 84.0;
/// How wide an open stretch is.
const WIDE: f64 = 20.0;
/// Where the line of the sugar begins, and how far it bows out.
const SUGAR: (f64, f64) = (112.0, 22.0);
/// Blades stand so far apart, in percent of the cord.
const BLADES: f64 = 1.4;

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
        let (left, right) = (CORD - 11.0, CORD + 11.0);
        view! {
            <svg y=percent(at)>
                <path class="stroke-ink" d=format!("M{left} {beside}H{right}") stroke-width="3" />
            </svg>
        }
    };
    let open = cord
        .open
        .iter()
        .map(|(from, long)| {
            let (left, right) = (CORD - WIDE / 2.0, CORD + WIDE / 2.0);
            let edge = view! {
                <rect class="fill-ground stroke-ink" x=left width=WIDE y=percent(*from) height=percent(*long) stroke-width="2" />
            };
            let mut blades = Vec::new();
            let mut at = from + BLADES;
            while at < from + long {
                let d = format!("M{} 0v-7M{CORD} 0v-9M{} 0v-7", left + 5.0, right - 5.0);
                blades.push(view! {
                    <svg y=percent(at)><path class="stroke-ink" d=d stroke-width="2" /></svg>
                });
                at += BLADES * 1.5;
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
