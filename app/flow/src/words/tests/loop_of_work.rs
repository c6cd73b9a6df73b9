//! Limits, forage, soak, ration, day, plan and safety.

mod fed;
mod judged;
mod limits;
