//! Who it is: kind, body type, age, sex, state, work, health, goal and phase; and groups.
//!
//! Plain data, as a person tells it. What follows from it (risk, limits) is for the rooms after this one. What a person
//! did not say is `NotKnown` or `None`, never a guess.

mod group;
mod health;
mod ids;
mod kind;
mod phase;
pub mod published;
mod risk;

pub use group::{Group, Member, group_of};
pub use health::{
    Answer, Appetite, Handful, Health, Insulin, InsulinTest, Laminitis, Ppid, SaidOn, Seen, Teeth,
    VetFlag, VetPermit, VetScope, VetWord,
};
pub use ids::{AnimalId, FoodId, GroupId, LotId, NetId, PaddockId, PersonId, TubId, YardId};
pub use kind::{
    Animal, Birth, BodyType, Goal, Kind, Sex, StageFacts, State, Temperament, Workload,
};
pub use phase::Phase;
pub use risk::{Risk, RiskFactor, RiskLevel, risk};
