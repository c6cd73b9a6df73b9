//! What holds of growth, foal and milk whatever the animal weighs.

use super::super::*;
use super::*;
use crate::animal::{Kind, Temperament, Workload};

fn whose(stage: Stage, current: f64) -> NeedFor {
    NeedFor {
        kind: Kind::Horse,
        stage,
        work: Workload::Maintenance(Temperament::Average),
        current: BodyMass::kg(current),
        target: None,
    }
}

fn number(whose: &NeedFor, nutrient: Nutrient) -> f64 {
    let (found, _) = needs(whose).unwrap();
    nutrient
        .in_unit(found.of(nutrient).unwrap().amount)
        .unwrap()
}

fn stages() -> Vec<Stage> {
    let mature = BodyMass::kg(500.0);
    let growing = (4..=24).map(|months| Stage::Growing { months, mature });
    let pregnant = (1..=11).map(|month| Stage::Pregnant { month });
    let lactating = (1..=6).map(|month| Stage::Lactating { month });
    growing.chain(pregnant).chain(lactating).collect()
}

#[test]
fn every_stage_has_every_need_and_says_that_it_is_never_restricted() {
    for stage in stages() {
        let (found, findings) = needs(&whose(stage, 400.0)).unwrap();
        assert!(found.energy.is_some(), "{stage:?}");
        assert_eq!(
            findings.first(),
            Some(&Finding::NeverRestricted(stage.state()))
        );
        let rows: Vec<Nutrient> = found.rows.iter().map(|need| need.nutrient).collect();
        assert_eq!(rows, Nutrient::ALL, "{stage:?}");
        for need in &found.rows {
            let value = need.nutrient.in_unit(need.amount).unwrap();
            assert!(value.is_finite() && value > 0.0, "{stage:?} {need:?}");
            assert!(!need.from.sources().is_empty());
        }
    }
}

#[test]
fn no_stage_needs_less_than_a_grown_animal_of_its_weight() {
    for stage in stages() {
        for nutrient in Nutrient::ALL {
            let adult = number(&whose(Stage::Adult, 400.0), nutrient);
            let more = number(&whose(stage, 400.0), nutrient);
            assert!(
                more >= adult * (1.0 - 1e-9),
                "{stage:?} {nutrient:?} {more} {adult}"
            );
        }
    }
}

#[test]
fn in_foal_the_needs_rise_month_by_month_and_in_milk_they_fall() {
    for nutrient in Nutrient::ALL {
        for month in 1..11 {
            let now = number(&whose(Stage::Pregnant { month }, 500.0), nutrient);
            let next = number(
                &whose(Stage::Pregnant { month: month + 1 }, 500.0),
                nutrient,
            );
            assert!(now <= next * (1.0 + 1e-9), "{nutrient:?} {month}");
        }
        for month in 1..6 {
            let now = number(&whose(Stage::Lactating { month }, 500.0), nutrient);
            let next = number(
                &whose(Stage::Lactating { month: month + 1 }, 500.0),
                nutrient,
            );
            assert!(next <= now * (1.0 + 1e-9), "{nutrient:?} {month}");
        }
    }
}

#[test]
fn a_mare_in_foal_is_reckoned_on_what_she_weighs_without_it() {
    let mut of = whose(Stage::Pregnant { month: 11 }, 566.0);
    let (_, findings) = needs(&of).unwrap();
    assert!(findings.contains(&Finding::TargetNotKnown));
    of.target = Some(BodyMass::kg(500.0));
    let (found, findings) = needs(&of).unwrap();
    assert_eq!(findings, [Finding::NeverRestricted(State::Pregnant)]);
    let calcium = found.of(Nutrient::Calcium).unwrap();
    assert_eq!(calcium.basis, Basis::TargetWeight);
    assert!((Nutrient::Calcium.in_unit(calcium.amount).unwrap() - 36.0).abs() < 1e-9);
    // The milk is made by the body there is.
    of.stage = Stage::Lactating { month: 1 };
    let (found, _) = needs(&of).unwrap();
    assert_eq!(
        found.of(Nutrient::Calcium).unwrap().basis,
        Basis::CurrentWeight
    );
}

#[test]
fn a_donkey_in_foal_goes_by_weight_and_condition_and_work_is_said_to_be_left_out() {
    let mut of = whose(Stage::Pregnant { month: 8 }, 180.0);
    of.kind = Kind::Donkey;
    of.work = Workload::Light;
    let (found, findings) = needs(&of).unwrap();
    assert!(found.energy.is_none());
    for said in [
        Finding::WorkNotReckoned,
        Finding::EnergyByWeightAndCondition,
        Finding::HorseNeedsStandIn,
    ] {
        assert!(findings.contains(&said), "{said:?}");
    }
}

#[test]
fn an_age_or_month_that_is_not_published_is_refused_with_its_field() {
    let mature = BodyMass::kg(500.0);
    for (stage, field) in [
        (Stage::Growing { months: 3, mature }, "growth_months"),
        (Stage::Growing { months: 25, mature }, "growth_months"),
        (Stage::Pregnant { month: 0 }, "pregnant_month"),
        (Stage::Pregnant { month: 12 }, "pregnant_month"),
        (Stage::Lactating { month: 7 }, "lactation_month"),
    ] {
        let error = needs(&whose(stage, 300.0)).unwrap_err();
        assert!(error.to_string().starts_with(field), "{error}");
    }
    assert!(growing_weight(3, mature).is_err() && daily_gain(30, mature).is_err());
    assert!(milk(0, mature).is_err());
    let (found, findings) = needs(&whose(Stage::of(State::Growing), 300.0)).unwrap();
    assert!(found.rows.is_empty() && found.energy.is_none());
    assert_eq!(
        findings,
        [Finding::StageNotKnown(State::Growing, StageGap::NotSaid)]
    );
}
