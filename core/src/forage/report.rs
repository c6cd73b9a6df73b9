//! A laboratory report.

use super::analyte::Analyte;
use super::error::ForageError;
use super::lot::Fed;
use super::published::{
    CORES_FIELD, NSC_AGREES, PARTS_SUM_HIGH, PARTS_SUM_LOW, REPORTED_ENERGY, SUBSET_SLACK,
};
use crate::sources::RecordId;
use crate::units::{DryFraction, EnergyDensity, LocalDate, ShareOfAsFed, ShareOfDm};
use std::collections::BTreeMap;

/// What the numbers of a report are shares of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Basis {
    /// As fed, water and all.
    AsFed,
    /// Dry matter.
    DryMatter,
}

/// A report as it is typed: nothing checked, everything in the unit of its analyte.
#[derive(Clone, Debug, PartialEq)]
pub struct RawReport {
    /// What the numbers are shares of.
    pub basis: Basis,
    /// Whether the sample was taken after soaking.
    pub fed: Fed,
    /// Dry matter in percent of the sample as fed.
    pub dry_percent: Option<f64>,
    /// Digestible energy as the laboratory states it, in Mcal a kilogram of the basis.
    pub energy_mcal_per_kg: Option<f64>,
    /// What was measured.
    pub values: Vec<(Analyte, f64)>,
    /// From how many bales a core was taken, when known.
    pub cores: Option<u32>,
    /// The day of the report.
    pub on: Option<LocalDate>,
    /// The laboratory's name as typed.
    pub lab: Option<String>,
    /// The record it stands in, for the sources of a plan.
    pub record: Option<RecordId>,
}

impl RawReport {
    /// A report that gives nothing yet.
    pub const fn empty(basis: Basis) -> Self {
        Self {
            basis,
            fed: Fed::Dry,
            dry_percent: None,
            energy_mcal_per_kg: None,
            values: Vec::new(),
            cores: None,
            on: None,
            lab: None,
            record: None,
        }
    }
}

/// Something in a report that cannot be, or that a person should look at again. The report is kept.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum ReportFinding {
    /// More soluble in ethanol than in water: one of them is wrong, or they are exchanged. The larger counts as WSC.
    EscOverWsc {
        /// Ethanol-soluble.
        esc: ShareOfDm,
        /// Water-soluble.
        wsc: ShareOfDm,
    },
    /// More acid than neutral detergent fibre.
    AdfOverNdf {
        /// Acid detergent fibre.
        adf: ShareOfDm,
        /// Neutral detergent fibre.
        ndf: ShareOfDm,
    },
    /// The parts are more than the whole on dry matter; often the numbers were dry matter already.
    PartsOverWhole {
        /// Their sum.
        sum: ShareOfDm,
    },
    /// The parts are far less than the whole on dry matter; often the numbers were as fed.
    PartsUnderWhole {
        /// Their sum.
        sum: ShareOfDm,
    },
    /// The stated NSC is WSC + starch.
    NscIsWscStarch,
    /// The stated NSC is ESC + starch.
    NscIsEscStarch,
    /// The stated NSC is neither sum; it is not used where the parts are known.
    NscIsNeither {
        /// As stated.
        stated: ShareOfDm,
    },
    /// NSC alone: which sum the laboratory means is not known; it is taken as WSC + starch.
    NscUnexplained,
    /// A zero for something that is never absent; it is taken as not measured.
    ZeroTakenAsNotMeasured {
        /// Which.
        analyte: Analyte,
    },
    /// The same thing twice with different numbers; the larger is kept.
    GivenTwice {
        /// Which.
        analyte: Analyte,
    },
}

/// A report that was read: every value on dry matter.
#[derive(Clone, Debug, PartialEq)]
pub struct LabReport {
    basis: Basis,
    fed: Fed,
    dry: Option<DryFraction>,
    energy: Option<EnergyDensity>,
    values: BTreeMap<Analyte, ShareOfDm>,
    cores: Option<u32>,
    on: Option<LocalDate>,
    lab: Option<String>,
    record: Option<RecordId>,
}

impl LabReport {
    /// Reads a typed report: checks each range, brings it to dry matter, and notes what cannot be.
    pub fn read(raw: RawReport) -> Result<(Self, Vec<ReportFinding>), ForageError> {
        let dry = raw.dry_percent.map(DryFraction::percent).transpose()?;
        if raw.basis == Basis::AsFed && dry.is_none() {
            return Err(ForageError::AsFedWithoutDryMatter);
        }
        let cores = match raw.cores {
            Some(count) => {
                CORES_FIELD.check(f64::from(count))?;
                Some(count)
            }
            None => None,
        };
        // With the basis dry matter the part that is dry is the whole.
        let part = match (raw.basis, dry) {
            (Basis::AsFed, Some(dry)) => dry,
            _ => DryFraction::constant_percent(100.0),
        };
        let mut findings = Vec::new();
        let mut values = BTreeMap::new();
        for (analyte, typed) in raw.values {
            let typed = analyte.bounds().check(typed)?;
            if typed <= 0.0 && !analyte.can_be_zero() {
                findings.push(ReportFinding::ZeroTakenAsNotMeasured { analyte });
                continue;
            }
            let as_reported = analyte.share_of_dm(typed).to_fraction();
            let share = ShareOfAsFed::fraction(as_reported).of_dry(part);
            analyte.bounds().check(analyte.in_unit(share))?;
            match values.insert(analyte, share) {
                Some(before) if before != share => {
                    values.insert(analyte, share.max(before));
                    findings.push(ReportFinding::GivenTwice { analyte });
                }
                _ => {}
            }
        }
        let energy = match raw.energy_mcal_per_kg {
            Some(typed) => {
                let dense = REPORTED_ENERGY.check(typed)? / part.to_fraction();
                Some(EnergyDensity::mcal_per_kg(REPORTED_ENERGY.check(dense)?))
            }
            None => None,
        };
        if values.is_empty() && energy.is_none() && dry.is_none() {
            return Err(ForageError::EmptyReport);
        }
        let report = Self {
            basis: raw.basis,
            fed: raw.fed,
            dry,
            energy,
            values,
            cores,
            on: raw.on,
            lab: raw.lab,
            record: raw.record,
        };
        findings.extend(report.contradictions());
        Ok((report, findings))
    }

    /// A measured content of dry matter.
    pub fn share(&self, analyte: Analyte) -> Option<ShareOfDm> {
        self.values.get(&analyte).copied()
    }

    /// Everything measured, on dry matter.
    pub fn shares(&self) -> impl Iterator<Item = (Analyte, ShareOfDm)> + '_ {
        self.values
            .iter()
            .map(|(analyte, share)| (*analyte, *share))
    }

    /// The basis on which it was typed.
    pub const fn basis(&self) -> Basis {
        self.basis
    }

    /// Whether the sample was taken after soaking.
    pub const fn fed(&self) -> Fed {
        self.fed
    }

    /// Dry matter of the sample.
    pub const fn dry(&self) -> Option<DryFraction> {
        self.dry
    }

    /// Digestible energy as the laboratory states it, in dry matter.
    pub const fn energy(&self) -> Option<EnergyDensity> {
        self.energy
    }

    /// From how many bales a core was taken.
    pub const fn cores(&self) -> Option<u32> {
        self.cores
    }

    /// The day of the report.
    pub const fn on(&self) -> Option<LocalDate> {
        self.on
    }

    /// The laboratory's name as typed.
    pub fn lab(&self) -> Option<&str> {
        self.lab.as_deref()
    }

    /// The record it stands in.
    pub const fn record(&self) -> Option<&RecordId> {
        self.record.as_ref()
    }

    /// Starch; where it was not measured but follows from the stated NSC and WSC, that.
    pub fn starch(&self) -> Option<ShareOfDm> {
        self.share(Analyte::Starch).or_else(|| {
            let rest = self.share(Analyte::Nsc)? - self.share(Analyte::Wsc)?;
            (rest >= ShareOfDm::ZERO).then_some(rest)
        })
    }

    /// WSC; where ESC was found larger, that, since a part cannot exceed its whole.
    pub fn wsc(&self) -> Option<ShareOfDm> {
        let wsc = self.share(Analyte::Wsc)?;
        Some(self.share(Analyte::Esc).map_or(wsc, |esc| wsc.max(esc)))
    }

    /// A rough estimate of fructan, WSC - ESC. Too low: short fructan dissolves in ethanol.
    pub fn fructan(&self) -> Option<ShareOfDm> {
        Some(self.wsc()? - self.share(Analyte::Esc)?)
    }

    /// Carbohydrate by difference, 100 - protein - fibre - fat - ash (NFC). It holds pectin and acids: it is not NSC.
    /// `bound_protein` is the protein in the neutral fibre, which both count, where the laboratory gives it.
    pub fn by_difference(&self, bound_protein: Option<ShareOfDm>) -> Option<ShareOfDm> {
        let parts = [
            Analyte::CrudeProtein,
            Analyte::Ndf,
            Analyte::Fat,
            Analyte::Ash,
        ];
        let rest = parts
            .into_iter()
            .map(|part| self.share(part))
            .sum::<Option<ShareOfDm>>()?;
        let twice = bound_protein.unwrap_or(ShareOfDm::ZERO);
        Some(ShareOfDm::fraction(1.0) - rest + twice)
    }

    /// Calcium to phosphorus.
    pub fn calcium_to_phosphorus(&self) -> Option<f64> {
        Some(self.share(Analyte::Calcium)? / self.share(Analyte::Phosphorus)?)
    }

    fn contradictions(&self) -> Vec<ReportFinding> {
        let mut findings = Vec::new();
        let slack = ShareOfDm::percent(*SUBSET_SLACK);
        if let (Some(esc), Some(wsc)) = (self.share(Analyte::Esc), self.share(Analyte::Wsc))
            && esc > wsc + slack
        {
            findings.push(ReportFinding::EscOverWsc { esc, wsc });
        }
        if let (Some(adf), Some(ndf)) = (self.share(Analyte::Adf), self.share(Analyte::Ndf))
            && adf > ndf + slack
        {
            findings.push(ReportFinding::AdfOverNdf { adf, ndf });
        }
        findings.extend(self.sum_of_parts());
        findings.extend(self.meaning_of_nsc());
        findings
    }

    /// Protein, neutral fibre, fat, ash, sugar and starch are apart: together at most the whole, and most of it.
    fn sum_of_parts(&self) -> Option<ReportFinding> {
        let sugar = self.wsc().or_else(|| self.share(Analyte::Esc));
        let parts = [
            self.share(Analyte::CrudeProtein),
            self.share(Analyte::Ndf),
            self.share(Analyte::Ash),
            sugar,
            self.share(Analyte::Starch),
            self.share(Analyte::Fat),
        ];
        let sum: ShareOfDm = parts.iter().flatten().copied().sum();
        let complete = parts.iter().all(Option::is_some);
        if sum > ShareOfDm::percent(*PARTS_SUM_HIGH) {
            Some(ReportFinding::PartsOverWhole { sum })
        } else if complete && sum < ShareOfDm::percent(*PARTS_SUM_LOW) {
            Some(ReportFinding::PartsUnderWhole { sum })
        } else {
            None
        }
    }

    /// Whether the stated NSC, with starch known, is WSC + starch, ESC + starch, or neither.
    fn meaning_of_nsc(&self) -> Option<ReportFinding> {
        let stated = self.share(Analyte::Nsc)?;
        let starch = self.share(Analyte::Starch);
        let is = |sugar: Option<ShareOfDm>| {
            let sum = sugar? + starch?;
            let apart = (sum - stated).to_fraction().abs();
            Some(apart <= ShareOfDm::percent(*NSC_AGREES).to_fraction())
        };
        match (is(self.share(Analyte::Wsc)), is(self.share(Analyte::Esc))) {
            (Some(true), _) => Some(ReportFinding::NscIsWscStarch),
            (_, Some(true)) => Some(ReportFinding::NscIsEscStarch),
            (Some(false), _) | (_, Some(false)) => Some(ReportFinding::NscIsNeither { stated }),
            (None, None) if self.share(Analyte::Wsc).is_some() => None,
            (None, None) => Some(ReportFinding::NscUnexplained),
        }
    }

    /// The stated NSC where it is the only word on WSC + starch: not when it was found to be ESC + starch.
    pub(super) fn nsc_as_wsc_starch(&self) -> Option<ShareOfDm> {
        match self.meaning_of_nsc() {
            Some(ReportFinding::NscIsEscStarch) => None,
            _ => self.share(Analyte::Nsc),
        }
    }
}
