//! Samples of what is kept of grass.

use super::{at, date, job, name, said, time};
use tussock_core::animal::{Answer, PaddockId};
use tussock_core::graze::season::Noted;
use tussock_core::graze::sward::{Leaf, SwardKind};
use tussock_core::log::bodies::base::{Count, Millimetres, SquareMetres};
use tussock_core::log::bodies::*;

fn hill() -> PaddockId {
    PaddockId("paddock-hill".to_owned())
}

fn mm(values: &[i64]) -> Vec<Millimetres> {
    values
        .iter()
        .map(|value| Millimetres::new(*value).unwrap())
        .collect()
}

pub(super) fn paddocks() -> Vec<PaddockV2> {
    let mut all: Vec<PaddockV2> = SwardKind::ALL
        .into_iter()
        .map(|kind| PaddockV2 {
            name: name("Hill"),
            area_m2: Some(SquareMetres::new(4_200).unwrap()),
            shade: Some(true),
            kind: Some(kind),
            plants: vec![name("perennial_ryegrass"), name("ragwort")],
            strip: Some(StripV2 {
                width_mm: GroundMillimetres::new(60_000).unwrap(),
                back_fence: true,
                residual_mm: Millimetres::new(75).unwrap(),
                days: Count::new(1).unwrap(),
            }),
            rest_from: Some(date("2026-05-05")),
            note: Some(said("Oaks along the north side; trough by the gate.")),
        })
        .collect();
    all.push(PaddockV2::named(name("Bottom")));
    all
}

pub(super) fn swards() -> Vec<SwardV1> {
    let mut all: Vec<SwardV1> = Leaf::ALL
        .into_iter()
        .zip([Answer::No, Answer::Yes, Answer::NotKnown])
        .map(|(leaf, seeding)| SwardV1 {
            leaf: Some(leaf),
            seeding,
            heights_mm: mm(&[80, 95, 110]),
            plate: Some(PlateV1 {
                clicks: vec![Count::new(14).unwrap(), Count::new(17).unwrap()],
            }),
            note: Some(said("Poached by the gate.")),
        })
        .collect();
    all.push(SwardV1 {
        leaf: None,
        seeding: Answer::NotKnown,
        heights_mm: Vec::new(),
        plate: None,
        note: None,
    });
    all
}

pub(super) fn grazings() -> Vec<GrazingV1> {
    let out = GrazingV1 {
        paddock: Some(hill()),
        from: date("2026-05-05"),
        minutes: GrazingMinutes::new(90).unwrap(),
        muzzle: true,
        adapted_since: Some(date("2026-04-01")),
        out: Some(time(6, 30)),
        stopped: false,
    };
    let stopped = GrazingV1 {
        paddock: None,
        muzzle: false,
        adapted_since: None,
        out: None,
        stopped: true,
        ..out.clone()
    };
    vec![out, stopped]
}

pub(super) fn turnouts() -> Vec<TurnoutV1> {
    let back = TurnoutV1 {
        paddock: Some(hill()),
        muzzle: true,
        bring_in_by: Some(at(90)),
        came_in: Some(at(95)),
        job: Some(job("turn_out/animal:moss/2026-05-05/0.0")),
    };
    let out = TurnoutV1 {
        paddock: None,
        muzzle: false,
        bring_in_by: None,
        came_in: None,
        job: None,
    };
    vec![back, out]
}

pub(super) fn season_notes() -> Vec<SeasonNoteV1> {
    Noted::ALL
        .into_iter()
        .map(|what| SeasonNoteV1 {
            date: date("2026-04-12"),
            what,
            note: Some(said("The bottom field first, as last year.")),
        })
        .collect()
}
