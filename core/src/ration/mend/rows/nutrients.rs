//! Needs, ceilings and ratios.

use super::super::limit::Limit;
use super::super::published::{ASKED_WHOLE, UNDER};
use super::Rows;
use super::content::{End, in_dry, in_food, in_forage, less, number};
use crate::animal::State;
use crate::limits::published::{
    CALCIUM_TO_PHOSPHORUS_LEAST, CALCIUM_TO_PHOSPHORUS_MOST, CALCIUM_TO_PHOSPHORUS_YOUNG,
    MOST_ADDED_SELENIUM, ZINC_TO_COPPER_LEAST, ZINC_TO_COPPER_MOST,
};
use crate::limits::{Amount, Nutrient, UpperContent, upper_limit, vitamin_e_most};

impl Rows<'_> {
    /// Needs of which it is known what the hay brings, and of what hay often lacks ([`ASKED_WHOLE`]) the whole need where
    /// some food brings it. Iron is never short where hay is fed.
    pub(super) fn needs(&mut self) {
        let low = self.asks.low();
        let needs = self.wanted.against.needs;
        for need in &needs.rows {
            let nutrient = need.nutrient;
            if nutrient == Nutrient::Iron {
                continue;
            }
            let hay_known = self
                .forages
                .iter()
                .all(|forage| in_forage(forage, nutrient, low).is_some());
            let asked_whole = ASKED_WHOLE.value.contains(&nutrient);
            let brought = self.foods.iter().any(|choice| {
                asked_whole && in_food(choice.food, nutrient).is_some_and(|content| content > 0.0)
            });
            if !(hay_known || brought) {
                continue;
            }
            let least = number(nutrient, need.amount);
            self.row(
                Limit::Need(nutrient),
                [least, f64::INFINITY],
                |forage| in_forage(forage, nutrient, low).unwrap_or(0.0),
                |food| in_food(food, nutrient).unwrap_or(0.0),
            );
        }
    }

    pub(super) fn ceilings(&mut self) {
        let high = self.asks.high();
        for nutrient in Nutrient::ALL {
            let Some(limit) = upper_limit(nutrient) else {
                continue;
            };
            // Selenium is warned of before its limit.
            let most = in_dry(nutrient, limit.warn.unwrap_or(limit.most)) * (1.0 - *UNDER);
            let over = |content: f64, dry: f64| content - most * dry;
            // Of a hay that breaks it alone only the foods are asked, and these may not make it worse.
            let broken = self.forages.iter().any(|forage| {
                in_forage(forage, nutrient, high)
                    .is_some_and(|content| over(content, forage.dry.to_fraction()) > 0.0)
            });
            self.row(
                Limit::Ceiling(nutrient),
                [f64::NEG_INFINITY, 0.0],
                |forage| match in_forage(forage, nutrient, high) {
                    _ if broken => 0.0,
                    Some(content) => over(content, forage.dry.to_fraction()),
                    // Unknown: as the balance has it, on what is known.
                    None => -most * forage.dry.to_fraction(),
                },
                |food| {
                    over(
                        in_food(food, nutrient).unwrap_or(0.0),
                        food.dry.to_fraction(),
                    )
                },
            );
        }
        let selenium = in_dry(
            Nutrient::Selenium,
            UpperContent::Share(*MOST_ADDED_SELENIUM),
        );
        self.row(
            Limit::AddedSelenium,
            [f64::NEG_INFINITY, 0.0],
            |forage| -selenium * forage.dry.to_fraction(),
            |food| {
                let added = if food.class.is_fortified() {
                    in_food(food, Nutrient::Selenium).unwrap_or(0.0)
                } else {
                    0.0
                };
                added - selenium * food.dry.to_fraction()
            },
        );
        if let Ok(most) = vitamin_e_most(self.wanted.against.weight.least) {
            let most = number(Nutrient::VitaminE, Amount::Iu(most));
            self.row(
                Limit::VitaminEByBody,
                [f64::NEG_INFINITY, most * (1.0 - *UNDER)],
                |_| 0.0,
                |food| in_food(food, Nutrient::VitaminE).unwrap_or(0.0),
            );
        }
    }

    /// `of - times * to`, each at the end that leaves least room.
    fn ratio(&mut self, limit: Limit, [of, to]: [Nutrient; 2], times: f64, at_least: bool) {
        let (of_end, to_end, bounds) = if at_least {
            (self.asks.low(), self.asks.high(), [0.0, f64::INFINITY])
        } else {
            (End::Mean, End::Mean, [f64::NEG_INFINITY, 0.0])
        };
        self.row(
            limit,
            bounds,
            |forage| {
                less(
                    in_forage(forage, of, of_end),
                    in_forage(forage, to, to_end),
                    times,
                )
            },
            |food| less(in_food(food, of), in_food(food, to), times),
        );
    }

    pub(super) fn ratios(&mut self) {
        let known = |nutrient: Nutrient| {
            self.forages
                .iter()
                .all(|forage| in_forage(forage, nutrient, End::Mean).is_some())
        };
        let minerals = known(Nutrient::Calcium) && known(Nutrient::Phosphorus);
        let traces = known(Nutrient::Zinc) && known(Nutrient::Copper);
        // What is narrow for a growing animal is a remark, and no bound.
        let [_, most_young] = *CALCIUM_TO_PHOSPHORUS_YOUNG;
        let most = if self.wanted.against.state == State::Growing {
            most_young
        } else {
            *CALCIUM_TO_PHOSPHORUS_MOST
        };
        let calcium = [Nutrient::Calcium, Nutrient::Phosphorus];
        if minerals {
            self.ratio(
                Limit::CalciumOverPhosphorus,
                calcium,
                *CALCIUM_TO_PHOSPHORUS_LEAST,
                true,
            );
            self.ratio(Limit::CalciumNotFarOver, calcium, most, false);
        }
        if traces && self.asks.zinc_to_copper {
            let zinc = [Nutrient::Zinc, Nutrient::Copper];
            // At the mean of both: it is a wish, and the spread of a class would never grant it.
            self.mean_ratio(Limit::ZincOverCopper, zinc, *ZINC_TO_COPPER_LEAST);
            self.ratio(Limit::ZincNotFarOver, zinc, *ZINC_TO_COPPER_MOST, false);
        }
    }

    fn mean_ratio(&mut self, limit: Limit, [of, to]: [Nutrient; 2], times: f64) {
        self.row(
            limit,
            [0.0, f64::INFINITY],
            |forage| {
                less(
                    in_forage(forage, of, End::Mean),
                    in_forage(forage, to, End::Mean),
                    times,
                )
            },
            |food| less(in_food(food, of), in_food(food, to), times),
        );
    }
}
