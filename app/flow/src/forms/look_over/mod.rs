//! The look-over: a line a sign, nothing preset, and what changes the animal's health beside it.

mod health;
#[cfg(test)]
mod tests;

pub use health::{
    AGAIN, DULL, EATING, Flag, HANDFUL, HANDFULS, LAST_EATING, LAST_EATING_FROM, SeenEating,
    handful_of, health,
};

use crate::acts::{Act, New};
use crate::views::beside::{Stop, stop_by};
use crate::words::Sign;
use tussock_core::animal::{Animal, Answer, Health};
use tussock_core::log::bodies::{AnimalV1, LookOverV1};
use tussock_core::log::{Body, Known, Subject};
use tussock_core::plan::Signs;
use tussock_core::sources::RecordId;
use tussock_core::units::Instant;

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
        Sign::StrongPulse => "pulse",
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

/// What stops the animal by what is said so far. A vet's word does not count here: it was given before this was seen.
pub fn stop(animal: &Animal, health: &Health, signs: &Signs, now: Instant) -> Option<Stop> {
    let seen = Animal {
        health: health.clone(),
        ..animal.clone()
    };
    let stop = stop_by(&seen, *signs, now);
    // What was known before this look-over is no news of it, unless a sign or a change speaks now.
    let news = signs.for_the_vet() || signs.look_again() || *health != animal.health;
    stop.filter(|_| news)
}

/// The act that writes the look-over, and the health where it changed.
pub fn act(animal: &Animal, held: &AnimalV1, signs: &Signs, health: Health, record: &str) -> Act {
    let mut acts = vec![Act::Add(New {
        id: RecordId(record.to_owned()),
        subject: Subject::animal(&animal.id),
        at: None,
        known: Known::Seen,
        body: Body::LookOver(body(signs)),
    })];
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
