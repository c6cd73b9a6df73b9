use super::*;
use crate::animal::{Answer, RiskLevel};
use crate::graze::season::{Flush, Known, SeasonOn, YearPart};
use crate::graze::sun::{Place, SunDay};
use crate::limits::Ends;
use crate::units::{Instant, Length, LocalDate, Span, Zone};

/// A zone with one change of the clock.
struct OneChange {
    at: Instant,
    before: i32,
    after: i32,
}

impl Zone for OneChange {
    fn offset_min(&self, at: Instant) -> i32 {
        if at < self.at {
            self.before
        } else {
            self.after
        }
    }
}

fn fixed(minutes: i32) -> OneChange {
    OneChange {
        at: Instant::from_ms(0),
        before: minutes,
        after: minutes,
    }
}

fn day(text: &str) -> LocalDate {
    text.parse().unwrap()
}

fn season(flush: Flush) -> SeasonOn {
    SeasonOn {
        flush,
        autumn: false,
        part: Some(YearPart::Summer),
    }
}

const ON: Flush = Flush::On(Known::ByLatitude);
const OFF: Flush = Flush::Off(Known::ByLatitude);

/// A good morning in July: night over 5, sunny, leaf above the ankle, in Ireland.
fn good(risk: RiskLevel) -> WindowFor<'static> {
    WindowFor {
        risk,
        day: day("2026-07-14"),
        to_come: false,
        place: Some(Place::degrees(53.3, -6.3).unwrap()),
        weather: DayWeather {
            night: Night::Over5,
            sky: Sky::Sunny,
            ..DayWeather::default()
        },
        season: season(OFF),
        leaf: Some(Ends::exactly(Length::cm(15.0))),
        seeding: Answer::No,
        shade: false,
        also: &[],
    }
}

fn clocks(window: &Window, zone: &impl Zone) -> Vec<(String, String)> {
    let clock = |at| zone.to_local(at).time.format("%H:%M").to_string();
    window
        .opens
        .iter()
        .map(|s| (clock(s.from), clock(s.to)))
        .collect()
}

fn told(ask: &WindowFor<'_>) -> Window {
    window(ask, &fixed(60))
}

#[test]
fn a_clear_morning_is_open_from_sunrise_to_nine() {
    let ask = good(RiskLevel::Proven);
    let told = told(&ask);
    assert_eq!(
        clocks(&told, &fixed(60)),
        [("05:15".to_owned(), "09:00".to_owned())]
    );
    assert_eq!(told.opens[0].begins, Begins::Sunrise);
    assert_eq!(
        (told.why_to, &told.closed, &told.care),
        (WhyTo::Clear, &vec![], &vec![])
    );
    let nine = told.opens[0].to;
    assert_eq!(told.latest, nine + Span::hours(1));
    assert!(told.is_open(nine - Span::minutes(1)) && !told.is_open(nine));
    assert_eq!(told.in_by(nine - Span::hours(2)), Some(nine));
    assert_eq!(told.in_by(nine), None);
}

#[test]
fn cloud_and_shade_keep_it_open_longer_and_an_unsaid_sky_does_not() {
    let mut ask = good(RiskLevel::Proven);
    ask.weather.sky = Sky::NotSaid;
    let unsaid = told(&ask);
    assert_eq!(clocks(&unsaid, &fixed(60))[0].1, "09:00");
    assert_eq!(unsaid.why_to, WhyTo::SkyNotSaid);
    assert_eq!(unsaid.care, [Care::SkyNotSaid]);
    ask.shade = true;
    let shade = told(&ask);
    assert_eq!(clocks(&shade, &fixed(60))[0].1, "11:00");
    assert_eq!((shade.why_to, shade.care), (WhyTo::Shade, vec![]));
    ask.shade = false;
    ask.weather.sky = Sky::Dull;
    let dull = told(&ask);
    assert_eq!(clocks(&dull, &fixed(60))[0].1, "11:00");
    assert_eq!(dull.why_to, WhyTo::LastingCloud);
}

type Change = fn(&mut WindowFor<'static>);

#[test]
fn each_reason_closes_it_for_an_animal_at_risk_and_is_a_care_for_one_that_is_only_fat() {
    let cases: [(Change, Closed, Care); 6] = [
        (|a| a.season.flush = ON, Closed::Flush, Care::Flush),
        (
            |a| a.season.flush = Flush::NotKnown,
            Closed::FlushNotKnown,
            Care::FlushNotKnown,
        ),
        (
            |a| a.weather.night = Night::Cold,
            Closed::ColdNight,
            Care::ColdNight,
        ),
        (
            |a| a.weather.night = Night::NotSaid,
            Closed::NightNotSaid,
            Care::NightNotSaid,
        ),
        (
            |a| a.weather.dry_spell = true,
            Closed::Drought,
            Care::Drought,
        ),
        (|a| a.seeding = Answer::Yes, Closed::Seeding, Care::Seeding),
    ];
    for (change, reason, care) in cases {
        for risk in [RiskLevel::Proven, RiskLevel::AtRisk, RiskLevel::NotKnown] {
            let mut ask = good(risk);
            change(&mut ask);
            let told = told(&ask);
            assert_eq!(told.closed, [reason], "{risk:?}");
            assert!(told.opens.is_empty(), "{risk:?} {reason:?}");
        }
        let mut ask = good(RiskLevel::Clear);
        change(&mut ask);
        let told = told(&ask);
        assert_eq!((told.closed, told.care), (vec![], vec![care]));
        assert_eq!(told.opens.len(), 1);
    }
}

#[test]
fn frost_short_leaf_and_what_was_found_elsewhere_close_it_for_all() {
    let cases: [(Change, &[Closed]); 6] = [
        (
            |a| a.leaf = Some(Ends::exactly(Length::cm(3.0))),
            &[Closed::Bare],
        ),
        (
            |a| a.leaf = Some(Ends::exactly(Length::cm(6.0))),
            &[Closed::ShortLeaf],
        ),
        (|a| a.also = &[Closed::Stopped], &[Closed::Stopped]),
        (
            |a| a.also = &[Closed::HayLeavesNoRoom],
            &[Closed::HayLeavesNoRoom],
        ),
        (
            |a| a.also = &[Closed::Resting { until: None }],
            &[Closed::Resting { until: None }],
        ),
        (
            |a| a.also = &[Closed::Stopped, Closed::Stopped],
            &[Closed::Stopped],
        ),
    ];
    for risk in [RiskLevel::Proven, RiskLevel::Clear] {
        for (change, reasons) in cases {
            let mut ask = good(risk);
            change(&mut ask);
            let told = told(&ask);
            assert_eq!((told.closed.as_slice(), told.opens.len()), (reasons, 0));
        }
    }
}

#[test]
fn a_hard_freeze_closes_it_that_morning_and_for_seven_days_for_all() {
    for risk in [RiskLevel::Proven, RiskLevel::Clear] {
        let mut ask = good(risk);
        ask.weather.frost = true;
        let until = day("2026-07-21");
        assert_eq!(
            told(&ask).closed,
            [Closed::Frost, Closed::HardFreeze { until }]
        );
        ask.weather.frost = false;
        ask.weather.last_hard_freeze = Some(day("2026-07-07"));
        let until = day("2026-07-14");
        assert_eq!(told(&ask).closed, [Closed::HardFreeze { until }]);
        ask.weather.last_hard_freeze = Some(day("2026-07-06"));
        assert_eq!(told(&ask).closed, []);
        // One that is still to come is none.
        ask.weather.last_hard_freeze = Some(day("2026-07-15"));
        assert_eq!(told(&ask).closed, []);
    }
}

#[test]
fn what_nobody_said_asks_for_care() {
    let cases: [(Change, Care); 5] = [
        (|a| a.leaf = None, Care::LeafNotSaid),
        (|a| a.seeding = Answer::NotKnown, Care::SeedingNotSaid),
        (
            |a| {
                a.season.flush = Flush::Near {
                    usual: day("2026-07-20"),
                };
            },
            Care::FlushNear {
                usual: day("2026-07-20"),
            },
        ),
        (|a| a.season.autumn = true, Care::AutumnGrowth),
        (
            |a| {
                a.to_come = true;
                a.weather.night = Night::NotSaid;
            },
            Care::IfNightOver5,
        ),
    ];
    for (change, care) in cases {
        let mut ask = good(RiskLevel::Proven);
        change(&mut ask);
        let told = told(&ask);
        assert_eq!((told.closed, told.care), (vec![], vec![care]));
        assert_eq!(told.opens.len(), 1, "{care:?}");
    }
}

#[test]
fn a_mild_night_opens_the_late_evening() {
    let mut ask = good(RiskLevel::Clear);
    ask.weather.night = Night::Mild;
    let fat = told(&ask);
    // Ten by the sun is half past eleven by the clock of summer.
    assert_eq!(clocks(&fat, &fixed(60))[1].0, "23:31");
    assert_eq!(fat.opens[1].begins, Begins::LateEvening);
    assert_eq!(fat.opens[1].to, fat.opens[1].from + Span::hours(2));
    assert_eq!(fat.care, [Care::EveningIfMild]);
    ask.risk = RiskLevel::NotKnown;
    assert_eq!(told(&ask).opens.len(), 1, "at risk, and a sunny day");
    ask.weather.sky = Sky::Dull;
    assert_eq!(told(&ask).opens.len(), 2);
    ask.season.flush = ON;
    assert_eq!(
        told(&ask).opens.len(),
        0,
        "the flush closes the evening too"
    );
    ask.season.flush = OFF;
    ask.to_come = true;
    assert_eq!(told(&ask).opens.len(), 1, "nobody knows that evening");
}

#[test]
fn without_a_place_the_clock_tells_it() {
    let mut ask = good(RiskLevel::Proven);
    ask.place = None;
    ask.weather.night = Night::Mild;
    ask.weather.sky = Sky::Dull;
    let told = told(&ask);
    assert_eq!(
        clocks(&told, &fixed(60)),
        [
            ("04:00".to_owned(), "11:00".to_owned()),
            ("22:00".to_owned(), "00:00".to_owned())
        ]
    );
    assert_eq!(told.opens[0].begins, Begins::Clock);
    assert_eq!(told.sun, None);
    assert_eq!(told.care, [Care::EveningIfMild, Care::NoPlace]);
}

#[test]
fn a_clock_behind_its_sun_closes_earlier_and_summer_time_never_later() {
    let mut ask = good(RiskLevel::Proven);
    // Noon here is at a quarter past eleven.
    ask.place = Some(Place::degrees(43.3, 145.6).unwrap());
    let told = window(&ask, &fixed(540));
    let noon = told.sun.unwrap().noon();
    assert_eq!(told.opens[0].to, noon - Span::hours(3));
    assert_eq!(clocks(&told, &fixed(540))[0].1, "08:23");
    assert_eq!(told.latest, noon - Span::hours(2));
}

#[test]
fn a_clock_of_elsewhere_is_left_aside_and_said() {
    let ask = good(RiskLevel::Proven);
    let abroad = fixed(600);
    let told = window(&ask, &abroad);
    let noon = told.sun.unwrap().noon();
    assert_eq!(told.opens[0].to, noon - Span::hours(3));
    assert_eq!(told.opens[0].begins, Begins::Sunrise);
    assert!(
        matches!(told.care[..], [Care::ClockOfElsewhere { ahead }] if ahead > Span::hours(9)),
        "{:?}",
        told.care
    );
}

#[test]
fn days_of_twenty_three_and_twenty_five_hours_open_as_others_do() {
    for (on, before, after) in [("2026-03-29", 0, 60), ("2026-10-25", 60, 0)] {
        let change = day(on).and_hms_opt(1, 0, 0).unwrap().and_utc();
        let zone = OneChange {
            at: Instant::from_ms(change.timestamp_millis()),
            before,
            after,
        };
        let mut ask = good(RiskLevel::Clear);
        ask.day = day(on);
        let told = window(&ask, &zone);
        assert_eq!(clocks(&told, &zone)[0].1, "09:00", "{on}");
        assert_eq!(zone.to_local(told.opens[0].from).date, day(on));
        ask.place = None;
        assert_eq!(
            clocks(&window(&ask, &zone), &zone),
            [("04:00".to_owned(), "09:00".to_owned())]
        );
    }
}

#[test]
fn where_the_sun_does_not_set_or_rise_the_clock_begins() {
    let mut ask = good(RiskLevel::Clear);
    ask.place = Some(Place::degrees(69.65, 18.96).unwrap());
    ask.day = day("2026-06-21");
    let june = window(&ask, &fixed(120));
    assert!(matches!(june.sun, Some(SunDay::NeverSets { .. })));
    assert_eq!(june.care, [Care::NoNight]);
    assert_eq!(june.opens[0].begins, Begins::Clock);
    ask.weather.night = Night::Mild;
    assert_eq!(window(&ask, &fixed(120)).opens.len(), 1, "no late evening");
    ask.weather.night = Night::Over5;
    ask.day = day("2026-12-21");
    let december = window(&ask, &fixed(60));
    assert_eq!(december.care, [Care::NoSun]);
    assert_eq!(december.opens.len(), 1);
}

#[test]
fn a_late_sunrise_leaves_a_morning_in_the_dark() {
    let mut ask = good(RiskLevel::Clear);
    ask.place = Some(Place::degrees(60.4, -1.2).unwrap());
    ask.day = day("2026-12-21");
    let told = window(&ask, &fixed(0));
    let sunrise = told.sun.unwrap().sunrise().unwrap();
    assert_eq!(told.care, [Care::DarkUntil(sunrise)]);
    assert_eq!(told.opens[0].begins, Begins::Clock);
    assert_eq!(told.opens.len(), 1);
}

#[test]
fn the_sugar_of_an_average_day_is_least_at_five_and_most_at_five() {
    let near = |a: f64, b: f64| assert!((a - b).abs() < 1e-12, "{a} {b}");
    near(sugar_shape(5.0), 0.0);
    near(sugar_shape(17.0), 1.0);
    near(sugar_shape(11.0), 0.5);
    near(sugar_shape(23.0), 0.5);
    near(sugar_shape(29.0), 0.0);
    near(sugar_at(180.0, 25.0, 17.0), 192.5);
    let [least, most] = day_of_mean(200.0);
    near(least, 0.1);
    near(most, 0.15);
}
