//! A day's ration held against its animal, costed, and offered to a mend.

use super::{DayRation, GivenFood, GivenForage, YardFood};
use crate::plan::Standard;
use crate::ration::mend::{FoodChoice, ForageChoice};
use crate::ration::{Bucket, Food, Forage, Ration, RationError, Whole, whole};
use crate::units::{AsFed, Cost, Currency, DryMatter, PricePerKg};
use std::collections::BTreeMap;

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
    pub fn cost(&self) -> Option<Cost> {
        let forages = self.forages.iter().map(|given| (given.price, given.as_fed));
        let foods = self.foods.iter().map(|given| (given.of.price, given.a_day));
        forages
            .chain(foods)
            .map(|(price, fed)| Some(price?.cost_of(fed)))
            .reduce(|sum, more| sum?.plus(more?))?
    }

    /// The currency that prices are compared in: that of its hay, else of most of the yard's foods. A price in another is
    /// taken as not known, for nothing is converted.
    pub fn currency(&self) -> Option<Currency> {
        let of_hay = self.forages.iter().find_map(|given| given.price);
        let of_foods = self.yard.iter().filter_map(|food| food.price);
        let mut counted: BTreeMap<Currency, usize> = BTreeMap::new();
        for price in of_foods {
            *counted.entry(price.currency).or_default() += 1;
        }
        let most = counted.into_iter().max_by_key(|(_, count)| *count);
        of_hay
            .map(|price| price.currency)
            .or(most.map(|(currency, _)| currency))
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
                price: in_currency(given.price, self.currency()),
            })
            .collect()
    }
}

fn in_currency(price: Option<PricePerKg>, currency: Option<Currency>) -> Option<f64> {
    price
        .filter(|price| Some(price.currency) == currency)
        .map(|price| price.minor)
}

impl YardFood {
    /// As a mend takes it: any amount up to what is usual of it, in scoops where one was weighed.
    pub fn choice(&self, standard: &Standard, currency: Option<Currency>) -> FoodChoice<'_> {
        FoodChoice {
            food: &self.food,
            between: [AsFed::ZERO, self.food.most_a_day(standard.weight.likely)],
            step: self.scoop.unwrap_or_else(|| self.food.step()),
            whole_steps: self.scoop.is_some(),
            offered: true,
            price: in_currency(self.price, currency),
        }
    }

    /// The same with an amount that a person set.
    pub fn locked(
        &self,
        standard: &Standard,
        currency: Option<Currency>,
        a_day: AsFed,
    ) -> FoodChoice<'_> {
        FoodChoice {
            between: [a_day, a_day],
            ..self.choice(standard, currency)
        }
    }
}
