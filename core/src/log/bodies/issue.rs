//! From an allowed plan to the plan that is issued.

use super::base::{BodyGrams, BodyHundredths, Count, FeedGrams, from_measure};
use super::plan::{AmountV1, GapMinutes, InputV1, NetShareV1, PlanV1, SugarSaid};
use super::soak_step::{RecipeV1, SoakMinutes};
use crate::animal::{LotId, PersonId};
use crate::day::published::SCALE_STEP;
use crate::day::{GapVerdict, Hanging};
use crate::forage::Fed;
use crate::limits::Review;
use crate::log::error::{Allowed, Form, LogError, Path};
use crate::log::stamp::Stamp;
use crate::log::stored::Name;
use crate::plan::{BucketLine, Draft, HayLine, lowest_allowed};
use crate::round::published::VET_REVIEW;
use crate::safety::Plan;
use crate::soak::Recipe;
use crate::sources::RecordId;
use crate::units::published::MINUTES_PER_HOUR;
use crate::units::{AsFed, DryMatter, LocalDate};
use chrono::Days;

impl PlanV1 {
    /// The twin of an allowed plan, as it is issued: from its day on, with the records it was made from in the versions
    /// they had.
    ///
    /// The nets of a visit are whole steps of the scale that add up to what the plan hangs at it, shared over the lots so
    /// that the day comes as near to each lot's part as steps allow. An amount of forage is the sum of its nets. The
    /// review is so many days away as the phase says; where it waits for the vet or for the animal's return, 14 days.
    ///
    /// # Errors
    /// An amount, a weight or a level beyond what is stored.
    pub fn of(
        plan: &Plan,
        inputs: &[(RecordId, Stamp)],
        decided_by: Option<PersonId>,
    ) -> Result<Self, LogError> {
        let draft = plan.planned();
        let hays: Vec<Pile<'_>> = draft.hays.iter().map(Pile::of).collect();
        let nets = nets(&hays, &draft.layout.hangings, |hay| vec![hay])?;
        let mut amounts = Vec::new();
        for hay in &hays {
            amounts.push(forage(hay, &nets)?);
        }
        for line in &draft.buckets {
            amounts.push(bucket(line)?);
        }
        // Over the line a wait is accepted by a person, once, and not by using the plan.
        let by_use = draft.layout.verdict != GapVerdict::OverTheLine;
        Ok(Self {
            rules: Name::new(&draft.rules.to_string())?,
            from: draft.day,
            review: review(draft)?,
            decided_by,
            inputs: made_from(inputs),
            weight_g: Some(BodyGrams::of(draft.allowance.weight.likely)?),
            // What was allowed, not what the steps of the scale made of it: the next plan goes on from here.
            level: BodyHundredths::of(draft.allowance.level)?,
            lowest: BodyHundredths::of(lowest_allowed(draft))?,
            amounts,
            visits: draft
                .layout
                .hangings
                .iter()
                .map(|hanging| hanging.visit)
                .collect(),
            nets,
            soaking: draft
                .soaking
                .map(|soaking| recipe(soaking.recipe))
                .transpose()?,
            look_over_days: Count::new(draft.watch.look_over_days)?,
            work_a_week: sessions_a_week(draft)?,
            gap_accepted_min: by_use
                .then(|| GapMinutes::of(draft.layout.longest_h))
                .transpose()?,
            job: None,
        })
    }
}

impl PlanV1 {
    /// The plan with a wait of so many hours accepted. Nothing else of an issued plan ever changes.
    ///
    /// # Errors
    /// More than a day.
    pub fn accepting(&self, hours: f64) -> Result<Self, LogError> {
        Ok(Self {
            gap_accepted_min: Some(GapMinutes::of(hours)?),
            ..self.clone()
        })
    }

    /// The plan with what was accepted of the plan before it: a person accepts a wait once, and a later plan with no
    /// longer one does not ask again. `hours` is its own longest wait.
    #[must_use]
    pub fn accepted_as(self, before: &Self, hours: f64) -> Self {
        let covers =
            |accepted: &GapMinutes| hours * MINUTES_PER_HOUR as f64 <= accepted.get() as f64;
        let kept = before.gap_accepted_min.filter(covers);
        Self {
            gap_accepted_min: self.gap_accepted_min.or(kept),
            ..self
        }
    }
}

impl GapMinutes {
    /// From hours. A gap is not accepted shorter than it is.
    ///
    /// # Errors
    /// More than a day.
    pub fn of(hours: f64) -> Result<Self, LogError> {
        let minutes = hours * MINUTES_PER_HOUR as f64;
        from_measure(minutes.ceil(), Self::RANGE, Self::new)
    }
}

fn made_from(inputs: &[(RecordId, Stamp)]) -> Vec<InputV1> {
    inputs
        .iter()
        .map(|(record, stamp)| InputV1 {
            record: record.clone(),
            stamp: *stamp,
        })
        .collect()
}

fn review(draft: &Draft) -> Result<LocalDate, LogError> {
    let days = match draft.watch.review {
        Review::EveryDays(days) => days,
        Review::AtVetsWord | Review::OnReturn => *VET_REVIEW,
    };
    let days = u64::try_from(days).unwrap_or_default();
    draft.day.checked_add_days(Days::new(days)).ok_or_else(|| {
        let path = Path::Root;
        path.key("review")
            .refuse(&draft.day.to_string(), Allowed::Form(Form::Date))
    })
}

fn sessions_a_week(draft: &Draft) -> Result<Option<Count>, LogError> {
    let sessions = draft.work.a_week();
    sessions
        .map(|sessions| Count::new(i64::from(sessions)))
        .transpose()
}

fn recipe(recipe: Recipe) -> Result<RecipeV1, LogError> {
    Ok(RecipeV1 {
        water: recipe.water(),
        minutes: SoakMinutes::new(recipe.soak().to_minutes())?,
    })
}

/// A hay of the day.
struct Pile<'a> {
    lot: &'a LotId,
    soaked: bool,
    eaten: DryMatter,
    weigh_out: AsFed,
    sugar: Option<SugarSaid>,
}

impl<'a> Pile<'a> {
    fn of(hay: &'a HayLine) -> Self {
        Self {
            lot: &hay.lot,
            soaked: hay.fed == Fed::Soaked,
            eaten: hay.eaten,
            weigh_out: hay.weigh_out,
            sugar: hay.as_fed.as_ref().map(|judged| judged.verdict.into()),
        }
    }
}

/// The nets of the day, lot by lot at every visit; `apart` shares what hangs of a lot over nets.
fn nets(
    hays: &[Pile<'_>],
    hangings: &[Hanging],
    apart: impl Fn(AsFed) -> Vec<AsFed>,
) -> Result<Vec<NetShareV1>, LogError> {
    let step = AsFed::kg(*SCALE_STEP);
    let out: f64 = hays.iter().map(|hay| hay.weigh_out.to_kg()).sum();
    let parts: Vec<f64> = hays.iter().map(|hay| hay.weigh_out.to_kg() / out).collect();
    // How far each lot is behind its part of what hangs already, in steps.
    let mut behind = vec![0.0; parts.len()];
    let mut nets = Vec::new();
    for hanging in hangings {
        let count = (hanging.as_fed / step).round();
        for (behind, part) in behind.iter_mut().zip(&parts) {
            *behind += part * count;
        }
        let mut given = vec![0.0; parts.len()];
        let mut left = count;
        while left >= 1.0 {
            let Some(index) = most(&behind) else { break };
            if let (Some(behind), Some(given)) = (behind.get_mut(index), given.get_mut(index)) {
                *behind -= 1.0;
                *given += 1.0;
            }
            left -= 1.0;
        }
        for (hay, steps) in hays.iter().zip(given) {
            if steps <= 0.0 {
                continue;
            }
            for net in apart(step * steps) {
                nets.push(NetShareV1 {
                    visit: hanging.visit,
                    lot: hay.lot.clone(),
                    as_fed_g: FeedGrams::of(net)?,
                    soaked: hay.soaked,
                    net: None,
                });
            }
        }
    }
    Ok(nets)
}

/// The place of the largest; the first of equals.
fn most(values: &[f64]) -> Option<usize> {
    values
        .iter()
        .enumerate()
        .reduce(|best, next| if best.1 < next.1 { next } else { best })
        .map(|(index, _)| index)
}

/// A lot's amount: the sum of its nets, and what of it is eaten.
fn forage(hay: &Pile<'_>, nets: &[NetShareV1]) -> Result<AmountV1, LogError> {
    let of_lot = |lot: &LotId| {
        nets.iter()
            .filter(|net| net.lot == *lot)
            .map(|net| net.as_fed_g.as_fed())
            .sum::<AsFed>()
    };
    let as_fed = of_lot(hay.lot);
    let eaten = if AsFed::ZERO < hay.weigh_out {
        hay.eaten * (as_fed / hay.weigh_out)
    } else {
        hay.eaten
    };
    Ok(AmountV1 {
        lot: Some(hay.lot.clone()),
        food: None,
        dry_matter_g: FeedGrams::of_dry(eaten)?,
        as_fed_g: FeedGrams::of(as_fed)?,
        soaked: hay.soaked,
        feeds: None,
        sugar: hay.sugar,
    })
}

/// A bought feed.
fn bucket(line: &BucketLine) -> Result<AmountV1, LogError> {
    Ok(AmountV1 {
        lot: None,
        food: line.food.clone(),
        dry_matter_g: FeedGrams::of_dry(line.dry)?,
        as_fed_g: FeedGrams::of(line.dose.a_day)?,
        soaked: false,
        feeds: line
            .dose
            .feeds
            .map(|feeds| Count::new(i64::from(feeds)))
            .transpose()?,
        sugar: None,
    })
}

mod group;
#[cfg(test)]
mod tests;
