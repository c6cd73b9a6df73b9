//! With how much care a mend is made.

use crate::limits::Nutrient;
use crate::ration::FoodClass;
use crate::sources::{Mark, Published, Work, list_constants};

/// How many spreads of its class an untested hay is taken under its mean for a need and over it for a ceiling: four hays in
/// five are better than that.
pub const HAY_CARE: Published<f64> = Published {
    id: "ration.mend.hay_care",
    value: 0.841_621_233_572_914_2,
    unit: "spreads of the class",
    work: Work::Tussock,
    place: "the quantile of four in five of a normal curve; four in five is what this house calls likely",
    mark: Mark::Ours,
};
/// How many spreads the sugar of a hay is taken over its mean, where the day must stay within its limit.
pub const SUGAR_CARE: Published<f64> = Published {
    id: "ration.mend.sugar_care",
    value: 1.281_551_565_544_600_4,
    unit: "spreads",
    work: Work::Tussock,
    place: "the quantile of nine in ten of a normal curve, from which a hay is called within",
    mark: Mark::Ours,
};
/// A food holds little sugar and starch up to this.
pub const LOW_SUGAR_FOOD: Published<f64> = Published {
    id: "ration.mend.low_sugar_food",
    value: 10.0,
    unit: "% of dry matter",
    work: Work::Tussock,
    place: "the limit of hay for the same animal, asked of what is fed beside it",
    mark: Mark::Ours,
};
/// Foods that bring what a hay lacks and next to no energy, for little of them is given.
pub const SMALL_CLASSES: Published<[FoodClass; 3]> = Published {
    id: "ration.mend.small_classes",
    value: [
        FoodClass::Balancer,
        FoodClass::MineralMix,
        FoodClass::Source,
    ],
    unit: "",
    work: Work::CommonPractice,
    place: "balancer only while losing",
    mark: Mark::CommonPractice,
};
/// What hay often lacks, so that the whole need is asked of the foods where nobody tested the hay for it.
pub const ASKED_WHOLE: Published<[Nutrient; 1]> = Published {
    id: "ration.mend.asked_whole",
    value: [Nutrient::Selenium],
    unit: "",
    work: Work::Tussock,
    place: "practice rule 1: selenium of an untested hay is unknown, never a class mean",
    mark: Mark::Ours,
};
/// Of a ration that misses something, what a ceiling may be broken by for each part that a need is missed by.
pub const MISS_CEILING: Published<f64> = Published {
    id: "ration.mend.miss_ceiling",
    value: 0.1,
    unit: "of the limit",
    work: Work::Tussock,
    place: "too much does harm sooner than too little",
    mark: Mark::Ours,
};
/// The same of what is never broken for a need: dry matter, buckets, straw, lucerne.
pub const MISS_NEVER: Published<f64> = Published {
    id: "ration.mend.miss_never",
    value: 0.001,
    unit: "of the limit",
    work: Work::Tussock,
    place: "no ration is closer for being too large",
    mark: Mark::Ours,
};
/// A limit is told to decide when it costs at least this part of the ration.
pub const DECIDES: Published<f64> = Published {
    id: "ration.mend.decides",
    value: 1e-6,
    unit: "of the cost",
    work: Work::Tussock,
    place: "under it is rounding",
    mark: Mark::Ours,
};
/// A ceiling that is kept under is kept by this part, for the balance says over from the ceiling on.
pub const UNDER: Published<f64> = Published {
    id: "ration.mend.under",
    value: 1e-6,
    unit: "of the ceiling",
    work: Work::Tussock,
    place: "a milligram in a kilogram",
    mark: Mark::Ours,
};

list_constants![
    HAY_CARE,
    SUGAR_CARE,
    LOW_SUGAR_FOOD,
    SMALL_CLASSES,
    ASKED_WHOLE,
    MISS_CEILING,
    MISS_NEVER,
    DECIDES,
    UNDER
];
