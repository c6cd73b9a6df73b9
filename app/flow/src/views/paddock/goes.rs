//! How grass stands for one animal or group now.

use super::Chosen;
use super::asked::{For, Grass};
use super::by_plan::{ByPlan, muzzled, plan_of, with_visits};
use super::outings::{Outing, outings};
use super::who::Who;
use crate::views::beside::{Stop, stop};
use tussock_core::animal::{AnimalId, PaddockId, RiskLevel, risk};
use tussock_core::assess::ConditionRange;
use tussock_core::graze::intake::published::MUZZLE_LONGEST;
use tussock_core::graze::window::{Begins, Closed, Stretch, Window};
use tussock_core::log::bodies::{GrazingV1, TurnoutV1};
use tussock_core::log::{Gathered, Subject, Wish, gather};
use tussock_core::sources::RecordId;
use tussock_core::units::{Instant, LocalDate, Span, Zone};

/// Why it is brought in when it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum WhyBy {
    /// Grass closes.
    Closes,
    /// Grass is closed: it should not be out.
    Closed,
    /// Its plan carries no longer.
    Plan,
    /// A muzzle stays on no longer.
    Muzzle,
    /// Somebody said so when it went out.
    Said,
}

/// It is out.
#[derive(Clone, Debug, PartialEq)]
pub struct Out {
    /// The record.
    pub id: RecordId,
    /// What it says.
    pub body: TurnoutV1,
    /// The group that it is out with, when the turnout is the group's.
    pub with: Option<String>,
    /// Since when.
    pub since: Instant,
    /// Bring it in by then.
    pub by: Instant,
    /// Why then.
    pub why: WhyBy,
}

/// How grass stands now.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Stands {
    /// It is out, and not late.
    Out,
    /// It is out longer than it may be.
    Late,
    /// Closed all day.
    Closed,
    /// Its plan carries no more of it today.
    HadIt,
    /// Open now.
    Open(Stretch),
    /// It opens later today.
    Opens(Stretch),
    /// Over for today.
    Over(Option<Instant>),
}

/// Grass for one animal or group.
#[derive(Clone, Debug, PartialEq)]
pub struct Goes {
    /// What records of it are about.
    pub about: Subject,
    /// Its name.
    pub name: String,
    /// Whether it is a group.
    pub group: bool,
    /// The risk that sets it: of a group the strictest.
    pub risk: RiskLevel,
    /// Whose risk that is, in a group.
    pub set_by: Option<String>,
    /// Who is stopped, and by what.
    pub stop: Option<(String, Stop)>,
    /// What was decided, when it goes out.
    pub decided: Option<GrazingV1>,
    /// The paddock that is meant.
    pub paddock: Option<(PaddockId, String)>,
    /// With a muzzle.
    pub muzzle: bool,
    /// What its plan says.
    pub plan: ByPlan,
    /// The window of today.
    pub window: Window,
    /// It is out.
    pub out: Option<Out>,
    /// The turnouts of the last days, the newest first.
    pub outings: Vec<Outing>,
    /// How long it was out today, what is going on left aside.
    pub had: Span,
    /// How it stands.
    pub stands: Stands,
}

impl Goes {
    /// Whether rule 16 closes grass for it where it only limits others.
    pub const fn at_risk(&self) -> bool {
        self.risk.restricts_meals()
    }

    /// What is left today of the time that its plan carries.
    pub fn left(&self) -> Option<Span> {
        Some(less(self.plan.time()?, self.had))
    }

    /// Until when it may be out if it goes out now.
    pub fn by_if_out(&self, now: Instant) -> (Instant, WhyBy) {
        by(&self.window, now, self.left(), self.muzzle, None)
    }

    /// Whether turning it out is offered as the thing to do.
    pub fn may_go(&self, now: Instant) -> bool {
        let decided = !self.at_risk() || self.decided.is_some();
        let soon = match self.stands {
            Stands::Open(_) => true,
            // Before dawn a morning's work begins; an evening opens when it opens.
            Stands::Opens(stretch) => {
                stretch.begins == Begins::Sunrise && stretch.from.since(now) <= Span::hours(1)
            }
            Stands::Out | Stands::Late | Stands::Closed | Stands::HadIt | Stands::Over(_) => false,
        };
        decided && soon
    }
}

/// The earliest of what ends a turnout that began at an instant.
fn by(
    window: &Window,
    out: Instant,
    left: Option<Span>,
    muzzle: bool,
    said: Option<Instant>,
) -> (Instant, WhyBy) {
    let closes = if window.closed.is_empty() {
        (window.in_by(out).unwrap_or(out), WhyBy::Closes)
    } else {
        (out, WhyBy::Closed)
    };
    [
        left.map(|left| (out + left, WhyBy::Plan)),
        muzzle.then(|| (out + *MUZZLE_LONGEST, WhyBy::Muzzle)),
        said.map(|said| (said, WhyBy::Said)),
    ]
    .into_iter()
    .flatten()
    .fold(
        closes,
        |first, other| {
            if other.0 < first.0 { other } else { first }
        },
    )
}

/// What is left of a time; nothing once it is used up.
fn less(time: Span, used: Span) -> Span {
    Span::ms(time.to_ms() - used.to_ms()).max(Span::ZERO)
}

fn risk_of(of: &Gathered) -> RiskLevel {
    let condition = of.condition.last().map(|scored| scored.condition);
    let crest = of.crest.map(|crest| f64::from(crest.score()));
    risk(&of.animal, condition.map(ConditionRange::high), crest).level
}

/// The strictest first.
const fn strictness(level: RiskLevel) -> u8 {
    match level {
        RiskLevel::Proven => 0,
        RiskLevel::AtRisk => 1,
        RiskLevel::NotKnown => 2,
        RiskLevel::Clear => 3,
    }
}

/// The paddock that is meant: what was chosen, else decided, else the only one.
fn meant(
    grass: &Grass<'_, impl Zone>,
    chosen: &Chosen,
    decided: Option<&GrazingV1>,
) -> Option<(PaddockId, String)> {
    let paddocks = grass.paddocks();
    let only = match paddocks.as_slice() {
        [(only, _)] => Some(only.clone()),
        _ => None,
    };
    let said = decided.and_then(|decided| decided.paddock.clone());
    let id = chosen.paddock.clone().or(said).or(only)?;
    paddocks.into_iter().find(|(other, _)| *other == id)
}

/// Grass for an animal or a group; `None` when nobody of it is among the records.
pub(super) fn goes(grass: &Grass<'_, impl Zone>, who: Who, chosen: &Chosen) -> Option<Goes> {
    let decided = grass.decided(who.about.id(), grass.day);
    let open = open_turnout(grass, &who);
    let nothing = Chosen::default();
    let chosen = if chosen.whose.as_ref() == Some(&who.about) {
        chosen
    } else {
        &nothing
    };
    let worn = open.as_ref().map(|open| open.body.muzzle).or(chosen.muzzle);
    let wish = Wish::default();
    let members: Vec<Gathered> = who
        .members
        .iter()
        .filter_map(|id| gather(grass.records, id, grass.now, grass.zone, &wish))
        .map(|one| muzzled(with_visits(one), worn))
        .collect();
    let strictest = members.iter().min_by_key(|one| strictness(risk_of(one)))?;
    let risk = risk_of(strictest);
    let set_by = who.group.then(|| strictest.animal.name.clone());
    let stop = members
        .iter()
        .find_map(|one| Some((one.animal.name.clone(), stop(one)?)));
    let plan = plan_of(grass, &who, &members, (decided.as_ref(), worn));
    let paddock = meant(grass, chosen, decided.as_ref());
    let muzzle = chosen
        .muzzle
        .unwrap_or_else(|| decided.as_ref().is_some_and(|decided| decided.muzzle));
    let mut also = Vec::new();
    if stop.is_some() || plan == ByPlan::Stopped {
        also.push(Closed::Stopped);
    }
    if plan.time().is_some_and(|time| time <= Span::ZERO) {
        also.push(Closed::HayLeavesNoRoom);
    }
    let not_in_plan = match plan {
        ByPlan::NotDecided | ByPlan::NoPlan | ByPlan::NotCounted => true,
        ByPlan::Stopped | ByPlan::Carries { .. } => false,
    };
    if not_in_plan && risk.restricts_meals() {
        also.push(Closed::NotInPlan);
    }
    let window_on = |day, paddock: Option<&PaddockId>| {
        let also = &also;
        let asked = For {
            risk,
            paddock,
            also,
        };
        grass.window(day, &asked)
    };
    let window = window_on(grass.day, paddock.as_ref().map(|(id, _)| id));
    let outings = outings(grass, &who, &members, decided.as_ref());
    let had_on = |day: LocalDate| had_on(grass, &who, &outings, day);
    let had = had_on(grass.day);
    let out = open.map(
        |Going {
             id,
             with,
             since,
             body,
         }| {
            let on = grass.zone.to_local(since).date;
            let there = window_on(on, body.paddock.as_ref());
            let left = plan.time().map(|time| less(time, had_on(on)));
            let (by, why) = by(&there, since, left, body.muzzle, body.bring_in_by);
            Out {
                id,
                body,
                with,
                since,
                by,
                why,
            }
        },
    );
    let mut goes = Goes {
        about: who.about,
        name: who.name,
        group: who.group,
        risk,
        set_by,
        stop,
        decided,
        paddock,
        muzzle,
        plan,
        window,
        out,
        outings,
        had,
        stands: Stands::Closed,
    };
    goes.stands = stands(&goes, grass.now);
    Some(goes)
}

fn stands(goes: &Goes, now: Instant) -> Stands {
    if let Some(out) = &goes.out {
        return if out.by <= now {
            Stands::Late
        } else {
            Stands::Out
        };
    }
    if !goes.window.closed.is_empty() {
        return Stands::Closed;
    }
    if goes.left() == Some(Span::ZERO) {
        return Stands::HadIt;
    }
    let opens = &goes.window.opens;
    let here = opens.iter().find(|s| s.from <= now && now < s.to);
    let next = opens.iter().find(|s| now < s.from);
    match (here, next) {
        (Some(stretch), _) => Stands::Open(*stretch),
        (None, Some(stretch)) => Stands::Opens(*stretch),
        (None, None) => Stands::Over(opens.last().map(|stretch| stretch.to)),
    }
}

/// How long it was out on a day, what goes on left aside: of a group with what one of them was out alone, the longest.
fn had_on(grass: &Grass<'_, impl Zone>, who: &Who, outings: &[Outing], day: LocalDate) -> Span {
    let together = outings.iter().filter(|outing| outing.day == day);
    let together = together
        .filter_map(|outing| outing.time)
        .fold(Span::ZERO, |sum, time| sum + time);
    let alone = |animal: &AnimalId| {
        let about = Subject::animal(animal);
        let own = grass.turnouts.iter();
        own.filter(|(record, _)| record.subject == about)
            .filter(|(record, _)| grass.zone.to_local(record.at).date == day)
            .filter_map(|(record, body)| body.time(record.at))
            .fold(Span::ZERO, |sum, time| sum + time)
    };
    let members = who.members.iter().filter(|_| who.group);
    together + members.map(alone).max().unwrap_or(Span::ZERO)
}

/// A turnout that goes on.
struct Going {
    id: RecordId,
    with: Option<String>,
    since: Instant,
    body: TurnoutV1,
}

/// The turnout that goes on: the latest that nobody brought in, its own or that of a group it is in. Also one that lies
/// ahead of a clock that was set back.
fn open_turnout(grass: &Grass<'_, impl Zone>, who: &Who) -> Option<Going> {
    let going = |own: bool| {
        let mut turnouts = grass.turnouts.iter();
        turnouts.find(|(record, body)| {
            let of_it = (record.subject == who.about) == own && who.is_out_by(&record.subject);
            of_it && body.came_in.is_none()
        })
    };
    let (record, body) = going(true).or_else(|| going(false))?;
    Some(Going {
        id: record.id.clone(),
        with: who.with_whom(&record.subject),
        since: record.at,
        body: body.clone(),
    })
}
