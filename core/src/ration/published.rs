//! The typical balancer, what hay brings of vitamins, and what is believed of a food.
//!
//! One line here is one constant, and the same line puts it into the list of sources. The foods of the catalogue have
//! their own list, [`super::catalogue::published`].

use crate::limits::Nutrient;
use crate::sources::{Mark, Published, Work, list_constants};
use crate::units::Bounds;

/// What is believed of a nutrient in a kilogram of food as fed, in the nutrient's own unit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Believed {
    /// Of which.
    pub nutrient: Nutrient,
    /// Less than this is likelier a swapped unit than a content; nothing at all is believed.
    pub least: f64,
    /// Most in a feed.
    pub feed: f64,
    /// Most in a balancer.
    pub balancer: f64,
    /// Most in a mix of minerals or vitamins.
    pub mix: f64,
}

const fn believed(nutrient: Nutrient, least: f64, most: [f64; 3]) -> Believed {
    let [feed, balancer, mix] = most;
    Believed {
        nutrient,
        least,
        feed,
        balancer,
        mix,
    }
}

/// Writes a constant and its place in the list in one line: name, type, value; key, unit, work, place, mark.
macro_rules! published {
    ($($(#[$doc:meta])* $name:ident: $kind:ty = $value:expr; $key:literal, $unit:literal, $work:ident, $place:literal, $mark:ident;)*) => {
        $(
            $(#[$doc])*
            pub const $name: Published<$kind> = Published {
                id: concat!("ration.", $key),
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
    /// Dry matter.
    BALANCER_DRY: f64 = 90.0; "balancer_dry", "% as fed", BalancerLabels, "pelleted feed", FromMemory;
    /// How much is usually fed.
    BALANCER_RATE: f64 = 1.0; "balancer_rate", "g/kg body weight", BalancerLabels, "0.5 kg for 500 kg", FromMemory;
    /// Crude protein: 10 to 40 %.
    BALANCER_PROTEIN: f64 = 250.0; "balancer_protein", "g/kg", BalancerLabels, "middle of 10 to 40 %", FromMemory;
    /// Lysine: about 5 % of the protein.
    BALANCER_LYSINE: f64 = 12.5; "balancer_lysine", "g/kg", BalancerLabels, "5 % of the protein", FromMemory;
    /// Sugar and starch together: 6 to 15 %; the high end, for it is held against a ceiling.
    BALANCER_SUGAR_STARCH: f64 = 15.0; "balancer_sugar_starch", "% as fed", BalancerLabels, "high end of 6 to 15 %", FromMemory;
    /// Calcium: 3 to 6 %.
    BALANCER_CALCIUM: f64 = 45.0; "balancer_calcium", "g/kg", BalancerLabels, "middle of 3 to 6 %", FromMemory;
    /// Phosphorus: 1.5 to 2.5 %.
    BALANCER_PHOSPHORUS: f64 = 20.0; "balancer_phosphorus", "g/kg", BalancerLabels, "middle of 1.5 to 2.5 %", FromMemory;
    /// Copper: 150 to 400 mg/kg.
    BALANCER_COPPER: f64 = 275.0; "balancer_copper", "mg/kg", BalancerLabels, "middle of 150 to 400", FromMemory;
    /// Zinc: 450 to 1,200 mg/kg.
    BALANCER_ZINC: f64 = 825.0; "balancer_zinc", "mg/kg", BalancerLabels, "middle of 450 to 1,200", FromMemory;
    /// Manganese: 200 to 700 mg/kg.
    BALANCER_MANGANESE: f64 = 450.0; "balancer_manganese", "mg/kg", BalancerLabels, "middle of 200 to 700", FromMemory;
    /// Selenium: 1.5 to 5 mg/kg.
    BALANCER_SELENIUM: f64 = 3.25; "balancer_selenium", "mg/kg", BalancerLabels, "middle of 1.5 to 5", FromMemory;
    /// Vitamin E: 500 to 2,500 IU/kg.
    BALANCER_VITAMIN_E: f64 = 1500.0; "balancer_vitamin_e", "IU/kg", BalancerLabels, "middle of 500 to 2,500", FromMemory;
    /// Vitamin E of hay: almost nil, so that a ration of hay alone is always short.
    HAY_VITAMIN_E: f64 = 0.0; "hay_vitamin_e", "IU/kg dry matter", Nrc2007, "quoted by a lay nutritionist: hay holds almost none", Published;
    /// The step in which a bought food is weighed.
    FOOD_STEP: f64 = 10.0; "food_step", "g", CommonPractice, "kitchen scales", CommonPractice;
    /// The step in which a single mineral or vitamin is weighed.
    SOURCE_STEP: f64 = 1.0; "source_step", "g", CommonPractice, "pocket scales", CommonPractice;
    /// A change of forage or feed takes at least so long.
    CHANGEOVER_LEAST: u32 = 14; "changeover_least", "days", CommonPractice, "two to three weeks", CommonPractice;
    /// And better so long.
    CHANGEOVER_BETTER: u32 = 21; "changeover_better", "days", CommonPractice, "two to three weeks", CommonPractice;
    /// In so many steps before all of it: a quarter, a half, three quarters.
    CHANGEOVER_STEPS: u32 = 3; "changeover_steps", "", CommonPractice, "a quarter at a time", CommonPractice;
    /// What a food's rate may be, in grams a kilogram of body weight.
    RATE: Bounds = Bounds::new("rate_g_per_kg_body", 0.01, 20.0); "rate", "", Tussock, "outside it a misplaced decimal is likelier", Ours;
    /// Digestible energy that is believed of a kilogram of a food; oil has 9.
    ENERGY: Bounds = Bounds::new("energy_mcal_per_kg", 0.0, 9.5); "energy", "Mcal/kg as fed", Tussock, "above it MJ are likelier", Ours;
    /// What is believed of a label by class.
    BELIEVED: [Believed; 21] = [believed(Nutrient::CrudeProtein, 5.0, [650.0, 650.0, 500.0]), believed(Nutrient::Lysine, 0.1, [60.0, 80.0, 300.0]), believed(Nutrient::Calcium, 0.1, [40.0, 150.0, 390.0]), believed(Nutrient::Phosphorus, 0.1, [20.0, 60.0, 240.0]), believed(Nutrient::Magnesium, 0.1, [15.0, 50.0, 560.0]), believed(Nutrient::Potassium, 0.1, [60.0, 60.0, 520.0]), believed(Nutrient::Sodium, 0.02, [40.0, 100.0, 394.0]), believed(Nutrient::Chloride, 0.02, [60.0, 150.0, 607.0]), believed(Nutrient::Sulphur, 0.05, [15.0, 30.0, 250.0]), believed(Nutrient::Copper, 0.5, [200.0, 2_000.0, 50_000.0]), believed(Nutrient::Zinc, 2.0, [600.0, 6_000.0, 150_000.0]), believed(Nutrient::Manganese, 1.0, [600.0, 5_000.0, 100_000.0]), believed(Nutrient::Iron, 5.0, [3_000.0, 10_000.0, 100_000.0]), believed(Nutrient::Iodine, 0.01, [10.0, 60.0, 2_000.0]), believed(Nutrient::Selenium, 0.005, [2.0, 30.0, 600.0]), believed(Nutrient::Cobalt, 0.01, [5.0, 60.0, 2_000.0]), believed(Nutrient::VitaminA, 100.0, [60_000.0, 600_000.0, 5_000_000.0]), believed(Nutrient::VitaminD, 10.0, [10_000.0, 80_000.0, 1_000_000.0]), believed(Nutrient::VitaminE, 1.0, [3_000.0, 30_000.0, 500_000.0]), believed(Nutrient::Thiamin, 0.1, [300.0, 3_000.0, 50_000.0]), believed(Nutrient::Riboflavin, 0.1, [300.0, 3_000.0, 50_000.0])]; "believed", "g, mg or IU/kg as fed", Tussock, "label check: outside it a swapped unit is likelier", Ours;
    /// What a serving may weigh.
    LABEL_SERVING: Bounds = Bounds::new("serving_g", 0.5, 5_000.0); "label_serving", "g", Tussock, "label check: a gram of a supplement to a bucket of feed", Ours;
    /// By how much protein, fibre, sugar and starch may be more than the dry matter before something is wrong.
    PARTS_WHOLE: f64 = 5.0; "parts_whole", "percentage points", Tussock, "label check: scatter of the assays", Ours;
    /// A ratio stands while one of its two is unknown in no more than this part of the dry matter.
    RATIO_UNKNOWN: f64 = 0.05; "ratio_unknown", "of dry matter", Tussock, "a spoon of a supplement does not turn a ratio", Ours;
    /// Of a level that is weighed out in steps of a scale, so much is there at least.
    LEVEL_WEIGHED: f64 = 0.98; "level_weighed", "of the level", Tussock, "nets are weighed down to a step of the scale", Ours;
    /// How much of one thing is believed to be fed a day.
    FED: Bounds = Bounds::new("fed_kg", 0.0, 100.0); "fed", "kg", Tussock, "above it a misplaced decimal is likelier", Ours;
}
