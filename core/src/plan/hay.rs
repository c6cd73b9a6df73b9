//! The forages of the day: how much of each, dry or soaked, and what their sugar says.

use super::draft::{HayLine, Raised};
use super::error::PlanError;
use super::input::{HayOffer, PlanFor, Soaking};
use super::published::PARTS_SLACK;
use crate::animal::Risk;
use crate::forage::{
    self, Fed, ForageKind, Judgement, MixPart, SugarEstimate, Supply, estimate, hazards, judge,
    supply,
};
use crate::limits::{Ends, SugarLimits};
use crate::soak::{dry_loss, soaked, sugar_loss};
use crate::units::{AsFed, DryFraction, DryMatter, Energy};

/// A forage as it will be fed, before its amount is known.
pub(super) struct Feeding<'a> {
    pub offer: &'a HayOffer<'a>,
    pub fed: Fed,
    pub dry: forage::DryEstimate,
    pub washed_out: Option<Ends<f64>>,
    pub as_it_comes: Option<Judgement>,
    pub as_fed: Option<Judgement>,
    pub sugar: SugarEstimate,
    pub supply: Supply,
}

/// Decides for each forage whether it is soaked.
///
/// Hay is soaked when sugar is a danger to the animal and the dry hay is not within its limit. Haylage and straw are
/// not soaked.
pub(super) fn feedings<'a>(
    of: &'a PlanFor<'a>,
    risk: &Risk,
    limits: Option<&SugarLimits>,
) -> Result<Vec<Feeding<'a>>, PlanError> {
    if of.hays.is_empty() {
        return Err(PlanError::NoForage);
    }
    let sum: f64 = of.hays.iter().map(|offer| offer.part).sum();
    let parts_are_parts = of.hays.iter().all(|offer| 0.0 < offer.part);
    if !parts_are_parts || !sum.is_finite() || *PARTS_SLACK < (sum - 1.0).abs() {
        return Err(PlanError::PartsDoNotAddUp { sum });
    }
    of.hays
        .iter()
        .map(|offer| {
            let lot = offer.lot;
            let dry = lot
                .dry_matter()
                .ok_or_else(|| PlanError::DryMatterNotKnown {
                    lot: lot.id.clone(),
                })?;
            let judged = |fed: Fed| {
                limits.map(|limits| {
                    let sugar = sugar(lot, fed, &of.soaking);
                    judge(&sugar, limits)
                })
            };
            let as_it_comes = judged(Fed::Dry);
            let within = as_it_comes
                .as_ref()
                .is_none_or(|judgement| judgement.verdict.is_within());
            let soaks =
                lot.class.kind() == ForageKind::Hay && risk.level.restricts_sugar() && !within;
            let fed = if soaks { Fed::Soaked } else { Fed::Dry };
            Ok(Feeding {
                offer,
                fed,
                dry,
                washed_out: soaks.then(|| dry_loss(of.soaking.recipe.soak()).part),
                as_fed: if soaks {
                    judged(Fed::Soaked)
                } else {
                    as_it_comes.clone()
                },
                as_it_comes,
                sugar: sugar(lot, fed, &of.soaking),
                supply: supply(lot, fed),
            })
        })
        .collect()
}

/// What is believed of a lot's sugar as it is fed. Soaking is a band: it marks the estimate and never passes it.
pub(crate) fn sugar(lot: &forage::Lot, fed: Fed, soaking: &Soaking) -> SugarEstimate {
    match fed {
        Fed::Dry => estimate(lot, Fed::Dry),
        Fed::Soaked => {
            let known = estimate(lot, Fed::Soaked);
            let wsc = known.wsc.map(|belief| belief.mean);
            let loss = sugar_loss(soaking.recipe.water(), soaking.recipe.soak(), wsc);
            soaked(known, &loss)
        }
    }
}

impl Feeding<'_> {
    /// The dry matter that reaches the animal of each kilogram weighed out, with its ends.
    fn reaches(&self) -> Ends<f64> {
        let left = self.washed_out.map_or(Ends::exactly(1.0), |lost| {
            Ends::new(1.0 - lost.most, 1.0 - lost.likely, 1.0 - lost.least)
        });
        let dry = Ends::new(
            self.dry.low.to_fraction(),
            self.dry.value.to_fraction(),
            self.dry.high.to_fraction(),
        );
        dry.with(left, |dry, left| dry * left)
    }

    /// What is weighed out so that so much dry matter is likely eaten.
    fn weigh_out(&self, eaten: DryMatter) -> AsFed {
        AsFed::kg(eaten.to_kg() / self.reaches().likely)
    }

    /// The dry matter eaten of an amount weighed out, with its ends.
    fn eaten(&self, weighed: AsFed) -> Ends<DryMatter> {
        self.reaches()
            .map(|part| DryMatter::kg(weighed.to_kg() * part))
    }

    /// Energy of an amount weighed out, with its ends.
    fn energy(&self, weighed: AsFed) -> Ends<Energy> {
        let energy = &self.supply.energy;
        Ends::new(energy.low, energy.value, energy.high)
            .with(self.eaten(weighed), crate::units::EnergyDensity::in_dry)
    }
}

/// The forages with their amounts.
pub(super) struct Amounts {
    /// Likely dry matter of forage a day.
    pub forage: DryMatter,
    /// The least that reaches the animal.
    pub least: DryMatter,
    /// The energy of it.
    pub energy: Ends<Energy>,
    /// Dry matter likely eaten of a kilogram weighed out, over all forages.
    pub reaches: DryFraction,
    /// Why it is more than was asked for.
    pub raised: Vec<Raised>,
}

/// Floors that the least of the forage must keep.
pub(super) struct Floors {
    /// Dry matter of the forage.
    pub dry_matter: DryMatter,
    /// Energy; `None` for animals that go by weight and condition.
    pub energy: Option<Energy>,
}

/// A floor is met from above: the last bit of a product must not fall under it.
// numeric: a billionth of the day's hay
const ROUNDED_UP: f64 = 1.0 + 1e-9;

/// Finds the forage of the day: what is wanted, raised until the least of it keeps its floors.
pub(super) fn amounts(
    feedings: &[Feeding<'_>],
    wanted: DryMatter,
    floors: &Floors,
) -> Result<Amounts, PlanError> {
    let weighed = |forage: DryMatter| -> Vec<(&Feeding<'_>, AsFed)> {
        feedings
            .iter()
            .map(|feeding| (feeding, feeding.weigh_out(forage * feeding.offer.part)))
            .collect()
    };
    let least_of = |forage: DryMatter| -> DryMatter {
        weighed(forage)
            .iter()
            .map(|(feeding, fed)| feeding.eaten(*fed).least)
            .sum()
    };
    let energy_of = |forage: DryMatter| {
        weighed(forage)
            .iter()
            .fold(Ends::exactly(Energy::ZERO), |sum, (feeding, fed)| {
                sum.with(feeding.energy(*fed), |a, b| a + b)
            })
    };
    // All of it is proportional to the forage, so one factor meets each floor exactly.
    let mut forage = wanted;
    let mut raised = Vec::new();
    let short = floors.dry_matter / least_of(forage);
    if 1.0 < short {
        raised.push(Raised::ToDryMatterFloor { factor: short });
        forage = forage * (short * ROUNDED_UP);
    }
    if let Some(floor) = floors.energy {
        let short = floor / energy_of(forage).least;
        if 1.0 < short {
            raised.push(Raised::ToEnergyFloor { factor: short });
            forage = forage * (short * ROUNDED_UP);
        }
    }
    let out: AsFed = weighed(forage).iter().map(|(_, fed)| *fed).sum();
    Ok(Amounts {
        forage,
        least: least_of(forage),
        energy: energy_of(forage),
        reaches: DryFraction::percent(forage.to_kg() / out.to_kg() * 100.0)?,
        raised,
    })
}

/// The dry matter of a day's forage with the end that gives most: the driest reading, the least washed out.
pub(super) fn most(feedings: &[Feeding<'_>], forage: DryMatter) -> DryMatter {
    feedings
        .iter()
        .map(|feeding| {
            let weighed = feeding.weigh_out(forage * feeding.offer.part);
            feeding.eaten(weighed).most
        })
        .sum()
}

/// The lines of the forages for a day's forage.
pub(super) fn lines(feedings: &[Feeding<'_>], forage: DryMatter) -> Vec<HayLine> {
    feedings
        .iter()
        .map(|feeding| {
            let lot = feeding.offer.lot;
            let eaten = forage * feeding.offer.part;
            HayLine {
                lot: lot.id.clone(),
                name: lot.name.clone(),
                class: lot.class,
                fed: feeding.fed,
                part: feeding.offer.part,
                eaten,
                weigh_out: feeding.weigh_out(eaten),
                weigh_out_unsoaked: eaten.as_fed(feeding.dry.value),
                dry: feeding.dry,
                washed_out: feeding.washed_out,
                as_it_comes: feeding.as_it_comes.clone(),
                as_fed: feeding.as_fed.clone(),
                energy: feeding.supply.energy.clone(),
                hazards: hazards(lot, feeding.fed, eaten, forage),
            }
        })
        .collect()
}

/// The sugar of the whole day's forage.
pub(super) fn whole_day(
    feedings: &[Feeding<'_>],
    forage: DryMatter,
    limits: Option<&SugarLimits>,
) -> Option<Judgement> {
    let limits = limits?;
    let parts: Vec<MixPart> = feedings
        .iter()
        .map(|feeding| MixPart {
            dry: forage * feeding.offer.part,
            sugar: Some(feeding.sugar.clone()),
        })
        .collect();
    let mixed = forage::mix(&parts)?;
    Some(judge(&mixed, limits))
}
