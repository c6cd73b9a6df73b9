//! What only this device knows: its clock and zone, new ids, its address and its small settings.

pub mod address;
pub mod clock;
pub mod ids;
pub mod room;
pub mod settings;
