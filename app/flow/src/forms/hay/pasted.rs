//! A pasted laboratory report: which field a number goes into, and as what text.

use super::LINES;
use tussock_core::forage::{PastedReport, ReportLine, ReportText, read_report};
use tussock_core::units::parse::number;
use tussock_core::units::show::fixed;

/// The field of dry matter in a draft.
const DRY: &str = "dry";

/// Decimals that are kept of a number that was brought to another unit; those at the end that say nothing fall.
const KEPT: usize = 6;

/// A number of a pasted report with the field it can go into.
#[derive(Clone, Debug, PartialEq)]
pub struct ForField {
    /// What was read.
    pub read: ReportText,
    /// The field, by its name in a draft.
    pub field: &'static str,
    /// What stands in the field once it is accepted: in the field's unit, as printed where that is the same.
    pub text: String,
}

/// What was read of a pasted report and has a field here, and the rest.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct ForFields {
    /// Numbers that can be accepted.
    pub found: Vec<ForField>,
    /// What was read.
    pub read: PastedReport,
}

/// Reads a pasted report for the fields of the form.
pub fn read_for_fields(text: &str) -> ForFields {
    let mut read = read_report(text);
    let mut found = Vec::new();
    for number in std::mem::take(&mut read.found) {
        match field(number.of) {
            Some(field) => found.push(ForField {
                text: text_of(&number),
                read: number,
                field,
            }),
            None => read.not_read.push(number.line),
        }
    }
    read.not_read.dedup();
    ForFields { found, read }
}

fn field(of: ReportLine) -> Option<&'static str> {
    match of {
        ReportLine::DryMatter => Some(DRY),
        ReportLine::Of(analyte) => LINES.contains(&analyte).then(|| analyte.field()),
    }
}

fn text_of(read: &ReportText) -> String {
    let plain = |value: f64| {
        let text = fixed(value, KEPT);
        text.trim_end_matches('0').trim_end_matches('.').to_owned()
    };
    match read.in_unit {
        Some(value) if (value - read.value).abs() > f64::EPSILON * value.abs() => plain(value),
        _ if number(&read.number).is_ok() => read.number.clone(),
        _ => plain(read.value),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_number_goes_into_its_field_in_the_unit_of_the_field() {
        let read = read_for_fields(
            "Dry matter 88,4 %\nWSC 92.3 g/kg\nIron 0.012 %\nNDF 61.0\nSulphur 0.2 %\nZinc 1,250 ppm",
        );
        let fields: Vec<(&str, &str)> = read
            .found
            .iter()
            .map(|found| (found.field, found.text.as_str()))
            .collect();
        assert_eq!(
            fields,
            [
                ("dry", "88,4"),
                ("wsc_percent", "9.23"),
                ("iron_mg_per_kg", "120"),
                ("ndf_percent", "61.0"),
                ("zinc_mg_per_kg", "1.25"),
                ("zinc_mg_per_kg", "1250"),
            ]
        );
        // There is no field for it.
        assert_eq!(read.read.not_read, ["Sulphur 0.2 %"]);
    }
}
