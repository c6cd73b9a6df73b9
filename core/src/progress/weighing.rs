//! What the trend is made from: weighings with who took them, and what changed under them.

use super::published::{PERSON_OFFSET, SCALE_OFFSET, SETTLES_IN, TAPE_SCATTER};
use crate::animal::PersonId;
use crate::assess::{WeightEstimate, WeightMethod};
use crate::sources::RecordId;
use crate::units::{BodyMass, LocalDate};
use chrono::Days;

/// A weighing.
#[derive(Clone, Debug, PartialEq)]
pub struct Weighing {
    /// The day.
    pub day: LocalDate,
    /// The weight with the band of its method.
    pub weight: WeightEstimate,
    /// Who held the tape or read the scale, when somebody said who.
    pub by: Option<PersonId>,
    /// The record.
    pub record: RecordId,
}

/// What fills the gut otherwise than before.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum GutFill {
    /// The first plan: what it ate before is not known.
    FirstPlan,
    /// Off the grass, onto hay.
    GrassToHay,
    /// Off hay, onto the grass.
    HayToGrass,
    /// Straw came in or went out.
    Straw,
    /// Soaking began or ended.
    Soaking,
    /// Box rest began or ended.
    BoxRest,
    /// It travelled.
    Transport,
}

/// What changed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Change {
    /// The fill of the gut: the level may jump, the rate may not.
    GutFill(GutFill),
    /// The amounts of the plan: the rate may change.
    Amounts,
}

/// What changed, and on which day.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct DatedChange {
    /// The first day of it.
    pub day: LocalDate,
    /// What.
    pub change: Change,
}

impl DatedChange {
    /// The day on which the gut has settled after it; none when it moves no fill of the gut, or past the calendar's end.
    pub fn settled(&self) -> Option<LocalDate> {
        match self.change {
            Change::GutFill(_) => after(self.day, *SETTLES_IN),
            Change::Amounts => None,
        }
    }
}

/// A day so many days later; none past the calendar's end.
pub(super) fn after(day: LocalDate, days: i64) -> Option<LocalDate> {
    day.checked_add_days(Days::new(u64::try_from(days).ok()?))
}

/// A day so many days earlier; the calendar's first day before its start.
pub(super) fn before(day: LocalDate, days: i64) -> LocalDate {
    let days = u64::try_from(days).unwrap_or_default();
    day.checked_sub_days(Days::new(days))
        .unwrap_or(LocalDate::MIN)
}

/// What stands apart from the truth for good: an instrument, or a pair of hands.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Offset {
    Method(WeightMethod),
    Person(Option<PersonId>),
}

impl Weighing {
    /// How far readings of this kind scatter: a standard deviation in kilograms, for an animal of about `size`.
    pub(super) fn scatter(&self, size: BodyMass) -> BodyMass {
        if self.weight.is_scale() {
            self.deviation(size)
        } else {
            size * (*TAPE_SCATTER / 100.0)
        }
    }

    /// What it may stand off by for good, each with its standard deviation.
    pub(super) fn offsets(&self, size: BodyMass) -> Vec<(Offset, BodyMass)> {
        let method = Offset::Method(self.weight.method);
        if self.weight.is_scale() {
            return vec![(method, size * (*SCALE_OFFSET / 100.0))];
        }
        vec![
            (method, self.deviation(size)),
            (
                Offset::Person(self.by.clone()),
                size * (*PERSON_OFFSET / 100.0),
            ),
        ]
    }

    /// The band of the method is two standard deviations either way.
    fn deviation(&self, size: BodyMass) -> BodyMass {
        size * (self.weight.either_way() / self.weight.value / 2.0)
    }
}
