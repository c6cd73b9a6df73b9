//! The lines of a label, each with what was found of it beside it.

use super::food_form::FoodForm;
use crate::parts::{Caution, Field, Keyboard, Quiet, QuietRow, Select};
use leptos::prelude::*;
use tussock_core::ration::{Content, LabelFinding, LabelUnit};
use tussock_flow::forms::food::{LineTyped, LineWrong, Wrong};
use tussock_flow::words::{English, FoodsWords, RationWords, TubWords};

/// The lines, and the way to one more.
pub(super) fn view(form: FoodForm) -> AnyView {
    let words = English::default();
    let count = Memo::new(move |_| form.typed.with(|typed| typed.lines.len()));
    let add = Callback::new(move |()| {
        let mut lines = form.typed.with_untracked(|typed| typed.lines.clone());
        lines.push(LineTyped::default());
        form.set_lines(&lines);
    });
    view! {
        <For
            each=move || 0..count.get()
            key=|at| *at
            children=move |at| line(form, at)
        />
        <QuietRow><Quiet says=words.add_line() press=add /></QuietRow>
    }
    .into_any()
}

/// A part of a line as it is typed.
fn part(form: FoodForm, at: usize, of: fn(&LineTyped) -> String) -> Signal<String> {
    Signal::derive(move || {
        form.typed
            .with(|typed| typed.lines.get(at).map(of).unwrap_or_default())
    })
}

/// Changes a line.
fn change(form: FoodForm, at: usize, set: impl Fn(&mut LineTyped, String)) -> impl Fn(String) {
    move |text| {
        let mut lines = form.typed.with_untracked(|typed| typed.lines.clone());
        if let Some(line) = lines.get_mut(at) {
            set(line, text);
            form.set_lines(&lines);
        }
    }
}

fn line(form: FoodForm, at: usize) -> AnyView {
    let words = English::default();
    let contents = Content::all()
        .map(|content| (content.key().to_owned(), words.content(content).to_owned()))
        .collect();
    let error = move |which: fn(&LineWrong) -> bool| {
        Signal::derive(move || {
            form.wrong.with(|wrong| {
                wrong.iter().find_map(|wrong| match wrong {
                    Wrong::Line(line, wrong) if *line == at && which(wrong) => {
                        Some(words.line_wrong(wrong))
                    }
                    _ => None,
                })
            })
        })
    };
    // Two words for one unit are one offer.
    let unit = part(form, at, |line| {
        line.unit()
            .map(LabelUnit::word)
            .unwrap_or_default()
            .to_owned()
    });
    let found = move || {
        form.checked
            .with(|checked| checked.of(at).map(finding).collect_view())
    };
    let remove = Callback::new(move |()| {
        let mut lines = form.typed.with_untracked(|typed| typed.lines.clone());
        if at < lines.len() {
            lines.remove(at);
            form.set_lines(&lines);
        }
    });
    view! {
        <div class="label-line" role="group" aria-label=words.label_line(at)>
            <div class="label-parts">
                <Select
                    label=words.line_of_what()
                    nothing=words.line_choose()
                    offers=contents
                    chosen=part(form, at, |line| line.content.clone())
                    on_choose=change(form, at, |line, key| line.content = key)
                    error=error(|wrong| matches!(wrong, LineWrong::NoContent))
                />
                <Field
                    label=words.line_number()
                    value=part(form, at, |line| line.value.clone())
                    on_input=change(form, at, |line, text| line.value = text)
                    error=error(|wrong| matches!(wrong, LineWrong::Number(_) | LineWrong::Log(_)))
                    keyboard=Keyboard::Decimal
                />
                <Select
                    label=words.line_in_what()
                    nothing=words.line_choose()
                    offers=units()
                    chosen=unit
                    on_choose=change(form, at, |line, key| line.unit = key)
                    error=error(|wrong| matches!(wrong, LineWrong::NoUnit))
                />
            </div>
            <div role="status">{found}</div>
            <QuietRow><Quiet says=words.remove_line(at) press=remove /></QuietRow>
        </div>
    }
    .into_any()
}

/// The units, each once.
fn units() -> Vec<(String, String)> {
    let words = English::default();
    LabelUnit::words()
        .filter_map(|word| {
            let unit = LabelUnit::from_word(word).filter(|unit| unit.word() == word)?;
            Some((word.to_owned(), words.label_unit(unit).to_owned()))
        })
        .collect()
}

/// What was found, with its reason.
pub(super) fn finding(finding: &LabelFinding) -> AnyView {
    let words = English::default();
    let said = words.label_finding(finding);
    match said.why {
        Some(reason) => {
            view! { <Caution said=said.sentence why=words.why_asked()>{reason}</Caution> }
                .into_any()
        }
        None => view! { <Caution said=said.sentence /> }.into_any(),
    }
}
