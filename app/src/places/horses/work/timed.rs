//! A session of work on the clock.

use super::after::{After, Minutes, Writing};
use crate::device::clock::{self, DeviceZone};
use crate::form::Form;
use crate::parts::{
    Action, ActionRow, Back, BeatCords, Caution, Choice, Frame, FrameKind, Offer, Press, Rank,
    Sentence, StopBlock,
};
use crate::places::{Saving, Unread, draft_line};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::AnimalId;
use tussock_core::work::{Gait, Tap};
use tussock_flow::forms::work::{TAPS, on_the_clock, tapped};
use tussock_flow::routes::Route;
use tussock_flow::views::beats::WIDE;
use tussock_flow::views::work::{needs, work};
use tussock_flow::words::{BesideWords, English, HorsesWords, SessionWords, WorkWords};

/// A session on the clock: a tap a gait, a tap to stop, and then what was seen after it. Every figure is reckoned from the
/// instants of the taps.
#[allow(clippy::too_many_lines, reason = "one screen in its three states")]
#[component]
pub fn WorkTimed(
    /// Which animal.
    animal: AnimalId,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let form = Form::open(world, Route::WorkTimed(animal.clone()).to_string());
    let writing = Writing::new(world, form);
    let id = StoredValue::new(animal.clone());
    let shelf = world.shelf(move || needs(&id.get_value()));
    let minute = world.minute();
    let seen = Memo::new(move |_| match (shelf.get(), minute.get()) {
        (Some(Ok(shelf)), now) => work(&shelf, &id.get_value(), now, &DeviceZone),
        _ => None,
    });
    let name = Signal::derive(move || {
        seen.with(|view| view.as_ref().map(|view| view.animal.name.clone()))
            .unwrap_or_default()
    });
    let taps = form.text(TAPS);
    let timed = Memo::new(move |_| taps.with(|taps| on_the_clock(taps, world.now.get())));
    let started = Memo::new(move |_| timed.with(|timed| timed.started.is_some()));
    let over = Memo::new(move |_| timed.with(|timed| timed.stopped.is_some()));
    // A session that goes on may be ended whatever has come since; none is begun against what stops it.
    let may = Memo::new(move |_| {
        seen.with(|view| view.as_ref().is_some_and(|view| view.asked.is_some()))
    });
    let tap = move |tap: Tap| {
        let text = tapped(&form.now(TAPS), tap, clock::now());
        form.tapped(TAPS, text);
    };
    let press = Callback::new(move |()| {
        if over.get_untracked() {
            if let Some(view) = seen.get_untracked() {
                writing.save(&view.animal);
            }
        } else if started.get_untracked() {
            tap(Tap::Stop);
        } else if may.get_untracked() {
            tap(Tap::Gait(Gait::Walk));
        } else {
            world.go(&Route::Work(id.get_value()));
        }
    });
    let says = Signal::derive(move || {
        if over.get() {
            words.save_work().to_owned()
        } else if started.get() {
            words.stop_work().to_owned()
        } else if may.get() {
            words.begin_in(Gait::Walk)
        } else {
            words.back().to_owned()
        }
    });
    let back = Route::Work(animal).to_string();
    let foot = move || {
        view! {
            <Saving failed=writing.failed />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(back.clone()) }>
                <Action
                    says=says
                    press=press
                    busy=Signal::derive(move || writing.busy.get() || seen.with(Option::is_none))
                />
            </ActionRow>
        }
    };
    let stop = Memo::new(move |_| seen.get().and_then(|view| view.stop));
    let head = move || {
        match stop.get() {
        Some(stop) if !started.get() => view! {
            <StopBlock order=words.stop_order(&stop) rank=Rank::Sentence>
                <p>{words.stop_why(&stop)}</p>
            </StopBlock>
        }
        .into_any(),
        _ => view! {
            <Sentence said=Signal::derive(move || {
                // One memo and no other beside it that hangs on the same: the sentence stood still after the stop.
                let timed = timed.get();
                match seen.get() {
                    None => words.opening().to_owned(),
                    Some(view) if timed.started.is_none() && view.asked.is_none() => words.work_head(&view),
                    Some(view) => words.on_clock(&timed, &view.animal.name),
                }
            }) />
        }
        .into_any(),
    }
    };
    let gait = Signal::derive(move || timed.with(|timed| timed.gait));
    let gaits: Vec<Offer<Gait>> = Gait::ALL
        .into_iter()
        .map(|gait| Offer::new(gait, words.gait(gait)))
        .collect();
    // Told by the minute: what is drawn does not move with every beat.
    let drawn = Memo::new(move |_| {
        let timed = timed.get();
        let asked = seen.with(|view| view.as_ref().and_then(|view| view.asked.clone()));
        let asked = asked.map(|asked| asked.times);
        let longest = asked.map_or(timed.times.total(), |asked| {
            asked.total().max(timed.times.total())
        });
        let [of_asked, _] = words.beats_rows();
        let asked = asked.map(|asked| super::row(of_asked, &asked, longest, words));
        let done = super::row(words.done_head(), &timed.times, longest, words);
        asked.into_iter().chain([done]).collect::<Vec<_>>()
    });
    let on_clock = Callback::new(move |gait: Gait| {
        timed.with(|timed| {
            timed
                .started
                .map(|_| words.minutes_on_clock(&timed.times, gait))
        })
    });
    view! {
        <Frame kind=FrameKind::Flow what=name foot=foot>
            {head}
            <Unread shelf />
            {draft_line(form)}
            <Show when=move || started.get()>
                <p>{move || words.began_at(&timed.get(), &DeviceZone)}</p>
                <BeatCords wide=WIDE rows=drawn />
            </Show>
            <Show when=move || !over.get() && (started.get() || may.get())>
                <Choice
                    legend=words.which_gait()
                    offers=gaits.clone()
                    chosen=gait
                    on_choose=move |gait: Gait| tap(Tap::Gait(gait))
                    hint=words.clock_goes_on()
                />
            </Show>
            <Show when=move || over.get()>
                <Show when=move || timed.with(tussock_core::work::Timed::left_running)>
                    <Caution said=words.left_running() />
                </Show>
                <After writing />
                <Minutes writing clock=on_clock />
            </Show>
        </Frame>
    }
}
