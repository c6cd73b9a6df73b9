//! Numbers, times and what was typed.

use tussock_core::limits::{Ends, Litres};
use tussock_core::units::parse::{LengthUnit, MassUnit, ParseError};
use tussock_core::units::{
    AsFed, BodyMass, DryFraction, DryMatter, Energy, EnergyDensity, Instant, Length, LocalDate,
    LocalTime, Money, MoneyError, NutrientMass, OutOfRange, PartOfBody, ShareOfDm, Span,
    Temperature, Zone,
};

/// How quantities are shown, and what is said of what was typed. Every figure comes with its unit.
pub trait UnitWords {
    /// An animal's weight, whole: "305 kg".
    fn body(&self, mass: BodyMass) -> String;
    /// A weight with its band: "305 kg, between 275 and 335".
    fn body_between(&self, likely: BodyMass, low: BodyMass, high: BodyMass) -> String;
    /// Feed for the scale, two decimals: "4.35 kg".
    fn feed(&self, mass: AsFed) -> String;
    /// The same without its unit, for the large slot: "4.35".
    fn feed_number(&self, mass: AsFed) -> String;
    /// Feed from the bucket in whole grams below a kilogram: "450 g".
    fn bucket(&self, mass: AsFed) -> String;
    /// Dry matter: "4.6 kg of dry matter".
    fn dry(&self, mass: DryMatter) -> String;
    /// An uncertain dry matter: "4.1 to 5.0 kg of dry matter".
    fn dry_ends(&self, ends: Ends<DryMatter>) -> String;
    /// A part of body weight: "1.5 % of its weight".
    fn level(&self, part: PartOfBody) -> String;
    /// The same, with as many decimals as keep it on its side of another: "1.249 % of its weight".
    fn level_beside(&self, part: PartOfBody, limit: PartOfBody) -> String;
    /// A fraction as a percentage: "30 %".
    fn percent(&self, part: f64) -> String;
    /// A content of dry matter: "9.4 %".
    fn share(&self, share: ShareOfDm) -> String;
    /// The same, with as many decimals as keep it on its side of a limit.
    fn share_beside(&self, share: ShareOfDm, limit: ShareOfDm) -> String;
    /// Dry matter of a feed: "88 %".
    fn dry_fraction(&self, dry: DryFraction) -> String;
    /// Energy a day, in the unit the person chose: "14.2 Mcal" or "59 MJ".
    fn energy(&self, energy: Energy) -> String;
    /// An uncertain energy: "5.2 to 7.1 Mcal".
    fn energy_ends(&self, ends: Ends<Energy>) -> String;
    /// Energy of dry matter: "2.0 Mcal a kg of dry matter".
    fn energy_density(&self, density: EnergyDensity) -> String;
    /// A nutrient's mass, in g, or in mg below a gram.
    fn nutrient_mass(&self, mass: NutrientMass) -> String;
    /// A length on the animal: "176 cm" or "69.3 in".
    fn length(&self, length: Length) -> String;
    /// A height at the withers: "112 cm" or "11 hh".
    fn height(&self, height: Length) -> String;
    /// Water: "28 litres".
    fn litres(&self, volume: Litres) -> String;
    /// A temperature: "8 °C".
    fn temperature(&self, temperature: Temperature) -> String;
    /// A chance from 0 to 1: "3 in 10". It stays on its side of 1 in 10 and 9 in 10, where the verdict on sugar changes,
    /// and never claims a certainty that is not there.
    fn chance(&self, chance: f64) -> String;
    /// A length of time: "42 min", "12 h 10 min". Under nothing it reads as nothing.
    fn span(&self, span: Span) -> String;
    /// Hours with their fraction, with as many decimals as keep them on their side of a line: "7.3 h".
    fn hours_beside(&self, hours: f64, line: f64) -> String;
    /// A time of day: "07:05".
    fn time(&self, time: LocalTime) -> String;
    /// An instant as the time on the wall: "07:05".
    fn time_at(&self, at: Instant, zone: &dyn Zone) -> String;
    /// An instant with its day where that is not today: "Tue 5 May 07:05".
    fn moment(&self, at: Instant, today: LocalDate, zone: &dyn Zone) -> String;
    /// A time on the round, short: "07:05" today, "Thu 07:05" in the six days after, else its day.
    fn due(&self, date: LocalDate, time: LocalTime, today: LocalDate) -> String;
    /// A day: "5 May 2026".
    fn date(&self, date: LocalDate) -> String;
    /// A day with its weekday, without the year: "Tue 5 May".
    fn day(&self, date: LocalDate) -> String;
    /// A price: "6.50 GBP".
    fn money(&self, money: Money) -> String;
    /// A count with its noun: "1 net", "6 nets".
    fn count(&self, count: usize, one: &str, more: &str) -> String;
    /// Names in a row: "copper, zinc and selenium".
    fn list(&self, names: &[&str]) -> String;
    /// The unit of weights.
    fn mass_unit(&self, unit: MassUnit) -> &'static str;
    /// The unit of lengths.
    fn length_unit(&self, unit: LengthUnit) -> &'static str;
    /// The name of a field of the core, from its key: "Heart girth".
    fn field(&self, key: &str) -> String;
    /// A value outside its range: field, value, range.
    fn out_of_range(&self, error: &OutOfRange) -> String;
    /// Why what was typed was not read.
    fn parse_error(&self, error: &ParseError) -> String;
    /// Why a price was refused.
    fn money_error(&self, error: &MoneyError) -> String;
}
