//! There is no plan: the order, the reasons, and what to do meanwhile.

use super::allowed::lines;
use crate::parts::{Rank, StopBlock};
use leptos::prelude::*;
use tussock_core::safety::Refused;
use tussock_flow::words::{English, PlanScreenWords, SafetyWords, Said};

/// The stop block with the order and the reasons; below it what to do until there is a plan.
pub(super) fn refused_view(refused: &Refused, in_use: AnyView) -> AnyView {
    let words = English::default();
    let order = refused.vet.map_or_else(
        || {
            refused
                .why
                .first()
                .map_or(words.no_plan(), |reason| words.refusal_head(reason))
        },
        |urgency| words.vet(urgency),
    );
    let said: Vec<Said> = refused
        .why
        .iter()
        .map(|reason| words.refusal(reason))
        .collect();
    let reasons = said
        .iter()
        .map(|said| view! { <p>{said.sentence.clone()}</p> })
        .collect_view();
    let meanwhile = refused
        .meanwhile
        .iter()
        .map(|step| words.meanwhile(step))
        .collect();
    view! {
        <StopBlock order=order rank=Rank::Sentence>{reasons}</StopBlock>
        {lines(words.meanwhile_head(), meanwhile)}
        {lines(words.why_head(), said)}
        {in_use}
    }
    .into_any()
}
