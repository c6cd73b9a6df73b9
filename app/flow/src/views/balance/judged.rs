//! What else a ration is judged by: sugar, buckets, forage, ratios.

use super::Look;
use tussock_core::forage::Verdict;
use tussock_core::limits::{CapVerdict, MealVerdict, RatioVerdict, UpperVerdict, sugar_limits};
use tussock_core::log::DayRation;
use tussock_core::ration::{DayStarch, ForageVerdict, SugarRow, Whole};
use tussock_core::units::ShareOfDm;

/// One thing beside the nutrients.
#[derive(Clone, Debug, PartialEq)]
pub enum Judged {
    /// How much forage there is, against its floor.
    Forage {
        /// How it stands.
        verdict: ForageVerdict,
        /// Its part of all dry matter, 0 to 1.
        of_dry: Option<f64>,
    },
    /// Sugar and starch of the day, against its limit.
    Sugar {
        /// The row.
        row: SugarRow,
        /// Whether a limit holds for this animal.
        limited: bool,
    },
    /// Each bucket against the limit of one meal.
    Buckets {
        /// How many there are; they are alike.
        count: usize,
        /// How each stands.
        verdict: MealVerdict,
    },
    /// Starch of all buckets, against the limit of a day.
    DayStarch(
        /// How it stands.
        DayStarch,
    ),
    /// Calcium to phosphorus.
    CalciumToPhosphorus(
        /// How it stands.
        RatioVerdict,
    ),
    /// Zinc to copper.
    ZincToCopper(
        /// How it stands.
        RatioVerdict,
    ),
    /// Iron to copper: a remark at most.
    IronToCopper(
        /// How it stands.
        RatioVerdict,
    ),
    /// Selenium that bought foods add.
    AddedSelenium(
        /// How it stands.
        UpperVerdict,
    ),
    /// Lucerne within the forage.
    Lucerne {
        /// How it stands.
        verdict: CapVerdict,
        /// Whether some of the hay is grass and legume mixed, so that it may be more.
        mixed: bool,
    },
    /// Straw within the forage.
    Straw(
        /// How it stands.
        CapVerdict,
    ),
    /// Neutral detergent fibre.
    Fibre {
        /// Of all dry matter, of the parts where it is known.
        fibre: Option<ShareOfDm>,
        /// The part of the dry matter in which it is not known, 0 to 1.
        unknown: f64,
    },
}

impl Judged {
    /// How it stands.
    pub fn look(&self) -> Look {
        match self {
            Self::Forage { verdict, .. } => match verdict {
                ForageVerdict::Enough { .. } => Look::Within,
                ForageVerdict::UnderStart { .. } => Look::Remark,
                ForageVerdict::UnderFloor { .. } => Look::Short,
                ForageVerdict::NotKnown => Look::NotKnown,
            },
            Self::Sugar { limited: false, .. } | Self::Fibre { .. } => Look::Told,
            Self::Sugar { row, limited: true } => match row.judged.as_ref().map(|it| it.verdict) {
                Some(Verdict::Within { .. }) => Look::Within,
                Some(Verdict::Over { .. }) => Look::Over,
                Some(Verdict::NotProven { .. }) | None => Look::NotKnown,
            },
            Self::Buckets { verdict, .. } => match verdict {
                MealVerdict::Within => Look::Within,
                MealVerdict::Over { .. } => Look::Over,
                MealVerdict::NotKnown => Look::NotKnown,
            },
            Self::DayStarch(verdict) => match verdict {
                DayStarch::ByMeal => Look::Told,
                DayStarch::Within { .. } => Look::Within,
                DayStarch::Over { .. } => Look::Over,
                DayStarch::NotKnown => Look::NotKnown,
            },
            Self::CalciumToPhosphorus(verdict)
            | Self::ZincToCopper(verdict)
            | Self::IronToCopper(verdict) => of_ratio(*verdict),
            Self::AddedSelenium(verdict) => match verdict {
                UpperVerdict::Within => Look::Within,
                UpperVerdict::Warn { .. } => Look::Remark,
                UpperVerdict::Over { .. } => Look::Over,
                UpperVerdict::NotKnown => Look::NotKnown,
            },
            Self::Lucerne { verdict, .. } | Self::Straw(verdict) => match verdict {
                CapVerdict::Within { .. } => Look::Within,
                CapVerdict::Watch { .. } => Look::Remark,
                CapVerdict::Over { .. } => Look::Over,
                CapVerdict::NotKnown => Look::NotKnown,
            },
        }
    }
}

const fn of_ratio(verdict: RatioVerdict) -> Look {
    match verdict {
        RatioVerdict::Usual { .. } => Look::Within,
        RatioVerdict::Wide { .. } | RatioVerdict::Narrow { .. } | RatioVerdict::Remark { .. } => {
            Look::Remark
        }
        RatioVerdict::TooLow { .. } => Look::Short,
        RatioVerdict::TooHigh { .. } => Look::Over,
        RatioVerdict::NotKnown => Look::NotKnown,
    }
}

/// Whether there is any of it.
fn is_there(verdict: CapVerdict) -> bool {
    match verdict {
        CapVerdict::Within { part } => part.to_fraction() > 0.0,
        CapVerdict::Watch { .. } | CapVerdict::Over { .. } | CapVerdict::NotKnown => true,
    }
}

/// What else a ration is judged by, in the order of its weight for the animal; what is not in the ration is left out.
pub(super) fn judged(ration: &DayRation, whole: &Whole) -> Vec<Judged> {
    let forage = &whole.forage;
    // They share one bucket evenly, so that the first stands for all.
    let bucket = (!ration.foods.is_empty())
        .then_some(whole.buckets.first())
        .flatten();
    let mut found = vec![
        Judged::Forage {
            verdict: forage.verdict,
            of_dry: forage.of_dry,
        },
        Judged::Sugar {
            row: whole.sugar.clone(),
            limited: sugar_limits(ration.standard.risk).is_some(),
        },
    ];
    if let Some(verdict) = bucket {
        found.push(Judged::Buckets {
            count: whole.buckets.len(),
            verdict: *verdict,
        });
        if whole.day_starch != DayStarch::ByMeal {
            found.push(Judged::DayStarch(whole.day_starch));
        }
    }
    if ration
        .foods
        .iter()
        .any(|food| food.of.food.class.is_fortified())
    {
        found.push(Judged::AddedSelenium(whole.added_selenium));
    }
    found.push(Judged::CalciumToPhosphorus(whole.calcium_to_phosphorus));
    found.push(Judged::ZincToCopper(whole.zinc_to_copper));
    found.push(Judged::IronToCopper(whole.iron_to_copper));
    if is_there(forage.lucerne) || forage.mixed {
        found.push(Judged::Lucerne {
            verdict: forage.lucerne,
            mixed: forage.mixed,
        });
    }
    if is_there(forage.straw) {
        found.push(Judged::Straw(forage.straw));
    }
    found.push(Judged::Fibre {
        fibre: forage.fibre,
        unknown: forage.fibre_unknown,
    });
    found
}
