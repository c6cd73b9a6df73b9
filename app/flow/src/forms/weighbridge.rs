//! All animals on a scale, one after another: a row an animal, the instrument said once.
//!
//! A row is a form of [`super::weight`] whose fields carry the animal's id; what is said once for all rows is read by each
//! of them. Rows that are typed are saved together, in the order in which they were typed: the next time they stand so.

use super::weight::{
    Filled, HOW, HOWS, How, INSTRUMENT, INSTRUMENTS, NotYet, OF_SCALE, WITH, WITHOUT, Wrong,
    chosen, text_of,
};
use crate::acts::Act;
use crate::views::weighbridge::Line;
use tussock_core::animal::AnimalId;
use tussock_core::assess::{Doubt, DoubtAnswer, ScaleInstrument};
use tussock_core::units::LocalDate;

/// The field of a row.
pub fn of_row(field: &str, animal: &AnimalId) -> String {
    format!("{field}-{}", animal.as_str())
}

/// In which turn a row was first typed.
const TURN: &str = "turn";
/// The record of a row.
pub const RECORD: &str = "id";

/// The form of all rows.
#[derive(Clone, Copy)]
pub struct Rows<'a> {
    /// The rows.
    pub lines: &'a [Line],
    /// The local day.
    pub today: LocalDate,
    /// What stands while nobody chose: the instrument of today's last weight.
    pub instrument: ScaleInstrument,
    /// The vehicle without an animal, as it was last typed today.
    pub without: &'a str,
    /// The raw text of a field.
    pub text: &'a dyn Fn(&str) -> String,
}

/// What comes of saving.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Saving {
    /// The rows that are saved, each with its act, in the order in which they were typed.
    pub acts: Vec<(AnimalId, Act)>,
    /// The rows that cannot be read.
    pub wrong: Vec<(AnimalId, Vec<Wrong>)>,
    /// The rows of which something is asked back.
    pub asked: Vec<(AnimalId, Vec<Doubt>)>,
}

impl Rows<'_> {
    /// What they stand on.
    pub fn instrument(&self) -> ScaleInstrument {
        match (self.text)(INSTRUMENT).as_str() {
            "" => self.instrument,
            text => chosen(text, &INSTRUMENTS),
        }
    }

    /// The field that is typed in each row.
    pub fn field(&self) -> &'static str {
        match self.instrument() {
            ScaleInstrument::AnimalScale => {
                let [field, _, _] = OF_SCALE;
                field
            }
            ScaleInstrument::VehicleWeighbridge => WITH,
        }
    }

    /// The text of the vehicle without an animal.
    pub fn without(&self) -> String {
        match (self.text)(WITHOUT).trim() {
            "" => self.without.to_owned(),
            text => text.to_owned(),
        }
    }

    /// The form of a row.
    pub fn row<T>(&self, line: &Line, ask: impl FnOnce(&Filled<'_>) -> T) -> T {
        let text = |field: &str| match field {
            HOW => text_of(How::Scale, &HOWS).to_owned(),
            INSTRUMENT => text_of(self.instrument(), &INSTRUMENTS).to_owned(),
            WITHOUT => self.without(),
            field => (self.text)(&of_row(field, &line.animal.id)),
        };
        ask(&Filled {
            animal: &line.animal,
            before: &line.before,
            today: self.today,
            text: &text,
        })
    }

    /// Whether anything is typed in a row.
    pub fn is_typed(&self, line: &Line) -> bool {
        !(self.text)(&of_row(self.field(), &line.animal.id))
            .trim()
            .is_empty()
    }

    /// How many rows hold something.
    pub fn typed(&self) -> usize {
        self.lines.iter().filter(|line| self.is_typed(line)).count()
    }

    fn turn(&self, line: &Line) -> usize {
        (self.text)(&of_row(TURN, &line.animal.id))
            .parse()
            .unwrap_or(usize::MAX)
    }

    /// The fields that typing in a row sets: its text, and with its first key its turn.
    pub fn type_in(&self, animal: &AnimalId, field: &str, text: String) -> Vec<(String, String)> {
        let mut sets = vec![(of_row(field, animal), text)];
        let turn = of_row(TURN, animal);
        if (self.text)(&turn).is_empty() {
            let taken = self
                .lines
                .iter()
                .filter(|line| self.turn(line) != usize::MAX)
                .count();
            sets.push((turn, (taken + 1).to_string()));
        }
        sets
    }

    /// The fields that an answer sets.
    pub fn answer(&self, line: &Line, doubt: &Doubt, answer: DoubtAnswer) -> Vec<(String, String)> {
        self.row(line, |filled| filled.answer(doubt, answer))
            .into_iter()
            .map(|(field, text)| (of_row(&field, &line.animal.id), text))
            .collect()
    }

    /// Everything that is typed, as acts, or what is wrong with it. One row that is asked back holds no other up.
    pub fn save(&self, mut record: impl FnMut(&AnimalId) -> String) -> Saving {
        let mut saving = Saving::default();
        let mut typed: Vec<&Line> = self
            .lines
            .iter()
            .filter(|line| self.is_typed(line))
            .collect();
        typed.sort_by_key(|line| self.turn(line));
        for line in typed {
            let id = &line.animal.id;
            let record = record(id);
            match self.row(line, |filled| filled.act(&record)) {
                Ok(act) => saving.acts.push((id.clone(), act)),
                Err(NotYet::Wrong(wrong)) => saving.wrong.push((id.clone(), wrong)),
                Err(NotYet::Asked(asked)) => saving.asked.push((id.clone(), asked)),
            }
        }
        saving
    }

    /// The fields that are emptied once a row is saved.
    pub fn emptied(animal: &AnimalId) -> Vec<String> {
        let [one, two, three] = OF_SCALE;
        [one, two, three, WITH, TURN, RECORD]
            .iter()
            .map(|field| of_row(field, animal))
            .collect()
    }
}
