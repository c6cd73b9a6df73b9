//! What stops an animal, looks again, soaks that came to nothing and cool evenings, from records.

use super::*;
use crate::animal::Answer as Seen;
use crate::log::{Wish, gather};
use crate::plan::GrassLine;
use crate::round::Waits;
use crate::safety::{Refusal, VetUrgency};
use crate::soak::Air;
use crate::work::WorkLine;

pub(super) fn look(pulse: Seen, warm: Seen) -> Body {
    Body::LookOver(LookOverV1 {
        gait: Seen::No,
        stance: Seen::No,
        turning: Seen::No,
        shifting_weight: Seen::No,
        strong_pulse: pulse,
        foot_pain: Seen::No,
        warm_hoof: warm,
        lying_more: Seen::No,
        note: None,
        job: None,
    })
}

fn of_kind(round: &Round, kind: JobKind) -> Vec<&crate::round::Job> {
    round.jobs.iter().filter(|job| job.kind == kind).collect()
}

#[test]
fn a_sign_stops_the_day_first_and_the_hay_goes_on() {
    let mut told = Told::issued().with_first_day();
    let now = told.tomorrow(6, 0);
    told.add("l1", Told::bramble(), now, &look(Seen::Yes, Seen::No));
    let round = told.round(now);
    let first = &round.jobs[0];
    assert_eq!(first.kind, JobKind::Stop);
    assert_eq!(first.stops, [(Refusal::LaminitisSign, VetUrgency::Today)]);
    let nets = of_kind(&round, JobKind::HangNet);
    assert!(!nets.is_empty());
    assert!(nets.iter().all(|net| net.waits == Some(Waits::Vet)));
    // "All as planned" answers nets and feeds, and an answer to the stop does not end it.
    let visit = nets[0].visit.unwrap();
    assert!(!round.as_planned(visit).contains(&&first.key));
    let ticked = Body::Job(JobV1 {
        job: JobKey::of(&first.key).unwrap(),
        answer: JobAnswer::Done,
        note: None,
        not_soaked: None,
    });
    told.add("tick", Told::bramble(), now, &ticked);
    assert_eq!(of_kind(&told.round(now), JobKind::Stop).len(), 1);
    told.add(
        "l2",
        Told::bramble(),
        told.tomorrow(7, 0),
        &look(Seen::No, Seen::No),
    );
    assert!(of_kind(&told.round(told.tomorrow(7, 1)), JobKind::Stop).is_empty());
}

#[test]
fn an_animal_without_a_plan_is_stopped_too() {
    let mut told = Told::issued();
    told.records.retain(|record| record.id.0 != "plan-1");
    let now = told.tomorrow(6, 0);
    told.add("l1", Told::bramble(), now, &look(Seen::Yes, Seen::No));
    let kinds: Vec<JobKind> = told.round(now).jobs.iter().map(|job| job.kind).collect();
    assert_eq!(kinds, [JobKind::Stop]);
}

#[test]
fn a_warm_hoof_is_looked_at_in_two_hours_and_tonight_without_work_or_grass() {
    let mut told = Told::issued().with_first_day();
    told.add(
        "l0",
        Told::bramble(),
        told.tomorrow(6, 0),
        &look(Seen::No, Seen::No),
    );
    let drafted = |told: &Told, now| {
        let records: Vec<&Record> = told.records.iter().collect();
        let who = AnimalId("bramble".to_owned());
        let wish = Wish {
            visits: told.case.visits.clone(),
            ..Wish::default()
        };
        let gathered = gather(&records, &who, now, &told.case.zone, &wish).unwrap();
        let mut draft = gathered.draft().unwrap();
        draft.levers.clear();
        (draft.work, draft.grass)
    };
    let before = drafted(&told, told.tomorrow(6, 30)).0;
    assert_ne!(before, WorkLine::None);
    told.add(
        "l1",
        Told::bramble(),
        told.tomorrow(8, 0),
        &look(Seen::No, Seen::Yes),
    );
    let round = told.round(told.tomorrow(8, 30));
    let dues: Vec<Instant> = of_kind(&round, JobKind::LookAgain)
        .iter()
        .map(|job| job.due)
        .collect();
    assert_eq!(dues, [told.tomorrow(10, 0), told.tomorrow(20, 0)]);
    assert!(
        of_kind(&round, JobKind::HangNet)
            .iter()
            .all(|net| net.waits.is_some())
    );
    let (work, grass) = drafted(&told, told.tomorrow(8, 30));
    assert_eq!(work, WorkLine::None);
    assert!(matches!(grass, GrassLine::None { .. }));
    // Cool at the second look: the one of the evening is still to be made, and until then there is no work.
    told.add(
        "l2",
        Told::bramble(),
        told.tomorrow(10, 0),
        &look(Seen::No, Seen::No),
    );
    let at_noon = told.tomorrow(12, 0);
    let round = told.round(at_noon);
    let left = of_kind(&round, JobKind::LookAgain);
    assert_eq!(left.len(), 1);
    assert_eq!(left[0].due, told.tomorrow(20, 0));
    assert_eq!(drafted(&told, at_noon).0, WorkLine::None);
    told.add(
        "l3",
        Told::bramble(),
        told.tomorrow(20, 0),
        &look(Seen::No, Seen::No),
    );
    let tonight = told.tomorrow(20, 10);
    assert!(of_kind(&told.round(tonight), JobKind::LookAgain).is_empty());
    assert_eq!(drafted(&told, tonight).0, before);
}

#[test]
fn a_look_that_is_not_made_stays_late() {
    let mut told = Told::issued().with_first_day();
    told.add(
        "l1",
        Told::bramble(),
        told.tomorrow(8, 0),
        &look(Seen::No, Seen::Yes),
    );
    let round = told.round(told.tomorrow(24 + 8, 0));
    let left = of_kind(&round, JobKind::LookAgain);
    assert_eq!(left.len(), 2);
    assert!(
        left.iter()
            .all(|job| matches!(job.state, JobState::Late { .. }))
    );
}

fn begun(told: &mut Told) -> Key {
    let start = told
        .keys(told.tomorrow(4, 50), JobKind::StartSoak)
        .remove(0);
    let body = started(Some(JobKey::of(&start).unwrap()));
    told.add("soak-1", Told::bramble(), told.tomorrow(5, 0), &body);
    start
}

#[test]
fn a_soak_that_came_to_nothing_is_asked_for_again() {
    let soak = || RecordId("soak-1".to_owned());
    for end in [
        SoakStep::Stopped { soak: soak() },
        SoakStep::ThrownAway { soak: soak() },
    ] {
        let mut told = Told::issued().with_first_day();
        let start = begun(&mut told);
        let now = told.tomorrow(5, 30);
        assert!(!told.keys(now, JobKind::StartSoak).contains(&start));
        told.add("end", Told::bramble(), now, &step(end));
        assert!(told.keys(now, JobKind::StartSoak).contains(&start));
    }
    let mut told = Told::issued().with_first_day();
    let start = begun(&mut told);
    let now = told.tomorrow(7, 0);
    for (id, happened) in [
        ("fed", SoakStep::Fed { soak: soak() }),
        ("end", SoakStep::ThrownAway { soak: soak() }),
    ] {
        told.add(id, Told::bramble(), now, &step(happened));
    }
    assert!(!told.keys(now, JobKind::StartSoak).contains(&start));
}

#[test]
fn spoilt_soaked_hay_is_thrown_away_and_never_offered() {
    let mut told = Told::issued().with_first_day();
    begun(&mut told);
    let hot = Body::Weather(WeatherV2 {
        date: told.case.zone.to_local(told.tomorrow(5, 0)).date,
        chips: vec![Chip::OverTwentyFive],
        carried: false,
    });
    let yard = About::yard(&told.records[0].yard);
    told.add("hot", yard, told.tomorrow(5, 10), &hot);
    let out_of_soak = |now| {
        let round = told.round(now);
        let nets = of_kind(&round, JobKind::HangNet);
        let nets = nets.iter().filter(|net| net.soak.is_some());
        nets.map(|net| {
            let planned = net
                .visit
                .is_some_and(|visit| round.as_planned(visit).contains(&&net.key));
            assert!(planned);
        })
        .count()
    };
    assert!(0 < out_of_soak(told.tomorrow(8, 59)));
    assert_eq!(out_of_soak(told.tomorrow(9, 0)), 0);
    assert_eq!(told.keys(told.tomorrow(9, 0), JobKind::ThrowAway).len(), 1);
}

#[test]
fn a_cool_evening_gives_no_hours_back() {
    let mut told = Told::issued().with_first_day();
    let today = told.case.zone.to_local(told.tomorrow(5, 0)).date;
    let yard = About::yard(&told.records[0].yard);
    let weather = |date, chip| {
        Body::Weather(WeatherV2 {
            date,
            chips: vec![chip],
            carried: false,
        })
    };
    let hot = weather(today - chrono::TimeDelta::days(2), Chip::OverTwentyFive);
    told.add("w0", yard.clone(), told.tomorrow(-40, 0), &hot);
    told.add(
        "soak-1",
        Told::bramble(),
        told.tomorrow(12, 0),
        &started(None),
    );
    let air = |told: &Told, hour| told.due(told.tomorrow(hour, 30)).soaks[0].air;
    // What was said two days ago carries over no more.
    assert_eq!(air(&told, 12), Air::Mild);
    told.add(
        "w1",
        yard.clone(),
        told.tomorrow(13, 0),
        &weather(today, Chip::OverTwentyFive),
    );
    told.add(
        "w2",
        yard,
        told.tomorrow(17, 0),
        &weather(today, Chip::Mild),
    );
    assert_eq!(air(&told, 13), Air::Over25);
    assert_eq!(air(&told, 17), Air::Over25);
    // Hay that went in after it is soaked in the air of the evening.
    told.add(
        "soak-2",
        Told::bramble(),
        told.tomorrow(18, 0),
        &started(None),
    );
    let soaks = told.due(told.tomorrow(18, 30)).soaks;
    let later = soaks.iter().find(|soak| soak.id.0 == "soak-2").unwrap();
    assert_eq!(later.air, Air::Mild, "{soaks:?}");
}

#[test]
fn a_word_that_has_ended_takes_the_plan_back_until_it_is_renewed() {
    let mut told = Told::issued().with_first_day();
    let from = told.due(told.case.now).plans[0].from;
    let word = |given: i64, expires: i64| {
        Body::VetWord(VetWordV1 {
            animal: AnimalId("bramble".to_owned()),
            permit: VetPermit::LowestLevel(PartOfBody::percent(1.2)),
            vet: Name::new("The vet").unwrap(),
            practice: String::new(),
            given: from + chrono::TimeDelta::days(given),
            how: String::new(),
            expires: from + chrono::TimeDelta::days(expires),
        })
    };
    for record in &mut told.records {
        if record.id.0 == "plan-1" {
            let Body::Plan(plan) = Body::read(record).unwrap() else {
                panic!("no plan")
            };
            let low = PlanV1 {
                level: crate::log::bodies::base::BodyHundredths::of(PartOfBody::percent(1.2))
                    .unwrap(),
                ..plan
            };
            record.body = Body::Plan(low).to_value().unwrap();
        }
    }
    told.add("word-1", Told::bramble(), told.case.now, &word(0, 1));
    let hung = |told: &Told, now| -> f64 {
        let plans = told.due(now).plans;
        plans[0].nets.iter().map(|net| net.hay.to_kg()).sum()
    };
    let under_it = hung(&told, told.tomorrow(7, 0));
    let after = told.tomorrow(24 * 4, 0);
    assert!((hung(&told, after) - under_it * 1.5 / 1.2).abs() < 1e-9);
    let round = told.round(after);
    assert_eq!(of_kind(&round, JobKind::VetWordExpires).len(), 1);
    assert!(
        of_kind(&round, JobKind::HangNet)
            .iter()
            .all(|net| net.waits == Some(Waits::Word))
    );
    // A tick does not renew it.
    let key = of_kind(&round, JobKind::VetWordExpires)[0].key.clone();
    let ticked = Body::Job(JobV1 {
        job: JobKey::of(&key).unwrap(),
        answer: JobAnswer::Done,
        note: None,
        not_soaked: None,
    });
    told.add("tick", Told::bramble(), after, &ticked);
    assert_eq!(told.keys(after, JobKind::VetWordExpires).len(), 1);
    told.add("word-2", Told::bramble(), after, &word(4, 60));
    assert!((hung(&told, after) - under_it).abs() < 1e-9);
}
