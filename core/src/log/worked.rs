//! From records to the work of an animal: what it may do, what is asked of it, and its sessions.

use super::bodies::Body;
use super::entry::Entry;
use super::gather::Gathered;
use crate::animal::VetScope;
use crate::safety::{Refusal, VetUrgency};
use crate::units::Zone;
use crate::work::{Asked, CountsFrom, Session, Standing, WorkFor, asked, built, standing};

impl Gathered {
    /// What work it may have, and what stops it.
    pub fn work(&self) -> Standing {
        let by_look = self
            .look_over
            .stops(&self.animal.id, &self.words, VetScope::Work, self.day);
        standing(&WorkFor {
            animal: &self.animal,
            day: self.day,
            words: &self.words,
            said: self.said,
            sign: by_look || by_reading(&self.stops()),
        })
    }

    /// What is asked of this week's work; `None` where no work is planned.
    pub fn work_asked(&self) -> Option<Asked> {
        let standing = self.work();
        asked(standing.line, self.work_built(&standing))
    }

    /// How many weeks of building up lie behind it. What lies before the vet's word that opened its work does not count.
    pub fn work_built(&self, standing: &Standing) -> u32 {
        let from = CountsFrom {
            since: standing.word_given,
            work: self.animal.work,
        };
        built(&self.sessions, from, self.day)
    }
}

/// Whether a reading at rest is for the vet: it stops work as a sign does.
pub(super) fn by_reading(stops: &[(Refusal, VetUrgency)]) -> bool {
    stops
        .iter()
        .any(|(why, _)| matches!(why, Refusal::FarOverUsual { .. }))
}

/// The sessions of work of an animal, oldest first.
pub(super) fn sessions(own: &[&Entry<'_>], zone: &impl Zone) -> Vec<Session> {
    own.iter()
        .filter_map(|entry| match &entry.body {
            Body::WorkSession(body) => {
                Some(body.session(&entry.record.id, zone.to_local(body.start).date))
            }
            _ => None,
        })
        .collect()
}
