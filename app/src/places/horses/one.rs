//! Beside one animal: the steps of a visit, in their order.

use super::next_of::next_of;
use crate::device::clock::DeviceZone;
use crate::parts::{
    Action, ActionRow, Back, Caution, Cord, Frame, FrameKind, Hang, Press, Quiet, QuietRow, Rank,
    Sentence, State, StopBlock, Tag,
};
use crate::places::{Saving, Unread};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::AnimalId;
use tussock_core::safety::Meanwhile;
use tussock_flow::routes::{Route, Step as SiteStep};
use tussock_flow::views::beside::{self, Standing, Step, Stop};
use tussock_flow::views::condition;
use tussock_flow::views::next_step::{self, Stands};
use tussock_flow::views::yard_visit::{self, Seen};
use tussock_flow::words::{
    BalanceWords, BesideWords, ConditionWords, English, HorsesWords, LedgerWords, MeasureWords,
    NextStepWords, NotEatingWords, SafetyWords, Task, UnitWords, WeightWords, YardVisitWords,
};

/// Where a step of the visit is done.
pub(super) fn route_of(task: Task, animal: AnimalId) -> Route {
    match task {
        Task::Weigh => Route::Weigh(animal),
        Task::Condition => Route::Condition(animal, SiteStep::FIRST),
        Task::Crest => Route::Crest(animal),
        Task::LookOver => Route::LookOver(animal),
        Task::Work => Route::Work(animal),
        Task::Photograph => Route::Photos(animal),
        Task::Plan => Route::Plan(animal),
    }
}

/// The shape of a standing. The one block of a screen tells the stop; its tag asks for care.
const fn state_of(standing: Standing) -> State {
    match standing {
        Standing::Due => State::Due,
        Standing::Done => State::Done,
        Standing::Care => State::Care,
        Standing::NotComplete => State::NotKnown,
        Standing::Waits | Standing::Later | Standing::Open => State::Later,
        Standing::NoWork => State::Care,
    }
}

/// The shape of how the next step stands.
const fn state_of_step(stands: Stands) -> State {
    match stands {
        Stands::KeepOn => State::Done,
        Stands::AtReview => State::Later,
        Stands::Due => State::Due,
        Stands::Vet => State::Care,
    }
}

/// What a step found and when.
fn second(step: &Step, words: English) -> String {
    match (&step.last, step.days) {
        (Some(last), Some(days)) => format!("{}, {}", words.last(last), words.ago(days)),
        (Some(last), None) => words.last(last),
        (None, _) => words.never().to_owned(),
    }
}

/// One animal: its weight with its band or what stops it, and what is done beside it.
#[component]
pub fn One(
    /// Which.
    animal: AnimalId,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let id = StoredValue::new(animal.clone());
    let minute = world.minute();
    let since = minute.get_untracked();
    let shelf = world.shelf(move || {
        let mut ranges = next_step::needs(&id.get_value(), since);
        ranges.push(yard_visit::under_way_needs());
        ranges
    });
    let visit = Memo::new(move |_| match (shelf.get(), minute.get()) {
        (Some(Ok(shelf)), now) => beside::visit(&shelf, &id.get_value(), now, &DeviceZone),
        _ => None,
    });
    let step = next_of(world, id, shelf, minute);
    let weighed = move || visit.with(|visit| visit.as_ref().is_some_and(|v| v.weight.is_some()));
    let said = Signal::derive(move || {
        if !weighed() {
            return visit.with(|visit| match visit {
                None if shelf.get().is_none() => words.opening().to_owned(),
                None => words.not_here().to_owned(),
                Some(visit) => words.never_weighed(&visit.animal.name),
            });
        }
        step.with(|step| step.as_ref().map(|step| words.step_of(step)))
            .unwrap_or_default()
    });
    let weight = Signal::derive(move || {
        visit.with(|visit| {
            let visit = visit.as_ref()?;
            let weight = &visit.weight.as_ref()?.weight;
            let either = weight.either_way();
            Some(words.weighs(
                &visit.animal.name,
                &words.body(weight.value),
                &words.body(either),
            ))
        })
    });
    let stop = Memo::new(move |_| visit.get().and_then(|visit| visit.stop));
    let head = move || match stop.get() {
        Some(stop) => {
            let why = words.stop_why(&stop);
            view! {
                <StopBlock order=words.stop_order(&stop) rank=Rank::Sentence>
                    <p>{why}</p>
                </StopBlock>
                {move || weight.get().map(|weight| view! { <p>{weight}</p> })}
            }
            .into_any()
        }
        None => view! {
            <Sentence said=said />
            {move || weight.get().map(|weight| view! { <p>{weight}</p> })}
        }
        .into_any(),
    };
    // In a visit to the yard its steps are due once more, and the way back leads there.
    let seen = Memo::new(move |_| match (shelf.get(), minute.get()) {
        (Some(Ok(shelf)), now) => yard_visit::underway(&shelf, now, &DeviceZone)
            .and_then(|visit| visit.animal(&id.get_value()).cloned()),
        _ => None,
    });
    let in_visit = Memo::new(move |_| seen.with(Option::is_some));
    let due = Memo::new(move |_| match seen.get() {
        Some(Seen { open, .. }) => open.first().copied(),
        None => visit.get().and_then(|visit| visit.first_due()),
    });
    let name = Signal::derive(move || {
        visit
            .get()
            .map(|visit| visit.animal.name)
            .unwrap_or_default()
    });
    let action = Signal::derive(move || match (stop.get(), due.get()) {
        (Some(_), _) => words.look_again_now().to_owned(),
        (None, Some(task)) => words.do_task(task, &name.get()),
        (None, None) if in_visit.get() => words.to_the_visit().to_owned(),
        (None, None) => words.see_plan().to_owned(),
    });
    let leads = Signal::derive(move || {
        let task = match (stop.get(), due.get()) {
            (Some(_), _) => Task::LookOver,
            (None, None) if in_visit.get() => return Route::Visit.to_string(),
            (None, due) => due.unwrap_or(Task::Plan),
        };
        route_of(task, id.get_value()).to_string()
    });
    // Not on the day they fall due again: nobody scores from a score.
    let two_scored = Memo::new(move |_| match (shelf.get(), minute.get()) {
        (Some(Ok(shelf)), now) => {
            let to_score = visit.with(|visit| visit.as_ref().is_none_or(|visit| visit.to_score));
            !to_score && condition::two(&shelf, &id.get_value(), now, &DeviceZone).is_some()
        }
        _ => false,
    });
    let back_to = Signal::derive(move || {
        if in_visit.get() {
            Route::Visit.to_string()
        } else {
            Route::Horses.to_string()
        }
    });
    let not_read = Memo::new(move |_| visit.get().map_or(0, |visit| visit.problems.len()));
    let weighed = move || visit.with(|visit| visit.as_ref().is_some_and(|v| v.weight.is_some()));
    let foot = move || {
        view! {
            <QuietRow>
                <Show when=move || matches!(stop.get(), Some(Stop::Vet(..)))>
                    <Quiet
                        says=words.meanwhile(&Meanwhile::WriteDownVetsWord).sentence
                        press=Route::VetWord(id.get_value()).to_string()
                    />
                </Show>
                <Show when=move || two_scored.get()>
                    <Quiet says=words.see_two() press=Route::ConditionTwo(id.get_value()).to_string() />
                </Show>
                <Quiet says=words.will_not_eat() press=Route::NotEating(id.get_value()).to_string() />
                <Quiet says=words.what_was_eaten() press=Route::Ledger(id.get_value()).to_string() />
                <Quiet says=words.details_of_it() press=Route::Details(id.get_value()).to_string() />
            </QuietRow>
            <Saving />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(back_to) }>
                <Action says=action press=leads />
            </ActionRow>
        }
    };
    let next = move || {
        step.with(|step| {
            let step = step.as_ref()?;
            let stands = step.stands();
            let second = words.step_tag(step);
            Some(view! {
                <Hang reached=Signal::stored(stands == Stands::KeepOn)>
                    <Tag
                        state=Signal::stored(state_of_step(stands))
                        word=Signal::stored(words.step_stands(stands).to_owned())
                        what=words.the_next_step()
                        second=Signal::stored(Some(second.clone()))
                        press=Route::NextStep(id.get_value()).to_string()
                    />
                </Hang>
            })
        })
    };
    view! {
        <Frame
            kind=FrameKind::Flow
            what=name
            when=Signal::derive(move || visit.get().map(|visit| words.who(&visit.animal)))
            foot=foot
        >
            {head}
            <Unread shelf />
            <Show when=move || 0 < not_read.get()>
                <Caution said=Signal::derive(move || words.some_not_read(not_read.get())) />
            </Show>
            <Cord name=words.visit()>
                {move || {
                    visit
                        .get()
                        .map(|visit| visit.steps)
                        .unwrap_or_default()
                        .into_iter()
                        .map(|step| {
                            let step = seen.with(|seen| match seen {
                                Some(seen) => seen.in_visit(step),
                                None => step,
                            });
                            let word = words.standing(step.standing).to_owned();
                            view! {
                                <Hang reached=Signal::stored(step.standing == Standing::Done)>
                                    <Tag
                                        state=Signal::stored(state_of(step.standing))
                                        word=Signal::stored(word)
                                        what=words.task(step.task)
                                        second=Signal::stored(Some(second(&step, words)))
                                        press=route_of(step.task, id.get_value()).to_string()
                                    />
                                </Hang>
                            }
                        })
                        .collect_view()
                }}
                {next}
            </Cord>
            <Show when=weighed>
                <QuietRow>
                    <Quiet says=words.weight_so_far() press=Route::Weight(id.get_value()).to_string() />
                    <Quiet says=words.measures_so_far() press=Route::Measures(id.get_value()).to_string() />
                    <Quiet says=words.ration_against_needs() press=Route::Ration(id.get_value()).to_string() />
                </QuietRow>
                <Caution said=words.no_dose() />
            </Show>
        </Frame>
    }
}
