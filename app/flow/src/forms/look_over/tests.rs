//! What becomes of a look-over.

use super::*;
use crate::views::test_yard::{animal, at};
use tussock_core::animal::Laminitis;
use tussock_core::animal::{Appetite, Handful, VetFlag};
use tussock_core::safety::{Refusal, VetUrgency};
use tussock_core::units::{LocalDate, Span, Zone};

fn today() -> LocalDate {
    "2026-05-05".parse().unwrap()
}

fn texts(pairs: &'static [(&'static str, &'static str)]) -> impl Fn(&str) -> String {
    |field| {
        pairs
            .iter()
            .find(|(name, _)| *name == field)
            .map(|(_, text)| (*text).to_owned())
            .unwrap_or_default()
    }
}

/// What stops an animal by signs and health alone.
fn stop(animal: &Animal, health: &Health, signs: Signs, now: Instant) -> Option<Stop> {
    seen_now(health, &signs, &AtRest::default(), now).stop(animal)
}

fn seen_now<'a>(
    health: &'a Health,
    signs: &'a Signs,
    at_rest: &'a AtRest,
    now: Instant,
) -> SeenNow<'a> {
    SeenNow {
        health,
        signs,
        at_rest,
        day: today(),
        now,
    }
}

#[test]
fn lines_left_alone_were_not_looked_at() {
    let seen = signs(texts(&[("gait", "no"), ("strong_pulse", "not")]));
    assert_eq!(seen.gait, Answer::No);
    assert_eq!(seen.clean(), Answer::NotKnown);
    assert_eq!(all_normal().clean(), Answer::Yes);
}

#[test]
fn any_sign_is_for_the_vet_and_a_warm_hoof_alone_is_looked_at_again() {
    let moss = animal("moss");
    let seen = |texts: &'static [(&str, &str)]| signs(self::texts(texts));
    let stops = |signs: Signs, animal: &Animal| stop(animal, &animal.health, signs, at(0));
    assert!(matches!(
        stops(seen(&[("strong_pulse", "yes")]), &moss),
        Some(Stop::Vet(Refusal::LaminitisSign, VetUrgency::Today))
    ));
    let warm = seen(&[("warm", "yes")]);
    assert_eq!(stops(warm, &moss), Some(Stop::LookAgain));
    let mut before = moss.clone();
    before.health.laminitis = Laminitis::Ever { last: None };
    assert!(matches!(
        stops(warm, &before),
        Some(Stop::Vet(
            Refusal::WarmHoofAfterLaminitis,
            VetUrgency::Today
        ))
    ));
    assert_eq!(stops(all_normal(), &before), None);
}

#[test]
fn flags_are_put_on_and_taken_off_and_the_rest_stays() {
    let mut held = animal("moss").health;
    held.flags = vec![VetFlag::PainRelief, VetFlag::FootsoreAfterTrims];
    let said = health(
        &held,
        texts(&[("pain_relief", "no"), ("grain", "yes")]),
        at(0),
        today(),
    );
    assert_eq!(
        said.flags,
        [
            VetFlag::FootsoreAfterTrims,
            VetFlag::GotAtGrain { at: at(0) }
        ]
    );
    assert_eq!(health(&held, texts(&[]), at(0), today()), held);
}

struct Utc;

impl Zone for Utc {
    fn offset_min(&self, _: Instant) -> i32 {
        0
    }
}

#[test]
fn what_came_again_today_has_the_day_of_today() {
    let first: LocalDate = "2026-04-20".parse().unwrap();
    let mut held = animal("moss").health;
    held.flags = vec![
        VetFlag::Corticosteroid { last: first },
        VetFlag::TrimmedOrShod { on: first },
        VetFlag::GotAtGrain {
            at: at(0) - Span::hours(48),
        },
    ];
    assert_eq!(Flag::Corticosteroid.day(&held, &Utc), Some(first));
    let said = texts(&[("steroid", AGAIN), ("trimmed", "yes"), ("grain", AGAIN)]);
    let health = health(&held, said, at(0), today());
    assert_eq!(
        health.flags,
        [
            // On already: a key that was put off and on again says nothing new.
            VetFlag::TrimmedOrShod { on: first },
            VetFlag::GotAtGrain { at: at(0) },
            VetFlag::Corticosteroid { last: today() },
        ]
    );
    assert_eq!(Flag::Corticosteroid.day(&health, &Utc), Some(today()));
    assert_eq!(
        Flag::GotAtGrain.day(&health, &Utc),
        Some(Utc.to_local(at(0)).date)
    );
    assert_eq!(Flag::Lame.day(&health, &Utc), None);
}

#[test]
fn grain_again_is_news_and_stops_it_at_once() {
    let mut moss = animal("moss");
    moss.health.flags = vec![VetFlag::GotAtGrain {
        at: at(0) - Span::hours(48),
    }];
    let again = health(&moss.health, texts(&[("grain", AGAIN)]), at(0), today());
    assert!(stop(&moss, &moss.health, all_normal(), at(0)).is_none());
    assert!(stop(&moss, &again, all_normal(), at(0)).is_some());
}

#[test]
fn off_its_feed_is_counted_from_when_it_was_said_and_a_refusing_pony_is_for_the_vet_now() {
    let moss = animal("moss");
    let said = texts(&[
        ("eating", "no"),
        ("last_eating", "half"),
        ("last_eating_from", "1777978800000"),
        ("handful", "refused"),
    ]);
    let off = health(&moss.health, said, at(1), today());
    assert_eq!(
        off.appetite,
        Appetite::Off {
            last_seen_eating: Some(at(0) - Span::hours(6)),
            handful: Handful::Refused,
            dull: Answer::NotKnown,
        }
    );
    assert!(matches!(
        stop(&moss, &off, Signs::default(), at(0)),
        Some(Stop::Vet(Refusal::OffFeed { .. }, VetUrgency::Now))
    ));
}

#[test]
fn one_batch_holds_the_look_over_and_the_health_that_changed() {
    let moss = animal("moss");
    let held = AnimalV2::of(&moss).unwrap();
    let count_with =
        |health, measured| match act(&moss, &held, &all_normal(), health, measured, "l1") {
            Act::All(acts) => acts.len(),
            _ => 0,
        };
    let count = |health| count_with(health, None);
    assert_eq!(count(moss.health.clone()), 1);
    let measured = readings(texts(&[("temperature", "38")])).unwrap();
    assert_eq!(count_with(moss.health.clone(), measured), 2);
    let mut lame = moss.health.clone();
    lame.flags.push(VetFlag::Lame);
    assert_eq!(count(lame), 2);
}

#[test]
fn a_fever_typed_beside_clean_lines_is_rung_about_at_once() {
    let moss = animal("moss");
    let stop_at = |text: &'static [(&str, &str)]| {
        let at_rest = at_rest(texts(text), today(), at(0));
        seen_now(&moss.health, &all_normal(), &at_rest, at(0)).stop(&moss)
    };
    assert!(matches!(
        stop_at(&[("temperature", "39,4")]),
        Some(Stop::Vet(
            Refusal::FarOverUsual {
                vital: Vital::Temperature,
                ..
            },
            VetUrgency::Now
        ))
    ));
    assert_eq!(stop_at(&[("temperature", "38.0"), ("pulse", "40")]), None);
    // Half a number stops nothing, and is named when it is to be saved.
    assert_eq!(stop_at(&[("temperature", "3")]), None);
    assert!(matches!(
        readings(texts(&[("temperature", "3"), ("breaths", "12")])),
        Err(wrong) if matches!(wrong.as_slice(), [(Vital::Temperature, _)])
    ));
    assert_eq!(readings(texts(&[])), Ok(None));
}

#[test]
fn grain_stops_it_before_any_sign_and_with_every_line_normal() {
    let moss = animal("moss");
    for flag in Flag::AT_ONCE {
        let said = |field: &str| if field == flag.field() { "yes" } else { "" }.to_owned();
        let health = health(&moss.health, said, at(0), today());
        assert!(matches!(
            stop(&moss, &health, all_normal(), at(0)),
            Some(Stop::Vet(_, VetUrgency::Now))
        ));
    }
}

#[test]
fn the_cautions_of_rule_nineteen_stand_beside_the_look_over() {
    let moss = animal("moss");
    let said = texts(&[
        ("pain_relief", "yes"),
        ("trimmed", "yes"),
        ("steroid", "yes"),
    ]);
    let health = health(&moss.health, said, at(0), today());
    assert_eq!(
        seen_now(&health, &all_normal(), &AtRest::default(), at(0)).cautions(&moss),
        [
            Caution::PainRelief,
            Caution::FreshlyTrimmed,
            Caution::Corticosteroid
        ]
    );
}

#[test]
fn a_strong_pulse_and_the_pulse_that_is_counted_are_two_fields() {
    for sign in crate::words::Sign::ALL.iter().copied() {
        for vital in tussock_core::safety::Vital::ALL {
            assert_ne!(super::field(sign), crate::forms::not_eating::field(vital));
        }
    }
}
