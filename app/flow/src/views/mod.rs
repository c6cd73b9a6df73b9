//! What a screen shows, from the records it asked for. Pure: the records, now and the zone in, plain values out.

pub mod beside;
pub mod condition;
pub mod cut;
pub mod details;
pub mod group;
pub mod horses;
pub mod plan;
#[cfg(test)]
pub(crate) mod test_yard;
pub mod hay;
pub mod nets;
pub mod round;
pub mod shed;
pub mod tub;
