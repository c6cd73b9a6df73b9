//! The jobs of the yard, late first, then by time.

use super::waits::waits;
use crate::device::clock::DeviceZone;
use crate::device::ids;
use crate::parts::{
    Action, ActionRow, Cord, Frame, FrameKind, Hang, Quiet, QuietRow, Sentence, Tag, Tick,
};
use crate::places::shed::{Work, shape, yard};
use crate::places::{Places, Saving, Unread, UpdateOffer};
use crate::world::World;
use leptos::prelude::*;
use std::iter;
use tussock_core::log::bodies::JobAnswer;
use tussock_core::round::Job;
use tussock_core::units::LocalDate;
use tussock_flow::acts::Act;
use tussock_flow::forms::round::{Refused, Ticking};
use tussock_flow::routes::{Place, Route};
use tussock_flow::views::round::{route, standing, ticks};
use tussock_flow::words::{English, HorsesWords, RoundWords, TubWords, UnitWords};

/// The answers to days away.
const AWAY: [JobAnswer; 3] = [
    JobAnswer::AsPlanned,
    JobAnswer::SomebodyElse,
    JobAnswer::NotKnown,
];

/// Everything the parts of this screen share.
#[derive(Clone, Copy)]
struct AtRound {
    world: World,
    work: Work,
    failed: RwSignal<bool>,
    refused: RwSignal<bool>,
    busy: RwSignal<bool>,
}

/// The round.
#[component]
pub fn Round() -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let work = Work::of(world);
    let at = AtRound {
        world,
        work,
        failed: RwSignal::new(false),
        refused: RwSignal::new(false),
        busy: RwSignal::new(false),
    };
    let summary = Memo::new(move |_| {
        work.now
            .with(|now| now.as_ref().map(|(_, today)| today.summary(&DeviceZone)))
    });
    let said = move || match summary.get() {
        None => words.opening().to_owned(),
        Some(summary) => words.how_it_stands(summary),
    };
    let jobs = Memo::new(move |_| {
        work.now.with(|now| {
            now.as_ref()
                .map(|(_, today)| (today.parted(&DeviceZone), today.day))
        })
    });
    let tags = move || {
        let ([today, _], day) = jobs.get()?;
        Some(at.tags(today, day))
    };
    let after = move || {
        let ([_, after], day) = jobs.get()?;
        let first = words.job_time(after.first()?, day, &DeviceZone);
        let says = words.after_midnight(after.len(), &first);
        Some(view! {
            <details class="numbers">
                <summary>{says.clone()}</summary>
                <Cord name=says.clone()>{at.tags(after, day)}</Cord>
            </details>
        })
    };
    // The first job that is due; when none is, the next one, which is only opened.
    let first = Memo::new(move |_| {
        work.now.with(|now| {
            let (_, today) = now.as_ref()?;
            match today.first() {
                Some(job) => Some((job.clone(), true)),
                None => Some((today.round.jobs.first()?.clone(), false)),
            }
        })
    });
    let says = Signal::derive(move || match first.get() {
        Some((job, true)) => words.do_now(&job),
        Some((job, false)) => words.open_next(&job),
        None => words.to_the_horses().to_owned(),
    });
    let press = Callback::new(move |()| match first.get_untracked() {
        Some((job, true)) if ticks(&job) => at.tick(&job),
        Some((job, _)) => world.go(&route(&job)),
        None => world.go(&Route::Horses),
    });
    let visit = Memo::new(move |_| work.now.with(|now| now.as_ref()?.1.visit()));
    let planned = Callback::new(move |()| {
        if let Some(visit) = visit.get_untracked() {
            at.do_with(|ticking| Ok(ticking.as_planned(visit, &mut ids::new)?));
        }
    });
    let foot = move || {
        view! {
            {move || visit.get().map(|visit| {
                let says = words.all_as_planned(&words.time(visit.time));
                let left = work.now.with(|now| now.as_ref().map_or(0, |(_, today)| today.left_out(visit)));
                let left = (0 < left).then(|| view! { <p class="soft">{words.left_out(left)}</p> });
                view! {
                    {left}
                    <QuietRow><Quiet says=says press=planned /></QuietRow>
                }
            })}
            <Show when=move || at.refused.get()>
                <p class="error" role="alert">{words.tick_refused()}</p>
            </Show>
            <UpdateOffer />
            <Saving failed=at.failed />
            <ActionRow>
                <Action says press busy=at.busy />
            </ActionRow>
        }
    };
    view! {
        <Frame
            kind=FrameKind::Place
            what=words.round()
            when=Signal::derive(move || {
                let now = world.now.get();
                let day = work.now.with(|now| now.as_ref().map(|(_, today)| words.day(today.day)));
                let time = words.time_at(now, &DeviceZone);
                Some(day.map_or(time.clone(), |day| format!("{day} {time}")))
            })
            foot=foot
            places=move || view! { <Places here=Place::Round /> }
        >
            <Sentence said=Signal::derive(said) />
            <Unread shelf=work.shelf />
            {work.waiting(None)}
            {waits(work)}
            {move || at.away()}
            <Cord name=words.jobs()>{tags}</Cord>
            {after}
            {move || at.done()}
        </Frame>
    }
}

impl AtRound {
    fn tags(self, jobs: Vec<Job>, day: LocalDate) -> impl IntoView {
        jobs.into_iter()
            .map(|job| self.tag(&job, day))
            .collect_view()
    }

    fn tag(self, job: &Job, day: LocalDate) -> AnyView {
        let words = English::default();
        let tick = ticks(job).then(|| Tick {
            name: Signal::stored(words.tick(job)),
            act: {
                let job = job.clone();
                Callback::new(move |()| self.tick(&job))
            },
        });
        let state = Signal::stored(shape(standing(job)));
        let word = Signal::stored(words.job_stands(job));
        let lead = words.job_time(job, day, &DeviceZone);
        let what = Signal::stored(words.job(job));
        // A stop names its first reason as the job; the others stand beside whose it is.
        let others = job
            .stops
            .iter()
            .skip(1)
            .map(|(why, _)| words.stop_job(why).to_owned());
        let second = iter::once(words.job_of(job))
            .chain(others)
            .collect::<Vec<_>>()
            .join(". ");
        let press = route(job).to_string();
        match tick {
            Some(tick) => {
                view! { <Hang><Tag state word lead what second press tick /></Hang> }.into_any()
            }
            None => view! { <Hang><Tag state word lead what second press /></Hang> }.into_any(),
        }
    }

    fn tick(self, job: &Job) {
        self.do_with(|ticking| ticking.tick(job, &mut ids::new));
    }

    /// Makes an act of the records as they are now, and writes it.
    fn do_with(self, make: impl FnOnce(Ticking<'_>) -> Result<Act, Refused>) {
        if self.busy.get_untracked() {
            return;
        }
        let words = English::default();
        let yard = yard(self.world);
        let made = self.work.now.with_untracked(|now| {
            let (shelf, today) = now.as_ref()?;
            Some(make(Ticking {
                shelf,
                today,
                yard: &yard,
                tub_name: &|nth| words.tub_name(nth),
            }))
        });
        match made {
            Some(Ok(act)) => {
                self.refused.set(false);
                self.failed.set(false);
                self.busy.set(true);
                leptos::task::spawn_local(async move {
                    let done = self.world.act(act, None).await;
                    self.busy.try_set(false);
                    self.failed.try_set(done.is_err());
                });
            }
            Some(Err(_)) => self.refused.set(true),
            None => {}
        }
    }

    /// The one card of days that nobody logged, with its three answers.
    fn away(self) -> Option<impl IntoView> {
        let words = English::default();
        let days = self
            .work
            .now
            .with(|now| now.as_ref()?.1.round.away.clone())?;
        let said = words.days_away(days.from, days.to);
        let answers = AWAY
            .into_iter()
            .map(|answer| {
                let days = days.clone();
                let press = Callback::new(move |()| {
                    self.do_with(|ticking| Ok(ticking.away(&days, answer, &ids::new())?));
                });
                view! { <Quiet says=words.away_answer(answer) press=press /> }
            })
            .collect_view();
        Some(view! {
            <section aria-label=said.clone()>
                <p><strong>{said.clone()}</strong></p>
                <QuietRow>{answers}</QuietRow>
            </section>
        })
    }

    /// "4 done today", which opens what they were.
    fn done(self) -> Option<impl IntoView> {
        let words = English::default();
        let done = self
            .work
            .now
            .with(|now| Some(now.as_ref()?.1.round.done.clone()))?;
        if done.is_empty() {
            return None;
        }
        let count = words.done_today(done.len());
        let lines = done
            .into_iter()
            .map(|answered| {
                let time = words.time_at(answered.at, &DeviceZone);
                let what = answered.key.kind().map(|kind| words.job_kind(kind));
                view! { <li>{time} " " {what}</li> }
            })
            .collect_view();
        Some(view! {
            <details class="numbers">
                <summary>{count}</summary>
                <ul>{lines}</ul>
            </details>
        })
    }
}
