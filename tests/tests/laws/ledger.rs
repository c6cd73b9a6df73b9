//! The ledger: what is offered, left and eaten adds up, over servings, days and weeks, and nothing unknown lowers it.

use crate::seed::config;
use proptest::prelude::*;
use tussock_core::day::{DayOfLedger, HowKnown, Ledger, LeftOver, Serving, Shares, Source, Totals};
use tussock_core::limits::Ends;
use tussock_core::units::{BodyMass, DryMatter, LocalDate};

fn ends() -> impl Strategy<Value = Ends<DryMatter>> {
    (0.0..4.0_f64, 0.0..0.3_f64, 0.0..0.3_f64).prop_map(|(kg, less, more)| {
        Ends::new(kg * (1.0 - less), kg, kg * (1.0 + more)).map(DryMatter::kg)
    })
}

fn left() -> impl Strategy<Value = LeftOver> {
    prop_oneof![
        Just(LeftOver::NotSaid),
        (0.0..=1.0_f64).prop_map(|part| LeftOver::Part(Ends::exactly(part))),
        (0.0..5.0_f64).prop_map(|kg| LeftOver::Dry(DryMatter::kg(kg))),
        Just(LeftOver::CannotTell),
    ]
}

fn day(number: u32) -> LocalDate {
    LocalDate::from_ymd_opt(2026, 5, 1 + number).unwrap()
}

fn serving(number: u32) -> impl Strategy<Value = Serving> {
    let known = prop::sample::select(vec![HowKnown::Seen, HowKnown::Assumed]);
    (
        prop::option::of(ends()),
        prop::option::of(0.0..4.0_f64),
        known,
        left(),
        prop::sample::select(vec![
            Source::Forage(None),
            Source::Feed(None),
            Source::Grass(None),
        ]),
    )
        .prop_map(move |(offered, planned, known, left, from)| Serving {
            day: day(number),
            from,
            planned: planned.map(DryMatter::kg),
            offered,
            known,
            left,
        })
}

fn week() -> impl Strategy<Value = Ledger> {
    let days: Vec<_> = (0..7_u32)
        .map(|number| {
            (prop::collection::vec(serving(number), 0..5), any::<bool>()).prop_map(
                move |(servings, has_plan)| DayOfLedger {
                    day: day(number),
                    has_plan,
                    servings,
                    to_come: DryMatter::ZERO,
                    runs: false,
                },
            )
        })
        .collect();
    days.prop_map(|days| Ledger { days })
}

fn close(a: DryMatter, b: DryMatter) -> bool {
    (a.to_kg() - b.to_kg()).abs() < 1e-9
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn what_was_offered_less_what_was_left_is_what_was_eaten(serving in serving(0)) {
        match (serving.offered, serving.left_dry(), serving.eaten()) {
            (Some(offered), Some(left), Some(eaten)) => {
                let back = left.with(eaten, |left, eaten| left + eaten);
                prop_assert!(close(back.least, offered.least));
                prop_assert!(close(back.likely, offered.likely));
                prop_assert!(close(back.most, offered.most));
                prop_assert!(DryMatter::ZERO <= eaten.least && eaten.most <= offered.most);
            }
            (_, _, eaten) => prop_assert_eq!(eaten, None),
        }
    }

    #[test]
    fn the_days_add_up_to_the_week(week in week()) {
        let whole = week.totals();
        let days: Vec<Totals> = week.days.iter().map(|day| Totals::of(&[day])).collect();
        let sum = |pick: fn(&Totals) -> DryMatter| days.iter().map(pick).sum::<DryMatter>();
        prop_assert!(close(whole.offered.dry.likely, sum(|day| day.offered.dry.likely)));
        prop_assert!(close(whole.left.dry.most, sum(|day| day.left.dry.most)));
        prop_assert!(close(whole.eaten.dry.least, sum(|day| day.eaten.dry.least)));
        prop_assert!(close(
            whole.eaten.dry.likely,
            whole.forage.dry.likely + whole.feed.dry.likely + whole.grass.dry.likely,
        ));
        prop_assert_eq!(whole.eaten.at_least, days.iter().any(|day| day.eaten.at_least));
    }

    #[test]
    fn the_shares_add_up_to_one(week in week()) {
        let totals = week.totals();
        for Shares { seen, assumed, not_known } in
            [totals.offered_known, totals.left_known].into_iter().flatten()
        {
            prop_assert!((seen + assumed + not_known - 1.0).abs() < 1e-9);
            prop_assert!(0.0 <= seen.min(assumed).min(not_known));
        }
    }

    #[test]
    fn an_amount_that_gets_lost_never_lowers_a_sum_silently(week in week(), pick in any::<prop::sample::Index>()) {
        let before = week.totals().eaten;
        let mut lost = week;
        let all: Vec<&mut Serving> = lost.days.iter_mut().flat_map(|day| &mut day.servings).collect();
        if !all.is_empty() {
            let place = pick.index(all.len());
            all.into_iter().nth(place).unwrap().offered = None;
            let after = lost.totals().eaten;
            prop_assert!(after.at_least);
            prop_assert!(after.dry.likely.to_kg() <= before.dry.likely.to_kg() + 1e-9);
            if let Some(level) = lost.level(BodyMass::kg(300.0)) {
                prop_assert!(level.at_least);
            }
        }
    }
}
