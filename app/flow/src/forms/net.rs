//! A net: what is on it, what it weighs, what it holds, how wide its holes are.

use crate::acts::{Act, New};
use crate::views::nets::YardNet;
use tussock_core::day::NetKind;
use tussock_core::day::published::HOLE;
use tussock_core::log::bodies::NetV1;
use tussock_core::log::bodies::base::{Distance, FeedWeight};
use tussock_core::log::{Body, Known, LogError, Name, Subject};
use tussock_core::sources::RecordId;
use tussock_core::units::parse::{LengthUnit, MassUnit, ParseError, as_fed, length};
use tussock_core::units::{AsFed, OutOfRange};

/// What hay is eaten from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum From {
    /// A net.
    Net,
    /// The floor, a manger, a box.
    Loose,
}

/// A field of the form.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Field {
    /// What is on it.
    Name,
    /// Its own weight.
    Own,
    /// How much goes into it.
    Capacity,
    /// The width of its holes.
    Hole,
}

/// What is wrong with a field.
#[derive(Clone, Debug, PartialEq)]
pub enum Wrong {
    /// It has no name.
    NoName,
    /// It cannot be read.
    Parse(Field, ParseError),
    /// No hole is so wide or so narrow.
    Hole(OutOfRange),
    /// It cannot be stored.
    Log(LogError),
}

impl Wrong {
    /// The field it stands under; `None` for one of the whole form.
    pub const fn field(&self) -> Option<Field> {
        match self {
            Self::NoName => Some(Field::Name),
            Self::Parse(field, _) => Some(*field),
            Self::Hole(_) => Some(Field::Hole),
            Self::Log(_) => None,
        }
    }
}

/// What is typed.
#[derive(Clone, Debug, PartialEq)]
pub struct Typed {
    /// Its name or number.
    pub name: String,
    /// What it is eaten from.
    pub from: From,
    /// Its own weight, dry and empty; may be left out.
    pub own: String,
    /// How much goes into it; may be left out.
    pub capacity: String,
    /// The width of its holes; may be left out.
    pub hole: String,
    /// One in another.
    pub double: bool,
}

impl Typed {
    /// What is stored, as the form shows it.
    pub fn of(body: &NetV1) -> Self {
        let weight = |held: &Option<FeedWeight>| {
            held.as_ref().map_or_else(String::new, |held| {
                held.typed.clone().unwrap_or_else(|| grams(held.g.as_fed()))
            })
        };
        Self {
            name: body.name.as_str().to_owned(),
            from: match body.net_kind {
                Some(NetKind::Loose) => From::Loose,
                _ => From::Net,
            },
            own: weight(&body.own_weight),
            capacity: weight(&body.capacity),
            hole: body.hole.as_ref().map_or_else(String::new, |hole| {
                hole.typed
                    .clone()
                    .unwrap_or_else(|| format!("{} mm", hole.mm.get()))
            }),
            double: body
                .double
                .unwrap_or(body.net_kind == Some(NetKind::DoubleSmall)),
        }
    }

    /// What it is eaten from, as far as it can be read.
    pub fn kind(&self) -> NetKind {
        match self.from {
            From::Loose => NetKind::Loose,
            From::Net => {
                let hole = self.hole().ok().flatten();
                NetKind::of_net(hole.map(|hole| hole.mm.length()), self.double)
            }
        }
    }

    /// As it is stored, to the millimetre: the nets of the trial are sold by the inch.
    fn hole(&self) -> Result<Option<Distance>, Wrong> {
        let typed = self.hole.trim();
        if typed.is_empty() {
            return Ok(None);
        }
        let hole =
            length(typed, LengthUnit::Cm).map_err(|error| Wrong::Parse(Field::Hole, error))?;
        HOLE.check(hole.to_cm()).map_err(Wrong::Hole)?;
        Distance::of(hole, Some(typed.to_owned()))
            .map(Some)
            .map_err(Wrong::Log)
    }

    /// The body of the record, laid over what it said before.
    ///
    /// # Errors
    /// Every field that is wrong.
    pub fn body(&self, before: Option<&NetV1>) -> Result<NetV1, Vec<Wrong>> {
        let mut wrong = Vec::new();
        let name = if self.name.trim().is_empty() {
            wrong.push(Wrong::NoName);
            None
        } else {
            note(Name::new(self.name.trim()).map_err(Wrong::Log), &mut wrong)
        };
        let own_weight = note(weight(&self.own, Field::Own), &mut wrong).flatten();
        let capacity = note(weight(&self.capacity, Field::Capacity), &mut wrong).flatten();
        let hole = match self.from {
            From::Loose => None,
            From::Net => note(self.hole(), &mut wrong).flatten(),
        };
        // A kind that was said without a hole stays until a hole is measured, or it is said to be single or double.
        let said = before.and_then(|before| before.net_kind).filter(|kind| {
            *kind != NetKind::Loose
                && hole.is_none()
                && self.double == (*kind == NetKind::DoubleSmall)
        });
        match name {
            Some(name) if wrong.is_empty() => Ok(NetV1 {
                name,
                net_kind: match self.from {
                    From::Loose => Some(NetKind::Loose),
                    From::Net => said,
                },
                own_weight,
                hole,
                capacity,
                double: match self.from {
                    From::Loose => None,
                    From::Net => Some(self.double),
                },
            }),
            _ => Err(wrong),
        }
    }

    /// The act that writes it: a new version of a net that is there, else a new net of the yard.
    ///
    /// # Errors
    /// Every field that is wrong.
    pub fn act(
        &self,
        yard: &Subject,
        there: Option<&YardNet>,
        id: &str,
    ) -> Result<Act, Vec<Wrong>> {
        let body = Body::Net(self.body(there.map(|net| &net.body))?);
        Ok(match there {
            Some(net) => Act::Change {
                id: RecordId(net.id.0.clone()),
                body,
                at: None,
            },
            None => Act::Add(New {
                id: RecordId(id.to_owned()),
                subject: yard.clone(),
                at: None,
                known: Known::Seen,
                body,
            }),
        })
    }
}

fn note<T>(read: Result<T, Wrong>, wrong: &mut Vec<Wrong>) -> Option<T> {
    read.map_err(|error| wrong.push(error)).ok()
}

fn weight(typed: &str, field: Field) -> Result<Option<FeedWeight>, Wrong> {
    let typed = typed.trim();
    if typed.is_empty() {
        return Ok(None);
    }
    let weight = as_fed(typed, MassUnit::Kg).map_err(|error| Wrong::Parse(field, error))?;
    FeedWeight::of(weight, Some(typed.to_owned()))
        .map(Some)
        .map_err(Wrong::Log)
}

/// A weight that was set with a button, to type on from.
fn grams(weight: AsFed) -> String {
    format!("{:.0} g", weight.to_kg() * 1000.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn typed(name: &str, hole: &str) -> Typed {
        Typed {
            name: name.into(),
            from: From::Net,
            own: "0.45".into(),
            capacity: "6".into(),
            hole: hole.into(),
            double: false,
        }
    }

    #[test]
    fn a_hole_is_read_in_centimetres_or_inches_and_says_what_it_is_eaten_from() {
        for (hole, kind) in [
            ("2.5", NetKind::SmallHoles),
            ("1 in", NetKind::SmallHoles),
            ("1.5 in", NetKind::MediumHoles),
            ("1.75 in", NetKind::MediumHoles),
            ("6 in", NetKind::LargeHoles),
            ("7 in", NetKind::Loose),
            ("15", NetKind::LargeHoles),
            ("", NetKind::MediumHoles),
        ] {
            let typed = typed("Blue 1", hole);
            let body = typed.body(None).unwrap();
            assert_eq!(body.eaten_from(), typed.kind(), "{hole}");
            assert_eq!(body.eaten_from(), kind, "{hole}");
        }
        let double = Typed {
            double: true,
            ..typed("Blue 1", "2.5")
        };
        assert_eq!(
            double.body(None).unwrap().eaten_from(),
            NetKind::DoubleSmall
        );
    }

    #[test]
    fn what_is_wrong_stands_under_its_field() {
        let wrong = |typed: &Typed| -> Vec<Option<Field>> {
            let wrong = typed.body(None).unwrap_err();
            wrong.iter().map(Wrong::field).collect()
        };
        assert_eq!(wrong(&typed(" ", "2.5")), [Some(Field::Name)]);
        assert_eq!(wrong(&typed("Blue", "250")), [Some(Field::Hole)]);
        assert_eq!(wrong(&typed("Blue", "wide")), [Some(Field::Hole)]);
        let heavy = Typed {
            own: "heavy".into(),
            capacity: "much".into(),
            ..typed("Blue", "")
        };
        assert_eq!(wrong(&heavy), [Some(Field::Own), Some(Field::Capacity)]);
    }

    #[test]
    fn what_was_stored_comes_back_as_it_was_typed_and_loose_has_no_holes() {
        let body = typed("Blue 1", "1 in").body(None).unwrap();
        assert_eq!(Typed::of(&body), typed("Blue 1", "1 in"));
        let loose = Typed {
            from: From::Loose,
            ..typed("Manger", "wide")
        };
        let body = loose.body(None).unwrap();
        assert_eq!((body.eaten_from(), body.hole), (NetKind::Loose, None));
    }

    #[test]
    fn a_kind_that_was_said_without_a_hole_stays() {
        let old = NetV1 {
            net_kind: Some(NetKind::SmallHoles),
            hole: None,
            ..typed("Blue 1", "").body(None).unwrap()
        };
        let kept = Typed::of(&old).body(Some(&old)).unwrap();
        assert_eq!(kept.eaten_from(), NetKind::SmallHoles);
    }
}
