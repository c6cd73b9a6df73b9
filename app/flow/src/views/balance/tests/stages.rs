//! Animals that grow, are in foal or in milk, from their records to their balance.

use super::*;
use crate::forms::details::{Details, Field};
use crate::views::details;
use crate::views::test_yard::after;
use tussock_core::animal::State;
use tussock_core::assess::{Reading, ScaleInstrument, ScaleWeight};
use tussock_core::limits::{Finding, StageGap};
use tussock_core::log::Body;
use tussock_core::log::bodies::WeightV1;
use tussock_core::units::BodyMass;

/// What was typed into the details of an animal, saved.
fn with_details(shelf: &Shelf, typed: &[(Field, &str)]) -> Shelf {
    let held = details::held(shelf, &id()).unwrap();
    let form = typed
        .iter()
        .fold(Details::of(&held), |form, (field, text)| {
            form.with(*field, *text)
        });
    let today = zone().to_local(at(0)).date;
    let act = form.act(&held, &RecordId(id().0), today).unwrap();
    written(shelf, &act, at(0))
}

fn day_ago(days: u64) -> String {
    let today = zone().to_local(at(0)).date;
    (today - chrono::Days::new(days)).to_string()
}

/// A horse of some 500 kg on grass hay.
fn horse(typed: &[(Field, &str)]) -> Shelf {
    let mut all = vec![(Field::Laminitis, "never"), (Field::Goal, "hold")];
    all.extend(typed);
    with_details(&started(Sort::Horse, "185"), &all)
}

fn short_of(shown: &Shown, nutrient: Nutrient) -> bool {
    shown
        .balance
        .rows
        .iter()
        .any(|row| row.nutrient == nutrient && matches!(row.is.standing, Standing::Short { .. }))
}

#[test]
fn a_mare_in_milk_is_balanced_and_no_plan_is_made_for_her() {
    let foaled = day_ago(20);
    let shelf = horse(&[(Field::State, "lactating"), (Field::Foaled, &foaled)]);
    let mare = shown(&shelf);
    assert_eq!(mare.ration.by, GivenBy::Draft);
    // Safety refuses a plan as before, and says so above the balance.
    let stop = mare.refused.clone().unwrap();
    assert_eq!(stop.why, [Refusal::NotPlannedHere(State::Lactating)]);
    assert!(stop.vet.is_some());
    let standard = &mare.ration.standard;
    assert!(
        standard
            .needed
            .contains(&Finding::NeverRestricted(State::Lactating))
    );
    assert_eq!(mare.balance.rows.len(), standard.needs.rows.len());
    assert!(mare.balance.rows.len() > 15);
    // Milk asks far more of energy, protein and calcium than a grown mare at rest.
    let dry = horse(&[]);
    let dry = shown(&dry);
    let need = |shown: &Shown| shown.balance.energy.need.unwrap();
    assert!(need(&dry) * 1.7 < need(&mare));
    // The energy of a typical balancer is not known, and hay at the starting level is far from enough.
    let energy = &mare.balance.energy;
    assert!(energy.stands.look().needs_a_look());
    assert!(energy.of_need.unwrap() < 0.6, "{:?}", energy.of_need);
    assert!(short_of(&mare, Nutrient::CrudeProtein));
    let words = English::default();
    let said = words.balance_sentence(&mare.balance);
    assert!(said.contains("short"), "{said}");
    let said = words.balance_while_refused(mare.ration.by);
    assert!(said.sentence.contains("vet"), "{}", said.sentence);
    // Nothing is proposed where no plan is made.
    let asks = crate::views::mend::Asks::default();
    let mend = crate::views::mend::mend_of(&shelf, &id(), &asks, at(0), &zone());
    assert_eq!(mend, Some(crate::views::mend::Outcome::Refused));
}

#[test]
fn a_yearling_is_balanced_by_its_month_and_the_weight_it_grows_to() {
    // The tape has no equation for its measures alone: it stood on a scale.
    let reading = Reading::Scale(ScaleWeight {
        mass: BodyMass::kg(320.0),
        instrument: ScaleInstrument::AnimalScale,
    });
    let weight = Body::Weight(WeightV1::of(&reading).unwrap());
    let started = after(
        &started(Sort::Horse, "150"),
        &[("scale", "bramble", weight, 0)],
    );
    let shelf = with_details(
        &started,
        &[
            (Field::Laminitis, "never"),
            (Field::Goal, "hold"),
            (Field::State, "growing"),
            (Field::Born, "4.2025"),
            (Field::Grown, "500"),
        ],
    );
    let young = shown(&shelf);
    let stop = young.refused.clone().unwrap();
    assert_eq!(stop.why, [Refusal::NotPlannedHere(State::Growing)]);
    assert!(young.balance.rows.len() > 15);
    // Its calcium goes by what it gains, and its ratio by that of young stock.
    let need = |shown: &Shown| {
        let of_it = |row: &&NutrientRow| row.nutrient == Nutrient::Calcium;
        let row = shown.balance.rows.iter().find(of_it).unwrap();
        Nutrient::Calcium.in_unit(row.need).unwrap()
    };
    let heavier = with_details(&shelf, &[(Field::Grown, "650")]);
    assert!(need(&young) < need(&shown(&heavier)));
    assert!(young.balance.judged.iter().all(|judged| !matches!(
        judged,
        Judged::CalciumToPhosphorus(tussock_core::limits::RatioVerdict::Wide { .. })
    )));
}

#[test]
fn what_nobody_said_leaves_the_needs_unreckoned_and_says_what_is_missing() {
    for (state, which) in [
        ("growing", State::Growing),
        ("pregnant", State::Pregnant),
        ("lactating", State::Lactating),
    ] {
        let shown = shown(&horse(&[(Field::State, state)]));
        assert_eq!(
            shown.ration.standard.needed,
            [Finding::StageNotKnown(which, StageGap::NotSaid)]
        );
        assert!(shown.lacks_its_stage());
        let words = English::default();
        assert_eq!(
            words.balance_sentence(&shown.balance),
            words.needs_not_reckoned()
        );
    }
}

#[test]
fn anything_else_that_stands_against_a_plan_still_hides_the_ration() {
    let foaled = day_ago(20);
    let shelf = horse(&[
        (Field::State, "lactating"),
        (Field::Foaled, &foaled),
        (Field::Laminitis, "active"),
    ]);
    assert!(matches!(seen(&shelf).outcome, Outcome::Refused(_)));
}

#[test]
fn a_mare_in_foal_is_balanced_by_her_month() {
    let need = |days: u64| {
        let covered = day_ago(days);
        let shelf = horse(&[(Field::State, "pregnant"), (Field::Covered, &covered)]);
        shown(&shelf).balance.energy.need.unwrap()
    };
    assert!(need(40) < need(250) && need(250) < need(330));
}
