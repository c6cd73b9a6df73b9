//! A soak tub: what it is now and its cord of four tags.

use crate::shelf::Shelf;
use crate::views::nets::plan_on;
use crate::views::round::{Today, about};
use crate::views::shed::Standing;
use tussock_core::animal::{LotId, TubId};
use tussock_core::log::bodies::{SoakStart, SoakStep, SoakStepV1, soak_times};
use tussock_core::log::{Body, Kind, Record, Subject as About};
use tussock_core::round::{JobKind, Key, OpenSoak};
use tussock_core::soak::{
    DryLoss, Recipe, SoakTimes, SugarLoss, Timeline, TubState, TubStep, dry_loss, feeds_like,
    state, sugar_loss, timeline,
};
use tussock_core::sources::RecordId;
use tussock_core::units::{AsFed, Instant, LocalDate, LocalTime};

/// A step that was logged.
#[derive(Clone, Debug, PartialEq)]
pub struct Logged {
    /// The record.
    pub id: RecordId,
    /// When.
    pub at: Instant,
    /// What it says.
    pub body: SoakStepV1,
}

/// A soak that is going on.
#[derive(Clone, Debug, PartialEq)]
pub struct Tub {
    /// The soak.
    pub soak: OpenSoak,
    /// The name of its lot.
    pub lot: Option<String>,
    /// Its deadlines.
    pub line: Timeline,
    /// The sugar it is expected to lose.
    pub loss: SugarLoss,
    /// The dry matter that goes down the drain.
    pub dry_lost: DryLoss,
    /// How much dry hay it feeds like.
    pub like: Option<AsFed>,
    /// The steps that were logged.
    pub steps: Vec<Logged>,
}

/// What stands under a tub's address.
#[derive(Clone, Debug, PartialEq)]
pub enum TubSeen {
    /// A soak that is going on.
    Open(Box<Tub>),
    /// A soak that is over.
    Over(TubState),
    /// A tub with nothing in it.
    Empty(String),
    /// Nothing.
    Nothing,
}

/// A tag of the cord.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Step {
    /// Which step.
    pub step: TubStep,
    /// When it happened, or is due.
    pub at: Instant,
    /// How it stands.
    pub standing: Standing,
}

impl Tub {
    /// What it is now.
    pub fn state(&self, now: Instant) -> TubState {
        state(
            Some((self.soak.recipe, self.soak.times)),
            self.soak.air,
            now,
        )
    }

    /// When something is next at it, and how that stands.
    pub fn next(&self, now: Instant) -> (Instant, Standing) {
        match self.state(now) {
            TubState::Empty => (now, Standing::NotKnown),
            TubState::InWater { lift_out, .. } => (lift_out, Standing::Later),
            TubState::LiftOut { due, late, .. } if 0 < late.to_minutes() => (due, Standing::Late),
            TubState::LiftOut { due, .. } => (due, Standing::Due),
            TubState::Draining { drained, .. } => (drained, Standing::Later),
            TubState::Feed { since, .. } => (since, Standing::Due),
            TubState::Fed { throw_away, .. } => (throw_away, Standing::Later),
            TubState::ThrowAway { since, .. } => (since, Standing::Stop),
            TubState::Done { at, .. } => (at, Standing::Done),
        }
    }

    /// The cord: in the water, lift out, drained and fed, throw away.
    pub fn cord(&self, now: Instant) -> [Step; 4] {
        let SoakTimes {
            wetted,
            lifted,
            fed,
            ..
        } = self.soak.times;
        let step = |step, at, standing| Step { step, at, standing };
        let now_is = self.state(now);
        let over = matches!(now_is, TubState::ThrowAway { .. });
        let due = |done: bool, due: bool| match (done, due, over) {
            (true, ..) => Standing::Done,
            (false, true, false) => Standing::Due,
            _ => Standing::Later,
        };
        let lift = match now_is {
            TubState::LiftOut { late, .. } if 0 < late.to_minutes() => Standing::Late,
            _ => due(lifted.is_some(), matches!(now_is, TubState::LiftOut { .. })),
        };
        [
            step(TubStep::InWater, wetted, Standing::Done),
            step(TubStep::LiftOut, lifted.unwrap_or(self.line.lift_out), lift),
            step(
                TubStep::Feed,
                fed.unwrap_or(self.line.drained),
                due(fed.is_some(), matches!(now_is, TubState::Feed { .. })),
            ),
            step(
                TubStep::ThrowAway,
                self.line.throw_away,
                if over {
                    Standing::Stop
                } else {
                    Standing::Later
                },
            ),
        ]
    }

    /// The logged steps whose time can be corrected: the first of each kind.
    pub fn correctable(&self) -> Vec<&Logged> {
        self.steps
            .iter()
            .filter(|step| {
                matches!(
                    step.body.happened,
                    SoakStep::Started { .. } | SoakStep::Lifted { .. } | SoakStep::Fed { .. }
                )
            })
            .collect()
    }
}

/// Steps of a soak, oldest first.
pub(super) fn steps_of(shelf: &Shelf, soak: &RecordId) -> Vec<Logged> {
    let mut steps: Vec<Logged> = shelf
        .bodies(&Kind::SoakStep)
        .into_iter()
        .filter_map(|(record, body)| match body {
            Body::SoakStep(body) if soak_of(record, &body.happened) == *soak => Some(Logged {
                id: record.id.clone(),
                at: record.at,
                body,
            }),
            _ => None,
        })
        .collect();
    steps.sort_by(|a, b| (a.at, &a.id).cmp(&(b.at, &b.id)));
    steps
}

pub(crate) fn soak_of(record: &Record, step: &SoakStep) -> RecordId {
    match step {
        SoakStep::Started { .. } => record.id.clone(),
        SoakStep::Lifted { soak }
        | SoakStep::Drained { soak }
        | SoakStep::Fed { soak }
        | SoakStep::Eaten { soak }
        | SoakStep::ThrownAway { soak }
        | SoakStep::Stopped { soak } => soak.clone(),
    }
}

/// A soak with its deadlines and what to expect of it.
pub fn tub(shelf: &Shelf, soak: &OpenSoak) -> Tub {
    let soaked_for = soak.times.soaked_for(soak.recipe);
    let dry_lost = dry_loss(soaked_for);
    let lost = dry_lost.part.likely;
    Tub {
        lot: shelf.lot_name(&soak.lot),
        line: timeline(soak.recipe, &soak.times, soak.air),
        loss: sugar_loss(soak.recipe.water(), soaked_for, None),
        dry_lost,
        like: soak.hay.and_then(|hay| feeds_like(hay, lost).ok()),
        steps: steps_of(shelf, &soak.id),
        soak: soak.clone(),
    }
}

/// What stands under an address: that of a soak, or of a tub, in which the soak that began last counts.
pub fn seen(shelf: &Shelf, today: &Today, id: &TubId) -> TubSeen {
    let soaks = &today.due.soaks;
    let open = soaks.iter().find(|soak| soak.id.0 == id.0).or_else(|| {
        soaks
            .iter()
            .filter(|soak| soak.tub.as_ref() == Some(id))
            .max_by_key(|soak| soak.times.wetted)
    });
    if let Some(open) = open {
        return TubSeen::Open(Box::new(tub(shelf, open)));
    }
    let soak = RecordId(id.0.clone());
    let steps = steps_of(shelf, &soak);
    let times = soak_times(
        &soak,
        steps
            .iter()
            .map(|step| (&step.id, step.at, &step.body.happened)),
    );
    if let Some((at, how)) = times.and_then(|times| times.ended) {
        return TubSeen::Over(TubState::Done { at, how });
    }
    match shelf
        .get(&id.0)
        .filter(|record| !record.gone)
        .map(Body::read)
    {
        Some(Ok(Body::Tub(body))) => TubSeen::Empty(body.name.as_str().to_owned()),
        _ => TubSeen::Nothing,
    }
}

/// A tub of the yard.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct YardTub {
    /// Its record.
    pub id: TubId,
    /// What it is called.
    pub name: String,
    /// Whether something is in it.
    pub in_use: bool,
}

/// The tubs of the yard, by name.
pub fn yard_tubs(shelf: &Shelf, today: &Today) -> Vec<YardTub> {
    let mut tubs: Vec<YardTub> = shelf
        .bodies(&Kind::Tub)
        .into_iter()
        .filter_map(|(record, body)| match body {
            Body::Tub(body) => {
                let id = TubId(record.id.0.clone());
                let lies_in =
                    |soak: &OpenSoak| soak.tub.as_ref() == Some(&id) && soak.times.lifted.is_none();
                Some(YardTub {
                    in_use: today.due.soaks.iter().any(lies_in),
                    name: body.name.as_str().to_owned(),
                    id,
                })
            }
            _ => None,
        })
        .collect();
    tubs.sort_by(|a, b| (a.name.len(), &a.name, &a.id).cmp(&(b.name.len(), &b.name, &b.id)));
    tubs
}

/// What went into a soak, when its start is on the shelf.
pub fn start_of(shelf: &Shelf, soak: &RecordId) -> Option<SoakStart> {
    match Body::read(shelf.get(&soak.0)?) {
        Ok(Body::SoakStep(SoakStepV1 {
            happened: SoakStep::Started { start },
            ..
        })) => Some(start),
        _ => None,
    }
}

/// The lots that hay to soak may come from: everything but haylage, by name.
pub fn lots(shelf: &Shelf) -> Vec<(LotId, String)> {
    let mut lots: Vec<(LotId, String)> = shelf
        .bodies(&Kind::Lot)
        .into_iter()
        .filter_map(|(record, body)| match body {
            Body::Lot(body) if body.class.kind() != tussock_core::forage::ForageKind::Haylage => {
                Some((LotId(record.id.0.clone()), body.name.as_str().to_owned()))
            }
            _ => None,
        })
        .collect();
    lots.sort_by(|a, b| (a.1.to_lowercase(), &a.0).cmp(&(b.1.to_lowercase(), &b.0)));
    lots
}

/// Somebody a soak may be for, and what is planned for it.
#[derive(Clone, Debug, PartialEq)]
pub struct Wanted {
    /// A key that tells it from the others.
    pub key: String,
    /// What the record is about.
    pub about: About,
    /// The name; empty for the whole yard.
    pub name: String,
    /// The job, when one is planned.
    pub job: Option<Key>,
    /// The day and the visit its hay is hung at.
    pub visit: Option<(LocalDate, LocalTime)>,
    /// The lot that is planned.
    pub lot: Option<LotId>,
    /// How much.
    pub amount: Option<AsFed>,
    /// Water and time as planned.
    pub recipe: Option<Recipe>,
}

/// For whom a soak may be: what is planned first, then the animals, the groups and the yard.
pub fn wanted(shelf: &Shelf, today: &Today, yard: &About) -> Vec<Wanted> {
    let planned = today
        .round
        .jobs
        .iter()
        .filter(|job| job.kind == JobKind::StartSoak)
        .map(|job| Wanted {
            key: job.key.to_string(),
            about: about(&job.subject),
            name: job.name.clone(),
            visit: job.visit.map(|visit| (visit.day, visit.time)),
            lot: job.lot.clone(),
            amount: job.amount,
            recipe: plan_on(
                today,
                job.subject.parts().1,
                job.visit.map_or(today.day, |visit| visit.day),
            )
            .and_then(|plan| plan.recipe),
            job: Some(job.key.clone()),
        });
    let plain = |about: About, name: String| Wanted {
        key: about.to_string(),
        about,
        name,
        job: None,
        visit: None,
        lot: None,
        amount: None,
        recipe: None,
    };
    let animals = shelf
        .animals()
        .into_iter()
        .map(|animal| plain(About::animal(&animal.id), animal.name));
    let groups = shelf
        .groups()
        .into_iter()
        .map(|group| plain(About::group(&group.id), group.name));
    planned
        .chain(animals)
        .chain(groups)
        .chain([plain(yard.clone(), String::new())])
        .collect()
}
