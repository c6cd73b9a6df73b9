//! A laboratory report as pasted text, read into proposals.
//!
//! Nothing here is taken: each proposal stands beside the line it was read from, and the person accepts it or does not.

mod names;

use super::analyte::Analyte;
use crate::units::ShareOfDm;
use crate::units::printed::{
    BasesSaid, Counted, Named, Per, PrintedUnit, bases_said, named, printed,
};
use names::{PHRASES, SYMBOLS};

/// What a line of a report is of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum ReportLine {
    /// Dry matter.
    DryMatter,
    /// Something that was measured.
    Of(Analyte),
}

impl ReportLine {
    /// A share in percent or in milligrams a kilogram, as this line is counted.
    fn in_unit(self, share: ShareOfDm) -> f64 {
        match self {
            Self::DryMatter => share.to_percent(),
            Self::Of(analyte) => analyte.in_unit(share),
        }
    }
}

/// A number of a pasted report, with what it may say.
#[derive(Clone, Debug, PartialEq)]
pub struct ReportText {
    /// The line as it stands.
    pub line: String,
    /// Of what.
    pub of: ReportLine,
    /// The number as it stands in the line.
    pub number: String,
    /// As it is read.
    pub value: f64,
    /// The unit as it stands in the line; empty where there is none.
    pub unit_said: String,
    /// The number in the unit in which the line is counted; `None` where no unit stands there or it is not understood.
    pub in_unit: Option<f64>,
    /// Another number of this line is of the same thing, as in two columns: one at most is right.
    pub one_of_several: bool,
}

/// What was read of a pasted report.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct PastedReport {
    /// The numbers with a name, in the order of the text.
    pub found: Vec<ReportText>,
    /// Lines with numbers of which none was read.
    pub not_read: Vec<String>,
    /// What the text says of its basis: a hint only.
    pub bases: BasesSaid,
}

/// Reads a pasted report.
pub fn read_report(text: &str) -> PastedReport {
    let mut read = PastedReport {
        bases: bases_said(text),
        ..PastedReport::default()
    };
    for line in printed(text) {
        let mut found: Vec<ReportText> = Vec::new();
        let mut things: Vec<usize> = Vec::new();
        let (mut of, mut thing) = (Named::Nothing, 0);
        for (at, number) in line.numbers.iter().enumerate() {
            if !number.goes_on {
                of = named(number.before, PHRASES, SYMBOLS);
                thing = at;
            }
            let Named::One(of) = of else {
                continue;
            };
            for value in &number.readings {
                things.push(thing);
                found.push(ReportText {
                    line: line.line.to_owned(),
                    of,
                    number: number.number.to_owned(),
                    value: *value,
                    unit_said: number.unit_said.to_owned(),
                    in_unit: number
                        .unit
                        .and_then(|unit| share(*value, unit))
                        .map(|share| of.in_unit(share)),
                    one_of_several: false,
                });
            }
        }
        if found.is_empty() {
            read.not_read.push(line.line.to_owned());
        }
        for (proposal, thing) in found.iter_mut().zip(&things) {
            proposal.one_of_several = things.iter().filter(|other| *other == thing).count() > 1;
        }
        read.found.append(&mut found);
    }
    read
}

/// A number with its unit as a share; `None` for what is no share.
fn share(value: f64, unit: PrintedUnit) -> Option<ShareOfDm> {
    if unit.per != Per::Kilogram {
        return None;
    }
    match unit.counted {
        Counted::Percent => Some(ShareOfDm::percent(value)),
        // Ten grams in a kilogram are a percent.
        Counted::Gram => Some(ShareOfDm::percent(value / 10.0)),
        Counted::Milligram => Some(ShareOfDm::mg_per_kg(value)),
        Counted::Microgram => Some(ShareOfDm::mg_per_kg(value / 1000.0)),
        Counted::InternationalUnit | Counted::Megajoule | Counted::Megacalorie => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// An invented report in two columns, and lines in other units.
    const REPORT: &str = "\
Sample Lane field, received 12.05.2026
As sampled    Dry matter basis
Dry matter %  88.4
Crude protein, %  8.1  9.2
WSC 92 g/kg
ESC (simple sugars) 5,1 %
Sugar 7 %
NDF 61.0
Iron 120 ppm
Copper 0.7 mg/100g
Ca:P 2:1";

    #[test]
    fn a_report_is_read_in_the_unit_of_each_line() {
        let read = read_report(REPORT);
        let lines: Vec<(ReportLine, &str, Option<f64>, bool)> = read
            .found
            .iter()
            .map(|found| {
                let tenths = found.in_unit.map(|value| (value * 100.0).round() / 100.0);
                (
                    found.of,
                    found.number.as_str(),
                    tenths,
                    found.one_of_several,
                )
            })
            .collect();
        let of = ReportLine::Of;
        assert_eq!(
            lines,
            [
                (ReportLine::DryMatter, "88.4", Some(88.4), false),
                (of(Analyte::CrudeProtein), "8.1", Some(8.1), true),
                (of(Analyte::CrudeProtein), "9.2", Some(9.2), true),
                (of(Analyte::Wsc), "92", Some(9.2), false),
                (of(Analyte::Esc), "5,1", Some(5.1), false),
                (of(Analyte::Ndf), "61.0", None, false),
                (of(Analyte::Iron), "120", Some(120.0), false),
                (of(Analyte::Copper), "0.7", None, false),
            ]
        );
        assert!(read.bases.as_fed && read.bases.dry_matter);
        assert_eq!(read.not_read, ["Sugar 7 %"]);
    }

    #[test]
    fn every_analyte_has_a_name() {
        for analyte in Analyte::ALL {
            let of = ReportLine::Of(*analyte);
            assert!(PHRASES.iter().any(|(_, named)| *named == Some(of)));
        }
    }
}
