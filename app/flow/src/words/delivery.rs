//! The labels of what came of a lot.

use crate::forms::delivery::{Felt, Per, Wrong};
use tussock_core::forage::{BaleKind, StoredBadly};

/// What the form of a lot says of what came.
pub trait DeliveryWords {
    /// The head of the part.
    fn what_came(&self) -> &'static str;
    /// All of it may be left out.
    fn what_came_hint(&self) -> &'static str;
    /// A question: what it is counted in.
    fn bought_in(&self) -> &'static str;
    /// A field.
    fn bought_label(&self) -> &'static str;
    /// A question.
    fn how_baled(&self) -> &'static str;
    /// A kind of bale.
    fn bale_kind(&self, kind: BaleKind) -> &'static str;
    /// A field: bales that were weighed.
    fn bales_weighed_label(&self) -> &'static str;
    /// Its hint: the advice to weigh three.
    fn bales_weighed_hint(&self) -> String;
    /// A field: what a bale is said to weigh.
    fn bale_said_label(&self) -> &'static str;
    /// Its hint.
    fn bale_said_hint(&self) -> &'static str;
    /// A field: slices that were weighed.
    fn slices_weighed_label(&self) -> String;
    /// Its hint: the advice to weigh ten.
    fn slices_weighed_hint(&self) -> String;
    /// A field.
    fn price_label(&self) -> &'static str;
    /// A question.
    fn price_per(&self) -> &'static str;
    /// For what a price is.
    fn per(&self, per: Per) -> &'static str;
    /// A field.
    fn currency_label(&self) -> &'static str;
    /// Its hint.
    fn currency_hint(&self) -> &'static str;
    /// A field.
    fn bought_on_label(&self) -> &'static str;
    /// A field.
    fn baled_on_label(&self) -> &'static str;
    /// How a day is typed.
    fn day_hint(&self) -> &'static str;
    /// A field.
    fn lead_label(&self) -> &'static str;
    /// Its hint: the default.
    fn lead_hint(&self) -> String;
    /// Its unit.
    fn days_unit(&self) -> &'static str;
    /// The head of what is watched in store.
    fn in_store(&self) -> &'static str;
    /// A field.
    fn moisture_label(&self) -> &'static str;
    /// Its hint.
    fn moisture_hint(&self) -> &'static str;
    /// A question: what spoils it.
    fn how_stored(&self) -> &'static str;
    /// What spoils it.
    fn stored_badly(&self, bad: StoredBadly) -> &'static str;
    /// A field: the thermometer in the stack today.
    fn rod_label(&self) -> &'static str;
    /// Its hint.
    fn rod_hint(&self) -> &'static str;
    /// A question: the rod without a thermometer.
    fn rod_felt(&self) -> &'static str;
    /// What it felt like.
    fn felt(&self, felt: Felt) -> &'static str;
    /// What is wrong with a field.
    fn delivery_wrong(&self, wrong: &Wrong) -> String;
}
