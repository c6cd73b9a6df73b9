//! One soak, from the water to the muck heap.

use super::work::{Work, shape};
use crate::device::clock::{self, DeviceZone};
use crate::device::ids;
use crate::form::Form;
use crate::parts::{
    Action, ActionRow, Back, Caution, Figure, Frame, FrameKind, LargeSlot, Press, Quiet, QuietRow,
    Rank, Sentence, StopBlock, TubCord, TubTag,
};
use crate::places::{Saving, Unread};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::TubId;
use tussock_core::soak::{Ended, TubState, TubStep};
use tussock_core::units::{Instant, Zone};
use tussock_flow::acts::Act;
use tussock_flow::forms::tub::{self as form_of, Wrong};
use tussock_flow::routes::Route;
use tussock_flow::views::last_step::{LastStep, last_step};
use tussock_flow::views::shed::Standing;
use tussock_flow::views::tub::{TubSeen, seen};
use tussock_flow::words::{
    English, HorsesWords, RemindWords, SoakWords, SoaksWords, TubWords, UnitWords,
};

pub(super) type Open = tussock_flow::views::tub::Tub;

/// Everything the parts of this screen share.
#[derive(Clone, Copy)]
pub(super) struct AtTub {
    pub world: World,
    pub form: Form,
    pub work: Work,
    pub seen: Memo<Option<TubSeen>>,
    /// The last step, which can be taken back.
    pub last: Memo<Option<LastStep>>,
    /// Times are being corrected.
    pub correcting: RwSignal<bool>,
    pub wrong: RwSignal<Option<(usize, Wrong)>>,
    pub failed: RwSignal<bool>,
    pub busy: RwSignal<bool>,
}

/// A soak, by its own id or by that of its tub.
#[component]
pub fn Tub(
    /// Which.
    tub: TubId,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let form = Form::open(world, Route::Tub(tub.clone()).to_string());
    let work = Work::of(world);
    let id = StoredValue::new(tub);
    let seen = Memo::new(move |_| {
        work.now.with(|now| {
            let (shelf, today) = now.as_ref()?;
            Some(id.with_value(|id| seen(shelf, today, id)))
        })
    });
    let last = Memo::new(move |_| {
        work.now.with(|now| {
            let (shelf, today) = now.as_ref()?;
            id.with_value(|id| last_step(shelf, today, id))
        })
    });
    let at = AtTub {
        last,
        world,
        form,
        work,
        seen,
        correcting: RwSignal::new(false),
        wrong: RwSignal::new(None),
        failed: RwSignal::new(false),
        busy: RwSignal::new(false),
    };
    let what = Signal::derive(move || {
        at.open(|open| {
            let tub = open.soak.tub_name.clone();
            tub.unwrap_or_else(|| words.the_tub().to_owned())
        })
        .unwrap_or_else(|| words.the_tub().to_owned())
    });
    let whose = Signal::derive(move || {
        at.open(|open| open.soak.name.clone())
            .filter(|name| !name.is_empty())
    });
    let step = Memo::new(move |_| at.open(|open| open.state(world.now.get()).step()));
    let foot = move || {
        view! {
            <Show when=move || step.get().is_some()>{move || at.quiet(step.get())}</Show>
            {move || at.back()}
            <Saving failed=at.failed />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(Route::Shed.to_string()) }>
                {move || at.action(step.get())}
            </ActionRow>
        }
    };
    let past = Memo::new(move |_| step.get() == Some(TubStep::ThrowAway));
    // Drawn anew when what stands here is another thing, not with each beat.
    let kind = Memo::new(move |_| match seen.get() {
        None => 0,
        Some(TubSeen::Open(_)) => 1,
        Some(TubSeen::Over(_)) => 2,
        Some(TubSeen::Empty(_)) => 3,
        Some(TubSeen::Nothing) => 4,
    });
    let inside = move || {
        // A memo is reckoned when it is read, and only then hears of what it stands on.
        let _ = kind.get();
        match seen.get_untracked() {
            None => view! { <Sentence said=words.opening() /> }.into_any(),
            Some(TubSeen::Nothing) => view! { <Sentence said=words.no_such_tub() /> }.into_any(),
            Some(TubSeen::Empty(name)) => {
                view! { <Sentence said=words.nothing_in(&name) /> }.into_any()
            }
            Some(TubSeen::Over(state)) => {
                view! { <Sentence said=words.tub(&state, &DeviceZone).sentence /> }.into_any()
            }
            Some(TubSeen::Open(_)) => view! {
                {move || if past.get() { at.stop_block() } else { at.slot() }}
                {move || if at.correcting.get() { at.times() } else { at.cord() }}
            }
            .into_any(),
        }
    };
    view! {
        <Frame kind=FrameKind::Flow what=what when=whose foot=foot>
            <Unread shelf=work.shelf />
            {inside}
        </Frame>
    }
}

impl AtTub {
    /// Something of the soak that is going on.
    pub(super) fn open<T>(self, pick: impl FnOnce(&Open) -> T) -> Option<T> {
        self.seen.with(|seen| match seen {
            Some(TubSeen::Open(open)) => Some(pick(open)),
            _ => None,
        })
    }

    fn state(self) -> Option<TubState> {
        let now = self.world.now.get();
        self.open(|open| open.state(now))
    }

    fn figures(self) -> Memo<Vec<Figure>> {
        let words = English::default();
        Memo::new(move |_| {
            let minutes = match self.state() {
                Some(
                    TubState::InWater { left, .. }
                    | TubState::Draining { left, .. }
                    | TubState::Feed { left, .. }
                    | TubState::Fed { left, .. },
                ) => left.to_minutes(),
                Some(TubState::LiftOut { late, .. }) => match late.to_minutes() {
                    0 => return Vec::new(),
                    late => late,
                },
                Some(TubState::ThrowAway { wet_for, .. }) => wet_for.to_minutes(),
                Some(TubState::Empty | TubState::Done { .. }) | None => return Vec::new(),
            };
            words
                .figures(minutes)
                .into_iter()
                .map(|(number, unit)| Figure {
                    number,
                    unit: unit.to_owned(),
                })
                .collect()
        })
    }

    fn slot(self) -> AnyView {
        let words = English::default();
        let line = Memo::new(move |_| {
            self.state()
                .map(|state| words.slot_head(&state).to_owned())
                .unwrap_or_default()
        });
        let note = Memo::new(move |_| {
            let now = self.world.now.get();
            self.state()
                .map(|state| words.slot_note(&state, now, &DeviceZone))
        });
        let figures = self.figures();
        view! { <LargeSlot line=line figures=figures note=note rank=Rank::Sentence /> }.into_any()
    }

    fn stop_block(self) -> AnyView {
        let words = English::default();
        let figures = self.figures();
        view! {
            <StopBlock order=words.throw_away() rank=Rank::Sentence>
                <LargeSlot line="" figures=figures note=words.since_it_went_in().to_owned() />
            </StopBlock>
        }
        .into_any()
    }

    /// The four tags, and what to expect of the hay.
    fn cord(self) -> AnyView {
        let words = English::default();
        let tags = Memo::new(move |_| {
            let now = self.world.now.get();
            self.open(|open| tags(open, now)).unwrap_or_default()
        });
        let loss = self.open(|open| words.expect_less_sugar(&open.loss));
        let sooner = self
            .open(|open| open.line.shortened)
            .flatten()
            .map(|shortened| {
                let said = words.shortened(shortened);
                view! { <Caution said=said.sentence why=words.why_asked()>{said.why}</Caution> }
            });
        let dry = self.open(|open| words.dry_loss(&open.dry_lost));
        let liquor = words
            .all_liquor()
            .into_iter()
            .map(|(_, said)| view! { <Caution said=said.sentence why=words.why_asked()>{said.why}</Caution> })
            .collect_view();
        view! {
            <TubCord name=words.cord_of_tub() tags />
            <p>{loss} " " <strong>{words.not_proven_until()}</strong></p>
            {dry.map(|said| view! { <p class="soft">{said.sentence} ". " {said.why}</p> })}
            {sooner}
            {liquor}
        }
        .into_any()
    }

    /// Takes the last step back, however long ago it was.
    fn back(self) -> Option<impl IntoView> {
        let words = English::default();
        let last = self.last.get()?;
        let says = words.take_back(&last, &DeviceZone);
        let press = Callback::new(move |()| self.write(last.back()));
        Some(view! { <QuietRow><Quiet says press /></QuietRow> })
    }

    fn quiet(self, step: Option<TubStep>) -> impl IntoView {
        let words = English::default();
        let turn = Callback::new(move |()| {
            self.wrong.set(None);
            if !self.correcting.get_untracked() {
                self.fill_times();
            }
            self.correcting.update(|on| *on = !*on);
        });
        let says = Signal::derive(move || {
            let says = if self.correcting.get() {
                words.leave_times()
            } else {
                words.correct_a_time()
            };
            says.to_owned()
        });
        let stop = Callback::new(move |()| {
            if let Some(Ok(act)) = self.open(|open| form_of::stop(open, &ids::new())) {
                self.write(act);
            }
        });
        let remind = self.open(|open| Route::Remind(TubId(open.soak.id.0.clone())));
        let eaten = Callback::new(move |()| {
            if let Some(Ok(act)) = self.open(|open| form_of::end(open, Ended::Eaten, &ids::new())) {
                self.write(act);
            }
        });
        view! {
            <QuietRow>
                <Quiet says press=turn />
                <Quiet says=words.stop_this_tub() press=stop />
                {remind.map(|route| view! { <Quiet says=words.remind_me() press=route.to_string() /> })}
                {(step == Some(TubStep::Fed)).then(|| view! { <Quiet says=words.eaten_up() press=eaten /> })}
            </QuietRow>
        }
    }

    fn action(self, step: Option<TubStep>) -> AnyView {
        let words = English::default();
        let Some(says) = step.and_then(|step| words.tub_action(step)) else {
            let empty = matches!(self.seen.get(), Some(TubSeen::Empty(_)));
            let (says, route) = if empty {
                (words.start_the_soak(), Route::NewTub)
            } else {
                (words.to_the_shed(), Route::Shed)
            };
            return view! { <Action says=says press=route.to_string() /> }.into_any();
        };
        let press = Callback::new(move |()| {
            if self.correcting.get_untracked() {
                self.save_times();
            } else {
                self.go_on();
            }
        });
        let says = Signal::derive(move || {
            let says = if self.correcting.get() {
                words.save_times()
            } else {
                says
            };
            says.to_owned()
        });
        view! { <Action says press busy=self.busy /> }.into_any()
    }

    /// Takes the soak on to its next step.
    fn go_on(self) {
        let act = self.work.now.with_untracked(|now| {
            let (_, today) = now.as_ref()?;
            self.open(|open| form_of::next(open, today, clock::now(), ids::new))
        });
        match act {
            Some(Ok(Some(act))) => self.write(act),
            Some(Err(_)) => self.failed.set(true),
            Some(Ok(None)) | None => {}
        }
    }

    pub(super) fn write(self, act: Act) {
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
                self.correcting.try_set(false);
            } else {
                self.failed.try_set(true);
            }
        });
    }
}

fn tags(open: &Open, now: Instant) -> Vec<TubTag> {
    let words = English::default();
    let today = DeviceZone.to_local(now).date;
    open.cord(now)
        .into_iter()
        .map(|step| {
            let word = match step.standing {
                Standing::Done => words.step_done(),
                Standing::Due => words.step_due(),
                Standing::Late => words.step_late(),
                Standing::Stop => words.step_now(),
                Standing::Later | Standing::Care | Standing::NotKnown => "",
            };
            let second = match (step.step, open.soak.hay) {
                (TubStep::Feed, Some(hay)) => words.feeds_like(hay, open.like),
                (TubStep::InWater, _) => open.lot.clone().unwrap_or_default(),
                _ => String::new(),
            };
            TubTag {
                state: shape(step.standing),
                word: word.to_owned(),
                time: words.moment(step.at, today, &DeviceZone),
                what: words.tub_step(step.step).to_owned(),
                second,
            }
        })
        .collect()
}
