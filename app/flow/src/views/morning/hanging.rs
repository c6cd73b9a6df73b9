//! What hangs: what was left of it, and how long it took.

use super::*;
use crate::forms::hanging::{
    Wrong as Refusal, by_eye, eaten_up, hardly_touched, weighed as weigh_back,
};
use crate::views::hanging::{Hanging, hanging};
use crate::words::HangingWords;
use tussock_core::day::{DayError, Timed};
use tussock_core::log::bodies::Quarters;
use tussock_core::log::{Kind as Records, left_of};
use tussock_core::plan::Soaked;

fn of_bramble(yard: &Yard, now: Instant) -> Hanging {
    hanging(&yard.shelf, &yard.today(now), "bramble", &zone()).unwrap()
}

/// Bramble's dry nets of 18:00 filled, and the first of them hung at 18:00 of the day.
fn hung(yard_of: &mut Yard) {
    let morning = at(5, "05:40:00");
    let act = all_to_target(&yard_of.nets(morning), || yard_of.id()).unwrap();
    yard_of.act(morning, &act);
    yard_of.tick(at(5, "18:00:00"), JobKind::HangNet);
}

/// The dry net, whatever else hangs.
fn dry(of: &Hanging) -> &crate::views::hanging::HungNet {
    of.nets.iter().find(|net| !net.soaked).unwrap()
}

#[test]
fn a_net_is_timed_in_two_taps_and_the_plan_goes_by_it() {
    let mut yard_of = bramble();
    hung(&mut yard_of);
    let now = at(5, "21:30:00");
    let of = of_bramble(&yard_of, now);
    let net = dry(&of);
    assert!(net.can_be_timed());
    let act = eaten_up(&of.about, net, now, false, || yard_of.id()).unwrap();
    yard_of.act(now, &act);
    let after = of_bramble(&yard_of, now);
    assert!(after.nets.iter().all(|left| left.id != net.id));
    let eats = after.eats.unwrap();
    // 3.60 kg at the default 88 % in 3.5 h.
    let rate = eats.own_rate(false).unwrap();
    assert!((rate.likely - 3.6 * 0.88 / 3.5).abs() < 1e-9, "{rate:?}");
    assert!(eats.own_rate(true).is_none());
    let records: Vec<&Record> = yard_of.shelf.records().collect();
    let gathered = tussock_core::log::gather(
        &records,
        &AnimalId("bramble".into()),
        now,
        &zone(),
        &tussock_core::log::Wish::default(),
    )
    .unwrap();
    assert_eq!(gathered.net.timed.as_ref(), Some(rate));
    assert_eq!(gathered.net.timed_soaked, None);
    // The published rate no longer stands in, and what soaked hay takes is not taken from dry hay's slow end.
    let body = tussock_core::units::BodyMass::kg(300.0);
    assert_eq!(gathered.net.rate(body, Soaked::None), *rate);
    let published = tussock_core::day::rate(body, gathered.net.kind);
    let wet = gathered.net.rate(body, Soaked::All);
    assert!(wet.slow <= published.slow && wet.fast >= rate.fast);
    let said = English::default().eats(&eats, false).unwrap();
    assert!(said.ends_with("by 1 net timed"), "{said}");
}

#[test]
fn a_net_that_was_found_empty_says_how_fast_at_least_and_gives_no_rate() {
    let mut yard_of = bramble();
    hung(&mut yard_of);
    let now = at(6, "07:00:00");
    let of = of_bramble(&yard_of, now);
    // Said as seen, but thirteen hours after it was hung: a night lies between.
    let act = eaten_up(&of.about, dry(&of), now, false, || yard_of.id()).unwrap();
    yard_of.act(now, &act);
    let eats = of_bramble(&yard_of, now).eats.unwrap();
    assert!(eats.own_rate(false).is_none());
    let timed = &eats.timed[0];
    assert!(matches!(timed.says, Some(Ok(Timed::AtLeast { .. }))));
    let words = English::default();
    let line = words.timed_line(timed, "2026-05-06".parse().unwrap(), &zone());
    assert!(
        line.contains("at most 13 h") && line.contains("No rate"),
        "{line}"
    );
    assert!(words.eats(&eats, false).unwrap().contains("at least"));
}

#[test]
fn a_net_that_cannot_have_been_eaten_so_fast_is_not_timed() {
    let mut yard_of = bramble();
    hung(&mut yard_of);
    let now = at(5, "18:10:00");
    let of = of_bramble(&yard_of, now);
    let refused = eaten_up(&of.about, dry(&of), now, false, || yard_of.id());
    assert!(matches!(
        refused,
        Err(Refusal::Day(DayError::OutOfRange(_)))
    ));
}

#[test]
fn what_was_left_is_a_tap_and_its_dry_matter_is_a_band() {
    let mut yard_of = bramble();
    hung(&mut yard_of);
    let now = at(6, "07:00:00");
    let of = of_bramble(&yard_of, now);
    let act = by_eye(&of.about, dry(&of), Quarters::One, "left-1");
    yard_of.act(now, &act);
    assert!(of_bramble(&yard_of, now).nets.iter().all(|net| net.soaked));
    let records: Vec<&Record> = yard_of.shelf.records().collect();
    let (found, problems) = left_of(&records);
    assert!(problems.is_empty());
    let left = found[0].left.unwrap();
    assert!((left.likely.to_kg() - 3.6 * 0.88 / 4.0).abs() < 1e-9);
    assert!(left.least < left.likely && left.likely < left.most);
    assert_eq!(found[0].known, Known::Seen);
    assert!(hardly_touched(Quarters::Three) && !hardly_touched(Quarters::Two));
}

#[test]
fn soaked_hay_is_weighed_back_against_its_own_wet_weight_only() {
    let mut yard_of = bramble();
    let morning = at(5, "05:40:00");
    let act = all_to_target(&yard_of.nets(morning), || yard_of.id()).unwrap();
    yard_of.act(morning, &act);
    yard_of.tick(at(5, "06:00:00"), JobKind::StartSoak);
    yard_of.go_on(at(5, "07:05:00"));
    yard_of.go_on(at(5, "07:20:00"));
    let now = at(5, "12:00:00");
    let of = of_bramble(&yard_of, now);
    let net = of.nets.iter().find(|net| net.soaked).unwrap().clone();
    // 2.75 kg of 9.85 kg, a net of 0.75 kg off both: 2.0 of 9.1.
    assert!(matches!(
        weigh_back(&of.about, &net, "2.75", "", "left-1"),
        Err(Refusal::Hung(_))
    ));
    let act = weigh_back(&of.about, &net, "2.75", "9.85", "left-1").unwrap();
    yard_of.act(now, &act);
    let records: Vec<&Record> = yard_of.shelf.records().collect();
    let (found, problems) = left_of(&records);
    assert!(problems.is_empty());
    let part = found[0].part.unwrap();
    assert!((part.likely - 2.0 / 9.1).abs() < 1e-9);
    let (offered, left) = (found[0].offered.unwrap(), found[0].left.unwrap());
    // What went with the water is not offered.
    assert!(offered.likely.to_kg() < 3.6 * 0.88);
    assert!(left.most < offered.most);
    assert!(matches!(
        weigh_back(&of.about, &net, "9.9", "2.75", "left-2"),
        Err(Refusal::Day(DayError::MoreLeftThanHung))
    ));
}

#[test]
fn the_next_net_is_hung_here_and_the_one_before_is_asked_about() {
    let mut yard_of = bramble();
    hung(&mut yard_of);
    let now = at(5, "18:05:00");
    let of = of_bramble(&yard_of, now);
    assert_eq!(of.due.as_ref().unwrap().kind, JobKind::HangNet);
    yard_of.tick(now, JobKind::HangNet);
    let hung = yard_of.shelf.of_kind(&Records::NetHung).len();
    assert!(1 < hung);
    let of = of_bramble(&yard_of, now);
    assert!(of.nets.is_sorted_by_key(|net| net.at));
    assert_eq!(
        crate::views::hanging::all(&yard_of.shelf, &yard_of.today(now))[0].3,
        of.nets.len()
    );
    // A day and a half later nobody can say any more.
    assert!(of_bramble(&yard_of, at(7, "12:00:00")).nets.is_empty());
}

#[test]
fn a_net_that_was_only_taken_as_hung_keeps_that_of_what_was_left() {
    let mut yard_of = bramble();
    let morning = at(5, "05:40:00");
    let act = all_to_target(&yard_of.nets(morning), || yard_of.id()).unwrap();
    yard_of.act(morning, &act);
    let now = at(5, "18:00:00");
    let today = yard_of.today(now);
    let visit = today.visit().unwrap();
    let (shelf, subject) = (yard_of.shelf.clone(), yard());
    let act = Ticking {
        shelf: &shelf,
        today: &today,
        yard: &subject,
        tub_name: &|nth| English::default().tub_name(nth),
    }
    .as_planned(visit, &mut || yard_of.id())
    .unwrap();
    yard_of.act(now, &act);
    let of = of_bramble(&yard_of, now);
    let net = dry(&of);
    // Nobody saw it hung, so its end times nothing.
    assert!(!net.can_be_timed());
    let act = eaten_up(&of.about, net, at(5, "21:00:00"), false, || yard_of.id()).unwrap();
    yard_of.act(at(5, "21:00:00"), &act);
    assert!(yard_of.shelf.of_kind(&Records::NetTimed).is_empty());
    let records: Vec<&Record> = yard_of.shelf.records().collect();
    let (found, _) = left_of(&records);
    assert_eq!(found[0].known, Known::Assumed);
    assert_eq!(found[0].left.unwrap().most.to_kg(), 0.0);
}

#[test]
fn a_named_net_is_filled_then_hangs_then_is_empty() {
    use crate::views::net_list::{NetPlace, rows};
    let mut yard_of = bramble();
    let morning = at(5, "05:40:00");
    let about = Subject::animal(&AnimalId("bramble".into()));
    let act = own_weight(&about, None, "Bramble, net 3", "0.9", "net-3").unwrap();
    yard_of.act(morning, &act);
    let place = |yard_of: &Yard| rows(&yard_of.shelf)[0].place.clone();
    assert_eq!(place(&yard_of), NetPlace::NotKnown);
    let act = all_to_target(&yard_of.nets(morning), || yard_of.id()).unwrap();
    yard_of.act(morning, &act);
    assert!(matches!(place(&yard_of), NetPlace::Filled { whose, .. } if whose == "Bramble"));
    let evening = at(5, "18:00:00");
    yard_of.tick(evening, JobKind::HangNet);
    yard_of.tick(evening, JobKind::HangNet);
    assert!(matches!(place(&yard_of), NetPlace::Hangs { since, .. } if since == evening));
    let now = at(5, "21:00:00");
    let of = of_bramble(&yard_of, now);
    let net = of.nets.iter().find(|net| net.name.is_some()).unwrap();
    assert_eq!(net.own, Some(AsFed::kg(0.9)));
    let act = by_eye(&of.about, net, Quarters::None, "left-3");
    yard_of.act(now, &act);
    assert_eq!(place(&yard_of), NetPlace::Empty);
}
