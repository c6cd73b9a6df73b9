//! The animals that a plan watches: when they were looked over and weighed, and the work that is asked of them.

use super::{Held, Yard, first_visit};
use crate::animal::{Animal, AnimalId, VetScope};
use crate::log::bodies::{AnimalV2, Body, PlanV1};
use crate::log::entry::Entry;
use crate::log::gather::{said_on, words};
use crate::log::looks::looked_over;
use crate::log::weighed::{Course, course_of};
use crate::log::worked::{by_reading, sessions};
use crate::round::{Watched, WatchedWork};
use crate::safety::{StopsFor, stops};
use crate::units::{LocalDate, Zone};
use crate::work::{WorkFor, standing};

impl<'a, Z: Zone> Yard<'a, Z> {
    /// The animals that a plan watches.
    pub(super) fn watched(&self, held: &[Held<'a>]) -> Vec<Watched> {
        self.entries
            .iter()
            .filter_map(|entry| {
                let Body::Animal(body) = &entry.body else {
                    return None;
                };
                let animal = AnimalId(entry.record.id.0.clone());
                let weighed = self.last(&animal, |body| matches!(body, Body::Weight(_)));
                let again = |course: Course, who: &Animal| course.again(who, self.today);
                let plan = self.plan_of(&animal, held)?;
                Some(Watched {
                    name: body.name.as_str().to_owned(),
                    from: plan.plan.from,
                    look_over_days: plan.body.look_over_days.get(),
                    looked_over: self.last(&animal, |body| match body {
                        Body::LookOver(look) => look.counts(),
                        _ => false,
                    }),
                    weighed,
                    at: first_visit(&plan.plan),
                    weigh_again: weighed == Some(self.today)
                        && self.course(&animal, again).unwrap_or_default(),
                    work: self.work(entry, body, plan.body),
                    animal,
                })
            })
            .collect()
    }

    /// The work that an animal's plan asks of this week, when it may work now.
    fn work(&self, entry: &Entry<'_>, body: &AnimalV2, plan: &PlanV1) -> Option<WatchedWork> {
        let asked = u32::try_from(plan.work_a_week?.get()).ok()?;
        let animal = body.animal(&entry.record.id);
        let own: Vec<&Entry<'_>> = self
            .entries
            .iter()
            .filter(|other| other.record.subject.id() == animal.id.as_str())
            .collect();
        let look_over = looked_over(own.iter().copied(), self.zone);
        let words = words(self.entries);
        let said = said_on(entry, body, self.zone);
        let reading = by_reading(&stops(&StopsFor {
            animal: &animal,
            look_over: &look_over,
            said,
            too_fast: None,
            words: &words,
            day: self.today,
            now: self.now,
        }));
        let now = standing(&WorkFor {
            animal: &animal,
            day: self.today,
            words: &words,
            said,
            sign: reading || look_over.stops(&animal.id, &words, VetScope::Work, self.today),
        });
        now.line.a_week()?;
        let sessions = sessions(&own, self.zone);
        Some(WatchedWork::of(asked, &sessions, self.today))
    }

    /// The day of the last entry of an animal that a test picks.
    fn last(&self, animal: &AnimalId, picks: impl Fn(&Body) -> bool) -> Option<LocalDate> {
        self.entries
            .iter()
            .rfind(|entry| entry.record.subject.id() == animal.0 && picks(&entry.body))
            .map(|entry| self.day_of(entry))
    }

    /// What somebody asks of the course of an animal's weight.
    pub(super) fn course<T>(
        &self,
        animal: &AnimalId,
        ask: impl FnOnce(Course, &Animal) -> T,
    ) -> Option<T> {
        course_of(self.entries, animal, &self.holding, self.zone, ask)
    }
}
