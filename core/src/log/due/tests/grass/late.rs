//! Grass of which nobody knows how much was eaten: ticked late, over midnight, by a clock that runs ahead.

use super::*;
use crate::round::Slot;

impl Told {
    fn given_way(&self, now: Instant) -> f64 {
        let due = self.due(now);
        due.given_way.first().map_or(0.0, |(_, dry)| dry.to_kg())
    }

    /// Leaf of the evening before.
    fn leaf_before(&mut self) {
        let mut seen = self
            .records
            .iter()
            .find(|record| record.id.0 == "sward-1")
            .unwrap()
            .clone();
        seen.id = RecordId("sward-0".to_owned());
        seen.at = self.tomorrow(-16, 0);
        self.records.push(seen);
    }
}

#[test]
fn bringing_in_that_was_ticked_late_takes_no_hay_off_for_hours_nobody_ate() {
    let mut told = goes_out();
    let (seven, eight) = (told.tomorrow(7, 0), told.tomorrow(8, 0));
    let late = told.tomorrow(11, 0);
    told.out_at(seven, Some(eight), Some(eight));
    let in_time = told.given_way(late);
    assert!(0.0 < in_time);
    for by in [Some(eight), None] {
        told.out_at(seven, by, Some(late));
        assert_eq!(told.given_way(late), in_time);
    }
    // In early it ate less than it might have.
    told.out_at(seven, Some(late), Some(eight));
    assert_eq!(told.given_way(late), in_time);
    // Ticked the morning after, nothing of today was eaten for certain.
    told.leaf_before();
    let six = told.tomorrow(6, 0);
    told.out_at(told.tomorrow(-16, 0), None, Some(six));
    assert_eq!(told.less(late), 0.0);
}

#[test]
fn the_hours_after_midnight_are_not_its_first_hours_at_grass() {
    let mut told = goes_out();
    told.leaf_before();
    let six = told.tomorrow(6, 0);
    let now = told.tomorrow(6, 5);
    told.out_at(told.tomorrow(0, 0), Some(six), Some(six));
    let fresh = told.given_way(now);
    told.out_at(told.tomorrow(-4, 0), Some(six), Some(six));
    let overnight = told.given_way(now);
    assert!(0.0 < overnight, "{overnight}");
    // From the fourth hour to the tenth it eats two thirds of what it eats in its first six.
    assert!(overnight < fresh * 0.8, "{overnight} {fresh}");
}

#[test]
fn one_that_a_clock_which_runs_ahead_sent_out_is_to_be_brought_in() {
    let mut told = goes_out();
    told.out_at(told.tomorrow(7, 20), None, None);
    let now = told.tomorrow(7, 0);
    let jobs = told.round(now).jobs;
    let due: Vec<Instant> = jobs
        .iter()
        .filter(|job| job.kind == JobKind::BringIn)
        .map(|job| job.due)
        .collect();
    assert_eq!(due, [told.tomorrow(8, 20)]);
    assert!(told.keys(now, JobKind::TurnOut).is_empty());
    // In again before that clock's hour, it went out today all the same.
    told.out_at(told.tomorrow(7, 20), None, Some(told.tomorrow(7, 25)));
    assert!(told.keys(now, JobKind::TurnOut).is_empty());
}

#[test]
fn a_long_day_at_grass_leaves_the_night_half_of_its_net() {
    let mut told = goes_out();
    let plan = told.due(told.tomorrow(6, 0)).plans[0].clone();
    let night = plan.nets.iter().map(|net| net.visit).max().unwrap();
    let kg_at_night = |nets: &[crate::round::PlannedNet]| {
        let here = nets.iter().filter(|net| net.visit == night);
        here.map(|net| net.hay.to_kg()).sum::<f64>()
    };
    let (date, time) = (told.day(), night);
    let at = crate::units::LocalStamp { date, time };
    let at_night = told.case.zone.to_instant(at).planned();
    // All but the night's nets hang whole, the last of them late.
    let late = at_night + Span::minutes(-40);
    let mut visits = plan.visits.clone();
    visits.extend(plan.nets.iter().map(|net| net.visit));
    visits.sort_unstable();
    visits.dedup();
    for (index, net) in plan.nets.iter().enumerate() {
        let same = |other: &&crate::round::PlannedNet| other.visit == net.visit;
        let nth = u32::try_from(plan.nets[..index].iter().filter(same).count()).unwrap() + 1;
        let visit = visits.iter().position(|visit| *visit == net.visit).unwrap();
        let visit = u32::try_from(visit).unwrap() + 1;
        let key = Key::Day {
            kind: JobKind::HangNet,
            subject: plan.subject.clone(),
            day: date,
            slot: Slot { visit, nth },
        };
        let body = Body::NetHung(NetHungV1 {
            job: Some(JobKey::of(&key).unwrap()),
            hay: Some(FeedWeight {
                g: FeedGrams::of(net.hay).unwrap(),
                typed: None,
            }),
            net: None,
            filling: None,
            lot: None,
            soak: None,
            not_soaked: None,
        });
        if net.visit != night {
            let id = format!("hung-{index}");
            told.add(&id, About::animal(&pony()), late, &body);
        }
    }
    // Out all day.
    let by = Some(late + Span::minutes(-5));
    told.out_at(told.tomorrow(5, 0), by, by);
    told.leaf_before();
    let now = at_night + Span::minutes(-20);
    let records: Vec<&Record> = told.records.iter().collect();
    let (of, zone) = (Subject::Animal(pony()), &told.case.zone);
    let held = held_day(&records, &of, now, zone).unwrap();
    let rest = rest_of_today(&records, &of, &held, now, zone).unwrap();
    let RestVerdict::Laid(laid) = rest.verdict else {
        panic!("{:?}", rest.verdict)
    };
    let hay: f64 = laid.hangings.iter().map(|hang| hang.as_fed.to_kg()).sum();
    let planned = kg_at_night(&plan.nets);
    assert!(
        planned / 2.0 - 0.05 < hay && hay < planned,
        "{hay} {planned}"
    );
    // As the nets stand, the round says the same.
    let due = told.due(now);
    let stands = kg_at_night(due.plans[0].nets_on(date));
    assert!(planned / 2.0 - 1e-9 <= stands, "{stands} {planned}");
}
