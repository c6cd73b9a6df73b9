//! What an animal is given in a day: by the plan that feeds it, or by today's draft where none does.

use super::bodies::{AmountV1, Body, PlanV1};
use super::entry::{Entry, up_to};
use super::envelope::Record;
use super::feeds::food;
use super::gather::{Gathered, Problem, Wish, gather};
use super::holding::{Holding, plan_that_feeds};
use crate::animal::{Animal, AnimalId, LotId};
use crate::forage::{Fed, ForageClass, Lot, SugarEstimate, Supply, supply};
use crate::plan::{Draft, PlanError, Soaking, Standard, sugar_as_fed};
use crate::ration::mend::{FoodChoice, ForageChoice};
use crate::ration::{Bucket, Food, Forage, Ration, RationError, Whole, whole};
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
            .map_or(draft.allowance.weight.likely, |weight| weight.mass());
        let own = plan.level.part().of(body) - bought;
        (DryMatter::ZERO < all && DryMatter::ZERO < own).then_some(())?;
        (hay, own / all)
    } else {
        (plan, 1.0)
    };
    let forages = of_hay(&hay)
        .map(|amount| {
            let lot = lot_of(entries, amount.lot.as_ref()?)?;
            let fed = if amount.soaked { Fed::Soaked } else { Fed::Dry };
            given_forage(
                &lot,
                fed,
                amount.as_fed_g.as_fed() * part,
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

fn lot_of(entries: &[Entry<'_>], id: &LotId) -> Option<Lot> {
    entries.iter().rev().find_map(|entry| match &entry.body {
        Body::Lot(body) if entry.record.id.0 == id.0 => {
            body.lot(&entry.record.id).ok().map(|(lot, _)| lot)
        }
        _ => None,
    })
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

impl DayRation {
    /// With other amounts of forage, in their order, and other foods.
    #[must_use]
    pub fn with(&self, forages: &[AsFed], foods: Vec<GivenFood>) -> Self {
        Self {
            forages: self
                .forages
                .iter()
                .zip(forages)
                .map(|(given, as_fed)| GivenForage {
                    as_fed: *as_fed,
                    ..given.clone()
                })
                .collect(),
            foods: foods
                .into_iter()
                .filter(|given| AsFed::ZERO < given.a_day)
                .collect(),
            ..self.clone()
        }
    }

    /// All dry matter.
    pub fn dry(&self) -> DryMatter {
        let forage: DryMatter = self
            .forages
            .iter()
            .map(|given| given.as_fed.dry(given.dry))
            .sum();
        let food: DryMatter = self
            .foods
            .iter()
            .map(|given| given.a_day.dry(given.of.food.dry))
            .sum();
        forage + food
    }

    /// In how many buckets its foods are given, so that each keeps its limit; as many as there are visits when no number
    /// of buckets would.
    pub fn buckets(&self) -> u32 {
        let foods: Vec<(AsFed, &Food)> = self
            .foods
            .iter()
            .map(|given| (given.a_day, &given.of.food))
            .collect();
        let most = self.standard.feeds;
        crate::ration::feeds_for(&foods, &self.standard.meal).map_or(most, |feeds| feeds.min(most))
    }

    /// Held against the animal, its foods shared evenly over the buckets.
    ///
    /// # Errors
    /// A weight or an amount that is not believed.
    pub fn whole(&self) -> Result<Whole, RationError> {
        let buckets = self.buckets();
        let each = Bucket {
            foods: self
                .foods
                .iter()
                .map(|given| (given.a_day * (1.0 / f64::from(buckets)), &given.of.food))
                .collect(),
        };
        let ration = Ration {
            forage: self
                .forages
                .iter()
                .map(|given| Forage {
                    fed: given.as_fed,
                    dry: given.dry,
                    class: given.class,
                    supply: &given.supply,
                    sugar: Some(&given.sugar),
                })
                .collect(),
            grass: DryMatter::ZERO,
            buckets: (0..buckets).map(|_| each.clone()).collect(),
        };
        whole(&ration, &self.standard.against())
    }

    /// What it costs a day, in minor units of one currency; `None` when the price of something is not known or they are
    /// not of one currency.
    pub fn cost(&self) -> Option<PricePerKg> {
        let prices = self
            .forages
            .iter()
            .map(|given| (given.price, given.as_fed))
            .chain(self.foods.iter().map(|given| (given.of.price, given.a_day)));
        prices
            .map(|(price, fed)| {
                let price = price?;
                Some(PricePerKg {
                    minor: price.minor * fed.to_kg(),
                    currency: price.currency,
                })
            })
            .reduce(|sum, more| {
                let (sum, more) = (sum?, more?);
                (sum.currency == more.currency).then_some(PricePerKg {
                    minor: sum.minor + more.minor,
                    currency: sum.currency,
                })
            })?
    }

    /// Its forages as a mend takes them: their parts as they are, each as much as the limits allow.
    pub fn forage_choices(&self) -> Vec<ForageChoice<'_>> {
        let all: DryMatter = self
            .forages
            .iter()
            .map(|given| given.as_fed.dry(given.dry))
            .sum();
        let [_, most] = self.standard.dry_matter;
        self.forages
            .iter()
            .map(|given| ForageChoice {
                dry: given.dry,
                class: given.class,
                supply: &given.supply,
                sugar: Some(&given.sugar),
                between: [AsFed::ZERO, most.as_fed(given.dry)],
                part: Some(given.as_fed.dry(given.dry) / all),
                price: given.price.map(|price| price.minor),
            })
            .collect()
    }
}

impl YardFood {
    /// As a mend takes it: any amount up to what is usual of it, in scoops where one was weighed.
    pub fn choice(&self, standard: &Standard, offered: bool) -> FoodChoice<'_> {
        FoodChoice {
            food: &self.food,
            between: [AsFed::ZERO, self.food.most_a_day(standard.weight.likely)],
            step: self.scoop.unwrap_or_else(|| self.food.step()),
            whole_steps: self.scoop.is_some(),
            offered,
            price: self.price.map(|price| price.minor),
        }
    }

    /// The same with an amount that a person set.
    pub fn locked(&self, standard: &Standard, a_day: AsFed) -> FoodChoice<'_> {
        FoodChoice {
            between: [a_day, a_day],
            ..self.choice(standard, true)
        }
    }
}
