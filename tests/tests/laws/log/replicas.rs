//! Five devices that write, exchange, crash and have wrong clocks, against an oracle.

use super::{bundle_of, bytes, config, device, note};
use proptest::prelude::*;
use serde_json::json;
use tussock_core::log::{Bundle, Log, Stamp};
use tussock_core::sources::RecordId;
use tussock_core::units::Instant;

/// One device of the simulation.
#[derive(Clone)]
struct Replica {
    log: Log,
    last: Option<Stamp>,
    skew: i64,
}

#[derive(Clone, Debug)]
enum Action {
    Add,
    Edit(prop::sample::Index),
    Delete(prop::sample::Index),
    Send(usize),
    /// An import that dies half way.
    Crash(usize, prop::sample::Index),
    Skew(i64),
}

fn actions() -> impl Strategy<Value = (usize, Action)> {
    let action = prop_oneof![
        3 => Just(Action::Add),
        3 => any::<prop::sample::Index>().prop_map(Action::Edit),
        1 => any::<prop::sample::Index>().prop_map(Action::Delete),
        3 => (0_usize..5).prop_map(Action::Send),
        1 => (0_usize..5, any::<prop::sample::Index>()).prop_map(|(to, at)| Action::Crash(to, at)),
        1 => prop_oneof![Just(0_i64), Just(3_600_000), Just(-86_400_000), Just(31_536_000_000)]
            .prop_map(Action::Skew),
    ];
    (0_usize..5, action)
}

proptest! {
    #![proptest_config(ProptestConfig { cases: config().cases / 8, ..config() })]

    #[test]
    fn five_devices_with_wrong_clocks_and_crashes_end_alike(
        script in proptest::collection::vec(actions(), 1..120),
    ) {
        let mut replicas = vec![Replica { log: Log::new(), last: None, skew: 0 }; 5];
        // The oracle: every version that was ever shown as saved.
        let mut oracle = Log::new();
        for (step, (who, action)) in script.into_iter().enumerate() {
            let true_ms = 1_777_000_000_000 + i64::try_from(step).unwrap() * 1_000;
            let now = Instant::from_ms(true_ms + replicas[who].skew);
            let ids: Vec<RecordId> = replicas[who].log.current().map(|r| r.id.clone()).collect();
            match action {
                Action::Skew(by) => replicas[who].skew = by,
                Action::Send(to) => {
                    let text = bundle_of(replicas[who].log.clone()).to_text().unwrap();
                    let read = Bundle::read(&text).unwrap();
                    let there = Instant::from_ms(true_ms + replicas[to].skew);
                    let (union, _) = replicas[to].log.receive(&read.log, there).unwrap();
                    for record in read.log.all() {
                        let (kept, _) = Stamp::clock(replicas[to].last.as_ref(), &record.stamp, there);
                        replicas[to].last = Some(kept);
                    }
                    replicas[to].log = union;
                }
                Action::Crash(to, at) => {
                    let text = bundle_of(replicas[who].log.clone()).to_text().unwrap();
                    let at = at.index(text.len());
                    prop_assert!(text.get(..at).is_none_or(|short| Bundle::read(short).is_err()));
                    prop_assert!(to < replicas.len());
                }
                Action::Add | Action::Edit(_) | Action::Delete(_) => {
                    let known = match &action {
                        Action::Edit(which) | Action::Delete(which) if !ids.is_empty() => {
                            replicas[who].log.get(&ids[which.index(ids.len())]).unwrap().current().cloned()
                        }
                        _ => None,
                    };
                    let over = known.as_ref().map(|record| record.stamp);
                    let stamp = Stamp::tick(replicas[who].last.as_ref(), over.as_ref(), now, device(who)).unwrap();
                    let (kept, _) = Stamp::clock(replicas[who].last.as_ref(), &stamp, now);
                    replicas[who].last = Some(kept);
                    let id = known.as_ref().map_or(format!("r{step}"), |record| record.id.0.clone());
                    let gone = matches!(action, Action::Delete(_));
                    let record = note(&id, stamp, over, gone, json!({ "step": step }));
                    oracle.add(record.clone()).unwrap();
                    replicas[who].log.add(record.clone()).unwrap();
                    // What a person just saved is what holds on that device.
                    let holds = replicas[who].log.get(&record.id).unwrap().current().unwrap();
                    prop_assert_eq!(holds, &record);
                }
            }
        }
        let union = replicas.iter().fold(Log::new(), |all, one| all.merged(one.log.clone()));
        prop_assert_eq!(bytes(&union), bytes(&oracle));
        for one in &replicas {
            prop_assert_eq!(bytes(&one.log.clone().merged(union.clone())), bytes(&oracle));
        }
    }
}
