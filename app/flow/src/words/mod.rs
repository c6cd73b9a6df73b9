//! What is said on the screens: every finding, reason, caution, refusal and error of the core, worded.
//!
//! One trait a subject ([`UnitWords`], [`AnimalWords`], ...), one struct a language ([`English`]), regional words as data
//! ([`Region`]). Every match is exhaustive, so that a new variant of the core does not compile until it has its words.
//! A language holds how the person wants numbers shown ([`Shown`]).
//!
//! What this module does not do: it rounds nothing itself (that is `tussock_core::units::show`) and judges nothing. A
//! figure beside a verdict keeps as many decimals as it takes to agree with it. The labels of a place's own screens
//! stand in a file of that place beside these.

mod animal;
mod assess;
mod balance;
mod beside;
mod change_over;
mod condition;
mod day;
mod day_screen;
mod delivery;
mod desk;
mod details;
mod en;
mod example;
mod field;
mod foods;
mod forage;
mod grass;
mod grass_model;
mod grass_place;
mod grazing;
mod group;
mod guide;
mod hanging;
mod hay;
mod horses;
mod ledger;
mod limits;
mod log;
mod look_back;
mod look_over;
mod lots;
mod measure;
mod mend;
mod net;
mod nets;
mod next_step;
mod not_eating;
mod paddock;
mod photo;
mod plan;
mod plan_screen;
mod plants;
mod ration;
mod remind;
mod round;
mod safety;
mod said;
mod season;
mod session;
mod shed;
mod slip;
mod soak;
mod soaks;
mod sources;
mod start;
mod stock;
mod strip;
mod sward;
mod tub;
mod units;
mod vet;
mod visits;
mod weighbridge;
mod weight;
mod work;
mod worth;
mod yard_visit;

#[cfg(test)]
mod tests;

pub use animal::AnimalWords;
pub use assess::AssessWords;
pub use balance::BalanceWords;
pub use beside::{BesideWords, Task};
pub use change_over::ChangeOverWords;
pub use condition::ConditionWords;
pub use day::DayWords;
pub use day_screen::DayScreenWords;
pub use delivery::DeliveryWords;
pub use desk::DeskWords;
pub use details::DetailsWords;
pub use en::English;
pub use example::ExampleWords;
pub use field::FieldWords;
pub use foods::FoodsWords;
pub use forage::ForageWords;
pub use grass::GrassWords;
pub use grass_model::GrassModelWords;
pub use grass_place::GrassPlaceWords;
pub use grazing::GrazingWords;
pub use group::GroupWords;
pub use guide::GuideWords;
pub use hanging::HangingWords;
pub use hay::HayWords;
pub use horses::HorsesWords;
pub use ledger::LedgerWords;
pub use limits::LimitsWords;
pub use log::LogWords;
pub use look_back::LookBackWords;
pub use look_over::LookOverWords;
pub use lots::LotsWords;
pub use measure::MeasureWords;
pub use mend::{MendReasonWords, MendWords};
pub use net::NetWords;
pub use nets::NetsWords;
pub use next_step::NextStepWords;
pub use not_eating::{NotEatingWords, SheetLine};
pub use paddock::PaddockWords;
pub use photo::PhotoWords;
pub use plan::{PlanWords, Sign};
pub use plan_screen::PlanScreenWords;
pub use plants::PlantsWords;
pub use ration::RationWords;
pub use remind::RemindWords;
pub use round::RoundWords;
pub use safety::SafetyWords;
pub use said::{EnergyUnit, Region, Said, Shown};
pub use season::SeasonWords;
pub use session::SessionWords;
pub use shed::ShedWords;
pub use slip::SlipWords;
pub use soak::SoakWords;
pub use soaks::SoaksWords;
pub use sources::SourceWords;
pub use start::StartWords;
pub use stock::StockWords;
pub use strip::StripWords;
pub use sward::SwardWords;
pub use tub::TubWords;
pub use units::UnitWords;
pub use vet::VetWords;
pub use visits::VisitsWords;
pub use weighbridge::WeighbridgeWords;
pub use weight::WeightWords;
pub use work::WorkWords;
pub use worth::WorthWords;
pub use yard_visit::YardVisitWords;

/// Everything a language must say.
pub trait Words:
    UnitWords
    + SourceWords
    + AnimalWords
    + AssessWords
    + LimitsWords
    + ForageWords
    + SoakWords
    + RationWords
    + DayWords
    + GrassWords
    + PaddockWords
    + PlanWords
    + SafetyWords
    + LogWords
{
}
