//! What a screen shows, from the records it asked for. Pure: the records, now and the zone in, plain values out.

pub mod hay;
pub mod horses;
pub mod nets;
pub mod round;
pub mod shed;
pub mod tub;

#[cfg(test)]
mod morning;
