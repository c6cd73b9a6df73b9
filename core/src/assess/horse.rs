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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::animal::Birth;
    use crate::assess::Tape;
    use crate::assess::choose::tests::{animal, by_tape, equation, four, near, tape};

    #[test]
    fn a_cob_with_girth_and_length_is_within_a_tenth() {
        let cob = animal(Kind::Horse, None);
        let (weight, findings) = by_tape(&cob, tape(180.0, 160.0, LengthKind::Wrap)).unwrap();
        near(&weight, 435.6, 392.1, 479.2);
        assert_eq!(equation(&weight), Equation::GirthLength);
        assert!(findings.is_empty(), "{findings:?}");
    }

    #[test]
    fn the_band_of_girth_and_length_holds_the_mean_error_that_was_found() {
        assert!(p::GIRTH_LENGTH_MEAN_ERROR.abs() < *p::BAND_GIRTH_LENGTH);
        assert!(*p::BAND_GIRTH_LENGTH < *p::BAND_SMALL && *p::BAND_SMALL < *p::BAND_GIRTH_ALONE);
    }

    #[test]
    fn a_pony_with_all_four_measures_gets_the_equation_of_its_type() {
        let pony = animal(Kind::Pony, Some(BodyType::Pony));
        let all = four(150.0, 130.0, LengthKind::Wrap, 125.0, 80.0);
        let (weight, findings) = by_tape(&pony, all).unwrap();
        near(&weight, 271.1, 227.1, 315.1);
        assert_eq!(
            equation(&weight),
            Equation::FourMeasures(MeasuredType::Pony)
        );
        assert!(findings.is_empty());
    }

    #[test]
    fn in_foal_or_at_two_years_it_falls_back_and_says_why() {
        let all = four(150.0, 130.0, LengthKind::Wrap, 125.0, 80.0);
        let mut mare = animal(Kind::Pony, Some(BodyType::Pony));
        mare.state = State::Pregnant;
        let (weight, findings) = by_tape(&mare, all).unwrap();
        assert_eq!(equation(&weight), Equation::GirthLength);
        assert_eq!(
            findings,
            [Finding::InFoal, Finding::FellBack(Fallback::InFoal)]
        );
        let mut two = animal(Kind::Pony, Some(BodyType::Pony));
        two.born = Some(Birth::Year(2023));
        let (_, findings) = by_tape(&two, all).unwrap();
        assert_eq!(findings, [Finding::FellBack(Fallback::UnderThree)]);
        two.born = None;
        let (weight, findings) = by_tape(&two, all).unwrap();
        assert_eq!(
            equation(&weight),
            Equation::FourMeasures(MeasuredType::Pony)
        );
        assert_eq!(findings, [Finding::AgeNotKnown]);
    }

    #[test]
    fn straight_and_wrap_lengths_are_never_mixed() {
        let draft = animal(Kind::Horse, Some(BodyType::Draft));
        let (weight, _) = by_tape(
            &draft,
            four(220.0, 185.0, LengthKind::Straight, 170.0, 125.0),
        )
        .unwrap();
        near(&weight, 802.3, 746.3, 858.3);
        let (weight, findings) =
            by_tape(&draft, four(220.0, 192.0, LengthKind::Wrap, 170.0, 125.0)).unwrap();
        assert_eq!(equation(&weight), Equation::GirthLength);
        let wrong = Fallback::WrongLength {
            wanted: LengthKind::Straight,
            given: LengthKind::Wrap,
        };
        assert_eq!(findings, [Finding::FellBack(wrong)]);
        let cob = animal(Kind::Horse, None);
        assert_eq!(
            by_tape(&cob, tape(180.0, 155.0, LengthKind::Straight)),
            Err(AssessError::WrongLength {
                wanted: LengthKind::Wrap,
                given: LengthKind::Straight
            })
        );
        assert_eq!(
            by_tape(&draft, tape(220.0, 185.0, LengthKind::Straight)),
            Err(AssessError::Missing(Measure::Height))
        );
    }

    #[test]
    fn under_eleven_hands_only_girth_and_length_and_a_scale_first() {
        let shetland = animal(Kind::Pony, Some(BodyType::Pony));
        let small = four(130.0, 110.0, LengthKind::Wrap, 102.0, 75.0);
        let (weight, findings) = by_tape(&shetland, small).unwrap();
        near(&weight, 156.2, 132.8, 179.7);
        let height = Length::cm(102.0);
        let ask = |reason| Finding::AskForScaleWeight(reason);
        assert_eq!(findings, [ask(ScaleReason::Small { height })]);
        let mini = animal(Kind::Miniature, None);
        let (weight, findings) = by_tape(&mini, tape(100.0, 85.0, LengthKind::Wrap)).unwrap();
        near(&weight, 71.4, 60.7, 82.1);
        assert_eq!(findings, [ask(ScaleReason::Miniature)]);
        let unmeasured = animal(Kind::Pony, Some(BodyType::Shetland));
        let (_, findings) = by_tape(&unmeasured, tape(130.0, 110.0, LengthKind::Wrap)).unwrap();
        assert_eq!(findings, [ask(ScaleReason::ShetlandWithoutHeight)]);
        let pony = animal(Kind::Pony, None);
        let (weight, findings) = by_tape(&pony, tape(150.0, 130.0, LengthKind::Wrap)).unwrap();
        near(&weight, 245.8, 208.9, 282.7);
        assert_eq!(findings, [Finding::HeightNotKnown]);
    }

    #[test]
    fn a_girth_alone_gives_a_wide_weight_and_says_so() {
        let cob = animal(Kind::Horse, None);
        let (weight, findings) = by_tape(&cob, Tape::girth(Length::cm(180.0))).unwrap();
        near(&weight, 431.3, 345.0, 517.5);
        assert_eq!(findings, [Finding::LengthNotTaken]);
        assert!(
            weight
                .from
                .sources()
                .contains(&Source::Default("body_length"))
        );
    }

    #[test]
    fn an_icelandic_has_its_own_divisor_and_a_mule_none() {
        let icelandic = animal(Kind::Horse, Some(BodyType::Icelandic));
        let (weight, _) = by_tape(&icelandic, tape(165.0, 145.0, LengthKind::Wrap)).unwrap();
        near(&weight, 346.3, 311.7, 380.9);
        let mule = animal(Kind::Mule, None);
        let (weight, findings) = by_tape(&mule, tape(160.0, 140.0, LengthKind::Wrap)).unwrap();
        near(&weight, 301.2, 225.9, 376.5);
        assert_eq!(findings, [Finding::AskForScaleWeight(ScaleReason::Mule)]);
    }
}
