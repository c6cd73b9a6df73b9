//! Hay that is not soaked today, two tubs for one visit, several animals in one tub.

use super::*;
use crate::animal::TubId;
use crate::soak::NotSoaked;

const START: &str = "start_soak/animal:bramble/2026-05-05/1.0";
const FIRST: &str = "hang_net/animal:bramble/2026-05-05/1.1";
const SECOND: &str = "hang_net/animal:bramble/2026-05-05/1.2";

fn said(why: NotSoaked) -> DryVisit {
    DryVisit {
        record: RecordId("said".to_owned()),
        start: key(START),
        why,
    }
}

#[test]
fn nets_that_are_not_soaked_today_hang_dry_and_lighter() {
    let mut yard = with_yesterday(Yard::bramble());
    yard.dry.push(said(NotSoaked::Frozen));
    yard.answer(key(START), at("2026-05-05", "05:20"));
    let round = yard.at(at("2026-05-05", "06:20"));
    assert!(of(&round, START).is_none());
    for net in [FIRST, SECOND] {
        let job = of(&round, net).unwrap();
        assert_eq!(job.not_soaked, Some(NotSoaked::Frozen));
        assert!(!job.soaked);
        assert!((job.amount.unwrap().to_kg() - 3.4).abs() < 1e-9);
        assert!((job.before_soaking.unwrap().to_kg() - 3.6).abs() < 1e-9);
    }
    // Tomorrow's are soaked as planned, and so are today's once it is taken back.
    let tomorrow = "start_soak/animal:bramble/2026-05-06/1.0";
    assert!(of(&yard.at(at("2026-05-05", "22:00")), tomorrow).is_some());
    yard.dry.clear();
    yard.answered.pop();
    let back = yard.at(at("2026-05-05", "05:30"));
    assert!(of(&back, START).is_some() && of(&back, FIRST).unwrap().soaked);
}

#[test]
fn hay_that_went_into_the_water_after_all_is_soaked_hay() {
    let mut yard = with_yesterday(Yard::bramble());
    yard.dry.push(said(NotSoaked::NoTime));
    yard.soaks
        .push(soak(at("2026-05-05", "05:10"), Some(START)));
    let round = yard.at(at("2026-05-05", "06:20"));
    let job = of(&round, FIRST).unwrap();
    assert!(job.soaked && job.not_soaked.is_none() && job.soak.is_some());
    assert_eq!(job.amount, Some(AsFed::kg(3.6)));
}

#[test]
fn two_tubs_for_one_visit_are_two_jobs_and_the_start_stays_for_the_rest() {
    let mut yard = with_yesterday(Yard::bramble());
    yard.soaks.push(OpenSoak {
        hangs: vec![key(FIRST)],
        ..soak(at("2026-05-05", "05:15"), Some(START))
    });
    yard.answer(key(START), at("2026-05-05", "05:15"));
    let round = yard.at(at("2026-05-05", "05:20"));
    let start = of(&round, START).unwrap();
    assert_eq!(start.amount, Some(AsFed::kg(3.6)));
    assert!(of(&round, FIRST).unwrap().soak.is_some());
    assert!(of(&round, SECOND).unwrap().soak.is_none());
    yard.soaks.push(OpenSoak {
        id: RecordId("soak-2".to_owned()),
        hangs: vec![key(SECOND)],
        ..soak(at("2026-05-05", "05:16"), Some(START))
    });
    let round = yard.at(at("2026-05-05", "05:20"));
    assert!(of(&round, START).is_none());
    assert!(of(&round, "lift_out/soak-1").is_some() && of(&round, "lift_out/soak-2").is_some());
    assert_eq!(
        of(&round, SECOND).unwrap().soak,
        Some(RecordId("soak-2".to_owned()))
    );
}

#[test]
fn hay_of_several_in_one_tub_is_lifted_out_in_one_job() {
    let mut yard = with_yesterday(Yard::bramble());
    let tub = Some(TubId("tub-2".to_owned()));
    yard.soaks.push(OpenSoak {
        tub: tub.clone(),
        ..soak(at("2026-05-05", "05:15"), Some(START))
    });
    yard.soaks.push(OpenSoak {
        id: RecordId("soak-2".to_owned()),
        tub,
        subject: animal("moss"),
        name: "moss".to_owned(),
        ..soak(at("2026-05-05", "05:15"), None)
    });
    let round = yard.at(at("2026-05-05", "06:20"));
    let lift = of(&round, "lift_out/soak-1").unwrap();
    assert_eq!(lift.name, "bramble, moss");
    assert!((lift.amount.unwrap().to_kg() - 14.4).abs() < 1e-9);
    assert!(of(&round, "lift_out/soak-2").is_none());
    // Each is thrown away for itself.
    assert!(of(&round, "throw_away/soak-1").is_some() && of(&round, "throw_away/soak-2").is_some());
    // Lifted on its own, the other still has its job.
    yard.soaks[0].times.lifted = Some(at("2026-05-05", "06:21"));
    let round = yard.at(at("2026-05-05", "06:22"));
    assert!(of(&round, "lift_out/soak-1").is_none());
    assert_eq!(of(&round, "lift_out/soak-2").unwrap().name, "moss");
}
