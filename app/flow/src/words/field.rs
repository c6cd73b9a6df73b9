//! The labels of a paddock's form, of its screen and of its row in a list.

use crate::forms::field::{Field, Wrong};
use crate::views::fields::{Danger, FieldRow, Looked, OnField, Out};
use tussock_core::graze::sward::SwardKind;
use tussock_core::units::{Area, Length, LocalDate};

/// What a paddock says.
pub trait FieldWords {
    /// An area in every unit that a person may know it by.
    fn land(&self, area: Area) -> String;
    /// A length on the ground: "12.5 m".
    fn on_ground(&self, length: Length) -> String;
    /// How long ago a day is: "today", "yesterday", "3 days ago".
    fn days_ago(&self, day: LocalDate, today: LocalDate) -> String;
    /// The second line of a paddock in a list.
    fn field_row(&self, row: &FieldRow, today: LocalDate) -> String;
    /// The sentence of the form of a new paddock.
    fn new_field(&self) -> &'static str;
    /// The paddock is not there.
    fn no_such_field(&self) -> &'static str;
    /// A field of the form.
    fn paddock_field(&self, field: Field) -> &'static str;
    /// How to fill it.
    fn paddock_field_hint(&self, field: Field) -> &'static str;
    /// What is wrong with a field.
    fn paddock_wrong(&self, wrong: &Wrong) -> String;
    /// What grows there, as a question.
    fn sward_kind_asked(&self) -> &'static str;
    /// What is taken where nobody says.
    fn sward_kind_hint(&self) -> &'static str;
    /// An answer.
    fn sward_kind(&self, kind: SwardKind) -> &'static str;
    /// Shade in the morning, as a question.
    fn shade_asked(&self) -> &'static str;
    /// An answer.
    fn shade(&self, shade: bool) -> &'static str;
    /// Plants that were seen, as a question.
    fn plants_asked(&self) -> &'static str;
    /// What the list of plants does.
    fn plants_hint(&self) -> &'static str;
    /// The action of the form.
    fn save_field(&self) -> &'static str;
    /// Takes the paddock away.
    fn remove_field(&self) -> &'static str;
    /// The sentence of its screen.
    fn field_sentence(&self, on: &OnField) -> String;
    /// What was seen last, where that was not today.
    fn last_looked(&self, looked: &Looked, today: LocalDate) -> String;
    /// A bare paddock is no forage.
    fn bare_is_no_forage(&self) -> &'static str;
    /// Height makes no grass fit for every animal.
    fn height_is_no_leave(&self) -> &'static str;
    /// The chips of the boot, as a question.
    fn boot_asked(&self) -> &'static str;
    /// The chips of seed heads, as a question.
    fn seeding_asked(&self) -> &'static str;
    /// An answer.
    fn seeding(&self, seeding: bool) -> &'static str;
    /// The head over what stands there.
    fn standing_head(&self) -> &'static str;
    /// That the kind was not said and which stands in.
    fn kind_stands_in(&self) -> &'static str;
    /// That the area was not said.
    fn area_not_said(&self) -> &'static str;
    /// The days that it lasts, for whom.
    fn days_of_grass(&self, on: &OnField) -> String;
    /// The head over when it is back.
    fn regrowth_head(&self) -> &'static str;
    /// Since when it rests.
    fn rests_since(&self, since: LocalDate) -> String;
    /// The head over what harms.
    fn dangers_head(&self) -> &'static str;
    /// Nothing that harms was seen, or may be expected where the person is.
    fn no_dangers(&self, regions_ticked: bool) -> &'static str;
    /// Where a hazard comes from: seen here, or known of such a sward.
    fn danger_from(&self, danger: &Danger) -> &'static str;
    /// Who grazes there, in a row.
    fn who_grazes(&self, out: &[Out]) -> String;
    /// The link to the readings.
    fn to_readings(&self) -> &'static str;
    /// The link to the strip.
    fn to_strip(&self) -> &'static str;
    /// The link to the form.
    fn to_field_form(&self) -> &'static str;
    /// The link to the plants.
    fn to_plants(&self) -> &'static str;
    /// The action of its screen, back to grass today.
    fn to_grass_today(&self) -> &'static str;
}
