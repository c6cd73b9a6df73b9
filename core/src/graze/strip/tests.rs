//! Tests of strips and tracks.

use super::*;
use crate::animal::{
    Animal, AnimalId, Answer, Goal, Health, Kind, Laminitis, Phase, StageFacts, State, Temperament,
    Workload,
};
use crate::graze::GrazeError;
use crate::graze::plants::PlantId;
use crate::graze::sward::SwardKind;
use crate::limits::Ends;
use crate::units::{Area, DryMatter, Length, SwardMass};

fn near(a: f64, b: f64) -> bool {
    (a - b).abs() < 1e-9 * b.abs().max(1.0)
}

fn wanted() -> StripFor {
    StripFor {
        asked: DryMatter::kg(5.0),
        days: 1,
        available: Ends::new(693.0, 990.0, 1287.0).map(SwardMass::kg_per_ha),
        width: Length::m(10.0),
        back_fence: true,
    }
}

#[test]
fn a_strip_is_sized_for_the_most_and_says_the_least() {
    let made = strip(&wanted()).unwrap();
    assert!(near(made.area.to_sq_m(), 50_000.0 / (1287.0 * 0.8)));
    assert!(near(made.finds.most.to_kg(), 5.0));
    assert!(made.finds.in_order());
    assert!(near(
        made.finds.least.to_kg(),
        693.0 * 0.5 * made.area.to_hectares()
    ));
    assert!(made.by_likely.unwrap() > made.area && made.by_least > made.by_likely);
    assert!(near(made.fences.onward.to_m(), made.area.to_sq_m() / 10.0));
    assert!(near(made.fences.lead_paces.likely, 10.0 / 0.75));
    assert_eq!(made.fences.back.unwrap()[0], Length::m(7.0));
}

#[test]
fn a_strip_of_several_days_holds_them_all() {
    for days in 1..=7 {
        let made = strip(&StripFor { days, ..wanted() }).unwrap();
        assert!(near(made.finds.most.to_kg(), 5.0), "{days}");
        assert!(made.finds.in_order());
    }
    for days in [0, 8, u32::MAX] {
        assert!(strip(&StripFor { days, ..wanted() }).is_err(), "{days}");
    }
}

#[test]
fn a_strip_is_refused_where_there_is_none() {
    let nothing = Ends::exactly(SwardMass::ZERO);
    assert_eq!(
        strip(&StripFor {
            available: nothing,
            ..wanted()
        })
        .unwrap_err(),
        GrazeError::NothingToGraze {
            most: SwardMass::ZERO
        }
    );
    assert_eq!(
        strip(&StripFor {
            asked: DryMatter::ZERO,
            ..wanted()
        })
        .unwrap_err(),
        GrazeError::NothingAsked
    );
    assert!(
        strip(&StripFor {
            width: Length::ZERO,
            ..wanted()
        })
        .is_err()
    );
    let some = Ends::new(0.0, 0.0, 500.0).map(SwardMass::kg_per_ha);
    let made = strip(&StripFor {
        available: some,
        ..wanted()
    })
    .unwrap();
    assert_eq!((made.by_likely, made.by_least), (None, None));
    assert_eq!(made.finds.least, DryMatter::ZERO);
}

#[test]
fn each_reason_stands_against_a_strip() {
    let at = |cm| Some(Ends::exactly(Length::cm(cm)));
    let plain = StripWhere {
        flush: false,
        recent_case: false,
        seeding: Answer::NotKnown,
        kind: SwardKind::MixedWithRyegrass,
        plants: &[PlantId::Cocksfoot, PlantId::Ragwort],
        height: None,
    };
    assert!(may_strip(&plain).is_empty());
    let all = may_strip(&StripWhere {
        flush: true,
        recent_case: true,
        seeding: Answer::Yes,
        kind: SwardKind::Ryegrass,
        height: at(4.0),
        ..plain
    });
    assert_eq!(all.len(), 5);
    assert!(matches!(all[4], StripAgainst::Bare { .. }));
    let short = may_strip(&StripWhere {
        height: at(8.0),
        ..plain
    });
    assert!(matches!(short[..], [StripAgainst::Short { .. }]));
    assert!(
        may_strip(&StripWhere {
            height: at(12.0),
            ..plain
        })
        .is_empty()
    );
    let timothy = may_strip(&StripWhere {
        plants: &[PlantId::Timothy],
        ..plain
    });
    assert_eq!(timothy, [StripAgainst::HighSugarSward]);
    let mut limits = LIMITS.to_vec();
    limits.sort_unstable();
    limits.dedup();
    assert_eq!(limits.len(), LIMITS.len());
}

#[test]
fn a_back_fence_never_stands_in_the_strip() {
    let made = strip(&StripFor {
        asked: DryMatter::kg(40.0),
        width: Length::m(10.0),
        ..wanted()
    });
    let fences = made.unwrap().fences;
    assert!(
        fences
            .back
            .unwrap()
            .iter()
            .all(|back| *back >= fences.onward)
    );
    assert!(near(lead_move(Length::m(63.0)).to_m(), 63.0 / 26.0));
}

#[test]
fn a_track_keeps_hay_apart_and_water_far() {
    let field = Field {
        length: Length::m(100.0),
        width: Length::m(60.0),
    };
    let made = track(field, Length::m(4.0), 4).unwrap();
    assert!(near(made.length.to_m(), 304.0));
    assert!(near(made.inside.to_sq_m(), 92.0 * 52.0));
    assert!(near((made.area + made.inside).to_sq_m(), 6000.0));
    assert_eq!(made.hay.len(), 5);
    assert!(near(made.water_to_hay.to_m(), 76.0) && near(made.apart.to_m(), 38.0));
    assert!(near(made.hay[4].to_m(), 304.0 - 76.0));
    assert!(
        !made
            .findings
            .iter()
            .any(|f| matches!(f, TrackFinding::TooShort { .. }))
    );
}

#[test]
fn a_track_that_is_too_short_or_too_wide_says_so() {
    let small = Field {
        length: Length::m(12.0),
        width: Length::m(10.0),
    };
    let made = track(small, Length::m(3.0), 12).unwrap();
    assert!(near(made.length.to_m(), 32.0));
    let short = TrackFinding::TooShort {
        asked: 13,
        holds: 5,
    };
    assert_eq!(made.findings[0], short, "{made:?}");
    assert!(made.water_to_hay >= Length::m(4.8) - Length::cm(1e-6));
    assert_eq!(
        track(small, Length::m(5.0), 2).unwrap_err(),
        GrazeError::TrackTooWide {
            width: Length::m(5.0),
            under: Length::m(5.0)
        }
    );
    assert!(track(small, Length::m(1.0), 2).is_err());
    assert!(track(small, Length::m(3.0), 0).is_err());
    assert!(Area::ZERO < made.inside);
    assert!(near((farther_on_a_track() * 1000.0).round(), 315.0));
}

#[test]
fn a_case_is_recent_for_a_year_and_where_nobody_said_when() {
    let day = |text: &str| text.parse::<crate::units::LocalDate>().unwrap();
    let today = day("2026-05-05");
    let mut animal = Animal {
        id: AnimalId("fern".into()),
        name: "Fern".into(),
        kind: Kind::Pony,
        body_type: None,
        sex: None,
        born: None,
        height: None,
        state: State::Adult,
        stage: StageFacts::default(),
        work: Workload::Maintenance(Temperament::Average),
        health: Health::default(),
        goal: Goal::Lose,
        phase: Phase::New,
        target: None,
    };
    let mut recent = |laminitis| {
        animal.health.laminitis = laminitis;
        recent_case(&animal, today)
    };
    assert!(recent(Laminitis::Active));
    assert!(recent(Laminitis::Ever { last: None }));
    let ever = |text| Laminitis::Ever {
        last: Some(day(text)),
    };
    assert!(recent(ever("2025-06-01")) && !recent(ever("2025-05-05")));
    assert!(!recent(Laminitis::Never) && !recent(Laminitis::NotKnown));
}
