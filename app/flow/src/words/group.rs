//! The labels of a group.

use tussock_core::animal::RiskLevel;
use tussock_core::plan::{GroupDraft, MemberShare};
use tussock_core::units::AsFed;

/// What a group's screens say.
pub trait GroupWords {
    /// The sentence of a new group.
    fn who_eats_together(&self) -> &'static str;
    /// The members as a question.
    fn members_from_today(&self) -> &'static str;
    /// Why the members matter.
    fn members_hint(&self) -> &'static str;
    /// The group needs somebody.
    fn member_wanted(&self) -> &'static str;
    /// The group needs a name.
    fn group_name_wanted(&self) -> &'static str;
    /// The action of a new group.
    fn save_group(&self) -> &'static str;
    /// The action of a group.
    fn save_members(&self) -> &'static str;
    /// The group is not there.
    fn no_such_group(&self) -> &'static str;
    /// What is offered to all, as the sentence.
    fn offered_to_all(&self, draft: &GroupDraft) -> String;
    /// Not every member may be fed so.
    fn not_together(&self) -> &'static str;
    /// No ration could be made.
    fn no_group_ration(&self) -> &'static str;
    /// The list of what is weighed out.
    fn weigh_out_for_all(&self) -> &'static str;
    /// A hay that is soaked, or not.
    fn soaked_or_dry(&self, soaked: bool) -> &'static str;
    /// How many places.
    fn feeding_places(&self, places: usize) -> String;
    /// What hangs for them at a visit: "4 nets apart, 2.50 kg each".
    fn nets_apart(&self, nets: &[AsFed]) -> String;
    /// The head of their day, visit by visit.
    fn group_day(&self) -> &'static str;
    /// Who sets how sugar is treated, and how.
    fn strictest(&self, name: &str, risk: RiskLevel) -> String;
    /// The list of shares.
    fn shares(&self) -> &'static str;
    /// One share: what it likely gets.
    fn member_share(&self, share: &MemberShare) -> String;
    /// The same as a part of its weight.
    fn share_level(&self, share: &MemberShare) -> String;
    /// Nobody needs separating.
    fn nobody_apart(&self) -> &'static str;
}
