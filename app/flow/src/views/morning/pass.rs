//! One pass with the scale over two animals and several days.

use super::*;
use crate::forms::nets::{nudge, pass_to_target};
use crate::views::nets::{Pass, pass};
use tussock_core::day::key_step;

/// Bramble with four nets and Moss with two dry ones at the same visits.
fn two() -> Yard {
    let mut yard_of = bramble();
    let start = at(4, "20:30:00");
    let id = AnimalId("moss".into());
    let of_bramble = yard_of.shelf.animal(&AnimalId("bramble".into())).unwrap();
    let animal = Animal {
        id: id.clone(),
        name: "Moss".into(),
        ..of_bramble
    };
    let body = Body::Animal(AnimalV2::of(&animal).unwrap());
    yard_of.add(start, "moss", Subject::animal(&id), body);
    let Ok(Body::Plan(mut plan)) = Body::read(yard_of.shelf.get("plan").unwrap()) else {
        panic!("no plan");
    };
    plan.nets = vec![plan.nets[1].clone(), plan.nets[3].clone()];
    for net in &mut plan.nets {
        net.soaked = false;
        net.as_fed_g = FeedGrams::new(2_250).unwrap();
    }
    yard_of.add(start, "plan-moss", Subject::animal(&id), Body::Plan(plan));
    yard_of
}

fn pass_of(yard: &Yard, now: Instant, ahead: usize) -> Pass {
    pass(&yard.shelf, &yard.today(now), None, ahead)
}

fn next(yard: &Yard, now: Instant) -> Option<(String, usize)> {
    let pass = pass_of(yard, now, 0);
    pass.next().map(|(day, nth, _)| (day.name.clone(), nth))
}

#[test]
fn all_that_hang_at_one_visit_are_weighed_together_whoever_they_are_for() {
    let mut yard_of = two();
    let now = at(5, "05:40:00");
    let mut order = Vec::new();
    while let Some((name, nth)) = next(&yard_of, now) {
        order.push(format!("{name} {nth}"));
        let pass = pass_of(&yard_of, now, 0);
        let (day, _, net) = pass.next().unwrap();
        let reading = format!("{:.2}", net.target().to_kg());
        let id = yard_of.id();
        let act = weighed(&day.about, net, &reading, &id).unwrap();
        yard_of.act(now, &act);
    }
    assert_eq!(
        order,
        [
            "Bramble 1",
            "Bramble 2",
            "Moss 1",
            "Bramble 3",
            "Bramble 4",
            "Moss 2"
        ]
    );
    let done = pass_of(&yard_of, now, 0);
    assert!(done.all_weighed() && done.only().is_none());
    let words = English::default();
    assert_eq!(words.pass_weighed(1), "All nets are filled today");
    assert_eq!(
        words.weighed_of(done.weighed(), done.count(), done.hay(), &words.for_days(1)),
        "6 of 6 weighed, 18.9 of 18.9 kg hay today"
    );
}

#[test]
fn filled_to_target_for_a_pass_is_the_same_as_one_by_one() {
    let now = at(5, "05:40:00");
    let (mut at_once, mut one_by_one) = (two(), two());
    let act = pass_to_target(&pass_of(&at_once, now, 0), || at_once.id()).unwrap();
    at_once.act(now, &act);
    while let Some((day, _, net)) = pass_of(&one_by_one, now, 0).next() {
        let single = NetsDay {
            nets: vec![net.clone()],
            ..day.clone()
        };
        let act = all_to_target(&single, || one_by_one.id()).unwrap();
        one_by_one.act(now, &act);
    }
    let bodies = |yard: &Yard| {
        let mut found: Vec<String> = yard
            .shelf
            .bodies(&tussock_core::log::Kind::NetFilled)
            .into_iter()
            .map(|(record, body)| format!("{:?} {:?} {body:?}", record.subject, record.known))
            .collect();
        found.sort();
        found
    };
    assert_eq!(bodies(&at_once).len(), 6);
    assert_eq!(bodies(&at_once), bodies(&one_by_one));
    assert_eq!(pass_of(&at_once, now, 0), pass_of(&one_by_one, now, 0));
}

#[test]
fn a_sunday_fills_the_nets_of_several_days_in_one_pass() {
    let mut yard_of = two();
    let now = at(5, "05:40:00");
    let week = pass_of(&yard_of, now, 2);
    assert_eq!((week.count(), week.to_weigh()), (18, 18));
    let days: Vec<_> = week.order().iter().map(|(day, _, _)| day.day).collect();
    assert!(days.is_sorted());
    let act = pass_to_target(&week, || yard_of.id()).unwrap();
    yard_of.act(now, &act);
    assert!(pass_of(&yard_of, now, 2).all_weighed());
    assert_eq!(pass_of(&yard_of, now, 3).to_weigh(), 6);
    // Tomorrow they are in stock.
    assert_eq!(pass_of(&yard_of, at(6, "05:40:00"), 0).to_weigh(), 0);
}

#[test]
fn a_key_of_a_step_goes_from_the_target_and_back() {
    let yard = two();
    let pass = pass_of(&yard, at(5, "05:40:00"), 0);
    let (_, _, net) = pass.next().unwrap();
    let more = nudge(net, "", key_step(), 1).unwrap();
    assert_eq!(kg(more), 4.45);
    let back = nudge(net, &format!("{:.2}", more.to_kg()), key_step(), -1).unwrap();
    assert_eq!(kg(back), kg(net.target()));
    assert!(nudge(net, "4.3.5", key_step(), 1).is_err());
}

#[test]
fn what_to_take_out_is_told_in_slices_where_their_weight_is_known() {
    let mut yard_of = two();
    let now = at(5, "05:40:00");
    let words = English::default();
    let says = |yard: &Yard, reading: f64| {
        let pass = pass_of(yard, now, 0);
        let (_, _, net) = pass.next().unwrap();
        words.on_scale_in(net.judge(AsFed::kg(reading)), net.slice)
    };
    assert_eq!(says(&yard_of, 5.35), "1.00 kg over. Take out some");
    let mut lot = LotV1::of_class("Lane field", ForageClass::Meadow).unwrap();
    let slice = FeedGrams::new(1_000).unwrap();
    lot.slice = Some(tussock_core::log::bodies::base::FeedWeight {
        g: slice,
        typed: None,
    });
    let act = Act::Change {
        id: RecordId("lane-field".into()),
        body: Body::Lot(lot),
        at: None,
    };
    yard_of.act(now, &act);
    assert_eq!(says(&yard_of, 5.35), "1.00 kg over. Take out 1 slice");
    assert_eq!(says(&yard_of, 3.85), "0.50 kg short. Put in half a slice");
    assert_eq!(says(&yard_of, 6.35), "2.00 kg over. Take out 2 slices");
    assert_eq!(says(&yard_of, 4.52), "0.17 kg over. Take out a handful");
    assert_eq!(says(&yard_of, 4.35), "Within 50 g");
}
