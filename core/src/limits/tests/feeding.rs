//! Energy, needs, sugar, straw, lucerne, upper limits and ratios.

use super::super::*;
use crate::animal::{Kind, RiskLevel, State, Teeth, Temperament, Workload};
use crate::units::{BodyMass, DryMatter, Energy, NutrientMass, ShareOfDm};

#[test]
fn energy_is_not_under_65_percent_without_a_vet_and_never_under_60() {
    let weight = BodyMass::kg(500.0);
    let judge = |share: f64, word: bool| {
        let least = Energy::mcal(500.0 * 0.0333 * share);
        judge_energy(Kind::Horse, State::Adult, weight, least, word).unwrap()
    };
    assert!(matches!(judge(0.66, false), EnergyVerdict::Enough { .. }));
    assert!(matches!(
        judge(0.64, false),
        EnergyVerdict::NeedsVetsWord { .. }
    ));
    assert!(matches!(judge(0.64, true), EnergyVerdict::Enough { .. }));
    assert!(matches!(
        judge(0.59, true),
        EnergyVerdict::NeverAllowed { .. }
    ));
    assert!(matches!(
        judge(f64::NAN, true),
        EnergyVerdict::NeverAllowed { .. }
    ));
    assert_eq!(
        judge_energy(
            Kind::Horse,
            State::Lactating,
            weight,
            Energy::mcal(16.0),
            true
        ),
        Ok(EnergyVerdict::NotPublishedHere(State::Lactating))
    );
}

#[test]
fn minerals_follow_target_weight_and_protein_the_body_there_is() {
    let whose = NeedFor {
        kind: Kind::Horse,
        stage: Stage::Adult,
        work: Workload::Maintenance(Temperament::Average),
        current: BodyMass::kg(600.0),
        target: Some(BodyMass::kg(500.0)),
    };
    let (found, findings) = needs(&whose).unwrap();
    assert!(findings.is_empty());
    let number = |nutrient: Nutrient| {
        let need = found.of(nutrient).unwrap();
        (nutrient.in_unit(need.amount).unwrap(), need.basis)
    };
    let (copper, basis) = number(Nutrient::Copper);
    assert!((copper - 100.0).abs() < 1e-9);
    assert_eq!(basis, Basis::TargetWeight);
    let (protein, basis) = number(Nutrient::CrudeProtein);
    assert!((protein - 756.0).abs() < 1e-9);
    assert_eq!(basis, Basis::CurrentWeight);
    assert!((found.energy.unwrap().energy.to_mcal() - 19.98).abs() < 1e-9);
}

#[test]
fn half_a_kilogram_of_a_14_percent_balancer_is_given_in_two_feeds() {
    let limit = meal_limit(RiskLevel::NotKnown, BodyMass::kg(500.0)).unwrap();
    assert_eq!(feeds_needed(&limit, NutrientMass::g(70.0)), Some(2));
    assert_eq!(feeds_needed(&limit, NutrientMass::g(50.0)), Some(1));
    let part = |g: f64| Some(Ends::exactly(NutrientMass::g(g)));
    assert_eq!(
        judge_meal(&limit, part(40.0), None),
        MealVerdict::NotKnown,
        "half a label clears nothing"
    );
    assert!(matches!(
        judge_meal(&limit, part(60.0), None),
        MealVerdict::Over { .. }
    ));
    assert_eq!(
        judge_meal(&limit, part(30.0), part(15.0)),
        MealVerdict::Within
    );
    let clear = meal_limit(RiskLevel::Clear, BodyMass::kg(500.0)).unwrap();
    assert_eq!(feeds_needed(&clear, NutrientMass::g(500.0)), Some(2));
    assert_eq!(feeds_needed(&clear, NutrientMass::g(1000.0)), None);
}

#[test]
fn the_strict_sugar_limit_is_for_animals_at_risk() {
    let limits = |level| sugar_limits(level);
    for level in [RiskLevel::Proven, RiskLevel::AtRisk] {
        let found = limits(level).unwrap();
        assert_eq!(found.wsc_and_starch, ShareOfDm::percent(10.0));
        assert!(found.doubt_counts_against);
    }
    let unknown = limits(RiskLevel::NotKnown).unwrap();
    assert_eq!(unknown.wsc_and_starch, ShareOfDm::percent(12.0));
    assert!(!unknown.doubt_counts_against);
    assert!(limits(RiskLevel::Clear).is_none());
}

#[test]
fn straw_and_lucerne_have_their_caps() {
    let good = straw_cap(Kind::Horse, Teeth::Good);
    assert_eq!(good.most, ForagePart::fraction(0.5));
    assert_eq!(
        straw_cap(Kind::Pony, Teeth::NotKnown).most,
        ForagePart::fraction(0.3)
    );
    assert_eq!(
        straw_cap(Kind::Pony, Teeth::Poor).most,
        ForagePart::fraction(0.0)
    );
    let donkey = straw_cap(Kind::Donkey, Teeth::Good);
    assert_eq!(donkey.least, Some(ForagePart::fraction(0.5)));
    assert_eq!(donkey.most, ForagePart::fraction(0.75));
    let kg = DryMatter::kg;
    assert!(matches!(
        judge_cap(kg(3.1), kg(6.0), good.most),
        CapVerdict::Over { .. }
    ));
    assert_eq!(judge_cap(kg(1.0), kg(0.0), good.most), CapVerdict::NotKnown);
    assert!(matches!(
        judge_lucerne(kg(1.0), kg(6.0)),
        CapVerdict::Within { .. }
    ));
    assert!(matches!(
        judge_lucerne(kg(1.5), kg(6.0)),
        CapVerdict::Watch { .. }
    ));
    assert!(matches!(
        judge_lucerne(kg(2.0), kg(6.0)),
        CapVerdict::Over { .. }
    ));
}

#[test]
fn a_donkey_that_loses_7_kg_in_a_month_loses_too_fast() {
    let weight = BodyMass::kg(180.0);
    let judge = |lost: f64, days| judge_donkey_loss(weight, BodyMass::kg(lost), days).unwrap();
    assert!(matches!(judge(7.0, 30), DonkeyLossVerdict::TooFast { .. }));
    assert_eq!(judge(4.9, 30), DonkeyLossVerdict::Within);
    assert_eq!(judge(4.9, 0), DonkeyLossVerdict::NotKnown);
    // A small donkey is bound by its weight before the 5 kg.
    assert_eq!(
        donkey_loss_cap(BodyMass::kg(100.0)).map(BodyMass::to_kg),
        Ok(3.0)
    );
}

#[test]
fn selenium_warns_long_before_its_limit_and_potassium_is_not_alarmed_on() {
    let dry = DryMatter::kg(10.0);
    let selenium = |mg: f64| judge_upper(Nutrient::Selenium, Nutrient::Selenium.amount(mg), dry);
    assert_eq!(selenium(19.0), UpperVerdict::Within);
    assert!(matches!(selenium(20.0), UpperVerdict::Warn { .. }));
    assert!(matches!(selenium(51.0), UpperVerdict::Over { .. }));
    assert!(matches!(
        judge_added_selenium(NutrientMass::mg(3.1), dry),
        UpperVerdict::Over { .. }
    ));
    assert_eq!(upper_limit(Nutrient::Potassium), None);
    assert_eq!(selenium(f64::NAN), UpperVerdict::NotKnown);
}

#[test]
fn calcium_is_never_under_phosphorus_and_an_unknown_mineral_is_no_ratio() {
    let g = |value: f64| Some(NutrientMass::g(value));
    assert!(matches!(
        calcium_to_phosphorus(g(13.0), g(14.0), State::Adult),
        RatioVerdict::TooLow { .. }
    ));
    assert!(matches!(
        calcium_to_phosphorus(g(20.0), g(14.0), State::Adult),
        RatioVerdict::Usual { .. }
    ));
    assert!(matches!(
        calcium_to_phosphorus(g(50.0), g(14.0), State::Adult),
        RatioVerdict::Wide { .. }
    ));
    assert_eq!(
        calcium_to_phosphorus(g(20.0), None, State::Adult),
        RatioVerdict::NotKnown
    );
    // A growing animal bears neither what a grown one bears, nor as little.
    let young = |calcium| calcium_to_phosphorus(g(calcium), g(14.0), State::Growing);
    assert!(matches!(young(13.0), RatioVerdict::TooLow { .. }));
    assert!(matches!(young(20.0), RatioVerdict::Narrow { .. }));
    assert!(matches!(young(35.0), RatioVerdict::Usual { .. }));
    assert!(matches!(young(50.0), RatioVerdict::TooHigh { .. }));
    assert_eq!(zinc_to_copper(g(1.0), g(0.0)), RatioVerdict::NotKnown);
    assert!(matches!(
        iron_to_copper(g(1.1), g(0.1)),
        RatioVerdict::Remark { .. }
    ));
}

#[test]
fn every_constant_is_named_once() {
    let mut ids: Vec<_> = published::constants().iter().map(|row| row.id).collect();
    let count = ids.len();
    ids.sort_unstable();
    ids.dedup();
    assert_eq!(ids.len(), count);
    assert!(count > 100, "{count}");
}
