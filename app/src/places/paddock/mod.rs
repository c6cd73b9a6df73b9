//! Grass: when it is open, who is out, the paddocks and what grows there.

mod at;
mod day;
mod log;
mod place;
mod season;
mod week;

pub use place::Paddock;
pub use season::Season;
pub use week::Week;
