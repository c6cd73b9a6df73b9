//! A group in English.

use super::English;
use super::numbers::{between, up_to};
use crate::words::{AnimalWords, GroupWords, UnitWords};
use tussock_core::animal::RiskLevel;
use tussock_core::plan::{GroupDraft, MemberShare};
use tussock_core::units::AsFed;

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
}
