//! What a screen shows, from the records it asked for. Pure: the records, now and the zone in, plain values out.

pub mod beside;
pub mod condition;
pub mod cut;
pub mod details;
pub mod filled;
pub mod group;
pub mod hay;
pub mod horses;
pub mod last_step;
pub mod nets;
pub mod plan;
pub mod round;
pub mod shed;
pub mod soaks;
#[cfg(test)]
pub(crate) mod test_yard;
pub mod tub;

#[cfg(test)]
mod morning;
