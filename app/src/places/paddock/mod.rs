//! Grass: when it is open, who is out, the paddocks and what grows there.

mod grazing;
mod model;
mod place;
mod place_form;

pub use grazing::Grazing;
pub use model::GrassModel;
pub use place::Paddock;
pub use place_form::GrassPlace;
