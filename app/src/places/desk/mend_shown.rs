//! What a mend comes to: the change slip, what decides it, and what is missed when nothing fits.

use super::ration::told;
use crate::parts::{ChangeSlip, Row, Rows, SlipRow};
use leptos::prelude::*;
use tussock_core::ration::mend::Closest;
use tussock_flow::views::mend::{MendView, Proposal};
use tussock_flow::views::slip::Slip;
use tussock_flow::words::{BalanceWords, English, MendReasonWords, MendWords, SlipWords};

/// A change slip, worded.
pub(super) fn slip_view(slip: &Slip) -> AnyView {
    let words = English::default();
    let rows: Vec<SlipRow> = slip
        .lines
        .iter()
        .map(|line| SlipRow {
            change: words.change(line.change).to_owned(),
            what: words.slip_of(&line.of),
            amount: words.slip_amount(line),
            cost: words.slip_cost(line),
        })
        .collect();
    let [day, month] = match slip.a_day {
        Some(_) => words.slip_sum_of(),
        None => words.slip_sum_of_bought(),
    };
    let sums: Vec<[String; 2]> = slip
        .a_day
        .or(slip.bought_a_day)
        .map(|sum| {
            vec![
                [day.to_owned(), words.slip_sum(sum)],
                [month.to_owned(), words.slip_sum(sum.in_a_month())],
            ]
        })
        .unwrap_or_default();
    let note = words.slip_note(slip).unwrap_or_default();
    view! { <ChangeSlip name=words.slip_name() rows=rows sums=sums note=note /> }.into_any()
}

pub(super) fn decides(view: &MendView, proposal: &Proposal) -> AnyView {
    let words = English::default();
    let pays = proposal
        .mended
        .pays
        .iter()
        .filter_map(|pays| words.would_pay(view, pays.food, pays.under));
    let rows: Vec<[String; 2]> = proposal
        .mended
        .decides
        .iter()
        .map(|decides| words.decides(view, decides))
        .chain(pays)
        .collect();
    if rows.is_empty() {
        return view! { <p>{words.nothing_decides()}</p> }.into_any();
    }
    let rows = rows
        .into_iter()
        .map(|[name, second]| view! { <Row name=name second=second /> })
        .collect_view();
    view! { <Rows name=words.why_so()>{rows}</Rows> }.into_any()
}

pub(super) fn nothing_fits(view: &MendView, closest: &Closest) -> AnyView {
    let words = English::default();
    let missed = closest
        .missed
        .iter()
        .map(|missed| {
            let [name, by] = words.missed(missed);
            view! { <Row name=name value=by /> }
        })
        .collect_view();
    let mends: Vec<AnyView> = closest
        .mends
        .iter()
        .map(|by| view! { <Row name=words.mended_by(view, by) /> }.into_any())
        .collect();
    let mends = if mends.is_empty() {
        view! { <p>{words.nothing_alone_mends(closest)}</p> }.into_any()
    } else {
        view! {
            <h2>{words.would_mend()}</h2>
            <Rows name=words.would_mend()>{mends}</Rows>
        }
        .into_any()
    };
    view! {
        <h2>{words.what_is_missed()}</h2>
        <Rows name=words.what_is_missed()>{missed}</Rows>
        {mends}
        {told(words.balance_is_no_diagnosis())}
    }
    .into_any()
}

/// What trials showed of what nobody needs.
pub(super) fn options() -> AnyView {
    let words = English::default();
    let said = words
        .options_and_trials()
        .map(|said| {
            view! {
                <p><strong>{said.sentence} "."</strong></p>
                <p>{said.why}</p>
            }
        })
        .into_iter()
        .collect_view();
    view! {
        <details class="numbers">
            <summary>{words.options_head()}</summary>
            {said}
        </details>
    }
    .into_any()
}
