//! The drawings of the measuring guide.

use leptos::prelude::*;
use tussock_flow::views::guide::{ABOVE, Drawn, Ink, Line, SIDE, WIDTH};

/// How a line is drawn: its ink, its width, and its dashes where it lies behind the animal.
const fn pen(ink: Ink) -> (&'static str, &'static str, Option<&'static str>) {
    match ink {
        Ink::Animal => ("stroke-ink", "2.5", None),
        Ink::Far => ("stroke-line", "2", None),
        Ink::Tape => ("stroke-twine", "5", None),
        Ink::TapeBehind => ("stroke-twine", "3", Some("3 6")),
        Ink::End => ("stroke-twine", "4", None),
        Ink::Square => ("stroke-line", "4", None),
    }
}

fn drawn(lines: &[Line], height: f64) -> impl IntoView + use<> {
    let lines = lines
        .iter()
        .map(|line| {
            let (class, width, dashes) = pen(line.ink);
            view! {
                <path
                    d=line.path()
                    class=class
                    stroke-width=width
                    stroke-dasharray=dashes
                    stroke-linejoin="round"
                    stroke-linecap="round"
                />
            }
        })
        .collect_view();
    view! { <svg viewBox=format!("0 0 {WIDTH} {height}") aria-hidden="true">{lines}</svg> }
}

/// A measure on an animal: from the side, and from above where a length needs it.
#[component]
pub fn TapeDrawing(
    /// What it shows, for who does not see it.
    #[prop(into)]
    name: Signal<String>,
    /// The drawing.
    of: Drawn,
) -> impl IntoView {
    let above = (!of.above.is_empty()).then(|| drawn(&of.above, ABOVE));
    view! {
        <div class="picture guide" role="img" aria-label=name>
            {drawn(&of.side, SIDE)}
            {above}
        </div>
    }
}
