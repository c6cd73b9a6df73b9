//! Records, and why one was refused.

use super::English;
use crate::words::{AssessWords, LogWords, UnitWords};
use tussock_core::log::bodies::{Chip, JobAnswer, LabelBasis, Quarters, Role};
use tussock_core::log::{Added, Allowed, Form, Kind, Known, LogError, Place, Problem, Shape};

impl English {
    /// Where it stands: the field, and the record or its row where one is known.
    fn place(place: &Place) -> String {
        let field = if place.field.is_empty() {
            "the document".to_owned()
        } else {
            format!("the field {}", place.field)
        };
        match (&place.record, place.row) {
            (Some(record), _) => format!("{field} of record {record}"),
            (None, Some(row)) => format!("{field} of record number {}", row.saturating_add(1)),
            (None, None) => field,
        }
    }
}

impl LogWords for English {
    fn log_error(&self, error: &LogError) -> String {
        let at = Self::place;
        match error {
            LogError::NotJson { line, column } => {
                format!("This file cannot be read: it breaks off at line {line}, column {column}")
            }
            LogError::RepeatedKey { place } => {
                format!("Twice the same name and two readings: {}", at(place))
            }
            LogError::Fraction { place } => {
                format!(
                    "A number with a fraction where only whole ones stand: {}",
                    at(place)
                )
            }
            LogError::Inexact { place } => {
                format!("A number too large to be kept exactly: {}", at(place))
            }
            LogError::TooDeep { place } => {
                format!("Nested deeper than any record: {}", at(place))
            }
            LogError::Missing { place } => format!("Missing: {}", at(place)),
            LogError::WrongShape {
                place,
                expected,
                found,
            } => format!(
                "Not readable: {} is {}, and {} is needed",
                at(place),
                self.shape(*found),
                self.shape(*expected)
            ),
            LogError::NotAllowed {
                place,
                value,
                allowed,
            } => format!(
                "Not allowed: {} is \"{value}\"; allowed is {}",
                at(place),
                self.allowed(allowed)
            ),
            LogError::OutOfRange { place, range } => {
                format!(
                    "Not allowed, in {}: {}",
                    at(place),
                    self.out_of_range(range)
                )
            }
            LogError::NotALog => "This file is not a copy of this program's records".to_owned(),
            LogError::NewerFormat { version, known } => format!(
                "This copy was made by a later release (format {version}, this one reads up to {known}): update first"
            ),
            LogError::Counts { said, held } => {
                format!("A part of this copy is missing: it says {said} records and holds {held}")
            }
            LogError::Seal => {
                "This copy was changed or damaged on its way: ask for it again".to_owned()
            }
            LogError::NotAPicture => "This is not a picture that can be kept".to_owned(),
            LogError::ClockAtEnd => {
                "The clock of this device is far ahead: set it right and save again".to_owned()
            }
            LogError::OtherKind { place, kind } => {
                format!(
                    "Another kind of record ({kind}) than was asked for: {}",
                    at(place)
                )
            }
        }
    }

    fn record_problem(&self, problem: &Problem) -> String {
        match problem {
            Problem::Log(error) => self.log_error(error),
            Problem::Assess { record, error } => format!(
                "The record {} cannot be used: {}",
                record.0,
                super::fields::small(&self.assess_error(error))
            ),
        }
    }

    fn allowed(&self, allowed: &Allowed) -> String {
        match allowed {
            Allowed::Range { min, max } => format!("a whole number from {min} to {max}"),
            Allowed::OneOf(words) => super::fields::either(words),
            Allowed::Named(most) => format!("a name of 1 to {most} characters"),
            Allowed::UpTo(most) => format!("a text of at most {most} characters"),
            Allowed::Form(form) => self.form(*form).to_owned(),
            Allowed::Rising => "a row that rises, with nothing twice".to_owned(),
            Allowed::AsItsWordAsks => "what the word beside it asks for".to_owned(),
        }
    }

    fn form(&self, form: Form) -> &'static str {
        match form {
            Form::Id => "an id of 1 to 64 small letters, digits and hyphens",
            Form::Device => "a device of eight small letters or digits",
            Form::Stamp => "a stamp, 13 digits, 4 digits and a device with hyphens between",
            Form::Subject => "a subject, like animal: and an id",
            Form::Kind => "a kind of 1 to 40 small letters, digits and underscores",
            Form::Date => "a day, like 2026-05-05",
            Form::DateMonthOrYear => "a day, a month or a year, like 2026-05-05, 2026-05 or 2012",
            Form::Time => "a time, like 07:05",
            Form::Decimal => "a decimal with one point, like 9.4",
            Form::Currency => "a currency of three capital letters, like GBP",
            Form::JobKey => "the key of a job",
            Form::Sha256 => "a sum of 64 digits and letters from a to f",
        }
    }

    fn shape(&self, shape: Shape) -> &'static str {
        match shape {
            Shape::Object => "a group of fields",
            Shape::Array => "a list",
            Shape::Text => "a text",
            Shape::Whole => "a whole number",
            Shape::Flag => "true or false",
            Shape::Null => "nothing",
        }
    }

    fn record_kind(&self, kind: &Kind) -> String {
        match kind {
            Kind::Feeding => "How it is fed",
            Kind::Yard => "Yard",
            Kind::Person => "Person",
            Kind::Animal => "Animal",
            Kind::Group => "Group",
            Kind::Lot => "Hay",
            Kind::LotCount => "Hay counted",
            Kind::Paddock => "Paddock",
            Kind::Food => "Feed",
            Kind::Net => "Net",
            Kind::Tub => "Tub",
            Kind::Visits => "Visits",
            Kind::Weight => "Weight",
            Kind::Condition => "Condition",
            Kind::Crest => "Crest",
            Kind::Photo => "Photograph",
            Kind::LookOver => "Look-over",
            Kind::WorkSession => "Work",
            Kind::Appetite => "Will not eat",
            Kind::Vitals => "Temperature, pulse, breathing",
            Kind::VetWord => "The vet's word",
            Kind::NetFilled => "Nets filled",
            Kind::NetHung => "Net hung",
            Kind::NetTimed => "Net timed",
            Kind::SoakStep => "Soak",
            Kind::LeftOver => "Left over",
            Kind::Job => "Job",
            Kind::Weather => "Weather",
            Kind::Plan => "Plan",
            Kind::Ration => "Ration",
            Kind::DayRelaid => "Rest of a day laid out anew",
            Kind::YardVisit => "Visit to the yard",
            Kind::Sward => "Grass seen",
            Kind::Grazing => "How it goes out to grass",
            Kind::Turnout => "At grass",
            Kind::SeasonNote => "Note of the year of grass",
            Kind::Other(word) => return format!("Of a later release ({word})"),
        }
        .to_owned()
    }

    fn known(&self, known: Known) -> &'static str {
        match known {
            Known::Seen => "seen",
            Known::Assumed => "assumed",
            Known::NotKnown => "not known",
        }
    }

    fn added(&self, added: Added) -> &'static str {
        match added {
            Added::New => "new",
            Added::Changed => "changed",
            Added::History => "older, kept as history",
            Added::Same => "here already",
        }
    }

    fn chip(&self, chip: Chip) -> &'static str {
        match chip {
            Chip::UnderSixteen => "Under 16 °C",
            Chip::NightFiveOrUnder => "Night 5 °C or under",
            Chip::NightOverFive => "Night over 5 °C",
            Chip::HardFrost => "Hard frost",
            Chip::Mild => "Mild",
            Chip::OverTwenty => "Over 20 °C",
            Chip::OverTwentyFive => "Over 25 °C",
            Chip::Dull => "Dull",
            Chip::Sunny => "Sunny",
            Chip::DrySpell => "Dry spell",
        }
    }

    fn job_answer(&self, answer: JobAnswer) -> &'static str {
        match answer {
            JobAnswer::Done => "done",
            JobAnswer::AsPlanned => "as planned",
            JobAnswer::NotDone => "not done",
            JobAnswer::SomebodyElse => "somebody else",
            JobAnswer::NotKnown => "not known",
        }
    }

    fn quarters(&self, quarters: Quarters) -> &'static str {
        match quarters {
            Quarters::None => "Nothing left",
            Quarters::One => "A quarter left",
            Quarters::Two => "Half left",
            Quarters::Three => "Three quarters left",
            Quarters::All => "Hardly touched",
        }
    }

    fn role(&self, role: Role) -> &'static str {
        match role {
            Role::Keeper => "Keeper",
            Role::Helper => "Feeds when the keeper is away",
            Role::Consultant => "Consultant",
            Role::Vet => "Vet",
            Role::Farrier => "Farrier or trimmer",
        }
    }

    fn label_basis(&self, basis: LabelBasis) -> &'static str {
        match basis {
            LabelBasis::AsFed => "As fed, as in the bag",
            LabelBasis::DryMatter => "Dry matter",
        }
    }
}
