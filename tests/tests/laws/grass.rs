//! No combination of grass, muzzle, soaking and weight takes an animal under its floor or over its ceiling at the end that
//! matters (practice rule 5): whatever is eaten there in fact, between the ends of every estimate, beside the nets of that
//! day.

use crate::floors::{Unsure, moved, unsure};
use crate::seed::config;
use proptest::prelude::*;
use tussock_core::graze::intake::published::{OVER, SUGAR_MOST};
use tussock_core::graze::intake::{OutFor, eaten};
use tussock_core::limits::published::FLOOR;
use tussock_core::limits::{Ends, Offer};
use tussock_core::plan::{Draft, GrassLine, Grazing};
use tussock_core::safety::{SafetyVerdict, judge};
use tussock_core::units::{BodyMass, Span};

/// Turnout as somebody may decide on it.
#[derive(Clone, Debug)]
struct Turnout {
    minutes: i64,
    muzzle: bool,
    weeks: Option<f64>,
    leaf: bool,
}

fn turnout() -> impl Strategy<Value = Turnout> {
    (
        0_i64..=1_440,
        any::<bool>(),
        prop::option::of(0.0_f64..20.0),
        any::<bool>(),
    )
        .prop_map(|(minutes, muzzle, weeks, leaf)| Turnout {
            minutes,
            muzzle,
            weeks,
            leaf,
        })
}

fn allowed(of: &Unsure, out: &Turnout, tested: Option<f64>) -> Option<Draft> {
    let mut all = moved(of);
    if let Some(sugar) = tested {
        for (lot, _) in &mut all.hays {
            crate::floors::test_it(lot, sugar);
        }
    }
    all.grazing = Some(Grazing {
        paddock: None,
        time: Span::minutes(out.minutes),
        muzzle: out.muzzle,
        weeks: out.weeks,
        leaf: out.leaf,
    });
    let draft = all.draft().ok()?;
    match judge(draft) {
        SafetyVerdict::Allowed(plan) => Some(plan.planned().clone()),
        SafetyVerdict::Refused(_) => None,
    }
}

/// What is eaten at the ends on a day with grass: the nets less what hangs less, and the grass.
struct Day {
    least: f64,
    most: f64,
}

fn day(draft: &Draft) -> Option<(Day, Span)> {
    let GrassLine::Counted(grass) = &draft.grass else {
        return None;
    };
    let room = &grass.room;
    let hung: f64 = draft.hays.iter().map(|hay| hay.eaten.to_kg()).sum();
    let part = 1.0 - room.hay_less.to_kg() / hung;
    let ends = |dry: f64, least: f64| least * dry;
    let bought = draft.dry_matter.to_kg() - hung;
    let (mut least, mut most) = (bought, bought);
    for hay in &draft.hays {
        let weighed = hay.weigh_out.to_kg() * part;
        let lost = hay.washed_out.unwrap_or(Ends::exactly(0.0));
        least += ends(weighed * hay.dry.low.to_fraction(), 1.0 - lost.most);
        most += ends(weighed * hay.dry.high.to_fraction(), 1.0 - lost.least);
    }
    // Eaten anew from the model, not from the plan's own figure.
    let out = OutFor {
        kind: draft.animal.kind,
        time: room.time,
        weeks: grass.grazing.weeks,
        muzzle: grass.grazing.muzzle,
        leaf: grass.grazing.leaf,
    };
    let weight = Ends::new(draft.weight.low, draft.weight.value, draft.weight.high);
    let grass = eaten(&out, weight);
    Some((
        Day {
            least: least + grass.least.to_kg(),
            most: most + grass.most.to_kg(),
        },
        room.time,
    ))
}

/// Two of three that are tried may be refused, not more.
fn tried() -> proptest::test_runner::Config {
    let mut config = config();
    config.max_global_rejects = config.cases.saturating_mul(2);
    config
}

const TINY: f64 = 1e-6;

proptest! {
    #![proptest_config(tried())]

    #[test]
    fn a_day_with_grass_keeps_the_floor_at_its_least_and_the_ceiling_at_its_most(
        of in unsure(), out in turnout(), tested in prop::option::of(3.0_f64..12.0),
    ) {
        let draft = allowed(&of, &out, tested);
        prop_assume!(draft.is_some());
        let draft = draft.unwrap();
        let Some((day, time)) = day(&draft) else {
            // No grass at all: a sign, an episode or lameness.
            return Ok(());
        };
        let floor = FLOOR.of(draft.allowance.floor_weight).to_kg();
        prop_assert!(floor <= day.least + TINY, "{} under {floor}", day.least);
        prop_assert!(time <= Span::minutes(out.minutes));
        if Span::ZERO < time && draft.allowance.offer == Offer::Measured {
            let over = OVER.of(draft.weight.low).to_kg();
            let ceiling = draft.dry_matter.to_kg() + over;
            prop_assert!(day.most <= ceiling + TINY, "{} over {ceiling}", day.most);
        }
        if out.muzzle {
            prop_assert!(time <= Span::hours(10));
        }
    }

    #[test]
    fn the_sugar_of_a_day_with_grass_keeps_its_limit_at_the_end_that_is_sweetest(
        of in unsure(), out in turnout(), tested in 3.0_f64..12.0,
    ) {
        let draft = allowed(&of, &out, Some(tested));
        prop_assume!(draft.is_some());
        let draft = draft.unwrap();
        let (Some((_, time)), GrassLine::Counted(grass)) = (day(&draft), &draft.grass) else {
            return Ok(());
        };
        let Some(sugar) = draft.sugar.as_ref().filter(|_| Span::ZERO < time) else {
            return Ok(());
        };
        // Within the limit by itself, or there is no room.
        prop_assert!(sugar.verdict.is_within());
        let hay = sugar.belief.unwrap();
        let hay = hay.mean.to_percent() + 1.2816 * hay.spread.to_percent();
        let dry = draft.least_dry_matter.to_kg() - grass.room.hay_less.to_kg();
        let grass = grass.room.grass.most.to_kg();
        let whole = (dry * hay + grass * SUGAR_MOST.to_percent()) / (dry + grass);
        prop_assert!(whole <= sugar.limit.to_percent() + TINY, "{whole} % over {:?}", sugar.limit);
        prop_assert!(time <= Span::hours(3));
    }

    #[test]
    fn more_hours_a_muzzle_or_leaf_never_turn_the_ends_round(
        minutes in 0_i64..=1_440, kg in 60.0_f64..900.0, muzzle: bool, leaf: bool,
    ) {
        let out = |minutes, muzzle| OutFor {
            kind: tussock_core::animal::Kind::Pony,
            time: Span::minutes(minutes),
            weeks: Some(3.0),
            muzzle,
            leaf,
        };
        let body = Ends::exactly(BodyMass::kg(kg));
        let dry = eaten(&out(minutes, muzzle), body);
        prop_assert!(dry.in_order());
        let longer = eaten(&out(minutes + 60, muzzle), body);
        prop_assert!(dry.most <= longer.most && dry.least <= longer.least);
        let free = eaten(&out(minutes, false), body);
        prop_assert!(dry.most <= free.most && dry.least <= free.least);
        // Never more than is believed of a whole day.
        prop_assert!(dry.most.to_kg() <= 0.045 * kg);
    }
}

#[test]
fn grass_is_tried_on_plans_that_have_room_for_it() {
    let of = Unsure::of_case(3);
    let out = Turnout {
        minutes: 60,
        muzzle: false,
        weeks: None,
        leaf: true,
    };
    let draft = allowed(&of, &out, Some(5.0)).unwrap();
    let (_, time) = day(&draft).unwrap();
    assert!(Span::minutes(15) <= time, "{:?}", draft.grass);
}
