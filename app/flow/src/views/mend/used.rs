//! Using a proposed ration: its foods into the yard, and the ration for the animal.

use super::{MendView, Proposal};
use crate::acts::{Act, New};
use crate::forms::food::take;
use tussock_core::animal::FoodId;
use tussock_core::log::bodies::base::FeedGrams;
use tussock_core::log::bodies::{DecidedAs, RationFoodV1, RationV1};
use tussock_core::log::{Body, Known, LogError, Subject};
use tussock_core::ration::TypicalFood;
use tussock_core::ration::mend::Aim;
use tussock_core::sources::RecordId;

/// Ids and names that are made for it.
pub struct Made<'a> {
    /// The id of the ration.
    pub ration: RecordId,
    /// An id for a food that comes into the yard, the same for the same food until it is saved.
    pub food: &'a dyn Fn(TypicalFood) -> FoodId,
    /// The yard.
    pub yard: &'a Subject,
    /// The name of a typical food.
    pub name: &'a dyn Fn(TypicalFood) -> String,
    /// Whether a person set any amount by hand.
    pub by_hand: bool,
}

/// The act that decides a proposed ration: typical foods that are in it come into the yard, without a price, and the next
/// plan is made with its foods.
///
/// # Errors
/// A name or an amount beyond what is stored.
pub fn use_it(view: &MendView, proposal: &Proposal, made: &Made<'_>) -> Result<Act, LogError> {
    let mut acts = Vec::new();
    let mut foods = Vec::new();
    for (at, a_day) in &proposal.foods {
        let Some(candidate) = view.candidate(*at) else {
            continue;
        };
        let id = match candidate.to_buy {
            None => candidate.of.food.id.clone(),
            // A typical balancer needs no record to stand in.
            Some(TypicalFood::Balancer) => None,
            Some(typical) => {
                let id = (made.food)(typical);
                acts.push(take(typical, &(made.name)(typical), made.yard, &id)?);
                Some(id)
            }
        };
        foods.push(RationFoodV1 {
            food: id,
            as_fed_g: FeedGrams::of(*a_day)?,
        });
    }
    acts.push(Act::Add(New {
        id: made.ration.clone(),
        subject: Subject::animal(&view.animal.id),
        at: None,
        known: Known::Seen,
        body: Body::Ration(RationV1 {
            from: view.now.day,
            foods,
            decided_as: decided_as(view.aim, made.by_hand),
            decided_by: None,
            job: None,
        }),
    }));
    Ok(Act::All(acts))
}

const fn decided_as(aim: Aim, by_hand: bool) -> DecidedAs {
    match aim {
        _ if by_hand => DecidedAs::ByHand,
        Aim::Cheapest => DecidedAs::Cheapest,
        Aim::FewestFoods => DecidedAs::Fewest,
        Aim::Lightest => DecidedAs::Lightest,
    }
}
