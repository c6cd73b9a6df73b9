//! The look-over: a line a sign, nothing preset, and what changes the animal's health beside it.

mod health;
#[cfg(test)]
mod tests;

pub use health::{
    AGAIN, DULL, EATING, Flag, HANDFUL, HANDFULS, LAST_EATING, LAST_EATING_FROM, SeenEating,
    handful_of, health,
};

use super::not_eating::{field as field_of, reading};
use crate::acts::{Act, New};
use crate::views::beside::{Stop, stop_by};
use crate::words::Sign;
use tussock_core::animal::{Animal, Answer, Health, Seen};
use tussock_core::log::bodies::{AnimalV2, LookOverV1, VitalsV1};
use tussock_core::log::{Body, Known, Subject};
use tussock_core::plan::{AtRest, Signs, Taken};
use tussock_core::safety::{Caution, Vital, VitalStanding, of_health, unusual};
use tussock_core::sources::RecordId;
use tussock_core::units::parse::ParseError;
use tussock_core::units::{Instant, LocalDate};

/// The text of an answer.
const YES: &str = "yes";
/// The text of an answer.
const NO: &str = "no";
/// The text of a line that was not looked at, said so.
const NOT_LOOKED: &str = "not";

/// The field of a sign.
pub const fn field(sign: Sign) -> &'static str {
    match sign {
        Sign::Gait => "gait",
        Sign::Stance => "stance",
        Sign::Turning => "turning",
        Sign::ShiftingWeight => "shifting",
        Sign::StrongPulse => "strong_pulse",
        Sign::FootPain => "pain",
        Sign::WarmHoof => "warm",
        Sign::LyingMore => "lying",
    }
}

/// The text of an answer; not looked at is an answer too.
pub const fn text_of(answer: Answer) -> &'static str {
    match answer {
        Answer::Yes => YES,
        Answer::No => NO,
        Answer::NotKnown => NOT_LOOKED,
    }
}

/// The answer a text holds; `None` while the line was left alone.
pub fn answer_of(text: &str) -> Option<Answer> {
    match text {
        YES => Some(Answer::Yes),
        NO => Some(Answer::No),
        NOT_LOOKED => Some(Answer::NotKnown),
        _ => None,
    }
}

/// The signs as answered: a line left alone was not looked at.
pub fn signs(text: impl Fn(&str) -> String) -> Signs {
    let mut signs = Signs::default();
    for sign in Sign::ALL {
        let answer = answer_of(&text(field(*sign))).unwrap_or_default();
        sign.answer(&mut signs, answer);
    }
    signs
}

/// The signs when somebody looked at all of it and all was as usual.
pub fn all_normal() -> Signs {
    let mut signs = Signs::default();
    for sign in Sign::ALL {
        sign.answer(&mut signs, Answer::No);
    }
    signs
}

/// The signs as a body.
pub const fn body(signs: &Signs) -> LookOverV1 {
    LookOverV1 {
        gait: signs.gait,
        stance: signs.stance,
        turning: signs.turning,
        shifting_weight: signs.shifting_weight,
        strong_pulse: signs.strong_pulse,
        foot_pain: signs.foot_pain,
        warm_hoof: signs.warm_hoof,
        lying_more: signs.lying_more,
        note: None,
        job: None,
    }
}

/// A reading that cannot be.
pub type WrongReading = (Vital, ParseError);

/// The readings as typed; `None` where nothing is typed.
///
/// # Errors
/// Each reading that is no number, or outside what is believed.
pub fn readings(text: impl Fn(&str) -> String) -> Result<Option<VitalsV1>, Vec<WrongReading>> {
    let mut body = VitalsV1::NONE;
    let mut wrong = Vec::new();
    for vital in Vital::ALL {
        match reading(vital, &text(field_of(vital))) {
            Ok(None) => {}
            // What is believed of a reading can be stored.
            Ok(Some(value)) => body = body.clone().with(vital, value).unwrap_or(body),
            Err(error) => wrong.push((vital, error)),
        }
    }
    if wrong.is_empty() {
        Ok((body != VitalsV1::NONE).then_some(body))
    } else {
        Err(wrong)
    }
}

/// What was measured, as far as it can be read, as taken now.
pub fn at_rest(text: impl Fn(&str) -> String, day: LocalDate, now: Instant) -> AtRest {
    let seen = Seen { day, at: Some(now) };
    Vital::ALL
        .into_iter()
        .filter_map(|vital| Some((vital, reading(vital, &text(field_of(vital))).ok()??)))
        .fold(AtRest::default(), |at_rest, (vital, reading)| {
            vital.with(at_rest, Taken { reading, seen })
        })
}

/// What is seen of an animal so far.
#[derive(Clone, Copy, Debug)]
pub struct SeenNow<'a> {
    /// Its health as said.
    pub health: &'a Health,
    /// The signs.
    pub signs: &'a Signs,
    /// What was measured.
    pub at_rest: &'a AtRest,
    /// The local day.
    pub day: LocalDate,
    /// Now.
    pub now: Instant,
}

impl SeenNow<'_> {
    fn animal(&self, animal: &Animal) -> Animal {
        Animal {
            health: self.health.clone(),
            ..animal.clone()
        }
    }

    /// What stops the animal by it. A vet's word does not count here: it was given before this was seen.
    pub fn stop(&self, animal: &Animal) -> Option<Stop> {
        let seen = self.animal(animal);
        let stop = stop_by(&seen, *self.signs, *self.at_rest, self.day, self.now);
        // What was known before this look-over is no news of it, unless a sign, a reading or a change speaks now.
        let rings = unusual(&seen, self.at_rest, self.day)
            .iter()
            .any(|(_, _, stands)| *stands == VitalStanding::Ring);
        let news = self.signs.for_the_vet()
            || self.signs.look_again()
            || rings
            || *self.health != animal.health;
        stop.filter(|_| news)
    }

    /// What must be known beside it (practice rule 19).
    pub fn cautions(&self, animal: &Animal) -> Vec<Caution> {
        of_health(&self.animal(animal), self.at_rest, self.day)
    }
}

/// The act that writes the look-over, what was measured beside it, and the health where it changed.
pub fn act(
    animal: &Animal,
    held: &AnimalV2,
    signs: &Signs,
    health: Health,
    measured: Option<VitalsV1>,
    record: &str,
) -> Act {
    let mut acts = vec![Act::Add(New {
        id: RecordId(record.to_owned()),
        subject: Subject::animal(&animal.id),
        at: None,
        known: Known::Seen,
        body: Body::LookOver(body(signs)),
    })];
    acts.extend(measured.map(|measured| {
        Act::Add(New {
            id: RecordId(format!("{record}-rest")),
            subject: Subject::animal(&animal.id),
            at: None,
            known: Known::Seen,
            body: Body::Vitals(measured),
        })
    }));
    if health != held.health {
        let mut body = held.clone();
        body.health = health;
        acts.push(Act::Change {
            id: RecordId(animal.id.0.clone()),
            body: Body::Animal(body),
            at: None,
        });
    }
    Act::All(acts)
}
