//! The files read back: by a parser that is not ours, and octet by octet.

use super::event::{Event, When, sequence};
use super::fold::{OCTETS, line};
use super::text::escape;
use super::*;
use ical::IcalParser;
use ical::parser::Component;
use ical::parser::ical::component::{IcalCalendar, IcalEvent};
use proptest::prelude::*;
use tussock_core::log::{Case, DeviceId, Stamp, ZoneTable};
use tussock_core::units::{Instant, LocalDate, LocalStamp, LocalTime, Span, Zone};

/// The one calendar in a text, as the parser reads it.
pub(crate) fn read(text: &str) -> IcalCalendar {
    let mut parser = IcalParser::new(text.as_bytes());
    let calendar = parser.next().unwrap().unwrap();
    assert!(parser.next().is_none());
    calendar
}

/// A property of an event.
pub(crate) fn of<'a>(event: &'a IcalEvent, name: &str) -> Option<&'a str> {
    event.get_property(name)?.value.as_deref()
}

/// What was escaped, as a calendar shows it.
fn unescape(text: &str) -> String {
    let mut out = String::new();
    let mut letters = text.chars();
    while let Some(letter) = letters.next() {
        match letter {
            '\\' => match letters.next() {
                Some('n' | 'N') => out.push('\n'),
                Some(other) => out.push(other),
                None => {}
            },
            other => out.push(other),
        }
    }
    out
}

/// What a text is once it has no control characters and one kind of line end.
fn plain(text: &str) -> String {
    text.replace("\r\n", "\n")
        .replace('\r', "\n")
        .chars()
        .filter(|letter| matches!(letter, '\n' | '\t') || !letter.is_control())
        .collect()
}

fn london() -> ZoneTable {
    Case::read(include_str!(
        "../../../../core/examples/cases/two-cobs-and-a-shetland.json"
    ))
    .unwrap()
    .zone
}

fn stamp(ms: i64) -> Stamp {
    Stamp::first(
        Instant::from_ms(ms),
        DeviceId::from_text("moss0001").unwrap(),
    )
}

fn event(says: &str, when: When) -> Event {
    Event {
        id: "visit.1.animal.moss".into(),
        revised: Some(stamp(1_777_978_800_000)),
        when,
        says: says.into(),
        why: says.into(),
        holds: true,
        rings_before: vec![0, 5],
    }
}

fn file(event: Event) -> String {
    Calendar {
        name: "x.ics",
        events: vec![event],
    }
    .text()
}

const NOON: Instant = Instant::from_ms(1_777_978_800_000);

proptest! {
    #[test]
    fn any_text_survives(text in "(?s).{0,400}") {
        // Every bell begins with a word: this parser drops a colon at the front of a value, and spaces around it.
        let text = format!("Hang {text}");
        let file = file(event(&text, When::At(NOON)));
        let calendar = read(&file);
        let says = unescape(of(&calendar.events[0], "SUMMARY").unwrap_or_default());
        let shown = plain(&text);
        prop_assert_eq!(says.trim(), shown.trim());
        prop_assert_eq!(unescape(&escape(&text)), plain(&text));
    }

    #[test]
    fn any_line_is_short_enough_and_is_whole_again_when_unfolded(text in "[^\\p{Cc}]{0,400}") {
        let mut out = String::new();
        line(&mut out, &text);
        prop_assert!(out.ends_with("\r\n"));
        for part in out.trim_end_matches("\r\n").split("\r\n") {
            prop_assert!(part.len() <= OCTETS, "{} octets", part.len());
        }
        let whole = out.replace("\r\n ", "");
        prop_assert_eq!(whole.trim_end_matches("\r\n"), text);
    }

    #[test]
    fn every_line_of_a_file_is_short_enough_and_ends_as_it_must(text in "(?s).{0,300}") {
        let file = file(event(&text, When::At(NOON)));
        prop_assert!(!file.replace("\r\n", "").contains(['\r', '\n']));
        for part in file.split("\r\n") {
            prop_assert!(part.len() <= OCTETS);
        }
    }

    #[test]
    fn a_deadline_reads_back_as_its_instant_in_any_zone(seconds in 1_577_836_800i64..2_208_988_800) {
        let at = Instant::from_ms(seconds * 1_000);
        let calendar = read(&file(event("x", When::At(at))));
        let start = of(&calendar.events[0], "DTSTART").unwrap().to_owned();
        let read = chrono::NaiveDateTime::parse_from_str(&start, "%Y%m%dT%H%M%SZ").unwrap();
        prop_assert_eq!(read.and_utc().timestamp(), seconds);
    }

    #[test]
    fn a_later_stamp_has_a_number_that_is_not_lower(a in 0i64..4_000_000_000_000, on in 0i64..10_000_000) {
        let number = |ms| sequence(Some(stamp(ms)));
        prop_assert!(number(a) <= number(a + on));
        if 1_767_225_600_000 < a && a + on < 3_900_000_000_000 && 1_000 <= on {
            prop_assert!(number(a) < number(a + on));
        }
    }
}

#[test]
fn a_line_is_cut_inside_a_word_and_only_spaces_are_cut_at_spaces() {
    let mut out = String::new();
    line(&mut out, &format!("{} x{}", "a".repeat(72), "b".repeat(80)));
    let parts: Vec<&str> = out.trim_end().split("\r\n").collect();
    assert_eq!(parts[0], format!("{} xb", "a".repeat(72)));
    let mut at_a_space = String::new();
    line(
        &mut at_a_space,
        &format!("{} {}", "a".repeat(75), "b".repeat(9)),
    );
    assert_eq!(
        at_a_space,
        format!("{}\r\n a {}\r\n", "a".repeat(74), "b".repeat(9))
    );
    let mut spaces = String::new();
    line(&mut spaces, &" ".repeat(200));
    assert!(spaces.split("\r\n").all(|part| part.len() <= OCTETS));
    assert_eq!(
        spaces.replace("\r\n ", ""),
        format!("{}\r\n", " ".repeat(200))
    );
}

#[test]
fn the_number_of_a_version_counts_seconds_from_2026_and_stays_in_its_bounds() {
    assert_eq!(sequence(None), 0);
    assert_eq!(sequence(Some(stamp(0))), 0);
    assert_eq!(sequence(Some(stamp(1_767_225_600_000))), 0);
    assert_eq!(sequence(Some(stamp(1_767_225_661_999))), 61);
    assert_eq!(sequence(Some(stamp(9_999_999_999_999))), 2_147_483_647);
}

#[test]
fn an_event_is_written_as_the_standard_has_it() {
    let file = file(event(
        "Lift out tub 2, Bramble; then feed",
        When::At(NOON + Span::minutes(5)),
    ));
    assert_eq!(
        file,
        "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//Tussock//Tussock//EN\r\nCALSCALE:GREGORIAN\r\nBEGIN:VEVENT\r\n\
         UID:visit.1.animal.moss@tussock\r\nDTSTAMP:20260505T110000Z\r\nSEQUENCE:10753200\r\nDTSTART:20260505T110500Z\r\n\
         DURATION:PT10M\r\nSUMMARY:Lift out tub 2\\, Bramble\\; then feed\r\n\
         DESCRIPTION:Lift out tub 2\\, Bramble\\; then feed\r\nSTATUS:CONFIRMED\r\nTRANSP:TRANSPARENT\r\n\
         BEGIN:VALARM\r\nACTION:DISPLAY\r\nDESCRIPTION:Lift out tub 2\\, Bramble\\; then feed\r\nTRIGGER:PT0M\r\n\
         END:VALARM\r\nBEGIN:VALARM\r\nACTION:DISPLAY\r\nDESCRIPTION:Lift out tub 2\\, Bramble\\; then feed\r\n\
         TRIGGER:-PT5M\r\nEND:VALARM\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n"
    );
}

#[test]
fn what_is_cancelled_rings_no_more() {
    let mut gone = event("x", When::At(NOON));
    gone.holds = false;
    let calendar = read(&file(gone));
    assert_eq!(of(&calendar.events[0], "STATUS"), Some("CANCELLED"));
    assert!(calendar.events[0].alarms.is_empty());
}

/// 20:00 by the clock on the wall, over the last Sunday of March and of October 2026 in London.
#[test]
fn eight_in_the_evening_stays_eight_over_both_clock_changes() {
    let zone = london();
    for (first, last) in [("2026-03-27", "2026-03-31"), ("2026-10-23", "2026-10-27")] {
        let when = When::Daily {
            first: first.parse().unwrap(),
            last: last.parse().unwrap(),
            time: LocalTime::from_hms_opt(20, 0, 0).unwrap(),
        };
        let calendar = read(&file(event("Bramble: hang a net", when)));
        let event = &calendar.events[0];
        let start = of(event, "DTSTART").unwrap();
        // Floating: no zone, no Z, in the start as in the end of the rule.
        assert!(event.get_property("DTSTART").unwrap().params.is_none());
        let (rule, until) = of(event, "RRULE").unwrap().split_once(";UNTIL=").unwrap();
        assert_eq!(rule, "FREQ=DAILY");
        let wall = |text: &str| {
            let read = chrono::NaiveDateTime::parse_from_str(text, "%Y%m%dT%H%M%S").unwrap();
            LocalStamp {
                date: read.date(),
                time: read.time(),
            }
        };
        let (from, to) = (wall(start), wall(until));
        assert_eq!(to.date, last.parse::<LocalDate>().unwrap());
        let mut offsets = Vec::new();
        for date in from.date.iter_days().take_while(|date| *date <= to.date) {
            let time = from.time;
            let at = zone.to_instant(LocalStamp { date, time }).planned();
            assert_eq!(zone.to_local(at), LocalStamp { date, time });
            offsets.push(zone.offset_min(at));
        }
        offsets.dedup();
        assert_eq!(offsets.len(), 2, "the clock changed in between");
    }
}
