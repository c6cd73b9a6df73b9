//! What a forage is said to be, and what its kind holds on average.

use super::analyte::Analyte;
use super::chance::Belief;
use super::published as p;
use crate::sources::{Mark, Provenance, Published};
use crate::units::{EnergyDensity, ShareOfDm};

/// How a forage is conserved.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum ForageKind {
    /// Dried.
    Hay,
    /// Wrapped half dry.
    Haylage,
    /// What is left of a cereal after threshing.
    Straw,
}

/// What a forage is said to be.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub enum ForageClass {
    /// Grass hay of which nobody knows more: the widest class, and the default.
    #[default]
    Grass,
    /// Hay of an old mixed meadow.
    Meadow,
    /// Timothy or orchardgrass (cocksfoot) hay.
    TimothyOrchard,
    /// Ryegrass hay.
    Ryegrass,
    /// Grass and legume mixed hay.
    GrassLegume,
    /// Lucerne (alfalfa) hay.
    Lucerne,
    /// Oat hay.
    Oat,
    /// Wheat hay.
    Wheat,
    /// Barley hay.
    Barley,
    /// Teff hay.
    Teff,
    /// Bermudagrass (couch) hay.
    Bermuda,
    /// Rhodes grass hay.
    Rhodes,
    /// Grass haylage.
    Haylage,
    /// Wheat straw.
    WheatStraw,
    /// Barley straw.
    BarleyStraw,
    /// Oat straw.
    OatStraw,
}

/// What a class holds on average, and how far one lot of it may lie from that.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ClassProfile {
    /// The class.
    pub class: ForageClass,
    /// The mean of WSC + starch.
    pub nsc_mean: &'static Published<f64>,
    /// The spread of WSC + starch between lots.
    pub nsc_spread: &'static Published<f64>,
    /// The row of means for the rest, where there is one.
    pub means: &'static Published<p::Means>,
    /// Whether that row is of another, near class and stands in for this one.
    pub stands_in: bool,
    /// The spread between lots for the rest.
    pub spreads: &'static Published<p::Spreads>,
}

impl ForageClass {
    /// All of them, in the order in which a person is asked.
    pub const ALL: &'static [Self] = &[
        Self::Grass,
        Self::Meadow,
        Self::TimothyOrchard,
        Self::Ryegrass,
        Self::GrassLegume,
        Self::Lucerne,
        Self::Oat,
        Self::Wheat,
        Self::Barley,
        Self::Teff,
        Self::Bermuda,
        Self::Rhodes,
        Self::Haylage,
        Self::WheatStraw,
        Self::BarleyStraw,
        Self::OatStraw,
    ];

    /// How it is conserved.
    pub const fn kind(self) -> ForageKind {
        match self {
            Self::Grass
            | Self::Meadow
            | Self::TimothyOrchard
            | Self::Ryegrass
            | Self::GrassLegume
            | Self::Lucerne
            | Self::Oat
            | Self::Wheat
            | Self::Barley
            | Self::Teff
            | Self::Bermuda
            | Self::Rhodes => ForageKind::Hay,
            Self::Haylage => ForageKind::Haylage,
            Self::WheatStraw | Self::BarleyStraw | Self::OatStraw => ForageKind::Straw,
        }
    }

    /// Hay of a cereal cut green: its grain and stems hold much starch and sugar.
    pub const fn is_cereal_hay(self) -> bool {
        matches!(self, Self::Oat | Self::Wheat | Self::Barley)
    }

    /// Cool-season grass hay: it holds next to no starch, its reserve is fructan.
    pub const fn is_grass_hay(self) -> bool {
        matches!(
            self,
            Self::Grass | Self::Meadow | Self::TimothyOrchard | Self::Ryegrass | Self::Haylage
        )
    }

    /// Means and spreads of the class.
    pub const fn profile(self) -> ClassProfile {
        let nsc_spread = match self {
            Self::Grass
            | Self::Meadow
            | Self::TimothyOrchard
            | Self::Ryegrass
            | Self::GrassLegume => &p::NSC_SPREAD_GRASS,
            Self::Lucerne => &p::NSC_SPREAD_LEGUME,
            Self::Oat | Self::Wheat | Self::Barley => &p::NSC_SPREAD_CEREAL,
            Self::Teff => &p::NSC_SPREAD_TEFF,
            Self::Bermuda | Self::Rhodes => &p::NSC_SPREAD_BERMUDA,
            Self::Haylage => &p::NSC_SPREAD_HAYLAGE,
            Self::WheatStraw | Self::BarleyStraw | Self::OatStraw => &p::NSC_SPREAD_STRAW,
        };
        let (nsc_mean, means, stands_in, spreads) = match self {
            Self::Grass => (&p::NSC_GRASS, &p::GRASS_MATURE, false, &p::SPREAD_GRASS),
            Self::Meadow => (&p::NSC_MEADOW, &p::GRASS_MATURE, true, &p::SPREAD_GRASS),
            Self::TimothyOrchard => (&p::NSC_TIMOTHY, &p::GRASS_MID, true, &p::SPREAD_GRASS),
            Self::Ryegrass => (&p::NSC_RYEGRASS, &p::RYEGRASS_MID, false, &p::SPREAD_GRASS),
            Self::GrassLegume => (&p::NSC_MIXED, &p::GRASS_LEGUME, false, &p::SPREAD_GRASS),
            Self::Lucerne => (&p::NSC_LUCERNE, &p::LEGUME_MID, false, &p::SPREAD_LEGUME),
            Self::Oat => (&p::NSC_OAT, &p::OAT_HAY, false, &p::SPREAD_GRASS),
            Self::Wheat => (&p::NSC_WHEAT, &p::WHEAT_HAY, false, &p::SPREAD_GRASS),
            Self::Barley => (&p::NSC_BARLEY, &p::BARLEY_HAY, false, &p::SPREAD_GRASS),
            Self::Teff => (&p::NSC_TEFF, &p::TEFF_HAY, false, &p::SPREAD_GRASS),
            Self::Bermuda => (&p::NSC_BERMUDA, &p::BERMUDA_HAY, false, &p::SPREAD_GRASS),
            Self::Rhodes => (&p::NSC_RHODES, &p::RHODES_HAY, false, &p::SPREAD_GRASS),
            Self::Haylage => (&p::NSC_HAYLAGE, &p::GRASS_SILAGE, true, &p::SPREAD_GRASS),
            Self::WheatStraw => (
                &p::NSC_WHEAT_STRAW,
                &p::WHEAT_STRAW,
                false,
                &p::SPREAD_GRASS,
            ),
            Self::BarleyStraw => (
                &p::NSC_BARLEY_STRAW,
                &p::WHEAT_STRAW,
                true,
                &p::SPREAD_GRASS,
            ),
            Self::OatStraw => (&p::NSC_OAT_STRAW, &p::WHEAT_STRAW, true, &p::SPREAD_GRASS),
        };
        ClassProfile {
            class: self,
            nsc_mean,
            nsc_spread,
            means,
            stands_in,
            spreads,
        }
    }
}

impl ClassProfile {
    /// WSC + starch of an untested lot of the class.
    pub fn nsc(&self) -> Belief {
        Belief::percent(self.nsc_mean.value, self.nsc_spread.value)
    }

    /// The class mean of a content. `None` where no mean is known, and for what follows the soil and not the class.
    pub fn mean(&self, analyte: Analyte) -> Option<ShareOfDm> {
        if analyte == Analyte::Nsc {
            return Some(self.nsc().mean);
        }
        if analyte.follows_soil() {
            return None;
        }
        Some(analyte.share_of_dm(self.means.value.get(analyte)?))
    }

    /// The spread of a content between lots of the class; `None` where none is known.
    pub fn spread(&self, analyte: Analyte) -> Option<ShareOfDm> {
        if analyte == Analyte::Nsc {
            return Some(self.nsc().spread);
        }
        Some(analyte.share_of_dm(self.spreads.value.get(analyte)?))
    }

    /// Digestible energy of the class.
    pub fn energy(&self) -> EnergyDensity {
        EnergyDensity::mcal_per_kg(self.means.value.energy)
    }

    /// How far the mean of a content can be trusted: less where another class stands in.
    pub fn mark(&self, analyte: Analyte) -> Mark {
        if analyte == Analyte::Nsc {
            self.nsc_mean.mark
        } else if self.stands_in {
            Mark::Ours
        } else {
            self.means.mark
        }
    }

    /// Where the sugar of the class comes from.
    pub fn sugar_provenance(&self) -> Provenance {
        Provenance::new()
            .constant(self.nsc_mean)
            .constant(self.nsc_spread)
    }

    /// Where the rest comes from.
    pub fn provenance(&self) -> Provenance {
        Provenance::new()
            .constant(self.means)
            .constant(self.spreads)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_follows_the_soil_is_never_a_class_mean() {
        for class in ForageClass::ALL {
            let profile = class.profile();
            for analyte in [Analyte::Selenium, Analyte::Iron, Analyte::Manganese] {
                assert_eq!(profile.mean(analyte), None, "{class:?} {analyte:?}");
            }
        }
    }

    #[test]
    fn no_class_mean_is_outside_what_is_believed() {
        for class in ForageClass::ALL {
            let profile = class.profile();
            for analyte in Analyte::ALL {
                if let Some(mean) = profile.mean(*analyte) {
                    let value = analyte.in_unit(mean);
                    assert!(
                        analyte.bounds().check(value).is_ok(),
                        "{class:?} {analyte:?}"
                    );
                    assert!(value > 0.0, "{class:?} {analyte:?}: unknown is never 0");
                }
            }
            let energy = profile.energy().to_mcal_per_kg();
            assert!((1.4..2.6).contains(&energy), "{class:?} {energy}");
        }
    }

    #[test]
    fn a_class_that_stands_in_is_not_marked_as_read() {
        let meadow = ForageClass::Meadow.profile();
        assert_eq!(meadow.mark(Analyte::Calcium), Mark::Ours);
        assert_eq!(
            ForageClass::Lucerne.profile().mark(Analyte::Calcium),
            Mark::Published
        );
    }

    #[test]
    fn no_class_is_within_ten_by_its_name_except_straw() {
        let limit = ShareOfDm::percent(10.0);
        for class in ForageClass::ALL {
            let chance = class.profile().nsc().chance_at_most(limit);
            if class.kind() != ForageKind::Straw {
                assert!(chance < 0.9, "{class:?} {chance}");
            }
        }
    }
}
