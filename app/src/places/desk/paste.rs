//! The text of a label, pasted: each number becomes a line of the label, once it is accepted.

use super::food_form::FoodForm;
use crate::places::pasted::{Decision, Pasted, Read, Shown};
use leptos::prelude::*;
use tussock_core::ration::read_label;
use tussock_flow::forms::food::LineTyped;
use tussock_flow::forms::pasted::Decided;
use tussock_flow::words::{English, FoodsWords};

/// The way to the pasted text, and what was read of it.
pub(super) fn view(form: FoodForm) -> AnyView {
    let words = English::default();
    let text = form.form.text("pasted");
    let found = Memo::new(move |_| text.with(|text| read_label(text)));
    let read = Memo::new(move |_| {
        found.with(|label| Read {
            found: label
                .found
                .iter()
                .map(|found| Shown {
                    line: found.line.clone(),
                    read: words.pasted_read(found),
                    doubts: words.pasted_doubts(found),
                })
                .collect(),
            missed: label.not_read.clone(),
            bases: label.bases,
        })
    });
    let decide = Callback::new(move |(at, before, now): Decision| {
        let Some(line) = found.with_untracked(|label| label.found.get(at).map(LineTyped::accepted))
        else {
            return;
        };
        let mut lines = form.typed.with_untracked(|typed| typed.lines.clone());
        if now == Decided::Accepted {
            lines.push(line);
        } else if before.is_some()
            && let Some(there) = lines.iter().rposition(|there| *there == line)
        {
            lines.remove(there);
        }
        form.set_lines(&lines);
    });
    Pasted {
        form: form.form,
        open: words.paste_label(),
        label: words.pasted_text(),
        read,
        decide,
    }
    .view()
}
