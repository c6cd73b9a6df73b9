//! What is typed into a form, as raw text, and the act it becomes or what is wrong with each field.

pub mod animal;
pub mod condition;
pub mod details;
pub mod group;
pub mod hay;
pub mod look_over;
pub mod nets;
pub mod round;
pub mod shed;
pub mod soaks;
pub mod start;
pub mod tub;
pub mod vet;
pub mod visits;
pub mod weight;
