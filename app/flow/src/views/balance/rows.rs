//! The rows of a balance: energy, and one a nutrient.

use super::Look;
use super::cord::{Cord, Knots};
use std::cmp::Ordering;
use tussock_core::limits::{Amount, Ends, Finding, Nutrient, UpperContent, upper_limit};
use tussock_core::plan::Standard;
use tussock_core::ration::published::RATIO_UNKNOWN;
use tussock_core::ration::{EnergyRow, FedContent, Row, Standing, Whole};
use tussock_core::sources::Provenance;
use tussock_core::units::{DryMatter, Energy};

/// How one ration stands in a nutrient.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Side {
    /// What its known parts bring.
    pub supplied: Option<Amount>,
    /// How that stands.
    pub standing: Standing,
    /// The bound it is held under: its ceiling, or the bound at which to warn where there is one; `None` where none is
    /// published.
    pub ceiling: Option<Amount>,
    /// The part of the dry matter in which it is not known, 0 to 1.
    pub unknown: f64,
    /// Whether its need and what poisons lie so near that what is not known decides.
    pub poison: bool,
}

impl Side {
    fn of(row: &Row, dry: DryMatter) -> Self {
        let warn = upper_limit(row.line.nutrient).and_then(|limit| limit.warn);
        let ceiling = warn.map(|from| from.in_dry(dry)).or(row.most);
        Self {
            supplied: row.line.supplied,
            standing: row.line.standing,
            ceiling,
            unknown: row.unknown,
            poison: row.line.nutrient == Nutrient::Selenium,
        }
    }

    /// How it stands.
    ///
    /// Selenium is never called within while it is not known in more of the ration than a ratio bears: what nobody
    /// tested may alone be too much.
    pub fn look(&self) -> Look {
        match self.standing {
            Standing::Over { .. } => Look::Over,
            Standing::Short { .. } => Look::Short,
            Standing::NotKnown => Look::NotKnown,
            Standing::Within if self.poison && self.unknown > *RATIO_UNKNOWN => Look::NotKnown,
            Standing::Within => Look::Within,
        }
    }

    /// How far it is out, more being worse, within one look.
    fn how_far(&self, need: Amount) -> f64 {
        let times = |of: Amount| self.supplied.and_then(|supplied| supplied.times(of));
        match self.standing {
            Standing::Over { .. } => self.ceiling.and_then(times).unwrap_or_default(),
            Standing::Short { .. } => 1.0 - times(need).unwrap_or_default(),
            Standing::NotKnown => self.unknown,
            Standing::Within => 0.0,
        }
    }
}

/// One nutrient.
#[derive(Clone, Debug, PartialEq)]
pub struct NutrientRow {
    /// Which.
    pub nutrient: Nutrient,
    /// The need.
    pub need: Amount,
    /// How it stands.
    pub is: Side,
    /// How it stood in the ration that was there before, in a comparison.
    pub was: Option<Side>,
    /// What a kilogram of the ration as fed holds.
    pub in_fed: Option<FedContent>,
    /// What a kilogram of its dry matter holds.
    pub in_dry: Option<UpperContent>,
    /// Where it comes from.
    pub from: Provenance,
    /// Its cord; `None` where the ceiling is not above the need, and words stand there.
    pub cord: Option<Cord>,
}

impl NutrientRow {
    fn of(row: &Row, dry: DryMatter, before: Option<(&Row, DryMatter)>) -> Self {
        let nutrient = row.line.nutrient;
        let need = row.line.need;
        let is = Side::of(row, dry);
        let was = before.map(|(row, dry)| Side::of(row, dry));
        let knots = |side: &Side| {
            Knots::of(
                nutrient.in_unit(need),
                side.ceiling.and_then(|most| nutrient.in_unit(most)),
            )
        };
        let supply = |side: &Side| side.supplied.and_then(|held| nutrient.in_unit(held));
        // Each ration on its own ceiling, which goes by its dry matter; the knots are level all the same.
        let hung = was
            .as_ref()
            .and_then(|side| Some((knots(side)?, supply(side)?)));
        let cord = knots(&is).map(|tied| Cord {
            was: hung.map(|(knots, supply)| knots.position(supply)),
            ..Cord::between(tied, supply(&is), is.unknown > 0.0)
        });
        Self {
            nutrient,
            need,
            is,
            was,
            in_fed: row.in_fed,
            in_dry: row.in_dry,
            from: row.line.from.clone(),
            cord,
        }
    }

    /// Whether it is not known and was not, so that nobody can say that anything is amiss.
    pub fn is_only_unknown(&self) -> bool {
        let unknown = |side: &Side| side.look() == Look::NotKnown;
        unknown(&self.is) && self.was.as_ref().is_none_or(unknown)
    }

    /// Whether it needs a look, or needed one before.
    pub fn needs_a_look(&self) -> bool {
        self.worst().needs_a_look()
    }

    fn worst(&self) -> Look {
        let is = self.is.look();
        self.was.map_or(is, |was| is.min(was.look()))
    }

    fn against(&self, other: &Self) -> Ordering {
        let far = |row: &Self| row.is.how_far(row.need);
        self.worst()
            .cmp(&other.worst())
            .then(self.is.look().cmp(&other.is.look()))
            .then(far(other).total_cmp(&far(self)))
    }
}

/// The nutrients, worst first.
pub(super) fn nutrients(is: &Whole, was: Option<&Whole>) -> Vec<NutrientRow> {
    let mut found: Vec<NutrientRow> = is
        .rows
        .iter()
        .map(|row| {
            let same = |other: &&Row| other.line.nutrient == row.line.nutrient;
            let before = was.and_then(|was| Some((was.rows.iter().find(same)?, was.dry)));
            NutrientRow::of(row, is.dry, before)
        })
        .collect();
    found.sort_by(NutrientRow::against);
    found
}

/// How energy stands.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum EnergyStands {
    /// At or over its floor, with the end that leaves the animal least.
    Within,
    /// Under its floor.
    Short {
        /// The floor.
        floor: Energy,
    },
    /// The energy of a part is not known, and what is known does not reach the floor.
    NotKnown,
    /// It goes by weight and condition.
    ByWeightAndCondition,
    /// No need is reckoned for it.
    NotReckoned,
}

impl EnergyStands {
    /// How it stands.
    pub const fn look(self) -> Look {
        match self {
            Self::Within => Look::Within,
            Self::Short { .. } => Look::Short,
            Self::NotKnown | Self::NotReckoned => Look::NotKnown,
            Self::ByWeightAndCondition => Look::Told,
        }
    }
}

/// Energy, with its ends.
#[derive(Clone, Debug, PartialEq)]
pub struct EnergyLine {
    /// What the known parts bring.
    pub supplied: Ends<Energy>,
    /// The need of its weight; `None` where it goes by weight and condition.
    pub need: Option<Energy>,
    /// What is likely supplied, as a part of the need.
    pub of_need: Option<f64>,
    /// The part of the dry matter whose energy is not known, 0 to 1.
    pub unknown: f64,
    /// How it stands.
    pub stands: EnergyStands,
    /// What was likely supplied before, in a comparison.
    pub was: Option<Energy>,
    /// Where the need comes from.
    pub from: Provenance,
    /// Its cord; `None` without a need.
    pub cord: Option<Cord>,
}

impl EnergyLine {
    /// Held against its floor: the need where all is to be met, what a restriction leaves where the weight decides.
    pub(super) fn of(standard: &Standard, row: &EnergyRow, before: Option<&EnergyRow>) -> Self {
        let by_weight = standard
            .needed
            .contains(&Finding::EnergyByWeightAndCondition);
        let stands = match standard.energy_least.or(row.need) {
            _ if by_weight => EnergyStands::ByWeightAndCondition,
            None => EnergyStands::NotReckoned,
            Some(floor) if floor <= row.supplied.least => EnergyStands::Within,
            Some(_) if row.unknown > 0.0 => EnergyStands::NotKnown,
            Some(floor) => EnergyStands::Short { floor },
        };
        let cord = row.need.and_then(|need| {
            let knots = Knots::of(Some(need.to_mcal()), None)?;
            let at = |energy: Energy| knots.position(energy.to_mcal());
            Some(Cord {
                band: Some([at(row.supplied.least), at(row.supplied.most)]),
                was: before.map(|before| at(before.supplied.likely)),
                ..Cord::between(
                    knots,
                    Some(row.supplied.likely.to_mcal()),
                    row.unknown > 0.0,
                )
            })
        });
        Self {
            supplied: row.supplied,
            need: row.need,
            of_need: row.of_need(),
            unknown: row.unknown,
            stands,
            was: before.map(|before| before.supplied.likely),
            from: standard
                .needs
                .energy
                .as_ref()
                .map_or_else(Provenance::new, |need| need.from.clone()),
            cord,
        }
    }
}
