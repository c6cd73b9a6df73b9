//! A plan that safety allows: its cord, its nets, its defaults, and why.

use crate::parts::{Caution, Cord, Hang, Row, Rows, Sentence, State, Tag};
use leptos::prelude::*;
use tussock_core::safety::Plan;
use tussock_flow::routes::Route;
use tussock_flow::views::plan::{
    Accepted, Part, Told, besides, decision, reasons, sources, stands_in, tags,
};
use tussock_flow::words::{
    AnimalWords, DayWords, English, PlanScreenWords, PlanWords, Said, UnitWords,
};

/// The plan, under its decision. `records` is how many it is made from, `in_use` is the line on the plan that was accepted, `visits` the visits that stand in.
pub(super) fn allowed_view(
    plan: &Plan,
    records: usize,
    in_use: AnyView,
    visits: Option<String>,
) -> AnyView {
    let words = English::default();
    view! {
        <Sentence said=decision(plan.planned(), &words) />
        {vets_words(plan, words)}
        {in_use}
        {body(plan, records, visits, cautions(plan, words), words)}
    }
    .into_any()
}

/// The plan in use, which is followed until its review, and how it would come out today.
pub(super) fn followed_view(
    followed: &Accepted,
    plan: &Plan,
    records: usize,
    visits: Option<String>,
    differs: AnyView,
) -> AnyView {
    let words = English::default();
    let hays = followed.hays.iter().map(|hay| {
        let second = words.held_hay(hay.soaked);
        view! { <Row name=hay.name.clone() value=words.feed(hay.as_fed) strong=true second=second /> }
    });
    let foods = followed.foods.iter().map(|food| {
        let name = food
            .name
            .clone()
            .unwrap_or_else(|| words.a_balancer().to_owned());
        let second = food.feeds.map(|feeds| words.in_feeds(feeds));
        view! { <Row name=name value=words.bucket(food.as_fed) strong=true second=second /> }
    });
    let rows = hays
        .map(IntoAny::into_any)
        .chain(foods.map(IntoAny::into_any))
        .collect_view();
    let nets = followed
        .nets
        .iter()
        .map(|net| {
            let second = beside(net.soaked, words);
            view! { <Row name=words.time(net.visit) value=words.feed(net.as_fed) strong=true second=second /> }
        })
        .collect_view();
    view! {
        <Sentence said=words.follows(&words.feed(followed.hay()), followed.soaks()) />
        <Caution said=words.differs_until(&words.day(followed.review)) />
        {cautions(plan, words)}
        {vets_words(plan, words)}
        <p class="soft">{words.in_use(&words.day(followed.from), &words.day(followed.review))}</p>
        <h2>{words.plan_in_use()}</h2>
        <Rows name=words.plan_in_use()>{rows}</Rows>
        <h2>{words.nets_of_the_day()}</h2>
        <Rows name=words.nets_of_the_day()>{nets}</Rows>
        {differs}
        <details class="numbers">
            <summary>{words.as_of_today()}</summary>
            <p>{decision(plan.planned(), &words)}</p>
            {body(plan, records, visits, ().into_any(), words)}
        </details>
    }
    .into_any()
}

/// Beside a net: whether its hay is soaked after weighing.
fn beside(soaked: bool, words: English) -> &'static str {
    if soaked {
        words.before_soaking()
    } else {
        words.hay_in_the_net()
    }
}

/// The vets' words that hold: each stands on the plan until it ends, whether the plan needed it or not.
fn vets_words(plan: &Plan, words: English) -> AnyView {
    plan.planned()
        .words
        .iter()
        .map(|word| view! { <p>{words.vet_word(word)}</p> })
        .collect_view()
        .into_any()
}

/// What must be known beside a plan and stands in none of its tags.
fn cautions(plan: &Plan, words: English) -> AnyView {
    besides(plan, &words)
        .into_iter()
        .map(|said| caution(said, words))
        .collect_view()
        .into_any()
}

/// A plan under its decision.
fn body(
    plan: &Plan,
    records: usize,
    visits: Option<String>,
    cautions: AnyView,
    words: English,
) -> AnyView {
    let draft = plan.planned();
    let hung = tags(plan, &words)
        .into_iter()
        .map(|tag| {
            let state = state(tag.told);
            let word = words.told(tag.told);
            let lead = words.part(tag.part);
            let (what, second) = (tag.result, tag.reason);
            // The nets open as a day: what hangs when, every wait, and what mends it. Work opens as its week.
            let opens = match tag.part {
                Part::Day => Some(Route::Day(draft.animal.id.clone())),
                Part::Work => Some(Route::Work(draft.animal.id.clone())),
                _ => None,
            };
            if let Some(opens) = opens {
                let press = opens.to_string();
                view! { <Hang><Tag state word lead what second press /></Hang> }.into_any()
            } else {
                view! { <Hang><Tag state word lead what second /></Hang> }.into_any()
            }
        })
        .collect_view();
    let defaults: Vec<String> = visits.into_iter().chain(stands_in(draft, &words)).collect();
    let levers: Vec<Said> = draft
        .levers
        .iter()
        .map(|lever| words.lever(lever))
        .collect();
    view! {
        <Cord name=words.the_plan_in_order()>{hung}</Cord>
        {cautions}
        {nets(plan, words)}
        {lines(words.levers_head(), levers)}
        {lines(words.stands_in_head(), defaults.into_iter().map(Said::plain).collect())}
        {workings(plan, records, words)}
    }
    .into_any()
}

const fn state(told: Told) -> State {
    match told {
        Told::Done => State::Done,
        Told::Care => State::Care,
        Told::Stop => State::Stop,
        Told::NotKnown => State::NotKnown,
    }
}

/// A caution with its reason.
pub(super) fn caution(said: Said, words: English) -> AnyView {
    match said.why {
        Some(why) => {
            view! { <Caution said=said.sentence why=words.why()><p>{why}</p></Caution> }.into_any()
        }
        None => view! { <Caution said=said.sentence /> }.into_any(),
    }
}

/// The nets of the day with the hay that goes in, the longest wait and what mends it.
fn nets(plan: &Plan, words: English) -> AnyView {
    let draft = plan.planned();
    let beside = beside(draft.soaks(), words);
    let rows = draft
        .layout
        .hangings
        .iter()
        .map(|hanging| {
            view! {
                <Row
                    name=words.time(hanging.visit)
                    value=words.feed(hanging.as_fed)
                    strong=true
                    second=beside
                />
            }
        })
        .collect_view();
    let waits = words.longest_gap(&draft.layout);
    let mends = draft
        .mends
        .iter()
        .map(|mend| Said::plain(words.mend(*mend)))
        .collect();
    view! {
        <h2>{words.nets_of_the_day()}</h2>
        <Rows name=words.nets_of_the_day()>{rows}</Rows>
        <p>{waits.sentence}</p>
        {waits.why.map(|why| view! { <p class="soft">{why}</p> })}
        {lines(words.mends_head(), mends)}
    }
    .into_any()
}

/// Lines under a head; nothing when there are none.
pub(super) fn lines(head: &'static str, lines: Vec<Said>) -> AnyView {
    if lines.is_empty() {
        return ().into_any();
    }
    let rows = lines
        .into_iter()
        .map(|Said { sentence, why }| view! { <Row name=sentence second=why /> })
        .collect_view();
    view! {
        <h2>{head}</h2>
        <Rows name=head>{rows}</Rows>
    }
    .into_any()
}

/// Why, and where each number comes from.
fn workings(plan: &Plan, records: usize, words: English) -> AnyView {
    let numbers = sources(plan.planned(), records, &words)
        .into_iter()
        .map(|line| view! { <Row name=line.name value=line.value second=line.from /> })
        .collect_view();
    view! {
        <details class="numbers">
            <summary>{words.why_link()}</summary>
            {lines(words.why_head(), reasons(plan, &words))}
            <h2>{words.sources_head()}</h2>
            <Rows name=words.sources_head()>{numbers}</Rows>
        </details>
    }
    .into_any()
}
