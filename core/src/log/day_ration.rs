//! What an animal is given in a day: by the plan that feeds it, or by today's draft where none does.

mod held;

use super::bodies::base::BodyGrams;
use super::bodies::{AmountV1, Body, PlanV1};
use super::entry::{Entry, up_to};
use super::envelope::Record;
use super::feeds::food;
use super::gather::{Gathered, Problem, Wish, gather};
use super::holding::{Holding, plan_that_feeds};
use crate::animal::{Animal, AnimalId, LotId};
use crate::forage::{Fed, ForageClass, Lot, SugarEstimate, Supply, instead, supply};
use crate::plan::{Draft, PlanError, Soaking, Standard, sugar_as_fed};
use crate::ration::Food;
use crate::units::{AsFed, DryFraction, DryMatter, Instant, LocalDate, PricePerKg, Zone};

/// What says how much it is given.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum GivenBy {
    /// The plan that feeds it since a day, its own or its group's.
    Plan {
        /// The day.
        from: LocalDate,
    },
    /// No plan is in use: what today's would give.
    Draft,
}

/// A forage of the day.
#[derive(Clone, Debug, PartialEq)]
pub struct GivenForage {
    /// The lot.
    pub lot: LotId,
    /// Its name.
    pub name: String,
    /// What it is said to be.
    pub class: ForageClass,
    /// Whether it is soaked.
    pub fed: Fed,
    /// How much is weighed out.
    pub as_fed: AsFed,
    /// The dry matter that is eaten of it, as a part of what is weighed out.
    pub dry: DryFraction,
    /// What it brings.
    pub supply: Supply,
    /// Its sugar as it is fed.
    pub sugar: SugarEstimate,
    /// Whether a laboratory tested it.
    pub tested: bool,
    /// What a kilogram costs.
    pub price: Option<PricePerKg>,
}

/// A bought food of the yard.
#[derive(Clone, Debug, PartialEq)]
pub struct YardFood {
    /// The food.
    pub food: Food,
    /// What a kilogram costs.
    pub price: Option<PricePerKg>,
    /// What a scoop of it weighs.
    pub scoop: Option<AsFed>,
}

/// What is given of a bought food.
#[derive(Clone, Debug, PartialEq)]
pub struct GivenFood {
    /// The food.
    pub of: YardFood,
    /// How much a day.
    pub a_day: AsFed,
}

/// What an animal is given in a day, with what it is held against.
#[derive(Clone, Debug, PartialEq)]
pub struct DayRation {
    /// What says so.
    pub by: GivenBy,
    /// The animal.
    pub animal: Animal,
    /// The local day.
    pub day: LocalDate,
    /// What it is held against.
    pub standard: Standard,
    /// The forages.
    pub forages: Vec<GivenForage>,
    /// The bought foods.
    pub foods: Vec<GivenFood>,
    /// Every food of the yard, by name.
    pub yard: Vec<YardFood>,
    /// What could not be read.
    pub problems: Vec<Problem>,
}

/// What an animal is given in a day. `None` when it is not among the records.
///
/// # Errors
/// Why nothing can be reckoned for it: no weight, no forage, and what else stops a draft.
pub fn day_ration(
    records: &[&Record],
    animal: &AnimalId,
    now: Instant,
    zone: &impl Zone,
    wish: &Wish,
) -> Option<Result<DayRation, PlanError>> {
    ration(records, animal, now, zone, wish, true)
}

/// What today's draft would give it, whatever plan feeds it.
pub(super) fn draft_ration(
    records: &[&Record],
    animal: &AnimalId,
    now: Instant,
    zone: &impl Zone,
    wish: &Wish,
) -> Option<Result<DayRation, PlanError>> {
    ration(records, animal, now, zone, wish, false)
}

fn ration(
    records: &[&Record],
    animal: &AnimalId,
    now: Instant,
    zone: &impl Zone,
    wish: &Wish,
    by_plan: bool,
) -> Option<Result<DayRation, PlanError>> {
    let gathered = gather(records, animal, now, zone, wish)?;
    let draft = match gathered.draft() {
        Ok(draft) => draft,
        Err(error) => return Some(Err(error)),
    };
    let entries = up_to(records, now);
    let mut problems = gathered.problems.clone();
    let yard = yard_foods(&entries, &mut problems);
    let planned = by_plan
        .then(|| of_plan(records, &entries, &gathered, &draft, &yard, now))
        .flatten();
    let (by, forages, foods) = planned.unwrap_or_else(|| {
        let (forages, foods) = of_draft(&gathered, &draft, &yard);
        (GivenBy::Draft, forages, foods)
    });
    Some(Ok(DayRation {
        by,
        day: gathered.day,
        standard: Standard::of(&draft),
        forages,
        foods,
        yard,
        problems,
        animal: gathered.animal,
    }))
}

/// Every food of the yard that can be reckoned with, by name. Of one without a label and without typical numbers nothing
/// is known, and it is not among them.
fn yard_foods(entries: &[Entry<'_>], problems: &mut Vec<Problem>) -> Vec<YardFood> {
    let mut found: Vec<YardFood> = entries
        .iter()
        .filter_map(|entry| {
            let Body::Food(body) = &entry.body else {
                return None;
            };
            match body.food(&entry.record.id) {
                Ok(food) => Some(YardFood {
                    food: food?,
                    price: body.price_per_kg(),
                    scoop: body.scoop.as_ref().map(|scoop| scoop.g.as_fed()),
                }),
                Err(error) => {
                    problems.push(Problem::Log(error));
                    None
                }
            }
        })
        .collect();
    found.sort_by(|a, b| (&a.food.name, &a.food.id).cmp(&(&b.food.name, &b.food.id)));
    found
}

type Parts = (Vec<GivenForage>, Vec<GivenFood>);

fn of_draft(gathered: &Gathered, draft: &Draft, yard: &[YardFood]) -> Parts {
    let forages = draft
        .hays
        .iter()
        .filter_map(|hay| {
            let (lot, _) = gathered.hays.iter().find(|(lot, _)| lot.id == hay.lot)?;
            given_forage(lot, hay.fed, hay.weigh_out, hay.eaten, &gathered.soaking)
        })
        .collect();
    let decided = gathered.ration.iter().flatten().map(|(_, food)| food);
    let known: Vec<&Food> = gathered.balancer.iter().chain(decided).collect();
    let foods = draft
        .buckets
        .iter()
        .map(|line| GivenFood {
            of: of_yard(
                yard,
                || {
                    known
                        .iter()
                        .find(|food| food.id == line.food)
                        .map_or_else(crate::ration::typical_balancer, |food| (*food).clone())
                },
                line.food.as_ref().map(|food| food.0.as_str()),
            ),
            a_day: line.dose.a_day,
        })
        .collect();
    (forages, foods)
}

/// A food of the yard by its id; another where it has none.
fn of_yard(yard: &[YardFood], other: impl Fn() -> Food, id: Option<&str>) -> YardFood {
    let same = |one: &&YardFood| one.food.id.as_ref().map(|id| id.0.as_str()) == id;
    id.and_then(|_| yard.iter().find(same))
        .cloned()
        .unwrap_or_else(|| YardFood {
            food: other(),
            price: None,
            scoop: None,
        })
}

/// By the plan that feeds it; `None` without one, and when a lot or food that it names cannot be read.
fn of_plan(
    records: &[&Record],
    entries: &[Entry<'_>],
    gathered: &Gathered,
    draft: &Draft,
    yard: &[YardFood],
    now: Instant,
) -> Option<(GivenBy, Vec<GivenForage>, Vec<GivenFood>)> {
    let animal = &gathered.animal.id;
    let plan = plan_that_feeds(records, animal, now, gathered.day)?;
    let by = GivenBy::Plan { from: plan.from };
    let foods = plan
        .amounts
        .iter()
        .filter(|amount| amount.lot.is_none())
        .map(|amount| {
            let mut unread = Vec::new();
            let food = food(entries, amount.food.as_ref(), &mut unread)?;
            let id = amount.food.as_ref().map(|food| food.0.as_str());
            Some(GivenFood {
                of: of_yard(yard, || food.clone(), id),
                a_day: amount.as_fed_g.as_fed(),
            })
        })
        .collect::<Option<Vec<_>>>()?;
    let bought: DryMatter = foods
        .iter()
        .map(|given| given.a_day.dry(given.of.food.dry))
        .sum();
    let (hay, part) = if plan.is_part() {
        // A member of a group: its share of the group's hay, as its part says.
        let hay = Holding::of(entries).hay_of(animal, gathered.day)?.clone();
        let all: DryMatter = of_hay(&hay).map(|amount| amount.dry_matter_g.dry()).sum();
        let body = plan
            .weight_g
            .map_or(draft.allowance.weight.likely, BodyGrams::mass);
        let own = plan.level.part().of(body) - bought;
        (DryMatter::ZERO < all && DryMatter::ZERO < own).then_some(())?;
        (hay, own / all)
    } else {
        // A group's plan says what is offered to all; the share of one without a part of its own is not known.
        let of_group = Holding::of(entries)
            .fed_with(animal, gathered.day)
            .is_some();
        (!of_group).then_some(())?;
        (plan, 1.0)
    };
    let lots = lots_of(entries);
    let forages = of_hay(&hay)
        .map(|amount| {
            let named = amount.lot.as_ref()?;
            // What was opened in its place is weighed out with as much dry matter.
            let opened = instead(&lots, named, hay.from, gathered.day);
            let id = opened.as_ref().map_or(named, |opened| &opened.lot);
            let lot = lots.iter().find(|lot| lot.id == *id)?;
            let weighed = amount.as_fed_g.as_fed();
            let weighed = opened
                .as_ref()
                .map_or(weighed, |opened| opened.weigh(weighed));
            let fed = if amount.soaked { Fed::Soaked } else { Fed::Dry };
            given_forage(
                lot,
                fed,
                weighed * part,
                amount.dry_matter_g.dry() * part,
                &gathered.soaking,
            )
        })
        .collect::<Option<Vec<_>>>()?;
    Some((by, forages, foods))
}

fn of_hay(plan: &PlanV1) -> impl Iterator<Item = &AmountV1> {
    plan.amounts.iter().filter(|amount| amount.lot.is_some())
}

fn lots_of(entries: &[Entry<'_>]) -> Vec<Lot> {
    entries
        .iter()
        .filter_map(|entry| match &entry.body {
            Body::Lot(body) => body.lot(&entry.record.id).ok().map(|(lot, _)| lot),
            _ => None,
        })
        .collect()
}

/// `None` for an amount of nothing, of which no part is dry.
fn given_forage(
    lot: &Lot,
    fed: Fed,
    as_fed: AsFed,
    eaten: DryMatter,
    soaking: &Soaking,
) -> Option<GivenForage> {
    let dry = DryFraction::percent(eaten.to_kg() / as_fed.to_kg() * 100.0).ok()?;
    Some(GivenForage {
        lot: lot.id.clone(),
        name: lot.name.clone(),
        class: lot.class,
        fed,
        as_fed,
        dry,
        supply: supply(lot, fed),
        sugar: sugar_as_fed(lot, fed, soaking),
        tested: lot.report(fed).or_else(|| lot.report(Fed::Dry)).is_some(),
        price: lot.price.and_then(crate::forage::Price::per_kg),
    })
}
