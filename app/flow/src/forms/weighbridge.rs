//! All animals on a scale, one after another: a row an animal, the instrument said once.
//!
//! A row is a form of [`super::weight`] of its own: its draft is kept under its own address and cleared by the act that
//! saves it, so that a line that is finished takes nothing along that is still typed in another. What is said once for all
//! rows is a form beside them, which is read and never saved.

use super::weight::{
    Filled, HOW, HOWS, How, INSTRUMENT, INSTRUMENTS, NotYet, OF_SCALE, WITH, WITHOUT, chosen,
    text_of,
};
use crate::acts::Act;
use crate::routes::Route;
use crate::views::weighbridge::{Line, Weighbridge};
use tussock_core::animal::AnimalId;
use tussock_core::assess::{Doubt, DoubtAnswer, ScaleInstrument};
use tussock_core::units::{BodyMass, LocalDate};

/// The address under which the draft of a row is kept.
pub fn address_of(animal: &AnimalId) -> String {
    format!("{}/{}", Route::Weighbridge, animal.as_str())
}

/// What is said once for all rows.
#[derive(Clone, Debug, PartialEq)]
pub struct Head {
    /// What they stand on.
    pub instrument: ScaleInstrument,
    /// The text of the vehicle without an animal.
    pub without: String,
    /// The local day.
    pub today: LocalDate,
}

impl Head {
    /// As it is typed; where nobody typed, as it was with today's last weight.
    pub fn of(seen: &Weighbridge, text: impl Fn(&str) -> String) -> Self {
        Self {
            instrument: match text(INSTRUMENT).as_str() {
                "" => seen.instrument,
                said => chosen(said, &INSTRUMENTS),
            },
            without: match text(WITHOUT).trim() {
                "" => seen.without.clone(),
                said => said.to_owned(),
            },
            today: seen.today,
        }
    }

    /// The fields of a row, the one that is typed first in front.
    pub const fn fields(&self) -> &'static [&'static str] {
        match self.instrument {
            ScaleInstrument::AnimalScale => &OF_SCALE,
            ScaleInstrument::VehicleWeighbridge => &[WITH],
        }
    }
}

/// A row: one animal, and what is typed for it.
#[derive(Clone, Copy)]
pub struct Row<'a> {
    /// The animal with what was taken before.
    pub line: &'a Line,
    /// What is said once for all rows.
    pub head: &'a Head,
    /// The raw text of a field of this row.
    pub text: &'a dyn Fn(&str) -> String,
}

/// The fields that an answer sets: those of the row, and those that are said once.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Sets {
    /// In the row.
    pub row: Vec<(String, String)>,
    /// Once for all rows.
    pub head: Vec<(String, String)>,
}

#[allow(
    clippy::redundant_closure_for_method_calls,
    reason = "a method of one lifetime is no answer for every form"
)]
impl Row<'_> {
    fn filled<T>(&self, ask: impl FnOnce(&Filled<'_>) -> T) -> T {
        let text = |field: &str| match field {
            HOW => text_of(How::Scale, &HOWS).to_owned(),
            INSTRUMENT => text_of(self.head.instrument, &INSTRUMENTS).to_owned(),
            WITHOUT => self.head.without.clone(),
            field => (self.text)(field),
        };
        ask(&Filled {
            animal: &self.line.animal,
            before: &self.line.before,
            today: self.head.today,
            text: &text,
        })
    }

    /// Whether anything is typed.
    pub fn is_typed(&self) -> bool {
        self.head
            .fields()
            .iter()
            .any(|field| !(self.text)(field).trim().is_empty())
    }

    /// The weight as it is understood so far: on a vehicle, the difference.
    pub fn weight(&self) -> Option<BodyMass> {
        let seen = self.filled(|filled| filled.seen())?;
        seen.weight.map(|(weight, _)| weight.value)
    }

    /// What is asked back and not answered.
    pub fn open(&self) -> Vec<Doubt> {
        self.filled(|filled| {
            let asked = filled.seen().map(|seen| seen.doubts.asked);
            filled.open(&asked.unwrap_or_default())
        })
    }

    /// The fields that an answer sets.
    pub fn answer(&self, doubt: &Doubt, answer: DoubtAnswer) -> Sets {
        let sets = self.filled(|filled| filled.answer(doubt, answer));
        let (head, row) = sets.into_iter().partition(|(field, _)| field == WITHOUT);
        Sets { row, head }
    }

    /// The act that saves it.
    ///
    /// # Errors
    /// What is wrong with its fields, or what is asked back and not answered.
    pub fn act(&self, record: &str) -> Result<Act, NotYet> {
        self.filled(|filled| filled.act(record))
    }
}
