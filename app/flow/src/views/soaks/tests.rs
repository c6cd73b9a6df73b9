//! A morning on which hay is not soaked, and one with two tubs at once.

use super::*;
use crate::acts::Act;
use crate::forms::round::Ticking;
use crate::forms::soaks::{TubForm, TubWrong, not_soaked, soaked_after_all};
use crate::forms::tub as soaking;
use crate::shelf::Shelf;
use crate::views::last_step::{Step, last_step};
use crate::views::morning::{Yard, at, bramble, kg, yard, zone};
use crate::views::nets::NetState;
use crate::words::{English, NetsWords, SoakWords, SoaksWords, TubWords, UnitWords};
use tussock_core::forage::Verdict;
use tussock_core::log::bodies::{JobAnswer, TubV1};
use tussock_core::log::{Kind, Known, Subject as About};
use tussock_core::soak::{Air, NotSoaked, Water};
use tussock_core::units::{BodyMass, DryFraction, PartOfBody, Span, show};

fn seen(yard_of: &Yard, now: Instant) -> Soaks {
    soaks(&yard_of.shelf, &yard_of.today(now))
}

fn leave_out(yard_of: &mut Yard, now: Instant, why: NotSoaked) {
    let job = seen(yard_of, now).planned[0].job.clone();
    let act = not_soaked(&job, why, &yard_of.id()).unwrap();
    yard_of.act(now, &act);
}

fn add_tub(yard_of: &mut Yard, id: &str, name: &str, capacity: &str) {
    let form = TubForm {
        name: name.to_owned(),
        capacity: capacity.to_owned(),
    };
    let act = form.act(&yard(), id, None).unwrap();
    yard_of.act(at(4, "21:00:00"), &act);
}

fn start(yard_of: &mut Yard, now: Instant, place: usize) {
    let today = yard_of.today(now);
    let load = soaks(&yard_of.shelf, &today).loads[place].clone();
    let (shelf, of) = (yard_of.shelf.clone(), yard());
    let act = Ticking {
        shelf: &shelf,
        today: &today,
        yard: &of,
        tub_name: &|nth| English::default().tub_name(nth),
    }
    .start_tub(&load, &mut || yard_of.id())
    .unwrap();
    yard_of.act(now, &act);
}

#[test]
fn one_tap_on_the_reason_gives_the_lighter_reading_and_what_to_take_out() {
    let words = English::default();
    let mut yard_of = bramble();
    let early = at(5, "05:50:00");
    // One net of the two was weighed to be soaked.
    yard_of.weigh(early, "4.35");
    let six = at(5, "06:05:00");
    let planned = &seen(&yard_of, six).planned[0];
    assert_eq!(
        words.not_soaked_today(&planned.job, yard_of.today(six).day),
        "Not soaked today: Bramble, for 07:20"
    );
    leave_out(&mut yard_of, six, NotSoaked::Frozen);
    let after = seen(&yard_of, six);
    assert!(after.loads.is_empty() && after.planned.is_empty());
    assert_eq!(words.soaks_stand(&after), "2 nets not soaked");
    let (of, hang) = after.lighter().unwrap();
    // 3.60 before soaking less 5.8 % is 3.40, and the net weighs 0.75.
    assert_eq!(words.feed_number(hang.net.target()), "4.15");
    assert_eq!(
        words.dry_visit(of, yard_of.today(six).day),
        "Bramble, for 07:20: frozen"
    );
    assert_eq!(
        words.dry_reading(&hang.net),
        "3.40 hay + 0.75 net, a default. Weighed already: take out 0.20 kg"
    );
    assert_eq!(
        words.dry_reading(&of.nets[1].net),
        "3.40 hay + 0.75 net, a default"
    );

    // Weighed anew, it takes the place of what was weighed before.
    let day = yard_of.nets(six);
    assert_eq!(day.next().unwrap().0, 1);
    assert_eq!(day.next().unwrap().1.state, NetState::ToWeigh);
    yard_of.weigh(six, "4.15");
    assert_eq!(yard_of.shelf.of_kind(&Kind::NetFilled).len(), 1);
    let again = seen(&yard_of, six);
    assert_eq!(
        words.dry_reading(&again.dry[0].nets[0].net),
        "3.40 hay + 0.75 net, a default. Weighed for it already"
    );

    // What is written at hanging says so.
    yard_of.tick(at(5, "07:20:00"), JobKind::HangNet);
    let hung = yard_of.shelf.bodies(&Kind::NetHung);
    let Body::NetHung(body) = &hung[0].1 else {
        panic!("not hung")
    };
    assert_eq!(body.not_soaked, Some(NotSoaked::Frozen));
    assert_eq!(body.soak, None);
    assert!((kg(body.hay.as_ref().unwrap().g.as_fed()) - 3.4).abs() < 1e-9);
}

#[test]
fn a_net_weighed_to_be_soaked_is_hung_as_light_as_the_job_says() {
    let mut yard_of = bramble();
    yard_of.weigh(at(5, "05:50:00"), "4.35");
    leave_out(&mut yard_of, at(5, "06:05:00"), NotSoaked::NoTime);
    yard_of.tick(at(5, "07:20:00"), JobKind::HangNet);
    let hung = yard_of.shelf.bodies(&Kind::NetHung);
    let Body::NetHung(body) = &hung[0].1 else {
        panic!("not hung")
    };
    assert!(body.filling.is_some());
    assert!((kg(body.hay.as_ref().unwrap().g.as_fed()) - 3.4).abs() < 1e-9);
}

#[test]
fn what_was_left_out_is_soaked_after_all() {
    let mut yard_of = bramble();
    let six = at(5, "06:05:00");
    leave_out(&mut yard_of, six, NotSoaked::HoseBan);
    let jobs = yard_of.shelf.bodies(&Kind::Job);
    assert!(matches!(&jobs[0].1, Body::Job(body)
        if body.answer == JobAnswer::NotDone && body.not_soaked == Some(NotSoaked::HoseBan)));
    assert_eq!(jobs[0].0.known, Known::Seen);
    // Much later than ten seconds.
    let later = at(5, "06:30:00");
    let start = seen(&yard_of, later).dry[0].said.start.clone();
    let act = soaked_after_all(&yard_of.today(later), &start);
    yard_of.act(later, &act);
    let after = seen(&yard_of, later);
    assert!(after.dry.is_empty());
    assert_eq!(after.planned.len(), 1);
    assert_eq!(kg(after.loads[0].load.hay), 7.2);
}

#[test]
fn the_dry_hays_own_verdict_stands_where_it_is_decided() {
    let words = English::default();
    let yard_of = bramble();
    let planned = &seen(&yard_of, at(5, "06:05:00")).planned[0];
    // Nobody knows whether Bramble is at risk: meadow hay by its class is not proven.
    let sugar = &planned.sugar[0];
    assert!(matches!(sugar.judgement.verdict, Verdict::NotProven { .. }));
    let said = words.dry_sugar(sugar);
    assert!(
        said.sentence.starts_with("Dry, Lane field is not proven")
            && said
                .sentence
                .ends_with("for Bramble. Give less grass, or have it tested, or feed another lot"),
        "{}",
        said.sentence
    );
    assert!(!sugar.ways_out.contains(&WayOut::Soak));
}

#[test]
fn two_tubs_at_once_are_two_jobs_and_each_is_one_tap() {
    let words = English::default();
    let mut yard_of = bramble();
    add_tub(&mut yard_of, "tub-a", "Tub 1", "4");
    add_tub(&mut yard_of, "tub-b", "Tub 2", "5");
    let six = at(5, "06:05:00");
    let today = yard_of.today(six).day;
    let list = seen(&yard_of, six);
    assert_eq!(words.soaks_stand(&list), "2 tubs to start");
    assert_eq!(words.load_tub(&list.loads[0]), "Tub 1");
    assert_eq!(
        words.load_times(&list.loads[0], today, &zone()),
        "Goes in at 06:05, lift out at 07:05, for 07:20"
    );
    assert_eq!(
        words.load_part(&list.loads[0].load.parts[0]),
        "Bramble: 1 net, 3.60 kg"
    );
    assert_eq!(
        words.load_hay(&list.loads[0]),
        "3.60 of 4.00 kg this tub holds"
    );
    start(&mut yard_of, six, 0);
    // The rest is still to be started, in the other tub.
    let rest = seen(&yard_of, six);
    assert_eq!(rest.loads.len(), 1);
    assert_eq!(words.start_tub(&rest.loads[0]), "Start tub 2");
    assert_eq!(kg(rest.planned[0].job.amount.unwrap()), 3.6);
    start(&mut yard_of, at(5, "06:06:00"), 0);
    assert!(seen(&yard_of, at(5, "06:07:00")).loads.is_empty());
    let due = at(5, "07:06:00");
    let lifts = yard_of.today(due).round.jobs;
    let lifts: Vec<_> = lifts
        .iter()
        .filter(|job| job.kind == JobKind::LiftOut)
        .collect();
    assert_eq!(lifts.len(), 2);
    assert_ne!(lifts[0].tub, lifts[1].tub);
    // Each net comes out of its own.
    let hangs = yard_of.today(due).round.jobs;
    let mut from: Vec<_> = hangs
        .iter()
        .filter(|job| job.kind == JobKind::HangNet)
        .filter_map(|job| job.tub_name.clone())
        .collect();
    from.sort();
    assert_eq!(from, ["Tub 1", "Tub 2"]);
}

#[test]
fn every_step_of_a_soak_is_taken_back_however_late() {
    let words = English::default();
    let mut yard_of = bramble();
    start(&mut yard_of, at(5, "06:05:00"), 0);
    let soak = yard_of.today(at(5, "06:06:00")).due.soaks[0].id.clone();
    let id = TubId(soak.0.clone());
    let last = |yard_of: &Yard, now| last_step(&yard_of.shelf, &yard_of.today(now), &id);
    assert_eq!(last(&yard_of, at(5, "06:06:00")), None);
    let times = ["07:06:00", "07:22:00", "17:00:00"];
    let steps = [Step::Lifted, Step::Fed, Step::ThrownAway];
    for (time, step) in times.into_iter().zip(steps) {
        yard_of.go_on(at(5, time));
        assert_eq!(last(&yard_of, at(5, time)).unwrap().step, step);
    }
    let evening = at(5, "17:30:00");
    let jobs = |yard_of: &Yard, kind| {
        let jobs = yard_of.today(evening).round.jobs;
        jobs.iter()
            .filter(|job| job.kind == kind && job.soak.as_ref() == Some(&soak))
            .count()
    };
    assert_eq!(jobs(&yard_of, JobKind::ThrowAway), 0);
    let gone = last(&yard_of, evening).unwrap();
    assert_eq!(
        words.take_back(&gone, &zone()),
        "Not thrown away at 17:00 after all"
    );
    yard_of.act(evening, &gone.back());
    assert_eq!(jobs(&yard_of, JobKind::ThrowAway), 1);
    assert_eq!(yard_of.shelf.of_kind(&Kind::NetHung).len(), 2);
    let fed = last(&yard_of, evening).unwrap();
    yard_of.act(evening, &fed.back());
    // The nets that went with it hang no longer, and wait again.
    assert!(yard_of.shelf.of_kind(&Kind::NetHung).is_empty());
    let lifted = last(&yard_of, evening).unwrap();
    yard_of.act(evening, &lifted.back());
    assert_eq!(last(&yard_of, evening), None);
    assert_eq!(jobs(&yard_of, JobKind::LiftOut), 1);
    // Stopped by mistake, it goes on too.
    let stopped = soaking::stop(&yard_of.soak(evening), "stop").unwrap();
    yard_of.act(evening, &stopped);
    assert!(yard_of.today(evening).due.soaks.is_empty());
    let stop = last(&yard_of, evening).unwrap();
    assert_eq!(stop.step, Step::Stopped);
    yard_of.act(evening, &stop.back());
    assert_eq!(yard_of.today(evening).due.soaks.len(), 1);
}

#[test]
fn a_tub_has_a_name_and_may_say_what_it_holds() {
    let form = |name: &str, capacity: &str| TubForm {
        name: name.to_owned(),
        capacity: capacity.to_owned(),
    };
    assert_eq!(form(" ", "").act(&yard(), "a", None), Err(TubWrong::NoName));
    assert_eq!(
        form("Tub", "0").act(&yard(), "a", None),
        Err(TubWrong::NoRoom)
    );
    assert!(matches!(
        form("Tub", "x").act(&yard(), "a", None),
        Err(TubWrong::Parse(_))
    ));
    let mut yard_of = bramble();
    add_tub(&mut yard_of, "tub-a", "By the tap", "15");
    let room = &rooms(&yard_of.shelf)[0];
    assert_eq!(room.capacity.map(kg), Some(15.0));
    let there = |shelf: &Shelf| -> TubV1 {
        match Body::read(shelf.get("tub-a").unwrap()) {
            Ok(Body::Tub(body)) => body,
            other => panic!("{other:?}"),
        }
    };
    let held = there(&yard_of.shelf);
    let act = form("By the gate", "")
        .act(&yard(), "tub-a", Some(&held))
        .unwrap();
    assert!(matches!(act, Act::Change { .. }));
    yard_of.act(at(5, "05:00:00") + Span::ZERO, &act);
    let now = there(&yard_of.shelf);
    assert_eq!((now.name.as_str(), now.capacity), ("By the gate", None));
    let words = English::default();
    assert_eq!(
        words.tub_water(AsFed::kg(15.0)),
        "For 15.00 kg of hay: 150 to 225 l of water, fresh each time."
    );
    assert_eq!(words.net_name("Bramble", 2), "Bramble, net 2");
}

/// Argo 2015: a ration weighed at 1.25 % of body mass before an overnight soak was 1.0 % fed.
#[test]
fn what_is_weighed_at_one_and_a_quarter_before_an_overnight_soak_shows_as_the_one_it_is() {
    let words = English::default();
    let mut yard_of = bramble();
    let evening = at(5, "20:00:00");
    let dry = DryFraction::percent(88.0).unwrap();
    let body = BodyMass::kg(300.0);
    let weighed = PartOfBody::percent(1.25).of(body).as_fed(dry);
    let soak = soaking::Start {
        about: About::animal(&AnimalId("bramble".into())),
        tub: soaking::InTub::New {
            id: "tub-night".into(),
            name: "Tub 1".into(),
        },
        lot: Some(LotId("lane-field".into())),
        hay: String::new(),
        amount: Some(weighed),
        water: Water::TapWinter,
        minutes: "960".into(),
        job: None,
    };
    // Only with air under 16 degrees.
    assert!(soak.act(&yard(), Air::Mild, "night").is_err());
    let act = soak.act(&yard(), Air::Under16, "night").unwrap();
    yard_of.act(evening, &act);
    let tub = yard_of.soak(evening);
    assert_eq!(
        words.feeds_like(tub.soak.hay.unwrap(), tub.like),
        "4.3 kg before soaking, feeds like about 3.5"
    );
    let eaten = tub.like.unwrap().dry(dry).part_of(body);
    assert_eq!(words.level(eaten), "1.02 % of its weight");
    assert_eq!(show::fixed(eaten.to_percent(), 1), "1.0");
    assert_eq!(
        words.level(weighed.dry(dry).part_of(body)),
        "1.25 % of its weight"
    );
    let lost = words.dry_loss(&tub.dry_lost).sentence;
    assert!(
        lost.starts_with("About 18") || lost.starts_with("About 19"),
        "{lost}"
    );
}
