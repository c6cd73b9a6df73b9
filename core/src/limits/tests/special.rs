//! Animals with rules of their own, and inputs that are refused.

use super::super::*;
use super::{bramble, close, day, fat_twice, in_order, percent};
use crate::animal::{
    Animal, Answer, Birth, BodyType, Goal, Kind, Laminitis, Phase, Ppid, State, Teeth, VetFlag,
};
use crate::units::{BodyMass, Energy, Length};

#[test]
fn a_shetland_that_foundered_gets_its_1_5_percent_on_day_one_and_that_is_no_restriction() {
    let mut moss = bramble();
    moss.kind = Kind::Pony;
    moss.body_type = Some(BodyType::Shetland);
    moss.height = Some(Length::cm(98.0));
    moss.phase = Phase::New;
    moss.health.laminitis = Laminitis::Ever { last: None };
    let mut of = in_order(&moss, &[]);
    of.weight = Ends::exactly(BodyMass::kg(180.0));
    of.weighings = Weighings::default();
    of.look_over_clean = Answer::NotKnown;
    of.days_at_start = 0;
    of.asked = None;
    let given = allowance(&of).unwrap();
    assert!(close(given.level, 1.5) && !given.is_restriction());
    assert!(given.why.contains(&AllowanceReason::StartingLevel));
    // Less without a vet is not there for it, whatever else is in order.
    assert!(close(given.without_vet_floor, 1.5));
    moss.phase = Phase::Losing;
    let scores = fat_twice();
    let given = allowance(&in_order(&moss, &scores)).unwrap();
    assert_eq!(
        given.bars,
        [RestrictionBar::OnVetList(VetListReason::Shetland)]
    );
    assert!(close(given.level, 1.5));
    assert!(given.why.contains(&AllowanceReason::NotGiven {
        wanted: percent(1.25)
    }));
}

#[test]
fn a_donkey_starts_at_1_3_percent_and_every_restriction_starts_with_the_vet() {
    let scores = fat_twice();
    for kind in [Kind::Donkey, Kind::Mule] {
        let mut fern = bramble();
        fern.kind = kind;
        let mut of = in_order(&fern, &scores);
        of.asked = None;
        let given = allowance(&of).unwrap();
        assert!(close(given.level, 1.3) && !given.is_restriction());
        assert_eq!(
            given.bars,
            [RestrictionBar::OnVetList(VetListReason::DonkeyOrMule)]
        );
        let asked = Energy::mcal(5.0);
        assert_eq!(
            judge_energy(kind, State::Adult, BodyMass::kg(180.0), asked, false),
            Ok(EnergyVerdict::ByWeightAndCondition)
        );
    }
}

#[test]
fn a_mare_in_foal_is_not_restricted_and_her_needs_are_not_made_up() {
    let scores = fat_twice();
    let mut mare = bramble();
    mare.state = State::Pregnant;
    let mut of = in_order(&mare, &scores);
    of.target = Some(Ends::exactly(BodyMass::kg(520.0)));
    let given = allowance(&of).unwrap();
    assert!(close(given.level, 1.5));
    assert_eq!(
        given.bars,
        [RestrictionBar::OnVetList(VetListReason::Pregnant)]
    );
    assert_eq!(given.basis, Basis::CurrentWeight);
    let (found, findings) = needs(&NeedFor {
        kind: Kind::Horse,
        stage: Stage::of(State::Pregnant),
        work: mare.work,
        current: BodyMass::kg(500.0),
        target: None,
    })
    .unwrap();
    assert!(found.rows.is_empty() && found.energy.is_none());
    assert_eq!(
        findings,
        [Finding::StageNotKnown(State::Pregnant, StageGap::NotSaid)]
    );
}

#[test]
fn growing_means_under_three_and_an_unknown_age_is_not_grown() {
    let scores = fat_twice();
    let mut young = bramble();
    young.born = Some(Birth::Year(2023));
    let given = allowance(&in_order(&young, &scores)).unwrap();
    assert!(given.bars.contains(&RestrictionBar::NotAdult {
        state: State::Adult,
        age: Some(2)
    }));
    young.born = None;
    let given = allowance(&in_order(&young, &scores)).unwrap();
    assert_eq!(given.bars, [RestrictionBar::AgeNotKnown]);
    assert!(close(given.level, 1.5));
}

/// A change to an animal, and the reason it puts it on the list for.
type Case = (fn(&mut Animal), VetListReason);

#[test]
fn the_vets_list_knows_everybody_on_it() {
    let on = day("2026-05-05");
    let list = |change: fn(&mut Animal)| {
        let mut animal = bramble();
        change(&mut animal);
        vet_list(&animal, on, Some(7.0))
    };
    assert!(list(|_| {}).is_empty());
    let cases: [Case; 14] = [
        (|a| a.state = State::Lactating, VetListReason::Lactating),
        (
            |a| a.health.laminitis = Laminitis::Active,
            VetListReason::LaminitisNow,
        ),
        (
            |a| a.phase = Phase::Recovering,
            VetListReason::EpisodeNotOver,
        ),
        (
            |a| a.born = Some(Birth::Year(2006)),
            VetListReason::VeryOld { age: 20 },
        ),
        (|a| a.health.teeth = Teeth::Poor, VetListReason::PoorTeeth),
        (
            |a| a.health.ppid = Ppid::Untreated,
            VetListReason::PpidUntreated,
        ),
        (
            |a| a.health.flags = vec![VetFlag::Sglt2Inhibitor],
            VetListReason::Sglt2Inhibitor,
        ),
        (
            |a| a.health.flags = vec![VetFlag::InsulinDrug],
            VetListReason::InsulinDrug,
        ),
        (
            |a| a.health.flags = vec![VetFlag::PainRelief],
            VetListReason::PainRelief,
        ),
        (
            |a| a.health.flags = vec![VetFlag::BoxRest],
            VetListReason::BoxRest,
        ),
        (
            |a| a.health.flags = vec![VetFlag::Sick],
            VetListReason::Sick,
        ),
        (
            |a| a.health.flags = vec![VetFlag::Lame],
            VetListReason::Lame,
        ),
        (
            |a| {
                a.health.flags = vec![VetFlag::Corticosteroid {
                    last: day("2026-04-05"),
                }];
            },
            VetListReason::Corticosteroid {
                last: day("2026-04-05"),
            },
        ),
        (
            |a| {
                a.health.flags = vec![VetFlag::SurgeryOrTransport {
                    on: day("2026-04-07"),
                }];
            },
            VetListReason::SurgeryOrTransport {
                on: day("2026-04-07"),
            },
        ),
    ];
    for (change, reason) in cases {
        assert_eq!(list(change), [reason]);
    }
    assert!(
        list(|a| a.health.flags = vec![VetFlag::Corticosteroid {
            last: day("2026-04-04")
        }])
        .is_empty()
    );
    assert_eq!(
        vet_list(&bramble(), on, Some(4.9)),
        [VetListReason::Thin { condition: 4.9 }]
    );
}

#[test]
fn a_thin_animal_has_two_percent_and_more() {
    let mut thin = bramble();
    thin.goal = Goal::Gain;
    thin.phase = Phase::NeedsWeight;
    let scores = fat_twice();
    let given = allowance(&in_order(&thin, &scores)).unwrap();
    assert!(close(given.level, 2.0));
    assert_eq!(given.offer, Offer::AtLeast);
    assert_eq!(given.bars, [RestrictionBar::NeedsWeight]);
}

#[test]
fn in_an_episode_hay_stays_in_front_of_it() {
    let mut foundered = bramble();
    foundered.phase = Phase::Episode;
    foundered.health.laminitis = Laminitis::Active;
    let scores = fat_twice();
    let mut of = in_order(&foundered, &scores);
    of.now = Some(percent(1.25));
    of.asked = None;
    let given = allowance(&of).unwrap();
    assert!(close(given.level, 1.5));
    assert_eq!(given.offer, Offer::AtLeast);
    assert_eq!(intervals(Phase::Episode).review, Review::AtVetsWord);
}

#[test]
fn a_weight_that_is_not_believed_is_refused_with_its_field() {
    let (animal, scores) = (bramble(), fat_twice());
    let mut of = in_order(&animal, &scores);
    of.weight = Ends::exactly(BodyMass::kg(f64::NAN));
    assert!(matches!(
        allowance(&of),
        Err(LimitsError::OutOfRange(error)) if error.bounds.field == "weight_kg"
    ));
    of.weight = Ends::new(
        BodyMass::kg(500.0),
        BodyMass::kg(450.0),
        BodyMass::kg(550.0),
    );
    assert!(matches!(
        allowance(&of),
        Err(LimitsError::NotInOrder {
            field: "weight_kg",
            ..
        })
    ));
}
