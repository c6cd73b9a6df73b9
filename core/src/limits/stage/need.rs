//! What a growing animal and a mare in foal or in milk need a day; NRC 2007, all of it from memory.
//!
//! Growth: by the weight it has and what it gains. In foal: by the weight of the mare when she is not in foal, which is
//! her target weight where one is known. In milk: by her weight and her milk. Work on top is not reckoned.

use super::super::energy::EnergyNeed;
use super::super::need::{Basis, Need, NeedFor};
use super::super::nutrient::{Nutrient, NutrientUnit};
use super::super::published::{
    COBALT, COPPER, ENERGY_ELEVATED, IODINE, LYSINE, MANGANESE, NEED_DRY_MATTER,
    PROTEIN_DIGESTIBILITY, PROTEIN_ELEVATED, RIBOFLAVIN, SELENIUM, SULPHUR, THIAMIN, VITAMIN_D,
    ZINC,
};
use super::published::{
    GROWTH_CALCIUM, GROWTH_CHLORIDE, GROWTH_ENERGY_GAIN, GROWTH_ENERGY_UPKEEP, GROWTH_MAGNESIUM,
    GROWTH_PHOSPHORUS, GROWTH_POTASSIUM, GROWTH_PROTEIN, GROWTH_SODIUM, GROWTH_VITAMIN_D,
    IRON_STAGE, MILK_CALCIUM, MILK_CHLORIDE, MILK_ENERGY, MILK_LYSINE, MILK_MAGNESIUM,
    MILK_PHOSPHORUS, MILK_PHOSPHORUS_ABSORBED, MILK_POTASSIUM, MILK_PROTEIN, MILK_SODIUM,
    PREGNANT_CALCIUM, PREGNANT_CHLORIDE, PREGNANT_COPPER, PREGNANT_ENERGY, PREGNANT_FOR_KG,
    PREGNANT_FROM, PREGNANT_IODINE, PREGNANT_IRON, PREGNANT_MAGNESIUM, PREGNANT_PHOSPHORUS,
    PREGNANT_POTASSIUM, PREGNANT_PROTEIN, PREGNANT_SODIUM, PREGNANT_THIRDS,
    PROTEIN_EFFICIENCY_YOUNG, RIBOFLAVIN_STAGE, STAGE_DRY, THIAMIN_STAGE, VITAMIN_A_MARE,
    VITAMIN_A_YOUNG, VITAMIN_E_STAGE,
};
use super::{Milk, Stage, gain, milk_of, of_age};
use crate::animal::{Temperament, Workload};
use crate::sources::{Provenance, Published};
use crate::units::{BodyMass, Energy, PartOfBody, ShareOfDm};

/// A need as a number of the nutrient's unit, with its sources.
type Figure = (f64, Provenance);

/// Energy of a stage; `None` for an adult and where the stage is not known.
pub(in super::super) fn energy(stage: Stage, body: BodyMass) -> Option<EnergyNeed> {
    let (energy, from) = match stage {
        Stage::Adult | Stage::NotKnown(..) => return None,
        Stage::Growing { months, mature } => {
            let age = f64::from(months);
            let [scale, power] = *GROWTH_ENERGY_UPKEEP;
            let [constant, rising, bent] = *GROWTH_ENERGY_GAIN;
            // The upkeep is published in kcal a kilogram.
            let upkeep = scale * age.powf(power) * body.to_kg() / 1000.0;
            let growth =
                (constant + rising * age + bent * age * age) * gain(months, mature).to_kg();
            (
                Energy::mcal(upkeep + growth),
                Provenance::new()
                    .constant(&GROWTH_ENERGY_UPKEEP)
                    .constant(&GROWTH_ENERGY_GAIN),
            )
        }
        Stage::Pregnant { month } => (
            Energy::mcal(
                by_month(&PREGNANT_ENERGY.value, month)? * body.to_kg() / *PREGNANT_FOR_KG,
            ),
            Provenance::new()
                .constant(&PREGNANT_ENERGY)
                .constant(&PREGNANT_FOR_KG),
        ),
        Stage::Lactating { month } => {
            let [in_milk, part] = *MILK_ENERGY;
            let milk = milk_of(month, body).to_kg();
            (
                Energy::mcal(*ENERGY_ELEVATED * body.to_kg() + milk * in_milk / part),
                Provenance::new()
                    .constant(&ENERGY_ELEVATED)
                    .constant(&MILK_ENERGY),
            )
        }
    };
    Some(EnergyNeed { energy, from })
}

/// The weight that the needs of a stage are reckoned on.
pub(in super::super) fn body(whose: &NeedFor) -> (BodyMass, Basis) {
    match (whose.stage, whose.target) {
        (Stage::Pregnant { .. }, Some(target)) => (target, Basis::TargetWeight),
        _ => (whose.current, Basis::CurrentWeight),
    }
}

/// The needs of a stage, one row a nutrient; empty for an adult and where the stage is not known.
pub(in super::super) fn rows(whose: &NeedFor) -> Vec<Need> {
    let (body, basis) = body(whose);
    Nutrient::ALL
        .into_iter()
        .filter_map(|nutrient| {
            let (number, from) = match whose.stage {
                Stage::Adult | Stage::NotKnown(..) => return None,
                Stage::Growing { months, mature } => {
                    growing(nutrient, months, body, gain(months, mature))
                }
                Stage::Pregnant { month } => pregnant(nutrient, month, body),
                Stage::Lactating { month } => lactating(nutrient, body, milk_of(month, body)),
            }?;
            Some(Need {
                nutrient,
                amount: nutrient.amount(number),
                basis,
                from,
            })
        })
        .collect()
}

/// So much a kilogram of body, and so much a kilogram of gain or milk.
fn two(rate: &Published<[f64; 2]>, body: BodyMass, other_kg: f64) -> Figure {
    let [of_body, of_other] = **rate;
    (
        of_body * body.to_kg() + of_other * other_kg,
        Provenance::new().constant(rate),
    )
}

/// So much a kilogram of body.
fn one(rate: f64, constant: Provenance, body: BodyMass) -> Figure {
    (rate * body.to_kg(), constant)
}

/// What is published by the dry matter of a class; `None` for what is published otherwise.
fn by_dry(
    nutrient: Nutrient,
    iron: &Published<ShareOfDm>,
    percent: f64,
    body: BodyMass,
) -> Option<Figure> {
    let share = match nutrient {
        Nutrient::Sulphur => &SULPHUR,
        Nutrient::Copper => &COPPER,
        Nutrient::Zinc => &ZINC,
        Nutrient::Manganese => &MANGANESE,
        Nutrient::Iron => iron,
        Nutrient::Iodine => &IODINE,
        Nutrient::Selenium => &SELENIUM,
        Nutrient::Cobalt => &COBALT,
        _ => return None,
    };
    Some(of_dry(
        nutrient,
        **share,
        Provenance::new().constant(share),
        percent,
        body,
    ))
}

/// A share of the dry matter of a class, in the nutrient's unit.
fn of_dry(
    nutrient: Nutrient,
    share: ShareOfDm,
    from: Provenance,
    percent: f64,
    body: BodyMass,
) -> Figure {
    let mass = share.in_dry(PartOfBody::percent(percent).of(body));
    let number = match nutrient.unit() {
        NutrientUnit::Milligram => mass.to_mg(),
        NutrientUnit::Gram | NutrientUnit::InternationalUnit => mass.to_g(),
    };
    (number, from)
}

fn growing(nutrient: Nutrient, months: u32, body: BodyMass, gain: BodyMass) -> Option<Figure> {
    let kg = gain.to_kg();
    let constant = |rate: &Published<f64>| one(**rate, Provenance::new().constant(rate), body);
    Some(match nutrient {
        Nutrient::CrudeProtein => growth_protein(months, body, gain)?,
        Nutrient::Lysine => of_protein(growth_protein(months, body, gain)?),
        Nutrient::Calcium => two(&GROWTH_CALCIUM, body, kg),
        Nutrient::Phosphorus => two(&GROWTH_PHOSPHORUS, body, kg),
        Nutrient::Magnesium => two(&GROWTH_MAGNESIUM, body, kg),
        Nutrient::Potassium => two(&GROWTH_POTASSIUM, body, kg),
        Nutrient::Sodium => two(&GROWTH_SODIUM, body, kg),
        Nutrient::Chloride => one(
            of_age(&GROWTH_CHLORIDE.value, months)?,
            Provenance::new().constant(&GROWTH_CHLORIDE),
            body,
        ),
        Nutrient::VitaminA => constant(&VITAMIN_A_YOUNG),
        Nutrient::VitaminD => one(
            of_age(&GROWTH_VITAMIN_D.value, months)?,
            Provenance::new().constant(&GROWTH_VITAMIN_D),
            body,
        ),
        Nutrient::VitaminE => constant(&VITAMIN_E_STAGE),
        Nutrient::Thiamin => constant(&THIAMIN_STAGE),
        Nutrient::Riboflavin => constant(&RIBOFLAVIN_STAGE),
        Nutrient::Sulphur
        | Nutrient::Copper
        | Nutrient::Zinc
        | Nutrient::Manganese
        | Nutrient::Iron
        | Nutrient::Iodine
        | Nutrient::Selenium
        | Nutrient::Cobalt => by_dry(nutrient, &IRON_STAGE, *STAGE_DRY, body)?,
    })
}

/// Crude protein of growth: elevated maintenance, and what the gain holds.
fn growth_protein(months: u32, body: BodyMass, gain: BodyMass) -> Option<Figure> {
    let efficiency = of_age(&PROTEIN_EFFICIENCY_YOUNG.value, months)?;
    let in_gain = *GROWTH_PROTEIN * gain.to_kg() / efficiency / *PROTEIN_DIGESTIBILITY;
    Some((
        *PROTEIN_ELEVATED * body.to_kg() + in_gain,
        Provenance::new()
            .constant(&PROTEIN_ELEVATED)
            .constant(&GROWTH_PROTEIN)
            .constant(&PROTEIN_EFFICIENCY_YOUNG)
            .constant(&PROTEIN_DIGESTIBILITY),
    ))
}

/// Lysine as its part of a protein.
fn of_protein((protein, from): Figure) -> Figure {
    (*LYSINE * protein, from.constant(&LYSINE))
}

/// The value of a month in foal, of those from the fourth to the eleventh; the first holds for the months before.
fn by_month(values: &[f64], month: u32) -> Option<f64> {
    let past = month.saturating_sub(*PREGNANT_FROM);
    values
        .get(usize::try_from(past).ok()?)
        .or_else(|| values.last())
        .copied()
}

/// The value of a third: before the seventh month, the seventh and eighth, from the ninth on.
fn by_third([early, middle, late]: [f64; 3], month: u32) -> f64 {
    let [from_middle, from_late] = *PREGNANT_THIRDS;
    if month < from_middle {
        early
    } else if month < from_late {
        middle
    } else {
        late
    }
}

fn pregnant(nutrient: Nutrient, month: u32, body: BodyMass) -> Option<Figure> {
    let constant = |rate: &Published<f64>| one(**rate, Provenance::new().constant(rate), body);
    let third = |rate: &Published<[f64; 3]>| {
        let from = Provenance::new().constant(rate).constant(&PREGNANT_THIRDS);
        one(by_third(**rate, month), from, body)
    };
    let rest = |rate: Published<super::super::ByWork>| {
        one(rate.at(AT_REST), Provenance::new().constant(&rate), body)
    };
    let dry = NEED_DRY_MATTER.at(AT_REST);
    let third_of_dry = |rate: &Published<[f64; 3]>| {
        let share = ShareOfDm::mg_per_kg(by_third(**rate, month));
        let from = Provenance::new()
            .constant(rate)
            .constant(&PREGNANT_THIRDS)
            .constant(&NEED_DRY_MATTER);
        of_dry(nutrient, share, from, dry, body)
    };
    let protein = || {
        let at_500 = by_month(&PREGNANT_PROTEIN.value, month)?;
        Some(one(
            at_500 / *PREGNANT_FOR_KG,
            Provenance::new()
                .constant(&PREGNANT_PROTEIN)
                .constant(&PREGNANT_FOR_KG),
            body,
        ))
    };
    Some(match nutrient {
        Nutrient::CrudeProtein => protein()?,
        Nutrient::Lysine => of_protein(protein()?),
        Nutrient::Calcium => third(&PREGNANT_CALCIUM),
        Nutrient::Phosphorus => third(&PREGNANT_PHOSPHORUS),
        Nutrient::Magnesium => third(&PREGNANT_MAGNESIUM),
        Nutrient::Potassium => third(&PREGNANT_POTASSIUM),
        Nutrient::Sodium => third(&PREGNANT_SODIUM),
        Nutrient::Chloride => third(&PREGNANT_CHLORIDE),
        Nutrient::Copper => third_of_dry(&PREGNANT_COPPER),
        Nutrient::Iodine => third_of_dry(&PREGNANT_IODINE),
        Nutrient::Iron => third_of_dry(&PREGNANT_IRON),
        Nutrient::Sulphur
        | Nutrient::Zinc
        | Nutrient::Manganese
        | Nutrient::Selenium
        | Nutrient::Cobalt => by_dry(nutrient, &IRON_STAGE, dry, body)?,
        Nutrient::VitaminA => constant(&VITAMIN_A_MARE),
        Nutrient::VitaminD => rest(VITAMIN_D),
        Nutrient::VitaminE => constant(&VITAMIN_E_STAGE),
        Nutrient::Thiamin => rest(THIAMIN),
        Nutrient::Riboflavin => rest(RIBOFLAVIN),
    })
}

fn lactating(nutrient: Nutrient, body: BodyMass, milk: Milk) -> Option<Figure> {
    let kg = milk.to_kg();
    let constant = |rate: &Published<f64>| one(**rate, Provenance::new().constant(rate), body);
    Some(match nutrient {
        Nutrient::CrudeProtein => two(&MILK_PROTEIN, body, kg),
        Nutrient::Lysine => two(&MILK_LYSINE, body, kg),
        Nutrient::Calcium => two(&MILK_CALCIUM, body, kg),
        Nutrient::Phosphorus => {
            let (absorbed, from) = two(&MILK_PHOSPHORUS, body, kg);
            (
                absorbed / *MILK_PHOSPHORUS_ABSORBED,
                from.constant(&MILK_PHOSPHORUS_ABSORBED),
            )
        }
        Nutrient::Magnesium => two(&MILK_MAGNESIUM, body, kg),
        Nutrient::Potassium => two(&MILK_POTASSIUM, body, kg),
        Nutrient::Sodium => two(&MILK_SODIUM, body, kg),
        Nutrient::Chloride => constant(&MILK_CHLORIDE),
        Nutrient::Sulphur
        | Nutrient::Copper
        | Nutrient::Zinc
        | Nutrient::Manganese
        | Nutrient::Iron
        | Nutrient::Iodine
        | Nutrient::Selenium
        | Nutrient::Cobalt => by_dry(nutrient, &IRON_STAGE, *STAGE_DRY, body)?,
        Nutrient::VitaminA => constant(&VITAMIN_A_MARE),
        Nutrient::VitaminD => one(
            VITAMIN_D.at(AT_REST),
            Provenance::new().constant(&VITAMIN_D),
            body,
        ),
        Nutrient::VitaminE => constant(&VITAMIN_E_STAGE),
        Nutrient::Thiamin => constant(&THIAMIN_STAGE),
        Nutrient::Riboflavin => constant(&RIBOFLAVIN_STAGE),
    })
}

/// The class whose rates a mare in foal shares.
const AT_REST: Workload = Workload::Maintenance(Temperament::Average);
