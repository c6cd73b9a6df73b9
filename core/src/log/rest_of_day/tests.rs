use super::*;
use crate::animal::AnimalId;
use crate::log::bodies::base::{FeedGrams, FeedWeight};
use crate::log::bodies::{JobV1, PlanV1};
use crate::log::{
    Answer as Answers, Case, DeviceId, Known, Origin, Stamp, Subject as About, held_day,
};
use crate::safety::SafetyVerdict;

mod grass;

/// The records of a case with its plan as issued, and what is logged after it.
pub(super) struct Yard {
    case: Case,
    records: Vec<Record>,
    made: i64,
}

impl Yard {
    fn issued() -> Self {
        let text = include_str!("../../../examples/cases/bramble.json");
        let case = Case::read(text).unwrap();
        let (_, answer) = case.answers().remove(0);
        let Answers::Animal(SafetyVerdict::Allowed(plan)) = answer else {
            panic!("{answer:?}")
        };
        let mut yard = Self {
            records: case.log.current().cloned().collect(),
            case,
            made: 0,
        };
        let body = Body::Plan(PlanV1::of(&plan, &[], None).unwrap());
        yard.add(yard.case.now, &body);
        yard
    }

    fn animal() -> AnimalId {
        AnimalId("bramble".to_owned())
    }

    fn subject() -> Subject {
        Subject::Animal(Self::animal())
    }

    fn add(&mut self, at: Instant, body: &Body) {
        self.made += 1;
        let stamp = Stamp::first(at + Span::minutes(self.made), DeviceId::of_number(7));
        let origin = Origin {
            yard: self.records[0].yard.clone(),
            subject: About::animal(&Self::animal()),
            at,
            offset_min: 60,
            zone: "Europe/London".to_owned(),
            by: None,
            known: Known::Seen,
        };
        let id = RecordId(format!("made-{}", self.made));
        self.records
            .push(Record::new(id, origin, stamp, body).unwrap());
    }

    fn refs(&self) -> Vec<&Record> {
        self.records.iter().collect()
    }

    fn held(&self, now: Instant) -> HeldDay {
        held_day(&self.refs(), &Self::subject(), now, &self.case.zone).unwrap()
    }

    fn rest(&self, now: Instant) -> Option<RestOfToday> {
        rest_of_today(
            &self.refs(),
            &Self::subject(),
            &self.held(now),
            now,
            &self.case.zone,
        )
    }

    fn laid(&self, now: Instant) -> (Vec<WhyAnew>, RestLaid) {
        let rest = self.rest(now).unwrap();
        match rest.verdict {
            RestVerdict::Laid(laid) => (rest.why, laid),
            other => panic!("{other:?}"),
        }
    }

    fn due(&self, now: Instant) -> Due {
        Due::of(&self.refs(), now, &self.case.zone)
    }

    /// Tomorrow of the case: a whole day of the plan.
    fn day(&self) -> LocalDate {
        self.case
            .zone
            .to_local(self.case.now)
            .date
            .succ_opt()
            .unwrap()
    }

    fn plan(&self) -> IssuedPlan {
        let due = Due::of(&self.refs(), self.case.now, &self.case.zone);
        due.plans[0].clone()
    }

    /// So many minutes after the nth time at which a net hangs tomorrow, from 0.
    fn after(&self, nth: usize, minutes: i64) -> Instant {
        let mut times: Vec<LocalTime> = self.plan().nets.iter().map(|net| net.visit).collect();
        times.dedup();
        let date = self.day();
        let time = times[nth];
        let at = self.case.zone.to_instant(LocalStamp { date, time });
        at.planned() + Span::minutes(minutes)
    }

    /// The keys of the nets that hang at the nth time.
    fn keys(&self, nth: usize) -> Vec<Key> {
        let now = self.after(nth, 1);
        let due = Due::of(&self.refs(), now, &self.case.zone);
        let round = due.round(now, &self.case.zone);
        let at = self.case.zone.to_local(self.after(nth, 0)).time;
        let jobs = round.jobs.iter();
        jobs.filter(|job| job.kind == JobKind::HangNet)
            .filter(|job| {
                job.visit
                    .is_some_and(|visit| visit.time == at && visit.day == self.day())
            })
            .map(|job| job.key.clone())
            .collect()
    }

    fn hang(&mut self, nth: usize, minutes: i64, kg: Option<f64>) {
        for key in self.keys(nth) {
            let body = NetHungV1 {
                net: None,
                filling: None,
                lot: None,
                hay: kg.map(|kg| FeedWeight {
                    g: FeedGrams::of(AsFed::kg(kg)).unwrap(),
                    typed: None,
                }),
                soak: None,
                not_soaked: None,
                job: Some(JobKey::of(&key).unwrap()),
            };
            self.add(self.after(nth, minutes), &Body::NetHung(body));
        }
    }

    /// The hay of the plan's day, and what hangs at the nth time.
    fn kg(&self) -> (f64, Vec<f64>) {
        let mut of: Vec<(LocalTime, f64)> = Vec::new();
        for net in &self.plan().nets {
            match of.last_mut() {
                Some(last) if last.0 == net.visit => last.1 += net.hay.to_kg(),
                _ => of.push((net.visit, net.hay.to_kg())),
            }
        }
        let kg: Vec<f64> = of.iter().map(|(_, kg)| *kg).collect();
        (kg.iter().sum(), kg)
    }
}

fn sum(laid: &RestLaid) -> f64 {
    laid.hangings
        .iter()
        .map(|hanging| hanging.as_fed.to_kg())
        .sum()
}

#[test]
fn a_day_that_goes_as_it_should_is_the_plan() {
    let mut yard = Yard::issued();
    let (_, each) = yard.kg();
    assert!(2 < each.len(), "{each:?}");
    for nth in 0..each.len() {
        assert_eq!(yard.rest(yard.after(nth, 29)), None);
        yard.hang(nth, 30, None);
        assert_eq!(yard.rest(yard.after(nth, 31)), None);
    }
    assert_eq!(yard.rest(yard.after(0, -60)), None);
}

#[test]
fn a_missed_net_goes_to_the_visits_that_are_left_and_never_beyond_the_day() {
    let mut yard = Yard::issued();
    let (day, each) = yard.kg();
    yard.hang(0, 0, None);
    let (why, laid) = yard.laid(yard.after(2, 1));
    assert_eq!(why.len(), 1);
    assert!(matches!(why[0], WhyAnew::Missed { .. }), "{why:?}");
    // All of the missed net finds its place; what was hung stays hung.
    let over = laid.over.to_kg() / 0.8;
    assert!(sum(&laid) <= day - each[0] + 1e-9, "{laid:?}");
    assert!(day - each[0] - over - 0.1 < sum(&laid), "{laid:?}");
    assert!(laid.hangings[0].now);
    assert!(0.0 < laid.longest_h && laid.body.is_some());
}

#[test]
fn a_net_hung_an_hour_late_moves_the_rest_and_one_not_hung_yet_hangs_now() {
    let mut yard = Yard::issued();
    let now = yard.after(0, 60);
    let (why, laid) = yard.laid(now);
    assert!(matches!(why[..], [WhyAnew::Late { by, .. }] if by.to_minutes() == 60));
    assert!(laid.hangings[0].now && !laid.hangings[1].now);
    let (day, each) = yard.kg();
    assert!(sum(&laid) <= day + 1e-9);
    yard.hang(0, 60, None);
    let (why, laid) = yard.laid(now + Span::minutes(1));
    assert!(matches!(why[..], [WhyAnew::HungLate { by, .. }] if by.to_minutes() == 60));
    assert!(sum(&laid) <= day - each[0] + 1e-9);
}

#[test]
fn what_was_said_hangs_on_the_round_under_the_same_keys_for_one_day() {
    let mut yard = Yard::issued();
    let keys = yard.keys(2);
    let planned = yard.plan().nets;
    yard.hang(0, 0, None);
    let now = yard.after(2, 1);
    let (_, laid) = yard.laid(now);
    let body = laid.body.clone().unwrap();
    assert_eq!(body.nets.len(), planned.len());
    yard.add(now, &Body::DayRelaid(body.clone()));
    // The plan is what it was; the day is not.
    let plan = yard.due(now).plans[0].clone();
    assert_eq!(plan.nets, planned);
    assert_ne!(plan.nets_on(yard.day()), planned);
    assert_eq!(plan.nets_on(yard.day().succ_opt().unwrap()), planned);
    assert_eq!(yard.keys(2), keys);
    let round = yard.due(now).round(now, &yard.case.zone);
    let said: f64 = laid
        .hangings
        .iter()
        .map(|hanging| hanging.as_fed.to_kg())
        .sum();
    let jobs: f64 = round
        .jobs
        .iter()
        .filter(|job| job.kind == JobKind::HangNet)
        .filter(|job| job.visit.is_some_and(|visit| visit.day == yard.day()))
        .filter_map(|job| Some(job.amount?.to_kg()))
        .sum();
    assert!((said - jobs).abs() < 1e-9, "{said} {jobs}");
    // It is not offered again.
    assert_eq!(yard.rest(now + Span::minutes(5)), None);
    // Taken back, it is.
    yard.records.pop();
    assert!(yard.rest(now + Span::minutes(5)).is_some());
}

#[test]
fn a_heavier_net_leaves_less_and_what_is_not_known_is_said() {
    let mut yard = Yard::issued();
    let (day, _) = yard.kg();
    yard.hang(0, 60, Some(day - 1.0));
    let (_, laid) = yard.laid(yard.after(0, 61));
    assert!(sum(&laid) <= 1.0 + 1e-9, "{laid:?}");
    let body = NetHungV1 {
        net: None,
        filling: None,
        lot: None,
        hay: None,
        soak: None,
        not_soaked: None,
        job: None,
    };
    yard.add(yard.after(0, 62), &Body::NetHung(body));
    let now = yard.after(0, 63);
    assert_eq!(yard.rest(now).unwrap().verdict, RestVerdict::NotKnown);
    let real = yard.held(now).real.unwrap();
    assert_eq!(real.not_known_from, Some(yard.after(0, 62)));
    // However long it takes, nothing is alarmed: nobody knows.
    let real = yard.held(yard.after(0, 23 * 60)).real.unwrap();
    assert_eq!(real.beside, crate::day::RealVerdict::AsAccepted);
}

#[test]
fn a_net_that_somebody_says_does_not_hang_is_missed_at_once() {
    let mut yard = Yard::issued();
    for key in yard.keys(0) {
        let body = JobV1 {
            job: JobKey::of(&key).unwrap(),
            answer: JobAnswer::NotDone,
            note: None,
            not_soaked: None,
        };
        yard.add(yard.after(0, 5), &Body::Job(body));
    }
    let (why, laid) = yard.laid(yard.after(0, 6));
    assert!(matches!(why[..], [WhyAnew::Missed { .. }]));
    assert!(laid.hangings.iter().all(|hanging| !hanging.now));
}
