//! The typical balancer, what hay brings of vitamins, and how exactly the solver works.

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

const fn solver<T>(
    id: &'static str,
    value: T,
    unit: &'static str,
    place: &'static str,
) -> Published<T> {
    Published {
        id,
        value,
        unit,
        work: Work::Tussock,
        place,
        mark: Mark::Ours,
    }
}

/// How far a sum of the solver may be over its limit, as a share of the larger of 1 and the limit.
pub const SOLVE_FIT: Published<f64> = solver(
    "ration.solve.fit",
    1e-10,
    "",
    "a tenth of what an answer is checked to",
);
/// How far a price may be on the wrong side of nothing, scaled so that the dearest column costs about 1.
pub const SOLVE_PRICE: Published<f64> = solver(
    "ration.solve.price",
    1e-11,
    "",
    "well over the rounding of sums of a hundred terms",
);
/// A term under this is taken for rounding, and nothing is exchanged over it.
pub const SOLVE_PIVOT: Published<f64> = solver(
    "ration.solve.pivot",
    1e-9,
    "",
    "terms are scaled to about 1",
);
/// How far a number of doses may be from whole before it is made whole, and an amount, scaled, from nothing.
pub const SOLVE_WHOLE: Published<f64> = solver(
    "ration.solve.whole",
    1e-9,
    "",
    "far under a dose; the answer's doses are whole to the last bit",
);
/// How much a branch must promise over the cheapest ration found, as a share of its cost.
pub const SOLVE_WIN: Published<f64> = solver(
    "ration.solve.win",
    1e-10,
    "",
    "a hundredth of what costs are compared to",
);
/// How far an answer may be off when it is held against the problem as it was given, as a share.
pub const SOLVE_CERTIFIED: Published<f64> =
    solver("ration.solve.certified", 1e-9, "", "a milligram in a tonne");
/// What a row may miss before it is said to, in its scales.
pub const SOLVE_MISSING: Published<f64> = solver(
    "ration.solve.missing",
    1e-8,
    "",
    "ten times what an answer is checked to",
);
/// How many exchanges a walk may take, whatever its size.
pub const SOLVE_EXCHANGES: Published<usize> = solver(
    "ration.solve.exchanges",
    2000,
    "",
    "the worst cube of eight sides takes 255",
);
/// How many more for each column and row.
pub const SOLVE_EXCHANGES_EACH: Published<usize> = solver(
    "ration.solve.exchanges_each",
    50,
    "",
    "a walk usually takes two or three",
);
/// After how many exchanges in a row that change nothing the smallest index decides.
pub const SOLVE_PATIENCE: Published<usize> = solver(
    "ration.solve.patience",
    20,
    "",
    "circles have six exchanges or more",
);
/// How often a walk is begun anew from its rebuilt terms when its end does not hold.
pub const SOLVE_ATTEMPTS: Published<usize> =
    solver("ration.solve.attempts", 4, "", "one nearly always does");
/// How many branches are looked at.
pub const SOLVE_BRANCHES: Published<usize> = solver(
    "ration.solve.branches",
    20_000,
    "",
    "some seconds in a browser with thirty foods",
);
/// How many are looked at in each search on the side: a further set of foods, or a change that would mend.
pub const SOLVE_SIDE_BRANCHES: Published<usize> = solver(
    "ration.solve.side_branches",
    2000,
    "",
    "a tenth, for there are many of them",
);
/// How many searches the next sets of foods may take.
pub const SOLVE_SETS: Published<usize> = solver(
    "ration.solve.sets",
    200,
    "",
    "three sets of ten foods take about forty",
);
/// How many columns a problem may have.
pub const SOLVE_COLUMNS: Published<Bounds> = solver(
    "ration.solve.columns",
    Bounds::new("columns", 1.0, 500.0),
    "",
    "a catalogue of foods",
);
/// How many rows it may have.
pub const SOLVE_ROWS: Published<Bounds> = solver(
    "ration.solve.rows",
    Bounds::new("rows", 0.0, 500.0),
    "",
    "every limit there is",
);
/// What a term, bound or cost may be.
pub const SOLVE_SIZE: Published<Bounds> = solver(
    "ration.solve.size",
    Bounds::new("value", -1e9, 1e9),
    "",
    "a gram counted in nanograms",
);
/// What a scale or a dose may be.
pub const SOLVE_SCALE: Published<Bounds> = solver(
    "ration.solve.scale",
    Bounds::new("scale", 1e-6, 1e9),
    "",
    "a milligram counted in kilograms",
);

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
    SOLVE_FIT,
    SOLVE_PRICE,
    SOLVE_PIVOT,
    SOLVE_WHOLE,
    SOLVE_WIN,
    SOLVE_CERTIFIED,
    SOLVE_MISSING,
    SOLVE_EXCHANGES,
    SOLVE_EXCHANGES_EACH,
    SOLVE_PATIENCE,
    SOLVE_ATTEMPTS,
    SOLVE_BRANCHES,
    SOLVE_SIDE_BRANCHES,
    SOLVE_SETS,
    SOLVE_COLUMNS,
    SOLVE_ROWS,
    SOLVE_SIZE,
    SOLVE_SCALE,
];
