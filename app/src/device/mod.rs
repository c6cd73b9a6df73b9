//! What only this device knows and can do: its clock and zone, new ids, its address, its small settings, and what it has
//! to remind somebody with.

pub mod address;
pub mod awake;
pub mod badge;
pub mod bell;
mod browser;
pub mod clock;
pub mod ids;
pub mod notification;
pub mod room;
pub mod settings;
pub mod share;
pub mod sound;
pub mod vibration;
