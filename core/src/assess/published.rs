//! Constants of `assess`.

use super::condition::ConditionScale;
use super::equation::{DonkeyLaw, Line, PerLengthAndHeight, PowerLaw};
use crate::sources::{Mark, Published, Work};
use crate::units::Bounds;

/// A table of constants: key, name, type and value; then unit, mark, work and place. It lists what it defines.
macro_rules! table {
    ($($(#[$doc:meta])* $key:literal $name:ident: $type:ty = $value:expr;
        $unit:literal, $mark:ident, $work:ident, $place:literal;)*) => {
        $(
            $(#[$doc])*
            pub const $name: Published<$type> = Published {
                id: concat!("assess.", $key),
                value: $value,
                unit: $unit,
                work: Work::$work,
                place: $place,
                mark: Mark::$mark,
            };
        )*

        /// Every constant of this room, for the list of sources.
        pub fn constants() -> Vec<crate::sources::Constant> {
            vec![$($name.row()),*]
        }
    };
}

table! {
    // Equations of weight.

    /// Girth squared times length, over this, is the weight in kg (wrap length, 281 horses).
    "girth_length" GIRTH_LENGTH: f64 = 11_900.0;
        "cm3/kg", Published, CarrollHuntington1988, "abstract, mean Y";
    /// The same for grown Icelandic horses; that the length is the wrap length is inferred.
    "girth_length_icelandic" GIRTH_LENGTH_ICELANDIC: f64 = 11_400.0;
        "cm3/kg", Published, IcelandicWeight, "abstract";
    /// The same for yearlings, in inches and pounds.
    "girth_length_yearling" GIRTH_LENGTH_YEARLING: f64 = 301.0;
        "in3/lb", Published, ExtensionTape, "yearling";
    /// The same for weanlings, in inches and pounds.
    "girth_length_weanling" GIRTH_LENGTH_WEANLING: f64 = 280.0;
        "in3/lb", Published, ExtensionTape, "weanling";
    /// Foals of 1 to 6 weeks: girth less the intercept, over the slope, in inches and pounds.
    "foal" FOAL: Line = Line { intercept: 25.1, slope: 0.07 };
        "in, in/lb", Published, ExtensionTape, "foal";
    /// Exponents of girth, wrap length, height and neck (cm) for Arabian, pony and stock types.
    "four_measures_2014" FOUR_MEASURES_2014: PowerLaw =
        PowerLaw { girth: 1.486, length: 0.554, height: 0.599, neck: 0.173 };
        "", Published, Martinson2014, "equation of body weight";
    /// Divisor of the four measures, Arabian; turns into the printed 119 in inches and pounds.
    "divisor_arabian" DIVISOR_ARABIAN: f64 = 3596.0;
        "cm, kg", FromMemory, Martinson2014, "equation of body weight, metric form";
    /// Divisor of the four measures, pony; turns into the printed 119 in inches and pounds.
    "divisor_pony" DIVISOR_PONY: f64 = 3606.0;
        "cm, kg", FromMemory, Martinson2014, "equation of body weight, metric form";
    /// Divisor of the four measures, stock type; turns into the printed 114 in inches and pounds.
    "divisor_stock" DIVISOR_STOCK: f64 = 3441.0;
        "cm, kg", FromMemory, Martinson2014, "equation of body weight, metric form";
    /// Exponents of girth, straight length, height and neck (cm) for draughts and warmbloods.
    "four_measures_2016" FOUR_MEASURES_2016: PowerLaw =
        PowerLaw { girth: 1.528, length: 0.574, height: 0.246, neck: 0.261 };
        "", Published, Catalano2016, "abstract";
    /// Divisor of the four measures, draught.
    "divisor_draft" DIVISOR_DRAFT: f64 = 1181.0;
        "cm, kg", Published, Catalano2016, "abstract";
    /// Divisor of the four measures, warmblood.
    "divisor_warmblood" DIVISOR_WARMBLOOD: f64 = 1209.0;
        "cm, kg", Published, Catalano2016, "abstract";
    /// Ideal weight in kg: so much a cm of wrap length and of height, less the intercept.
    "ideal_2014" IDEAL_2014: PerLengthAndHeight = PerLengthAndHeight { length: 2.8, height: 4.2 };
        "kg/cm", FromMemory, Martinson2014, "equation of ideal weight, metric form";
    /// Intercept of the ideal weight, Arabian.
    "ideal_less_arabian" IDEAL_LESS_ARABIAN: f64 = 611.0;
        "kg", FromMemory, Martinson2014, "equation of ideal weight, metric form";
    /// Intercept of the ideal weight, pony.
    "ideal_less_pony" IDEAL_LESS_PONY: f64 = 577.0;
        "kg", FromMemory, Martinson2014, "equation of ideal weight, metric form";
    /// Intercept of the ideal weight, stock type.
    "ideal_less_stock" IDEAL_LESS_STOCK: f64 = 606.0;
        "kg", FromMemory, Martinson2014, "equation of ideal weight, metric form";
    /// Ideal weight in kg: so much a cm of straight length and of height, less the intercept.
    "ideal_2016" IDEAL_2016: PerLengthAndHeight = PerLengthAndHeight { length: 4.92, height: 4.64 };
        "kg/cm", Published, Catalano2016, "abstract";
    /// Intercept of the ideal weight, draught.
    "ideal_less_draft" IDEAL_LESS_DRAFT: f64 = 951.0;
        "kg", Published, Catalano2016, "abstract";
    /// Intercept of the ideal weight, warmblood (one copy prints 1.016 for 1,016).
    "ideal_less_warmblood" IDEAL_LESS_WARMBLOOD: f64 = 1016.0;
        "kg", Published, Catalano2016, "abstract";
    /// Exponents of girth and elbow length, and the divisor, for grown donkeys (one copy prints 380 for 3801).
    "donkey" DONKEY: DonkeyLaw = DonkeyLaw { girth: 2.12, other: 0.688, divisor: 3801.0 };
        "cm, kg", FromMemory, PearsonOuassat1996, "abstract; the divisor's last digit is from memory";
    /// Exponent of girth, and the divisor, for grown donkeys by girth alone.
    "donkey_girth" DONKEY_GIRTH: DonkeyLaw = DonkeyLaw { girth: 2.65, other: 0.0, divisor: 2188.0 };
        "cm, kg", Published, PearsonOuassat1996, "abstract";
    /// Exponents of girth at the navel and elbow length, and the divisor, for donkeys under three years.
    "donkey_young" DONKEY_YOUNG: DonkeyLaw = DonkeyLaw { girth: 1.41, other: 1.09, divisor: 1000.0 };
        "cm, kg", Published, PearsonOuassat1996, "abstract";
    /// Exponents of girth and height, and the divisor, for fat donkeys in little work.
    "donkey_fat" DONKEY_FAT: DonkeyLaw = DonkeyLaw { girth: 2.575, other: 0.240, divisor: 3968.0 };
        "cm, kg", Published, PearsonOuassat2000, "quoted there from Svendsen 1997";
    /// Condition on the scale 1 to 9 from which a donkey is fat for the equation above.
    "donkey_fat_from" DONKEY_FAT_FROM: f64 = 7.0;
        "condition 1 to 9", Published, PearsonOuassat2000, "quoted there from Svendsen 1997";
    /// Typical wrap length of a horse or pony as a part of its girth, for when no length was taken.
    "length_to_girth" LENGTH_TO_GIRTH: f64 = 0.88;
        "", Ours, Tussock, "assess/published.rs";
    // Where they hold.

    /// Height for which the equations of four measures were made.
    "four_measures_height" FOUR_MEASURES_HEIGHT: Bounds = Bounds::new("height_cm", 112.0, 220.0);
        "", Published, Martinson2014, "methods; the upper end is ours";
    /// Age from which the equations of four measures and of grown donkeys hold.
    "grown_years" GROWN_YEARS: i32 = 3;
        "years", Published, Martinson2014, "methods";
    /// Age for which the equation of foals holds.
    "foal_age" FOAL_AGE: Bounds = Bounds::new("foal_age_days", 7.0, 42.0);
        "", Published, ExtensionTape, "foal, 1 to 6 weeks";
    /// Girth for which the equation of foals gives sense.
    "foal_girth" FOAL_GIRTH: Bounds = Bounds::new("foal_heart_girth_in", 26.0, 45.0);
        "", Ours, Tussock, "assess/published.rs";
    /// Age from which the equation of weanlings is used.
    "weanling_days" WEANLING_DAYS: i64 = 120;
        "days", Ours, Tussock, "assess/published.rs";
    /// Age that is believed.
    "age" AGE: Bounds = Bounds::new("age_years", 0.0, 60.0);
        "", Ours, Tussock, "assess/published.rs";
    /// Weights from which the equations of grown donkeys were made.
    "donkey_weight" DONKEY_WEIGHT: Bounds = Bounds::new("donkey_weight_kg", 74.0, 252.0);
        "", Published, PearsonOuassat1996, "abstract";
    /// Weights from which the equation of young donkeys was made.
    "donkey_young_weight" DONKEY_YOUNG_WEIGHT: Bounds = Bounds::new("young_donkey_weight_kg", 52.0, 128.0);
        "", Published, PearsonOuassat1996, "abstract";
    // How far they are out.

    /// Error of girth and length for a horse, either way.
    "band_girth_length" BAND_GIRTH_LENGTH: f64 = 10.0;
        "%", Ours, Tussock, "assess/published.rs";
    /// Mean error of girth and length as another author found it, the best of the methods compared; the band holds it.
    "girth_length_mean_error" GIRTH_LENGTH_MEAN_ERROR: f64 = -1.4;
        "%", Published, EllisThesis2003, "abstract, all animals";
    /// Error of girth and length under 112 cm, either way.
    "band_small" BAND_SMALL: f64 = 15.0;
        "%", Ours, Tussock, "assess/published.rs; the coefficients of Catalano 2019 for miniatures were not found";
    /// Error of the equations for foals, weanlings and yearlings, either way.
    "band_young" BAND_YOUNG: f64 = 15.0;
        "%", Ours, Tussock, "assess/published.rs";
    /// Error of the donkey equations, either way.
    "band_donkey" BAND_DONKEY: f64 = 15.0;
        "%", Ours, Tussock, "assess/published.rs";
    /// Error of girth alone for a donkey, either way: of 21 weighed donkeys it came out 20 % light on two.
    "band_donkey_girth" BAND_DONKEY_GIRTH: f64 = 25.0;
        "%", Ours, Tussock, "assess/published.rs";
    /// Error of girth alone for a horse or pony, either way.
    "band_girth_alone" BAND_GIRTH_ALONE: f64 = 20.0;
        "%", Ours, Tussock, "assess/published.rs";
    /// Error of the horse's equation for a mule, either way.
    "band_mule" BAND_MULE: f64 = 25.0;
        "%", Ours, Tussock, "assess/published.rs";
    /// Error of a scale for animals, either way.
    "band_scale" BAND_SCALE: f64 = 1.0;
        "%", Ours, Tussock, "assess/published.rs";
    /// Error of a weighbridge for vehicles, the difference of two weighings in steps of 20 kg, either way.
    "band_vehicle_scale" BAND_VEHICLE_SCALE: f64 = 20.0;
        "kg", Ours, Tussock, "assess/published.rs";
    /// Root mean square error of the four measures for Arabian, pony and stock types; the band is twice this.
    "error_2014" ERROR_2014: f64 = 22.0;
        "kg", FromMemory, Martinson2014, "fit";
    /// Root mean square error of the four measures for draughts and warmbloods; the band is twice this.
    "error_2016" ERROR_2016: f64 = 28.0;
        "kg", Published, Catalano2016, "abstract";
    /// Root mean square error of the ideal weight for Arabian, pony and stock types; the band is twice this.
    "error_ideal_2014" ERROR_IDEAL_2014: f64 = 24.0;
        "kg", FromMemory, Martinson2014, "fit";
    /// Root mean square error of the ideal weight for draughts and warmbloods; the band is twice this.
    "error_ideal_2016" ERROR_IDEAL_2016: f64 = 33.0;
        "kg", Published, Catalano2016, "abstract";
    // What is believed of a reading.

    /// Heart girth that is believed.
    "heart_girth" HEART_GIRTH: Bounds = Bounds::new("heart_girth_cm", 30.0, 300.0);
        "", Ours, Tussock, "assess/published.rs";
    /// Body length that is believed.
    "body_length" BODY_LENGTH: Bounds = Bounds::new("body_length_cm", 30.0, 280.0);
        "", Ours, Tussock, "assess/published.rs";
    /// Height that is believed.
    "height" HEIGHT: Bounds = Bounds::new("height_cm", 40.0, 220.0);
        "", Ours, Tussock, "assess/published.rs";
    /// Neck that is believed.
    "neck" NECK: Bounds = Bounds::new("neck_cm", 20.0, 180.0);
        "", Ours, Tussock, "assess/published.rs";
    /// Girth at the navel that is believed.
    "umbilical_girth" UMBILICAL_GIRTH: Bounds = Bounds::new("umbilical_girth_cm", 30.0, 350.0);
        "", Ours, Tussock, "assess/published.rs";
    /// Weight that is believed, shown by a scale or worked out.
    "body_weight" BODY_WEIGHT: Bounds = Bounds::new("body_weight_kg", 5.0, 1500.0);
        "", Ours, Tussock, "assess/published.rs";
    /// Length as a part of girth that is usual in horses; beyond it the tape is asked for again.
    "usual_proportion" USUAL_PROPORTION: Bounds = Bounds::new("length_to_girth", 0.7, 1.15);
        "", Ours, Tussock, "assess/published.rs";
    /// Elbow length as a part of girth that is usual in donkeys.
    "usual_proportion_donkey" USUAL_PROPORTION_DONKEY: Bounds = Bounds::new("length_to_girth", 0.6, 1.0);
        "", Ours, Tussock, "assess/published.rs";
    /// A scale weight overrides a tape taken within so many days of it.
    "fortnight" FORTNIGHT: i64 = 14;
        "days", Ours, Tussock, "assess/published.rs";
    // What is asked back before a reading is kept.

    /// How often a measure is taken in one go at most.
    "takes" TAKES: usize = 3;
        "readings", Ours, Tussock, "assess/published.rs";
    /// Readings of one girth or height in one go that lie further apart are asked back.
    "takes_apart_girth" TAKES_APART_GIRTH: f64 = 2.0;
        "% of the measure", Ours, Tussock, "assess/published.rs";
    /// Readings of one neck or length in one go that lie further apart are asked back: their ends are harder to find.
    "takes_apart_length" TAKES_APART_LENGTH: f64 = 3.0;
        "% of the measure", Ours, Tussock, "assess/published.rs";
    /// Readings of one scale in one go that lie further apart are asked back.
    "takes_apart_scale" TAKES_APART_SCALE: f64 = 1.0;
        "% of the weight", Ours, Tussock, "assess/published.rs";
    /// How far one reading of a heart girth or height is out by the tape alone, four times in five, same person, same
    /// tape: a girth that varies by 0.75 % weighs as 1.5 % of body weight.
    "noise_girth" NOISE_GIRTH: f64 = 1.0;
        "% of the measure", Ours, Tussock, "assess/published.rs; on 1 cm of girth being 1 to 2 % of weight";
    /// The same for the belly, which fills and breathes.
    "noise_belly" NOISE_BELLY: f64 = 1.5;
        "% of the measure", Ours, Tussock, "assess/published.rs";
    /// The same for neck and length, whose ends are harder to find.
    "noise_length" NOISE_LENGTH: f64 = 2.0;
        "% of the measure", Ours, Tussock, "assess/published.rs";
    /// What one cm of heart girth is worth, for girths of 100 to 200 cm: weight goes with the square of the girth.
    "cm_of_girth" CM_OF_GIRTH: (f64, f64) = (1.0, 2.0);
        "% of body weight", WorkedOut, CarrollHuntington1988, "from the equation of girth and length";
    /// A reading so far under the last is measured again at once, for the first week since; from then on later.
    "fell_by" FELL_BY: f64 = 2.0;
        "% of body weight", Ours, Tussock, "assess/published.rs";
    /// A reading so far over the last is asked back, for the first week since; from then on later.
    "rose_by" ROSE_BY: f64 = 4.0;
        "% of body weight", Ours, Tussock, "assess/published.rs";
    /// What both lines gain with each further week.
    "a_week_more" A_WEEK_MORE: f64 = 1.0;
        "% of body weight a week", Ours, Tussock, "assess/published.rs";
    /// A length or height of a grown animal that differs so much from the last is asked back: bone does not change.
    "frame_differs" FRAME_DIFFERS: f64 = 5.0;
        "% of the measure", Ours, Tussock, "assess/published.rs";
    /// Length, height and neck of an earlier tape stand in for those that were not taken, for so long.
    "frame_days" FRAME_DAYS: i64 = 365;
        "days", Ours, Tussock, "assess/published.rs";
    /// A reading of the same animal lies within this part of the last; beyond it another unit is thought of.
    "usual_to_last" USUAL_TO_LAST: (f64, f64) = (0.75, 1.33);
        "of the last reading", Ours, Tussock, "assess/published.rs";
    /// Heart girth of grown horses that is usual.
    "usual_girth_horse" USUAL_GIRTH_HORSE: (f64, f64) = (135.0, 260.0);
        "cm", Ours, Tussock, "assess/published.rs";
    /// Heart girth of grown ponies that is usual.
    "usual_girth_pony" USUAL_GIRTH_PONY: (f64, f64) = (85.0, 220.0);
        "cm", Ours, Tussock, "assess/published.rs";
    /// Heart girth of grown miniatures that is usual.
    "usual_girth_miniature" USUAL_GIRTH_MINIATURE: (f64, f64) = (65.0, 130.0);
        "cm", Ours, Tussock, "assess/published.rs";
    /// Heart girth of grown donkeys that is usual.
    "usual_girth_donkey" USUAL_GIRTH_DONKEY: (f64, f64) = (80.0, 175.0);
        "cm", Ours, Tussock, "assess/published.rs";
    /// Heart girth of grown mules that is usual.
    "usual_girth_mule" USUAL_GIRTH_MULE: (f64, f64) = (95.0, 230.0);
        "cm", Ours, Tussock, "assess/published.rs";
    /// Weight of grown horses that is usual.
    "usual_weight_horse" USUAL_WEIGHT_HORSE: (f64, f64) = (250.0, 1100.0);
        "kg", Ours, Tussock, "assess/published.rs";
    /// Weight of grown ponies that is usual.
    "usual_weight_pony" USUAL_WEIGHT_PONY: (f64, f64) = (80.0, 550.0);
        "kg", Ours, Tussock, "assess/published.rs";
    /// Weight of grown miniatures that is usual.
    "usual_weight_miniature" USUAL_WEIGHT_MINIATURE: (f64, f64) = (40.0, 190.0);
        "kg", Ours, Tussock, "assess/published.rs";
    /// Weight of grown donkeys that is usual.
    "usual_weight_donkey" USUAL_WEIGHT_DONKEY: (f64, f64) = (60.0, 400.0);
        "kg", Ours, Tussock, "assess/published.rs";
    /// Weight of grown mules that is usual.
    "usual_weight_mule" USUAL_WEIGHT_MULE: (f64, f64) = (90.0, 750.0);
        "kg", Ours, Tussock, "assess/published.rs";
    /// Weight over the cube of the height that is usual, from a starved horse to a fat Shetland.
    "usual_build" USUAL_BUILD: (f64, f64) = (60.0, 240.0);
        "kg/m3", Ours, Tussock, "assess/published.rs";
    /// Heart girth as a part of the height that is usual.
    "usual_girth_to_height" USUAL_GIRTH_TO_HEIGHT: (f64, f64) = (0.9, 1.7);
        "", Ours, Tussock, "assess/published.rs";
    /// Belly girth as a part of the heart girth that is usual.
    "usual_belly_to_girth" USUAL_BELLY_TO_GIRTH: (f64, f64) = (0.9, 1.6);
        "", Ours, Tussock, "assess/published.rs";
    /// Neck as a part of the heart girth that is usual.
    "usual_neck_to_girth" USUAL_NECK_TO_GIRTH: (f64, f64) = (0.33, 0.85);
        "", Ours, Tussock, "assess/published.rs";
    /// Neck as a part of the height over which ponies later foundered on pasture; none for horses could be confirmed.
    "neck_to_height_pony" NECK_TO_HEIGHT_PONY: f64 = 0.71;
        "", FromMemory, Carter2009Laminitis, "neck circumference to height, with condition, crest, insulin and leptin";
    // Condition and crest.

    /// The scale 1 to 9.
    "condition_nine" CONDITION_NINE: Bounds = Bounds::new("condition_nine_step", 1.0, 9.0);
        "", Published, Henneke1983, "scale";
    /// The scale 0 to 5.
    "condition_five" CONDITION_FIVE: Bounds = Bounds::new("condition_five_step", 0.0, 5.0);
        "", Published, CarrollHuntington1988, "scale";
    /// The scale that a donkey or mule is scored on unless somebody chooses the other.
    "donkey_scale" DONKEY_SCALE: ConditionScale = ConditionScale::FiveStep;
        "", Ours, Tussock, "donkeys are scored in five steps in the trade, from memory; these sites and words were made for horses";
    /// A score again sooner than this says little: condition lags weight.
    "condition_every" CONDITION_EVERY: i64 = 28;
        "days", Ours, Tussock, "monthly; in Dugdale 2010 condition stood still for 12 weeks while weight fell";
    /// So many of the six sites must be scored for a mean.
    "nine_step_sites" NINE_STEP_SITES: usize = 4;
        "sites", Ours, Tussock, "assess/published.rs";
    /// The pelvis score is moved so far towards neck or ribs.
    "five_step_move" FIVE_STEP_MOVE: f64 = 0.5;
        "condition 0 to 5", Published, CarrollHuntington1988, "scale";
    /// It is moved when they differ by so much.
    "five_step_moves_from" FIVE_STEP_MOVES_FROM: f64 = 1.0;
        "condition 0 to 5", Published, CarrollHuntington1988, "scale";
    /// A difference under this is noise on the scale 1 to 9.
    "noise_nine" NOISE_NINE: f64 = 1.0;
        "condition 1 to 9", Ours, Tussock, "assess/published.rs";
    /// A difference up to this is noise on the scale 0 to 5.
    "noise_five" NOISE_FIVE: f64 = 0.5;
        "condition 0 to 5", Ours, Tussock, "assess/published.rs";
    /// Each half point of 0 to 5, from 0 up, as a range on 1 to 9. 0.5, 1.5 and 4.5 lie between their neighbours.
    "five_as_nine" FIVE_AS_NINE: [(f64, f64); 11] = [
        (1.0, 1.0), (1.5, 2.0), (2.0, 3.0), (3.0, 3.5), (4.0, 4.0), (4.5, 5.0),
        (5.0, 6.0), (6.0, 7.0), (7.0, 8.0), (8.0, 8.5), (9.0, 9.0),
    ];
        "condition 1 to 9", Ours, Tussock, "assess/published.rs";
    /// Condition from one answer: ribs seen. The words are the scale's, the range is ours.
    "ribs_seen" RIBS_SEEN: (f64, f64) = (3.0, 4.0);
        "condition 1 to 9", Ours, Tussock, "after the words of Henneke 1983 on ribs";
    /// Condition from one answer: ribs not seen and easily felt. The words are the scale's, the range is ours.
    "ribs_felt_easily" RIBS_FELT_EASILY: (f64, f64) = (4.5, 5.5);
        "condition 1 to 9", Ours, Tussock, "after the words of Henneke 1983 on ribs";
    /// Condition from one answer: ribs felt only through a soft cover or with pressure. The words are the scale's, the
    /// range is ours.
    "ribs_felt_with_pressure" RIBS_FELT_WITH_PRESSURE: (f64, f64) = (6.0, 7.0);
        "condition 1 to 9", Ours, Tussock, "after the words of Henneke 1983 on ribs";
    /// Condition from one answer: ribs hard to feel or not felt. The words are the scale's, the range is ours.
    "ribs_not_felt" RIBS_NOT_FELT: (f64, f64) = (8.0, 9.0);
        "condition 1 to 9", Ours, Tussock, "after the words of Henneke 1983 on ribs";
    /// The crest scale.
    "crest" CREST: Bounds = Bounds::new("crest", 0.0, 5.0);
        "", Published, Carter2009Crest, "scale";
    /// A crest of this score or more is flagged strongly.
    "crest_strong" CREST_STRONG: f64 = 4.0;
        "crest score 0 to 5", Ours, Tussock, "assess/published.rs";
    // Target weight.

    /// Weight of one unit of condition, low end: 16 kg in 500.
    "per_unit_low" PER_UNIT_LOW: f64 = 3.2;
        "% of body weight", FromMemory, Heusner1993, "cited in NRC 2007";
    /// Weight of one unit of condition, as reckoned.
    "per_unit_middle" PER_UNIT_MIDDLE: f64 = 3.6;
        "% of body weight", Ours, Tussock, "assess/published.rs";
    /// Weight of one unit of condition, high end: 20 kg in 500.
    "per_unit_high" PER_UNIT_HIGH: f64 = 4.0;
        "% of body weight", FromMemory, Heusner1993, "cited in NRC 2007";
    /// The condition a target is for.
    "target_condition" TARGET_CONDITION: f64 = 5.0;
        "condition 1 to 9", Ours, Tussock, "assess/published.rs";
    /// The condition that is aimed for first above the range below.
    "first_condition" FIRST_CONDITION: f64 = 7.0;
        "condition 1 to 9", Ours, Tussock, "assess/published.rs";
    /// Condition from which a target weight can be worked out.
    "target_from" TARGET_FROM: Bounds = Bounds::new("condition_nine_step", 3.0, 8.0);
        "", Ours, Tussock, "assess/published.rs";
    /// The target and the published ideal weight are both shown when they differ by more than this.
    "ideal_differs" IDEAL_DIFFERS: f64 = 5.0;
        "%", Ours, Tussock, "assess/published.rs";
}
