//! The mend of a ration in English.

use super::English;
use super::fields::{capital, small};
use super::numbers::sized;
use crate::views::mend::{Candidate, Found, MendView, Proposal, SetWrong};
use crate::words::{BalanceWords, MendWords, Said, UnitWords};
use tussock_core::ration::mend::{Aim, NotOffered, Topping};
use tussock_core::units::{Currency, Money};

impl English {
    pub(super) fn minor_of(&self, minor: f64, currency: Currency) -> String {
        Money::nearest(minor, currency)
            .map_or_else(|| "not known".to_owned(), |money| self.money(money))
    }

    /// A small cost, with what is under a minor unit written out.
    pub(super) fn small_cost(&self, minor: f64, currency: Currency) -> String {
        if minor >= 1.0 {
            self.minor_of(minor, currency)
        } else {
            let whole = minor / currency.minor_in_whole() as f64;
            format!("{} {}", sized(whole), currency.code())
        }
    }

    fn names(&self, view: &MendView, proposal: &Proposal) -> Vec<String> {
        proposal
            .foods
            .iter()
            .filter_map(|(at, a_day)| {
                let name = self.candidate_name(view.candidate(*at)?);
                Some(format!("{} {}", small(&name), self.bucket(*a_day)))
            })
            .collect()
    }
}

impl MendWords for English {
    fn mend_word(&self) -> &'static str {
        "Ration"
    }

    fn mend_sentence(&self, view: &MendView, at: usize) -> String {
        match &view.found {
            Found::Rations { .. } => {
                let Some(proposal) = view.proposal(at) else {
                    return "Not known".to_owned();
                };
                if proposal.slip.is_same() {
                    return "What it gets keeps every limit".to_owned();
                }
                if proposal.foods.is_empty() {
                    return "The hay alone covers it".to_owned();
                }
                let foods = proposal.foods.len();
                let cover = if foods == 1 { "covers" } else { "cover" };
                format!("{} {cover} it", self.count(foods, "food", "foods"))
            }
            Found::Nothing(_) => "Nothing that is offered covers it".to_owned(),
            Found::NotKnown => "No mend was found in time".to_owned(),
            Found::Failed(_) => "It could not be worked out".to_owned(),
        }
    }

    fn no_mend_while_refused(&self) -> Said {
        Said::because(
            "No ration is proposed",
            "A plan is refused today. Look at the plan first: it says why, and what to do.",
        )
    }

    fn what_is_best(&self) -> &'static str {
        "What is best"
    }

    fn aim(&self, aim: Aim) -> [&'static str; 2] {
        match aim {
            Aim::Cheapest => ["Cheapest", "of foods with a price"],
            Aim::FewestFoods => ["Fewest foods", "then the least of them"],
            Aim::Lightest => ["Least to carry", "by weight"],
        }
    }

    fn where_from(&self) -> &'static str {
        "From"
    }

    fn typical_too(&self, too: bool) -> &'static str {
        if too {
            "Typical foods too"
        } else {
            "What is here"
        }
    }

    fn how_many_foods(&self) -> &'static str {
        "Bought foods"
    }

    fn at_most(&self, foods: Option<usize>) -> String {
        foods.map_or_else(
            || "Any number".to_owned(),
            |foods| format!("{foods} at most"),
        )
    }

    fn topping(&self, topping: Topping) -> Said {
        match topping {
            Topping::WhatHayLacks => Said::because(
                "While it loses weight: only what the hay lacks",
                "Balancer, minerals, vitamins, salt (common practice). Nothing that brings energy is offered.",
            ),
            Topping::LowInSugar => Said::because(
                "Energy only from food low in sugar and starch",
                "Sugar is a danger to it: at most 10 % of dry matter, as of its hay, and the limit of each bucket. Oil, \
                 unmolassed beet pulp and soya hulls are such foods.",
            ),
            Topping::Anything => Said::because(
                "Any food within the limits",
                "Starch of each bucket and of the day is kept under its limit.",
            ),
        }
    }

    fn set_by_hand(&self) -> &'static str {
        "Set amounts by hand"
    }

    fn set_hint(&self) -> &'static str {
        "Grams a day. Left empty, it is found; 0 takes the food out."
    }

    fn set_label(&self, candidate: &Candidate) -> String {
        let name = self.candidate_name(candidate);
        if candidate.to_buy.is_some() {
            format!("{name}, to be bought")
        } else {
            name
        }
    }

    fn not_offered(&self, why: NotOffered) -> &'static str {
        match why {
            NotOffered::BringsEnergy => "It brings energy: only by hand while it loses weight.",
            NotOffered::Sugar => "Too much sugar and starch, or not known how much: only by hand.",
            NotOffered::OnlyByHand => "An option, never a need: only by hand.",
        }
    }

    fn set_wrong(&self, wrong: &SetWrong) -> String {
        match wrong {
            SetWrong::Parse(error) => self.parse_error(error),
            SetWrong::OutOfRange(error) => self.out_of_range(error),
        }
    }

    fn candidate_name(&self, candidate: &Candidate) -> String {
        self.food_name(&candidate.of.food)
    }

    fn other_sets(&self) -> &'static str {
        "Other foods that would do"
    }

    fn set_of_foods(&self, view: &MendView, proposal: &Proposal) -> [String; 2] {
        let names = self.names(view, proposal);
        let names: Vec<&str> = names.iter().map(String::as_str).collect();
        let said = if names.is_empty() {
            "Hay alone".to_owned()
        } else {
            capital(&self.list(&names))
        };
        let costs = proposal.ration.cost().map_or_else(
            || "cost not known".to_owned(),
            |cost| format!("{} a day", self.minor_of(cost.minor, cost.currency)),
        );
        [said, costs]
    }

    fn beside_the_mend(&self, view: &MendView, proposal: &Proposal) -> Vec<Said> {
        let mut said = Vec::new();
        if !proposal.mended.with_care {
            said.push(Said::because(
                "It holds for an average hay of its class, not for a poor one",
                "Nobody tested the hay. With the low end of its class nothing that is offered covers it: a test would tell.",
            ));
        }
        if !proposal.mended.zinc_to_copper {
            said.push(Said::because(
                "Zinc to copper is not as usual",
                "Three to five times as much zinc as copper is accepted, from memory. No ration is refused for it.",
            ));
        }
        if view.aim == Aim::Cheapest && view.now.forages.iter().any(|hay| hay.price.is_none()) {
            said.push(Said::plain(
                "The hay has no price: only what bought food costs is compared",
            ));
        }
        let without: Vec<String> = proposal
            .mended
            .without_price
            .iter()
            .filter_map(|at| Some(self.candidate_name(view.candidate(*at)?)))
            .collect();
        if !without.is_empty() {
            let names: Vec<&str> = without.iter().map(String::as_str).collect();
            said.push(Said::because(
                format!(
                    "Left out for want of a price: {}",
                    self.count(names.len(), "food", "foods")
                ),
                format!("{}. A price makes them part of it.", self.list(&names)),
            ));
        }
        if let Found::Rations { proven: false, .. } = view.found {
            said.push(Said::because(
                "It keeps every limit, but it is not proven that none is better",
                "Whole scoops make many cases, and the search was cut off.",
            ));
        }
        said
    }

    fn mend_not_known(&self) -> &'static str {
        "Set fewer foods by hand, or ask for fewer foods, and it is found sooner."
    }

    fn use_this_ration(&self) -> &'static str {
        "Use this ration"
    }

    fn using_it(&self) -> &'static str {
        "The plan is made anew with these foods; what hangs stays as it is until you use that plan."
    }

    fn how_to_change_over(&self) -> &'static str {
        "How to change over"
    }

    fn options_and_trials(&self) -> [Said; 2] {
        [
            Said::because(
                "DHA, an omega-3 from algae: an option",
                "Ten horses with metabolic syndrome had 16 g a day for 46 days: triglycerides fell, and insulin did not rise as \
                 in those without (Elzinga 2019, a pilot). It showed no change of weight, and it is no treatment.",
            ),
            Said::because(
                "Live yeast: an option",
                "It is given for the hindgut where starch is high or feed changes; from memory, trials show small and \
                 mixed effects. None showed that it prevents laminitis or makes a sudden change safe.",
            ),
        ]
    }

    fn options_head(&self) -> &'static str {
        "Options, and what trials showed"
    }
}
