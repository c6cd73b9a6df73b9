//! Numbers, times and what was typed.

use super::English;
use super::numbers::{self, between, sized, up_to, up_to_beside};
use crate::words::{EnergyUnit, UnitWords};
use chrono::{Datelike, Timelike, Weekday};
use tussock_core::limits::{Ends, Litres};
use tussock_core::units::parse::{LengthUnit, MassUnit, ParseError};
use tussock_core::units::published::{HOURS_PER_DAY, INCHES_PER_HAND, MINUTES_PER_HOUR};
use tussock_core::units::show::fixed;
use tussock_core::units::{
    AsFed, BodyMass, DryFraction, DryMatter, Energy, EnergyDensity, Instant, Length, LocalDate,
    LocalTime, Money, MoneyError, NutrientMass, OutOfRange, PartOfBody, ShareOfDm, Span,
    Temperature, Zone,
};

impl English {
    /// A mass in kilograms as a number of the unit the person chose.
    fn in_mass_unit(&self, kg: f64) -> f64 {
        match self.shown.mass {
            MassUnit::Kg => kg,
            MassUnit::Lb => BodyMass::kg(kg).to_lb(),
        }
    }

    fn in_length_unit(&self, cm: f64) -> f64 {
        match self.shown.length {
            LengthUnit::Cm => cm,
            LengthUnit::Inch => Length::cm(cm).to_inches(),
        }
    }

    /// Feed to a tenth, without its unit: a day's sum is not weighed to the gram.
    pub(super) fn feed_tenths(&self, mass: AsFed) -> String {
        fixed(self.in_mass_unit(mass.to_kg()), 1)
    }

    /// Feed in whole units, without its unit: a stack is not weighed to the kilogram.
    pub(super) fn feed_whole(&self, mass: AsFed) -> String {
        fixed(self.in_mass_unit(mass.to_kg()), 0)
    }

    fn mass(&self) -> &'static str {
        self.mass_unit(self.shown.mass)
    }
}

impl UnitWords for English {
    fn body(&self, mass: BodyMass) -> String {
        format!(
            "{} {}",
            fixed(self.in_mass_unit(mass.to_kg()), 0),
            self.mass()
        )
    }

    fn body_between(&self, likely: BodyMass, low: BodyMass, high: BodyMass) -> String {
        let ends = between(
            &fixed(self.in_mass_unit(low.to_kg()), 0),
            &fixed(self.in_mass_unit(high.to_kg()), 0),
            "and",
        );
        format!("{}, between {ends}", self.body(likely))
    }

    fn feed(&self, mass: AsFed) -> String {
        format!("{} {}", self.feed_number(mass), self.mass())
    }

    fn feed_number(&self, mass: AsFed) -> String {
        fixed(self.in_mass_unit(mass.to_kg()), 2)
    }

    fn bucket(&self, mass: AsFed) -> String {
        let kg = mass.to_kg();
        if kg < 1.0 {
            format!("{} g", fixed(kg * 1000.0, 0))
        } else {
            format!("{} kg", up_to(kg, 2))
        }
    }

    fn dry(&self, mass: DryMatter) -> String {
        format!(
            "{} {} of dry matter",
            fixed(self.in_mass_unit(mass.to_kg()), 1),
            self.mass()
        )
    }

    fn dry_ends(&self, ends: Ends<DryMatter>) -> String {
        let figure = |mass: DryMatter| fixed(self.in_mass_unit(mass.to_kg()), 1);
        format!(
            "{} {} of dry matter",
            between(&figure(ends.least), &figure(ends.most), "to"),
            self.mass()
        )
    }

    fn level(&self, part: PartOfBody) -> String {
        format!("{} % of its weight", up_to(part.to_percent(), 2))
    }

    fn level_beside(&self, part: PartOfBody, limit: PartOfBody) -> String {
        format!(
            "{} % of its weight",
            up_to_beside(part.to_percent(), limit.to_percent(), 2)
        )
    }

    fn percent(&self, part: f64) -> String {
        format!("{} %", up_to(part * 100.0, 0))
    }

    fn share(&self, share: ShareOfDm) -> String {
        format!("{} %", fixed(share.to_percent(), 1))
    }

    fn share_beside(&self, share: ShareOfDm, limit: ShareOfDm) -> String {
        let figure = tussock_core::units::show::beside(share.to_percent(), limit.to_percent(), 1);
        format!("{figure} %")
    }

    fn dry_fraction(&self, dry: DryFraction) -> String {
        format!("{} %", up_to(dry.to_percent(), 1))
    }

    fn energy(&self, energy: Energy) -> String {
        self.energy_ends(Ends::exactly(energy))
    }

    fn energy_ends(&self, ends: Ends<Energy>) -> String {
        let (figure, unit): (fn(Energy) -> String, _) = match self.shown.energy {
            EnergyUnit::Mcal => (|energy| fixed(energy.to_mcal(), 1), "Mcal"),
            EnergyUnit::Mj => (|energy| fixed(energy.to_mj(), 0), "MJ"),
        };
        format!(
            "{} {unit}",
            between(&figure(ends.least), &figure(ends.most), "to")
        )
    }

    fn energy_density(&self, density: EnergyDensity) -> String {
        match self.shown.energy {
            EnergyUnit::Mcal => format!(
                "{} Mcal a kg of dry matter",
                fixed(density.to_mcal_per_kg(), 2)
            ),
            EnergyUnit::Mj => format!("{} MJ a kg of dry matter", fixed(density.to_mj_per_kg(), 1)),
        }
    }

    fn nutrient_mass(&self, mass: NutrientMass) -> String {
        if mass < NutrientMass::g(1.0) {
            format!("{} mg", sized(mass.to_mg()))
        } else {
            format!("{} g", sized(mass.to_g()))
        }
    }

    fn length(&self, length: Length) -> String {
        let figure = match self.shown.length {
            LengthUnit::Cm => up_to(length.to_cm(), 1),
            LengthUnit::Inch => up_to(length.to_inches(), 1),
        };
        format!("{figure} {}", self.length_unit(self.shown.length))
    }

    fn height(&self, height: Length) -> String {
        match self.shown.length {
            LengthUnit::Cm => self.length(height),
            LengthUnit::Inch => {
                // Whole inches first, so that 15.8 inches above a hand never read as "14.4".
                let inches = fixed(height.to_inches(), 0)
                    .parse::<f64>()
                    .unwrap_or_default();
                let hands = (inches / INCHES_PER_HAND).floor();
                let above = inches - hands * INCHES_PER_HAND;
                if above > 0.0 {
                    format!("{}.{} hh", fixed(hands, 0), fixed(above, 0))
                } else {
                    format!("{} hh", fixed(hands, 0))
                }
            }
        }
    }

    fn litres(&self, volume: Litres) -> String {
        format!("{} litres", up_to(volume.to_l(), 0))
    }

    fn temperature(&self, temperature: Temperature) -> String {
        format!("{} °C", up_to(temperature.to_celsius(), 0))
    }

    fn chance(&self, chance: f64) -> String {
        numbers::chance(chance)
    }

    fn span(&self, span: Span) -> String {
        let minutes = span.to_minutes().max(0);
        let (hours, rest) = (minutes / MINUTES_PER_HOUR, minutes % MINUTES_PER_HOUR);
        // What is days ago is not told to the minute.
        if let days @ 2.. = hours / HOURS_PER_DAY {
            return format!("{days} days");
        }
        match (hours, rest) {
            (0, rest) => format!("{rest} min"),
            (hours, 0) => format!("{hours} h"),
            (hours, rest) => format!("{hours} h {rest} min"),
        }
    }

    fn hours_beside(&self, hours: f64, line: f64) -> String {
        format!("{} h", up_to_beside(hours, line, 1))
    }

    fn time(&self, time: LocalTime) -> String {
        format!("{:02}:{:02}", time.hour(), time.minute())
    }

    fn time_at(&self, at: Instant, zone: &dyn Zone) -> String {
        self.time(zone.to_local(at).time)
    }

    fn moment(&self, at: Instant, today: LocalDate, zone: &dyn Zone) -> String {
        let local = zone.to_local(at);
        let time = self.time(local.time);
        if local.date == today {
            time
        } else {
            format!("{} {time}", self.day(local.date))
        }
    }

    fn due(&self, date: LocalDate, time: LocalTime, today: LocalDate) -> String {
        match date.signed_duration_since(today).num_days() {
            0 => self.time(time),
            1..=6 => format!("{} {}", weekday(date), self.time(time)),
            _ => self.day(date),
        }
    }

    fn date(&self, date: LocalDate) -> String {
        format!("{} {} {}", date.day(), month(date), date.year())
    }

    fn day(&self, date: LocalDate) -> String {
        format!("{} {} {}", weekday(date), date.day(), month(date))
    }

    fn money(&self, money: Money) -> String {
        let code = money.currency.code();
        if money.currency.minor_in_whole() == 1 {
            return format!("{} {code}", money.minor);
        }
        let minor = money.minor.unsigned_abs();
        let sign = if money.minor < 0 { "-" } else { "" };
        format!("{sign}{}.{:02} {code}", minor / 100, minor % 100)
    }

    fn count(&self, count: usize, one: &str, more: &str) -> String {
        format!("{count} {}", if count == 1 { one } else { more })
    }

    fn list(&self, names: &[&str]) -> String {
        match names {
            [] => "none".to_owned(),
            [only] => (*only).to_owned(),
            [first @ .., last] => format!("{} and {last}", first.join(", ")),
        }
    }

    fn mass_unit(&self, unit: MassUnit) -> &'static str {
        match unit {
            MassUnit::Kg => "kg",
            MassUnit::Lb => "lb",
        }
    }

    fn length_unit(&self, unit: LengthUnit) -> &'static str {
        match unit {
            LengthUnit::Cm => "cm",
            LengthUnit::Inch => "in",
        }
    }

    fn field(&self, key: &str) -> String {
        super::fields::name(key)
    }

    fn out_of_range(&self, error: &OutOfRange) -> String {
        let bounds = error.bounds;
        let (unit, own) = super::fields::unit(bounds.field);
        let shown = |value: f64| match unit {
            "kg" => self.in_mass_unit(value),
            "cm" => self.in_length_unit(value),
            _ => value,
        };
        let unit = match unit {
            "kg" => self.mass(),
            "cm" => self.length_unit(self.shown.length),
            _ => own,
        };
        let name = self.field(bounds.field);
        let unit = super::fields::spaced(unit);
        let range = format!(
            "{} to {}{unit}",
            numbers::not_under(shown(bounds.min)),
            numbers::not_over(shown(bounds.max)),
        );
        if error.value.is_finite() {
            let limit = if error.value < bounds.min {
                bounds.min
            } else {
                bounds.max
            };
            let value = up_to_beside(shown(error.value), shown(limit), 1);
            format!("{name} of {value}{unit} is not believed: type {range}")
        } else {
            format!("{name} is no number: type {range}")
        }
    }

    fn parse_error(&self, error: &ParseError) -> String {
        match error {
            ParseError::Empty => "Type a number".to_owned(),
            ParseError::NotANumber { typed } => {
                format!("\"{typed}\" is not a number: type it in digits, like 4.35")
            }
            ParseError::TwoReadings {
                as_decimals,
                as_thousands,
                ..
            } => format!(
                "Type {} or {}",
                // Both readings have three decimals at most: what was typed has three digits behind its comma.
                fixed(*as_decimals, 3),
                up_to(*as_thousands, 3)
            ),
            ParseError::UnknownUnit { unit, known } => format!(
                "\"{unit}\" is not a unit here: type {}",
                super::fields::either(known)
            ),
            ParseError::NotHands { typed } => format!(
                "\"{typed}\" is not in hands: after the point come 0 to 3 inches, like 14.2"
            ),
            ParseError::OutOfRange(error) => self.out_of_range(error),
        }
    }

    fn money_error(&self, error: &MoneyError) -> String {
        match error {
            MoneyError::NotACurrency { code } => {
                format!("\"{code}\" is not a currency: type three capital letters, like GBP")
            }
            MoneyError::TwoCurrencies { first, second } => format!(
                "One price is in {}, the other in {}: they cannot be added",
                first.code(),
                second.code()
            ),
            MoneyError::TooLarge => "The sum is too large to hold: check the prices".to_owned(),
        }
    }
}

/// The short name of a weekday.
fn weekday(date: LocalDate) -> &'static str {
    match date.weekday() {
        Weekday::Mon => "Mon",
        Weekday::Tue => "Tue",
        Weekday::Wed => "Wed",
        Weekday::Thu => "Thu",
        Weekday::Fri => "Fri",
        Weekday::Sat => "Sat",
        Weekday::Sun => "Sun",
    }
}

/// The month's name, short.
fn month(date: LocalDate) -> &'static str {
    const MONTHS: [&str; 12] = [
        "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec",
    ];
    MONTHS
        .get(date.month0() as usize)
        .copied()
        .unwrap_or_default()
}
