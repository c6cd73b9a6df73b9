//! From records to what a group's plan is made from, and how its members eat at one pile.

use super::entry::up_to;
use super::envelope::Record;
use super::feeds::most_for_all;
use super::gather::{Gathered, Wish, gather};
use crate::animal::{Group, GroupId};
use crate::plan::{GroupDraft, GroupFor, HayOffer, NoGroupDraft, group};
use crate::units::{AsFed, Instant, Zone};

/// Everything that a yard's records say for the plan of a group.
#[derive(Clone, Debug, PartialEq)]
pub struct GatheredGroup {
    /// The group.
    pub group: Group,
    /// Who is in it on the day.
    pub members: Vec<Gathered>,
    /// The most that can hang for all of them at one visit.
    pub most_at_once: Option<AsFed>,
}

impl GatheredGroup {
    /// The draft of the group's plan.
    ///
    /// # Errors
    /// Those of [`group`].
    pub fn draft(&self) -> Result<GroupDraft, NoGroupDraft> {
        let offers: Vec<Vec<HayOffer<'_>>> = self.members.iter().map(Gathered::offers).collect();
        group(&GroupFor {
            group: GroupId(self.group.id.0.clone()),
            name: self.group.name.clone(),
            members: self
                .members
                .iter()
                .zip(&offers)
                .map(|(member, hays)| member.input(hays))
                .collect(),
            most_at_once: self.most_at_once,
        })
    }
}

/// Gathers what the records say of a group's members at an instant; a member that is not among them is left out.
///
/// `records` are those of [`gather`].
pub fn gather_group(
    records: &[&Record],
    group: &Group,
    now: Instant,
    zone: &impl Zone,
    wish: &Wish,
) -> GatheredGroup {
    let day = zone.to_local(now).date;
    let members = group.on(day);
    let entries = up_to(records, now);
    GatheredGroup {
        most_at_once: most_for_all(&entries, group, &members),
        members: members
            .into_iter()
            .filter_map(|animal| gather(records, animal, now, zone, wish))
            .collect(),
        group: group.clone(),
    }
}
