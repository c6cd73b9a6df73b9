//! A net on the scale: what it should read, what hay is in it, and how the reading stands to its target.

use super::published::{KEY_STEP, NET_OWN_WEIGHT, SCALE_DOUBT, SCALE_WITHIN};
use crate::units::AsFed;

/// How a reading stands to its target.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum OnScale {
    /// Within a step of the scale, 50 g.
    Within,
    /// Too much.
    Over {
        /// How much of it.
        by: AsFed,
    },
    /// Too little.
    Short {
        /// How much of it.
        by: AsFed,
    },
    /// About half of the target or less: read it again, or keep it.
    Half {
        /// How much is missing.
        by: AsFed,
    },
    /// About twice the target or more: read it again, or keep it.
    Double {
        /// How much is too much.
        by: AsFed,
    },
    /// No more than the empty net weighs: there is no hay in it.
    NoHay,
}

/// The weight of an empty net that nobody weighed.
pub fn usual_net() -> AsFed {
    AsFed::kg(*NET_OWN_WEIGHT)
}

/// What the scale should read: the hay and the net it hangs in.
pub fn reading_for(hay: AsFed, net: AsFed) -> AsFed {
    hay + net
}

/// The hay behind a reading; none when the net alone weighs more.
pub fn hay_in(reading: AsFed, net: AsFed) -> AsFed {
    (reading - net).max(AsFed::ZERO)
}

/// What one press of a plus or minus key puts in or takes out.
pub fn key_step() -> AsFed {
    AsFed::kg(*KEY_STEP)
}

/// A reading after so many steps of a key, to the gram; a minus key never goes below nothing.
pub fn nudged(reading: AsFed, step: AsFed, steps: i32) -> AsFed {
    let kg = reading.to_kg() + step.to_kg() * f64::from(steps);
    AsFed::kg((kg.max(0.0) * 1000.0).round() / 1000.0)
}

/// How many slices an amount is, to the nearest half; `None` when it is nearer to none, or a slice weighs nothing.
pub fn slices_in(by: AsFed, slice: AsFed) -> Option<f64> {
    if slice <= AsFed::ZERO {
        return None;
    }
    let halves = (by.to_kg() / slice.to_kg() * 2.0).round();
    (0.0 < halves && halves.is_finite()).then_some(halves / 2.0)
}

/// How a reading, net and all, stands to its target.
pub fn on_scale(reading: AsFed, hay: AsFed, net: AsFed) -> OnScale {
    let target = reading_for(hay, net);
    if reading <= net {
        return OnScale::NoHay;
    }
    let [half, double] = *SCALE_DOUBT;
    let over = reading - target;
    let short = target - reading;
    // The last bit of a binary fraction is the arithmetic's, not the scale's.
    // numeric: a tenth of a gram, beyond any hanging scale
    let within = AsFed::kg(*SCALE_WITHIN + 1e-4);
    if over <= within && short <= within {
        OnScale::Within
    } else if reading <= target * half {
        OnScale::Half { by: short }
    } else if target * double <= reading {
        OnScale::Double { by: over }
    } else if AsFed::ZERO < over {
        OnScale::Over { by: over }
    } else {
        OnScale::Short { by: short }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(kg: f64) -> OnScale {
        on_scale(AsFed::kg(kg), AsFed::kg(3.60), AsFed::kg(0.75))
    }

    #[test]
    fn a_reading_is_told_from_its_target_to_fifty_grams() {
        assert_eq!(read(4.35), OnScale::Within);
        assert_eq!(read(4.40), OnScale::Within);
        assert_eq!(read(4.30), OnScale::Within);
        assert!(matches!(read(4.52), OnScale::Over { by } if (by.to_kg() - 0.17).abs() < 1e-9));
        assert!(matches!(read(4.29), OnScale::Short { by } if (by.to_kg() - 0.06).abs() < 1e-9));
    }

    #[test]
    fn half_and_double_are_doubted_and_an_empty_net_holds_no_hay() {
        assert!(matches!(read(2.2), OnScale::Half { .. }));
        assert!(matches!(read(8.7), OnScale::Double { .. }));
        assert!(matches!(read(43.5), OnScale::Double { .. }));
        assert_eq!(read(0.75), OnScale::NoHay);
        assert_eq!(hay_in(AsFed::kg(0.5), AsFed::kg(0.75)), AsFed::ZERO);
        let hay = hay_in(AsFed::kg(4.52), AsFed::kg(0.75));
        assert!((hay.to_kg() - 3.77).abs() < 1e-9);
    }

    #[test]
    fn keys_put_in_and_take_out_whole_steps_and_never_go_below_nothing() {
        let reading = AsFed::kg(4.35);
        let more = nudged(reading, key_step(), 1);
        assert!((more.to_kg() - 4.45).abs() < 1e-9);
        assert_eq!(nudged(more, key_step(), -1), reading);
        assert_eq!(nudged(AsFed::kg(0.05), key_step(), -1), AsFed::ZERO);
    }

    #[test]
    fn an_amount_is_told_in_halves_of_a_slice() {
        let slice = AsFed::kg(1.8);
        assert_eq!(slices_in(AsFed::kg(3.5), slice), Some(2.0));
        assert_eq!(slices_in(AsFed::kg(0.9), slice), Some(0.5));
        assert_eq!(slices_in(AsFed::kg(0.17), slice), None);
        assert_eq!(slices_in(AsFed::kg(1.0), AsFed::ZERO), None);
    }
}
