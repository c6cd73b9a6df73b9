//! What bodies are made of: whole numbers in a base unit, what was typed, decimals as reported, money, job keys.

use crate::log::error::{Allowed, Form, LogError, Path};
use crate::log::stored::{Name, Stored, text, twin};
use crate::units::{Area, AsFed, BodyMass, Currency, DryMatter, Length, Money, PartOfBody};
use serde_json::Value;

/// Defines a whole number in a base unit with its range.
macro_rules! whole_number {
    ($(#[$doc:meta])* $name:ident = ($min:expr, $max:expr)) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub struct $name(i64);

        impl $name {
            /// The smallest and the largest that are believed.
            pub const RANGE: (i64, i64) = ($min, $max);

            /// From a whole number; the error names the range.
            pub fn new(value: i64) -> Result<Self, $crate::log::LogError> {
                let (min, max) = Self::RANGE;
                if (min..=max).contains(&value) {
                    Ok(Self(value))
                } else {
                    Err($crate::log::error::Path::Root.key(stringify!($name)).refuse(
                        &value.to_string(),
                        $crate::log::Allowed::Range { min, max },
                    ))
                }
            }

            /// The whole number.
            pub const fn get(self) -> i64 {
                self.0
            }
        }

        impl $crate::log::stored::Stored for $name {
            fn read(
                value: Option<&serde_json::Value>,
                path: &$crate::log::error::Path<'_>,
            ) -> Result<Self, $crate::log::LogError> {
                $crate::log::stored::whole(value, Self::RANGE, path).map(Self)
            }

            fn write(&self) -> Option<serde_json::Value> {
                Some(serde_json::Value::from(self.0))
            }
        }
    };
}
pub(crate) use whole_number;

whole_number! {
    /// The weight of an animal, in grams.
    // numeric: 1 kg to 2.5 t
    BodyGrams = (1_000, 2_500_000)
}
whole_number! {
    /// A mass of feed, of a net or of a bale, in grams.
    // numeric: to 2 t
    FeedGrams = (0, 2_000_000)
}
whole_number! {
    /// A length, in millimetres.
    // numeric: to 10 m
    Millimetres = (0, 10_000)
}
whole_number! {
    /// A score, in tenths of a point.
    // numeric: every scale in use ends at 9
    Tenths = (0, 90)
}
whole_number! {
    /// A part of body weight a day, in hundredths of a percent: 1.5 % is 150.
    /// Up to 10 %.
    BodyHundredths = (0, 1_000)
}
whole_number! {
    /// A count.
    Count = (0, 1_000)
}
whole_number! {
    /// A latitude or longitude, in millionths of a degree.
    // numeric: to 180 degrees
    MicroDegrees = (-180_000_000, 180_000_000)
}
whole_number! {
    /// An area, in square metres.
    // numeric: to 1,000 ha
    SquareMetres = (1, 10_000_000)
}

/// The nearest whole number; `None` when there is none.
fn nearest(value: f64) -> Option<i64> {
    // numeric: 2^53
    if value.abs() < 9_007_199_254_740_992.0 {
        #[allow(clippy::cast_possible_truncation, reason = "checked just above")]
        Some(value.round() as i64)
    } else {
        None
    }
}

/// Makes a whole number from a measured value, or names what is wrong with it.
pub(super) fn from_measure<T>(
    value: f64,
    range: (i64, i64),
    make: fn(i64) -> Result<T, LogError>,
) -> Result<T, LogError> {
    match nearest(value) {
        Some(whole) => make(whole),
        None => Err(Path::Root.refuse(
            &value.to_string(),
            Allowed::Range {
                min: range.0,
                max: range.1,
            },
        )),
    }
}

impl BodyGrams {
    /// To the nearest gram.
    pub fn of(mass: BodyMass) -> Result<Self, LogError> {
        from_measure(mass.to_kg() * 1000.0, Self::RANGE, Self::new)
    }

    /// As a weight.
    pub fn mass(self) -> BodyMass {
        BodyMass::kg(self.0 as f64 / 1000.0)
    }
}

impl FeedGrams {
    /// To the nearest gram, as fed.
    pub fn of(mass: AsFed) -> Result<Self, LogError> {
        from_measure(mass.to_kg() * 1000.0, Self::RANGE, Self::new)
    }

    /// To the nearest gram of dry matter.
    pub fn of_dry(mass: DryMatter) -> Result<Self, LogError> {
        from_measure(mass.to_kg() * 1000.0, Self::RANGE, Self::new)
    }

    /// As feed as fed.
    pub fn as_fed(self) -> AsFed {
        AsFed::kg(self.0 as f64 / 1000.0)
    }

    /// As dry matter.
    pub fn dry(self) -> DryMatter {
        DryMatter::kg(self.0 as f64 / 1000.0)
    }
}

impl SquareMetres {
    /// As an area.
    pub const fn area(self) -> Area {
        Area::sq_m(self.0 as f64)
    }
}

impl Count {
    /// Up to a whole number.
    pub fn of(value: f64) -> Result<Self, LogError> {
        from_measure(value.ceil(), Self::RANGE, Self::new)
    }
}

impl Millimetres {
    /// To the nearest millimetre.
    pub fn of(length: Length) -> Result<Self, LogError> {
        from_measure(length.to_cm() * 10.0, Self::RANGE, Self::new)
    }

    /// As a length.
    pub fn length(self) -> Length {
        Length::cm(self.0 as f64 / 10.0)
    }
}

impl Tenths {
    /// To the nearest tenth of a point.
    pub fn of(score: f64) -> Result<Self, LogError> {
        from_measure(score * 10.0, Self::RANGE, Self::new)
    }

    /// As a score.
    pub fn score(self) -> f64 {
        self.0 as f64 / 10.0
    }
}

impl BodyHundredths {
    /// To the nearest hundredth of a percent of body weight.
    pub fn of(part: PartOfBody) -> Result<Self, LogError> {
        from_measure(part.to_percent() * 100.0, Self::RANGE, Self::new)
    }

    /// As a part of body weight.
    pub fn part(self) -> PartOfBody {
        PartOfBody::percent(self.0 as f64 / 100.0)
    }
}

twin! {
    /// The weight of an animal, with what was typed.
    BodyWeight {
        /// Grams.
        g: BodyGrams,
        /// As typed.
        typed: Option<String>,
    }
}
twin! {
    /// A mass of feed, of a net or of a bale, with what was typed.
    FeedWeight {
        /// Grams.
        g: FeedGrams,
        /// As typed; `None` when it was set with a button.
        typed: Option<String>,
    }
}
twin! {
    /// A length, with what was typed.
    Distance {
        /// Millimetres.
        mm: Millimetres,
        /// As typed.
        typed: Option<String>,
    }
}

impl BodyWeight {
    /// To the nearest gram, beside what was typed.
    pub fn of(mass: BodyMass, typed: Option<String>) -> Result<Self, LogError> {
        Ok(Self {
            g: BodyGrams::of(mass)?,
            typed,
        })
    }
}

impl FeedWeight {
    /// To the nearest gram, beside what was typed.
    pub fn of(mass: AsFed, typed: Option<String>) -> Result<Self, LogError> {
        Ok(Self {
            g: FeedGrams::of(mass)?,
            typed,
        })
    }
}

impl Distance {
    /// To the nearest millimetre, beside what was typed.
    pub fn of(length: Length, typed: Option<String>) -> Result<Self, LogError> {
        Ok(Self {
            mm: Millimetres::of(length)?,
            typed,
        })
    }
}

/// A decimal as a laboratory or a label says it: digits with at most one point and at most one minus, no exponent.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct Decimal(String);

impl Decimal {
    /// From its digits.
    pub fn new(digits: &str) -> Result<Self, LogError> {
        Self::checked(digits, &Path::Root.key("value"))
    }

    fn checked(digits: &str, path: &Path<'_>) -> Result<Self, LogError> {
        let bare = digits.strip_prefix('-').unwrap_or(digits);
        let (whole, part) = bare.split_once('.').unwrap_or((bare, "0"));
        let number = |text: &str| !text.is_empty() && text.bytes().all(|d| d.is_ascii_digit());
        // numeric: more digits than any instrument has
        if number(whole) && number(part) && digits.len() <= 24 {
            Ok(Self(digits.to_owned()))
        } else {
            Err(path.refuse(digits, Allowed::Form(Form::Decimal)))
        }
    }

    /// The digits, as they were reported.
    pub fn digits(&self) -> &str {
        &self.0
    }

    /// The number.
    pub fn number(&self) -> f64 {
        // The form was checked when it was made, and every such text is a finite number.
        self.0.parse().unwrap_or_default()
    }
}

impl Stored for Decimal {
    fn read(value: Option<&Value>, path: &Path<'_>) -> Result<Self, LogError> {
        Self::checked(text(value, path)?, path)
    }

    fn write(&self) -> Option<Value> {
        Some(Value::from(self.digits()))
    }
}

twin! {
    /// A value as a laboratory or a label says it.
    Reported {
        /// The digits with a point.
        value: Decimal,
        /// The unit as reported: `%`, `g/kg`, `MJ/kg`.
        unit: Name,
        /// As it was typed: `10,45 %`.
        typed: Option<String>,
    }
}

whole_number! {
    /// An amount of money in the minor unit of its currency.
    // numeric: beyond any price
    Minor = (0, 1_000_000_000_000)
}

/// A price, as `{ "minor": 850, "currency": "GBP" }`.
impl Stored for Money {
    fn read(value: Option<&Value>, path: &Path<'_>) -> Result<Self, LogError> {
        let map = crate::log::json::object(value, path)?;
        let currency = path.key("currency");
        let code = text(map.get("currency"), &currency)?;
        Ok(Self {
            minor: Minor::read(map.get("minor"), &path.key("minor"))?.get(),
            currency: Currency::from_code(code)
                .map_err(|_| currency.refuse(code, Allowed::Form(Form::Currency)))?,
        })
    }

    fn write(&self) -> Option<Value> {
        let mut map = serde_json::Map::new();
        map.insert("minor".to_owned(), Value::from(self.minor));
        map.insert("currency".to_owned(), Value::from(self.currency.code()));
        Some(Value::Object(map))
    }
}

/// The key of a job, as the room `round` makes it: 1 to 200 visible ASCII characters. The entry that does the job
/// carries it.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct JobKey(String);

impl JobKey {
    /// From its text.
    pub fn new(key: &str) -> Result<Self, LogError> {
        Self::checked(key, &Path::Root.key("job"))
    }

    fn checked(key: &str, path: &Path<'_>) -> Result<Self, LogError> {
        // numeric: three ids and a date fit
        if (1..=200).contains(&key.len()) && key.bytes().all(|l| l.is_ascii_graphic()) {
            Ok(Self(key.to_owned()))
        } else {
            Err(path.refuse(key, Allowed::Form(Form::JobKey)))
        }
    }

    /// The text.
    pub fn as_str(&self) -> &str {
        &self.0
    }
}

impl Stored for JobKey {
    fn read(value: Option<&Value>, path: &Path<'_>) -> Result<Self, LogError> {
        Self::checked(text(value, path)?, path)
    }

    fn write(&self) -> Option<Value> {
        Some(Value::from(self.as_str()))
    }
}
