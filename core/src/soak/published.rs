//! Constants of `soak`.

use super::loss::LossBand;
use crate::sources::{Mark, Published, Work, list_constants};
use crate::units::{Bounds, ShareOfDm, Span, Temperature};

/// Writes a constant and its place in the list in one line: name, type, value; key, unit, work, place, mark.
macro_rules! published {
    ($($(#[$doc:meta])* $name:ident: $kind:ty = $value:expr; $key:literal, $unit:literal, $work:ident, $place:literal, $mark:ident;)*) => {
        $(
            $(#[$doc])*
            pub const $name: Published<$kind> = Published {
                id: concat!("soak.", $key),
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
    // ---- the recipe ----
    /// Water from the tap in winter.
    TAP_WINTER: Temperature = Temperature::celsius(8.0); "tap_winter", "", Tussock, "defaults", Ours;
    /// Water from the tap in summer.
    TAP_SUMMER: Temperature = Temperature::celsius(15.0); "tap_summer", "", Tussock, "defaults", Ours;
    /// Hand-hot water, 40 to 45 degrees: the lower end.
    HAND_HOT: Temperature = Temperature::celsius(40.0); "hand_hot", "", CommonPractice, "40 to 45 degrees", CommonPractice;
    /// The least time in hand-hot water.
    HOT_AT_LEAST: Span = Span::minutes(30); "hot_at_least", "", WattsSirois2003, "quoted by a university's extension page", Published;
    /// The least time in cold water.
    COLD_AT_LEAST: Span = Span::minutes(60); "cold_at_least", "", WattsSirois2003, "quoted by a university's extension page", Published;
    /// The longest soak that still counts as short.
    SHORT_SOAK_MOST: Span = Span::hours(2); "short_soak_most", "", Tussock, "rule 9", Ours;
    /// The longest soak advised in air over 20 degrees; the direction is that of Glatter 2021.
    HEAT_SOAK_MOST: Span = Span::hours(1); "heat_soak_most", "", Glatter2021, "growth on soaked hay at 10 and 25 degrees", FromMemory;
    /// Minutes of soaking that are believed: 16 hours is the longest of the trials.
    SOAK_MINUTES: Bounds = Bounds::new("soak_minutes", 5.0, 960.0); "soak_minutes", "min", Longland2014, "abstract, 16 h", Published;
    /// Litres of water for a kilogram of hay, least and better; trials used 1 to 10 or 1 to 15.
    LITRES_PER_KG: [f64; 2] = [10.0, 15.0]; "litres_per_kg", "l/kg as fed", Longland2011, "1:10 to 1:15 by weight to volume, read second-hand", FromMemory;

    // ---- after the water ----
    /// From when hay is drained enough.
    DRAIN_FROM: Span = Span::minutes(10); "drain_from", "", CommonPractice, "10 to 15 min", CommonPractice;
    /// When hay is drained.
    DRAIN_TO: Span = Span::minutes(15); "drain_to", "", CommonPractice, "10 to 15 min", CommonPractice;
    /// How long after it was first wet hay may be kept, soaks to two hours.
    KEEPS: Span = Span::hours(12); "keeps", "", CommonPractice, "thrown away by 12 h", CommonPractice;
    /// The same in air over 20 degrees.
    KEEPS_OVER_20: Span = Span::hours(6); "keeps_over_20", "", Tussock, "rule 9", Ours;
    /// The same in air over 25 degrees.
    KEEPS_OVER_25: Span = Span::hours(4); "keeps_over_25", "", Tussock, "rule 9", Ours;
    /// How long after lifting out the hay of a longer soak may be kept.
    KEEPS_LONG: Span = Span::hours(6); "keeps_long", "", Tussock, "rule 9", Ours;

    // ---- sugar ----
    /// Loss to expect in soaks to two hours.
    SHORT_LOSS: LossBand = LossBand { low: 0.05, high: 0.30 }; "short_loss", "of WSC", Tussock, "rule 8, after the trials of 15 to 60 min", Ours;
    /// What is usual within that.
    USUAL_LOSS: LossBand = LossBand { low: 0.10, high: 0.25 }; "usual_loss", "of WSC", Martinson2012, "orchardgrass, 14 to 10-12 % after 15 to 30 min", WorkedOut;
    /// Water under this is cold.
    COLD_WATER: Temperature = Temperature::celsius(10.0); "cold_water", "", Tussock, "rule 8", Ours;
    /// Loss to expect in cold water.
    COLD_LOSS: LossBand = LossBand { low: 0.0, high: 0.10 }; "cold_loss", "of WSC", Longland2011, "20 min at 8 degrees took 5 %, read second-hand", FromMemory;
    /// Loss to expect in a soak shorter than it takes.
    TOO_SHORT_LOSS: LossBand = LossBand { low: 0.0, high: 0.30 }; "too_short_loss", "of WSC", Bochnia2021, "17 % in 15 min, read second-hand", FromMemory;
    /// What one hay or another may lose: from none to half (0 to 53 %).
    BETWEEN_HAYS: LossBand = LossBand { low: 0.0, high: 0.5 }; "between_hays", "of WSC", MooreColyer2014, "five hays, 0 to 53 %", Published;
    /// What one hay or another may lose in longer soaks (6 to 54 %, 0 to 53 %).
    BETWEEN_HAYS_LONG: LossBand = LossBand { low: 0.0, high: 0.6 }; "between_hays_long", "of WSC", Longland2011, "nine hays, 6 to 54 %", WorkedOut;
    /// The fitted curve of the trials: scale, power of the hours, per degree, at degrees, most; percent.
    SUGAR_CURVE: [f64; 5] = [13.5, 0.42, 0.065, 16.0, 50.0]; "sugar_curve", "% of WSC", Tussock, "fitted to seven trial means, one contrary trial left out", Ours;
    /// The water that the curve was fitted to; colder or warmer counts as this.
    CURVE_WATER: [f64; 2] = [5.0, 30.0]; "curve_water", "degC", Tussock, "fit", Ours;
    /// The tenth and the ninetieth of a hundred hays, as parts of the curve (between hays the spread is 0.6 of the mean).
    CURVE_SPREAD: [f64; 2] = [0.23, 1.77]; "curve_spread", "", Longland2011, "spread of nine hays", WorkedOut;
    /// Hay under this in WSC loses less.
    LOW_SUGAR_HAY: ShareOfDm = ShareOfDm::percent(12.0); "low_sugar_hay", "", Bochnia2021, "four meadow hays low in sugar", WorkedOut;
    /// What such hay is expected to lose at most on average.
    LOW_SUGAR_LOSS: f64 = 0.20; "low_sugar_loss", "of WSC", Bochnia2021, "no further loss after 15 min", WorkedOut;

    // ---- dry matter ----
    /// The curve of dry matter lost: scale, power of the hours, most; percent. Between 13 and 20 % at 12 h.
    DRY_CURVE: [f64; 3] = [5.8, 0.42, 20.0]; "dry_curve", "% of dry matter", Tussock, "between Martinson 2012 and Argo 2015", Ours;
    /// How far the truth may be from it, as a part of it.
    DRY_CURVE_HALF: f64 = 0.5; "dry_curve_half", "", Tussock, "fit", Ours;
    /// Parts of dry matter that are believed to be lost. Below nothing: fibre scatters between two samples.
    LOST_PART: Bounds = Bounds::new("lost_fraction", -0.1, 0.6); "lost_part", "", Tussock, "range", Ours;
}
