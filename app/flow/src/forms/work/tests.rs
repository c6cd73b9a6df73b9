//! A session on the clock through a dead phone, and one that is written down.

use super::*;
use crate::views::test_yard::{animal, at, zone};

fn body(typed: &Typed) -> Result<(WorkSessionV1, Instant), Vec<Wrong>> {
    let act = typed.act(&animal("moss"), at(0), &zone(), "w1")?;
    let Act::Add(New {
        body: Body::WorkSession(body),
        at: Some(at),
        ..
    }) = act
    else {
        panic!("adds a session")
    };
    Ok((body, at))
}

fn written_down() -> Typed {
    Typed {
        minutes: ["10".into(), "15".into(), String::new()],
        how: "led".into(),
        sound: "yes".into(),
        ..Typed::default()
    }
}

#[test]
fn taps_survive_as_text_and_say_the_same_when_the_phone_comes_back() {
    let mut text = String::new();
    for (tap, minute) in [
        (Tap::Gait(Gait::Walk), -40),
        (Tap::Gait(Gait::Trot), -35),
        (Tap::Gait(Gait::Walk), -20),
    ] {
        text = tapped(&text, tap, at(0) + Span::minutes(minute));
    }
    assert_eq!(taps(&text).len(), 3);
    let going = on_the_clock(&text, at(0) - Span::minutes(18));
    assert_eq!(going.times, GaitTimes::minutes(7, 15, 0));
    assert_eq!(going.gait, Some(Gait::Walk));
    text = tapped(&text, Tap::Stop, at(0) - Span::minutes(15));
    let over = on_the_clock(&text, at(0) + Span::hours(30));
    assert_eq!(over.times, GaitTimes::minutes(10, 15, 0));
    // What is broken in it is left out, never the rest.
    let broken = format!("gallop 12, walk x, {text},");
    assert_eq!(on_the_clock(&broken, at(0)), over);
    let typed = Typed {
        taps: text,
        minutes: Default::default(),
        ..written_down()
    };
    let (session, end) = body(&typed).unwrap();
    assert_eq!(session.times(), over.times);
    assert_eq!(end, at(0) - Span::minutes(15));
    assert_eq!(session.start, at(0) - Span::minutes(40));
    // A gait typed over the clock keeps the others; the session ends as the clock says.
    let corrected = Typed {
        minutes: [String::new(), "12".into(), String::new()],
        ..typed
    };
    let (session, end) = body(&corrected).unwrap();
    assert_eq!(session.times(), GaitTimes::minutes(10, 12, 0));
    assert_eq!(end, at(0) - Span::minutes(15));
}

#[test]
fn a_clock_that_was_left_running_asks_for_the_minutes() {
    let text = tapped("", Tap::Gait(Gait::Walk), at(0) - Span::hours(14));
    let typed = Typed {
        taps: text,
        minutes: Default::default(),
        ..written_down()
    };
    assert!(body(&typed).unwrap_err().contains(&Wrong::LeftRunning));
    let typed = Typed {
        minutes: ["20".into(), "0".into(), "0".into()],
        ..typed
    };
    let (session, end) = body(&typed).unwrap();
    assert_eq!(session.times(), GaitTimes::minutes(20, 0, 0));
    assert_eq!((session.start, end), (at(0) - Span::minutes(20), at(0)));
}

#[test]
fn a_session_that_is_written_down_ends_now_or_when_it_is_said_to() {
    let (session, end) = body(&written_down()).unwrap();
    assert_eq!((session.start, end), (at(0) - Span::minutes(25), at(0)));
    assert_eq!(session.settled, Answer::NotKnown);
    let key = session.job.unwrap();
    assert_eq!(key.as_str(), "exercise/animal:moss/2026-05-05/0.0");
    // Noon is now: 9:30 was this morning, 17:30 yesterday.
    for (typed, hours) in [("9:30", -2.5), ("1730", -18.5)] {
        let said = Typed {
            ended: typed.into(),
            ..written_down()
        };
        let (_, end) = body(&said).unwrap();
        assert!(
            (end.since(at(0)).to_hours() - hours).abs() < 1e-9,
            "{typed}"
        );
    }
}

#[test]
fn every_field_says_what_is_wrong_with_it() {
    let none = Typed {
        ended: "noon".into(),
        heart: "900".into(),
        load: "some".into(),
        ..Typed::default()
    };
    let wrong = body(&none).unwrap_err();
    let fields: Vec<&str> = wrong.iter().map(Wrong::field).collect();
    assert_eq!(fields, ["walk", ENDED, HOW, SOUND, HEART, LOAD]);
    let long = Typed {
        minutes: ["601".into(), "x".into(), String::new()],
        ..written_down()
    };
    let fields: Vec<&str> = body(&long).unwrap_err().iter().map(Wrong::field).collect();
    assert_eq!(fields, ["walk", "trot"]);
}

#[test]
fn a_rider_is_weighed_only_under_a_rider() {
    let rider = Typed {
        load: "10 st".into(),
        heart: "138".into(),
        note: " Even. ".into(),
        surface: "soft".into(),
        ..written_down()
    };
    let (led, _) = body(&rider).unwrap();
    assert_eq!((led.load, led.surface), (None, Some(Surface::Soft)));
    assert_eq!(led.note.as_deref(), Some("Even."));
    let ridden = Typed {
        how: "ridden".into(),
        ..rider
    };
    let (ridden, _) = body(&ridden).unwrap();
    assert!((ridden.load.unwrap().g.mass().to_kg() - 63.5).abs() < 0.1);
    assert_eq!(ridden.heart.map(WorkBeats::get), Some(138));
}
