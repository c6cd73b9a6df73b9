//! Constants of the plants: how each grass stands for sugar, what each plant does, and the limits of oxalate, nitrate and
//! endophyte. Where a page was read of which no publication is named, the mark is "from memory".

use super::{Harm, SugarPotential};
use crate::sources::{Mark, Published, Work, list_constants};
use crate::units::{Bounds, ShareOfDm};

/// Writes a constant and its place in the list in one line: name, type, value; key, unit, work, place, mark.
macro_rules! published {
    ($($(#[$doc:meta])* $name:ident: $kind:ty = $value:expr; $key:literal, $unit:literal, $work:ident, $place:literal, $mark:ident;)*) => {
        $(
            $(#[$doc])*
            pub const $name: Published<$kind> = Published {
                id: concat!("graze.plants.", $key),
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
    // ---- sugar ----
    /// Perennial ryegrass, for sugar.
    SUGAR_PERENNIAL_RYEGRASS: SugarPotential = SugarPotential::Higher; "sugar.perennial_ryegrass", "", Jensen2014, "highest with timothy of 15 grasses; abstract", Published;
    /// Italian ryegrass, for sugar.
    SUGAR_ITALIAN_RYEGRASS: SugarPotential = SugarPotential::Higher; "sugar.italian_ryegrass", "", CommonPractice, "ryegrasses as a group", FromMemory;
    /// Festulolium, for sugar.
    SUGAR_FESTULOLIUM: SugarPotential = SugarPotential::Higher; "sugar.festulolium", "", CommonPractice, "a cross with ryegrass", FromMemory;
    /// Timothy, for sugar.
    SUGAR_TIMOTHY: SugarPotential = SugarPotential::Higher; "sugar.timothy", "", Jensen2014, "highest with perennial ryegrass of 15 grasses; abstract", Published;
    /// Oats, for sugar.
    SUGAR_OATS: SugarPotential = SugarPotential::Higher; "sugar.oats", "", CommonPractice, "green cereals", FromMemory;
    /// Barley, for sugar.
    SUGAR_BARLEY: SugarPotential = SugarPotential::Higher; "sugar.barley", "", CommonPractice, "green cereals", FromMemory;
    /// Wheat, for sugar.
    SUGAR_WHEAT: SugarPotential = SugarPotential::Higher; "sugar.wheat", "", CommonPractice, "green cereals", FromMemory;
    /// Annual (Wimmera) ryegrass, for sugar.
    SUGAR_ANNUAL_RYEGRASS: SugarPotential = SugarPotential::Higher; "sugar.annual_ryegrass", "", CommonPractice, "ryegrasses as a group", FromMemory;
    /// Tall fescue, for sugar.
    SUGAR_TALL_FESCUE: SugarPotential = SugarPotential::Middle; "sugar.tall_fescue", "", CommonPractice, "between ryegrass and cocksfoot", FromMemory;
    /// Smooth meadow-grass (bluegrass), for sugar.
    SUGAR_SMOOTH_MEADOWGRASS: SugarPotential = SugarPotential::Middle; "sugar.smooth_meadowgrass", "", CommonPractice, "between ryegrass and cocksfoot", FromMemory;
    /// Smooth brome, for sugar.
    SUGAR_SMOOTH_BROME: SugarPotential = SugarPotential::Middle; "sugar.smooth_brome", "", CommonPractice, "between ryegrass and cocksfoot", FromMemory;
    /// Phalaris, for sugar.
    SUGAR_PHALARIS: SugarPotential = SugarPotential::Middle; "sugar.phalaris", "", CommonPractice, "not looked up; taken as middle", FromMemory;
    /// Cocksfoot (orchardgrass), for sugar.
    SUGAR_COCKSFOOT: SugarPotential = SugarPotential::Lower; "sugar.cocksfoot", "", OsuOrchardgrass, "consistently below ryegrass", Published;
    /// Meadow brome, for sugar.
    SUGAR_MEADOW_BROME: SugarPotential = SugarPotential::Lower; "sugar.meadow_brome", "", CommonPractice, "lists of grasses low in sugar", FromMemory;
    /// Bent, for sugar.
    SUGAR_BENT: SugarPotential = SugarPotential::Lower; "sugar.bent", "", CommonPractice, "poor-soil grasses", FromMemory;
    /// Red fescue, for sugar.
    SUGAR_RED_FESCUE: SugarPotential = SugarPotential::Lower; "sugar.red_fescue", "", CommonPractice, "poor-soil grasses", FromMemory;
    /// Warm-season grasses, for sugar: uniformly lower in total sugars than cool-season grasses, without fructan. Starch can be
    /// moderate, and a trial of crabgrass found no difference in sugar and starch together.
    SUGAR_WARM_GRASS: SugarPotential = SugarPotential::Lower; "sugar.warm_grass", "", CommonPractice, "warm-season grasses as a group", FromMemory;

    // ---- what they do ----
    /// Setaria.
    SETARIA_BONES_LOSE_CALCIUM: Harm = Harm::BonesLoseCalcium; "harm.setaria.bones_lose_calcium", "", Blaney1981, "grasses high in oxalate", FromMemory;
    /// Kikuyu.
    KIKUYU_BONES_LOSE_CALCIUM: Harm = Harm::BonesLoseCalcium; "harm.kikuyu.bones_lose_calcium", "", Blaney1981, "grasses high in oxalate", FromMemory;
    /// Buffel grass.
    BUFFEL_BONES_LOSE_CALCIUM: Harm = Harm::BonesLoseCalcium; "harm.buffel.bones_lose_calcium", "", Blaney1981, "grasses high in oxalate", FromMemory;
    /// Para grass.
    PARA_GRASS_BONES_LOSE_CALCIUM: Harm = Harm::BonesLoseCalcium; "harm.para_grass.bones_lose_calcium", "", CommonPractice, "grasses high in oxalate", FromMemory;
    /// Signal grass.
    SIGNAL_GRASS_BONES_LOSE_CALCIUM: Harm = Harm::BonesLoseCalcium; "harm.signal_grass.bones_lose_calcium", "", CommonPractice, "grasses high in oxalate", FromMemory;
    /// Koronivia grass.
    KORONIVIA_GRASS_BONES_LOSE_CALCIUM: Harm = Harm::BonesLoseCalcium; "harm.koronivia_grass.bones_lose_calcium", "", CommonPractice, "grasses high in oxalate", FromMemory;
    /// Pangola grass.
    PANGOLA_BONES_LOSE_CALCIUM: Harm = Harm::BonesLoseCalcium; "harm.pangola.bones_lose_calcium", "", Blaney1981, "grasses high in oxalate", FromMemory;
    /// Guinea grass (green panic).
    GUINEA_GRASS_BONES_LOSE_CALCIUM: Harm = Harm::BonesLoseCalcium; "harm.guinea_grass.bones_lose_calcium", "", Blaney1981, "grasses high in oxalate", FromMemory;
    /// Perennial ryegrass.
    PERENNIAL_RYEGRASS_RYEGRASS_STAGGERS: Harm = Harm::RyegrassStaggers; "harm.perennial_ryegrass.ryegrass_staggers", "", OsuEndophyte, "endophyte, lolitrem B; the horse's level is not determined", Published;
    /// Tall fescue.
    TALL_FESCUE_MARES_FAIL_AT_FOALING: Harm = Harm::MaresFailAtFoaling; "harm.tall_fescue.mares_fail_at_foaling", "", OsuEndophyte, "endophyte, ergovaline; broodmares 0", Published;
    /// Perennial ryegrass.
    PERENNIAL_RYEGRASS_MARES_FAIL_AT_FOALING: Harm = Harm::MaresFailAtFoaling; "harm.perennial_ryegrass.mares_fail_at_foaling", "", OsuEndophyte, "endophyte, ergovaline; broodmares 0", Published;
    /// White clover.
    WHITE_CLOVER_SLOBBERS: Harm = Harm::Slobbers; "harm.white_clover.slobbers", "", CommonPractice, "slaframine of a mould on clover", FromMemory;
    /// Red clover.
    RED_CLOVER_SLOBBERS: Harm = Harm::Slobbers; "harm.red_clover.slobbers", "", CommonPractice, "slaframine of a mould on clover", FromMemory;
    /// White clover.
    WHITE_CLOVER_CYANIDE: Harm = Harm::Cyanide; "harm.white_clover.cyanide", "", CommonPractice, "lush white clover", FromMemory;
    /// Alsike clover.
    ALSIKE_CLOVER_SUNBURN_AND_LIVER: Harm = Harm::SunburnAndLiver; "harm.alsike_clover.sunburn_and_liver", "", CommonPractice, "photosensitisation, liver", FromMemory;
    /// Lucerne (alfalfa).
    LUCERNE_BLISTER_BEETLE: Harm = Harm::BlisterBeetle; "harm.lucerne.blister_beetle", "", CommonPractice, "in lucerne hay", FromMemory;
    /// Sorghum and sudan grass.
    SORGHUM_BLADDER_AND_GAIT: Harm = Harm::BladderAndGait; "harm.sorghum.bladder_and_gait", "", CommonPractice, "cystitis and ataxia; a page that was read says nitrate and prussic acid", FromMemory;
    /// Johnson grass.
    JOHNSON_GRASS_BLADDER_AND_GAIT: Harm = Harm::BladderAndGait; "harm.johnson_grass.bladder_and_gait", "", CommonPractice, "as sorghum", FromMemory;
    /// Ragwort.
    RAGWORT_LIVER_OVER_TIME: Harm = Harm::LiverOverTime; "harm.ragwort.liver_over_time", "", CommonPractice, "pyrrolizidine alkaloids", FromMemory;
    /// Buttercup.
    BUTTERCUP_MOUTH_BLISTERS: Harm = Harm::MouthBlisters; "harm.buttercup.mouth_blisters", "", CommonPractice, "fresh plant; dried it is harmless", FromMemory;
    /// Wild radish.
    WILD_RADISH_GUT_IRRITATED: Harm = Harm::GutIrritated; "harm.wild_radish.gut_irritated", "", CommonPractice, "mustard oils, seeds", FromMemory;
    /// Onion grass.
    ONION_GRASS_FIBRE_BALLS: Harm = Harm::FibreBalls; "harm.onion_grass.fibre_balls", "", CommonPractice, "fibre balls and colic", FromMemory;
    /// Cat's ear (flatweed).
    FLATWEED_STRINGHALT: Harm = Harm::Stringhalt; "harm.flatweed.stringhalt", "", CommonPractice, "pastures of cat's ear after drought", FromMemory;
    /// Horsetail.
    HORSETAIL_THIAMINE_LOST: Harm = Harm::ThiamineLost; "harm.horsetail.thiamine_lost", "", CommonPractice, "in hay too", FromMemory;
    /// Bracken.
    BRACKEN_THIAMINE_LOST: Harm = Harm::ThiamineLost; "harm.bracken.thiamine_lost", "", CommonPractice, "in hay too", FromMemory;
    /// Sycamore.
    SYCAMORE_MUSCLE_DEATH: Harm = Harm::MuscleDeath; "harm.sycamore.muscle_death", "", CommonPractice, "atypical myopathy", FromMemory;
    /// Box elder.
    BOX_ELDER_MUSCLE_DEATH: Harm = Harm::MuscleDeath; "harm.box_elder.muscle_death", "", CommonPractice, "seasonal pasture myopathy", FromMemory;
    /// Red maple.
    RED_MAPLE_BLOOD_DESTROYED: Harm = Harm::BloodDestroyed; "harm.red_maple.blood_destroyed", "", CommonPractice, "wilted leaves", FromMemory;
    /// Cherry and cherry laurel.
    CHERRY_CYANIDE: Harm = Harm::Cyanide; "harm.cherry.cyanide", "", CommonPractice, "wilted leaves", FromMemory;
    /// Oak.
    OAK_GUT_AND_KIDNEYS: Harm = Harm::GutAndKidneys; "harm.oak.gut_and_kidneys", "", CommonPractice, "acorns, young leaves", FromMemory;
    /// Yew.
    YEW_HEART_STOPS: Harm = Harm::HeartStops; "harm.yew.heart_stops", "", CommonPractice, "any part, green or dry", FromMemory;
    /// Phalaris.
    PHALARIS_PHALARIS_STAGGERS: Harm = Harm::PhalarisStaggers; "harm.phalaris.phalaris_staggers", "", CommonPractice, "staggers, sudden death", FromMemory;
    /// Annual (Wimmera) ryegrass.
    ANNUAL_RYEGRASS_ANNUAL_RYEGRASS_TOXICITY: Harm = Harm::AnnualRyegrassToxicity; "harm.annual_ryegrass.annual_ryegrass_toxicity", "", CommonPractice, "galls of the seed head", FromMemory;
    /// Paspalum (dallis grass).
    PASPALUM_ERGOT_STAGGERS: Harm = Harm::ErgotStaggers; "harm.paspalum.ergot_staggers", "", CommonPractice, "ergot of the seed head", FromMemory;

    // ---- clover ----
    /// The part of a sward that may be clover: little fructan, much starch and nitrogen.
    CLOVER_MOST: f64 = 0.3; "clover_most", "of the sward", CommonPractice, "under 30 % of the sward", FromMemory;

    // ---- oxalate ----
    /// Calcium to total oxalate under which bones lose calcium.
    CALCIUM_TO_OXALATE: f64 = 0.5; "calcium_to_oxalate", "", Blaney1981, "abstract", Published;
    /// Total oxalate over which horses were in negative calcium balance.
    OXALATE_MOST: ShareOfDm = ShareOfDm::percent(0.5); "oxalate_most", "", Blaney1981, "abstract, hays over 0.5 %", Published;
    /// The mass of a mole of calcium.
    CALCIUM_MOLE: f64 = 40.078; "calcium_mole", "g/mol", ExactByDefinition, "atomic weight", Published;
    /// The mass of a mole of oxalate.
    OXALATE_MOLE: f64 = 88.02; "oxalate_mole", "g/mol", ExactByDefinition, "C2O4", Published;
    /// Calcium in ground limestone.
    CALCIUM_IN_LIME: f64 = 0.38; "calcium_in_lime", "", CommonPractice, "about 38 %", FromMemory;
    /// Total oxalate of setaria, percent of dry matter.
    OXALATE_SETARIA: [f64; 2] = [3.0, 7.0]; "oxalate_setaria", "% of dry matter", CommonPractice, "typical", FromMemory;
    /// Total oxalate of buffel grass.
    OXALATE_BUFFEL: [f64; 2] = [1.0, 2.0]; "oxalate_buffel", "% of dry matter", CommonPractice, "typical", FromMemory;
    /// Total oxalate of kikuyu.
    OXALATE_KIKUYU: [f64; 2] = [1.0, 1.5]; "oxalate_kikuyu", "% of dry matter", CommonPractice, "typical", FromMemory;
    /// Total oxalate of guinea grass, about.
    OXALATE_GUINEA: [f64; 2] = [1.0, 1.0]; "oxalate_guinea", "% of dry matter", CommonPractice, "typical, about 1", FromMemory;
    /// Total oxalate of pangola grass, about.
    OXALATE_PANGOLA: [f64; 2] = [1.0, 1.0]; "oxalate_pangola", "% of dry matter", CommonPractice, "typical, about 1", FromMemory;
    /// Total oxalate of hays that is believed, percent of dry matter.
    OXALATE: Bounds = Bounds::new("oxalate_percent", 0.0, 12.0); "oxalate", "% of dry matter", Tussock, "range", Ours;
    /// Calcium of hays and grass that is believed, percent of dry matter.
    CALCIUM: Bounds = Bounds::new("calcium_percent", 0.0, 4.0); "calcium", "% of dry matter", Tussock, "range", Ours;

    // ---- nitrate and endophyte ----
    /// Nitrate that was called safe.
    NITRATE_SAFE: ShareOfDm = ShareOfDm::percent(0.5); "nitrate_safe", "", TeffNitrateTrial, "after an hour's soak", Published;
    /// Nitrate over which hay is not safe.
    NITRATE_UNSAFE: ShareOfDm = ShareOfDm::percent(2.0); "nitrate_unsafe", "", TeffNitrateTrial, "over 2 %", Published;
    /// Nitrate that is believed, percent of dry matter.
    NITRATE: Bounds = Bounds::new("nitrate_percent", 0.0, 10.0); "nitrate", "% of dry matter", Tussock, "range", Ours;
    /// Ergovaline that grown horses bear: where doubt begins, and where it is over; parts a thousand million.
    ERGOVALINE: [f64; 2] = [300.0, 500.0]; "ergovaline", "ppb", OsuEndophyte, "horses 300 to 500", Published;
    /// Ergovaline that broodmares bear.
    ERGOVALINE_MARES: f64 = 0.0; "ergovaline_mares", "ppb", OsuEndophyte, "broodmares 0", Published;
    /// Ergovaline that is believed.
    ERGOVALINE_PPB: Bounds = Bounds::new("ergovaline_ppb", 0.0, 10_000.0); "ergovaline_ppb", "ppb", Tussock, "range", Ours;
    /// How long before foaling mares come off fescue: from, to; days.
    MARES_OFF: [u16; 2] = [60, 90]; "mares_off", "d", CommonPractice, "60 to 90 days before foaling", FromMemory;
}
