//! A net of the day that was to be soaked and is hung dry.

use super::DayNet;
use crate::views::filled::Filling;
use crate::views::round::Today;
use tussock_core::round::Key;
use tussock_core::soak::NotSoaked;
use tussock_core::units::AsFed;

/// What is known of a net that is not soaked today.
#[derive(Clone, Debug, PartialEq)]
pub struct DryNet {
    /// Why.
    pub why: NotSoaked,
    /// The filling that was weighed to be soaked, out of which some is taken.
    pub weighed: Option<Filling>,
}

impl DayNet {
    /// What to take out of a net that was weighed to be soaked; `None` where nothing is to be taken out.
    pub fn take_out(&self) -> Option<AsFed> {
        let weighed = self.dry.as_ref()?.weighed.as_ref()?;
        let over = weighed.hay - self.hay;
        (AsFed::ZERO < over).then_some(over)
    }
}

/// The hay a net should hold, and what is known of it when it is hung dry; `planned` before soaking otherwise.
pub(super) fn of(today: &Today, key: &Key, planned: AsFed) -> (AsFed, Option<DryNet>) {
    let job = today.job(key);
    let dry = job.and_then(|job| {
        let why = job.not_soaked?;
        Some((job.amount?, DryNet { why, weighed: None }))
    });
    match dry {
        Some((lighter, dry)) => (lighter, Some(dry)),
        None => (planned, None),
    }
}
