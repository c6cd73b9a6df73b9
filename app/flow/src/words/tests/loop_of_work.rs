//! Limits, forage, soak, ration, day, plan and safety.

mod fed;
mod foods;
mod judged;
mod limits;
