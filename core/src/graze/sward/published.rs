//! Constants of the sward.

use crate::sources::{Mark, Published, Work, list_constants};
use crate::units::{Bounds, Length, SwardDensity};

/// Writes a constant and its place in the list in one line: name, type, value; key, unit, work, place, mark.
macro_rules! published {
    ($($(#[$doc:meta])* $name:ident: $kind:ty = $value:expr; $key:literal, $unit:literal, $work:ident, $place:literal, $mark:ident;)*) => {
        $(
            $(#[$doc])*
            pub const $name: Published<$kind> = Published {
                id: concat!("graze.sward.", $key),
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
    // ---- height ----
    /// Leaf under this is a bare paddock, and no forage.
    LEAF_BARE: Length = Length::cm(5.0); "leaf_bare", "", Tussock, "practice rule 10, leaf under about 5 cm", Ours;
    /// What is left standing: under it they are taken off (3 in; the page says 3 to 4 in).
    RESIDUAL: Length = Length::cm(7.5); "residual", "", UmnGrazing, "take off at 3 to 4 in", Published;
    /// From this the leaf is worth opening.
    LEAFY_FROM: Length = Length::cm(10.0); "leafy_from", "", Tussock, "leafy regrowth of 10 to 20 cm, between Siciliano 2017 and stem bases", Ours;
    /// Over this it is rank: look for stem and seed heads.
    LEAFY_TO: Length = Length::cm(20.0); "leafy_to", "", Tussock, "leafy regrowth of 10 to 20 cm, between Siciliano 2017 and stem bases", Ours;
    /// What regrowth waits for: tall kinds 15 to 20 cm, short kinds 10 to 15 cm; the height where they meet (6 in).
    REGROWN: Length = Length::cm(15.0); "regrown", "", UmnGrazing, "graze from about 6 in", Published;
    /// Leaf below the ankle of a boot: least, likely, most; cm.
    BELOW_ANKLE: [f64; 3] = [2.0, 5.0, 7.5]; "below_ankle", "cm", Tussock, "height of a boot's ankle, about 10 cm", Ours;
    /// Leaf at the ankle of a boot: least, likely, most; cm.
    ANKLE: [f64; 3] = [7.5, 10.0, 15.0]; "ankle", "cm", Tussock, "height of a boot's ankle, about 10 cm", Ours;
    /// Leaf above the ankle of a boot: least, likely, most; cm.
    ABOVE_ANKLE: [f64; 3] = [15.0, 20.0, 35.0]; "above_ankle", "cm", Tussock, "height of a boot's ankle, about 10 cm", Ours;
    /// Heights that are believed.
    HEIGHT: Bounds = Bounds::new("sward_height_cm", 0.0, 200.0); "height", "cm", Tussock, "range", Ours;
    /// How many readings are asked for.
    READINGS_ASKED: usize = 30; "readings_asked", "", ExtensionPastureDensity, "at least 30 readings, ruler on leaf that is not pressed", Published;
    /// How many standard errors the mean is taken to be out.
    MEAN_OUT_BY: f64 = 2.0; "mean_out_by", "standard errors", Tussock, "about 19 in 20", Ours;

    // ---- mass ----
    /// What a centimetre of mixed pasture with ryegrass weighs (300 lb an acre-inch).
    DENSITY: SwardDensity = SwardDensity::kg_per_ha_cm(132.0); "density", "", ExtensionPastureDensity, "300 lb an acre-inch", Published;
    /// How far the mass may be out, as a part of it.
    MASS_OUT_BY: f64 = 0.3; "mass_out_by", "", Tussock, "between fields and people", Ours;
    /// A thin stand; lb an acre-inch.
    STAND_FAIR: [f64; 2] = [150.0, 200.0]; "stand_fair", "lb/ac/in", NrcsGrazingStick, "fair", Published;
    /// An ordinary stand; lb an acre-inch. The stick leaves a gap between fair and good, and so do we.
    STAND_GOOD: [f64; 2] = [250.0, 300.0]; "stand_good", "lb/ac/in", NrcsGrazingStick, "good", Published;
    /// A dense stand; lb an acre-inch.
    STAND_EXCELLENT: [f64; 2] = [300.0, 400.0]; "stand_excellent", "lb/ac/in", NrcsGrazingStick, "excellent", Published;
    /// Other kinds of sward, whose density nobody looked up: the whole of the stick; lb an acre-inch, least, likely, most.
    DENSITY_OTHER: [f64; 3] = [150.0, 250.0, 400.0]; "density_other", "lb/ac/in", NrcsGrazingStick, "fair to excellent", WorkedOut;
    /// A rising plate: kilograms a hectare for each click of half a centimetre, and what stands at none; two formulas.
    PLATE: [[f64; 2]; 2] = [[125.0, 640.0], [140.0, 500.0]]; "plate", "kg/ha a click, kg/ha", CommonPractice, "rising plate, for its own species and season", FromMemory;
    /// Clicks of a plate that are believed.
    CLICKS: Bounds = Bounds::new("plate_clicks", 0.0, 60.0); "clicks", "", Tussock, "range", Ours;
    /// The part of what stands above the residual that is grazed and not fouled or trodden: least, likely, most.
    GRAZED: [f64; 3] = [0.5, 0.6, 0.7]; "grazed", "", CommonPractice, "fouling and trampling, 0.5 to 0.7", FromMemory;

    // ---- growth and rest ----
    /// Growth in early spring, slow and fast; unfertilised horse pasture, as all below.
    GROWTH_EARLY_SPRING: [f64; 2] = [10.0, 30.0]; "growth_early_spring", "kg/ha/d", CommonPractice, "unfertilised horse pasture", FromMemory;
    /// Growth at the peak of spring.
    GROWTH_PEAK_SPRING: [f64; 2] = [40.0, 70.0]; "growth_peak_spring", "kg/ha/d", CommonPractice, "unfertilised horse pasture", FromMemory;
    /// Growth in summer.
    GROWTH_SUMMER: [f64; 2] = [15.0, 35.0]; "growth_summer", "kg/ha/d", CommonPractice, "unfertilised horse pasture", FromMemory;
    /// Growth in autumn.
    GROWTH_AUTUMN: [f64; 2] = [15.0, 30.0]; "growth_autumn", "kg/ha/d", CommonPractice, "unfertilised horse pasture", FromMemory;
    /// Growth in winter.
    GROWTH_WINTER: [f64; 2] = [0.0, 8.0]; "growth_winter", "kg/ha/d", CommonPractice, "unfertilised horse pasture", FromMemory;
    /// Rest in spring: 2 to 3 weeks.
    REST_SPRING: [u64; 2] = [14, 21]; "rest_spring", "d", CommonPractice, "2 to 3 weeks", FromMemory;
    /// Rest in summer: 4 to 6 weeks.
    REST_SUMMER: [u64; 2] = [28, 42]; "rest_summer", "d", CommonPractice, "4 to 6 weeks", FromMemory;
    /// Rest in autumn, for which we know no rule: as in summer.
    REST_AUTUMN: [u64; 2] = [28, 42]; "rest_autumn", "d", Tussock, "as in summer", Ours;

    // ---- what is asked ----
    /// Weights of animals that are believed, kg.
    WEIGHT: Bounds = Bounds::new("weight_kg", 30.0, 1500.0); "weight", "kg", Tussock, "range", Ours;
    /// Dry matter of grass a day that is asked for, percent of body weight.
    ASKED: Bounds = Bounds::new("grass_percent_of_body", 0.0, 6.0); "asked", "% of body", Tussock, "range", Ours;
    /// Areas that are believed, m2.
    AREA: Bounds = Bounds::new("area_m2", 1.0, 5_000_000.0); "area", "m2", Tussock, "range", Ours;
    /// Heights of the residual that may be chosen, cm.
    RESIDUAL_CHOSEN: Bounds = Bounds::new("residual_cm", 5.0, 20.0); "residual_chosen", "cm", Tussock, "range", Ours;
}
