//! The typical balancer, and what hay brings of vitamins.

use crate::sources::{Mark, Published, Work, list_constants};
use crate::units::Bounds;

const fn profile(
    id: &'static str,
    value: f64,
    unit: &'static str,
    place: &'static str,
) -> Published<f64> {
    Published {
        id,
        value,
        unit,
        work: Work::BalancerLabels,
        place,
        mark: Mark::FromMemory,
    }
}

/// Dry matter.
pub const BALANCER_DRY: Published<f64> =
    profile("ration.balancer_dry", 90.0, "% as fed", "pelleted feed");
/// How much is usually fed.
pub const BALANCER_RATE: Published<f64> = profile(
    "ration.balancer_rate",
    1.0,
    "g/kg body weight",
    "0.5 kg for 500 kg",
);
/// Crude protein: 10 to 40 %.
pub const BALANCER_PROTEIN: Published<f64> = profile(
    "ration.balancer_protein",
    250.0,
    "g/kg",
    "middle of 10 to 40 %",
);
/// Lysine: about 5 % of the protein.
pub const BALANCER_LYSINE: Published<f64> =
    profile("ration.balancer_lysine", 12.5, "g/kg", "5 % of the protein");
/// Sugar and starch together: 6 to 15 %; the high end, for it is held against a ceiling.
pub const BALANCER_SUGAR_STARCH: Published<f64> = profile(
    "ration.balancer_sugar_starch",
    15.0,
    "% as fed",
    "high end of 6 to 15 %",
);
/// Calcium: 3 to 6 %.
pub const BALANCER_CALCIUM: Published<f64> = profile(
    "ration.balancer_calcium",
    45.0,
    "g/kg",
    "middle of 3 to 6 %",
);
/// Phosphorus: 1.5 to 2.5 %.
pub const BALANCER_PHOSPHORUS: Published<f64> = profile(
    "ration.balancer_phosphorus",
    20.0,
    "g/kg",
    "middle of 1.5 to 2.5 %",
);
/// Copper: 150 to 400 mg/kg.
pub const BALANCER_COPPER: Published<f64> = profile(
    "ration.balancer_copper",
    275.0,
    "mg/kg",
    "middle of 150 to 400",
);
/// Zinc: 450 to 1,200 mg/kg.
pub const BALANCER_ZINC: Published<f64> = profile(
    "ration.balancer_zinc",
    825.0,
    "mg/kg",
    "middle of 450 to 1,200",
);
/// Manganese: 200 to 700 mg/kg.
pub const BALANCER_MANGANESE: Published<f64> = profile(
    "ration.balancer_manganese",
    450.0,
    "mg/kg",
    "middle of 200 to 700",
);
/// Selenium: 1.5 to 5 mg/kg.
pub const BALANCER_SELENIUM: Published<f64> = profile(
    "ration.balancer_selenium",
    3.25,
    "mg/kg",
    "middle of 1.5 to 5",
);
/// Vitamin E: 500 to 2,500 IU/kg.
pub const BALANCER_VITAMIN_E: Published<f64> = profile(
    "ration.balancer_vitamin_e",
    1500.0,
    "IU/kg",
    "middle of 500 to 2,500",
);

/// Vitamin E of hay: almost nil, so that a ration of hay alone is always short.
pub const HAY_VITAMIN_E: Published<f64> = Published {
    id: "ration.hay_vitamin_e",
    value: 0.0,
    unit: "IU/kg dry matter",
    work: Work::Nrc2007,
    place: "quoted by a lay nutritionist: hay holds almost none",
    mark: Mark::Published,
};

/// The step in which a bought food is weighed.
pub const FOOD_STEP: Published<f64> = Published {
    id: "ration.food_step",
    value: 10.0,
    unit: "g",
    work: Work::CommonPractice,
    place: "kitchen scales",
    mark: Mark::CommonPractice,
};

/// What a food's rate may be, in grams a kilogram of body weight.
pub const RATE: Published<Bounds> = Published {
    id: "ration.rate",
    value: Bounds::new("rate_g_per_kg_body", 0.01, 20.0),
    unit: "",
    work: Work::Tussock,
    place: "outside it a misplaced decimal is likelier",
    mark: Mark::Ours,
};

list_constants![
    BALANCER_DRY,
    BALANCER_RATE,
    BALANCER_PROTEIN,
    BALANCER_LYSINE,
    BALANCER_SUGAR_STARCH,
    BALANCER_CALCIUM,
    BALANCER_PHOSPHORUS,
    BALANCER_COPPER,
    BALANCER_ZINC,
    BALANCER_MANGANESE,
    BALANCER_SELENIUM,
    BALANCER_VITAMIN_E,
    HAY_VITAMIN_E,
    FOOD_STEP,
    RATE,
];
