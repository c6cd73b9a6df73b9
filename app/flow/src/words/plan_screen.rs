//! The labels of the plan's screen.

use crate::views::plan::{Part, Told};

/// What the plan's screen says beside the plan itself.
pub trait PlanScreenWords {
    /// What the screen is.
    fn plan_word(&self) -> &'static str;
    /// The decision as the sentence of the screen: so much hay, soaked or not, less than the start or not, grass or none.
    fn decision(&self, hay: &str, soaked: bool, less: bool, no_grass: bool) -> String;
    /// A part of the loop.
    fn part(&self, part: Part) -> &'static str;
    /// The word of a tag's state.
    fn told(&self, told: Told) -> &'static str;
    /// The cord, for screen readers.
    fn the_plan_in_order(&self) -> &'static str;
    /// The level that is allowed and what is fed a day, which is more where a floor raised it.
    fn allowed_a_day(&self, level: &str, dry: &str, raised: bool) -> String;
    /// Nothing is short.
    fn hay_alone_covers(&self) -> &'static str;
    /// The nets of the day by their times.
    fn nets_at(&self, times: &[String]) -> String;
    /// Look-over and review; `review` is worded.
    fn watch(&self, look_over_days: i64, review: &str) -> String;
    /// A head: the nets of the day.
    fn nets_of_the_day(&self) -> &'static str;
    /// Beside a net whose hay is soaked.
    fn before_soaking(&self) -> &'static str;
    /// Beside a net whose hay is fed as it comes.
    fn hay_in_the_net(&self) -> &'static str;
    /// A head: what would shorten the wait.
    fn mends_head(&self) -> &'static str;
    /// A head: the defaults.
    fn stands_in_head(&self) -> &'static str;
    /// A default dry matter.
    fn dry_stands_in(&self, lot: &str, dry: &str) -> String;
    /// A hay nobody tested.
    fn hay_stands_in(&self, lot: &str, class: &str) -> String;
    /// A typical balancer.
    fn balancer_stands_in(&self) -> &'static str;
    /// A typical eating rate.
    fn rate_stands_in(&self) -> &'static str;
    /// Two visits, at their times.
    fn visits_stand_in(&self, times: &[String]) -> String;
    /// A head: what would change the plan most.
    fn levers_head(&self) -> &'static str;
    /// The link to the workings.
    fn why_link(&self) -> &'static str;
    /// A head: why.
    fn why_head(&self) -> &'static str;
    /// The word that opens a reason.
    fn why(&self) -> &'static str;
    /// A head: where each number comes from.
    fn sources_head(&self) -> &'static str;
    /// The name of a constant, from its key.
    fn constant_name(&self, id: &str) -> String;
    /// A default among the sources.
    fn a_default(&self) -> &'static str;
    /// The records among the sources.
    fn your_records(&self) -> &'static str;
    /// What they are.
    fn your_records_mean(&self) -> &'static str;
    /// The action.
    fn use_this_plan(&self) -> &'static str;
    /// The action when the plan that holds is still the same.
    fn go_on_with(&self, name: &str) -> String;
    /// Since when a plan is in use, and its review.
    fn in_use(&self, from: &str, review: &str) -> String;
    /// Its review has come, and using the plan sets the next one.
    fn review_is_due(&self) -> &'static str;
    /// The plan in use as the sentence of the screen: so much hay, soaked or not.
    fn follows(&self, hay: &str, soaked: bool) -> String;
    /// It would now come out differently, and the amounts stay until the review.
    fn differs_until(&self, review: &str) -> String;
    /// A head: the hay and feed of the plan in use.
    fn plan_in_use(&self) -> &'static str;
    /// Its hay of a day.
    fn held_hay(&self, soaked: bool) -> &'static str;
    /// Its bought feed, where it has no name.
    fn a_balancer(&self) -> &'static str;
    /// In how many feeds.
    fn in_feeds(&self, feeds: i64) -> String;
    /// Opens how the plan would come out today.
    fn as_of_today(&self) -> &'static str;
    /// The quiet link that uses today's plan at once.
    fn change_before_review(&self) -> &'static str;
    /// Today it would come out differently.
    fn would_differ(&self) -> &'static str;
    /// The plan that was accepted does not hold while safety refuses.
    fn does_not_hold(&self) -> &'static str;
    /// There is no plan, where no vet is asked for.
    fn no_plan(&self) -> &'static str;
    /// A head: what to do meanwhile.
    fn meanwhile_head(&self) -> &'static str;
    /// The action when safety refuses.
    fn write_down_vets_word(&self) -> &'static str;
    /// The action when the hay is at fault or missing.
    fn add_a_hay(&self) -> &'static str;
    /// The action when a hay lacks something.
    fn open_the_hay(&self) -> &'static str;
    /// A disclaimer under every plan.
    fn no_diagnosis(&self) -> &'static str;
}
