//! The labels of a soak tub.

use crate::forms::tub::Wrong;
use tussock_core::soak::{SugarLoss, TubState};
use tussock_core::units::{AsFed, Instant, Zone};

/// What the screens of a tub say.
pub trait TubWords {
    /// What a tub is called: "Tub 2".
    fn tub_name(&self, nth: usize) -> String;
    /// A tub without a name.
    fn the_tub(&self) -> &'static str;
    /// The line over the large numbers: "Lift out in".
    fn slot_head(&self, state: &TubState) -> &'static str;
    /// The line under them: "at 07:05. It is 06:23."
    fn slot_note(&self, state: &TubState, now: Instant, zone: &dyn Zone) -> String;
    /// Hours and minutes as figures with their units.
    fn figures(&self, minutes: i64) -> Vec<(String, &'static str)>;
    /// The order of the stop block.
    fn throw_away(&self) -> &'static str;
    /// Under the figures of the stop block.
    fn since_it_went_in(&self) -> &'static str;
    /// What the hay is and feeds like.
    fn feeds_like(&self, hay: AsFed, like: Option<AsFed>) -> String;
    /// What sugar it loses, as one line.
    fn expect_less_sugar(&self, loss: &SugarLoss) -> String;
    /// What must not be missed about that.
    fn not_proven_until(&self) -> &'static str;
    /// Corrects a time.
    fn correct_a_time(&self) -> &'static str;
    /// Saves it.
    fn save_times(&self) -> &'static str;
    /// Leaves it.
    fn leave_times(&self) -> &'static str;
    /// The fields of the times: in the water, lifted out, fed.
    fn went_in_at(&self) -> &'static str;
    /// Lifted out at.
    fn lifted_at(&self) -> &'static str;
    /// Fed at.
    fn fed_at(&self) -> &'static str;
    /// What a time field understands.
    fn time_hint(&self) -> &'static str;
    /// Breaks the soak off.
    fn stop_this_tub(&self) -> &'static str;
    /// A step that is done.
    fn step_done(&self) -> &'static str;
    /// A step that is due.
    fn step_due(&self) -> &'static str;
    /// A step that is late.
    fn step_late(&self) -> &'static str;
    /// Throwing away, when it is time.
    fn step_now(&self) -> &'static str;
    /// Opens a reason.
    fn why_asked(&self) -> &'static str;
    /// What is next at a tub: "lift out".
    fn tub_next(&self, state: &TubState) -> &'static str;
    /// How that stands: "due", "12 min late"; empty for later.
    fn tub_stands(&self, state: &TubState) -> String;
    /// A tub at which something is due, as a sentence: "Tub 2: lift out, 12 min late".
    fn tub_wants(&self, tub: &str, state: &TubState) -> String;
    /// Opens the screen of a tub.
    fn open_tub(&self, tub: &str) -> String;
    /// The cord.
    fn cord_of_tub(&self) -> &'static str;
    /// Nothing is in it.
    fn nothing_in(&self, tub: &str) -> String;
    /// Nothing stands under this address.
    fn no_such_tub(&self) -> &'static str;
    /// The action that leads back.
    fn to_the_shed(&self) -> &'static str;
    /// The sentence of a soak to begin.
    fn soak_what(&self) -> &'static str;
    /// For whom.
    fn soak_for(&self) -> &'static str;
    /// For the whole yard.
    fn for_the_yard(&self) -> &'static str;
    /// From which lot.
    fn soak_lot(&self) -> &'static str;
    /// No lot is there yet.
    fn no_lot_yet(&self) -> &'static str;
    /// How much.
    fn soak_hay(&self) -> &'static str;
    /// May be left out.
    fn soak_hay_hint(&self) -> &'static str;
    /// The planned amount stands in.
    fn soak_hay_planned(&self, amount: &str) -> String;
    /// A tub with hay in it.
    fn tub_in_use(&self) -> &'static str;
    /// With what water.
    fn soak_water_asked(&self) -> &'static str;
    /// How long.
    fn soak_minutes(&self) -> &'static str;
    /// What stands in when it is left out.
    fn soak_minutes_hint(&self, minutes: i64) -> String;
    /// In which tub.
    fn soak_tub(&self) -> &'static str;
    /// The action.
    fn start_the_soak(&self) -> &'static str;
    /// Sent to the field.
    fn lot_wanted(&self) -> &'static str;
    /// What is wrong with a field.
    fn tub_wrong(&self, wrong: &Wrong, zone: &dyn Zone) -> String;
}
