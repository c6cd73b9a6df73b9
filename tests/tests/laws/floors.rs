//! The floor of practice rule 2 cannot be undercut through soaking, grass, or what nobody knows exactly: whatever the
//! recipe, the band of the weight, the dry matter of the hay and the grass, a plan that safety allows gives the animal at
//! its least end no less than the floor, in the nets as they are issued, soaked or hung dry.

use crate::seed::config;
use proptest::prelude::*;
use std::path::PathBuf;
use tussock_core::animal::{AnimalId, VetPermit, VetWord};
use tussock_core::day::unsoaked;
use tussock_core::forage::{Analyte, Basis, LabReport, Lot, RawReport};
use tussock_core::limits::published::FLOOR;
use tussock_core::log::bodies::PlanV1;
use tussock_core::log::{Case, Gathered, Record, gather};
use tussock_core::safety::{SafetyVerdict, judge};
use tussock_core::soak::{Air, Recipe, Water, dry_loss};
use tussock_core::units::{BodyMass, DryFraction, PartOfBody};

/// Animals with and without grass: it is not counted, so that it cannot stand in for hay. The donkeys go by weight and
/// condition: of a horse on common hay the floor of energy binds before that of dry matter.
const CASES: [&str; 8] = [
    "donkey",
    "donkey",
    "donkey",
    "bramble",
    "bramble-tested-hay",
    "a-quarter-less-on-tape",
    "foundered-shetland",
    "pregnant-mare",
];

fn gathered(index: usize) -> Gathered {
    let name = CASES[index % CASES.len()];
    let folder = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../core/examples/cases");
    let text = std::fs::read_to_string(folder.join(format!("{name}.json"))).unwrap();
    let case = Case::read(&text).unwrap();
    let records: Vec<&Record> = case.log.current().collect();
    let animal = records
        .iter()
        .find(|record| record.kind == tussock_core::log::Kind::Animal)
        .map(|record| AnimalId(record.id.0.clone()))
        .unwrap();
    gather(&records, &animal, case.now, &case.zone, &case.wish).unwrap()
}

#[derive(Clone, Debug)]
pub(crate) struct Unsure {
    case: usize,
    minutes: u32,
    water: Water,
    air: Air,
    weight: f64,
    band: (f64, f64),
    dry: Option<f64>,
    asked: Option<f64>,
    word: Option<f64>,
}

pub(crate) fn unsure() -> impl Strategy<Value = Unsure> {
    (
        0_usize..CASES.len(),
        5_u32..=960,
        prop::sample::select(vec![Water::TapWinter, Water::TapSummer, Water::HandHot]),
        prop::sample::select(vec![Air::Under16, Air::Mild, Air::Over25]),
        0.6_f64..1.4,
        (0.0_f64..0.3, 0.0_f64..0.4),
        prop::option::of(80.0_f64..94.0),
        prop::option::of(0.8_f64..1.6),
        prop::option::of(0.8_f64..1.3),
    )
        .prop_map(
            |(case, minutes, water, air, weight, band, dry, asked, word)| Unsure {
                case,
                minutes,
                water,
                air,
                weight,
                band,
                dry,
                asked,
                word,
            },
        )
}

impl Unsure {
    /// A case on hay of a known dryness, and nothing else moved.
    pub(crate) fn of_case(case: usize) -> Self {
        Self {
            case,
            minutes: 60,
            water: Water::TapWinter,
            air: Air::Under16,
            weight: 1.0,
            band: (0.0, 0.0),
            dry: Some(88.0),
            asked: None,
            word: None,
        }
    }
}

/// Puts a laboratory report on a lot: sugar and starch together, in percent of dry matter.
pub(crate) fn test_it(lot: &mut Lot, sugar: f64) {
    let raw = RawReport {
        values: vec![(Analyte::Wsc, sugar - 1.0), (Analyte::Starch, 1.0)],
        ..RawReport::empty(Basis::DryMatter)
    };
    lot.reports = vec![LabReport::read(raw).unwrap().0];
}

/// The records of a case with everything that is not known moved.
pub(crate) fn moved(of: &Unsure) -> Gathered {
    let mut all = gathered(of.case);
    all.soaking.recipe = Recipe::minutes(of.water, of.minutes).unwrap();
    all.soaking.air = of.air;
    for dated in &mut all.weights {
        let value = dated.weight.value.to_kg() * of.weight;
        dated.weight.value = BodyMass::kg(value);
        dated.weight.low = BodyMass::kg(value * (1.0 - of.band.0));
        dated.weight.high = BodyMass::kg(value * (1.0 + of.band.1));
    }
    for (lot, _) in &mut all.hays {
        if let Some(dry) = of.dry {
            lot.dry = Some(DryFraction::percent(dry).unwrap());
        }
    }
    if let Some(level) = of.word {
        all.words.push(VetWord {
            animal: all.animal.id.clone(),
            permit: VetPermit::LowestLevel(PartOfBody::percent(level)),
            vet: "The vet".to_owned(),
            practice: "The practice".to_owned(),
            given: all.day,
            how: "by telephone".to_owned(),
            expires: all.day + chrono::Days::new(20),
            written: None,
        });
    }
    all.asked = of.asked.map(PartOfBody::percent);
    all
}

/// Two of three that are tried may be refused, not more.
fn tried() -> proptest::test_runner::Config {
    let mut config = config();
    config.max_global_rejects = config.cases.saturating_mul(2);
    config
}

proptest! {
    #![proptest_config(tried())]

    #[test]
    fn the_nets_of_an_allowed_plan_keep_the_floor_at_their_least_end(of in unsure()) {
        let all = moved(&of);
        // Too many that are refused fail the law: it must be tried on plans.
        let plan = all.draft().ok().and_then(|draft| match judge(draft) {
            SafetyVerdict::Allowed(plan) => Some(plan),
            SafetyVerdict::Refused(_) => None,
        });
        prop_assume!(plan.is_some());
        let plan = plan.unwrap();
        let draft = plan.planned();
        let heaviest = draft.allowance.floor_weight.to_kg();
        prop_assert!(draft.weight.high.to_kg() <= heaviest);
        let floor = FLOOR.of(draft.allowance.floor_weight).to_kg();
        let bought = draft.dry_matter.to_kg()
            - draft.layout.hangings.iter().map(|hanging| hanging.dry.to_kg()).sum::<f64>();
        let issued = PlanV1::of(&plan, &[], None).unwrap();
        let (mut least, mut dry_today) = (bought, bought);
        for net in &issued.nets {
            let hay = draft.hays.iter().find(|hay| hay.lot == net.lot).unwrap();
            let dry = hay.dry.low.to_fraction();
            let weighed = net.as_fed_g.as_fed();
            if net.soaked {
                let recipe = all.soaking.recipe;
                let lost = dry_loss(recipe.soak()).part.most;
                least += weighed.to_kg() * dry * (1.0 - lost);
                dry_today += unsoaked(weighed, recipe).unwrap().hay.to_kg() * dry;
            } else {
                least += weighed.to_kg() * dry;
                dry_today += weighed.to_kg() * dry;
            }
        }
        let tiny = 1e-6;
        prop_assert!(floor <= least + tiny, "soaked: {least} under {floor}");
        prop_assert!(floor <= dry_today + tiny, "hung dry: {dry_today} under {floor}");
    }
}

#[test]
fn the_floor_is_tried_on_plans_that_are_allowed_soaked_and_restricted() {
    let of = |asked| Unsure {
        case: 3,
        minutes: 960,
        water: Water::TapWinter,
        air: Air::Under16,
        weight: 1.0,
        band: (0.05, 0.15),
        dry: Some(86.0),
        asked,
        word: None,
    };
    let SafetyVerdict::Allowed(plan) = judge(moved(&of(None)).draft().unwrap()) else {
        panic!("not allowed")
    };
    assert!(plan.planned().soaks());
}
