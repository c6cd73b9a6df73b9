//! The walk-round and the crest. All of the walk-round is one form.

#[cfg(test)]
mod tests;

use crate::acts::{Act, New};
use tussock_core::animal::{AnimalId, PersonId, YardId};
use tussock_core::assess::{AssessError, ConditionScale, ConditionScore, Crest, Finding, Site};
use tussock_core::log::bodies::{ConditionV1, CrestV1, PersonV1, Role};
use tussock_core::log::{Body, Known, LogError, Name, Subject};
use tussock_core::sources::RecordId;

/// The text of a site that was left out.
const SKIPPED: &str = "skip";
/// Half a step.
const HALF: f64 = 0.5;

/// The field of the scale that was chosen; empty for the one that is usual for this animal.
pub const SCALE: &str = "scale";
/// The field of who scores: the id of a person, [`NEW`], or empty for who said something here last.
pub const WHO: &str = "who";
/// The field of the initials of a person who is new here.
pub const INITIALS: &str = "initials";
/// The field of what that person is here.
pub const ROLE: &str = "role";

/// The text of a person who is new here.
pub const NEW: &str = "new";
/// The text of somebody who does not say who it is.
pub const NOT_SAID: &str = "not-said";

/// The scales, in the order in which they are offered.
pub const SCALES: [ConditionScale; 2] = [ConditionScale::NineStep, ConditionScale::FiveStep];

/// What a scorer may be here, in the order in which it is asked.
pub const ROLES: [Role; 5] = [
    Role::Keeper,
    Role::Helper,
    Role::Consultant,
    Role::Vet,
    Role::Farrier,
];

/// The text of a scale.
pub const fn text_of_scale(scale: ConditionScale) -> &'static str {
    match scale {
        ConditionScale::NineStep => "nine",
        ConditionScale::FiveStep => "five",
    }
}

/// The scale that a text names.
pub fn scale_of(text: &str) -> Option<ConditionScale> {
    SCALES
        .into_iter()
        .find(|scale| text_of_scale(*scale) == text)
}

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

/// The field of a site. A site of both scales has one for each: a 3 on one is no 3 on the other.
pub const fn field(scale: ConditionScale, site: Site) -> &'static str {
    match (scale, site) {
        (ConditionScale::NineStep, Site::Neck) => "neck",
        (ConditionScale::FiveStep, Site::Neck) => "neck-of-five",
        (_, Site::Withers) => "withers",
        (_, Site::BehindShoulder) => "shoulder",
        (_, Site::Ribs) => "ribs",
        (_, Site::Loin) => "loin",
        (_, Site::TailHead) => "tail",
        (_, Site::BackAndRibs) => "back",
        (_, Site::Pelvis) => "pelvis",
    }
}

/// What a site's text holds; `None` while nobody chose.
pub fn mark(scale: ConditionScale, text: &str) -> Option<Mark> {
    if text == SKIPPED {
        return Some(Mark::Skipped);
    }
    let score = text.parse::<f64>().ok()?;
    scale
        .bounds()
        .check(score)
        .is_ok()
        .then_some(Mark::Score(score))
}

/// The whole steps of a scale, which are the keys of its pad.
pub fn steps(scale: ConditionScale) -> impl Iterator<Item = u8> + Clone {
    let bounds = scale.bounds();
    (0..=u8::MAX)
        .skip_while(move |step| f64::from(*step) < bounds.min)
        .take_while(move |step| f64::from(*step) <= bounds.max)
}

/// A site's text after a key. Half steps go from what is chosen and stay on the scale.
pub fn touched(scale: ConditionScale, text: &str, touch: Touch) -> String {
    let by = |half: f64| match mark(scale, text) {
        Some(Mark::Score(score)) if scale.bounds().check(score + half).is_ok() => {
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

/// The sites that were scored, in walking order; `text` gives the text of a field.
pub fn scored(scale: ConditionScale, text: impl Fn(&str) -> String) -> Vec<(Site, f64)> {
    scale
        .sites()
        .iter()
        .filter_map(|site| match mark(scale, &text(field(scale, *site))) {
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

/// Who scores.
#[derive(Clone, Debug, PartialEq, Default)]
pub enum Scorer {
    /// Nobody said who.
    #[default]
    NotSaid,
    /// Somebody who is written down.
    Known(PersonId),
    /// Somebody new, who is written down with the score.
    New {
        /// The initials.
        initials: String,
        /// What the person is here.
        role: Role,
    },
}

/// What is missing of a scorer who is new here.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WhoWrong {
    /// The initials.
    Initials,
    /// What the person is.
    Role,
}

/// Who scores as far as it is said; `last` is who said something on this device last.
///
/// # Errors
/// A new person without initials or role.
pub fn scorer(
    text: impl Fn(&str) -> String,
    last: Option<&PersonId>,
) -> Result<Scorer, Vec<WhoWrong>> {
    match text(WHO).as_str() {
        "" => Ok(last.map_or(Scorer::NotSaid, |who| Scorer::Known(who.clone()))),
        NOT_SAID => Ok(Scorer::NotSaid),
        NEW => {
            let initials = text(INITIALS).trim().to_owned();
            let role = role_of(&text(ROLE));
            match (initials.is_empty(), role) {
                (false, Some(role)) => Ok(Scorer::New { initials, role }),
                (none, role) => Err([
                    none.then_some(WhoWrong::Initials),
                    role.is_none().then_some(WhoWrong::Role),
                ]
                .into_iter()
                .flatten()
                .collect()),
            }
        }
        id => Ok(Scorer::Known(PersonId(id.to_owned()))),
    }
}

/// Whose score it will be, as far as it is said: somebody new is nobody who is written down yet.
pub fn by(text: impl Fn(&str) -> String, last: Option<&PersonId>) -> Option<PersonId> {
    match scorer(text, last) {
        Ok(Scorer::NotSaid) => None,
        Ok(Scorer::Known(person)) => Some(person),
        Ok(Scorer::New { .. }) | Err(_) => Some(PersonId(NEW.to_owned())),
    }
}

/// The text of what a person is.
pub const fn text_of_role(role: Role) -> &'static str {
    match role {
        Role::Keeper => "keeper",
        Role::Helper => "helper",
        Role::Consultant => "consultant",
        Role::Vet => "vet",
        Role::Farrier => "farrier",
    }
}

/// What a person is, by its text.
pub fn role_of(text: &str) -> Option<Role> {
    ROLES.into_iter().find(|role| text_of_role(*role) == text)
}

/// The score of the sites, with what is worth saying beside it.
///
/// # Errors
/// Those of [`ConditionScore::by_sites`]: fewer than four of the six sites, or no pelvis.
pub fn score(
    scale: ConditionScale,
    scored: &[(Site, f64)],
) -> Result<(ConditionScore, Vec<Finding>), AssessError> {
    ConditionScore::by_sites(scale, scored)
}

/// The act that writes the walk-round, and the person who scored where that one is new here; `record` is the id of the
/// score, and names the person too.
///
/// # Errors
/// Those of [`score`], and initials that cannot be stored.
pub fn act(
    animal: &AnimalId,
    scale: ConditionScale,
    scored: &[(Site, f64)],
    by: &Scorer,
    yard: &YardId,
    record: &str,
) -> Result<Act, Wrong> {
    let (score, _) = score(scale, scored).map_err(Wrong::Assess)?;
    let body = ConditionV1::of(&score).map_err(Wrong::Log)?;
    let add = add(animal, Body::Condition(body), record);
    Ok(match by {
        Scorer::NotSaid => add,
        Scorer::Known(person) => Act::By(person.clone(), Box::new(add)),
        Scorer::New { initials, role } => {
            let name = Name::new(initials).map_err(Wrong::Log)?;
            let id = format!("{record}-by");
            let person = Act::Add(New {
                id: RecordId(id.clone()),
                subject: Subject::yard(yard),
                at: None,
                known: Known::Seen,
                body: Body::Person(PersonV1 {
                    initials: Some(name.clone()),
                    name,
                    role: *role,
                    telephone: None,
                }),
            });
            Act::By(PersonId(id), Box::new(Act::All(vec![person, add])))
        }
    })
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
