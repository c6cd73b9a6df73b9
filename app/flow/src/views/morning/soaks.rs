//! Tubs and weather.

use super::*;

#[test]
fn the_morning_from_the_water_to_the_muck_heap() {
    let mut yard_of = bramble();
    for _ in 0..4 {
        yard_of.weigh(at(5, "05:50:00"), "4.35");
    }
    let six = at(5, "06:05:00");
    let first = yard_of.today(six);
    let job = first.first().unwrap();
    assert_eq!(job.kind, JobKind::StartSoak);
    assert!(ticks(job));
    assert_eq!(
        kg(wanted(&yard_of.shelf, &first, &yard())[0].amount.unwrap()),
        7.2
    );
    yard_of.tick(six, JobKind::StartSoak);

    let words = English::default();
    let later = at(5, "06:23:00");
    let tub = yard_of.soak(later);
    assert_eq!(tub.soak.tub_name.as_deref(), Some("Tub 1"));
    let state = tub.state(later);
    assert_eq!(
        words.slot_note(&state, later, &zone()),
        "at 07:05. It is 06:23."
    );
    assert!(matches!(state, TubState::InWater { left, .. } if left.to_minutes() == 42));
    assert_eq!(
        words.feeds_like(tub.soak.hay.unwrap(), tub.like),
        "7.2 kg before soaking, feeds like about 6.8"
    );
    let cord = tub.cord(later);
    assert_eq!(
        cord.map(|step| step.step),
        [
            TubStep::InWater,
            TubStep::LiftOut,
            TubStep::Feed,
            TubStep::ThrowAway
        ]
    );
    assert_eq!(cord[3].at, at(5, "18:05:00"));
    assert_eq!(cord[3].standing, Standing::Later);

    // 07:05, and a quarter past: late, on the tub, in the shed and on the round.
    let due = at(5, "07:05:00");
    assert_eq!(yard_of.soak(due).cord(due)[1].standing, Standing::Due);
    let late = at(5, "07:15:00");
    assert_eq!(yard_of.soak(late).next(late).1, Standing::Late);
    assert!(
        shed(&yard_of.shelf, &yard_of.today(late))
            .due_tub(late)
            .is_some()
    );
    let round = yard_of.today(late);
    let lift = round.first().unwrap();
    assert_eq!(
        (lift.kind, standing(lift)),
        (JobKind::LiftOut, Standing::Late)
    );
    assert_eq!(words.do_now(lift), "Lift out tub 1 now");
    assert!(words.job_stands(lift).ends_with("10 min late"));

    yard_of.go_on(late);
    let drained = at(5, "07:31:00");
    assert_eq!(yard_of.soak(drained).state(drained).step(), TubStep::Feed);
    // Feeding it hangs its two nets, and the round knows.
    yard_of.go_on(drained);
    let after = yard_of.today(drained);
    assert_eq!(yard_of.soak(drained).state(drained).step(), TubStep::Fed);
    assert!(!after.round.jobs.iter().any(|job| job.soaked
        && job.kind == JobKind::HangNet
        && job.visit.unwrap().day == after.day));

    // Twelve hours on: a stop, and only then.
    let before = at(5, "18:04:00");
    assert_eq!(
        yard_of.soak(before).cord(before)[3].standing,
        Standing::Later
    );
    let over = at(5, "18:15:00");
    let tub = yard_of.soak(over);
    assert_eq!(tub.cord(over)[3].standing, Standing::Stop);
    assert!(
        matches!(tub.state(over), TubState::ThrowAway { wet_for, .. }
        if words.figures(wet_for.to_minutes()) == [("12".to_owned(), "h"), ("10".to_owned(), "min")])
    );
    let round = yard_of.today(over);
    let stop = round
        .round
        .jobs
        .iter()
        .find(|job| job.kind == JobKind::ThrowAway)
        .unwrap();
    assert_eq!(standing(stop), Standing::Stop);
    let id = TubId(tub.soak.id.0.clone());
    yard_of.tick(over, JobKind::ThrowAway);
    let end = yard_of.today(over);
    assert!(end.due.soaks.is_empty());
    assert!(matches!(
        seen(&yard_of.shelf, &end, &id),
        TubSeen::Over(TubState::Done { .. })
    ));
    // The tub itself is there for the next soak.
    let tub = TubId(tub.soak.tub.unwrap().0);
    assert_eq!(
        seen(&yard_of.shelf, &end, &tub),
        TubSeen::Empty("Tub 1".into())
    );
}

#[test]
fn hanging_the_last_net_out_of_a_tub_is_what_feeds_it() {
    let mut yard_of = bramble();
    yard_of.tick(at(5, "06:05:00"), JobKind::StartSoak);
    yard_of.tick(at(5, "07:05:00"), JobKind::LiftOut);
    let now = at(5, "07:22:00");
    yard_of.tick(now, JobKind::HangNet);
    assert_eq!(yard_of.soak(now).state(now).step(), TubStep::Feed);
    yard_of.tick(now, JobKind::HangNet);
    assert_eq!(yard_of.soak(now).state(now).step(), TubStep::Fed);
}

#[test]
fn a_corrected_time_moves_the_whole_cord_and_none_is_still_to_come() {
    let mut yard_of = bramble();
    let now = at(5, "06:30:00");
    yard_of.tick(at(5, "06:25:00"), JobKind::StartSoak);
    let tub = yard_of.soak(now);
    let started = tub.correctable()[0].clone();
    assert!(matches!(
        soaking::correct(&tub, &started, "25 o'clock", now, &zone()),
        Err(soaking::Wrong::Time(_))
    ));
    let act = soaking::correct(&tub, &started, "6.05", now, &zone()).unwrap();
    yard_of.act(now, &act);
    assert_eq!(yard_of.soak(now).line.throw_away, at(5, "18:05:00"));
    // 23:50 has not been today, so it was yesterday.
    let tub = yard_of.soak(now);
    let started = tub.correctable()[0].clone();
    let act = soaking::correct(&tub, &started, "2350", now, &zone()).unwrap();
    assert!(matches!(act, Act::Change { at: Some(when), .. } if when == at(4, "23:50:00")));
    // Lifted out before it went in is refused.
    yard_of.go_on(at(5, "07:05:00"));
    let now = at(5, "07:10:00");
    let tub = yard_of.soak(now);
    let lifted = tub.correctable()[1].clone();
    assert!(matches!(
        soaking::correct(&tub, &lifted, "6:00", now, &zone()),
        Err(soaking::Wrong::Soak(_))
    ));
}

#[test]
fn the_chips_hold_for_the_day_carry_over_and_bring_throwing_away_forward() {
    let mut yard_of = bramble();
    let now = at(5, "06:00:00");
    let day = yard_of.today(now).day;
    let set = |yard_of: &mut Yard, now, which, on| {
        let day = yard_of.today(now).day;
        let holds = weather(&yard_of.shelf, day);
        let id = yard_of.id();
        yard_of.act(now, &chip(&yard(), &holds, which, on, &id));
    };
    assert_eq!(weather(&yard_of.shelf, day).air(), Air::Mild);
    set(&mut yard_of, now, Chip::Sunny, true);
    set(&mut yard_of, now, Chip::Mild, true);
    set(&mut yard_of, now, Chip::OverTwenty, true);
    let holds = weather(&yard_of.shelf, day);
    assert_eq!(holds.chips, [Chip::OverTwenty, Chip::Sunny]);
    assert!(!holds.carried);
    let wet = at(5, "06:05:00");
    yard_of.tick(wet, JobKind::StartSoak);
    assert_eq!(yard_of.soak(wet).line.throw_away, at(5, "12:05:00"));
    // A cooler chip later holds for the day, and gives the hay in the water no hours back.
    set(&mut yard_of, at(5, "11:00:00"), Chip::Mild, true);
    let holds = weather(&yard_of.shelf, day);
    assert_eq!(holds.chips, [Chip::Mild, Chip::Sunny]);
    let later = at(5, "11:01:00");
    assert_eq!(yard_of.soak(later).line.throw_away, at(5, "12:05:00"));
    set(&mut yard_of, later, Chip::OverTwenty, true);
    let over_next = yard_of.today(at(7, "06:00:00")).day;
    assert!(weather(&yard_of.shelf, over_next).chips.is_empty());
    let next = yard_of.today(at(6, "06:00:00")).day;
    let carried = weather(&yard_of.shelf, next);
    assert!(carried.carried && carried.record.is_none());
    assert_eq!(carried.chips, [Chip::OverTwenty, Chip::Sunny]);
}
