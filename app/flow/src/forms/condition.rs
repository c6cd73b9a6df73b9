//! The walk-round and the crest. All of the walk-round is one form.

use crate::acts::{Act, New};
use tussock_core::animal::AnimalId;
use tussock_core::assess::{AssessError, ConditionScale, ConditionScore, Crest, Finding, Site};
use tussock_core::log::bodies::{ConditionV1, CrestV1};
use tussock_core::log::{Body, Known, LogError, Subject};
use tussock_core::sources::RecordId;

/// The text of a site that was left out.
const SKIPPED: &str = "skip";
/// Half a step.
const HALF: f64 = 0.5;

/// The scale of the walk-round.
pub const SCALE: ConditionScale = ConditionScale::NineStep;

/// A key of the pad.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Touch {
    /// A whole step.
    Step(u8),
    /// Half a step less.
    HalfLess,
    /// Half a step more.
    HalfMore,
    /// Leaves the site out.
    Skip,
}

/// What a site holds.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Mark {
    /// A score.
    Score(f64),
    /// It was left out on purpose.
    Skipped,
}

/// The field of a site.
pub const fn field(site: Site) -> &'static str {
    match site {
        Site::Neck => "neck",
        Site::Withers => "withers",
        Site::BehindShoulder => "shoulder",
        Site::Ribs => "ribs",
        Site::Loin => "loin",
        Site::TailHead => "tail",
        Site::BackAndRibs => "back",
        Site::Pelvis => "pelvis",
    }
}

/// What a site's text holds; `None` while nobody chose.
pub fn mark(text: &str) -> Option<Mark> {
    if text == SKIPPED {
        return Some(Mark::Skipped);
    }
    let score = text.parse::<f64>().ok()?;
    SCALE
        .bounds()
        .check(score)
        .is_ok()
        .then_some(Mark::Score(score))
}

/// A site's text after a key. Half steps go from what is chosen and stay on the scale.
pub fn touched(text: &str, touch: Touch) -> String {
    let by = |half: f64| match mark(text) {
        Some(Mark::Score(score)) if SCALE.bounds().check(score + half).is_ok() => {
            (score + half).to_string()
        }
        _ => text.to_owned(),
    };
    match touch {
        Touch::Step(step) => step.to_string(),
        Touch::HalfLess => by(-HALF),
        Touch::HalfMore => by(HALF),
        Touch::Skip => SKIPPED.to_owned(),
    }
}

/// The sites that were scored, in walking order; `text` gives a site's text.
pub fn scored(text: impl Fn(Site) -> String) -> Vec<(Site, f64)> {
    SCALE
        .sites()
        .iter()
        .filter_map(|site| match mark(&text(*site)) {
            Some(Mark::Score(score)) => Some((*site, score)),
            Some(Mark::Skipped) | None => None,
        })
        .collect()
}

/// Why a score is not kept.
#[derive(Clone, Debug, PartialEq)]
pub enum Wrong {
    /// Too few sites, or a score off its scale.
    Assess(AssessError),
    /// It cannot be stored.
    Log(LogError),
}

/// The score of the sites, with what is worth saying beside it.
///
/// # Errors
/// Those of [`ConditionScore::by_sites`]: fewer than four sites.
pub fn score(scored: &[(Site, f64)]) -> Result<(ConditionScore, Vec<Finding>), AssessError> {
    ConditionScore::by_sites(SCALE, scored)
}

/// The act that writes the walk-round.
///
/// # Errors
/// Fewer than four sites.
pub fn act(animal: &AnimalId, scored: &[(Site, f64)], record: &str) -> Result<Act, Wrong> {
    let (score, _) = score(scored).map_err(Wrong::Assess)?;
    let body = ConditionV1::of(&score).map_err(Wrong::Log)?;
    Ok(add(animal, Body::Condition(body), record))
}

/// The crest that a text names, 0 to 5.
pub fn crest(text: &str) -> Option<Crest> {
    Crest::new(text.parse().ok()?).ok()
}

/// The act that writes a crest.
pub fn crest_act(animal: &AnimalId, crest: Crest, record: &str) -> Act {
    add(animal, Body::Crest(CrestV1::of(crest)), record)
}

fn add(animal: &AnimalId, body: Body, record: &str) -> Act {
    Act::Add(New {
        id: RecordId(record.to_owned()),
        subject: Subject::animal(animal),
        at: None,
        known: Known::Seen,
        body,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn half_keys_go_from_what_is_chosen_and_stay_on_the_scale() {
        assert_eq!(touched("", Touch::HalfMore), "");
        assert_eq!(touched("skip", Touch::HalfMore), "skip");
        assert_eq!(touched("6", Touch::HalfMore), "6.5");
        assert_eq!(touched("6.5", Touch::HalfLess), "6");
        assert_eq!(touched("9", Touch::HalfMore), "9");
        assert_eq!(touched("1", Touch::HalfLess), "1");
        assert_eq!(touched("6.5", Touch::Step(3)), "3");
        assert_eq!(touched("6.5", Touch::Skip), "skip");
    }

    #[test]
    fn three_sites_are_too_few_and_four_are_kept() {
        let id = AnimalId("moss".into());
        let walk = |count: usize| {
            scored(move |site| {
                let place = SCALE.sites().iter().position(|s| *s == site).unwrap();
                if place < count { "6.5" } else { SKIPPED }.to_owned()
            })
        };
        assert_eq!(
            act(&id, &walk(3), "r"),
            Err(Wrong::Assess(AssessError::TooFewSites {
                scored: 3,
                needed: 4
            }))
        );
        let Ok(Act::Add(New {
            body: Body::Condition(body),
            ..
        })) = act(&id, &walk(4), "r")
        else {
            panic!("adds a condition")
        };
        assert!(body.condition().is_ok());
    }

    #[test]
    fn a_crest_is_a_whole_score_of_its_scale() {
        assert_eq!(crest("3").map(Crest::score), Some(3));
        assert_eq!(crest("6"), None);
        assert_eq!(crest("2.5"), None);
        assert_eq!(crest(""), None);
    }
}
