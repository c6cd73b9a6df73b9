//! What only this device knows and can do: its clock and zone, new ids, its address, its small settings, what it has to
//! remind somebody with, and its camera.

pub mod address;
pub mod awake;
pub mod badge;
pub mod bell;
mod browser;
pub mod camera;
pub mod clock;
pub mod ids;
pub mod location;
pub mod notification;
pub mod picture;
pub mod room;
pub mod settings;
pub mod share;
pub mod sight;
pub mod sound;
pub mod vibration;
