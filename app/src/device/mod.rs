//! What only this device knows: its clock and zone, new ids.

pub mod clock;
pub mod ids;
