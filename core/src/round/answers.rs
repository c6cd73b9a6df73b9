//! What was answered.

use super::input::Answered;
use super::key::Key;
use crate::units::{LocalDate, Zone};
use std::collections::BTreeSet;

/// The answered keys.
pub(super) struct Answers<'a> {
    keys: BTreeSet<&'a Key>,
    away: Vec<(LocalDate, LocalDate)>,
    days: BTreeSet<LocalDate>,
}

impl<'a> Answers<'a> {
    pub(super) fn of(answered: &'a [Answered], zone: &impl Zone) -> Self {
        let mut answers = Self {
            keys: answered.iter().map(|answer| &answer.key).collect(),
            away: Vec::new(),
            days: BTreeSet::new(),
        };
        for Answered { at, key } in answered {
            // The card of days away is answered on a later day and says of that day nothing.
            if let Key::Away { from, to } = key {
                answers.away.push((*from, *to));
                continue;
            }
            answers.days.insert(zone.to_local(*at).date);
            if let Key::Day { kind, day, .. } = key
                && kind.is_of_a_visit()
            {
                answers.days.insert(*day);
            }
        }
        answers
    }

    /// Whether a job was answered: by its own key, or with days away.
    pub(super) fn has(&self, key: &Key) -> bool {
        let with_days = match key {
            Key::Day { kind, day, .. } => kind.is_of_a_visit() && self.is_away(*day),
            Key::Tub { .. } | Key::Out { .. } | Key::Away { .. } => false,
        };
        with_days || self.keys.contains(key)
    }

    /// Whether anything was answered on or for a day.
    pub(super) fn speak_of(&self, day: LocalDate) -> bool {
        self.is_away(day) || self.days.contains(&day)
    }

    fn is_away(&self, day: LocalDate) -> bool {
        self.away
            .iter()
            .any(|(from, to)| (*from..=*to).contains(&day))
    }
}
