//! A lot: one delivery of one forage from one field and one cutting, as far as anybody knows.

use super::class::{ForageClass, ForageKind};
use super::cost::Price;
use super::hazards::Fault;
use super::published::{HAY_DRY, HAY_DRY_HIGH, HAY_DRY_LOW};
use super::report::LabReport;
use super::stock::Held;
use super::storage::{BaleKind, Rod, StoredBadly};
use crate::animal::LotId;
use crate::units::{AsFed, DryFraction, LocalDate};

/// Whether a forage is fed as it comes or after soaking.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Fed {
    /// As it comes.
    Dry,
    /// After soaking.
    Soaked,
}

/// What came, and how it is stored. What nobody said is `None` or empty.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Delivery {
    /// How much was bought.
    pub bought: Option<Held>,
    /// How it is baled.
    pub bale: Option<BaleKind>,
    /// Bales that were weighed.
    pub bales: Vec<AsFed>,
    /// Slices that were weighed.
    pub slices: Vec<AsFed>,
    /// Moisture as it was baled or bought, in percent. It is not its dry matter when it is fed: hay dries in the stack.
    pub moisture: Option<f64>,
    /// The day it was baled.
    pub baled_on: Option<LocalDate>,
    /// What spoils it in store.
    pub stored: Vec<StoredBadly>,
    /// Rods that stood in the stack, by day.
    pub heat: Vec<(LocalDate, Rod)>,
    /// Days from ordering to delivery.
    pub lead_days: Option<i64>,
}

/// A forage lot.
#[derive(Clone, Debug, PartialEq)]
pub struct Lot {
    /// Its id.
    pub id: LotId,
    /// Its name in the shed.
    pub name: String,
    /// What it is said to be.
    pub class: ForageClass,
    /// Dry matter that somebody measured apart from a report, if anybody did.
    pub dry: Option<DryFraction>,
    /// Every laboratory report on it, in any order.
    pub reports: Vec<LabReport>,
    /// What was paid for it.
    pub price: Option<Price>,
    /// The day it was bought.
    pub bought_on: Option<LocalDate>,
    /// What is wrong with it to the eye and the nose.
    pub faults: Vec<Fault>,
    /// What came, and how it is stored.
    pub delivery: Delivery,
    /// The day it was opened.
    pub opened_on: Option<LocalDate>,
    /// The lot in place of which it was opened.
    pub in_place_of: Option<LotId>,
}

/// Where a dry matter comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum DryOrigin {
    /// A laboratory.
    Report,
    /// Somebody measured it.
    Measured,
    /// The default for hay and straw.
    Default,
}

/// The dry matter of a lot as it comes, with the ends it may have.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DryEstimate {
    /// What is reckoned with.
    pub value: DryFraction,
    /// The lowest likely.
    pub low: DryFraction,
    /// The highest likely.
    pub high: DryFraction,
    /// Where it comes from.
    pub origin: DryOrigin,
}

impl DryEstimate {
    fn known(value: DryFraction, origin: DryOrigin) -> Self {
        Self {
            value,
            low: value,
            high: value,
            origin,
        }
    }
}

impl Lot {
    /// A lot of which only the class is known.
    pub fn of_class(id: LotId, name: impl Into<String>, class: ForageClass) -> Self {
        Self {
            id,
            name: name.into(),
            class,
            dry: None,
            reports: Vec::new(),
            price: None,
            bought_on: None,
            faults: Vec::new(),
            delivery: Delivery::default(),
            opened_on: None,
            in_place_of: None,
        }
    }

    /// The newest report on it as it is fed: a test of dry hay says nothing sure of soaked hay, nor the other way.
    pub fn report(&self, fed: Fed) -> Option<&LabReport> {
        self.reports
            .iter()
            .filter(|report| report.fed() == fed)
            .max_by_key(|report| report.on())
    }

    /// Its dry matter as it comes; `None` for haylage of which nobody knows it: that must be asked, since it runs from
    /// half to three quarters.
    pub fn dry_matter(&self) -> Option<DryEstimate> {
        let reported = self.report(Fed::Dry).and_then(LabReport::dry);
        if let Some(value) = reported {
            return Some(DryEstimate::known(value, DryOrigin::Report));
        }
        if let Some(value) = self.dry {
            return Some(DryEstimate::known(value, DryOrigin::Measured));
        }
        match self.class.kind() {
            ForageKind::Hay | ForageKind::Straw => Some(DryEstimate {
                value: *HAY_DRY,
                low: *HAY_DRY_LOW,
                high: *HAY_DRY_HIGH,
                origin: DryOrigin::Default,
            }),
            ForageKind::Haylage => None,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::forage::{Analyte, Basis, RawReport};

    fn lot(class: ForageClass) -> Lot {
        Lot::of_class(LotId("a".to_owned()), "Back field", class)
    }

    #[test]
    fn hay_has_a_default_dry_matter_and_haylage_must_be_asked() {
        let hay = lot(ForageClass::Grass).dry_matter().unwrap();
        assert_eq!(hay.origin, DryOrigin::Default);
        assert!((hay.value.to_percent() - 88.0).abs() < 1e-9);
        assert!(hay.low < hay.value && hay.value < hay.high);
        assert_eq!(lot(ForageClass::Haylage).dry_matter(), None);
    }

    #[test]
    fn a_test_of_soaked_hay_is_not_one_of_the_hay_as_it_comes() {
        let mut hay = lot(ForageClass::Grass);
        let report = |fed, on: &str, wsc: f64| {
            LabReport::read(RawReport {
                fed,
                on: Some(on.parse().unwrap()),
                dry_percent: Some(if fed == Fed::Dry { 90.0 } else { 30.0 }),
                values: vec![(Analyte::Wsc, wsc), (Analyte::Starch, 1.0)],
                ..RawReport::empty(Basis::DryMatter)
            })
            .unwrap()
            .0
        };
        hay.reports = vec![
            report(Fed::Dry, "2026-02-01", 14.0),
            report(Fed::Dry, "2026-04-01", 13.0),
            report(Fed::Soaked, "2026-05-01", 9.0),
        ];
        let wsc = |fed| hay.report(fed).and_then(|r| r.share(Analyte::Wsc)).unwrap();
        assert!((wsc(Fed::Dry).to_percent() - 13.0).abs() < 1e-9);
        assert!((wsc(Fed::Soaked).to_percent() - 9.0).abs() < 1e-9);
        assert!((hay.dry_matter().unwrap().value.to_percent() - 90.0).abs() < 1e-9);
    }
}
