//! Limits, forage, soak, ration, day, plan and safety.

mod balanced;
mod fed;
mod foods;
mod judged;
mod limits;
