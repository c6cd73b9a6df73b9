//! The records: stored twins of the domain types, canonical text, merge, export and import.
//!
//! - [`Record`] is the envelope that every record has; its canonical text is what lies on the disk. [`canonical`] says
//!   how a text is made canonical, [`parse`] reads one.
//! - [`Body`] is the content in the shape of its [`Kind`] and version, read by hand, so that an error names record,
//!   field, value and what is allowed ([`LogError`]). What a later release added stays in the record, whatever is
//!   edited here.
//! - [`Stamp`] is the log's clock. [`Versions`] and [`Log`] merge: a union in which the latest stamp holds.
//! - [`Bundle`] is the export, [`Case`] an export with a time, a zone and visits.
//! - [`Picture`] is a picture as it is kept: its record names it by its sum, and it lies and travels beside the records.
//!
//! What this room does not do: it stores nothing, reads no clock and makes no ids.

mod account;
mod alike;
mod at_grass;
pub mod bodies;
mod bundle;
mod canonical;
mod case;
mod change_over;
mod day_ration;
mod differs;
mod due;
mod entry;
mod envelope;
mod error;
mod feeds;
mod gather;
mod grass;
mod grazing;
mod held_day;
mod holding;
mod how_it_goes;
mod json;
mod kind;
mod ledger;
mod left;
mod look_back;
mod looks;
mod merge;
mod picture;
pub mod published;
mod rest_of_day;
mod stamp;
mod stored;
mod subject;
mod sum;
mod timed;
mod together;
mod weighed;
mod worked;

pub use alike::alike;
pub use bodies::Body;
pub use bundle::Bundle;
pub use canonical::canonical;
pub use case::{Answer, Case, ClockChange, HayPart, Hundredths, OffsetMin, ZoneTable};
pub use change_over::{ChangeOver, ChangeStage, changing_over};
pub use day_ration::{DayRation, GivenBy, GivenFood, GivenForage, YardFood, day_ration};
pub use differs::{Difference, differences};
pub use due::{Due, round_of};
pub use envelope::{Known, Origin, Record};
pub use error::{Allowed, Form, LogError, Place, Shape};
pub use gather::{Gathered, Problem, Wish, gather};
pub use grass::day_weather_of;
pub use grazing::grazing_by;
pub use held_day::{DayHanging, HeldDay, held_day};
pub use holding::{eaters, fed_with, plan_in_use, plan_that_feeds};
pub use how_it_goes::{Beside, HowItGoes, how_it_goes};
pub use json::parse;
pub use kind::Kind;
pub use ledger::{last_weight, ledger_of};
pub use left::{LeftFound, LeftProblem, left_of};
pub use look_back::looked_back;
pub use merge::{Added, Log, Report, Versions};
pub use picture::{LONGEST_SIDE, MOST_BYTES, Picture, PictureSum, pictures};
pub use rest_of_day::{
    RestHanging, RestLaid, RestOfToday, RestVerdict, WhyAnew, rest_of_today, said_of_day,
};
pub use stamp::{Ahead, DeviceId, Stamp};
pub use stored::Name;
pub use subject::Subject;
pub use timed::{TimedNet, net_dry, own_rates, timed_nets};
pub use together::{GatheredGroup, gather_group};
pub use weighed::trend_of;
