//! Laws of the log: merging converges, stamps rise, canonical text is canonical, an import is whole or nothing.
//!
//! `TUSSOCK_ALL=1` tries each law on 10,000 cases.

use proptest::prelude::*;
use serde_json::{Map, Value, json};
use tussock_core::log::{
    Body, Bundle, DeviceId, Kind, Known, Log, Record, Stamp, Subject, canonical, parse,
};
use tussock_core::sources::RecordId;
use tussock_core::units::Instant;

mod replicas;
#[path = "../golden/samples.rs"]
mod samples;

const DEVICES: [&str; 5] = ["bramble1", "moss0001", "fern0001", "laptop01", "phone001"];

fn config() -> ProptestConfig {
    let all = std::env::var_os("TUSSOCK_ALL").is_some_and(|said| said == "1");
    let mut config = crate::seed::config();
    if all {
        config.cases = config.cases.max(10_000);
    }
    config
}

fn device(index: usize) -> DeviceId {
    DeviceId::from_text(DEVICES[index % DEVICES.len()]).unwrap()
}

/// A note about an animal: a kind of a later release, so that any body goes.
fn note(id: &str, stamp: Stamp, after: Option<Stamp>, gone: bool, body: Value) -> Record {
    let paddock = samples::bodies(&Kind::Paddock).remove(0);
    let mut record = samples::record(&Kind::Paddock, 0, &paddock);
    record.id = RecordId(id.to_owned());
    record.kind = Kind::Other("note".to_owned());
    record.subject = Subject::from_text("animal:moss").unwrap();
    record.known = Known::Seen;
    record.device = stamp.device();
    record.stamp = stamp;
    record.after = after;
    record.gone = gone;
    record.body = body;
    record
}

fn stamps() -> impl Strategy<Value = Stamp> {
    (0_u64..4, 0_u16..3, 0_usize..3).prop_map(|(ms, counter, by)| {
        let text = format!(
            "{:013}-{counter:04}-{}",
            1_777_000_000_000 + ms,
            DEVICES[by]
        );
        Stamp::from_text(&text).unwrap()
    })
}

prop_compose! {
    fn records()(
        id in 0_u8..5,
        stamp in stamps(),
        after in proptest::option::of(stamps()),
        gone in any::<bool>(),
        weight in 0_i64..3,
    ) -> Record {
        let after = after.filter(|after| *after < stamp);
        note(&format!("r{id}"), stamp, after, gone, json!({ "g": weight }))
    }
}

fn log_of(records: &[Record]) -> Log {
    let mut log = Log::new();
    for record in records {
        log.add(record.clone()).unwrap();
    }
    log
}

fn bytes(log: &Log) -> String {
    log.texts().collect::<Vec<_>>().join("\n")
}

fn bundle_of(log: Log) -> Bundle {
    Bundle {
        app: "0.1.0".to_owned(),
        made_at: Instant::from_ms(1_777_000_000_000),
        log,
        extra: Map::new(),
    }
}

fn json_values() -> impl Strategy<Value = Value> {
    let leaf = prop_oneof![
        Just(Value::Null),
        any::<bool>().prop_map(Value::from),
        (-9_007_199_254_740_991_i64..=9_007_199_254_740_991).prop_map(Value::from),
        any::<String>().prop_map(Value::from),
    ];
    leaf.prop_recursive(4, 40, 6, |inner| {
        prop_oneof![
            proptest::collection::vec(inner.clone(), 0..6).prop_map(Value::from),
            proptest::collection::btree_map(any::<String>(), inner, 0..6)
                .prop_map(|map| Value::Object(map.into_iter().collect())),
        ]
    })
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn merging_is_commutative_associative_and_idempotent(
        a in proptest::collection::vec(records(), 0..12),
        b in proptest::collection::vec(records(), 0..12),
        c in proptest::collection::vec(records(), 0..12),
    ) {
        let (a, b, c) = (log_of(&a), log_of(&b), log_of(&c));
        let join = |x: &Log, y: &Log| x.clone().merged(y.clone());
        prop_assert_eq!(join(&a, &b), join(&b, &a));
        prop_assert_eq!(join(&join(&a, &b), &c), join(&a, &join(&b, &c)));
        prop_assert_eq!(join(&a, &a), a.clone());
        prop_assert_eq!(bytes(&join(&a, &b)), bytes(&join(&b, &a)));
        // No record is lost, and none is made up.
        let ids = |log: &Log| log.current().map(|r| r.id.clone()).collect::<std::collections::BTreeSet<_>>();
        prop_assert_eq!(ids(&join(&a, &b)), &ids(&a) | &ids(&b));
        // What holds is the latest.
        for record in join(&a, &b).current() {
            let of = |log: &Log| log.get(&record.id).and_then(|v| v.current().map(|r| r.stamp));
            prop_assert_eq!(Some(record.stamp), of(&a).max(of(&b)));
        }
    }

    #[test]
    fn any_order_repetition_and_partition_ends_in_the_same_bytes(
        parts in proptest::collection::vec(proptest::collection::vec(records(), 0..6), 1..6),
        order in proptest::collection::vec(any::<prop::sample::Index>(), 0..20),
    ) {
        let whole = log_of(&parts.concat());
        let mut seen = Log::new();
        let mut left: Vec<usize> = (0..parts.len()).collect();
        for index in order {
            let part = index.index(parts.len());
            left.retain(|other| *other != part);
            seen = log_of(&parts[part]).merged(seen);
        }
        for part in left {
            seen = seen.merged(log_of(&parts[part]));
        }
        prop_assert_eq!(bytes(&seen), bytes(&whole));
        let text = bundle_of(whole.clone()).to_text().unwrap();
        prop_assert_eq!(Bundle::read(&text).unwrap().log, whole);
    }

    #[test]
    fn the_report_of_an_import_adds_up_and_a_second_import_changes_nothing(
        mine in proptest::collection::vec(records(), 0..10),
        theirs in proptest::collection::vec(records(), 0..10),
    ) {
        let now = Instant::from_ms(1_777_000_000_000);
        let (mine, theirs) = (log_of(&mine), log_of(&theirs));
        let (union, report) = mine.receive(&theirs, now).unwrap();
        prop_assert_eq!(&union, &mine.clone().merged(theirs.clone()));
        prop_assert_eq!(union.len(), mine.len() + report.new.len());
        prop_assert!(report.ahead.is_empty());
        let (again, second) = union.receive(&theirs, now).unwrap();
        prop_assert_eq!(again, union);
        prop_assert!(second.new.is_empty() && second.changed.is_empty() && second.overwritten.is_empty());
        prop_assert_eq!((second.history, second.same), (0, theirs.all().count()));
    }

    #[test]
    fn stamps_rise_whatever_the_clock_does_and_sort_as_text(
        clock in proptest::collection::vec((any::<bool>(), 0_i64..9_999_999_999_990, 0_usize..5), 1..60),
        still in 0_i64..9_999_999_999_000,
    ) {
        let mine = device(0);
        let mut last: Option<Stamp> = None;
        for (jumps, ms, from) in clock {
            let now = Instant::from_ms(if jumps { ms } else { still });
            let next = Stamp::tick(last.as_ref(), None, now, mine).unwrap();
            prop_assert!(last.is_none_or(|last| next > last));
            prop_assert!(last.is_none_or(|last| next.to_string() > last.to_string()));
            prop_assert_eq!(Stamp::from_text(&next.to_string()).unwrap(), next);
            let received = Stamp::first(Instant::from_ms(ms), device(from));
            let (kept, ahead) = Stamp::clock(Some(&next), &received, now);
            prop_assert!(kept >= next);
            prop_assert_eq!(ahead.is_some(), ms > now.to_ms() + 600_000);
            if ahead.is_some() {
                prop_assert_eq!(kept, next);
            }
            last = Some(kept);
        }
    }

    #[test]
    fn two_stamps_sort_as_their_texts(a in stamps(), b in stamps()) {
        prop_assert_eq!(a.cmp(&b), a.to_string().cmp(&b.to_string()));
    }

    #[test]
    fn canonical_text_reads_back_to_itself(value in json_values()) {
        let text = canonical(&value).unwrap();
        let read = parse(&text).unwrap();
        prop_assert_eq!(&read, &value);
        prop_assert_eq!(canonical(&read).unwrap(), text.clone());
        // Another JSON writer and any white space come to the same text.
        let other = serde_json::to_string_pretty(&value).unwrap();
        prop_assert_eq!(canonical(&parse(&other).unwrap()).unwrap(), text);
    }

    #[test]
    fn a_record_with_any_body_and_any_later_field_reads_back_to_its_bytes(
        body in proptest::collection::btree_map(any::<String>(), json_values(), 0..4),
        extra in proptest::collection::btree_map("[a-zA-Z_]{1,12}", json_values(), 0..4),
        stamp in stamps(),
    ) {
        let body = Value::Object(body.into_iter().collect());
        let mut record = note("r1", stamp, None, false, body);
        let own = parse(&record.to_text().unwrap()).unwrap();
        record.extra = extra
            .into_iter()
            .filter(|(key, _)| own.get(key).is_none() && key != "after")
            .collect();
        let text = record.to_text().unwrap();
        let read = Record::from_text(&text).unwrap();
        prop_assert_eq!(&read, &record);
        prop_assert_eq!(read.to_text().unwrap(), text);
    }

    #[test]
    fn a_damaged_export_is_refused_or_the_same_and_never_panics(
        at in any::<prop::sample::Index>(),
        bit in 0_u8..8,
        hurt in 0_u8..7,
    ) {
        let log = log_of(&samples::records());
        let bundle = bundle_of(log);
        let text = bundle.to_text().unwrap();
        let mut raw = text.clone().into_bytes();
        let at = at.index(raw.len());
        match hurt {
            0 => raw.truncate(at),
            1 => raw[at] ^= 1 << bit,
            2 => { raw.splice(at..at, *b"NaN"); }
            3 => { raw.splice(at..at, "9".repeat(400).into_bytes()); }
            4 => { raw.splice(at..at, "[".repeat(300).into_bytes()); }
            5 => { raw.splice(at..at, text.clone().into_bytes()); }
            _ => { raw.drain(at..raw.len().min(at + 1 + usize::from(bit))); }
        }
        let broken = String::from_utf8_lossy(&raw).into_owned();
        if let Ok(read) = Bundle::read(&broken) {
            prop_assert_eq!(read.to_text().unwrap(), text);
        }
        if let Ok(read) = Bundle::read_unsealed(&broken) {
            // Then every record in it is one that can be written and read again.
            let again = read.to_text().unwrap();
            prop_assert_eq!(Bundle::read(&again).unwrap(), read);
        }
    }

    #[test]
    fn what_a_later_release_wrote_survives_an_edit(which in any::<prop::sample::Index>()) {
        let all = samples::records();
        let mut record = all[which.index(all.len())].clone();
        let plain = Body::read(&record).unwrap();
        salt(&mut record.body);
        record.extra.insert("later".to_owned(), json!({"a": 1}));
        prop_assert_eq!(Body::read(&record).unwrap(), plain.clone());
        let stamp = Stamp::tick(None, Some(&record.stamp), Instant::from_ms(0), device(1)).unwrap();
        let next = record.next(stamp, None, &plain).unwrap();
        prop_assert_eq!(&next.body, &record.body);
        prop_assert_eq!(&next.extra, &record.extra);
        prop_assert_eq!(next.after, Some(record.stamp));
        let gone = next.marked_gone(Stamp::tick(None, Some(&next.stamp), Instant::from_ms(0), device(1)).unwrap(), None, true);
        prop_assert_eq!(&gone.body, &record.body);
    }
}

/// Puts a field of a later release into every object.
fn salt(value: &mut Value) {
    match value {
        Value::Object(map) => {
            map.values_mut().for_each(salt);
            map.insert("zz_later".to_owned(), json!([1, {"b": null}]));
        }
        Value::Array(items) => items.iter_mut().for_each(salt),
        _ => {}
    }
}

#[test]
fn two_edits_of_one_version_are_found_and_one_persons_second_edit_is_not() {
    let stamp =
        |ms: i64, who: usize| Stamp::first(Instant::from_ms(1_777_000_000_000 + ms), device(who));
    let body = |g: i64| json!({ "g": g });
    let first = note("w", stamp(0, 0), None, false, body(1));
    let second = note("w", stamp(1, 0), Some(first.stamp), false, body(2));
    let third = note("w", stamp(2, 0), Some(second.stamp), false, body(3));
    let other = note("w", stamp(3, 1), Some(first.stamp), false, body(9));
    let found = |records: &[&Record]| {
        let records: Vec<Record> = records.iter().map(|r| (*r).clone()).collect();
        let log = log_of(&records);
        let versions = log.get(&first.id).unwrap();
        versions
            .overwritten()
            .iter()
            .map(|r| r.stamp)
            .collect::<Vec<_>>()
    };
    assert_eq!(found(&[&first, &second, &third]), []);
    assert_eq!(found(&[&first, &second, &third, &other]), [third.stamp]);
    assert_eq!(found(&[&first, &other]), []);
    // The version between is missing: nothing is certain, so nothing is said.
    assert_eq!(found(&[&first, &third]), []);
    // A later edit of the winner leaves the lost change named.
    let last = note("w", stamp(4, 1), Some(other.stamp), false, body(8));
    assert_eq!(
        found(&[&first, &second, &third, &other, &last]),
        [third.stamp]
    );

    let mine = log_of(&[first.clone(), second, third]);
    let theirs = log_of(&[first, other]);
    let now = Instant::from_ms(1_777_000_000_010);
    let (_, report) = mine.receive(&theirs, now).unwrap();
    assert_eq!(report.overwritten, [RecordId("w".to_owned())]);
    assert_eq!((report.changed.len(), report.same), (1, 1));
}

#[test]
fn a_record_from_far_ahead_is_taken_and_named() {
    let now = Instant::from_ms(1_777_000_000_000);
    for ahead in [3_600_000_i64, 31_536_000_000] {
        let stamp = Stamp::first(Instant::from_ms(now.to_ms() + ahead), device(2));
        let theirs = log_of(&[note("w", stamp, None, false, json!({}))]);
        let (union, report) = Log::new().receive(&theirs, now).unwrap();
        assert_eq!(union.len(), 1);
        assert_eq!(report.ahead[0].1.0.to_ms(), ahead);
    }
}

#[test]
fn a_million_rows_of_rubbish_are_refused_at_the_first() {
    let rows = "0,".repeat(1_000_000);
    let text = format!(
        r#"{{"format":"tussock-log","version":1,"app":"","made_at":0,"records":[{rows}0]}}"#
    );
    let error = Bundle::read_unsealed(&text).unwrap_err();
    assert_eq!(error.place().unwrap().row, Some(0));
    let wide = "\0{\0}".to_owned();
    assert!(Bundle::read(&wide).is_err());
}
