//! What is believed of the sugar of a lot, of a soaked net, of a whole day.

use super::analyte::Analyte;
use super::chance::{Belief, joint};
use super::class::ForageClass;
use super::lot::{Fed, Lot};
use super::published as p;
use super::report::LabReport;
use super::sampling::test_spread;
use crate::sources::{Provenance, Source};
use crate::units::{DryMatter, ShareOfDm};
use std::collections::BTreeSet;

/// What a sugar estimate rests on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum SugarOrigin {
    /// A laboratory tested this lot as it is fed.
    Tested,
    /// Only its class is known.
    Class,
    /// The hay was soaked and only the dry hay is known.
    SoakedUntested,
    /// A mix of several.
    Mixed,
}

/// What may be true of some of a forage or a mix, and bears on its verdict.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum SugarNote {
    /// Nobody tested it; only its class is known.
    Untested,
    /// Starch was not tested and a default stands in.
    StarchAssumed,
    /// WSC + starch was reckoned from ESC + starch.
    WscFromEsc,
    /// It is haylage.
    Haylage,
    /// It is untested cereal hay.
    CerealUntested,
    /// It is grass.
    Grass,
}

/// What is believed of the sugar, the two measures kept apart.
#[derive(Clone, Debug, PartialEq)]
pub struct SugarEstimate {
    /// Water-soluble carbohydrate + starch (NSC).
    pub wsc_starch: Option<Belief>,
    /// Ethanol-soluble carbohydrate + starch.
    pub esc_starch: Option<Belief>,
    /// Water-soluble carbohydrate alone, the part that soaking takes from.
    pub wsc: Option<Belief>,
    /// What it rests on.
    pub origin: SugarOrigin,
    /// What else is true of some of it.
    pub notes: BTreeSet<SugarNote>,
    /// Part of the dry matter whose sugar nobody knows, 0 to 1.
    pub unknown_part: f64,
    /// The part of the sugar that is still in it when soaking took the most it may, 0 to 1; 1 when it is not soaked.
    pub least_left: f64,
    /// Its sources.
    pub provenance: Provenance,
}

impl SugarEstimate {
    /// Whether a note holds for some of it.
    pub fn has(&self, note: SugarNote) -> bool {
        self.notes.contains(&note)
    }
}

fn notes<const N: usize>(holds: [(bool, SugarNote); N]) -> BTreeSet<SugarNote> {
    holds
        .into_iter()
        .filter_map(|(holds, note)| holds.then_some(note))
        .collect()
}

/// The sugar of a lot as it is fed. Hay fed soaked without a test of the soaked hay is what the dry hay is, marked.
pub fn estimate(lot: &Lot, fed: Fed) -> SugarEstimate {
    if let Some(tested) = lot.report(fed).and_then(|report| tested(report, lot.class)) {
        return tested;
    }
    match fed {
        Fed::Dry => of_class(lot.class),
        Fed::Soaked => SugarEstimate {
            origin: SugarOrigin::SoakedUntested,
            ..estimate(lot, Fed::Dry)
        },
    }
}

/// The sugar of an untested forage of a class.
fn of_class(class: ForageClass) -> SugarEstimate {
    let profile = class.profile();
    let (starch, _) = default_starch(class);
    let nsc = profile.nsc();
    SugarEstimate {
        wsc_starch: Some(nsc),
        esc_starch: None,
        wsc: Some(Belief {
            mean: (nsc.mean - starch.mean).max(ShareOfDm::ZERO),
            spread: nsc.spread,
        }),
        origin: SugarOrigin::Class,
        notes: notes([
            (true, SugarNote::Untested),
            (class == ForageClass::Haylage, SugarNote::Haylage),
            (class.is_cereal_hay(), SugarNote::CerealUntested),
        ]),
        unknown_part: 0.0,
        least_left: 1.0,
        provenance: profile.sugar_provenance(),
    }
}

/// The sugar by a report; `None` when it says nothing of sugar.
fn tested(report: &LabReport, class: ForageClass) -> Option<SugarEstimate> {
    let lab = test_spread(report.cores());
    let measured = |mean| Belief { mean, spread: lab };
    let mut provenance = report
        .record()
        .map(|record| Source::Record(record.clone()))
        .into_iter()
        .fold(
            Provenance::new().constant(&p::TEST_SPREAD),
            Provenance::with,
        );
    let esc = report.share(Analyte::Esc);
    let wsc = report.wsc();
    let stated = report.nsc_as_wsc_starch();
    if esc.is_none() && wsc.is_none() && stated.is_none() {
        return None;
    }
    let (starch, starch_assumed) = if let Some(starch) = report.starch() {
        (measured(starch), false)
    } else {
        let (belief, source) = default_starch(class);
        provenance = provenance.and(&source);
        (belief, true)
    };
    // The laboratory's spread is that of the sum; a starch that is only the class's adds its own.
    let with_starch = |sugar: ShareOfDm| Belief {
        mean: sugar + starch.mean,
        spread: if starch_assumed {
            joint(lab, starch.spread)
        } else {
            lab
        },
    };
    let esc_starch = esc.map(with_starch);
    let from_wsc = wsc.map(with_starch).or_else(|| stated.map(measured));
    let (wsc_starch, wsc_from_esc) = match (from_wsc, esc) {
        (Some(known), _) => (Some(known), false),
        (None, Some(esc)) => {
            let (ratio, half) = esc_of_wsc(class);
            provenance = provenance.and(&ratio_source(class));
            let wsc = esc / ratio;
            let ratio_spread = wsc * (half / ratio);
            let reckoned = Belief {
                mean: wsc + starch.mean,
                spread: joint(joint(lab / ratio, ratio_spread), starch.spread),
            };
            (Some(reckoned), true)
        }
        (None, None) => (None, false),
    };
    let wsc_alone = wsc.map(measured).or_else(|| {
        wsc_starch.map(|sum| Belief {
            mean: (sum.mean - starch.mean).max(ShareOfDm::ZERO),
            spread: sum.spread,
        })
    });
    let needs_starch = wsc.is_some() || esc.is_some();
    Some(SugarEstimate {
        wsc_starch,
        esc_starch,
        wsc: wsc_alone,
        origin: SugarOrigin::Tested,
        notes: notes([
            (starch_assumed && needs_starch, SugarNote::StarchAssumed),
            (wsc_from_esc, SugarNote::WscFromEsc),
            (class == ForageClass::Haylage, SugarNote::Haylage),
        ]),
        unknown_part: 0.0,
        least_left: 1.0,
        provenance,
    })
}

/// Starch where nobody tested it: 1 % in grass hay, taken as it is; elsewhere the class's, with its spread.
fn default_starch(class: ForageClass) -> (Belief, Provenance) {
    let profile = class.profile();
    if !class.is_grass_hay()
        && let Some(mean) = profile.mean(Analyte::Starch)
    {
        let spread = profile.spread(Analyte::Starch).unwrap_or(ShareOfDm::ZERO);
        return (Belief { mean, spread }, profile.provenance());
    }
    let grass = Belief {
        mean: ShareOfDm::percent(*p::GRASS_STARCH),
        spread: ShareOfDm::ZERO,
    };
    (grass, Provenance::new().constant(&p::GRASS_STARCH))
}

/// ESC as a part of WSC, and how far that may be off.
fn esc_of_wsc(class: ForageClass) -> (f64, f64) {
    let ratio = if class == ForageClass::Lucerne {
        *p::ESC_OF_WSC_LUCERNE
    } else {
        *p::ESC_OF_WSC_GRASS
    };
    (ratio, *p::ESC_OF_WSC_SPREAD)
}

fn ratio_source(class: ForageClass) -> Provenance {
    let source = Provenance::new().constant(&p::ESC_OF_WSC_SPREAD);
    if class == ForageClass::Lucerne {
        source.constant(&p::ESC_OF_WSC_LUCERNE)
    } else {
        source.constant(&p::ESC_OF_WSC_GRASS)
    }
}

/// One part of a day's dry matter.
#[derive(Clone, Debug, PartialEq)]
pub struct MixPart {
    /// How much dry matter.
    pub dry: DryMatter,
    /// Its sugar; `None` when nobody knows it.
    pub sugar: Option<SugarEstimate>,
}

/// The part of a mix's sugar that stays when soaking takes the most it may from the parts that are soaked.
fn least_left(known: &[(f64, &SugarEstimate)]) -> f64 {
    let sugar = |part: f64, sugar: &SugarEstimate| {
        let mean = sugar.wsc_starch.or(sugar.esc_starch);
        mean.map_or(0.0, |belief| belief.mean.to_fraction() * part)
    };
    let before: f64 = known.iter().map(|(part, s)| sugar(*part, s)).sum();
    let after: f64 = known
        .iter()
        .map(|(part, s)| sugar(*part, s) * s.least_left)
        .sum();
    if before > 0.0 { after / before } else { 1.0 }
}

/// The sugar of several parts together, weighed by dry matter. The errors of two lots are independent.
///
/// ESC + starch is given only when every part has it: the two measures are never added into one. A part of unknown
/// sugar leaves both unknown and is counted in `unknown_part`. Parts of no weight are left out; `None` when nothing is
/// left.
pub fn mix(parts: &[MixPart]) -> Option<SugarEstimate> {
    let eaten: Vec<&MixPart> = parts
        .iter()
        .filter(|part| part.dry > DryMatter::ZERO && part.dry.is_finite())
        .collect();
    if let [only] = eaten.as_slice()
        && let Some(sugar) = &only.sugar
    {
        return Some(sugar.clone());
    }
    let whole: DryMatter = eaten.iter().map(|part| part.dry).sum();
    if whole <= DryMatter::ZERO {
        return None;
    }
    let known: Vec<(f64, &SugarEstimate)> = eaten
        .iter()
        .filter_map(|part| Some((part.dry / whole, part.sugar.as_ref()?)))
        .collect();
    let unknown = eaten
        .iter()
        .filter(|part| part.sugar.is_none())
        .map(|part| part.dry / whole)
        .sum::<f64>()
        + known
            .iter()
            .map(|(part, sugar)| part * sugar.unknown_part)
            .sum::<f64>();
    let all_known = known.len() == eaten.len();
    let together = |measure: fn(&SugarEstimate) -> Option<Belief>| {
        let parts: Option<Vec<Belief>> = known
            .iter()
            .map(|(part, sugar)| Some(measure(sugar)?.diluted(*part)))
            .collect();
        let nothing = Belief {
            mean: ShareOfDm::ZERO,
            spread: ShareOfDm::ZERO,
        };
        parts
            .filter(|_| all_known)
            .map(|parts| parts.into_iter().fold(nothing, Belief::plus))
    };
    let soaked = known
        .iter()
        .any(|(_, sugar)| sugar.origin == SugarOrigin::SoakedUntested);
    Some(SugarEstimate {
        wsc_starch: together(|sugar| sugar.wsc_starch),
        esc_starch: together(|sugar| sugar.esc_starch),
        wsc: together(|sugar| sugar.wsc),
        origin: if soaked {
            SugarOrigin::SoakedUntested
        } else {
            SugarOrigin::Mixed
        },
        notes: known
            .iter()
            .flat_map(|(_, sugar)| sugar.notes.iter().copied())
            .collect(),
        unknown_part: unknown,
        least_left: least_left(&known),
        provenance: known.iter().fold(Provenance::new(), |all, (_, sugar)| {
            all.and(&sugar.provenance)
        }),
    })
}
