//! A net on the scale.

use super::work::Work;
use crate::form::Form;
use crate::parts::{
    ActionRow, Back, Entry, Frame, FrameKind, NetScale, PadSwitch, Press, Quiet, QuietRow, Rank,
    ReadingSlot, Sentence,
};
use crate::places::{Saving, Unread};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::AnimalId;
use tussock_flow::forms::nets::{self as form_of, Wrong};
use tussock_flow::routes::Route;
use tussock_flow::views::nets::{DayNet, NetsDay, nets_day};
use tussock_flow::words::{English, HorsesWords, NetsWords, ShedWords, SoaksWords, UnitWords};

/// What the screen is at.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Phase {
    Opening,
    NoPlan,
    Filled,
    Weigh,
}

/// Everything the parts of this screen share.
#[derive(Clone, Copy)]
pub(super) struct Scale {
    pub form: Form,
    pub work: Work,
    pub day: Memo<Option<NetsDay>>,
    pub next: Memo<Option<(usize, DayNet)>>,
    /// The empty net is on the scale.
    pub empty: RwSignal<bool>,
    /// Tomorrow's nets.
    pub ahead: RwSignal<bool>,
    pub value: Signal<String>,
    pub wrong: RwSignal<Option<Wrong>>,
    pub failed: RwSignal<bool>,
    pub busy: RwSignal<bool>,
    pub entry: Entry,
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
    let head = Signal::derive(move || {
        let of = day.with(|day| day.as_ref().map_or(0, |day| day.nets.len()));
        match next.with(|next| next.as_ref().map(|(nth, _)| *nth)) {
            Some(nth) => words.net_of(&scale.name(), nth, of),
            None => words.shed().to_owned(),
        }
    });
    let when = Signal::derive(move || {
        next.with(|next| next.as_ref().map(|(_, net)| words.time(net.visit)))
    });
    let foot = move || {
        view! {
            <Show when=move || phase.get() == Phase::Weigh>{move || scale.fill()}</Show>
            <Saving failed=scale.failed />
            <Show when=move || phase.get() == Phase::Weigh>{move || scale.pad()}</Show>
            <ActionRow back=Back { name: words.back().into(), press: Press::from(Route::Shed.to_string()) }>
                {move || scale.action(phase.get(), &id.get_value())}
            </ActionRow>
        }
    };
    let inside = move || scale.inside(phase.get(), &id.get_value());
    view! {
        <Frame kind=FrameKind::Flow what=head when=when foot=foot>
            <Unread shelf=work.shelf />
            {work.waiting(Some(id.with_value(|id| id.0.clone())))}
            {inside}
        </Frame>
    }
}

impl Scale {
    fn inside(self, phase: Phase, id: &AnimalId) -> AnyView {
        let words = English::default();
        match phase {
        Phase::Opening => view! { <Sentence said=words.opening() /> }.into_any(),
        Phase::NoPlan => {
            let who = self.work.now.with_untracked(|now| {
                let (shelf, _) = now.as_ref()?;
                shelf.animal(id).map(|animal| animal.name)
            });
            view! { <Sentence said=words.no_nets(&who.unwrap_or_default()) /> }.into_any()
        }
        Phase::Filled => view! {
            <Sentence said=Signal::derive(move || {
                let all = self.day.with(|day| day.as_ref().is_some_and(NetsDay::all_weighed));
                if all {
                    words.all_weighed(&self.name(), &self.when())
                } else {
                    words.none_left(&self.name(), &self.when())
                }
            }) />
            {self.hung()}
            <Show when=move || !self.ahead.get()>
                <QuietRow>
                    <Quiet says=words.tomorrows_nets() press=Callback::new(move |()| self.ahead.set(true)) />
                </QuietRow>
            </Show>
        }
        .into_any(),
        Phase::Weigh => self.weighing(),
    }
    }

    fn name(self) -> String {
        self.day
            .with(|day| day.as_ref().map(|day| day.name.clone()))
            .unwrap_or_default()
    }

    fn net(self) -> Option<DayNet> {
        self.next
            .with(|next| next.as_ref().map(|(_, net)| net.clone()))
    }

    /// "today", or the day that is weighed for.
    pub(super) fn when(self) -> String {
        let words = English::default();
        let day = self.day.with(|day| day.as_ref().map(|day| day.day));
        match day.filter(|_| self.ahead.get()) {
            Some(day) => words.for_day(&words.day(day)),
            None => words.for_today().to_owned(),
        }
    }

    pub(super) fn type_in(self, text: String) {
        self.wrong.set(None);
        if self.empty.get_untracked() {
            self.form.set("own", text);
        } else if let Some(net) = self.next.get_untracked() {
            // Without a reading there is no net it is of.
            let whose = if text.is_empty() {
                String::new()
            } else {
                net.1.key.to_string()
            };
            self.form.set("for", whose);
            self.form.set("reading", text);
        }
    }

    /// The slot, the cord of the scale and the nets of the day.
    fn weighing(self) -> AnyView {
        let words = English::default();
        let (empty, value, entry) = (self.empty, self.value, self.entry);
        let typed = move || !value.with(String::is_empty);
        let read = Memo::new(move |_| form_of::reading(&value.get()).ok());
        let line = Signal::derive(move || {
            let line = match (empty.get(), typed()) {
                (true, _) => words.empty_net_weighs(),
                (false, true) => words.scale_reads(),
                (false, false) if self.net().is_some_and(|net| net.dry.is_some()) => {
                    words.not_soaked_hang_until()
                }
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
            if !typed() && net.dry.is_some() {
                return Some(words.dry_reading(&net));
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
            <QuietRow>
                <Quiet says=self.turn_says() press=Callback::new(move |()| self.turn()) />
                <PadSwitch entry phone=words.phone_keys() pad=words.these_keys() />
            </QuietRow>
        }
        .into_any()
    }
}
