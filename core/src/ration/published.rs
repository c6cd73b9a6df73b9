//! The typical balancer, what hay brings of vitamins, and what is believed of a food.
//!
//! One line here is one constant, and the same line puts it into the list of sources. The foods of the catalogue have
//! their own list, [`super::catalogue::published`].

use crate::sources::{Mark, Published, Work, list_constants};
use crate::units::Bounds;

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
    /// What a food's rate may be, in grams a kilogram of body weight.
    RATE: Bounds = Bounds::new("rate_g_per_kg_body", 0.01, 20.0); "rate", "", Tussock, "outside it a misplaced decimal is likelier", Ours;
    /// Digestible energy that is believed of a kilogram of a food; oil has 9.
    ENERGY: Bounds = Bounds::new("energy_mcal_per_kg", 0.0, 9.5); "energy", "Mcal/kg as fed", Tussock, "above it MJ are likelier", Ours;
}
