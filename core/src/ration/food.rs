//! A food as its label says it.

use super::catalogue::TypicalFood;
use super::class::FoodClass;
use super::error::RationError;
use super::published as p;
use crate::animal::FoodId;
use crate::limits::{Amount, Nutrient};
use crate::sources::{Provenance, Published, RecordId, Source};
use crate::units::{
    AsFed, BodyMass, DryFraction, Energy, EnergyDensity, NutrientMass, ShareOfAsFed, ShareOfDm,
};
use std::collections::BTreeMap;

/// A label as it is typed: every content in a kilogram as fed, in the nutrient's own unit.
#[derive(Clone, Debug, PartialEq)]
pub struct FoodLabel {
    /// Its id; `None` for a typical profile.
    pub id: Option<FoodId>,
    /// Its name.
    pub name: String,
    /// What it is.
    pub class: FoodClass,
    /// Dry matter in percent, when the label says it.
    pub dry_percent: Option<f64>,
    /// Contents in a kilogram as fed.
    pub per_kg: Vec<(Nutrient, f64)>,
    /// Digestible energy in Mcal a kilogram as fed.
    pub energy_mcal_per_kg: Option<f64>,
    /// Neutral detergent fibre, in percent as fed.
    pub fibre_percent: Option<f64>,
    /// The fatty acid DHA, in percent as fed.
    pub dha_percent: Option<f64>,
    /// Sugar and starch together, in percent as fed.
    pub sugar_starch_percent: Option<f64>,
    /// Starch alone, in percent as fed.
    pub starch_percent: Option<f64>,
    /// How much the label says to feed, in grams a kilogram of body weight a day.
    pub rate_g_per_kg: Option<f64>,
    /// The record it stands in.
    pub record: Option<RecordId>,
}

/// A food that was read from its label, or a typical profile.
#[derive(Clone, Debug, PartialEq)]
pub struct Food {
    /// Its id; `None` for a typical profile.
    pub id: Option<FoodId>,
    /// Its name; empty for a typical profile, which the screen names.
    pub name: String,
    /// What it is.
    pub class: FoodClass,
    /// Which of the catalogue it is, when it is a typical profile.
    pub profile: Option<TypicalFood>,
    /// Dry matter.
    pub dry: DryFraction,
    /// Digestible energy.
    pub energy: Option<EnergyDensity>,
    /// Neutral detergent fibre.
    pub fibre: Option<ShareOfDm>,
    /// The fatty acid DHA.
    pub dha: Option<ShareOfAsFed>,
    /// Sugar and starch together.
    pub sugar_starch: Option<ShareOfAsFed>,
    /// Starch alone.
    pub starch: Option<ShareOfAsFed>,
    /// Whether it is a typical profile and not a label.
    pub typical: bool,
    /// Where it comes from.
    pub from: Provenance,
    pub(super) per_kg: BTreeMap<Nutrient, Amount>,
    pub(super) rate_g_per_kg: f64,
}

impl Food {
    /// Reads a label.
    ///
    /// # Errors
    /// A content below nothing or not finite, a percentage outside 0 to 100, a rate that is not believed.
    pub fn read(label: FoodLabel) -> Result<Self, RationError> {
        let share = |percent: Option<f64>,
                     field: &'static str|
         -> Result<Option<ShareOfAsFed>, RationError> {
            let bounds = crate::units::Bounds::new(field, 0.0, 100.0);
            Ok(percent
                .map(|value| bounds.check(value))
                .transpose()?
                .map(ShareOfAsFed::percent))
        };
        let mut per_kg = BTreeMap::new();
        for (nutrient, value) in label.per_kg {
            if !value.is_finite() || value < 0.0 {
                return Err(RationError::Content { nutrient, value });
            }
            per_kg.insert(nutrient, nutrient.amount(value));
        }
        let from = match label.record {
            Some(record) => Provenance::new().with(Source::Record(record)),
            None => Provenance::new(),
        };
        let (dry, from) = match label.dry_percent {
            Some(percent) => (DryFraction::percent(percent)?, from),
            None => (
                DryFraction::constant_percent(*p::BALANCER_DRY),
                from.constant(&p::BALANCER_DRY),
            ),
        };
        Ok(Self {
            id: label.id,
            name: label.name,
            class: label.class,
            profile: None,
            dry,
            energy: label
                .energy_mcal_per_kg
                .map(|mcal| p::ENERGY.check(mcal))
                .transpose()?
                .map(|mcal| EnergyDensity::mcal_per_kg(mcal / dry.to_fraction())),
            fibre: share(label.fibre_percent, "fibre_percent")?.map(|share| share.of_dry(dry)),
            dha: share(label.dha_percent, "dha_percent")?,
            sugar_starch: share(label.sugar_starch_percent, "sugar_starch_percent")?,
            starch: share(label.starch_percent, "starch_percent")?,
            typical: false,
            from,
            per_kg,
            rate_g_per_kg: label
                .rate_g_per_kg
                .map(|rate| p::RATE.check(rate))
                .transpose()?
                .unwrap_or(*p::BALANCER_RATE),
        })
    }

    /// The same food, fed at most at this rate in grams a kilogram of body weight a day.
    ///
    /// # Errors
    /// A rate that is not believed.
    pub fn at_rate(self, g_per_kg: f64) -> Result<Self, RationError> {
        Ok(Self {
            rate_g_per_kg: p::RATE.check(g_per_kg)?,
            ..self
        })
    }

    /// A content in a kilogram as fed; `None` when the label does not say.
    pub fn per_kg(&self, nutrient: Nutrient) -> Option<Amount> {
        self.per_kg.get(&nutrient).copied()
    }

    /// What an amount of it brings; `None` when the label does not say.
    pub fn brings(&self, nutrient: Nutrient, fed: AsFed) -> Option<Amount> {
        self.per_kg(nutrient)
            .map(|amount| amount.scaled(fed.to_kg()))
    }

    /// The step in which it is weighed, where no scoop of it was weighed.
    pub fn step(&self) -> AsFed {
        let grams = match self.class {
            FoodClass::Source => *p::SOURCE_STEP,
            _ => *p::FOOD_STEP,
        };
        AsFed::kg(grams / 1000.0)
    }

    /// How much of it is fed a day at most: the label's rate, else that of a typical balancer.
    pub fn most_a_day(&self, body: BodyMass) -> AsFed {
        AsFed::kg(self.rate_g_per_kg / 1000.0 * body.to_kg())
    }

    /// Digestible energy in an amount of it; `None` when nobody says.
    pub fn energy_in(&self, fed: AsFed) -> Option<Energy> {
        self.energy.map(|energy| energy.in_dry(fed.dry(self.dry)))
    }

    /// Sugar and starch in an amount of it.
    pub fn sugar_starch_in(&self, fed: AsFed) -> Option<NutrientMass> {
        self.sugar_starch
            .map(|share| NutrientMass::g(share.to_fraction() * fed.to_kg() * 1000.0))
    }

    /// Starch in an amount of it.
    pub fn starch_in(&self, fed: AsFed) -> Option<NutrientMass> {
        self.starch
            .map(|share| NutrientMass::g(share.to_fraction() * fed.to_kg() * 1000.0))
    }
}

/// A vitamin and mineral balancer as they usually are, from memory, until a label is typed.
pub fn typical_balancer() -> Food {
    let contents: &[(Nutrient, &Published<f64>)] = &[
        (Nutrient::CrudeProtein, &p::BALANCER_PROTEIN),
        (Nutrient::Lysine, &p::BALANCER_LYSINE),
        (Nutrient::Calcium, &p::BALANCER_CALCIUM),
        (Nutrient::Phosphorus, &p::BALANCER_PHOSPHORUS),
        (Nutrient::Copper, &p::BALANCER_COPPER),
        (Nutrient::Zinc, &p::BALANCER_ZINC),
        (Nutrient::Manganese, &p::BALANCER_MANGANESE),
        (Nutrient::Selenium, &p::BALANCER_SELENIUM),
        (Nutrient::VitaminE, &p::BALANCER_VITAMIN_E),
    ];
    let from = contents.iter().fold(
        Provenance::new().constant(&p::BALANCER_SUGAR_STARCH),
        |from, (_, constant)| from.constant(constant),
    );
    Food {
        id: None,
        name: String::new(),
        class: FoodClass::Balancer,
        profile: Some(TypicalFood::Balancer),
        energy: None,
        fibre: None,
        dha: None,
        dry: DryFraction::constant_percent(*p::BALANCER_DRY),
        sugar_starch: Some(ShareOfAsFed::percent(*p::BALANCER_SUGAR_STARCH)),
        starch: None,
        typical: true,
        from,
        per_kg: contents
            .iter()
            .map(|(nutrient, value)| (*nutrient, nutrient.amount(value.value)))
            .collect(),
        rate_g_per_kg: *p::BALANCER_RATE,
    }
}
