//! What is asked of a mend: what is best, from where, and how many foods.

use super::mend::AtMend;
use super::ration::told;
use crate::parts::{Choice, Offer};
use leptos::prelude::*;
use tussock_core::ration::mend::Aim;
use tussock_flow::views::mend::Outcome;
use tussock_flow::views::mend::asks::{AIM, AIMS, FROM, HERE, MOST, TYPICAL};
use tussock_flow::words::{English, MendWords};

/// How many bought foods at most.
const AT_MOST: [Option<usize>; 4] = [None, Some(1), Some(2), Some(3)];

impl AtMend {
    /// What is asked of it.
    pub(super) fn asks(self) -> Option<AnyView> {
        let words = English::default();
        let form = self.form;
        let aim = self.seen.with(|seen| match seen {
            Some(Outcome::Shown(view)) => Some(view.aim),
            _ => None,
        })?;
        let topping = self.seen.with(|seen| match seen {
            Some(Outcome::Shown(view)) => Some(told(words.topping(view.now.standard.topping))),
            _ => None,
        });
        let aims = AIMS
            .iter()
            .map(|(aim, _)| {
                let [word, second] = words.aim(*aim);
                Offer::new(*aim, word).with(second)
            })
            .collect();
        let choose_aim = Callback::new(move |aim: Aim| {
            let word = AIMS.iter().find(|(one, _)| *one == aim);
            self.choose(AIM, word.map_or("", |(_, word)| word));
        });
        let from = [true, false]
            .map(|too| Offer::new(too, words.typical_too(too)))
            .to_vec();
        let choose_from = Callback::new(move |too: bool| {
            self.choose(FROM, if too { TYPICAL } else { HERE });
        });
        let most = AT_MOST
            .map(|most| Offer::new(most, words.at_most(most)))
            .to_vec();
        let choose_most = Callback::new(move |most: Option<usize>| {
            self.choose(
                MOST,
                &most.map_or_else(String::new, |most| most.to_string()),
            );
        });
        let typical_too = Signal::derive(move || Some(form.held(FROM).as_deref() != Some(HERE)));
        let at_most = Signal::derive(move || {
            Some(form.held(MOST).and_then(|word| word.parse::<usize>().ok()))
        });
        Some(
            view! {
                {topping}
                <Choice legend=words.what_is_best() offers=aims chosen=Some(aim) on_choose=choose_aim />
                <Choice legend=words.where_from() offers=from chosen=typical_too on_choose=choose_from />
                <Choice legend=words.how_many_foods() offers=most chosen=at_most on_choose=choose_most />
            }
            .into_any(),
        )
    }
}
