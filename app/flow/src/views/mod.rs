//! What a screen shows, from the records it asked for. Pure: the records, now and the zone in, plain values out.

pub mod balance;
pub mod beats;
pub mod beside;
pub mod change_over;
pub mod changeover;
pub mod compare;
pub mod condition;
pub mod cut;
pub mod day;
pub mod desk;
pub mod details;
pub mod fields;
pub mod filled;
pub mod foods;
pub mod grass_model;
pub mod grazing;
pub mod group;
pub mod guide;
pub mod hanging;
pub mod hay;
pub mod horses;
pub mod last_step;
pub mod ledger;
pub mod look_back;
pub mod measures;
pub mod mend;
pub mod net_list;
pub mod nets;
pub mod next_step;
pub mod not_eating;
pub mod paddock;
pub mod photo;
pub mod plan;
pub mod remind;
pub mod round;
pub mod season;
pub mod shed;
pub mod slip;
pub mod soaks;
pub mod stock;
#[cfg(test)]
pub(crate) mod test_yard;
pub mod tonight;
pub mod tub;
pub mod vet;
pub mod weighbridge;
pub mod weight;
pub mod work;
pub mod yard_visit;

#[cfg(test)]
mod morning;
