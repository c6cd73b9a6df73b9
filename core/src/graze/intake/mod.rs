//! What an animal eats at grass, and how long it may be there.
//!
//! [`eaten`] is the model with both ends; [`room`] is the time at grass that a plan can carry and the hay that may hang less
//! for it. The model was tuned by hand to the trials it is shown beside; it has been tested on no others. No time that
//! [`room`] gives rests on a muzzle: it counts with what it was seen to hold back least.

mod eaten;
pub mod published;
mod room;
#[cfg(test)]
mod tests;

pub use eaten::{OutFor, eaten, eaten_from, part_eaten};
pub use room::{
    GrassRoom, HayBeside, RoomFor, Shortened, SugarBeside, hay_given_way, hay_less, room,
};
