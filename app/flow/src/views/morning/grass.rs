//! Out to grass and in again.

use super::*;
use crate::routes::Route;
use crate::views::remind::{RingsFor, due};
use crate::views::round::route;
use crate::words::RemindWords;
use tussock_core::animal::{Answer, Insulin, InsulinTest, Laminitis, PaddockId};
use tussock_core::log::bodies::{GrazingMinutes, GrazingV1, PaddockV2, TurnoutV1};

/// Bramble goes out for an hour a day.
fn decided() -> Yard {
    let mut yard_of = bramble();
    let top = PaddockId("top".into());
    let bramble = Subject::animal(&AnimalId("bramble".into()));
    let field = PaddockV2::named(Name::new("Top field").unwrap());
    let night = at(4, "21:00:00");
    yard_of.add(night, "top", yard(), Body::Paddock(field));
    let decided = GrazingV1 {
        paddock: Some(top),
        from: at_day(5),
        minutes: GrazingMinutes::new(60).unwrap(),
        muzzle: false,
        adapted_since: None,
        out: Some("07:30:00".parse().unwrap()),
        stopped: false,
    };
    yard_of.add(night, "decided", bramble, Body::Grazing(decided));
    yard_of
}

/// It went out to the top field at 07:30 until 09:00.
fn at_grass() -> Yard {
    let mut yard_of = decided();
    let bramble = Subject::animal(&AnimalId("bramble".into()));
    let out = TurnoutV1 {
        paddock: Some(PaddockId("top".into())),
        muzzle: false,
        bring_in_by: Some(at(5, "09:00:00")),
        came_in: None,
        job: None,
    };
    yard_of.add(at(5, "07:30:00"), "out", bramble, Body::Turnout(out));
    yard_of
}

/// Bramble with a test that found nothing, no laminitis and no native blood: grass is not closed for it.
fn clear(yard_of: &Yard) -> Act {
    let Some(Ok(Body::Animal(mut body))) = yard_of.shelf.get("bramble").map(Body::read) else {
        panic!("Bramble is there")
    };
    body.health.native_or_cob = Answer::No;
    body.health.laminitis = Laminitis::Never;
    body.health.insulin = Insulin::Tested(InsulinTest {
        dysregulated: false,
        by: "The vet".into(),
        on: at_day(1),
        test: "Oral sugar test".into(),
    });
    Act::Change {
        id: RecordId("bramble".into()),
        body: Body::Animal(body),
        at: None,
    }
}

fn at_day(day: u32) -> tussock_core::units::LocalDate {
    zone().to_local(at(day, "12:00:00")).date
}

fn of_grass(today: &Today) -> Option<tussock_core::round::Job> {
    let kinds = [JobKind::BringIn, JobKind::TurnOut];
    let mut jobs = today.round.jobs.iter();
    jobs.find(|job| kinds.contains(&job.kind)).cloned()
}

#[test]
fn bringing_in_says_where_from_rings_and_changes_the_turnout() {
    let mut yard_of = at_grass();
    let words = English::default();
    let early = at(5, "08:40:00");
    let job = of_grass(&yard_of.today(early)).unwrap();
    assert_eq!(words.job(&job), "Bring in Bramble");
    assert_eq!(words.job_of(&job), "from Top field");
    assert_eq!(words.job_time(&job, at_day(5), &zone()), "09:00");
    let rings = |yard_of: &Yard, now| {
        let mut rings = due(&yard_of.today(now), now);
        rings.retain(|ring| matches!(ring.what, RingsFor::BringIn { .. }));
        rings
    };
    assert!(rings(&yard_of, early).is_empty());
    let soon = at(5, "08:50:00");
    let ring = rings(&yard_of, soon).remove(0);
    assert_eq!(words.ring_head(&ring), "Bring in Bramble from Top field");
    assert_eq!(words.ring_line(&ring, soon, &zone()), "at 09:00");
    let late = at(5, "09:10:00");
    assert_eq!(rings(&yard_of, late)[0].key, ring.key, "it rings once");
    yard_of.tick(late, JobKind::BringIn);
    let record = yard_of.shelf.get("out").unwrap();
    let Ok(Body::Turnout(body)) = Body::read(record) else {
        panic!()
    };
    assert_eq!((record.at, body.came_in), (at(5, "07:30:00"), Some(late)));
    let today = yard_of.today(at(5, "09:11:00"));
    assert_eq!(of_grass(&today), None);
    let done = |answer: &tussock_core::round::Answered| answer.key.kind() == Some(JobKind::BringIn);
    assert!(today.round.done.iter().any(done));
}

#[test]
fn turning_out_is_done_at_the_paddock() {
    let mut yard_of = decided();
    // Nobody at risk is sent out while nobody said anything of its grass.
    assert_eq!(of_grass(&yard_of.today(at(5, "07:00:00"))), None);
    let fit = clear(&yard_of);
    yard_of.act(at(4, "21:30:00"), &fit);
    let today = yard_of.today(at(5, "07:00:00"));
    let job = of_grass(&today).unwrap();
    assert_eq!(English::default().job(&job), "Turn out Bramble");
    assert_eq!(
        (ticks(&job), route(&job)),
        (false, Route::PaddockOf(AnimalId("bramble".into())))
    );
}
