//! What must be known of a group's members where its plan is decided, by name.

use crate::words::{GroupWords, Said, Words};
use tussock_core::safety::{Caution, GroupPlan};

/// The cautions of all members, each once with the names of those it is about. A long wait is told of the group's own day.
pub fn cautions(plan: &GroupPlan, words: &(impl Words + GroupWords)) -> Vec<Said> {
    let mut found: Vec<(Vec<&str>, Said)> = Vec::new();
    for member in plan.members() {
        let name = member.planned().animal.name.as_str();
        for caution in member.cautions() {
            if matches!(caution, Caution::LongGap { .. }) {
                continue;
            }
            let said = words.caution(caution);
            match found.iter_mut().find(|(_, other)| *other == said) {
                Some((names, _)) => names.push(name),
                None => found.push((vec![name], said)),
            }
        }
    }
    found
        .into_iter()
        .map(|(names, said)| words.of_members(&names, said))
        .collect()
}
