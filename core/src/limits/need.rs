//! What an animal needs of protein, minerals and vitamins a day; NRC 2007. Growth, gestation and lactation stand in
//! [`super::stage`]; what follows is of grown animals.
//!
//! Protein and lysine follow **current** weight. Minerals and vitamins follow **target** weight, and those that are
//! published by dry matter are reckoned on the class's dry matter (2 % of target weight at rest), never on a restricted
//! ration: less hay does not mean less copper.

use super::energy::{EnergyNeed, energy_need};
use super::error::{LimitsError, WEIGHT};
use super::nutrient::{Amount, Nutrient};
use super::published::{
    CALCIUM, CHLORIDE, CHLORIDE_IN_SWEAT, COBALT, COPPER, IODINE, IRON, LYSINE, MAGNESIUM,
    MANGANESE, NEED_DRY_MATTER, PHOSPHORUS, POTASSIUM, POTASSIUM_ABSORBED, POTASSIUM_IN_SWEAT,
    PROTEIN_AVERAGE, PROTEIN_DIGESTIBILITY, PROTEIN_EFFICIENCY, PROTEIN_ELEVATED, PROTEIN_FOR_WORK,
    PROTEIN_IN_SWEAT, PROTEIN_LOW, RIBOFLAVIN, SELENIUM, SODIUM, SODIUM_IN_SWEAT, SULPHUR, SWEAT,
    THIAMIN, VITAMIN_A, VITAMIN_D, VITAMIN_E, ZINC,
};
use super::stage::{self, Stage, StageGap};
use crate::animal::{Kind, State, Temperament, Workload};
use crate::sources::{Provenance, Published};
use crate::units::{BodyMass, PartOfBody, ShareOfDm};

/// The weight a figure is reckoned on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Basis {
    /// The weight it has.
    CurrentWeight,
    /// The weight it should have.
    TargetWeight,
}

/// Whose needs.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NeedFor {
    /// What kind of equid.
    pub kind: Kind,
    /// Adult, growing, in foal, in milk, as far as it is known.
    pub stage: Stage,
    /// Its work.
    pub work: Workload,
    /// Its current weight.
    pub current: BodyMass,
    /// Its target weight, when known.
    pub target: Option<BodyMass>,
}

/// One need.
#[derive(Clone, Debug, PartialEq)]
pub struct Need {
    /// Of which nutrient.
    pub nutrient: Nutrient,
    /// How much a day.
    pub amount: Amount,
    /// On which weight.
    pub basis: Basis,
    /// Where it comes from.
    pub from: Provenance,
}

/// The needs of an animal. What is not published here is missing, not zero.
#[derive(Clone, Debug, PartialEq)]
pub struct Needs {
    /// Digestible energy; `None` for donkeys and mules, which go by weight and condition, and where the finding says so.
    pub energy: Option<EnergyNeed>,
    /// One row a nutrient, in the order of [`Nutrient::ALL`]; empty where the finding says so.
    pub rows: Vec<Need>,
}

impl Needs {
    /// The need of one nutrient.
    pub fn of(&self, nutrient: Nutrient) -> Option<&Need> {
        self.rows.iter().find(|need| need.nutrient == nutrient)
    }
}

/// What is to be said beside the needs.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Finding {
    /// Growing, in foal or in milk, and its age or month is not known: nothing is reckoned. It is never restricted.
    StageNotKnown(
        /// Which.
        State,
        /// What stands in the way.
        StageGap,
    ),
    /// Growing, in foal or in milk: its needs are reckoned, and it is never restricted.
    NeverRestricted(State),
    /// Its work comes on top of growth, foal or milk and is not in the needs.
    WorkNotReckoned,
    /// A donkey or mule: energy goes by weight and condition, the horse equation is not used.
    EnergyByWeightAndCondition,
    /// A donkey or mule: the needs of a horse of the same weight stand in.
    HorseNeedsStandIn,
    /// No target weight is known: minerals and vitamins are reckoned on current weight.
    TargetNotKnown,
}

/// The needs of an animal a day.
///
/// # Errors
/// A weight that is not believed.
pub fn needs(whose: &NeedFor) -> Result<(Needs, Vec<Finding>), LimitsError> {
    WEIGHT.check(whose.current.to_kg())?;
    if let Some(target) = whose.target {
        WEIGHT.check(target.to_kg())?;
    }
    whose.stage.check()?;
    if let Stage::NotKnown(state, gap) = whose.stage {
        let nothing = Needs {
            energy: None,
            rows: Vec::new(),
        };
        return Ok((nothing, vec![Finding::StageNotKnown(state, gap)]));
    }
    let mut findings = Vec::new();
    let adult = whose.stage == Stage::Adult;
    if !adult {
        findings.push(Finding::NeverRestricted(whose.stage.state()));
        if !matches!(whose.work, Workload::Maintenance(_)) {
            findings.push(Finding::WorkNotReckoned);
        }
    }
    let energy = if whose.kind.is_donkey() {
        findings.push(Finding::EnergyByWeightAndCondition);
        findings.push(Finding::HorseNeedsStandIn);
        None
    } else if adult {
        Some(energy_need(whose.work, whose.current)?)
    } else {
        stage::energy(whose.stage, stage::body(whose).0)
    };
    let by_target = adult || matches!(whose.stage, Stage::Pregnant { .. });
    if by_target && whose.target.is_none() {
        findings.push(Finding::TargetNotKnown);
    }
    if !adult {
        let rows = stage::rows(whose);
        return Ok((Needs { energy, rows }, findings));
    }
    let rows = Nutrient::ALL.map(|nutrient| need(nutrient, whose)).into();
    Ok((Needs { energy, rows }, findings))
}

/// The need of one nutrient.
fn need(nutrient: Nutrient, whose: &NeedFor) -> Need {
    let work = whose.work;
    let body = whose.target.unwrap_or(whose.current);
    let rate = rate(nutrient);
    let basis = match rate {
        Rate::Protein | Rate::Lysine => Basis::CurrentWeight,
        _ if whose.target.is_none() => Basis::CurrentWeight,
        _ => Basis::TargetWeight,
    };
    let (number, from) = match rate {
        Rate::Protein => protein(whose),
        Rate::Lysine => {
            let (protein, from) = protein(whose);
            (*LYSINE * protein, from.constant(&LYSINE))
        }
        Rate::ByWork(rate) => (
            rate.at(work) * body.to_kg(),
            Provenance::new().constant(&rate),
        ),
        Rate::WithSweat {
            at_rest,
            in_sweat,
            absorbed,
        } => with_sweat(at_rest, in_sweat, absorbed, work, body),
        Rate::OfDryMatter(share) => of_dry_matter(nutrient, share, work, body),
    };
    Need {
        nutrient,
        amount: nutrient.amount(number),
        basis,
        from,
    }
}

/// How a need is published; numbers are in the nutrient's own unit.
enum Rate {
    /// By weight, level of maintenance, muscle and sweat.
    Protein,
    /// As a part of crude protein.
    Lysine,
    /// By weight and class of work.
    ByWork(Published<super::ByWork>),
    /// By weight, and what is sweated on top.
    WithSweat {
        /// At rest, g/kg.
        at_rest: Published<f64>,
        /// In sweat, g/kg.
        in_sweat: Published<f64>,
        /// The part of what is eaten that replaces it; all when `None`.
        absorbed: Option<Published<f64>>,
    },
    /// By the dry matter of the class of work.
    OfDryMatter(Published<ShareOfDm>),
}

/// How each need is published.
fn rate(nutrient: Nutrient) -> Rate {
    match nutrient {
        Nutrient::CrudeProtein => Rate::Protein,
        Nutrient::Lysine => Rate::Lysine,
        Nutrient::Calcium => Rate::ByWork(CALCIUM),
        Nutrient::Phosphorus => Rate::ByWork(PHOSPHORUS),
        Nutrient::Magnesium => Rate::ByWork(MAGNESIUM),
        Nutrient::Potassium => Rate::WithSweat {
            at_rest: POTASSIUM,
            in_sweat: POTASSIUM_IN_SWEAT,
            absorbed: Some(POTASSIUM_ABSORBED),
        },
        Nutrient::Sodium => Rate::WithSweat {
            at_rest: SODIUM,
            in_sweat: SODIUM_IN_SWEAT,
            absorbed: None,
        },
        Nutrient::Chloride => Rate::WithSweat {
            at_rest: CHLORIDE,
            in_sweat: CHLORIDE_IN_SWEAT,
            absorbed: None,
        },
        Nutrient::Sulphur => Rate::OfDryMatter(SULPHUR),
        Nutrient::Copper => Rate::OfDryMatter(COPPER),
        Nutrient::Zinc => Rate::OfDryMatter(ZINC),
        Nutrient::Manganese => Rate::OfDryMatter(MANGANESE),
        Nutrient::Iron => Rate::OfDryMatter(IRON),
        Nutrient::Iodine => Rate::OfDryMatter(IODINE),
        Nutrient::Selenium => Rate::OfDryMatter(SELENIUM),
        Nutrient::Cobalt => Rate::OfDryMatter(COBALT),
        Nutrient::VitaminA => Rate::ByWork(VITAMIN_A),
        Nutrient::VitaminD => Rate::ByWork(VITAMIN_D),
        Nutrient::VitaminE => Rate::ByWork(VITAMIN_E),
        Nutrient::Thiamin => Rate::ByWork(THIAMIN),
        Nutrient::Riboflavin => Rate::ByWork(RIBOFLAVIN),
    }
}

/// Crude protein in g: maintenance at its level, or average maintenance with the muscle and the sweat of work.
fn protein(whose: &NeedFor) -> (f64, Provenance) {
    let body = whose.current.to_kg();
    let level = match whose.work {
        Workload::Maintenance(Temperament::Low) => PROTEIN_LOW,
        Workload::Maintenance(Temperament::Elevated) => PROTEIN_ELEVATED,
        _ => PROTEIN_AVERAGE,
    };
    let from = Provenance::new().constant(&level);
    if matches!(whose.work, Workload::Maintenance(_)) {
        return (*level * body, from);
    }
    let sweat =
        SWEAT.at(whose.work) * *PROTEIN_IN_SWEAT / *PROTEIN_EFFICIENCY / *PROTEIN_DIGESTIBILITY;
    (
        (*level + PROTEIN_FOR_WORK.at(whose.work) + sweat) * body,
        from.constant(&PROTEIN_FOR_WORK)
            .constant(&SWEAT)
            .constant(&PROTEIN_IN_SWEAT)
            .constant(&PROTEIN_EFFICIENCY)
            .constant(&PROTEIN_DIGESTIBILITY),
    )
}

/// A mineral in g that is lost with sweat.
fn with_sweat(
    at_rest: Published<f64>,
    in_sweat: Published<f64>,
    absorbed: Option<Published<f64>>,
    work: Workload,
    body: BodyMass,
) -> (f64, Provenance) {
    let from = Provenance::new().constant(&at_rest);
    if matches!(work, Workload::Maintenance(_)) {
        return (*at_rest * body.to_kg(), from);
    }
    let from = from.constant(&SWEAT).constant(&in_sweat);
    let (part, from) = match absorbed {
        Some(part) => (*part, from.constant(&part)),
        None => (1.0, from),
    };
    (
        (*at_rest + SWEAT.at(work) * *in_sweat / part) * body.to_kg(),
        from,
    )
}

/// A mineral in its own unit that is published by dry matter.
fn of_dry_matter(
    nutrient: Nutrient,
    share: Published<ShareOfDm>,
    work: Workload,
    body: BodyMass,
) -> (f64, Provenance) {
    let dry = PartOfBody::percent(NEED_DRY_MATTER.at(work)).of(body);
    let mass = share.in_dry(dry);
    let number = match nutrient.unit() {
        super::NutrientUnit::Milligram => mass.to_mg(),
        _ => mass.to_g(),
    };
    (
        number,
        Provenance::new()
            .constant(&share)
            .constant(&NEED_DRY_MATTER),
    )
}
