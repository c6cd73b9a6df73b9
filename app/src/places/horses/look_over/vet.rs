//! Where the vet is to be rung: the number, and what to read aloud.

use super::Look;
use crate::parts::{Quiet, QuietRow, Row, Rows};
use leptos::prelude::*;
use tussock_core::animal::AnimalId;
use tussock_core::safety::Vital;
use tussock_flow::forms::not_eating::{field as field_of, reading};
use tussock_flow::routes::Route;
use tussock_flow::views::not_eating::dial;
use tussock_flow::words::{LookOverWords, NotEatingWords};

/// The vet's number and the call sheet.
#[component]
pub(super) fn ForTheVet(look: Look, animal: AnimalId) -> impl IntoView {
    let words = look.words;
    let sheet = StoredValue::new(Route::NotEating(animal).to_string());
    let ring = move || {
        look.held.with(|held| {
            let vet = &held.as_ref()?.vet;
            let says = words.ring_the_vet(vet);
            let href = vet.telephone.as_deref().and_then(dial);
            Some(match href {
                Some(href) => view! {
                    <Rows name=words.the_vet()><Row name=says press=href /></Rows>
                }
                .into_any(),
                // The number is written down where an animal will not eat.
                None => view! {
                    <QuietRow>
                        <span>{says}</span>
                        <Quiet says=words.write_the_number_down() press=sheet.get_value() />
                    </QuietRow>
                }
                .into_any(),
            })
        })
    };
    let lines = move || {
        let lines = look.seen(|held, seen| {
            let readings = Vital::ALL.map(|vital| {
                let typed = reading(vital, &look.text(field_of(vital))).ok().flatten();
                typed.or_else(|| held.reading(vital))
            });
            Some(words.signs_sheet(held, seen.signs, seen.health, readings))
        })?;
        Some(
            lines
                .into_iter()
                .map(|line| view! { <Row name=line.about value=line.says strong=true /> })
                .collect_view(),
        )
    };
    view! {
        {ring}
        <details class="numbers">
            <summary>{words.call_sheet()}</summary>
            <Rows name=words.call_sheet()>{lines}</Rows>
        </details>
    }
}
