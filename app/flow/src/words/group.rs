//! The labels of a group.

use crate::words::Said;
use tussock_core::animal::RiskLevel;
use tussock_core::plan::{BucketLine, GroupDraft, MemberShare};
use tussock_core::units::{AsFed, LocalDate};

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
    /// Who sets the floor, and whether all get more for it.
    fn sets_the_floor(&self, name: &str, raised: Option<f64>) -> String;
    /// The head of what each gets in its own bucket.
    fn own_buckets(&self) -> &'static str;
    /// Whose bucket: "Bramble", or with several foods "Bramble, linseed".
    fn named_bucket(&self, animal: &str, food: &str) -> String;
    /// One bucket: how much a day, in how many feeds.
    fn own_bucket(&self, line: &BucketLine) -> Said;
    /// Something that must be known of these members.
    fn of_members(&self, names: &[&str], said: Said) -> Said;
    /// The word beside one of those that may be the one that will not eat.
    fn offer_it(&self) -> &'static str;
    /// The waits are those when all eat fast.
    fn waits_of_all(&self) -> &'static str;
    /// The plan in use, as the sentence.
    fn group_follows(&self, hay: AsFed, soaked: bool, animals: usize) -> String;
    /// Somebody eats of the hay and was not there when the plan was made.
    fn joined(&self, name: &str) -> Said;
    /// The plan was made for one that does not eat of it any more.
    fn has_left(&self, name: &str) -> Said;
    /// A member is fed by a later plan of its own.
    fn has_own_plan(&self, name: &str, since: LocalDate) -> Said;
    /// A member was in another group, and leaves that.
    fn leaves_other(&self, name: &str, other: &str) -> String;
    /// From when a change of members counts.
    fn counts_whole_days(&self) -> &'static str;
    /// Using the plan takes the place of the members' own.
    fn own_plans_rest(&self) -> &'static str;
    /// The action under a refusal: the plan of the one that is stopped.
    fn see_what_stops(&self, name: &str) -> String;
    /// An animal is fed with a group.
    fn fed_with(&self, name: &str, group: &str) -> Said;
    /// The action: see that group.
    fn see_the_group(&self, group: &str) -> String;
    /// The quiet link: a plan of its own, apart from the group.
    fn feed_apart(&self) -> &'static str;
    /// What that does.
    fn leaves_the_group(&self, name: &str, group: &str) -> String;
    /// An animal that left its group has no plan that gives it hay.
    fn without_hay(&self, name: &str) -> String;
    /// Why no rate is taken from the nets of a group.
    fn no_rate_of_a_group(&self) -> [&'static str; 2];
    /// The sentence of the choice: which of them will not eat.
    fn which_will_not_eat(&self) -> &'static str;
    /// What to do meanwhile.
    fn watch_them_at_the_hay(&self) -> &'static str;
}
