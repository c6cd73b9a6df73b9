//! Who goes out to grass, and who is out.

use super::{Held, Yard, first_visit, subject};
use crate::animal::{AnimalId, GroupId, PaddockId};
use crate::log::bodies::{Body, TurnoutV1};
use crate::log::entry::Entry;
use crate::log::grazing::decided;
use crate::round::published::{BRING_IN_AFTER, MORNING};
use crate::round::{Answered, Key, OpenTurnout, Subject, TurnoutPlanned};
use crate::units::{Instant, Zone};

impl<Z: Zone> Yard<'_, Z> {
    /// Those that go out to grass by what holds today. Where nobody said when, they go out at the first visit.
    pub(super) fn turnouts(&self, held: &[Held<'_>]) -> Vec<TurnoutPlanned> {
        let mut found: Vec<TurnoutPlanned> = Vec::new();
        for entry in self.entries {
            let Some(who) = grazes(entry) else {
                continue;
            };
            let decided = decided(self.entries, who.parts().1, self.today)
                .filter(|body| body.holds(self.today));
            let name = self.name(who.parts().1);
            let (Some(body), Some(name)) = (decided, name) else {
                continue;
            };
            if found.iter().any(|other| other.subject == who) {
                continue;
            }
            let visit = || {
                let plan = match &who {
                    Subject::Animal(id) => self.plan_of(id, held),
                    Subject::Group(_) | Subject::Yard(_) => {
                        held.iter().rfind(|held| held.plan.subject == who)
                    }
                };
                plan.map_or(*MORNING, |held| first_visit(&held.plan))
            };
            found.push(TurnoutPlanned {
                name: name.to_owned(),
                from: body.from,
                at: body.out.unwrap_or_else(visit),
                last_out: self
                    .been_out(&who)
                    // What a clock that runs ahead wrote has happened by today.
                    .map(|(entry, _)| self.day_of(entry).min(self.today))
                    .max(),
                subject: who,
            });
        }
        found
    }

    /// The turnouts of a subject, oldest first.
    pub(super) fn been_out<'s>(
        &'s self,
        who: &'s Subject,
    ) -> impl Iterator<Item = (&'s Entry<'s>, &'s TurnoutV1)> {
        self.entries.iter().filter_map(move |entry| {
            let Body::Turnout(body) = &entry.body else {
                return None;
            };
            (subject(&entry.record.subject).as_ref() == Some(who)).then_some((entry, body))
        })
    }

    /// Those that are out. One that is gone from the records is out nowhere.
    pub(super) fn out(&self) -> Vec<OpenTurnout> {
        self.entries
            .iter()
            .filter_map(|entry| {
                let Body::Turnout(body) = &entry.body else {
                    return None;
                };
                if body.came_in.is_some() {
                    return None;
                }
                let out = entry.record.at;
                Some(OpenTurnout {
                    id: entry.record.id.clone(),
                    subject: subject(&entry.record.subject)?,
                    name: self.name(entry.record.subject.id())?.to_owned(),
                    paddock_name: body.paddock.as_ref().and_then(|id| self.paddock_name(id)),
                    out,
                    by: to_be_in(out, body),
                    muzzle: body.muzzle,
                })
            })
            .collect()
    }

    /// Bringing in is done by the change of the turnout: that answers its job.
    pub(super) fn brought_in(&self) -> impl Iterator<Item = Answered> {
        self.entries.iter().filter_map(|entry| match &entry.body {
            Body::Turnout(body) => Some(Answered {
                at: body.came_in?,
                key: Key::Out {
                    turnout: entry.record.id.clone(),
                },
            }),
            _ => None,
        })
    }

    fn paddock_name(&self, paddock: &PaddockId) -> Option<String> {
        self.entries.iter().find_map(|entry| match &entry.body {
            Body::Paddock(body) if entry.record.id.0 == paddock.0 => {
                Some(body.name.as_str().to_owned())
            }
            _ => None,
        })
    }

    /// The groups that an animal is in today, fed with them or not.
    pub(super) fn out_with(&self, animal: &AnimalId) -> Vec<GroupId> {
        self.groups()
            .filter(|group| group.on(self.today).contains(&animal))
            .map(|group| group.id.clone())
            .collect()
    }
}

/// When one that went out at an instant is to be in again: as somebody said, else after the usual time.
///
/// Who ticks late says nothing of the hours since, so that no grass is counted on after it.
pub(in crate::log) fn to_be_in(out: Instant, body: &TurnoutV1) -> Instant {
    body.bring_in_by.unwrap_or(out + *BRING_IN_AFTER).max(out)
}

fn grazes(entry: &Entry<'_>) -> Option<Subject> {
    match (&entry.body, subject(&entry.record.subject)?) {
        (Body::Grazing(_), who @ (Subject::Animal(_) | Subject::Group(_))) => Some(who),
        _ => None,
    }
}
