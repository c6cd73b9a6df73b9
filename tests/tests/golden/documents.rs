//! Samples of documents.

use super::{body, cm, date, feed, name, pounds, reported, said};
use tussock_core::animal::{
    AnimalId, Answer, Appetite, Birth, BodyType, FoodId, Goal, Handful, Health, Insulin,
    InsulinTest, Kind as Equid, Laminitis, Member, Phase, Ppid, Sex, State, Teeth, Temperament,
    VetFlag, Workload,
};
use tussock_core::day::NetKind;
use tussock_core::forage::{Analyte, BaleKind, Basis, Fault, Fed, ForageClass, StoredBadly};
use tussock_core::limits::Nutrient;
use tussock_core::log::bodies::base::{BodyHundredths, Count, MicroDegrees};
use tussock_core::log::bodies::*;
use tussock_core::ration::{Content, FoodClass, TypicalFood};
use tussock_core::soak::Water;

pub(super) fn yard() -> YardV2 {
    YardV2 {
        name: name("Tussock Farm"),
        place: Some(PlaceV2 {
            latitude: MicroDegrees::new(52_100_000).unwrap(),
            longitude: MicroDegrees::new(-3_400_000).unwrap(),
            zone: Some(name("Europe/London")),
        }),
        regions: tussock_core::graze::plants::Region::ALL.to_vec(),
        currency: Some(name("GBP")),
        vet_telephone: Some(said("01632 960000")),
        note: Some(said("Gate \"sticks\"; lift it.\nKey under the trough.")),
    }
}

pub(super) fn person(role: Role) -> PersonV1 {
    PersonV1 {
        name: name("The keeper"),
        role,
        initials: Some(name("TK")),
        telephone: Some(said("01632 960001")),
    }
}

pub(super) fn animals() -> Vec<AnimalV2> {
    let moss = AnimalV2 {
        name: name("Moss"),
        kind: Equid::Pony,
        body_type: Some(BodyType::Shetland),
        sex: Some(Sex::Gelding),
        born: Some(Birth::Day(date("2012-05-01"))),
        height: Some(cm(1_040, "104 cm")),
        state: State::Adult,
        covered: None,
        foaled: None,
        grown: None,
        work: Workload::Maintenance(Temperament::Low),
        health: Health {
            laminitis: Laminitis::Ever {
                last: Some(date("2025-10-12")),
            },
            insulin: Insulin::Tested(InsulinTest {
                dysregulated: true,
                by: "the practice".to_owned(),
                on: date("2026-01-20"),
                test: "oral sugar".to_owned(),
            }),
            ppid: Ppid::Clear,
            teeth: Teeth::Good,
            appetite: Appetite::Off {
                last_seen_eating: Some(super::at(-60)),
                handful: Handful::NotTried,
                dull: Answer::No,
            },
            native_or_cob: Answer::Yes,
            flags: vec![
                VetFlag::PainRelief,
                VetFlag::Sglt2Inhibitor,
                VetFlag::InsulinDrug,
                VetFlag::Corticosteroid {
                    last: date("2026-04-20"),
                },
                VetFlag::TrimmedOrShod {
                    on: date("2026-05-03"),
                },
                VetFlag::FootsoreAfterTrims,
                VetFlag::BoxRest,
                VetFlag::GotAtGrain {
                    at: super::at(-200),
                },
                VetFlag::EscapedOntoGrass {
                    at: super::at(-300),
                },
                VetFlag::Sick,
                VetFlag::SurgeryOrTransport {
                    on: date("2026-05-01"),
                },
                VetFlag::Lame,
            ],
        },
        goal: Goal::Lose,
        phase: Phase::New,
        target: Some(body(185_000, "185")),
        laminitis_on: None,
        lame_on: None,
        phase_on: None,
        box_rest_from: None,
        box_rest_to: None,
        phase_since: None,
        phase_before: None,
        note: Some(said("Hides behind the water butt.")),
    };
    let fern = AnimalV2 {
        name: name("Fern"),
        kind: Equid::Donkey,
        born: Some(Birth::Year(2009)),
        health: Health {
            laminitis: Laminitis::Never,
            appetite: Appetite::Eating,
            ..Health::default()
        },
        ..moss.clone()
    };
    let bramble = AnimalV2 {
        name: name("Bramble"),
        health: Health {
            laminitis: Laminitis::Active,
            ..Health::default()
        },
        body_type: None,
        sex: None,
        born: None,
        height: None,
        target: None,
        note: None,
        ..fern.clone()
    };
    let [in_foal, in_milk, young] = of_stages(&bramble);
    vec![moss, fern, bramble, in_foal, in_milk, young]
}

/// In foal, in milk, growing.
fn of_stages(bramble: &AnimalV2) -> [AnimalV2; 3] {
    let in_foal = AnimalV2 {
        name: name("Sorrel"),
        kind: Equid::Horse,
        sex: Some(Sex::Female),
        state: State::Pregnant,
        covered: Some(date("2025-08-12")),
        ..bramble.clone()
    };
    let in_milk = AnimalV2 {
        name: name("Rowan"),
        state: State::Lactating,
        covered: None,
        foaled: Some(date("2026-04-20")),
        ..in_foal.clone()
    };
    let young = AnimalV2 {
        name: name("Teasel"),
        sex: Some(Sex::Entire),
        born: Some(Birth::Month {
            year: 2025,
            month: 4,
        }),
        state: State::Growing,
        foaled: None,
        grown: Some(body(500_000, "500 kg")),
        ..in_milk.clone()
    };
    [in_foal, in_milk, young]
}

pub(super) fn group() -> GroupV1 {
    GroupV1 {
        name: name("Top field"),
        members: vec![
            Member {
                animal: AnimalId("moss".to_owned()),
                from: date("2026-04-01"),
                to: None,
            },
            Member {
                animal: AnimalId("fern".to_owned()),
                from: date("2026-03-01"),
                to: Some(date("2026-04-30")),
            },
        ],
    }
}

pub(super) fn lots() -> Vec<LotV1> {
    let values = Analyte::ALL.iter().map(|analyte| LabValueV1 {
        analyte: *analyte,
        name: Some(name("as printed")),
        reported: reported("1.50", "%", "1,50 %"),
    });
    let report = LabReportV1 {
        basis: Basis::AsFed,
        fed: Fed::Dry,
        dry_matter: Some(reported("88.4", "%", "88,4")),
        energy: Some(reported("8.90", "MJ/kg", "8.90")),
        values: values.collect(),
        cores: Some(Count::new(12).unwrap()),
        on: Some(date("2026-02-14")),
        lab: Some(name("The county laboratory")),
        number: Some(name("26-0417")),
    };
    let first = LotV1 {
        name: name("Back field, first cut"),
        class: ForageClass::Meadow,
        dry_matter: Some(reported("87", "%", "87")),
        reports: vec![
            report.clone(),
            LabReportV1 {
                basis: Basis::DryMatter,
                fed: Fed::Soaked,
                ..report
            },
        ],
        price: Some(PriceV1::Bale {
            price: pounds(650),
            weight: Some(feed(18_500, Some("18.5"))),
        }),
        bought_on: Some(date("2025-09-01")),
        opened_on: Some(date("2026-05-04")),
        faults: vec![
            Fault::Mould,
            Fault::Dust,
            Fault::Heated,
            Fault::DeadAnimal,
            Fault::PoisonousPlant,
            Fault::TornWrap,
        ],
        slice: Some(feed(1_200, Some("1.2"))),
        note: Some(said("Stacked by the door.")),
        delivery: None,
        in_place_of: None,
    };
    let second = LotV1 {
        name: name("Big bales"),
        price: Some(PriceV1::Tonne {
            price: pounds(14_000),
        }),
        reports: Vec::new(),
        ..first.clone()
    };
    let third = LotV1 {
        name: name("Lane field"),
        price: Some(PriceV1::Bale {
            price: pounds(700),
            weight: None,
        }),
        reports: Vec::new(),
        delivery: Some(Box::new(delivery())),
        in_place_of: Some(super::lot()),
        ..first.clone()
    };
    let fourth = LotV1 {
        name: name("Round bales"),
        delivery: Some(Box::new(DeliveryV1 {
            bought: Some(HeldV1::Weight {
                weight: LotWeight {
                    g: LotGrams::new(4_200_000).unwrap(),
                    typed: Some(said("4200")),
                },
            }),
            bale: Some(BaleKind::Round),
            ..DeliveryV1::empty()
        })),
        ..third.clone()
    };
    vec![first, second, third, fourth]
}

fn delivery() -> DeliveryV1 {
    let heat = |on: &str, rod| HeatV1 { on: date(on), rod };
    DeliveryV1 {
        bought: Some(HeldV1::Bales {
            tenths: BaleTenths::new(1_200).unwrap(),
        }),
        bale: Some(BaleKind::SmallSquare),
        bales: vec![feed(18_400, Some("18.4")), feed(19_100, Some("19.1"))],
        slices: vec![feed(1_900, Some("1.9")), feed(2_150, Some("2.15"))],
        moisture: Some(reported("14.5", "%", "14,5")),
        baled_on: Some(date("2025-06-20")),
        stored: StoredBadly::ALL.to_vec(),
        heat: vec![
            heat(
                "2025-06-24",
                RodV1::Read {
                    celsius: StackTenths::new(415).unwrap(),
                },
            ),
            heat("2025-06-27", RodV1::Held {}),
            heat("2025-06-29", RodV1::TooHot {}),
        ],
        lead_days: Some(Count::new(10).unwrap()),
    }
}

/// What was counted of a lot: in bales, and by weight.
pub(super) fn counts() -> Vec<LotCountV1> {
    vec![
        LotCountV1 {
            left: HeldV1::Bales {
                tenths: BaleTenths::new(315).unwrap(),
            },
            note: Some(said("Half a bale is open.")),
        },
        LotCountV1 {
            left: HeldV1::Weight {
                weight: LotWeight {
                    g: LotGrams::new(640_000).unwrap(),
                    typed: Some(said("640")),
                },
            },
            note: None,
        },
    ]
}

/// The food of the first version's file, as it is read now.
fn first_food() -> FoodV2 {
    FoodV2 {
        name: name("Balancer"),
        class: FoodClass::Balancer,
        profile: None,
        basis: LabelBasis::AsFed,
        dry_matter: Some(reported("89", "%", "89")),
        serving: None,
        label: vec![
            LabelLineV2 {
                content: Some(Content::Of(Nutrient::CrudeProtein)),
                name: Some(name("Crude protein")),
                reported: reported("14.5", "%", "14,5 %"),
            },
            LabelLineV2 {
                content: Some(Content::SugarStarch),
                name: Some(name("Sugar and starch")),
                reported: reported("12", "%", "12"),
            },
            LabelLineV2 {
                content: Some(Content::Starch),
                name: Some(name("Starch")),
                reported: reported("6", "%", "6"),
            },
        ],
        rate: Some(reported("100", "g/100kg", "100 g per 100 kg")),
        scoop: None,
        pack: Some(feed(15_000, Some("15 kg"))),
        price: Some(pounds(2_495)),
    }
}

/// The food of the first version, one by its label with every content, one of every class by a typical food.
pub(super) fn foods() -> Vec<FoodV2> {
    let mut label: Vec<LabelLineV2> = Content::all()
        .map(|content| LabelLineV2 {
            content: Some(content),
            name: None,
            reported: reported("1.5", "mg/serving", "1,5"),
        })
        .collect();
    label.push(LabelLineV2 {
        content: None,
        name: Some(name("Live yeast")),
        reported: reported("3", "CFU/kg", "3"),
    });
    let by_label = FoodV2 {
        basis: LabelBasis::DryMatter,
        serving: Some(reported("50", "g", "50 g")),
        label,
        scoop: Some(feed(120, Some("120 g"))),
        ..first_food()
    };
    let by_class = FoodClass::ALL.iter().map(|class| FoodV2 {
        class: *class,
        profile: TypicalFood::ALL
            .iter()
            .copied()
            .find(|food| food.class() == *class),
        label: Vec::new(),
        ..first_food()
    });
    [first_food(), by_label]
        .into_iter()
        .chain(by_class)
        .collect()
}

pub(super) fn feeding() -> FeedingV1 {
    FeedingV1 {
        hays: vec![HayShareV1 {
            lot: super::lot(),
            percent: PartPercent::new(100).unwrap(),
        }],
        balancer: Some(FoodId("balancer".to_owned())),
        net_kind: NetKind::SmallHoles,
        most_at_once: Some(feed(6_000, Some("6"))),
        soaking: Some(super::entries::recipe(Water::HandHot)),
        asked: Some(BodyHundredths::new(125).unwrap()),
    }
}
