//! The nets of a day with grass, from those of one without.

use super::daily::visits;
use super::input::{Answered, DayAnew, IssuedPlan, OpenSoak, PlannedNet};
use super::key::{JobKind, Key, Slot};
use super::state::at;
use crate::animal::LotId;
use crate::day::published::SCALE_STEP;
use crate::units::show::step_down;
use crate::units::{AsFed, DryMatter, Instant, LocalDate, Zone};

/// What a day's nets are made lighter from.
#[derive(Clone, Copy, Debug)]
pub struct LighterFor<'a, Z> {
    /// The zone of the yard.
    pub zone: &'a Z,
    /// The plan.
    pub plan: &'a IssuedPlan,
    /// The day.
    pub day: LocalDate,
    /// When those who eat of it came in from grass.
    pub came_in: Instant,
    /// The dry matter of hay that the grass takes the place of.
    pub dry: DryMatter,
    /// The soaks that are open.
    pub soaks: &'a [OpenSoak],
    /// The answers.
    pub answered: &'a [Answered],
}

/// The nets of the day, those lighter that were still to come when they came in; `None` when none is, for too little was
/// eaten to show on a scale, or the dry part of a net is not known.
///
/// A net whose visit has passed, that hangs, is filled or lies in the water by then keeps its hay. Each gives way in
/// proportion, by whole steps of the scale and never by more in all than `dry`; none by more than half of what the plan
/// hangs in it, for it may be the longest wait that it carries. `part` is the dry matter eaten of a kilogram of a net, by
/// its place in the day and its lot.
pub fn lighter<Z: Zone>(
    of: &LighterFor<'_, Z>,
    part: impl Fn(usize, &LotId) -> Option<f64>,
) -> Option<DayAnew> {
    let mut nets = of.plan.nets_on(of.day).to_vec();
    let mut open: Vec<(usize, f64)> = Vec::new();
    for (index, net) in nets.iter().enumerate() {
        if of.is_to_come(&nets, index, net) {
            let part = part(index, &net.lot).filter(|part| 0.0 < *part)?;
            open.push((index, part));
        }
    }
    let dry_of = |nets: &[PlannedNet], index: usize, part: f64| {
        nets.get(index).map_or(0.0, |net| net.hay.to_kg() * part)
    };
    let all: f64 = open
        .iter()
        .map(|(index, part)| dry_of(&nets, *index, *part))
        .sum();
    if all <= 0.0 {
        return None;
    }
    let step = AsFed::kg(*SCALE_STEP);
    let share = of.dry.to_kg() / all;
    let mut left = of.dry.to_kg();
    for (index, part) in &open {
        let Some(net) = nets.get_mut(*index) else {
            continue;
        };
        let less = step_down((net.hay * share).min(can_give(net)), step);
        left -= less.to_kg() * part;
        take(net, less);
    }
    // What rounding left goes off one step after another.
    loop {
        let mut taken = false;
        for (index, part) in &open {
            let a_step = step.to_kg() * part;
            if let Some(net) = nets.get_mut(*index)
                && a_step <= left
                && step <= can_give(net)
            {
                take(net, step);
                left -= a_step;
                taken = true;
            }
        }
        if !taken {
            break;
        }
    }
    let changed = nets.as_slice() != of.plan.nets_on(of.day);
    changed.then_some(DayAnew { day: of.day, nets })
}

/// What a net can still give: to half of what hangs in it on a day without grass.
fn can_give(net: &PlannedNet) -> AsFed {
    let less = net.less_for_grass.unwrap_or(AsFed::ZERO);
    ((net.hay + less) / 2.0 - less).max(AsFed::ZERO)
}

fn take(net: &mut PlannedNet, less: AsFed) {
    if AsFed::ZERO < less {
        net.hay = net.hay - less;
        net.less_for_grass = Some(net.less_for_grass.unwrap_or(AsFed::ZERO) + less);
    }
}

impl<Z: Zone> LighterFor<'_, Z> {
    /// Whether a net was still to be filled, soaked and hung when they came in.
    fn is_to_come(&self, nets: &[PlannedNet], index: usize, net: &PlannedNet) -> bool {
        if net.hay <= AsFed::ZERO || at(self.zone, self.day, net.visit) <= self.came_in {
            return false;
        }
        let Some(number) = (1..)
            .zip(visits(self.plan))
            .find_map(|(number, time)| (time == net.visit).then_some(number))
        else {
            return false;
        };
        let nth = nets
            .iter()
            .take(index)
            .filter(|other| other.visit == net.visit)
            .count();
        let key = |kind, nth| Key::Day {
            kind,
            subject: self.plan.subject.clone(),
            day: self.day,
            slot: Slot { visit: number, nth },
        };
        let nth = u32::try_from(nth).unwrap_or(u32::MAX).saturating_add(1);
        let (start, hang) = (key(JobKind::StartSoak, 0), key(JobKind::HangNet, nth));
        let done = |answer: &Answered| answer.key == hang && answer.at <= self.came_in;
        let in_water = |soak: &OpenSoak| {
            soak.times.wetted <= self.came_in
                && soak.times.ended.is_none()
                && soak.holds(&start, &hang)
        };
        !self.answered.iter().any(done) && !self.soaks.iter().any(in_water)
    }
}
