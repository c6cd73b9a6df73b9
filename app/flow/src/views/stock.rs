//! The stock of hay: what is left of each lot, how long it lasts, who eats it, what it costs, what to watch in store.

mod cost;
mod gone;

pub use gone::needs;

use crate::shelf::Shelf;
use crate::views::hay;
use crate::views::nets::plan_on;
use crate::views::round::Today;
use crate::views::shed::{LotRow, Standing};
use gone::{Gone, gone};
use tussock_core::animal::LotId;
use tussock_core::forage::{
    BaleWeight, CostBand, DailyUse, HeatVerdict, Held, HowKnown, Lasting, Left, Lot,
    MoistureVerdict, NoStock, Rod, Sampled, StoredBadly, WeighedOut, bale_weight, daily_use,
    judge_moisture, lasting, left, sampled, watch_until,
};
use tussock_core::log::{Body, Kind, Record};
use tussock_core::round::Subject;
use tussock_core::units::{AsFed, Instant, LocalDate, Zone};

/// From when on it is reckoned what went.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Since {
    /// From what was bought.
    Bought,
    /// From what was counted on a day.
    Counted(LocalDate),
}

/// Why the stock of a lot is not known.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Unknown {
    /// It cannot be reckoned from what was said.
    Stock(NoStock),
    /// It was bought or counted so long ago that what went since is not read any more.
    TooLongAgo,
}

/// An animal or group whose plan feeds a lot.
#[derive(Clone, Debug, PartialEq)]
pub struct Eater {
    /// Whose plan.
    pub subject: Subject,
    /// The name.
    pub name: String,
    /// How much a day, as fed.
    pub a_day: AsFed,
    /// How much of that is soaked.
    pub soaked: AsFed,
}

/// The stock of a lot.
#[derive(Clone, Debug, PartialEq)]
pub struct Stock {
    /// Which lot.
    pub id: LotId,
    /// From when on it is reckoned; `None` when nobody said how much there was.
    pub since: Option<Since>,
    /// What there was then.
    pub start: Option<Held>,
    /// What was weighed out since.
    pub out: WeighedOut,
    /// What is left, or why nobody knows it.
    pub left: Result<Left, Unknown>,
    /// What a bale weighs; `None` while nobody knows.
    pub bale: Option<BaleWeight>,
    /// What a slice weighs; `None` while none was weighed.
    pub slice: Option<Sampled>,
    /// Who eats it.
    pub eaters: Vec<Eater>,
    /// What goes in a day; `None` when nothing does.
    pub a_day: Option<DailyUse>,
    /// How long it lasts; `None` when that is not known.
    pub lasting: Option<Lasting>,
    /// What it costs as it is eaten; `None` while that is not known.
    pub cost: Option<CostBand>,
    /// Whole days on which a plan fed it and nothing was written down.
    pub not_logged: i64,
}

impl Stock {
    /// Whether it should be ordered today at the latest.
    pub fn order_now(&self, today: LocalDate) -> bool {
        let mut lasting = self.lasting.iter();
        lasting.any(|lasting| lasting.order_by <= today)
    }
}

/// A lot as a row of the shed: the sugar, and the stock where the lot can be read.
#[derive(Clone, Debug, PartialEq)]
pub struct StockRow {
    /// The lot and its sugar.
    pub lot: LotRow,
    /// Its stock.
    pub stock: Option<Stock>,
    /// It should be ordered today at the latest.
    pub order_now: bool,
}

impl StockRow {
    /// How the row stands.
    pub fn standing(&self) -> Standing {
        if self.order_now {
            Standing::Care
        } else {
            self.lot.standing()
        }
    }
}

/// The lots as rows, by name.
pub fn rows(shelf: &Shelf, today: &Today, zone: &impl Zone) -> Vec<StockRow> {
    let gone = gone(shelf, today.now, zone);
    hay::rows(shelf)
        .into_iter()
        .map(|lot| {
            let stock = shelf
                .get(lot.id.as_str())
                .and_then(|record| of_record(shelf, today, &gone, record, zone));
            StockRow {
                order_now: stock
                    .as_ref()
                    .is_some_and(|stock| stock.order_now(today.day)),
                lot,
                stock,
            }
        })
        .collect()
}

/// The stock of a lot; `None` when it is not there or cannot be read.
pub fn stock(shelf: &Shelf, today: &Today, id: &LotId, zone: &impl Zone) -> Option<Stock> {
    let record = shelf.get(id.as_str()).filter(|record| !record.gone)?;
    of_record(shelf, today, &gone(shelf, today.now, zone), record, zone)
}

fn of_record(
    shelf: &Shelf,
    today: &Today,
    gone: &Gone,
    record: &Record,
    zone: &impl Zone,
) -> Option<Stock> {
    let Ok(Body::Lot(body)) = Body::read(record) else {
        return None;
    };
    let (lot, _) = body.lot(&record.id).ok()?;
    let bale = bale_weight(sampled(&lot.delivery.bales).as_ref(), body.bale_said());
    let (since, start, from) = start(shelf, record, &lot, zone);
    let mut out = WeighedOut::default();
    let mut days: Vec<(LocalDate, AsFed)> = Vec::new();
    for went in gone.of(&lot.id).filter(|went| from < went.at) {
        out = out.and(went.amount, went.known);
        if let Some(amount) = went.amount {
            days.push((went.day, amount));
        }
    }
    let eaters = eaters(today, &lot.id);
    let planned: AsFed = eaters.iter().map(|eater| eater.a_day).sum();
    let a_day = daily_use(planned, &days, today.day);
    let left = if since.is_some() && !gone.reaches(from) {
        Err(Unknown::TooLongAgo)
    } else {
        left(start, bale.as_ref(), &out).map_err(Unknown::Stock)
    };
    let lasting = match (&left, &a_day) {
        (Ok(left), Some(used)) => lasting(left.mass, used.a_day, today.day, lot.delivery.lead_days),
        _ => None,
    };
    Some(Stock {
        cost: cost::cost(today, &lot, bale.as_ref(), &eaters),
        slice: sampled(&lot.delivery.slices),
        not_logged: not_logged(today, &lot.id, &days, zone.to_local(from).date),
        id: lot.id,
        since,
        start,
        out,
        left,
        bale,
        eaters,
        a_day,
        lasting,
    })
}

/// What there was, and when: as it was counted last, else as it was bought.
fn start(
    shelf: &Shelf,
    record: &Record,
    lot: &Lot,
    zone: &impl Zone,
) -> (Option<Since>, Option<Held>, Instant) {
    let Some(counted) = shelf.newest(&Kind::LotCount, lot.id.as_str()) else {
        let bought = lot.delivery.bought;
        return (bought.map(|_| Since::Bought), bought, record.at);
    };
    // A count that cannot be read says nothing, and what was bought before it says nothing any more.
    let Ok(Body::LotCount(body)) = Body::read(counted) else {
        return (None, None, record.at);
    };
    let day = zone.to_local(counted.at).date;
    let since = Since::Counted(day);
    (Some(since), Some(body.left.held()), counted.at)
}

/// Whose plans feed a lot today, by name.
pub fn eaters(today: &Today, lot: &LotId) -> Vec<Eater> {
    let mut found: Vec<Eater> = Vec::new();
    for plan in &today.due.plans {
        let id = plan.subject.parts().1;
        let Some(plan) = plan_on(today, id, today.day) else {
            continue;
        };
        if found.iter().any(|eater| eater.subject == plan.subject) {
            continue;
        }
        let of_lot = || plan.nets.iter().filter(|net| net.lot == *lot);
        let a_day: AsFed = of_lot().map(|net| net.hay).sum();
        if AsFed::ZERO < a_day {
            found.push(Eater {
                subject: plan.subject.clone(),
                name: plan.name.clone(),
                a_day,
                soaked: of_lot().filter(|net| net.soaked).map(|net| net.hay).sum(),
            });
        }
    }
    found.sort_by(|a, b| a.name.cmp(&b.name));
    found
}

/// Whole days before today on which a plan fed the lot and nothing of it was written down.
fn not_logged(today: &Today, lot: &LotId, days: &[(LocalDate, AsFed)], from: LocalDate) -> i64 {
    let opened = |subject: &Subject| {
        let mut instead = today.due.instead.iter();
        instead
            .find(|(of, instead)| of == subject && instead.lot == *lot)
            .map(|(_, instead)| instead.since)
    };
    let first = today
        .due
        .plans
        .iter()
        .filter(|plan| plan.nets.iter().any(|net| net.lot == *lot))
        .filter(|plan| {
            let id = plan.subject.parts().1;
            plan_on(today, id, today.day) == Some(*plan)
        })
        .map(|plan| opened(&plan.subject).map_or(plan.from, |since| since.max(plan.from)))
        .min();
    let (Some(first), Some(next)) = (first, from.succ_opt()) else {
        return 0;
    };
    // On the day of a count nobody can say what went before it and what after.
    let fed = first
        .max(next)
        .iter_days()
        .take_while(|day| *day < today.day);
    let silent = fed.filter(|day| !days.iter().any(|(written, _)| written == day));
    i64::try_from(silent.count()).unwrap_or(i64::MAX)
}

/// What to watch in store.
#[derive(Clone, Debug, PartialEq)]
pub enum StorageNote {
    /// Its moisture as it was baled or bought.
    Moisture {
        /// In percent.
        percent: f64,
        /// How that stands.
        verdict: MoistureVerdict,
    },
    /// The heat of the stack when a rod last stood in it.
    Heat {
        /// The day.
        on: LocalDate,
        /// What the rod said.
        rod: Rod,
        /// What it asks for.
        verdict: HeatVerdict,
    },
    /// New hay is watched for heat until a day.
    WatchHeat {
        /// The last day.
        until: LocalDate,
        /// Nobody said when it was baled: the day it was bought stands in.
        by_purchase: bool,
    },
    /// How it is stored spoils it.
    Stored(StoredBadly),
}

/// What to watch in store, the most urgent first.
pub fn storage(lot: &Lot, today: LocalDate) -> Vec<StorageNote> {
    let delivery = &lot.delivery;
    let mut notes = Vec::new();
    let last = delivery.heat.iter().max_by_key(|(on, _)| *on);
    if let Some((on, rod)) = last
        && let Ok(verdict) = rod.judge()
    {
        notes.push(StorageNote::Heat {
            on: *on,
            rod: *rod,
            verdict,
        });
    }
    let loose = matches!(delivery.bought, Some(Held::Weight(_))) && delivery.bale.is_none();
    if let Some(percent) = delivery.moisture
        && let Ok(verdict) = judge_moisture(percent, delivery.bale, loose)
    {
        notes.push(StorageNote::Moisture { percent, verdict });
    }
    if let Some(until) = watch_until(delivery.baled_on, lot.bought_on)
        && today <= until
    {
        notes.push(StorageNote::WatchHeat {
            until,
            by_purchase: delivery.baled_on.is_none(),
        });
    }
    notes.extend(delivery.stored.iter().copied().map(StorageNote::Stored));
    notes
}

/// How an amount is known, as it was logged: what nobody knows counts as no amount.
const fn known(known: tussock_core::log::Known) -> Option<HowKnown> {
    match known {
        tussock_core::log::Known::Seen => Some(HowKnown::Seen),
        tussock_core::log::Known::Assumed => Some(HowKnown::Assumed),
        tussock_core::log::Known::NotKnown => None,
    }
}
