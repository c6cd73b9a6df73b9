//! The rows of a balance: a nutrient with its word and its figures, and the cord between its need and its ceiling.

use leptos::prelude::*;
use tussock_flow::views::balance::Cord;
use tussock_flow::views::balance::cord::{CEILING, NEED};

use super::{State, StateShape};

/// Where the cord lies in its drawing, in CSS pixels from the top. Along, everything is in percent of the column.
const CORD: f64 = 12.0;

/// A row of a balance, worded.
#[derive(Debug, Clone, PartialEq)]
pub struct BalanceLine {
    /// Its state.
    pub state: State,
    /// What it is.
    pub name: String,
    /// How it stands, the word of its state among it.
    pub said: String,
    /// What the ration has.
    pub has: String,
    /// The need.
    pub need: String,
    /// The ceiling, or that none is published.
    pub ceiling: String,
    /// The cord; `None` where words stand instead.
    pub cord: Option<Cord>,
    /// The cord as one sentence, or why there is none.
    pub cord_said: String,
}

/// Rows of a balance. Their knots are level, so that trouble lines up down the page; where there is room each is one line.
#[component]
pub fn BalanceRows(
    /// What the list is, for screen readers.
    #[prop(into)]
    name: Signal<String>,
    /// The heads of a line: a day, stands, has, need, ceiling.
    heads: [&'static str; 5],
    /// The rows.
    lines: Vec<BalanceLine>,
) -> impl IntoView {
    let [day, stands, has, need, ceiling] = heads;
    let rows = lines
        .into_iter()
        .map(|line| view! { <BalanceRow line /> })
        .collect_view();
    view! {
        <div class="balance">
            <div class="balance-row balance-heads" aria-hidden="true">
                <span class="balance-name">{day}</span>
                <span class="balance-said">{stands}</span>
                <span class="balance-has">{has}</span>
                <span class="balance-need">{need}</span>
                <span class="balance-ceiling">{ceiling}</span>
                <p class="balance-marks"><span>{need}</span><span>{ceiling}</span></p>
            </div>
            <ul aria-label=name>{rows}</ul>
        </div>
    }
}

#[component]
fn BalanceRow(line: BalanceLine) -> impl IntoView {
    let BalanceLine {
        state,
        name,
        said,
        has,
        need,
        ceiling,
        cord,
        cord_said,
    } = line;
    let drawn = match cord {
        Some(cord) => {
            let marks = [need.clone(), ceiling.clone()];
            view! { <BalanceCord name=cord_said cord marks /> }.into_any()
        }
        None => view! { <p class="balance-words soft small">{cord_said}</p> }.into_any(),
    };
    view! {
        <li class="balance-row">
            <StateShape state />
            <span class="balance-what">
                <span class="balance-name">{name}</span>
                " "
                <span class="balance-said">{said}</span>
            </span>
            " "
            <span class="balance-has">{has}</span>
            <span class="balance-need" aria-hidden="true">{need}</span>
            <span class="balance-ceiling" aria-hidden="true">{ceiling}</span>
            {drawn}
        </li>
    }
}

/// The cord of one row: solid ink to the tag, dotted where something is not known, one stroke at the need, two at the
/// ceiling, a frayed end where no ceiling is published. What it was before hangs as an outline.
#[component]
pub fn BalanceCord(
    /// The sentence that is its name.
    name: String,
    /// Where things hang.
    cord: Cord,
    /// What stands under the knots: the need, the ceiling.
    marks: [String; 2],
) -> impl IntoView {
    let end = percent(cord.end());
    let reached = percent(cord.at.unwrap_or_default());
    let rest = if cord.dotted {
        view! { <line class="stroke-ink dotted" x1=reached.clone() x2=end y1=CORD y2=CORD stroke-width="4" /> }.into_any()
    } else {
        view! { <line class="stroke-line" x1=reached.clone() x2=end y1=CORD y2=CORD stroke-width="4" stroke-dasharray="5 2" /> }
            .into_any()
    };
    let solid = cord.at.map(|_| {
        view! { <line class="stroke-ink" x1="0" x2=reached.clone() y1=CORD y2=CORD stroke-width="4" /> }
    });
    let band = cord.band.map(|[least, most]| {
        let wide = percent((most - least).max(1.0));
        view! { <rect class="fill-strand" x=percent(least) width=wide y=CORD - 9.0 height="18" /> }
    });
    let need = cord.need.then(|| stroke(NEED, 0.0));
    let ceiling = if cord.ceiling {
        view! { {stroke(CEILING, -3.0)} {stroke(CEILING, 3.0)} }.into_any()
    } else {
        let fray = format!("M0 {CORD}l9-6M0 {CORD}l10 0M0 {CORD}l9 6");
        view! { <svg x=percent(CEILING)><path class="stroke-line" d=fray stroke-width="1.5" /></svg> }
            .into_any()
    };
    let was = cord.was.map(|at| {
        view! {
            <svg x=percent(at)>
                <path class="fill-ground stroke-ink" d=outline() stroke-width="2" stroke-dasharray="3 2" />
            </svg>
        }
    });
    let tag = cord.at.map(|at| {
        let eyelet = CORD + 10.0;
        let d = format!(
            "{}M0 {}a3 3 0 1 0 0 6a3 3 0 1 0 0-6Z",
            outline(),
            eyelet - 3.0
        );
        view! { <svg x=percent(at)><path class="fill-ink" fill-rule="evenodd" d=d /></svg> }
    });
    let [under_need, under_ceiling] = marks;
    let none = (!cord.ceiling).then_some("balance-none");
    view! {
        <div class="balance-cord" role="img" aria-label=name>
            <svg aria-hidden="true">{band}{rest}{solid}{need}{ceiling}{was}{tag}</svg>
            <p class="balance-marks" aria-hidden="true">
                <span>{cord.need.then_some(under_need)}</span>
                <span class=none>{under_ceiling}</span>
            </p>
        </div>
    }
}

/// A place along the cord.
fn percent(at: f64) -> String {
    format!("{at:.2}%")
}

/// A stroke across the cord, so many pixels beside a place.
fn stroke(at: f64, beside: f64) -> AnyView {
    let d = format!("M{beside} {}V{}", CORD - 11.0, CORD + 11.0);
    view! { <svg x=percent(at)><path class="stroke-ink" d=d stroke-width="3" /></svg> }.into_any()
}

/// A small tag, 18 by 23, that hangs with its point at the cord.
fn outline() -> String {
    format!("M0 {}l9 9v14h-18v-14Z", CORD + 1.0)
}
