//! Constants of strips and tracks.

use crate::sources::{Mark, Published, Work, list_constants};
use crate::units::Bounds;

/// Writes a constant and its place in the list in one line: name, type, value; key, unit, work, place, mark.
macro_rules! published {
    ($($(#[$doc:meta])* $name:ident: $kind:ty = $value:expr; $key:literal, $unit:literal, $work:ident, $place:literal, $mark:ident;)*) => {
        $(
            $(#[$doc])*
            pub const $name: Published<$kind> = Published {
                id: concat!("graze.strip.", $key),
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
    // ---- strips ----
    /// The part of a strip that is grazed when it lasts 1 to 7 days.
    GRAZED_BY_DAYS: [f64; 7] = [0.80, 0.75, 0.75, 0.70, 0.65, 0.60, 0.60]; "grazed_by_days", "", PennStateAgronomyGuide, "Table 1.8-9", Published;
    /// The least of a strip that is grazed: fouling and trampling take the rest.
    GRAZED_LEAST: f64 = 0.5; "grazed_least", "", CommonPractice, "0.5 to 0.7", FromMemory;
    /// What is likely grazed of a strip, at the most.
    GRAZED_LIKELY: f64 = 0.7; "grazed_likely", "", CommonPractice, "0.7 for a strip", FromMemory;
    /// The days that a lead fence takes to cross what remains of a paddock.
    LEAD_DAYS: f64 = 26.0; "lead_days", "d", Longland2021, "1/26 of the remaining length a day", Published;
    /// The days before it is moved for the first time.
    LEAD_STANDS: u32 = 2; "lead_stands", "d", Longland2021, "after 2 days", Published;
    /// How far behind the lead fence the back fence stood; m.
    BACK_FENCE: [f64; 2] = [7.0, 12.0]; "back_fence", "m", Longland2021, "7 to 12 m behind", Published;
    /// A pace: short, ordinary, long; m.
    PACE: [f64; 3] = [0.65, 0.75, 0.85]; "pace", "m", Tussock, "an ordinary walking step of a grown person", Ours;
    /// Days that a strip may last.
    DAYS: Bounds = Bounds::new("strip_days", 1.0, 7.0); "days", "d", PennStateAgronomyGuide, "Table 1.8-9, 1 to 7 days", Published;
    /// Widths of strips that are believed, m.
    WIDTH: Bounds = Bounds::new("strip_width_m", 1.0, 500.0); "width", "m", Tussock, "range", Ours;
    /// Masses of swards that are believed, kg a hectare.
    MASS: Bounds = Bounds::new("sward_kg_per_ha", 0.0, 10_000.0); "mass", "kg/ha", Tussock, "range", Ours;
    /// Parts of a sward that may be grazed.
    PART: Bounds = Bounds::new("grazed_part", 0.1, 1.0); "part", "", Tussock, "range", Ours;
    /// A case of laminitis that ended in so many days is a recent one.
    RECENT_DAYS: i64 = 365; "recent_days", "d", Tussock, "practice rule 16, not for a recent or active case", Ours;

    // ---- tracks ----
    /// Metres that ponies walked in a day on a track, and grazing strips.
    WALKED: [f64; 2] = [7013.0, 5332.0]; "walked", "m/d", Kirton2024, "abstract, four groups in cross-over", Published;
    /// How many body lengths apart hay places lie.
    BODY_LENGTHS_APART: f64 = 2.0; "body_lengths_apart", "", CommonPractice, "n + 1 places, two body lengths apart", FromMemory;
    /// How many hay places more than animals.
    PLACES_MORE: u32 = 1; "places_more", "", CommonPractice, "n + 1 places, two body lengths apart", FromMemory;
    /// The length of a body from nose to tail, for an animal of any size; m.
    BODY_LENGTH: f64 = 2.4; "body_length", "m", Tussock, "a riding horse; smaller animals need less", Ours;
    /// The part of a track that hay is spread over, with water in the middle of the rest.
    HAY_OVER: f64 = 0.5; "hay_over", "of the track", Tussock, "hay on the half away from water", Ours;
    /// Sides of fields that are believed, m.
    SIDE: Bounds = Bounds::new("field_side_m", 5.0, 3000.0); "side", "m", Tussock, "range", Ours;
    /// Widths of tracks, m: two animals must pass.
    TRACK_WIDTH: Bounds = Bounds::new("track_width_m", 2.0, 20.0); "track_width", "m", Tussock, "two animals pass; wider is no track", Ours;
    /// Animals on a track that are believed.
    ANIMALS: Bounds = Bounds::new("animals", 1.0, 60.0); "animals", "", Tussock, "range", Ours;
}
