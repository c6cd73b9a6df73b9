//! Constants of growth, gestation and lactation: NRC 2007, of which no page was read.
//!
//! The equations are from memory and agree with rows of the requirement tables that are from memory too; the rows are in
//! the reference tables, marked so.

use crate::sources::{Mark, Published, Work, list_constants};
use crate::units::ShareOfDm;

/// Writes a constant and its place in the list in one line: name, type, value; key, unit, work, place, mark.
macro_rules! published {
    ($($(#[$doc:meta])* $name:ident: $kind:ty = $value:expr; $key:literal, $unit:literal, $work:ident, $place:literal, $mark:ident;)*) => {
        $(
            $(#[$doc])*
            pub const $name: Published<$kind> = Published {
                id: concat!("limits.", $key),
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
    /// Weight of a growing animal in percent of its grown weight: at birth, to come, rate a month.
    GROWTH_SHARE: [f64; 3] = [9.7, 90.3, 0.0772]; "growth_share", "% of mature weight; per month", Nrc2007, "ch. 1, growth; reproduces 216 kg at 6 months of 500", FromMemory;
    /// Gain a day: scale, rate a month, days.
    GROWTH_GAIN: [f64; 3] = [6.97121, 0.0772, 3040.0]; "growth_gain", "of mature weight a day", Nrc2007, "ch. 1, growth; reproduces 0.72 kg at 6 months of 500", FromMemory;
    /// Energy of upkeep in growth: scale and power of age in months.
    GROWTH_ENERGY_UPKEEP: [f64; 2] = [56.5, -0.145]; "growth_energy_upkeep", "kcal DE/kg body/d", Nrc2007, "ch. 1, growth", FromMemory;
    /// Energy of gain: constant, by age in months, by its square.
    GROWTH_ENERGY_GAIN: [f64; 3] = [1.99, 1.21, -0.021]; "growth_energy_gain", "Mcal DE/kg gain", Nrc2007, "ch. 1, growth; reproduces 15.5 Mcal at 6 months of 500", FromMemory;
    /// Protein in gain.
    GROWTH_PROTEIN: f64 = 200.0; "growth_protein", "g/kg gain", Nrc2007, "ch. 4, growth", FromMemory;
    /// The part of digested protein that growth uses, each to an age in months.
    PROTEIN_EFFICIENCY_YOUNG: [(u32, f64); 5] = [(6, 0.50), (8, 0.45), (10, 0.40), (11, 0.35), (24, 0.30)]; "protein_efficiency_young", "to months", Nrc2007, "ch. 4, growth; reproduces 676 and 846 g", FromMemory;
    /// Calcium of growth, by weight and by gain.
    GROWTH_CALCIUM: [f64; 2] = [0.072, 32.0]; "growth_calcium", "g/kg body, g/kg gain", Nrc2007, "ch. 5, growth", FromMemory;
    /// Phosphorus of growth.
    GROWTH_PHOSPHORUS: [f64; 2] = [0.040, 17.8]; "growth_phosphorus", "g/kg body, g/kg gain", Nrc2007, "ch. 5, growth", FromMemory;
    /// Magnesium of growth.
    GROWTH_MAGNESIUM: [f64; 2] = [0.015, 1.25]; "growth_magnesium", "g/kg body, g/kg gain", Nrc2007, "ch. 5, growth", FromMemory;
    /// Potassium of growth.
    GROWTH_POTASSIUM: [f64; 2] = [0.050, 3.0]; "growth_potassium", "g/kg body, g/kg gain", Nrc2007, "ch. 5, growth", FromMemory;
    /// Sodium of growth.
    GROWTH_SODIUM: [f64; 2] = [0.020, 1.0]; "growth_sodium", "g/kg body, g/kg gain", Nrc2007, "ch. 5, growth", FromMemory;
    /// Chloride of growth, each to an age in months. The age of the change is not sure.
    GROWTH_CHLORIDE: [(u32, f64); 2] = [(11, 0.093), (24, 0.0825)]; "growth_chloride", "g/kg body; to months", Nrc2007, "ch. 5, growth; the age of the change is not sure", FromMemory;
    /// Vitamin D of growth, each to an age in months.
    GROWTH_VITAMIN_D: [(u32, f64); 4] = [(6, 22.2), (12, 17.4), (18, 15.9), (24, 13.7)]; "growth_vitamin_d", "IU/kg body; to months", Nrc2007, "ch. 6, growth", FromMemory;
    /// Vitamin A of growth.
    VITAMIN_A_YOUNG: f64 = 45.0; "vitamin_a_young", "IU/kg body/d", Nrc2007, "ch. 6, growth", FromMemory;
    /// Vitamin A of mares in foal or in milk.
    VITAMIN_A_MARE: f64 = 60.0; "vitamin_a_mare", "IU/kg body/d", Nrc2007, "ch. 6, gestation and lactation", FromMemory;
    /// Vitamin E of growth, gestation and lactation.
    VITAMIN_E_STAGE: f64 = 2.0; "vitamin_e_stage", "IU/kg body/d", Nrc2007, "ch. 6", FromMemory;
    /// Thiamin of growth and lactation.
    THIAMIN_STAGE: f64 = 0.075; "thiamin_stage", "mg/kg body/d", Nrc2007, "ch. 6", FromMemory;
    /// Riboflavin of growth and lactation.
    RIBOFLAVIN_STAGE: f64 = 0.05; "riboflavin_stage", "mg/kg body/d", Nrc2007, "ch. 6", FromMemory;
    /// The dry matter on which growth and lactation are reckoned.
    STAGE_DRY: f64 = 2.5; "stage_dry", "% of body weight", Nrc2007, "ch. 5, growth and lactation", FromMemory;
    /// Iron of growth and lactation.
    IRON_STAGE: ShareOfDm = ShareOfDm::mg_per_kg(50.0); "iron_stage", "", Nrc2007, "ch. 5, growth and lactation", FromMemory;
    /// The weight for which energy and protein of gestation stand.
    PREGNANT_FOR_KG: f64 = 500.0; "pregnant_for", "kg, not in foal", Nrc2007, "requirement table, mare of 500 kg", FromMemory;
    /// Up to this month the first value holds.
    PREGNANT_FROM: u32 = 4; "pregnant_from", "month", Nrc2007, "requirement table, mare of 500 kg", FromMemory;
    /// The months from which the middle and the late values of gestation hold.
    PREGNANT_THIRDS: [u32; 2] = [7, 9]; "pregnant_thirds", "month", Nrc2007, "requirement table, mare of 500 kg", FromMemory;
    /// Energy of gestation, to the fourth month and in the fifth to eleventh.
    PREGNANT_ENERGY: [f64; 8] = [16.7, 17.1, 17.4, 17.9, 18.5, 19.2, 20.2, 21.4]; "pregnant_energy", "Mcal DE/d at 500 kg", Nrc2007, "requirement table, mare of 500 kg", FromMemory;
    /// Protein of gestation, to the fourth month and in the fifth to eleventh.
    PREGNANT_PROTEIN: [f64; 8] = [630.0, 685.0, 704.0, 729.0, 759.0, 797.0, 841.0, 893.0]; "pregnant_protein", "g/d at 500 kg", Nrc2007, "requirement table, mare of 500 kg", FromMemory;
    /// Calcium of gestation: early, months 7 and 8, from 9.
    PREGNANT_CALCIUM: [f64; 3] = [0.040, 0.056, 0.072]; "pregnant_calcium", "g/kg body/d", Nrc2007, "ch. 5; reproduces 20, 28, 36 g at 500 kg", FromMemory;
    /// Phosphorus of gestation.
    PREGNANT_PHOSPHORUS: [f64; 3] = [0.028, 0.040, 0.0525]; "pregnant_phosphorus", "g/kg body/d", Nrc2007, "ch. 5; reproduces 14, 20, 26.3 g at 500 kg", FromMemory;
    /// Magnesium of gestation.
    PREGNANT_MAGNESIUM: [f64; 3] = [0.015, 0.0152, 0.0153]; "pregnant_magnesium", "g/kg body/d", Nrc2007, "ch. 5", FromMemory;
    /// Potassium of gestation.
    PREGNANT_POTASSIUM: [f64; 3] = [0.050, 0.050, 0.0517]; "pregnant_potassium", "g/kg body/d", Nrc2007, "ch. 5", FromMemory;
    /// Sodium of gestation.
    PREGNANT_SODIUM: [f64; 3] = [0.020, 0.020, 0.022]; "pregnant_sodium", "g/kg body/d", Nrc2007, "ch. 5", FromMemory;
    /// Chloride of gestation.
    PREGNANT_CHLORIDE: [f64; 3] = [0.080, 0.080, 0.082]; "pregnant_chloride", "g/kg body/d", Nrc2007, "ch. 5", FromMemory;
    /// Copper of gestation.
    PREGNANT_COPPER: [f64; 3] = [10.0, 10.0, 12.5]; "pregnant_copper", "mg/kg dry matter", Nrc2007, "ch. 5; reproduces 125 mg late at 500 kg", FromMemory;
    /// Iodine of gestation.
    PREGNANT_IODINE: [f64; 3] = [0.35, 0.40, 0.40]; "pregnant_iodine", "mg/kg dry matter", Nrc2007, "ch. 5", FromMemory;
    /// Iron of gestation.
    PREGNANT_IRON: [f64; 3] = [40.0, 40.0, 50.0]; "pregnant_iron", "mg/kg dry matter", Nrc2007, "ch. 5", FromMemory;
    /// Days in foal, of mares and of donkeys: the months are elevenths of them.
    GESTATION: [i64; 2] = [340, 365]; "gestation", "days, mare and jenny", CommonPractice, "about eleven months; a jenny about a year", CommonPractice;
    /// Days after which a mare or a jenny that was covered is not taken to be in foal still: she foaled, or the day is wrong.
    GESTATION_LATEST: [i64; 2] = [370, 425]; "gestation_latest", "days, mare and jenny", CommonPractice, "a month over; a jenny to fourteen months", CommonPractice;
    /// Milk a day: scale, power of days, fall a day.
    MILK: [f64; 3] = [0.027_428_7, 0.0953, 0.0043]; "milk", "kg/kg body/d", Nrc2007, "ch. 1, lactation; reproduces 16.3 kg in month 1 at 500 kg", FromMemory;
    /// Days of a month of milk.
    MILK_MONTH_DAYS: u32 = 30; "milk_month_days", "days", Nrc2007, "requirement table, months of lactation", FromMemory;
    /// Energy of milk, and the part of digestible energy that becomes milk.
    MILK_ENERGY: [f64; 2] = [0.50, 0.60]; "milk_energy", "Mcal/kg milk; efficiency", Nrc2007, "ch. 1, lactation", FromMemory;
    /// Protein of lactation, by weight and by milk.
    MILK_PROTEIN: [f64; 2] = [1.44, 50.0]; "milk_protein", "g/kg body, g/kg milk", Nrc2007, "ch. 4, lactation", FromMemory;
    /// Lysine of lactation.
    MILK_LYSINE: [f64; 2] = [0.062, 3.3]; "milk_lysine", "g/kg body, g/kg milk", Nrc2007, "ch. 4, lactation", FromMemory;
    /// Calcium of lactation.
    MILK_CALCIUM: [f64; 2] = [0.040, 2.4]; "milk_calcium", "g/kg body, g/kg milk", Nrc2007, "ch. 5, lactation", FromMemory;
    /// Phosphorus of lactation, before absorption.
    MILK_PHOSPHORUS: [f64; 2] = [0.010, 0.75]; "milk_phosphorus", "g/kg body, g/kg milk", Nrc2007, "ch. 5, lactation", FromMemory;
    /// The part of phosphorus that is absorbed in lactation.
    MILK_PHOSPHORUS_ABSORBED: f64 = 0.45; "milk_phosphorus_absorbed", "", Nrc2007, "ch. 5, lactation", FromMemory;
    /// Magnesium of lactation.
    MILK_MAGNESIUM: [f64; 2] = [0.015, 0.225]; "milk_magnesium", "g/kg body, g/kg milk", Nrc2007, "ch. 5, lactation; early milk", FromMemory;
    /// Potassium of lactation.
    MILK_POTASSIUM: [f64; 2] = [0.050, 1.4]; "milk_potassium", "g/kg body, g/kg milk", Nrc2007, "ch. 5, lactation", FromMemory;
    /// Sodium of lactation.
    MILK_SODIUM: [f64; 2] = [0.020, 0.17]; "milk_sodium", "g/kg body, g/kg milk", Nrc2007, "ch. 5, lactation", FromMemory;
    /// Chloride of lactation.
    MILK_CHLORIDE: f64 = 0.091; "milk_chloride", "g/kg body/d", Nrc2007, "ch. 5, lactation", FromMemory;
    /// The ages in months for which growth is published here.
    GROWTH_AGE: [f64; 2] = [4.0, 24.0]; "growth_age", "months", Nrc2007, "requirement tables begin at 4 months and end at 24", FromMemory;
    /// The months in foal.
    PREGNANT_MONTHS: [f64; 2] = [1.0, 11.0]; "pregnant_months", "months", Nrc2007, "requirement tables", FromMemory;
    /// The months in milk for which lactation is published here.
    MILK_MONTHS: [f64; 2] = [1.0, 6.0]; "milk_months", "months", Nrc2007, "requirement tables", FromMemory;
}
