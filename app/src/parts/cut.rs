//! The cut drawings of the walk-round, and the small cords of its summary.

use leptos::prelude::*;
use tussock_flow::views::cut::{Bone, Cut, HEIGHT, WIDTH, path};

/// A site as if sliced there: bone in line grey, the surface the hand feels in ink.
#[component]
pub fn CutDrawing(
    /// What it is, for screen readers.
    #[prop(into)]
    name: Signal<String>,
    /// The drawing.
    #[prop(into)]
    cut: Signal<Cut>,
) -> impl IntoView {
    let drawn = move || {
        let Cut { bones, surface } = cut.get();
        let bones = bones.into_iter().map(|bone| match bone {
            Bone::Round { at, radius } => {
                view! { <circle cx=at.0 cy=at.1 r=radius class="stroke-line" stroke-width="3" /> }.into_any()
            }
            Bone::Edge(points) => {
                let corners: Vec<String> = points.iter().map(|(x, y)| format!("{x} {y}")).collect();
                let d = format!("M{}", corners.join("L"));
                view! { <path d=d class="stroke-line" stroke-width="4" stroke-linejoin="round" /> }.into_any()
            }
        }).collect_view();
        let surface = surface.map(|points| {
            view! { <path d=path(&points) class="stroke-ink" stroke-width="4" stroke-linejoin="round" /> }
        });
        view! { {bones}{surface} }
    };
    view! {
        <div class="picture cut" role="img" aria-label=name>
            <svg viewBox=format!("0 0 {WIDTH} {HEIGHT}") aria-hidden="true">{drawn}</svg>
        </div>
    }
}

/// A site on its cord.
#[derive(Debug, Clone, PartialEq)]
pub struct SiteCord {
    /// The site.
    pub name: String,
    /// Its score now.
    pub now: Option<f64>,
    /// Its score last time.
    pub last: Option<f64>,
    /// What somebody else scored.
    pub other: Option<f64>,
    /// Now in words, at the right.
    pub said: String,
}

/// The width of a cord with its margins, and where the ends of the scale lie on it.
const CORD: f64 = 200.0;
const CORD_FROM: f64 = 12.0;
const CORD_TO: f64 = 188.0;

/// Where a score lies along a cord whose ends are the first and the last of its scale.
fn along((first, last): (f64, f64), score: f64) -> f64 {
    CORD_FROM + (CORD_TO - CORD_FROM) * (score - first) / (last - first)
}

/// A small cord a site, one under another: the tag is now, the outlined one somebody else's, the stroke last time.
#[component]
pub fn SiteCords(
    /// The sites in walking order.
    #[prop(into)]
    sites: Signal<Vec<SiteCord>>,
    /// The first and the last of the scale.
    ends: (f64, f64),
) -> impl IntoView {
    let drawn = move || {
        sites.get().into_iter().map(|site| {
            // Wider than the other, so that it is seen round one that hangs at the same place.
            let other = site.other.map(|score| {
                let x = along(ends, score);
                view! { <path d=format!("M{x} 5l12 9v19h-24v-19z") class="stroke-ink" stroke-width="2" /> }
            });
            let tag = site.now.map(|score| {
                let x = along(ends, score);
                // A small tag, pointed at the top, its eyelet punched out.
                let d = format!("M{x} 8l9 7v16h-18v-16z");
                view! {
                    <path d=d class="fill-ink" />
                    <circle cx=x cy="18" r="2.5" class="fill-ground" />
                }
            });
            let stroke = site.last.map(|score| {
                let x = along(ends, score);
                view! { <path d=format!("M{x} 0V22") class="stroke-ink" stroke-width="3" /> }
            });
            view! {
                <div class="site-cord">
                    <span>{site.name}</span>
                    <svg viewBox=format!("0 0 {CORD} 34")>
                        <path d=format!("M{CORD_FROM} 8H{CORD_TO}") class="stroke-line" stroke-width="4" />
                        {stroke}
                        {other}
                        {tag}
                    </svg>
                    <span class="site-said">{site.said}</span>
                </div>
            }
        }).collect_view()
    };
    view! { <div class="site-cords">{drawn}</div> }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_scale_fills_the_cord() {
        for ends in [(1.0, 9.0), (0.0, 5.0)] {
            assert!((along(ends, ends.0) - CORD_FROM).abs() < 1e-9);
            assert!((along(ends, ends.1) - CORD_TO).abs() < 1e-9);
            assert!(along(ends, 3.0) < along(ends, 3.5));
        }
    }
}
