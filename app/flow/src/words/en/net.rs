//! The nets in English.

use super::English;
use super::numbers::up_to;
use crate::forms::net::{Field, From, Wrong};
use crate::views::net_list::{NetPlace, NetRow};
use crate::words::{DayWords, LogWords, NetWords, UnitWords};
use tussock_core::day::NetKind;
use tussock_core::units::Zone;

impl NetWords for English {
    fn the_nets(&self) -> &'static str {
        "Nets"
    }
    fn nets_here(&self, count: usize) -> String {
        match count {
            0 => "No net has a name yet".to_owned(),
            _ => self.count(count, "net", "nets"),
        }
    }
    fn add_net(&self) -> &'static str {
        "Add a net"
    }
    fn net_line(&self, row: &NetRow, zone: &dyn Zone) -> String {
        let own = match row.own {
            Some(own) => format!("{} empty", self.feed(own)),
            None => "own weight not known".to_owned(),
        };
        format!("{}, {own}", self.net_place(&row.place, zone))
    }
    fn net_place(&self, place: &NetPlace, zone: &dyn Zone) -> String {
        let by = |whose: &str| {
            if whose.is_empty() {
                String::new()
            } else {
                format!(" for {whose}")
            }
        };
        match place {
            NetPlace::Filled { hay, whose } => {
                format!("Filled{}: {}", by(whose), self.feed(*hay))
            }
            NetPlace::Hangs { whose, since } => {
                format!("Hangs{} since {}", by(whose), self.time_at(*since, zone))
            }
            NetPlace::Empty => "Empty".to_owned(),
            NetPlace::NotKnown => "Not known where".to_owned(),
        }
    }
    fn new_net(&self) -> &'static str {
        "A net by its name, with what it weighs empty"
    }
    fn this_net(&self, name: &str) -> String {
        name.to_owned()
    }
    fn no_such_net(&self) -> &'static str {
        "This net is not here"
    }
    fn net_field(&self, field: Field) -> &'static str {
        match field {
            Field::Name => "Name or number",
            Field::Own => "Weighs, dry and empty",
            Field::Capacity => "Holds at most",
            Field::Hole => "Width of the holes",
        }
    }
    fn net_field_hint(&self, field: Field) -> &'static str {
        match field {
            Field::Name => "As it is marked, for example Blue 1.",
            Field::Own => {
                "Hang it empty on the scale. May be left out; then another net's stands in."
            }
            Field::Capacity => "How much hay goes in. May be left out.",
            Field::Hole => {
                "From corner to corner along one side, in cm, or as 1.5 in. May be left out."
            }
        }
    }
    fn eaten_from_asked(&self) -> &'static str {
        "Hay is eaten from"
    }
    fn eaten_from(&self, from: From) -> &'static str {
        match from {
            From::Net => "A net",
            From::Loose => "Loose, a box or a manger",
        }
    }
    fn double_asked(&self) -> &'static str {
        "Single or double"
    }
    fn double(&self, double: bool) -> &'static str {
        if double {
            "Double, one in the other"
        } else {
            "Single"
        }
    }
    fn eaten_as(&self, kind: NetKind) -> String {
        let slower = kind.slowing() - 1.0;
        let empties = if 0.05 < slower {
            format!(
                ". It slows down as it empties: {} % longer than at its mean rate",
                up_to(slower * 100.0, 0)
            )
        } else {
            String::new()
        };
        match kind {
            NetKind::Loose => self.net_kind(kind).to_owned(),
            _ => format!(
                "{}: lasts about {} times as long as loose hay{empties}",
                self.net_kind(kind),
                up_to(kind.times_as_long(), 1)
            ),
        }
    }
    fn net_wrong(&self, wrong: &Wrong) -> String {
        match wrong {
            Wrong::NoName => "Give it a name or a number".to_owned(),
            Wrong::Parse(_, error) => self.parse_error(error),
            Wrong::Hole(error) => self.out_of_range(error),
            Wrong::Log(error) => self.log_error(error),
        }
    }
    fn save_net(&self) -> &'static str {
        "Save the net"
    }
}
