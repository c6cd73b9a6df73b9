//! Grass: when it is open, who is out, the paddocks and what grows there.

mod at;
mod carried;
mod day;
mod field;
mod field_form;
mod grazing;
mod log;
mod model;
mod place;
mod place_form;
mod plants;
mod readings;
mod season;
mod strip;
mod strip_shown;
mod track;
mod week;

pub use field::Field;
pub use field_form::{FieldForm, NewField};
pub use grazing::Grazing;
pub use model::GrassModel;
pub use place::Paddock;
pub use place_form::GrassPlace;
pub use plants::Plants;
pub use readings::Readings;
pub use season::Season;
pub use strip::Strip;
pub use week::Week;
