//! A group: what is offered to all, each one's share, and who needs separating. Safety has the last word.

use crate::shelf::Shelf;
use crate::views::plan::same_but_for_now;
use tussock_core::animal::{Animal, AnimalId, Group, GroupId};
use tussock_core::log::{Gathered, Record, Wish, draft_group, gather};
use tussock_core::plan::{GroupDraft, PlanError};
use tussock_core::safety::{GroupVerdict, Refused, judge_group};
use tussock_core::units::{AsFed, Instant, LocalDate, Zone};

/// What is offered of one hay to all of them.
#[derive(Clone, Debug, PartialEq)]
pub struct Offered {
    /// Its name.
    pub lot: String,
    /// What is weighed out a day, before soaking.
    pub weigh_out: AsFed,
    /// Whether it is soaked.
    pub soaked: bool,
}

/// How the group is fed.
#[derive(Clone, Debug, PartialEq)]
pub enum Fed {
    /// Every member may be fed so.
    Together(Box<GroupDraft>, Vec<Offered>),
    /// These may not: there is no ration for all.
    Refused(Vec<Refused>),
    /// No ration could be made, and for whom.
    NoDraft(PlanError, Option<AnimalId>),
}

impl Fed {
    fn reads_as(&self, other: &Self) -> bool {
        match (self, other) {
            (Self::Together(one, ours), Self::Together(two, theirs)) => {
                let mut now = two.clone();
                for (held, share) in now.members.iter_mut().zip(&one.members) {
                    held.alone.now = share.alone.now;
                }
                *one == now && ours == theirs
            }
            (Self::Refused(one), Self::Refused(two)) => {
                one.len() == two.len()
                    && one.iter().zip(two).all(|(one, two)| {
                        one.why == two.why && same_but_for_now(&one.draft, &two.draft)
                    })
            }
            (one, two) => one == two,
        }
    }
}

/// A group on a day.
#[derive(Clone, Debug, PartialEq)]
pub struct Herd {
    /// The group.
    pub group: Group,
    /// The local day.
    pub today: LocalDate,
    /// Who is in it today.
    pub members: Vec<Animal>,
    /// Everybody of the yard, by name.
    pub yard: Vec<Animal>,
    /// How it is fed.
    pub fed: Fed,
}

impl Herd {
    /// Whether a screen would read the same: everything but the instant it was worked out at.
    pub fn reads_as(&self, other: &Self) -> bool {
        self.group == other.group
            && self.today == other.today
            && self.members == other.members
            && self.yard == other.yard
            && self.fed.reads_as(&other.fed)
    }

    /// The name of an animal; its id where it is not there.
    pub fn name(&self, id: &AnimalId) -> String {
        self.yard
            .iter()
            .find(|animal| animal.id == *id)
            .map_or_else(|| id.0.clone(), |animal| animal.name.clone())
    }
}

/// A group; `None` when it is not there.
pub fn herd(shelf: &Shelf, id: &GroupId, now: Instant, zone: &impl Zone) -> Option<Herd> {
    let group = shelf.group(id)?;
    let today = zone.to_local(now).date;
    let records: Vec<&Record> = shelf.records().collect();
    let members: Vec<Gathered> = group
        .on(today)
        .into_iter()
        .filter_map(|animal| gather(&records, animal, now, zone, &Wish::default()))
        .collect();
    Some(Herd {
        fed: fed(&group, &members),
        members: members.into_iter().map(|member| member.animal).collect(),
        yard: shelf.animals(),
        group,
        today,
    })
}

fn fed(group: &Group, members: &[Gathered]) -> Fed {
    // The member whose own ration cannot be made is named; the group's error alone would not say whose it is.
    for member in members {
        if let Err(error) = member.draft() {
            return Fed::NoDraft(error, Some(member.animal.id.clone()));
        }
    }
    match draft_group(group, members).map(judge_group) {
        Err(error) => Fed::NoDraft(error, None),
        Ok(GroupVerdict::Refused(refused)) => Fed::Refused(refused),
        Ok(GroupVerdict::Allowed(plan)) => {
            let draft = plan.planned().clone();
            let offered = offered(&draft);
            Fed::Together(Box::new(draft), offered)
        }
    }
}

/// What is weighed out of each hay for all of them.
fn offered(draft: &GroupDraft) -> Vec<Offered> {
    let mut offered: Vec<Offered> = Vec::new();
    for line in draft.members.iter().flat_map(|member| &member.alone.hays) {
        let soaked = line.fed == tussock_core::forage::Fed::Soaked;
        match offered
            .iter_mut()
            .find(|held| held.lot == line.name && held.soaked == soaked)
        {
            Some(held) => held.weigh_out = held.weigh_out + line.weigh_out,
            None => offered.push(Offered {
                lot: line.name.clone(),
                weigh_out: line.weigh_out,
                soaked,
            }),
        }
    }
    offered
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::acts::{Act, New};
    use crate::views::test_yard::written;
    use crate::words::{English, GroupWords};
    use tussock_core::animal::{Kind, VetFlag, YardId};
    use tussock_core::log::bodies::{AnimalV1, VisitsV1};
    use tussock_core::log::{Body, Case, Known, Subject};
    use tussock_core::sources::RecordId;

    fn yard() -> (Shelf, Case) {
        let case = Case::read(include_str!(
            "../../../../core/examples/cases/two-cobs-and-a-shetland.json"
        ))
        .unwrap();
        let mut shelf = Shelf::default();
        for record in case.log.current() {
            shelf.put(record.clone());
        }
        // The visits of a case stand beside its records.
        let visits = Act::Add(New {
            id: RecordId("visits".into()),
            subject: Subject::yard(&YardId("hill".into())),
            at: None,
            known: Known::Seen,
            body: Body::Visits(VisitsV1 {
                times: case.visits.clone(),
                from: None,
            }),
        });
        (written(&shelf, &visits, case.now), case)
    }

    fn top_field(shelf: &Shelf, case: &Case) -> Herd {
        herd(shelf, &GroupId("top-field".into()), case.now, &case.zone).unwrap()
    }

    #[test]
    fn a_minute_later_the_group_reads_the_same_and_a_day_later_it_does_not() {
        let (shelf, case) = yard();
        let at = |ms: i64| {
            let now = Instant::from_ms(case.now.to_ms() + ms);
            herd(&shelf, &GroupId("top-field".into()), now, &case.zone).unwrap()
        };
        let herd = at(0);
        assert!(herd != at(60_000) && herd.reads_as(&at(60_000)));
        assert!(!herd.reads_as(&at(86_400_000)));
    }

    #[test]
    fn two_cobs_and_a_shetland_share_what_is_offered() {
        let (shelf, case) = yard();
        let herd = top_field(&shelf, &case);
        let Fed::Together(draft, offered) = &herd.fed else {
            panic!("fed together: {:?}", herd.fed)
        };
        assert_eq!(draft.places, herd.members.len() + 1);
        let each: AsFed = draft
            .members
            .iter()
            .flat_map(|member| &member.alone.hays)
            .map(|hay| hay.weigh_out)
            .sum();
        let all: AsFed = offered.iter().map(|offered| offered.weigh_out).sum();
        assert!((all.to_kg() - each.to_kg()).abs() < 1e-9);
        // All of it hangs, at a place more than there are animals, and alike to a step of the scale.
        let day = draft.day();
        assert_eq!(day.len(), case.visits.len());
        let hung: f64 = day
            .iter()
            .flat_map(|at| &at.nets)
            .map(|net| net.to_kg())
            .sum();
        assert!((hung - all.to_kg()).abs() < 0.11, "{hung} {all:?}");
        for at in day.iter().filter(|at| !at.nets.is_empty()) {
            assert_eq!(at.nets.len(), draft.places);
            let words = English::default().nets_apart(&at.nets);
            assert!(words.starts_with("4 nets apart, "), "{words}");
        }
        assert!(
            draft
                .members
                .iter()
                .any(|m| m.alone.animal.kind == Kind::Pony)
        );
    }

    #[test]
    fn a_member_that_got_at_grain_stops_the_ration_for_all() {
        let (shelf, case) = yard();
        let mut member = top_field(&shelf, &case).members.first().unwrap().clone();
        member
            .health
            .flags
            .push(VetFlag::GotAtGrain { at: case.now });
        let change = Act::Change {
            id: RecordId(member.id.0.clone()),
            body: Body::Animal(AnimalV1::of(&member).unwrap()),
            at: None,
        };
        let herd = top_field(&written(&shelf, &change, case.now), &case);
        assert!(matches!(&herd.fed, Fed::Refused(refused) if refused.len() == 1));
    }
}
