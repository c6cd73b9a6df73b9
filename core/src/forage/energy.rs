//! Digestible energy from analysis. No equation here is for donkeys.

use super::analyte::Analyte;
use super::class::ClassProfile;
use super::error::ForageError;
use super::published as p;
use super::report::LabReport;
use crate::sources::{Provenance, Source};
use crate::units::{EnergyDensity, ShareOfDm};

/// Where a forage's energy comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum EnergyOrigin {
    /// Pagan's equation on the report.
    Pagan,
    /// The forage equation on the report.
    ForageEquation,
    /// The laboratory stated it.
    Stated,
    /// The mean of the class.
    Class,
}

/// Digestible energy of dry matter, with its band.
#[derive(Clone, Debug, PartialEq)]
pub struct ForageEnergy {
    /// What is reckoned with.
    pub value: EnergyDensity,
    /// The lowest likely.
    pub low: EnergyDensity,
    /// The highest likely.
    pub high: EnergyDensity,
    /// Where it comes from.
    pub origin: EnergyOrigin,
    /// Its sources.
    pub provenance: Provenance,
}

impl ForageEnergy {
    /// The same after soaking, tested dry only: a kilogram of what is left may hold a tenth less.
    pub(super) fn after_soaking(self) -> Self {
        Self {
            low: self.low * (1.0 - *p::SOAKED_ENERGY_LESS),
            provenance: self.provenance.constant(&p::SOAKED_ENERGY_LESS),
            ..self
        }
    }
}

/// The forage equation (Fonnesbeck 1981, as in NRC 1989 and 2007; coefficients from memory), Mcal/kg of dry matter:
/// DE = 4.22 - 0.11 ADF + 0.0332 CP + 0.00112 ADF^2, in percent of dry matter, for ADF of 25 to 45 % only: above 49 %
/// it would give more energy for more fibre.
pub fn forage_equation(adf: ShareOfDm, protein: ShareOfDm) -> Result<EnergyDensity, ForageError> {
    let fibre = adf.to_percent();
    // Hundred times a hundredth may miss a whole percent by the last bit: compare as shares.
    let inside = ShareOfDm::percent(p::FORAGE_EQUATION_ADF.min) <= adf
        && adf <= ShareOfDm::percent(p::FORAGE_EQUATION_ADF.max);
    if !inside {
        return Err(ForageError::OutsideEquation {
            analyte: Analyte::Adf,
            value: fibre,
            allowed: *p::FORAGE_EQUATION_ADF,
        });
    }
    let [constant, per_adf, per_protein, per_adf_squared] = *p::FORAGE_EQUATION;
    Ok(EnergyDensity::mcal_per_kg(
        constant
            + per_adf * fibre
            + per_protein * protein.to_percent()
            + per_adf_squared * fibre * fibre,
    ))
}

/// Pagan's equation (1998, as used with NRC 2007; coefficients from memory), on a full analysis:
/// DE (kcal/kg of dry matter) = 2118 + 12.18 CP - 9.37 ADF - 3.83 (NDF - ADF) + 47.18 fat + 20.35 rest - 26.3 ash, in
/// percent of dry matter, where the rest is 100 - CP - NDF - fat - ash. Not for feeds above 5 % fat.
pub fn pagan_equation(report: &LabReport) -> Result<EnergyDensity, ForageError> {
    let percent = |analyte| {
        report
            .share(analyte)
            .map(ShareOfDm::to_percent)
            .ok_or(ForageError::EnergyLacks { analyte })
    };
    let protein = percent(Analyte::CrudeProtein)?;
    let adf = percent(Analyte::Adf)?;
    let ndf = percent(Analyte::Ndf)?;
    let fat = percent(Analyte::Fat)?;
    let ash = percent(Analyte::Ash)?;
    if fat > p::PAGAN_FAT.max {
        return Err(ForageError::OutsideEquation {
            analyte: Analyte::Fat,
            value: fat,
            allowed: *p::PAGAN_FAT,
        });
    }
    let rest = 100.0 - protein - ndf - fat - ash;
    let [
        constant,
        per_protein,
        per_adf,
        per_hemicellulose,
        per_fat,
        per_rest,
        per_ash,
    ] = *p::PAGAN;
    let kcal = constant
        + per_protein * protein
        + per_adf * adf
        + per_hemicellulose * (ndf - adf)
        + per_fat * fat
        + per_rest * rest
        + per_ash * ash;
    Ok(EnergyDensity::mcal_per_kg(kcal / 1000.0))
}

/// The best energy there is: Pagan's equation, else the forage equation, else what the laboratory stated, else the
/// class; each within 0.2 Mcal/kg.
pub(super) fn energy(report: Option<&LabReport>, class: &ClassProfile) -> ForageEnergy {
    let tested = report.and_then(|report| {
        let record = report.record().map(|record| Source::Record(record.clone()));
        let from = |origin, value, provenance: Provenance| {
            let provenance = record
                .clone()
                .into_iter()
                .fold(provenance, Provenance::with);
            band(value, origin, provenance)
        };
        if let Ok(value) = pagan_equation(report) {
            let source = Provenance::new().constant(&p::PAGAN);
            return Some(from(EnergyOrigin::Pagan, value, source));
        }
        let by_fibre = report
            .share(Analyte::Adf)
            .zip(report.share(Analyte::CrudeProtein))
            .and_then(|(adf, protein)| forage_equation(adf, protein).ok());
        if let Some(value) = by_fibre {
            let source = Provenance::new().constant(&p::FORAGE_EQUATION);
            return Some(from(EnergyOrigin::ForageEquation, value, source));
        }
        let value = report.energy()?;
        Some(from(EnergyOrigin::Stated, value, Provenance::new()))
    });
    tested.unwrap_or_else(|| {
        let source = Provenance::new().constant(class.means);
        band(class.energy(), EnergyOrigin::Class, source)
    })
}

fn band(value: EnergyDensity, origin: EnergyOrigin, provenance: Provenance) -> ForageEnergy {
    let half = EnergyDensity::mcal_per_kg(*p::ENERGY_HALF_BAND);
    ForageEnergy {
        value,
        low: value - half,
        high: value + half,
        origin,
        provenance: provenance.constant(&p::ENERGY_HALF_BAND),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::forage::{Basis, ForageClass, RawReport};

    fn report(values: &[(Analyte, f64)]) -> LabReport {
        let raw = RawReport {
            values: values.to_vec(),
            ..RawReport::empty(Basis::DryMatter)
        };
        LabReport::read(raw).unwrap().0
    }

    #[test]
    fn the_forage_equation_refuses_straw() {
        let percent = ShareOfDm::percent;
        assert!(forage_equation(percent(53.0), percent(4.5)).is_err());
        assert!(forage_equation(percent(45.0), percent(5.0)).is_ok());
        assert!(forage_equation(percent(25.0), percent(20.0)).is_ok());
        assert!(forage_equation(percent(24.9), percent(20.0)).is_err());
    }

    #[test]
    fn the_fullest_analysis_is_used_first() {
        let class = ForageClass::Grass.profile();
        let full = report(&[
            (Analyte::CrudeProtein, 13.28),
            (Analyte::Adf, 35.52),
            (Analyte::Ndf, 58.01),
            (Analyte::Fat, 3.233),
            (Analyte::Ash, 8.567),
        ]);
        assert_eq!(energy(Some(&full), &class).origin, EnergyOrigin::Pagan);
        let short = report(&[(Analyte::CrudeProtein, 10.8), (Analyte::Adf, 36.0)]);
        assert_eq!(
            energy(Some(&short), &class).origin,
            EnergyOrigin::ForageEquation
        );
        let sugar_only = report(&[(Analyte::Wsc, 9.0)]);
        let fallback = energy(Some(&sugar_only), &class);
        assert_eq!(fallback.origin, EnergyOrigin::Class);
        assert!(fallback.low < fallback.value && fallback.value < fallback.high);
    }

    #[test]
    fn a_missing_value_is_named_and_never_zero() {
        let lacks = pagan_equation(&report(&[
            (Analyte::CrudeProtein, 10.0),
            (Analyte::Adf, 38.0),
            (Analyte::Ndf, 62.0),
            (Analyte::Ash, 8.0),
        ]));
        assert_eq!(
            lacks,
            Err(ForageError::EnergyLacks {
                analyte: Analyte::Fat
            })
        );
    }
}
