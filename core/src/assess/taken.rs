//! What was taken in one go with a tape or a scale, and what was taken before it.

use super::change::Earlier;
use super::takes::Takes;
use super::tape::{LengthKind, Measure, Reading, ScaleInstrument, ScaleWeight, Tape, TapeTool};
use crate::units::{BodyMass, Length, LocalDate};

/// One measure of the tape.
#[derive(Clone, Debug, PartialEq)]
pub struct Measured {
    /// Which.
    pub measure: Measure,
    /// Its readings.
    pub takes: Takes<Length>,
    /// A unit was typed with every reading; else the field's own was read.
    pub unit_said: bool,
}

/// What was taken with a tape in one go.
#[derive(Clone, Debug, PartialEq)]
pub struct TapeTaken {
    /// The measures, each once.
    pub measures: Vec<Measured>,
    /// Which length the body length is.
    pub kind: LengthKind,
    /// With what.
    pub tool: TapeTool,
}

/// What was taken with a scale in one go.
#[derive(Clone, Debug, PartialEq)]
pub struct ScaleTaken {
    /// The readings; of a weighbridge for vehicles the difference.
    pub takes: Takes<BodyMass>,
    /// A unit was typed with every reading.
    pub unit_said: bool,
    /// What the animal stood on.
    pub instrument: ScaleInstrument,
}

/// What was taken in one go.
#[derive(Clone, Debug, PartialEq)]
pub enum Taken {
    /// With a tape.
    Tape(TapeTaken),
    /// On a scale.
    Scale(ScaleTaken),
}

impl TapeTaken {
    /// A measure, when it was taken.
    pub fn of(&self, measure: Measure) -> Option<&Measured> {
        self.measures.iter().find(|taken| taken.measure == measure)
    }

    /// The mean of a measure.
    pub fn mean(&self, measure: Measure) -> Option<Length> {
        self.of(measure).map(|taken| taken.takes.mean())
    }

    /// The tape of the means; `None` without a heart girth.
    pub fn tape(&self) -> Option<Tape> {
        Some(Tape {
            heart_girth: self.mean(Measure::HeartGirth)?,
            length: self.mean(Measure::Length).map(|length| (length, self.kind)),
            height: self.mean(Measure::Height),
            neck: self.mean(Measure::Neck),
            umbilical_girth: self.mean(Measure::UmbilicalGirth),
        })
    }

    /// A measure as it will be looked back on.
    pub fn as_earlier(&self, measure: Measure, day: LocalDate) -> Option<Earlier> {
        let taken = self.of(measure)?;
        Some(Earlier {
            measure,
            length: taken.takes.mean(),
            kind: (measure == Measure::Length).then_some(self.kind),
            tool: self.tool,
            takes: taken.takes.count(),
            day,
        })
    }
}

impl ScaleTaken {
    /// The weight of the mean.
    pub fn scale(&self) -> ScaleWeight {
        ScaleWeight {
            mass: self.takes.mean(),
            instrument: self.instrument,
        }
    }
}

impl Taken {
    /// The reading of the means; `None` for a tape without a heart girth.
    pub fn reading(&self) -> Option<Reading> {
        match self {
            Self::Tape(tape) => tape.tape().map(Reading::Tape),
            Self::Scale(scale) => Some(Reading::Scale(scale.scale())),
        }
    }
}

/// What was taken before, as far as it was.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Before {
    /// Each measure as it was last taken.
    pub measures: Vec<Earlier>,
    /// The last tape, with its day.
    pub tape: Option<(LocalDate, Tape)>,
    /// The last weight from a scale, with its day.
    pub scale: Option<(LocalDate, ScaleWeight)>,
    /// The weight that holds.
    pub weight: Option<BodyMass>,
}

impl Before {
    /// A measure as it was last taken.
    pub fn of(&self, measure: Measure) -> Option<&Earlier> {
        self.measures
            .iter()
            .find(|earlier| earlier.measure == measure)
    }
}
