//! The call sheet, the number of the vet, and what ends a stop.

use super::AtIt;
use crate::device::clock::DeviceZone;
use crate::parts::{Field, Keyboard, Quiet, QuietRow, Row, Rows};
use leptos::prelude::*;
use tussock_core::animal::{AnimalId, Appetite};
use tussock_core::safety::Vital;
use tussock_flow::forms::not_eating::{self as form_of, TELEPHONE, Wrong};
use tussock_flow::routes::Route;
use tussock_flow::views::not_eating::NotEating as View;
use tussock_flow::words::{English, LedgerWords, NotEatingWords};

impl AtIt {
    /// A reading as typed, else as it was saved last.
    fn reading(self, view: &View, vital: Vital) -> Option<f64> {
        let typed = self
            .form
            .held(form_of::field(vital))
            .and_then(|text| form_of::reading(vital, &text).ok().flatten());
        typed.or_else(|| view.reading(vital))
    }

    pub(super) fn sheet(self) -> Option<AnyView> {
        let words = English::default();
        if self.found.get().vet().is_none() && self.stop.get().is_none() {
            return None;
        }
        let offered = self.offered.get()?;
        self.view.with(|view| {
            let view = view.as_ref()?;
            let readings = Vital::ALL.map(|vital| self.reading(view, vital));
            let saved = view.last.as_ref().map(|(at, _)| {
                let said = words.as_saved(*at, view, &DeviceZone);
                view! { <p class="soft">{said}</p> }
            });
            let rows = words
                .sheet(view, &offered, readings, &DeviceZone)
                .into_iter()
                .map(|line| view! { <Row name=line.about value=line.says strong=true /> })
                .collect_view();
            Some(
                view! {
                    <h2>{words.call_sheet()}</h2>
                    {saved}
                    <Rows name=words.call_sheet()>{rows}</Rows>
                }
                .into_any(),
            )
        })
    }

    /// Where the number is written down while nobody has.
    pub(super) fn number(self) -> Option<AnyView> {
        let words = English::default();
        let missing = Memo::new(move |_| {
            self.view.with(|view| {
                view.as_ref()
                    .is_some_and(|view| view.vet.telephone.is_none())
            })
        });
        let error = Signal::derive(move || {
            self.wrong.with(|wrong| {
                let no = wrong.contains(&Wrong::Telephone);
                no.then(|| words.not_eating_wrong(&Wrong::Telephone))
            })
        });
        missing.get().then(|| {
            view! {
                <Field
                    label=words.number_label()
                    hint=words.no_number().to_owned()
                    value=self.form.text(TELEPHONE)
                    on_input=self.form.typed(TELEPHONE)
                    error=error
                    keyboard=Keyboard::Telephone
                />
            }
            .into_any()
        })
    }

    /// What ends a stop that was saved, and the days one by one.
    pub(super) fn ends(self, animal: &AnimalId) -> Option<AnyView> {
        let words = English::default();
        let off = self.view.with(|view| {
            let appetite = view.as_ref()?.animal.health.appetite;
            Some(matches!(appetite, Appetite::Off { .. }))
        })?;
        let look = Route::LookOver(animal.clone()).to_string();
        let ends = off.then(|| view! { <Quiet says=words.ends_with_a_look_over() press=look /> });
        let ledger = Route::Ledger(animal.clone()).to_string();
        Some(
            view! {
                <QuietRow>
                    {ends}
                    <Quiet says=words.what_was_eaten() press=ledger />
                </QuietRow>
            }
            .into_any(),
        )
    }
}
