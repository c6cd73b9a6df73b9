//! The labels of the list of nets and of a net's form.

use crate::forms::net::{Field, From, Wrong};
use crate::views::net_list::{NetPlace, NetRow};
use tussock_core::day::NetKind;
use tussock_core::units::Zone;

/// What the nets say.
pub trait NetWords {
    /// The link to the list, and its head.
    fn the_nets(&self) -> &'static str;
    /// The sentence of the list.
    fn nets_here(&self, count: usize) -> String;
    /// Adds a net.
    fn add_net(&self) -> &'static str;
    /// The second line of a row.
    fn net_line(&self, row: &NetRow, zone: &dyn Zone) -> String;
    /// Where a net is.
    fn net_place(&self, place: &NetPlace, zone: &dyn Zone) -> String;
    /// The sentence of the form of a new net.
    fn new_net(&self) -> &'static str;
    /// The sentence of a net's form.
    fn this_net(&self, name: &str) -> String;
    /// The net is not there.
    fn no_such_net(&self) -> &'static str;
    /// A field.
    fn net_field(&self, field: Field) -> &'static str;
    /// How to fill it.
    fn net_field_hint(&self, field: Field) -> &'static str;
    /// What hay is eaten from, as a question.
    fn eaten_from_asked(&self) -> &'static str;
    /// An answer.
    fn eaten_from(&self, from: From) -> &'static str;
    /// Single or double, as a question.
    fn double_asked(&self) -> &'static str;
    /// An answer.
    fn double(&self, double: bool) -> &'static str;
    /// What that makes of the eating time: how many times as long as loose hay, slowing counted.
    fn eaten_as(&self, kind: NetKind) -> String;
    /// What is wrong with a field.
    fn net_wrong(&self, wrong: &Wrong) -> String;
    /// The action.
    fn save_net(&self) -> &'static str;
}
