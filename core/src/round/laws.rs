//! Laws: no job twice, an answered key never shows, a state never goes back, every net once a day.

use super::tests::{Britain, animal, day, net, plan, time};
use super::*;
use crate::animal::{AnimalId, LotId};
use crate::soak::{Air, Recipe, SoakTimes, Water};
use crate::sources::RecordId;
use crate::units::{AsFed, DryMatter, Instant, LocalDate, Span, Zone};
use proptest::prelude::*;
use std::collections::{BTreeMap, BTreeSet};

const TIMES: [&str; 6] = ["01:30", "06:30", "12:00", "17:30", "20:15", "22:00"];
const NAMES: [&str; 3] = ["bramble", "moss", "fern"];

/// 2026-05-05, midnight in Britain; or the evening before a change of the clock.
fn starts() -> impl Strategy<Value = i64> {
    prop_oneof![
        Just(1_777_935_600_000),
        Just(1_774_720_800_000),
        Just(1_792_864_800_000)
    ]
}

#[derive(Clone, Debug)]
struct Yard {
    plans: Vec<IssuedPlan>,
    watched: Vec<Watched>,
    soaks: Vec<OpenSoak>,
    turnouts: Vec<TurnoutPlanned>,
    out: Vec<OpenTurnout>,
    now: Instant,
}

impl Yard {
    fn at(&self, now: Instant, answered: &[Answered]) -> Round {
        round(&RoundFor {
            now,
            zone: &Britain,
            plans: &self.plans,
            watched: &self.watched,
            words: &[],
            stopped: &[],
            soaks: &self.soaks,
            dry: &[],
            turnouts: &self.turnouts,
            out: &self.out,
            answered,
        })
    }
}

fn a_plan(start: Instant) -> impl Strategy<Value = IssuedPlan> {
    let nets = prop::collection::vec((prop::sample::select(&TIMES[..]), any::<bool>()), 0..6);
    let feeds = prop::collection::vec(prop::option::of(0_u32..5), 0..2);
    let who = prop::sample::select(&NAMES[..]);
    (who, nets, feeds, 5_i64..900, -20_i64..3, 0_i64..72).prop_map(
        move |(name, nets, feeds, soak, from, issued)| IssuedPlan {
            issued: start - Span::hours(24 * 25 + issued),
            from: shifted(start, from),
            review: shifted(start, 1 - from),
            visits: vec![time("06:30"), time("17:30")],
            recipe: Recipe::minutes(Water::TapSummer, soak.try_into().unwrap()).ok(),
            feeds: feeds
                .into_iter()
                .map(|feeds| PlannedFeed {
                    food: None,
                    a_day: AsFed::kg(0.5),
                    feeds,
                })
                .collect(),
            ..plan(
                name,
                nets.into_iter().map(|(at, wet)| net(at, wet)).collect(),
            )
        },
    )
}

fn shifted(start: Instant, days: i64) -> LocalDate {
    super::state::plus(Britain.to_local(start).date, days).unwrap()
}

fn a_soak(start: Instant) -> impl Strategy<Value = OpenSoak> {
    const AIRS: [Air; 4] = [Air::HardFrost, Air::Mild, Air::Over20, Air::Over25];
    (
        0_u32..3,
        -900_i64..300,
        prop::option::of(0_i64..300),
        prop::sample::select(&AIRS[..]),
        prop::option::of((prop::sample::select(&NAMES[..]), 1_u32..4)),
    )
        .prop_map(move |(id, wet, lifted, air, by)| {
            let wetted = start + Span::minutes(wet);
            OpenSoak {
                id: RecordId(format!("soak-{id}")),
                tub: None,
                tub_name: None,
                subject: animal("moss"),
                name: "moss".to_owned(),
                lot: LotId("back-field".to_owned()),
                recipe: Recipe::usual(Water::TapWinter),
                times: SoakTimes {
                    lifted: lifted.map(|after| wetted + Span::minutes(after)),
                    ..SoakTimes::started(wetted)
                },
                air,
                hay: None,
                started_by: by.map(|(name, visit)| Key::Day {
                    kind: JobKind::StartSoak,
                    subject: animal(name),
                    day: shifted(start, 0),
                    slot: Slot { visit, nth: 0 },
                }),
                hangs: Vec::new(),
            }
        })
}

fn at_grass(start: Instant) -> impl Strategy<Value = (Vec<TurnoutPlanned>, Vec<OpenTurnout>)> {
    let who = || prop::sample::select(&NAMES[..]);
    let goes =
        (who(), prop::sample::select(&TIMES[..])).prop_map(move |(name, at)| TurnoutPlanned {
            subject: animal(name),
            name: name.to_owned(),
            from: shifted(start, -1),
            at: time(at),
            last_out: None,
        });
    let out =
        (0_u32..3, who(), -900_i64..300, -30_i64..300).prop_map(move |(id, name, out, minutes)| {
            let out = start + Span::minutes(out);
            OpenTurnout {
                id: RecordId(format!("out-{id}")),
                subject: animal(name),
                name: name.to_owned(),
                paddock_name: None,
                out,
                by: out + Span::minutes(minutes),
                muzzle: false,
            }
        });
    (
        prop::collection::vec(goes, 0..3),
        prop::collection::vec(out, 0..3),
    )
}

fn a_yard() -> impl Strategy<Value = Yard> {
    (starts(), 0_i64..1440).prop_flat_map(|(start, minute)| {
        let start = Instant::from_ms(start);
        let watched = (1_i64..30, prop::option::of(-20_i64..0)).prop_map(move |(every, last)| {
            let last = last.map(|days| shifted(start, days));
            Watched {
                animal: AnimalId("moss".to_owned()),
                name: "moss".to_owned(),
                from: shifted(start, -15),
                look_over_days: every,
                looked_over: last,
                weighed: last,
                weigh_again: every % 2 == 0,
                at: time("06:30"),
                work: Some(WatchedWork {
                    a_week: 5,
                    done: u32::try_from(every % 6).unwrap(),
                    today: false,
                }),
            }
        });
        (
            prop::collection::vec(a_plan(start), 0..5),
            prop::collection::vec(watched, 0..2),
            prop::collection::vec(a_soak(start), 0..3),
            at_grass(start),
        )
            .prop_map(move |(plans, watched, soaks, (turnouts, out))| Yard {
                turnouts,
                out,
                plans,
                watched,
                soaks,
                now: start + Span::minutes(minute),
            })
    })
}

const fn rank(state: JobState) -> u8 {
    match state {
        JobState::Later => 0,
        JobState::Due => 1,
        JobState::Late { .. } => 2,
    }
}

proptest! {
    #[test]
    fn no_job_stands_twice_and_spoilt_hay_and_what_is_late_stand_first(yard in a_yard()) {
        let round = yard.at(yard.now, &[]);
        let keys: BTreeSet<&Key> = round.jobs.iter().map(|job| &job.key).collect();
        prop_assert_eq!(keys.len(), round.jobs.len());
        // Hay past its time goes before what is late.
        let kept = |job: &Job| job.kind != JobKind::ThrowAway || job.state == JobState::Later;
        let order = |job: &Job| (kept(job), 2 - (rank(job.state) / 2) * 2, job.due);
        prop_assert!(round.jobs.is_sorted_by_key(order));
        let summary = round.summary();
        prop_assert_eq!(summary.late + summary.due + summary.later, round.jobs.len());
    }

    #[test]
    fn an_answered_key_never_shows_again(yard in a_yard(), picks in any::<u64>(), later in 0_i64..2_880) {
        let round = yard.at(yard.now, &[]);
        let answered: Vec<Answered> = round
            .jobs
            .iter()
            .enumerate()
            .filter(|(index, job)| picks >> (index % 64) & 1 == 1 && !job.kind.stands())
            .map(|(_, job)| Answered { at: yard.now, key: job.key.clone() })
            .collect();
        for now in [yard.now, yard.now + Span::minutes(later)] {
            let after = yard.at(now, &answered);
            for job in &after.jobs {
                prop_assert!(answered.iter().all(|answer| answer.key != job.key), "{}", job.key);
            }
        }
        prop_assert_eq!(yard.at(yard.now, &answered).done.len(), answered.len());
    }

    #[test]
    fn a_state_never_goes_back_and_a_job_that_is_gone_stays_gone(
        yard in a_yard(),
        steps in prop::collection::vec(1_i64..400, 1..8),
    ) {
        let mut now = yard.now;
        let mut seen: BTreeMap<Key, u8> = BTreeMap::new();
        let mut gone: BTreeSet<Key> = BTreeSet::new();
        for step in steps {
            let round = yard.at(now, &[]);
            let here: BTreeMap<Key, u8> =
                round.jobs.iter().map(|job| (job.key.clone(), rank(job.state))).collect();
            for (key, state) in &here {
                prop_assert!(seen.get(key).is_none_or(|before| before <= state), "{key}");
                prop_assert!(!gone.contains(key), "{key} came back");
            }
            gone.extend(seen.keys().filter(|key| !here.contains_key(*key)).cloned());
            seen = here;
            now = now + Span::minutes(step);
        }
    }

    #[test]
    fn every_net_of_a_plan_appears_once_a_day(yard in a_yard()) {
        let zone = Britain;
        // Looked at every quarter of an hour from the evening before; answered by nobody, so that only days away hide
        // anything, and they hide what is over.
        let start = super::state::at(&zone, zone.to_local(yard.now).date, time("00:00"));
        let today = zone.to_local(start).date;
        let mut seen: BTreeSet<Key> = BTreeSet::new();
        for quarter in 0..100 {
            let round = yard.at(start + Span::minutes(15 * quarter), &[]);
            seen.extend(round.jobs.iter().map(|job| job.key.clone()).filter(|key| {
                matches!(key, Key::Day { kind: JobKind::HangNet, day, .. } if *day == today)
            }));
        }
        for name in NAMES {
            let mut plans: Vec<&IssuedPlan> = yard
                .plans
                .iter()
                .filter(|plan| plan.subject == animal(name) && plan.from <= today)
                .collect();
            plans.sort_by_key(|plan| plan.issued);
            let planned: &[PlannedNet] = plans.last().map_or(&[], |plan| &plan.nets);
            let nets = planned.len();
            // Hay out of a soak of these nets that is past its time is not offered.
            let in_water = yard.soaks.iter().any(|soak| {
                matches!(&soak.started_by, Some(Key::Day { subject, .. }) if *subject == animal(name))
            });
            let dry = planned.iter().filter(|net| !net.soaked).count();
            let shown = seen
                .iter()
                .filter(|key| matches!(key, Key::Day { subject, .. } if *subject == animal(name)))
                .count();
            let least = if in_water { dry } else { nets };
            prop_assert!((least..=nets).contains(&shown), "{}: {} of {}", name, shown, nets);
        }
    }

    #[test]
    fn a_day_with_grass_takes_off_no_more_than_grass_took_the_place_of(
        yard in a_yard(),
        out in 0_i64..1440,
        dry in 0.0_f64..12.0,
        part in 0.3_f64..0.95,
    ) {
        let today = shifted(yard.now, 0);
        for plan in &yard.plans {
            let of = LighterFor {
                zone: &Britain,
                plan,
                day: today,
                came_in: super::state::at(&Britain, today, time("00:00")) + Span::minutes(out),
                dry: DryMatter::kg(dry),
                soaks: &yard.soaks,
                answered: &[],
            };
            let Some(day) = lighter(&of, |_, _| Some(part)) else {
                continue;
            };
            prop_assert_eq!(day.nets.len(), plan.nets.len());
            let mut all = 0.0;
            for (net, planned) in day.nets.iter().zip(&plan.nets) {
                let less = net.less_for_grass.map_or(0.0, AsFed::to_kg);
                let steps = less / *crate::day::published::SCALE_STEP;
                prop_assert!((steps - steps.round()).abs() < 1e-9);
                prop_assert!((net.hay.to_kg() + less - planned.hay.to_kg()).abs() < 1e-9);
                prop_assert!(planned.hay.to_kg() / 2.0 <= net.hay.to_kg() + 1e-9);
                let come = of.came_in < super::state::at(&Britain, today, net.visit);
                prop_assert!(come || less == 0.0);
                all += less * part;
            }
            prop_assert!(0.0 < all && all <= dry + 1e-9, "{} of {}", all, dry);
        }
    }

    #[test]
    fn text_and_key_are_inverse(
        kind in 0_usize..11,
        id in "[a-z0-9-]{1,64}",
        visit in any::<u32>(),
        nth in any::<u32>(),
        tub in 0_usize..3,
    ) {
        let kinds = [
            JobKind::Stop,
            JobKind::LookAgain,
            JobKind::TurnOut,
            JobKind::StartSoak,
            JobKind::HangNet,
            JobKind::FeedBalancer,
            JobKind::LookOver,
            JobKind::Weigh,
            JobKind::Exercise,
            JobKind::ReviewPlan,
            JobKind::VetWordExpires,
        ];
        let tubs = [JobKind::LiftOut, JobKind::DrainAndFeed, JobKind::ThrowAway];
        let keys = [
            Key::Day {
                kind: kinds[kind],
                subject: animal(&id),
                day: day("2026-05-05"),
                slot: Slot { visit, nth },
            },
            Key::Tub { kind: tubs[tub], soak: RecordId(id.clone()) },
            Key::Out { turnout: RecordId(id) },
            Key::Away { from: day("2026-05-05"), to: day("2026-05-07") },
        ];
        for key in keys {
            prop_assert_eq!(Key::from_text(&key.to_string()), Ok(key));
        }
    }
}
