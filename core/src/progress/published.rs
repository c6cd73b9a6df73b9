//! Constants of `progress`.

use crate::sources::{Mark, Published, Work, list_constants};
use crate::units::Bounds;

const fn ours<T>(
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

// How far a reading is out.

/// What readings of the same tape by the same person scatter.
pub const TAPE_SCATTER: Published<f64> = ours(
    "progress.tape_scatter",
    1.5,
    "% of weight, standard deviation",
    "about 1 cm of girth, which is 1 to 2 % of weight",
);
/// How far two people with one tape stand apart, for good.
pub const PERSON_OFFSET: Published<f64> = ours(
    "progress.person_offset",
    1.5,
    "% of weight, standard deviation",
    "another hand pulls the tape about 1 cm otherwise",
);
/// How far a scale stands from the truth, for good.
pub const SCALE_OFFSET: Published<f64> = ours(
    "progress.scale_offset",
    0.5,
    "% of weight, standard deviation",
    "half of the band of a scale",
);
/// A reading so many times its error away from what all others say is odd.
pub const ODD_FROM: Published<f64> = ours(
    "progress.odd_from",
    3.0,
    "times its error",
    "about 1 in 400 of good readings",
);
/// Readings of one day within so many times their scatter of each other bear each other out and are never odd.
pub const BORNE_OUT: Published<f64> = ours(
    "progress.borne_out",
    2.0,
    "times the scatter of their difference",
    "19 in 20 of good pairs",
);
/// With fewer readings none is called odd.
pub const ODD_NEEDS: Published<usize> =
    ours("progress.odd_needs", 4, "readings", "progress/published.rs");
/// At most one reading in so many is odd; more than that is no trend with slips.
pub const ODD_AT_MOST: Published<usize> = ours(
    "progress.odd_at_most",
    4,
    "one in so many readings",
    "progress/published.rs",
);
/// How many of the last readings are looked at.
pub const READINGS_USED: Published<usize> = ours(
    "progress.readings_used",
    160,
    "last readings",
    "about three years of weekly readings",
);

// How the animal moves.

/// How far the level wanders beside its slope in a week.
pub const LEVEL_DRIFT: Published<f64> = ours(
    "progress.level_drift",
    0.16,
    "% of weight a week, standard deviation",
    "0.5 kg a week of 305 kg, as in the vector of weekly weights",
);
/// How far the rate wanders in a week.
pub const SLOPE_DRIFT: Published<f64> = ours(
    "progress.slope_drift",
    0.05,
    "% of weight a week, standard deviation a week",
    "0.1 kg a week of 305 kg in the vector of weekly weights; more for the seasons",
);
/// How far the rate may change when the amounts of the plan change.
pub const AMOUNT_STEP: Published<f64> = ours(
    "progress.amount_step",
    0.3,
    "% of weight a week, standard deviation",
    "a step of the ration against the rates of Argo 2012, 0.16 to 0.55 % a week",
);
/// How far the level may jump while the gut settles: so wide that the jump says nothing about the rate.
pub const GUT_FILL_JUMP: Published<f64> = ours(
    "progress.gut_fill_jump",
    10.0,
    "% of weight, standard deviation",
    "more than twice the first week of Dugdale 2010",
);
/// How long the gut takes to settle after a change of what fills it.
pub const SETTLES_IN: Published<i64> = Published {
    id: "progress.settles_in",
    value: 7,
    unit: "days",
    work: Work::Dugdale2010,
    place: "abstract; loss in week 1 apart from the weeks after it",
    mark: Mark::Published,
};
/// The most that the first week of a diet took off by gut fill: the mean and twice its spread.
pub const GUT_FILL_MOST: Published<f64> = Published {
    id: "progress.gut_fill_most",
    value: 6.5,
    unit: "% of weight",
    work: Work::Dugdale2010,
    place: "abstract; 4.3 and twice 1.1 %",
    mark: Mark::WorkedOut,
};

// What is decided.

/// A chance that is enough to act on.
pub const LIKELY: Published<f64> = ours("progress.likely", 0.8, "", "4 in 5");
/// How many standard deviations either way hold four fifths of what may be.
pub const BAND: Published<f64> = ours(
    "progress.band",
    1.281_551_565_544_6,
    "standard deviations",
    "four in five, of the normal distribution",
);
/// Slower than this is no loss worth the name.
pub const RATE_SLOW: Published<f64> = ours(
    "progress.rate_slow",
    0.25,
    "% of weight a week",
    "the rule of the rate; the slowest animals of Argo 2012 lost 0.16",
);
/// From here on loss is what is wanted.
pub const RATE_WANTED: Published<f64> = Published {
    id: "progress.rate_wanted",
    value: 0.5,
    unit: "% of weight a week",
    work: Work::Eceim2019,
    place: "aim of 0.5 to 1 % a week",
    mark: Mark::FromMemory,
};
/// Faster than this is too fast.
pub const RATE_FAST: Published<f64> = Published {
    id: "progress.rate_fast",
    value: 1.0,
    unit: "% of weight a week",
    work: Work::Eceim2019,
    place: "aim of 0.5 to 1 % a week",
    mark: Mark::FromMemory,
};
/// A reading down by more than this in a week is taken again at once.
pub const DOWN_AGAIN: Published<f64> = ours(
    "progress.down_again",
    2.0,
    "% of weight a week",
    "the rule of the rate",
);
/// Weeks a rate is judged over.
pub const RATE_WEEKS: Published<f64> =
    ours("progress.rate_weeks", 4.0, "weeks", "the rule of the rate");
/// Readings a standstill is judged on.
pub const RATE_READINGS: Published<usize> = ours(
    "progress.rate_readings",
    5,
    "readings",
    "the rule of the rate",
);
/// Before any reading, what an animal on a ration is taken to lose.
pub const LOSS_BEFORE: Published<f64> = ours(
    "progress.loss_before",
    0.5,
    "% of weight a week",
    "between Argo 2012, 0.16 to 0.55, and Dugdale 2010, 0.7; for the alarm only",
);
/// How far that may be from what it does.
pub const LOSS_BEFORE_SPREAD: Published<f64> = ours(
    "progress.loss_before_spread",
    0.8,
    "% of weight a week, standard deviation",
    "a gain in spring and the 2.3 % a week of one published case lie about twice this away",
);
/// How often a week brings a sudden fall or rise.
pub const SUDDEN: Published<f64> =
    ours("progress.sudden", 0.05, "of weeks", "progress/published.rs");
/// How far it then goes.
pub const SUDDEN_SPREAD: Published<f64> = ours(
    "progress.sudden_spread",
    4.0,
    "% of weight, standard deviation",
    "progress/published.rs",
);
/// More readings than this on one day tell nothing more about that day.
pub const AGAIN_AT_MOST: Published<usize> = ours(
    "progress.again_at_most",
    3,
    "readings of one day",
    "progress/published.rs",
);
/// How far ahead a forecast looks.
pub const FORECAST_WEEKS: Published<u32> = ours(
    "progress.forecast_weeks",
    78,
    "weeks",
    "a year and a half; what lies beyond is not known",
);
/// The day-long steps that a trend may be spread over.
pub const DAYS_MOST: Published<Bounds> = ours(
    "progress.days",
    Bounds::new("days_between_weighings", 0.0, 20_000.0),
    "",
    "longer than a life is a slip of the year",
);

// Phases and the next step.

/// Weighings of a new animal before anything is decided.
pub const NEW_WEIGHINGS: Published<u32> =
    ours("progress.new_weighings", 2, "weighings", "phases: new");
/// Readings over the band of a holding animal after which it is losing again.
pub const READINGS_OVER: Published<u32> =
    ours("progress.readings_over", 2, "readings", "phases: holding");
/// Centimetres of girth by which a holding animal has grown when it is losing again.
pub const GIRTH_UP_CM: Published<f64> = ours("progress.girth_up", 2.0, "cm", "phases: holding");
/// Condition under which the vet is asked before anything else.
pub const VERY_THIN: Published<f64> = ours(
    "progress.very_thin",
    3.0,
    "condition 1 to 9",
    "under it no target is reckoned",
);
/// Scores that show an animal has filled out.
pub const SCORES_FILLED: Published<usize> = ours(
    "progress.scores_filled",
    2,
    "scores",
    "never on one reading",
);
/// By so much of the plan what was eaten may differ from it.
pub const OFF_PLAN: Published<f64> = ours(
    "progress.off_plan",
    0.1,
    "of the plan",
    "a tenth: more than a scale and a wet net are out",
);
/// The least part of what was offered that somebody saw, for the ledger to count as checked.
pub const LEAST_SEEN: Published<f64> = ours(
    "progress.least_seen",
    0.5,
    "of what was offered",
    "taken as planned is not seen",
);
/// The most of what was offered that nobody may know, for the ledger to count as checked.
pub const MOST_NOT_KNOWN: Published<f64> = ours(
    "progress.most_not_known",
    0.2,
    "of what was offered",
    "1 in 5, the other side of 4 in 5",
);
/// Days a lot must still last for a test to be worth asking about.
pub const LONG_LOT_DAYS: Published<i64> = ours(
    "progress.long_lot",
    42,
    "days",
    "practice section 3: a lot over 6 weeks",
);
/// Days before an episode that are looked back over.
pub const LOOK_BACK_DAYS: Published<u64> = ours(
    "progress.look_back",
    30,
    "days",
    "practice section 2, After an episode",
);

list_constants![
    TAPE_SCATTER,
    PERSON_OFFSET,
    SCALE_OFFSET,
    ODD_FROM,
    BORNE_OUT,
    ODD_NEEDS,
    ODD_AT_MOST,
    READINGS_USED,
    LEVEL_DRIFT,
    SLOPE_DRIFT,
    AMOUNT_STEP,
    GUT_FILL_JUMP,
    SETTLES_IN,
    GUT_FILL_MOST,
    LIKELY,
    BAND,
    RATE_SLOW,
    RATE_WANTED,
    RATE_FAST,
    DOWN_AGAIN,
    RATE_WEEKS,
    RATE_READINGS,
    LOSS_BEFORE,
    LOSS_BEFORE_SPREAD,
    SUDDEN,
    SUDDEN_SPREAD,
    AGAIN_AT_MOST,
    FORECAST_WEEKS,
    DAYS_MOST,
    NEW_WEIGHINGS,
    READINGS_OVER,
    GIRTH_UP_CM,
    VERY_THIN,
    SCORES_FILLED,
    OFF_PLAN,
    LEAST_SEEN,
    MOST_NOT_KNOWN,
    LONG_LOT_DAYS,
    LOOK_BACK_DAYS,
];
