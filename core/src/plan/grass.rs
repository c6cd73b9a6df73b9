//! Grass in a plan: none, not counted, or counted with both ends.

use super::draft::{Draft, GrassDay, GrassLine};
use super::input::PlanFor;
use crate::animal::{Goal, Laminitis, Phase, Risk, VetScope};
use crate::assess::WeightEstimate;
use crate::forage::Judgement;
use crate::graze::intake::{HayBeside, OutFor, RoomFor, SugarBeside, published::HAY_SURE};
use crate::graze::intake::{hay_given_way, room};
use crate::limits::{Ends, Offer};
use crate::units::{DryMatter, EnergyDensity};

/// What a plan has beside the grass.
pub(super) struct Beside<'a> {
    /// The risk that sets grass: its own, or that of the most at-risk of its group.
    pub risk: &'a Risk,
    /// Its weight.
    pub weight: &'a WeightEstimate,
    /// Dry matter of a day without grass.
    pub dry: Ends<DryMatter>,
    /// The forage of it.
    pub forage: DryMatter,
    /// Its energy, with the end that gives least.
    pub energy: EnergyDensity,
    /// Whether its level is weighed out.
    pub measured: bool,
    /// What its day's sugar is judged as; `None` where there is no limit.
    pub sugar: Option<&'a Judgement>,
}

/// Grass in a plan.
///
/// None while a sign, lameness, an episode or a recovery stops it and no vet's word about grass was given since. For an
/// animal at risk none as long as nobody decided on turnout; where somebody did, as much of it as keeps every limit at the
/// end that gives it most.
pub(super) fn line(of: &PlanFor<'_>, beside: &Beside<'_>) -> GrassLine {
    let scope = VetScope::ReturnToGrass;
    if of.stopped_by_signs(scope) || of.stopped_by_lameness(scope) || waits_for_word(of) {
        return GrassLine::None { why: Vec::new() };
    }
    let Some(grazing) = of.grazing else {
        return if beside.risk.level.restricts_sugar() {
            GrassLine::None {
                why: beside.risk.factors.clone(),
            }
        } else {
            GrassLine::NotCounted
        };
    };
    let weight = beside.weight;
    let room = room(&RoomFor {
        out: OutFor {
            kind: of.animal.kind,
            time: grazing.time,
            weeks: grazing.weeks,
            muzzle: grazing.muzzle,
            leaf: grazing.leaf,
        },
        weight: Ends::new(weight.low, weight.value, weight.high),
        hay: HayBeside {
            dry: beside.dry,
            forage: beside.forage,
            energy: beside.energy,
        },
        measured: beside.measured,
        sugar: beside.sugar.map(sugar_beside),
        at_risk: beside.risk.level.restricts_meals(),
    });
    GrassLine::Counted(Box::new(GrassDay {
        grazing: grazing.clone(),
        room,
    }))
}

impl Draft {
    /// Its hay, as it stands beside grass.
    pub fn hay_beside(&self) -> HayBeside {
        let forage: DryMatter = self.layout.hangings.iter().map(|hang| hang.dry).sum();
        let bought = self.dry_matter - forage;
        let least = self.least_dry_matter - bought;
        HayBeside {
            dry: Ends::new(self.least_dry_matter, self.dry_matter, self.dry_matter),
            forage,
            energy: EnergyDensity::mcal_per_kg(
                self.energy.supplied.least.to_mcal() / least.to_kg(),
            ),
        }
    }

    /// The hay that grass which it really ate takes the place of.
    ///
    /// Nothing for one whose hay is no limit, or that may not lose: one that must gain, that is too thin, or in an episode;
    /// nor where the plan of such a day has no grass.
    pub fn hay_given_way(&self, out: &OutFor) -> DryMatter {
        let counted = matches!(self.grass, GrassLine::Counted(_)) && self.grass.is_open();
        let may_lose = self.animal.goal != Goal::Gain
            && !matches!(self.animal.phase, Phase::NeedsWeight | Phase::Episode);
        if !counted || !may_lose || self.allowance.offer != Offer::Measured {
            return DryMatter::ZERO;
        }
        let weight = Ends::new(self.weight.low, self.weight.value, self.weight.high);
        hay_given_way(out, weight, &self.hay_beside())
    }
}

/// Whether it is in an episode or comes from one, and the vet has not spoken of grass since (practice section 2, phases).
fn waits_for_word(of: &PlanFor<'_>) -> bool {
    let active = of.animal.health.laminitis == Laminitis::Active;
    let phase = matches!(of.animal.phase, Phase::Episode | Phase::Recovering);
    let since = if active {
        of.said.laminitis
    } else {
        of.said.phase
    };
    (active || phase) && !of.lifted(VetScope::ReturnToGrass, since.map(crate::animal::Seen::on))
}

/// Hay that is not within its limit leaves no room, whatever its mean: soaked and not tested, doubtful, or too near.
fn sugar_beside(day: &Judgement) -> SugarBeside {
    let sure = day
        .belief
        .filter(|_| day.verdict.is_within())
        .map(|belief| belief.mean + belief.spread * *HAY_SURE);
    SugarBeside {
        limit: day.limit,
        hay: sure,
    }
}
