//! Who it is.

use super::English;
use crate::words::{AnimalWords, Said, UnitWords};
use tussock_core::animal::{
    Answer, Appetite, Birth, BodyType, Goal, Handful, Insulin, Kind, Laminitis, Phase, Ppid, Risk,
    RiskFactor, RiskLevel, Sex, State, Teeth, Temperament, VetFlag, VetPermit, VetScope, VetWord,
    Workload,
};
use tussock_core::units::LocalDate;

impl AnimalWords for English {
    fn kind(&self, kind: Kind) -> &'static str {
        match kind {
            Kind::Horse => "Horse",
            Kind::Pony => "Pony",
            Kind::Miniature => "Miniature",
            Kind::Donkey => "Donkey",
            Kind::Mule => "Mule or hinny",
        }
    }

    fn body_type(&self, body: BodyType) -> &'static str {
        match body {
            BodyType::Arabian => "Arabian or cross",
            BodyType::Pony => "Pony, cob or native",
            BodyType::Stock => "Stock type",
            BodyType::Draft => "Draught",
            BodyType::Warmblood => "Warmblood",
            BodyType::Thoroughbred => "Thoroughbred",
            BodyType::Icelandic => "Icelandic",
            BodyType::Shetland => "Shetland",
            BodyType::Saddle => "Saddle type",
            BodyType::Miniature => "Miniature",
            BodyType::Donkey => "Donkey",
        }
    }

    fn sex(&self, sex: Sex, kind: Kind) -> &'static str {
        match (sex, kind) {
            (Sex::Female, Kind::Donkey) => "Jenny",
            (Sex::Entire, Kind::Donkey) => "Jack",
            (Sex::Female, Kind::Horse | Kind::Pony | Kind::Miniature | Kind::Mule) => "Mare",
            (Sex::Entire, Kind::Horse | Kind::Pony | Kind::Miniature | Kind::Mule) => "Stallion",
            (Sex::Gelding, _) => "Gelding",
        }
    }

    fn age(&self, born: Birth, day: LocalDate) -> String {
        let years = born.age_on(day).max(0);
        let about = match born {
            Birth::Day(_) => "",
            Birth::Month { .. } | Birth::Year(_) => "at least ",
        };
        match years {
            0 => "under 1 year".to_owned(),
            1 => format!("{about}1 year"),
            years => format!("{about}{years} years"),
        }
    }

    fn state(&self, state: State) -> &'static str {
        match state {
            State::Adult => "Grown",
            State::Growing => "Still growing",
            State::Pregnant => "In foal",
            State::Lactating => "In milk",
        }
    }

    fn temperament(&self, temperament: Temperament) -> &'static str {
        match temperament {
            Temperament::Low => "Good doer, moves little",
            Temperament::Average => "Average",
            Temperament::Elevated => "Moves a lot, poor doer",
        }
    }

    fn workload(&self, work: Workload) -> &'static str {
        match work {
            Workload::Maintenance(_) => "No work",
            Workload::Light => "Light work",
            Workload::Moderate => "Moderate work",
            Workload::Heavy => "Heavy work",
            Workload::VeryHeavy => "Very heavy work",
        }
    }

    fn workload_means(&self, work: Workload) -> &'static str {
        match work {
            Workload::Maintenance(temperament) => self.temperament(temperament),
            Workload::Light => "1 to 3 hours a week, mostly walk and trot",
            Workload::Moderate => "3 to 5 hours a week",
            Workload::Heavy => "4 to 5 hours a week with gallop and jumping",
            Workload::VeryHeavy => "Speed work, or 6 to 12 hours a week",
        }
    }

    fn goal(&self, goal: Goal) -> &'static str {
        match goal {
            Goal::Lose => "Lose weight",
            Goal::Hold => "Hold weight",
            Goal::Gain => "Gain weight",
        }
    }

    fn phase(&self, phase: Phase) -> &'static str {
        match phase {
            Phase::New => "New",
            Phase::Losing => "Losing",
            Phase::Plateau => "Plateau",
            Phase::Holding => "Holding",
            Phase::NeedsWeight => "Needs weight",
            Phase::Episode => "Episode, vet in charge",
            Phase::Recovering => "Recovering",
            Phase::OtherHands => "In other hands",
        }
    }

    fn phase_means(&self, phase: Phase) -> &'static str {
        match phase {
            Phase::New => {
                "14 days at the starting level with two weighings; then the first decision"
            }
            Phase::Losing => "Losing towards its target; amounts change only at a review",
            Phase::Plateau => {
                "Its weight stands still: check what was really eaten, then take one step"
            }
            Phase::Holding => "At target: raised step by step until its weight holds",
            Phase::NeedsWeight => "Too thin: forage is always in front of it",
            Phase::Episode => {
                "Laminitis: the vet decides. Hay stays in front of it, with no sudden cut"
            }
            Phase::Recovering => "After laminitis, until the vet says it is over",
            Phase::OtherHands => "Somebody else feeds it; the plan stands until it comes back",
        }
    }

    fn risk_level(&self, level: RiskLevel) -> &'static str {
        match level {
            RiskLevel::Proven => "Sugar is a proven danger to it",
            RiskLevel::AtRisk => "Treated as at risk",
            RiskLevel::NotKnown => "Not known",
            RiskLevel::Clear => "Tested clear",
        }
    }

    fn risk_factor(&self, factor: RiskFactor) -> &'static str {
        match factor {
            RiskFactor::Laminitis => "laminitis now or before",
            RiskFactor::TestedDysregulated => "tested insulin-dysregulated",
            RiskFactor::Type => "its type (native, cob, miniature or donkey)",
            RiskFactor::Crest => "a crest of 3 or more",
            RiskFactor::Condition => "condition of 7 or more",
            RiskFactor::Footsore => "footsore after trims",
        }
    }

    fn risk(&self, risk: &Risk) -> Said {
        let facts: Vec<&str> = risk
            .factors
            .iter()
            .map(|factor| self.risk_factor(*factor))
            .collect();
        let facts = self.list(&facts);
        match risk.level {
            RiskLevel::Proven => Said::because(
                "Hay, grass and bucket are kept low in sugar for it",
                format!("What speaks for it: {facts}."),
            ),
            RiskLevel::AtRisk => Said::because(
                "Nobody tested its insulin, so it is fed as one at risk: ask the vet for a test",
                format!("What speaks for it: {facts}."),
            ),
            RiskLevel::NotKnown => Said::because(
                "Nobody tested its insulin: bucket meals follow the strict rule until somebody does",
                "Nothing known makes it likely, and nothing rules it out.",
            ),
            RiskLevel::Clear => Said::because(
                "A test says its insulin is in order: its hay is held by energy alone",
                "A test grows old. Ask the vet when it should be taken again.",
            ),
        }
    }

    fn answer(&self, answer: Answer) -> &'static str {
        match answer {
            Answer::Yes => "Yes",
            Answer::No => "No",
            Answer::NotKnown => "Not known",
        }
    }

    fn laminitis(&self, laminitis: Laminitis) -> String {
        match laminitis {
            Laminitis::Never => "Never, as far as anybody knows".to_owned(),
            Laminitis::Ever { last: Some(day) } => {
                format!("Had it before, last ended {}", self.date(day))
            }
            Laminitis::Ever { last: None } => "Had it before".to_owned(),
            Laminitis::Active => "Has it now".to_owned(),
            Laminitis::NotKnown => "Not known".to_owned(),
        }
    }

    fn insulin(&self, insulin: &Insulin) -> String {
        match insulin {
            Insulin::Tested(test) => {
                let result = if test.dysregulated {
                    "Insulin-dysregulated"
                } else {
                    "Insulin in order"
                };
                let how: Vec<&str> = [test.test.as_str(), test.by.as_str()]
                    .into_iter()
                    .filter(|part| !part.is_empty())
                    .collect();
                let on = self.date(test.on);
                if how.is_empty() {
                    format!("{result}, {on}")
                } else {
                    format!("{result}, {on} ({})", how.join(", "))
                }
            }
            Insulin::NotKnown => "Not tested".to_owned(),
        }
    }

    fn ppid(&self, ppid: Ppid) -> &'static str {
        match ppid {
            Ppid::Treated => "PPID, treated",
            Ppid::Untreated => "PPID, not treated",
            Ppid::Clear => "Tested, none",
            Ppid::NotKnown => "Not tested",
        }
    }

    fn teeth(&self, teeth: Teeth) -> &'static str {
        match teeth {
            Teeth::Good => "Good, looked at this year",
            Teeth::Poor => "Poor: it quids, or teeth are missing",
            Teeth::NotKnown => "Not looked at this year",
        }
    }

    fn handful(&self, handful: Handful) -> &'static str {
        match handful {
            Handful::Eaten => "Ate it",
            Handful::Refused => "Refused it",
            Handful::NotTried => "Not tried yet",
        }
    }

    fn appetite(&self, appetite: Appetite) -> &'static str {
        match appetite {
            Appetite::Eating => "Eats as usual",
            Appetite::Off { .. } => "Left its forage",
            Appetite::NotKnown => "Nobody said",
        }
    }

    fn vet_flag(&self, flag: &VetFlag) -> String {
        match flag {
            VetFlag::PainRelief => "On pain relief".to_owned(),
            VetFlag::Sglt2Inhibitor => "On an SGLT2 inhibitor".to_owned(),
            VetFlag::InsulinDrug => "On a drug that alters insulin".to_owned(),
            VetFlag::Corticosteroid { last } => {
                format!("Corticosteroid, last on {}", self.date(*last))
            }
            VetFlag::TrimmedOrShod { on } => format!("Trimmed or shod on {}", self.date(*on)),
            VetFlag::FootsoreAfterTrims => "Footsore after trims".to_owned(),
            VetFlag::BoxRest => "On box rest".to_owned(),
            // The hour is shown where the record is: it needs the zone.
            VetFlag::GotAtGrain { at: _ } => "Got at grain".to_owned(),
            VetFlag::EscapedOntoGrass { at: _ } => "Escaped onto lush grass".to_owned(),
            VetFlag::Sick => "Sick, feverish or with colic".to_owned(),
            VetFlag::SurgeryOrTransport { on } => {
                format!("Surgery or a long journey on {}", self.date(*on))
            }
            VetFlag::Lame => "Lame".to_owned(),
        }
    }

    fn vet_permit(&self, permit: VetPermit) -> String {
        match permit {
            VetPermit::LowestLevel(level) => {
                format!("Dry matter down to {} a day", self.level(level))
            }
            VetPermit::Work => "Work".to_owned(),
            VetPermit::ReturnToGrass => "Return to grass".to_owned(),
        }
    }

    fn vet_scope(&self, scope: VetScope) -> &'static str {
        match scope {
            VetScope::LowestLevel => "Lowest level of dry matter",
            VetScope::Work => "Work",
            VetScope::ReturnToGrass => "Return to grass",
        }
    }

    fn vet_word(&self, word: &VetWord) -> String {
        let practice = match word.practice.as_str() {
            "" => String::new(),
            practice => format!(", {practice}"),
        };
        format!(
            "{}: {}{practice}, holds until {}",
            self.vet_permit(word.permit),
            word.vet,
            self.date(word.expires)
        )
    }
}
