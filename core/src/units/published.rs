//! Conversions that are exact by definition. The room `sources` gives each its work and lists it.

/// Kilograms in a pound (international yard and pound agreement, 1959; exact).
pub const KG_PER_LB: f64 = 0.453_592_37;
/// Pounds in a stone (exact).
pub const LB_PER_STONE: f64 = 14.0;
/// Ounces in a pound (exact).
pub const OZ_PER_LB: f64 = 16.0;
/// Centimetres in an inch (international yard and pound agreement, 1959; exact).
pub const CM_PER_INCH: f64 = 2.54;
/// Centimetres in a metre (exact).
pub const CM_PER_M: f64 = 100.0;
/// Square metres in a hectare (exact).
pub const SQ_M_PER_HECTARE: f64 = 10_000.0;
/// Square metres in an international acre (international yard, 1959; exact). The survey acre is another one.
pub const SQ_M_PER_ACRE: f64 = 4_046.856_422_4;
/// Inches in a hand (exact).
pub const INCHES_PER_HAND: f64 = 4.0;
/// Megajoules in a megacalorie (thermochemical calorie; exact).
pub const MJ_PER_MCAL: f64 = 4.184;
/// Degrees Fahrenheit at 0 degrees Celsius (exact).
pub const FAHRENHEIT_AT_ZERO: f64 = 32.0;
/// Degrees Fahrenheit in one degree Celsius (exact).
pub const FAHRENHEIT_PER_CELSIUS: f64 = 1.8;
/// Milliseconds in a minute (exact).
pub const MS_PER_MINUTE: i64 = 60_000;
/// Minutes in an hour (exact).
pub const MINUTES_PER_HOUR: i64 = 60;
/// Hours in a day that is not a day of a clock change (exact).
pub const HOURS_PER_DAY: i64 = 24;
/// Days in a week (exact).
pub const DAYS_PER_WEEK: i64 = 7;
/// The lowest dry matter, in percent, that a feed is believed to have: under it a misplaced decimal is likelier (ours).
pub const LOWEST_DRY_PERCENT: f64 = 5.0;
