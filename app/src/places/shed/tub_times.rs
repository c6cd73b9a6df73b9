//! Correcting when a step of a soak happened.

use super::tub::AtTub;
use crate::device::clock::{self, DeviceZone};
use crate::parts::{Field, Keyboard};
use leptos::prelude::*;
use tussock_core::log::bodies::SoakStep;
use tussock_core::units::Instant;
use tussock_flow::acts::Act;
use tussock_flow::forms::tub as form_of;
use tussock_flow::views::tub::Logged;
use tussock_flow::words::{English, TubWords, UnitWords};

/// The fields of the times that can be corrected.
const TIMES: [&str; 3] = ["time-1", "time-2", "time-3"];

impl AtTub {
    /// Fills in the times as they are logged.
    pub(super) fn fill_times(self) {
        let steps = self.open(|open| {
            let steps = open.correctable();
            steps.iter().map(|step| step.at).collect::<Vec<Instant>>()
        });
        for (field, at) in TIMES.into_iter().zip(steps.unwrap_or_default()) {
            self.form
                .set(field, English::default().time_at(at, &DeviceZone));
        }
    }

    /// A field for each time.
    pub(super) fn times(self) -> AnyView {
        let words = English::default();
        let steps: Vec<Logged> = self
            .open(|open| open.correctable().into_iter().cloned().collect())
            .unwrap_or_default();
        TIMES
            .into_iter()
            .zip(steps)
            .enumerate()
            .map(|(index, (field, step))| {
                let label = match step.body.happened {
                    SoakStep::Lifted { .. } => words.lifted_at(),
                    SoakStep::Fed { .. } => words.fed_at(),
                    _ => words.went_in_at(),
                };
                let error = Signal::derive(move || {
                    self.wrong
                        .get()
                        .filter(|(at, _)| *at == index)
                        .map(|(_, wrong)| words.tub_wrong(&wrong, &DeviceZone))
                });
                view! {
                    <Field
                        label=label
                        hint=words.time_hint()
                        value=self.form.text(field)
                        on_input=self.form.typed(field)
                        error=error
                        keyboard=Keyboard::Decimal
                    />
                }
            })
            .collect_view()
            .into_any()
    }

    /// Corrects every time that was changed, one after the other, so that each is judged beside the others as they are
    /// to be.
    pub(super) fn save_times(self) {
        let Some(mut open) = self.open(Clone::clone) else {
            return;
        };
        let steps: Vec<Logged> = open.correctable().into_iter().cloned().collect();
        let mut acts = Vec::new();
        for (index, (field, step)) in TIMES.into_iter().zip(steps).enumerate() {
            let typed = self.form.now(field);
            if typed.trim() == English::default().time_at(step.at, &DeviceZone) {
                continue;
            }
            match form_of::correct(&open, &step, &typed, clock::now(), &DeviceZone) {
                Ok(act) => {
                    if let Act::Change { at: Some(at), .. } = &act
                        && let Some(held) = open.steps.iter_mut().find(|held| held.id == step.id)
                    {
                        held.at = *at;
                    }
                    acts.push(act);
                }
                Err(wrong) => {
                    self.wrong.set(Some((index, wrong)));
                    return;
                }
            }
        }
        self.write(Act::All(acts));
    }
}
