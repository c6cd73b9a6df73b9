//! A net that was to be soaked and is hung dry today: the new, lighter amount.

use super::published::SCALE_STEP;
use crate::limits::Ends;
use crate::soak::{Recipe, SoakError, dry_loss, feeds_like};
use crate::sources::Provenance;
use crate::units::{AsFed, show};

/// What a net that was planned to be soaked holds when it is hung dry.
#[derive(Clone, Debug, PartialEq)]
pub struct Unsoaked {
    /// What to hang: whole steps of the scale, never more than was planned before soaking.
    pub hay: AsFed,
    /// What the plan lets reach the animal of that net, as dry hay: with the greatest loss, the likely and the least.
    pub reaches: Ends<AsFed>,
    /// The rules behind it.
    pub from: Provenance,
}

/// The hay of a net that is not soaked today, from what the plan weighs before soaking: W (1 - D), with D the part of
/// the dry matter that the soak of the plan takes ([`dry_loss`]); the dry matter of the hay itself falls out.
///
/// The likely loss is taken, so that the animal eats what the plan likely gives. It lies between the two ends the plan
/// was judged with: a floor was tested with the greatest loss, so dry hay of W (1 - most) or more keeps it; what the plan
/// gives at most is W (1 - least), so dry hay up to that breaks no ceiling of amount. The nearest step of the scale is
/// taken, and the next one up where that would fall under the floor's end: the floor goes first. Only where a step is
/// wider than the band may it stand over the other end, by less than a step.
///
/// What the loss no longer takes is sugar too: the hay is then fed with the sugar it has dry, which is judged apart.
///
/// # Errors
/// None in practice: the loss of a recipe is within what is believed.
pub fn unsoaked(planned: AsFed, recipe: Recipe) -> Result<Unsoaked, SoakError> {
    let loss = dry_loss(recipe.soak());
    let lost = loss.part;
    let reaches = Ends::new(
        feeds_like(planned, lost.most)?,
        feeds_like(planned, lost.likely)?,
        feeds_like(planned, lost.least)?,
    );
    let step = AsFed::kg(*SCALE_STEP);
    let nearest = step * (reaches.likely / step).round();
    let kept = if nearest < reaches.least {
        show::step_up(reaches.least, step)
    } else {
        nearest
    };
    Ok(Unsoaked {
        hay: if planned < kept { planned } else { kept },
        reaches,
        from: loss.provenance.constant(&SCALE_STEP),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::soak::{Water, reading_not_soaked};
    use crate::units::DryFraction;
    use proptest::prelude::*;

    #[test]
    fn a_net_that_is_not_soaked_is_lighter_by_what_the_water_would_have_taken() {
        let hour = Recipe::usual(Water::TapSummer);
        let net = unsoaked(AsFed::kg(3.6), hour).unwrap();
        // 5.8 % of 3.60 is 0.21.
        assert!((net.hay.to_kg() - 3.4).abs() < 1e-9);
        let night = Recipe::minutes(Water::TapWinter, 720).unwrap();
        let net = unsoaked(AsFed::kg(3.6), night).unwrap();
        assert!((net.hay.to_kg() - 3.0).abs() < 1e-9);
    }

    #[test]
    fn it_is_the_reading_for_the_dry_matter_that_the_plan_likely_gives() {
        let (planned, dry) = (AsFed::kg(8.98), DryFraction::percent(88.0).unwrap());
        let recipe = Recipe::minutes(Water::TapWinter, 720).unwrap();
        let lost = dry_loss(recipe.soak()).part.likely;
        let target = planned.dry(dry) * (1.0 - lost);
        let reading = reading_not_soaked(target, dry);
        let net = unsoaked(planned, recipe).unwrap();
        assert!((net.reaches.likely.to_kg() - reading.to_kg()).abs() < 1e-9);
    }

    proptest! {
        #[test]
        fn it_keeps_the_floor_of_the_plan_and_gives_no_more_than_a_step_over_its_ceiling(
            steps in 1_u32..=300, minutes in 5_u32..=960
        ) {
            let planned = AsFed::kg(*SCALE_STEP) * f64::from(steps);
            let recipe = Recipe::minutes(Water::TapSummer, minutes).unwrap();
            let net = unsoaked(planned, recipe).unwrap();
            let (hay, tiny) = (net.hay.to_kg(), 1e-9);
            prop_assert!(net.reaches.least.to_kg() <= hay + tiny);
            prop_assert!(hay <= planned.to_kg() + tiny);
            prop_assert!(hay < net.reaches.most.to_kg() + *SCALE_STEP + tiny);
            let whole = hay / *SCALE_STEP;
            prop_assert!((whole - whole.round()).abs() < 1e-6);
        }
    }
}
