//! English, in British spelling.

mod allowance;
mod animal;
mod assess;
mod beside;
mod condition;
mod day;
mod details;
mod example;
mod fields;
mod forage;
mod group;
mod hay;
mod horses;
mod limits;
mod log;
mod look_over;
mod nets;
mod numbers;
mod plan;
mod plan_screen;
mod ration;
mod report;
mod round;
mod safety;
mod shed;
mod soak;
mod soaks;
mod sources;
mod start;
mod steps;
mod tub;
mod units;
mod vet;
mod visits;

use super::{Shown, Words};

/// English, with how the person wants numbers shown. It is small and copied freely.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct English {
    /// Units and region.
    pub shown: Shown,
}

impl English {
    /// English with these units and this region.
    pub const fn new(shown: Shown) -> Self {
        Self { shown }
    }
}

impl Words for English {}
