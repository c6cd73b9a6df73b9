//! The walk-round: who scores and on which scale, the score of last time, the summary of now, and what two people scored
//! on one day.

#[cfg(test)]
mod tests;

use super::horses::{kind_of_limit, one_needs};
use crate::rows::Range;
use crate::shelf::Shelf;
use std::cmp::Reverse;
use tussock_core::animal::{AnimalId, PersonId, Phase};
use tussock_core::assess::published::CONDITION_EVERY;
use tussock_core::assess::{
    AssessError, ConditionRange, ConditionScale, ConditionScore, Crest, Site, apart,
};
use tussock_core::limits::published::CONDITION_APART;
use tussock_core::log::bodies::{Condition, Role};
use tussock_core::log::{Body, Kind};
use tussock_core::units::{Instant, LocalDate, Zone};

/// The most persons that are asked for.
const PERSONS: u32 = 200;

/// What the walk-round asks the disk for.
pub fn needs(animal: &AnimalId) -> Vec<Range> {
    let mut ranges = one_needs(animal);
    ranges.push(kind_of_limit(&Kind::Person, PERSONS));
    ranges
}

/// Somebody who may score.
#[derive(Clone, Debug, PartialEq)]
pub struct Person {
    /// Who.
    pub id: PersonId,
    /// The initials; the name where there are none.
    pub initials: String,
    /// What the person is here.
    pub role: Role,
}

/// Those who may score, by their initials.
pub fn persons(shelf: &Shelf) -> Vec<Person> {
    let mut persons: Vec<Person> = shelf
        .bodies(&Kind::Person)
        .into_iter()
        .filter_map(|(record, body)| match body {
            Body::Person(body) => Some(Person {
                id: PersonId(record.id.0.clone()),
                initials: body.initials.unwrap_or(body.name).as_str().to_owned(),
                role: body.role,
            }),
            _ => None,
        })
        .collect();
    persons.sort_by(|a, b| (&a.initials, &a.id).cmp(&(&b.initials, &b.id)));
    persons
}

/// A score with its day and whose it is.
#[derive(Clone, Debug, PartialEq)]
pub struct Given {
    /// The day.
    pub on: LocalDate,
    /// Who scored; `None` where nobody said.
    pub by: Option<PersonId>,
    /// The initials of who scored; `None` where they are not known.
    pub initials: Option<String>,
    /// The score.
    pub score: ConditionScore,
}

impl Given {
    /// What a site had.
    pub fn site(&self, site: Site) -> Option<f64> {
        self.score
            .sites()
            .iter()
            .find(|(scored, _)| *scored == site)
            .map(|(_, value)| *value)
    }

    /// What it stands for from 1 to 9, where it was scored from 0 to 5. Nothing leads the other way.
    pub fn on_nine(&self) -> Option<ConditionRange> {
        (self.score.scale() == ConditionScale::FiveStep).then(|| self.score.on_nine())
    }
}

/// The scores of an animal site by site, newest first.
fn given(shelf: &Shelf, animal: &AnimalId, now: Instant, zone: &impl Zone) -> Vec<Given> {
    let persons = persons(shelf);
    shelf
        .bodies(&Kind::Condition)
        .into_iter()
        .filter(|(record, _)| record.subject.id() == animal.as_str() && record.at <= now)
        .filter_map(|(record, body)| {
            let Body::Condition(body) = body else {
                return None;
            };
            let Ok(Condition::Score(score, _)) = body.condition() else {
                return None;
            };
            let initials = persons
                .iter()
                .find(|person| Some(&person.id) == record.by.as_ref())
                .map(|person| person.initials.clone());
            (!score.sites().is_empty()).then(|| Given {
                on: zone.to_local(record.at).date,
                by: record.by.clone(),
                initials,
                score,
            })
        })
        .collect()
}

/// A score again so soon that it says little.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Early {
    /// The day of the last one.
    pub last: LocalDate,
    /// Days since then.
    pub days: i64,
    /// Days after which a score says something: a month, or two weeks of one that is new.
    pub enough: i64,
    /// The same person scored it today: this one stands in its place.
    pub again: bool,
}

/// What stands before the first site of a walk-round by somebody.
#[derive(Clone, Debug, PartialEq)]
pub struct Begin {
    /// The name of the animal.
    pub name: String,
    /// The scale that is usual here for its kind.
    pub usual: ConditionScale,
    /// The scale it was scored on last, else the usual one.
    pub scale: ConditionScale,
    /// It was scored a short while ago.
    pub early: Option<Early>,
    /// Somebody else scored it today.
    pub second: bool,
}

/// Days after which condition is scored again: monthly is enough, for it lags weight; but of a new animal two scores two
/// weeks apart are asked for before anything is cut.
pub fn score_every(phase: Phase) -> i64 {
    match phase {
        Phase::New => *CONDITION_APART,
        _ => *CONDITION_EVERY,
    }
}

/// What stands before the first site; `None` when the animal is not there. `by` is who scores: what somebody else scored
/// today is not told.
pub fn begin(
    shelf: &Shelf,
    animal: &AnimalId,
    by: Option<&PersonId>,
    now: Instant,
    zone: &impl Zone,
) -> Option<Begin> {
    let found = shelf.animal(animal)?;
    let today = zone.to_local(now).date;
    let given = given(shelf, animal, now, zone);
    let usual = ConditionScale::usual_for(found.kind);
    let own = given.iter().find(|given| !other_today(given, by, today));
    let enough = score_every(found.phase);
    let early = own
        .map(|given| Early {
            last: given.on,
            days: (today - given.on).num_days(),
            enough,
            again: given.on == today,
        })
        .filter(|early| early.days < enough);
    Some(Begin {
        name: found.name,
        usual,
        scale: given.first().map_or(usual, |given| given.score.scale()),
        early,
        second: given.iter().any(|given| other_today(given, by, today)),
    })
}

/// Whether somebody else scored it today: that stands beside this score and is not last time's.
fn other_today(given: &Given, by: Option<&PersonId>, today: LocalDate) -> bool {
    given.on == today && given.by.as_ref() != by
}

/// What this score is compared with.
#[derive(Clone, Debug, PartialEq)]
pub enum Before {
    /// The last score on the same scale.
    Same(Given),
    /// The last score is on the other scale; the two are not compared.
    Other(Given),
}

impl Before {
    /// The score, where it can be compared.
    pub const fn same(&self) -> Option<&Given> {
        match self {
            Self::Same(given) => Some(given),
            Self::Other(_) => None,
        }
    }
}

/// The last score of an animal before this one; what somebody else scored today is no last time.
pub fn before(
    shelf: &Shelf,
    animal: &AnimalId,
    scale: ConditionScale,
    by: Option<&PersonId>,
    now: Instant,
    zone: &impl Zone,
) -> Option<Before> {
    let today = zone.to_local(now).date;
    let last = given(shelf, animal, now, zone)
        .into_iter()
        .find(|given| !other_today(given, by, today))?;
    Some(if last.score.scale() == scale {
        Before::Same(last)
    } else {
        Before::Other(last)
    })
}

/// Now against last time.
#[derive(Clone, Debug, PartialEq)]
pub struct Summary {
    /// The scale.
    pub scale: ConditionScale,
    /// The score.
    pub value: f64,
    /// The sites that changed and by how much, in walking order; `None` when there is nothing to compare with.
    pub changes: Option<Vec<(Site, f64)>>,
    /// Whether the whole differs by no more than two people, or one on two days, would.
    pub noise: bool,
    /// The last score on the other scale, where that is the last one.
    pub other: Option<Given>,
}

/// The summary of a score.
pub fn summary(score: &ConditionScore, before: Option<&Before>) -> Summary {
    let same = before.and_then(Before::same);
    let changes = same.map(|before| {
        score
            .sites()
            .iter()
            .filter_map(|(site, value)| Some((*site, value - before.site(*site)?)))
            .filter(|(_, change)| change.abs() > 0.0)
            .collect()
    });
    Summary {
        scale: score.scale(),
        value: score.value(),
        changes,
        noise: same
            .and_then(|before| score.since(&before.score).ok())
            .is_some_and(|change| change.noise),
        other: match before {
            Some(Before::Other(given)) => Some(given.clone()),
            Some(Before::Same(_)) | None => None,
        },
    }
}

/// The crest as it was scored last, and the day.
pub fn last_crest(
    shelf: &Shelf,
    animal: &AnimalId,
    now: Instant,
    zone: &impl Zone,
) -> Option<(Crest, LocalDate)> {
    shelf
        .bodies(&Kind::Crest)
        .into_iter()
        .filter(|(record, _)| record.subject.id() == animal.as_str() && record.at <= now)
        .find_map(|(record, body)| match body {
            Body::Crest(body) => Some((body.crest().ok()?, zone.to_local(record.at).date)),
            _ => None,
        })
}

/// What two people scored on one day, neither seeing the other's.
#[derive(Clone, Debug, PartialEq)]
pub struct Two {
    /// The day.
    pub on: LocalDate,
    /// Who scored first.
    pub first: Given,
    /// Who scored second.
    pub second: Given,
    /// The sites at which they differ and by how much, in walking order.
    ///
    /// Error: they scored on two scales.
    pub apart: Result<Vec<(Site, f64)>, AssessError>,
}

/// What two people scored on the last day on which two did; the last two where there are more.
pub fn two(shelf: &Shelf, animal: &AnimalId, now: Instant, zone: &impl Zone) -> Option<Two> {
    let given = given(shelf, animal, now, zone);
    let mut days: Vec<LocalDate> = given.iter().map(|given| given.on).collect();
    days.sort_by_key(|day| Reverse(*day));
    days.dedup();
    days.into_iter().find_map(|day| {
        let on_day: Vec<&Given> = given.iter().filter(|given| given.on == day).collect();
        let second = *on_day.first()?;
        let first = *on_day.iter().find(|given| given.by != second.by)?;
        Some(Two {
            on: day,
            apart: apart(&second.score, &first.score),
            first: first.clone(),
            second: second.clone(),
        })
    })
}
