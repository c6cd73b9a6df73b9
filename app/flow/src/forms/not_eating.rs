//! An animal that will not eat: what was seen, what was measured, and the act that writes it.

use super::look_over::{DULL, HANDFUL, answer_of, handful_of};
use crate::acts::{Act, New};
use crate::views::not_eating::{NotEating, dial};
use tussock_core::animal::{Answer, Appetite, Handful};
use tussock_core::log::bodies::{AppetiteV1, PersonV1, Role};
use tussock_core::log::{Body, Known, LogError, Name, Subject};
use tussock_core::safety::{LastAte, Offered, Vital, WillNotEat, from_fahrenheit};
use tussock_core::sources::RecordId;
use tussock_core::units::parse::{ParseError, number};
use tussock_core::units::{Instant, Zone};

/// The field that says when it was last seen eating.
pub const LAST: &str = "last";
/// The field that holds the instant at which that was said.
pub const LAST_FROM: &str = "last_from";
/// The field of the vet's telephone number.
pub const TELEPHONE: &str = "telephone";

/// The text of when it was last seen eating.
pub const fn text_of_last(last: LastAte) -> &'static str {
    match last {
        LastAte::Now => "now",
        LastAte::Afternoon => "afternoon",
        LastAte::Morning => "morning",
        LastAte::Evening => "evening",
        LastAte::Longer => "longer",
        LastAte::NotKnown => "not_known",
    }
}

/// When it was last seen eating, by its text.
pub fn last_of(text: &str) -> Option<LastAte> {
    LastAte::ALL
        .into_iter()
        .find(|last| text_of_last(*last) == text)
}

/// The field of a reading.
pub const fn field(vital: Vital) -> &'static str {
    match vital {
        Vital::Temperature => "temperature",
        Vital::Pulse => "pulse",
        Vital::Breaths => "breaths",
    }
}

/// A reading as typed, a temperature also as `101.5 F`; `None` where nothing is typed.
///
/// # Errors
/// No number, or one outside what is believed.
pub fn reading(vital: Vital, text: &str) -> Result<Option<f64>, ParseError> {
    let typed = text.trim();
    if typed.is_empty() {
        return Ok(None);
    }
    let unit = |units: &[char]| {
        let bare = typed.strip_suffix(units)?;
        Some(bare.trim_end_matches('\u{b0}').trim_end())
    };
    let value = match vital {
        Vital::Temperature => match (unit(&['F', 'f']), unit(&['C', 'c'])) {
            (Some(bare), _) => from_fahrenheit(number(bare)?),
            (None, bare) => number(bare.unwrap_or(typed))?,
        },
        Vital::Pulse | Vital::Breaths => number(typed)?,
    };
    Ok(Some(vital.bounds().check(value)?))
}

/// What is said so far; what nobody touched stays as the animal carries it while it is off its feed. `text` gives the text
/// of a field.
pub fn offered(
    view: &NotEating,
    text: impl Fn(&str) -> String,
    now: Instant,
    zone: &impl Zone,
) -> Offered {
    let held = match view.animal.health.appetite {
        Appetite::Off {
            last_seen_eating,
            handful,
            dull,
        } => Offered {
            last_seen_eating,
            handful: Some(handful),
            dull,
        },
        Appetite::Eating | Appetite::NotKnown => Offered {
            last_seen_eating: None,
            handful: None,
            dull: Answer::NotKnown,
        },
    };
    let from = text(LAST_FROM).parse().map_or(now, Instant::from_ms);
    Offered {
        last_seen_eating: match last_of(&text(LAST)) {
            Some(last) => last.at(from, zone),
            None => held.last_seen_eating,
        },
        handful: handful_of(&text(HANDFUL)).or(held.handful),
        dull: answer_of(&text(DULL)).unwrap_or(held.dull),
    }
}

/// What is wrong.
#[derive(Clone, Debug, PartialEq)]
pub enum Wrong {
    /// A reading.
    Vital(Vital, ParseError),
    /// The number has too few digits.
    Telephone,
    /// Nobody said what it did with the handful.
    Handful,
    /// What cannot be stored.
    Log(LogError),
}

/// What was typed.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Typed {
    /// Temperature in degrees Celsius; may be empty.
    pub temperature: String,
    /// Pulse a minute; may be empty.
    pub pulse: String,
    /// Breaths a minute; may be empty.
    pub breaths: String,
    /// The vet's number; may be empty.
    pub telephone: String,
    /// What a vet whose name nobody knows is called.
    pub vet: String,
}

impl Typed {
    const fn of(&self, vital: Vital) -> &String {
        match vital {
            Vital::Temperature => &self.temperature,
            Vital::Pulse => &self.pulse,
            Vital::Breaths => &self.breaths,
        }
    }

    /// The act that writes it, or everything that is wrong. A number alone can be written down.
    ///
    /// # Errors
    /// A reading or number that cannot be; nothing said of the handful.
    pub fn act(
        &self,
        view: &NotEating,
        offered: &Offered,
        now: Instant,
        record: &str,
    ) -> Result<Act, Vec<Wrong>> {
        let mut wrong = Vec::new();
        let mut body = AppetiteV1 {
            last_seen_eating: offered.last_seen_eating,
            handful: offered.handful.unwrap_or(Handful::NotTried),
            dull: offered.dull,
            temperature: None,
            pulse: None,
            breaths: None,
            note: None,
        };
        let mut measured = false;
        for vital in Vital::ALL {
            match reading(vital, self.of(vital)) {
                Ok(None) => {}
                Ok(Some(value)) => {
                    measured = true;
                    match body.clone().with(vital, value) {
                        Ok(with) => body = with,
                        Err(error) => wrong.push(Wrong::Log(error)),
                    }
                }
                Err(error) => {
                    measured = true;
                    wrong.push(Wrong::Vital(vital, error));
                }
            }
        }
        let telephone = self.telephone.trim();
        if !telephone.is_empty() && dial(telephone).is_none() {
            wrong.push(Wrong::Telephone);
        }
        let found = view.found(offered, now);
        let said = found != WillNotEat::HoldOutAHandful;
        if !said && (measured || telephone.is_empty()) {
            wrong.push(Wrong::Handful);
        }
        if !wrong.is_empty() {
            return Err(wrong);
        }
        let mut acts = Vec::new();
        if said {
            acts.push(Act::Add(New {
                id: RecordId(record.to_owned()),
                subject: Subject::animal(&view.animal.id),
                at: None,
                known: Known::Seen,
                body: Body::Appetite(body),
            }));
        }
        if let Some(appetite) = found.appetite(offered)
            && appetite != view.held.health.appetite
        {
            let mut animal = view.held.clone();
            animal.health.appetite = appetite;
            acts.push(Act::Change {
                id: RecordId(view.animal.id.0.clone()),
                body: Body::Animal(animal),
                at: None,
            });
        }
        if !telephone.is_empty() {
            acts.push(
                self.number(view, record)
                    .map_err(|error| vec![Wrong::Log(error)])?,
            );
        }
        Ok(Act::All(acts))
    }

    /// The number stands with the yard; where no yard is written down, with the vet as a person.
    fn number(&self, view: &NotEating, record: &str) -> Result<Act, LogError> {
        let telephone = Some(self.telephone.trim().to_owned());
        Ok(match &view.yard {
            Some((id, yard)) => {
                let mut yard = yard.clone();
                yard.vet_telephone = telephone;
                Act::Change {
                    id: id.clone(),
                    body: Body::Yard(yard),
                    at: None,
                }
            }
            None => Act::Add(New {
                id: RecordId(format!("{record}-vet")),
                subject: Subject::yard(&view.yard_id),
                at: None,
                known: Known::Seen,
                body: Body::Person(PersonV1 {
                    name: Name::new(view.vet.named.as_ref().unwrap_or(&self.vet))?,
                    role: Role::Vet,
                    initials: None,
                    telephone,
                }),
            }),
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_temperature_is_read_in_either_unit() {
        let read = |text| reading(Vital::Temperature, text);
        assert_eq!(read("38,4"), Ok(Some(38.4)));
        assert_eq!(read("38.4 \u{b0}C"), Ok(Some(38.4)));
        let fever = read("102 F").unwrap().unwrap();
        assert!((fever - 38.888_9).abs() < 1e-3);
        assert_eq!(read(" "), Ok(None));
        // Without its unit it is questioned with the range.
        assert!(matches!(read("102"), Err(ParseError::OutOfRange(_))));
        assert!(reading(Vital::Pulse, "40 F").is_err());
    }
}
