//! The ration of an animal against what it needs and may have.

use crate::device::clock::DeviceZone;
use crate::parts::{
    Action, ActionRow, Back, BalanceLine, BalanceRows, Caution, Column, Frame, FrameKind,
    FrameWidth, Press, Quiet, QuietRow, Rank, Row, Rows, Sentence, State, StateShape, StopBlock,
    Table,
};
use crate::places::Unread;
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::AnimalId;
use tussock_core::limits::Finding;
use tussock_core::log::DayRation;
use tussock_core::plan::PlanError;
use tussock_flow::routes::Route;
use tussock_flow::views::balance::{
    Balance, EnergyLine, Judged, Look, NutrientRow, Outcome, RationView, Shown, Stop, needs, ration,
};
use tussock_flow::words::{
    BalanceWords, BesideWords, English, HorsesWords, LimitsWords, LogWords, MendWords,
    PlanScreenWords, PlanWords, RationWords, SafetyWords, Said, UnitWords, VisitsWords,
};

/// The ration of an animal.
#[component]
pub fn Ration(
    /// Which.
    animal: AnimalId,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let id = StoredValue::new(animal.clone());
    let shelf = world.shelf(move || id.with_value(needs));
    let minute = world.minute();
    let seen = Memo::new(move |_| match (shelf.get(), minute.get()) {
        (Some(Ok(shelf)), now) => id.with_value(|id| ration(&shelf, id, now, &DeviceZone)),
        _ => None,
    });
    let back = Route::Horse(animal).to_string();
    let foot = move || {
        let back = Back {
            name: words.back().into(),
            press: Press::from(back.clone()),
        };
        let plan = id.with_value(|id| Route::Plan(id.clone())).to_string();
        let change = id
            .with_value(|id| Route::ChangeOver(id.clone()))
            .to_string();
        let does = move || {
            seen.with(|seen| seen.as_ref().map(|seen| leads(seen, &id.get_value())))
                .map(|(says, to)| view! { <Action says=says press=to.to_string() /> })
        };
        view! {
            <QuietRow>
                <Quiet says=words.see_plan() press=plan />
                <Quiet says=words.how_to_change_over() press=change.clone() />
            </QuietRow>
            <ActionRow back=back>{does}</ActionRow>
        }
    };
    let body = move || {
        seen.with(|seen| match seen {
            None => {
                let said = if shelf.get().is_none() {
                    words.opening()
                } else {
                    words.not_here()
                };
                view! { <Sentence said=said /> }.into_any()
            }
            Some(seen) => said_of(seen),
        })
    };
    view! {
        <Frame
            kind=FrameKind::Flow
            width=FrameWidth::Desk
            what=Signal::derive(move || seen.with(|seen| seen.as_ref().map(|seen| seen.animal.name.clone()).unwrap_or_default()))
            when=words.a_day()
            foot=foot
        >
            {body}
            <Unread shelf />
        </Frame>
    }
}

/// What is done next: its mend, or the way to what is missing.
fn leads(seen: &RationView, animal: &AnimalId) -> (&'static str, Route) {
    let words = English::default();
    let plan = (words.see_plan(), Route::Plan(animal.clone()));
    match &seen.outcome {
        Outcome::Shown(shown) if shown.refused.is_none() => {
            (words.find_the_cheapest_mend(), Route::Mend(animal.clone()))
        }
        Outcome::Shown(shown) if shown.lacks_its_stage() => {
            (words.details_of_it(), Route::Details(animal.clone()))
        }
        Outcome::Nothing(PlanError::NoWeight) | Outcome::NotReckoned(_) => {
            (words.weigh(), Route::Weigh(animal.clone()))
        }
        Outcome::Nothing(PlanError::NoForage) => (words.add_a_hay(), Route::NewHay),
        Outcome::Nothing(PlanError::DryMatterNotKnown { lot }) => {
            (words.open_the_hay(), Route::Hay(lot.clone()))
        }
        Outcome::Nothing(PlanError::Day(_)) => (words.when_somebody_comes(), Route::Visits),
        Outcome::Nothing(_) | Outcome::Refused(_) | Outcome::Shown(_) => plan,
    }
}

fn said_of(seen: &RationView) -> AnyView {
    let words = English::default();
    let problems = seen
        .problems
        .iter()
        .map(|problem| view! { <Caution said=words.record_problem(problem) /> })
        .collect_view();
    let body = match &seen.outcome {
        Outcome::Shown(shown) => shown_of(shown),
        Outcome::Refused(stop) => refused(stop),
        Outcome::Nothing(error) => missing(words.plan_error(error)),
        Outcome::NotReckoned(error) => missing(Said::plain(words.ration_error(error))),
    };
    view! { {body} {problems} }.into_any()
}

/// What is missing before anything can be reckoned.
fn missing(said: Said) -> AnyView {
    let why = said.why.map(|why| view! { <p>{why}</p> });
    view! { <Sentence said=said.sentence /> {why} }.into_any()
}

/// Safety refuses today's plan, and there is no other.
fn refused(stop: &Stop) -> AnyView {
    let words = English::default();
    let order = stop.vet.map_or_else(
        || {
            stop.why
                .first()
                .map_or(words.no_plan(), |reason| words.refusal_head(reason))
        },
        |urgency| words.vet(urgency),
    );
    let reasons = stop
        .why
        .iter()
        .map(|reason| view! { <p>{words.refusal(reason).sentence}</p> })
        .collect_view();
    view! {
        <StopBlock order=order rank=Rank::Sentence>{reasons}</StopBlock>
        <p>{words.no_ration_to_show()}</p>
    }
    .into_any()
}

fn shown_of(shown: &Shown) -> AnyView {
    let words = English::default();
    let balance = &shown.balance;
    let refused = shown
        .refused
        .as_ref()
        .map(|_| told(words.balance_while_refused(shown.ration.by)));
    view! {
        <Sentence said=words.balance_sentence(balance) />
        {refused}
        <div class="columns">
            <div class="group">
                {held(balance)} {cautions(shown)} {others(&balance.judged)} {numbers(balance)}
            </div>
            <div class="group">{given(&shown.ration)}</div>
        </div>
    }
    .into_any()
}

/// What it is given now.
fn given(ration: &DayRation) -> AnyView {
    let words = English::default();
    let hays = ration
        .forages
        .iter()
        .map(|given| {
            view! {
                <Row name=given.name.clone() value=words.feed(given.as_fed) strong=true second=words.given_forage(given) />
            }
        })
        .collect_view();
    let foods = ration
        .foods
        .iter()
        .map(|given| {
            view! {
                <Row
                    name=words.food_name(&given.of.food)
                    value=words.bucket(given.a_day)
                    strong=true
                    second=words.given_food(given)
                />
            }
        })
        .collect_view();
    view! {
        <h2>{words.what_it_is_given()}</h2>
        <p class="soft">{words.given_by(ration.by)} "."</p>
        <Rows name=words.what_it_is_given()>{hays} {foods}</Rows>
        <p>{words.ration_costs(ration)} "."</p>
        <QuietRow><Quiet says=words.to_the_foods() press=Route::Foods.to_string() /></QuietRow>
        {words.in_buckets(ration).map(|said| view! { <p class="soft">{said} "."</p> })}
        <p class="soft">{words.only_what_is_written_down()}</p>
    }
    .into_any()
}

/// What must be known where a ration is decided.
fn cautions(shown: &Shown) -> AnyView {
    let words = English::default();
    let untested = shown.untested();
    let untested = (!untested.is_empty())
        .then(|| told(words.hays_not_tested(&untested, &shown.balance.not_known())));
    let needed = shown
        .ration
        .standard
        .needed
        .iter()
        // The row of energy says it.
        .filter(|finding| **finding != Finding::EnergyByWeightAndCondition)
        .map(|finding| told(words.needs_finding(*finding)))
        .collect_view();
    view! { {untested} {needed} {told(words.balance_is_no_diagnosis())} }.into_any()
}

/// A caution with what stands behind it.
pub(super) fn told(said: Said) -> AnyView {
    let words = English::default();
    match said.why {
        Some(why) => {
            view! { <Caution said=said.sentence why=words.why()><p>{why}</p></Caution> }.into_any()
        }
        None => view! { <Caution said=said.sentence /> }.into_any(),
    }
}

/// The shape of a state.
pub(super) const fn shape_of(look: Look) -> Option<State> {
    match look {
        Look::Over => Some(State::Stop),
        Look::Short | Look::Remark => Some(State::Care),
        Look::NotKnown => Some(State::NotKnown),
        Look::Within => Some(State::Done),
        Look::Told => None,
    }
}

/// A nutrient, worded.
pub(super) fn line_of(row: &NutrientRow) -> BalanceLine {
    let words = English::default();
    BalanceLine {
        state: shape_of(row.is.look()),
        name: words.nutrient(row.nutrient).to_owned(),
        said: words.row_stands(row),
        has: words.row_has(row),
        need: words.row_needs(row),
        ceiling: words.row_ceiling(row),
        cord: row.cord,
        cord_said: match row.cord {
            Some(_) => words.row_cord(row),
            None => words.no_cord().to_owned(),
        },
    }
}

/// Energy, worded.
pub(super) fn energy_of(line: &EnergyLine) -> BalanceLine {
    let words = English::default();
    BalanceLine {
        state: shape_of(line.stands.look()),
        name: words.energy_name().to_owned(),
        said: words.energy_stands(line),
        has: words.energy_has(line),
        need: words.energy_needs(line),
        ceiling: words.energy_ceiling().to_owned(),
        cord: line.cord,
        cord_said: match line.cord {
            Some(_) => words.energy_cord(line),
            None => String::new(),
        },
    }
}

/// Energy, the nutrients that need a look, and the rest behind a key.
pub(super) fn held(balance: &Balance) -> AnyView {
    let words = English::default();
    // Without needs there is nothing to hold it against.
    if balance.rows.is_empty() {
        return ().into_any();
    }
    let mut lines = vec![energy_of(&balance.energy)];
    lines.extend(balance.to_look_at().map(line_of));
    let none = (lines.len() == 1).then(|| view! { <p>{words.no_nutrient_to_look_at()}</p> });
    let behind = |says: String, look: Look, lines: Vec<BalanceLine>| {
        (!lines.is_empty()).then(|| {
            view! {
                <details class="numbers">
                    <summary>{says}</summary>
                    <BalanceRows name=words.look(look) heads=words.row_heads() lines=lines />
                </details>
            }
        })
    };
    let unknown: Vec<BalanceLine> = balance.unknown().map(line_of).collect();
    let unknown = behind(words.unknown_show(unknown.len()), Look::NotKnown, unknown);
    let within: Vec<BalanceLine> = balance.within().map(line_of).collect();
    let rest = behind(words.within_show(within.len()), Look::Within, within);
    view! {
        <h2>{words.what_needs_a_look()}</h2>
        <BalanceRows name=words.what_needs_a_look() heads=words.row_heads() lines=lines />
        {none}
        <p class="soft small">{words.knots_are_level()}</p>
        {unknown}
        {rest}
    }
    .into_any()
}

/// What else is judged.
pub(super) fn others(judged: &[Judged]) -> AnyView {
    let words = English::default();
    let rows = judged
        .iter()
        .map(|judged| {
            let said = words.judged_stands(judged);
            let second = match said.why {
                Some(why) => format!("{}. {why}", said.sentence),
                None => said.sentence,
            };
            let look = judged.look();
            let shape = move || shape_of(look).map(|state| view! { <StateShape state /> });
            let word = (look != Look::Told).then(|| words.look(look).to_owned());
            view! { <Row name=words.judged_name(judged) value=word second=second shape=shape /> }
        })
        .collect_view();
    view! {
        <h2>{words.what_else()}</h2>
        <Rows name=words.what_else()>{rows}</Rows>
    }
    .into_any()
}

/// All numbers as a table.
pub(super) fn numbers(balance: &Balance) -> AnyView {
    let words = English::default();
    let last = words.numbers_columns().len() - 1;
    let columns = words
        .numbers_columns()
        .into_iter()
        .enumerate()
        .map(|(at, head)| {
            if at == 0 || at == last {
                Column::words(head)
            } else {
                Column::numbers(head)
            }
        })
        .collect();
    let mut rows = vec![words.numbers_energy(&balance.energy)];
    rows.extend(balance.rows.iter().map(|row| words.numbers_row(row)));
    view! {
        <details class="numbers">
            <summary>{words.all_numbers()}</summary>
            <Table caption=words.numbers_caption() columns=columns rows=Signal::stored(rows) wide=true />
        </details>
    }
    .into_any()
}
