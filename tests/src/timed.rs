//! The solver in a page, to be timed there: no clock is read here.

use crate::seeded::{numbers, ration};
use tussock_core::ration::solve::{Answer, Problem, cheapest};
use wasm_bindgen::prelude::*;

/// A ration made from a seed, ready to be solved.
#[wasm_bindgen]
pub struct Seeded(Problem);

#[wasm_bindgen]
impl Seeded {
    /// So many foods and limits, so many of the foods in whole doses; the same for the same seed.
    #[wasm_bindgen(constructor)]
    pub fn new(foods: usize, limits: usize, doses: usize, seed: u32) -> Self {
        Self(ration(foods, limits, doses, u64::from(seed)))
    }

    /// The least cost, worked out so many times anew; that of the last time.
    ///
    /// # Errors
    /// The cheapest was not found, or not proven; the text says what came instead.
    pub fn cost(&self, times: u32) -> Result<f64, String> {
        let mut cost = Err("not asked for".to_owned());
        for _ in 0..times {
            cost = match std::hint::black_box(cheapest(std::hint::black_box(&self.0))) {
                Ok(Answer::Cheapest(solution)) => Ok(solution.cost),
                other => Err(format!("{other:?}")),
            };
        }
        cost
    }

    /// How many branches were looked at, 1 where nothing had to be parted; nothing where it was not proven.
    pub fn branches(&self) -> usize {
        match cheapest(&self.0) {
            Ok(Answer::Cheapest(solution)) => solution.certificate.branches,
            _ => 0,
        }
    }

    /// The same problem as numbers, for another solver.
    pub fn numbers(&self) -> String {
        numbers(&self.0).to_string()
    }
}
