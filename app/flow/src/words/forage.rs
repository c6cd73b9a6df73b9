//! Hay and its like.

use super::Said;
use tussock_core::forage::{
    Analyte, AnalyteUnit, Basis, ContentOrigin, Doubt, DryOrigin, EnergyOrigin, Fault, Fed,
    ForageClass, ForageError, ForageKind, Hazard, Judgement, ReportFinding, SugarMeasure,
    SugarNote, SugarOrigin, TestOutlook, Verdict, WayOut,
};

/// Words for forage, its reports and its verdicts.
pub trait ForageWords {
    /// The verdict as a state: "within the limit", "over it", "not proven (3 in 10)".
    fn verdict(&self, verdict: Verdict) -> String;
    /// A judgement as a sentence with its figure, limit and what it rests on.
    fn judgement(&self, judgement: &Judgement) -> Said;
    /// What keeps a forage from being proven.
    fn doubt(&self, doubt: Doubt) -> String;
    /// What can be done: "Soak it".
    fn way_out(&self, way: WayOut) -> &'static str;
    /// "WSC + starch".
    fn sugar_measure(&self, measure: SugarMeasure) -> &'static str;
    /// What a verdict rests on.
    fn sugar_origin(&self, origin: SugarOrigin) -> &'static str;
    /// What else is true of it.
    fn sugar_note(&self, note: SugarNote) -> &'static str;
    /// What a test would likely say.
    fn test_outlook(&self, outlook: &TestOutlook) -> Said;
    /// A hazard, with what to do.
    fn hazard(&self, hazard: Hazard) -> Said;
    /// What is wrong with a lot: "mould or a musty smell".
    fn fault(&self, fault: Fault) -> &'static str;
    /// "Meadow hay".
    fn forage_class(&self, class: ForageClass) -> String;
    /// "Haylage".
    fn forage_kind(&self, kind: ForageKind) -> &'static str;
    /// "As it comes".
    fn fed(&self, fed: Fed) -> &'static str;
    /// "Starch".
    fn analyte(&self, analyte: Analyte) -> &'static str;
    /// "%".
    fn analyte_unit(&self, unit: AnalyteUnit) -> &'static str;
    /// What the numbers of a report are shares of.
    fn report_basis(&self, basis: Basis) -> &'static str;
    /// What to look at again in a report.
    fn report_finding(&self, finding: ReportFinding) -> Said;
    /// Where a dry matter comes from.
    fn dry_origin(&self, origin: DryOrigin) -> &'static str;
    /// Where an energy comes from.
    fn energy_origin(&self, origin: EnergyOrigin) -> &'static str;
    /// Where a content comes from.
    fn content_origin(&self, origin: ContentOrigin) -> String;
    /// Why a value was refused.
    fn forage_error(&self, error: &ForageError) -> String;
}
