//! A rate for each class of work.

use crate::animal::Workload;

/// A rate at maintenance and in the four classes of work.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ByWork {
    /// At maintenance, whatever the temperament.
    pub maintenance: f64,
    /// In light work.
    pub light: f64,
    /// In moderate work.
    pub moderate: f64,
    /// In heavy work.
    pub heavy: f64,
    /// In very heavy work.
    pub very_heavy: f64,
}

impl ByWork {
    /// The five rates in the order of the published table.
    pub const fn new(
        maintenance: f64,
        light: f64,
        moderate: f64,
        heavy: f64,
        very_heavy: f64,
    ) -> Self {
        Self {
            maintenance,
            light,
            moderate,
            heavy,
            very_heavy,
        }
    }

    /// The rate for a class of work.
    pub const fn at(self, work: Workload) -> f64 {
        match work {
            Workload::Maintenance(_) => self.maintenance,
            Workload::Light => self.light,
            Workload::Moderate => self.moderate,
            Workload::Heavy => self.heavy,
            Workload::VeryHeavy => self.very_heavy,
        }
    }
}
