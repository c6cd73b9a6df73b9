//! Constants of `limits`: every number of need and allowance, with where it comes from.
//!
//! NRC 2007 was not read as a book: its rates are from memory and reproduce rows that were read; the mark says so.
//! One line here is one constant, and the same line puts it into the list of sources.

use super::by_work::ByWork;
use super::upper::UpperContent;
use crate::sources::{Mark, Published, Work, list_constants};
use crate::units::{PartOfBody, ShareOfDm};

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
    // ---- energy, NRC 2007 ch. 1 ----
    /// Maintenance of a good doer that moves little.
    ENERGY_LOW: f64 = 0.0303; "energy_low", "Mcal DE/kg body/d", Nrc2007, "ch. 1; reproduces 15.2 Mcal at 500 kg", FromMemory;
    /// Average maintenance.
    ENERGY_AVERAGE: f64 = 0.0333; "energy_average", "Mcal DE/kg body/d", Nrc2007, "ch. 1", Published;
    /// Elevated maintenance. The often quoted 0.0364 is a rounding; this one reproduces the very heavy row.
    ENERGY_ELEVATED: f64 = 0.0363; "energy_elevated", "Mcal DE/kg body/d", Nrc2007, "ch. 1; reproduces 18.2 Mcal at 500 kg", FromMemory;
    /// Light work, times average maintenance.
    ENERGY_LIGHT: f64 = 1.2; "energy_light", "x average maintenance", Nrc2007, "ch. 1", FromMemory;
    /// Moderate work, times average maintenance.
    ENERGY_MODERATE: f64 = 1.4; "energy_moderate", "x average maintenance", Nrc2007, "ch. 1", FromMemory;
    /// Heavy work, times average maintenance.
    ENERGY_HEAVY: f64 = 1.6; "energy_heavy", "x average maintenance", Nrc2007, "ch. 1; reproduces 26.6 Mcal at 500 kg", FromMemory;
    /// Very heavy work, times elevated (not average) maintenance.
    ENERGY_VERY_HEAVY: f64 = 1.9; "energy_very_heavy", "x elevated maintenance", Nrc2007, "ch. 1", FromMemory;
    /// Energy not to go under without a vet, as a part of average maintenance.
    ENERGY_FLOOR_WITHOUT_VET: f64 = 0.65; "energy_floor_without_vet", "of average maintenance", Tussock, "after Argo 2015 and Bruynsteen 2015", Ours;
    /// Energy never to go under, as a part of average maintenance.
    ENERGY_FLOOR: f64 = 0.60; "energy_floor", "of average maintenance", Tussock, "after Argo 2015 and Bruynsteen 2015", Ours;

    // ---- protein, NRC 2007 ch. 4 ----
    /// Crude protein at the low level of maintenance.
    PROTEIN_LOW: f64 = 1.08; "protein_low", "g/kg body/d", Nrc2007, "ch. 4", FromMemory;
    /// Crude protein at average maintenance.
    PROTEIN_AVERAGE: f64 = 1.26; "protein_average", "g/kg body/d", Nrc2007, "ch. 4; reproduces 630 g at 500 kg", FromMemory;
    /// Crude protein at the elevated level of maintenance.
    PROTEIN_ELEVATED: f64 = 1.44; "protein_elevated", "g/kg body/d", Nrc2007, "ch. 4", FromMemory;
    /// Crude protein for the muscle that work builds, above average maintenance. Of these 0.354 was read.
    PROTEIN_FOR_WORK: ByWork = ByWork::new(0.0, 0.089, 0.177, 0.266, 0.354); "protein_for_work", "g/kg body/d", Nrc2007, "ch. 4", FromMemory;
    /// Protein in sweat.
    PROTEIN_IN_SWEAT: f64 = 7.8; "protein_in_sweat", "g/kg sweat", Nrc2007, "ch. 4", FromMemory;
    /// Efficiency with which digested protein replaces what was lost.
    PROTEIN_EFFICIENCY: f64 = 0.50; "protein_efficiency", "", Nrc2007, "ch. 4", FromMemory;
    /// Digestibility of protein.
    PROTEIN_DIGESTIBILITY: f64 = 0.79; "protein_digestibility", "", Nrc2007, "ch. 4", FromMemory;
    /// Sweat lost in a day, as a part of body weight.
    SWEAT: ByWork = ByWork::new(0.0, 0.0025, 0.005, 0.01, 0.02); "sweat", "of body weight/d", Nrc2007, "ch. 4 and 5", FromMemory;
    /// Lysine as a part of crude protein.
    LYSINE: f64 = 0.043; "lysine", "of crude protein", Nrc2007, "ch. 4", FromMemory;

    // ---- minerals by weight, NRC 2007 ch. 5 ----
    /// Calcium.
    CALCIUM: ByWork = ByWork::new(0.040, 0.060, 0.070, 0.080, 0.080); "calcium", "g/kg body/d", Nrc2007, "ch. 5; reproduces 20 g at 500 kg", FromMemory;
    /// Phosphorus.
    PHOSPHORUS: ByWork = ByWork::new(0.028, 0.036, 0.042, 0.058, 0.058); "phosphorus", "g/kg body/d", Nrc2007, "ch. 5; reproduces 14 g at 500 kg", FromMemory;
    /// Magnesium.
    MAGNESIUM: ByWork = ByWork::new(0.015, 0.019, 0.023, 0.030, 0.030); "magnesium", "g/kg body/d", Nrc2007, "ch. 5; reproduces 7.5 g at 500 kg", FromMemory;
    /// Potassium without sweat.
    POTASSIUM: f64 = 0.050; "potassium", "g/kg body/d", Nrc2007, "ch. 5; reproduces 25 g at 500 kg", FromMemory;
    /// Potassium in sweat.
    POTASSIUM_IN_SWEAT: f64 = 1.4; "potassium_in_sweat", "g/kg sweat", Nrc2007, "ch. 5", FromMemory;
    /// The part of potassium eaten that replaces what was sweated.
    POTASSIUM_ABSORBED: f64 = 0.5; "potassium_absorbed", "", Nrc2007, "ch. 5", FromMemory;
    /// Sodium without sweat.
    SODIUM: f64 = 0.020; "sodium", "g/kg body/d", Nrc2007, "ch. 5; reproduces 10 g at 500 kg", FromMemory;
    /// Sodium in sweat.
    SODIUM_IN_SWEAT: f64 = 3.1; "sodium_in_sweat", "g/kg sweat", Nrc2007, "ch. 5", FromMemory;
    /// Chloride without sweat.
    CHLORIDE: f64 = 0.080; "chloride", "g/kg body/d", Nrc2007, "ch. 5; reproduces 40 g at 500 kg", FromMemory;
    /// Chloride in sweat.
    CHLORIDE_IN_SWEAT: f64 = 5.3; "chloride_in_sweat", "g/kg sweat", Nrc2007, "ch. 5", FromMemory;

    // ---- minerals by dry matter, NRC 2007 ch. 5 ----
    /// The dry matter on which these needs are reckoned: the class's, never the restricted ration.
    NEED_DRY_MATTER: ByWork = ByWork::new(2.0, 2.0, 2.25, 2.5, 2.5); "need_dry_matter", "% of target weight", Nrc2007, "ch. 5", FromMemory;
    /// Sulphur.
    SULPHUR: ShareOfDm = ShareOfDm::percent(0.15); "sulphur", "", Nrc2007, "ch. 5; reproduces 15 g at 500 kg", FromMemory;
    /// Copper.
    COPPER: ShareOfDm = ShareOfDm::mg_per_kg(10.0); "copper", "", Nrc2007, "ch. 5; reproduces 100 mg at 500 kg", FromMemory;
    /// Zinc.
    ZINC: ShareOfDm = ShareOfDm::mg_per_kg(40.0); "zinc", "", Nrc2007, "ch. 5; reproduces 400 mg at 500 kg", FromMemory;
    /// Manganese.
    MANGANESE: ShareOfDm = ShareOfDm::mg_per_kg(40.0); "manganese", "", Nrc2007, "ch. 5; reproduces 400 mg at 500 kg", FromMemory;
    /// Iron.
    IRON: ShareOfDm = ShareOfDm::mg_per_kg(40.0); "iron", "", Nrc2007, "ch. 5; reproduces 400 mg at 500 kg", FromMemory;
    /// Iodine.
    IODINE: ShareOfDm = ShareOfDm::mg_per_kg(0.35); "iodine", "", Nrc2007, "ch. 5; reproduces 3.5 mg at 500 kg", FromMemory;
    /// Selenium.
    SELENIUM: ShareOfDm = ShareOfDm::mg_per_kg(0.10); "selenium", "", Nrc2007, "ch. 5; reproduces 1.0 mg at 500 kg", FromMemory;
    /// Cobalt.
    COBALT: ShareOfDm = ShareOfDm::mg_per_kg(0.05); "cobalt", "", Nrc2007, "ch. 5; reproduces 0.5 mg at 500 kg", FromMemory;

    // ---- vitamins, NRC 2007 ch. 6 ----
    /// Vitamin A.
    VITAMIN_A: ByWork = ByWork::new(30.0, 45.0, 45.0, 45.0, 45.0); "vitamin_a", "IU/kg body/d", Nrc2007, "ch. 6", FromMemory;
    /// Vitamin D.
    VITAMIN_D: ByWork = ByWork::new(6.6, 6.6, 6.6, 6.6, 6.6); "vitamin_d", "IU/kg body/d", Nrc2007, "ch. 6", FromMemory;
    /// Vitamin E. Of these the value at maintenance was read.
    VITAMIN_E: ByWork = ByWork::new(1.0, 1.6, 1.8, 2.0, 2.0); "vitamin_e", "IU/kg body/d", Nrc2007, "ch. 6", FromMemory;
    /// Thiamin.
    THIAMIN: ByWork = ByWork::new(0.06, 0.06, 0.113, 0.125, 0.125); "thiamin", "mg/kg body/d", Nrc2007, "ch. 6", FromMemory;
    /// Riboflavin.
    RIBOFLAVIN: ByWork = ByWork::new(0.04, 0.04, 0.045, 0.05, 0.05); "riboflavin", "mg/kg body/d", Nrc2007, "ch. 6", FromMemory;

    // ---- upper limits, of the whole diet's dry matter ----
    /// Most calcium.
    MOST_CALCIUM: UpperContent = UpperContent::Share(ShareOfDm::percent(2.0)); "most_calcium", "", Nrc2005, "maximum tolerable level, horses", FromMemory;
    /// Most phosphorus.
    MOST_PHOSPHORUS: UpperContent = UpperContent::Share(ShareOfDm::percent(1.0)); "most_phosphorus", "", Nrc2005, "maximum tolerable level, horses", FromMemory;
    /// Most magnesium.
    MOST_MAGNESIUM: UpperContent = UpperContent::Share(ShareOfDm::percent(0.8)); "most_magnesium", "", Nrc2005, "maximum tolerable level, horses", FromMemory;
    /// Most sulphur.
    MOST_SULPHUR: UpperContent = UpperContent::Share(ShareOfDm::percent(0.5)); "most_sulphur", "", Nrc2005, "maximum tolerable level, horses", FromMemory;
    /// Most salt (sodium chloride).
    MOST_SALT: ShareOfDm = ShareOfDm::percent(6.0); "most_salt", "", Nrc2005, "maximum tolerable level, horses", FromMemory;
    /// Most cobalt.
    MOST_COBALT: UpperContent = UpperContent::Share(ShareOfDm::mg_per_kg(25.0)); "most_cobalt", "", Nrc2005, "maximum tolerable level, horses", FromMemory;
    /// Most copper.
    MOST_COPPER: UpperContent = UpperContent::Share(ShareOfDm::mg_per_kg(250.0)); "most_copper", "", Nrc2005, "maximum tolerable level, horses", FromMemory;
    /// Most iodine.
    MOST_IODINE: UpperContent = UpperContent::Share(ShareOfDm::mg_per_kg(5.0)); "most_iodine", "", Nrc2005, "maximum tolerable level, horses", FromMemory;
    /// Most iron.
    MOST_IRON: UpperContent = UpperContent::Share(ShareOfDm::mg_per_kg(500.0)); "most_iron", "", Nrc2005, "maximum tolerable level, horses", FromMemory;
    /// Most manganese.
    MOST_MANGANESE: UpperContent = UpperContent::Share(ShareOfDm::mg_per_kg(400.0)); "most_manganese", "", Nrc2005, "maximum tolerable level, horses", FromMemory;
    /// Most selenium.
    MOST_SELENIUM: UpperContent = UpperContent::Share(ShareOfDm::mg_per_kg(5.0)); "most_selenium", "", Nrc2005, "maximum tolerable level, horses", FromMemory;
    /// Most zinc.
    MOST_ZINC: UpperContent = UpperContent::Share(ShareOfDm::mg_per_kg(500.0)); "most_zinc", "", Nrc2005, "maximum tolerable level, horses", FromMemory;
    /// Selenium from which to warn: the older bound, for the margin is narrow.
    WARN_SELENIUM: UpperContent = UpperContent::Share(ShareOfDm::mg_per_kg(2.0)); "warn_selenium", "", Tussock, "the older bound of the NRC, from memory, used as a warning", Ours;
    /// Selenium a plan may add, beside what the feeds hold by themselves.
    MOST_ADDED_SELENIUM: ShareOfDm = ShareOfDm::mg_per_kg(0.3); "most_added_selenium", "added, of the whole diet", CommonPractice, "feed rule of the United States", FromMemory;
    /// Most vitamin A.
    MOST_VITAMIN_A: UpperContent = UpperContent::IuPerKg(16_000.0); "most_vitamin_a", "IU/kg dry matter", Nrc1987, "presumed upper safe level", FromMemory;
    /// Most vitamin D.
    MOST_VITAMIN_D: UpperContent = UpperContent::IuPerKg(2_200.0); "most_vitamin_d", "IU/kg dry matter", Nrc1987, "presumed upper safe level", FromMemory;
    /// Most vitamin E.
    MOST_VITAMIN_E: UpperContent = UpperContent::IuPerKg(1_000.0); "most_vitamin_e", "IU/kg dry matter", Nrc1987, "presumed upper safe level", Published;
    /// Most vitamin E by weight of the animal.
    MOST_VITAMIN_E_PER_KG: f64 = 20.0; "most_vitamin_e_per_kg", "IU/kg body/d", Nrc1987, "10,000 IU a day at 500 kg", Published;
    /// Calcium never under this many times phosphorus.
    CALCIUM_TO_PHOSPHORUS_LEAST: f64 = 1.0; "calcium_to_phosphorus_least", "Ca:P", CommonPractice, "between 1:1 and 2:1", CommonPractice;
    /// Calcium usually at most this many times phosphorus.
    CALCIUM_TO_PHOSPHORUS_USUAL: f64 = 2.0; "calcium_to_phosphorus_usual", "Ca:P", CommonPractice, "between 1:1 and 2:1", CommonPractice;
    /// Calcium to phosphorus that a grown animal bears when its phosphorus is met.
    CALCIUM_TO_PHOSPHORUS_MOST: f64 = 6.0; "calcium_to_phosphorus_most", "Ca:P", Nrc2007, "ch. 5", FromMemory;
    /// Calcium to phosphorus of a growing animal: less is narrow, more is too much.
    CALCIUM_TO_PHOSPHORUS_YOUNG: [f64; 2] = [1.5, 3.0]; "calcium_to_phosphorus_young", "Ca:P", CommonPractice, "young stock 1.5:1 to 3:1, on a secondary page", CommonPractice;
    /// Zinc at least this many times copper.
    ZINC_TO_COPPER_LEAST: f64 = 3.0; "zinc_to_copper_least", "Zn:Cu", CommonPractice, "about the 4:1 of the needs", FromMemory;
    /// Zinc at most this many times copper.
    ZINC_TO_COPPER_MOST: f64 = 5.0; "zinc_to_copper_most", "Zn:Cu", CommonPractice, "about the 4:1 of the needs", FromMemory;
    /// Iron above this many times copper is worth a remark, no more.
    IRON_TO_COPPER_REMARK: f64 = 10.0; "iron_to_copper_remark", "Fe:Cu", CommonPractice, "as usually quoted", FromMemory;

    // ---- dry matter it may have ----
    /// Dry matter never to go under, tested with the estimates that leave the animal least.
    FLOOR: PartOfBody = PartOfBody::percent(1.0); "floor", "", Wooldridge2017, "grass hay, never below", Published;
    /// Dry matter not to go under without a vet's word.
    FLOOR_WITHOUT_VET: PartOfBody = PartOfBody::percent(1.25); "floor_without_vet", "", Eceim2019, "starting forage for weight loss", FromMemory;
    /// The starting level: no restriction.
    START: PartOfBody = PartOfBody::percent(1.5); "start", "", Harris2017, "not under this for general use", Published;
    /// The starting level of donkeys and mules.
    START_DONKEY: PartOfBody = PartOfBody::percent(1.3); "start_donkey", "", DonkeySanctuary, "1.3 to 1.7 %", FromMemory;
    /// What an animal that needs weight has at least.
    NEEDS_WEIGHT: PartOfBody = PartOfBody::percent(2.0); "needs_weight", "", Tussock, "forage at least at the class's intake", Ours;
    /// The steps below the starting level, one a review.
    STEPS: [PartOfBody; 3] = [PartOfBody::percent(1.25), PartOfBody::percent(1.15), PartOfBody::percent(1.0)]; "steps", "", Eceim2019, "1.25, resistant: 1.15, then 1.0 % under a vet", FromMemory;
    /// How much a holding animal is raised at a time.
    HOLDING_STEP: PartOfBody = PartOfBody::percent(0.1); "holding_step", "", Tussock, "phases", Ours;
    /// A holding animal's weight holds when it stays within this.
    HOLDING_BAND: f64 = 0.02; "holding_band", "of target weight", Tussock, "phases", Ours;
    /// Days at the starting level, really fed, before a restriction.
    DAYS_AT_START: i64 = 28; "days_at_start", "days", Wooldridge2017, "no loss in a month: cut", Published;
    /// Condition from which a restriction may be thought of.
    CONDITION_FAT: f64 = 7.0; "condition_fat", "condition 1 to 9", Argo2012, "animals of condition 7 or more", Published;
    /// Days between the two scores that show it.
    CONDITION_APART: i64 = 14; "condition_apart", "days", Tussock, "the rule of restriction", Ours;
    /// Condition under which nothing is restricted without a vet.
    CONDITION_THIN: f64 = 5.0; "condition_thin", "condition 1 to 9", Tussock, "vet's list", Ours;
    /// Tape weights that stand in for a scale.
    TAPE_READINGS: u32 = 2; "tape_readings", "readings", Tussock, "the rule of restriction", Ours;
    /// Age in years from which an animal counts as grown.
    GROWN: i32 = 3; "grown", "years", Martinson2014, "adults of 3 years or older", Published;
    /// Age in years from which an animal counts as very old.
    VERY_OLD: i32 = 20; "very_old", "years", Tussock, "vet's list", Ours;
    /// Height under which only a scale weight is believed.
    SMALL_PONY_CM: f64 = 112.0; "small_pony", "cm", Martinson2014, "the equations were made from 112 cm up", Published;
    /// Days after a corticosteroid in which it alters insulin.
    CORTICOSTEROID_DAYS: i64 = 30; "corticosteroid", "days", Coleman2018, "steroids in 30 days raised the odds", Published;
    /// Days after surgery or a long journey in which nothing is restricted.
    SURGERY_DAYS: i64 = 28; "surgery", "days", Tussock, "vet's list", Ours;
    /// Days for which a vet's word holds when it says nothing else.
    VET_WORD_DAYS: i64 = 56; "vet_word", "days", Tussock, "8 weeks", Ours;
    /// The most a donkey may lose in a month.
    DONKEY_LOSS_KG: f64 = 5.0; "donkey_loss_kg", "kg/month", DonkeySanctuary, "care of the overweight donkey", FromMemory;
    /// The most a donkey may lose in a month, of its weight.
    DONKEY_LOSS_PART: f64 = 0.03; "donkey_loss_part", "of weight/month", Tussock, "beside the 5 kg a month", Ours;
    /// Days in the month of a donkey's rate.
    DONKEY_LOSS_DAYS: f64 = 30.0; "donkey_loss_days", "days", Tussock, "a month", Ours;

    // ---- sugar and starch ----
    /// Hay and whole diet for an animal at risk.
    SUGAR_AT_RISK: ShareOfDm = ShareOfDm::percent(10.0); "sugar_at_risk", "WSC + starch", Frank2010, "NSC under 10 to 12 %", Published;
    /// Above this the two conventions disagree, and for an animal of which nothing is known the limit.
    SUGAR_UPPER: ShareOfDm = ShareOfDm::percent(12.0); "sugar_upper", "WSC + starch", Frank2010, "NSC under 10 to 12 %", Published;
    /// The other convention: ethanol-soluble carbohydrate and starch.
    ESC_AND_STARCH: ShareOfDm = ShareOfDm::percent(10.0); "esc_and_starch", "ESC + starch", CommonPractice, "practitioners' and laboratories' convention", CommonPractice;
    /// Sugar and starch in one bucket meal for an animal at risk.
    MEAL_SUGAR_AND_STARCH: f64 = 0.1; "meal_sugar_and_starch", "g/kg body/meal", Macon2023, "abstract; confirmed by Kerley 2025", Published;
    /// Starch in one meal for all others.
    MEAL_STARCH: f64 = 1.0; "meal_starch", "g/kg body/meal", Luthersson2009, "odds 2.6 times", Published;
    /// Starch in a day for all others.
    DAY_STARCH: f64 = 2.0; "day_starch", "g/kg body/d", Luthersson2009, "odds twice", Published;

    // ---- straw and lucerne ----
    /// Straw for horses and ponies.
    STRAW: f64 = 0.30; "straw", "of forage", CommonPractice, "as usually advised", CommonPractice;
    /// Straw for horses and ponies with good teeth.
    STRAW_GOOD_TEETH: f64 = 0.50; "straw_good_teeth", "of forage", Dosi2020, "half the roughage, 25 ponies, no colic", Published;
    /// Straw for donkeys with good teeth, at least.
    STRAW_DONKEY_LEAST: f64 = 0.50; "straw_donkey_least", "of forage", DonkeySanctuary, "hay 25 to 50 % of forage in winter", FromMemory;
    /// Straw for donkeys with good teeth, at most.
    STRAW_DONKEY_MOST: f64 = 0.75; "straw_donkey_most", "of forage", DonkeySanctuary, "hay 25 to 50 % of forage in winter", FromMemory;
    /// Shortest changeover to straw.
    STRAW_CHANGEOVER_LEAST: i64 = 14; "straw_changeover_least", "days", Harris2017, "change forage over 2, better 3 weeks", Published;
    /// Better changeover to straw.
    STRAW_CHANGEOVER_BETTER: i64 = 21; "straw_changeover_better", "days", Harris2017, "change forage over 2, better 3 weeks", Published;
    /// Lucerne up to here is usual.
    LUCERNE_USUAL: f64 = 0.20; "lucerne_usual", "of forage dry matter", CommonPractice, "20 to 30 %, as usually advised", CommonPractice;
    /// Lucerne at most.
    LUCERNE_MOST: f64 = 0.30; "lucerne_most", "of forage dry matter", CommonPractice, "20 to 30 %, as usually advised", CommonPractice;

    // ---- water and salt ----
    /// Least water at rest in cool weather.
    WATER_LEAST: f64 = 5.0; "water_least", "L/100 kg body/d", MerckManual, "water", Published;
    /// On dry hay alone almost double.
    WATER_DRY_HAY: f64 = 2.0; "water_dry_hay", "x least", MerckManual, "almost double", Published;
    /// Idle at 20 degrees, at least and at most.
    WATER_IDLE_20: [f64; 2] = [21.0, 29.0]; "water_idle_20", "L/d at 500 kg", MerckManual, "water", Published;
    /// Idle at 30 degrees, at least and at most.
    WATER_IDLE_30: [f64; 2] = [42.0, 54.0]; "water_idle_30", "L/d at 500 kg", MerckManual, "water", Published;
    /// Moderate work at 20 degrees, at least and at most.
    WATER_WORK_20: [f64; 2] = [26.0, 46.0]; "water_work_20", "L/d at 500 kg", MerckManual, "water", Published;
    /// Moderate work at 30 degrees, at least and at most.
    WATER_WORK_30: [f64; 2] = [72.0, 92.0]; "water_work_30", "L/d at 500 kg", MerckManual, "water", Published;
    /// In milk, at least and at most.
    WATER_IN_MILK: [f64; 2] = [40.0, 63.0]; "water_in_milk", "L/d at 500 kg", MerckManual, "water", Published;
    /// The weight of the animal these bands are for.
    WATER_BANDS_FOR_KG: f64 = 500.0; "water_bands_for", "kg", MerckManual, "water", Published;
    /// Drinking cut by water near freezing, at least and at most.
    WATER_COLD_CUT: [f64; 2] = [0.38, 0.41]; "water_cold_cut", "of usual drinking", MerckManual, "water near freezing", Published;
    /// Sodium in salt.
    SODIUM_IN_SALT: f64 = 0.3934; "sodium_in_salt", "of sodium chloride", ExactByDefinition, "atomic masses of sodium and chlorine", WorkedOut;

    // ---- intervals of the phases ----
    /// New: look-over.
    LOOK_OVER_NEW: i64 = 1; "look_over_new", "days", Tussock, "phases", Ours;
    /// New: days at the starting level, then decide.
    REVIEW_NEW: i64 = 14; "review_new", "days", Tussock, "phases", Ours;
    /// Losing: look-over, with the weekly girths.
    LOOK_OVER_LOSING: i64 = 7; "look_over_losing", "days", Tussock, "weekly check", Ours;
    /// Losing: review.
    REVIEW_LOSING: i64 = 28; "review_losing", "days", Wooldridge2017, "monthly", Published;
    /// Plateau: look-over.
    LOOK_OVER_PLATEAU: i64 = 7; "look_over_plateau", "days", Tussock, "weekly check", Ours;
    /// Plateau: review, after looking at what was really eaten.
    REVIEW_PLATEAU: i64 = 14; "review_plateau", "days", Tussock, "the rule of phases", Ours;
    /// Holding: look-over.
    LOOK_OVER_HOLDING: i64 = 7; "look_over_holding", "days", Tussock, "weekly check", Ours;
    /// Holding: review and raise.
    REVIEW_HOLDING: i64 = 21; "review_holding", "days", Tussock, "phases: every 3 weeks", Ours;
    /// Needs weight: look-over.
    LOOK_OVER_NEEDS_WEIGHT: i64 = 7; "look_over_needs_weight", "days", Tussock, "weekly check", Ours;
    /// Needs weight: review.
    REVIEW_NEEDS_WEIGHT: i64 = 14; "review_needs_weight", "days", Tussock, "the rule of phases", Ours;
    /// Episode: look-over.
    LOOK_OVER_EPISODE: i64 = 1; "look_over_episode", "days", Tussock, "the rule of phases", Ours;
    /// Recovering: look-over.
    LOOK_OVER_RECOVERING: i64 = 1; "look_over_recovering", "days", Tussock, "the rule of phases", Ours;
    /// Recovering: review.
    REVIEW_RECOVERING: i64 = 14; "review_recovering", "days", Tussock, "the rule of phases", Ours;
    /// In other hands: look-over.
    LOOK_OVER_OTHER_HANDS: i64 = 1; "look_over_other_hands", "days", Tussock, "the rule of phases", Ours;

    // ---- what is believed of an input ----
    /// The lightest animal believed.
    LEAST_WEIGHT_KG: f64 = 20.0; "least_weight", "kg", Tussock, "a misplaced decimal is likelier below", Ours;
    /// The heaviest animal believed.
    MOST_WEIGHT_KG: f64 = 1_500.0; "most_weight", "kg", Tussock, "a misplaced decimal is likelier above", Ours;
    /// The lowest condition score.
    LEAST_CONDITION: f64 = 1.0; "least_condition", "condition 1 to 9", Henneke1983, "scale", Published;
    /// The highest condition score.
    MOST_CONDITION: f64 = 9.0; "most_condition", "condition 1 to 9", Henneke1983, "scale", Published;
    /// The most dry matter that may be asked for: the highest intake met at grass and a little.
    MOST_ASKED_PERCENT: f64 = 5.0; "most_asked", "% of body weight", Tussock, "above the 4.6 % of ponies on free feed", Ours;
}
