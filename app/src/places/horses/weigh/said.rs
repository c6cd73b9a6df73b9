//! What the figures say while they are typed, and what is asked back.

use super::sheet::Sheet;
use crate::parts::{AskedBack, AskedKey, Caution, Row, Rows};
use leptos::prelude::*;
use tussock_core::assess::Doubt;
use tussock_flow::forms::weight::{Filled, Seen};
use tussock_flow::words::{AssessWords, ConditionWords, English, MeasureWords, Said, UnitWords};

fn caution(words: English, said: Said) -> AnyView {
    match said.why {
        Some(why) => {
            view! { <Caution said=said.sentence why=words.why()><p>{why}</p></Caution> }.into_any()
        }
        None => view! { <Caution said=said.sentence /> }.into_any(),
    }
}

/// The weight so far, what changed, and what to know beside it.
#[component]
pub(super) fn WhatItSays(sheet: Sheet, seen: Memo<Option<Seen>>) -> impl IntoView {
    let words = sheet.words;
    let weight = move || {
        seen.with(|seen| {
            let (weight, _) = seen.as_ref()?.weight.as_ref()?;
            let either = (weight.high - weight.low) / 2.0;
            Some(words.about(&words.body(weight.value), &words.body(either)))
        })
    };
    let changes = move || {
        let changes = seen.with(|seen| {
            seen.as_ref()
                .map(|seen| seen.changes.clone())
                .unwrap_or_default()
        });
        let rows = changes
            .iter()
            .map(|change| {
                view! {
                    <Row
                        name=words.measure(change.measure)
                        value=words.changed(change)
                        strong=change.is_more_than_noise()
                        second=words.change_means(change)
                    />
                }
            })
            .collect_view();
        (!changes.is_empty()).then(|| view! { <Rows name=words.since_last_time()>{rows}</Rows> })
    };
    let beside = move || {
        let Some(seen) = seen.get() else {
            return Vec::new();
        };
        let kind = sheet
            .beside
            .with(|beside| beside.as_ref().map(|beside| beside.animal.kind));
        let fell = seen
            .doubts
            .confirmed
            .zip(kind)
            .map(|(jump, kind)| words.fell(&jump, kind));
        let neck = seen
            .neck
            .map(|(ratio, line)| words.neck_to_height(ratio, line));
        let findings = seen
            .weight
            .map(|(_, findings)| findings)
            .unwrap_or_default();
        let findings = findings.iter().map(|finding| words.assess_finding(finding));
        fell.into_iter()
            .chain(neck)
            .chain(findings)
            .map(|said| caution(words, said))
            .collect::<Vec<_>>()
    };
    view! {
        {move || weight().map(|said| view! { <p>{said}</p> })}
        {changes}
        {beside}
    }
}

/// What is asked back, each with its answers.
#[component]
pub(super) fn Asked(
    sheet: Sheet,
    open: Memo<Vec<Doubt>>,
    at: NodeRef<leptos::html::Div>,
) -> impl IntoView {
    let words = sheet.words;
    let one = move |doubt: Doubt| {
        let Said { sentence, why } = words.doubt(&doubt);
        let keys: Vec<AskedKey> = Filled::offers(&doubt)
            .iter()
            .map(|answer| {
                let answer = *answer;
                let act = Callback::new(move |()| sheet.answer(&doubt, answer));
                (words.doubt_answer(&doubt, answer).to_owned(), act)
            })
            .collect();
        view! { <AskedBack said=sentence why_word=words.why() why=why.unwrap_or_default() keys /> }
    };
    let asked = move || open.get().into_iter().map(one).collect_view();
    // Without a question it takes no room of its own.
    move || {
        open.with(|open| !open.is_empty())
            .then(|| view! { <div class="group" node_ref=at>{asked}</div> })
    }
}
