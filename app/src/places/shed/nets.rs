//! A net on the scale.

use super::another_hay::another_hay;
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
use tussock_core::units::AsFed;
use tussock_flow::forms::nets::{self as form_of, Wrong};
use tussock_flow::routes::Route;
use tussock_flow::views::nets::{DayNet, NetsDay, Pass, pass};
use tussock_flow::words::{English, HorsesWords, NetsWords, SoaksWords, UnitWords};

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
    /// Whose nets; `None` for all that are due.
    pub whose: StoredValue<Option<AnimalId>>,
    /// All that is filled in one go.
    pub pass: Memo<Option<Pass>>,
    /// The day of the net that is next, or of the last one.
    pub day: Memo<Option<NetsDay>>,
    pub next: Memo<Option<(usize, DayNet)>>,
    /// What a slice of its hay weighs.
    pub slice: Memo<Option<AsFed>>,
    /// The empty net is on the scale.
    pub empty: RwSignal<bool>,
    /// How many days ahead are filled as well.
    pub ahead: RwSignal<usize>,
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
    weighing(Some(animal))
}

/// Weighing all nets that are due, whoever they are for, in one pass.
#[component]
pub fn WeighNets() -> impl IntoView {
    weighing(None)
}

fn weighing(whose: Option<AnimalId>) -> AnyView {
    let world = World::here();
    let words = English::default();
    let route = whose.clone().map_or(Route::WeighNets, Route::Nets);
    let form = Form::open(world, route.to_string());
    let work = Work::of(world);
    let ahead = RwSignal::new(0);
    let id = StoredValue::new(whose);
    let pass = Memo::new(move |_| {
        let ahead = ahead.get();
        work.now.with(|now| {
            let (shelf, today) = now.as_ref()?;
            id.with_value(|id| {
                let whose = id.as_ref().map(AnimalId::as_str);
                Some(pass(shelf, today, whose, ahead)).filter(|pass| !pass.days.is_empty())
            })
        })
    });
    let day = Memo::new(move |_| {
        pass.with(|pass| {
            let pass = pass.as_ref()?;
            let next = pass.next().map(|(day, _, _)| day);
            next.or(pass.days.last()).cloned()
        })
    });
    let next = Memo::new(move |_| {
        pass.with(|pass| {
            let (_, nth, net) = pass.as_ref()?.next()?;
            Some((nth, net.clone()))
        })
    });
    let phase = Memo::new(move |_| {
        if work.now.with(Option::is_none) {
            Phase::Opening
        } else if pass.with(Option::is_none) {
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
        whose: id,
        pass,
        day,
        next,
        slice: Memo::new(move |_| next.with(|next| next.as_ref()?.1.slice)),
        empty,
        ahead,
        value,
        wrong: RwSignal::new(None),
        failed: RwSignal::new(false),
        busy: RwSignal::new(false),
        entry: Entry::new(),
    };
    let head = Memo::new(move |_| scale.head());
    let when = Signal::derive(move || {
        next.with(|next| next.as_ref().map(|(_, net)| words.time(net.visit)))
    });
    let lot =
        Signal::derive(move || next.with(|next| next.as_ref().map(|(_, net)| net.lot.clone())));
    let fed = Signal::derive(move || {
        let of = day.with(|day| day.as_ref().map(|day| day.about.id().to_owned()));
        of.unwrap_or_default()
    });
    let foot = move || {
        view! {
            <Show when=move || phase.get() == Phase::Weigh>{move || scale.fill()}</Show>
            <Saving failed=scale.failed />
            <Show when=move || phase.get() == Phase::Weigh>{move || scale.pad()}</Show>
            <ActionRow back=Back { name: words.back().into(), press: Press::from(Route::Shed.to_string()) }>
                {move || scale.action(phase.get())}
            </ActionRow>
        }
    };
    let inside = move || scale.inside(phase.get());
    view! {
        <Frame kind=FrameKind::Flow what=head when=when foot=foot>
            <Unread shelf=work.shelf />
            {work.waiting(id.with_value(|id| id.as_ref().map(|id| id.0.clone())))}
            {scale.told(head)}
            {inside}
            <Show when=move || phase.get() == Phase::Weigh>
                {move || another_hay(work, fed, lot, scale.failed)}
            </Show>
        </Frame>
    }
    .into_any()
}

impl Scale {
    fn inside(self, phase: Phase) -> AnyView {
        let words = English::default();
        match phase {
            Phase::Opening => view! { <Sentence said=words.opening() /> }.into_any(),
            Phase::NoPlan => {
                let who = self.work.now.with_untracked(|now| {
                    let (shelf, _) = now.as_ref()?;
                    let animal = self.whose.with_value(|id| shelf.animal(id.as_ref()?));
                    animal.map(|animal| animal.name)
                });
                view! { <Sentence said=words.no_nets(&who.unwrap_or_default()) /> }.into_any()
            }
            Phase::Filled => view! {
                <Sentence said=Signal::derive(move || self.filled()) />
                {self.hung()}
                <QuietRow>
                    {self.one_more_day()}
                    {self.left_link()}
                </QuietRow>
            }
            .into_any(),
            Phase::Weigh => self.weighing(),
        }
    }

    fn net(self) -> Option<DayNet> {
        self.next
            .with(|next| next.as_ref().map(|(_, net)| net.clone()))
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
            if !typed() && net.anew.is_some() {
                return Some(words.anew_reading(&net));
            }
            if !typed() {
                let made = words.hay_and_net(net.hay, &net.own);
                return Some(if net.soaked {
                    format!("{made}, {}", words.before_soaking())
                } else {
                    made
                });
            }
            read.get()
                .map(|read| words.on_scale_in(net.judge(read), net.slice))
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
                {self.one_more_day()}
                {self.left_link()}
            </QuietRow>
        }
        .into_any()
    }
}
