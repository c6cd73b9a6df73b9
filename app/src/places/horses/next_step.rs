//! The next step of one animal and its phase: what is proposed and why, and what a person may change.

use super::next_of::next_of;
use crate::parts::{
    Action, ActionRow, Back, Caution, Frame, FrameKind, Press, Quiet, QuietRow, Rank, Row, Rows,
    Sentence, StopBlock,
};
use crate::places::{Saving, Unread};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::{AnimalId, Phase};
use tussock_core::safety::Meanwhile;
use tussock_flow::routes::{Route, Step as SiteStep};
use tussock_flow::views::beside::Stop;
use tussock_flow::views::next_step::{NextStep as View, Offer, needs};
use tussock_flow::views::not_eating::dial;
use tussock_flow::words::{
    AnimalWords, BesideWords, English, HorsesWords, LogWords, LookBackWords, LookOverWords,
    NextStepWords, NotEatingWords, PlanScreenWords, SafetyWords, Said,
};

/// The screen of one animal's next step.
#[derive(Clone, Copy)]
struct AtIt {
    world: World,
    view: Memo<Option<View>>,
    id: StoredValue<AnimalId>,
    failed: RwSignal<bool>,
    busy: RwSignal<bool>,
}

/// The next step of one animal.
#[component]
pub fn NextStep(
    /// Which.
    animal: AnimalId,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let id = StoredValue::new(animal.clone());
    let minute = world.minute();
    let since = minute.get_untracked();
    let shelf = world.shelf(move || needs(&id.get_value(), since));
    let view = next_of(world, id, shelf, minute);
    let at = AtIt {
        world,
        view,
        id,
        failed: RwSignal::new(false),
        busy: RwSignal::new(false),
    };
    let name = Signal::derive(move || {
        view.with(|view| view.as_ref().map(|view| view.animal.name.clone()))
            .unwrap_or_default()
    });
    let back = Route::Horse(animal).to_string();
    let foot = move || {
        let back = back.clone();
        view! {
            {move || at.quiet()}
            <Saving failed=at.failed />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(back) }>
                {move || at.action()}
            </ActionRow>
        }
    };
    view! {
        <Frame kind=FrameKind::Flow what=name when=words.the_next_step() foot=foot>
            {move || at.head(shelf.get().is_none())}
            <Unread shelf />
            {move || view.with(|view| view.as_ref().map(|view| at.inside(view)))}
        </Frame>
    }
}

impl AtIt {
    /// The stop where there is one, else the step.
    fn head(self, opening: bool) -> AnyView {
        let words = English::default();
        self.view.with(|view| {
            let Some(view) = view else {
                let said = if opening {
                    words.opening()
                } else {
                    words.not_here()
                };
                return view! { <Sentence said=said /> }.into_any();
            };
            let said = words.step_head(view);
            match (&view.stop, view.rings_by_weight()) {
                (Some(stop), _) => {
                    // The block is kept low: what stands behind it comes below.
                    let (sentence, why) = match stop {
                        Stop::Vet(refusal, _) => {
                            let said = words.refusal(refusal);
                            (format!("{}.", said.sentence), said.why)
                        }
                        Stop::LookAgain => (words.stop_why(stop), None),
                    };
                    view! {
                        <StopBlock order=words.stop_order(stop) rank=Rank::Sentence>
                            <p>{sentence}</p>
                        </StopBlock>
                        {why.map(|why| view! { <p>{why}</p> })}
                    }
                    .into_any()
                }
                (None, Some(ring)) => view! {
                    <StopBlock order=words.ring_now(ring) rank=Rank::Sentence>
                        <p>{said} "."</p>
                    </StopBlock>
                }
                .into_any(),
                (None, None) => view! { <Sentence said=said /> }.into_any(),
            }
        })
    }

    fn inside(self, view: &View) -> AnyView {
        let words = English::default();
        let problems = view
            .problems
            .iter()
            .map(|problem| view! { <Caution said=words.record_problem(problem) /> })
            .collect_view();
        let proposes = words.only_proposes();
        view! {
            {self.ring(view)}
            {when(view, words)}
            {why(view, words)}
            <Caution said=proposes.sentence why=words.why()>
                <p>{proposes.why.unwrap_or_default()}</p>
            </Caution>
            {self.phase(view)}
            {problems}
            <p class="soft small">{words.no_diagnosis()}</p>
        }
        .into_any()
    }

    /// The vet's number, where the vet is to be rung.
    fn ring(self, view: &View) -> Option<AnyView> {
        let words = English::default();
        if !view.needs_the_vet() {
            return None;
        }
        let says = words.ring_the_vet(&view.vet);
        let href = view.vet.telephone.as_deref().and_then(dial);
        Some(if let Some(href) = href {
            view! {
                <Rows name=words.the_vet()><Row name=says press=href /></Rows>
            }
            .into_any()
        } else {
            // The number is written down where an animal will not eat.
            let sheet = Route::NotEating(self.id.get_value()).to_string();
            view! {
                <QuietRow>
                    <span>{says}</span>
                    <Quiet says=words.write_the_number_down() press=sheet />
                </QuietRow>
            }
            .into_any()
        })
    }

    /// The phase, the change that is due, and the others.
    fn phase(self, view: &View) -> AnyView {
        let words = English::default();
        let phase = view.animal.phase;
        let [entry, exit] = words.entry_and_exit();
        let before = words.phase_before(view.facts.phase_before);
        view! {
            <h2>{words.phase_head()}</h2>
            <p>{words.phase_line(view)}</p>
            <p class="soft">{words.phase_means(phase)} "."</p>
            {before.map(|before| view! { <p class="soft">{before} "."</p> })}
            <Rows name=words.phase_head()>
                <Row name=entry second=words.phase_entry(phase) />
                <Row name=exit second=words.phase_exit(phase) />
            </Rows>
            {self.due(view)}
            {self.others(view)}
        }
        .into_any()
    }

    /// The change that is due; with its reasons and its key where it is not the step itself.
    fn due(self, view: &View) -> Option<AnyView> {
        let words = English::default();
        let proposal = view.proposal.as_ref()?;
        let to = proposal.to;
        let rest = (!view.is_the_change()).then(|| {
            let reasons: Vec<AnyView> = proposal
                .because
                .iter()
                .map(|reason| row(words.because(reason)))
                .collect();
            let take = Callback::new(move |()| self.take(to));
            view! {
                <Rows name=words.change_due()>{reasons}</Rows>
                <QuietRow><Quiet says=words.put_into(to) press=take /></QuietRow>
            }
        });
        let name = format!("{}: {}", words.change_due(), words.phase(to));
        Some(
            view! {
                <h2>{name}</h2>
                {rest}
                <p class="soft">{words.step_from(proposal.origin)}</p>
            }
            .into_any(),
        )
    }

    fn others(self, view: &View) -> AnyView {
        let words = English::default();
        let rows = view
            .others
            .iter()
            .map(|(phase, why_not)| {
                let phase = *phase;
                let second = words.may_be_chosen(*why_not);
                let name = words.phase(phase);
                if why_not.is_some() {
                    return view! { <Row name=name second=second /> }.into_any();
                }
                let take = Callback::new(move |()| self.take(phase));
                view! { <Row name=words.put_into(phase) second=second press=take /> }.into_any()
            })
            .collect_view();
        view! {
            <h2>{words.other_phases()}</h2>
            <Rows name=words.other_phases()>{rows}</Rows>
        }
        .into_any()
    }

    fn quiet(self) -> Option<AnyView> {
        let words = English::default();
        self.view.with(|view| {
            let view = view.as_ref()?;
            let id = self.id.get_value();
            let to = |route: fn(AnimalId) -> Route| route(id.clone()).to_string();
            let (vet, look, plan) = (to(Route::VetWord), to(Route::LookBack), to(Route::Plan));
            let word = matches!(view.stop, Some(Stop::Vet(..))).then(|| {
                let says = words.meanwhile(&Meanwhile::WriteDownVetsWord).sentence;
                view! { <Quiet says=says press=vet /> }
            });
            let back = view.looks_back().then(|| {
                view! { <Quiet says=words.look_back() press=look /> }
            });
            Some(
                view! {
                    <QuietRow>
                        {word}
                        {back}
                        <Quiet says=words.see_plan() press=plan />
                    </QuietRow>
                }
                .into_any(),
            )
        })
    }

    fn action(self) -> AnyView {
        let words = English::default();
        self.view.with(|view| {
            let Some(view) = view else {
                let horses = Route::Horses.to_string();
                return view! { <Action says=words.horses() press=horses /> }.into_any();
            };
            let offer = view.first();
            let says = words.next_offer(&offer, view);
            match leads(&offer, self.id.get_value()) {
                Ok(route) => view! { <Action says=says press=route.to_string() /> }.into_any(),
                Err(phase) => {
                    let take = Callback::new(move |()| self.take(phase));
                    view! { <Action says=says press=take busy=self.busy /> }.into_any()
                }
            }
        })
    }

    /// Puts it into a phase, by what holds at the tap itself.
    fn take(self, phase: Phase) {
        let act = self
            .view
            .with_untracked(|view| view.as_ref().and_then(|view| view.take(phase)));
        let Some(act) = act else {
            self.failed.set(true);
            return;
        };
        self.busy.set(true);
        leptos::task::spawn_local(async move {
            let done = self.world.act(act, None).await;
            self.busy.try_set(false);
            self.failed.try_set(done.is_err());
        });
    }
}

/// Where an offer leads; the phase where it does something here.
fn leads(offer: &Offer, animal: AnimalId) -> Result<Route, Phase> {
    Ok(match offer {
        Offer::GoOn => Route::Horse(animal),
        Offer::LookOver => Route::LookOver(animal),
        Offer::Weigh => Route::Weigh(animal),
        Offer::Score => Route::Condition(animal, SiteStep::FIRST),
        Offer::WhatWasEaten => Route::Ledger(animal),
        Offer::TestHay(lot) => Route::WorthOfTest(lot.clone()),
        Offer::Plan => Route::Plan(animal),
        Offer::PlanAt(level) => Route::PlanAt(animal, *level),
        Offer::SeeGroup(group) => Route::Group(group.clone()),
        Offer::VetsWord => Route::VetWord(animal),
        Offer::Details => Route::Details(animal),
        Offer::NotEating => Route::NotEating(animal),
        Offer::Take(phase) => return Err(*phase),
    })
}

/// A sentence as a row, with what stands behind it.
fn row(said: Said) -> AnyView {
    view! { <Row name=said.sentence second=said.why /> }.into_any()
}

fn when(view: &View, words: English) -> AnyView {
    let said = words.step_when(view);
    view! {
        <p>{said.sentence} "."</p>
        {said.why.map(|why| view! { <p class="soft">{why}</p> })}
    }
    .into_any()
}

/// Why, and where it comes from.
fn why(view: &View, words: English) -> AnyView {
    let reasons: Vec<AnyView> = view
        .because()
        .into_iter()
        .map(|reason| row(words.because(reason)))
        .collect();
    let head = (!reasons.is_empty()).then(|| {
        view! {
            <h2>{words.because_head()}</h2>
            <Rows name=words.because_head()>{reasons}</Rows>
        }
    });
    let then = view
        .decision
        .then
        .map(|then| view! { <p>{words.step_after(then)} "."</p> });
    let numbers = view.sources(&words);
    let rows = numbers
        .into_iter()
        .map(|line| view! { <Row name=line.name value=line.value second=line.from /> })
        .collect_view();
    let from = words.step_from(view.decision.from);
    view! {
        {head}
        {then}
        <details class="numbers">
            <summary>{words.sources_head()}</summary>
            <Rows name=words.sources_head()>
                <Row name=words.the_next_step() second=from />
                {rows}
            </Rows>
        </details>
    }
    .into_any()
}
