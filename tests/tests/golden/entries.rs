//! Samples of entries.

use super::{at, body, date, feed, grams, id, job, lot, name, net, said, time};
use tussock_core::animal::{AnimalId, Answer, FoodId, Handful, PersonId, TubId, VetPermit};
use tussock_core::assess::{ConditionScale, Ribs, Site};
use tussock_core::day::NetKind;
use tussock_core::log::bodies::base::{BodyGrams, BodyHundredths, Count, Tenths};
use tussock_core::log::bodies::*;
use tussock_core::log::{PictureSum, Stamp};
use tussock_core::soak::Water;
use tussock_core::work::{How, Surface};

pub(super) fn conditions() -> Vec<ConditionV1> {
    let site = |site, tenths| SiteScoreV1 {
        site,
        tenths: Tenths::new(tenths).unwrap(),
    };
    [
        ConditionTakenV1::Sites {
            scale: ConditionScale::NineStep,
            sites: vec![
                site(Site::Neck, 75),
                site(Site::Withers, 70),
                site(Site::BehindShoulder, 70),
                site(Site::Ribs, 80),
                site(Site::Loin, 75),
                site(Site::TailHead, 70),
            ],
        },
        ConditionTakenV1::Sites {
            scale: ConditionScale::FiveStep,
            sites: vec![
                site(Site::Neck, 35),
                site(Site::BackAndRibs, 40),
                site(Site::Pelvis, 40),
            ],
        },
        ConditionTakenV1::Overall {
            scale: ConditionScale::NineStep,
            tenths: Tenths::new(75).unwrap(),
        },
        ConditionTakenV1::Ribs {
            ribs: Ribs::FeltWithPressure,
        },
    ]
    .map(|taken| ConditionV1 {
        taken,
        job: Some(job("score/moss/2026-05-05")),
    })
    .to_vec()
}

pub(super) fn photos() -> Vec<PhotoV1> {
    let dated = [Dated::Taken, Dated::File, Dated::Said];
    Pose::ALL
        .into_iter()
        .zip(dated)
        .map(|(pose, dated)| PhotoV1 {
            pose,
            sha256: PictureSum::of(b"moss"),
            width_px: Pixels::new(1_280).unwrap(),
            height_px: Pixels::new(960).unwrap(),
            bytes: PictureBytes::new(214_307).unwrap(),
            dated,
        })
        .collect()
}

pub(super) fn look_over() -> LookOverV1 {
    LookOverV1 {
        gait: Answer::No,
        stance: Answer::No,
        turning: Answer::Yes,
        shifting_weight: Answer::No,
        strong_pulse: Answer::NotKnown,
        foot_pain: Answer::No,
        warm_hoof: Answer::No,
        lying_more: Answer::No,
        note: Some(said("Short on the left rein.")),
        job: Some(job("look/moss/2026-05-05")),
    }
}

pub(super) fn work_sessions() -> Vec<WorkSessionV1> {
    [
        (How::Ridden, Some(Surface::Soft), Answer::Yes),
        (How::Led, Some(Surface::Firm), Answer::No),
        (How::Lunged, Some(Surface::Hard), Answer::NotKnown),
        (How::Free, None, Answer::Yes),
    ]
    .map(|(how, surface, sound)| WorkSessionV1 {
        start: at(0),
        walk_s: GaitSeconds::new(612).unwrap(),
        trot_s: GaitSeconds::new(900).unwrap(),
        canter_s: GaitSeconds::new(0).unwrap(),
        how,
        surface,
        load: Some(body(61_500, "61.5")),
        heart: Some(WorkBeats::new(138).unwrap()),
        settled: Answer::Yes,
        sound,
        note: Some(said("Short at first, then even.")),
        job: Some(job("work/moss/2026-05-05")),
    })
    .to_vec()
}

pub(super) fn appetites() -> Vec<AppetiteV1> {
    [Handful::Refused, Handful::Eaten, Handful::NotTried]
        .map(|handful| AppetiteV1 {
            last_seen_eating: Some(at(30)),
            handful,
            dull: Answer::Yes,
            temperature: Some(CelsiusTenths::new(384).unwrap()),
            pulse: Some(PerMinute::new(44).unwrap()),
            breaths: Some(PerMinute::new(14).unwrap()),
            note: Some(said("Lips curled at the net.")),
        })
        .to_vec()
}

pub(super) fn vitals() -> VitalsV1 {
    VitalsV1 {
        temperature: Some(CelsiusTenths::new(379).unwrap()),
        pulse: Some(PerMinute::new(40).unwrap()),
        breaths: Some(PerMinute::new(12).unwrap()),
        note: Some(said("Before exercise, in the box.")),
    }
}

pub(super) fn vet_word(permit: VetPermit) -> VetWordV1 {
    VetWordV1 {
        animal: AnimalId("moss".to_owned()),
        permit,
        vet: name("the vet"),
        practice: "the practice".to_owned(),
        given: date("2026-05-01"),
        how: "by telephone".to_owned(),
        expires: date("2026-06-26"),
    }
}

pub(super) fn recipe(water: Water) -> RecipeV1 {
    RecipeV1 {
        water,
        minutes: SoakMinutes::new(60).unwrap(),
    }
}

pub(super) fn soak_steps() -> Vec<SoakStepV1> {
    let soak = || id("soak-1");
    let start = |water| SoakStep::Started {
        start: SoakStart {
            tub: Some(TubId("tub-tap".to_owned())),
            lot: lot(),
            hay: Some(feed(3_600, Some("3.6"))),
            nets: vec![net()],
            recipe: recipe(water),
            hangs: None,
        },
    };
    [
        start(Water::TapWinter),
        start(Water::TapSummer),
        start(Water::HandHot),
        SoakStep::Lifted { soak: soak() },
        SoakStep::Drained { soak: soak() },
        SoakStep::Fed { soak: soak() },
        SoakStep::Eaten { soak: soak() },
        SoakStep::ThrownAway { soak: soak() },
        SoakStep::Stopped { soak: soak() },
    ]
    .map(|happened| SoakStepV1 {
        happened,
        job: Some(job("lift/soak-1")),
    })
    .to_vec()
}

pub(super) fn net_timings() -> Vec<NetTimedV1> {
    [
        NetKind::Loose,
        NetKind::LargeHoles,
        NetKind::MediumHoles,
        NetKind::SmallHoles,
        NetKind::DoubleSmall,
    ]
    .map(|net_kind| NetTimedV1 {
        hung: Some(id("hung-1")),
        net: Some(net()),
        net_kind,
        lot: Some(lot()),
        hay: feed(3_600, Some("3,6")),
        soaked: true,
        from: at(0),
        to: at(330),
        found: false,
    })
    .to_vec()
}

pub(super) fn left_overs() -> Vec<LeftOverV1> {
    [
        LeftAmount::ByEye {
            quarters: Quarters::One,
        },
        LeftAmount::Dry {
            hay: feed(400, Some("0.4")),
        },
        LeftAmount::Wet {
            left: feed(2_000, Some("2")),
            hung: feed(9_100, Some("9.1")),
        },
    ]
    .map(|left| LeftOverV1 {
        hung: Some(id("hung-1")),
        net: Some(net()),
        lot: Some(lot()),
        left,
        job: Some(job("left/moss/2026-05-05/1")),
    })
    .to_vec()
}

pub(super) fn plan() -> PlanV1 {
    PlanV1 {
        rules: name("0.1.0"),
        from: date("2026-05-06"),
        review: date("2026-05-20"),
        decided_by: Some(PersonId("keeper".to_owned())),
        inputs: vec![InputV1 {
            record: id("weight-1"),
            stamp: Stamp::from_text("1777960800000-0000-moss0001").unwrap(),
        }],
        weight_g: Some(BodyGrams::new(217_724).unwrap()),
        level: BodyHundredths::new(150).unwrap(),
        lowest: BodyHundredths::new(150).unwrap(),
        amounts: vec![
            AmountV1 {
                lot: Some(lot()),
                food: None,
                dry_matter_g: grams(3_000),
                as_fed_g: grams(3_600),
                soaked: true,
                feeds: None,
                sugar: None,
            },
            AmountV1 {
                lot: None,
                food: Some(FoodId("balancer".to_owned())),
                dry_matter_g: grams(180),
                as_fed_g: grams(200),
                soaked: false,
                feeds: Some(Count::new(2).unwrap()),
                sugar: None,
            },
        ],
        visits: vec![time(6, 30), time(17, 30)],
        nets: vec![NetShareV1 {
            visit: time(6, 30),
            lot: lot(),
            as_fed_g: grams(1_200),
            soaked: true,
            net: Some(net()),
        }],
        soaking: Some(recipe(Water::TapSummer)),
        look_over_days: Count::new(7).unwrap(),
        work_a_week: None,
        gap_accepted_min: Some(GapMinutes::new(420).unwrap()),
        job: Some(job("plan/moss")),
    }
}

pub(super) fn rations() -> Vec<RationV1> {
    [
        DecidedAs::ByHand,
        DecidedAs::Cheapest,
        DecidedAs::Fewest,
        DecidedAs::Lightest,
    ]
    .map(|decided_as| RationV1 {
        from: date("2026-05-12"),
        foods: vec![
            RationFoodV1 {
                food: Some(FoodId("linseed".to_owned())),
                as_fed_g: grams(150),
            },
            RationFoodV1 {
                food: None,
                as_fed_g: grams(210),
            },
        ],
        decided_as,
        decided_by: Some(PersonId("consultant".to_owned())),
        job: None,
    })
    .to_vec()
}

pub(super) fn day_relaid() -> DayRelaidV1 {
    let share = |hour, g, soaked| NetShareV1 {
        visit: time(hour, 0),
        lot: lot(),
        as_fed_g: grams(g),
        soaked,
        net: Some(net()),
    };
    DayRelaidV1 {
        plan: id("plan-1"),
        day: date("2026-05-05"),
        nets: vec![
            share(7, 0, true),
            share(13, 2_600, true),
            share(20, 4_300, false),
        ],
    }
}
