//! What to weigh: soaked hay is weighed before soaking, and weighs less in dry matter when it is eaten.

use super::error::SoakError;
use super::published as p;
use crate::limits::Litres;
use crate::units::{AsFed, DryFraction, DryMatter};

/// Why a net was not soaked. It changes the reading, not the plan.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum NotSoaked {
    /// The tub or the tap is frozen.
    Frozen,
    /// There was no time.
    NoTime,
    /// A hose ban.
    HoseBan,
    /// The animal refuses soaked hay.
    Refused,
}

/// What to do with the water that comes off: it is rich in sugar and takes the oxygen out of a stream.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Liquor {
    /// Keep it out of ditches, streams and surface drains.
    NotIntoWater,
    /// Keep it out of drinking buckets.
    NotToDrink,
    /// Spread it thinly on land away from water.
    SpreadThinly,
}

impl Liquor {
    /// All of them.
    pub const ALL: &'static [Self] = &[Self::NotIntoWater, Self::NotToDrink, Self::SpreadThinly];
}

/// How much hay to weigh before soaking, so that the dry matter that is eaten is `target`: `lost` is the part of the
/// dry matter that soaking takes. At a floor give the most it may be, at a ceiling the least.
pub fn weigh_before_soaking(
    target: DryMatter,
    dry: DryFraction,
    lost: f64,
) -> Result<AsFed, SoakError> {
    let lost = p::LOST_PART.check(lost)?;
    Ok((target / (1.0 - lost)).as_fed(dry))
}

/// How much hay to weigh for the same `target` when it is not soaked today: less, since nothing is washed out.
pub fn reading_not_soaked(target: DryMatter, dry: DryFraction) -> AsFed {
    target.as_fed(dry)
}

/// How much dry hay the soaked hay feeds like: what was weighed before soaking less the part of the dry matter that
/// goes down the drain.
pub fn feeds_like(hay: AsFed, lost: f64) -> Result<AsFed, SoakError> {
    let lost = p::LOST_PART.check(lost)?;
    Ok(hay * (1.0 - lost))
}

/// Water for this much hay, least and better.
pub fn water_needed(hay: AsFed) -> [Litres; 2] {
    p::LITRES_PER_KG.map(|litres| Litres::l(litres * hay.to_kg()))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_net_that_is_not_soaked_today_is_lighter() {
        let target = DryMatter::kg(7.5);
        let dry = DryFraction::percent(88.0).unwrap();
        let soaked = weigh_before_soaking(target, dry, 0.06).unwrap();
        let not = reading_not_soaked(target, dry);
        assert!(not < soaked);
        assert!((not.to_kg() - 8.52).abs() < 0.01);
        assert!(weigh_before_soaking(target, dry, 1.0).is_err());
        assert!(weigh_before_soaking(target, dry, f64::NAN).is_err());
    }

    #[test]
    fn soaked_hay_feeds_like_what_was_weighed_out_for_it() {
        let dry = DryFraction::percent(88.0).unwrap();
        let out = weigh_before_soaking(DryMatter::kg(6.0), dry, 0.058).unwrap();
        let like = feeds_like(out, 0.058).unwrap();
        assert!((like.dry(dry).to_kg() - 6.0).abs() < 1e-9);
        assert!((feeds_like(AsFed::kg(7.2), 0.058).unwrap().to_kg() - 6.78).abs() < 0.01);
        assert!(feeds_like(AsFed::kg(7.2), f64::NAN).is_err());
    }

    #[test]
    fn four_kilograms_want_forty_litres() {
        let [least, better] = water_needed(AsFed::kg(4.0));
        assert!((least.to_l() - 40.0).abs() < 1e-9 && (better.to_l() - 60.0).abs() < 1e-9);
    }
}
