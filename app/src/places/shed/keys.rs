//! The plus and minus keys of the scale, and the lines of a pass over several animals and days.

use super::nets::Scale;
use crate::parts::{Key, PadCell, Quiet};
use leptos::prelude::*;
use tussock_core::animal::AnimalId;
use tussock_core::day::key_step;
use tussock_core::units::AsFed;
use tussock_flow::forms::nets::nudge;
use tussock_flow::routes::Route;
use tussock_flow::views::nets::Pass;
use tussock_flow::words::{English, HangingWords, NetsWords, ShedWords, UnitWords};

/// The most days ahead that one pass fills: a week with today.
const MOST_AHEAD: usize = 6;

impl Scale {
    /// The pad, with keys of a step each way, and of a slice where the weight of one is known.
    pub(super) fn cells(self) -> Vec<PadCell> {
        let words = English::default();
        let number = PadCell::number(".", words.point(), words.erase());
        if self.empty.get() {
            return number;
        }
        let slice = self.slice.get();
        let steps = [true, false]
            .map(|more| words.step_key(key_step(), more))
            .into_iter();
        let slices = slice
            .into_iter()
            .flat_map(|slice| [true, false].map(|more| words.slice_key(slice, more)));
        let keys = (1..)
            .zip(steps.chain(slices))
            .map(|(nth, [shown, name])| PadCell::new(Key::Step(nth), shown).named(name));
        number.into_iter().chain(keys).collect()
    }

    /// Does what a plus or minus key does: to what is typed, else to the target.
    pub(super) fn step(self, key: u8) {
        let Some((_, net)) = self.next.get_untracked() else {
            return;
        };
        let slice = self.slice.get_untracked();
        let (step, steps): (Option<AsFed>, i32) = match key {
            1 => (Some(key_step()), 1),
            2 => (Some(key_step()), -1),
            3 => (slice, 1),
            _ => (slice, -1),
        };
        let typed = self.value.get_untracked();
        if let Some(step) = step
            && let Ok(reading) = nudge(&net, &typed, step, steps)
        {
            self.type_in(English::default().feed_number(reading));
        }
    }

    /// How many nets are left in the pass.
    pub(super) fn left(self) -> usize {
        self.pass
            .with(|pass| pass.as_ref().map_or(0, Pass::to_weigh))
    }

    /// How many days the pass fills.
    pub(super) fn days(self) -> usize {
        self.ahead.get().saturating_add(1)
    }

    /// Whose net is on the scale, and which.
    pub(super) fn head(self) -> String {
        let words = English::default();
        let Some((nth, _)) = self.next.get() else {
            return words.shed().to_owned();
        };
        let today = self
            .work
            .now
            .with(|now| now.as_ref().map(|(_, today)| today.day));
        self.day.with(|day| {
            let Some(day) = day else {
                return words.shed().to_owned();
            };
            let later = Some(day.day).filter(|day| Some(*day) != today);
            let later = later.map(|day| words.day(day));
            words.pass_head(&day.name, nth, day.nets.len(), later.as_deref())
        })
    }

    /// The head line once more for a screen reader, where it changes from one animal to the next.
    pub(super) fn told(self, head: Memo<String>) -> impl IntoView {
        self.whose.with_value(Option::is_none).then(|| {
            view! { <p class="only-read" role="status">{head}</p> }
        })
    }

    /// The sentence when no net is left.
    pub(super) fn filled(self) -> String {
        let words = English::default();
        let days = self.days();
        self.pass.with(|pass| {
            let Some(pass) = pass else {
                return String::new();
            };
            // The name finds no room beside more than a day.
            let only = pass.only().filter(|_| days == 1);
            match (only, pass.all_weighed()) {
                (Some(name), true) => words.all_weighed(name, &words.for_days(days)),
                (Some(name), false) => words.none_left(name, &words.for_days(days)),
                (None, true) => words.pass_weighed(days),
                (None, false) => words.pass_none_left(days),
            }
        })
    }

    /// Takes the next day into the pass.
    pub(super) fn one_more_day(self) -> impl IntoView {
        let words = English::default();
        let says = Signal::derive(move || {
            let ahead = self.ahead.get();
            let next = self.work.now.with(|now| {
                let (_, today) = now.as_ref()?;
                today.day.iter_days().nth(ahead.saturating_add(1))
            });
            match next {
                Some(day) if 0 < ahead => words.add_a_day(&words.day(day)),
                _ => words.tomorrows_nets().to_owned(),
            }
        });
        let press = Callback::new(move |()| self.ahead.update(|ahead| *ahead += 1));
        view! {
            <Show when=move || self.ahead.get() < MOST_AHEAD>
                <Quiet says press />
            </Show>
        }
    }

    /// What was left of the nets of the one whose net is on the scale.
    pub(super) fn left_link(self) -> impl IntoView {
        let words = English::default();
        move || {
            let about = self
                .day
                .with(|day| day.as_ref().map(|day| day.about.id().to_owned()))?;
            let route = Route::Hanging(AnimalId(about)).to_string();
            Some(view! { <Quiet says=words.what_was_left() press=route /> })
        }
    }
}
