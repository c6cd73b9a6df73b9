//! What would now come out differently: an issued plan beside the one that would be issued today.
//!
//! It only compares. What was issued hangs until its review, whatever stands here (practice section 2).

use super::bodies::base::Count;
use super::bodies::{AmountV1, PlanV1, SugarSaid};
use crate::animal::{FoodId, LotId};
use crate::units::{AsFed, BodyMass, LocalTime, PartOfBody};

/// One thing that would now differ. `held` is what was issued, `now` what would be.
#[derive(Clone, Debug, PartialEq)]
pub enum Difference {
    /// The rules it was made by.
    Rules {
        /// As issued.
        held: String,
        /// Today.
        now: String,
    },
    /// The weight it was reckoned on.
    Weight {
        /// As issued.
        held: Option<BodyMass>,
        /// Today.
        now: Option<BodyMass>,
    },
    /// The level of dry matter.
    Level {
        /// As issued.
        held: PartOfBody,
        /// Today.
        now: PartOfBody,
    },
    /// The lowest level that is allowed.
    Lowest {
        /// As issued.
        held: PartOfBody,
        /// Today.
        now: PartOfBody,
    },
    /// The amount of a lot.
    Hay {
        /// Which lot.
        lot: LotId,
        /// As issued; `None` where it was not fed.
        held: Option<AsFed>,
        /// Today; `None` where it would not be fed.
        now: Option<AsFed>,
    },
    /// Whether a lot is soaked.
    Soaked {
        /// Which lot.
        lot: LotId,
        /// Whether it would be soaked today.
        now: bool,
    },
    /// What is said of the sugar of a lot.
    Sugar {
        /// Which lot.
        lot: LotId,
        /// As issued; `None` where nothing was asked or noted.
        held: Option<SugarSaid>,
        /// Today; `None` where nothing is asked.
        now: Option<SugarSaid>,
    },
    /// The amount of a bought feed; no food stands for a typical balancer.
    Feed {
        /// Which food.
        food: Option<FoodId>,
        /// As issued; `None` where it was not fed.
        held: Option<AsFed>,
        /// Today; `None` where it would not be fed.
        now: Option<AsFed>,
    },
    /// The times somebody comes.
    Visits {
        /// As issued.
        held: Vec<LocalTime>,
        /// Today.
        now: Vec<LocalTime>,
    },
    /// The same amounts, shared over the nets otherwise.
    Nets,
    /// Water and time of what is soaked.
    Recipe,
    /// Sessions of work a week; `None` where none are planned.
    Work {
        /// As issued.
        held: Option<i64>,
        /// Today.
        now: Option<i64>,
    },
    /// Days between look-overs.
    LookOver {
        /// As issued.
        held: i64,
        /// Today.
        now: i64,
    },
}

impl Difference {
    /// Whether something else would hang or be fed: the others only say what stands behind it.
    pub const fn is_of_what_is_fed(&self) -> bool {
        match self {
            Self::Hay { .. }
            | Self::Soaked { .. }
            | Self::Feed { .. }
            | Self::Visits { .. }
            | Self::Nets
            | Self::Recipe => true,
            Self::Rules { .. }
            | Self::Weight { .. }
            | Self::Level { .. }
            | Self::Lowest { .. }
            | Self::Sugar { .. }
            | Self::Work { .. }
            | Self::LookOver { .. } => false,
        }
    }
}

/// What would now differ, in the order of the loop.
pub fn differences(held: &PlanV1, today: &PlanV1) -> Vec<Difference> {
    let mut found = Vec::new();
    if held.rules != today.rules {
        found.push(Difference::Rules {
            held: held.rules.as_str().to_owned(),
            now: today.rules.as_str().to_owned(),
        });
    }
    if held.weight_g != today.weight_g {
        found.push(Difference::Weight {
            held: held.weight_g.map(super::bodies::base::BodyGrams::mass),
            now: today.weight_g.map(super::bodies::base::BodyGrams::mass),
        });
    }
    if held.level != today.level {
        found.push(Difference::Level {
            held: held.level.part(),
            now: today.level.part(),
        });
    }
    if held.lowest != today.lowest {
        found.push(Difference::Lowest {
            held: held.lowest.part(),
            now: today.lowest.part(),
        });
    }
    let mut fed: Vec<&AmountV1> = held.amounts.iter().collect();
    fed.extend(
        today
            .amounts
            .iter()
            .filter(|now| amount_of(held, now).is_none()),
    );
    for amount in fed {
        of_amount(
            amount_of(held, amount),
            amount_of(today, amount),
            &mut found,
        );
    }
    if held.visits != today.visits {
        found.push(Difference::Visits {
            held: held.visits.clone(),
            now: today.visits.clone(),
        });
    } else if held.nets != today.nets && !found.iter().any(Difference::is_of_what_is_fed) {
        found.push(Difference::Nets);
    }
    if held.soaking != today.soaking && held.soaking.is_some() && today.soaking.is_some() {
        found.push(Difference::Recipe);
    }
    if held.work_a_week != today.work_a_week {
        found.push(Difference::Work {
            held: held.work_a_week.map(Count::get),
            now: today.work_a_week.map(Count::get),
        });
    }
    if held.look_over_days != today.look_over_days {
        found.push(Difference::LookOver {
            held: held.look_over_days.get(),
            now: today.look_over_days.get(),
        });
    }
    found
}

/// The amount of the same lot or food in a plan.
fn amount_of<'a>(plan: &'a PlanV1, of: &AmountV1) -> Option<&'a AmountV1> {
    plan.amounts
        .iter()
        .find(|amount| amount.lot == of.lot && amount.food == of.food)
}

fn of_amount(held: Option<&AmountV1>, now: Option<&AmountV1>, found: &mut Vec<Difference>) {
    let Some(any) = held.or(now) else { return };
    let as_fed = |amount: Option<&AmountV1>| amount.map(|amount| amount.as_fed_g.as_fed());
    let differs = held.map(|amount| amount.as_fed_g) != now.map(|amount| amount.as_fed_g);
    let Some(lot) = &any.lot else {
        if differs {
            found.push(Difference::Feed {
                food: any.food.clone(),
                held: as_fed(held),
                now: as_fed(now),
            });
        }
        return;
    };
    if differs {
        found.push(Difference::Hay {
            lot: lot.clone(),
            held: as_fed(held),
            now: as_fed(now),
        });
    }
    if let (Some(held), Some(now)) = (held, now) {
        if held.soaked != now.soaked {
            found.push(Difference::Soaked {
                lot: lot.clone(),
                now: now.soaked,
            });
        }
        // A plan of before the verdict was noted says nothing of it.
        if held.sugar.is_some() && held.sugar != now.sugar {
            found.push(Difference::Sugar {
                lot: lot.clone(),
                held: held.sugar,
                now: now.sugar,
            });
        }
    }
}
