//! The day of the plan of an animal or a group: what hangs when, how long it waits, and whether anybody accepted that.

use crate::acts::{Act, New};
use crate::rows::Range;
use crate::shelf::Shelf;
use crate::views::horses::one_needs;
use crate::views::round::{about, needs as round_needs};
use crate::views::shed::Standing;
use tussock_core::animal::Group;
use tussock_core::day::{Gap, GapVerdict, Mend, RealDay, RealVerdict, gap_verdict};
use tussock_core::log::bodies::DayRelaidV1;
use tussock_core::log::{
    Body, HeldDay, Known, LogError, Record, RestHanging, RestLaid, RestOfToday, RestVerdict,
    fed_with, held_day, rest_of_today, said_of_day,
};
use tussock_core::round::Subject;
use tussock_core::sources::RecordId;
use tussock_core::units::{AsFed, Instant, LocalTime, Zone};

/// A line of the day, in the order of the clock.
#[derive(Clone, Debug, PartialEq)]
pub enum DayLine {
    /// A net.
    Net {
        /// The visit.
        visit: LocalTime,
        /// The hay in it, before soaking.
        as_fed: AsFed,
        /// Whether it is soaked.
        soaked: bool,
        /// When it was hung today.
        hung: Option<Instant>,
        /// How it stands: done, late or later.
        standing: Standing,
    },
    /// A visit at which nothing hangs.
    Nothing {
        /// The visit.
        visit: LocalTime,
    },
    /// A wait without forage.
    Wait {
        /// The wait.
        gap: Gap,
        /// What it means.
        verdict: GapVerdict,
    },
}

/// What the day's screen offers first.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DayOffer {
    /// Hang the rest of today as it was laid out anew.
    HangRest,
    /// Accept the longest wait, once.
    Accept,
    /// Weigh the nets.
    WeighNets,
    /// See the plan.
    Plan,
}

/// The day of an animal or a group.
#[derive(Clone, Debug, PartialEq)]
pub struct DayView {
    /// Its name.
    pub name: String,
    /// The group whose plan gives the animal its hay.
    pub fed_with: Option<Group>,
    /// The day of the plan in use; `None` without one.
    pub held: Option<HeldDay>,
    /// The lines, from 04:00 on.
    pub lines: Vec<DayLine>,
    /// The rest of today, when a visit was missed or a net is late.
    pub rest: Option<RestOfToday>,
    /// What hangs of the rest as the person said it, when today was laid out anew.
    pub said: Option<Vec<RestHanging>>,
}

/// What the screen asks the disk for.
pub fn needs(of: &Subject, now: Instant) -> Vec<Range> {
    let mut ranges = round_needs(now);
    if let Subject::Animal(animal) = of {
        ranges.extend(one_needs(animal));
    }
    ranges
}

/// The day of an animal or a group; `None` when it is not there.
pub fn day(shelf: &Shelf, of: &Subject, now: Instant, zone: &impl Zone) -> Option<DayView> {
    let records: Vec<&Record> = shelf.records().collect();
    let (name, fed_with) = match of {
        Subject::Animal(id) => {
            let day = zone.to_local(now).date;
            (shelf.animal(id)?.name, fed_with(&records, id, now, day))
        }
        Subject::Group(id) => (shelf.group(id)?.name, None),
        Subject::Yard(_) => return None,
    };
    let held = held_day(&records, of, now, zone);
    let time = zone.to_local(now).time;
    let said = held.as_ref().and_then(|held| {
        let (_, body) = said_of_day(&records, &held.plan, zone.to_local(now).date)?;
        Some(body)
    });
    let rest = held
        .as_ref()
        .and_then(|held| rest_of_today(&records, of, held, now, zone));
    let lines = held
        .as_ref()
        .map_or_else(Vec::new, |held| lines(held, said.as_ref(), time));
    Some(DayView {
        said: held
            .as_ref()
            .zip(said.as_ref())
            .map(|(held, said)| left(held, said, time)),
        name,
        fed_with,
        held,
        lines,
        rest,
    })
}

/// The hay that hangs at a visit by what was said of today.
fn at_visit(said: &DayRelaidV1, visit: LocalTime) -> AsFed {
    let nets = said.nets.iter().filter(|net| net.visit == visit);
    nets.map(|net| net.as_fed_g.as_fed()).sum()
}

/// What was said of today and does not hang yet.
fn left(held: &HeldDay, said: &DayRelaidV1, now: LocalTime) -> Vec<RestHanging> {
    held.nets
        .iter()
        .filter(|net| net.hung.is_none())
        .map(|net| RestHanging {
            visit: net.hanging.visit,
            now: net.hanging.visit <= now,
            as_fed: at_visit(said, net.hanging.visit),
        })
        .filter(|hanging| AsFed::ZERO < hanging.as_fed)
        .collect()
}

/// The hour at which the picture of a day begins.
const FROM_HOUR: f64 = 4.0;

fn lines(held: &HeldDay, said: Option<&DayRelaidV1>, now: LocalTime) -> Vec<DayLine> {
    let after = |hour: f64| (hour - FROM_HOUR).rem_euclid(24.0);
    let mut found: Vec<(f64, DayLine)> = held
        .nets
        .iter()
        .map(|net| {
            let visit = net.hanging.visit;
            let as_fed = said.map_or(net.hanging.as_fed, |said| at_visit(said, visit));
            let line = if AsFed::ZERO < as_fed {
                DayLine::Net {
                    visit,
                    as_fed,
                    soaked: net.soaked,
                    hung: net.hung,
                    standing: match net.hung {
                        Some(_) => Standing::Done,
                        None if visit <= now => Standing::Late,
                        None => Standing::Later,
                    },
                }
            } else {
                DayLine::Nothing { visit }
            };
            (after(hour(visit)), line)
        })
        .collect();
    // The waits are those of the plan: of a day that was laid out anew they say nothing.
    let gaps = held.layout.gaps.iter().filter(|_| said.is_none());
    found.extend(gaps.map(|gap| {
        let line = DayLine::Wait {
            gap: *gap,
            verdict: gap_verdict(gap.hours),
        };
        (after(gap.from_hour), line)
    }));
    found.sort_by(|a, b| a.0.total_cmp(&b.0));
    found.into_iter().map(|(_, line)| line).collect()
}

fn hour(time: LocalTime) -> f64 {
    use chrono::Timelike;
    f64::from(time.num_seconds_from_midnight()) / 3600.0
}

impl DayView {
    /// The real day, when it is worse than the accepted plan by more than an hour or needs feeding now.
    pub fn alarm(&self) -> Option<&RealDay> {
        self.held
            .as_ref()?
            .real
            .as_ref()
            .filter(|real| is_alarm(real))
    }

    /// Whether it has to be fed now: the stop of the screen.
    pub fn feed_now(&self) -> bool {
        self.alarm()
            .is_some_and(|real| real.beside == RealVerdict::FeedNow)
    }

    /// What mends the longest wait, cheapest first; nothing where it is within what is planned for.
    pub fn mends(&self) -> &[Mend] {
        match &self.held {
            Some(held) if held.layout.verdict != GapVerdict::Planned => &held.mends,
            _ => &[],
        }
    }

    /// The action.
    pub fn first(&self) -> DayOffer {
        match &self.held {
            None => DayOffer::Plan,
            Some(_) if self.to_say().is_some() => DayOffer::HangRest,
            Some(held) if held.asks() => DayOffer::Accept,
            Some(_) => DayOffer::WeighNets,
        }
    }

    /// The rest of today as it can be laid out.
    pub fn laid(&self) -> Option<&RestLaid> {
        match &self.rest.as_ref()?.verdict {
            RestVerdict::Laid(laid) => Some(laid),
            RestVerdict::NoVisitLeft | RestVerdict::NotKnown => None,
        }
    }

    /// What is written down when the person hangs the rest so.
    fn to_say(&self) -> Option<&DayRelaidV1> {
        self.laid()?.body.as_ref()
    }

    /// The act that hangs the rest of today as it was laid out anew. The plan stays as it was issued, and holds again
    /// tomorrow. `None` where there is nothing to lay out.
    pub fn hang_rest(&self, of: &Subject, id: &str) -> Option<Act> {
        Some(Act::Add(New {
            id: RecordId(id.to_owned()),
            subject: about(of),
            at: None,
            known: Known::Seen,
            body: Body::DayRelaid(self.to_say()?.clone()),
        }))
    }

    /// The act that accepts the longest wait of the plan in use; `None` without one.
    ///
    /// # Errors
    /// A wait longer than a day.
    pub fn accept(&self) -> Option<Result<Act, LogError>> {
        let held = self.held.as_ref()?;
        let body = held.body.accepting(held.layout.longest_h);
        Some(body.map(|body| Act::Change {
            id: held.plan.clone(),
            body: Body::Plan(body),
            at: None,
        }))
    }
}

/// Whether a real day is told on the round.
fn is_alarm(real: &RealDay) -> bool {
    real.beside != RealVerdict::AsAccepted
}

/// The animals and groups whose real day is worse than accepted by more than an hour, by name, with it. For the round.
pub fn alarms(shelf: &Shelf, now: Instant, zone: &impl Zone) -> Vec<(Subject, String, RealDay)> {
    let records: Vec<&Record> = shelf.records().collect();
    let animals = shelf
        .animals()
        .into_iter()
        .map(|animal| (Subject::Animal(animal.id), animal.name));
    let groups = shelf
        .groups()
        .into_iter()
        .map(|group| (Subject::Group(group.id), group.name));
    animals
        .chain(groups)
        .filter_map(|(of, name)| {
            let real = held_day(&records, &of, now, zone)?.real?;
            is_alarm(&real).then_some((of, name, real))
        })
        .collect()
}
