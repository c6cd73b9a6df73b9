//! What a forage laboratory reports, besides dry matter and energy.

use super::published::MOST_BELIEVABLE;
use crate::units::{Bounds, ShareOfDm};

/// The unit in which laboratories report an analyte.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum AnalyteUnit {
    /// Percent of the basis.
    Percent,
    /// Milligrams in a kilogram of the basis (ppm).
    MgPerKg,
}

macro_rules! analytes {
    ($($(#[$doc:meta])* $name:ident, $field:literal, $unit:ident;)*) => {
        /// One thing measured.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum Analyte {
            $($(#[$doc])* $name,)*
        }

        impl Analyte {
            /// All of them, in the order of a report.
            pub const ALL: &'static [Self] = &[$(Self::$name,)*];

            /// A stable key with its unit.
            pub const fn field(self) -> &'static str {
                match self { $(Self::$name => $field,)* }
            }

            /// The unit in which it is reported.
            pub const fn unit(self) -> AnalyteUnit {
                match self { $(Self::$name => AnalyteUnit::$unit,)* }
            }
        }
    };
}

analytes! {
    /// Crude protein.
    CrudeProtein, "crude_protein_percent", Percent;
    /// Lysine.
    Lysine, "lysine_percent", Percent;
    /// Acid detergent fibre.
    Adf, "adf_percent", Percent;
    /// Neutral detergent fibre.
    Ndf, "ndf_percent", Percent;
    /// Fat (ether extract).
    Fat, "fat_percent", Percent;
    /// Ash.
    Ash, "ash_percent", Percent;
    /// Water-soluble carbohydrate: simple sugars, oligosaccharides and fructan.
    Wsc, "wsc_percent", Percent;
    /// Ethanol-soluble carbohydrate: a part of the water-soluble.
    Esc, "esc_percent", Percent;
    /// Starch.
    Starch, "starch_percent", Percent;
    /// Non-structural carbohydrate as the laboratory states it; which sum it means differs.
    Nsc, "nsc_percent", Percent;
    /// Calcium.
    Calcium, "calcium_percent", Percent;
    /// Phosphorus.
    Phosphorus, "phosphorus_percent", Percent;
    /// Magnesium.
    Magnesium, "magnesium_percent", Percent;
    /// Potassium.
    Potassium, "potassium_percent", Percent;
    /// Sodium.
    Sodium, "sodium_percent", Percent;
    /// Chloride.
    Chloride, "chloride_percent", Percent;
    /// Sulphur.
    Sulphur, "sulphur_percent", Percent;
    /// Iron.
    Iron, "iron_mg_per_kg", MgPerKg;
    /// Copper.
    Copper, "copper_mg_per_kg", MgPerKg;
    /// Zinc.
    Zinc, "zinc_mg_per_kg", MgPerKg;
    /// Manganese.
    Manganese, "manganese_mg_per_kg", MgPerKg;
    /// Selenium.
    Selenium, "selenium_mg_per_kg", MgPerKg;
    /// Iodine.
    Iodine, "iodine_mg_per_kg", MgPerKg;
    /// Cobalt.
    Cobalt, "cobalt_mg_per_kg", MgPerKg;
}

impl Analyte {
    /// What is believed on a report, in its unit, on either basis.
    pub fn bounds(self) -> Bounds {
        let most = MOST_BELIEVABLE
            .iter()
            .find(|(analyte, _)| *analyte == self)
            .map_or(100.0, |(_, most)| *most);
        Bounds::new(self.field(), 0.0, most)
    }

    /// Whether a zero can be a finding: sugars, starch and traces under the laboratory's limit are printed as 0. Of
    /// anything else a forage always holds some, and a zero stands for "not measured".
    pub const fn can_be_zero(self) -> bool {
        matches!(
            self,
            Self::Wsc
                | Self::Esc
                | Self::Starch
                | Self::Nsc
                | Self::Sodium
                | Self::Chloride
                | Self::Selenium
                | Self::Iodine
                | Self::Cobalt
        )
    }

    /// Whether it follows the soil and not the class, so that a class mean says nothing of one hay.
    pub const fn follows_soil(self) -> bool {
        matches!(
            self,
            Self::Iron | Self::Manganese | Self::Selenium | Self::Iodine | Self::Cobalt
        )
    }

    /// A number in this analyte's unit, as a share of dry matter.
    pub fn share_of_dm(self, value: f64) -> ShareOfDm {
        match self.unit() {
            AnalyteUnit::Percent => ShareOfDm::percent(value),
            AnalyteUnit::MgPerKg => ShareOfDm::mg_per_kg(value),
        }
    }

    /// A share of dry matter as a number in this analyte's unit.
    pub fn in_unit(self, share: ShareOfDm) -> f64 {
        match self.unit() {
            AnalyteUnit::Percent => share.to_percent(),
            AnalyteUnit::MgPerKg => share.to_mg_per_kg(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_analyte_has_a_believable_range() {
        for analyte in Analyte::ALL {
            assert!(
                MOST_BELIEVABLE.iter().any(|(known, _)| known == analyte),
                "{analyte:?}"
            );
            let bounds = analyte.bounds();
            assert!(bounds.min < bounds.max);
        }
        assert_eq!(MOST_BELIEVABLE.len(), Analyte::ALL.len());
    }

    #[test]
    fn a_share_returns_in_the_unit_it_came_in() {
        for analyte in Analyte::ALL {
            assert!((analyte.in_unit(analyte.share_of_dm(3.5)) - 3.5).abs() < 1e-12);
        }
    }
}
