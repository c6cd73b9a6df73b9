//! The picture of a weight: the trend as a cord with its strand, readings as strokes, the target as a hatched band.

use leptos::prelude::*;
use tussock_flow::views::weight::chart::{Chart, HIGH, WIDE};

/// The picture. The words beside it and its table say the same.
#[component]
pub fn WeightChart(
    /// What it is, for screen readers.
    name: String,
    /// What is drawn.
    chart: Chart,
    /// The weight at the upper edge.
    most: String,
    /// The weight at the lower edge.
    least: String,
    /// The first and the last day, and today between them.
    days: [String; 3],
) -> impl IntoView {
    let band = chart.band.map(|band| {
        view! {
            <rect class="fill-straw stroke-straw" x="8" y=band.top width=WIDE - 16.0 height=band.high stroke-width="1.5" />
            <path class="stroke-straw" d=band.hatch stroke-width="1.5" />
        }
    });
    let ahead = chart.ahead.map(|edges| {
        edges
            .into_iter()
            .map(|d| view! { <path class="stroke-ink dotted" d=d stroke-width="2" /> })
            .collect_view()
    });
    let strokes = chart
        .strokes
        .into_iter()
        .map(|stroke| {
            let d = format!("M{:.1} {:.1}V{:.1}", stroke.x, stroke.top, stroke.foot);
            let wide = if stroke.scale { "7" } else { "3" };
            let class = if stroke.odd {
                "stroke-ink dotted"
            } else {
                "stroke-line"
            };
            view! { <path class=class d=d stroke-width=wide /> }
        })
        .collect_view();
    let knots = chart
        .knots
        .into_iter()
        .map(|x| view! { <path class="stroke-ink" d=format!("M{x:.1} {}V{}", HIGH - 14.0, HIGH) stroke-width="3" /> })
        .collect_view();
    let now = format!("M{:.1} 0V{HIGH}", chart.now);
    let [from, today, to] = days;
    view! {
        <div class="picture" role="img" aria-label=name>
            <p class="net-scale-marks" aria-hidden="true"><span>{most}</span></p>
            <svg viewBox=format!("0 0 {WIDE} {HIGH}") aria-hidden="true">
                {band}
                <path class="fill-strand" d=chart.strand />
                <path class="stroke-twine" d=now stroke-width="1.5" />
                {strokes}
                {ahead}
                <path class="stroke-ink" d=chart.cord stroke-width="4" stroke-linejoin="round" />
                {knots}
            </svg>
            <p class="net-scale-marks" aria-hidden="true"><span>{least}</span></p>
            <p class="net-scale-marks" aria-hidden="true"><span>{from}</span><span>{today}</span><span>{to}</span></p>
        </div>
    }
}
