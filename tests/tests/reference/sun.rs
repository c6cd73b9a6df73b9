//! Sunrise, noon and sunset held against NREL, USNO and skyfield; see `tests/vectors/sun_skyfield.py`.
//!
//! Within 60 s below 60 degrees of latitude and 120 s above; elevations within 0.05 degrees.
//!
//! NREL names the events of the day of Greenwich. In Golden, seven hours west, the sunset that it gives for a day is that of
//! the evening before by the local calendar, and a minute off that of the day; USNO gives the local day's.

use chrono::{DateTime, NaiveTime};
use serde_json::Value;
use std::fs;
use tussock_core::graze::sun::{Place, SunDay, elevation, sun_day};
use tussock_core::units::{Instant, LocalDate, Zone};
use tussock_tests::reference::crate_root;
use tussock_tests::zone::TableZone;

const DEGREES: f64 = 0.05;

fn text(name: &str) -> String {
    let path = crate_root().join("vectors").join(name);
    fs::read_to_string(&path).unwrap_or_else(|e| panic!("{}: {e}", path.display()))
}

fn published() -> Value {
    serde_json::from_str(&text("sun_published.json")).unwrap()
}

fn tolerance_ms(north: f64) -> i64 {
    if north.abs() < 60.0 { 60_000 } else { 120_000 }
}

#[track_caller]
fn near(ours: Instant, theirs: i64, within: i64, what: &str) {
    let off = ours.to_ms() - theirs;
    assert!(off.abs() <= within, "{what}: {off} ms off");
}

fn ends(sun: SunDay) -> (Instant, Instant) {
    (sun.sunrise().unwrap(), sun.sunset().unwrap())
}

fn number(value: &Value) -> f64 {
    value.as_f64().unwrap()
}

/// A published time of a day as an instant: with its offset, with a Z, or on the wall of the zone.
fn published_at(day: &str, time: &Value, offset_min: i32) -> i64 {
    let time = time.as_str().unwrap();
    if let Ok(at) = DateTime::parse_from_rfc3339(&format!("{day}T{time}")) {
        return at.timestamp_millis();
    }
    let clock: NaiveTime = time.parse().unwrap();
    let local = day.parse::<LocalDate>().unwrap().and_time(clock).and_utc();
    local.timestamp_millis() - i64::from(offset_min) * 60_000
}

fn golden() -> Place {
    Place::degrees(39.742_476, -105.178_6).unwrap()
}

#[test]
fn the_report_of_nrel_is_met() {
    let all = published();
    let example = &all["nrel_tp560_A51"];
    let at = DateTime::parse_from_rfc3339(example["time"].as_str().unwrap()).unwrap();
    let place = Place::degrees(number(&example["lat"]), number(&example["lon"])).unwrap();
    let ours = elevation(place, Instant::from_ms(at.timestamp_millis())).unwrap();
    let theirs = number(&example["elevation_no_refraction"]);
    assert!((ours - theirs).abs() < DEGREES, "{ours} {theirs}");
    let zone = TableZone::new(-420, &[]);
    let of = |day: &str| ends(sun_day(place, day.parse().unwrap(), &zone).unwrap());
    let given = |key: &str, day: &str| published_at(day, &example[key], -420);
    let within = tolerance_ms(39.7);
    let rise = given("sunrise", "2003-10-17");
    near(of("2003-10-17").0, rise, within, "sunrise");
    let set = given("sunset", "2003-10-16");
    near(of("2003-10-16").1, set, within, "sunset");
}

#[test]
fn the_days_that_nrel_gives_are_met() {
    let all = published();
    let mut days = 0;
    for (list, offset) in [("nrel_web_south", 0), ("nrel_web_golden", -420)] {
        for row in all[list].as_array().unwrap() {
            let day = row["date"].as_str().unwrap();
            let place = match row["lat"].as_f64() {
                Some(north) => Place::degrees(north, number(&row["lon"])).unwrap(),
                None => golden(),
            };
            let zone = TableZone::new(offset, &[]);
            let sun = sun_day(place, day.parse().unwrap(), &zone).unwrap();
            let within = tolerance_ms(place.latitude.to_degrees());
            let (rise, mut set) = ends(sun);
            let mut evening = sun.noon();
            // By the day of Greenwich: an evening after its midnight is the one before.
            if offset < 0 {
                let before: LocalDate = day.parse().unwrap();
                let before = sun_day(place, before.pred_opt().unwrap(), &zone).unwrap();
                (_, set) = ends(before);
                evening = before.noon();
            }
            let evening = zone.to_local(evening).date.to_string();
            for (ours, day, key) in [
                (rise, day, "rise"),
                (sun.noon(), day, "transit"),
                (set, evening.as_str(), "set"),
            ] {
                let theirs = published_at(day, &row[key], offset);
                near(ours, theirs, within, &format!("{day} {key}"));
            }
            days += 1;
        }
    }
    assert_eq!(days, 4);
}

#[test]
fn the_minutes_that_usno_gives_are_met() {
    let all = published();
    let rows = all["usno_golden"].as_array().unwrap();
    assert_eq!(rows.len(), 4);
    for row in rows {
        let day = row["date"].as_str().unwrap();
        let zone = TableZone::new(-420, &[]);
        let (rise, set) = ends(sun_day(golden(), day.parse().unwrap(), &zone).unwrap());
        for (ours, key) in [(rise, "rise"), (set, "set")] {
            let printed = format!("{}:00", row[key].as_str().unwrap());
            let theirs = published_at(day, &Value::from(printed), -420);
            // Half a minute of rounding, and what rounding of the place may add.
            near(ours, theirs, 60_000, &format!("{day} {key}"));
        }
    }
}

#[derive(serde::Deserialize)]
struct PlaceDay {
    name: String,
    north: f64,
    east: f64,
    zone: String,
    day: String,
    offset: i32,
    change: i64,
    then: i32,
    what: String,
    sunrise: Option<i64>,
    noon: i64,
    sunset: Option<i64>,
    at: i64,
    elevation: f64,
}

#[test]
fn three_hundred_days_of_skyfield_are_met() {
    let all = text("sun_skyfield.csv");
    let (_, table) = all.split_once('\n').unwrap();
    let mut reader = csv::Reader::from_reader(table.as_bytes());
    let (mut days, mut south, mut without, mut line) = (0, 0, 0, 0);
    let mut worst = (0, 0, 0.0_f64);
    for row in reader.deserialize() {
        let row: PlaceDay = row.unwrap();
        let what = format!("{} ({}) {}", row.name, row.zone, row.day);
        let place = Place::degrees(row.north, row.east).unwrap();
        let zone = TableZone::new(row.offset, &[(Instant::from_ms(row.change), row.then)]);
        let day: LocalDate = row.day.parse().unwrap();
        let sun = sun_day(place, day, &zone).unwrap();
        let within = tolerance_ms(row.north);
        near(sun.noon(), row.noon, within, &format!("{what} noon"));
        assert_eq!(zone.to_local(sun.noon()).date, day, "{what}");
        let kind = match sun {
            SunDay::Rises { .. } => "rises",
            SunDay::NeverRises { .. } => "never_rises",
            SunDay::NeverSets { .. } => "never_sets",
        };
        assert_eq!(kind, row.what, "{what}");
        for (ours, theirs) in [(sun.sunrise(), row.sunrise), (sun.sunset(), row.sunset)] {
            if let (Some(ours), Some(theirs)) = (ours, theirs) {
                near(ours, theirs, within, &what);
                let off = (ours.to_ms() - theirs).abs();
                if row.north.abs() < 60.0 {
                    worst.0 = worst.0.max(off);
                } else {
                    worst.1 = worst.1.max(off);
                }
            }
        }
        let height = elevation(place, Instant::from_ms(row.at)).unwrap();
        let off = (height - row.elevation).abs();
        assert!(off < DEGREES, "{what}: {off} degrees off");
        worst.2 = worst.2.max(off);
        days += 1;
        south += usize::from(row.north < 0.0);
        without += usize::from(row.what != "rises");
        line += usize::from(row.east.abs() > 156.0);
    }
    println!(
        "{days} place-days, {south} in the south, {without} without a rise, {line} near the date line; at worst \
         {} ms below 60 degrees, {} ms above, {:.5} degrees",
        worst.0, worst.1, worst.2
    );
    assert!(days >= 200 && south >= 60 && without >= 8 && line >= 60);
}
