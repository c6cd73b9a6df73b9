//! The labels of a lot of hay.

use crate::forms::hay::{ForField, Wrong};
use tussock_core::forage::{Analyte, DryEstimate, Fed};
use tussock_core::log::bodies::LabReportV1;

/// What the screens of a lot say.
pub trait HayWords {
    /// The sentence of a new lot.
    fn which_hay(&self) -> &'static str;
    /// A field.
    fn hay_name(&self) -> &'static str;
    /// Its hint.
    fn hay_name_hint(&self) -> &'static str;
    /// A question.
    fn hay_class(&self) -> &'static str;
    /// "Do not know".
    fn class_unknown(&self) -> &'static str;
    /// What stands in for it.
    fn class_unknown_means(&self) -> &'static str;
    /// A field.
    fn dry_matter_label(&self) -> &'static str;
    /// Its hint.
    fn dry_matter_hint(&self) -> &'static str;
    /// The part of the laboratory report.
    fn lab_report(&self) -> &'static str;
    /// Its hint.
    fn lab_report_hint(&self) -> &'static str;
    /// Opens the pasted text of a report.
    fn paste_report(&self) -> &'static str;
    /// The field of that text.
    fn pasted_report(&self) -> &'static str;
    /// What a number of it was read as: "WSC: 9.2 %".
    fn report_read(&self, found: &ForField) -> String;
    /// What is not sure of it.
    fn report_doubts(&self, found: &ForField) -> Vec<String>;
    /// Asks for the basis, plainly.
    fn which_basis(&self) -> &'static str;
    /// Where it stands on a report.
    fn which_basis_hint(&self) -> &'static str;
    /// Whether the sample was soaked.
    fn sample_was(&self) -> &'static str;
    /// What a sample was.
    fn sample(&self, fed: Fed) -> &'static str;
    /// A line, understood: "10.2 % of dry matter".
    fn line_echo(&self, analyte: Analyte, of_dry: f64) -> String;
    /// The unit of a line.
    fn line_unit(&self, analyte: Analyte) -> &'static str;
    /// The action.
    fn save_hay(&self) -> &'static str;
    /// Opens the form on a lot.
    fn change_hay(&self) -> &'static str;
    /// Takes a report off.
    fn remove_report(&self) -> &'static str;
    /// The sentence while no rule asks for a verdict.
    fn hay_clear(&self, name: &str) -> String;
    /// The sentence: name and verdict.
    fn hay_verdict(&self, name: &str, verdict: &str) -> String;
    /// The list of ways out.
    fn ways_out(&self) -> &'static str;
    /// The dry matter, with where it comes from.
    fn dry_line(&self, dry: Option<&DryEstimate>) -> String;
    /// A report as a line.
    fn report_line(&self, report: &LabReportV1) -> String;
    /// The reports, as a list.
    fn reports(&self) -> &'static str;
    /// The lot is not here.
    fn no_such_hay(&self) -> &'static str;
    /// What is wrong with a field.
    fn hay_wrong(&self, wrong: &Wrong) -> String;
    /// For whom it was judged.
    fn judged_for(&self) -> &'static str;
}
