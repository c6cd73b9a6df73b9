//! Constants of intake at grass. The model was tuned by hand to the very trials named here: that it agrees with them says
//! nothing of other animals on other grass.

use crate::sources::{Mark, Published, Work, list_constants};
use crate::units::{Bounds, EnergyDensity, PartOfBody, ShareOfDm, Span};

/// Writes a constant and its place in the list in one line: name, type, value; key, unit, work, place, mark.
macro_rules! published {
    ($($(#[$doc:meta])* $name:ident: $kind:ty = $value:expr; $key:literal, $unit:literal, $work:ident, $place:literal, $mark:ident;)*) => {
        $(
            $(#[$doc])*
            pub const $name: Published<$kind> = Published {
                id: concat!("graze.intake.", $key),
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
    // ---- the model ----
    /// Hours in which about two thirds of what is eaten in a long day is eaten.
    FIRST_HOURS: f64 = 10.7; "first_hours", "h", Tussock, "tuned to Ince 2011, Dowler and the yearly means of ponies at grass", Ours;
    /// What an average or unadapted animal would come to, without end.
    UNADAPTED: PartOfBody = PartOfBody::percent(2.0); "unadapted", "", Ince2011, "0.49 % in 3 h in the first week", WorkedOut;
    /// What a horse comes to that is used to short turnout.
    ADAPTED_HORSE: PartOfBody = PartOfBody::percent(3.0); "adapted_horse", "", Tussock, "between 2.0 and 3.8", Ours;
    /// What a pony comes to that is used to short turnout.
    ADAPTED_PONY: PartOfBody = PartOfBody::percent(3.8); "adapted_pony", "", Ince2011, "0.91 % in 3 h in the sixth week", WorkedOut;
    /// Weeks of short turnout until it is used to it; half of it by the third.
    ADAPTED_WEEKS: f64 = 6.0; "adapted_weeks", "weeks", Ince2011, "six weeks; that it rises evenly is ours", WorkedOut;
    /// The upper bound: what ceilings are judged with.
    UPPER: PartOfBody = PartOfBody::percent(4.5); "upper", "", Tussock, "free access of 1.3 to more than 5 % a day; ceilings lean on it", Ours;
    /// The lower bound: what floors are judged with. Eight hours at 0.088 kg/100 kg/h.
    LOWER: PartOfBody = PartOfBody::percent(1.33); "lower", "", DowlerThesis, "0.088 kg/100 kg/h over 8 h in February", WorkedOut;
    /// Hours that are believed for a day at grass.
    HOURS: Bounds = Bounds::new("hours_at_grass", 0.0, 24.0); "hours", "h", Tussock, "a day", Ours;

    // ---- the muzzle ----
    /// The part that a muzzle takes off at most.
    MUZZLE_MOST: f64 = 0.83; "muzzle_most", "", Longland2016, "77, 77 and 83 % by season, four ponies, 3 h", Published;
    /// The part that a muzzle takes off at least.
    MUZZLE_LEAST: f64 = 0.30; "muzzle_least", "", Glunk2014Muzzle, "30 %, three or four horses, 4 h", Published;
    /// What a muzzle is taken to take off.
    MUZZLE_LIKELY: f64 = 0.50; "muzzle_likely", "", Tussock, "between 30 and 83 %", Ours;
    /// The longest a muzzle stays on in a day.
    MUZZLE_LONGEST: Span = Span::hours(10); "muzzle_longest", "", CommonPractice, "practice rule 16", CommonPractice;

    // ---- what a day at grass may bring ----
    /// How far the most that is eaten may lie over the dry matter of the plan.
    OVER: PartOfBody = PartOfBody::percent(0.25); "over", "of the lightest it may be", Tussock, "one step of the rules", Ours;
    /// The longest a day for an animal at risk: unmuzzled ponies all ate more than 1 % in at least one session of it.
    AT_RISK_LONGEST: Span = Span::hours(3); "at_risk_longest", "", Longland2016, "3 h sessions", Published;
    /// Sugar and starch of grass that ceilings are judged with: May's mean and half of the day's rise. It can pass 40 %.
    SUGAR_MOST: ShareOfDm = ShareOfDm::percent(25.0); "sugar_most", "of dry matter", Shewmaker2006, "239 g/kg in May, 22 g/kg from dawn to dusk", WorkedOut;
    /// How sure the hay's own sugar is taken, in spreads over its mean: nine in ten lie under it.
    HAY_SURE: f64 = 1.2816; "hay_sure", "", ExactByDefinition, "ninety in a hundred of a normal distribution", Published;
    /// Energy of grass that floors are judged with: that of mature cool-season grass, less the error of the equation.
    ENERGY_LEAST: EnergyDensity = EnergyDensity::mcal_per_kg(1.79); "energy_least", "", Nasem2021, "mature cool-season grass hay 1.99 by Pagan's equation, less 0.2", WorkedOut;
    /// Turnout shorter than this is not worth the walk.
    SHORTEST: Span = Span::minutes(15); "shortest", "", Tussock, "graze/intake", Ours;
    /// Steps in which a turnout is told.
    STEP: Span = Span::minutes(5); "step", "", Tussock, "graze/intake", Ours;

    // ---- the trials the model was tuned to ----
    /// Ponies in the first week of 3 hours a day.
    SEEN_FIRST_WEEK: PartOfBody = PartOfBody::percent(0.49); "seen_first_week", "", Ince2011, "four ponies, 3 h a day, week 1, as told by UMN", Published;
    /// The same ponies in the sixth week.
    SEEN_SIXTH_WEEK: PartOfBody = PartOfBody::percent(0.91); "seen_sixth_week", "", Ince2011, "the same four ponies, 3 h a day, week 6, as told by UMN", Published;
    /// Horses over eight hours: the mean of three months.
    SEEN_EIGHT_HOURS: PartOfBody = PartOfBody::percent(0.97); "seen_eight_hours", "", DowlerThesis, "eight horses, 8 h, mean of 0.70 in February, 0.86 in May and 1.33 in October", WorkedOut;
    /// Horses in the first four of those hours.
    SEEN_FIRST_FOUR: PartOfBody = PartOfBody::percent(0.64); "seen_first_four", "", DowlerThesis, "the same, the first 4 h at twice the rate of the second", WorkedOut;
    /// Idle ponies out day and night, on the better sward.
    SEEN_ALL_DAY_LEAST: PartOfBody = PartOfBody::percent(3.4); "seen_all_day_least", "", CommonPractice, "yearly mean of idle ponies on the better sward, second-hand", FromMemory;
    /// Idle ponies out day and night, on the poorer sward.
    SEEN_ALL_DAY_MOST: PartOfBody = PartOfBody::percent(4.2); "seen_all_day_most", "", CommonPractice, "yearly mean of idle ponies on the poorer sward, second-hand", FromMemory;
    /// The part that muzzles took off in the season in which they took off least.
    MUZZLE_SEASONS_LEAST: f64 = 0.77; "muzzle_seasons_least", "", Longland2016, "77, 77 and 83 % by season, four ponies, 3 h", Published;
    /// The hours of the trials of three hours.
    TRIAL_SHORT: Span = Span::hours(3); "trial_short", "", Ince2011, "3 h a day", Published;
    /// The hours of the trial over a working day.
    TRIAL_DAY: Span = Span::hours(8); "trial_day", "", DowlerThesis, "8 h", Published;
    /// The first part of that day.
    TRIAL_FIRST_PART: Span = Span::hours(4); "trial_first_part", "", DowlerThesis, "the first 4 h", Published;
}
