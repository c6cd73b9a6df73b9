//! Visits, nets and tubs.

use super::*;
use crate::soak::Ended;
use crate::units::Span;

#[test]
fn a_morning_before_the_first_visit() {
    let round = with_yesterday(Yard::bramble()).at(at("2026-05-05", "05:00"));
    assert_eq!(
        keys(&round),
        [
            "start_soak/animal:bramble/2026-05-05/1.0",
            "hang_net/animal:bramble/2026-05-05/1.1",
            "hang_net/animal:bramble/2026-05-05/1.2",
            "hang_net/animal:bramble/2026-05-05/2.1",
            "start_soak/animal:bramble/2026-05-06/1.0",
            "hang_net/animal:bramble/2026-05-06/1.1",
            "hang_net/animal:bramble/2026-05-06/1.2",
        ]
    );
    // An hour in the water and a quarter to drain before half past six.
    let start = &round.jobs[0];
    assert_eq!(start.due, at("2026-05-05", "05:15"));
    assert_eq!(start.state, JobState::Due);
    assert_eq!(start.amount, Some(AsFed::kg(7.2)));
    assert_eq!(start.visit.unwrap().time, time("06:30"));
    let summary = round.summary();
    assert_eq!(
        (summary.late, summary.due, summary.later, summary.done),
        (0, 1, 6, 0)
    );
}

#[test]
fn a_job_is_later_due_late_and_then_expires() {
    let yard = with_yesterday(Yard::bramble());
    let net = "hang_net/animal:bramble/2026-05-05/1.1";
    let state = |clock: &str| of(&yard.at(at("2026-05-05", clock)), net).map(|job| job.state);
    assert_eq!(state("06:14"), Some(JobState::Later));
    assert_eq!(state("06:15"), Some(JobState::Due));
    assert_eq!(state("06:59"), Some(JobState::Due));
    let by = Span::minutes(42);
    assert_eq!(state("07:12"), Some(JobState::Late { by }));
    assert!(state("17:29").is_some());
    assert_eq!(state("17:30"), None);
}

#[test]
fn late_stands_first_and_then_goes_by_time() {
    let round = with_yesterday(Yard::bramble()).at(at("2026-05-05", "17:20"));
    let late = |job: &Job| matches!(job.state, JobState::Late { .. });
    let first_on_time = round.jobs.iter().position(|job| !late(job)).unwrap();
    assert!(first_on_time > 0);
    assert!(!round.jobs[first_on_time..].iter().any(late));
    assert!(round.jobs[first_on_time..].is_sorted_by_key(|job| job.due));
}

#[test]
fn a_tick_elsewhere_silences_and_a_day_laid_out_anew_loses_nothing() {
    let mut yard = with_yesterday(Yard::bramble());
    let morning = at("2026-05-05", "06:40");
    yard.answer(key("hang_net/animal:bramble/2026-05-05/1.1"), morning);
    assert!(of(&yard.at(morning), "hang_net/animal:bramble/2026-05-05/1.1").is_none());
    // Laid out anew the same morning: other times, another net, a third visit.
    yard.plans.push(IssuedPlan {
        issued: at("2026-05-05", "07:00"),
        from: day("2026-05-05"),
        visits: vec![time("07:30"), time("12:00"), time("18:00")],
        nets: vec![
            net("07:30", false),
            net("07:30", false),
            net("12:00", false),
            net("18:00", false),
        ],
        ..plan("bramble", Vec::new())
    });
    let round = yard.at(at("2026-05-05", "07:15"));
    assert!(of(&round, "hang_net/animal:bramble/2026-05-05/1.1").is_none());
    let other = of(&round, "hang_net/animal:bramble/2026-05-05/1.2").unwrap();
    assert_eq!(other.due, at("2026-05-05", "07:30"));
    assert!(of(&round, "hang_net/animal:bramble/2026-05-05/3.1").is_some());
    assert_eq!(round.summary().done, 1);
}

#[test]
fn a_first_plan_asks_for_nothing_before_it_was_made() {
    let mut yard = Yard::bramble();
    yard.plans[0].issued = at("2026-05-05", "10:00");
    yard.plans[0].from = day("2026-05-05");
    let round = yard.at(at("2026-05-05", "10:05"));
    assert!(round.jobs.iter().all(|job| job.state == JobState::Later));
    assert!(of(&round, "hang_net/animal:bramble/2026-05-05/1.1").is_none());
    assert!(of(&round, "hang_net/animal:bramble/2026-05-05/2.1").is_some());
    assert_eq!(round.away, None);
    // Nor on the next morning does it speak of days away.
    assert_eq!(yard.at(at("2026-05-06", "06:00")).away, None);
}

#[test]
fn an_open_tub_from_the_water_to_the_muck_heap() {
    let mut yard = with_yesterday(Yard::bramble());
    let start = "start_soak/animal:bramble/2026-05-05/1.0";
    yard.soaks = vec![soak(at("2026-05-05", "05:20"), Some(start))];
    let now = at("2026-05-05", "06:26");
    let round = yard.at(now);
    // The start is done by the soak itself.
    assert!(of(&round, start).is_none());
    let lift = of(&round, "lift_out/soak-1").unwrap();
    assert_eq!(lift.due, at("2026-05-05", "06:20"));
    let by = Span::minutes(6);
    assert_eq!(lift.state, JobState::Late { by });
    assert_eq!(lift.tub_name.as_deref(), Some("tub 2"));
    let net = of(&round, "hang_net/animal:bramble/2026-05-05/1.1").unwrap();
    assert_eq!(net.soak, Some(RecordId("soak-1".to_owned())));
    assert_eq!(net.due, at("2026-05-05", "06:35"));
    assert_eq!(
        of(&round, "throw_away/soak-1").unwrap().state,
        JobState::Later
    );

    // Lifted: hanging its nets is what feeds it.
    yard.soaks[0].times.lifted = Some(now);
    let round = yard.at(at("2026-05-05", "06:45"));
    assert!(of(&round, "lift_out/soak-1").is_none());
    assert!(of(&round, "drain_and_feed/soak-1").is_none());
    for nth in [1, 2] {
        let hung = key(&format!("hang_net/animal:bramble/2026-05-05/1.{nth}"));
        yard.answer(hung, at("2026-05-05", "06:50"));
    }
    let at_noon = yard.at(at("2026-05-05", "12:00"));
    assert!(of(&at_noon, "drain_and_feed/soak-1").is_none());
    let away = |clock| {
        let job = yard.at(at("2026-05-05", clock));
        of(&job, "throw_away/soak-1").map(|job| job.state)
    };
    assert_eq!(away("17:19"), Some(JobState::Later));
    assert_eq!(away("17:20"), Some(JobState::Due));
    let next = yard.at(at("2026-05-07", "06:00"));
    let late = of(&next, "throw_away/soak-1").unwrap();
    assert!(matches!(late.state, JobState::Late { .. }));

    let gone = at("2026-05-05", "17:40");
    yard.soaks[0].times.ended = Some((gone, Ended::ThrownAway));
    assert!(of(&yard.at(gone), "throw_away/soak-1").is_none());
}

#[test]
fn a_tub_started_beside_the_plan_has_its_own_feeding() {
    let mut yard = with_yesterday(Yard::bramble());
    yard.soaks = vec![soak(at("2026-05-05", "09:00"), None)];
    yard.soaks[0].times.lifted = Some(at("2026-05-05", "10:00"));
    let round = yard.at(at("2026-05-05", "10:15"));
    let feed = of(&round, "drain_and_feed/soak-1").unwrap();
    assert_eq!(
        (feed.due, feed.state),
        (at("2026-05-05", "10:15"), JobState::Due)
    );
    // Past its time it is only thrown away.
    let round = yard.at(at("2026-05-05", "21:00"));
    assert!(of(&round, "drain_and_feed/soak-1").is_none());
    assert_eq!(
        of(&round, "throw_away/soak-1").unwrap().state,
        JobState::Due
    );
}

#[test]
fn a_net_hung_dry_takes_its_soak_with_it() {
    let mut yard = with_yesterday(Yard::bramble());
    for nth in [1, 2] {
        let hung = key(&format!("hang_net/animal:bramble/2026-05-05/1.{nth}"));
        yard.answer(hung, at("2026-05-05", "06:40"));
    }
    let round = yard.at(at("2026-05-05", "06:45"));
    assert!(of(&round, "start_soak/animal:bramble/2026-05-05/1.0").is_none());
}

#[test]
fn the_missing_hour_goes_forward_and_the_doubled_hour_takes_the_first() {
    let mut yard = Yard::bramble();
    yard.plans[0].issued = at("2026-03-01", "10:00");
    yard.plans[0].from = day("2026-03-01");
    yard.plans[0].visits = vec![time("01:30"), time("17:30")];
    yard.plans[0].nets = vec![net("01:30", true), net("17:30", false)];
    let spring = yard.at(at("2026-03-28", "20:00"));
    let due = |round: &Round, text| of(round, text).unwrap().due.to_ms();
    // 02:30 by the new clock.
    assert_eq!(
        due(&spring, "hang_net/animal:bramble/2026-03-29/1.1"),
        1_774_747_800_000
    );
    // An hour and a quarter of real time before.
    assert_eq!(
        due(&spring, "start_soak/animal:bramble/2026-03-29/1.0"),
        1_774_747_800_000 - 75 * 60_000
    );
    let autumn = yard.at(at("2026-10-24", "20:00"));
    assert_eq!(
        due(&autumn, "hang_net/animal:bramble/2026-10-25/1.1"),
        1_792_888_200_000
    );
}

#[test]
fn a_balancer_in_two_feeds_goes_to_the_first_and_the_last_visit() {
    let mut yard = with_yesterday(Yard::bramble());
    yard.plans[0].visits = vec![time("06:30"), time("12:00"), time("17:30")];
    let feeds = |feeds| PlannedFeed {
        food: None,
        a_day: AsFed::kg(0.5),
        feeds,
    };
    yard.plans[0].feeds = vec![feeds(Some(2)), feeds(None)];
    let round = yard.at(at("2026-05-05", "05:00"));
    let amount = |text: &str| of(&round, text).unwrap().amount.unwrap().to_kg();
    assert_eq!(amount("feed_balancer/animal:bramble/2026-05-05/1.1"), 0.25);
    assert_eq!(amount("feed_balancer/animal:bramble/2026-05-05/3.1"), 0.25);
    // Nobody knows in how many: one job.
    assert_eq!(amount("feed_balancer/animal:bramble/2026-05-05/1.2"), 0.5);
}

#[test]
fn a_text_that_is_no_key_is_refused() {
    for text in [
        "",
        "hang_net",
        "hang_net/animal:moss/2026-05-05",
        "hang_net/soak-1",
        "lift_out/animal:moss/2026-05-05/1.1",
        "hang_net/animal:/2026-05-05/1.1",
        "hang_net/lot:x/2026-05-05/1.1",
        "hang_net/animal:moss/2026-5-5/1.1",
        "hang_net/animal:moss/2026-05-05/01.1",
        "lift_out/",
        "away/2026-05-05",
    ] {
        assert!(Key::from_text(text).is_err(), "{text}");
    }
}
