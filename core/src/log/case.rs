//! A case: an export with `now`, `zone` and `visits` beside its records, so that a plan can be made without a clock.
//!
//! ```text
//! {"format":"tussock-log","version":1,"app":"0.1.0","made_at":1777960800000,
//!  "now":1777960800000,
//!  "zone":{"name":"Europe/London","before_min":0,"changes":[{"at":1774746000000,"offset_min":60}]},
//!  "visits":["06:30","12:30","17:30","22:00"],
//!  "subject":"animal:moss",
//!  "asked":125,
//!  "hays":[{"lot":"meadow","hundredths":70},{"lot":"straw","hundredths":30}],
//!  "records":[…]}
//! ```
//!
//! It needs no other format: a reader of bundles reads it too. `counts` and `sha256` may be missing, because a person
//! writes it; `subject` may be missing, and then the case is about every animal in it. `asked` is the level that is
//! asked for, in hundredths of a percent of body weight; `hays` names the forages and their parts of the forage dry
//! matter, in hundredths. Both may be missing.

use super::account::{account, account_error, account_group};
use super::bodies::Body;
use super::bodies::base::BodyHundredths;
use super::bundle::Bundle;
use super::envelope::Record;
use super::error::{Allowed, LogError, Path};
use super::gather::{Wish, gather};
use super::kind::Kind;
use super::merge::Log;
use super::stored::{Stored, twin};
use super::subject::Subject;
use super::together::gather_group;
use crate::animal::{AnimalId, LotId};
use crate::plan::PlanError;
use crate::safety::{GroupVerdict, SafetyVerdict, judge, judge_group};
use crate::sources::RecordId;
use crate::units::{Instant, LocalTime, Zone};
use serde_json::{Map, Value, json};

twin! {
    /// A change of the clock.
    ClockChange {
        /// From when on.
        at: Instant,
        /// The offset from UTC from then on, in minutes east.
        offset_min: OffsetMin,
    }
}

super::bodies::base::whole_number! {
    /// An offset of a wall clock from UTC, in minutes east.
    // numeric: eighteen hours, as in the envelope
    OffsetMin = (-1_080, 1_080)
}

twin! {
    /// A zone as a table of the changes of its clock.
    ZoneTable {
        /// The IANA name.
        name: super::stored::Name,
        /// The offset before the first change, in minutes east.
        before_min: OffsetMin,
        /// The changes, rising.
        changes: Vec<ClockChange>,
    }
}

impl Zone for ZoneTable {
    fn offset_min(&self, at: Instant) -> i32 {
        let offset = self
            .changes
            .iter()
            .rev()
            .find(|change| change.at <= at)
            .map_or(&self.before_min, |change| &change.offset_min);
        i32::try_from(offset.get()).unwrap_or_default()
    }
}

/// A case.
#[derive(Clone, Debug, PartialEq)]
pub struct Case {
    /// The records.
    pub log: Log,
    /// The time of the case.
    pub now: Instant,
    /// Where it is.
    pub zone: ZoneTable,
    /// When somebody comes, rising.
    pub visits: Vec<LocalTime>,
    /// The animal or group it is about; `None` for every animal in it.
    pub subject: Option<Subject>,
    /// What is asked for beside the records.
    pub wish: Wish,
}

twin! {
    /// A forage of a case and its part.
    HayPart {
        /// The lot.
        lot: LotId,
        /// Its part of the forage dry matter.
        hundredths: Hundredths,
    }
}

super::bodies::base::whole_number! {
    /// A part, in hundredths.
    Hundredths = (1, 100)
}

/// What comes of a subject of a case.
#[derive(Clone, Debug, PartialEq)]
pub enum Answer {
    /// An animal's plan or refusal.
    Animal(SafetyVerdict),
    /// A group's.
    Group(GroupVerdict),
    /// No draft could be made.
    NoDraft(PlanError),
    /// The subject is not among the records.
    NotThere,
}

impl Case {
    /// Reads a case.
    ///
    /// Errors: those of [`Bundle::read_unsealed`], and those of the fields beside the records.
    pub fn read(text: &str) -> Result<Self, LogError> {
        let bundle = Bundle::read_unsealed(text)?;
        let root = Path::Root;
        let field = |key: &str| bundle.extra.get(key);
        let zone = ZoneTable::read(field("zone"), &root.key("zone"))?;
        let risen = |pair: &[ClockChange]| match pair {
            [first, second] => first.at < second.at,
            _ => true,
        };
        if !zone.changes.windows(2).all(risen) {
            let path = root.key("zone");
            return Err(path.key("changes").refuse("", Allowed::Rising));
        }
        let visits = Vec::<LocalTime>::read(field("visits"), &root.key("visits"))?;
        if !visits.is_sorted_by(|a, b| a < b) {
            return Err(root.key("visits").refuse("", Allowed::Rising));
        }
        let subject = match field("subject") {
            None => None,
            some => {
                let path = root.key("subject");
                Some(Subject::read(super::stored::text(some, &path)?, &path)?)
            }
        };
        Ok(Self {
            now: Instant::read(field("now"), &root.key("now"))?,
            zone,
            wish: Wish {
                asked: Option::<BodyHundredths>::read(field("asked"), &root.key("asked"))?
                    .map(BodyHundredths::part),
                hays: Option::<Vec<HayPart>>::read(field("hays"), &root.key("hays"))?
                    .unwrap_or_default()
                    .into_iter()
                    .map(|hay| (hay.lot.0, hay.hundredths.get() as f64 / 100.0))
                    .collect(),
                visits: visits.clone(),
            },
            visits,
            subject,
            log: bundle.log,
        })
    }
}
impl Case {
    /// The plan or refusal of every subject of the case, in the order of the records.
    pub fn answers(&self) -> Vec<(Subject, Answer)> {
        let records: Vec<&Record> = self.log.current().collect();
        let subjects: Vec<Subject> = match &self.subject {
            Some(subject) => vec![subject.clone()],
            None => records
                .iter()
                .filter(|record| record.kind == Kind::Animal)
                .map(|record| Subject::animal(&AnimalId(record.id.0.clone())))
                .collect(),
        };
        subjects
            .into_iter()
            .map(|subject| {
                let answer = self.answer(&records, &subject);
                (subject, answer)
            })
            .collect()
    }

    /// The answers as one JSON object with an entry a subject: `plan`, `group`, `refused`, `no_draft` or `not_there`.
    pub fn account(&self) -> Value {
        self.answers()
            .into_iter()
            .map(|(subject, answer)| {
                let value = match answer {
                    Answer::Animal(verdict) => account(&verdict),
                    Answer::Group(verdict) => account_group(&verdict),
                    Answer::NoDraft(error) => account_error(&error),
                    Answer::NotThere => json!({ "not_there": subject.to_string() }),
                };
                (subject.to_string(), value)
            })
            .collect::<Map<_, _>>()
            .into()
    }

    fn answer(&self, records: &[&Record], subject: &Subject) -> Answer {
        let gathered =
            |animal: &AnimalId| gather(records, animal, self.now, &self.zone, &self.wish);
        if subject.kind() == "group" {
            return self.answer_group(records, subject.id());
        }
        match gathered(&AnimalId(subject.id().to_owned())).map(|animal| animal.draft()) {
            None => Answer::NotThere,
            Some(Ok(draft)) => Answer::Animal(judge(draft)),
            Some(Err(error)) => Answer::NoDraft(error),
        }
    }

    fn answer_group(&self, records: &[&Record], id: &str) -> Answer {
        let found = records.iter().find(|record| record.id.0 == id);
        let Some(Ok(Body::Group(body))) = found.map(|record| Body::read(record)) else {
            return Answer::NotThere;
        };
        let group = body.group(&RecordId(id.to_owned()));
        let gathered = gather_group(records, &group, self.now, &self.zone, &self.wish);
        let day = self.zone.to_local(self.now).date;
        if gathered.members.len() < group.on(day).len() {
            return Answer::NotThere;
        }
        match gathered.draft() {
            Ok(draft) => Answer::Group(judge_group(draft)),
            Err(no) => Answer::NoDraft(no.error),
        }
    }
}
