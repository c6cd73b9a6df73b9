//! A whole ration held against everything at once: needs, ceilings, ratios, sugar, buckets, forage.
//!
//! It judges and does not plan: a ration of an animal that may not be restricted is balanced like any other. As fed and
//! dry matter stay apart; what nobody knows is shown as the part of the dry matter in which it is unknown.

mod judged;
#[cfg(test)]
mod tests;

use super::balance::{Line, Part, balance};
use super::bucket::{Bucket, DayStarch, bucket_verdict, day_starch};
use super::error::RationError;
use super::food::Food;
use super::published::FED;
use crate::animal::{Kind, RiskLevel, State, Teeth};
use crate::forage::{ForageClass, Judgement, SugarEstimate, Supply};
use crate::limits::{
    Amount, CapVerdict, Ends, MealVerdict, Needs, Nutrient, RatioVerdict, UpperContent,
    UpperVerdict, calcium_to_phosphorus, iron_to_copper, meal_limit, vitamin_e_most,
    zinc_to_copper,
};
use crate::units::{
    AsFed, BodyMass, DryFraction, DryMatter, Energy, NutrientMass, PartOfBody, ShareOfAsFed,
    ShareOfDm,
};
use judged::{added_selenium, energy, forage, known_mass, row, sugar};

/// Hay, haylage or straw of a day.
#[derive(Clone, Copy, Debug)]
pub struct Forage<'a> {
    /// How much.
    pub fed: AsFed,
    /// Its dry matter.
    pub dry: DryFraction,
    /// What it is said to be.
    pub class: ForageClass,
    /// What it brings.
    pub supply: &'a Supply,
    /// Its sugar; `None` when nobody knows it.
    pub sugar: Option<&'a SugarEstimate>,
}

/// What an animal is given in a day.
#[derive(Clone, Debug, Default)]
pub struct Ration<'a> {
    /// Conserved forage.
    pub forage: Vec<Forage<'a>>,
    /// Grass, as dry matter at the likely intake; what it holds is not known.
    pub grass: DryMatter,
    /// Bucket meals, each with its foods.
    pub buckets: Vec<Bucket<'a>>,
}

/// The animal a ration is held against.
#[derive(Clone, Debug)]
pub struct Against<'a> {
    /// What kind of equid.
    pub kind: Kind,
    /// Grown, growing, in foal, in milk, for its calcium.
    pub state: State,
    /// Its weight.
    pub weight: Ends<BodyMass>,
    /// Its teeth, for the straw.
    pub teeth: Teeth,
    /// Its risk, for sugar and starch.
    pub risk: RiskLevel,
    /// Its needs.
    pub needs: &'a Needs,
}

/// A content of the whole ration as fed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum FedContent {
    /// A share of the feed as fed.
    Share(ShareOfAsFed),
    /// International units in a kilogram as fed.
    IuPerKg(f64),
}

/// One nutrient of a whole ration.
#[derive(Clone, Debug, PartialEq)]
pub struct Row {
    /// Supply against need and ceiling.
    pub line: Line,
    /// Part of the dry matter in which it is unknown, 0 to 1; contents are then at least so much.
    pub unknown: f64,
    /// The ceiling in this ration; `None` where none is published.
    pub most: Option<Amount>,
    /// What a kilogram of the ration as fed holds; `None` when nothing is known, or with grass, whose weight as eaten is
    /// not known.
    pub in_fed: Option<FedContent>,
    /// What a kilogram of its dry matter holds.
    pub in_dry: Option<UpperContent>,
}

/// Digestible energy of a whole ration.
#[derive(Clone, Debug, PartialEq)]
pub struct EnergyRow {
    /// What the known parts bring.
    pub supplied: Ends<Energy>,
    /// Part of the dry matter whose energy is unknown, 0 to 1.
    pub unknown: f64,
    /// The need; `None` for donkeys and mules, which go by weight and condition.
    pub need: Option<Energy>,
}

impl EnergyRow {
    /// What is likely supplied, as a part of the need.
    pub fn of_need(&self) -> Option<f64> {
        self.need.map(|need| self.supplied.likely / need)
    }
}

/// How much forage there is, which is the floor of fibre. The floor is of forage alone and tested with the heaviest it may
/// be; a level, the starting level too, is of all dry matter and of the weight it likely has.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum ForageVerdict {
    /// The floor is kept, and with what is bought the starting level.
    Enough {
        /// Forage, of the weight it likely has.
        of_body: PartOfBody,
    },
    /// All dry matter is under the starting level: a restriction, for which the rules of restriction hold.
    UnderStart {
        /// All dry matter, of the weight it likely has.
        of_body: PartOfBody,
        /// The starting level.
        start: PartOfBody,
    },
    /// Forage is under what no animal goes below.
    UnderFloor {
        /// Forage, of the weight it may have at most.
        of_body: PartOfBody,
        /// The floor.
        floor: PartOfBody,
    },
    /// An amount is no number.
    NotKnown,
}

/// Forage and fibre of a whole ration.
#[derive(Clone, Debug, PartialEq)]
pub struct ForageRow {
    /// Its dry matter: hay, haylage, straw, grass, lucerne as chaff or pellets.
    pub dry: DryMatter,
    /// Its part of all dry matter, 0 to 1; `None` for an empty ration.
    pub of_dry: Option<f64>,
    /// How it stands to the floor.
    pub verdict: ForageVerdict,
    /// Neutral detergent fibre of all dry matter, of the parts where it is known.
    pub fibre: Option<ShareOfDm>,
    /// Part of the dry matter whose fibre is unknown, 0 to 1.
    pub fibre_unknown: f64,
    /// Lucerne within the forage.
    pub lucerne: CapVerdict,
    /// Whether some of the hay is grass and legume mixed, so that lucerne or clover may be more.
    pub mixed: bool,
    /// Straw within the forage.
    pub straw: CapVerdict,
}

/// Sugar and starch of a whole day.
#[derive(Clone, Debug, PartialEq)]
pub struct SugarRow {
    /// Sugar and starch of the parts where it is known.
    pub known: NutrientMass,
    /// Part of the dry matter whose sugar is unknown, 0 to 1.
    pub unknown: f64,
    /// Whether the whole day is within the limit; `None` when nothing is known or no limit holds.
    pub judged: Option<Judgement>,
}

/// A whole ration, judged.
#[derive(Clone, Debug, PartialEq)]
pub struct Whole {
    /// Everything as fed, grass left out.
    pub fed: AsFed,
    /// All dry matter.
    pub dry: DryMatter,
    /// Of the weight it likely has.
    pub of_body: PartOfBody,
    /// Energy.
    pub energy: EnergyRow,
    /// One row a nutrient, in the order of the needs.
    pub rows: Vec<Row>,
    /// Calcium to phosphorus.
    pub calcium_to_phosphorus: RatioVerdict,
    /// Zinc to copper.
    pub zinc_to_copper: RatioVerdict,
    /// Iron to copper: a remark at most.
    pub iron_to_copper: RatioVerdict,
    /// Selenium that foods add to what they hold by themselves.
    pub added_selenium: UpperVerdict,
    /// Sugar and starch of the day.
    pub sugar: SugarRow,
    /// Each bucket against the limit of one meal.
    pub buckets: Vec<MealVerdict>,
    /// Starch of all buckets against the limit of the day.
    pub day_starch: DayStarch,
    /// Forage, fibre, lucerne and straw.
    pub forage: ForageRow,
}

/// Holds a whole ration against an animal.
///
/// # Errors
/// A weight that is not believed, or an amount below nothing or no number.
pub fn whole(ration: &Ration<'_>, against: &Against<'_>) -> Result<Whole, RationError> {
    let foods: Vec<(AsFed, &Food)> = ration
        .buckets
        .iter()
        .flat_map(|bucket| bucket.foods.iter().copied())
        .collect();
    check(ration, &foods)?;
    let mut parts: Vec<Part<'_>> = ration
        .forage
        .iter()
        .map(|forage| Part::Forage(forage.fed.dry(forage.dry), forage.supply))
        .chain(foods.iter().map(|(fed, food)| Part::Food(*fed, food)))
        .collect();
    if ration.grass > DryMatter::ZERO {
        parts.push(Part::NotKnown(ration.grass));
    }
    let dry: DryMatter = parts.iter().map(Part::dry).sum();
    let fed: AsFed = ration
        .forage
        .iter()
        .map(|forage| forage.fed)
        .chain(foods.iter().map(|(fed, _)| *fed))
        .sum();
    let weighed = (ration.grass <= DryMatter::ZERO).then_some(fed);
    let lightest = vitamin_e_most(against.weight.least)?;
    let rows: Vec<Row> = balance(&parts, &against.needs.rows)
        .into_iter()
        .map(|line| row(line, &parts, dry, weighed, Amount::Iu(lightest)))
        .collect();
    let mass = |nutrient: Nutrient| known_mass(&parts, dry, nutrient);
    let meal = meal_limit(against.risk, against.weight.least)?;
    Ok(Whole {
        fed,
        dry,
        of_body: dry.part_of(against.weight.likely),
        energy: energy(&parts, dry, against.needs),
        calcium_to_phosphorus: calcium_to_phosphorus(
            mass(Nutrient::Calcium),
            mass(Nutrient::Phosphorus),
            against.state,
        ),
        zinc_to_copper: zinc_to_copper(mass(Nutrient::Zinc), mass(Nutrient::Copper)),
        iron_to_copper: iron_to_copper(mass(Nutrient::Iron), mass(Nutrient::Copper)),
        added_selenium: added_selenium(&foods, dry),
        sugar: sugar(ration, &foods, against.risk),
        buckets: ration
            .buckets
            .iter()
            .map(|bucket| bucket_verdict(bucket, &meal))
            .collect(),
        day_starch: day_starch(&ration.buckets, &meal),
        forage: forage(ration, &foods, &parts, dry, against),
        rows,
    })
}

/// Refuses an amount below nothing or no number.
fn check(ration: &Ration<'_>, foods: &[(AsFed, &Food)]) -> Result<(), RationError> {
    let amounts = ration
        .forage
        .iter()
        .map(|forage| forage.fed)
        .chain(foods.iter().map(|(fed, _)| *fed))
        .map(AsFed::to_kg)
        .chain([ration.grass.to_kg()]);
    for kg in amounts {
        FED.check(kg)?;
    }
    Ok(())
}

/// The part of the dry matter in which something is unknown.
fn unknown(parts: &[Part<'_>], dry: DryMatter, known: impl Fn(&Part<'_>) -> bool) -> f64 {
    let lacking: DryMatter = parts
        .iter()
        .filter(|part| !known(part))
        .map(Part::dry)
        .sum();
    if dry > DryMatter::ZERO {
        lacking / dry
    } else {
        0.0
    }
}
