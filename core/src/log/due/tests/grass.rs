//! Turnouts of the records, and hay that hangs lighter after one.

use super::*;
use crate::animal::{Goal, PaddockId};
use crate::graze::sward::Leaf;
use crate::log::gather::gather;
use crate::log::{RestVerdict, held_day, rest_of_today};
use crate::safety::judge;
use crate::units::AsFed;

mod late;

fn pony() -> AnimalId {
    AnimalId("bramble".to_owned())
}

fn top() -> PaddockId {
    PaddockId("top-paddock".to_owned())
}

/// Bramble on tested hay with a plan, and an hour at grass a day from tomorrow on.
fn goes_out() -> Told {
    let text = include_str!("../../../../examples/cases/bramble-tested-hay.json");
    let case = Case::read(text).unwrap();
    let mut told = Told {
        records: case.log.current().cloned().collect(),
        case,
    };
    let records: Vec<&Record> = told.records.iter().collect();
    let (now, zone) = (told.case.now, &told.case.zone);
    let gathered = gather(&records, &pony(), now, zone, &told.case.wish).unwrap();
    let SafetyVerdict::Allowed(plan) = judge(gathered.draft().unwrap()) else {
        panic!()
    };
    let plan = Body::Plan(PlanV1::of(&plan, &[], None).unwrap());
    told.add("plan-1", About::animal(&pony()), now, &plan);
    let decided = Body::Grazing(GrazingV1 {
        paddock: Some(top()),
        from: told.day(),
        minutes: GrazingMinutes::new(60).unwrap(),
        muzzle: false,
        adapted_since: None,
        out: None,
        stopped: false,
    });
    told.add("grazing-1", About::animal(&pony()), now, &decided);
    told.see(Leaf::Ankle);
    told
}

impl Told {
    fn day(&self) -> LocalDate {
        self.case.zone.to_local(self.tomorrow(12, 0)).date
    }

    fn see(&mut self, leaf: Leaf) {
        let body = Body::Sward(SwardV1 {
            leaf: Some(leaf),
            seeding: Answer::No,
            heights_mm: Vec::new(),
            plate: None,
            note: None,
        });
        let at = self.tomorrow(6, 30);
        self.add("sward-1", About::paddock(&top()), at, &body);
    }

    /// Out at seven, for the usual hour.
    fn out(&mut self, came_in: Option<Instant>) {
        self.out_at(self.tomorrow(7, 0), None, came_in);
    }

    fn out_at(&mut self, at: Instant, bring_in_by: Option<Instant>, came_in: Option<Instant>) {
        let body = Body::Turnout(TurnoutV1 {
            paddock: Some(top()),
            muzzle: false,
            bring_in_by,
            came_in,
            job: None,
        });
        self.records.retain(|record| record.id.0 != "out-1");
        self.add("out-1", About::animal(&pony()), at, &body);
    }

    /// The nets of tomorrow as they hang, in kilograms, and by how much less.
    fn nets(&self, now: Instant) -> Vec<(f64, f64)> {
        let due = self.due(now);
        let plan = due
            .plans
            .iter()
            .find(|plan| plan.name == "Bramble")
            .unwrap();
        let kg = |net: &crate::round::PlannedNet| {
            let less = net.less_for_grass.map_or(0.0, AsFed::to_kg);
            (net.hay.to_kg(), less)
        };
        plan.nets_on(self.day()).iter().map(kg).collect()
    }

    fn less(&self, now: Instant) -> f64 {
        self.nets(now).iter().map(|(_, less)| less).sum()
    }
}

#[test]
fn it_goes_out_at_the_first_visit_and_is_brought_in_an_hour_later_where_nobody_said_when() {
    let mut told = goes_out();
    let of_grass = |told: &Told, now| {
        let jobs = told.round(now).jobs;
        let kinds = [JobKind::TurnOut, JobKind::BringIn];
        let jobs = jobs.into_iter().filter(|job| kinds.contains(&job.kind));
        jobs.map(|job| (job.kind, job.due)).collect::<Vec<_>>()
    };
    let now = told.tomorrow(6, 45);
    let first = told.tomorrow(6, 15);
    assert_eq!(of_grass(&told, now), [(JobKind::TurnOut, first)]);
    told.out(None);
    let now = told.tomorrow(7, 5);
    assert_eq!(
        of_grass(&told, now),
        [(JobKind::BringIn, told.tomorrow(8, 0))]
    );
    told.out(Some(told.tomorrow(8, 10)));
    let after = told.tomorrow(8, 11);
    assert_eq!(of_grass(&told, after), []);
    let done = told.round(after).done;
    assert!(
        done.iter()
            .any(|answer| answer.key.to_string() == "bring_in/out-1")
    );
}

#[test]
fn nets_to_come_hang_lighter_by_the_least_that_was_eaten() {
    let mut told = goes_out();
    let now = told.tomorrow(9, 5);
    let whole = told.nets(now);
    told.out(None);
    assert_eq!(told.less(now), 0.0, "nobody knows yet how long it is out");
    let nine = Some(told.tomorrow(9, 0));
    told.out_at(told.tomorrow(7, 0), nine, nine);
    let nets = told.nets(now);
    assert_eq!(nets[0], whole[0], "its visit has passed");
    for ((hay, less), (planned, _)) in nets.iter().zip(&whole) {
        assert!((hay + less - planned).abs() < 1e-9);
        let steps = less / 0.05;
        assert!((steps - steps.round()).abs() < 1e-9, "{less}");
    }
    let due = told.due(now);
    let given = due.given_way[0].1.to_kg();
    // Two hours of a February: 0.17 of 1.33 % of its weight, and of no more than its weight.
    let records: Vec<&Record> = told.records.iter().collect();
    let weight = gather(&records, &pony(), now, &told.case.zone, &told.case.wish);
    let weight = weight.unwrap().draft().unwrap().weight.low.to_kg();
    let least = weight * 0.0133 * (1.0 - (-2.0_f64 / 10.7).exp());
    assert!(0.0 < given && given <= least + 1e-9, "{given} {least}");
    let part = 0.95;
    assert!(0.0 < told.less(now) && told.less(now) * 0.5 < given / part);
    // The same an hour before the last net: what was taken off does not move on to it.
    assert_eq!(told.nets(told.tomorrow(21, 0)), nets);
    // Tomorrow's nets are the plan's again.
    let plan = &due.plans[0];
    assert_eq!(plan.nets_on(told.day().succ_opt().unwrap()), plan.nets);
}

#[test]
fn no_leaf_no_decision_or_an_animal_that_may_not_lose_takes_nothing_off() {
    let now = |told: &Told| told.tomorrow(9, 5);
    let out = |mut told: Told| {
        told.out(Some(told.tomorrow(9, 0)));
        told
    };
    let told = out(goes_out());
    assert!(0.0 < told.less(now(&told)));
    let mut bare = out(goes_out());
    bare.records.retain(|record| record.id.0 != "sward-1");
    assert_eq!(bare.less(now(&bare)), 0.0);
    bare.see(Leaf::BelowAnkle);
    assert_eq!(bare.less(now(&bare)), 0.0);
    let mut undecided = out(goes_out());
    undecided
        .records
        .retain(|record| record.id.0 != "grazing-1");
    assert_eq!(undecided.less(now(&undecided)), 0.0);
    let mut gains = out(goes_out());
    let place = gains
        .records
        .iter()
        .position(|record| record.id.0 == "bramble")
        .unwrap();
    let Ok(Body::Animal(mut body)) = Body::read(&gains.records[place]) else {
        panic!()
    };
    body.goal = Goal::Gain;
    let at = gains.records[place].at;
    gains.records.remove(place);
    gains.add("bramble", About::animal(&pony()), at, &Body::Animal(body));
    assert_eq!(gains.less(now(&gains)), 0.0);
}

#[test]
fn a_day_that_was_laid_out_anew_since_has_it_already() {
    let mut told = goes_out();
    told.out(Some(told.tomorrow(9, 0)));
    let now = told.tomorrow(9, 5);
    assert!(0.0 < told.less(now));
    let nets = told.due(now).plans[0].nets.clone();
    let anew = Body::DayRelaid(DayRelaidV1 {
        plan: RecordId("plan-1".to_owned()),
        day: told.day(),
        nets: nets
            .iter()
            .map(|net| NetShareV1 {
                visit: net.visit,
                lot: net.lot.clone(),
                as_fed_g: FeedGrams::of(net.hay).unwrap(),
                soaked: net.soaked,
                net: None,
            })
            .collect(),
    });
    told.add("anew-1", About::animal(&pony()), told.tomorrow(9, 3), &anew);
    assert_eq!(told.less(now), 0.0);
    assert_eq!(
        told.due(now).given_way.len(),
        1,
        "the rest of the day counts it"
    );
    // What was said while it was out may have it counted: it is not taken off twice, nor once the time is changed.
    told.records.pop();
    told.add("anew-1", About::animal(&pony()), told.tomorrow(8, 0), &anew);
    assert_eq!(told.less(now), 0.0);
    told.out(Some(told.tomorrow(7, 30)));
    let counted = told.due(now).given_way.len();
    assert_eq!((told.less(now), counted), (0.0, 1));
    told.out(Some(told.tomorrow(9, 0)));
    assert_eq!(told.less(now), 0.0);
    // One that was said before it went out did not know.
    told.records
        .retain(|record| !["anew-1", "out-1"].contains(&record.id.0.as_str()));
    told.add(
        "anew-1",
        About::animal(&pony()),
        told.tomorrow(6, 50),
        &anew,
    );
    told.out(Some(told.tomorrow(9, 0)));
    assert!(0.0 < told.less(now));
}

#[test]
fn the_rest_of_a_day_with_a_missed_visit_does_not_hang_again_what_grass_took_the_place_of() {
    let mut told = goes_out();
    let now = told.tomorrow(12, 45);
    let to_hang = |told: &Told| {
        let records: Vec<&Record> = told.records.iter().collect();
        let (of, zone) = (Subject::Animal(pony()), &told.case.zone);
        let held = held_day(&records, &of, now, zone).unwrap();
        let rest = rest_of_today(&records, &of, &held, now, zone).unwrap();
        let RestVerdict::Laid(laid) = rest.verdict else {
            panic!("{:?}", rest.verdict)
        };
        let hay: AsFed = laid.hangings.iter().map(|hang| hang.as_fed).sum();
        hay.dry(held.dry) + laid.over
    };
    let without = to_hang(&told);
    told.out(Some(told.tomorrow(9, 0)));
    let given = told.due(now).given_way[0].1;
    let less = (without - to_hang(&told)).to_kg();
    // To a step of the scale.
    assert!((less - given.to_kg()).abs() < 0.05 && 0.1 < less, "{less}");
}

#[test]
fn a_group_stays_in_with_a_member_that_something_stops() {
    let text = include_str!("../../../../examples/cases/two-cobs-and-a-shetland.json");
    let case = Case::read(text).unwrap();
    let mut told = Told {
        records: case.log.current().cloned().collect(),
        case,
    };
    let group = || About::group(&crate::animal::GroupId("top-field".to_owned()));
    let decided = Body::Grazing(GrazingV1 {
        paddock: None,
        from: told.day(),
        minutes: GrazingMinutes::new(60).unwrap(),
        muzzle: false,
        adapted_since: None,
        out: None,
        stopped: false,
    });
    told.add("grazing-1", group(), told.case.now, &decided);
    let now = told.tomorrow(8, 30);
    assert_eq!(told.keys(now, JobKind::TurnOut).len(), 1);
    let sign = stops::look(Answer::Yes, Answer::No);
    told.add("look-1", About::animal(&pony()), told.tomorrow(8, 0), &sign);
    assert!(told.keys(now, JobKind::TurnOut).is_empty());
}
