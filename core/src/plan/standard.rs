//! What a ration of an animal is held against, and what it may hold.

use super::draft::Draft;
use crate::animal::{Goal, Kind, Phase, RiskLevel, State, Teeth};
use crate::limits::{Ends, Finding, MealLimit, Needs, Offer, energy_floor, lowest_level_word};
use crate::plan::published::{MOST_DRY_MATTER, MOST_DRY_MATTER_IN_MILK};
use crate::ration::Against;
use crate::ration::mend::{Aim, Topping, Wanted};
use crate::units::{BodyMass, DryMatter, Energy};

/// What a ration of an animal is held against, and what it may hold.
#[derive(Clone, Debug, PartialEq)]
pub struct Standard {
    /// What kind of equid.
    pub kind: Kind,
    /// Grown, growing, in foal, in milk.
    pub state: State,
    /// Its weight, with its band.
    pub weight: Ends<BodyMass>,
    /// Its teeth.
    pub teeth: Teeth,
    /// Its risk.
    pub risk: RiskLevel,
    /// Whether it is to lose weight.
    pub loses: bool,
    /// Its needs.
    pub needs: Needs,
    /// What is to be said beside them.
    pub needed: Vec<Finding>,
    /// All dry matter of the day, at least and at most.
    pub dry_matter: [DryMatter; 2],
    /// Forage, at least: what no animal goes below, or its level less what may be bought.
    pub forage_least: DryMatter,
    /// Conserved forage, exactly, where what is bought comes on top of it.
    pub hay: Option<DryMatter>,
    /// Digestible energy, at least; `None` where it goes by weight and condition.
    pub energy_least: Option<Energy>,
    /// What a bucket may hold.
    pub meal: MealLimit,
    /// In how many buckets a day food can be given: one a visit.
    pub feeds: u32,
    /// What may be given on top of hay.
    pub topping: Topping,
}

impl Standard {
    /// Of a draft, which was judged or not.
    ///
    /// An animal that is fed by level has that much dry matter and no more; one that needs weight, grows, is in foal or in
    /// milk has at least that much and may have what it can eat. Its energy is met then; where the weight decides, only
    /// the floor of a restriction is kept.
    pub fn of(draft: &Draft) -> Self {
        let animal = &draft.animal;
        let weight = Ends::new(draft.weight.low, draft.weight.value, draft.weight.high);
        let allowance = &draft.allowance;
        let more = animal.state != State::Adult || allowance.offer == Offer::AtLeast;
        let loses = !more
            && animal.goal == Goal::Lose
            && !matches!(animal.phase, Phase::Holding | Phase::NeedsWeight);
        let most = if animal.state == State::Lactating {
            *MOST_DRY_MATTER_IN_MILK
        } else {
            *MOST_DRY_MATTER
        };
        // Where the plan hangs more so that the least of it keeps a floor, so does every ration.
        let level = if draft.raised.is_empty() {
            allowance.dry_matter()
        } else {
            allowance.dry_matter().max(draft.dry_matter)
        };
        let most = if more {
            level.max(most.of(weight.likely))
        } else {
            level
        };
        let word = lowest_level_word(&draft.words, &animal.id, draft.day).is_some();
        let floor = energy_floor(animal.kind, weight.most)
            .ok()
            .flatten()
            .map(|floor| {
                if word {
                    floor.never_under
                } else {
                    floor.without_vet
                }
            });
        let need = draft.needs.energy.as_ref().map(|need| need.energy);
        let hangings = draft.layout.hangings.len();
        Self {
            kind: animal.kind,
            state: animal.state,
            weight,
            teeth: animal.health.teeth,
            risk: draft.risk.level,
            loses,
            needs: draft.needs.clone(),
            needed: draft.needed.clone(),
            dry_matter: [level, most],
            forage_least: allowance.floor_dry_matter(),
            hay: more.then_some(level),
            energy_least: if more { need.or(floor) } else { floor },
            meal: draft.meal.clone(),
            feeds: u32::try_from(hangings).unwrap_or(1).max(1),
            topping: Topping::of(loses, draft.risk.level),
        }
    }

    /// As a ration is held against it.
    pub fn against(&self) -> Against<'_> {
        Against {
            kind: self.kind,
            state: self.state,
            weight: self.weight,
            teeth: self.teeth,
            risk: self.risk,
            needs: &self.needs,
        }
    }

    /// As a mend is asked for.
    pub fn wanted(&self, aim: Aim, at_most_bought: Option<usize>) -> Wanted<'_> {
        Wanted {
            against: self.against(),
            dry_matter: self.dry_matter,
            forage_least: self.forage_least,
            hay: self.hay,
            energy_least: self.energy_least,
            meal: self.meal.clone(),
            feeds: self.feeds,
            topping: self.topping,
            at_most_bought,
            aim,
        }
    }
}
