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
    /// Now in words, at the right.
    pub said: String,
}

/// The width of a cord with its margins, and where 1 and 9 lie on it.
const CORD: f64 = 200.0;
const CORD_FROM: f64 = 12.0;
const CORD_TO: f64 = 188.0;

/// The scale of a cord.
const FIRST: f64 = 1.0;
const LAST: f64 = 9.0;

/// Where a score lies along a cord.
fn along(score: f64) -> f64 {
    CORD_FROM + (CORD_TO - CORD_FROM) * (score - FIRST) / (LAST - FIRST)
}

/// Six small cords from 1 to 9 one under another: the tag is now, the stroke last time.
#[component]
pub fn SiteCords(
    /// The sites in walking order.
    #[prop(into)]
    sites: Signal<Vec<SiteCord>>,
) -> impl IntoView {
    let drawn = move || {
        sites.get().into_iter().map(|site| {
            let tag = site.now.map(|score| {
                let x = along(score);
                // A small tag, pointed at the top, its eyelet punched out.
                let d = format!("M{x} 8l9 7v16h-18v-16z");
                view! {
                    <path d=d class="fill-ink" />
                    <circle cx=x cy="18" r="2.5" class="fill-ground" />
                }
            });
            let stroke = site.last.map(|score| {
                let x = along(score);
                view! { <path d=format!("M{x} 0V22") class="stroke-ink" stroke-width="3" /> }
            });
            view! {
                <div class="site-cord">
                    <span>{site.name}</span>
                    <svg viewBox=format!("0 0 {CORD} 34")>
                        <path d=format!("M{CORD_FROM} 8H{CORD_TO}") class="stroke-line" stroke-width="4" />
                        {stroke}
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
        assert!((along(FIRST) - CORD_FROM).abs() < 1e-9);
        assert!((along(LAST) - CORD_TO).abs() < 1e-9);
        assert!(along(5.0) < along(5.5));
    }
}
