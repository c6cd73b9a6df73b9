//! How exactly the solver works.

use crate::sources::{Mark, Published, Work, list_constants};
use crate::units::Bounds;

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
