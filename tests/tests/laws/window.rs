//! The sun of a day, and when grass is open.

use crate::seed::config;
use proptest::prelude::*;
use tussock_core::animal::{Answer, RiskLevel};
use tussock_core::graze::season::{Flush, Note, Noted, SeasonOn, YearPart, season_on, year};
use tussock_core::graze::sun::{Latitude, Place, SunDay, clock_fits, sun_day};
use tussock_core::graze::window::{
    Begins, Closed, DayWeather, Night, Sky, Window, WindowFor, sugar_shape, window,
};
use tussock_core::limits::Ends;
use tussock_core::units::{Instant, Length, LocalDate, Span, Zone};
use tussock_tests::zone::TableZone;

fn day() -> impl Strategy<Value = LocalDate> {
    (0_i64..36_500)
        .prop_map(|d| LocalDate::from_ymd_opt(2000, 1, 1).unwrap() + chrono::Duration::days(d))
}

fn place() -> impl Strategy<Value = Place> {
    (-90.0..=90.0_f64, -180.0..=180.0_f64).prop_map(|(n, e)| Place::degrees(n, e).unwrap())
}

/// A place with a zone whose clock is up to three hours ahead of its sun or one behind, in quarters of an hour.
fn place_and_zone() -> impl Strategy<Value = (Place, TableZone)> {
    (place(), -4_i32..=12).prop_map(|(place, quarters)| {
        #[allow(clippy::cast_possible_truncation)]
        let own = (place.longitude.to_degrees() / 15.0 * 4.0).round() as i32;
        (place, TableZone::new((own + quarters) * 15, &[]))
    })
}

fn risk() -> impl Strategy<Value = RiskLevel> {
    prop_oneof![
        Just(RiskLevel::Proven),
        Just(RiskLevel::AtRisk),
        Just(RiskLevel::NotKnown),
        Just(RiskLevel::Clear),
    ]
}

fn answer() -> impl Strategy<Value = Answer> {
    prop_oneof![Just(Answer::Yes), Just(Answer::No), Just(Answer::NotKnown)]
}

fn weather() -> impl Strategy<Value = DayWeather> {
    let night = prop_oneof![
        Just(Night::Cold),
        Just(Night::Over5),
        Just(Night::Mild),
        Just(Night::NotSaid)
    ];
    let sky = prop_oneof![Just(Sky::Sunny), Just(Sky::Dull), Just(Sky::NotSaid)];
    let rare = prop::bool::weighted(0.2);
    (night, rare, sky, rare).prop_map(|(night, frost, sky, dry_spell)| DayWeather {
        night,
        frost,
        sky,
        dry_spell,
        last_hard_freeze: None,
    })
}

fn notes() -> impl Strategy<Value = Vec<Note>> {
    let what = prop_oneof![
        Just(Noted::FlushBegan),
        Just(Noted::FlushOver),
        Just(Noted::AutumnRain),
        Just(Noted::FirstFrost),
        Just(Noted::Drought),
    ];
    let note = (0_i64..1100, what).prop_map(|(d, what)| Note {
        date: LocalDate::from_ymd_opt(2025, 1, 1).unwrap() + chrono::Duration::days(d),
        what,
    });
    prop::collection::vec(note, 0..8)
}

#[derive(Clone, Debug)]
struct Asked {
    risk: RiskLevel,
    day: LocalDate,
    to_come: bool,
    place: Option<Place>,
    zone: TableZone,
    weather: DayWeather,
    season: SeasonOn,
    leaf: Option<f64>,
    seeding: Answer,
    shade: bool,
}

impl Asked {
    fn told(&self) -> Window {
        let ask = WindowFor {
            risk: self.risk,
            day: self.day,
            to_come: self.to_come,
            place: self.place,
            weather: self.weather,
            season: self.season,
            leaf: self.leaf.map(|cm| Ends::exactly(Length::cm(cm))),
            seeding: self.seeding,
            shade: self.shade,
            also: &[],
        };
        window(&ask, &self.zone)
    }
}

fn asked() -> impl Strategy<Value = Asked> {
    (
        (
            risk(),
            day(),
            any::<bool>(),
            place_and_zone(),
            any::<bool>(),
        ),
        (
            weather(),
            prop::option::of(4.0..30.0_f64),
            answer(),
            any::<bool>(),
        ),
    )
        .prop_map(
            |((risk, day, to_come, (place, zone), said), (weather, leaf, seeding, shade))| Asked {
                risk,
                day,
                to_come,
                place: said.then_some(place),
                season: season_on(said.then_some(place.latitude), day, &[]),
                zone,
                weather,
                leaf,
                seeding,
                shade,
            },
        )
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn the_sun_rises_before_noon_and_sets_after_it_within_the_day(
        (place, zone) in place_and_zone(), day in day()
    ) {
        let sun = sun_day(place, day, &zone).unwrap();
        prop_assert_eq!(zone.to_local(sun.noon()).date, day);
        prop_assert!(clock_fits(sun, day, &zone));
        if let SunDay::Rises { sunrise, noon, sunset } = sun {
            prop_assert!(sunrise < noon && noon < sunset);
            prop_assert!(sunset.since(sunrise) < Span::hours(24));
            let half = |a: Instant, b: Instant| a.since(b) <= Span::hours(12);
            prop_assert!(half(noon, sunrise) && half(sunset, noon));
        }
        if place.latitude.to_degrees().abs() < 60.0 {
            prop_assert!(sun.sunrise().is_some());
        }
    }

    #[test]
    fn the_sun_of_a_day_does_not_depend_on_the_clock(
        place in place(), day in day(), (a, b) in (-300_i32..300, -300_i32..300)
    ) {
        // Clocks as they are kept: within five hours of the sun, so that no noon lies at midnight. Four minutes a degree.
        #[allow(clippy::cast_possible_truncation, reason = "minutes of a day")]
        let by_sun = (place.longitude.to_degrees() * 4.0).round() as i32;
        let told = |minutes| sun_day(place, day, &TableZone::new(by_sun + minutes, &[])).unwrap();
        let (one, other) = (told(a), told(b));
        let apart = (one.noon().to_ms() - other.noon().to_ms()).abs();
        prop_assert!(apart < 2000, "{one:?} {other:?}");
    }

    #[test]
    fn grass_is_never_open_to_one_at_risk_when_the_rule_says_no(ask in asked()) {
        let told = ask.told();
        let open = !told.opens.is_empty();
        prop_assert!(!open || told.closed.is_empty());
        if ask.risk != RiskLevel::Clear && open {
            prop_assert!(ask.weather.night != Night::Cold);
            prop_assert!(ask.weather.night != Night::NotSaid || ask.to_come);
            prop_assert!(!ask.season.flush.is_on() && ask.season.flush != Flush::NotKnown);
            prop_assert!(!ask.weather.dry_spell && ask.seeding != Answer::Yes);
        }
        if open {
            prop_assert!(!ask.weather.frost);
            prop_assert!(ask.leaf.is_none_or(|cm| cm >= 7.5));
        }
    }

    #[test]
    fn an_animal_at_risk_is_never_let_out_more_than_one_that_is_only_fat(ask in asked()) {
        let (mut fat, mut risk) = (ask.clone(), ask);
        fat.risk = RiskLevel::Clear;
        risk.risk = RiskLevel::NotKnown;
        let fat = fat.told();
        for stretch in risk.told().opens {
            prop_assert!(fat.opens.contains(&stretch));
        }
    }

    #[test]
    fn a_morning_is_over_by_ten_by_the_sun_and_by_the_clock_but_under_cloud_or_in_shade(ask in asked()) {
        let told = ask.told();
        let late = ask.shade || ask.weather.sky == Sky::Dull;
        for stretch in &told.opens {
            prop_assert!(stretch.from < stretch.to);
            if stretch.begins == Begins::LateEvening {
                prop_assert_eq!(ask.weather.night, Night::Mild);
                continue;
            }
            let hours = if late { 11 } else { 10 };
            let clock = ask.zone.to_local(stretch.to);
            prop_assert_eq!(clock.date, ask.day);
            prop_assert!(clock.time <= chrono::NaiveTime::MIN + chrono::Duration::hours(hours));
            if let Some(sun) = told.sun {
                prop_assert!(stretch.to <= sun.noon() - Span::hours(12 - hours));
            }
            prop_assert!(late || stretch.to <= told.latest);
        }
    }

    #[test]
    fn the_week_after_a_hard_freeze_is_closed(ask in asked(), since in 0_i64..20) {
        let mut ask = ask;
        ask.weather.last_hard_freeze = Some(ask.day - chrono::Duration::days(since));
        let told = ask.told();
        let shut = told.closed.iter().any(|c| matches!(c, Closed::HardFreeze { .. }));
        prop_assert_eq!(shut, since <= 7 || ask.weather.frost);
    }

    #[test]
    fn every_day_of_a_year_lies_in_one_band(
        north in -90.0..=90.0_f64, of in 2025_i32..2028, notes in notes()
    ) {
        let latitude = Latitude::degrees(north).unwrap();
        let bands = year(latitude, of, &notes);
        let mut next = LocalDate::from_ymd_opt(of, 1, 1);
        for band in &bands {
            prop_assert_eq!(Some(band.from), next);
            prop_assert!(band.from <= band.to);
            next = band.to.succ_opt();
        }
        prop_assert_eq!(next, LocalDate::from_ymd_opt(of + 1, 1, 1));
        let mut flushes = year(latitude, of, &[]);
        flushes.retain(|b| b.part == YearPart::Flush);
        for band in flushes {
            prop_assert!(season_on(Some(latitude), band.from, &[]).flush.is_on());
            prop_assert!(season_on(Some(latitude), band.to, &[]).flush.is_on());
        }
    }

    #[test]
    fn what_was_seen_last_holds(north in -90.0..=90.0_f64, at in day(), began in any::<bool>()) {
        let what = if began { Noted::FlushBegan } else { Noted::FlushOver };
        let note = [Note { date: at, what }];
        let on = season_on(Latitude::degrees(north).ok(), at, &note).flush.is_on();
        prop_assert_eq!(on, began);
    }

    #[test]
    fn the_sugar_of_a_day_rises_from_five_to_five_and_comes_round(hour in -48.0..72.0_f64) {
        let shape = sugar_shape(hour);
        prop_assert!((0.0..=1.0).contains(&shape));
        prop_assert!((shape - sugar_shape(hour + 24.0)).abs() < 1e-9);
        prop_assert!((shape + sugar_shape(hour + 12.0) - 1.0).abs() < 1e-9);
        let of_day = hour.rem_euclid(24.0);
        if (5.0..16.9).contains(&of_day) {
            prop_assert!(shape < sugar_shape(hour + 0.05));
        }
    }
}
