//! What rings for one tub: its clock time for the phone's own alarm, a calendar file, and what this page does while open.

use super::means::MeansRows;
use super::work::Work;
use crate::device::clock::DeviceZone;
use crate::device::share::{self, TextFile};
use crate::parts::{
    Action, ActionRow, Back, Figure, Frame, FrameKind, LargeSlot, Press, Rank, Row, Rows, Sentence,
};
use crate::places::Unread;
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::TubId;
use tussock_core::units::Zone;
use tussock_flow::calendar::{self, CALENDAR_TYPE, Calendar};
use tussock_flow::routes::Route;
use tussock_flow::views::remind::{Means, Sent, TubReminder, tub_reminder};
use tussock_flow::words::{English, HorsesWords, RemindWords, TubWords, UnitWords};

/// Hands over a calendar file, and keeps what became of it.
pub(super) fn send(file: &Calendar, sent: RwSignal<Option<Sent>>) {
    let file = TextFile {
        name: file.name.to_owned(),
        kind: CALENDAR_TYPE,
        text: file.text(),
    };
    sent.set(None);
    leptos::task::spawn_local(async move {
        sent.try_set(Some(share::send(file).await));
    });
}

/// What became of the file, said where the action is.
pub(super) fn sent_line(sent: RwSignal<Option<Sent>>) -> impl IntoView {
    let words = English::default();
    view! { <p class="soft" role="status">{move || sent.get().map(|sent| words.sent(sent))}</p> }
}

/// What rings when no page is open.
pub(super) fn closed() -> impl IntoView {
    let words = English::default();
    view! {
        <h2>{words.when_closed()}</h2>
        <p>{words.closed_truth()}</p>
        <p>{words.file_truth(share::here(CALENDAR_TYPE))}</p>
    }
}

/// Reminders of one soak, by its own id or by that of its tub.
#[component]
pub fn Remind(
    /// Which.
    tub: TubId,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let work = Work::of(world);
    let back = Route::Tub(tub.clone()).to_string();
    let id = StoredValue::new(tub);
    let of = Memo::new(move |_| {
        work.now.with(|now| {
            let (shelf, today) = now.as_ref()?;
            Some(id.with_value(|id| tub_reminder(shelf, today, id)))
        })
    });
    let sent = RwSignal::new(None);
    let what = Signal::derive(move || {
        let name = of.with(|of| of.as_ref()?.as_ref()?.tub.clone());
        name.unwrap_or_else(|| words.the_tub().to_owned())
    });
    let whose = Signal::derive(move || {
        of.with(|of| Some(of.as_ref()?.as_ref()?.whose.clone()))
            .filter(|whose| !whose.is_empty())
    });
    // Drawn anew when what stands here is another thing, not with each beat.
    let kind = Memo::new(move |_| {
        of.with(|of| {
            of.as_ref().map(|of| {
                of.as_ref().map_or(Kind::Nothing, |of| {
                    if of.is_over() { Kind::Over } else { Kind::Open }
                })
            })
        })
    });
    let inside = move || match kind.get() {
        None => view! { <Sentence said=words.opening() /> }.into_any(),
        Some(Kind::Nothing) => view! { <Sentence said=words.no_tub_to_remind() /> }.into_any(),
        Some(Kind::Over) => view! {
            <Sentence said=words.tub_is_over() />
            {closed()}
        }
        .into_any(),
        Some(Kind::Open) => view! {
            {clock_time(world, of)}
            {times(world, of)}
            {closed()}
            <MeansRows which=vec![Means::Sound, Means::Notification, Means::Awake] />
        }
        .into_any(),
    };
    let press = Callback::new(move |()| {
        let file = of.with_untracked(|of| {
            let of = of.as_ref()?.as_ref()?;
            Some(calendar::tub(of, &words))
        });
        if let Some(file) = file {
            send(&file, sent);
        }
    });
    let action = move || {
        let says = match kind.get() {
            Some(Kind::Open) => words.file_of_tub(),
            Some(Kind::Over) => words.file_of_tub_over(),
            Some(Kind::Nothing) | None => {
                let route = Route::Shed.to_string();
                return view! { <Action says=words.to_the_shed() press=route /> }.into_any();
            }
        };
        view! { <Action says press=press /> }.into_any()
    };
    let foot = move || {
        let back = back.clone();
        view! {
            {sent_line(sent)}
            <ActionRow back=Back { name: words.back().into(), press: Press::from(back) }>
                {action}
            </ActionRow>
        }
    };
    view! {
        <Frame kind=FrameKind::Flow what=what when=whose foot=foot>
            <Unread shelf=work.shelf />
            {inside}
        </Frame>
    }
}

/// What stands under the address.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Kind {
    Nothing,
    Over,
    Open,
}

type Of = Memo<Option<Option<TubReminder>>>;

/// What is next, as a clock time in large figures.
fn clock_time(world: World, of: Of) -> impl IntoView {
    let words = English::default();
    let next = Memo::new(move |_| {
        let now = world.now.get();
        of.with(|of| {
            let next = of.as_ref()?.as_ref()?.next(now)?;
            Some((next.what, next.at, next.at <= now))
        })
    });
    let line = Signal::derive(move || {
        next.get()
            .map(|(what, _, late)| words.clock_of(what, late).to_owned())
            .unwrap_or_default()
    });
    let figures = Signal::derive(move || {
        let figure = |(_, at, _)| Figure {
            number: words.time_at(at, &DeviceZone),
            unit: String::new(),
        };
        next.get().map(figure).into_iter().collect::<Vec<_>>()
    });
    let note = Memo::new(move |_| Some(words.own_timer(world.now.get(), &DeviceZone)));
    view! { <LargeSlot line=line figures=figures note=note rank=Rank::Sentence /> }
}

/// The three times.
fn times(world: World, of: Of) -> impl IntoView {
    let words = English::default();
    let rows = move || {
        let today = DeviceZone.to_local(world.now.get_untracked()).date;
        let deadlines = of.with(|of| of.as_ref()?.as_ref().map(|of| of.deadlines));
        deadlines
            .into_iter()
            .flatten()
            .map(|deadline| {
                let second = (!deadline.open).then(|| words.step_done().to_owned());
                let at = words.moment(deadline.at, today, &DeviceZone);
                view! { <Row name=words.deadline(deadline.what) value=at second=second /> }
            })
            .collect_view()
    };
    view! { <Rows name=words.deadlines()>{rows}</Rows> }
}
