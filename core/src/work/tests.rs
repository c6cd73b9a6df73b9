//! A sound cob, one that foundered, and a donkey.

use super::published::SETTLES_MINUTES;
use super::*;
use crate::animal::{
    Animal, AnimalId, Answer, Appetite, Goal, Handful, Health, Kind, Laminitis, Phase, SaidOn,
    StageFacts, State, Temperament, VetFlag, VetPermit, VetWord, Workload,
};
use crate::limits::Ends;
use crate::sources::RecordId;
use crate::units::{BodyMass, Instant, LocalDate, Span, Speed};

pub(super) fn day(text: &str) -> LocalDate {
    text.parse().unwrap()
}

pub(super) fn animal(laminitis: Laminitis) -> Animal {
    Animal {
        id: AnimalId("moss".to_owned()),
        name: "Moss".to_owned(),
        kind: Kind::Pony,
        body_type: None,
        sex: None,
        born: None,
        height: None,
        state: State::Adult,
        stage: StageFacts::default(),
        work: Workload::Maintenance(Temperament::Low),
        health: Health {
            laminitis,
            ..Health::default()
        },
        goal: Goal::Lose,
        phase: Phase::New,
        target: None,
    }
}

pub(super) fn word(given: &str, expires: &str) -> VetWord {
    VetWord {
        animal: AnimalId("moss".to_owned()),
        permit: VetPermit::Work,
        vet: "The vet".to_owned(),
        practice: String::new(),
        given: day(given),
        how: String::new(),
        expires: day(expires),
        written: None,
    }
}

fn on(animal: &Animal, words: &[VetWord], sign: bool) -> Standing {
    standing(&WorkFor {
        animal,
        day: day("2026-05-05"),
        words,
        said: SaidOn::default(),
        sign,
    })
}

fn recovered() -> Animal {
    animal(Laminitis::Ever {
        last: Some(day("2026-01-10")),
    })
}

pub(super) fn session(on: &str, minutes: u32, sound: Answer) -> Session {
    Session {
        record: RecordId(format!("work-{on}")),
        start: Instant::from_ms(0),
        day: day(on),
        times: GaitTimes::minutes(minutes, 0, 0),
        how: How::Led,
        surface: None,
        load: None,
        heart: None,
        settled: Answer::NotKnown,
        sound,
    }
}

#[test]
fn a_sound_pony_begins_with_fifteen_minutes_and_has_thirty_in_the_fourth_week() {
    let sound = on(&animal(Laminitis::Never), &[], false);
    let minutes: Vec<i64> = (0..6)
        .map(|built| asked(sound.line, built).unwrap().times.total().to_minutes())
        .collect();
    assert_eq!(minutes, [15, 20, 25, 30, 30, 30]);
    let third = asked(sound.line, 2).unwrap();
    assert_eq!((third.a_week, third.week, third.weeks), (5, 3, 4));
    // Five minutes of walk, fifteen of trot, five of walk: the session of the trial.
    assert_eq!(third.times, GaitTimes::minutes(10, 15, 0));
    assert_eq!(
        asked(sound.line, 3).unwrap().times,
        GaitTimes::minutes(10, 15, 5)
    );
    assert_eq!(*SETTLES_MINUTES, 10);
}

#[test]
fn after_laminitis_the_vets_word_comes_first_and_ends_with_its_day() {
    let pony = recovered();
    assert_eq!(on(&pony, &[], false).line, WorkLine::VetsWordFirst);
    // Given before the last episode, or over: no word.
    for (given, expires) in [("2026-01-09", "2026-06-01"), ("2026-03-01", "2026-05-04")] {
        let line = on(&pony, &[word(given, expires)], false).line;
        assert_eq!(line, WorkLine::VetsWordFirst, "{given}");
    }
    let held = on(&pony, &[word("2026-05-01", "2026-06-26")], false);
    let of = asked(held.line, 0).unwrap();
    assert_eq!((of.a_week, of.soft_and_unridden), (3, true));
    assert_eq!(of.heart, Some([110.0, 150.0]));
    assert_eq!(held.word_until, Some(day("2026-06-26")));
    let lowest = VetWord {
        permit: VetPermit::LowestLevel(crate::units::PartOfBody::percent(1.2)),
        ..word("2026-05-01", "2026-06-26")
    };
    assert_eq!(on(&pony, &[lowest], false).line, WorkLine::VetsWordFirst);
}

#[test]
fn what_hurts_stops_all_work_whatever_the_vet_allowed() {
    let words = [word("2026-05-01", "2026-06-26")];
    let flags = [
        (VetFlag::Lame, WorkStop::Lame),
        (VetFlag::PainRelief, WorkStop::PainRelief),
        (VetFlag::BoxRest, WorkStop::BoxRest),
        (VetFlag::Sick, WorkStop::Sick),
        (
            VetFlag::GotAtGrain {
                at: Instant::from_ms(0),
            },
            WorkStop::GotAtGrain,
        ),
        (
            VetFlag::EscapedOntoGrass {
                at: Instant::from_ms(0),
            },
            WorkStop::EscapedOntoGrass,
        ),
    ];
    for laminitis in [
        Laminitis::Never,
        Laminitis::Ever { last: None },
        Laminitis::NotKnown,
    ] {
        for (flag, stop) in &flags {
            let mut pony = animal(laminitis);
            pony.health.flags.push(flag.clone());
            let held = on(&pony, &words, false);
            assert_eq!((held.line, held.stops), (WorkLine::None, vec![*stop]));
            assert_eq!(asked(held.line, 3), None);
        }
        assert_eq!(on(&animal(laminitis), &words, true).stops, [WorkStop::Sign]);
    }
    let mut off = animal(Laminitis::Never);
    off.health.appetite = Appetite::Off {
        last_seen_eating: None,
        handful: Handful::NotTried,
        dull: Answer::NotKnown,
    };
    assert_eq!(on(&off, &words, false).stops, [WorkStop::OffFeed]);
    let mut episode = recovered();
    episode.phase = Phase::Episode;
    assert_eq!(on(&episode, &words, false).stops, [WorkStop::Episode]);
    assert_eq!(
        on(&animal(Laminitis::Active), &words, false).line,
        WorkLine::None
    );
    // What stops it is not made to walk to its hay either.
    assert_eq!(moving_feeder(&[WorkStop::Lame]), None);
    assert!((moving_feeder(&[]).unwrap().times - 3.7).abs() < 1e-12);
}

#[test]
fn a_donkey_is_walked_and_its_energy_is_not_reckoned() {
    let mut donkey = animal(Laminitis::Never);
    donkey.kind = Kind::Donkey;
    let held = on(&donkey, &[], false);
    let of = asked(held.line, 3).unwrap();
    assert_eq!(of.times, GaitTimes::minutes(30, 0, 0));
    assert_eq!(of.heart, None);
    let body = Ends::exactly(BodyMass::kg(180.0));
    let energy = session_energy(Kind::Donkey, body, &of.times, How::Led, None).unwrap();
    assert_eq!(energy, None);
}

#[test]
fn nobody_knows_and_in_foal_are_asked_about_first() {
    assert_eq!(
        on(&animal(Laminitis::NotKnown), &[], false).line,
        WorkLine::AskFirst
    );
    let mut mare = animal(Laminitis::Never);
    mare.state = State::Pregnant;
    assert_eq!(
        on(&mare, &[], false).line,
        WorkLine::NotPlannedHere(State::Pregnant)
    );
}

#[test]
fn three_sessions_a_week_are_a_step_up_and_a_week_without_any_a_step_down() {
    let from = CountsFrom {
        since: None,
        work: Workload::Maintenance(Temperament::Low),
    };
    let today = day("2026-05-13");
    let mut done = Vec::new();
    let week = |monday: &str, sessions: u64| -> Vec<Session> {
        (0..sessions)
            .map(|after| {
                let on = day(monday) + chrono::Days::new(after);
                session(&on.to_string(), 15, Answer::Yes)
            })
            .collect()
    };
    assert_eq!(built(&done, from, today), 0);
    done.extend(week("2026-04-20", 3));
    assert_eq!(built(&done, from, day("2026-04-26")), 0);
    assert_eq!(built(&done, from, day("2026-04-27")), 1);
    done.extend(week("2026-04-27", 2));
    assert_eq!(built(&done, from, day("2026-05-04")), 1);
    // A week without any.
    assert_eq!(built(&done, from, day("2026-05-11")), 0);
    done.extend(week("2026-05-04", 5));
    assert_eq!(built(&done, from, today), 2);
    // What is shorter than the first session does not build up.
    let mut short = done.clone();
    for session in &mut short {
        session.times = GaitTimes::minutes(14, 0, 0);
    }
    assert_eq!(built(&short, from, today), 0);
    // Nothing before the vet's word, and nothing before an unsound session, counts.
    let word = CountsFrom {
        since: Some(day("2026-05-04")),
        ..from
    };
    assert_eq!(built(&done, word, today), 1);
    done.push(session("2026-05-08", 15, Answer::No));
    assert_eq!(built(&done, from, today), 0);
    // One in work already needs no building up, until it was stopped.
    let in_work = CountsFrom {
        work: Workload::Light,
        ..from
    };
    assert_eq!(built(&[], in_work, today), 3);
    assert_eq!(built(&done, in_work, today), 0);
}

#[test]
fn a_week_runs_from_monday_to_sunday() {
    let done = [
        session("2026-05-03", 20, Answer::Yes),
        session("2026-05-04", 20, Answer::Yes),
        session("2026-05-10", 25, Answer::Yes),
    ];
    let week = Week::of(&done, day("2026-05-06"));
    assert_eq!((week.from, week.sessions), (day("2026-05-04"), 2));
    assert_eq!(week.times.total().to_minutes(), 45);
}

#[test]
fn taps_add_up_and_a_clock_that_went_back_adds_nothing() {
    let at = |minute| Instant::from_ms(0) + Span::minutes(minute);
    let taps = [
        (at(0), Tap::Gait(Gait::Walk)),
        (at(5), Tap::Gait(Gait::Trot)),
        (at(20), Tap::Gait(Gait::Walk)),
        (at(25), Tap::Stop),
        (at(30), Tap::Gait(Gait::Canter)),
    ];
    let over = timed(&taps, at(60));
    assert_eq!(over.times, GaitTimes::minutes(10, 15, 0));
    assert_eq!((over.started, over.stopped), (Some(at(0)), Some(at(25))));
    assert_eq!(over.gait, None);
    let going = timed(&taps[..2], at(12));
    assert_eq!(going.times, GaitTimes::minutes(5, 7, 0));
    assert_eq!(going.gait, Some(Gait::Trot));
    assert_eq!(timed(&[], at(9)), Timed::default());
    let back = [
        (at(10), Tap::Gait(Gait::Walk)),
        (at(2), Tap::Gait(Gait::Trot)),
    ];
    assert_eq!(timed(&back, at(4)).times, GaitTimes::minutes(0, 2, 0));
    assert!(timed(&taps[..1], at(11 * 60)).left_running());
    assert!(!over.left_running());
}

#[test]
fn half_an_hour_of_slow_trot_under_a_rider_is_about_as_published() {
    let rate = work_rate(Speed::m_per_min(200.0)).unwrap();
    let moved = BodyMass::kg(450.0 + 75.0);
    let energy = rate.over(moved, Span::minutes(30));
    assert!((energy.to_mcal() - 1.69).abs() < 0.01, "{energy:?}");
    // The same in megajoules, and never a rate a pound: 1,000 lb are 454 kg.
    assert!((energy.to_mj() - 1.69 * 4.184).abs() < 0.05);
    let pounds = rate.over(BodyMass::lb(1000.0), Span::hours(7));
    assert!((pounds.to_mcal() - 20.5).abs() < 0.1, "{pounds:?}");
    for speed in [-1.0, 401.0, f64::NAN] {
        assert!(work_rate(Speed::m_per_min(speed)).is_err());
    }
}

#[test]
fn a_rider_that_nobody_weighed_widens_the_band() {
    let body = Ends::new(
        BodyMass::kg(270.0),
        BodyMass::kg(300.0),
        BodyMass::kg(330.0),
    );
    let times = GaitTimes::minutes(10, 15, 0);
    let of = |how, load| {
        session_energy(Kind::Pony, body, &times, how, load)
            .unwrap()
            .unwrap()
            .energy
    };
    let led = of(How::Led, None);
    let known = of(How::Ridden, Some(BodyMass::kg(45.0)));
    let unknown = of(How::Ridden, None);
    assert!(led.in_order() && known.in_order() && unknown.in_order());
    assert!(led.likely < known.likely);
    let width = |ends: Ends<crate::units::Energy>| (ends.most - ends.least).to_mcal();
    assert!(width(known) < width(unknown));
    // A load counts for nothing when nobody rides.
    assert_eq!(of(How::Led, Some(BodyMass::kg(45.0))), led);
    let long = GaitTimes::minutes(601, 0, 0);
    assert!(session_energy(Kind::Pony, body, &long, How::Led, None).is_err());
}

#[test]
fn heart_rates_rank_sessions_and_stand_to_what_is_asked() {
    let with = |on: &str, beats: f64| Session {
        heart: Some(HeartRate::beats(beats).unwrap()),
        ..session(on, 25, Answer::Yes)
    };
    let all = [
        with("2026-05-04", 118.0),
        with("2026-05-05", 142.0),
        with("2026-05-06", 131.0),
        session("2026-05-07", 25, Answer::Yes),
    ];
    let rank = effort_rank(&all[2], &all).unwrap();
    assert_eq!((rank.harder_than, rank.of), (1, 2));
    assert_eq!(effort_rank(&all[3], &all), None);
    assert_eq!(effort_rank(&all[0], &all[..1]), None);
    let of = asked(on(&animal(Laminitis::Never), &[], false).line, 0).unwrap();
    let stands = |beats| of.heart_standing(HeartRate::beats(beats).unwrap());
    assert_eq!(stands(118.0), Some(HeartStanding::Under));
    assert_eq!(stands(142.0), Some(HeartStanding::Within));
    assert_eq!(stands(171.0), Some(HeartStanding::Over));
    assert!(HeartRate::beats(400.0).is_err());
}
