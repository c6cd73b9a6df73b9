//! The limits of a mend, and what is told of them.

use crate::limits::Nutrient;

/// A limit that a mend keeps.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Limit {
    /// All dry matter of the day, in kilograms.
    DryMatter,
    /// Forage of the day, in kilograms of dry matter.
    Forage,
    /// The settled part of a forage, in kilograms of dry matter: its place among the forages.
    PartOf(usize),
    /// Digestible energy, in Mcal.
    Energy,
    /// The need of a nutrient, in its unit.
    Need(Nutrient),
    /// The ceiling of a nutrient, in its unit.
    Ceiling(Nutrient),
    /// Selenium that foods add, in mg.
    AddedSelenium,
    /// Vitamin E by body weight, in IU.
    VitaminEByBody,
    /// Calcium not under phosphorus, in grams.
    CalciumOverPhosphorus,
    /// Calcium not too far over phosphorus, in grams.
    CalciumNotFarOver,
    /// Zinc to copper, at least, in mg.
    ZincOverCopper,
    /// Zinc to copper, at most, in mg.
    ZincNotFarOver,
    /// Straw within the forage, in kilograms of dry matter.
    Straw,
    /// Straw that a donkey always has, in kilograms of dry matter.
    StrawAtLeast,
    /// Lucerne within the forage, in kilograms of dry matter.
    Lucerne,
    /// Sugar and starch of all buckets, in grams.
    BucketSugar,
    /// Starch of all buckets, in grams.
    BucketStarch,
    /// Sugar of the whole day, in grams.
    Sugar,
}
