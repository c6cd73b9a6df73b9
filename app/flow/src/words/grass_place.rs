//! The labels of the place of the yard.

use crate::forms::grass_place::{Field, Looking, Noon, Wrong};
use tussock_core::graze::plants::Region;

/// What the form of the place says.
pub trait GrassPlaceWords {
    /// The sentence.
    fn where_the_yard_lies(&self) -> &'static str;
    /// What it is for, and how exactly it is kept.
    fn place_is_for(&self) -> &'static str;
    /// The key that asks the phone.
    fn use_this_phones_place(&self) -> &'static str;
    /// How the search stands; `None` while nobody asked.
    fn looking(&self, looking: Looking) -> Option<&'static str>;
    /// A field.
    fn degree_field(&self, field: Field) -> &'static str;
    /// How to fill it.
    fn degree_hint(&self, field: Field) -> &'static str;
    /// What was understood, as it is kept: "51.21 degrees north of the equator".
    fn degree_echo(&self, field: Field, degrees: f64) -> String;
    /// What is wrong.
    fn place_wrong(&self, wrong: &Wrong) -> String;
    /// When the sun stands highest there by the clock; where that cannot be, what to look at.
    fn noon_there(&self, noon: Noon) -> String;
    /// Which clock the place goes by.
    fn clock_asked(&self) -> &'static str;
    /// The clock it goes by, where only one is known.
    fn clock_is(&self, zone: &str) -> String;
    /// A clock to choose: the one written down, or this phone's.
    fn clock_choice(&self, zone: &str, of_the_phone: bool) -> String;
    /// Which regions' plants and hazards.
    fn regions_asked(&self) -> &'static str;
    /// What they are for.
    fn regions_hint(&self) -> &'static str;
    /// A region.
    fn region_of_hazards(&self, region: Region) -> &'static str;
    /// The action.
    fn save_place(&self) -> &'static str;
    /// The way past the form.
    fn skip_place(&self) -> &'static str;
}
