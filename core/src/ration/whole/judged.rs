//! Each thing a whole ration is judged by.

use super::super::balance::{Line, Part, Standing};
use super::super::class::FoodClass;
use super::super::food::Food;
use super::super::published::{LEVEL_WEIGHED, RATIO_UNKNOWN};
use super::{
    Against, EnergyRow, FedContent, ForageRow, ForageVerdict, Ration, Row, SugarRow, unknown,
};
use crate::animal::RiskLevel;
use crate::forage::{
    Analyte, Belief, ForageClass, ForageKind, MixPart, SugarEstimate, SugarOrigin, judge, mix,
};
use crate::limits::published::{FLOOR, START, START_DONKEY};
use crate::limits::{
    Amount, Ends, Needs, Nutrient, UpperContent, UpperVerdict, judge_added_selenium, judge_cap,
    judge_lucerne, straw_cap, sugar_limits, upper_limit,
};
use crate::units::{AsFed, DryMatter, Energy, NutrientMass, ShareOfAsFed, ShareOfDm};
use std::collections::BTreeSet;

pub(super) fn row(
    line: Line,
    parts: &[Part<'_>],
    dry: DryMatter,
    weighed: Option<AsFed>,
    most_vitamin_e: Amount,
) -> Row {
    let nutrient = line.nutrient;
    let of_dry = upper_limit(nutrient).map(|limit| limit.most.in_dry(dry));
    // Vitamin E is bounded by body weight too; the lower of the two holds.
    let by_body = (nutrient == Nutrient::VitaminE).then_some(most_vitamin_e);
    let most = match (of_dry, by_body) {
        (Some(a), Some(b)) if b.times(a).is_some_and(|part| part < 1.0) => Some(b),
        (Some(a), _) => Some(a),
        (None, b) => b,
    };
    let over = line
        .supplied
        .zip(most)
        .and_then(|(supplied, most)| supplied.times(most))
        .is_some_and(|part| part > 1.0);
    let standing = match most {
        Some(most) if over => Standing::Over { most },
        _ => line.standing,
    };
    let per = |kg: f64| (kg > 0.0).then(|| line.supplied.map(|amount| amount.scaled(1.0 / kg)))?;
    Row {
        unknown: unknown(parts, dry, |part| part.brings(nutrient).is_some()),
        most,
        in_fed: weighed
            .and_then(|fed| per(fed.to_kg()))
            .map(|amount| match amount {
                Amount::Mass(mass) => {
                    FedContent::Share(ShareOfAsFed::fraction(mass.to_g() / 1000.0))
                }
                Amount::Iu(units) => FedContent::IuPerKg(units.to_iu()),
            }),
        in_dry: per(dry.to_kg()).map(|amount| match amount {
            Amount::Mass(mass) => UpperContent::Share(ShareOfDm::fraction(mass.to_g() / 1000.0)),
            Amount::Iu(units) => UpperContent::IuPerKg(units.to_iu()),
        }),
        line: Line { standing, ..line },
    }
}

/// The mass of a mineral; `None` when it is unknown in more of the dry matter than a ratio bears.
pub(super) fn known_mass(
    parts: &[Part<'_>],
    dry: DryMatter,
    nutrient: Nutrient,
) -> Option<NutrientMass> {
    if unknown(parts, dry, |part| part.brings(nutrient).is_some()) > *RATIO_UNKNOWN {
        return None;
    }
    parts
        .iter()
        .filter_map(|part| match part.brings(nutrient)? {
            Amount::Mass(mass) => Some(mass),
            Amount::Iu(_) => None,
        })
        .reduce(|a, b| a + b)
}

pub(super) fn energy(parts: &[Part<'_>], dry: DryMatter, needs: &Needs) -> EnergyRow {
    let of = |part: &Part<'_>| part.energy();
    EnergyRow {
        supplied: parts
            .iter()
            .filter_map(of)
            .fold(Ends::exactly(Energy::ZERO), |sum, more| {
                sum.with(more, |a, b| a + b)
            }),
        unknown: unknown(parts, dry, |part| of(part).is_some()),
        need: needs.energy.as_ref().map(|need| need.energy),
    }
}

/// Selenium that fortified foods add; what is known may already be too much.
pub(super) fn added_selenium(foods: &[(AsFed, &Food)], dry: DryMatter) -> UpperVerdict {
    let added: Vec<Option<Amount>> = foods
        .iter()
        .filter(|(_, food)| food.class.is_fortified())
        .map(|(fed, food)| food.brings(Nutrient::Selenium, *fed))
        .collect();
    let known = added
        .iter()
        .flatten()
        .map(|amount| match amount {
            Amount::Mass(mass) => *mass,
            Amount::Iu(_) => NutrientMass::ZERO,
        })
        .sum();
    match judge_added_selenium(known, dry) {
        UpperVerdict::Within if added.iter().any(Option::is_none) => UpperVerdict::NotKnown,
        verdict => verdict,
    }
}

/// The sugar of a food, known as well as its label.
fn sugar_of(food: &Food) -> Option<SugarEstimate> {
    let share = food.sugar_starch?.of_dry(food.dry);
    let exactly = |mean| Belief {
        mean,
        spread: ShareOfDm::ZERO,
    };
    Some(SugarEstimate {
        wsc_starch: Some(exactly(share)),
        esc_starch: None,
        wsc: food
            .starch
            .map(|starch| exactly((share - starch.of_dry(food.dry)).max(ShareOfDm::ZERO))),
        origin: SugarOrigin::Tested,
        notes: BTreeSet::new(),
        unknown_part: 0.0,
        least_left: 1.0,
        provenance: food.from.clone(),
    })
}

pub(super) fn sugar(ration: &Ration<'_>, foods: &[(AsFed, &Food)], risk: RiskLevel) -> SugarRow {
    let mut mixed: Vec<MixPart> = ration
        .forage
        .iter()
        .map(|forage| MixPart {
            dry: forage.fed.dry(forage.dry),
            sugar: forage.sugar.cloned(),
        })
        .chain(foods.iter().map(|(fed, food)| MixPart {
            dry: fed.dry(food.dry),
            sugar: sugar_of(food),
        }))
        .collect();
    mixed.push(MixPart {
        dry: ration.grass,
        sugar: None,
    });
    let believed = |part: &MixPart| {
        let mean = part.sugar.as_ref()?.wsc_starch?.mean;
        Some(mean.in_dry(part.dry))
    };
    let dry: DryMatter = mixed.iter().map(|part| part.dry).sum();
    let lacking: DryMatter = mixed
        .iter()
        .filter(|part| believed(part).is_none())
        .map(|part| part.dry)
        .sum();
    SugarRow {
        known: mixed.iter().filter_map(believed).sum(),
        unknown: if dry > DryMatter::ZERO {
            lacking / dry
        } else {
            0.0
        },
        judged: sugar_limits(risk).and_then(|limits| Some(judge(&mix(&mixed)?, &limits))),
    }
}

pub(super) fn forage(
    ration: &Ration<'_>,
    foods: &[(AsFed, &Food)],
    parts: &[Part<'_>],
    dry: DryMatter,
    against: &Against<'_>,
) -> ForageRow {
    let hay = |wanted: fn(ForageClass) -> bool| -> DryMatter {
        ration
            .forage
            .iter()
            .filter(|forage| wanted(forage.class))
            .map(|forage| forage.fed.dry(forage.dry))
            .sum()
    };
    let in_buckets = |wanted: fn(FoodClass) -> bool| -> DryMatter {
        foods
            .iter()
            .filter(|(_, food)| wanted(food.class))
            .map(|(fed, food)| fed.dry(food.dry))
            .sum()
    };
    let all = hay(|_| true) + ration.grass + in_buckets(FoodClass::is_forage);
    let lucerne =
        hay(|class| class == ForageClass::Lucerne) + in_buckets(|class| class == FoodClass::Legume);
    let straw = hay(|class| class.kind() == ForageKind::Straw);
    let start = if against.kind.is_donkey() {
        *START_DONKEY
    } else {
        *START
    };
    // A floor is judged on the heaviest the animal may be, and of forage alone.
    let at_least = all.part_of(against.weight.most);
    let level = dry.part_of(against.weight.likely);
    let verdict = if !at_least.is_finite() || !level.is_finite() {
        ForageVerdict::NotKnown
    } else if at_least < *FLOOR {
        ForageVerdict::UnderFloor {
            of_body: at_least,
            floor: *FLOOR,
        }
    } else if level < start * *LEVEL_WEIGHED {
        ForageVerdict::UnderStart {
            of_body: level,
            start,
        }
    } else {
        ForageVerdict::Enough {
            of_body: all.part_of(against.weight.likely),
        }
    };
    let fibre = |part: &Part<'_>| part.fibre().map(|share| share.in_dry(part.dry()));
    let known: Option<NutrientMass> = parts.iter().filter_map(fibre).reduce(|a, b| a + b);
    ForageRow {
        dry: all,
        of_dry: (dry > DryMatter::ZERO).then(|| all / dry),
        verdict,
        fibre: known
            .filter(|_| dry > DryMatter::ZERO)
            .map(|mass| ShareOfDm::fraction(mass.to_g() / 1000.0 / dry.to_kg())),
        fibre_unknown: unknown(parts, dry, |part| fibre(part).is_some()),
        lucerne: judge_lucerne(lucerne, all),
        mixed: ration
            .forage
            .iter()
            .any(|forage| forage.class == ForageClass::GrassLegume),
        straw: judge_cap(straw, all, straw_cap(against.kind, against.teeth).most),
    }
}

impl Part<'_> {
    /// Neutral detergent fibre.
    fn fibre(&self) -> Option<ShareOfDm> {
        match self {
            Part::Forage(_, supply) => Some(supply.content(Analyte::Ndf)?.value),
            Part::Food(_, food) => food.fibre,
            Part::NotKnown(_) => None,
        }
    }

    /// Digestible energy, with its ends.
    fn energy(&self) -> Option<Ends<Energy>> {
        match self {
            Part::Forage(dry, supply) => Some(Ends::new(
                supply.energy.low.in_dry(*dry),
                supply.energy.value.in_dry(*dry),
                supply.energy.high.in_dry(*dry),
            )),
            Part::Food(fed, food) => food.energy_in(*fed).map(Ends::exactly),
            Part::NotKnown(_) => None,
        }
    }
}
