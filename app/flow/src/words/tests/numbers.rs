//! Figures and times.

use super::{check, tongues};
use crate::words::{AssessWords, EnergyUnit, English, ForageWords, Shown, UnitWords};
use tussock_core::assess::AssessError;
use tussock_core::forage::Verdict;
use tussock_core::limits::{Ends, Litres};
use tussock_core::units::parse::{self, LengthUnit, MassUnit, ParseError};
use tussock_core::units::{
    AsFed, BodyMass, Bounds, Currency, DryFraction, DryMatter, Energy, EnergyDensity, Instant,
    Length, LocalTime, Money, MoneyError, NutrientMass, PartOfBody, ShareOfDm, Span, Temperature,
    Zone,
};

/// Two hours east of UTC.
pub(super) struct East;

impl Zone for East {
    fn offset_min(&self, _: Instant) -> i32 {
        120
    }
}

#[test]
fn figures_come_with_their_units() {
    let [metric, other] = tongues();
    assert_eq!(metric.body(BodyMass::kg(304.6)), "305 kg");
    assert_eq!(other.body(BodyMass::kg(304.6)), "672 lb");
    assert_eq!(metric.feed(AsFed::kg(3.6)), "3.60 kg");
    assert_eq!(metric.bucket(AsFed::kg(0.45)), "450 g");
    assert_eq!(metric.dry(DryMatter::kg(4.575)), "4.6 kg of dry matter");
    assert_eq!(
        metric.level(PartOfBody::percent(1.5)),
        "1.5 % of its weight"
    );
    assert_eq!(metric.energy(Energy::mcal(14.2)), "14.2 Mcal");
    assert_eq!(other.energy(Energy::mcal(14.2)), "59 MJ");
    let supplied = Ends::new(Energy::mcal(5.2), Energy::mcal(6.0), Energy::mcal(7.1));
    assert_eq!(metric.energy_ends(supplied), "5.2 to 7.1 Mcal");
    assert_eq!(metric.length(Length::cm(176.0)), "176 cm");
    assert_eq!(other.height(Length::hands(14, 2.0)), "14.2 hh");
    assert_eq!(other.height(Length::inches(59.8)), "15 hh");
    assert_eq!(metric.height(Length::cm(112.0)), "112 cm");
    assert_eq!(metric.litres(Litres::l(27.6)), "28 litres");
    assert_eq!(metric.temperature(Temperature::celsius(-0.2)), "0 °C");
    assert_eq!(metric.nutrient_mass(NutrientMass::g(0.0004)), "0.4 mg");
    assert_eq!(
        metric.dry_fraction(DryFraction::percent(88.0).unwrap()),
        "88 %"
    );
    assert_eq!(
        metric.energy_density(EnergyDensity::mcal_per_kg(2.0)),
        "2.00 Mcal a kg of dry matter"
    );
    let ends = Ends::new(DryMatter::kg(4.1), DryMatter::kg(4.6), DryMatter::kg(5.0));
    assert_eq!(metric.dry_ends(ends), "4.1 to 5.0 kg of dry matter");
    assert_eq!(
        metric.dry_ends(Ends::exactly(DryMatter::kg(4.6))),
        "4.6 kg of dry matter"
    );
    let gbp = Currency::from_code("GBP").unwrap();
    assert_eq!(
        metric.money(Money {
            minor: 650,
            currency: gbp
        }),
        "6.50 GBP"
    );
    let yen = Currency::from_code("JPY").unwrap();
    assert_eq!(
        metric.money(Money {
            minor: 650,
            currency: yen
        }),
        "650 JPY"
    );
    assert_eq!(
        metric.list(&["copper", "zinc", "selenium"]),
        "copper, zinc and selenium"
    );
    assert_eq!(metric.count(1, "net", "nets"), "1 net");
}

#[test]
fn times_read_as_on_the_wall() {
    let say = English::default();
    assert_eq!(say.span(Span::minutes(42)), "42 min");
    assert_eq!(say.span(Span::minutes(730)), "12 h 10 min");
    assert_eq!(say.span(Span::hours(12)), "12 h");
    assert_eq!(say.span(Span::minutes(-5)), "0 min");
    assert_eq!(say.span(Span::hours(47)), "47 h");
    assert_eq!(say.span(Span::minutes(70 * 60 + 45)), "2 days");
    assert_eq!(say.time(LocalTime::from_hms_opt(7, 5, 0).unwrap()), "07:05");
    let five = Instant::from_ms(0) + Span::minutes(5 * 60 + 5);
    assert_eq!(say.time_at(five, &East), "07:05");
    let first = "1970-01-01".parse().unwrap();
    assert_eq!(say.moment(five, first, &East), "07:05");
    assert_eq!(
        say.moment(five, "1970-01-02".parse().unwrap(), &East),
        "Thu 1 Jan 07:05"
    );
    let seven = LocalTime::from_hms_opt(7, 0, 0).unwrap();
    let due = |day: &str| say.due(day.parse().unwrap(), seven, "2026-05-05".parse().unwrap());
    assert_eq!(due("2026-05-05"), "07:00");
    assert_eq!(due("2026-05-06"), "Wed 07:00");
    assert_eq!(due("2026-05-11"), "Mon 07:00");
    assert_eq!(due("2026-05-12"), "Tue 12 May");
    assert_eq!(due("2026-05-04"), "Mon 4 May");
    assert_eq!(say.date("2026-12-31".parse().unwrap()), "31 Dec 2026");
}

#[test]
fn a_chance_stays_on_the_side_of_its_verdict() {
    let say = English::default();
    assert_eq!(say.chance(0.31), "3 in 10");
    assert_eq!(say.chance(0.88), "88 in 100");
    assert_eq!(say.chance(0.8999), "8.999 in 10");
    assert_eq!(say.chance(0.93), "9 in 10");
    assert_eq!(say.chance(0.99999), "more than 999 in 1000");
    assert_eq!(say.chance(0.00001), "under 1 in 1000");
    for thousandth in 0..=1000 {
        let chance = f64::from(thousandth) / 1000.0;
        let text = say.chance(chance);
        check(&text);
        let numbers: Vec<f64> = text
            .split(' ')
            .filter_map(|word| word.parse().ok())
            .collect();
        let read = numbers[0] / numbers[1];
        assert_eq!(read >= 0.9, chance >= 0.9, "{chance} reads {text}");
        assert_eq!(read <= 0.1, chance <= 0.1, "{chance} reads {text}");
    }
    assert_eq!(
        say.verdict(Verdict::NotProven { chance: Some(0.31) }),
        "not proven (3 in 10)"
    );
    assert_eq!(
        say.verdict(Verdict::NotProven { chance: Some(0.95) }),
        "not proven"
    );
    assert_eq!(
        say.verdict(Verdict::NotProven { chance: None }),
        "not proven"
    );
}

#[test]
fn a_figure_beside_a_limit_stays_on_its_side() {
    let say = English::default();
    assert_eq!(say.hours_beside(6.01, 6.0), "6.01 h");
    assert_eq!(say.wait(6.04), "6.04 h");
    assert_eq!(
        say.share_beside(ShareOfDm::percent(10.02), ShareOfDm::percent(10.0)),
        "10.02 %"
    );
    let level = PartOfBody::percent;
    assert_eq!(
        say.level_beside(level(0.9999), level(1.0)),
        "0.9999 % of its weight"
    );
}

#[test]
fn what_was_typed_is_answered_with_what_to_type() {
    let say = English::default();
    let two = parse::number("1,234").unwrap_err();
    assert_eq!(say.parse_error(&two), "Type 1.234 or 1234");
    let errors = super::every![
        ParseError::Empty => ParseError::Empty,
        ParseError::NotANumber { .. } => ParseError::NotANumber { typed: "abc".into() },
        ParseError::TwoReadings { .. } => two,
        ParseError::UnknownUnit { .. } => ParseError::UnknownUnit { unit: "oz".into(), known: &["kg", "lb"] },
        ParseError::NotHands { .. } => ParseError::NotHands { typed: "14.4".into() },
        ParseError::OutOfRange(_) => ParseError::OutOfRange(super::animal::outside()),
    ];
    for error in &errors {
        check(&say.parse_error(error));
    }
    let gbp = Currency::from_code("GBP").unwrap();
    for error in super::every![
        MoneyError::NotACurrency { .. } => MoneyError::NotACurrency { code: "eur".into() },
        MoneyError::TwoCurrencies { .. } => MoneyError::TwoCurrencies { first: gbp, second: gbp },
        MoneyError::TooLarge => MoneyError::TooLarge,
    ] {
        check(&say.money_error(&error));
    }
}

#[test]
fn a_range_is_named_in_the_unit_the_person_types() {
    let [metric, other] = tongues();
    let girth = Bounds::new("heart_girth_cm", 40.0, 300.0);
    let high = girth.check(1800.0).unwrap_err();
    assert_eq!(
        metric.out_of_range(&high),
        "Heart girth of 1800 cm is not believed: type 40 to 300 cm"
    );
    let low = girth.check(Length::inches(15.7).to_cm()).unwrap_err();
    assert_eq!(
        other.out_of_range(&low),
        "Heart girth of 15.7 in is not believed: type 15.8 to 118.1 in"
    );
    let none = girth.check(f64::NAN).unwrap_err();
    assert_eq!(
        metric.out_of_range(&none),
        "Heart girth is no number: type 40 to 300 cm"
    );
    assert_eq!(
        metric.assess_error(&AssessError::OutOfRange(high)),
        metric.out_of_range(&high)
    );
}

#[test]
fn every_field_of_the_core_has_a_name_without_its_unit() {
    let say = English::default();
    let fields = [
        "adf_percent",
        "age_years",
        "asked_percent",
        "body_length_cm",
        "body_weight_kg",
        "calcium_percent",
        "condition",
        "condition_five_step",
        "condition_nine_step",
        "cores",
        "crest",
        "day_dry_matter_kg",
        "donkey_weight_kg",
        "dry_matter_percent",
        "eating_rate_kg_per_h",
        "energy_mcal_per_kg",
        "fat_percent",
        "foal_age_days",
        "foal_heart_girth_in",
        "heart_girth_cm",
        "height_cm",
        "hole_cm",
        "length_to_girth",
        "a_day_kg",
        "batch_kg",
        "price_minor",
        "soak_minutes_a_day",
        "loss_fraction",
        "lost_fraction",
        "neck_cm",
        "rate_g_per_kg_body",
        "selenium_mg_per_kg",
        "soak_minutes",
        "starch_percent",
        "sugar_starch_percent",
        "target_kg",
        "umbilical_girth_cm",
        "weight_kg",
        "young_donkey_weight_kg",
    ];
    for field in fields {
        let name = say.field(field);
        check(&name);
        assert!(
            !name.contains('_') && !name.ends_with(" cm") && !name.ends_with(" kg"),
            "{name}"
        );
        check(&say.out_of_range(&Bounds::new("x", 0.0, 1.0).check(f64::INFINITY).unwrap_err()));
    }
}

#[test]
fn units_have_their_names() {
    let say = English::new(Shown {
        energy: EnergyUnit::Mj,
        ..Shown::default()
    });
    for unit in super::every![MassUnit::Kg => MassUnit::Kg, MassUnit::Lb => MassUnit::Lb] {
        check(say.mass_unit(unit));
    }
    for unit in
        super::every![LengthUnit::Cm => LengthUnit::Cm, LengthUnit::Inch => LengthUnit::Inch]
    {
        check(say.length_unit(unit));
    }
    check(&say.energy_density(EnergyDensity::mj_per_kg(8.0)));
}
