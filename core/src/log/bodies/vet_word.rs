//! The vet's word.

use super::base::BodyHundredths;
use crate::animal::{AnimalId, VetPermit, VetWord};
use crate::log::error::{LogError, Path};
use crate::log::stored::{Name, Stored, tagged, twin};
use crate::units::{LocalDate, PartOfBody};
use serde_json::Value;

/// A part of body weight, in hundredths of a percent.
impl Stored for PartOfBody {
    fn read(value: Option<&Value>, path: &Path<'_>) -> Result<Self, LogError> {
        BodyHundredths::read(value, path).map(BodyHundredths::part)
    }

    fn write(&self) -> Option<Value> {
        BodyHundredths::of(*self)
            .ok()
            .as_ref()
            .and_then(Stored::write)
    }
}

tagged!(VetPermit, by "about" {
    LowestLevel = "lowest_level" { 0: hundredths },
    Work = "work" {},
    ReturnToGrass = "return_to_grass" {},
});

twin! {
    /// The vet's word.
    VetWordV1 {
        /// For which animal.
        animal: AnimalId,
        /// What is allowed.
        permit: VetPermit,
        /// The vet.
        vet: Name,
        /// The practice.
        practice: String,
        /// The day it was given.
        given: LocalDate,
        /// How: by telephone, at a visit, in writing.
        how: String,
        /// The last day on which it holds.
        expires: LocalDate,
    }
}

impl VetWordV1 {
    /// The twin of a vet's word.
    ///
    /// Errors: no vet is named, or a level that no animal is fed at.
    pub fn of(word: &VetWord) -> Result<Self, LogError> {
        if let VetPermit::LowestLevel(part) = word.permit {
            BodyHundredths::of(part)?;
        }
        Ok(Self {
            animal: word.animal.clone(),
            permit: word.permit,
            vet: Name::new(&word.vet)?,
            practice: word.practice.clone(),
            given: word.given,
            how: word.how.clone(),
            expires: word.expires,
        })
    }

    /// The vet's word; when it was written down the record says.
    pub fn word(&self) -> VetWord {
        VetWord {
            animal: self.animal.clone(),
            permit: self.permit,
            vet: self.vet.as_str().to_owned(),
            practice: self.practice.clone(),
            given: self.given,
            how: self.how.clone(),
            expires: self.expires,
            written: None,
        }
    }
}
