//! The sward and its strips: round trips, order, conservation, the end that matters.

use crate::seed::config;
use proptest::prelude::*;
use tussock_core::graze::plants::{Region, hazards_in};
use tussock_core::graze::strip::{Field, StripFor, area_for, strip, track};
use tussock_core::graze::sward::published::RESIDUAL;
use tussock_core::graze::sward::{
    GrowthSeason, Measured, SwardKind, days_of_grass, density, plate, readings, regrowth, standing,
};
use tussock_core::limits::Ends;
use tussock_core::units::{Area, DryMatter, Length, SwardDensity, SwardMass};

fn near(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * a.abs().max(b.abs()).max(1.0)
}

fn kind() -> impl Strategy<Value = SwardKind> {
    prop::sample::select(SwardKind::ALL.to_vec())
}

fn season() -> impl Strategy<Value = GrowthSeason> {
    prop::sample::select(GrowthSeason::ALL.to_vec())
}

/// What may stand, in order, from nothing at the least to something at the most.
fn mass() -> impl Strategy<Value = Ends<SwardMass>> {
    (0.0..2000.0_f64, 0.0..2000.0_f64, 1.0..2000.0_f64).prop_map(|(least, more, yet)| {
        Ends::new(least, least + more, least + more + yet).map(SwardMass::kg_per_ha)
    })
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn each_conversion_of_land_has_its_inverse(value in -1.0e6..1.0e6_f64) {
        prop_assert!(near(Area::hectares(value).to_hectares(), value));
        prop_assert!(near(Area::acres(value).to_acres(), value));
        prop_assert!(near(Length::m(value).to_m(), value));
        prop_assert!(near(SwardMass::lb_per_acre(value).to_lb_per_acre(), value));
        let density = SwardDensity::lb_per_acre_inch(value);
        prop_assert!(near(density.to_lb_per_acre_inch(), value));
        // An inch of it is so many pounds an acre.
        prop_assert!(near(density.over(Length::inches(1.0)).to_lb_per_acre(), value));
    }

    #[test]
    fn a_strip_is_the_same_in_pounds_and_acres(lb in 100.0..5000.0_f64, kg in 1.0..200.0_f64) {
        let by_acre = area_for(DryMatter::kg(kg), SwardMass::lb_per_acre(lb), 0.7).unwrap();
        let pounds = kg / 0.453_592_37;
        prop_assert!(near(by_acre.to_acres(), pounds / (lb * 0.7)));
    }

    #[test]
    fn more_mass_makes_a_smaller_strip(
        kg in 1.0..200.0_f64, low in 1.0..5000.0_f64, more in 1.0..4000.0_f64, part in 0.1..1.0_f64
    ) {
        let of = |mass| area_for(DryMatter::kg(kg), SwardMass::kg_per_ha(mass), part).unwrap();
        prop_assert!(of(low + more) < of(low));
        prop_assert!(near(SwardMass::kg_per_ha(low).on(of(low)).to_kg() * part, kg));
    }

    #[test]
    fn a_strip_never_holds_more_than_was_asked(
        kg in 0.1..300.0_f64, days in 1_u32..=7, available in mass(), width in 1.0..500.0_f64,
        back_fence: bool
    ) {
        let made = strip(&StripFor {
            asked: DryMatter::kg(kg), days, available, width: Length::m(width), back_fence,
        }).unwrap();
        prop_assert!(made.finds.in_order());
        prop_assert!(made.finds.most.to_kg() <= kg * (1.0 + 1e-12), "{made:?}");
        prop_assert!(near(Area::of(made.fences.onward, made.fences.lead).to_sq_m(), made.area.to_sq_m()));
        prop_assert!(made.by_likely.is_none_or(|area| made.area <= area));
        prop_assert!(made.fences.lead_paces.in_order() && made.fences.onward_paces.in_order());
        if let Some(back) = made.fences.back {
            prop_assert!(back.iter().all(|back| *back >= made.fences.onward));
        }
    }

    #[test]
    fn days_of_grass_rise_with_mass_and_land_and_fall_with_appetite(
        available in mass(), land in 100.0..100_000.0_f64, kg in 0.5..100.0_f64, more in 1.01..5.0_f64
    ) {
        let of = |available, land, kg| {
            days_of_grass(available, Area::sq_m(land), DryMatter::kg(kg)).unwrap()
        };
        let days = of(available, land, kg);
        prop_assert!(days.in_order());
        prop_assert!(of(available.map(|mass| mass * more), land, kg).most > days.most);
        prop_assert!(of(available, land * more, kg).most > days.most);
        prop_assert!(of(available, land, kg * more).most < days.most);
        prop_assert!(of(available, land, kg * more).least <= days.least);
    }

    #[test]
    fn what_stands_is_in_order_and_rises_with_height(
        kind in kind(), low in 0.0..100.0_f64, more in 0.0..100.0_f64, clicks in 0.0..60.0_f64
    ) {
        let of = |cm| {
            let heights = [Length::cm(cm); 3];
            standing(Measured::Heights(&heights), kind, None, *RESIDUAL).unwrap().available
        };
        prop_assert!(of(low).in_order() && of(low).least >= SwardMass::ZERO);
        prop_assert!(of(low).likely <= of(low + more).likely);
        let pressed = standing(Measured::Plate { clicks }, kind, None, *RESIDUAL).unwrap();
        prop_assert!(pressed.available.in_order());
        prop_assert!(pressed.available.most <= plate(clicks).unwrap().most);
    }

    #[test]
    fn readings_do_not_mind_their_order_and_lie_within_their_ends(
        mut cm in prop::collection::vec(0.0..200.0_f64, 1..60)
    ) {
        let of = |cm: &[f64]| {
            readings(&cm.iter().copied().map(Length::cm).collect::<Vec<_>>()).unwrap()
        };
        let (read, found) = of(&cm);
        prop_assert_eq!(read.count, cm.len());
        prop_assert_eq!(found.is_empty(), cm.len() >= 30);
        let height = read.height();
        prop_assert!(height.in_order() && height.least >= Length::ZERO);
        cm.reverse();
        prop_assert!(near(of(&cm).0.mean.to_cm(), read.mean.to_cm()));
        let most = cm.iter().copied().fold(0.0, f64::max);
        prop_assert!(read.mean.to_cm() <= most + 1e-9);
    }

    #[test]
    fn a_taller_aim_takes_longer(
        season in season(), kind in kind(), from in 0.0..50.0_f64, up in 0.1..50.0_f64, more in 0.1..50.0_f64
    ) {
        let density = density(kind, None).likely;
        let of = |to| regrowth(Length::cm(from), Length::cm(to), density, season).unwrap();
        let (near, far) = (of(from + up), of(from + up + more));
        prop_assert!(near.soonest <= near.likely && near.likely < far.likely);
        prop_assert!(near.latest.is_none_or(|latest| near.likely <= latest));
    }

    #[test]
    fn a_track_keeps_its_land_and_its_distances(
        length in 5.0..500.0_f64, width in 5.0..500.0_f64, track_width in 2.0..20.0_f64, animals in 1_u32..=60
    ) {
        let field = Field { length: Length::m(length), width: Length::m(width) };
        let Ok(made) = track(field, Length::m(track_width), animals) else {
            prop_assert!(track_width >= length.min(width) / 2.0);
            return Ok(());
        };
        prop_assert!(near((made.area + made.inside).to_sq_m(), length * width));
        prop_assert_eq!(made.hay.len(), animals as usize + 1);
        // The first and the last place are as far from water, each by its own way round.
        let last = made.hay.last().unwrap();
        prop_assert!(near((made.length - *last).to_m(), made.water_to_hay.to_m()));
        prop_assert!(made.water_to_hay >= Length::ZERO && made.inside > Area::ZERO);
    }

    #[test]
    fn more_regions_never_tell_fewer_hazards(
        some in prop::sample::subsequence(Region::ALL.to_vec(), 0..=7), one in prop::sample::select(Region::ALL.to_vec())
    ) {
        let mut more = some.clone();
        more.push(one);
        prop_assert!(hazards_in(&some).count() <= hazards_in(&more).count());
        prop_assert!(hazards_in(&some).all(|hazard| hazard.regions.iter().any(|r| some.contains(r))));
    }
}
