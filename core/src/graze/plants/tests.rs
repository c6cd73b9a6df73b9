//! Tests of the catalogue of plants.

use super::*;
use crate::units::{DryMatter, NutrientMass, ShareOfDm};
use std::collections::BTreeSet;

#[test]
fn every_plant_has_its_own_key_and_names() {
    let mut keys = BTreeSet::new();
    let mut scientific = BTreeSet::new();
    for plant in PlantId::ALL {
        assert_eq!(PlantId::from_key(plant.key()), Some(*plant));
        assert!(keys.insert(plant.key()) && scientific.insert(plant.scientific()));
        assert!(!plant.common().is_empty());
        assert!(
            plant
                .key()
                .chars()
                .all(|c| c.is_ascii_lowercase() || c == '_')
        );
    }
    assert_eq!(PlantId::from_key("meadow"), None);
}

#[test]
fn a_plant_is_there_for_its_sugar_or_for_what_it_does() {
    for plant in PlantId::ALL {
        let harms = hazards_of(&[*plant]).count();
        assert!(plant.sugar().is_some() || harms > 0, "{plant:?}");
        assert!(plant.sugar().is_none() || plant.is_grass(), "{plant:?}");
    }
    let counts = [
        SugarPotential::Lower,
        SugarPotential::Middle,
        SugarPotential::Higher,
    ]
    .map(|of| grasses(of).count());
    assert_eq!(counts, [18, 4, 8]);
}

#[test]
fn every_hazard_says_what_to_do_and_where_and_stands_once() {
    let mut seen = BTreeSet::new();
    for hazard in hazards() {
        assert!(
            !hazard.acts.is_empty() && !hazard.regions.is_empty(),
            "{hazard:?}"
        );
        assert!(seen.insert((hazard.plant, hazard.harm.value)), "{hazard:?}");
        assert!(hazard.harm.id.contains(hazard.plant.key()), "{hazard:?}");
    }
    assert_eq!(hazards().count(), seen.len());
}

#[test]
fn what_kills_within_days_says_ring_at_once() {
    for hazard in hazards() {
        let kills = matches!(
            hazard.harm.value,
            Harm::MuscleDeath
                | Harm::BloodDestroyed
                | Harm::HeartStops
                | Harm::BlisterBeetle
                | Harm::AnnualRyegrassToxicity
                | Harm::GutAndKidneys
        );
        assert!(
            !kills || hazard.acts.contains(&Act::RingVetNow),
            "{hazard:?}"
        );
    }
}

#[test]
fn a_region_tells_its_own_hazards() {
    let of = |region| -> BTreeSet<PlantId> { hazards_in(&[region]).map(|h| h.plant).collect() };
    let britain = of(Region::BritishIsles);
    assert!(britain.contains(&PlantId::Sycamore) && britain.contains(&PlantId::Ragwort));
    assert!(!britain.contains(&PlantId::Setaria));
    assert!(of(Region::Tropics).contains(&PlantId::Setaria));
    assert_eq!(hazards_in(&[]).count(), 0);
    for region in Region::ALL {
        assert!(!of(region).is_empty(), "{region:?}");
    }
}

#[test]
fn calcium_is_judged_against_oxalate() {
    let p = ShareOfDm::percent;
    let ratio = calcium_to_oxalate(p(0.4), p(1.2)).unwrap();
    assert!(matches!(ratio, CalciumToOxalate::Unsafe { .. }));
    let just = calcium_to_oxalate(p(0.6), p(1.2)).unwrap();
    assert!(matches!(just, CalciumToOxalate::Enough { .. }));
    assert_eq!(
        calcium_to_oxalate(p(0.4), p(0.0)).unwrap(),
        CalciumToOxalate::NoOxalate
    );
    assert!(calcium_to_oxalate(p(0.4), p(13.0)).is_err());
    let short = calcium_shortfall(DryMatter::kg(8.0), p(0.4), p(1.2)).unwrap();
    assert!((short.to_g() - 16.0).abs() < 1e-9);
    assert_eq!(
        calcium_shortfall(DryMatter::kg(8.0), p(0.9), p(1.2)).unwrap(),
        NutrientMass::ZERO
    );
    assert!((limestone_for(short).to_g() - 16.0 / 0.38).abs() < 1e-9);
    for plant in PlantId::ALL {
        if let Some(range) = typical_oxalate(*plant) {
            assert!(range[0] <= range[1]);
            let harms: Vec<Harm> = hazards_of(&[*plant]).map(|h| h.harm.value).collect();
            assert!(harms.contains(&Harm::BonesLoseCalcium), "{plant:?}");
        }
    }
}

#[test]
fn a_test_of_endophyte_is_stricter_for_mares() {
    let of = |ppb, whom| ergovaline(ppb, whom).unwrap();
    assert_eq!(of(250.0, Whom::All), Endophyte::Under);
    assert_eq!(of(300.0, Whom::All), Endophyte::Doubtful);
    assert_eq!(of(501.0, Whom::All), Endophyte::Over);
    assert_eq!(of(250.0, Whom::Broodmares), Endophyte::Over);
    assert_eq!(of(0.0, Whom::Broodmares), Endophyte::Under);
    assert!(ergovaline(-1.0, Whom::All).is_err());
    assert_eq!(nitrate(ShareOfDm::percent(2.1)).unwrap(), Nitrate::Unsafe);
    assert_eq!(nitrate(ShareOfDm::percent(0.5)).unwrap(), Nitrate::Safe);
    assert_eq!(nitrate(ShareOfDm::percent(1.0)).unwrap(), Nitrate::Doubtful);
}

#[test]
fn what_a_kind_of_sward_is_known_for_has_hazards_or_sugar() {
    use crate::graze::sward::SwardKind;
    for kind in SwardKind::ALL {
        for plant in known_in(kind) {
            let one = std::slice::from_ref(plant);
            assert!(hazards_of(one).next().is_some() || plant.sugar().is_some());
        }
    }
    assert!(known_in(SwardKind::Meadow).is_empty());
}
