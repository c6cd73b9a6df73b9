//! The short cord of the scale, zoomed in on the target of a net.

use leptos::prelude::*;

/// The width of the drawing.
const WIDE: f64 = 320.0;
/// Half of the cord, from the target to its end.
const HALF: f64 = 148.0;
/// Where the cord lies.
const CORD: f64 = 20.0;

/// The scale: a knot at the target, hatched where a reading is within, a small tag at the reading. The words beside it
/// say the same; without a reading no tag hangs.
#[component]
pub fn NetScale(
    /// The sentence that is its name.
    #[prop(into)]
    sentence: Signal<String>,
    /// Where the reading hangs: -1 at the light end, 0 at the target, 1 at the heavy end.
    #[prop(into)]
    at: Signal<Option<f64>>,
    /// Half the width of what is within, as a part of one side.
    tolerance: f64,
    /// The readings at the light end, the target and the heavy end.
    #[prop(into)]
    marks: Signal<[String; 3]>,
) -> impl IntoView {
    let middle = WIDE / 2.0;
    let reach = tolerance * HALF;
    let hatch = [-0.75, -0.25, 0.25, 0.75]
        .into_iter()
        .map(|part| {
            let x = middle + part * reach;
            let path = format!("M{} {}L{} {}", x - 4.0, CORD + 8.0, x + 4.0, CORD - 8.0);
            view! { <path class="stroke-straw" d=path stroke-width="1.5" /> }
        })
        .collect_view();
    let tag = move || {
        at.get().map(|at| {
            let move_to = format!("translate({} {CORD})", middle + at * HALF);
            view! {
                <g transform=move_to>
                    <path class="fill-ink" fill-rule="evenodd" d="M0 2 9 11V25H-9V11ZM0 9A3 3 0 1 0 0 15A3 3 0 1 0 0 9Z" />
                </g>
            }
        })
    };
    view! {
        <div class="picture net-scale" role="img" aria-label=sentence>
            <svg viewBox="0 0 320 48" aria-hidden="true">
                <path class="stroke-line" d=format!("M{} {CORD}H{}", middle - HALF, middle + HALF) stroke-width="4" />
                <rect
                    class="fill-straw stroke-straw"
                    x=middle - reach
                    y=CORD - 8.0
                    width=reach * 2.0
                    height="16"
                    stroke-width="1.5"
                />
                {hatch}
                <path class="stroke-ink" d=format!("M{middle} {}V{}", CORD - 11.0, CORD + 11.0) stroke-width="3" />
                {tag}
            </svg>
            <p class="net-scale-marks" aria-hidden="true">
                {move || marks.get().into_iter().map(|mark| view! { <span>{mark}</span> }).collect_view()}
            </p>
        </div>
    }
}
