//! Weight, condition and crest.

use super::English;
use super::fields::small;
use super::numbers::up_to;
use crate::words::{AnimalWords, AssessWords, Said, UnitWords};
use tussock_core::assess::{
    Aim, AssessError, ConditionScale, Crest, CrestFlag, Equation, Fallback, Finding, LengthKind,
    Measure, MeasuredType, Refused, Ribs, ScaleInstrument, ScaleReason, Site, WeightMethod,
};

impl AssessWords for English {
    fn assess_finding(&self, finding: &Finding) -> Said {
        match finding {
            Finding::LengthNotTaken => Said::because(
                "Take the length too: from the girth alone the weight is less sure",
                "A typical length for this girth stands in, and the band is wider for it.",
            ),
            Finding::AskForScaleWeight(reason) => Said::because(
                "Weigh it on a scale before any restriction",
                format!("{}.", self.scale_reason(*reason)),
            ),
            Finding::FellBack(fallback) => Said::because(
                "A simpler equation gave this weight",
                format!("{}.", self.fallback(*fallback)),
            ),
            Finding::AgeNotKnown => Said::plain("Nobody gave its age: it was taken as grown"),
            Finding::HeightNotKnown => Said::because(
                "Measure its height at the withers: the weight is less sure without it",
                "It was taken as one under 112 cm, with the wider band.",
            ),
            Finding::InFoal => Said::because(
                "She is in foal: this weight is not hers alone",
                "No equation was made for mares in foal.",
            ),
            Finding::UnusualProportion { length_to_girth } => Said::because(
                "Measure again: this length and girth do not usually go together",
                format!(
                    "The length is {} of the girth.",
                    self.percent(*length_to_girth)
                ),
            ),
            Finding::SitesSkipped(sites) => {
                let names: Vec<String> = sites.iter().map(|site| small(self.site(*site))).collect();
                let names: Vec<&str> = names.iter().map(String::as_str).collect();
                Said::plain(format!("Not scored: {}", self.list(&names)))
            }
            Finding::FirstAimForSeven => Said::because(
                "First aim for condition 7, then reckon again",
                "Above 8 condition says too little of how fat an animal is to reckon a target down to 5.",
            ),
            Finding::IdealWeightDiffers {
                by_condition,
                by_measures,
            } => Said::because(
                format!(
                    "Two ways give two targets: {} by condition, {} by length and height",
                    self.body(*by_condition),
                    self.body(*by_measures)
                ),
                "They differ by more than 5 %. Keep both in view and score the condition again.",
            ),
        }
    }

    fn scale_reason(&self, reason: ScaleReason) -> String {
        match reason {
            ScaleReason::Miniature => {
                "No equation for miniatures that could be checked was found".to_owned()
            }
            ScaleReason::Small { height } => format!(
                "At {} it is smaller than the animals the tape equations were made from",
                self.height(height)
            ),
            ScaleReason::ShetlandWithoutHeight => {
                "It is a Shetland and nobody measured its height".to_owned()
            }
            ScaleReason::Mule => "No equation for mules was found".to_owned(),
        }
    }

    fn fallback(&self, fallback: Fallback) -> String {
        match fallback {
            Fallback::BodyTypeNotKnown => "Its body type is not known".to_owned(),
            Fallback::BodyTypeHasNone(body) => format!(
                "There is no closer equation for this body type ({})",
                self.body_type(body)
            ),
            Fallback::Missing { wanted, measure } => match wanted {
                Some(measured) => format!(
                    "The equation for the {} type also needs: {}",
                    small(self.measured_type(measured)),
                    small(self.measure(measure))
                ),
                None => format!(
                    "The equation for fat donkeys also needs: {}",
                    small(self.measure(measure))
                ),
            },
            Fallback::WrongLength { wanted, given } => format!(
                "The closer equation needs the {}, and the {} was taken",
                small(self.length_kind(wanted)),
                small(self.length_kind(given))
            ),
            Fallback::UnderThree => {
                "It is under three years, and the closer equation is for grown animals".to_owned()
            }
            Fallback::InFoal => "She is in foal".to_owned(),
        }
    }

    fn assess_error(&self, error: &AssessError) -> String {
        match error {
            AssessError::OutOfRange(error) => self.out_of_range(error),
            AssessError::Missing(measure) => {
                format!("Take this first: {}", small(self.measure(*measure)))
            }
            AssessError::WrongLength { wanted, given } => format!(
                "Take the {}: the {} does not fit this equation",
                small(self.length_kind(*wanted)),
                small(self.length_kind(*given))
            ),
            AssessError::BirthNeeded => {
                "Give its day of birth: the equations for the young go by age".to_owned()
            }
            AssessError::Refused(refused) => self.not_assessed(*refused),
            AssessError::NotHalfPoint { value } => format!(
                "{} is no half point: give a whole or a half, like 6.5",
                up_to(*value, 3)
            ),
            AssessError::SiteOfOtherScale { scale, site } => format!(
                "{} is not scored on {}",
                self.site(*site),
                self.condition_scale(*scale)
            ),
            AssessError::SiteTwice(site) => {
                format!("{} was scored twice: keep one", self.site(*site))
            }
            AssessError::TooFewSites { scored, needed } => format!(
                "{scored} scored, it takes {needed}: score {} more",
                needed.saturating_sub(*scored)
            ),
            AssessError::BaseSiteSkipped(site) => format!(
                "Score this site first, the scale starts from it: {}",
                small(self.site(*site))
            ),
            AssessError::TwoScales => {
                "Two scores on two scales are not compared: score again on one".to_owned()
            }
        }
    }

    fn not_assessed(&self, refused: Refused) -> String {
        match refused {
            Refused::Young(kind) => format!(
                "Weigh it on a scale: there is no tape equation for the young of this kind ({})",
                small(self.kind(kind))
            ),
            Refused::TargetInFoal => {
                "No target while she is in foal: her weight is not hers alone".to_owned()
            }
            Refused::TargetGrowing => "No target while it is growing".to_owned(),
            Refused::NoIdealWeight => "No ideal weight is published for this body type".to_owned(),
        }
    }

    fn measure(&self, measure: Measure) -> &'static str {
        match measure {
            Measure::HeartGirth => "Heart girth",
            Measure::Length => "Body length",
            Measure::Height => "Height at the withers",
            Measure::Neck => "Neck girth",
            Measure::UmbilicalGirth => "Belly girth",
        }
    }

    fn where_to_tape(&self, measure: Measure) -> &'static str {
        match measure {
            Measure::HeartGirth => {
                "Close behind the elbow and over the back of the withers, as it breathes out"
            }
            Measure::Length => "From the point of the shoulder to the point of the buttock",
            Measure::Height => "From level ground straight up to the withers, without shoes",
            Measure::Neck => "Around the neck, halfway between poll and withers",
            Measure::UmbilicalGirth => "Around the belly at the navel",
        }
    }

    fn length_kind(&self, kind: LengthKind) -> &'static str {
        match kind {
            LengthKind::Wrap => "Length around the buttock",
            LengthKind::Straight => "Length in a straight line",
            LengthKind::ElbowToTuber => "Length from the elbow",
        }
    }

    fn where_to_lay(&self, kind: LengthKind) -> &'static str {
        match kind {
            LengthKind::Wrap => {
                "From the point of the shoulder along the side and around to the point of the buttock"
            }
            LengthKind::Straight => {
                "From the point of the shoulder straight back, level with the point of the buttock"
            }
            LengthKind::ElbowToTuber => "From the elbow to the point of the buttock",
        }
    }

    fn scale_instrument(&self, instrument: ScaleInstrument) -> &'static str {
        match instrument {
            ScaleInstrument::AnimalScale => "Animal scale",
            ScaleInstrument::VehicleWeighbridge => "Vehicle weighbridge, with and without it",
        }
    }

    fn weight_method(&self, method: WeightMethod) -> String {
        match method {
            WeightMethod::Scale(instrument) => {
                format!("weighed: {}", small(self.scale_instrument(instrument)))
            }
            WeightMethod::Tape(equation) => format!("by tape: {}", self.equation(equation)),
            WeightMethod::Ideal(measured) => format!(
                "what an animal of this length and height should weigh ({})",
                small(self.measured_type(measured))
            ),
        }
    }

    fn equation(&self, equation: Equation) -> &'static str {
        match equation {
            Equation::GirthLength => "girth and length",
            Equation::GirthLengthIcelandic => "girth and length, Icelandic horses",
            Equation::FourMeasures(_) => "girth, length, height and neck",
            Equation::GirthAlone => "girth alone",
            Equation::Foal => "girth, foals",
            Equation::Weanling => "girth and length, weanlings",
            Equation::Yearling => "girth and length, yearlings",
            Equation::Donkey => "girth and length, donkeys",
            Equation::DonkeyGirth => "girth alone, donkeys",
            Equation::DonkeyYoung => "belly girth and length, young donkeys",
            Equation::DonkeyFat => "girth and height, fat donkeys",
        }
    }

    fn measured_type(&self, measured: MeasuredType) -> &'static str {
        match measured {
            MeasuredType::Arabian => "Arabian",
            MeasuredType::Pony => "Pony",
            MeasuredType::Stock => "Stock",
            MeasuredType::Draft => "Draught",
            MeasuredType::Warmblood => "Warmblood",
        }
    }

    fn aim(&self, aim: Aim) -> &'static str {
        match aim {
            Aim::ConditionFive => "for condition 5",
            Aim::ConditionSevenFirst => "a first aim, for condition 7",
        }
    }

    fn condition_scale(&self, scale: ConditionScale) -> &'static str {
        match scale {
            ConditionScale::NineStep => "1 to 9",
            ConditionScale::FiveStep => "0 to 5",
        }
    }

    fn site(&self, site: Site) -> &'static str {
        match site {
            Site::Neck => "Neck",
            Site::Withers => "Withers",
            Site::BehindShoulder => "Behind the shoulder",
            Site::Ribs => "Ribs",
            Site::Loin => "Loin and back",
            Site::TailHead => "Tail head",
            Site::BackAndRibs => "Back and ribs",
            Site::Pelvis => "Pelvis and rump",
        }
    }

    fn lay_hand(&self, site: Site) -> &'static str {
        match site {
            Site::Neck => {
                "Grip the top of the neck halfway, thumb on one side, fingers on the other"
            }
            Site::Withers => "Lay a hand over the withers and press in at both sides",
            Site::BehindShoulder => {
                "Press flat fingers in behind the shoulder blade, above the elbow"
            }
            Site::Ribs => "Stroke a flat hand along the ribs behind the elbow, then press",
            Site::Loin => "Lay a flat hand across the back behind the saddle",
            Site::TailHead => "Feel around the root of the tail with all fingertips",
            Site::BackAndRibs => "Lay a flat hand across the back, then stroke it down the ribs",
            Site::Pelvis => {
                "Stand well to one side, feel the point of the hip and the rump beside the spine"
            }
        }
    }

    fn step(&self, site: Site, scale: ConditionScale, step: u8) -> Option<&'static str> {
        super::steps::step(site, scale, step)
    }

    fn crest(&self, crest: Crest) -> &'static str {
        super::steps::crest(crest.score())
    }

    fn crest_flag(&self, flag: CrestFlag) -> Said {
        match flag {
            CrestFlag::None => Said::plain("This crest by itself is no sign of danger"),
            CrestFlag::Flag => Said::because(
                "A crest of 3 counts as at risk, however lean it is: ask the vet about its insulin",
                "Among 26 ponies such a crest went with five times the odds of insulin dysregulation, whatever their condition.",
            ),
            CrestFlag::Strong => Said::because(
                "A crest of 4 or more is a strong sign: ask the vet for an insulin test",
                "Ponies that later foundered on pasture had such crests. A lean animal with one is treated the same.",
            ),
        }
    }

    fn ribs(&self, ribs: Ribs) -> &'static str {
        match ribs {
            Ribs::Seen => "Seen",
            Ribs::FeltEasily => "Not seen, felt easily",
            Ribs::FeltWithPressure => "Felt only with pressure",
            Ribs::NotFelt => "Not felt",
        }
    }
}
