//! A group of the repository's cases with its plan as issued, beside plans of its members' own.

use super::*;
use crate::day::{HowKnown, Source};
use crate::log::bodies::base::JobKey;
use crate::log::bodies::{GroupV1, JobAnswer, JobV1};
use crate::log::{
    Answer, Case, DeviceId, Due, Known, Origin, RestVerdict, Subject as About, held_day, ledger_of,
    rest_of_today,
};
use crate::round::{JobKind, Key, Visit, Waits};
use crate::safety::{GroupPlan, GroupVerdict, SafetyVerdict};
use crate::sources::RecordId;
use crate::units::{Span, Zone};

const MEMBERS: [&str; 3] = ["bramble", "moss", "teasel"];

struct Field {
    case: Case,
    records: Vec<Record>,
    plan: GroupPlan,
    made: i64,
}

fn group_id() -> GroupId {
    GroupId("top-field".to_owned())
}

fn animal(id: &str) -> AnimalId {
    AnimalId(id.to_owned())
}

impl Field {
    fn of_case() -> Self {
        let text = include_str!("../../../examples/cases/two-cobs-and-a-shetland.json");
        let case = Case::read(text).unwrap();
        let Answer::Group(GroupVerdict::Allowed(plan)) = case.answers().remove(0).1 else {
            panic!("fed together")
        };
        Self {
            records: case.log.current().cloned().collect(),
            plan: *plan,
            case,
            made: 0,
        }
    }

    /// The group's plan and each member's part of it, issued so many minutes after the case.
    fn issue(&mut self, minutes: i64) {
        let inputs: Vec<(RecordId, Stamp)> = self
            .records
            .iter()
            .map(|record| (record.id.clone(), record.stamp))
            .collect();
        let at = self.case.now + Span::minutes(minutes);
        let body = PlanV1::of_group(&self.plan, &inputs, None)
            .unwrap()
            .unwrap();
        self.add(About::group(&group_id()), at, &Body::Plan(body));
        let parts: Vec<(AnimalId, PlanV1)> = self
            .plan
            .planned()
            .members
            .iter()
            .map(|member| {
                let part = PlanV1::part_of(&self.plan, member, &inputs, None).unwrap();
                (member.alone.animal.id.clone(), part)
            })
            .collect();
        for (id, part) in parts {
            assert!(part.is_part());
            self.add(About::animal(&id), at, &Body::Plan(part));
        }
    }

    /// A plan of a member's own.
    fn issue_own(&mut self, id: &str, minutes: i64) {
        let members = self.plan.members().iter();
        let draft = members
            .map(|member| member.planned().clone())
            .find(|draft| draft.animal.id.as_str() == id)
            .unwrap();
        let SafetyVerdict::Allowed(plan) = crate::safety::judge(draft) else {
            panic!("may be fed alone")
        };
        let at = self.case.now + Span::minutes(minutes);
        let body = PlanV1::of(&plan, &[], None).unwrap();
        self.add(About::animal(&animal(id)), at, &Body::Plan(body));
    }

    fn add(&mut self, subject: About, at: Instant, body: &Body) {
        self.made += 1;
        let stamp = Stamp::first(at + Span::minutes(self.made), DeviceId::of_number(7));
        let origin = Origin {
            yard: self.records[0].yard.clone(),
            subject,
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

    /// From a day on somebody is not in the group any more.
    fn leaves(&mut self, id: &str, from: LocalDate) {
        let record = self
            .records
            .iter_mut()
            .find(|record| record.id.0 == "top-field")
            .unwrap();
        let Body::Group(body) = Body::read(record).unwrap() else {
            panic!("a group")
        };
        let mut group = body.group(&record.id);
        for member in &mut group.members {
            if member.animal.as_str() == id {
                member.to = from.pred_opt();
            }
        }
        record.body = Body::Group(GroupV1::of(&group).unwrap())
            .to_value()
            .unwrap();
    }

    fn refs(&self) -> Vec<&Record> {
        self.records.iter().collect()
    }

    fn day(&self, after: u64) -> LocalDate {
        self.case.zone.to_local(self.case.now).date + chrono::Days::new(after)
    }

    /// So many hours after midnight of a day after the case, by the wall clock of Britain in summer.
    fn at(&self, after: i64, hour: i64) -> Instant {
        let midnight = self.day(0).and_time(crate::units::LocalTime::MIN).and_utc();
        Instant::from_ms(midnight.timestamp_millis()) + Span::hours(24 * after + hour - 1)
    }

    fn due(&self, now: Instant) -> Due {
        Due::of(&self.refs(), now, &self.case.zone)
    }

    /// Who hangs nets and who is fed from a bucket on a day.
    fn fed_on(&self, now: Instant, day: LocalDate) -> [BTreeSet<String>; 2] {
        let jobs = self.due(now).round(now, &self.case.zone).jobs;
        [JobKind::HangNet, JobKind::FeedBalancer].map(|kind| {
            jobs.iter()
                .filter(|job| job.kind == kind)
                .filter(|job| job.visit.is_some_and(|visit| visit.day == day))
                .map(|job| job.subject.to_string())
                .collect()
        })
    }
}

fn named(subjects: &[&str]) -> BTreeSet<String> {
    subjects
        .iter()
        .map(|subject| (*subject).to_owned())
        .collect()
}

#[test]
fn a_groups_plan_hangs_at_every_feeding_place_and_each_bucket_is_its_own() {
    let mut field = Field::of_case();
    field.issue(0);
    let now = field.at(1, 5);
    let [nets, buckets] = field.fed_on(now, field.day(1));
    assert_eq!(nets, named(&["group:top-field"]));
    assert!(buckets.iter().all(|subject| subject.starts_with("animal:")));
    let draft = field.plan.planned();
    let issued = field.records.iter().find(|record| record.id.0 == "made-1");
    let Body::Plan(body) = Body::read(issued.unwrap()).unwrap() else {
        panic!("a plan")
    };
    for visit in draft.day().iter().filter(|visit| !visit.nets.is_empty()) {
        let here: Vec<f64> = body
            .nets
            .iter()
            .filter(|net| net.visit == visit.visit)
            .map(|net| net.as_fed_g.as_fed().to_kg())
            .collect();
        assert_eq!(here.len(), draft.members.len() + 1);
        let all: f64 = visit.nets.iter().map(|net| net.to_kg()).sum();
        assert!((here.iter().sum::<f64>() - all).abs() < 1e-9);
    }
    // The hay of all nets is the hay of the plan: what is offered to all.
    let hay: f64 = body
        .amounts
        .iter()
        .map(|amount| amount.dry_matter_g.dry().to_kg())
        .sum();
    assert!((hay - draft.forage.to_kg()).abs() < 0.05, "{hay}");
    // All are watched, and there is one review for all of them.
    let due = field.due(now);
    assert_eq!(due.watched.len(), MEMBERS.len());
    let late = field.at(60, 12);
    let jobs = field.due(late).round(late, &field.case.zone).jobs;
    let reviews = jobs.iter().filter(|job| job.kind == JobKind::ReviewPlan);
    assert_eq!(reviews.count(), 1);
}

#[test]
fn of_an_animals_own_plan_and_its_groups_the_later_one_feeds_it() {
    let mut field = Field::of_case();
    field.issue_own("teasel", 0);
    field.issue(60);
    let now = field.at(1, 5);
    let group = [named(&["group:top-field"])];
    assert_eq!(field.fed_on(now, field.day(1))[..1], group);
    field.issue_own("teasel", 120);
    let [nets, _] = field.fed_on(now, field.day(1));
    assert_eq!(nets, named(&["animal:teasel", "group:top-field"]));
    let refs = field.refs();
    let Some(Body::Group(body)) = refs
        .iter()
        .find(|record| record.id.0 == "top-field")
        .and_then(|record| Body::read(record).ok())
    else {
        panic!("a group")
    };
    let group = body.group(&RecordId("top-field".to_owned()));
    let eat = eaters(&refs, &group, now, field.day(1));
    assert!(eat.len() == 2 && !eat.contains(&animal("teasel")));
    assert_eq!(fed_with(&refs, &animal("teasel"), now, field.day(1)), None);
    // Its hay is not reckoned with it any more, and that is said.
    let waits: Vec<Option<Waits>> = field
        .due(now)
        .round(now, &field.case.zone)
        .jobs
        .iter()
        .filter(|job| job.kind == JobKind::HangNet && job.name != "Teasel")
        .map(|job| job.waits)
        .collect();
    assert!(!waits.is_empty() && waits.iter().all(|waits| *waits == Some(Waits::Members)));
}

#[test]
fn who_leaves_by_a_date_is_fed_by_its_old_plan_or_said_to_be_without_hay() {
    for own in [true, false] {
        let mut field = Field::of_case();
        if own {
            field.issue_own("teasel", -60);
        }
        field.issue(0);
        field.leaves("teasel", field.day(3));
        let before = field.at(2, 5);
        assert_eq!(
            field.fed_on(before, field.day(2))[0],
            named(&["group:top-field"])
        );
        assert!(field.due(before).without_hay.is_empty());
        let after = field.at(3, 5);
        let [nets, buckets] = field.fed_on(after, field.day(3));
        assert!(nets.contains("group:top-field"));
        assert_eq!(nets.contains("animal:teasel"), own);
        let without = field.due(after).without_hay;
        assert_eq!(without.is_empty(), own);
        assert!(own || !buckets.contains("animal:teasel"));
        // It is watched all the same.
        assert_eq!(field.due(after).watched.len(), MEMBERS.len());
    }
}

#[test]
fn a_day_as_planned_is_counted_once_in_the_ledger_of_the_group_and_of_each() {
    let mut field = Field::of_case();
    field.issue_own("teasel", -600);
    field.issue(0);
    let evening = field.at(1, 23);
    let day = field.day(1);
    let jobs = field
        .due(field.at(1, 5))
        .round(field.at(1, 5), &field.case.zone)
        .jobs;
    let of_day = |visit: &Visit| visit.day == day;
    let keys: Vec<(About, Key)> = jobs
        .iter()
        .filter(|job| job.kind.may_be_as_planned() && job.visit.as_ref().is_some_and(of_day))
        .map(|job| {
            let (kind, id) = job.subject.parts();
            let about = if kind == "group" {
                About::group(&group_id())
            } else {
                About::animal(&animal(id))
            };
            (about, job.key.clone())
        })
        .collect();
    assert!(!keys.is_empty());
    for (about, key) in keys {
        let done = Body::Job(JobV1 {
            job: JobKey::of(&key).unwrap(),
            answer: JobAnswer::AsPlanned,
            note: None,
            not_soaked: None,
        });
        field.add(about, field.at(1, 20), &done);
    }
    let refs = field.refs();
    let of = |subject: &Subject| {
        let ledger = ledger_of(&refs, subject, (day, day), evening, &field.case.zone);
        ledger.days.into_iter().next().unwrap()
    };
    let forage = |subject: &Subject| -> [f64; 3] {
        let day = of(subject);
        assert!(
            day.servings
                .iter()
                .all(|serving| serving.known == HowKnown::Assumed)
        );
        day.servings
            .iter()
            .filter(|serving| matches!(serving.from, Source::Forage(_)))
            .filter_map(|serving| serving.offered)
            .fold([0.0; 3], |[least, likely, most], of| {
                [
                    least + of.least.to_kg(),
                    likely + of.likely.to_kg(),
                    most + of.most.to_kg(),
                ]
            })
    };
    let all = forage(&Subject::Group(group_id()));
    let draft = field.plan.planned();
    assert!((all[1] - draft.forage.to_kg()).abs() < 0.1, "{all:?}");
    let each: Vec<[f64; 3]> = MEMBERS
        .iter()
        .map(|id| forage(&Subject::Animal(animal(id))))
        .collect();
    // The likely shares add up to what was offered: nothing is counted twice, and nothing is lost.
    let likely: f64 = each.iter().map(|share| share[1]).sum();
    assert!((likely - all[1]).abs() < 1e-6, "{likely} {all:?}");
    for share in &each {
        assert!(share[0] < share[1] && share[1] < share[2]);
    }
    // What is in a bucket is nobody's but its own.
    for member in &draft.members {
        let day = of(&Subject::Animal(member.alone.animal.id.clone()));
        let bought: f64 = day
            .servings
            .iter()
            .filter(|serving| matches!(serving.from, Source::Feed(_)))
            .filter_map(|serving| Some(serving.offered?.likely.to_kg()))
            .sum();
        assert!((bought - member.bought().to_kg()).abs() < 0.01);
    }
}

#[test]
fn the_group_waits_as_one_and_the_rest_of_its_day_is_laid_out_anew() {
    let mut field = Field::of_case();
    field.issue(0);
    let of = Subject::Group(group_id());
    let late = field.at(1, 22);
    let refs = field.refs();
    let held = held_day(&refs, &of, late, &field.case.zone).unwrap();
    let draft = field.plan.planned();
    assert!((held.layout.longest_h - draft.layout.longest_h).abs() < 0.05);
    for id in MEMBERS {
        let own = Subject::Animal(animal(id));
        assert_eq!(held_day(&refs, &own, late, &field.case.zone), None);
    }
    // Nobody wrote down the first net: what is left of the day's hay is shared over the visits that are left.
    let first = held.body.visits.first().copied().unwrap();
    let date = field.day(1);
    let time = crate::units::LocalStamp { date, time: first };
    let now = field.case.zone.to_instant(time).planned() + Span::minutes(45);
    let held = held_day(&refs, &of, now, &field.case.zone).unwrap();
    let rest = rest_of_today(&refs, &of, &held, now, &field.case.zone).unwrap();
    assert!(!rest.why.is_empty());
    let RestVerdict::Laid(laid) = rest.verdict else {
        panic!("{rest:?}")
    };
    let hung: f64 = laid
        .hangings
        .iter()
        .map(|hanging| hanging.as_fed.to_kg())
        .sum();
    let all: f64 = draft.hays.iter().map(|hay| hay.weigh_out.to_kg()).sum();
    assert!(hung <= all + 1e-6, "{hung} {all}");
    if let Some(body) = laid.body {
        // No net of a visit is the heavy one.
        for visit in &held.body.visits {
            let kg: Vec<f64> = body
                .nets
                .iter()
                .filter(|net| net.visit == *visit)
                .map(|net| net.as_fed_g.as_fed().to_kg())
                .collect();
            let most = kg.iter().copied().fold(0.0, f64::max);
            let least = kg.iter().copied().fold(f64::INFINITY, f64::min);
            assert!(kg.is_empty() || most - least < 0.21, "{kg:?}");
        }
    }
}
