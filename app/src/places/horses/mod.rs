//! The animals, and everything done beside one.

mod condition;
mod crest;
mod details;
mod group;
mod ledger;
mod list;
mod look_over;
mod new;
mod not_eating;
mod one;
mod photos;
mod shown;
mod visit;
mod visit_report;
mod vital_field;
mod weigh;
mod weight;
mod who;
mod work;

pub use condition::{Condition, ConditionTwo};
pub use crest::Crest;
pub use details::Details;
pub use group::{Group, NewGroup};
pub use ledger::Ledger;
pub use list::List;
pub use look_over::LookOver;
pub use new::New;
pub use not_eating::NotEating;
pub use one::One;
pub use photos::{OnePhoto, OnePose, Photos};
pub use visit::Visit;
pub use visit_report::VisitReport;
pub use weigh::Weigh;
pub use weight::Weight;
pub use who::WhoWillNotEat;
pub use work::{Work, WorkDone, WorkTimed};
