//! From an allowed plan of a group to the plans that are issued: the group's, which is its hay, and a part of it for each
//! member, which is what that gets beside the hay.

use super::{GapMinutes, Pile, bucket, forage, made_from, nets, recipe, review, sessions_a_week};
use crate::animal::PersonId;
use crate::day::{GapVerdict, in_nets};
use crate::log::bodies::base::{BodyGrams, BodyHundredths, Count};
use crate::log::bodies::plan::PlanV1;
use crate::log::error::LogError;
use crate::log::stamp::Stamp;
use crate::log::stored::Name;
use crate::plan::{Draft, GroupHay, MemberShare, lowest_allowed};
use crate::safety::GroupPlan;
use crate::sources::RecordId;
use crate::units::{LocalDate, LocalTime, PartOfBody};

impl<'a> Pile<'a> {
    /// Its sugar is judged as for the most at-risk member, by whose line all have their hay.
    fn of_all(hay: &'a GroupHay, strictest: Option<&Draft>) -> Self {
        let line = strictest.and_then(|member| member.hays.iter().find(|line| line.lot == hay.lot));
        Self {
            lot: &hay.lot,
            soaked: hay.soaked,
            eaten: hay.eaten,
            weigh_out: hay.weigh_out,
            sugar: line
                .and_then(|line| line.as_fed.as_ref())
                .map(|judged| judged.verdict.into()),
        }
    }
}

impl PlanV1 {
    /// The twin of a group's allowed plan: the hay for all, in as many nets at a visit as there are feeding places. `None`
    /// for a group that has no member.
    ///
    /// What each member gets in its own bucket and what work it does stands in its part, [`PlanV1::part_of`]. The review is that of the member
    /// whose comes first; so are the days between look-overs. A wait over the line is accepted by a person, once.
    ///
    /// # Errors
    /// An amount, a weight or a level beyond what is stored.
    pub fn of_group(
        plan: &GroupPlan,
        inputs: &[(RecordId, Stamp)],
        decided_by: Option<PersonId>,
    ) -> Result<Option<Self>, LogError> {
        let draft = plan.planned();
        let Some(first) = draft.members.first().map(|member| &member.alone) else {
            return Ok(None);
        };
        let strictest = draft
            .members
            .iter()
            .map(|member| &member.alone)
            .find(|member| member.animal.id == draft.strictest);
        let hays: Vec<Pile<'_>> = draft
            .hays
            .iter()
            .map(|hay| Pile::of_all(hay, strictest))
            .collect();
        let nets = nets(&hays, &draft.layout.hangings, |hay| {
            in_nets(hay, None, draft.places)
        })?;
        let mut amounts = Vec::new();
        for hay in &hays {
            amounts.push(forage(hay, &nets)?);
        }
        let alone = || draft.members.iter().map(|member| &member.alone);
        let highest = |a: PartOfBody, b: PartOfBody| if a < b { b } else { a };
        let lowest = alone().map(lowest_allowed).reduce(highest);
        let by_use = draft.layout.verdict != GapVerdict::OverTheLine;
        Ok(Some(Self {
            rules: Name::new(&first.rules.to_string())?,
            from: first.day,
            review: first_review(plan)?.unwrap_or(first.day),
            decided_by,
            inputs: made_from(inputs),
            weight_g: Some(BodyGrams::of(draft.weight())?),
            level: BodyHundredths::of(draft.level())?,
            lowest: BodyHundredths::of(lowest.unwrap_or(first.allowance.floor))?,
            amounts,
            visits: visits(plan),
            nets,
            soaking: draft
                .soaking
                .map(|soaking| recipe(soaking.recipe))
                .transpose()?,
            look_over_days: Count::new(
                alone()
                    .map(|member| member.watch.look_over_days)
                    .min()
                    .unwrap_or(first.watch.look_over_days),
            )?,
            work_a_week: None,
            gap_accepted_min: by_use
                .then(|| GapMinutes::of(draft.layout.longest_h))
                .transpose()?,
            job: None,
        }))
    }

    /// A member's part of its group's plan: its own bucket and no hay, the level that it likely gets of what is offered to
    /// all, and how often it is looked over. Its hay is the group's.
    ///
    /// # Errors
    /// An amount, a weight or a level beyond what is stored.
    pub fn part_of(
        plan: &GroupPlan,
        member: &MemberShare,
        inputs: &[(RecordId, Stamp)],
        decided_by: Option<PersonId>,
    ) -> Result<Self, LogError> {
        let draft: &Draft = &member.alone;
        let amounts = draft.buckets.iter().map(bucket).collect::<Result<_, _>>()?;
        Ok(Self {
            rules: Name::new(&draft.rules.to_string())?,
            from: draft.day,
            review: first_review(plan)?.unwrap_or(draft.day),
            decided_by,
            inputs: made_from(inputs),
            weight_g: Some(BodyGrams::of(draft.allowance.weight.likely)?),
            level: BodyHundredths::of(member.share.likely.part_of(draft.allowance.weight.likely))?,
            lowest: BodyHundredths::of(lowest_allowed(draft))?,
            amounts,
            visits: visits(plan),
            nets: Vec::new(),
            soaking: None,
            look_over_days: Count::new(draft.watch.look_over_days)?,
            work_a_week: sessions_a_week(draft)?,
            gap_accepted_min: None,
            job: None,
        })
    }

    /// Whether it is a member's part of its group's plan: it has no hay of its own.
    pub fn is_part(&self) -> bool {
        self.nets.is_empty() && self.amounts.iter().all(|amount| amount.lot.is_none())
    }
}

fn visits(plan: &GroupPlan) -> Vec<LocalTime> {
    let hangings = plan.planned().layout.hangings.iter();
    hangings.map(|hanging| hanging.visit).collect()
}

/// The day of the review that comes first among the members. Where one waits for the vet or for an animal's return, so
/// many days as a plan of its own.
fn first_review(plan: &GroupPlan) -> Result<Option<LocalDate>, LogError> {
    let mut first = None;
    for member in plan.members() {
        let day = review(member.planned())?;
        first = Some(first.map_or(day, |first: LocalDate| first.min(day)));
    }
    Ok(first)
}
