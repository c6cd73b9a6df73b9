//! A weight by tape or scale: each measure up to three times, what is asked back, and what was answered.

mod answers;
mod body;
mod fields;
#[cfg(test)]
#[allow(
    clippy::redundant_closure_for_method_calls,
    reason = "a method of one lifetime is no answer for every form"
)]
mod tests;

pub use answers::OPEN;
pub use fields::{
    BEHIND, HOW, INSTRUMENT, KIND, MEASURES, MORE, OF_SCALE, TOOL, WITH, WITHOUT, echo_length,
    echo_mass, of_measure,
};

use crate::acts::{Act, New};
use fields::{Read, a_length, a_mass, read};
use tussock_core::animal::{Animal, Kind};
use tussock_core::assess::{
    AssessError, Before, Change, Doubt, Doubts, Finding, LengthKind, Measure, Measured, NeckLine,
    Reading, ScaleInstrument, ScaleTaken, Take, Taken, Takes, TapeTaken, TapeTool, WeightEstimate,
    change, doubts, frame_holds, neck_to_height, weigh,
};
use tussock_core::log::bodies::{ReadingV1, WeightV1};
use tussock_core::log::{Body, Known, LogError, Subject};
use tussock_core::sources::RecordId;
use tussock_core::units::parse::ParseError;
use tussock_core::units::{BodyMass, Length, LocalDate};

/// With what it is weighed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum How {
    /// A tape.
    Tape,
    /// A scale.
    Scale,
}

/// The choices of the form and their texts; the first of each is what stands while nobody chose.
pub const HOWS: [(How, &str); 2] = [(How::Tape, "tape"), (How::Scale, "scale")];
/// See [`HOWS`].
pub const KINDS: [(LengthKind, &str); 2] = [
    (LengthKind::Wrap, "wrap"),
    (LengthKind::Straight, "straight"),
];
/// See [`HOWS`].
pub const TOOLS: [(TapeTool, &str); 2] = [
    (TapeTool::Tape, "tape"),
    (TapeTool::StringAndRuler, "string"),
];
/// See [`HOWS`].
pub const INSTRUMENTS: [(ScaleInstrument, &str); 2] = [
    (ScaleInstrument::AnimalScale, "scale"),
    (ScaleInstrument::VehicleWeighbridge, "vehicle"),
];

/// The choice a text stands for, or the one that stands while nobody chose.
pub fn chosen<T: Copy>(text: &str, offers: &[(T, &'static str); 2]) -> T {
    let [(first, _), (second, word)] = *offers;
    if text == word { second } else { first }
}

/// The text of a choice.
pub fn text_of<T: Copy + PartialEq>(choice: T, offers: &[(T, &'static str); 2]) -> &'static str {
    let [(first, word), (_, other)] = *offers;
    if choice == first { word } else { other }
}

/// What is wrong with a field.
#[derive(Clone, Debug, PartialEq)]
pub enum Wrong {
    /// The text of this field cannot be read.
    Parse(&'static str, ParseError),
    /// The measures give no weight.
    Assess(AssessError),
    /// The vehicle weighs no more with the animal than without it.
    NoDifference,
    /// It cannot be stored.
    Log(LogError),
}

impl Wrong {
    /// The field it is shown at.
    pub const fn field(&self, how: How) -> &'static str {
        match (self, how) {
            (Self::Parse(field, _), _) => field,
            (Self::NoDifference, _) => WITH,
            (Self::Assess(AssessError::Missing(measure)), How::Tape) => {
                let [field, _, _] = of_measure(*measure);
                field
            }
            (Self::Assess(AssessError::WrongLength { .. }), How::Tape) => "length",
            (Self::Assess(_) | Self::Log(_), How::Tape) => "girth",
            (Self::Assess(_) | Self::Log(_), How::Scale) => "scale",
        }
    }
}

/// Why a form is not saved yet.
#[derive(Clone, Debug, PartialEq)]
pub enum NotYet {
    /// What is wrong with its fields.
    Wrong(Vec<Wrong>),
    /// What is asked back and not answered.
    Asked(Vec<Doubt>),
}

/// What the figures so far say.
#[derive(Clone, Debug, PartialEq)]
pub struct Seen {
    /// The weight with its band, and what to know beside it.
    pub weight: Option<(WeightEstimate, Vec<Finding>)>,
    /// What changed since each measure was last taken.
    pub changes: Vec<Change>,
    /// The neck as a part of the height.
    pub neck: Option<(f64, NeckLine)>,
    /// What is asked back.
    pub doubts: Doubts,
}

/// A filled form, beside its animal and what was taken before.
#[derive(Clone, Copy)]
pub struct Filled<'a> {
    /// The animal.
    pub animal: &'a Animal,
    /// What was taken before.
    pub before: &'a Before,
    /// The local day.
    pub today: LocalDate,
    /// The raw text of a field.
    pub text: &'a dyn Fn(&str) -> String,
}

/// What was taken, and the texts it was typed as.
struct Typed {
    taken: Taken,
    measures: Vec<(Measure, Vec<Read<Length>>)>,
    scale: Vec<Read<BodyMass>>,
    vehicle: Option<(Read<BodyMass>, Read<BodyMass>)>,
}

/// Which length an animal's equations are for while nobody says otherwise.
pub fn usual_kind(animal: &Animal) -> LengthKind {
    match animal.kind {
        Kind::Donkey => LengthKind::ElbowToTuber,
        Kind::Horse | Kind::Pony | Kind::Miniature | Kind::Mule => LengthKind::Wrap,
    }
}

impl Filled<'_> {
    /// Tape or scale.
    pub fn how(&self) -> How {
        chosen(&(self.text)(HOW), &HOWS)
    }

    /// Which length was taken. A donkey has one of its own.
    pub fn kind(&self) -> LengthKind {
        match usual_kind(self.animal) {
            LengthKind::ElbowToTuber => LengthKind::ElbowToTuber,
            LengthKind::Wrap | LengthKind::Straight => chosen(&(self.text)(KIND), &KINDS),
        }
    }

    /// With what the tape was taken.
    pub fn tool(&self) -> TapeTool {
        chosen(&(self.text)(TOOL), &TOOLS)
    }

    /// What it stood on.
    pub fn instrument(&self) -> ScaleInstrument {
        chosen(&(self.text)(INSTRUMENT), &INSTRUMENTS)
    }

    fn typed(&self) -> Result<Typed, Vec<Wrong>> {
        match (self.how(), self.instrument()) {
            (How::Tape, _) => self.by_tape(),
            (How::Scale, ScaleInstrument::AnimalScale) => self.on_scale(),
            (How::Scale, ScaleInstrument::VehicleWeighbridge) => self.on_weighbridge(),
        }
    }

    /// The readings of a measure or of the scale, without the one that a person left out.
    fn takes<T>(&self, measure: Option<Measure>, reads: &[Read<T>]) -> Vec<Take<T>>
    where
        T: Copy,
    {
        let left_out = self.left_out(measure);
        reads
            .iter()
            .enumerate()
            .map(|(place, read)| Take {
                value: read.value,
                left_out: left_out == Some(place) && 1 < reads.len(),
            })
            .collect()
    }

    fn by_tape(&self) -> Result<Typed, Vec<Wrong>> {
        let mut wrong = Vec::new();
        let mut measures = Vec::new();
        for measure in MEASURES {
            let reads = read(&of_measure(measure), self.text, a_length, &mut wrong);
            for read in &reads {
                if let Err(error) = measure.bounds().check(read.value.to_cm()) {
                    wrong.push(Wrong::Parse(read.field, ParseError::OutOfRange(error)));
                }
            }
            if !reads.is_empty() {
                measures.push((measure, reads));
            }
        }
        let [girth, _, _] = of_measure(Measure::HeartGirth);
        let girths = of_measure(Measure::HeartGirth);
        let no_girth = girths
            .iter()
            .all(|field| (self.text)(field).trim().is_empty());
        if no_girth {
            wrong.push(Wrong::Parse(girth, ParseError::Empty));
        }
        let mut taken = Vec::new();
        for (measure, reads) in &measures {
            match Takes::new(self.takes(Some(*measure), reads)) {
                Ok(takes) => taken.push(Measured {
                    measure: *measure,
                    takes,
                    unit_said: reads.iter().all(|read| read.unit_said),
                }),
                Err(error) => wrong.push(Wrong::Assess(error)),
            }
        }
        if !wrong.is_empty() {
            return Err(wrong);
        }
        Ok(Typed {
            taken: Taken::Tape(TapeTaken {
                measures: taken,
                kind: self.kind(),
                tool: self.tool(),
            }),
            measures,
            scale: Vec::new(),
            vehicle: None,
        })
    }

    fn on_scale(&self) -> Result<Typed, Vec<Wrong>> {
        let mut wrong = Vec::new();
        let reads = read(&OF_SCALE, self.text, a_mass, &mut wrong);
        let [field, _, _] = OF_SCALE;
        if reads.is_empty() && wrong.is_empty() {
            wrong.push(Wrong::Parse(field, ParseError::Empty));
        }
        if !wrong.is_empty() {
            return Err(wrong);
        }
        let takes =
            Takes::new(self.takes(None, &reads)).map_err(|error| vec![Wrong::Assess(error)])?;
        Ok(Typed {
            taken: Taken::Scale(ScaleTaken {
                takes,
                unit_said: reads.iter().all(|read| read.unit_said),
                instrument: ScaleInstrument::AnimalScale,
            }),
            measures: Vec::new(),
            scale: reads,
            vehicle: None,
        })
    }

    /// With and without the animal; the difference is its weight.
    fn on_weighbridge(&self) -> Result<Typed, Vec<Wrong>> {
        let mut wrong = Vec::new();
        let mut one = |field: &'static str| {
            let mut found = read(&[field], self.text, a_mass, &mut wrong);
            if found.is_empty() && (self.text)(field).trim().is_empty() {
                wrong.push(Wrong::Parse(field, ParseError::Empty));
            }
            found.pop()
        };
        let (Some(with), Some(without)) = (one(WITH), one(WITHOUT)) else {
            return Err(wrong);
        };
        if with.value <= without.value {
            return Err(vec![Wrong::NoDifference]);
        }
        Ok(Typed {
            taken: Taken::Scale(ScaleTaken {
                takes: Takes::once(with.value - without.value),
                unit_said: with.unit_said && without.unit_said,
                instrument: ScaleInstrument::VehicleWeighbridge,
            }),
            measures: Vec::new(),
            scale: Vec::new(),
            vehicle: Some((with, without)),
        })
    }

    /// The reading of the means, with the frame of the last tape where it was not taken.
    fn reading(&self, taken: &Taken) -> Option<Reading> {
        let reading = taken.reading()?;
        let held = self
            .before
            .tape
            .filter(|(taken_on, _)| frame_holds(self.animal, *taken_on, self.today));
        Some(match (reading, held) {
            (Reading::Tape(tape), Some((_, earlier))) => {
                Reading::Tape(tape.with_frame_of(&earlier))
            }
            (reading, _) => reading,
        })
    }

    /// What the figures so far say; `None` while they cannot be read.
    pub fn seen(&self) -> Option<Seen> {
        let typed = self.typed().ok()?;
        let weight = self
            .reading(&typed.taken)
            .and_then(|reading| weigh(self.animal, &reading, self.today).ok());
        let mut seen = Seen {
            weight,
            changes: Vec::new(),
            neck: None,
            doubts: doubts(self.animal, &typed.taken, self.before, self.today),
        };
        let other_length = |doubt: &Doubt| matches!(doubt, Doubt::OtherLength { .. });
        if let Some((_, findings)) = &mut seen.weight
            && seen.doubts.asked.iter().any(other_length)
        {
            // The question says it better.
            findings.retain(|finding| !matches!(finding, Finding::UnusualProportion { .. }));
        }
        if let Taken::Tape(tape) = &typed.taken {
            seen.changes = MEASURES
                .iter()
                .filter_map(|measure| {
                    change(
                        &tape.as_earlier(*measure, self.today)?,
                        self.before.of(*measure)?,
                    )
                })
                .collect();
            let height = tape.mean(Measure::Height).or(self.animal.height);
            seen.neck = tape
                .mean(Measure::Neck)
                .zip(height)
                .map(|(neck, height)| neck_to_height(self.animal, neck, height));
        }
        Some(seen)
    }

    /// The act that writes it.
    ///
    /// # Errors
    /// What is wrong with a field, and a reading that gives no weight; then what is asked back and not answered.
    pub fn act(&self, record: &str) -> Result<Act, NotYet> {
        let typed = self.typed().map_err(NotYet::Wrong)?;
        let wrong = |error| NotYet::Wrong(vec![error]);
        if let Some(reading) = self.reading(&typed.taken) {
            weigh(self.animal, &reading, self.today)
                .map_err(|error| wrong(Wrong::Assess(error)))?;
        }
        let doubts = doubts(self.animal, &typed.taken, self.before, self.today);
        let open = self.open(&doubts.asked);
        if !open.is_empty() {
            return Err(NotYet::Asked(open));
        }
        let body = self
            .body(&typed)
            .map_err(|error| wrong(Wrong::Log(error)))?;
        Ok(Act::Add(New {
            id: RecordId(record.to_owned()),
            subject: Subject::animal(&self.animal.id),
            at: None,
            known: Known::Seen,
            body: Body::Weight(body),
        }))
    }

    fn body(&self, typed: &Typed) -> Result<WeightV1, LogError> {
        let reading = match &typed.taken {
            Taken::Tape(tape) => ReadingV1::Tape {
                tape: body::tape(tape, &typed.measures)?,
            },
            Taken::Scale(scale) => ReadingV1::Scale {
                scale: body::scale(scale, typed)?,
            },
        };
        let answered = self.answered();
        Ok(WeightV1 {
            reading,
            job: None,
            answered: (!answered.is_empty()).then_some(answered),
        })
    }
}
