//! Ten invented animals and what a consultant would sign for each. The animals, hays and prices are invented; every
//! expectation is argued beside it.

mod asks;
mod cases;
mod stall;
