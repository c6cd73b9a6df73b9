//! The plan of one animal, and the vet's word that it waits for.

mod allowed;
mod day;
mod refused;
mod vet;

pub use day::Day;
pub use vet::VetWord;

use crate::device::clock::{self, DeviceZone};
use crate::form::Form;
use crate::parts::{
    Action, ActionRow, Back, Caution, Frame, FrameKind, Press, Quiet, QuietRow, Row, Rows, Sentence,
};
use crate::places::shed::in_place;
use crate::places::{Saving, Unread};
use crate::world::World;
use allowed::{allowed_view, caution, followed_view};
use leptos::prelude::*;
use refused::refused_view;
use tussock_core::animal::AnimalId;
use tussock_core::log::bodies::base::BodyHundredths;
use tussock_core::sources::RecordId;
use tussock_core::units::Instant;
use tussock_flow::forms::start::Visits;
use tussock_flow::routes::Route;
use tussock_flow::views::plan::{self, Accepted, Offer, Outcome, PlanView};
use tussock_flow::words::{
    BalanceWords, BesideWords, English, GroupWords, HorsesWords, LedgerWords, LogWords,
    NextStepWords, PlanScreenWords, PlanWords, Task, UnitWords, VisitsWords,
};

/// The plan of one animal.
#[component]
pub fn Plan(
    /// Which.
    animal: AnimalId,
    /// The level that is asked for.
    asked: Option<BodyHundredths>,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let here = match asked {
        None => Route::Plan(animal.clone()),
        Some(level) => Route::PlanAt(animal.clone(), level),
    };
    let form = Form::open(world, here.to_string());
    let asked = asked.map(BodyHundredths::part);
    let id = StoredValue::new(animal.clone());
    let shelf = world.shelf(move || plan::needs(&id.get_value()));
    let minute = world.minute();
    let at = move |now: Instant| match shelf.get() {
        Some(Ok(shelf)) => plan::plan_at(&shelf, &id.get_value(), asked, now, &DeviceZone),
        _ => None,
    };
    let work_out = move |_: Option<&Option<PlanView>>| at(minute.get());
    // Drawn again only when it reads differently: a minute that changes nothing leaves an opened "Why" open.
    let today = Memo::new_with_compare(work_out, |old, new| match (old, new) {
        (Some(Some(old)), Some(Some(new))) => !old.reads_as(new),
        (old, new) => old != new,
    });
    let failed = RwSignal::new(false);
    let busy = RwSignal::new(false);
    let use_it = Callback::new(move |()| {
        let record = RecordId(form.id("plan-id"));
        // Worked out at the tap itself: what is issued is the plan of now, with the day it begins.
        let issued = untrack(|| at(clock::now())).and_then(|now| now.use_it(&record));
        let Some(Ok(act)) = issued else {
            failed.set(true);
            return;
        };
        busy.set(true);
        leptos::task::spawn_local(async move {
            let done = form.save(act).await;
            busy.try_set(false);
            if done.is_ok() {
                world.go(&Route::Horse(id.get_value()));
            } else {
                failed.try_set(true);
            }
        });
    });
    let back = Route::Horse(animal).to_string();
    let foot = move || {
        let back = back.clone();
        let action = move || {
            today.with(|today| {
                today.as_ref().map(|view| {
                    let Does { says, press } = does(&view.first(), view, use_it);
                    view! { <Action says=says press=press busy=busy /> }
                })
            })
        };
        let beside = move || {
            today.with(|today| {
                let view = today.as_ref()?;
                let links = view
                    .beside()
                    .iter()
                    .map(|offer| {
                        let Does { says, press } = does(offer, view, use_it);
                        view! { <Quiet says=says press=press /> }
                    })
                    .collect_view();
                let ledger = Route::Ledger(id.get_value()).to_string();
                let ration = Route::Ration(id.get_value()).to_string();
                Some(view! {
                    <QuietRow>
                        {links}
                        <Quiet says=words.what_was_eaten() press=ledger />
                        <Quiet says=words.ration_against_needs() press=ration />
                    </QuietRow>
                })
            })
        };
        view! {
            {beside}
            <Saving failed=failed />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(back) }>{action}</ActionRow>
        }
    };
    let body = move || {
        if today.with(Option::is_none) {
            let said = if shelf.get().is_none() {
                words.opening()
            } else {
                words.not_here()
            };
            return view! { <Sentence said=said /> }.into_any();
        }
        today.with(|today| today.as_ref().map(said_of)).into_any()
    };
    view! {
        <Frame
            kind=FrameKind::Flow
            what=Signal::derive(move || today.with(|today| today.as_ref().map(|view| view.animal.name.clone()).unwrap_or_default()))
            when=words.plan_word()
            foot=foot
        >
            {body}
            <Unread shelf />
        </Frame>
    }
}

/// What an offer says and does.
struct Does {
    says: String,
    press: Press,
}

fn does(offer: &Offer, view: &PlanView, use_it: Callback<()>) -> Does {
    let words = English::default();
    let id = view.animal.id.clone();
    let goes = |says: &str, route: &Route| Does {
        says: says.to_owned(),
        press: Press::from(route.to_string()),
    };
    let uses = |says: &str| Does {
        says: says.to_owned(),
        press: Press::from(use_it),
    };
    match offer {
        Offer::Use => uses(words.use_this_plan()),
        Offer::UseBeforeReview => uses(words.change_before_review()),
        Offer::GoOn => goes(&words.go_on_with(&view.animal.name), &Route::Horse(id)),
        Offer::VetsWord => goes(words.write_down_vets_word(), &Route::VetWord(id)),
        Offer::LookOver => goes(
            &words.do_task(Task::LookOver, &view.animal.name),
            &Route::LookOver(id),
        ),
        Offer::Details => goes(words.details_of_it(), &Route::Details(id)),
        Offer::AddHay => goes(words.add_a_hay(), &Route::NewHay),
        Offer::OpenHay(lot) => goes(words.open_the_hay(), &Route::Hay(lot.clone())),
        Offer::Visits => goes(words.when_somebody_comes(), &Route::Visits),
        Offer::SeeGroup(group) => {
            let name = view
                .fed_with
                .as_ref()
                .map_or("", |group| group.name.as_str());
            goes(&words.see_the_group(name), &Route::Group(group.clone()))
        }
        Offer::FeedApart => uses(words.feed_apart()),
        Offer::Weigh => goes(words.weigh(), &Route::Weigh(id)),
    }
}

/// What the screen says of the plan today.
fn said_of(view: &PlanView) -> AnyView {
    let words = English::default();
    let said = match (&view.outcome, view.follows()) {
        (Outcome::Allowed(plan), Some(followed)) => {
            let differs = differs(followed, true);
            followed_view(followed, plan, view.records(), visits(view), differs)
        }
        (Outcome::Allowed(plan), None) => {
            let in_use = view! { {asked(view)} {with_group(view)} {in_use(view)} }.into_any();
            allowed_view(plan, view.records(), in_use, visits(view))
        }
        (Outcome::Refused(refused), _) => refused_view(refused, in_use(view)),
        (Outcome::Nothing(error), _) => {
            let said = words.plan_error(error);
            view! {
                <Sentence said=said.sentence />
                {said.why.map(|why| view! { <p>{why}</p> })}
                {in_use(view)}
            }
            .into_any()
        }
    };
    let problems = view
        .problems
        .iter()
        .map(|problem| view! { <Caution said=words.record_problem(problem) /> })
        .collect_view();
    let changeovers = view
        .accepted
        .iter()
        .flat_map(|accepted| &accepted.changeovers)
        .map(in_place)
        .collect_view();
    view! {
        {said}
        {changeovers}
        {problems}
        <p class="soft small">{words.no_diagnosis()}</p>
    }
    .into_any()
}

/// The level that is asked for.
fn asked(view: &PlanView) -> Option<AnyView> {
    let words = English::default();
    let level = words.level(view.asked?);
    Some(view! { <p class="soft">{words.level_asked(&level)} "."</p> }.into_any())
}

/// What would now differ from the plan in use, and where it is followed, that it stays as it is.
fn differs(accepted: &Accepted, followed: bool) -> AnyView {
    let words = English::default();
    if accepted.differs.is_empty() {
        return ().into_any();
    }
    let rows = accepted
        .differs
        .iter()
        .map(|differs| {
            let [about, says] = words.differs(differs);
            view! { <Row name=about second=says /> }
        })
        .collect_view();
    view! {
        <h2>{words.differs_head()}</h2>
        <Rows name=words.differs_head()>{rows}</Rows>
        {followed.then(|| view! { <p class="soft">{words.differs_means(accepted.review)}</p> })}
    }
    .into_any()
}

/// That its hay is its group's, and what using a plan of its own does to that.
fn with_group(view: &PlanView) -> Option<AnyView> {
    let words = English::default();
    let group = view.fed_with.as_ref()?;
    let fed = caution(words.fed_with(&view.animal.name, &group.name), words);
    let leaves = words.leaves_the_group(&view.animal.name, &group.name);
    Some(view! { {fed} <p>{leaves}</p> }.into_any())
}

/// The plan that was accepted, in one line.
fn in_use(view: &PlanView) -> AnyView {
    let words = English::default();
    let Some(accepted) = &view.accepted else {
        return ().into_any();
    };
    let Accepted {
        from,
        review,
        would_differ,
        ..
    } = accepted;
    if !would_differ {
        let since = words.in_use(&words.day(*from), &words.day(*review));
        let due = view
            .review_is_due()
            .then(|| view! { <p class="soft">{words.review_is_due()}</p> });
        return view! { <p class="soft">{since}</p> {due} {differs(accepted, !view.review_is_due())} }.into_any();
    }
    let allowed = matches!(view.outcome, Outcome::Allowed(_));
    let said = if allowed && (view.review_is_due() || view.raises()) {
        words.would_differ()
    } else {
        words.does_not_hold()
    };
    view! { <Caution said=said /> {differs(accepted, false)} }.into_any()
}

/// The visits that stand in for those nobody said, as a line of the defaults.
fn visits(view: &PlanView) -> Option<String> {
    let words = English::default();
    let times: Vec<String> = Visits::Two
        .times()
        .into_iter()
        .map(|time| words.time(time))
        .collect();
    view.visits_stand_in.then(|| words.visits_stand_in(&times))
}
