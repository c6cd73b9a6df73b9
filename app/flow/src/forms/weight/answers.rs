//! What was asked back, and what a person answered. An answer holds for the figures it was given to.

use super::fields::{BEHIND, MEASURES, MORE, OF_SCALE, WITH, WITHOUT, of_measure};
use super::{Filled, How};
use tussock_core::assess::{Answered, Doubt, DoubtAnswer, DoubtKind, Measure, ScaleInstrument};

/// Every question, in the order in which answers are kept.
const KINDS: [DoubtKind; 10] = [
    DoubtKind::Inches,
    DoubtKind::Pounds,
    DoubtKind::Unusual,
    DoubtKind::OtherLength,
    DoubtKind::SmallHorse,
    DoubtKind::Apart,
    DoubtKind::Odd,
    DoubtKind::FrameDiffers,
    DoubtKind::Fell,
    DoubtKind::Rose,
];

const fn word_of(kind: DoubtKind) -> &'static str {
    match kind {
        DoubtKind::Inches => "inches",
        DoubtKind::Pounds => "pounds",
        DoubtKind::Unusual => "unusual",
        DoubtKind::OtherLength => "length",
        DoubtKind::SmallHorse => "small",
        DoubtKind::Apart => "apart",
        DoubtKind::Odd => "odd",
        DoubtKind::FrameDiffers => "frame",
        DoubtKind::Fell => "fell",
        DoubtKind::Rose => "rose",
    }
}

const ANSWERS: [(DoubtAnswer, &str); 4] = [
    (DoubtAnswer::Right, "right"),
    (DoubtAnswer::Again, "again"),
    (DoubtAnswer::OtherUnit, "unit"),
    (DoubtAnswer::LeftOut, "out"),
];

/// The field of an answer.
fn field(kind: DoubtKind, measure: Option<Measure>) -> String {
    let about = measure.map_or(OF_SCALE, of_measure);
    let [about, _, _] = about;
    format!("ask-{}-{about}", word_of(kind))
}

/// An answer as it stands in its field: the answer, the figures it was given to, and for a reading that was left out its
/// place.
struct Given {
    answer: DoubtAnswer,
    figures: String,
    place: Option<usize>,
}

impl Given {
    fn read(text: &str) -> Option<Self> {
        let mut parts = text.splitn(3, '|');
        let word = parts.next()?;
        let (answer, _) = ANSWERS.iter().find(|(_, known)| *known == word)?;
        let place = parts.next()?.parse().ok();
        Some(Self {
            answer: *answer,
            figures: parts.next()?.to_owned(),
            place,
        })
    }

    fn write(&self) -> String {
        let word = ANSWERS
            .iter()
            .find(|(answer, _)| *answer == self.answer)
            .map_or("", |(_, word)| word);
        let place = self.place.map(|place| place.to_string());
        format!("{word}|{}|{}", place.unwrap_or_default(), self.figures)
    }
}

impl Filled<'_> {
    /// The fields of a measure, or of what the animal stood on.
    fn fields_of(&self, measure: Option<Measure>) -> Vec<&'static str> {
        match (measure, self.instrument()) {
            (Some(measure), _) => of_measure(measure).to_vec(),
            (None, ScaleInstrument::AnimalScale) => OF_SCALE.to_vec(),
            (None, ScaleInstrument::VehicleWeighbridge) => vec![WITH, WITHOUT],
        }
    }

    /// The figures that a question is about.
    fn figures(&self, measure: Option<Measure>) -> String {
        let own: Vec<String> = self
            .fields_of(measure)
            .into_iter()
            .map(|field| (self.text)(field).trim().to_owned())
            .collect();
        own.join("/")
    }

    fn given(&self, kind: DoubtKind, measure: Option<Measure>) -> Option<Given> {
        Given::read(&(self.text)(&field(kind, measure)))
    }

    fn holds(&self, measure: Option<Measure>, given: &Given) -> bool {
        given.figures == self.figures(measure)
    }

    /// The place of the reading of a measure that was left out, while its figures stand.
    pub(super) fn left_out(&self, measure: Option<Measure>) -> Option<usize> {
        self.given(DoubtKind::Odd, measure)
            .filter(|given| given.answer == DoubtAnswer::LeftOut && self.holds(measure, given))
            .and_then(|given| given.place)
    }

    /// The questions that nobody answered for these figures.
    pub fn open(&self, asked: &[Doubt]) -> Vec<Doubt> {
        let by_tape = self.how() == How::Tape;
        let is_open = |doubt: &&Doubt| {
            let about = doubt.measure(by_tape);
            !self.given(doubt.kind(), about).is_some_and(|given| {
                given.answer == DoubtAnswer::Right && self.holds(about, &given)
            })
        };
        asked.iter().filter(is_open).copied().collect()
    }

    /// Everything that was answered in this form. That it is right is kept while it is said of the figures that stand.
    pub(super) fn answered(&self) -> Vec<Answered> {
        let about: Vec<Option<Measure>> = match self.how() {
            How::Tape => MEASURES.iter().copied().map(Some).collect(),
            How::Scale => vec![None],
        };
        let mut found = Vec::new();
        for measure in about {
            for doubt in KINDS {
                let Some(given) = self.given(doubt, measure) else {
                    continue;
                };
                let stands = match given.answer {
                    DoubtAnswer::Right | DoubtAnswer::LeftOut => self.holds(measure, &given),
                    DoubtAnswer::Again | DoubtAnswer::OtherUnit => true,
                };
                if stands {
                    found.push(Answered {
                        doubt,
                        measure,
                        answer: given.answer,
                    });
                }
            }
        }
        found
    }

    /// The answers that a question offers, the careful one first.
    pub const fn offers(doubt: &Doubt) -> &'static [DoubtAnswer] {
        match doubt.kind() {
            DoubtKind::Inches | DoubtKind::Pounds => &[
                DoubtAnswer::OtherUnit,
                DoubtAnswer::Again,
                DoubtAnswer::Right,
            ],
            DoubtKind::Odd => &[DoubtAnswer::LeftOut, DoubtAnswer::Right],
            DoubtKind::Unusual
            | DoubtKind::OtherLength
            | DoubtKind::SmallHorse
            | DoubtKind::Apart
            | DoubtKind::FrameDiffers
            | DoubtKind::Fell
            | DoubtKind::Rose => &[DoubtAnswer::Again, DoubtAnswer::Right],
        }
    }

    /// The fields that an answer sets, each with its new text.
    ///
    /// To measure again opens the field of the next reading where a second one tells more; where the first is likelier a
    /// slip, and where three do not agree, its fields are emptied.
    pub fn answer(&self, doubt: &Doubt, answer: DoubtAnswer) -> Vec<(String, String)> {
        let about = doubt.measure(self.how() == How::Tape);
        let kept = Given {
            answer,
            figures: self.figures(about),
            place: match doubt {
                Doubt::Odd { which, .. } => Some(*which),
                _ => None,
            },
        };
        let mut sets = vec![(field(doubt.kind(), about), kept.write())];
        let fields = self.fields_of(about);
        if about.is_some_and(|measure| BEHIND.contains(&measure)) {
            sets.push((MORE.to_owned(), OPEN.to_owned()));
        }
        match answer {
            DoubtAnswer::Right | DoubtAnswer::LeftOut => {}
            DoubtAnswer::OtherUnit => sets.extend(self.in_other_unit(about)),
            // A vehicle goes over it again with the animal; without it stands.
            DoubtAnswer::Again if fields.first() == Some(&WITH) => {
                sets.push((WITH.to_owned(), String::new()));
            }
            DoubtAnswer::Again => match self.next_take(&fields) {
                Some(next) if tells_more(doubt) => sets.push((next.to_owned(), String::new())),
                _ => sets.extend(
                    fields
                        .into_iter()
                        .map(|field| (field.to_owned(), String::new())),
                ),
            },
        }
        sets
    }

    /// Every bare figure with the other unit behind it: who typed one measure in inches typed all of them so.
    fn in_other_unit(&self, about: Option<Measure>) -> Vec<(String, String)> {
        let (fields, unit): (Vec<&str>, &str) = match about {
            Some(_) => (MEASURES.iter().flat_map(|m| of_measure(*m)).collect(), "in"),
            None => (self.fields_of(None), "lb"),
        };
        let bare = |field: &&str| {
            let text = (self.text)(field);
            let text = text.trim();
            match about {
                Some(_) => super::fields::a_length(text).is_ok_and(|(_, said)| !said),
                None => super::fields::a_mass(text).is_ok_and(|(_, said)| !said),
            }
        };
        fields
            .into_iter()
            .filter(bare)
            .map(|field| {
                (
                    field.to_owned(),
                    format!("{} {unit}", (self.text)(field).trim()),
                )
            })
            .collect()
    }

    /// The field of the next reading; `None` when all three hold one.
    fn next_take(&self, fields: &[&'static str]) -> Option<&'static str> {
        fields
            .iter()
            .find(|field| (self.text)(field).trim().is_empty())
            .copied()
    }

    /// The field in which a measure is taken once more; `None` before its first reading and after its third.
    pub fn once_more(&self, measure: Option<Measure>) -> Option<&'static str> {
        let fields = measure.map_or(OF_SCALE, of_measure);
        let [first, _, _] = fields;
        let readable = match measure {
            Some(_) => super::fields::echo_length(&(self.text)(first)).is_some(),
            None => super::fields::echo_mass(&(self.text)(first)).is_some(),
        };
        self.next_take(&fields).filter(|_| readable)
    }
}

/// The text of the field that says that more measures are in sight.
pub const OPEN: &str = "open";

/// Whether a second reading beside the first tells more than one in its place.
const fn tells_more(doubt: &Doubt) -> bool {
    matches!(
        doubt.kind(),
        DoubtKind::Apart | DoubtKind::Fell | DoubtKind::Rose
    )
}
