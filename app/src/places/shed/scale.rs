//! What stands around the slot of the scale: the day's nets, the quiet links, the action, and what it writes.

use super::nets::{Phase, Scale};
use crate::device::ids;
use crate::parts::{Action, Hung, HungTag, Key, Pad, Quiet, QuietRow, State};
use leptos::prelude::*;
use tussock_core::animal::AnimalId;
use tussock_flow::acts::Act;
use tussock_flow::forms::nets::{self as form_of, Wrong};
use tussock_flow::routes::Route;
use tussock_flow::views::nets::{NetState, yard_nets};
use tussock_flow::views::shed::shed;
use tussock_flow::words::{English, NetsWords, ShedWords, TubWords, UnitWords};

impl Scale {
    /// The day's nets as small tags, and the same as a line.
    pub(super) fn hung(self) -> impl IntoView {
        let words = English::default();
        let tags = move || {
            let here = self.next.with(|next| next.as_ref().map(|(nth, _)| *nth));
            let nets = self.day.get().map(|day| day.nets).unwrap_or_default();
            (1..)
                .zip(nets)
                .map(|(nth, net)| {
                    let (state, word, hay) = match net.state {
                        NetState::ToWeigh => (State::Later, words.net_to_weigh(), net.hay),
                        NetState::Weighed(hay) => (State::Done, words.net_weighed(), hay),
                        NetState::Past => (State::NotKnown, words.net_past(), net.hay),
                    };
                    view! {
                        <HungTag
                            state=Signal::stored(state)
                            word=Signal::stored(word.to_owned())
                            what=Signal::stored(words.feed_number(hay))
                            here=Signal::stored(here == Some(nth))
                        />
                    }
                })
                .collect_view()
        };
        let line = move || {
            let pass = self.pass.get()?;
            let when = words.for_days(self.days());
            Some(words.weighed_of(pass.weighed(), pass.count(), pass.hay(), &when))
        };
        view! {
            <Hung name=words.nets_of_day()>{tags}</Hung>
            <p>{line}</p>
        }
    }

    /// The keys, in the foot where a thumb reaches them.
    pub(super) fn pad(self) -> impl IntoView {
        let words = English::default();
        let value = self.value;
        view! {
            <Pad
                name=words.pad()
                cells=self.cells()
                on_key=Callback::new(move |key: Key| match key {
                    Key::Step(step) => self.step(step),
                    key => self.type_in(key.typed(&value.get_untracked())),
                })
                entry=self.entry
            />
        }
    }

    /// The one tap for a set that was filled by its targets.
    pub(super) fn fill(self) -> impl IntoView {
        let words = English::default();
        let left = move || self.left();
        let fill = Callback::new(move |()| {
            let acts = self.pass.with_untracked(|pass| {
                pass.as_ref()
                    .map(|pass| form_of::pass_to_target(pass, ids::new))
            });
            match acts {
                Some(Ok(act)) => self.write(act),
                Some(Err(error)) => self.wrong.set(Some(Wrong::Log(error))),
                None => {}
            }
        });
        view! {
            <Show when=move || !self.empty.get()>
                <QuietRow>
                    <Quiet says=Signal::derive(move || words.filled_to_target(left())) press=fill />
                </QuietRow>
            </Show>
        }
    }

    /// Puts the empty net on the scale, or the hay again.
    pub(super) fn turn(self) {
        self.wrong.set(None);
        self.empty.update(|empty| *empty = !*empty);
        self.entry.focus();
    }

    pub(super) fn turn_says(self) -> Signal<String> {
        let words = English::default();
        Signal::derive(move || {
            let says = if self.empty.get() {
                words.leave_empty_net()
            } else {
                words.weigh_empty_net()
            };
            says.to_owned()
        })
    }

    pub(super) fn action(self, phase: Phase) -> AnyView {
        let words = English::default();
        match phase {
            Phase::Weigh => {
                let says = Signal::derive(move || {
                    let says = match (self.empty.get(), self.left()) {
                        (true, _) => words.save_empty_net(),
                        (false, 1) => words.save_last_net(),
                        (false, _) => words.save_next_net(),
                    };
                    says.to_owned()
                });
                let save = Callback::new(move |()| self.save());
                view! { <Action says press=save busy=self.busy /> }.into_any()
            }
            Phase::NoPlan => {
                let (says, route) = match self.whose.get_value() {
                    Some(id) => (words.see_plan(), Route::Plan(id)),
                    None => (words.to_the_shed(), Route::Shed),
                };
                view! { <Action says press=route.to_string() /> }.into_any()
            }
            Phase::Filled | Phase::Opening => {
                let other = self.work.now.with_untracked(|now| {
                    let (shelf, today) = now.as_ref()?;
                    // One pass leaves nobody else to go on with.
                    self.whose.with_value(Option::is_some).then_some(())?;
                    let shed = shed(shelf, today);
                    let next = shed.next_nets()?;
                    let route = Route::Nets(AnimalId(next.about.id().to_owned()));
                    Some((words.nets_for(&next.name), route))
                });
                let (says, route) =
                    other.unwrap_or_else(|| (words.to_the_shed().to_owned(), Route::Shed));
                view! { <Action says=says press=route.to_string() /> }.into_any()
            }
        }
    }

    pub(super) fn save(self) {
        let typed = self.value.get_untracked();
        let Some((nth, net)) = self.next.get_untracked() else {
            return;
        };
        let Some((about, whose)) = self.day.with_untracked(|day| {
            let day = day.as_ref()?;
            Some((day.about.clone(), day.name.clone()))
        }) else {
            return;
        };
        let act = if self.empty.get_untracked() {
            let there = self.work.now.with_untracked(|now| {
                let nets = yard_nets(&now.as_ref()?.0);
                nets.into_iter()
                    .find(|there| net.own.net.as_ref() == Some(&there.id))
            });
            let name = English::default().net_name(&whose, nth);
            let id = self.form.id("own-id");
            form_of::own_weight(&about, there.as_ref(), &name, &typed, &id)
        } else {
            form_of::weighed(&about, &net, &typed, &self.form.id("id"))
        };
        match act {
            Ok(act) => self.write(act),
            Err(wrong) => self.wrong.set(Some(wrong)),
        }
    }

    fn write(self, act: Act) {
        if self.busy.get_untracked() {
            return;
        }
        self.busy.set(true);
        self.wrong.set(None);
        self.failed.set(false);
        leptos::task::spawn_local(async move {
            let done = self.form.save(act).await;
            self.busy.try_set(false);
            if done.is_ok() {
                self.form.empty();
                self.empty.try_set(false);
                self.entry.focus();
            } else {
                self.failed.try_set(true);
            }
        });
    }
}
