//! The change slip: what goes out, comes in, gets more or less, and over a double rule what a day costs.

use leptos::prelude::*;

/// A line of the slip, worded.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SlipRow {
    /// What is done: "out", "in", "more", "less", "same".
    pub change: String,
    /// With what.
    pub what: String,
    /// How much, or from how much to how much.
    pub amount: String,
    /// What that changes of the cost.
    pub cost: String,
}

/// The slip. It is a table of text without colour; the double rule stands before the sums.
#[component]
pub fn ChangeSlip(
    /// What it is; it stands as its caption.
    #[prop(into)]
    name: String,
    /// Its lines.
    rows: Vec<SlipRow>,
    /// The sums, each a word and its figures; empty when the cost is not known.
    sums: Vec<[String; 2]>,
    /// One sentence under it: what decided it, or why there is no sum.
    #[prop(optional, into)]
    note: Option<String>,
) -> impl IntoView {
    let lines = rows
        .into_iter()
        .map(|row| {
            view! {
                <tr>
                    <th scope="row" class="slip-change">{row.change}</th>
                    <td class="slip-what">{row.what}" "<span class="slip-amount">{row.amount}</span></td>
                    <td class="slip-cost">{row.cost}</td>
                </tr>
            }
        })
        .collect_view();
    let sums = (!sums.is_empty()).then(|| {
        let rows = sums
            .into_iter()
            .map(|[word, figures]| {
                view! {
                    <tr>
                        <th scope="row" colspan="2">{word}</th>
                        <td class="slip-cost">{figures}</td>
                    </tr>
                }
            })
            .collect_view();
        view! { <tfoot>{rows}</tfoot> }
    });
    view! {
        <div class="slip-sheet">
            <table class="slip-table">
                <caption>{name}</caption>
                <tbody>{lines}</tbody>
                {sums}
            </table>
            {note.map(|note| view! { <p class="soft small">{note}</p> })}
        </div>
    }
}
