//! The field of a temperature, a pulse or a breathing.

use crate::form::Form;
use crate::parts::{Field, Keyboard};
use leptos::prelude::*;
use tussock_core::safety::Vital;
use tussock_flow::words::{English, NotEatingWords};

/// A reading as it is typed, with its unit.
#[component]
pub(super) fn VitalField(
    /// Which.
    vital: Vital,
    /// The form it stands in.
    form: Form,
    /// Its name there.
    name: &'static str,
    /// What is usual.
    hint: Signal<Option<String>>,
    /// How the reading stands.
    echo: Signal<Option<String>>,
    /// What is wrong with it.
    error: Signal<Option<String>>,
) -> impl IntoView {
    let words = English::default();
    let keyboard = match vital {
        Vital::Temperature => Keyboard::Decimal,
        Vital::Pulse | Vital::Breaths => Keyboard::Numeric,
    };
    view! {
        <Field
            label=words.vital(vital)
            hint=hint
            value=form.text(name)
            on_input=form.typed(name)
            unit=words.vital_unit(vital)
            echo=echo
            error=error
            keyboard=keyboard
        />
    }
}
