//! The text of a laboratory report, pasted: each number goes into its field, once it is accepted.

use super::hay_form::HayForm;
use crate::places::pasted::{Decision, Pasted, Read, Shown};
use leptos::prelude::*;
use tussock_flow::forms::hay::{ForField, read_for_fields};
use tussock_flow::forms::pasted::Decided;
use tussock_flow::words::{English, HayWords};

/// The way to the pasted text, and what was read of it.
pub(super) fn view(hay: HayForm) -> AnyView {
    let words = English::default();
    let form = hay.form;
    let text = form.text("pasted");
    let found = Memo::new(move |_| text.with(|text| read_for_fields(text)));
    let read = Memo::new(move |_| {
        found.with(|report| Read {
            found: report
                .found
                .iter()
                .map(|found| Shown {
                    line: found.read.line.clone(),
                    read: words.report_read(found),
                    doubts: words.report_doubts(found),
                })
                .collect(),
            missed: report.read.not_read.clone(),
            bases: report.read.bases,
        })
    });
    let decide = Callback::new(move |(at, _, now): Decision| {
        let Some(ForField { field, text, .. }) =
            found.with_untracked(|report| report.found.get(at).cloned())
        else {
            return;
        };
        match now {
            Decided::Accepted => form.set(field, text),
            // Only what it put there itself.
            Decided::NotThis if form.now(field) == text => form.set(field, String::new()),
            Decided::NotThis => {}
        }
    });
    Pasted {
        form,
        open: words.paste_report(),
        label: words.pasted_report(),
        read,
        decide,
    }
    .view()
}
