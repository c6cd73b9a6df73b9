//! What a plan asks of a day, place by place: the same places that its jobs have.

use super::daily::visits;
use super::input::IssuedPlan;
use super::key::{JobKind, Slot};
use crate::animal::{FoodId, LotId};
use crate::units::{AsFed, LocalTime};
use std::collections::BTreeMap;

/// A net or a feed of a plan's day.
#[derive(Clone, Debug, PartialEq)]
pub struct PlanSlot {
    /// [`JobKind::HangNet`] or [`JobKind::FeedBalancer`].
    pub kind: JobKind,
    /// Its place, as in the key of its job.
    pub slot: Slot,
    /// The visit.
    pub time: LocalTime,
    /// How much, before soaking and without the net.
    pub amount: AsFed,
    /// The lot, of a net.
    pub lot: Option<LotId>,
    /// The food, of a feed; `None` for a typical balancer.
    pub food: Option<FoodId>,
    /// Whether it is soaked.
    pub soaked: bool,
}

/// The nets and feeds of a plan's day, nets first.
pub fn slots(plan: &IssuedPlan) -> Vec<PlanSlot> {
    let visits = visits(plan);
    let mut found = Vec::new();
    for (visit, time) in (1..).zip(&visits) {
        let nets = plan.nets.iter().filter(|net| net.visit == *time);
        found.extend((1..).zip(nets).map(|(nth, net)| PlanSlot {
            kind: JobKind::HangNet,
            slot: Slot { visit, nth },
            time: *time,
            amount: net.hay,
            lot: Some(net.lot.clone()),
            food: None,
            soaked: net.soaked,
        }));
    }
    // From the first visit to the last. Where there are more feeds than visits, a visit has two, to be given apart.
    let mut given: BTreeMap<usize, u32> = BTreeMap::new();
    for feed in &plan.feeds {
        // No animal is fed from a bucket more often.
        let feeds = feed.feeds.unwrap_or(1).clamp(1, 10);
        for index in 0..feeds {
            let place = spread(index as usize, feeds as usize, visits.len());
            let Some(time) = visits.get(place) else {
                continue;
            };
            let nth = given.entry(place).or_default();
            *nth += 1;
            let visit = u32::try_from(place).unwrap_or(u32::MAX).saturating_add(1);
            found.push(PlanSlot {
                kind: JobKind::FeedBalancer,
                slot: Slot { visit, nth: *nth },
                time: *time,
                amount: feed.a_day * (1.0 / f64::from(feeds)),
                lot: None,
                food: feed.food.clone(),
                soaked: false,
            });
        }
    }
    found
}

/// At which of `visits` visits feed `index` of `feeds` is given: the first at the first, the last at the last.
fn spread(index: usize, feeds: usize, visits: usize) -> usize {
    match feeds.saturating_sub(1) {
        0 => 0,
        gaps => (index * visits.saturating_sub(1) + gaps / 2) / gaps,
    }
}
