//! Work: every stop, gait, answer and fault has its words, and what is asked and done reads as the trade says it.

use super::{check, check_head, check_said, every, tongues};
use crate::forms::work::{LOAD, Wrong};
use crate::views::work::{Done, WorkView};
use crate::words::{SessionWords, WorkWords};
use tussock_core::animal::{Answer, State};
use tussock_core::limits::Ends;
use tussock_core::sources::{Provenance, RecordId};
use tussock_core::units::parse::ParseError;
use tussock_core::units::{Energy, Instant, LocalDate, Span, Zone};
use tussock_core::work::{
    DaysEnergy, EffortRank, Gait, GaitTimes, HeartRate, HeartStanding, How, Session, Standing,
    Surface, Timed, Week, WorkLine, WorkStop, asked, moving_feeder,
};

struct Utc;

impl Zone for Utc {
    fn offset_min(&self, _: Instant) -> i32 {
        0
    }
}

fn day(day: u32) -> LocalDate {
    LocalDate::from_ymd_opt(2026, 5, day).unwrap()
}

fn lines() -> Vec<WorkLine> {
    every![
        WorkLine::None => WorkLine::None,
        WorkLine::NotPlannedHere(_) => WorkLine::NotPlannedHere(State::Lactating),
        WorkLine::VetsWordFirst => WorkLine::VetsWordFirst,
        WorkLine::AskFirst => WorkLine::AskFirst,
        WorkLine::Recovered { .. } => WorkLine::Recovered { minutes: 30, a_week: 3 },
        WorkLine::Donkey { .. } => WorkLine::Donkey { minutes: 30, a_week: 3 },
        WorkLine::Sound { .. } => WorkLine::Sound { minutes: 30, a_week: 5, unfit_minutes: 15, build_up_weeks: 4 },
    ]
}

fn stops() -> Vec<WorkStop> {
    every![
        WorkStop::Sign => WorkStop::Sign, WorkStop::Laminitis => WorkStop::Laminitis,
        WorkStop::Episode => WorkStop::Episode, WorkStop::Lame => WorkStop::Lame,
        WorkStop::PainRelief => WorkStop::PainRelief, WorkStop::BoxRest => WorkStop::BoxRest,
        WorkStop::Sick => WorkStop::Sick, WorkStop::GotAtGrain => WorkStop::GotAtGrain,
        WorkStop::EscapedOntoGrass => WorkStop::EscapedOntoGrass, WorkStop::OffFeed => WorkStop::OffFeed,
    ]
}

fn answers() -> [Answer; 3] {
    [Answer::Yes, Answer::No, Answer::NotKnown]
}

fn done(sound: Answer, heart: Option<HeartStanding>) -> Done {
    Done {
        session: Session {
            record: RecordId("w".into()),
            start: Instant::from_ms(0),
            day: day(5),
            times: GaitTimes::minutes(10, 15, 5),
            how: How::Ridden,
            surface: Some(Surface::Soft),
            load: None,
            heart: HeartRate::beats(138.0).ok(),
            settled: sound,
            sound,
        },
        energy: Some(Ends::new(0.9, 1.2, 1.5).map(Energy::mcal)),
        heart,
        rank: Some(EffortRank {
            harder_than: 1,
            of: 2,
        }),
    }
}

#[test]
fn every_line_of_the_work_screen_has_its_words() {
    let week = |sessions| Week {
        from: day(4),
        sessions,
        times: GaitTimes::minutes(10, 15, 5),
    };
    for say in tongues() {
        for line in lines() {
            let stops = if line == WorkLine::None {
                stops()
            } else {
                Vec::new()
            };
            for stop in stops.iter().map(|stop| vec![*stop]).chain([stops.clone()]) {
                let view = WorkView {
                    animal: crate::views::test_yard::animal("Moss"),
                    today: day(5),
                    standing: Standing {
                        line,
                        stops: stop.clone(),
                        word_until: None,
                        word_given: None,
                    },
                    stop: None,
                    asked: asked(line, 1),
                    week: week(2),
                    before: Vec::new(),
                    done: Vec::new(),
                    energy: None,
                    moving: None,
                };
                check_head(&say.work_head(&view));
                if !stop.is_empty() {
                    check_said(&say.work_stops(&stop));
                }
            }
            for built in 0..5 {
                if let Some(asked) = asked(line, built) {
                    check_said(&say.work_asked(&asked));
                    check_said(&say.how_hard(&asked));
                    check(&say.beats_name(Some(&asked), Some(&done(Answer::Yes, None))));
                }
            }
        }
    }
}

#[test]
fn every_session_week_and_choice_has_its_words() {
    let week = |sessions| Week {
        from: day(4),
        sessions,
        times: GaitTimes::minutes(10, 15, 5),
    };
    for say in tongues() {
        for sound in answers() {
            check(say.sound_after(sound));
            check(say.settled_after(sound));
            for heart in every![
                HeartStanding::Under => HeartStanding::Under,
                HeartStanding::Within => HeartStanding::Within,
                HeartStanding::Over => HeartStanding::Over,
            ] {
                check(&say.session_name(&done(sound, Some(heart))));
                check(&say.session_line(&done(sound, Some(heart))));
            }
        }
        for how in every![How::Ridden => How::Ridden, How::Led => How::Led, How::Lunged => How::Lunged, How::Free => How::Free]
        {
            check(say.how_worked(how));
        }
        for surface in every![Surface::Soft => Surface::Soft, Surface::Firm => Surface::Firm, Surface::Hard => Surface::Hard]
        {
            check(say.surface(surface));
            check(say.surface_means(surface));
        }
        for gait in
            every![Gait::Walk => Gait::Walk, Gait::Trot => Gait::Trot, Gait::Canter => Gait::Canter]
        {
            check(say.gait(gait));
            check(say.gait_minutes(gait));
            check(&say.begin_in(gait));
            check(&say.minutes_on_clock(&GaitTimes::default(), gait));
        }
        for sessions in [0, 1, 5] {
            check(&say.week_line(&week(sessions)));
        }
        assert_eq!(say.week_name(&week(1), day(5)), "This week");
        check(&say.week_name(&week(1), day(12)));
        check_said(&say.moving(&moving_feeder(&[]).unwrap()));
        check_said(&say.no_energy());
        check_said(&say.not_sound());
        check_head(&say.not_sound().sentence);
        let energy = DaysEnergy {
            energy: Ends::new(0.9, 1.2, 1.5).map(Energy::mcal),
            of_a_week: Ends::new(0.012, 0.016, 0.02),
            from: Provenance::new(),
        };
        check_said(&say.week_energy(&energy));
        check(&say.work_word_until(day(26)));
        check_head(&say.what_was_done("Bramble"));
        for text in [
            say.asked_head(),
            say.done_head(),
            say.all_numbers(),
            say.moving_head(),
            say.start_work(),
            say.go_on_with_work(),
            say.write_down_work(),
            say.say_in_details(),
            say.which_gait(),
            say.stop_work(),
            say.left_running(),
            say.clock_goes_on(),
            say.when_ended(),
            say.when_ended_hint(),
            say.how_did_it_work(),
            say.on_what(),
            say.sound_question(),
            say.sound_how(),
            say.settled_question(),
            say.heart_label(),
            say.heart_hint(),
            say.load_label(),
            say.work_note(),
            say.save_work(),
        ]
        .into_iter()
        .chain(say.beats_rows())
        .chain(say.beats_table())
        {
            check(text);
        }
    }
}

#[test]
fn the_clock_and_every_fault_have_their_words() {
    for say in tongues() {
        let going = Timed {
            times: GaitTimes::minutes(5, 7, 0),
            started: Some(Instant::from_ms(0)),
            stopped: None,
            gait: Some(Gait::Trot),
        };
        assert_eq!(say.on_clock(&going, "Moss"), "Trot, 12 min in all");
        check(&say.began_at(&going, &Utc));
        let over = Timed {
            stopped: Some(Instant::from_ms(0) + Span::minutes(12)),
            gait: None,
            ..going
        };
        check_head(&say.on_clock(&over, "Bramble"));
        check(&say.began_at(&over, &Utc));
        check_head(&say.on_clock(&Timed::default(), "Bramble"));
        for wrong in every![
            Wrong::Parse(..) => Wrong::Parse(LOAD, ParseError::Empty),
            Wrong::Ended(_) => Wrong::Ended("noon".into()),
            Wrong::NoMinutes => Wrong::NoMinutes,
            Wrong::LeftRunning => Wrong::LeftRunning,
            Wrong::NoHow => Wrong::NoHow,
            Wrong::NoSound => Wrong::NoSound,
            Wrong::Log(_) => Wrong::Log(tussock_core::log::bodies::GaitSeconds::new(-1).unwrap_err()),
        ] {
            check(&say.work_wrong(&wrong));
        }
    }
}
