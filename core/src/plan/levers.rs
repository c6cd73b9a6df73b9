//! What would change the plan most.

use super::draft::{BucketLine, Draft};
use super::input::PlanFor;
use crate::animal::RiskLevel;
use crate::assess::{WeightEstimate, WeightMethod};
use crate::forage::{SugarOrigin, TestOutlook, test_outlook};
use crate::limits::Ends;
use crate::units::DryMatter;

/// Something that would change the plan, with how much where that can be said.
#[derive(Clone, Debug, PartialEq)]
pub enum Lever {
    /// A test of the hay: what it would likely say.
    TestTheHay {
        /// The chance of each verdict.
        outlook: TestOutlook,
    },
    /// A scale weight: the hay a day at the ends of the weight as it is known.
    WeighOnAScale {
        /// Dry matter a day at the low, likely and high weight.
        dry_matter: Ends<DryMatter>,
    },
    /// A tape with the length.
    MeasureTheLength {
        /// Dry matter a day at the low, likely and high weight.
        dry_matter: Ends<DryMatter>,
    },
    /// A score site by site instead of one answer about the ribs.
    ScoreTheSites,
    /// A test for insulin dysregulation.
    TestInsulin,
    /// Another visit or a slower net: the gap it would leave, in hours.
    ShortenTheGap {
        /// The gap now.
        now_h: f64,
        /// The gap with the cheapest mend that helps most.
        then_h: f64,
    },
    /// The label of the balancer.
    TypeTheLabel,
    /// Timing one net.
    TimeANet,
}

/// What would change a plan most, first things first (ours): sugar before amounts for an animal that sugar endangers,
/// then the weight everything rests on, then the gap, then what refines the rest.
pub(super) fn levers(draft: &Draft, of: &PlanFor<'_>) -> Vec<Lever> {
    let mut found = Vec::new();
    if draft.risk.level.restricts_sugar() {
        found.extend(test_the_hay(draft));
    }
    let hay = |weight: &WeightEstimate| {
        Ends::new(weight.low, weight.value, weight.high).map(|body| draft.allowance.level.of(body))
    };
    match draft.weight.method {
        WeightMethod::Scale(_) => {}
        _ if of.tape.is_some_and(|tape| tape.length.is_none()) => {
            found.push(Lever::MeasureTheLength {
                dry_matter: hay(&draft.weight),
            });
        }
        _ => found.push(Lever::WeighOnAScale {
            dry_matter: hay(&draft.weight),
        }),
    }
    let best = draft
        .mends
        .iter()
        .map(|mend| mend.longest_h())
        .fold(f64::INFINITY, f64::min);
    if best < draft.layout.longest_h {
        found.push(Lever::ShortenTheGap {
            now_h: draft.layout.longest_h,
            then_h: best,
        });
    }
    if !of.condition.iter().any(|scored| scored.by_sites) {
        found.push(Lever::ScoreTheSites);
    }
    if matches!(draft.risk.level, RiskLevel::AtRisk | RiskLevel::NotKnown) {
        found.push(Lever::TestInsulin);
    }
    if draft.buckets.iter().any(BucketLine::wants_label) {
        found.push(Lever::TypeTheLabel);
    }
    if of.net.timed.is_none() && of.net.timed_soaked.is_none() {
        found.push(Lever::TimeANet);
    }
    if !draft.risk.level.restricts_sugar() {
        found.extend(test_the_hay(draft));
    }
    found
}

/// The outlook of a test of the largest forage that nobody tested.
fn test_the_hay(draft: &Draft) -> Option<Lever> {
    let largest = draft
        .hays
        .iter()
        .filter(|hay| {
            hay.as_it_comes
                .as_ref()
                .is_some_and(|judged| judged.origin == SugarOrigin::Class)
        })
        .max_by(|a, b| a.part.total_cmp(&b.part))?;
    let judged = largest.as_it_comes.as_ref()?;
    Some(Lever::TestTheHay {
        outlook: test_outlook(judged.belief?, judged.limit),
    })
}
