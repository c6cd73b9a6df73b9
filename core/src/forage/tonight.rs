//! A night without its hay: what stands in for it. Never a night with nothing.
//!
//! Three ways, which may be joined: unmolassed beet pulp, soaked, in several feeds of which each keeps the limit of a
//! bucket meal; straw up to its cap; a neighbour's hay, of which nobody knows the sugar.

use super::published::{
    HAY_DRY, HAY_DRY_LOW, PULP_A_FEED, PULP_DRY, PULP_FEEDS_LEAST, PULP_FEEDS_MOST, PULP_STARCH,
    PULP_SUGAR_STARCH,
};
use crate::animal::{Kind, RiskLevel, Teeth};
use crate::limits::{LimitsError, MealLimit, StrawCap, meal_limit, straw_cap};
use crate::sources::Provenance;
use crate::units::{AsFed, BodyMass, DryMatter, ShareOfDm};

/// An animal whose hay is not there tonight.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Hungry {
    /// What it is.
    pub kind: Kind,
    /// Its teeth.
    pub teeth: Teeth,
    /// Its risk.
    pub risk: RiskLevel,
    /// Its lowest likely weight: the limit of a bucket meal is a ceiling.
    pub weight: BodyMass,
    /// The dry matter of forage that its plan feeds tonight and that is not there, as eaten.
    pub missing: DryMatter,
    /// The dry matter of forage of its whole day.
    pub day: DryMatter,
    /// How much straw its plan feeds already.
    pub straw: DryMatter,
}

impl Hungry {
    /// One animal of a group that is fed together, from what the whole group gets: each has its part by weight. `own` and
    /// `group` are likely weights.
    #[must_use]
    pub fn of_group(self, own: BodyMass, group: BodyMass) -> Self {
        let part = own / group;
        Self {
            missing: self.missing * part,
            day: self.day * part,
            straw: self.straw * part,
            ..self
        }
    }
}

/// Unmolassed beet pulp in place of hay.
#[derive(Clone, Debug, PartialEq)]
pub struct Pulp {
    /// Dry weight to be soaked, for the night; down to what the feeds may hold.
    pub dry_weight: AsFed,
    /// In how many feeds.
    pub feeds: u32,
    /// Dry weight of each feed.
    pub each: AsFed,
    /// The dry matter that is missing still, which straw or a neighbour's hay must bring.
    pub still_missing: DryMatter,
    /// Where it comes from.
    pub from: Provenance,
}

/// Straw in place of hay.
#[derive(Clone, Debug, PartialEq)]
pub struct Straw {
    /// What it may have tonight, as it comes; nothing with poor teeth.
    pub weight: AsFed,
    /// The dry matter that is missing still.
    pub still_missing: DryMatter,
    /// The cap it rests on.
    pub cap: StrawCap,
}

/// A neighbour's hay, untested.
#[derive(Clone, Debug, PartialEq)]
pub struct Borrowed {
    /// What to weigh, dry: by the lowest dry matter that hay has, so that the animal has enough.
    pub weight: AsFed,
    /// Its sugar must count as not proven for this animal.
    pub not_proven: bool,
    /// Where it comes from.
    pub from: Provenance,
}

/// The three ways for one animal.
#[derive(Clone, Debug, PartialEq)]
pub struct Tonight {
    /// The dry matter that is missing.
    pub missing: DryMatter,
    /// Beet pulp.
    pub pulp: Pulp,
    /// Straw.
    pub straw: Straw,
    /// A neighbour's hay.
    pub borrowed: Borrowed,
}

/// What stands in for the hay of an animal tonight.
///
/// # Errors
/// A weight that is not believed.
pub fn tonight(of: &Hungry) -> Result<Tonight, LimitsError> {
    let missing = if of.missing.is_finite() {
        of.missing.max(DryMatter::ZERO)
    } else {
        DryMatter::ZERO
    };
    Ok(Tonight {
        missing,
        pulp: pulp(of, missing)?,
        straw: straw(of, missing),
        borrowed: Borrowed {
            weight: missing.as_fed(*HAY_DRY_LOW),
            not_proven: of.risk != RiskLevel::Clear,
            from: Provenance::new().constant(&HAY_DRY_LOW),
        },
    })
}

/// The most beet pulp of one feed, as dry matter: the limit of a bucket meal over what pulp holds of it, and never more
/// than a gut that is not used to it takes.
fn most_a_feed(of: &Hungry) -> Result<(DryMatter, Provenance), LimitsError> {
    let holds = |percent: f64| ShareOfDm::percent(percent).to_fraction() * 1000.0;
    let (limit, a_kg, from) = match meal_limit(of.risk, of.weight)? {
        MealLimit::SugarAndStarch { meal, from } => (
            meal,
            holds(*PULP_SUGAR_STARCH),
            from.constant(&PULP_SUGAR_STARCH),
        ),
        MealLimit::Starch { meal, from, .. } => {
            (meal, holds(*PULP_STARCH), from.constant(&PULP_STARCH))
        }
    };
    let by_meal = DryMatter::kg(limit.to_g() / a_kg);
    let by_gut = AsFed::kg(*PULP_A_FEED / 1000.0 * of.weight.to_kg()).dry(*PULP_DRY);
    Ok((by_meal.min(by_gut), from.constant(&PULP_A_FEED)))
}

fn pulp(of: &Hungry, missing: DryMatter) -> Result<Pulp, LimitsError> {
    let (most, from) = most_a_feed(of)?;
    // As few feeds as keep each within its limit, at least two and at most as many as a night has.
    let mut feeds = *PULP_FEEDS_LEAST;
    while feeds < *PULP_FEEDS_MOST && most * f64::from(feeds) < missing {
        feeds += 1;
    }
    let given = missing.min(most * f64::from(feeds));
    let dry_weight = given.as_fed(*PULP_DRY);
    Ok(Pulp {
        dry_weight,
        feeds,
        each: dry_weight / f64::from(feeds),
        still_missing: missing - given,
        from: from
            .constant(&PULP_DRY)
            .constant(&PULP_FEEDS_LEAST)
            .constant(&PULP_FEEDS_MOST),
    })
}

/// Straw up to its cap, which is a part of the whole day's forage; what the plan feeds of it already is off.
fn straw(of: &Hungry, missing: DryMatter) -> Straw {
    let cap = straw_cap(of.kind, of.teeth);
    let may = (of.day * cap.most.to_fraction() - of.straw).max(DryMatter::ZERO);
    let given = missing.min(may);
    Straw {
        weight: given.as_fed(*HAY_DRY),
        still_missing: missing - given,
        cap,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn pony() -> Hungry {
        Hungry {
            kind: Kind::Pony,
            teeth: Teeth::NotKnown,
            risk: RiskLevel::AtRisk,
            weight: BodyMass::kg(300.0),
            missing: DryMatter::kg(1.5),
            day: DryMatter::kg(4.5),
            straw: DryMatter::ZERO,
        }
    }

    #[test]
    fn each_feed_of_pulp_keeps_the_limit_of_a_bucket_meal() {
        let found = tonight(&pony()).unwrap().pulp;
        // 0.1 g of sugar and starch for each kilogram of weight: 30 g, which 476 g of dry matter of pulp holds.
        let sugar = found.each.dry(*PULP_DRY).to_kg() * 63.0;
        assert!(sugar <= 30.0 + 1e-9, "{sugar}");
        assert_eq!(found.feeds, 4);
        assert!(found.still_missing.to_kg() < 1e-9);
        let more = tonight(&Hungry {
            missing: DryMatter::kg(3.0),
            ..pony()
        })
        .unwrap()
        .pulp;
        assert_eq!(more.feeds, 4);
        assert!(more.still_missing.to_kg() > 1.0);
    }

    #[test]
    fn straw_goes_to_its_cap_by_kind_and_teeth() {
        let straw = |of: Hungry| tonight(&of).unwrap().straw;
        let unknown = straw(pony());
        assert!((unknown.weight.dry(*HAY_DRY).to_kg() - 1.35).abs() < 1e-9);
        let poor = straw(Hungry {
            teeth: Teeth::Poor,
            ..pony()
        });
        assert_eq!(poor.weight, AsFed::ZERO);
        assert_eq!(poor.still_missing, DryMatter::kg(1.5));
        let donkey = straw(Hungry {
            kind: Kind::Donkey,
            teeth: Teeth::Good,
            missing: DryMatter::kg(3.5),
            ..pony()
        });
        assert!((donkey.weight.dry(*HAY_DRY).to_kg() - 3.375).abs() < 1e-9);
        let has_straw = straw(Hungry {
            straw: DryMatter::kg(1.0),
            ..pony()
        });
        assert!((has_straw.weight.dry(*HAY_DRY).to_kg() - 0.35).abs() < 1e-9);
    }

    #[test]
    fn a_neighbours_hay_is_enough_and_not_proven() {
        let borrowed = tonight(&pony()).unwrap().borrowed;
        assert!(borrowed.not_proven);
        assert!(borrowed.weight.dry(*HAY_DRY_LOW) >= DryMatter::kg(1.5 - 1e-9));
    }
}
