//! An animal.

use super::base::{BodyWeight, Distance};
use crate::animal::{
    Animal, AnimalId, Birth, BodyType, Goal, Health, Kind, Laminitis, Phase, SaidOn, Sex,
    StageFacts, State, Temperament, VetFlag, Workload,
};
use crate::log::error::{Allowed, Form, LogError, Path};
use crate::log::stored::{Name, Stored, text, twin, words};
use crate::sources::RecordId;
use crate::units::LocalDate;
use serde_json::Value;

words!(Kind {
    Horse = "horse",
    Pony = "pony",
    Miniature = "miniature",
    Donkey = "donkey",
    Mule = "mule",
});
words!(BodyType {
    Arabian = "arabian",
    Pony = "pony",
    Stock = "stock",
    Draft = "draft",
    Warmblood = "warmblood",
    Thoroughbred = "thoroughbred",
    Icelandic = "icelandic",
    Shetland = "shetland",
    Saddle = "saddle",
    Miniature = "miniature",
    Donkey = "donkey",
});
words!(Sex { Female = "female", Gelding = "gelding", Entire = "entire" });
words!(State {
    Adult = "adult",
    Growing = "growing",
    Pregnant = "pregnant",
    Lactating = "lactating",
});
words!(Goal { Lose = "lose", Hold = "hold", Gain = "gain" });
words!(Phase {
    New = "new",
    Losing = "losing",
    Plateau = "plateau",
    Holding = "holding",
    NeedsWeight = "needs_weight",
    Episode = "episode",
    Recovering = "recovering",
    OtherHands = "other_hands",
});

/// The words of the work classes.
const WORK: &[(&str, Workload)] = &[
    ("maintenance_low", Workload::Maintenance(Temperament::Low)),
    (
        "maintenance_average",
        Workload::Maintenance(Temperament::Average),
    ),
    (
        "maintenance_elevated",
        Workload::Maintenance(Temperament::Elevated),
    ),
    ("light", Workload::Light),
    ("moderate", Workload::Moderate),
    ("heavy", Workload::Heavy),
    ("very_heavy", Workload::VeryHeavy),
];

/// The same words, for the error.
const WORK_WORDS: &[&str] = &[
    "maintenance_low",
    "maintenance_average",
    "maintenance_elevated",
    "light",
    "moderate",
    "heavy",
    "very_heavy",
];

impl Stored for Workload {
    fn read(value: Option<&Value>, path: &Path<'_>) -> Result<Self, LogError> {
        let word = text(value, path)?;
        WORK.iter()
            .find(|(known, _)| *known == word)
            .map(|(_, work)| *work)
            .ok_or_else(|| path.refuse(word, Allowed::OneOf(WORK_WORDS)))
    }

    fn write(&self) -> Option<Value> {
        let word = match self {
            Self::Maintenance(Temperament::Low) => "maintenance_low",
            Self::Maintenance(Temperament::Average) => "maintenance_average",
            Self::Maintenance(Temperament::Elevated) => "maintenance_elevated",
            Self::Light => "light",
            Self::Moderate => "moderate",
            Self::Heavy => "heavy",
            Self::VeryHeavy => "very_heavy",
        };
        Some(Value::from(word))
    }
}

/// `2012-05-01`, `2012-05` when the month is known, or `2012` when only the year is.
impl Stored for Birth {
    fn read(value: Option<&Value>, path: &Path<'_>) -> Result<Self, LogError> {
        let born = text(value, path)?;
        let form = || path.refuse(born, Allowed::Form(Form::DateMonthOrYear));
        let digits = |text: &str, count: usize| {
            let all = text.len() == count && text.bytes().all(|d| d.is_ascii_digit());
            all.then(|| text.parse::<u32>().ok()).flatten()
        };
        // numeric: four digits of a year, two of a month
        let year = |text: &str| digits(text, 4).and_then(|year| i32::try_from(year).ok());
        match born.split_once('-') {
            None => year(born).map(Self::Year).ok_or_else(form),
            Some((of, month)) if !month.contains('-') => year(of)
                .zip(digits(month, 2))
                .map(|(year, month)| Self::Month { year, month })
                .filter(|born| born.latest().is_some())
                .ok_or_else(form),
            Some(_) => LocalDate::read(value, path)
                .map(Self::Day)
                .map_err(|_| form()),
        }
    }

    fn write(&self) -> Option<Value> {
        match self {
            Self::Day(day) => day.write(),
            Self::Month { year, month } => Some(Value::from(format!("{year:04}-{month:02}"))),
            Self::Year(year) => Some(Value::from(format!("{year:04}"))),
        }
    }
}

twin! {
    /// An animal. Its id is the id of the record.
    AnimalV2 {
        /// Its name.
        name: Name,
        /// What kind of equid.
        kind: Kind,
        /// The body type that chooses a weight equation.
        body_type: Option<BodyType>,
        /// Sex.
        sex: Option<Sex>,
        /// The day of birth, or the month, or the year.
        born: Option<Birth>,
        /// Height at the withers.
        height: Option<Distance>,
        /// Adult, growing, in foal, in milk.
        state: State,
        /// The day a mare in foal was covered.
        covered: Option<LocalDate>,
        /// The day a mare in milk foaled.
        foaled: Option<LocalDate>,
        /// What a growing animal will about weigh when it is grown.
        grown: Option<BodyWeight>,
        /// Its work.
        work: Workload,
        /// What is known of its health.
        health: Health,
        /// What is wanted of its weight.
        goal: Goal,
        /// Where it stands in the loop.
        phase: Phase,
        /// The weight somebody set as its target.
        target: Option<BodyWeight>,
        /// The day its last laminitis was said to have begun.
        laminitis_on: Option<LocalDate>,
        /// The day it was said to be lame.
        lame_on: Option<LocalDate>,
        /// The day its episode, or a recovery without one, was said to have begun.
        phase_on: Option<LocalDate>,
        /// The day its last box rest was said to have begun.
        box_rest_from: Option<LocalDate>,
        /// The day that was said to have ended.
        box_rest_to: Option<LocalDate>,
        /// The day it came into its phase; the first version of a record says it by its own day.
        phase_since: Option<LocalDate>,
        /// The phase it came from.
        phase_before: Option<Phase>,
        /// Remarks.
        note: Option<String>,
    }
}

/// An animal of the first version, brought to the second: it may say since when it is in foal or in milk, and to what
/// weight it grows. The first version could not, and that stays unsaid; everything else stays where it stands.
pub(crate) const fn animal_with_stage(body: Value) -> Value {
    body
}

impl AnimalV2 {
    /// The twin of an animal, without what was typed and without remarks.
    ///
    /// Errors: a blank name, or a height, target or grown weight that no animal has.
    pub fn of(animal: &Animal) -> Result<Self, LogError> {
        Ok(Self {
            name: Name::new(&animal.name)?,
            kind: animal.kind,
            body_type: animal.body_type,
            sex: animal.sex,
            born: animal.born,
            height: animal
                .height
                .map(|height| Distance::of(height, None))
                .transpose()?,
            state: animal.state,
            covered: animal.stage.covered,
            foaled: animal.stage.foaled,
            grown: animal
                .stage
                .grown
                .map(|grown| BodyWeight::of(grown, None))
                .transpose()?,
            work: animal.work,
            health: animal.health.clone(),
            goal: animal.goal,
            phase: animal.phase,
            target: animal
                .target
                .map(|target| BodyWeight::of(target, None))
                .transpose()?,
            laminitis_on: None,
            lame_on: None,
            phase_on: None,
            box_rest_from: None,
            box_rest_to: None,
            phase_since: None,
            phase_before: None,
            note: None,
        })
    }

    /// With the days on which what stops it was said: what the version before it said already keeps its day, what is new
    /// has this one. A vet's word lifts only what was there when it was given.
    #[must_use]
    pub fn dated(mut self, before: Option<&Self>, on: LocalDate) -> Self {
        let held = before.map(Self::said_on).unwrap_or_default();
        let was = |test: fn(&Self) -> bool| before.is_some_and(test);
        let day = |before: Option<LocalDate>, was: bool, is: bool| match (is, was) {
            (true, false) => Some(on),
            (true, true) => before.or(Some(on)),
            (false, _) => None,
        };
        // An episode that is over keeps its day: a word that was given before it says nothing about it.
        self.laminitis_on = match self.health.laminitis {
            Laminitis::Active => day(held.laminitis, was(Self::has_laminitis), true),
            Laminitis::Ever { .. } => held.laminitis,
            Laminitis::Never | Laminitis::NotKnown => None,
        };
        self.lame_on = day(held.lame, was(Self::is_lame), self.is_lame());
        let same_phase = match self.phase {
            Phase::Episode => was(|before| before.phase == Phase::Episode),
            _ => was(Self::in_vets_hands),
        };
        self.phase_on = day(held.phase, same_phase, self.in_vets_hands());
        let rested = was(Self::is_on_box_rest);
        (self.box_rest_from, self.box_rest_to) = match (before, rested, self.is_on_box_rest()) {
            (_, false, true) => (Some(on), None),
            (Some(before), true, false) => (before.box_rest_from, Some(on)),
            (Some(before), _, _) => (before.box_rest_from, before.box_rest_to),
            (None, _, _) => (None, None),
        };
        (self.phase_since, self.phase_before) = match before {
            None => (None, None),
            Some(before) if before.phase == self.phase => (before.phase_since, before.phase_before),
            Some(before) => (Some(on), Some(before.phase)),
        };
        self
    }

    /// Since when what is said of it stops it.
    pub fn said_on(&self) -> SaidOn {
        SaidOn {
            laminitis: self.laminitis_on,
            lame: self.lame_on,
            phase: self.phase_on,
        }
    }

    /// The same, with the day its version was written where it does not say the day of what it says.
    pub fn said_by(&self, written: LocalDate) -> SaidOn {
        let said = self.said_on();
        let or_written = |day: Option<LocalDate>, is: bool| day.or(is.then_some(written));
        SaidOn {
            laminitis: or_written(said.laminitis, self.has_laminitis()),
            lame: or_written(said.lame, self.is_lame()),
            phase: or_written(said.phase, self.in_vets_hands()),
        }
    }

    fn has_laminitis(&self) -> bool {
        self.health.laminitis == Laminitis::Active
    }

    fn is_lame(&self) -> bool {
        self.health.flags.contains(&VetFlag::Lame)
    }

    fn is_on_box_rest(&self) -> bool {
        self.health.flags.contains(&VetFlag::BoxRest)
    }

    fn in_vets_hands(&self) -> bool {
        matches!(self.phase, Phase::Episode | Phase::Recovering)
    }

    /// The animal behind a record.
    pub fn animal(&self, id: &RecordId) -> Animal {
        Animal {
            id: AnimalId(id.0.clone()),
            name: self.name.as_str().to_owned(),
            kind: self.kind,
            body_type: self.body_type,
            sex: self.sex,
            born: self.born,
            height: self.height.as_ref().map(|height| height.mm.length()),
            state: self.state,
            stage: StageFacts {
                covered: self.covered,
                foaled: self.foaled,
                grown: self.grown.as_ref().map(|grown| grown.g.mass()),
            },
            work: self.work,
            health: self.health.clone(),
            goal: self.goal,
            phase: self.phase,
            target: self.target.as_ref().map(|target| target.g.mass()),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_word_of_work_is_read_and_written_alike() {
        assert_eq!(WORK.len(), WORK_WORDS.len());
        for ((word, work), listed) in WORK.iter().zip(WORK_WORDS) {
            assert_eq!(word, listed);
            assert_eq!(work.write(), Some(Value::from(*word)));
            let value = Value::from(*word);
            assert_eq!(Workload::read(Some(&value), &Path::Root), Ok(*work));
        }
    }
}
