//! Constants of `forage`.
//!
//! The means of the classes are facts typed one by one from the publication named in each, for the classes that a hay
//! shed meets; the spreads between lots are from memory.

use super::analyte::Analyte;
use crate::sources::{Mark, Published, Work, list_constants};
use crate::units::{Bounds, DryFraction};

/// Means of a class on dry matter: percent, copper and zinc in mg/kg, energy in Mcal/kg.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Means {
    /// Digestible energy, worked out with Pagan's equation from the row unless the place says otherwise.
    pub energy: f64,
    /// Crude protein.
    pub protein: Option<f64>,
    /// Acid and neutral detergent fibre.
    pub fibre: Option<[f64; 2]>,
    /// Starch.
    pub starch: Option<f64>,
    /// Calcium, phosphorus, magnesium, potassium, sodium.
    pub minerals: Option<[f64; 5]>,
    /// Copper and zinc.
    pub traces: Option<[f64; 2]>,
}

impl Means {
    /// A mean in the analyte's unit.
    pub const fn get(&self, analyte: Analyte) -> Option<f64> {
        match (analyte, self.fibre, self.minerals, self.traces) {
            (Analyte::CrudeProtein, ..) => self.protein,
            (Analyte::Starch, ..) => self.starch,
            (Analyte::Adf, Some([adf, _]), ..) => Some(adf),
            (Analyte::Ndf, Some([_, ndf]), ..) => Some(ndf),
            (Analyte::Calcium, _, Some([ca, ..]), _) => Some(ca),
            (Analyte::Phosphorus, _, Some([_, p, ..]), _) => Some(p),
            (Analyte::Magnesium, _, Some([_, _, mg, ..]), _) => Some(mg),
            (Analyte::Potassium, _, Some([_, _, _, k, _]), _) => Some(k),
            (Analyte::Sodium, _, Some([.., na]), _) => Some(na),
            (Analyte::Copper, .., Some([cu, _])) => Some(cu),
            (Analyte::Zinc, .., Some([_, zn])) => Some(zn),
            _ => None,
        }
    }
}

/// Spreads (standard deviations) between lots of a class, in the units of [`Means`].
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spreads {
    /// Each with its analyte.
    pub known: [(Analyte, f64); 10],
}

impl Spreads {
    /// A spread in the analyte's unit.
    pub fn get(&self, analyte: Analyte) -> Option<f64> {
        self.known
            .iter()
            .find(|(known, _)| *known == analyte)
            .map(|(_, spread)| *spread)
    }
}

/// A row of the feed library of NASEM 2021: energy; protein, fibre, starch; minerals; traces.
const fn row(
    id: &'static str,
    place: &'static str,
    energy: f64,
    [protein, adf, ndf, starch]: [f64; 4],
    minerals: [f64; 5],
    traces: [f64; 2],
) -> Published<Means> {
    Published {
        id,
        value: Means {
            energy,
            protein: Some(protein),
            fibre: Some([adf, ndf]),
            starch: Some(starch),
            minerals: Some(minerals),
            traces: Some(traces),
        },
        unit: "% of dry matter, mg/kg, Mcal/kg",
        work: Work::Nasem2021,
        place,
        mark: Mark::Published,
    }
}

/// A percentage of dry matter with its source.
const fn percent(
    id: &'static str,
    value: f64,
    work: Work,
    place: &'static str,
    mark: Mark,
) -> Published<f64> {
    Published {
        id,
        value,
        unit: "% of dry matter",
        work,
        place,
        mark,
    }
}

/// Cool-season grass hay, mid-maturity.
pub const GRASS_MID: Published<Means> = row(
    "forage.class.grass_mid",
    "feed library, cool-season grass hay, mid-maturity",
    2.13,
    [13.3, 35.5, 58.0, 2.2],
    [0.48, 0.28, 0.23, 2.27, 0.10],
    [9.2, 27.0],
);

/// Cool-season grass hay, mature: what most hay for fat animals is.
pub const GRASS_MATURE: Published<Means> = row(
    "forage.class.grass_mature",
    "feed library, cool-season grass hay, mature",
    1.99,
    [9.2, 41.4, 66.7, 2.0],
    [0.44, 0.21, 0.20, 1.63, 0.06],
    [8.3, 26.0],
);

/// Annual ryegrass hay, mid-maturity.
pub const RYEGRASS_MID: Published<Means> = row(
    "forage.class.ryegrass_mid",
    "feed library, annual ryegrass hay, mid-maturity",
    2.11,
    [12.0, 36.7, 57.3, 2.2],
    [0.51, 0.28, 0.20, 2.31, 0.26],
    [8.1, 30.0],
);

/// Bermudagrass hay.
pub const BERMUDA_HAY: Published<Means> = row(
    "forage.class.bermuda_hay",
    "feed library, bermudagrass hay",
    1.96,
    [11.0, 34.9, 65.4, 4.9],
    [0.49, 0.20, 0.21, 1.71, 0.15],
    [9.8, 34.0],
);

/// Oat hay.
pub const OAT_HAY: Published<Means> = row(
    "forage.class.oat_hay",
    "feed library, oat hay, mid-maturity",
    2.17,
    [8.5, 37.5, 59.0, 4.1],
    [0.32, 0.21, 0.14, 1.71, 0.42],
    [6.8, 20.0],
);

/// Wheat hay.
pub const WHEAT_HAY: Published<Means> = row(
    "forage.class.wheat_hay",
    "feed library, wheat hay, headed",
    2.29,
    [9.9, 33.6, 52.8, 12.2],
    [0.31, 0.23, 0.14, 1.65, 0.05],
    [7.5, 25.0],
);

/// Barley hay.
pub const BARLEY_HAY: Published<Means> = row(
    "forage.class.barley_hay",
    "feed library, barley hay",
    2.23,
    [10.8, 34.1, 54.5, 7.3],
    [0.38, 0.25, 0.17, 1.96, 0.38],
    [6.8, 30.0],
);

/// Legume hay of the lucerne type, mid-maturity.
pub const LEGUME_MID: Published<Means> = row(
    "forage.class.legume_mid",
    "feed library, legume hay, mid-maturity",
    2.37,
    [20.7, 32.1, 41.1, 1.5],
    [1.40, 0.28, 0.32, 2.38, 0.21],
    [9.7, 26.0],
);

/// Grass and legume mixed hay.
pub const GRASS_LEGUME: Published<Means> = row(
    "forage.class.grass_legume",
    "feed library, grass-legume mixed hay",
    2.07,
    [12.1, 39.3, 58.2, 2.7],
    [0.74, 0.25, 0.21, 1.91, 0.04],
    [10.0, 28.0],
);

/// Cool-season grass silage, wetter than haylage.
pub const GRASS_SILAGE: Published<Means> = row(
    "forage.class.grass_silage",
    "feed library, cool-season grass silage",
    2.05,
    [13.4, 39.0, 62.1, 1.9],
    [0.55, 0.31, 0.21, 2.29, 0.08],
    [9.5, 33.0],
);

/// Wheat straw.
pub const WHEAT_STRAW: Published<Means> = row(
    "forage.class.wheat_straw",
    "feed library, wheat straw",
    1.63,
    [4.5, 53.1, 76.9, 1.8],
    [0.38, 0.12, 0.12, 1.41, 0.07],
    [6.2, 17.0],
);

/// Teff hay; energy by the forage equation. Its minerals are not known.
pub const TEFF_HAY: Published<Means> = Published {
    id: "forage.class.teff_hay",
    value: Means {
        energy: 2.17,
        protein: Some(13.6),
        fibre: Some([35.7, 58.8]),
        starch: None,
        minerals: None,
        traces: None,
    },
    unit: "% of dry matter, Mcal/kg",
    work: Work::TeffSurvey2015,
    place: "means of about two dozen cuttings; energy worked out",
    mark: Mark::WorkedOut,
};

/// Rhodes grass hay: middle of the ranges. Its minerals are not known.
pub const RHODES_HAY: Published<Means> = Published {
    id: "forage.class.rhodes_hay",
    value: Means {
        energy: 1.8,
        protein: Some(10.0),
        fibre: None,
        starch: None,
        minerals: None,
        traces: None,
    },
    unit: "% of dry matter, Mcal/kg",
    work: Work::CommonPractice,
    place: "8 to 12 % protein, 1.7 to 1.9 Mcal/kg",
    mark: Mark::FromMemory,
};

/// WSC + starch of grass hay (about 17,600 samples).
pub const NSC_GRASS: Published<f64> = percent(
    "forage.nsc_grass",
    12.0,
    Work::ForageLaboratory,
    "mean, grass hay",
    Mark::Published,
);

/// WSC + starch of meadow hay: middle of 8 to 20.
pub const NSC_MEADOW: Published<f64> = percent(
    "forage.nsc_meadow",
    14.0,
    Work::CommonPractice,
    "WSC 8 to 20 %",
    Mark::FromMemory,
);

/// WSC + starch of timothy and orchardgrass hay: middle of 8 to 20.
pub const NSC_TIMOTHY: Published<f64> = percent(
    "forage.nsc_timothy",
    14.0,
    Work::CommonPractice,
    "NSC 8 to 20 %",
    Mark::FromMemory,
);

/// WSC + starch of ryegrass hay: middle of 12 to 30 % WSC, and 1 % starch.
pub const NSC_RYEGRASS: Published<f64> = percent(
    "forage.nsc_ryegrass",
    22.0,
    Work::CommonPractice,
    "WSC 12 to 30 %",
    Mark::FromMemory,
);

/// WSC + starch of grass and legume mixed hay.
pub const NSC_MIXED: Published<f64> = percent(
    "forage.nsc_mixed",
    12.8,
    Work::Nasem2021,
    "feed library, grass-legume mixed hay",
    Mark::Published,
);

/// WSC + starch of lucerne hay.
pub const NSC_LUCERNE: Published<f64> = percent(
    "forage.nsc_lucerne",
    11.0,
    Work::ForageLaboratory,
    "mean, lucerne hay",
    Mark::Published,
);

/// WSC + starch of oat hay.
pub const NSC_OAT: Published<f64> = percent(
    "forage.nsc_oat",
    22.1,
    Work::ForageLaboratory,
    "mean, oat hay",
    Mark::Published,
);

/// WSC + starch of wheat hay.
pub const NSC_WHEAT: Published<f64> = percent(
    "forage.nsc_wheat",
    21.8,
    Work::Nasem2021,
    "feed library, wheat hay, headed",
    Mark::Published,
);

/// WSC + starch of barley hay.
pub const NSC_BARLEY: Published<f64> = percent(
    "forage.nsc_barley",
    19.2,
    Work::ForageLaboratory,
    "mean, barley hay",
    Mark::Published,
);

/// WSC + starch of teff hay: WSC 8 % (3 to 15) and 1 % starch.
pub const NSC_TEFF: Published<f64> = percent(
    "forage.nsc_teff",
    9.0,
    Work::TeffSurvey2015,
    "mean WSC; starch added",
    Mark::WorkedOut,
);

/// WSC + starch of bermudagrass hay.
pub const NSC_BERMUDA: Published<f64> = percent(
    "forage.nsc_bermuda",
    13.2,
    Work::ForageLaboratory,
    "mean, bermudagrass hay",
    Mark::Published,
);

/// WSC + starch of Rhodes grass hay: middle of 6 to 12.
pub const NSC_RHODES: Published<f64> = percent(
    "forage.nsc_rhodes",
    9.0,
    Work::CommonPractice,
    "NSC 6 to 12 %",
    Mark::FromMemory,
);

/// WSC + starch of haylage: middle of 2 to 12 % WSC, and 1 % starch.
pub const NSC_HAYLAGE: Published<f64> = percent(
    "forage.nsc_haylage",
    8.0,
    Work::CommonPractice,
    "WSC 2 to 12 %, starch under 1 %",
    Mark::FromMemory,
);

/// WSC + starch of wheat straw.
pub const NSC_WHEAT_STRAW: Published<f64> = percent(
    "forage.nsc_wheat_straw",
    6.0,
    Work::Nasem2021,
    "feed library, wheat straw",
    Mark::Published,
);

/// WSC + starch of barley straw: middle of 3 to 7.
pub const NSC_BARLEY_STRAW: Published<f64> = percent(
    "forage.nsc_barley_straw",
    5.0,
    Work::CommonPractice,
    "NSC 3 to 7 %",
    Mark::FromMemory,
);

/// WSC + starch of oat straw: up to 10 and more.
pub const NSC_OAT_STRAW: Published<f64> = percent(
    "forage.nsc_oat_straw",
    8.0,
    Work::CommonPractice,
    "NSC to 10 % and over",
    Mark::FromMemory,
);

/// Spread of WSC + starch between lots of grass hay.
pub const NSC_SPREAD_GRASS: Published<f64> = percent(
    "forage.nsc_spread_grass",
    4.5,
    Work::CommonPractice,
    "order of magnitude",
    Mark::FromMemory,
);

/// Spread of WSC + starch between lots of legume hay.
pub const NSC_SPREAD_LEGUME: Published<f64> = percent(
    "forage.nsc_spread_legume",
    2.2,
    Work::CommonPractice,
    "order of magnitude",
    Mark::FromMemory,
);

/// Spread of WSC + starch between lots of cereal hay.
pub const NSC_SPREAD_CEREAL: Published<f64> = percent(
    "forage.nsc_spread_cereal",
    6.0,
    Work::CommonPractice,
    "order of magnitude",
    Mark::FromMemory,
);

/// Spread of WSC + starch between lots of bermudagrass and Rhodes hay.
pub const NSC_SPREAD_BERMUDA: Published<f64> = percent(
    "forage.nsc_spread_bermuda",
    3.5,
    Work::CommonPractice,
    "order of magnitude",
    Mark::FromMemory,
);

/// Spread of WSC + starch between lots of teff hay.
pub const NSC_SPREAD_TEFF: Published<f64> = percent(
    "forage.nsc_spread_teff",
    3.0,
    Work::CommonPractice,
    "order of magnitude",
    Mark::FromMemory,
);

/// Spread of WSC + starch between lots of haylage.
pub const NSC_SPREAD_HAYLAGE: Published<f64> = percent(
    "forage.nsc_spread_haylage",
    3.0,
    Work::CommonPractice,
    "order of magnitude",
    Mark::FromMemory,
);

/// Spread of WSC + starch between lots of straw.
pub const NSC_SPREAD_STRAW: Published<f64> = percent(
    "forage.nsc_spread_straw",
    3.0,
    Work::CommonPractice,
    "order of magnitude",
    Mark::FromMemory,
);

/// Spread between lots of grass hay, and of what has no spread of its own.
pub const SPREAD_GRASS: Published<Spreads> = Published {
    id: "forage.spread_grass",
    value: Spreads {
        known: [
            (Analyte::CrudeProtein, 3.0),
            (Analyte::Adf, 4.0),
            (Analyte::Ndf, 6.0),
            (Analyte::Starch, 1.2),
            (Analyte::Calcium, 0.15),
            (Analyte::Phosphorus, 0.07),
            (Analyte::Magnesium, 0.06),
            (Analyte::Potassium, 0.6),
            (Analyte::Copper, 3.0),
            (Analyte::Zinc, 10.0),
        ],
    },
    unit: "% of dry matter, mg/kg",
    work: Work::CommonPractice,
    place: "order of magnitude",
    mark: Mark::FromMemory,
};

/// Spread between lots of lucerne hay, read second-hand.
pub const SPREAD_LEGUME: Published<Spreads> = Published {
    id: "forage.spread_legume",
    value: Spreads {
        known: [
            (Analyte::CrudeProtein, 2.6),
            (Analyte::Adf, 4.3),
            (Analyte::Ndf, 5.7),
            (Analyte::Starch, 1.2),
            (Analyte::Calcium, 0.33),
            (Analyte::Phosphorus, 0.05),
            (Analyte::Magnesium, 0.05),
            (Analyte::Potassium, 0.6),
            (Analyte::Copper, 2.0),
            (Analyte::Zinc, 4.0),
        ],
    },
    unit: "% of dry matter, mg/kg",
    work: Work::Feedipedia,
    place: "lucerne hay, data sheet; starch from memory",
    mark: Mark::FromMemory,
};

/// Dry matter of hay and straw that nobody measured.
pub const HAY_DRY: Published<DryFraction> = Published {
    id: "forage.hay_dry",
    value: DryFraction::constant_percent(88.0),
    unit: "",
    work: Work::Tussock,
    place: "defaults",
    mark: Mark::Ours,
};

/// Its low end.
pub const HAY_DRY_LOW: Published<DryFraction> = Published {
    id: "forage.hay_dry_low",
    value: DryFraction::constant_percent(85.0),
    unit: "",
    work: Work::Tussock,
    place: "defaults",
    mark: Mark::Ours,
};

/// Its high end.
pub const HAY_DRY_HIGH: Published<DryFraction> = Published {
    id: "forage.hay_dry_high",
    value: DryFraction::constant_percent(90.0),
    unit: "",
    work: Work::Tussock,
    place: "defaults",
    mark: Mark::Ours,
};

/// Hay with less dry matter than this moulds in store without a preservative (moisture 16 to 25 %).
pub const DAMP_HAY: Published<DryFraction> = Published {
    id: "forage.damp_hay",
    value: DryFraction::constant_percent(84.0),
    unit: "",
    work: Work::CommonPractice,
    place: "moisture 16 to 25 % moulds",
    mark: Mark::FromMemory,
};

/// Starch of cool-season grass hay that was not tested.
pub const GRASS_STARCH: Published<f64> = Published {
    id: "forage.grass_starch",
    value: 1.0,
    unit: "% of dry matter",
    work: Work::Tussock,
    place: "defaults",
    mark: Mark::Ours,
};

/// ESC as a part of WSC in grass hay: 7.6 of 11.6.
pub const ESC_OF_WSC_GRASS: Published<f64> = Published {
    id: "forage.esc_of_wsc_grass",
    value: 0.66,
    unit: "",
    work: Work::ForageLaboratory,
    place: "ten-year means",
    mark: Mark::WorkedOut,
};

/// ESC as a part of WSC in lucerne hay: 7.1 of 9.3.
pub const ESC_OF_WSC_LUCERNE: Published<f64> = Published {
    id: "forage.esc_of_wsc_lucerne",
    value: 0.76,
    unit: "",
    work: Work::ForageLaboratory,
    place: "ten-year means",
    mark: Mark::WorkedOut,
};

/// How far that part may be off.
pub const ESC_OF_WSC_SPREAD: Published<f64> = Published {
    id: "forage.esc_of_wsc_spread",
    value: 0.15,
    unit: "",
    work: Work::Tussock,
    place: "fallback",
    mark: Mark::Ours,
};

/// Spread of a tested sugar about the truth, sampling and laboratory together.
pub const TEST_SPREAD: Published<f64> = Published {
    id: "forage.test_spread",
    value: 1.0,
    unit: "percentage points",
    work: Work::CommonPractice,
    place: "guard band",
    mark: Mark::FromMemory,
};

/// Spread of sugar between the bales of one lot.
pub const BETWEEN_BALES: Published<f64> = Published {
    id: "forage.between_bales",
    value: 2.5,
    unit: "percentage points",
    work: Work::Tussock,
    place: "sampling",
    mark: Mark::Ours,
};

/// Bales to core for a sample that stands for its lot, one core each.
pub const FULL_CORES: Published<u32> = Published {
    id: "forage.full_cores",
    value: 20,
    unit: "bales",
    work: Work::CommonPractice,
    place: "advice of several universities",
    mark: Mark::Published,
};

/// The chance of being under the limit from which a forage is within it.
pub const CHANCE_WITHIN: Published<f64> = Published {
    id: "forage.chance_within",
    value: 0.9,
    unit: "",
    work: Work::Tussock,
    place: "rule 6",
    mark: Mark::Ours,
};

/// The chance of being under the limit down to which a forage is over it.
pub const CHANCE_OVER: Published<f64> = Published {
    id: "forage.chance_over",
    value: 0.1,
    unit: "",
    work: Work::Tussock,
    place: "rule 6",
    mark: Mark::Ours,
};

/// The point under which nine tenths of the standard normal distribution lie.
pub const SURE_Z: Published<f64> = Published {
    id: "forage.sure_z",
    value: 1.281_551_565_544_600_4,
    unit: "",
    work: Work::ExactByDefinition,
    place: "quantile of the normal distribution",
    mark: Mark::WorkedOut,
};

/// WSC + starch above which a pass by ESC + starch is doubted.
pub const CONVENTIONS_APART: Published<f64> = Published {
    id: "forage.conventions_apart",
    value: 12.0,
    unit: "% of dry matter",
    work: Work::Frank2010,
    place: "NSC under 10 to 12 %",
    mark: Mark::Published,
};

/// The forage equation: constant, per % ADF, per % protein, per % ADF squared.
pub const FORAGE_EQUATION: Published<[f64; 4]> = Published {
    id: "forage.forage_equation",
    value: [4.22, -0.11, 0.0332, 0.00112],
    unit: "Mcal/kg",
    work: Work::Fonnesbeck1981,
    place: "forage equation",
    mark: Mark::FromMemory,
};

/// The fibre for which the forage equation holds; it turns upward above 49.
pub const FORAGE_EQUATION_ADF: Published<Bounds> = Published {
    id: "forage.forage_equation_adf",
    value: Bounds::new("adf_percent", 25.0, 45.0),
    unit: "% of dry matter",
    work: Work::Fonnesbeck1981,
    place: "range",
    mark: Mark::FromMemory,
};

/// Pagan's equation: constant, then per % protein, ADF, NDF - ADF, fat, the rest, ash.
pub const PAGAN: Published<[f64; 7]> = Published {
    id: "forage.pagan",
    value: [2118.0, 12.18, -9.37, -3.83, 47.18, 20.35, -26.3],
    unit: "kcal/kg",
    work: Work::Pagan1998,
    place: "equation",
    mark: Mark::FromMemory,
};

/// The fat for which Pagan's equation holds.
pub const PAGAN_FAT: Published<Bounds> = Published {
    id: "forage.pagan_fat",
    value: Bounds::new("fat_percent", 0.0, 5.0),
    unit: "% of dry matter",
    work: Work::Pagan1998,
    place: "conclusions",
    mark: Mark::Published,
};

/// How far an energy from analysis may be off; 183 to 217 kcal/kg was found.
pub const ENERGY_HALF_BAND: Published<f64> = Published {
    id: "forage.energy_half_band",
    value: 0.2,
    unit: "Mcal/kg",
    work: Work::MartinezMarin2022,
    place: "abstract",
    mark: Mark::WorkedOut,
};

/// The highest usual part of lucerne in forage dry matter, for animals kept for weight or at risk: 20 to 30 %.
pub const LUCERNE_MOST: Published<f64> = Published {
    id: "forage.lucerne_most",
    value: 0.3,
    unit: "of forage dry matter",
    work: Work::CommonPractice,
    place: "rule 12",
    mark: Mark::CommonPractice,
};

/// By how much a part may exceed its whole before it is more than the scatter of two assays.
pub const SUBSET_SLACK: Published<f64> = Published {
    id: "forage.subset_slack",
    value: 0.5,
    unit: "percentage points",
    work: Work::Tussock,
    place: "report check",
    mark: Mark::Ours,
};

/// How near a stated NSC must be to a sum to be that sum.
pub const NSC_AGREES: Published<f64> = Published {
    id: "forage.nsc_agrees",
    value: 0.3,
    unit: "percentage points",
    work: Work::Tussock,
    place: "report check",
    mark: Mark::Ours,
};

/// The sum of protein, neutral fibre, fat, ash, sugar and starch above which something is wrong.
pub const PARTS_SUM_HIGH: Published<f64> = Published {
    id: "forage.parts_sum_high",
    value: 105.0,
    unit: "% of dry matter",
    work: Work::Tussock,
    place: "report check",
    mark: Mark::Ours,
};

/// The same sum below which something is wrong; pectin and acids are not in it.
pub const PARTS_SUM_LOW: Published<f64> = Published {
    id: "forage.parts_sum_low",
    value: 75.0,
    unit: "% of dry matter",
    work: Work::Tussock,
    place: "report check",
    mark: Mark::Ours,
};

/// How many cores are believed.
pub const CORES_FIELD: Published<Bounds> = Published {
    id: "forage.cores_field",
    value: Bounds::new("cores", 1.0, 500.0),
    unit: "bales",
    work: Work::Tussock,
    place: "report check",
    mark: Mark::Ours,
};

/// Digestible energy that is believed on a report.
pub const REPORTED_ENERGY: Published<Bounds> = Published {
    id: "forage.reported_energy",
    value: Bounds::new("energy_mcal_per_kg", 0.2, 4.5),
    unit: "Mcal/kg",
    work: Work::Tussock,
    place: "report check",
    mark: Mark::Ours,
};

/// The part of a forage that is believed to be wasted or washed out.
pub const LOSS_FIELD: Published<Bounds> = Published {
    id: "forage.loss_field",
    value: Bounds::new("loss_fraction", 0.0, 0.9),
    unit: "of dry matter",
    work: Work::Tussock,
    place: "cost",
    mark: Mark::Ours,
};

/// The most that is believed of each analyte in a forage, in its unit.
pub const MOST_BELIEVABLE: Published<[(Analyte, f64); 24]> = Published {
    id: "forage.most_believable",
    value: [
        (Analyte::CrudeProtein, 40.0),
        (Analyte::Lysine, 3.0),
        (Analyte::Adf, 70.0),
        (Analyte::Ndf, 90.0),
        (Analyte::Fat, 15.0),
        (Analyte::Ash, 30.0),
        (Analyte::Wsc, 50.0),
        (Analyte::Esc, 45.0),
        (Analyte::Starch, 60.0),
        (Analyte::Nsc, 70.0),
        (Analyte::Calcium, 4.0),
        (Analyte::Phosphorus, 2.0),
        (Analyte::Magnesium, 1.5),
        (Analyte::Potassium, 7.0),
        (Analyte::Sodium, 3.0),
        (Analyte::Chloride, 4.0),
        (Analyte::Sulphur, 1.5),
        (Analyte::Iron, 5000.0),
        (Analyte::Copper, 200.0),
        (Analyte::Zinc, 500.0),
        (Analyte::Manganese, 1500.0),
        (Analyte::Selenium, 20.0),
        (Analyte::Iodine, 50.0),
        (Analyte::Cobalt, 20.0),
    ],
    unit: "% or mg/kg",
    work: Work::Tussock,
    place: "report check",
    mark: Mark::Ours,
};

list_constants![
    GRASS_MID,
    GRASS_MATURE,
    RYEGRASS_MID,
    BERMUDA_HAY,
    OAT_HAY,
    WHEAT_HAY,
    BARLEY_HAY,
    LEGUME_MID,
    GRASS_LEGUME,
    GRASS_SILAGE,
    WHEAT_STRAW,
    TEFF_HAY,
    RHODES_HAY,
    NSC_GRASS,
    NSC_MEADOW,
    NSC_TIMOTHY,
    NSC_RYEGRASS,
    NSC_MIXED,
    NSC_LUCERNE,
    NSC_OAT,
    NSC_WHEAT,
    NSC_BARLEY,
    NSC_TEFF,
    NSC_BERMUDA,
    NSC_RHODES,
    NSC_HAYLAGE,
    NSC_WHEAT_STRAW,
    NSC_BARLEY_STRAW,
    NSC_OAT_STRAW,
    NSC_SPREAD_GRASS,
    NSC_SPREAD_LEGUME,
    NSC_SPREAD_CEREAL,
    NSC_SPREAD_BERMUDA,
    NSC_SPREAD_TEFF,
    NSC_SPREAD_HAYLAGE,
    NSC_SPREAD_STRAW,
    SPREAD_GRASS,
    SPREAD_LEGUME,
    HAY_DRY,
    HAY_DRY_LOW,
    HAY_DRY_HIGH,
    DAMP_HAY,
    GRASS_STARCH,
    ESC_OF_WSC_GRASS,
    ESC_OF_WSC_LUCERNE,
    ESC_OF_WSC_SPREAD,
    TEST_SPREAD,
    BETWEEN_BALES,
    FULL_CORES,
    CHANCE_WITHIN,
    CHANCE_OVER,
    SURE_Z,
    CONVENTIONS_APART,
    FORAGE_EQUATION,
    FORAGE_EQUATION_ADF,
    PAGAN,
    PAGAN_FAT,
    ENERGY_HALF_BAND,
    LUCERNE_MOST,
    SUBSET_SLACK,
    NSC_AGREES,
    PARTS_SUM_HIGH,
    PARTS_SUM_LOW,
    CORES_FIELD,
    REPORTED_ENERGY,
    LOSS_FIELD,
    MOST_BELIEVABLE,
];
