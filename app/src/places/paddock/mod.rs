//! Grass: when it is open, who is out, the paddocks and what grows there.

mod at;
mod carried;
mod day;
mod grazing;
mod log;
mod model;
mod place;
mod place_form;
mod season;
mod week;

pub use grazing::Grazing;
pub use model::GrassModel;
pub use place::Paddock;
pub use place_form::GrassPlace;
pub use season::Season;
pub use week::Week;
