//! Who it is.

use tussock_core::animal::{
    Answer, Appetite, Birth, BodyType, Goal, Handful, Insulin, Kind, Laminitis, Phase, Ppid, Risk,
    RiskFactor, RiskLevel, Sex, State, Teeth, Temperament, VetFlag, VetPermit, VetScope, VetWord,
    Workload,
};
use tussock_core::units::LocalDate;

use super::Said;

/// Words for the animal itself.
pub trait AnimalWords {
    /// "Pony".
    fn kind(&self, kind: Kind) -> &'static str;
    /// "Cob, native or pony".
    fn body_type(&self, body: BodyType) -> &'static str;
    /// "Mare"; of a donkey "Jenny".
    fn sex(&self, sex: Sex, kind: Kind) -> &'static str;
    /// Its age in years on a day: "12 years".
    fn age(&self, born: Birth, day: LocalDate) -> String;
    /// "In foal".
    fn state(&self, state: State) -> &'static str;
    /// "Good doer".
    fn temperament(&self, temperament: Temperament) -> &'static str;
    /// "Light work".
    fn workload(&self, work: Workload) -> &'static str;
    /// What the class means: hours and gaits.
    fn workload_means(&self, work: Workload) -> &'static str;
    /// "Lose weight".
    fn goal(&self, goal: Goal) -> &'static str;
    /// "Losing".
    fn phase(&self, phase: Phase) -> &'static str;
    /// What holds in a phase.
    fn phase_means(&self, phase: Phase) -> &'static str;
    /// "At risk".
    fn risk_level(&self, level: RiskLevel) -> &'static str;
    /// The fact: "crest 3 or more".
    fn risk_factor(&self, factor: RiskFactor) -> &'static str;
    /// How sugar is treated, and the facts behind it.
    fn risk(&self, risk: &Risk) -> Said;
    /// "Yes", "No", "Not known".
    fn answer(&self, answer: Answer) -> &'static str;
    /// "Never, as far as you know".
    fn laminitis(&self, laminitis: Laminitis) -> String;
    /// What an insulin test said, with who and when.
    fn insulin(&self, insulin: &Insulin) -> String;
    /// "PPID, treated".
    fn ppid(&self, ppid: Ppid) -> &'static str;
    /// "Good, looked at this year".
    fn teeth(&self, teeth: Teeth) -> &'static str;
    /// "Ate it".
    fn handful(&self, handful: Handful) -> &'static str;
    /// "Eats as usual".
    fn appetite(&self, appetite: Appetite) -> &'static str;
    /// "On pain relief".
    fn vet_flag(&self, flag: &VetFlag) -> String;
    /// What a vet allowed.
    fn vet_permit(&self, permit: VetPermit) -> String;
    /// Which matter a vet's word is about.
    fn vet_scope(&self, scope: VetScope) -> &'static str;
    /// A vet's word as one line: what, by whom, until when.
    fn vet_word(&self, word: &VetWord) -> String;
}
