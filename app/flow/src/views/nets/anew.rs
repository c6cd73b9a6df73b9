//! A net of a day that was laid out anew.

use super::{DayNet, NetState};
use crate::views::filled::Filling;
use tussock_core::day::published::SCALE_WITHIN;
use tussock_core::round::IssuedPlan;
use tussock_core::units::{AsFed, LocalDate};

/// What is known of a net that hangs otherwise than planned.
#[derive(Clone, Debug, PartialEq)]
pub struct AnewNet {
    /// The hay that the plan has in it; nothing where the plan hangs none.
    pub planned: AsFed,
    /// What it hangs less, for it was at grass today.
    pub less_for_grass: Option<AsFed>,
    /// The filling that was weighed for the plan. It stays what it is until it is weighed anew.
    pub weighed: Option<Filling>,
}

/// Hay to take out of a net, or to put in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Mending {
    /// So much.
    TakeOut(AsFed),
    /// So much.
    PutIn(AsFed),
}

impl DayNet {
    /// What was weighed for it before it was to hold something else, and is filled already.
    pub fn weighed_before(&self) -> Option<&Filling> {
        let dry = self.dry.as_ref().and_then(|dry| dry.weighed.as_ref());
        dry.or_else(|| self.anew.as_ref()?.weighed.as_ref())
    }

    /// What to take out of a net that was weighed for the plan, or put in, for the rest of the day as it was laid out
    /// anew; `None` where it is filled as it hangs, or was not filled.
    pub fn mending(&self) -> Option<Mending> {
        if self.state != NetState::ToWeigh {
            return None;
        }
        let weighed = self.anew.as_ref()?.weighed.as_ref()?;
        Some(if self.hay < weighed.hay {
            Mending::TakeOut(weighed.hay - self.hay)
        } else {
            Mending::PutIn(self.hay - weighed.hay)
        })
    }
}

/// A net of a day by its place in the day's list; `None` where it hangs as planned.
pub(super) fn of(plan: &IssuedPlan, day: LocalDate, index: usize) -> Option<AnewNet> {
    let net = plan.nets_on(day).get(index)?;
    let planned = plan.nets.get(index).map_or(AsFed::ZERO, |net| net.hay);
    let apart = (net.hay.to_kg() - planned.to_kg()).abs();
    (*SCALE_WITHIN < apart).then_some(AnewNet {
        planned,
        less_for_grass: net.less_for_grass,
        weighed: None,
    })
}
