//! Golden files: one file a kind and version, and one of the words and ranges that its fields allow.
//!
//! A file is written once and read by every later release. `TUSSOCK_GOLDEN=write` writes the files anew; do so only for
//! a kind or version that was never released.

use serde_json::Value;
use std::fmt::Write as _;
use std::path::PathBuf;
use tussock_core::log::bodies::Chip;
use tussock_core::log::{Body, Bundle, Case, Kind, Log, LogError, Origin, Record, alike};
use tussock_core::sources::RecordId;
use tussock_core::units::{Instant, Span, Zone};

#[path = "golden/samples.rs"]
mod samples;

fn file(name: &str) -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR"))
        .join("tests/golden")
        .join(name)
}

/// The text of a golden file; `fresh` is compared with it, or written when that is asked for.
fn golden(name: &str, fresh: &str) -> String {
    if std::env::var_os("TUSSOCK_GOLDEN").is_some_and(|said| said == "write") {
        std::fs::write(file(name), fresh).unwrap();
    }
    let kept = std::fs::read_to_string(file(name))
        .unwrap_or_else(|error| panic!("{name} is missing ({error})"));
    assert_eq!(
        kept, fresh,
        "{name}: what is written now is not what was written once"
    );
    kept
}

#[test]
fn every_kind_is_read_and_written_as_it_was_once() {
    for kind in Kind::KNOWN {
        let samples = samples::bodies(kind);
        let texts: Vec<String> = samples
            .iter()
            .enumerate()
            .map(|(index, body)| samples::record(kind, index, body).to_text().unwrap())
            .collect();
        let name = format!("{}.v{}.json", kind.word(), kind.latest().unwrap());
        let kept = golden(&name, &format!("[\n{}\n]\n", texts.join(",\n")));
        let Value::Array(records) = tussock_core::log::parse(&kept).unwrap() else {
            panic!("{name} is no list");
        };
        assert_eq!(records.len(), samples.len());
        for (value, sample) in records.into_iter().zip(&samples) {
            let record = Record::from_value(value).unwrap();
            let body = Body::read(&record).unwrap();
            assert_eq!(body, *sample, "{name}");
            assert_eq!(body.to_value().unwrap(), record.body, "{name}");
        }
    }
}

#[test]
fn every_file_ever_written_is_of_a_kind_that_is_still_read() {
    let mut seen = 0;
    for entry in std::fs::read_dir(file("")).unwrap() {
        let name = entry.unwrap().file_name().into_string().unwrap();
        let Some(stem) = name.strip_suffix(".json") else {
            continue;
        };
        let Some((word, version)) = stem.rsplit_once(".v") else {
            continue;
        };
        let kind = Kind::of(word);
        let version: i64 = version.parse().unwrap();
        assert!(
            kind.latest().is_some_and(|latest| version <= latest),
            "{name}"
        );
        let text = std::fs::read_to_string(file(&name)).unwrap();
        for value in tussock_core::log::parse(&text).unwrap().as_array().unwrap() {
            let record = Record::from_value(value.clone()).unwrap();
            assert!(
                !matches!(Body::read(&record).unwrap(), Body::Unread),
                "{name}"
            );
            seen += 1;
        }
    }
    assert!(seen >= Kind::KNOWN.len());
}

#[test]
fn a_food_of_the_first_version_climbs_to_the_second() {
    let text = std::fs::read_to_string(file("food.v1.json")).unwrap();
    let Value::Array(mut records) = tussock_core::log::parse(&text).unwrap() else {
        panic!("food.v1.json is no list");
    };
    let record = Record::from_value(records.remove(0)).unwrap();
    assert_eq!(record.v, 1);
    let body = Body::read(&record).unwrap();
    assert_eq!(body, samples::bodies(&Kind::Food).remove(0));
    // An edit writes the second version, and the record before it stays as it was.
    let next = record.next(record.stamp, None, &body).unwrap();
    assert_eq!(next.v, 2);
    assert_eq!(next.body, body.to_value().unwrap());
    assert_eq!(record.body["food_use"], "balancer");
}

#[test]
fn an_animal_of_the_first_version_climbs_to_the_second() {
    let text = std::fs::read_to_string(file("animal.v1.json")).unwrap();
    let Value::Array(records) = tussock_core::log::parse(&text).unwrap() else {
        panic!("animal.v1.json is no list");
    };
    let now = samples::bodies(&Kind::Animal);
    assert_eq!(records.len(), 3);
    for (value, sample) in records.into_iter().zip(now) {
        let record = Record::from_value(value).unwrap();
        assert_eq!(record.v, 1);
        let body = Body::read(&record).unwrap();
        assert_eq!(body, sample);
        // Nothing is invented: the second version of it says what the first said.
        let next = record.next(record.stamp, None, &body).unwrap();
        assert_eq!(next.v, 2);
        assert_eq!(next.body, record.body);
    }
}

#[test]
fn yards_paddocks_and_weather_of_the_first_version_climb_and_nothing_is_invented() {
    for kind in [Kind::Yard, Kind::Paddock, Kind::Weather] {
        let name = format!("{}.v1.json", kind.word());
        let text = std::fs::read_to_string(file(&name)).unwrap();
        let Value::Array(records) = tussock_core::log::parse(&text).unwrap() else {
            panic!("{name} is no list");
        };
        for value in records {
            let record = Record::from_value(value).unwrap();
            assert_eq!((record.kind.clone(), record.v), (kind.clone(), 1));
            let body = Body::read(&record).unwrap();
            match &body {
                Body::Yard(yard) => {
                    assert!(yard.regions.is_empty());
                    assert!(yard.place.as_ref().unwrap().zone.is_none());
                }
                Body::Paddock(paddock) => {
                    assert_eq!((paddock.shade, paddock.kind), (None, None));
                    assert!(paddock.plants.is_empty() && paddock.strip.is_none());
                }
                Body::Weather(day) => {
                    assert!(!day.chips.contains(&Chip::NightOverFive));
                }
                _ => panic!("{name} holds another kind"),
            }
            // What stood there stands there; lists of which nothing was said are empty.
            let next = record.next(record.stamp, None, &body).unwrap();
            assert_eq!(next.v, 2);
            for (key, value) in next.body.as_object().unwrap() {
                match record.body.get(key) {
                    Some(before) => assert_eq!(value, before, "{name} {key}"),
                    None => assert_eq!(*value, Value::Array(Vec::new()), "{name} {key}"),
                }
            }
        }
    }
}

/// What a field allows: asked by putting there what nothing allows.
fn asked(record: &Record, path: &mut Vec<String>, value: &Value, out: &mut Vec<String>) {
    match value {
        Value::Object(map) => {
            for (key, inner) in map {
                path.push(key.clone());
                asked(record, path, inner, out);
                path.pop();
            }
        }
        Value::Array(items) => {
            for (index, inner) in items.iter().enumerate() {
                path.push(index.to_string());
                asked(record, path, inner, out);
                path.pop();
            }
        }
        Value::String(_) | Value::Number(_) => {
            let nothing = match value {
                Value::String(_) => Value::from("\u{1}".repeat(20_001)),
                _ => Value::from(-9_000_000_000_000_000_i64),
            };
            let mut broken = record.clone();
            *broken
                .body
                .pointer_mut(&format!("/{}", path.join("/")))
                .unwrap() = nothing;
            let error = Body::read(&broken).unwrap_err();
            let LogError::NotAllowed { place, allowed, .. } = &error else {
                panic!("{path:?}: {error}");
            };
            assert_eq!(place.record.as_deref(), Some(record.id.0.as_str()));
            let field: String = place
                .field
                .chars()
                .filter(|c| !c.is_ascii_digit())
                .collect();
            out.push(format!("{} {field}: {allowed:?}", record.kind.word()));
        }
        Value::Null | Value::Bool(_) => {}
    }
}

#[test]
fn the_words_and_ranges_of_every_field_are_those_of_once_and_its_error_names_it() {
    let mut lines = Vec::new();
    for record in samples::records() {
        asked(&record, &mut Vec::new(), &record.body, &mut lines);
    }
    lines.sort();
    lines.dedup();
    let mut text = String::new();
    for line in &lines {
        writeln!(text, "{line}").unwrap();
    }
    golden("allowed.txt", &text);
    assert!(lines.len() > 100);
}

fn bundle() -> Bundle {
    let mut log = Log::new();
    for record in samples::records() {
        log.add(record).unwrap();
    }
    Bundle {
        app: "0.1.0".to_owned(),
        made_at: Instant::from_ms(1_777_960_800_000),
        log,
        extra: serde_json::Map::new(),
    }
}

#[test]
fn an_export_is_the_same_bytes_and_comes_back_whole() {
    let kept = golden("bundle.json", &bundle().to_text().unwrap());
    let read = Bundle::read(&kept).unwrap();
    assert_eq!(read, bundle());
    assert_eq!(read.to_text().unwrap(), kept);
    // As an editor on another system might leave it.
    let pretty = serde_json::to_string_pretty(&tussock_core::log::parse(&kept).unwrap()).unwrap();
    let pretty = format!("\u{feff}{}\r\n", pretty.replace('\n', "\r\n"));
    assert_eq!(Bundle::read(&pretty).unwrap().to_text().unwrap(), kept);
}

#[test]
fn a_later_document_is_refused_and_a_later_kind_field_and_version_survive() {
    let kept = bundle().to_text().unwrap();
    let later = kept.replace("\"version\":1}", "\"version\":2}");
    assert_eq!(
        Bundle::read(&later),
        Err(LogError::NewerFormat {
            version: 2,
            known: 1
        })
    );
    let mut later = bundle();
    let mut record = samples::records().remove(0);
    record.id.0 = "photo-1".to_owned();
    record.kind = Kind::Other("hoof_photo".to_owned());
    record.v = 7;
    record.body = serde_json::json!({"sha": "ab", "pose": ["left", null, {"x": -1}]});
    record.extra = serde_json::Map::from_iter([("seal".to_owned(), Value::from("…"))]);
    later.log.add(record.clone()).unwrap();
    record.id.0 = "weight-later".to_owned();
    record.kind = Kind::Weight;
    later.log.add(record).unwrap();
    later
        .extra
        .insert("pictures".to_owned(), serde_json::json!([1, 2]));
    let text = later.to_text().unwrap();
    let read = Bundle::read(&text).unwrap();
    assert_eq!(read, later);
    assert_eq!(read.to_text().unwrap(), text);
    let (_, report) = Log::new()
        .receive(&read.log, Instant::from_ms(1_777_960_900_000))
        .unwrap();
    let unread: Vec<&str> = report.unread.iter().map(|id| id.0.as_str()).collect();
    assert_eq!(unread, ["photo-1", "weight-later"]);
    // What a later release wrote cannot be edited here.
    let current = read.log.get(&report.unread[1]).unwrap().current().unwrap();
    let body = samples::bodies(&Kind::Weight).remove(0);
    assert!(current.next(current.stamp, None, &body).is_err());
}

#[test]
fn a_case_is_an_export_with_a_time_a_zone_and_visits() {
    let mut bundle = Bundle {
        log: Log::new(),
        ..bundle()
    };
    for kind in [Kind::Animal, Kind::Lot, Kind::Weight, Kind::Condition] {
        let body = samples::bodies(&kind).remove(0);
        bundle.log.add(samples::record(&kind, 0, &body)).unwrap();
    }
    let beside = serde_json::json!({
        "now": 1_777_960_800_000_i64,
        "zone": {"name": "Europe/London", "before_min": 0, "changes": [
            {"at": 1_774_746_000_000_i64, "offset_min": 60},
            {"at": 1_792_890_000_000_i64, "offset_min": 0},
        ]},
        "visits": ["06:30", "12:00", "17:30"],
        "subject": "animal:moss",
    });
    bundle.extra = beside.as_object().unwrap().clone();
    let text = golden("case.json", &bundle.to_text().unwrap());
    assert!(Bundle::read(&text).is_ok());
    let case = Case::read(&text).unwrap();
    assert_eq!(case.log, bundle.log);
    assert_eq!(case.visits.len(), 3);
    assert_eq!(case.subject.unwrap().to_string(), "animal:moss");
    assert_eq!(case.zone.offset_min(case.now), 60);
    assert_eq!(case.zone.offset_min(Instant::from_ms(0)), 0);
    assert_eq!(case.zone.offset_min(Instant::from_ms(1_792_890_000_000)), 0);
    // By hand: without counts and sum, with visits out of order.
    let by_hand = r#"{"format":"tussock-log","version":1,"app":"0.1.0","made_at":0,"now":0,
        "zone":{"name":"UTC","before_min":0,"changes":[]},"visits":["17:30","06:30"],"records":[]}"#;
    let error = Case::read(by_hand).unwrap_err();
    assert_eq!(error.place().unwrap().field, "visits");
    assert!(Case::read(&by_hand.replace(r#""17:30","#, "")).is_ok());
    assert!(Bundle::read(by_hand).is_err());
}

#[test]
fn equal_entries_minutes_apart_are_both_kept_and_named() {
    let body = samples::bodies(&Kind::Weight).remove(1);
    let mut log = Log::new();
    for (id, minutes) in [("a", 0), ("b", 4), ("c", 90)] {
        let sample = samples::record(&Kind::Weight, 1, &body);
        let origin = Origin {
            yard: sample.yard,
            subject: sample.subject,
            at: sample.at + Span::minutes(minutes),
            offset_min: sample.offset_min,
            zone: sample.zone,
            by: sample.by,
            known: sample.known,
        };
        let record = Record::new(RecordId(id.to_owned()), origin, sample.stamp, &body).unwrap();
        log.add(record).unwrap();
    }
    assert_eq!(log.len(), 3);
    let pairs = alike(&log, Span::minutes(10)).unwrap();
    let ids: Vec<_> = pairs
        .iter()
        .map(|(a, b)| (a.id.0.as_str(), b.id.0.as_str()))
        .collect();
    assert_eq!(ids, [("a", "b")]);
}

#[test]
fn a_damaged_or_short_document_is_refused_and_says_what_is_wrong() {
    let kept = bundle().to_text().unwrap();
    let damaged = kept.replacen("Moss", "Mose", 1);
    assert_eq!(Bundle::read(&damaged), Err(LogError::Seal));
    let wrong = kept.replacen(
        "\"heart_girth\":{\"mm\":1385",
        "\"heart_girth\":{\"mm\":-1",
        1,
    );
    assert_ne!(wrong, kept);
    let error = Bundle::read(&wrong).unwrap_err();
    let place = error.place().unwrap();
    assert_eq!(place.record.as_deref(), Some("weight-0"));
    assert_eq!(place.field, "body.reading.tape.heart_girth.mm");
    assert!(place.row.is_some());
}
