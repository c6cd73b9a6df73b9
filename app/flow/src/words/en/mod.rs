//! English, in British spelling.

mod allowance;
mod animal;
mod assess;
mod balance;
mod because;
mod beside;
mod change_over;
mod condition;
mod day;
mod day_screen;
mod delivery;
mod desk;
mod details;
mod differs;
mod example;
mod field;
mod fields;
mod foods;
mod forage;
mod grass;
mod grass_model;
mod grass_place;
mod grazing;
mod group;
mod guide;
mod hanging;
mod hay;
mod horses;
mod judged;
mod ledger;
mod limits;
mod log;
mod look_back;
mod look_over;
mod lots;
mod measure;
mod mend;
mod mend_reasons;
mod net;
mod nets;
mod next_step;
mod not_eating;
mod numbers;
mod open_grass;
mod paddock;
mod photo;
mod plan;
mod plan_screen;
mod plants;
mod ration;
mod ration_table;
mod remind;
mod report;
mod round;
mod safety;
mod season;
mod session;
mod shed;
mod slip;
mod soak;
mod soaks;
mod sources;
mod start;
mod steps;
mod stock;
mod store;
mod strip;
mod sward;
mod tub;
mod units;
mod vet;
mod visit_report;
mod visits;
mod weighbridge;
mod weight;
mod work;
mod worth;
mod yard_visit;

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
