//! Soaking.

use super::Said;
use tussock_core::soak::{
    Air, DryLoss, Ended, Liquor, LossBasis, NotSoaked, RecipeFinding, Shortened, SoakError,
    SugarLoss, TubState, TubStep, Water,
};
use tussock_core::units::Zone;

/// Words for tubs and soaks.
pub trait SoakWords {
    /// What the large slot says above its number: "Lift out in".
    fn tub_head(&self, state: &TubState) -> &'static str;
    /// What the tub is, with its times: "Lift out at 07:05, in 42 min".
    fn tub(&self, state: &TubState, zone: &dyn Zone) -> Said;
    /// A step: "In the water".
    fn tub_step(&self, step: TubStep) -> &'static str;
    /// The button that takes the tub on from here; `None` when there is none.
    fn tub_action(&self, step: TubStep) -> Option<&'static str>;
    /// "Over 20 °C".
    fn air(&self, air: Air) -> &'static str;
    /// "Cold tap, winter".
    fn water_chip(&self, water: Water) -> &'static str;
    /// What to know before the hay goes in.
    fn recipe_finding(&self, finding: RecipeFinding) -> Said;
    /// Why it is thrown away sooner than usual.
    fn shortened(&self, shortened: Shortened) -> Said;
    /// How a soak ended.
    fn ended(&self, ended: Ended) -> &'static str;
    /// How much less sugar to expect.
    fn sugar_loss(&self, loss: &SugarLoss) -> Said;
    /// What that rests on.
    fn loss_basis(&self, basis: LossBasis) -> &'static str;
    /// How much dry matter goes down the drain.
    fn dry_loss(&self, loss: &DryLoss) -> Said;
    /// Why a net was not soaked.
    fn not_soaked(&self, why: NotSoaked) -> &'static str;
    /// What then to do.
    fn not_soaked_means(&self, why: NotSoaked) -> Said;
    /// What to do with the water that comes off.
    fn liquor(&self, liquor: Liquor) -> Said;
    /// Why a soak was refused; `zone` for its times.
    fn soak_error(&self, error: &SoakError, zone: &dyn Zone) -> String;
}
