//! A net on the scale: what was typed, and what it writes.

use crate::acts::{Act, New};
use crate::views::nets::{DayNet, NetState, NetsDay, Pass, YardNet};
use tussock_core::day::{OnScale, hay_in, nudged};
use tussock_core::log::bodies::base::{FeedGrams, FeedWeight};
use tussock_core::log::bodies::{NetFilledV1, NetV1};
use tussock_core::log::{Body, Known, LogError, Name, Subject};
use tussock_core::sources::RecordId;
use tussock_core::units::AsFed;
use tussock_core::units::parse::{MassUnit, ParseError, as_fed};

/// What is wrong with a reading.
#[derive(Clone, Debug, PartialEq)]
pub enum Wrong {
    /// It cannot be read.
    Parse(ParseError),
    /// There is no hay behind it: the net alone weighs as much.
    NoHay,
    /// It cannot be stored.
    Log(LogError),
}

impl From<LogError> for Wrong {
    fn from(error: LogError) -> Self {
        Self::Log(error)
    }
}

/// A reading as typed, in kilograms unless it says otherwise.
///
/// # Errors
/// What cannot be read.
pub fn reading(typed: &str) -> Result<AsFed, ParseError> {
    as_fed(typed, MassUnit::Kg)
}

/// The act that writes a net that was weighed.
///
/// # Errors
/// A reading that cannot be read, or behind which there is no hay.
pub fn weighed(about: &Subject, net: &DayNet, typed: &str, id: &str) -> Result<Act, Wrong> {
    let read = reading(typed).map_err(Wrong::Parse)?;
    if net.judge(read) == OnScale::NoHay {
        return Err(Wrong::NoHay);
    }
    let typed = Some(typed.trim().to_owned());
    let body = NetFilledV1 {
        reading: Some(FeedWeight::of(read, typed.clone())?),
        hay: FeedWeight::of(hay_in(read, net.own.weight), typed)?,
        own_weight: Some(FeedGrams::of(net.own.weight)?),
        ..to_target(net)?
    };
    Ok(instead(net, filled(about, id, Known::Seen, body)))
}

/// The act that writes every net that is left as filled to its target: said by a person, read by nobody.
///
/// # Errors
/// An amount beyond what is stored.
pub fn all_to_target(day: &NetsDay, mut id: impl FnMut() -> String) -> Result<Act, LogError> {
    let left = day.nets.iter().filter(|net| net.state == NetState::ToWeigh);
    let mut acts = Vec::new();
    for net in left {
        let act = filled(&day.about, &id(), Known::Assumed, to_target(net)?);
        acts.push(instead(net, act));
    }
    Ok(Act::All(acts))
}

/// The act that writes every net that is left of a pass as filled to its target.
///
/// # Errors
/// An amount beyond what is stored.
pub fn pass_to_target(pass: &Pass, mut id: impl FnMut() -> String) -> Result<Act, LogError> {
    let acts: Result<Vec<Act>, LogError> = pass
        .days
        .iter()
        .map(|day| all_to_target(day, &mut id))
        .collect();
    Ok(Act::All(acts?))
}

/// The reading after a plus or minus key: of what was typed, else of the target, which the net was filled to.
///
/// # Errors
/// What was typed and cannot be read.
pub fn nudge(net: &DayNet, typed: &str, step: AsFed, steps: i32) -> Result<AsFed, ParseError> {
    let from = if typed.trim().is_empty() {
        net.target()
    } else {
        reading(typed)?
    };
    Ok(nudged(from, step, steps))
}

fn to_target(net: &DayNet) -> Result<NetFilledV1, LogError> {
    Ok(NetFilledV1 {
        net: net.own.net.clone(),
        lot: net.lot.clone(),
        hay: FeedWeight::of(net.hay, None)?,
        reading: None,
        own_weight: None,
        target: Some(FeedGrams::of(net.hay)?),
        slices: None,
        to_soak: net.soaked,
        job: None,
    })
}

/// A net that is weighed anew, because it is not soaked today or the day was laid out anew, takes the place of what was
/// weighed for it before.
fn instead(net: &DayNet, act: Act) -> Act {
    match net.weighed_before() {
        Some(before) => Act::All(vec![Act::Remove(before.id.clone()), act]),
        None => act,
    }
}

fn filled(about: &Subject, id: &str, known: Known, body: NetFilledV1) -> Act {
    Act::Add(New {
        id: RecordId(id.to_owned()),
        subject: about.clone(),
        at: None,
        known,
        body: Body::NetFilled(body),
    })
}

/// The act that writes what an empty net weighs: of the net that is told apart, else of a new one with this name, which
/// is about the animal or group it is hung for and ends in its number.
///
/// # Errors
/// What cannot be read or stored.
pub fn own_weight(
    about: &Subject,
    net: Option<&YardNet>,
    name: &str,
    typed: &str,
    id: &str,
) -> Result<Act, Wrong> {
    let weight = FeedWeight::of(
        reading(typed).map_err(Wrong::Parse)?,
        Some(typed.trim().to_owned()),
    )?;
    if let Some(net) = net {
        let mut body = net.body.clone();
        body.own_weight = Some(weight);
        return Ok(Act::Change {
            id: RecordId(net.id.0.clone()),
            body: Body::Net(body),
            at: None,
        });
    }
    Ok(Act::Add(New {
        id: RecordId(id.to_owned()),
        subject: about.clone(),
        at: None,
        known: Known::Seen,
        body: Body::Net(NetV1 {
            name: Name::new(name)?,
            net_kind: None,
            own_weight: Some(weight),
            hole: None,
            capacity: None,
            double: None,
        }),
    }))
}
