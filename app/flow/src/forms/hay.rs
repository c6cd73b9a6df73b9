//! A lot of hay and its laboratory report, as typed.

mod pasted;

pub use pasted::{ForField, ForFields, read_for_fields};

use super::delivery;
use crate::acts::{Act, New};
use tussock_core::animal::LotId;
use tussock_core::forage::{
    Analyte, AnalyteUnit, Basis, Fed, ForageClass, ForageError, LabReport, RawReport, ReportFinding,
};
use tussock_core::log::bodies::base::{Decimal, Reported};
use tussock_core::log::bodies::{LabReportV1, LabValueV1, LotV1};
use tussock_core::log::{Body, Known, LogError, Name, Subject};
use tussock_core::sources::RecordId;
use tussock_core::units::parse::{ParseError, number};
use tussock_core::units::{DryFraction, LocalDate};

/// The classes with the words that stand in a draft; `None` is "do not know", for which the widest grass class stands in.
pub const CLASSES: [(Option<ForageClass>, &str); 17] = [
    (None, "unknown"),
    (Some(ForageClass::Meadow), "meadow"),
    (Some(ForageClass::Grass), "grass"),
    (Some(ForageClass::Ryegrass), "ryegrass"),
    (Some(ForageClass::TimothyOrchard), "timothy"),
    (Some(ForageClass::GrassLegume), "clover"),
    (Some(ForageClass::Lucerne), "lucerne"),
    (Some(ForageClass::Haylage), "haylage"),
    (Some(ForageClass::Oat), "oat"),
    (Some(ForageClass::Wheat), "wheat"),
    (Some(ForageClass::Barley), "barley"),
    (Some(ForageClass::Teff), "teff"),
    (Some(ForageClass::Bermuda), "bermuda"),
    (Some(ForageClass::Rhodes), "rhodes"),
    (Some(ForageClass::WheatStraw), "wheat-straw"),
    (Some(ForageClass::BarleyStraw), "barley-straw"),
    (Some(ForageClass::OatStraw), "oat-straw"),
];

/// The lines of a report in the order in which they are asked: what decides first.
pub const LINES: [Analyte; 20] = [
    Analyte::Wsc,
    Analyte::Esc,
    Analyte::Starch,
    Analyte::Nsc,
    Analyte::CrudeProtein,
    Analyte::Adf,
    Analyte::Ndf,
    Analyte::Fat,
    Analyte::Ash,
    Analyte::Calcium,
    Analyte::Phosphorus,
    Analyte::Magnesium,
    Analyte::Potassium,
    Analyte::Sodium,
    Analyte::Iron,
    Analyte::Copper,
    Analyte::Zinc,
    Analyte::Manganese,
    Analyte::Selenium,
    Analyte::Iodine,
];

/// What was typed.
#[derive(Clone, Debug, PartialEq)]
pub struct Typed {
    /// The name.
    pub name: String,
    /// The class: chosen or not, and then known or not.
    pub class: Option<Option<ForageClass>>,
    /// Dry matter in percent; empty when it was left out.
    pub dry: String,
    /// What the numbers of the report are shares of.
    pub basis: Option<Basis>,
    /// Whether the sample was taken after soaking.
    pub fed: Fed,
    /// The lines of the report, each in its unit; empty where it was left out.
    pub values: Vec<(Analyte, String)>,
    /// What came, and how it is stored.
    pub came: delivery::Typed,
}

/// What is wrong with a field.
#[derive(Clone, Debug, PartialEq)]
pub enum Wrong {
    /// No name.
    NoName,
    /// No class, and not "do not know" either.
    NoClass,
    /// Numbers of a report without their basis.
    NoBasis,
    /// Dry matter.
    Dry(ParseError),
    /// A line of the report.
    Line(Analyte, ParseError),
    /// The report.
    Report(ForageError),
    /// What came.
    Came(delivery::Wrong),
    /// It cannot be stored.
    Log(LogError),
}

impl From<LogError> for Wrong {
    fn from(error: LogError) -> Self {
        Self::Log(error)
    }
}

impl Typed {
    /// Whether a report was typed.
    pub fn has_report(&self) -> bool {
        self.values.iter().any(|(_, text)| !text.trim().is_empty())
    }

    /// What is understood of the report, and what to look at again; `None` while nothing of it was typed.
    ///
    /// # Errors
    /// Everything that is wrong with it.
    pub fn report(&self) -> Result<Option<(LabReport, Vec<ReportFinding>)>, Vec<Wrong>> {
        if !self.has_report() {
            return Ok(None);
        }
        let mut wrong = Vec::new();
        let mut values = Vec::new();
        for (analyte, text) in self.typed_values() {
            match line(analyte, text) {
                Ok(value) => values.push((analyte, value)),
                Err(error) => wrong.push(Wrong::Line(analyte, error)),
            }
        }
        let dry_percent = self.dry_percent().unwrap_or_else(|error| {
            wrong.push(error);
            None
        });
        if self.basis.is_none() {
            wrong.push(Wrong::NoBasis);
        }
        let Some(basis) = self.basis.filter(|_| wrong.is_empty()) else {
            return Err(wrong);
        };
        LabReport::read(RawReport {
            fed: self.fed,
            dry_percent,
            values,
            ..RawReport::empty(basis)
        })
        .map(Some)
        .map_err(|error| vec![Wrong::Report(error)])
    }

    fn typed_values(&self) -> impl Iterator<Item = (Analyte, &str)> {
        self.values
            .iter()
            .map(|(analyte, text)| (*analyte, text.trim()))
            .filter(|(_, text)| !text.is_empty())
    }

    fn dry_percent(&self) -> Result<Option<f64>, Wrong> {
        if self.dry.trim().is_empty() {
            return Ok(None);
        }
        number(&self.dry)
            .and_then(|percent| Ok(DryFraction::percent(percent)?.to_percent()))
            .map(Some)
            .map_err(Wrong::Dry)
    }

    /// The act that writes it: a new lot, or a new version of `before` to which the typed report is added.
    ///
    /// # Errors
    /// Everything that is wrong.
    pub fn act(
        &self,
        id: &LotId,
        before: Option<&LotV1>,
        today: LocalDate,
    ) -> Result<Act, Vec<Wrong>> {
        let mut wrong = Vec::new();
        let name = self.name.trim();
        if name.is_empty() {
            wrong.push(Wrong::NoName);
        }
        if self.class.is_none() {
            wrong.push(Wrong::NoClass);
        }
        if let Err(faults) = self.report() {
            wrong.extend(faults);
        } else if let Err(error) = self.dry_percent() {
            wrong.push(error);
        }
        let Some(class) = self.class.filter(|_| wrong.is_empty()) else {
            return Err(wrong);
        };
        let class = class.unwrap_or(ForageClass::Grass);
        let mut body = self
            .body(name, class, before)
            .map_err(|error| vec![Wrong::Log(error)])?;
        self.came
            .into_lot(&mut body, today)
            .map_err(|wrong| wrong.into_iter().map(Wrong::Came).collect::<Vec<_>>())?;
        Ok(written(id, Body::Lot(body), before.is_some()))
    }

    fn body(
        &self,
        name: &str,
        class: ForageClass,
        before: Option<&LotV1>,
    ) -> Result<LotV1, LogError> {
        let fresh = LotV1::of_class(name, class)?;
        let mut body = before.cloned().unwrap_or_else(|| fresh.clone());
        body.name = fresh.name;
        body.class = class;
        let dry = self.dry.trim();
        let dry = if dry.is_empty() {
            None
        } else {
            Some(reported(dry, "%")?)
        };
        if !self.has_report() {
            body.dry_matter = dry;
            return Ok(body);
        }
        let Some(basis) = self.basis else {
            return Ok(body);
        };
        let mut values = Vec::new();
        for (analyte, text) in self.typed_values() {
            values.push(LabValueV1 {
                analyte,
                name: None,
                reported: reported(text, unit(analyte))?,
            });
        }
        body.reports.push(LabReportV1 {
            basis,
            fed: self.fed,
            dry_matter: dry,
            energy: None,
            values,
            cores: None,
            on: None,
            lab: None,
            number: None,
        });
        Ok(body)
    }
}

/// The unit of a line as it is stored.
const fn unit(analyte: Analyte) -> &'static str {
    match analyte.unit() {
        AnalyteUnit::Percent => "%",
        AnalyteUnit::MgPerKg => "mg/kg",
    }
}

/// A line of a report as typed, in its own unit.
///
/// # Errors
/// What is no number, or none that is believed.
pub fn line(analyte: Analyte, typed: &str) -> Result<f64, ParseError> {
    let value = number(typed)?;
    Ok(analyte.bounds().check(value)?)
}

/// A value as it was reported: its digits with a point, and what was typed.
pub(super) fn reported(typed: &str, unit: &str) -> Result<Reported, LogError> {
    let digits = typed.replace(',', ".");
    let value = match (Decimal::new(&digits), number(typed)) {
        (Ok(value), _) => value,
        // Groups of thousands: the number that was understood.
        (Err(_), Ok(number)) => Decimal::new(&number.to_string())?,
        (Err(error), Err(_)) => return Err(error),
    };
    Ok(Reported {
        value,
        unit: Name::new(unit)?,
        typed: Some(typed.to_owned()),
    })
}

fn written(id: &LotId, body: Body, there: bool) -> Act {
    let record = RecordId(id.0.clone());
    if there {
        Act::Change {
            id: record,
            body,
            at: None,
        }
    } else {
        Act::Add(New {
            id: record,
            subject: Subject::lot(id),
            at: None,
            known: Known::Seen,
            body,
        })
    }
}

/// The act that takes a report off a lot; `None` where there is none at this place.
pub fn without_report(id: &LotId, before: &LotV1, index: usize) -> Option<Act> {
    let mut body = before.clone();
    if index < body.reports.len() {
        body.reports.remove(index);
        Some(written(id, Body::Lot(body), true))
    } else {
        None
    }
}

#[cfg(test)]
mod tests;
