//! Hay and its like.

use super::English;
use super::numbers::{not_over, odds, sized, up_to_beside};
use crate::words::{ForageWords, Said, SourceWords, UnitWords};
use tussock_core::forage::published::{CHANCE_OVER, CHANCE_WITHIN};
use tussock_core::forage::{
    Analyte, AnalyteUnit, Basis, ContentOrigin, Doubt, DryOrigin, EnergyOrigin, Fault, Fed,
    ForageClass, ForageError, ForageKind, Hazard, Judgement, ReportFinding, SugarMeasure,
    SugarNote, SugarOrigin, TestOutlook, Verdict, WayOut,
};

impl ForageWords for English {
    fn verdict(&self, verdict: Verdict) -> String {
        match verdict {
            Verdict::Within { .. } => "within the limit".to_owned(),
            Verdict::Over { .. } => "over it".to_owned(),
            // Where the sugar alone would pass or fail and something else keeps it from being proven, its chance would
            // read as another verdict: the doubts say why instead.
            Verdict::NotProven {
                chance: Some(chance),
            } if chance > *CHANCE_OVER && chance < *CHANCE_WITHIN => {
                format!("not proven ({})", self.chance(chance))
            }
            Verdict::NotProven { .. } => "not proven".to_owned(),
        }
    }

    fn judgement(&self, judgement: &Judgement) -> Said {
        let sentence = match judgement.verdict {
            Verdict::Within { .. } => "Its sugar is within the limit".to_owned(),
            Verdict::Over { .. } => "Its sugar is over the limit".to_owned(),
            Verdict::NotProven { .. } => {
                format!("Its sugar is {}", self.verdict(judgement.verdict))
            }
        };
        let figure = match (judgement.measure, judgement.belief) {
            (Some(measure), Some(belief)) => {
                let origin = self.sugar_origin(judgement.origin);
                format!(
                    "{} about {}, limit {}: {origin}.",
                    self.sugar_measure(measure),
                    self.share_beside(belief.mean, judgement.limit),
                    self.share(judgement.limit)
                )
            }
            (None, _) | (_, None) => {
                format!("Nobody knows it; limit {}.", self.share(judgement.limit))
            }
        };
        let doubts = judgement
            .doubts
            .iter()
            .map(|doubt| format!("{}.", self.doubt(*doubt)));
        let why: Vec<String> = std::iter::once(figure).chain(doubts).collect();
        Said::because(sentence, why.join(" "))
    }

    fn doubt(&self, doubt: Doubt) -> String {
        match doubt {
            Doubt::Untested => "Nobody tested this lot".to_owned(),
            Doubt::NearLimit => {
                "It was tested, and lies too near the limit for one test to tell".to_owned()
            }
            Doubt::ConventionsDisagree {
                wsc_starch,
                reckoned,
            } => format!(
                "Two conventions disagree about this hay: WSC + starch is {}{}. For an animal that had laminitis or has insulin dysregulation we treat it as not proven",
                self.share(wsc_starch),
                if reckoned { ", reckoned from ESC" } else { "" }
            ),
            Doubt::Haylage => {
                "Haylage raises insulin more than hay of the same sugar: passing is not enough for this animal"
                    .to_owned()
            }
            Doubt::SoakedUntested => {
                "It was soaked and the soaked hay was not tested: hays lose anything from none to half".to_owned()
            }
            Doubt::CerealUntested => "Cereal hay counts as high until it is tested".to_owned(),
            Doubt::StarchAssumed => {
                "Starch was not tested: a usual value for this hay stands in".to_owned()
            }
            Doubt::UnknownPart { part } => format!(
                "Nobody knows the sugar of {} of the dry matter",
                super::numbers::percent_above_nothing(part)
            ),
        }
    }

    fn way_out(&self, way: WayOut) -> &'static str {
        match way {
            WayOut::Soak => "Soak it",
            WayOut::Test => "Have it tested",
            WayOut::TestSoaked => "Have the soaked hay tested",
            WayOut::AnotherLot => "Feed another lot",
            WayOut::LessGrass => "Give less grass",
        }
    }

    fn sugar_measure(&self, measure: SugarMeasure) -> &'static str {
        match measure {
            SugarMeasure::WscStarch => "WSC + starch",
            SugarMeasure::EscStarch => "ESC + starch",
        }
    }

    fn sugar_origin(&self, origin: SugarOrigin) -> &'static str {
        match origin {
            SugarOrigin::Tested => "tested as it is fed",
            SugarOrigin::Class => "from what hay of its kind usually holds, untested",
            SugarOrigin::SoakedUntested => "from the dry hay; the soaked hay is untested",
            SugarOrigin::Mixed => "from several forages together",
        }
    }

    fn sugar_note(&self, note: SugarNote) -> &'static str {
        match note {
            SugarNote::Untested => "Some of it is untested: only its kind is known",
            SugarNote::StarchAssumed => "Starch was not tested: a usual value stands in",
            SugarNote::WscFromEsc => "WSC was reckoned from ESC",
            SugarNote::Haylage => "Some of it is haylage",
            SugarNote::CerealUntested => "Some of it is untested cereal hay",
            SugarNote::Grass => "Some of it is grass",
        }
    }

    fn test_outlook(&self, outlook: &TestOutlook) -> Said {
        Said::because(
            format!(
                "A test would say: within the limit {}, over it {}, still open {}",
                odds(outlook.within),
                odds(outlook.over),
                odds(outlook.not_proven)
            ),
            format!(
                "A tested value passes up to {} %.",
                not_over(outlook.passes_at_most.to_percent())
            ),
        )
    }

    fn hazard(&self, hazard: Hazard) -> Said {
        match hazard {
            Hazard::Discard(fault) => Said::because(
                "Do not feed it: throw it away",
                format!("It has {}.", self.fault(fault)),
            ),
            Hazard::Dusty => Said::because(
                "Dusty: damp or steam it, and listen for coughing",
                "Dust harms the airways. One that coughs is for the vet.",
            ),
            Hazard::LucerneOverShare { part, most } => Said::because(
                format!(
                    "Too much {lucerne}: {} % of the forage, at most {}",
                    up_to_beside(part * 100.0, most * 100.0, 0),
                    self.percent(most),
                    lucerne = self.shown.region.lucerne
                ),
                "That share is common practice. Some animals do worse on it.",
            ),
            Hazard::LucerneWatch => Said::because(
                format!(
                    "Some animals do worse on {}: watch its feet",
                    self.shown.region.lucerne
                ),
                "Common practice keeps it to a small part of the forage.",
            ),
            Hazard::HaylageNotSoaked => Said::because(
                "Do not soak haylage: feed it as it comes, or another hay",
                "The trials of soaking were made with hay.",
            ),
            Hazard::HaylageDryMatterUnknown => Said::because(
                "Ask for the dry matter of this haylage, or have it tested",
                "Haylage holds anything from half to most of its weight as dry matter, so that kilograms say little.",
            ),
            Hazard::CerealHighUntilTested => Said::because(
                "Cereal hay counts as high in sugar and starch: have it tested before it is fed",
                "Its grain and stems can hold much of both.",
            ),
            Hazard::Damp { dry } => Said::because(
                "Damp for hay: feed it soon and look for mould",
                format!("Dry matter {}.", self.dry_fraction(dry)),
            ),
        }
    }

    fn fault(&self, fault: Fault) -> &'static str {
        match fault {
            Fault::Mould => "mould or a musty smell",
            Fault::Dust => "dust",
            Fault::Heated => "heat inside, or a smell of caramel",
            Fault::DeadAnimal => "a dead animal in it",
            Fault::PoisonousPlant => "ragwort or another poisonous plant in it",
            Fault::TornWrap => "a torn wrapping",
        }
    }

    fn forage_class(&self, class: ForageClass) -> String {
        match class {
            ForageClass::Grass => "Grass hay".to_owned(),
            ForageClass::Meadow => "Meadow hay".to_owned(),
            ForageClass::TimothyOrchard => {
                format!("Timothy or {} hay", self.shown.region.cocksfoot)
            }
            ForageClass::Ryegrass => "Ryegrass hay".to_owned(),
            ForageClass::GrassLegume => "Grass and clover hay".to_owned(),
            ForageClass::Lucerne => {
                super::fields::capital(&format!("{} hay", self.shown.region.lucerne))
            }
            ForageClass::Oat => "Oat hay".to_owned(),
            ForageClass::Wheat => "Wheat hay".to_owned(),
            ForageClass::Barley => "Barley hay".to_owned(),
            ForageClass::Teff => "Teff hay".to_owned(),
            ForageClass::Bermuda => {
                super::fields::capital(&format!("{} hay", self.shown.region.bermuda))
            }
            ForageClass::Rhodes => "Rhodes grass hay".to_owned(),
            ForageClass::Haylage => "Haylage".to_owned(),
            ForageClass::WheatStraw => "Wheat straw".to_owned(),
            ForageClass::BarleyStraw => "Barley straw".to_owned(),
            ForageClass::OatStraw => "Oat straw".to_owned(),
        }
    }

    fn forage_kind(&self, kind: ForageKind) -> &'static str {
        match kind {
            ForageKind::Hay => "Hay",
            ForageKind::Haylage => "Haylage",
            ForageKind::Straw => "Straw",
        }
    }

    fn fed(&self, fed: Fed) -> &'static str {
        match fed {
            Fed::Dry => "As it comes",
            Fed::Soaked => "Soaked",
        }
    }

    fn analyte(&self, analyte: Analyte) -> &'static str {
        match analyte {
            Analyte::CrudeProtein => "Crude protein",
            Analyte::Lysine => "Lysine",
            Analyte::Adf => "ADF (acid detergent fibre)",
            Analyte::Ndf => "NDF (neutral detergent fibre)",
            Analyte::Fat => "Fat",
            Analyte::Ash => "Ash",
            Analyte::Wsc => "WSC (water-soluble carbohydrate)",
            Analyte::Esc => "ESC (ethanol-soluble carbohydrate)",
            Analyte::Starch => "Starch",
            Analyte::Nsc => "NSC as stated",
            Analyte::Calcium => "Calcium",
            Analyte::Phosphorus => "Phosphorus",
            Analyte::Magnesium => "Magnesium",
            Analyte::Potassium => "Potassium",
            Analyte::Sodium => "Sodium",
            Analyte::Chloride => "Chloride",
            Analyte::Sulphur => "Sulphur",
            Analyte::Iron => "Iron",
            Analyte::Copper => "Copper",
            Analyte::Zinc => "Zinc",
            Analyte::Manganese => "Manganese",
            Analyte::Selenium => "Selenium",
            Analyte::Iodine => "Iodine",
            Analyte::Cobalt => "Cobalt",
        }
    }

    fn analyte_unit(&self, unit: AnalyteUnit) -> &'static str {
        match unit {
            AnalyteUnit::Percent => "%",
            AnalyteUnit::MgPerKg => "mg a kg",
        }
    }

    fn report_basis(&self, basis: Basis) -> &'static str {
        match basis {
            Basis::AsFed => "As fed (as received)",
            Basis::DryMatter => "Dry matter",
        }
    }

    fn report_finding(&self, finding: ReportFinding) -> Said {
        super::report::finding(self, finding)
    }

    fn dry_origin(&self, origin: DryOrigin) -> &'static str {
        match origin {
            DryOrigin::Report => "from the laboratory",
            DryOrigin::Measured => "measured here",
            DryOrigin::Default => "a default for hay and straw",
        }
    }

    fn energy_origin(&self, origin: EnergyOrigin) -> &'static str {
        match origin {
            EnergyOrigin::Pagan => "from the report, by Pagan's equation",
            EnergyOrigin::ForageEquation => "from the report, by the forage equation",
            EnergyOrigin::Stated => "as the laboratory states it",
            EnergyOrigin::Class => "from what hay of its kind usually holds",
        }
    }

    fn content_origin(&self, origin: ContentOrigin) -> String {
        match origin {
            ContentOrigin::Tested => "tested".to_owned(),
            ContentOrigin::TestedBeforeSoaking => "tested dry; soaking takes some out".to_owned(),
            ContentOrigin::Class(mark) => {
                format!("usual for its kind ({})", self.mark(mark))
            }
            ContentOrigin::ClassBeforeSoaking(mark) => format!(
                "usual for its kind ({}); soaking takes some out",
                self.mark(mark)
            ),
        }
    }

    fn forage_error(&self, error: &ForageError) -> String {
        match error {
            ForageError::OutOfRange(error) => self.out_of_range(error),
            ForageError::AsFedWithoutDryMatter => {
                "Give the dry matter too: numbers as fed cannot be compared without it".to_owned()
            }
            ForageError::EmptyReport => "Type at least one number of the report".to_owned(),
            ForageError::EnergyLacks { analyte } => format!(
                "Energy cannot be reckoned without this: {}",
                super::fields::small(self.analyte(*analyte))
            ),
            ForageError::OutsideEquation {
                analyte,
                value,
                allowed,
            } => {
                let limit = if *value < allowed.min {
                    allowed.min
                } else {
                    allowed.max
                };
                format!(
                    "{} of {} % lies outside the energy equation, which holds from {} to {} %",
                    self.analyte(*analyte),
                    up_to_beside(*value, limit, 1),
                    sized(allowed.min),
                    sized(allowed.max)
                )
            }
            ForageError::Money(error) => self.money_error(error),
        }
    }
}
