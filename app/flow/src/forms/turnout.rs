//! Turning out, bringing in, and what was wrong with a time.

use super::correct::clock;
use super::tub::Wrong as NoTime;
use crate::acts::{Act, New};
use tussock_core::animal::PaddockId;
use tussock_core::graze::season::Noted;
use tussock_core::log::bodies::{SeasonNoteV1, TurnoutV1};
use tussock_core::log::{Body, Known, Subject};
use tussock_core::sources::RecordId;
use tussock_core::units::{Instant, LocalDate, LocalStamp, Zone};

/// What is wrong with a time or a day that was typed.
#[derive(Clone, Debug, PartialEq)]
pub enum Wrong {
    /// It is no time.
    Time(String),
    /// It is no day.
    Day(String),
    /// It is still to come.
    ToCome,
    /// It came in before it went out.
    BeforeOut,
    /// Something else needs its remark.
    NoRemark,
}

impl From<NoTime> for Wrong {
    fn from(wrong: NoTime) -> Self {
        match wrong {
            NoTime::Time(typed) => Self::Time(typed),
            _ => Self::ToCome,
        }
    }
}

/// Where and how it goes out.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct Goes {
    /// Onto which paddock.
    pub paddock: Option<PaddockId>,
    /// With a muzzle.
    pub muzzle: bool,
    /// When it is to be brought in.
    pub by: Option<Instant>,
}

/// The act of turning an animal or a group out now.
pub fn turn_out(about: &Subject, goes: Goes, id: &str) -> Act {
    Act::Add(New {
        id: RecordId(id.to_owned()),
        subject: about.clone(),
        at: None,
        known: Known::Seen,
        body: Body::Turnout(TurnoutV1 {
            paddock: goes.paddock,
            muzzle: goes.muzzle,
            bring_in_by: goes.by,
            came_in: None,
            job: None,
        }),
    })
}

/// The act of bringing it in.
pub fn bring_in(id: &RecordId, body: &TurnoutV1, now: Instant) -> Act {
    Act::Change {
        id: id.clone(),
        body: Body::Turnout(TurnoutV1 {
            came_in: Some(now),
            ..body.clone()
        }),
        at: None,
    }
}

/// The act that corrects when it went out and came in, on the local day on which it went out; it came in on the day after
/// where the time is earlier. An empty time of coming in means that it is out.
///
/// # Errors
/// A text that is no time, or a time to come.
pub fn correct(
    (id, out, body): (&RecordId, Instant, &TurnoutV1),
    went_out: &str,
    came_in: &str,
    now: Instant,
    zone: &impl Zone,
) -> Result<Act, Wrong> {
    let day = zone.to_local(out).date;
    let on = |date: LocalDate, typed: &str| -> Result<Instant, Wrong> {
        let time = clock(typed)?;
        Ok(zone.to_instant(LocalStamp { date, time }).planned())
    };
    let out = on(day, went_out)?;
    if now < out {
        return Err(Wrong::ToCome);
    }
    let came_in = if came_in.trim().is_empty() {
        None
    } else {
        let same = on(day, came_in)?;
        let at = match day.succ_opt() {
            Some(next) if same < out => on(next, came_in)?,
            _ => same,
        };
        if now < at {
            return Err(Wrong::BeforeOut);
        }
        Some(at)
    };
    Ok(Act::Change {
        id: id.clone(),
        body: Body::Turnout(TurnoutV1 {
            came_in,
            ..body.clone()
        }),
        at: Some(out),
    })
}

/// The act that writes a note of the year of grass. The day is typed as `2026-04-12`; empty stands for today.
///
/// # Errors
/// A text that is no day, a day to come, something else without a remark.
pub fn note(
    yard: &Subject,
    what: Noted,
    day: &str,
    remark: &str,
    today: LocalDate,
    id: &str,
) -> Result<Act, Wrong> {
    let typed = day.trim();
    let date = if typed.is_empty() {
        today
    } else {
        let read = typed.parse::<LocalDate>();
        read.map_err(|_| Wrong::Day(typed.to_owned()))?
    };
    if today < date {
        return Err(Wrong::ToCome);
    }
    let remark = Some(remark.trim()).filter(|text| !text.is_empty());
    if what == Noted::Other && remark.is_none() {
        return Err(Wrong::NoRemark);
    }
    Ok(Act::Add(New {
        id: RecordId(id.to_owned()),
        subject: yard.clone(),
        at: None,
        known: Known::Seen,
        body: Body::SeasonNote(SeasonNoteV1 {
            date,
            what,
            note: remark.map(str::to_owned),
        }),
    }))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::views::test_yard::{at, zone};
    use tussock_core::animal::{AnimalId, YardId};
    use tussock_core::units::Span;

    fn body() -> TurnoutV1 {
        TurnoutV1 {
            paddock: None,
            muzzle: true,
            bring_in_by: None,
            came_in: None,
            job: None,
        }
    }

    #[test]
    fn it_goes_out_and_comes_in() {
        let about = Subject::animal(&AnimalId("moss".into()));
        let goes = Goes {
            muzzle: true,
            ..Goes::default()
        };
        let Act::Add(new) = turn_out(&about, goes, "out") else {
            panic!("an entry")
        };
        assert!(matches!(&new.body, Body::Turnout(body) if body.muzzle && body.came_in.is_none()));
        let Act::Change { body, at: None, .. } = bring_in(&new.id, &body(), at(0)) else {
            panic!("a change")
        };
        assert!(matches!(body, Body::Turnout(body) if body.came_in == Some(at(0)) && body.muzzle));
    }

    #[test]
    fn times_are_corrected_over_midnight_and_never_into_the_future() {
        let id = RecordId("out".into());
        let out = at(0) - Span::hours(2);
        let fix = |from: &str, to: &str| correct((&id, out, &body()), from, to, at(0), &zone());
        assert!(matches!(
            fix("9:30", "10.15"),
            Ok(Act::Change { at: Some(when), body: Body::Turnout(body), .. })
                if body.time(when) == Some(Span::minutes(45))
        ));
        assert!(matches!(fix("9:30", ""), Ok(Act::Change { .. })));
        assert_eq!(fix("23:30", ""), Err(Wrong::ToCome));
        assert_eq!(fix("9:30", "8:00"), Err(Wrong::BeforeOut));
        assert!(matches!(fix("soon", ""), Err(Wrong::Time(_))));
    }

    #[test]
    fn a_note_has_a_day_and_something_else_its_remark() {
        let yard = Subject::yard(&YardId("y".into()));
        let today: LocalDate = "2026-05-05".parse().unwrap();
        let write = |what, day: &str, said: &str| note(&yard, what, day, said, today, "n");
        assert!(write(Noted::FlushBegan, "", "").is_ok());
        assert!(write(Noted::FlushBegan, "2025-04-12", "").is_ok());
        assert_eq!(
            write(Noted::FlushOver, "2026-05-06", ""),
            Err(Wrong::ToCome)
        );
        assert_eq!(
            write(Noted::FlushOver, "May", ""),
            Err(Wrong::Day("May".into()))
        );
        assert_eq!(write(Noted::Other, "", " "), Err(Wrong::NoRemark));
    }
}
