//! Weighing the nets of a day: which nets, what each should read, and which are filled.
//!
//! What was filled before and is not hung fills the day's nets: see [`filled`](super::filled).

mod anew;
mod dry;
mod own;
mod pass;

pub use anew::{AnewNet, Mending};
pub use dry::DryNet;
pub use own::{Own, OwnFrom, YardNet, yard_nets};
pub use pass::{Pass, pass, subjects};

use crate::shelf::Shelf;
use crate::views::changeover::stands_for;
use crate::views::filled::{Filling, Stock, fitting, stock};
use crate::views::round::{Today, about};
use own::own;
use std::collections::BTreeMap;
use tussock_core::animal::LotId;
use tussock_core::day::{OnScale, on_scale, reading_for};
use tussock_core::log::{Body, Kind, Subject as About};
use tussock_core::round::{IssuedPlan, JobKind, Key, Slot};
use tussock_core::units::{AsFed, LocalDate, LocalTime};

/// How far the picture of the scale reaches either way of the target, in kilograms.
const ZOOM_KG: f64 = 0.6;

/// Where a net of the day stands.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum NetState {
    /// To be weighed.
    ToWeigh,
    /// Filled, with so much hay.
    Weighed(AsFed),
    /// Hung or past, and nobody weighed it.
    Past,
}

/// A net of the day.
#[derive(Clone, Debug, PartialEq)]
pub struct DayNet {
    /// The job of hanging it: what it is called.
    pub key: Key,
    /// When it is hung.
    pub visit: LocalTime,
    /// The lot.
    pub lot: LotId,
    /// The hay it should hold, before soaking.
    pub hay: AsFed,
    /// It is soaked after weighing.
    pub soaked: bool,
    /// Its own weight.
    pub own: Own,
    /// What a slice of its hay weighs, where somebody weighed some.
    pub slice: Option<AsFed>,
    /// It was to be soaked and is not.
    pub dry: Option<DryNet>,
    /// It hangs otherwise than planned, for the day was laid out anew.
    pub anew: Option<AnewNet>,
    /// Where it stands.
    pub state: NetState,
}

impl DayNet {
    /// What the scale should read.
    pub fn target(&self) -> AsFed {
        reading_for(self.hay, self.own.weight)
    }

    /// How a reading stands to it.
    pub fn judge(&self, reading: AsFed) -> OnScale {
        on_scale(reading, self.hay, self.own.weight)
    }

    /// Where a reading hangs on the picture: -1 at the light end, 0 at the target, 1 at the heavy end.
    pub fn place(&self, reading: AsFed) -> f64 {
        ((reading - self.target()).to_kg() / ZOOM_KG).clamp(-1.0, 1.0)
    }

    /// The ends of the picture.
    pub fn ends(&self) -> [AsFed; 2] {
        let reach = AsFed::kg(ZOOM_KG);
        [
            (self.target() - reach).max(AsFed::ZERO),
            self.target() + reach,
        ]
    }

    /// Half the width of what is within, as a part of one side of the picture.
    pub fn tolerance() -> f64 {
        *tussock_core::day::published::SCALE_WITHIN / ZOOM_KG
    }
}

/// The nets of a subject's day.
#[derive(Clone, Debug, PartialEq)]
pub struct NetsDay {
    /// For whom.
    pub about: About,
    /// The name of that animal or group.
    pub name: String,
    /// The day.
    pub day: LocalDate,
    /// The nets, in the order of the day.
    pub nets: Vec<DayNet>,
}

impl NetsDay {
    /// The next net to weigh, with its number from 1.
    pub fn next(&self) -> Option<(usize, &DayNet)> {
        (1..)
            .zip(&self.nets)
            .find(|(_, net)| net.state == NetState::ToWeigh)
    }

    /// How many are to be weighed.
    pub fn to_weigh(&self) -> usize {
        self.nets
            .iter()
            .filter(|net| net.state == NetState::ToWeigh)
            .count()
    }

    /// How many were weighed.
    pub fn weighed(&self) -> usize {
        self.nets
            .iter()
            .filter(|net| matches!(net.state, NetState::Weighed(_)))
            .count()
    }

    /// Whether every net of the day was weighed: a net that is past and was not is no filled one.
    pub fn all_weighed(&self) -> bool {
        self.weighed() == self.nets.len()
    }

    /// The hay that was weighed, and that of the day.
    pub fn hay(&self) -> [AsFed; 2] {
        let weighed = self.nets.iter().filter_map(|net| match net.state {
            NetState::Weighed(hay) => Some(hay),
            NetState::ToWeigh | NetState::Past => None,
        });
        [weighed.sum(), self.nets.iter().map(|net| net.hay).sum()]
    }
}

/// The plan of a subject that holds on a day: of those from that day or before that do not rest on it, the one issued last.
pub fn plan_on<'a>(today: &'a Today, id: &str, day: LocalDate) -> Option<&'a IssuedPlan> {
    today
        .due
        .plans
        .iter()
        .filter(|plan| plan.subject.parts().1 == id && plan.feeds_on(day) && !plan.part)
        .max_by_key(|plan| plan.issued)
}

/// The nets of a subject on today or a day to come; `None` without a plan or without nets in it.
pub fn nets_day(shelf: &Shelf, today: &Today, id: &str, day: LocalDate) -> Option<NetsDay> {
    nets_days(shelf, today, id, day)
        .into_iter()
        .find(|found| found.day == day)
}

/// The nets of a subject from today to a day to come, a day each; days without nets are left out. What is in stock fills
/// the nets of a day before those of a later one.
pub fn nets_days(shelf: &Shelf, today: &Today, id: &str, to: LocalDate) -> Vec<NetsDay> {
    let yard = yard_nets(shelf);
    let slices = slices(shelf);
    let mut held: Option<Stock> = None;
    let mut found = Vec::new();
    for day in today.day.iter_days().take_while(|day| *day <= to) {
        let Some(plan) = plan_on(today, id, day).filter(|plan| !plan.nets.is_empty()) else {
            continue;
        };
        let about = about(&plan.subject);
        let Stock { hung, left } = held.get_or_insert_with(|| stock(shelf, &about));
        found.push(NetsDay {
            about,
            name: plan.name.clone(),
            day,
            nets: of_day(today, plan, day, hung, left, &yard, &slices),
        });
    }
    found
}

/// What a slice of each lot weighs, where somebody weighed some.
fn slices(shelf: &Shelf) -> BTreeMap<LotId, AsFed> {
    shelf
        .bodies(&Kind::Lot)
        .into_iter()
        .filter_map(|(record, body)| match body {
            Body::Lot(body) => {
                let slice = body.slice?.g.as_fed();
                (AsFed::ZERO < slice).then(|| (LotId(record.id.0.clone()), slice))
            }
            _ => None,
        })
        .collect()
}

fn of_day(
    today: &Today,
    plan: &IssuedPlan,
    day: LocalDate,
    hung: &BTreeMap<Key, Filling>,
    left: &mut Vec<Filling>,
    yard: &[YardNet],
    slices: &BTreeMap<LotId, AsFed>,
) -> Vec<DayNet> {
    let mut visits = plan.visits.clone();
    visits.extend(plan.nets.iter().map(|net| net.visit));
    visits.sort_unstable();
    visits.dedup();
    let subject = about(&plan.subject);
    let mut nets: Vec<DayNet> = Vec::new();
    for (visit, time) in (1..).zip(visits) {
        let of_visit = plan.nets_on(day).iter().enumerate();
        let of_visit = of_visit.filter(|(_, net)| net.visit == time);
        for (nth, (index, net)) in (1..).zip(of_visit) {
            if net.hay <= AsFed::ZERO {
                continue;
            }
            let key = Key::Day {
                kind: JobKind::HangNet,
                subject: plan.subject.clone(),
                day,
                slot: Slot { visit, nth },
            };
            let open = today.day < day || today.job(&key).is_some();
            let (mut hay, mut dry) = dry::of(today, &key, net.hay);
            let mut anew = anew::of(plan, day, index);
            let mut lot = net.lot.clone();
            let in_stock = || fitting(left, &net.lot, hay);
            // One that was filled before another hay was opened is filled.
            let from_old = || {
                stands_for(today, &plan.subject, &net.lot)
                    .find_map(|instead| fitting(left, &instead.of, instead.was(hay)))
            };
            let state = if let Some(filling) = hung.get(&key) {
                NetState::Weighed(filling.hay)
            } else if !open {
                NetState::Past
            } else if let Some(index) = in_stock().or_else(from_old) {
                let filling = left.remove(index);
                if filling.lot != lot {
                    (lot, hay) = (filling.lot, filling.target);
                }
                NetState::Weighed(filling.hay)
            } else {
                // It was weighed to be soaked: some of that is taken out.
                if let (Some(dry), Some(index)) = (&mut dry, fitting(left, &net.lot, net.hay)) {
                    dry.weighed = Some(left.remove(index));
                }
                // It was weighed for the plan: some of that is taken out, or some put in.
                if let (Some(anew), None) = (&mut anew, &dry)
                    && let Some(index) = fitting(left, &net.lot, anew.planned)
                {
                    anew.weighed = Some(left.remove(index));
                }
                NetState::ToWeigh
            };
            nets.push(DayNet {
                key,
                visit: time,
                lot,
                hay,
                soaked: net.soaked && dry.is_none(),
                dry,
                anew,
                own: own(yard, net.net.as_ref(), &subject, nets.len() + 1),
                slice: slices.get(&net.lot).copied(),
                state,
            });
        }
    }
    nets
}
