//! Practice rule 17 from the records to the plan and the round: whatever is said, seen and allowed, in any order, no work
//! is planned, asked or due for an animal that is lame or on pain relief, that has laminitis, that had it and has no vet's
//! word since, or that was not sound after its last work and has not been looked over since.

use crate::seed::config;
use proptest::prelude::*;
use std::path::PathBuf;
use tussock_core::animal::{AnimalId, Answer, Laminitis, Phase, VetFlag, VetPermit};
use tussock_core::log::bodies::{AnimalV2, LookOverV1, VetWordV1, WorkSessionV1};
use tussock_core::log::{
    Body, Case, DeviceId, Known, Name, Origin, Record, Stamp, Subject, gather, round_of,
};
use tussock_core::round::JobKind;
use tussock_core::sources::RecordId;
use tussock_core::units::{Instant, LocalDate, Span, Zone};
use tussock_core::work::{GaitTimes, How, WorkLine};

/// What somebody says or sees, on an hour after the case.
#[derive(Clone, Debug)]
enum Said {
    Health(Laminitis, Phase, Vec<VetFlag>),
    Worked(Answer),
    LookedOver(Answer),
    Word { given: i64, days: i64 },
}

fn a_laminitis() -> impl Strategy<Value = Laminitis> {
    prop_oneof![
        Just(Laminitis::Never),
        Just(Laminitis::NotKnown),
        Just(Laminitis::Active),
        Just(Laminitis::Ever { last: None }),
        (-60_i64..0).prop_map(|days| Laminitis::Ever {
            last: Some(case().1 + chrono::TimeDelta::days(days)),
        }),
    ]
}

fn an_answer() -> impl Strategy<Value = Answer> {
    prop::sample::select(vec![Answer::Yes, Answer::No, Answer::NotKnown])
}

fn said() -> impl Strategy<Value = Said> {
    let flags = vec![
        VetFlag::Lame,
        VetFlag::PainRelief,
        VetFlag::BoxRest,
        VetFlag::InsulinDrug,
    ];
    let phases = vec![Phase::Losing, Phase::Recovering, Phase::Episode];
    prop_oneof![
        (
            a_laminitis(),
            prop::sample::select(phases),
            prop::sample::subsequence(flags, 0..2),
        )
            .prop_map(|(laminitis, phase, flags)| Said::Health(laminitis, phase, flags)),
        an_answer().prop_map(Said::Worked),
        an_answer().prop_map(Said::LookedOver),
        (-40_i64..3, 0_i64..60).prop_map(|(given, days)| Said::Word { given, days }),
    ]
}

/// The records of a cob, the day and its own record.
fn case() -> (Case, LocalDate, Record, AnimalV2) {
    let folder = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../core/examples/cases");
    let text = std::fs::read_to_string(folder.join("bramble.json")).unwrap();
    let case = Case::read(&text).unwrap();
    let day = case.zone.to_local(case.now).date;
    let record = case
        .log
        .current()
        .find(|record| record.kind == tussock_core::log::Kind::Animal)
        .unwrap()
        .clone();
    let Body::Animal(body) = Body::read(&record).unwrap() else {
        panic!("no animal");
    };
    (case, day, record, body)
}

/// What must be true for work to be open, told apart from the code: by the last things that were said.
struct Held {
    laminitis: Laminitis,
    phase: Phase,
    flags: Vec<VetFlag>,
    /// Since when it does not go as usual.
    not_sound: Option<(Instant, LocalDate)>,
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn nothing_that_is_said_or_seen_opens_work_to_an_animal_that_must_not_work(
        events in prop::collection::vec((said(), 1_i64..30), 1..14),
    ) {
        let (case, today, animal, body) = case();
        let id = AnimalId(animal.id.0.clone());
        let device = DeviceId::from_text("laws0001").unwrap();
        let mut records: Vec<Record> = case.log.current().cloned().collect();
        let mut last: Option<Stamp> = None;
        let mut now = case.now;
        let mut held = Held {
            laminitis: body.animal(&animal.id).health.laminitis,
            phase: body.animal(&animal.id).phase,
            flags: body.animal(&animal.id).health.flags,
            not_sound: None,
        };
        let mut words: Vec<(LocalDate, LocalDate, Instant)> = Vec::new();
        for (index, (event, hours)) in events.into_iter().enumerate() {
            now = now + Span::hours(hours);
            let stamp = Stamp::tick(last.as_ref(), None, now, device).unwrap();
            last = Some(stamp);
            let day = case.zone.to_local(now).date;
            let written = match event {
                Said::Health(laminitis, phase, flags) => {
                    let mut who = body.animal(&animal.id);
                    who.health.laminitis = laminitis;
                    who.health.flags.clone_from(&flags);
                    who.phase = phase;
                    let (at, mine) = records
                        .iter()
                        .enumerate()
                        .find(|(_, record)| record.id == animal.id)
                        .map(|(at, record)| (at, record.clone()))
                        .unwrap();
                    let next = AnimalV2::of(&who).unwrap();
                    records[at] = mine.next(stamp, None, &Body::Animal(next)).unwrap();
                    (held.laminitis, held.phase, held.flags) = (laminitis, phase, flags);
                    continue;
                }
                Said::Worked(sound) => {
                    if sound == Answer::No {
                        held.not_sound = Some((now, day));
                    }
                    let times = GaitTimes::minutes(10, 15, 0);
                    let start = now - Span::minutes(25);
                    Body::WorkSession(WorkSessionV1::of(start, &times, How::Led, sound).unwrap())
                }
                Said::LookedOver(gait) => {
                    // Only a look-over that says the gait is as usual takes the sign away.
                    held.not_sound = match gait {
                        Answer::Yes => held.not_sound.or(Some((now, day))),
                        Answer::No => None,
                        Answer::NotKnown => held.not_sound,
                    };
                    Body::LookOver(LookOverV1 {
                        gait,
                        stance: Answer::No,
                        turning: Answer::No,
                        shifting_weight: Answer::No,
                        strong_pulse: Answer::No,
                        foot_pain: Answer::No,
                        warm_hoof: Answer::No,
                        lying_more: Answer::No,
                        note: None,
                        job: None,
                    })
                }
                Said::Word { given, days } => {
                    let given = today + chrono::TimeDelta::days(given);
                    let expires = given + chrono::TimeDelta::days(days);
                    words.push((given, expires, now));
                    Body::VetWord(VetWordV1 {
                        animal: id.clone(),
                        permit: VetPermit::Work,
                        vet: Name::new("The vet").unwrap(),
                        practice: String::new(),
                        given,
                        how: String::new(),
                        expires,
                    })
                }
            };
            let origin = Origin {
                yard: animal.yard.clone(),
                subject: Subject::animal(&id),
                at: now,
                offset_min: 60,
                zone: "Europe/London".to_owned(),
                by: None,
                known: Known::Seen,
            };
            let record = RecordId(format!("said-{index}"));
            records.push(Record::new(record, origin, stamp, &written).unwrap());
            let all: Vec<&Record> = records.iter().collect();
            let gathered = gather(&all, &id, now, &case.zone, &case.wish).unwrap();
            let standing = gathered.work();
            let open = standing.line.a_week().is_some();
            prop_assert_eq!(open, gathered.work_asked().is_some());
            let holds = |from: LocalDate, written: Option<Instant>| {
                words.iter().any(|(given, until, at)| {
                    *given <= day && day <= *until && from <= *given
                        && written.is_none_or(|written| written <= *at)
                })
            };
            let last_of = match held.laminitis {
                Laminitis::Ever { last } => last.unwrap_or(LocalDate::MIN),
                _ => LocalDate::MIN,
            };
            let hurts = held.flags.iter().any(|flag| {
                matches!(flag, VetFlag::Lame | VetFlag::PainRelief | VetFlag::BoxRest)
            });
            let ever = matches!(held.laminitis, Laminitis::Ever { .. });
            if hurts || held.laminitis == Laminitis::Active || held.phase == Phase::Episode {
                prop_assert_eq!(standing.line, WorkLine::None);
            }
            prop_assert!(!(open && ever && !holds(last_of, None)), "no word: {standing:?}");
            let lifted = held.not_sound.is_none_or(|(at, on)| holds(on, Some(at)));
            prop_assert!(!open || lifted, "not sound: {standing:?}");
            // The plan says the same, and so does the round.
            if let Ok(draft) = gathered.draft() {
                prop_assert_eq!(draft.work, standing.line);
            }
            let due = round_of(&all, now, &case.zone);
            let works = due.jobs.iter().any(|job| job.kind == JobKind::Exercise);
            prop_assert!(open || !works);
        }
    }
}
