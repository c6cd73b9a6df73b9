//! Lots: stock, days, cost, what stands in for what.

use crate::seed::config;
use proptest::prelude::*;
use tussock_core::animal::{Kind, LotId, RiskLevel, Teeth};
use tussock_core::forage::published::{PULP_DRY, PULP_SUGAR_STARCH};
use tussock_core::forage::{
    Comparison, CostBand, Fed, ForageClass, Held, HowKnown, Hungry, Losses, Lot, Offer, Price,
    Side, Soaked, Verdict, WeighedOut, bale_weight, compare, cost_band, feed_cost, lasting, left,
    may_stand_in, sampled, supply, tonight,
};
use tussock_core::limits::Ends;
use tussock_core::limits::published::MEAL_SUGAR_AND_STARCH;
use tussock_core::sources::Provenance;
use tussock_core::units::{
    AsFed, BodyMass, Currency, DryFraction, DryMatter, EnergyDensity, LocalDate, Money,
};

fn near(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * a.abs().max(b.abs()).max(1.0)
}

fn dry() -> impl Strategy<Value = DryFraction> {
    (50.0..=95.0_f64).prop_filter_map("allowed", |percent| DryFraction::percent(percent).ok())
}

fn held() -> impl Strategy<Value = Held> {
    prop_oneof![
        (0.0..500.0_f64).prop_map(Held::Bales),
        (0.0..20_000.0_f64).prop_map(|kg| Held::Weight(AsFed::kg(kg))),
    ]
}

fn known() -> impl Strategy<Value = HowKnown> {
    prop_oneof![Just(HowKnown::Seen), Just(HowKnown::Assumed)]
}

fn bales() -> impl Strategy<Value = Vec<AsFed>> {
    prop::collection::vec((5.0..400.0_f64).prop_map(AsFed::kg), 1..8)
}

fn verdict() -> impl Strategy<Value = Option<Verdict>> {
    prop_oneof![
        Just(None),
        Just(Some(Verdict::Within { chance: 0.95 })),
        Just(Some(Verdict::NotProven { chance: Some(0.4) })),
        Just(Some(Verdict::Over { chance: 0.03 })),
    ]
}

fn day() -> LocalDate {
    "2026-05-05".parse().unwrap()
}

fn pounds() -> Currency {
    Currency::from_code("GBP").unwrap()
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn stock_never_rises_by_weighing_out(
        start in held(),
        bales in bales(),
        outs in prop::collection::vec((prop::option::of(-1.0..60.0_f64), known()), 0..20),
    ) {
        let bale = bale_weight(sampled(&bales).as_ref(), None).unwrap();
        let mut out = WeighedOut::default();
        let mut before = left(Some(start), Some(&bale), &out).unwrap();
        for (amount, known) in outs {
            out = out.and(amount.map(AsFed::kg), known);
            let after = left(Some(start), Some(&bale), &out).unwrap();
            prop_assert!(after.mass.in_order());
            prop_assert!(AsFed::ZERO <= after.mass.least);
            prop_assert!(after.mass.least <= before.mass.least);
            prop_assert!(after.mass.likely <= before.mass.likely);
            prop_assert!(after.mass.most <= before.mass.most);
            before = after;
        }
    }

    #[test]
    fn days_left_fall_as_use_rises(
        least in 0.0..1000.0_f64, more in 0.0..1000.0_f64, use_kg in 0.1..100.0_f64,
        greater in 1.0..5.0_f64, lead in prop::option::of(0_i64..60),
    ) {
        let mass = Ends::new(AsFed::kg(least), AsFed::kg(least + more / 2.0), AsFed::kg(least + more));
        let slow = lasting(mass, AsFed::kg(use_kg), day(), lead).unwrap();
        let fast = lasting(mass, AsFed::kg(use_kg * greater), day(), lead).unwrap();
        prop_assert!(fast.days.likely <= slow.days.likely);
        prop_assert!(fast.runs_out <= slow.runs_out);
        prop_assert!(fast.order_by <= slow.order_by);
        prop_assert!(slow.order_by <= slow.runs_out && slow.days.in_order());
        // The day it runs out goes by the least: on the day before it there is enough by any end.
        let whole = (slow.runs_out - day()).num_days() as f64;
        prop_assert!(whole <= slow.days.least + 1e-9);
    }

    #[test]
    fn a_kilogram_of_dry_matter_costs_the_same_in_any_unit(
        minor in 1_000_i64..100_000, kg in 1.0..900.0_f64, dry in dry(), waste in 0.0..0.8_f64,
        soaked_out in 0.0..0.4_f64, mcal in 1.0..3.0_f64,
    ) {
        let energy = EnergyDensity::mcal_per_kg(mcal);
        let losses = Losses { waste, soaked_out };
        let money = |minor| Money { minor, currency: pounds() };
        let tonne = feed_cost(Price::Tonne(money(minor * 1000)), dry, energy, losses).unwrap();
        // The same price by the bale, weighed in kilograms and in pounds.
        let per_bale = |weight: AsFed| {
            let cost = feed_cost(Price::Bale { price: money(minor), weight }, dry, energy, losses);
            let cost = cost.unwrap();
            (cost.minor_per_kg_dry * weight.to_kg(), cost.minor_per_mcal * weight.to_kg())
        };
        let pounds = BodyMass::kg(kg).to_lb();
        let (in_kg, in_lb) = (per_bale(AsFed::kg(kg)), per_bale(AsFed::kg(BodyMass::lb(pounds).to_kg())));
        prop_assert!(near(in_kg.0, tonne.minor_per_kg_dry));
        prop_assert!(near(in_lb.0, tonne.minor_per_kg_dry));
        let mj = feed_cost(
            Price::Tonne(money(minor * 1000)), dry, EnergyDensity::mj_per_kg(energy.to_mj_per_kg()), losses,
        ).unwrap();
        prop_assert!(near(mj.minor_per_mcal, tonne.minor_per_mcal));
    }

    #[test]
    fn a_band_of_cost_stands_in_order_and_losses_never_make_it_cheaper(
        minor in 1_000_i64..100_000, bales in bales(), part in 0.0..1.0_f64, lost in 0.0..0.3_f64,
    ) {
        let lot = Lot::of_class(LotId("a".into()), "Hay", ForageClass::Meadow);
        let bale = bale_weight(sampled(&bales).as_ref(), None).unwrap();
        // Bales that differ so much that their mean may be nothing have no price.
        prop_assume!(AsFed::ZERO < bale.mean().least);
        let price = Price::Bale { price: Money { minor, currency: pounds() }, weight: bale.value };
        let (dry, energy) = (lot.dry_matter().unwrap(), supply(&lot, Fed::Dry).energy);
        let cost = |part| {
            let soaked = Soaked { part, lost: Ends::new(lost / 2.0, lost, lost * 1.5) };
            cost_band(price, Some(&bale), &dry, &energy, soaked).unwrap()
        };
        let (none, some) = (cost(0.0), cost(part));
        prop_assert!(some.per_kg_dry.in_order() && some.per_mcal.in_order());
        prop_assert!(none.per_kg_dry.likely <= some.per_kg_dry.likely);
    }

    #[test]
    fn a_hay_over_the_limit_is_never_recommended(
        first in verdict(), second in verdict(), a in 1.0..100.0_f64, b in 1.0..100.0_f64,
    ) {
        let offer = |verdict, per_kg: f64| Offer {
            verdict,
            cost: Some(CostBand {
                per_kg_dry: Ends::exactly(per_kg),
                per_mcal: Ends::exactly(per_kg),
                currency: pounds(),
                from: Provenance::default(),
            }),
        };
        let over = |verdict| matches!(verdict, Some(Verdict::Over { .. }));
        let (chosen, turned) = (
            compare(&offer(first, a), &offer(second, b)).unwrap(),
            compare(&offer(second, b), &offer(first, a)).unwrap(),
        );
        let side = |comparison| match comparison {
            Comparison::BySugar { better, .. } => Some(better),
            Comparison::ByCost { cheaper, .. } => Some(cheaper),
            Comparison::BothOver | Comparison::Alike | Comparison::CostNotKnown => None,
        };
        match side(chosen) {
            Some(Side::First) => prop_assert!(!over(first)),
            Some(Side::Second) => prop_assert!(!over(second)),
            None => {}
        }
        // The order in which two lots are asked does not matter.
        let other = side(turned).map(|side| match side {
            Side::First => Side::Second,
            Side::Second => Side::First,
        });
        prop_assert_eq!(side(chosen), other);
    }

    #[test]
    fn what_stands_in_never_brings_less_dry_matter(old in dry(), new in dry(), hay in 0.5..8.0_f64) {
        let lot = |id: &str, dry| Lot {
            dry,
            ..Lot::of_class(LotId(id.into()), id, ForageClass::Grass)
        };
        for (before, after) in [(Some(old), Some(new)), (Some(old), None), (None, Some(new)), (None, None)] {
            let (before, after) = (lot("a", before), lot("b", after));
            let factor = may_stand_in(&before, &after).unwrap();
            let (was, is) = (before.dry_matter().unwrap(), after.dry_matter().unwrap());
            let (old, new) = (AsFed::kg(hay), AsFed::kg(hay * factor));
            let slack = DryMatter::kg(1e-9);
            prop_assert!(old.dry(was.low) <= new.dry(is.low) + slack);
            prop_assert!(old.dry(was.value) <= new.dry(is.value) + slack);
        }
    }

    #[test]
    fn a_night_without_hay_keeps_the_meal_and_leaves_nobody_with_nothing(
        weight in 100.0..700.0_f64, missing in 0.1..10.0_f64, poor in any::<bool>(),
    ) {
        let of = Hungry {
            kind: Kind::Pony,
            teeth: if poor { Teeth::Poor } else { Teeth::Good },
            risk: RiskLevel::AtRisk,
            weight: BodyMass::kg(weight),
            missing: DryMatter::kg(missing),
            day: DryMatter::kg(missing * 2.0),
            straw: DryMatter::ZERO,
        };
        let found = tonight(&of).unwrap();
        let sugar = found.pulp.each.dry(*PULP_DRY).to_kg() * *PULP_SUGAR_STARCH * 10.0;
        prop_assert!(sugar <= *MEAL_SUGAR_AND_STARCH * weight * (1.0 + 1e-9));
        prop_assert!(2 <= found.pulp.feeds);
        let pulp = found.pulp.dry_weight.dry(*PULP_DRY) + found.pulp.still_missing;
        prop_assert!(near(pulp.to_kg(), missing));
        prop_assert_eq!(found.straw.weight == AsFed::ZERO, poor);
        prop_assert!(AsFed::ZERO < found.borrowed.weight && AsFed::ZERO < found.pulp.dry_weight);
    }
}
