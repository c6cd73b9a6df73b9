//! A lot of hay in English.

use super::English;
use super::numbers::up_to;
use crate::forms::hay::{ForField, Wrong};
use crate::words::{DeliveryWords, ForageWords, HayWords, HorsesWords, LogWords, UnitWords};
use tussock_core::forage::{Analyte, AnalyteUnit, DryEstimate, Fed, ReportLine};
use tussock_core::log::bodies::LabReportV1;

impl HayWords for English {
    fn which_hay(&self) -> &'static str {
        "Which hay is it?"
    }
    fn hay_name(&self) -> &'static str {
        "Name"
    }
    fn hay_name_hint(&self) -> &'static str {
        "As you would say it, for example by field and year."
    }
    fn hay_class(&self) -> &'static str {
        "What is it said to be?"
    }
    fn class_unknown(&self) -> &'static str {
        "Do not know"
    }
    fn class_unknown_means(&self) -> &'static str {
        "grass hay stands in"
    }
    fn dry_matter_label(&self) -> &'static str {
        "Dry matter"
    }
    fn dry_matter_hint(&self) -> &'static str {
        "Of the report, or measured. May be left out for hay: 88 % stands in."
    }
    fn lab_report(&self) -> &'static str {
        "Laboratory report"
    }
    fn lab_report_hint(&self) -> &'static str {
        "Type what is printed, in the unit shown. Leave out what is not there."
    }
    fn paste_report(&self) -> &'static str {
        "Paste a report"
    }
    fn pasted_report(&self) -> &'static str {
        "Text of the report"
    }
    fn report_read(&self, found: &ForField) -> String {
        let (what, unit) = match found.read.of {
            ReportLine::DryMatter => ("Dry matter", "%"),
            ReportLine::Of(analyte) => (self.analyte(analyte), self.line_unit(analyte)),
        };
        format!("{what}: {} {unit}", found.text)
    }
    fn report_doubts(&self, found: &ForField) -> Vec<String> {
        let read = &found.read;
        let unit = match read.of {
            ReportLine::DryMatter => "%",
            ReportLine::Of(analyte) => self.line_unit(analyte),
        };
        let mut doubts = Vec::new();
        if read.in_unit.is_none() {
            doubts.push(if read.unit_said.is_empty() {
                format!("No unit stands beside it: accept it only if it is {unit}.")
            } else {
                format!(
                    "Its unit, {}, is not understood: accept it only if it is {unit}.",
                    read.unit_said
                )
            });
        }
        if read.one_of_several {
            doubts.push("One of several readings or columns: one at most is right.".to_owned());
        }
        doubts
    }
    fn which_basis(&self) -> &'static str {
        "Which column are the numbers from?"
    }
    fn which_basis_hint(&self) -> &'static str {
        "A report often prints both, side by side."
    }
    fn sample_was(&self) -> &'static str {
        "The sample was taken"
    }
    fn sample(&self, fed: Fed) -> &'static str {
        match fed {
            Fed::Dry => "dry, as it comes",
            Fed::Soaked => "after soaking",
        }
    }
    fn line_echo(&self, analyte: Analyte, of_dry: f64) -> String {
        let unit = self.analyte_unit(analyte.unit());
        format!("{} {unit} of dry matter", up_to(of_dry, 2))
    }
    fn line_unit(&self, analyte: Analyte) -> &'static str {
        match analyte.unit() {
            AnalyteUnit::Percent => "%",
            AnalyteUnit::MgPerKg => "mg/kg",
        }
    }
    fn save_hay(&self) -> &'static str {
        "Save hay"
    }
    fn change_hay(&self) -> &'static str {
        "Change it, or add a report"
    }
    fn remove_report(&self) -> &'static str {
        "Remove this report"
    }
    fn hay_clear(&self, name: &str) -> String {
        format!("{name}: no animal here needs a sugar limit")
    }
    fn hay_verdict(&self, name: &str, verdict: &str) -> String {
        format!("{name}: sugar {verdict}")
    }
    fn ways_out(&self) -> &'static str {
        "What can be done"
    }
    fn dry_line(&self, dry: Option<&DryEstimate>) -> String {
        match dry {
            Some(dry) => format!(
                "Dry matter {}, {}",
                self.dry_fraction(dry.value),
                self.dry_origin(dry.origin)
            ),
            None => "Dry matter not known".to_owned(),
        }
    }
    fn report_line(&self, report: &LabReportV1) -> String {
        let count = self.count(report.values.len(), "value", "values");
        let on = report
            .on
            .map(|day| format!(", {}", self.date(day)))
            .unwrap_or_default();
        format!(
            "{count}, {}, {}{on}",
            super::fields::small(self.report_basis(report.basis)),
            super::fields::small(self.fed(report.fed))
        )
    }
    fn reports(&self) -> &'static str {
        "Laboratory reports"
    }
    fn no_such_hay(&self) -> &'static str {
        "This hay is not here"
    }
    fn hay_wrong(&self, wrong: &Wrong) -> String {
        match wrong {
            Wrong::NoName => "Type a name, so that nets can say which hay is in them.".to_owned(),
            Wrong::NoClass => self.choice_wanted().to_owned(),
            Wrong::NoBasis => {
                "Choose the column: as fed and dry matter differ by an eighth and more.".to_owned()
            }
            Wrong::Dry(error) | Wrong::Line(_, error) => self.parse_error(error),
            Wrong::Report(error) => self.forage_error(error),
            Wrong::Came(wrong) => self.delivery_wrong(wrong),
            Wrong::Log(error) => self.log_error(error),
        }
    }
    fn judged_for(&self) -> &'static str {
        "Judged for the strictest animal here."
    }
}
