//! A soak is never taken for granted, and nets that are filled keep their filling when the day is laid out anew.

use super::*;
use crate::routes::Route;
use crate::views::nets::Mending;
use crate::views::round::{route, waits_for_water};
use tussock_core::log::bodies::DayRelaidV1;

#[test]
fn a_net_that_is_not_soaked_yet_is_not_ticked_and_opens_the_soaks() {
    let words = English::default();
    let mut yard_of = bramble();
    let now = at(5, "07:20:00");
    let today = yard_of.today(now);
    let mut jobs = today.round.jobs.iter();
    let hang = jobs
        .find(|job| job.kind == JobKind::HangNet)
        .unwrap()
        .clone();
    assert!(hang.soaked && waits_for_water(&hang) && !ticks(&hang));
    assert_eq!(route(&hang), Route::Soaks);
    assert!(words.job_of(&hang).contains("to be soaked first"));
    let (shelf, of) = (yard_of.shelf.clone(), yard());
    let ticking = Ticking {
        shelf: &shelf,
        today: &today,
        yard: &of,
        tub_name: &|nth| words.tub_name(nth),
    };
    let ticked = ticking.tick(&hang, &mut || "x".into());
    assert_eq!(ticked, Err(Refused::OwnScreen));
    // "All as planned" has nothing to answer here, and says of what it answers that these are left out.
    assert_eq!(today.visit(), None);
    let visit = hang.visit.unwrap();
    assert_eq!(
        (today.as_planned(visit).len(), today.left_out(visit)),
        (0, 2)
    );
    let act = ticking.as_planned(visit, &mut || "x".into()).unwrap();
    assert_eq!(act, Act::All(Vec::new()));
    assert_eq!(
        words.left_out(2),
        "Without 2 nets that are not soaked yet: start the soak, or say why not"
    );
    // Once it is in the water it is a net like any other.
    yard_of.tick(at(5, "07:21:00"), JobKind::StartSoak);
    let today = yard_of.today(at(5, "08:40:00"));
    let mut jobs = today.round.jobs.iter();
    let hang = jobs.find(|job| job.kind == JobKind::HangNet).unwrap();
    assert!(ticks(hang) && !waits_for_water(hang));
}

#[test]
fn a_filled_net_says_what_to_take_out_or_put_in_and_keeps_its_filling() {
    let words = English::default();
    let mut yard_of = bramble();
    let early = at(5, "05:50:00");
    for _ in 0..4 {
        yard_of.weigh(early, "4.35");
    }
    let plan = match yard_of
        .shelf
        .bodies(&tussock_core::log::Kind::Plan)
        .remove(0)
        .1
    {
        Body::Plan(plan) => plan,
        other => panic!("{other:?}"),
    };
    // The morning was missed: nothing hangs then, and the evening has 5.0 and 3.0 kg instead of twice 3.6.
    let mut nets = plan.nets.clone();
    for (net, g) in nets.iter_mut().zip([0, 0, 5_000, 3_000]) {
        net.as_fed_g = FeedGrams::new(g).unwrap();
    }
    let body = DayRelaidV1 {
        plan: RecordId("plan".into()),
        day: "2026-05-05".parse().unwrap(),
        nets,
    };
    let about = Subject::animal(&AnimalId("bramble".into()));
    let now = at(5, "17:50:00");
    yard_of.add(now, "relaid", about, Body::DayRelaid(body));
    let day = yard_of.nets(now);
    assert_eq!(day.nets.len(), 2);
    let mending: Vec<Option<Mending>> = day
        .nets
        .iter()
        .map(super::super::nets::DayNet::mending)
        .collect();
    assert!(
        matches!(mending[..], [Some(Mending::PutIn(more)), Some(Mending::TakeOut(out))]
        if (kg(more) - 1.4).abs() < 1e-9 && (kg(out) - 0.6).abs() < 1e-9)
    );
    assert_eq!(
        words.anew_reading(&day.nets[0]),
        "5.00 hay + 0.75 net, a default. Filled already: put in 1.40 kg"
    );
    // Nothing was touched: the fillings are what they were, until one is weighed anew.
    let fillings = |yard_of: &Yard| {
        yard_of
            .shelf
            .of_kind(&tussock_core::log::Kind::NetFilled)
            .len()
    };
    assert_eq!(fillings(&yard_of), 4);
    yard_of.weigh(now, "5.75");
    assert_eq!(fillings(&yard_of), 4);
    let day = yard_of.nets(now);
    assert!(matches!(day.nets[0].state, NetState::Weighed(hay) if (kg(hay) - 5.0).abs() < 1e-9));
    assert_eq!(day.nets[0].mending(), None);
    // The jobs keep their names, and tomorrow is the plan again.
    let today = yard_of.today(now);
    assert!(today.job(&day.nets[0].key).is_some());
    let tomorrow = nets_day(
        &yard_of.shelf,
        &today,
        "bramble",
        "2026-05-06".parse().unwrap(),
    );
    assert_eq!(tomorrow.unwrap().nets.len(), 4);
}
