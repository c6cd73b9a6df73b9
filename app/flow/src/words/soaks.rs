//! The labels of the list of soaks, of hay that is not soaked today, and of the tubs of the yard.

use super::Said;
use crate::forms::soaks::TubWrong;
use crate::views::last_step::LastStep;
use crate::views::nets::DayNet;
use crate::views::soaks::{DryHang, DrySeen, DrySugar, LoadSeen, Soaks, TubRow};
use tussock_core::round::{Job, LoadPart};
use tussock_core::soak::Liquor;
use tussock_core::units::{AsFed, LocalDate, Zone};

/// What the list of soaks says.
pub trait SoaksWords {
    /// The quiet link that opens it.
    fn soaks_and_tubs(&self) -> &'static str;
    /// The sentence: "2 tubs to start, 2 nets not soaked".
    fn soaks_stand(&self, soaks: &Soaks) -> String;
    /// What is to go in, as a list.
    fn to_start(&self) -> &'static str;
    /// A tub of the list: "Tub 1", "Tub 1, second filling", "A new tub".
    fn load_tub(&self, load: &LoadSeen) -> String;
    /// When it goes in and is lifted out: "Goes in at 05:15, lift out at 06:15, for 06:30".
    fn load_times(&self, load: &LoadSeen, today: LocalDate, zone: &dyn Zone) -> String;
    /// Somebody's nets in it: "Bramble: 2 nets, 7.20 kg".
    fn load_part(&self, part: &LoadPart) -> String;
    /// All of it against what the tub holds: "7.2 of 15 kg".
    fn load_hay(&self, load: &LoadSeen) -> String;
    /// A net that is more than the tub holds.
    fn over_full(&self) -> &'static str;
    /// The button that starts it: "Start tub 1".
    fn start_tub(&self, load: &LoadSeen) -> String;
    /// Asks why hay is not soaked: "Not soaked today: Bramble, for 06:30".
    fn not_soaked_today(&self, job: &Job, today: LocalDate) -> String;
    /// What stands over the large reading.
    fn not_soaked_hang_until(&self) -> &'static str;
    /// Whose that is: "Bramble, net 1, for 06:30".
    fn dry_whose(&self, seen: &DrySeen, hang: &DryHang, today: LocalDate) -> String;
    /// What the reading is made of, and what to take out: "3.40 hay + 0.75 net. Weighed already: take out 0.20 kg".
    fn dry_reading(&self, net: &DayNet) -> String;
    /// A net that was weighed for it already.
    fn weighed_lighter(&self) -> &'static str;
    /// A net with its reading, as a line.
    fn dry_line(&self, hang: &DryHang) -> String;
    /// Somebody's hay that is not soaked, with the reason: "Bramble, for 06:30: frozen".
    fn dry_visit(&self, seen: &DrySeen, today: LocalDate) -> String;
    /// Takes it back.
    fn soak_after_all(&self, seen: &DrySeen) -> String;
    /// The dry hay's own verdict and the ways out, where it is not within the limit.
    fn dry_sugar(&self, sugar: &DrySugar) -> Said;
    /// All that is to be said of the water that comes off.
    fn all_liquor(&self) -> Vec<(Liquor, Said)>;
    /// The heading of the tubs.
    fn tubs_here(&self) -> &'static str;
    /// What lies in a tub and what goes into it: "15 kg. In the water, lift out at 06:15".
    fn tub_row(&self, row: &TubRow, today: LocalDate, zone: &dyn Zone) -> String;
    /// Adds a tub.
    fn add_tub(&self) -> &'static str;
    /// The sentence of the form.
    fn tub_form(&self, there: bool) -> &'static str;
    /// What it is called.
    fn tub_called(&self) -> &'static str;
    /// How much goes in.
    fn tub_capacity(&self) -> &'static str;
    /// May be left out.
    fn tub_capacity_hint(&self) -> &'static str;
    /// How much water a full tub wants: "For 15 kg of hay: 150 to 225 l of water".
    fn tub_water(&self, capacity: AsFed) -> String;
    /// The action.
    fn save_tub(&self) -> &'static str;
    /// What is wrong.
    fn tub_form_wrong(&self, wrong: &TubWrong) -> String;
    /// Takes the last step of a soak back: "Not lifted out at 07:05 after all".
    fn take_back(&self, last: &LastStep, zone: &dyn Zone) -> String;
    /// Ends a soak: nothing is left.
    fn eaten_up(&self) -> &'static str;
    /// From a soak to begin to the list, where it is left out today.
    fn not_soaked_instead(&self) -> &'static str;
    /// No soak is planned and none is left out.
    fn nothing_to_soak(&self) -> &'static str;
}
