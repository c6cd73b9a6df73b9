//! What a plan can carry of a turnout, and what to do instead where it carries none.

use crate::parts::{Caution, Quiet, QuietRow, Rank, Row, Rows, StopBlock};
use leptos::prelude::*;
use tussock_flow::routes::Route;
use tussock_flow::views::grazing::Carried;
use tussock_flow::words::{English, GrassModelWords, GrazingWords, PlanScreenWords};

/// What a plan can carry, before it is saved.
pub(super) fn carried_view(carried: &Carried) -> AnyView {
    let words = English::default();
    let said = words.carried(carried);
    let instead: Vec<AnyView> = words
        .instead_of_grass(carried)
        .into_iter()
        .map(|line| view! { <li>{line}</li> }.into_any())
        .collect();
    let instead = (!instead.is_empty()).then(|| {
        view! { <h3>{words.instead_head()}</h3> <ul>{instead}</ul> }
    });
    let why = said.why.map(|why| view! { <p>{why}</p> });
    match carried {
        Carried::Open(open) => {
            let rows = words
                .carried_rows(open)
                .into_iter()
                .map(|(name, value)| view! { <Row name=name value=value /> })
                .collect_view();
            let model = Route::GrassModel.to_string();
            view! {
                <div role="status"><p><strong>{said.sentence}</strong></p> {why}</div>
                <Rows name=words.carries_head()>{rows}</Rows>
                <QuietRow><Quiet says=words.grass_model_head() press=model /></QuietRow>
            }
            .into_any()
        }
        Carried::NoPlan { .. } | Carried::OneStaysIn => view! {
            <Caution said=said.sentence />
            {why}
        }
        .into_any(),
        Carried::Refused { .. } | Carried::NoRoom { .. } => view! {
            <StopBlock order=said.sentence rank=Rank::Line>{why}</StopBlock>
            {instead}
        }
        .into_any(),
        Carried::Closed { animal, .. } => {
            let vet = Route::VetWord(animal.clone()).to_string();
            view! {
                <StopBlock order=said.sentence rank=Rank::Line>{why}</StopBlock>
                {instead}
                <QuietRow><Quiet says=words.write_down_vets_word() press=vet /></QuietRow>
            }
            .into_any()
        }
    }
}
