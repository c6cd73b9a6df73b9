//! One animal's line: a form of its own, saved as it is left.

#![allow(
    clippy::redundant_closure_for_method_calls,
    reason = "a method of one lifetime is no answer for every form"
)]

use super::Scale;
use crate::device::clock;
use crate::form::Form;
use crate::parts::{AskedBack, AskedKey, Field, Keyboard};
use leptos::html;
use leptos::prelude::*;
use tussock_core::animal::AnimalId;
use tussock_core::assess::{Doubt, DoubtAnswer};
use tussock_core::units::Zone;
use tussock_flow::forms::weighbridge::{Row, address_of};
use tussock_flow::forms::weight::{Filled, How, NotYet, OF_SCALE, WITH, WITHOUT, Wrong};
use tussock_flow::views::weighbridge::Line as Of;
use tussock_flow::words::{
    ConditionWords, HorsesWords, MeasureWords, Said, UnitWords, WeighbridgeWords,
};

/// The lines in sight, in their order.
pub(super) type Lines = Vec<OneLine>;

/// A line that is typed.
#[derive(Clone, Copy)]
pub(super) struct OneLine {
    animal: StoredValue<AnimalId>,
    form: Form,
    input: NodeRef<html::Input>,
    /// What was wrong when it was left.
    wrong: RwSignal<Vec<Wrong>>,
    /// It was left, and something was asked back.
    asked: RwSignal<bool>,
    /// It is being saved.
    busy: RwSignal<bool>,
}

impl OneLine {
    fn is_of(self, animal: &AnimalId) -> bool {
        self.animal.with_value(|own| own == animal)
    }

    pub(super) fn is_busy(self) -> bool {
        self.busy.get_untracked()
    }

    /// The line as it is typed now; tracked, `None` until the animals are read.
    fn row<T>(self, scale: Scale, ask: impl FnOnce(&Row<'_>) -> T) -> Option<T> {
        let text = |field: &str| self.form.held(field).unwrap_or_default();
        scale.head.with(|head| {
            scale.seen.with(|seen| {
                let line = seen
                    .as_ref()?
                    .lines
                    .iter()
                    .find(|of| self.is_of(&of.animal.id))?;
                Some(ask(&Row {
                    line,
                    head: head.as_ref()?,
                    text: &text,
                }))
            })
        })
    }

    pub(super) fn is_typed(self, scale: Scale) -> bool {
        self.row(scale, |row| row.is_typed()).unwrap_or(false)
    }

    /// Saves the line, or says what is wrong with it or asked back. A line in which nothing is typed is let be.
    pub(super) fn finish(self, scale: Scale) {
        if self.busy.try_get_untracked() != Some(false) {
            return;
        }
        if !untrack(|| self.is_typed(scale)) {
            self.wrong.set(Vec::new());
            self.asked.set(false);
            return;
        }
        let record = self.form.id("id");
        match untrack(|| self.row(scale, |row| row.act(&record))) {
            None => {}
            Some(Ok(act)) => {
                self.wrong.set(Vec::new());
                scale.without.set(None);
                self.busy.set(true);
                leptos::task::spawn_local(async move {
                    let done = self.form.save(act).await;
                    if done.is_ok() {
                        self.form.empty();
                        self.asked.try_set(false);
                    }
                    scale.failed.try_set(done.is_err());
                    self.busy.try_set(false);
                    scale.leave();
                });
            }
            Some(Err(NotYet::Wrong(wrong))) => {
                let (once, own): (Vec<Wrong>, Vec<Wrong>) = wrong
                    .into_iter()
                    .partition(|wrong| wrong.field(How::Scale) == WITHOUT);
                scale.without.set(once.into_iter().next());
                self.wrong.set(own);
            }
            Some(Err(NotYet::Asked(_))) => {
                self.wrong.set(Vec::new());
                self.asked.set(true);
            }
        }
    }

    /// Leaves the line for the next one, or from the last one just leaves it.
    fn next(self, scale: Scale) {
        let next = scale.lines.with_value(|lines| {
            let own = self.animal.get_value();
            let at = lines.iter().position(|line| line.is_of(&own))?;
            lines
                .get(at + 1)
                .and_then(|line| line.input.get_untracked())
        });
        match next {
            // A line that cannot take the focus is tapped. Leaving this one finishes it.
            Some(input) => {
                let _ = input.focus();
            }
            None => self.finish(scale),
        }
    }

    /// Answers a question: sets what the answer sets, and with nothing more to ask the line is finished.
    fn answer(self, scale: Scale, doubt: &Doubt, answer: DoubtAnswer) {
        let Some(sets) = untrack(|| self.row(scale, |row| row.answer(doubt, answer))) else {
            return;
        };
        for (field, text) in sets.row {
            self.form.set(&field, text);
        }
        for (field, text) in sets.head {
            scale.once.set(&field, text);
        }
        if answer == DoubtAnswer::Again {
            if let Some(input) = self.input.get_untracked() {
                // As in `next`.
                let _ = input.focus();
            }
        } else {
            self.finish(scale);
        }
    }
}

/// The line of one animal.
#[component]
pub(super) fn Line(scale: Scale, animal: AnimalId) -> impl IntoView {
    let words = scale.words;
    let line = OneLine {
        form: Form::open_today(scale.world, address_of(&animal)),
        animal: StoredValue::new(animal.clone()),
        input: NodeRef::new(),
        wrong: RwSignal::new(Vec::new()),
        asked: RwSignal::new(false),
        busy: RwSignal::new(false),
    };
    scale.lines.update_value(|lines| lines.push(line));
    on_cleanup(move || {
        scale
            .lines
            .try_update_value(|lines| lines.retain(|one| !one.is_of(&animal)));
    });
    let of = Memo::new(move |_| line.row(scale, |row| row.line.clone()));
    let said = move |say: fn(&Of) -> String| {
        Signal::derive(move || of.with(|of| of.as_ref().map(say).unwrap_or_default()))
    };
    let field = move |name: &'static str, place: usize, label: Signal<String>| {
        let first = place == 0;
        let error = Signal::derive(move || {
            let wrong = line.wrong.get();
            let own = |wrong: &&Wrong| match wrong {
                Wrong::Parse(field, _) => *field == name,
                Wrong::Assess(_) | Wrong::NoDifference | Wrong::Log(_) => first,
            };
            wrong.iter().find(own).map(|wrong| scale.said_of(wrong))
        });
        let echo = Signal::derive(move || {
            let weight = line.row(scale, |row| row.weight()).flatten()?;
            first.then(|| words.body(weight))
        });
        let node = if first { line.input } else { NodeRef::new() };
        view! {
            <Field
                label=label
                value=line.form.text(name)
                on_input=line.form.typed(name)
                on_leave=Callback::new(move |()| line.finish(scale))
                on_enter=Callback::new(move |()| line.next(scale))
                error=error
                echo=echo
                node=node
                keyboard=Keyboard::Decimal
            />
        }
    };
    let name = said(|of| of.animal.name.clone());
    let vehicle = Memo::new(move |_| scale.is_vehicle());
    let fields = move || {
        if vehicle.get() {
            return field(WITH, 0, name).into_any();
        }
        let [first, second, third] = OF_SCALE;
        // Open once it was asked to weigh again.
        let again = move |place: usize, name: &'static str| {
            let there = Memo::new(move |_| line.form.held(name).is_some());
            let label = Signal::stored(words.take(None, place));
            move || there.get().then(|| field(name, place, label))
        };
        view! { {field(first, 0, name)} {again(1, second)} {again(2, third)} }.into_any()
    };
    let open = Memo::new(move |_| {
        if line.asked.get() {
            line.row(scale, |row| row.open()).unwrap_or_default()
        } else {
            Vec::new()
        }
    });
    let one = move |doubt: Doubt| {
        let Said { sentence, why } = words.doubt(&doubt);
        let keys: Vec<AskedKey> = Filled::offers(&doubt)
            .iter()
            .map(|answer| {
                let answer = *answer;
                let act = Callback::new(move |()| line.answer(scale, &doubt, answer));
                (words.doubt_answer(&doubt, answer).to_owned(), act)
            })
            .collect();
        view! { <AskedBack said=sentence why_word=words.why() why=why.unwrap_or_default() keys /> }
    };
    let found = move || {
        line.form.found.get().map(|at| {
            let today = clock::DeviceZone.to_local(clock::now()).date;
            let said = words.draft_from(at, today, &clock::DeviceZone);
            view! { <p class="soft small">{said}</p> }
        })
    };
    let last =
        Signal::derive(move || of.with(|of| of.as_ref().map(|of| words.last_on_scale(of.last))));
    let today =
        Signal::derive(move || of.with(|of| of.as_ref().map(|of| words.saved_today(of.saved))));
    let [_, last_head, today_head] = words.weighbridge_heads();
    view! {
        <tr>
            <td>{fields}{found}</td>
            <td data-head=last_head>{last}</td>
            <td data-head=today_head>{today}</td>
        </tr>
        <tr class="asked-row">
            <td colspan="3">{move || open.get().into_iter().map(one).collect_view()}</td>
        </tr>
    }
}
