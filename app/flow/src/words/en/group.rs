//! A group in English.

use super::English;
use super::numbers::{between, up_to};
use crate::words::{AnimalWords, GroupWords, PlanScreenWords, Said, UnitWords};
use tussock_core::animal::RiskLevel;
use tussock_core::plan::{BucketLine, GroupDraft, MemberShare};
use tussock_core::units::{AsFed, LocalDate};

/// So many nets, and that they hang apart.
fn apart(nets: usize) -> String {
    match nets {
        1 => "1 net".to_owned(),
        nets => format!("{nets} nets apart"),
    }
}

impl GroupWords for English {
    fn who_eats_together(&self) -> &'static str {
        "Who eats together?"
    }
    fn members_from_today(&self) -> &'static str {
        "In it from today"
    }
    fn members_hint(&self) -> &'static str {
        "One field, one pile of hay: the most at-risk sets the hay for all."
    }
    fn member_wanted(&self) -> &'static str {
        "Choose at least one animal."
    }
    fn group_name_wanted(&self) -> &'static str {
        "Type a name, such as the field they stand in."
    }
    fn save_group(&self) -> &'static str {
        "Save group"
    }
    fn save_members(&self) -> &'static str {
        "Save who is in it"
    }
    fn no_such_group(&self) -> &'static str {
        "This group is not here"
    }
    fn offered_to_all(&self, draft: &GroupDraft) -> String {
        format!(
            "Offer {} a day for {}",
            self.dry(draft.forage),
            self.count(draft.members.len(), "animal", "animals")
        )
    }
    fn not_together(&self) -> &'static str {
        "No ration for all of them"
    }
    fn no_group_ration(&self) -> &'static str {
        "No ration for them yet"
    }
    fn weigh_out_for_all(&self) -> &'static str {
        "Weigh out a day, for all"
    }
    fn soaked_or_dry(&self, soaked: bool) -> &'static str {
        if soaked {
            "weighed before soaking; all of it is soaked"
        } else {
            "as it comes"
        }
    }
    fn nets_apart(&self, nets: &[AsFed]) -> String {
        let least = nets.iter().copied().reduce(AsFed::min);
        let most = nets.iter().copied().reduce(AsFed::max);
        match (least, most) {
            (Some(least), Some(most)) if most <= least => {
                let each = if nets.len() == 1 { "" } else { " each" };
                format!("{}, {}{each}", apart(nets.len()), self.feed(most))
            }
            (Some(least), Some(most)) => format!(
                "{}, {} to {}",
                apart(nets.len()),
                self.feed_number(least),
                self.feed(most)
            ),
            _ => "Nothing to hang".to_owned(),
        }
    }
    fn group_day(&self) -> &'static str {
        "Hang, visit by visit"
    }
    fn feeding_places(&self, places: usize) -> String {
        match places {
            1 => "1 feeding place".to_owned(),
            places => format!("{places} feeding places, one more than animals, well apart"),
        }
    }
    fn strictest(&self, name: &str, risk: RiskLevel) -> String {
        format!(
            "{name} sets the hay, the grass and the soaking for all: {}",
            super::fields::small(self.risk_level(risk))
        )
    }
    fn shares(&self) -> &'static str {
        "What each likely gets"
    }
    fn member_share(&self, share: &MemberShare) -> String {
        self.dry_ends(share.share)
    }
    fn share_level(&self, share: &MemberShare) -> String {
        let percent = |part: tussock_core::units::PartOfBody| up_to(part.to_percent(), 1);
        format!(
            "{} % of its weight",
            between(
                &percent(share.level.least),
                &percent(share.level.most),
                "to"
            )
        )
    }
    fn nobody_apart(&self) -> &'static str {
        "Nobody needs separating at hay time, as far as the numbers say"
    }
    fn sets_the_floor(&self, name: &str, raised: Option<f64>) -> String {
        match raised {
            Some(factor) => format!(
                "{name} sets the floor: all get {} % more, so that it has enough when the others push it off",
                up_to((factor - 1.0) * 100.0, 1)
            ),
            None => {
                format!("{name} sets the floor: it has enough even when the others push it off")
            }
        }
    }
    fn own_buckets(&self) -> &'static str {
        "Each in its own bucket, where the others cannot reach it"
    }
    fn named_bucket(&self, animal: &str, food: &str) -> String {
        if food.is_empty() {
            animal.to_owned()
        } else {
            format!("{animal}, {food}")
        }
    }
    fn own_bucket(&self, line: &BucketLine) -> Said {
        let feeds = line.dose.feeds.map(i64::from);
        Said {
            sentence: self.bucket(line.dose.a_day),
            why: Some(feeds.map_or_else(|| "a day".to_owned(), |feeds| self.in_feeds(feeds))),
        }
    }
    fn of_members(&self, names: &[&str], said: Said) -> Said {
        Said {
            sentence: format!(
                "{}: {}",
                self.list(names),
                super::fields::small(&said.sentence)
            ),
            why: said.why,
        }
    }
    fn offer_it(&self) -> &'static str {
        "offer a handful"
    }
    fn waits_of_all(&self) -> &'static str {
        "When all of them eat fast, every net is empty at the same time: these are the waits of that."
    }
    fn group_follows(&self, hay: AsFed, soaked: bool, animals: usize) -> String {
        let hay = self.feed(hay);
        let animals = self.count(animals, "animal", "animals");
        if soaked {
            format!("Go on: soak {hay} of hay a day for {animals}")
        } else {
            format!("Go on: {hay} of hay a day for {animals}")
        }
    }
    fn joined(&self, name: &str) -> Said {
        Said::because(
            format!("{name} eats of this hay and was not reckoned with"),
            "The plan in use hangs no more than before: all get less. Use today's plan.",
        )
    }
    fn has_left(&self, name: &str) -> Said {
        Said::because(
            format!("{name} does not eat of this hay any more"),
            "The plan in use still hangs its part: the others get more. Use today's plan.",
        )
    }
    fn has_own_plan(&self, name: &str, since: LocalDate) -> Said {
        Said::because(
            format!(
                "{name} has had a plan of its own since {}, and that one holds",
                self.day(since)
            ),
            "It is not counted at this hay: feed it apart, or take it out of the group. Using today's plan feeds it with \
             the others, and its own plan rests.",
        )
    }
    fn leaves_other(&self, name: &str, other: &str) -> String {
        format!("{name} is in {other}: saved here, it leaves that today")
    }
    fn counts_whole_days(&self) -> &'static str {
        "Who is in it goes by whole days: today counts from its first net on, and who leaves was in it to yesterday."
    }
    fn own_plans_rest(&self) -> &'static str {
        "From now on this plan gives each of them its hay; a plan of its own rests as long as it is in the group."
    }
    fn see_what_stops(&self, name: &str) -> String {
        format!("See the plan of {name}")
    }
    fn fed_with(&self, name: &str, group: &str) -> Said {
        Said::because(
            format!("{name} has its hay with {group}"),
            "A plan of its own rests meanwhile. Only its own bucket and what is watched of it are its own.",
        )
    }
    fn see_the_group(&self, group: &str) -> String {
        format!("See {group}")
    }
    fn feed_apart(&self) -> &'static str {
        "Feed it apart by this plan"
    }
    fn leaves_the_group(&self, name: &str, group: &str) -> String {
        format!("Fed apart, {name} leaves {group} from today: it must not reach their hay")
    }
    fn without_hay(&self, name: &str) -> String {
        format!(
            "{name} left its group, and no plan gives it hay: feed it now, then use a plan for it"
        )
    }
    fn no_rate_of_a_group(&self) -> [&'static str; 2] {
        [
            "These nets time nobody",
            "Several eat of them, so how fast one eats cannot be told. The waits are reckoned with each one's own rate \
             from nets it had alone, or with the published one.",
        ]
    }
    fn which_will_not_eat(&self) -> &'static str {
        "Which one will not eat?"
    }
    fn watch_them_at_the_hay(&self) -> &'static str {
        "Not sure? Watch them at the hay: one that stands apart may be pushed off, or ill. Hold out a handful to it."
    }
}
