//! Issuing the plans of the repository's cases.

use super::*;
use crate::log::{Answer, Body, Case, DeviceId, Known, Origin, Record, Subject};
use crate::safety::SafetyVerdict;
use crate::sources::RecordId;
use crate::units::Instant;

fn allowed(text: &str) -> (Case, Plan) {
    let case = Case::read(text).unwrap();
    let answer = case.answers().remove(0).1;
    let Answer::Animal(SafetyVerdict::Allowed(plan)) = answer else {
        panic!("{answer:?}")
    };
    (case, *plan)
}

fn cases() -> Vec<(Case, Plan)> {
    [
        include_str!("../../../../examples/cases/bramble.json"),
        include_str!("../../../../examples/cases/bramble-tested-hay.json"),
        include_str!("../../../../examples/cases/foundered-shetland.json"),
    ]
    .map(allowed)
    .to_vec()
}

fn stamp() -> Stamp {
    Stamp::first(Instant::from_ms(1_777_960_800_000), DeviceId::of_number(7))
}

#[test]
fn an_issued_plan_hangs_what_was_planned_in_whole_steps() {
    for (_, plan) in cases() {
        let draft = plan.planned();
        let issued = PlanV1::of(&plan, &[], None).unwrap();
        let step = FeedGrams::of(AsFed::kg(*SCALE_STEP)).unwrap().get();
        for hanging in &draft.layout.hangings {
            let grams: i64 = issued
                .nets
                .iter()
                .filter(|net| net.visit == hanging.visit)
                .map(|net| net.as_fed_g.get())
                .sum();
            assert_eq!(grams, FeedGrams::of(hanging.as_fed).unwrap().get());
        }
        assert!(issued.nets.iter().all(|net| net.as_fed_g.get() % step == 0));
        assert!(issued.nets.iter().all(|net| net.as_fed_g.get() > 0));
        for hay in &draft.hays {
            let of_lot = |amount: &&AmountV1| amount.lot.as_ref() == Some(&hay.lot);
            let amount = issued.amounts.iter().find(of_lot).unwrap();
            let off = amount.as_fed_g.as_fed() - hay.weigh_out;
            assert!(off.to_kg().abs() <= *SCALE_STEP + 1e-9, "{off:?}");
            assert_eq!(amount.soaked, hay.fed == Fed::Soaked);
        }
        assert_eq!(issued.soaking.is_some(), draft.soaks());
        assert_eq!(issued.from, draft.day);
        assert_eq!(issued.visits.len(), draft.layout.hangings.len());
        let over = draft.layout.verdict == GapVerdict::OverTheLine;
        assert_eq!(
            issued.gap_accepted_min.is_none(),
            over,
            "over the line somebody accepts it"
        );
        let longest = draft.layout.longest_h;
        let accepted = issued.accepting(longest).unwrap();
        let gap = accepted.gap_accepted_min.unwrap().get() as f64 / 60.0;
        assert!(gap >= longest && gap < longest + 0.02);
        let next = |hours: f64| {
            issued
                .clone()
                .accepted_as(&accepted, hours)
                .gap_accepted_min
        };
        assert_eq!(
            next(longest),
            accepted.gap_accepted_min,
            "it is accepted once"
        );
        assert_eq!(
            next(longest + 0.1).is_none(),
            over,
            "a longer wait asks again"
        );
        assert_eq!(issued.rules.as_str(), draft.rules.to_string());
    }
}

#[test]
fn the_typical_balancer_is_neither_a_lot_nor_a_food() {
    let typical = cases()
        .into_iter()
        .find_map(|(_, plan)| {
            let balancer = plan.planned().buckets.first()?.clone();
            balancer.typical.then_some((balancer, plan))
        })
        .unwrap();
    let (balancer, plan) = typical;
    let issued = PlanV1::of(&plan, &[], None).unwrap();
    let amount = issued.amounts.last().unwrap();
    assert_eq!((&amount.lot, &amount.food), (&None, &None));
    assert_eq!(amount.as_fed_g.as_fed(), balancer.dose.a_day);
    assert_eq!(
        amount.feeds.map(Count::get),
        balancer.dose.feeds.map(i64::from)
    );
}

#[test]
fn a_plan_is_stored_and_read_back_with_its_inputs() {
    let (case, plan) = cases().remove(2);
    let inputs = [(RecordId("moss-tape".to_owned()), stamp())];
    let by = Some(PersonId("keeper".to_owned()));
    let issued = PlanV1::of(&plan, &inputs, by.clone()).unwrap();
    let yard = case.log.current().next().unwrap().yard.clone();
    let origin = Origin {
        yard,
        subject: Subject::animal(&plan.planned().animal.id),
        at: case.now,
        offset_min: 60,
        zone: "Europe/London".to_owned(),
        by,
        known: Known::Seen,
    };
    let body = Body::Plan(issued);
    let record = Record::new(RecordId("plan-1".to_owned()), origin, stamp(), &body).unwrap();
    let text = record.to_text().unwrap();
    let read = Record::from_text(&text).unwrap();
    assert_eq!(Body::read(&read).unwrap(), body);
}
