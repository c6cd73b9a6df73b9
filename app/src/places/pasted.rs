//! A pasted text: each number beside its line, accepted by eye or not.

use crate::form::Form;
use crate::parts::{Choice, Offer, Page, Quiet, QuietRow, Row, Rows};
use leptos::prelude::*;
use tussock_core::units::printed::BasesSaid;
use tussock_flow::forms::pasted::{Decided, decided_of, decided_text};
use tussock_flow::words::{English, FoodsWords};

/// A number as it is shown.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Shown {
    /// The line as it stands in the text.
    pub(crate) line: String,
    /// As what it was read.
    pub(crate) read: String,
    /// What is not sure of it.
    pub(crate) doubts: Vec<String>,
}

/// What was read of a text.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) struct Read {
    /// Its numbers.
    pub(crate) found: Vec<Shown>,
    /// Lines with numbers of which nothing was read.
    pub(crate) missed: Vec<String>,
    /// What it says of its basis.
    pub(crate) bases: BasesSaid,
}

/// A decision: on which number, what was decided before, what now.
pub(crate) type Decision = (usize, Option<Decided>, Decided);

/// A text that can be pasted into a form.
#[derive(Clone, Copy)]
pub(crate) struct Pasted {
    /// The form, which keeps text and decisions in its draft.
    pub(crate) form: Form,
    /// The key that opens it.
    pub(crate) open: &'static str,
    /// The label of the text.
    pub(crate) label: &'static str,
    /// What is read of the text as it stands.
    pub(crate) read: Memo<Read>,
    /// Puts a number into the form, or takes it out again.
    pub(crate) decide: Callback<Decision>,
}

impl Pasted {
    /// The way to the text; once it is open, the text and what was read of it.
    pub(crate) fn view(self) -> AnyView {
        let words = English::default();
        let open = self.form.text("pasting");
        let is_open = Memo::new(move |_| open.with(|open| !open.is_empty()));
        let toggle = Callback::new(move |()| {
            let now = if is_open.get_untracked() { "" } else { "open" };
            self.form.set("pasting", now.to_owned());
        });
        let says = Signal::derive(move || {
            let says = if is_open.get() {
                words.close_pasted()
            } else {
                self.open
            };
            says.to_owned()
        });
        view! {
            <Show when=move || is_open.get()>{move || self.opened()}</Show>
            <QuietRow><Quiet says press=toggle /></QuietRow>
        }
        .into_any()
    }

    fn opened(self) -> AnyView {
        let words = English::default();
        let type_in = Callback::new(move |text: String| {
            self.form.set("pasted", text);
            // Another text has other numbers: what was decided is of the one before.
            self.form.set("decided", String::new());
        });
        let decided = self.form.text("decided");
        let count = Signal::derive(move || {
            let found = self.read.with(|read| read.found.len());
            let looked_at = decided.with(|decided| decided_of(decided).len());
            words.pasted_found(found.saturating_sub(looked_at), found)
        });
        let bases = move || {
            let said = self.read.with(|read| words.bases_said(read.bases))?;
            Some(view! { <p>{said}</p> })
        };
        let numbers = move || {
            self.read.with(|read| {
                let found = read.found.iter().enumerate();
                found
                    .map(|(at, shown)| self.number(at, shown))
                    .collect_view()
            })
        };
        view! {
            <Page
                label=self.label
                hint=words.pasted_text_hint()
                value=self.form.text("pasted")
                on_input=type_in
            />
            <p role="status">{count}</p>
            {bases}
            {numbers}
            {move || self.read.with(not_read)}
        }
        .into_any()
    }

    /// A number beside its line.
    fn number(self, at: usize, shown: &Shown) -> AnyView {
        let words = English::default();
        let text = self.form.text("decided");
        let chosen = Signal::derive(move || {
            let mut decided = text.with(|text| decided_of(text)).into_iter();
            decided.find(|(of, _)| *of == at).map(|(_, said)| said)
        });
        let decide = Callback::new(move |now: Decided| {
            let before = chosen.get_untracked();
            if before == Some(now) {
                return;
            }
            self.decide.run((at, before, now));
            let mut all = text.with_untracked(|text| decided_of(text));
            all.retain(|(of, _)| *of != at);
            all.push((at, now));
            self.form.set("decided", decided_text(&all));
        });
        let doubts = shown.doubts.join(" ");
        let offers = vec![
            Offer::new(Decided::Accepted, words.accept_line()),
            Offer::new(Decided::NotThis, words.not_this_line()),
        ];
        view! {
            <div class="pasted">
                <blockquote>{shown.line.clone()}</blockquote>
                <Choice
                    legend=shown.read.clone()
                    offers
                    chosen
                    on_choose=decide
                    hint=Some(doubts).filter(|doubts| !doubts.is_empty())
                />
            </div>
        }
        .into_any()
    }
}

/// The lines with numbers of which nothing was read, so that they are not overlooked.
fn not_read(read: &Read) -> Option<AnyView> {
    if read.missed.is_empty() {
        return None;
    }
    let words = English::default();
    let rows = read
        .missed
        .iter()
        .map(|line| view! { <Row name=line.clone() /> })
        .collect_view();
    let list = view! {
        <h3>{words.pasted_not_read()}</h3>
        <Rows name=words.pasted_not_read()>{rows}</Rows>
    };
    Some(list.into_any())
}
