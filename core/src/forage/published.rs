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
    /// A row of a feed library: energy; protein, fibre, starch; minerals; traces.
    const fn row(
        energy: f64,
        [protein, adf, ndf, starch]: [f64; 4],
        minerals: [f64; 5],
        traces: [f64; 2],
    ) -> Self {
        Self {
            energy,
            protein: Some(protein),
            fibre: Some([adf, ndf]),
            starch: Some(starch),
            minerals: Some(minerals),
            traces: Some(traces),
        }
    }

    /// What little is known of a class that no feed library holds.
    const fn little(energy: f64, protein: f64, fibre: Option<[f64; 2]>) -> Self {
        Self {
            energy,
            protein: Some(protein),
            fibre,
            starch: None,
            minerals: None,
            traces: None,
        }
    }

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

/// Writes a constant and its place in the list in one line: name, type, value; key, unit, work, place, mark.
macro_rules! published {
    ($($(#[$doc:meta])* $name:ident: $kind:ty = $value:expr; $key:literal, $unit:literal, $work:ident, $place:literal, $mark:ident;)*) => {
        $(
            $(#[$doc])*
            pub const $name: Published<$kind> = Published {
                id: concat!("forage.", $key),
                value: $value,
                unit: $unit,
                work: Work::$work,
                place: $place,
                mark: Mark::$mark,
            };
        )*
        list_constants![$($name),*];
    };
}

published! {
    /// Cool-season grass hay, mid-maturity.
    GRASS_MID: Means = Means::row(2.13, [13.3, 35.5, 58.0, 2.2], [0.48, 0.28, 0.23, 2.27, 0.10], [9.2, 27.0]); "class.grass_mid", "% of dry matter, mg/kg, Mcal/kg", Nasem2021, "feed library, cool-season grass hay, mid-maturity", Published;
    /// Cool-season grass hay, mature: what most hay for fat animals is.
    GRASS_MATURE: Means = Means::row(1.99, [9.2, 41.4, 66.7, 2.0], [0.44, 0.21, 0.20, 1.63, 0.06], [8.3, 26.0]); "class.grass_mature", "% of dry matter, mg/kg, Mcal/kg", Nasem2021, "feed library, cool-season grass hay, mature", Published;
    /// Annual ryegrass hay, mid-maturity.
    RYEGRASS_MID: Means = Means::row(2.11, [12.0, 36.7, 57.3, 2.2], [0.51, 0.28, 0.20, 2.31, 0.26], [8.1, 30.0]); "class.ryegrass_mid", "% of dry matter, mg/kg, Mcal/kg", Nasem2021, "feed library, annual ryegrass hay, mid-maturity", Published;
    /// Bermudagrass hay.
    BERMUDA_HAY: Means = Means::row(1.96, [11.0, 34.9, 65.4, 4.9], [0.49, 0.20, 0.21, 1.71, 0.15], [9.8, 34.0]); "class.bermuda_hay", "% of dry matter, mg/kg, Mcal/kg", Nasem2021, "feed library, bermudagrass hay", Published;
    /// Oat hay.
    OAT_HAY: Means = Means::row(2.17, [8.5, 37.5, 59.0, 4.1], [0.32, 0.21, 0.14, 1.71, 0.42], [6.8, 20.0]); "class.oat_hay", "% of dry matter, mg/kg, Mcal/kg", Nasem2021, "feed library, oat hay, mid-maturity", Published;
    /// Wheat hay.
    WHEAT_HAY: Means = Means::row(2.29, [9.9, 33.6, 52.8, 12.2], [0.31, 0.23, 0.14, 1.65, 0.05], [7.5, 25.0]); "class.wheat_hay", "% of dry matter, mg/kg, Mcal/kg", Nasem2021, "feed library, wheat hay, headed", Published;
    /// Barley hay.
    BARLEY_HAY: Means = Means::row(2.23, [10.8, 34.1, 54.5, 7.3], [0.38, 0.25, 0.17, 1.96, 0.38], [6.8, 30.0]); "class.barley_hay", "% of dry matter, mg/kg, Mcal/kg", Nasem2021, "feed library, barley hay", Published;
    /// Legume hay of the lucerne type, mid-maturity.
    LEGUME_MID: Means = Means::row(2.37, [20.7, 32.1, 41.1, 1.5], [1.40, 0.28, 0.32, 2.38, 0.21], [9.7, 26.0]); "class.legume_mid", "% of dry matter, mg/kg, Mcal/kg", Nasem2021, "feed library, legume hay, mid-maturity", Published;
    /// Grass and legume mixed hay.
    GRASS_LEGUME: Means = Means::row(2.07, [12.1, 39.3, 58.2, 2.7], [0.74, 0.25, 0.21, 1.91, 0.04], [10.0, 28.0]); "class.grass_legume", "% of dry matter, mg/kg, Mcal/kg", Nasem2021, "feed library, grass-legume mixed hay", Published;
    /// Cool-season grass silage, wetter than haylage.
    GRASS_SILAGE: Means = Means::row(2.05, [13.4, 39.0, 62.1, 1.9], [0.55, 0.31, 0.21, 2.29, 0.08], [9.5, 33.0]); "class.grass_silage", "% of dry matter, mg/kg, Mcal/kg", Nasem2021, "feed library, cool-season grass silage", Published;
    /// Wheat straw.
    WHEAT_STRAW: Means = Means::row(1.63, [4.5, 53.1, 76.9, 1.8], [0.38, 0.12, 0.12, 1.41, 0.07], [6.2, 17.0]); "class.wheat_straw", "% of dry matter, mg/kg, Mcal/kg", Nasem2021, "feed library, wheat straw", Published;
    /// Teff hay; energy by the forage equation. Its minerals are not known.
    TEFF_HAY: Means = Means::little(2.17, 13.6, Some([35.7, 58.8])); "class.teff_hay", "% of dry matter, Mcal/kg", TeffSurvey2015, "means of about two dozen cuttings; energy worked out", WorkedOut;
    /// Rhodes grass hay: middle of the ranges. Its minerals are not known.
    RHODES_HAY: Means = Means::little(1.8, 10.0, None); "class.rhodes_hay", "% of dry matter, Mcal/kg", CommonPractice, "8 to 12 % protein, 1.7 to 1.9 Mcal/kg", FromMemory;
    /// WSC + starch of grass hay (about 17,600 samples).
    NSC_GRASS: f64 = 12.0; "nsc_grass", "% of dry matter", ForageLaboratory, "mean, grass hay", Published;
    /// WSC + starch of meadow hay: middle of 8 to 20.
    NSC_MEADOW: f64 = 14.0; "nsc_meadow", "% of dry matter", CommonPractice, "WSC 8 to 20 %", FromMemory;
    /// WSC + starch of timothy and orchardgrass hay: middle of 8 to 20.
    NSC_TIMOTHY: f64 = 14.0; "nsc_timothy", "% of dry matter", CommonPractice, "NSC 8 to 20 %", FromMemory;
    /// WSC + starch of ryegrass hay: middle of 12 to 30 % WSC, and 1 % starch.
    NSC_RYEGRASS: f64 = 22.0; "nsc_ryegrass", "% of dry matter", CommonPractice, "WSC 12 to 30 %", FromMemory;
    /// WSC + starch of grass and legume mixed hay.
    NSC_MIXED: f64 = 12.8; "nsc_mixed", "% of dry matter", Nasem2021, "feed library, grass-legume mixed hay", Published;
    /// WSC + starch of lucerne hay.
    NSC_LUCERNE: f64 = 11.0; "nsc_lucerne", "% of dry matter", ForageLaboratory, "mean, lucerne hay", Published;
    /// WSC + starch of oat hay.
    NSC_OAT: f64 = 22.1; "nsc_oat", "% of dry matter", ForageLaboratory, "mean, oat hay", Published;
    /// WSC + starch of wheat hay.
    NSC_WHEAT: f64 = 21.8; "nsc_wheat", "% of dry matter", Nasem2021, "feed library, wheat hay, headed", Published;
    /// WSC + starch of barley hay.
    NSC_BARLEY: f64 = 19.2; "nsc_barley", "% of dry matter", ForageLaboratory, "mean, barley hay", Published;
    /// WSC + starch of teff hay: WSC 8 % (3 to 15) and 1 % starch.
    NSC_TEFF: f64 = 9.0; "nsc_teff", "% of dry matter", TeffSurvey2015, "mean WSC; starch added", WorkedOut;
    /// WSC + starch of bermudagrass hay.
    NSC_BERMUDA: f64 = 13.2; "nsc_bermuda", "% of dry matter", ForageLaboratory, "mean, bermudagrass hay", Published;
    /// WSC + starch of Rhodes grass hay: middle of 6 to 12.
    NSC_RHODES: f64 = 9.0; "nsc_rhodes", "% of dry matter", CommonPractice, "NSC 6 to 12 %", FromMemory;
    /// WSC + starch of haylage: middle of 2 to 12 % WSC, and 1 % starch.
    NSC_HAYLAGE: f64 = 8.0; "nsc_haylage", "% of dry matter", CommonPractice, "WSC 2 to 12 %, starch under 1 %", FromMemory;
    /// WSC + starch of wheat straw.
    NSC_WHEAT_STRAW: f64 = 6.0; "nsc_wheat_straw", "% of dry matter", Nasem2021, "feed library, wheat straw", Published;
    /// WSC + starch of barley straw: middle of 3 to 7.
    NSC_BARLEY_STRAW: f64 = 5.0; "nsc_barley_straw", "% of dry matter", CommonPractice, "NSC 3 to 7 %", FromMemory;
    /// WSC + starch of oat straw: up to 10 and more.
    NSC_OAT_STRAW: f64 = 8.0; "nsc_oat_straw", "% of dry matter", CommonPractice, "NSC to 10 % and over", FromMemory;
    /// Spread of WSC + starch between lots of grass hay.
    NSC_SPREAD_GRASS: f64 = 4.5; "nsc_spread_grass", "% of dry matter", CommonPractice, "order of magnitude", FromMemory;
    /// Spread of WSC + starch between lots of legume hay.
    NSC_SPREAD_LEGUME: f64 = 2.2; "nsc_spread_legume", "% of dry matter", CommonPractice, "order of magnitude", FromMemory;
    /// Spread of WSC + starch between lots of cereal hay.
    NSC_SPREAD_CEREAL: f64 = 6.0; "nsc_spread_cereal", "% of dry matter", CommonPractice, "order of magnitude", FromMemory;
    /// Spread of WSC + starch between lots of bermudagrass and Rhodes hay.
    NSC_SPREAD_BERMUDA: f64 = 3.5; "nsc_spread_bermuda", "% of dry matter", CommonPractice, "order of magnitude", FromMemory;
    /// Spread of WSC + starch between lots of teff hay.
    NSC_SPREAD_TEFF: f64 = 3.0; "nsc_spread_teff", "% of dry matter", CommonPractice, "order of magnitude", FromMemory;
    /// Spread of WSC + starch between lots of haylage.
    NSC_SPREAD_HAYLAGE: f64 = 3.0; "nsc_spread_haylage", "% of dry matter", CommonPractice, "order of magnitude", FromMemory;
    /// Spread of WSC + starch between lots of straw.
    NSC_SPREAD_STRAW: f64 = 3.0; "nsc_spread_straw", "% of dry matter", CommonPractice, "order of magnitude", FromMemory;
    /// Spread between lots of grass hay, and of what has no spread of its own.
    SPREAD_GRASS: Spreads = Spreads { known: [(Analyte::CrudeProtein, 3.0), (Analyte::Adf, 4.0), (Analyte::Ndf, 6.0), (Analyte::Starch, 1.2), (Analyte::Calcium, 0.15), (Analyte::Phosphorus, 0.07), (Analyte::Magnesium, 0.06), (Analyte::Potassium, 0.6), (Analyte::Copper, 3.0), (Analyte::Zinc, 10.0)], }; "spread_grass", "% of dry matter, mg/kg", CommonPractice, "order of magnitude", FromMemory;
    /// Spread between lots of lucerne hay, read second-hand.
    SPREAD_LEGUME: Spreads = Spreads { known: [(Analyte::CrudeProtein, 2.6), (Analyte::Adf, 4.3), (Analyte::Ndf, 5.7), (Analyte::Starch, 1.2), (Analyte::Calcium, 0.33), (Analyte::Phosphorus, 0.05), (Analyte::Magnesium, 0.05), (Analyte::Potassium, 0.6), (Analyte::Copper, 2.0), (Analyte::Zinc, 4.0)], }; "spread_legume", "% of dry matter, mg/kg", Feedipedia, "lucerne hay, data sheet; starch from memory", FromMemory;
    /// Dry matter of hay and straw that nobody measured.
    HAY_DRY: DryFraction = DryFraction::constant_percent(88.0); "hay_dry", "", Tussock, "defaults", Ours;
    /// Its low end.
    HAY_DRY_LOW: DryFraction = DryFraction::constant_percent(85.0); "hay_dry_low", "", Tussock, "defaults", Ours;
    /// Its high end.
    HAY_DRY_HIGH: DryFraction = DryFraction::constant_percent(90.0); "hay_dry_high", "", Tussock, "defaults", Ours;
    /// By how much the energy of dry matter may fall in soaking (metabolisable energy fell 5 to 15 %, gross energy did not).
    SOAKED_ENERGY_LESS: f64 = 0.1; "soaked_energy_less", "of Mcal/kg", Bochnia2021, "abstract; Argo 2015 found none", WorkedOut;
    /// Hay with less dry matter than this moulds in store without a preservative (moisture 16 to 25 %).
    DAMP_HAY: DryFraction = DryFraction::constant_percent(84.0); "damp_hay", "", CommonPractice, "moisture 16 to 25 % moulds", FromMemory;
    /// Starch of cool-season grass hay that was not tested.
    GRASS_STARCH: f64 = 1.0; "grass_starch", "% of dry matter", Tussock, "defaults", Ours;
    /// ESC as a part of WSC in grass hay: 7.6 of 11.6.
    ESC_OF_WSC_GRASS: f64 = 0.66; "esc_of_wsc_grass", "", ForageLaboratory, "ten-year means", WorkedOut;
    /// ESC as a part of WSC in lucerne hay: 7.1 of 9.3.
    ESC_OF_WSC_LUCERNE: f64 = 0.76; "esc_of_wsc_lucerne", "", ForageLaboratory, "ten-year means", WorkedOut;
    /// How far that part may be off.
    ESC_OF_WSC_SPREAD: f64 = 0.15; "esc_of_wsc_spread", "", Tussock, "fallback", Ours;
    /// Spread of a tested sugar about the truth, sampling and laboratory together.
    TEST_SPREAD: f64 = 1.0; "test_spread", "percentage points", CommonPractice, "guard band", FromMemory;
    /// Spread of sugar between the bales of one lot.
    BETWEEN_BALES: f64 = 2.5; "between_bales", "percentage points", Tussock, "sampling", Ours;
    /// Bales to core for a sample that stands for its lot, one core each.
    FULL_CORES: u32 = 20; "full_cores", "bales", CommonPractice, "advice of several universities", CommonPractice;
    /// The chance of being under the limit from which a forage is within it.
    CHANCE_WITHIN: f64 = 0.9; "chance_within", "", Tussock, "rule 6", Ours;
    /// The chance of being under the limit down to which a forage is over it.
    CHANCE_OVER: f64 = 0.1; "chance_over", "", Tussock, "rule 6", Ours;
    /// Whether haylage that passes is enough for an animal at risk: it raised insulin more than hay of the same sugar.
    HAYLAGE_ENOUGH: bool = false; "haylage_enough", "", Carslake2018, "ponies, haylage above dry hay above soaked hay; read second-hand", FromMemory;
    /// The point under which nine tenths of the standard normal distribution lie.
    SURE_Z: f64 = 1.281_551_565_544_600_4; "sure_z", "", ExactByDefinition, "quantile of the normal distribution", WorkedOut;
    /// The forage equation: constant, per % ADF, per % protein, per % ADF squared.
    FORAGE_EQUATION: [f64; 4] = [4.22, -0.11, 0.0332, 0.00112]; "forage_equation", "Mcal/kg", Fonnesbeck1981, "forage equation", FromMemory;
    /// The fibre for which the forage equation holds; it turns upward above 49.
    FORAGE_EQUATION_ADF: Bounds = Bounds::new("adf_percent", 25.0, 45.0); "forage_equation_adf", "% of dry matter", Fonnesbeck1981, "range", FromMemory;
    /// Pagan's equation: constant, then per % protein, ADF, NDF - ADF, fat, the rest, ash.
    PAGAN: [f64; 7] = [2118.0, 12.18, -9.37, -3.83, 47.18, 20.35, -26.3]; "pagan", "kcal/kg", Pagan1998, "equation", FromMemory;
    /// The fat for which Pagan's equation holds.
    PAGAN_FAT: Bounds = Bounds::new("fat_percent", 0.0, 5.0); "pagan_fat", "% of dry matter", Pagan1998, "conclusions", Published;
    /// How far an energy from analysis may be off; 183 to 217 kcal/kg was found.
    ENERGY_HALF_BAND: f64 = 0.2; "energy_half_band", "Mcal/kg", MartinezMarin2022, "abstract", WorkedOut;
    /// By how much a part may exceed its whole before it is more than the scatter of two assays.
    SUBSET_SLACK: f64 = 0.5; "subset_slack", "percentage points", Tussock, "report check", Ours;
    /// How near a stated NSC must be to a sum to be that sum.
    NSC_AGREES: f64 = 0.3; "nsc_agrees", "percentage points", Tussock, "report check", Ours;
    /// The sum of protein, neutral fibre, fat, ash, sugar and starch above which something is wrong.
    PARTS_SUM_HIGH: f64 = 105.0; "parts_sum_high", "% of dry matter", Tussock, "report check", Ours;
    /// The same sum below which something is wrong; pectin and acids are not in it.
    PARTS_SUM_LOW: f64 = 75.0; "parts_sum_low", "% of dry matter", Tussock, "report check", Ours;
    /// How many cores are believed.
    CORES_FIELD: Bounds = Bounds::new("cores", 1.0, 500.0); "cores_field", "bales", Tussock, "report check", Ours;
    /// Digestible energy that is believed on a report.
    REPORTED_ENERGY: Bounds = Bounds::new("energy_mcal_per_kg", 0.2, 4.5); "reported_energy", "Mcal/kg", Tussock, "report check", Ours;
    /// The part of a forage that is believed to be wasted or washed out.
    LOSS_FIELD: Bounds = Bounds::new("loss_fraction", 0.0, 0.9); "loss_field", "of dry matter", Tussock, "cost", Ours;
    /// How much hay is believed in one batch or bale.
    BATCH_FIELD: Bounds = Bounds::new("batch_kg", 1.0, 1_000_000.0); "batch_field", "kg as fed", Tussock, "worth of a test", Ours;
    /// How much hay is believed to be fed a day.
    A_DAY_FIELD: Bounds = Bounds::new("a_day_kg", 0.1, 5000.0); "a_day_field", "kg as fed", Tussock, "worth of a test", Ours;
    /// How much work a day soaking is believed to be.
    SOAK_WORK_FIELD: Bounds = Bounds::new("soak_minutes_a_day", 0.0, 600.0); "soak_work_field", "min", Tussock, "worth of a test", Ours;
    /// What is believed as a price.
    PRICE_FIELD: Bounds = Bounds::new("price_minor", 0.0, 1e12); "price_field", "minor units", Tussock, "worth of a test", Ours;
    /// The most that is believed of each analyte in a forage, in its unit.
    MOST_BELIEVABLE: [(Analyte, f64); 24] = [(Analyte::CrudeProtein, 40.0), (Analyte::Lysine, 3.0), (Analyte::Adf, 70.0), (Analyte::Ndf, 90.0), (Analyte::Fat, 15.0), (Analyte::Ash, 30.0), (Analyte::Wsc, 50.0), (Analyte::Esc, 45.0), (Analyte::Starch, 60.0), (Analyte::Nsc, 70.0), (Analyte::Calcium, 4.0), (Analyte::Phosphorus, 2.0), (Analyte::Magnesium, 1.5), (Analyte::Potassium, 7.0), (Analyte::Sodium, 3.0), (Analyte::Chloride, 4.0), (Analyte::Sulphur, 1.5), (Analyte::Iron, 5000.0), (Analyte::Copper, 200.0), (Analyte::Zinc, 500.0), (Analyte::Manganese, 1500.0), (Analyte::Selenium, 20.0), (Analyte::Iodine, 50.0), (Analyte::Cobalt, 20.0)]; "most_believable", "% or mg/kg", Tussock, "report check", Ours;
    /// The most moisture at baling of small square, round and large square bales.
    MOISTURE_MOST: [f64; 3] = [20.0, 18.0, 16.0]; "moisture_most", "% as fed", OsuHayMoisture, "small square, round, large square", Published;
    /// The most moisture of hay stored loose.
    MOISTURE_BULK: f64 = 15.0; "moisture_bulk", "% as fed", CommonPractice, "storage in bulk", FromMemory;
    /// Hay for horses is ideally up to here; above, it may mould without a preservative.
    MOISTURE_IDEAL: f64 = 15.0; "moisture_ideal", "% as fed", OsuHayMoisture, "horse hay, ideal 10 to 15", Published;
    /// Above this hay heats and may burn.
    MOISTURE_FIRE: f64 = 25.0; "moisture_fire", "% as fed", OsuHayMoisture, "heat and fire", Published;
    /// The moisture of hay that is believed.
    MOISTURE_FIELD: Bounds = Bounds::new("moisture_percent", 3.0, 80.0); "moisture_field", "% as fed", Tussock, "form", Ours;
    /// Heat in the stack: measure daily, pull apart, ring the fire service, emergency.
    HEAT: [f64; 4] = [48.8, 60.0, 65.0, 71.0]; "heat", "degC", HuhnkeHayHeating, "table: 120, 140, 150, 160 degF, rounded down; the stricter where authors differ", Published;
    /// The temperature in a stack that is believed.
    HEAT_FIELD: Bounds = Bounds::new("stack_celsius", -30.0, 150.0); "heat_field", "degC", Tussock, "form", Ours;
    /// For so long new hay is watched for heat.
    HEAT_WATCH_DAYS: i64 = 21; "heat_watch_days", "days", HuhnkeHayHeating, "two weeks and more; three to be sure", Published;
    /// How far one bale of a lot lies from another that nobody weighed, as a part of its weight.
    BALE_SPREAD: f64 = 0.1; "bale_spread", "of its weight", CommonPractice, "order of magnitude", FromMemory;
    /// What a bale weighs.
    BALE_FIELD: Bounds = Bounds::new("bale_weight_kg", 2.0, 1000.0); "bale_field", "kg", Tussock, "form", Ours;
    /// What a slice of a bale weighs.
    SLICE_FIELD: Bounds = Bounds::new("slice_weight_kg", 0.1, 60.0); "slice_field", "kg", Tussock, "form", Ours;
    /// How many bales to weigh for a mean with its error.
    WEIGH_BALES: usize = 3; "weigh_bales", "bales", Tussock, "defaults", Ours;
    /// How many slices to weigh once a lot.
    WEIGH_SLICES: usize = 10; "weigh_slices", "slices", Tussock, "filling and hanging", Ours;
    /// Waste from nets, least and most.
    NET_WASTE: [f64; 2] = [0.02, 0.05]; "net_waste", "of dry matter", CommonPractice, "nets: 2 to 5 %", FromMemory;
    /// Days from ordering hay to its delivery when nobody said them.
    LEAD_DAYS: i64 = 7; "lead_days", "days", Tussock, "defaults", Ours;
    /// Over how many whole days what was weighed out says what goes in a day.
    RECENT_DAYS: i64 = 7; "recent_days", "days", Tussock, "stock", Ours;
    /// The longest time that is reckoned for a lot.
    LONGEST_DAYS: f64 = 3650.0; "longest_days", "days", Tussock, "stock", Ours;
    /// Dry matter of unmolassed beet pulp before soaking.
    PULP_DRY: DryFraction = DryFraction::constant_percent(92.0); "pulp_dry", "", Nasem2021, "feed library, beet pulp, dry, no molasses", Published;
    /// WSC + starch of unmolassed beet pulp.
    PULP_SUGAR_STARCH: f64 = 6.3; "pulp_sugar_starch", "% of dry matter", Nasem2021, "feed library, beet pulp, dry, no molasses", Published;
    /// Starch of unmolassed beet pulp.
    PULP_STARCH: f64 = 0.6; "pulp_starch", "% of dry matter", Nasem2021, "feed library, beet pulp, dry, no molasses", Published;
    /// Beet pulp in one feed of an animal that is not used to it, dry weight, at most.
    PULP_A_FEED: f64 = 2.0; "pulp_a_feed", "g/kg body/meal", Tussock, "a night without hay", Ours;
    /// Beet pulp of a night is given in at least so many feeds.
    PULP_FEEDS_LEAST: u32 = 2; "pulp_feeds_least", "feeds", Tussock, "several feeds", Ours;
    /// More feeds than this nobody gives in a night.
    PULP_FEEDS_MOST: u32 = 4; "pulp_feeds_most", "feeds", Tussock, "several feeds", Ours;
}
