//! From a draft to a plan, or to a refusal.

use super::caution::{Caution, cautions};
use super::refusal::{Refusal, Refused, meanwhile, refusals, short_of};
use crate::plan::{Draft, GroupDraft};

/// A plan that safety allowed. There is no other way to make one.
#[derive(Clone, Debug, PartialEq)]
pub struct Plan {
    draft: Draft,
    cautions: Vec<Caution>,
}

impl Plan {
    /// What was planned.
    pub const fn planned(&self) -> &Draft {
        &self.draft
    }

    /// What must be known beside it.
    pub fn cautions(&self) -> &[Caution] {
        &self.cautions
    }
}

/// What safety says of a draft.
#[derive(Clone, Debug, PartialEq)]
pub enum SafetyVerdict {
    /// It may be shown, used and kept.
    Allowed(Box<Plan>),
    /// There is no plan.
    Refused(Refused),
}

/// Judges a draft: the last word.
pub fn judge(draft: Draft) -> SafetyVerdict {
    judge_with(draft, None)
}

fn judge_with(draft: Draft, also: Option<Refusal>) -> SafetyVerdict {
    let mut why = refusals(&draft);
    why.extend(also.filter(|also| {
        let same = |why: &Refusal| std::mem::discriminant(why) == std::mem::discriminant(also);
        !why.iter().any(same)
    }));
    if why.is_empty() {
        return SafetyVerdict::Allowed(Box::new(Plan {
            cautions: cautions(&draft),
            draft,
        }));
    }
    why.sort_by_key(|reason| std::cmp::Reverse(reason.vet(&draft)));
    SafetyVerdict::Refused(Refused {
        vet: why.iter().filter_map(|reason| reason.vet(&draft)).max(),
        meanwhile: meanwhile(&draft, &why),
        why,
        draft: Box::new(draft),
    })
}

/// A group's plan that safety allowed for every member.
#[derive(Clone, Debug, PartialEq)]
pub struct GroupPlan {
    draft: GroupDraft,
    members: Vec<Plan>,
}

impl GroupPlan {
    /// What was planned for all.
    pub const fn planned(&self) -> &GroupDraft {
        &self.draft
    }

    /// The members' own plans, in their order.
    pub fn members(&self) -> &[Plan] {
        &self.members
    }
}

/// What safety says of a group.
#[derive(Clone, Debug, PartialEq)]
pub enum GroupVerdict {
    /// Every member may be fed so.
    Allowed(Box<GroupPlan>),
    /// These may not; they are fed apart.
    Refused(Vec<Refused>),
}

/// Judges a group: every member must pass, and the least that each may get of what is offered keeps its floor.
pub fn judge_group(draft: GroupDraft) -> GroupVerdict {
    let mut members = Vec::new();
    let mut refused = Vec::new();
    for member in &draft.members {
        let floor = member.alone.allowance.floor.of(member.alone.weight.value);
        match judge_with(member.alone.clone(), short_of(member.share.least, floor)) {
            SafetyVerdict::Allowed(plan) => members.push(*plan),
            SafetyVerdict::Refused(no) => refused.push(no),
        }
    }
    if refused.is_empty() {
        GroupVerdict::Allowed(Box::new(GroupPlan { draft, members }))
    } else {
        GroupVerdict::Refused(refused)
    }
}
