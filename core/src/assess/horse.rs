//! The weight of a horse, pony, miniature or mule.

use super::age::AgeClass;
use super::choose::Case;
use super::equation::{self, Equation, MeasuredType};
use super::error::{AssessError, Refused};
use super::finding::{Fallback, Finding, ScaleReason};
use super::published as p;
use super::tape::{LengthKind, Measure};
use super::weight::{WeightEstimate, WeightMethod};
use crate::animal::{BodyType, Kind, State};
use crate::sources::{Provenance, Published, Source};
use crate::units::{BodyMass, Length};

/// The weight by the equation its type, age and measures allow.
pub(super) fn weight(
    case: &Case<'_>,
    age: AgeClass,
    findings: &mut Vec<Finding>,
) -> Result<WeightEstimate, AssessError> {
    match age {
        AgeClass::Foal | AgeClass::Weanling | AgeClass::Yearling => young(case, age),
        AgeClass::TwoYearOld | AgeClass::Grown | AgeClass::NotKnown => {
            let size = Size::of(case);
            size.note(findings);
            if size != Size::Full {
                return two_measures(case, None, size, findings);
            }
            match four_measures(case, age) {
                Ok((kind, value)) => {
                    let from = Provenance::new()
                        .constant(kind.exponents())
                        .constant(kind.divisor());
                    let method = WeightMethod::Tape(Equation::FourMeasures(kind));
                    WeightEstimate::twice(value, kind.error(), method, from)
                }
                Err(why) => {
                    if worth_saying(case) {
                        findings.push(Finding::FellBack(why));
                    }
                    two_measures(case, Some(why), size, findings)
                }
            }
        }
    }
}

/// How the animal's size and kind widen the band.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Size {
    /// No equation was made for mules.
    Mule,
    /// No equation for miniatures could be found.
    Miniature,
    /// Under 112 cm; the height when it was measured.
    Small(Option<Length>),
    /// A pony of unknown height: it may be under 112 cm.
    NotKnown,
    /// 112 cm and more, or a horse.
    Full,
}

impl Size {
    fn of(case: &Case<'_>) -> Self {
        let animal = case.animal;
        let limit = Length::cm(p::FOUR_MEASURES_HEIGHT.min);
        match (animal.kind, case.height) {
            (Kind::Mule, _) => Self::Mule,
            (Kind::Miniature, _) => Self::Miniature,
            _ if animal.body_type == Some(BodyType::Miniature) => Self::Miniature,
            (_, Some(height)) if height < limit => Self::Small(Some(height)),
            (_, Some(_)) => Self::Full,
            _ if animal.body_type == Some(BodyType::Shetland) => Self::Small(None),
            (Kind::Pony, None) => Self::NotKnown,
            (_, None) => Self::Full,
        }
    }

    fn note(self, findings: &mut Vec<Finding>) {
        findings.push(match self {
            Self::Mule => Finding::AskForScaleWeight(ScaleReason::Mule),
            Self::Miniature => Finding::AskForScaleWeight(ScaleReason::Miniature),
            Self::Small(Some(height)) => Finding::AskForScaleWeight(ScaleReason::Small { height }),
            Self::Small(None) => Finding::AskForScaleWeight(ScaleReason::ShetlandWithoutHeight),
            Self::NotKnown => Finding::HeightNotKnown,
            Self::Full => return,
        });
    }

    const fn band(self) -> &'static Published<f64> {
        match self {
            Self::Mule => &p::BAND_MULE,
            Self::Miniature | Self::Small(_) | Self::NotKnown => &p::BAND_SMALL,
            Self::Full => &p::BAND_GIRTH_LENGTH,
        }
    }

    /// Without a length no band is narrower than that of girth alone.
    const fn band_without_length(self) -> &'static Published<f64> {
        match self {
            Self::Mule => &p::BAND_MULE,
            Self::Miniature | Self::Small(_) | Self::NotKnown | Self::Full => &p::BAND_GIRTH_ALONE,
        }
    }
}

/// By girth, length, height and neck; else why not. The caller has seen that it is of full size.
fn four_measures(case: &Case<'_>, age: AgeClass) -> Result<(MeasuredType, BodyMass), Fallback> {
    let body = case.animal.body_type.ok_or(Fallback::BodyTypeNotKnown)?;
    let kind = MeasuredType::of(body).ok_or(Fallback::BodyTypeHasNone(body))?;
    let missing = |measure| Fallback::Missing {
        wanted: Some(kind),
        measure,
    };
    if age == AgeClass::TwoYearOld {
        return Err(Fallback::UnderThree);
    }
    if case.animal.state == State::Pregnant {
        return Err(Fallback::InFoal);
    }
    let height = case.height.ok_or(missing(Measure::Height))?;
    let neck = case.tape.neck.ok_or(missing(Measure::Neck))?;
    let (length, given) = case.tape.length.ok_or(missing(Measure::Length))?;
    let wanted = kind.length_kind();
    if given != wanted {
        return Err(Fallback::WrongLength { wanted, given });
    }
    let value = kind.weight(case.tape.heart_girth, length, height, neck);
    Ok((kind, value))
}

/// A closer equation is worth naming when the neck was taken for it, or when the type has one and a length was taken;
/// a first reading of the girth alone needs no lecture.
fn worth_saying(case: &Case<'_>) -> bool {
    let of_type = case.animal.body_type.and_then(MeasuredType::of).is_some();
    case.tape.neck.is_some() || (of_type && case.tape.length.is_some())
}

/// By girth and wrap length, or by girth alone.
fn two_measures(
    case: &Case<'_>,
    why: Option<Fallback>,
    size: Size,
    findings: &mut Vec<Finding>,
) -> Result<WeightEstimate, AssessError> {
    let icelandic = case.animal.body_type == Some(BodyType::Icelandic);
    let (divisor, named) = if icelandic {
        (&p::GIRTH_LENGTH_ICELANDIC, Equation::GirthLengthIcelandic)
    } else {
        (&p::GIRTH_LENGTH, Equation::GirthLength)
    };
    let girth = case.tape.heart_girth;
    let from = Provenance::new().constant(divisor);
    if case.tape.length.is_none() {
        findings.push(Finding::LengthNotTaken);
        let value = equation::girth_length(girth, girth * p::LENGTH_TO_GIRTH.value, divisor);
        return WeightEstimate::percent(
            value,
            size.band_without_length(),
            WeightMethod::Tape(Equation::GirthAlone),
            from.constant(&p::LENGTH_TO_GIRTH)
                .with(Source::Default("body_length")),
        );
    }
    let length = match (case.length(LengthKind::Wrap), why) {
        (Ok(length), _) => length,
        // The straight length was right for this type, and only another measure is missing: that is what to ask for.
        (
            Err(AssessError::WrongLength { given, .. }),
            Some(Fallback::Missing { wanted, measure }),
        ) if wanted.is_some_and(|kind| kind.length_kind() == given) => {
            return Err(AssessError::Missing(measure));
        }
        (Err(error), _) => return Err(error),
    };
    let value = equation::girth_length(girth, length, divisor);
    WeightEstimate::percent(value, size.band(), WeightMethod::Tape(named), from)
}

/// Foals, weanlings and yearlings of horses and ponies.
fn young(case: &Case<'_>, age: AgeClass) -> Result<WeightEstimate, AssessError> {
    let animal = case.animal;
    if matches!(animal.kind, Kind::Miniature | Kind::Mule) {
        return Err(AssessError::Refused(Refused::Young(animal.kind)));
    }
    let girth = case.tape.heart_girth;
    let (value, named, from) = match age {
        AgeClass::Foal => {
            p::FOAL_GIRTH.check(girth.to_inches())?;
            let from = Provenance::new().constant(&p::FOAL);
            (equation::foal(girth), Equation::Foal, from)
        }
        AgeClass::Weanling => {
            let divisor = &p::GIRTH_LENGTH_WEANLING;
            let length = case.length(LengthKind::Wrap)?;
            let value = equation::girth_length_imperial(girth, length, divisor);
            (
                value,
                Equation::Weanling,
                Provenance::new().constant(divisor),
            )
        }
        AgeClass::Yearling | AgeClass::TwoYearOld | AgeClass::Grown | AgeClass::NotKnown => {
            let divisor = &p::GIRTH_LENGTH_YEARLING;
            let length = case.length(LengthKind::Wrap)?;
            let value = equation::girth_length_imperial(girth, length, divisor);
            (
                value,
                Equation::Yearling,
                Provenance::new().constant(divisor),
            )
        }
    };
    WeightEstimate::percent(value, &p::BAND_YOUNG, WeightMethod::Tape(named), from)
}
