//! What a kilogram of a lot's dry matter brings. What nobody knows stays unknown.

use super::analyte::Analyte;
use super::energy::{ForageEnergy, energy};
use super::lot::{Fed, Lot};
use crate::limits::Nutrient;
use crate::sources::{Mark, Provenance, Source};
use crate::units::ShareOfDm;
use std::collections::BTreeMap;

/// Where a content comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum ContentOrigin {
    /// A laboratory tested this lot as it is fed.
    Tested,
    /// A laboratory tested it dry, and soaking takes some of it out: at most this much.
    TestedBeforeSoaking,
    /// The mean of the class, trusted so far.
    Class(Mark),
    /// The mean of the class before soaking, which takes some of it out.
    ClassBeforeSoaking(Mark),
}

/// A content of dry matter.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Content {
    /// What is reckoned with.
    pub value: ShareOfDm,
    /// The spread between lots when it is a class mean and one is known.
    pub spread: Option<ShareOfDm>,
    /// Where it comes from.
    pub origin: ContentOrigin,
}

/// What a kilogram of dry matter brings.
#[derive(Clone, Debug, PartialEq)]
pub struct Supply {
    contents: BTreeMap<Analyte, Content>,
    /// Digestible energy. Of no use for donkeys, which go by weight and condition.
    pub energy: ForageEnergy,
    /// Where the contents come from.
    pub provenance: Provenance,
}

impl Supply {
    /// A content; `None` when nobody knows it, which is not zero.
    pub fn content(&self, analyte: Analyte) -> Option<Content> {
        self.contents.get(&analyte).copied()
    }

    /// The content of a nutrient; `None` when nobody knows it, which is not zero, and for vitamins.
    pub fn nutrient(&self, nutrient: Nutrient) -> Option<Content> {
        self.content(Analyte::of_nutrient(nutrient)?)
    }

    /// Everything that is known.
    pub fn contents(&self) -> impl Iterator<Item = (Analyte, Content)> + '_ {
        self.contents
            .iter()
            .map(|(analyte, content)| (*analyte, *content))
    }

    /// Everything that nobody knows.
    pub fn unknown(&self) -> impl Iterator<Item = Analyte> + '_ {
        Analyte::ALL
            .iter()
            .copied()
            .filter(|analyte| !self.contents.contains_key(analyte))
    }
}

/// What soaking takes out besides sugar: potassium, phosphorus and magnesium always; sodium, zinc and copper in some
/// trials. How much was not reached.
const fn washes_out(analyte: Analyte) -> bool {
    matches!(
        analyte,
        Analyte::Phosphorus
            | Analyte::Potassium
            | Analyte::Magnesium
            | Analyte::Sodium
            | Analyte::Chloride
            | Analyte::Zinc
            | Analyte::Copper
            | Analyte::Wsc
            | Analyte::Esc
            | Analyte::Nsc
    )
}

/// What a kilogram of a lot's dry matter brings as it is fed: tested values first, then the class. Iron, manganese,
/// selenium, iodine and cobalt of an untested forage are not known.
pub fn supply(lot: &Lot, fed: Fed) -> Supply {
    let profile = lot.class.profile();
    let as_fed = lot.report(fed);
    let dry = lot.report(Fed::Dry);
    let mut contents = BTreeMap::new();
    for analyte in Analyte::ALL.iter().copied() {
        let lost = fed == Fed::Soaked && washes_out(analyte);
        let tested = as_fed
            .and_then(|report| report.share(analyte))
            .map(|value| (value, None, ContentOrigin::Tested));
        let tested_dry = dry.and_then(|report| report.share(analyte)).map(|value| {
            let origin = if lost {
                ContentOrigin::TestedBeforeSoaking
            } else {
                ContentOrigin::Tested
            };
            (value, None, origin)
        });
        let of_class = profile.mean(analyte).map(|value| {
            let mark = profile.mark(analyte);
            let origin = if lost {
                ContentOrigin::ClassBeforeSoaking(mark)
            } else {
                ContentOrigin::Class(mark)
            };
            (value, profile.spread(analyte), origin)
        });
        if let Some((value, spread, origin)) = tested.or(tested_dry).or(of_class) {
            contents.insert(
                analyte,
                Content {
                    value,
                    spread,
                    origin,
                },
            );
        }
    }
    let record = [as_fed, dry]
        .into_iter()
        .flatten()
        .filter_map(|report| report.record())
        .fold(Provenance::new(), |all, record| {
            all.with(Source::Record(record.clone()))
        });
    Supply {
        contents,
        energy: if fed == Fed::Soaked && as_fed.is_none() {
            energy(dry, &profile).after_soaking()
        } else {
            energy(as_fed.or(dry), &profile)
        },
        provenance: record.and(&profile.provenance()),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::animal::LotId;
    use crate::forage::{Basis, EnergyOrigin, ForageClass, LabReport, RawReport};

    #[test]
    fn an_untested_hay_has_no_selenium_and_that_is_not_zero() {
        let lot = Lot::of_class(LotId("a".into()), "Top meadow", ForageClass::Grass);
        let supply = supply(&lot, Fed::Dry);
        assert_eq!(supply.content(Analyte::Selenium), None);
        assert!(supply.unknown().any(|analyte| analyte == Analyte::Iron));
        let calcium = supply.content(Analyte::Calcium).unwrap();
        assert!((calcium.value.to_percent() - 0.44).abs() < 1e-9);
        assert_eq!(calcium.origin, ContentOrigin::Class(Mark::Published));
        assert_eq!(supply.energy.origin, EnergyOrigin::Class);
    }

    #[test]
    fn a_tested_value_beats_the_class_and_soaking_marks_what_it_takes() {
        let mut lot = Lot::of_class(LotId("a".into()), "Top meadow", ForageClass::Grass);
        let raw = RawReport {
            dry_percent: Some(88.0),
            values: vec![(Analyte::Potassium, 1.76), (Analyte::Selenium, 0.088)],
            ..RawReport::empty(Basis::AsFed)
        };
        lot.reports.push(LabReport::read(raw).unwrap().0);
        let soaked = supply(&lot, Fed::Soaked);
        let potassium = soaked.content(Analyte::Potassium).unwrap();
        assert!((potassium.value.to_percent() - 2.0).abs() < 1e-9);
        assert_eq!(potassium.origin, ContentOrigin::TestedBeforeSoaking);
        let selenium = soaked.content(Analyte::Selenium).unwrap();
        assert!((selenium.value.to_mg_per_kg() - 0.1).abs() < 1e-9);
        assert_eq!(selenium.origin, ContentOrigin::Tested);
        let as_it_comes = supply(&lot, Fed::Dry).energy;
        assert!(soaked.energy.low < as_it_comes.low);
        assert_eq!(soaked.energy.high, as_it_comes.high);
        let zinc = soaked.content(Analyte::Zinc).unwrap();
        assert_eq!(
            zinc.origin,
            ContentOrigin::ClassBeforeSoaking(Mark::Published)
        );
    }
}
