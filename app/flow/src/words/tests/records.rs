//! Records, marks and citations.

use super::{check, every, tongues};
use crate::words::{AnimalWords, English, LogWords, SourceWords};
use tussock_core::animal::{AnimalId, VetPermit, VetWord};
use tussock_core::assess::AssessError;
use tussock_core::log::bodies::{Chip, JobAnswer, LabelBasis, Quarters, Role};
use tussock_core::log::{Added, Allowed, Form, Kind, Known, LogError, Place, Problem, Shape};
use tussock_core::sources::{Mark, RecordId, Source};

fn place() -> Place {
    Place {
        record: Some("a-record".into()),
        row: None,
        field: "body.girth.mm".into(),
    }
}

fn forms() -> Vec<Form> {
    every![
        Form::Id => Form::Id, Form::Device => Form::Device, Form::Stamp => Form::Stamp,
        Form::Subject => Form::Subject, Form::Kind => Form::Kind, Form::Date => Form::Date,
        Form::DateMonthOrYear => Form::DateMonthOrYear, Form::Time => Form::Time,
        Form::Decimal => Form::Decimal, Form::Currency => Form::Currency,
        Form::JobKey => Form::JobKey, Form::Sha256 => Form::Sha256,
    ]
}

fn allowed() -> Vec<Allowed> {
    every![
        Allowed::Range { .. } => Allowed::Range { min: 400, max: 3000 },
        Allowed::OneOf(_) => Allowed::OneOf(&["pony", "horse"]),
        Allowed::Named(_) => Allowed::Named(80),
        Allowed::UpTo(_) => Allowed::UpTo(2000),
        Allowed::Form(_) => Allowed::Form(Form::Date),
        Allowed::Rising => Allowed::Rising,
        Allowed::AsItsWordAsks => Allowed::AsItsWordAsks,
    ]
}

#[test]
fn an_error_of_a_record_names_record_field_value_and_what_is_allowed() {
    let [say, _] = tongues();
    let error = LogError::NotAllowed {
        place: place(),
        value: "5".into(),
        allowed: Allowed::Range {
            min: 400,
            max: 3000,
        },
    };
    assert_eq!(
        say.log_error(&error),
        "Not allowed: the field body.girth.mm of record a-record is \"5\"; allowed is a whole number from 400 to 3000"
    );
    let row = LogError::Missing {
        place: Place {
            record: None,
            row: Some(0),
            field: "id".into(),
        },
    };
    assert_eq!(
        say.log_error(&row),
        "Missing: the field id of record number 1"
    );
}

#[test]
fn every_error_of_a_record_is_worded() {
    let at = place;
    for say in tongues() {
        for form in forms() {
            check(say.form(form));
        }
        for allowed in allowed() {
            check(&say.allowed(&allowed));
        }
        for shape in every![
            Shape::Object => Shape::Object, Shape::Array => Shape::Array, Shape::Text => Shape::Text,
            Shape::Whole => Shape::Whole, Shape::Flag => Shape::Flag, Shape::Null => Shape::Null,
        ] {
            check(say.shape(shape));
        }
        for error in every![
            LogError::NotJson { .. } => LogError::NotJson { line: 3, column: 7 },
            LogError::RepeatedKey { .. } => LogError::RepeatedKey { place: at() },
            LogError::Fraction { .. } => LogError::Fraction { place: at() },
            LogError::Inexact { .. } => LogError::Inexact { place: at() },
            LogError::TooDeep { .. } => LogError::TooDeep { place: Place::default() },
            LogError::Missing { .. } => LogError::Missing { place: at() },
            LogError::WrongShape { .. } => LogError::WrongShape { place: at(), expected: Shape::Text, found: Shape::Null },
            LogError::NotAllowed { .. } => LogError::NotAllowed { place: at(), value: "x".into(), allowed: Allowed::Rising },
            LogError::OutOfRange { .. } => LogError::OutOfRange { place: at(), range: super::animal::outside() },
            LogError::NotALog => LogError::NotALog,
            LogError::NewerFormat { .. } => LogError::NewerFormat { version: 2, known: 1 },
            LogError::Counts { .. } => LogError::Counts { said: 9, held: 8 },
            LogError::Seal => LogError::Seal,
            LogError::NotAPicture => LogError::NotAPicture,
            LogError::ClockAtEnd => LogError::ClockAtEnd,
            LogError::OtherKind { .. } => LogError::OtherKind { place: at(), kind: "weight".into() },
        ] {
            check(&say.log_error(&error));
        }
        for problem in every![
            Problem::Log(_) => Problem::Log(LogError::Seal),
            Problem::Assess { .. } => Problem::Assess { record: RecordId("r".into()), error: AssessError::TwoScales },
        ] {
            check(&say.record_problem(&problem));
        }
    }
}

#[test]
fn every_choice_of_a_record_is_worded() {
    let [say, _] = tongues();
    for kind in Kind::KNOWN {
        check(&say.record_kind(kind));
    }
    check(&say.record_kind(&Kind::Other("later".into())));
    for known in every![Known::Seen => Known::Seen, Known::Assumed => Known::Assumed, Known::NotKnown => Known::NotKnown]
    {
        check(say.known(known));
    }
    for added in every![Added::New => Added::New, Added::Changed => Added::Changed, Added::History => Added::History, Added::Same => Added::Same]
    {
        check(say.added(added));
    }
    for chip in every![
        Chip::NightFiveOrUnder => Chip::NightFiveOrUnder, Chip::NightOverFive => Chip::NightOverFive,
        Chip::HardFrost => Chip::HardFrost,
        Chip::Mild => Chip::Mild, Chip::UnderSixteen => Chip::UnderSixteen, Chip::OverTwenty => Chip::OverTwenty,
        Chip::OverTwentyFive => Chip::OverTwentyFive, Chip::Dull => Chip::Dull,
        Chip::Sunny => Chip::Sunny, Chip::DrySpell => Chip::DrySpell,
    ] {
        check(say.chip(chip));
    }
    for answer in every![
        JobAnswer::Done => JobAnswer::Done, JobAnswer::AsPlanned => JobAnswer::AsPlanned,
        JobAnswer::NotDone => JobAnswer::NotDone, JobAnswer::SomebodyElse => JobAnswer::SomebodyElse,
        JobAnswer::NotKnown => JobAnswer::NotKnown,
    ] {
        check(say.job_answer(answer));
    }
    for quarters in every![
        Quarters::None => Quarters::None, Quarters::One => Quarters::One, Quarters::Two => Quarters::Two,
        Quarters::Three => Quarters::Three, Quarters::All => Quarters::All,
    ] {
        check(say.quarters(quarters));
    }
    for role in every![
        Role::Keeper => Role::Keeper, Role::Helper => Role::Helper, Role::Consultant => Role::Consultant,
        Role::Vet => Role::Vet, Role::Farrier => Role::Farrier,
    ] {
        check(say.role(role));
    }
    for basis in every![LabelBasis::AsFed => LabelBasis::AsFed, LabelBasis::DryMatter => LabelBasis::DryMatter]
    {
        check(say.label_basis(basis));
    }
}

#[test]
fn every_constant_of_the_core_says_where_it_is_from() {
    let [say, _] = tongues();
    let marks = every![
        Mark::Published => Mark::Published, Mark::WorkedOut => Mark::WorkedOut,
        Mark::FromMemory => Mark::FromMemory, Mark::CommonPractice => Mark::CommonPractice,
        Mark::Ours => Mark::Ours,
    ];
    for mark in marks {
        check(say.mark(mark));
        check(say.mark_means(mark));
    }
    for constant in tussock_core::constants() {
        let line = say.constant(&constant);
        assert!(line.contains(say.mark(constant.mark)), "{line}");
        assert!(!line.contains("  ") && !line.ends_with(", "), "{line}");
        assert_eq!(say.source(&Source::Constant(constant.id)), Some(line));
        assert!(!say.citation(constant.work).is_empty());
    }
    assert_eq!(say.source(&Source::Constant("no.such")), None);
    for source in [
        Source::Record(RecordId("r".into())),
        Source::Default("body_length"),
    ] {
        check(&say.source(&source).unwrap());
    }
}

#[test]
fn a_vets_word_may_come_without_a_practice() {
    let word = VetWord {
        animal: AnimalId("a".into()),
        permit: VetPermit::Work,
        vet: "A vet".into(),
        practice: String::new(),
        given: "2026-11-05".parse().unwrap(),
        how: String::new(),
        expires: "2026-12-31".parse().unwrap(),
        written: None,
    };
    let said = English::default().vet_word(&word);
    assert_eq!(said, "Work: A vet, holds until 31 Dec 2026");
}
