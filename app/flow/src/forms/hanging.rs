//! What is said of a net that hangs: what was left of it, that it is eaten up, that the next one hangs.

use crate::acts::{Act, New};
use crate::views::hanging::HungNet;
use tussock_core::day::{DayError, hay_in, left_part, usual_net};
use tussock_core::log::bodies::base::FeedWeight;
use tussock_core::log::bodies::{LeftAmount, LeftOverV1, NetTimedV1, Quarters};
use tussock_core::log::{Body, Known, LogError, Subject};
use tussock_core::sources::RecordId;
use tussock_core::units::parse::{MassUnit, ParseError, as_fed};
use tussock_core::units::{AsFed, Instant};

/// What is wrong with what was typed.
#[derive(Clone, Debug, PartialEq)]
pub enum Wrong {
    /// The reading of what is left cannot be read.
    Left(ParseError),
    /// The reading of the wet net as it was hung cannot be read.
    Hung(ParseError),
    /// It cannot be: more than hung, soaked hay as dry.
    Day(DayError),
    /// Nobody knows what hay hung in it: it can only be judged by eye.
    NotKnown,
    /// It cannot be stored.
    Log(LogError),
}

impl From<LogError> for Wrong {
    fn from(error: LogError) -> Self {
        Self::Log(error)
    }
}

/// The act that writes what was left by eye.
pub fn by_eye(about: &Subject, net: &HungNet, quarters: Quarters, id: &str) -> Act {
    left(about, net, LeftAmount::ByEye { quarters }, id)
}

/// Whether so little was eaten that something is amiss: three quarters left, or all.
pub const fn hardly_touched(quarters: Quarters) -> bool {
    matches!(quarters, Quarters::Three | Quarters::All)
}

/// The act that writes what was left, weighed. `reading` and, for a net that was soaked, `wet` are what the scale showed,
/// net and all: what is left now, and the wet net as it was hung. The net is taken off both.
///
/// # Errors
/// What cannot be read, more than hung, a net of which nobody knows what hung in it.
pub fn weighed(
    about: &Subject,
    net: &HungNet,
    reading: &str,
    wet: &str,
    id: &str,
) -> Result<Act, Wrong> {
    let own = net.own.unwrap_or_else(usual_net);
    let hay = |typed: &str| -> Result<(AsFed, String), ParseError> {
        let read = as_fed(typed, MassUnit::Kg)?;
        Ok((hay_in(read, own), typed.trim().to_owned()))
    };
    let (remains, typed) = hay(reading).map_err(Wrong::Left)?;
    let amount = if net.soaked {
        let (hung, wet_typed) = hay(wet).map_err(Wrong::Hung)?;
        LeftAmount::Wet {
            left: FeedWeight::of(remains, Some(typed))?,
            hung: FeedWeight::of(hung, Some(wet_typed))?,
        }
    } else {
        LeftAmount::Dry {
            hay: FeedWeight::of(remains, Some(typed))?,
        }
    };
    match left_part(amount.left(), net.hay, net.soaked) {
        Ok(Some(_)) => Ok(left(about, net, amount, id)),
        Ok(None) => Err(Wrong::NotKnown),
        Err(error) => Err(Wrong::Day(error)),
    }
}

/// The act that writes that a net is eaten up now, and times it where that can be. `found` is that nobody saw the end.
///
/// # Errors
/// A rate that no animal eats at; a time or an amount beyond what is stored.
pub fn eaten_up(
    about: &Subject,
    net: &HungNet,
    now: Instant,
    found: bool,
    mut id: impl FnMut() -> String,
) -> Result<Act, Wrong> {
    let mut acts = vec![by_eye(about, net, Quarters::None, &id())];
    if let Some(hay) = net.hay.filter(|_| net.can_be_timed())
        && about.kind() == "animal"
    {
        let body = NetTimedV1 {
            hung: Some(net.id.clone()),
            net: net.net.clone(),
            net_kind: net.kind,
            lot: net.lot.clone(),
            hay: FeedWeight::of(hay, None)?,
            soaked: net.soaked,
            from: net.at,
            to: now,
            found,
        };
        if let Some(dry) = net.dry {
            body.timing(dry).says().map_err(Wrong::Day)?;
        }
        acts.push(add(about, &id(), Body::NetTimed(body)));
    }
    Ok(Act::All(acts))
}

fn left(about: &Subject, net: &HungNet, left: LeftAmount, id: &str) -> Act {
    add(
        about,
        id,
        Body::LeftOver(LeftOverV1 {
            hung: Some(net.id.clone()),
            net: net.net.clone(),
            lot: net.lot.clone(),
            left,
            job: None,
        }),
    )
}

fn add(about: &Subject, id: &str, body: Body) -> Act {
    Act::Add(New {
        id: RecordId(id.to_owned()),
        subject: about.clone(),
        at: None,
        known: Known::Seen,
        body,
    })
}
