//! The text of a label, pasted: each number beside its line, accepted by eye or not.

use super::food_form::FoodForm;
use crate::parts::{Choice, Offer, Page, Quiet, QuietRow, Row, Rows};
use leptos::prelude::*;
use tussock_core::ration::{FromText, PastedLabel, read_label};
use tussock_flow::forms::food::{Decided, LineTyped, decided_of, decided_text};
use tussock_flow::words::{English, FoodsWords};

/// The way to the pasted text; once it is open, the text and what was read of it.
pub(super) fn view(form: FoodForm) -> AnyView {
    let words = English::default();
    let open = form.form.text("pasting");
    let is_open = Memo::new(move |_| open.with(|open| !open.is_empty()));
    let toggle = Callback::new(move |()| {
        let now = if is_open.get_untracked() { "" } else { "open" };
        form.form.set("pasting", now.to_owned());
    });
    view! {
        <Show when=move || is_open.get()>{move || pasted(form)}</Show>
        <QuietRow>
            <Quiet
                says=Signal::derive(move || {
                    let says = if is_open.get() { words.close_pasted() } else { words.paste_label() };
                    says.to_owned()
                })
                press=toggle
            />
        </QuietRow>
    }
    .into_any()
}

fn pasted(form: FoodForm) -> AnyView {
    let words = English::default();
    let text = form.form.text("pasted");
    let read = Memo::new(move |_| text.with(|text| read_label(text)));
    let type_in = Callback::new(move |text: String| {
        form.form.set("pasted", text);
        // Another text has other numbers: what was decided is of the one before.
        form.form.set("decided", String::new());
    });
    let decided = form.form.text("decided");
    let count = Signal::derive(move || {
        let found = read.with(|read| read.found.len());
        let looked_at = decided.with(|decided| decided_of(decided).len());
        words.pasted_found(found.saturating_sub(looked_at), found)
    });
    let bases = move || {
        let said = read.with(|read| words.bases_said(read.bases))?;
        Some(view! { <p>{said}</p> })
    };
    let numbers = move || {
        read.with(|read| {
            read.found
                .iter()
                .enumerate()
                .map(|(at, found)| number(form, at, found))
                .collect_view()
        })
    };
    view! {
        <Page
            label=words.pasted_text()
            hint=words.pasted_text_hint()
            value=text
            on_input=type_in
        />
        <p role="status">{count}</p>
        {bases}
        {numbers}
        {move || read.with(not_read)}
    }
    .into_any()
}

/// A number beside its line.
fn number(form: FoodForm, at: usize, found: &FromText) -> AnyView {
    let words = English::default();
    let decided = form.form.text("decided");
    let chosen = Signal::derive(move || {
        let decided = decided.with(|decided| decided_of(decided));
        decided
            .into_iter()
            .find(|(of, _)| *of == at)
            .map(|(_, decided)| decided)
    });
    let line = LineTyped::accepted(found);
    let decide = Callback::new(move |now: Decided| {
        let before = chosen.get_untracked();
        if before == Some(now) {
            return;
        }
        let mut lines = form.typed.with_untracked(|typed| typed.lines.clone());
        if now == Decided::Accepted {
            lines.push(line.clone());
        } else if before.is_some()
            && let Some(there) = lines.iter().rposition(|there| *there == line)
        {
            lines.remove(there);
        }
        form.set_lines(&lines);
        let mut all = decided.with_untracked(|decided| decided_of(decided));
        all.retain(|(of, _)| *of != at);
        all.push((at, now));
        form.form.set("decided", decided_text(&all));
    });
    let doubts = words.pasted_doubts(found).join(" ");
    let offers = vec![
        Offer::new(Decided::Accepted, words.accept_line()),
        Offer::new(Decided::NotThis, words.not_this_line()),
    ];
    view! {
        <div class="pasted">
            <blockquote>{found.line.clone()}</blockquote>
            <Choice
                legend=words.pasted_read(found)
                offers
                chosen
                on_choose=decide
                hint=Some(doubts).filter(|doubts| !doubts.is_empty())
            />
        </div>
    }
    .into_any()
}

/// The lines with numbers of which nothing was read, so that they are not overlooked.
fn not_read(read: &PastedLabel) -> Option<AnyView> {
    if read.not_read.is_empty() {
        return None;
    }
    let words = English::default();
    let rows = read
        .not_read
        .iter()
        .map(|line| view! { <Row name=line.clone() /> })
        .collect_view();
    Some(
        view! {
            <h3>{words.pasted_not_read()}</h3>
            <Rows name=words.pasted_not_read()>{rows}</Rows>
        }
        .into_any(),
    )
}
