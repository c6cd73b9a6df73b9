//! Tests of the sward.

use super::published::{LEAF_BARE, RESIDUAL};
use super::*;
use crate::graze::GrazeError;
use crate::limits::Ends;
use crate::units::{Area, BodyMass, DryMatter, Length, LocalDate, PartOfBody};

fn near(a: f64, b: f64) -> bool {
    (a - b).abs() < 1e-6 * b.abs().max(1.0)
}

#[test]
fn every_leaf_and_kind_has_its_order() {
    for leaf in Leaf::ALL {
        assert!(leaf.height().in_order());
    }
    for pair in Leaf::ALL.windows(2) {
        assert!(pair[0].height().most <= pair[1].height().least);
    }
    for kind in SwardKind::ALL {
        for stand in [
            None,
            Some(Stand::Fair),
            Some(Stand::Good),
            Some(Stand::Excellent),
        ] {
            assert!(density(kind, stand).in_order());
        }
    }
}

#[test]
fn leaf_below_the_ankle_is_no_forage_and_they_are_taken_off() {
    let found = look(Leaf::BelowAnkle.height(), *RESIDUAL);
    assert!(matches!(found[0], SwardFinding::Bare { height } if height < *LEAF_BARE));
    assert!(matches!(found[1], SwardFinding::TakeOff { .. }));
    assert!(look(Leaf::Ankle.height(), *RESIDUAL).is_empty());
}

#[test]
fn a_height_is_judged_on_its_own_side() {
    let at = |cm| look(Ends::exactly(Length::cm(cm)), *RESIDUAL);
    assert_eq!(at(5.0).len(), 1, "take off, and not bare");
    assert!(matches!(at(7.49)[0], SwardFinding::TakeOff { .. }));
    assert!(matches!(at(7.5)[0], SwardFinding::Short { .. }));
    assert!(at(10.0).is_empty() && at(20.0).is_empty());
    assert!(matches!(at(20.1)[0], SwardFinding::Rank { .. }));
}

#[test]
fn readings_say_how_few_they_are_and_how_far_they_lie() {
    let heights: Vec<Length> = [8.0, 10.0, 12.0, 14.0].map(Length::cm).to_vec();
    let (read, found) = readings(&heights).unwrap();
    assert!(near(read.mean.to_cm(), 11.0));
    assert!(near(read.spread.unwrap().to_cm(), (20.0_f64 / 3.0).sqrt()));
    assert!(near(
        read.error.unwrap().to_cm(),
        (20.0_f64 / 3.0).sqrt() / 2.0
    ));
    assert_eq!(
        found,
        [SwardFinding::FewReadings {
            taken: 4,
            asked: 30
        }]
    );
    assert_eq!(readings(&[]).unwrap_err(), GrazeError::NoReadings);
    assert!(readings(&[Length::cm(-1.0)]).is_err());
    assert!(readings(&[Length::cm(f64::NAN)]).is_err());
    let one = readings(&[Length::cm(9.0)]).unwrap().0;
    assert_eq!((one.spread, one.height().least.to_cm()), (None, 9.0));
    assert!(readings(&vec![Length::cm(11.0); 30]).unwrap().1.is_empty());
}

#[test]
fn what_stands_has_two_ends_and_never_less_than_nothing() {
    let of = |measured| standing(measured, SwardKind::MixedWithRyegrass, None, *RESIDUAL).unwrap();
    let heights = vec![Length::cm(15.0); 30];
    let read = of(Measured::Heights(&heights));
    assert!(near(read.available.likely.to_kg_per_ha(), 990.0));
    assert!(near(read.available.least.to_kg_per_ha(), 693.0));
    assert!(near(read.available.most.to_kg_per_ha(), 1287.0));
    assert!(read.findings.is_empty());
    let low = of(Measured::Boot(Leaf::BelowAnkle));
    assert!(near(low.available.most.to_kg_per_ha(), 0.0));
    let plate = of(Measured::Plate { clicks: 20.0 });
    assert!(plate.available.in_order() && plate.height.is_none());
    assert_eq!(plate.findings, [SwardFinding::PlateOfItsOwn]);
    assert!(
        standing(
            Measured::Plate { clicks: 61.0 },
            SwardKind::Meadow,
            None,
            *RESIDUAL
        )
        .is_err()
    );
    assert!(
        standing(
            Measured::Boot(Leaf::Ankle),
            SwardKind::Meadow,
            None,
            Length::cm(4.0)
        )
        .is_err()
    );
    let meadow = standing(
        Measured::Boot(Leaf::Ankle),
        SwardKind::Meadow,
        None,
        *RESIDUAL,
    );
    assert!(
        meadow
            .unwrap()
            .findings
            .contains(&SwardFinding::DensityNotKnown)
    );
}

#[test]
fn days_of_grass_are_none_without_animals() {
    let available = Ends::new(693.0, 990.0, 1287.0).map(crate::units::SwardMass::kg_per_ha);
    let pony = Grazer {
        weight: BodyMass::kg(250.0),
        asked: PartOfBody::percent(1.0),
    };
    let need = asked(&[pony, pony]).unwrap();
    let days = days_of_grass(available, Area::sq_m(2000.0), need).unwrap();
    assert!(near(days.likely, 990.0 * 0.2 * 0.6 / 5.0));
    assert!(days.in_order());
    assert_eq!(asked(&[]).unwrap_err(), GrazeError::NothingAsked);
    let none = days_of_grass(available, Area::sq_m(2000.0), DryMatter::ZERO);
    assert_eq!(none.unwrap_err(), GrazeError::NothingAsked);
    assert!(
        asked(&[Grazer {
            asked: PartOfBody::percent(7.0),
            ..pony
        }])
        .is_err()
    );
    assert!(offered(need, 0.0).is_none());
}

#[test]
fn winter_may_never_grow_back_and_has_no_rest_by_days() {
    let back = |season| {
        let density = density(SwardKind::MixedWithRyegrass, None).likely;
        regrowth(Length::cm(7.5), Length::cm(15.0), density, season).unwrap()
    };
    let spring = back(GrowthSeason::PeakSpring);
    assert!(near(spring.likely, 990.0 / 55.0));
    assert!(spring.soonest < spring.likely && Some(spring.likely) < spring.latest);
    assert_eq!(back(GrowthSeason::Winter).latest, None);
    assert_eq!(rest(GrowthSeason::Winter), None);
    let began = LocalDate::from_ymd_opt(2026, 5, 1).unwrap();
    let ends = rest(GrowthSeason::PeakSpring).unwrap().ends(began).unwrap();
    assert_eq!(ends.0, LocalDate::from_ymd_opt(2026, 5, 15).unwrap());
    assert_eq!(ends.1, LocalDate::from_ymd_opt(2026, 5, 22).unwrap());
    for season in GrowthSeason::ALL {
        assert!(growth(season).in_order());
    }
}
