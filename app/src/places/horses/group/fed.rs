//! How a group is fed: the plan in use, the plan of today, or why there is none.

use crate::parts::{Caution, Row, Rows};
use leptos::prelude::*;
use tussock_core::day::GapVerdict;
use tussock_core::plan::GroupDraft;
use tussock_core::safety::GroupPlan;
use tussock_core::units::{AsFed, LocalTime};
use tussock_flow::forms::start::Visits;
use tussock_flow::views::group::{Fed, GroupInUse, Herd, cautions};
use tussock_flow::words::{
    DayWords, English, GroupWords, LogWords, PlanScreenWords, PlanWords, SafetyWords, Said,
    UnitWords,
};

/// The answer of the screen.
pub(super) fn sentence(words: English, herd: &Herd) -> String {
    match (&herd.fed, herd.follows()) {
        (Fed::Together(_), Some(held)) => {
            words.group_follows(held.hay(), held.soaks(), herd.members.len())
        }
        (Fed::Together(plan), None) => words.offered_to_all(plan.planned()),
        (Fed::Refused(_), _) => words.not_together().to_owned(),
        (Fed::NoDraft(..), _) => words.no_group_ration().to_owned(),
    }
}

/// A sentence of care with its reason.
fn care(words: English, said: Said) -> AnyView {
    match said.why {
        Some(why) => {
            view! { <Caution said=said.sentence why=words.why()><p>{why}</p></Caution> }.into_any()
        }
        None => view! { <Caution said=said.sentence /> }.into_any(),
    }
}

fn cares(words: English, said: impl IntoIterator<Item = Said>) -> AnyView {
    said.into_iter()
        .map(|said| care(words, said))
        .collect_view()
        .into_any()
}

/// How it is fed: the ration, or why there is none.
pub(super) fn ration(words: English, herd: &Herd) -> AnyView {
    let problems = herd
        .problems
        .iter()
        .map(|problem| view! { <Caution said=words.record_problem(problem) /> })
        .collect_view();
    let who = who_eats(words, herd);
    let fed = match &herd.fed {
        Fed::NoDraft(error, whose) => {
            let Said { sentence, why } = words.plan_error(error);
            let sentence = match whose {
                Some(animal) => format!("{}: {sentence}", herd.name(animal)),
                None => sentence,
            };
            view! { {does_not_hold(words, herd)} {care(words, Said { sentence, why })} }.into_any()
        }
        Fed::Refused(refused) => {
            let why = refused
                .iter()
                .flat_map(|refused| refused.why.iter().map(|why| (&refused.draft.animal, why)))
                .map(|(animal, why)| words.of_members(&[&animal.name], words.refusal(why)));
            view! { {does_not_hold(words, herd)} {cares(words, why)} }.into_any()
        }
        Fed::Together(plan) => match herd.follows() {
            Some(held) => followed(words, herd, held, plan),
            None => view! {
                {in_use(words, herd)}
                {must_know(words, herd, plan)}
                {numbers(words, herd, plan.planned())}
            }
            .into_any(),
        },
    };
    view! { {who} {fed} {problems} }.into_any()
}

/// Who eats of the hay and is not reckoned with, who left, and who has a plan of its own.
fn who_eats(words: English, herd: &Herd) -> AnyView {
    let joined = herd.in_use.iter().flat_map(|held| &held.joined);
    let left = herd.in_use.iter().flat_map(|held| &held.left);
    let own = herd
        .own
        .iter()
        .map(|own| words.has_own_plan(&herd.name(&own.animal), own.since));
    let said = joined
        .map(|animal| words.joined(&herd.name(animal)))
        .chain(left.map(|animal| words.has_left(&herd.name(animal))))
        .chain(own);
    cares(words, said)
}

fn does_not_hold(words: English, herd: &Herd) -> Option<AnyView> {
    let said = words.does_not_hold();
    herd.in_use
        .as_ref()
        .map(|_| view! { <Caution said=said /> }.into_any())
}

/// The plan in use, in one line.
fn in_use(words: English, herd: &Herd) -> Option<AnyView> {
    let held = herd.in_use.as_ref()?;
    if !held.would_differ {
        let due = herd
            .review_is_due()
            .then(|| view! { <p class="soft">{words.review_is_due()}</p> });
        return Some(view! { {since(words, held)} {due} }.into_any());
    }
    let said = if herd.review_is_due() {
        words.would_differ()
    } else {
        words.does_not_hold()
    };
    Some(view! { <Caution said=said /> }.into_any())
}

fn since(words: English, held: &GroupInUse) -> AnyView {
    let since = words.in_use(&words.day(held.body.from), &words.day(held.body.review));
    view! { <p class="soft">{since}</p> }.into_any()
}

/// The plan in use, which is followed until its review, and how it would come out today.
fn followed(words: English, herd: &Herd, held: &GroupInUse, plan: &GroupPlan) -> AnyView {
    view! {
        <Caution said=words.differs_until(&words.day(held.body.review)) />
        {must_know(words, herd, plan)}
        {since(words, held)}
        {day(words, held.day())}
        <details class="numbers">
            <summary>{words.as_of_today()}</summary>
            <p>{words.offered_to_all(plan.planned())}</p>
            {numbers(words, herd, plan.planned())}
        </details>
    }
    .into_any()
}

/// What must be known where the plan is decided: who needs separating, and the cautions of every member by name.
fn must_know(words: English, herd: &Herd, plan: &GroupPlan) -> AnyView {
    let draft = plan.planned();
    let apart = if draft.separate.is_empty() {
        view! { <p>{words.nobody_apart()}</p> }.into_any()
    } else {
        let name = |animal: &tussock_core::animal::AnimalId| herd.name(animal);
        cares(
            words,
            draft.separate.iter().map(|why| words.separate(why, &name)),
        )
    };
    let waits = (draft.layout.verdict == GapVerdict::OverTheLine)
        .then(|| care(words, words.longest_gap(&draft.layout)));
    view! { {apart} {waits} {cares(words, cautions(plan, &words))} }.into_any()
}

/// What hangs at each visit.
fn day(words: English, visits: Vec<(LocalTime, Vec<AsFed>)>) -> AnyView {
    let rows = visits
        .into_iter()
        .map(|(visit, nets)| {
            view! { <Row name=words.time(visit) value=words.nets_apart(&nets) /> }
        })
        .collect_view();
    view! {
        <h2>{words.group_day()}</h2>
        <Rows name=words.group_day()>{rows}</Rows>
    }
    .into_any()
}

/// The ration of today: hay, day, floor, buckets and shares.
fn numbers(words: English, herd: &Herd, draft: &GroupDraft) -> AnyView {
    let hays = draft
        .hays
        .iter()
        .map(|hay| {
            view! {
                <Row
                    name=hay.name.clone()
                    value=words.feed(hay.weigh_out)
                    strong=true
                    second=words.soaked_or_dry(hay.soaked)
                />
            }
        })
        .collect_view();
    let visits = draft
        .day()
        .into_iter()
        .map(|at| (at.visit, at.nets))
        .collect();
    let shares = draft
        .members
        .iter()
        .map(|share| {
            view! {
                <Row
                    name=share.alone.animal.name.clone()
                    value=words.share_level(share)
                    second=words.member_share(share)
                />
            }
        })
        .collect_view();
    let raised = draft.raised.as_ref().map(|raised| raised.factor);
    let stand_in = herd.visits_stand_in.then(|| {
        let times: Vec<String> = Visits::Two
            .times()
            .into_iter()
            .map(|time| words.time(time))
            .collect();
        view! { <p>{words.visits_stand_in(&times)}</p> }
    });
    view! {
        <h2>{words.weigh_out_for_all()}</h2>
        <Rows name=words.weigh_out_for_all()>{hays}</Rows>
        {day(words, visits)}
        <p>{words.feeding_places(draft.places)}</p>
        <p>{words.longest_gap(&draft.layout).sentence}</p>
        <p class="soft">{words.waits_of_all()}</p>
        {mends(words, draft)}
        {stand_in}
        <p>{words.strictest(&herd.name(&draft.strictest), draft.risk)}</p>
        <p>{words.sets_the_floor(&herd.name(&draft.floor_by), raised)}</p>
        {buckets(words, draft)}
        <h2>{words.shares()}</h2>
        <Rows name=words.shares()>{shares}</Rows>
        <p class="soft">{words.own_plans_rest()}</p>
    }
    .into_any()
}

fn mends(words: English, draft: &GroupDraft) -> Option<AnyView> {
    if draft.mends.is_empty() {
        return None;
    }
    let rows = draft
        .mends
        .iter()
        .map(|mend| view! { <Row name=words.mend(*mend) /> })
        .collect_view();
    let head = words.mends_head();
    Some(view! { <h2>{head}</h2> <Rows name=head>{rows}</Rows> }.into_any())
}

/// What each gets in its own bucket.
fn buckets(words: English, draft: &GroupDraft) -> Option<AnyView> {
    let rows: Vec<AnyView> = draft
        .members
        .iter()
        .flat_map(|share| {
            let name = share.alone.animal.name.clone();
            share.alone.buckets.iter().map(move |line| {
                let Said { sentence, why } = words.own_bucket(line);
                let named = words.named_bucket(&name, &line.name);
                view! { <Row name=named value=sentence second=why /> }.into_any()
            })
        })
        .collect();
    let head = words.own_buckets();
    (!rows.is_empty()).then(|| view! { <h2>{head}</h2> <Rows name=head>{rows}</Rows> }.into_any())
}
