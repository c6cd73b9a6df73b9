//! From records to when an animal or a group was at grass, what it found there, and what was decided of it.

use super::bodies::{Body, GrazingV1, TurnoutV1};
use super::entry::Entry;
use super::envelope::Known;
use super::grazing::{decided, leaf_seen};
use crate::animal::{AnimalId, Group, PaddockId, group_of};
use crate::graze::intake::published::ADAPTED_WEEKS;
use crate::round::Subject;
use crate::units::published::{DAYS_PER_WEEK, HOURS_PER_DAY};
use crate::units::{Instant, LocalDate, Span, Zone};

/// The turnouts, what was seen of paddocks and what was decided of grass, among entries that are oldest first.
pub(super) struct AtGrass<'a, Z> {
    pub entries: &'a [Entry<'a>],
    pub groups: &'a [Group],
    pub zone: &'a Z,
    pub now: Instant,
}

/// Once at grass.
#[derive(Clone)]
pub(super) struct Outing<'a> {
    pub body: &'a TurnoutV1,
    pub out: Instant,
    /// When it came in; `None` while it is out, and where nobody can tell.
    pub came_in: Option<Instant>,
    /// It is out now.
    pub is_out: bool,
}

/// How long it was out on a day.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum OnDay {
    /// So long.
    For(Span),
    /// It is out still, or nobody knows when it came in.
    NotKnown,
}

impl Outing<'_> {
    /// How long of it belongs to a day; `None` when none of it does. All of a turnout over midnight belongs to the day on
    /// which it began; of one that is longer than a day, each day from its beginning on is one of the days.
    pub(super) fn on(&self, day: LocalDate, zone: &impl Zone) -> Option<OnDay> {
        let nth = (day - zone.to_local(self.out).date).num_days();
        if nth < 0 {
            return None;
        }
        let Some(came_in) = self.came_in else {
            return (nth == 0 || self.is_out).then_some(OnDay::NotKnown);
        };
        let whole = Span::hours(HOURS_PER_DAY);
        let begins = self.out + Span::ms(whole.to_ms().saturating_mul(nth));
        (nth == 0 || begins < came_in).then(|| OnDay::For(came_in.since(begins).min(whole)))
    }
}

impl<'a, Z: Zone> AtGrass<'a, Z> {
    /// Whether an entry is about a subject, or about the group that the animal stood in on a day.
    pub(super) fn is_about(&self, entry: &Entry<'_>, of: &Subject, day: LocalDate) -> bool {
        let about = |(kind, id): (&str, &str)| {
            entry.record.subject.kind() == kind && entry.record.subject.id() == id
        };
        match of {
            Subject::Animal(animal) => {
                about(of.parts())
                    || group_of(self.groups, animal, day)
                        .is_some_and(|group| about(("group", group.id.as_str())))
            }
            Subject::Group(_) | Subject::Yard(_) => about(of.parts()),
        }
    }

    /// Its turnouts, oldest first; an animal's with those of its group. What two entries say of one hour counts once.
    pub(super) fn outings(&self, of: &Subject) -> Vec<Outing<'a>> {
        let mut found: Vec<Outing<'a>> = Vec::new();
        let mut until: Option<Instant> = None;
        for entry in self.entries {
            let Body::Turnout(body) = &entry.body else {
                continue;
            };
            let out = entry.record.at;
            if self.now < out || !self.is_about(entry, of, self.zone.to_local(out).date) {
                continue;
            }
            let came_in = body.came_in.filter(|came_in| {
                out <= *came_in && *came_in <= self.now && entry.record.known != Known::NotKnown
            });
            let from = until.map_or(out, |until| until.max(out));
            if out < from && came_in.is_some_and(|came_in| came_in <= from) {
                continue;
            }
            until = until.max(came_in);
            found.push(Outing {
                body,
                out: from,
                came_in,
                is_out: body.is_out(out, self.now),
            });
        }
        found
    }

    /// What holds of its grass on a day: what was decided for it last, else for its group; `None` where it does not go out.
    pub(super) fn decided(&self, of: &Subject, day: LocalDate) -> Option<&'a GrazingV1> {
        let own = || decided(self.entries, of.parts().1, day);
        let of_group = || match of {
            Subject::Animal(animal) => {
                let group = group_of(self.groups, animal, day)?;
                decided(self.entries, group.id.as_str(), day)
            }
            Subject::Group(_) | Subject::Yard(_) => None,
        };
        own().or_else(of_group).filter(|body| body.holds(day))
    }

    /// Weeks of turnout behind an animal on a day: since when somebody said that it goes out every day, else since the
    /// first of its turnouts of the last six weeks. `None` when nobody knows of any.
    pub(super) fn used_to_it(&self, animal: &AnimalId, day: LocalDate) -> Option<f64> {
        let of = Subject::Animal(animal.clone());
        let said = self.decided(&of, day).and_then(|body| body.adapted_since);
        let first = || {
            self.outings(&of)
                .iter()
                .map(|outing| self.zone.to_local(outing.out).date)
                .find(|out| *out <= day && weeks(*out, day) <= *ADAPTED_WEEKS)
        };
        let since = said.filter(|since| *since <= day).or_else(first)?;
        Some(weeks(since, day))
    }

    /// Whether there is leaf to eat there on a day.
    pub(super) fn has_leaf(&self, paddock: Option<&PaddockId>, day: LocalDate) -> bool {
        leaf_seen(self.entries, paddock, day, self.zone)
    }
}

/// The weeks from a day to another.
fn weeks(from: LocalDate, to: LocalDate) -> f64 {
    (to - from).num_days() as f64 / DAYS_PER_WEEK as f64
}

#[cfg(test)]
pub(super) mod tests;
