//! The floor of forage, the level of all dry matter, and the calcium of young and grown.

use super::*;

#[test]
fn forage_has_its_floor_on_the_heaviest_the_animal_may_be() {
    let yard = grown();
    let verdict = |kg: f64, most: f64| {
        let ration = hay_alone(yard.hay(kg));
        let mut against = yard.against(500.0, RiskLevel::AtRisk);
        against.weight.most = BodyMass::kg(most);
        whole(&ration, &against).unwrap().forage.verdict
    };
    assert!(matches!(verdict(8.6, 500.0), ForageVerdict::Enough { .. }));
    // The level is of the weight it likely has.
    assert!(matches!(verdict(8.6, 550.0), ForageVerdict::Enough { .. }));
    assert!(matches!(
        verdict(8.0, 500.0),
        ForageVerdict::UnderStart { .. }
    ));
    assert!(matches!(
        verdict(5.5, 500.0),
        ForageVerdict::UnderFloor { .. }
    ));
    assert!(matches!(
        verdict(8.6, 760.0),
        ForageVerdict::UnderFloor { .. }
    ));
}

#[test]
fn what_is_bought_counts_to_the_level_and_never_to_the_floor() {
    let yard = grown();
    let balancer = TypicalFood::Balancer.food();
    let verdict = |hay: f64, kg: f64| {
        let ration = Ration {
            forage: vec![yard.hay(hay)],
            grass: DryMatter::ZERO,
            buckets: vec![Bucket {
                foods: vec![(AsFed::kg(kg), &balancer)],
            }],
        };
        let against = yard.against(500.0, RiskLevel::AtRisk);
        whole(&ration, &against).unwrap().forage.verdict
    };
    assert!(matches!(
        verdict(8.0, 0.0),
        ForageVerdict::UnderStart { .. }
    ));
    assert!(matches!(verdict(8.0, 0.6), ForageVerdict::Enough { .. }));
    assert!(matches!(
        verdict(5.5, 4.0),
        ForageVerdict::UnderFloor { .. }
    ));
}

#[test]
fn a_growing_animal_does_not_bear_the_calcium_of_a_grown_one() {
    let yard = yard(ForageClass::Lucerne, 500.0, Stage::Adult);
    let ration = hay_alone(yard.hay(9.0));
    let ratio = |state| {
        let mut against = yard.against(500.0, RiskLevel::Clear);
        against.state = state;
        whole(&ration, &against).unwrap().calcium_to_phosphorus
    };
    assert!(matches!(ratio(State::Adult), RatioVerdict::Wide { .. }));
    assert!(matches!(
        ratio(State::Growing),
        RatioVerdict::TooHigh { .. }
    ));
}
