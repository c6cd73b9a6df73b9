//! A forage lot with its laboratory reports, as reported.

use super::base::{Count, FeedWeight, Reported};
use super::delivery::DeliveryV1;
use super::reported::{MG_PER_KG_IN_PERCENT, mcal_per_kg, percent};
use crate::animal::LotId;
use crate::forage::{
    Analyte, AnalyteUnit, Basis, Delivery, Fault, Fed, ForageClass, ForageError, LabReport, Lot,
    Price, RawReport, ReportFinding, bale_weight, sampled,
};
use crate::log::error::{LogError, Path};
use crate::log::stored::{Name, tagged, twin, words};
use crate::sources::RecordId;
use crate::units::{AsFed, DryFraction, LocalDate, Money, OutOfRange};

words!(ForageClass {
    Grass = "grass",
    Meadow = "meadow",
    TimothyOrchard = "timothy_orchard",
    Ryegrass = "ryegrass",
    GrassLegume = "grass_legume",
    Lucerne = "lucerne",
    Oat = "oat",
    Wheat = "wheat",
    Barley = "barley",
    Teff = "teff",
    Bermuda = "bermuda",
    Rhodes = "rhodes",
    Haylage = "haylage",
    WheatStraw = "wheat_straw",
    BarleyStraw = "barley_straw",
    OatStraw = "oat_straw",
});
words!(Fault {
    Mould = "mould",
    Dust = "dust",
    Heated = "heated",
    DeadAnimal = "dead_animal",
    PoisonousPlant = "poisonous_plant",
    TornWrap = "torn_wrap",
});
words!(Basis { AsFed = "as_fed", DryMatter = "dry_matter" });
words!(Fed { Dry = "dry", Soaked = "soaked" });
words!(Analyte {
    CrudeProtein = "crude_protein",
    Lysine = "lysine",
    Adf = "adf",
    Ndf = "ndf",
    Fat = "fat",
    Ash = "ash",
    Wsc = "wsc",
    Esc = "esc",
    Starch = "starch",
    Nsc = "nsc",
    Calcium = "calcium",
    Phosphorus = "phosphorus",
    Magnesium = "magnesium",
    Potassium = "potassium",
    Sodium = "sodium",
    Chloride = "chloride",
    Sulphur = "sulphur",
    Iron = "iron",
    Copper = "copper",
    Zinc = "zinc",
    Manganese = "manganese",
    Selenium = "selenium",
    Iodine = "iodine",
    Cobalt = "cobalt",
});

twin! {
    /// A line of a laboratory report.
    LabValueV1 {
        /// What was measured.
        analyte: Analyte,
        /// The name as the laboratory printed it.
        name: Option<Name>,
        /// The value as reported.
        reported: Reported,
    }
}
twin! {
    /// A laboratory report, as reported.
    LabReportV1 {
        /// What its numbers are shares of.
        basis: Basis,
        /// Whether the sample was taken after soaking.
        fed: Fed,
        /// Dry matter of the sample as fed, in `%`.
        dry_matter: Option<Reported>,
        /// Digestible energy as the laboratory states it, in `Mcal/kg`, `MJ/kg`, `Mcal/lb` or `kcal/kg`.
        energy: Option<Reported>,
        /// What was measured.
        values: Vec<LabValueV1>,
        /// From how many bales a core was taken.
        cores: Option<Count>,
        /// The day of the report.
        on: Option<LocalDate>,
        /// The laboratory.
        lab: Option<Name>,
        /// Its number of the sample.
        number: Option<Name>,
    }
}

/// What was paid.
#[derive(Clone, Debug, PartialEq)]
pub enum PriceV1 {
    /// For a tonne as fed.
    Tonne {
        /// The price.
        price: Money,
    },
    /// For a bale.
    Bale {
        /// The price of one.
        price: Money,
        /// Its weight, when it was said with the price.
        weight: Option<FeedWeight>,
    },
}

tagged!(PriceV1, by "per" {
    Tonne = "tonne" { price: price },
    Bale = "bale" { price: price, weight: weight },
});

twin! {
    /// A forage lot. Its id is the id of the record.
    LotV1 {
        /// Its name in the shed.
        name: Name,
        /// What it is said to be.
        class: ForageClass,
        /// Dry matter that somebody measured apart from a report, in `%`.
        dry_matter: Option<Reported>,
        /// Every laboratory report on it.
        reports: Vec<LabReportV1>,
        /// What was paid.
        price: Option<PriceV1>,
        /// The day it was bought.
        bought_on: Option<LocalDate>,
        /// The day it was opened: a changeover begins.
        opened_on: Option<LocalDate>,
        /// What is wrong with it to the eye and the nose.
        faults: Vec<Fault>,
        /// What a slice (flake, biscuit) weighs.
        slice: Option<FeedWeight>,
        /// Remarks.
        note: Option<String>,
        /// What came, and how it is stored.
        delivery: Option<Box<DeliveryV1>>,
        /// The lot in place of which it was opened.
        in_place_of: Option<LotId>,
    }
}

impl LabReportV1 {
    /// The report as the room `forage` reads it, with what cannot be.
    ///
    /// Errors: a unit that is not understood, and those of [`LabReport::read`]; `path` is that of the report.
    fn report(
        &self,
        record: &RecordId,
        path: &Path<'_>,
    ) -> Result<(LabReport, Vec<ReportFinding>), LogError> {
        let dry_path = path.key("dry_matter");
        let dry_percent = match &self.dry_matter {
            Some(reported) => Some(percent(reported, &dry_path)?),
            None => None,
        };
        let energy_path = path.key("energy");
        let energy_mcal_per_kg = match &self.energy {
            Some(reported) => Some(mcal_per_kg(reported, &energy_path)?),
            None => None,
        };
        let values_path = path.key("values");
        let mut values = Vec::new();
        for (index, line) in self.values.iter().enumerate() {
            let line_path = values_path.index(index);
            let share = percent(&line.reported, &line_path.key("reported"))?;
            values.push(match line.analyte.unit() {
                AnalyteUnit::Percent => (line.analyte, share),
                AnalyteUnit::MgPerKg => (line.analyte, share * MG_PER_KG_IN_PERCENT),
            });
        }
        LabReport::read(RawReport {
            basis: self.basis,
            fed: self.fed,
            dry_percent,
            energy_mcal_per_kg,
            values,
            cores: self
                .cores
                .map(|cores| u32::try_from(cores.get()).unwrap_or(u32::MAX)),
            on: self.on,
            lab: self.lab.as_ref().map(|lab| lab.as_str().to_owned()),
            record: Some(record.clone()),
        })
        .map_err(|error| refused_by_forage(&error, path))
    }
}

/// What the room `forage` says of a report, with the place of the report.
fn refused_by_forage(error: &ForageError, path: &Path<'_>) -> LogError {
    let range = |range: OutOfRange| LogError::OutOfRange {
        place: path.place(),
        range,
    };
    match error {
        ForageError::OutOfRange(out) => range(*out),
        ForageError::OutsideEquation { value, allowed, .. } => range(OutOfRange {
            bounds: *allowed,
            value: *value,
        }),
        ForageError::AsFedWithoutDryMatter => path.key("dry_matter").missing(),
        ForageError::EmptyReport | ForageError::EnergyLacks { .. } | ForageError::Money(_) => {
            path.key("values").missing()
        }
    }
}

impl LotV1 {
    /// The twin of a lot of which no laboratory said anything. Reports are kept as they were typed, so they have no way
    /// back from what was read of them.
    ///
    /// Error: a blank name.
    pub fn of_class(name: &str, class: ForageClass) -> Result<Self, LogError> {
        Ok(Self {
            name: Name::new(name)?,
            class,
            dry_matter: None,
            reports: Vec::new(),
            price: None,
            bought_on: None,
            opened_on: None,
            faults: Vec::new(),
            slice: None,
            note: None,
            delivery: None,
            in_place_of: None,
        })
    }

    /// The price, with the weight of a bale as it was weighed, else as it was said. `None` where neither is known: a price
    /// for no weight is no price.
    fn price_of(&self, delivery: &Delivery) -> Option<Price> {
        match self.price.as_ref()? {
            PriceV1::Tonne { price } => Some(Price::Tonne(*price)),
            PriceV1::Bale { price, .. } => Some(Price::Bale {
                price: *price,
                weight: bale_weight(sampled(&delivery.bales).as_ref(), self.bale_said())?.value,
            }),
        }
    }

    /// The weight of a bale as it was said with its price.
    pub fn bale_said(&self) -> Option<AsFed> {
        match self.price.as_ref()? {
            PriceV1::Bale { weight, .. } => weight.as_ref().map(|weight| weight.g.as_fed()),
            PriceV1::Tonne { .. } => None,
        }
    }

    /// The lot behind a record, with what cannot be in its reports.
    ///
    /// Errors: a unit that is not understood, or a value that the room `forage` refuses, each with its field.
    pub fn lot(&self, id: &RecordId) -> Result<(Lot, Vec<ReportFinding>), LogError> {
        let record = Path::Record(id.0.as_str());
        let body = record.key("body");
        let dry_path = body.key("dry_matter");
        let dry = match &self.dry_matter {
            Some(reported) => Some(DryFraction::percent(percent(reported, &dry_path)?).map_err(
                |range| LogError::OutOfRange {
                    place: dry_path.place(),
                    range,
                },
            )?),
            None => None,
        };
        let reports_path = body.key("reports");
        let mut reports = Vec::new();
        let mut findings = Vec::new();
        for (index, report) in self.reports.iter().enumerate() {
            let (read, found) = report.report(id, &reports_path.index(index))?;
            reports.push(read);
            findings.extend(found);
        }
        let delivery = match &self.delivery {
            Some(delivery) => delivery.delivery(&body.key("delivery"))?,
            None => Delivery::default(),
        };
        let lot = Lot {
            id: LotId(id.0.clone()),
            name: self.name.as_str().to_owned(),
            class: self.class,
            dry,
            reports,
            price: self.price_of(&delivery),
            bought_on: self.bought_on,
            faults: self.faults.clone(),
            delivery,
            opened_on: self.opened_on,
            in_place_of: self.in_place_of.clone(),
        };
        Ok((lot, findings))
    }
}
