//! A net on the scale.

use super::work::{Work, yard};
use crate::device::ids;
use crate::form::Form;
use crate::parts::{
    Action, ActionRow, Back, Entry, Frame, FrameKind, Hung, HungTag, NetScale, Pad, PadCell, Press,
    Quiet, QuietRow, Rank, ReadingSlot, Sentence, State,
};
use crate::places::{Saving, Unread};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::AnimalId;
use tussock_flow::acts::Act;
use tussock_flow::forms::nets::{self as form_of, Wrong};
use tussock_flow::routes::Route;
use tussock_flow::views::nets::{DayNet, NetState, NetsDay, nets_day, yard_nets};
use tussock_flow::views::shed::shed;
use tussock_flow::words::{English, HorsesWords, NetsWords, ShedWords, TubWords, UnitWords};

/// What the screen is at.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Phase {
    Opening,
    NoPlan,
    Filled,
    Weigh,
}

/// Everything the parts of this screen share.
#[derive(Clone, Copy)]
struct Scale {
    world: World,
    form: Form,
    work: Work,
    day: Memo<Option<NetsDay>>,
    next: Memo<Option<(usize, DayNet)>>,
    /// The empty net is on the scale.
    empty: RwSignal<bool>,
    /// Tomorrow's nets.
    ahead: RwSignal<bool>,
    value: Signal<String>,
    wrong: RwSignal<Option<Wrong>>,
    failed: RwSignal<bool>,
    busy: RwSignal<bool>,
    entry: Entry,
}

/// Weighing the nets of an animal's or group's day, from the first that is not weighed.
#[component]
pub fn Nets(
    /// For whom.
    animal: AnimalId,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let form = Form::open(world, Route::Nets(animal.clone()).to_string());
    let work = Work::of(world);
    let ahead = RwSignal::new(false);
    let id = StoredValue::new(animal);
    let day = Memo::new(move |_| {
        let ahead = ahead.get();
        work.now.with(|now| {
            let (shelf, today) = now.as_ref()?;
            let day = if ahead {
                today.day.succ_opt()?
            } else {
                today.day
            };
            id.with_value(|id| nets_day(shelf, today, id.as_str(), day))
        })
    });
    let next = Memo::new(move |_| {
        day.with(|day| day.as_ref()?.next().map(|(nth, net)| (nth, net.clone())))
    });
    let phase = Memo::new(move |_| {
        if work.now.with(Option::is_none) {
            Phase::Opening
        } else if day.with(Option::is_none) {
            Phase::NoPlan
        } else if next.with(Option::is_none) {
            Phase::Filled
        } else {
            Phase::Weigh
        }
    });
    let empty = RwSignal::new(false);
    let (reading, own, whose) = (form.text("reading"), form.text("own"), form.text("for"));
    let value = Signal::derive(move || {
        if empty.get() {
            return own.get();
        }
        // What was typed for one net is never taken for the next.
        let this = next.with(|next| next.as_ref().map(|(_, net)| net.key.to_string()));
        if this == Some(whose.get()) {
            reading.get()
        } else {
            String::new()
        }
    });
    let scale = Scale {
        world,
        form,
        work,
        day,
        next,
        empty,
        ahead,
        value,
        wrong: RwSignal::new(None),
        failed: RwSignal::new(false),
        busy: RwSignal::new(false),
        entry: Entry::new(),
    };
    let name = move || {
        day.with(|day| day.as_ref().map(|day| day.name.clone()))
            .unwrap_or_default()
    };
    let head = Signal::derive(move || {
        let of = day.with(|day| day.as_ref().map_or(0, |day| day.nets.len()));
        match next.with(|next| next.as_ref().map(|(nth, _)| *nth)) {
            Some(nth) => words.net_of(&name(), nth, of),
            None => words.shed().to_owned(),
        }
    });
    let when = Signal::derive(move || {
        next.with(|next| next.as_ref().map(|(_, net)| words.time(net.visit)))
    });
    let foot = move || {
        view! {
            <Show when=move || phase.get() == Phase::Weigh>{move || scale.quiet()}</Show>
            <Saving failed=scale.failed />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(Route::Shed.to_string()) }>
                {move || scale.action(phase.get(), &id.get_value())}
            </ActionRow>
        }
    };
    let inside = move || {
        match phase.get() {
        Phase::Opening => view! { <Sentence said=words.opening() /> }.into_any(),
        Phase::NoPlan => {
            let who = work.now.with_untracked(|now| {
                let (shelf, _) = now.as_ref()?;
                shelf.animal(&id.get_value()).map(|animal| animal.name)
            });
            view! { <Sentence said=words.no_nets(&who.unwrap_or_default()) /> }.into_any()
        }
        Phase::Filled => view! {
            <Sentence said=Signal::derive(move || words.all_weighed(&name(), &scale.when())) />
            {scale.hung()}
            <Show when=move || !ahead.get()>
                <QuietRow>
                    <Quiet says=words.tomorrows_nets() press=Callback::new(move |()| ahead.set(true)) />
                </QuietRow>
            </Show>
        }
        .into_any(),
        Phase::Weigh => scale.weighing(),
    }
    };
    view! {
        <Frame kind=FrameKind::Flow what=head when=when foot=foot>
            <Unread shelf=work.shelf />
            {inside}
        </Frame>
    }
}

impl Scale {
    fn net(self) -> Option<DayNet> {
        self.next
            .with(|next| next.as_ref().map(|(_, net)| net.clone()))
    }

    /// "today", or the day that is weighed for.
    fn when(self) -> String {
        let words = English::default();
        let day = self.day.with(|day| day.as_ref().map(|day| day.day));
        match day.filter(|_| self.ahead.get()) {
            Some(day) => words.for_day(&words.day(day)),
            None => words.for_today().to_owned(),
        }
    }

    fn type_in(self, text: String) {
        self.wrong.set(None);
        if self.empty.get_untracked() {
            self.form.set("own", text);
        } else if let Some(net) = self.next.with_untracked(|next| next.clone()) {
            self.form.set("for", net.1.key.to_string());
            self.form.set("reading", text);
        }
    }

    /// The slot, the cord of the scale, the nets of the day and the pad.
    fn weighing(self) -> AnyView {
        let words = English::default();
        let (empty, value, entry) = (self.empty, self.value, self.entry);
        let typed = move || !value.with(String::is_empty);
        let read = Memo::new(move |_| form_of::reading(&value.get()).ok());
        let line = Signal::derive(move || {
            let line = match (empty.get(), typed()) {
                (true, _) => words.empty_net_weighs(),
                (false, true) => words.scale_reads(),
                (false, false) => words.hang_until(),
            };
            line.to_owned()
        });
        let target = Signal::derive(move || {
            self.net()
                .map(|net| {
                    words.feed_number(if empty.get() {
                        net.own.weight
                    } else {
                        net.target()
                    })
                })
                .unwrap_or_default()
        });
        let note = Signal::derive(move || {
            if let Some(wrong) = self.wrong.get() {
                return Some(words.reading_wrong(&wrong));
            }
            let net = self.net()?;
            if empty.get() {
                return words.own_from(net.own.from).map(str::to_owned);
            }
            if !typed() {
                let made = words.hay_and_net(net.hay, &net.own);
                return Some(if net.soaked {
                    format!("{made}, {}", words.before_soaking())
                } else {
                    made
                });
            }
            read.get().map(|read| words.on_scale(net.judge(read)))
        });
        let sentence = Signal::derive(move || {
            let reading = read.get().filter(|_| typed());
            self.net()
                .map(|net| words.scale_picture(net.target(), reading))
                .unwrap_or_default()
        });
        let at = Signal::derive(move || Some(self.net()?.place(read.get()?)));
        let marks = Signal::derive(move || {
            self.net().map_or_else(Default::default, |net| {
                let [light, heavy] = net.ends();
                [light, net.target(), heavy].map(|mass| words.feed_number(mass))
            })
        });
        Effect::new(move |_| {
            // Once it is drawn: the keys of a keyboard type into the slot at once.
            request_animation_frame(move || entry.focus());
        });
        let save = Callback::new(move |()| self.save());
        view! {
            <ReadingSlot
                line
                unit=words.mass_unit(words.shown.mass)
                target
                value
                on_input=Callback::new(move |text| self.type_in(text))
                on_enter=save
                entry
                note
                rank=Rank::Sentence
            />
            <Show when=move || !empty.get()>
                <NetScale sentence at marks tolerance=DayNet::tolerance() />
            </Show>
            {self.hung()}
            <Pad
                name=words.pad()
                cells=PadCell::number(".", words.point(), words.erase())
                on_key=Callback::new(move |key: crate::parts::Key| {
                    self.type_in(key.typed(&value.get_untracked()));
                })
                entry
                keyboards=(words.phone_keys().to_owned(), words.these_keys().to_owned())
            />
        }
        .into_any()
    }

    /// The day's nets as small tags, and the same as a line.
    fn hung(self) -> impl IntoView {
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
            self.day
                .get()
                .map(|day| words.weighed_of(day.weighed(), day.nets.len(), day.hay(), &self.when()))
        };
        view! {
            <Hung name=words.nets_of_day()>{tags}</Hung>
            <p>{line}</p>
        }
    }

    fn quiet(self) -> impl IntoView {
        let words = English::default();
        let left = move || {
            self.day
                .with(|day| day.as_ref().map_or(0, NetsDay::to_weigh))
        };
        let fill = Callback::new(move |()| {
            let acts = self.day.with_untracked(|day| {
                day.as_ref()
                    .map(|day| form_of::all_to_target(day, ids::new))
            });
            match acts {
                Some(Ok(act)) => self.write(act),
                Some(Err(error)) => self.wrong.set(Some(Wrong::Log(error))),
                None => {}
            }
        });
        let turn = Callback::new(move |()| {
            self.wrong.set(None);
            self.empty.update(|empty| *empty = !*empty);
            self.entry.focus();
        });
        let turn_says = Signal::derive(move || {
            let says = if self.empty.get() {
                words.leave_empty_net()
            } else {
                words.weigh_empty_net()
            };
            says.to_owned()
        });
        view! {
            <QuietRow>
                <Show when=move || !self.empty.get()>
                    <Quiet says=Signal::derive(move || words.filled_to_target(left())) press=fill />
                </Show>
                <Quiet says=turn_says press=turn />
            </QuietRow>
        }
    }

    fn action(self, phase: Phase, id: &AnimalId) -> AnyView {
        let words = English::default();
        match phase {
            Phase::Weigh => {
                let says = Signal::derive(move || {
                    let left = self
                        .day
                        .with(|day| day.as_ref().map_or(0, NetsDay::to_weigh));
                    let says = match (self.empty.get(), left) {
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
                let plan = Route::Plan(id.clone()).to_string();
                view! { <Action says=words.see_plan() press=plan /> }.into_any()
            }
            Phase::Filled | Phase::Opening => {
                let other = self.work.now.with_untracked(|now| {
                    let (shelf, today) = now.as_ref()?;
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

    fn save(self) {
        let typed = self.value.get_untracked();
        let Some((nth, net)) = self.next.get_untracked() else {
            return;
        };
        let act = if self.empty.get_untracked() {
            let there = self.work.now.with_untracked(|now| {
                let nets = yard_nets(&now.as_ref()?.0);
                nets.into_iter()
                    .find(|there| net.own.net.as_ref() == Some(&there.id))
            });
            let name = English::default().net_name(nth);
            let id = self.form.id("own-id");
            form_of::own_weight(&yard(self.world), there.as_ref(), &name, &typed, &id)
        } else {
            let Some(about) = self
                .day
                .with_untracked(|day| Some(day.as_ref()?.about.clone()))
            else {
                return;
            };
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
            let done = self.world.act(act, Some(self.form.key())).await;
            self.busy.try_set(false);
            if done.is_ok() {
                self.form.set("reading", String::new());
                self.form.set("own", String::new());
                self.form.clear();
                self.empty.try_set(false);
                self.entry.focus();
            } else {
                self.failed.try_set(true);
            }
        });
    }
}
