//! The work of one animal: what is asked of this week, what was done, and what stops it.

use super::beside::{Stop, stop};
use super::horses::one_needs;
use crate::rows::Range;
use crate::shelf::Shelf;
use chrono::Days;
use tussock_core::animal::{Animal, AnimalId};
use tussock_core::assess::best;
use tussock_core::limits::Ends;
use tussock_core::log::{Record, Wish, gather};
use tussock_core::units::{Energy, Instant, LocalDate, Zone};
use tussock_core::work::{
    Asked, DaysEnergy, EffortRank, HeartStanding, MovingFeeder, Session, Standing, Week,
    effort_rank, energy_of, moving_feeder,
};

/// The most sessions that are listed.
const LISTED: usize = 10;
/// Weeks before this one that are listed.
const WEEKS: u64 = 3;
/// Days of a week.
const DAYS: u64 = 7;

/// What the screens of work ask the disk for.
pub fn needs(animal: &AnimalId) -> Vec<Range> {
    one_needs(animal)
}

/// A session with what is made of it.
#[derive(Clone, Debug, PartialEq)]
pub struct Done {
    /// The session.
    pub session: Session,
    /// Its energy; `None` where it is not reckoned.
    pub energy: Option<Ends<Energy>>,
    /// How its heart rate stands to what is asked now.
    pub heart: Option<HeartStanding>,
    /// How hard it was among the others with a heart rate.
    pub rank: Option<EffortRank>,
}

/// The work of one animal.
#[derive(Clone, Debug, PartialEq)]
pub struct WorkView {
    /// The animal.
    pub animal: Animal,
    /// The local day.
    pub today: LocalDate,
    /// What work it may have, and what stops it.
    pub standing: Standing,
    /// What stops the animal altogether.
    pub stop: Option<Stop>,
    /// What is asked of this week.
    pub asked: Option<Asked>,
    /// What was done in it.
    pub week: Week,
    /// The weeks before it, the newest first, as far back as there are sessions.
    pub before: Vec<Week>,
    /// The sessions, the newest first.
    pub done: Vec<Done>,
    /// The energy of this week's sessions; `None` where it is not reckoned or there is none.
    pub energy: Option<DaysEnergy>,
    /// Movement without riding, where it may be offered.
    pub moving: Option<MovingFeeder>,
}

/// The work of an animal; `None` when it is not there.
pub fn work(shelf: &Shelf, animal: &AnimalId, now: Instant, zone: &impl Zone) -> Option<WorkView> {
    let records: Vec<&Record> = shelf.records().collect();
    let gathered = gather(&records, animal, now, zone, &Wish::default())?;
    let today = gathered.day;
    let standing = gathered.work();
    let asked = gathered.work_asked();
    let kind = gathered.animal.kind;
    let body = best(&gathered.weights, today)
        .map(|dated| Ends::new(dated.weight.low, dated.weight.value, dated.weight.high));
    let sessions = &gathered.sessions;
    let week = Week::of(sessions, today);
    let of_week: Vec<Session> = sessions
        .iter()
        .filter(|session| week.from <= session.day)
        .cloned()
        .collect();
    let energy = body
        .filter(|_| !of_week.is_empty())
        .and_then(|body| energy_of(kind, body, &of_week));
    let done = sessions
        .iter()
        .rev()
        .take(LISTED)
        .map(|session| Done {
            energy: body
                .and_then(|body| energy_of(kind, body, std::slice::from_ref(session)))
                .map(|reckoned| reckoned.energy),
            heart: asked
                .as_ref()
                .zip(session.heart)
                .and_then(|(asked, heart)| asked.heart_standing(heart)),
            rank: effort_rank(session, sessions),
            session: session.clone(),
        })
        .collect();
    let first = sessions.iter().map(|session| session.day).min();
    let before = (1..=WEEKS)
        .filter_map(|back| week.from.checked_sub_days(Days::new(DAYS * back)))
        .map(|monday| Week::of(sessions, monday))
        .filter(|week| {
            let end = week.from.checked_add_days(Days::new(DAYS));
            first.zip(end).is_some_and(|(first, end)| first < end)
        })
        .collect();
    Some(WorkView {
        moving: moving_feeder(&standing.stops),
        stop: stop(&gathered),
        animal: gathered.animal,
        today,
        standing,
        asked,
        week,
        before,
        done,
        energy,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::views::beside;
    use crate::views::test_yard::{add, after, animal, at, shelf_of, zone};
    use crate::words::Task;
    use tussock_core::animal::{Answer, Kind, Laminitis, VetFlag};
    use tussock_core::assess::{Reading, ScaleInstrument, ScaleWeight};
    use tussock_core::log::Body;
    use tussock_core::log::bodies::base::Count;
    use tussock_core::log::bodies::{PlanV1, WeightV1, WorkSessionV1};
    use tussock_core::units::{BodyMass, Span};
    use tussock_core::work::{GaitTimes, How, WorkLine, WorkStop};

    fn sound() -> Animal {
        let mut pony = animal("moss");
        pony.health.laminitis = Laminitis::Never;
        pony
    }

    fn weighed() -> Body {
        let reading = Reading::Scale(ScaleWeight {
            mass: BodyMass::kg(300.0),
            instrument: ScaleInstrument::AnimalScale,
        });
        Body::Weight(WeightV1::of(&reading).unwrap())
    }

    fn worked(day: i64, sound: Answer) -> Body {
        let times = GaitTimes::minutes(10, 15, 0);
        let start = at(day) - Span::minutes(25);
        Body::WorkSession(WorkSessionV1::of(start, &times, How::Led, sound).unwrap())
    }

    fn seen(shelf: &Shelf, day: i64) -> WorkView {
        work(shelf, &AnimalId("moss".into()), at(day), &zone()).unwrap()
    }

    #[test]
    fn a_week_shows_what_is_asked_what_was_done_and_its_energy() {
        let shelf = shelf_of(&[add("moss", &sound(), -20), ("w", "moss", weighed(), -20)]);
        let fresh = seen(&shelf, 0);
        assert_eq!(fresh.asked.as_ref().unwrap().a_week, 5);
        assert_eq!(
            (fresh.week.sessions, fresh.energy, fresh.before.len()),
            (0, None, 0)
        );
        // Tuesday is day 0: three sessions last week, one this Monday.
        let shelf = after(
            &shelf,
            &[
                ("s1", "moss", worked(-6, Answer::Yes), -6),
                ("s2", "moss", worked(-5, Answer::Yes), -5),
                ("s3", "moss", worked(-4, Answer::Yes), -4),
                ("s4", "moss", worked(-1, Answer::Yes), -1),
            ],
        );
        let view = seen(&shelf, 0);
        assert_eq!((view.week.sessions, view.before[0].sessions), (1, 3));
        assert_eq!(view.before.len(), 1);
        // A week of three is a step up: 20 min.
        let asked = view.asked.unwrap();
        assert_eq!((asked.week, asked.times.total().to_minutes()), (2, 20));
        assert_eq!(view.done.len(), 4);
        assert_eq!(view.done[0].session.day, zone().to_local(at(-1)).date);
        let energy = view.energy.unwrap();
        assert!(energy.energy.in_order());
        // A quarter of an hour of trot and ten minutes of walk of 300 kg: about an eighth of a day's need.
        assert!(
            (0.4..1.3).contains(&energy.energy.likely.to_mcal()),
            "{energy:?}"
        );
        assert!(
            (0.005..0.02).contains(&energy.of_a_week.likely),
            "{energy:?}"
        );
        assert!(view.moving.is_some());
    }

    #[test]
    fn a_session_that_was_not_sound_stops_work_and_the_animal_until_a_look_over() {
        let shelf = shelf_of(&[
            add("moss", &sound(), -20),
            ("s1", "moss", worked(-1, Answer::No), -1),
        ]);
        let view = seen(&shelf, 0);
        assert_eq!(view.standing.stops, [WorkStop::Sign]);
        assert!(view.stop.is_some() && view.asked.is_none() && view.moving.is_none());
        let visit = beside::visit(&shelf, &AnimalId("moss".into()), at(0), &zone()).unwrap();
        assert_eq!(visit.stop, view.stop);
        let of_work = visit
            .steps
            .iter()
            .find(|step| step.task == Task::Work)
            .unwrap();
        assert_eq!(of_work.standing, beside::Standing::NoWork);
        let looked = crate::forms::look_over::body(&crate::forms::look_over::all_normal());
        let shelf = after(&shelf, &[("l1", "moss", Body::LookOver(looked), 0)]);
        let view = seen(&shelf, 1);
        assert!(view.stop.is_none() && view.asked.is_some());
        // It begins again at the bottom.
        assert_eq!(view.asked.unwrap().week, 1);
    }

    #[test]
    fn pain_relief_stops_work_without_a_block_and_a_donkey_has_no_energy() {
        let mut pony = sound();
        pony.health.flags = vec![VetFlag::PainRelief];
        let view = seen(&shelf_of(&[add("moss", &pony, 0)]), 0);
        assert_eq!(view.standing.stops, [WorkStop::PainRelief]);
        assert_eq!((view.stop, view.asked, view.moving), (None, None, None));
        let mut donkey = sound();
        donkey.kind = Kind::Donkey;
        let shelf = shelf_of(&[
            add("moss", &donkey, -9),
            ("w", "moss", weighed(), -9),
            ("s1", "moss", worked(-1, Answer::Yes), -1),
        ]);
        let view = seen(&shelf, 0);
        assert_eq!(view.energy, None);
        assert_eq!(view.asked.unwrap().times.trot, Span::ZERO);
        let unknown = seen(&shelf_of(&[add("moss", &animal("moss"), 0)]), 0);
        assert_eq!(unknown.standing.line, WorkLine::AskFirst);
        assert!(unknown.moving.is_some());
    }

    #[test]
    fn work_is_due_beside_an_animal_only_where_its_plan_asks_for_it() {
        let case = tussock_core::log::Case::read(include_str!(
            "../../../../core/examples/cases/bramble.json"
        ))
        .unwrap();
        let records: Vec<&Record> = case.log.current().collect();
        let who = records
            .iter()
            .find(|record| record.kind == tussock_core::log::Kind::Animal)
            .map(|record| AnimalId(record.id.0.clone()))
            .unwrap();
        let gathered = gather(&records, &who, case.now, &case.zone, &case.wish).unwrap();
        let tussock_core::safety::SafetyVerdict::Allowed(allowed) =
            tussock_core::safety::judge(gathered.draft().unwrap())
        else {
            panic!("no plan")
        };
        let issued = PlanV1::of(&allowed, &[], None).unwrap();
        // It had laminitis: the plan that is issued asks for no work.
        assert_eq!(issued.work_a_week, None);
        let asks = |count: Option<i64>| {
            Body::Plan(PlanV1 {
                work_a_week: count.map(|count| Count::new(count).unwrap()),
                ..issued.clone()
            })
        };
        let standing = |count, day| {
            let shelf = shelf_of(&[add("moss", &sound(), -9), ("p", "moss", asks(count), -9)]);
            let visit = beside::visit(&shelf, &AnimalId("moss".into()), at(day), &zone()).unwrap();
            let step = visit.steps.into_iter().find(|step| step.task == Task::Work);
            step.unwrap().standing
        };
        assert_eq!(standing(None, 2), beside::Standing::Later);
        assert_eq!(standing(Some(5), 2), beside::Standing::Due);
    }
}
