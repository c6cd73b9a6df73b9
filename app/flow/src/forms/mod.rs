//! What is typed into a form, as raw text, and the act it becomes or what is wrong with each field.

pub mod animal;
pub mod condition;
pub mod correct;
pub mod delivery;
pub mod details;
pub mod group;
pub mod hanging;
pub mod hay;
pub mod left_of_lot;
pub mod look_over;
pub mod net;
pub mod nets;
pub mod not_eating;
pub mod open_lot;
pub mod photo;
pub mod round;
pub mod shed;
pub mod soaks;
pub mod start;
pub mod tub;
pub mod vet;
pub mod visits;
pub mod weighbridge;
pub mod weight;
pub mod worth;
pub mod yard_visit;
