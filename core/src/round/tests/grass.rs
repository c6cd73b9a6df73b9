//! Turning out and bringing in, and nets of a day with grass.

use super::*;
use crate::animal::GroupId;
use crate::units::DryMatter;

fn goes_out(last_out: Option<&str>) -> TurnoutPlanned {
    TurnoutPlanned {
        subject: animal("moss"),
        name: "moss".to_owned(),
        from: day("2026-05-05"),
        at: time("07:00"),
        last_out: last_out.map(day),
    }
}

fn is_out(out: &str, by: &str) -> OpenTurnout {
    OpenTurnout {
        id: RecordId("out-1".to_owned()),
        subject: animal("moss"),
        name: "moss".to_owned(),
        paddock_name: Some("Top field".to_owned()),
        out: at("2026-05-05", out),
        by: at("2026-05-05", by),
        muzzle: false,
    }
}

fn stopped(name: &str, out_with: &[&str]) -> Stopped {
    Stopped {
        animal: AnimalId(name.to_owned()),
        name: name.to_owned(),
        groups: Vec::new(),
        out_with: out_with
            .iter()
            .map(|id| GroupId((*id).to_owned()))
            .collect(),
        stops: Vec::new(),
        again: crate::plan::LookAgain {
            soon: None,
            tonight: None,
        },
        sign: true,
    }
}

#[test]
fn turning_out_is_called_for_on_its_day_and_never_late() {
    let mut yard = Yard {
        turnouts: vec![goes_out(None)],
        ..Yard::default()
    };
    let text = "turn_out/animal:moss/2026-05-05/0.0";
    assert!(yard.at(at("2026-05-04", "23:50")).jobs.is_empty());
    let state =
        |yard: &Yard, clock| of(&yard.at(at("2026-05-05", clock)), text).map(|job| job.state);
    assert_eq!(state(&yard, "06:50"), Some(JobState::Later));
    assert_eq!(state(&yard, "07:00"), Some(JobState::Due));
    assert_eq!(state(&yard, "23:50"), Some(JobState::Due));
    // Nothing of yesterday is carried over, and nobody was away for it.
    let next = yard.at(at("2026-05-06", "12:00"));
    assert_eq!(keys(&next), ["turn_out/animal:moss/2026-05-06/0.0"]);
    assert_eq!(next.away, None);
    // It went out that day, with the key or without it.
    yard.turnouts = vec![goes_out(Some("2026-05-05"))];
    assert_eq!(state(&yard, "12:00"), None);
    yard.turnouts = vec![goes_out(Some("2026-05-04"))];
    assert_eq!(state(&yard, "12:00"), Some(JobState::Due));
    yard.answer(key(text), at("2026-05-05", "07:10"));
    assert_eq!(state(&yard, "12:00"), None);
}

#[test]
fn bringing_in_stands_until_it_came_in() {
    let mut yard = Yard {
        out: vec![is_out("07:00", "09:00")],
        turnouts: vec![goes_out(None)],
        ..Yard::default()
    };
    let state = |yard: &Yard, now| {
        let round = yard.at(now);
        assert_eq!(keys(&round), ["bring_in/out-1"], "it is out already");
        round.jobs[0].state
    };
    let today = |clock| at("2026-05-05", clock);
    assert_eq!(state(&yard, today("08:49")), JobState::Later);
    assert_eq!(state(&yard, today("08:50")), JobState::Due);
    let late = |minutes| JobState::Late {
        by: crate::units::Span::minutes(minutes),
    };
    assert_eq!(state(&yard, today("09:05")), late(5));
    yard.answer(key("bring_in/out-1"), today("09:06"));
    assert_eq!(
        state(&yard, today("09:07")),
        late(7),
        "a tick alone brings nobody in"
    );
    assert_eq!(state(&yard, at("2026-05-06", "09:00")), late(24 * 60));
    yard.out.clear();
    assert_eq!(of(&yard.at(today("09:08")), "bring_in/out-1"), None);
}

#[test]
fn one_that_something_stops_stays_in_or_comes_in_at_once() {
    let mut yard = Yard {
        turnouts: vec![goes_out(None)],
        stopped: vec![stopped("moss", &[])],
        ..Yard::default()
    };
    let now = at("2026-05-05", "07:30");
    assert!(yard.at(now).jobs.is_empty());
    yard.out = vec![is_out("07:00", "09:00")];
    let round = yard.at(now);
    let job = of(&round, "bring_in/out-1").unwrap();
    assert_eq!((job.state, job.waits), (JobState::Due, Some(Waits::Look)));
    // A group stays in with its member, fed with it or not.
    let hill = Subject::Group(GroupId("hill".to_owned()));
    yard.out.clear();
    yard.turnouts[0].subject = hill.clone();
    assert_eq!(yard.at(now).jobs.len(), 1);
    yard.stopped = vec![stopped("moss", &["hill"])];
    assert!(yard.at(now).jobs.is_empty());
}

#[test]
fn nets_to_come_hang_lighter_by_no_more_than_grass_took_the_place_of() {
    let wet = PlannedNet {
        soaked: true,
        ..net("17:30", true)
    };
    let nets = vec![
        net("06:30", false),
        net("12:00", false),
        wet,
        net("20:15", false),
    ];
    let mut plan = plan("moss", nets);
    let today = day("2026-05-05");
    let hung = Answered {
        key: key("hang_net/animal:moss/2026-05-05/2.1"),
        at: at("2026-05-05", "08:00"),
    };
    let in_water = OpenSoak {
        subject: animal("moss"),
        ..soak(
            at("2026-05-05", "08:30"),
            Some("start_soak/animal:moss/2026-05-05/3.0"),
        )
    };
    let less = |plan: &IssuedPlan, soaks: &[OpenSoak], answered: &[Answered], kg: f64| {
        let of = LighterFor {
            zone: &Britain,
            plan,
            day: today,
            came_in: at("2026-05-05", "09:00"),
            dry: DryMatter::kg(kg),
            soaks,
            answered,
        };
        lighter(&of, |_, _| Some(0.85)).map(|day| {
            let less = |net: &PlannedNet| net.less_for_grass.map_or(0.0, AsFed::to_kg);
            day.nets.iter().map(less).collect::<Vec<f64>>()
        })
    };
    let about = |found: Option<Vec<f64>>, kg: [f64; 4]| {
        let found = found.unwrap();
        assert_eq!(found.len(), 4);
        let apart = found.iter().zip(kg).map(|(a, b)| (a - b).abs());
        assert!(apart.fold(0.0, f64::max) < 1e-9, "{found:?}");
    };
    // 0.59 kg as fed: eleven steps of the scale, over the three that are to come.
    about(less(&plan, &[], &[], 0.5), [0.0, 0.2, 0.2, 0.15]);
    // What hangs and what lies in the water keeps its hay.
    about(
        less(&plan, &[in_water], &[hung], 0.5),
        [0.0, 0.0, 0.0, 0.55],
    );
    // No net by more than half.
    about(less(&plan, &[], &[], 40.0), [0.0, 1.8, 1.8, 1.8]);
    // Too little to show on the scale.
    assert_eq!(less(&plan, &[], &[], 0.04), None);
    // A second time at grass takes off what is left to give.
    let of = LighterFor {
        zone: &Britain,
        plan: &plan,
        day: today,
        came_in: at("2026-05-05", "09:00"),
        dry: DryMatter::kg(4.0),
        soaks: &[],
        answered: &[],
    };
    let first = lighter(&of, |_, _| Some(0.85)).unwrap();
    plan.anew.push(first);
    about(less(&plan, &[], &[], 4.0), [0.0, 1.8, 1.8, 1.8]);
    // The round weighs the lighter net and says by how much.
    let yard = Yard {
        plans: vec![plan],
        ..Yard::default()
    };
    let round = yard.at(at("2026-05-05", "11:50"));
    let job = of_text(&round, "hang_net/animal:moss/2026-05-05/2.1");
    let less = job.less_for_grass.unwrap();
    assert!(AsFed::kg(1.5) < less);
    let whole = |job: &Job| (job.amount.unwrap() + job.less_for_grass.unwrap()).to_kg();
    assert!((whole(job) - 3.6).abs() < 1e-9);
    let start = of_text(&round, "start_soak/animal:moss/2026-05-05/3.0");
    assert!((whole(start) - 3.6).abs() < 1e-9);
}

fn of_text<'a>(round: &'a Round, text: &str) -> &'a Job {
    of(round, text).unwrap()
}
