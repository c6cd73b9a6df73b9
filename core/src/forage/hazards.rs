//! What else to look at in a forage besides its sugar.

use super::class::{ForageClass, ForageKind};
use super::lot::{Fed, Lot};
use super::published as p;
use crate::units::{DryFraction, DryMatter};

/// Something wrong with a lot to the eye and the nose.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Fault {
    /// Mould, or a musty smell.
    Mould,
    /// Dusty.
    Dust,
    /// Hot inside, or a smell of caramel.
    Heated,
    /// A dead animal in it.
    DeadAnimal,
    /// Ragwort or another poisonous plant in it.
    PoisonousPlant,
    /// The wrapping of haylage is torn.
    TornWrap,
}

/// A hazard of a forage in a ration.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Hazard {
    /// Do not feed it.
    Discard(Fault),
    /// Dusty: damp it or steam it, and watch for coughing.
    Dusty,
    /// More lucerne than is usual for animals kept for weight or at risk.
    LucerneOverShare {
        /// Its part of the forage dry matter, 0 to 1.
        part: f64,
        /// The highest usual part.
        most: f64,
    },
    /// Some animals do worse on lucerne: watch.
    LucerneWatch,
    /// Haylage is not soaked.
    HaylageNotSoaked,
    /// Haylage of which nobody knows the dry matter: it must be asked.
    HaylageDryMatterUnknown,
    /// Cereal hay is high until tested.
    CerealHighUntilTested,
    /// Hay so damp that it moulds in store.
    Damp {
        /// Its dry matter.
        dry: DryFraction,
    },
}

/// The hazards of a lot in a ration: as it is fed, and how much of the forage dry matter it makes up.
pub fn hazards(lot: &Lot, fed: Fed, its_dry: DryMatter, all_forage: DryMatter) -> Vec<Hazard> {
    let mut found: Vec<Hazard> = lot
        .faults
        .iter()
        .map(|fault| match fault {
            Fault::Dust => Hazard::Dusty,
            Fault::Mould
            | Fault::Heated
            | Fault::DeadAnimal
            | Fault::PoisonousPlant
            | Fault::TornWrap => Hazard::Discard(*fault),
        })
        .collect();
    if lot.class == ForageClass::Lucerne {
        let part = if all_forage > DryMatter::ZERO {
            its_dry / all_forage
        } else {
            0.0
        };
        if part > *p::LUCERNE_MOST {
            found.push(Hazard::LucerneOverShare {
                part,
                most: *p::LUCERNE_MOST,
            });
        }
        if part > 0.0 {
            found.push(Hazard::LucerneWatch);
        }
    }
    if lot.class.kind() == ForageKind::Haylage {
        if fed == Fed::Soaked {
            found.push(Hazard::HaylageNotSoaked);
        }
        if lot.dry_matter().is_none() {
            found.push(Hazard::HaylageDryMatterUnknown);
        }
    }
    let tested = lot.report(fed).is_some_and(|report| {
        report.wsc().is_some()
            || report.share(super::Analyte::Esc).is_some()
            || report.share(super::Analyte::Nsc).is_some()
    });
    if lot.class.is_cereal_hay() && !tested {
        found.push(Hazard::CerealHighUntilTested);
    }
    if lot.class.kind() == ForageKind::Hay
        && let Some(dry) = lot.dry_matter()
        && dry.value < *p::DAMP_HAY
    {
        found.push(Hazard::Damp { dry: dry.value });
    }
    found
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::animal::LotId;

    fn lot(class: ForageClass) -> Lot {
        Lot::of_class(LotId("a".into()), "a", class)
    }

    #[test]
    fn a_third_of_lucerne_is_over_its_share_and_a_fifth_is_watched() {
        let hazards_at = |kg| {
            hazards(
                &lot(ForageClass::Lucerne),
                Fed::Dry,
                DryMatter::kg(kg),
                DryMatter::kg(7.5),
            )
        };
        assert!(matches!(
            hazards_at(2.5).as_slice(),
            [Hazard::LucerneOverShare { part, .. }, Hazard::LucerneWatch] if (part - 0.333).abs() < 0.001
        ));
        assert_eq!(hazards_at(1.5), [Hazard::LucerneWatch]);
    }

    #[test]
    fn haylage_is_not_soaked_and_mouldy_hay_is_not_fed() {
        let all = DryMatter::kg(5.0);
        let wet = hazards(&lot(ForageClass::Haylage), Fed::Soaked, all, all);
        assert!(wet.contains(&Hazard::HaylageNotSoaked));
        let mut hay = lot(ForageClass::Grass);
        assert!(hazards(&hay, Fed::Dry, all, all).is_empty());
        hay.faults.push(Fault::Mould);
        hay.dry = Some(DryFraction::percent(80.0).unwrap());
        let found = hazards(&hay, Fed::Dry, all, all);
        assert!(found.contains(&Hazard::Discard(Fault::Mould)));
        assert!(matches!(found.last(), Some(Hazard::Damp { .. })));
        let oats = hazards(&lot(ForageClass::Oat), Fed::Dry, all, all);
        assert_eq!(oats, [Hazard::CerealHighUntilTested]);
    }
}
