//! A member's share of what its group was offered.

use super::*;
use crate::animal::{Group, GroupId, LotId};
use crate::day::Source;

#[test]
fn a_members_share_of_its_group_is_a_band_by_weight() {
    let mut told = Told::issued();
    let group = Body::Group(
        GroupV1::of(&Group {
            id: GroupId("both".to_owned()),
            name: "Both".to_owned(),
            members: ["bramble"]
                .iter()
                .map(|id| crate::animal::Member {
                    animal: AnimalId((*id).to_owned()),
                    from: told.first,
                    to: None,
                })
                .collect(),
        })
        .unwrap(),
    );
    told.add(
        "both",
        About::group(&GroupId("both".to_owned())),
        told.at(0, 1),
        Known::Seen,
        &group,
    );
    let lot: Option<LotId> = told.nets()[0].lot.clone();
    let hung = Body::NetHung(NetHungV1 {
        net: None,
        filling: None,
        lot: lot.clone(),
        hay: Some(feed(5_000)),
        soak: None,
        not_soaked: None,
        job: None,
    });
    let about_group = About::group(&GroupId("both".to_owned()));
    told.add("pile", about_group, told.at(0, 8), Known::Seen, &hung);
    let own = told.week(1, &bramble());
    let serving = own.days[0]
        .servings
        .iter()
        .find(|serving| serving.from == Source::Forage(lot.clone()) && serving.planned.is_none())
        .unwrap();
    // Alone in its group it gets all of it.
    let whole = told.week(1, &Subject::Group(GroupId("both".to_owned())));
    assert_eq!(serving.offered, whole.days[0].servings[0].offered);
    // Beside one whose weight nobody knows its share is not known.
    let weights = Weights(
        [("a", 300.0), ("b", 200.0)]
            .into_iter()
            .map(|(id, kg)| {
                let weighed = Weighed {
                    kind: Kind::Pony,
                    weight: Ends::exactly(BodyMass::kg(kg)),
                };
                (AnimalId(id.to_owned()), weighed)
            })
            .collect(),
    );
    let ids: Vec<AnimalId> = ["a", "b", "c"].map(|id| AnimalId(id.to_owned())).to_vec();
    let two = weights.part(&ids[0], &[&ids[0], &ids[1]]).unwrap();
    assert!((two.least - 0.42).abs() < 1e-12);
    assert!((two.likely - 0.6).abs() < 1e-12);
    assert!((two.most - 0.84).abs() < 1e-12);
    assert_eq!(weights.part(&ids[0], &[&ids[0], &ids[2]]), None);
}
