//! Grass: when it is open, who is out, the paddocks and what grows there.

mod place;

pub use place::Paddock;
