//! Needs, limits and the vet's list.

use crate::words::LimitsWords;
use crate::words::tests::animal::{answers, appetites, day, goals, outside};
use crate::words::tests::{check, check_said, every, tongues};
use tussock_core::animal::{Answer, Goal, State};
use tussock_core::limits::{
    AllowanceReason, Basis, CapVerdict, ConditionScore, DonkeyLossVerdict, EnergyVerdict, Finding,
    ForagePart, LimitsError, MealLimit, MealVerdict, Nutrient, NutrientUnit, Offer, RatioVerdict,
    RestrictionBar, Review, StageGap, UpperVerdict, VetListReason, WaterWeather,
};
use tussock_core::sources::Provenance;
use tussock_core::units::{BodyMass, Length, NutrientMass, PartOfBody};

pub(super) fn level() -> PartOfBody {
    PartOfBody::percent(1.25)
}

pub(super) fn vet_list() -> Vec<VetListReason> {
    use VetListReason as V;
    every![
        V::Pregnant => V::Pregnant, V::Lactating => V::Lactating, V::Growing { .. } => V::Growing { age: Some(2) },
        V::Thin { .. } => V::Thin { condition: 4.99 }, V::Sick => V::Sick, V::OffFeed => V::OffFeed,
        V::LaminitisNow => V::LaminitisNow, V::EpisodeNotOver => V::EpisodeNotOver,
        V::SurgeryOrTransport { .. } => V::SurgeryOrTransport { on: day() },
        V::DonkeyOrMule => V::DonkeyOrMule, V::Miniature => V::Miniature, V::Shetland => V::Shetland,
        V::VeryOld { .. } => V::VeryOld { age: 31 }, V::PoorTeeth => V::PoorTeeth,
        V::PpidUntreated => V::PpidUntreated, V::Sglt2Inhibitor => V::Sglt2Inhibitor,
        V::InsulinDrug => V::InsulinDrug, V::Corticosteroid { .. } => V::Corticosteroid { last: day() },
        V::PainRelief => V::PainRelief, V::BoxRest => V::BoxRest, V::Lame => V::Lame,
        V::GotAtGrain => V::GotAtGrain, V::EscapedOntoGrass => V::EscapedOntoGrass,
    ]
}

pub(super) fn bars() -> Vec<RestrictionBar> {
    use RestrictionBar as R;
    let last = Some(ConditionScore {
        on: day(),
        score: 7.5,
    });
    every![
        R::GoalIsNotToLose { .. } => R::GoalIsNotToLose { goal: Goal::Hold },
        R::NeedsWeight => R::NeedsWeight,
        R::StillNew => R::StillNew,
        R::NotAdult { .. } => R::NotAdult { state: State::Growing, age: Some(2) },
        R::AgeNotKnown => R::AgeNotKnown,
        R::ConditionNotSeenTwice { .. } => R::ConditionNotSeenTwice { last, days_apart: Some(1) },
        R::NotWeighed => R::NotWeighed,
        R::TapeOnlyOnce => R::TapeOnlyOnce,
        R::SmallPonyNeedsScale { .. } => R::SmallPonyNeedsScale { height: Some(Length::cm(104.0)) },
        R::HeightNotKnown => R::HeightNotKnown,
        R::NotEating { .. } => R::NotEating { appetite: appetites()[1] },
        R::LookOverNotClean { .. } => R::LookOverNotClean { clean: Answer::No },
        R::OnVetList(_) => R::OnVetList(VetListReason::Shetland),
        R::NotLongEnoughAtStart { .. } => R::NotLongEnoughAtStart { days: 9, needed: 28 },
    ]
}

#[test]
fn every_reason_for_a_level_is_worded() {
    use AllowanceReason as A;
    let wanted = level();
    for say in tongues() {
        for reason in every![
            A::StartingLevel => A::StartingLevel, A::AboveStart => A::AboveStart, A::Restricted => A::Restricted,
            A::NotGiven { .. } => A::NotGiven { wanted }, A::HeldWithoutVet { .. } => A::HeldWithoutVet { wanted },
            A::VetsWord { .. } => A::VetsWord { lowest: wanted, expires: day() },
            A::VetsWordExpired { .. } => A::VetsWordExpired { expired: day() },
            A::RaisedToVetsWord { .. } => A::RaisedToVetsWord { wanted },
            A::RaisedToFloor { .. } => A::RaisedToFloor { from: wanted },
            A::NeedsWeight => A::NeedsWeight, A::Episode => A::Episode,
        ] {
            check_said(&say.allowance_reason(reason));
        }
        for bar in bars() {
            check_said(&say.restriction_bar(&bar));
        }
        for goal in goals() {
            check_said(&say.restriction_bar(&RestrictionBar::GoalIsNotToLose { goal }));
        }
        for clean in answers() {
            check_said(&say.restriction_bar(&RestrictionBar::LookOverNotClean { clean }));
        }
        for reason in vet_list() {
            check(&say.vet_list_reason(reason));
            check_said(&say.restriction_bar(&RestrictionBar::OnVetList(reason)));
        }
        for offer in every![Offer::Measured => Offer::Measured, Offer::AtLeast => Offer::AtLeast] {
            check(say.offer(offer));
        }
        for basis in every![Basis::CurrentWeight => Basis::CurrentWeight, Basis::TargetWeight => Basis::TargetWeight]
        {
            check(say.weight_basis(basis));
        }
    }
}

pub(super) fn energies() -> Vec<EnergyVerdict> {
    use EnergyVerdict as E;
    every![
        E::Enough { .. } => E::Enough { share: 0.65 },
        E::NeedsVetsWord { .. } => E::NeedsVetsWord { share: 0.6499 },
        E::NeverAllowed { .. } => E::NeverAllowed { share: 0.598 },
        E::ByWeightAndCondition => E::ByWeightAndCondition,
        E::NotPublishedHere(_) => E::NotPublishedHere(State::Pregnant),
    ]
}

#[test]
fn every_gap_of_a_stage_says_what_would_close_it() {
    for say in tongues() {
        for gap in every![
            StageGap::NotSaid => StageGap::NotSaid, StageGap::NotYet => StageGap::NotYet,
            StageGap::Younger => StageGap::Younger, StageGap::Past => StageGap::Past,
            StageGap::Weight => StageGap::Weight,
        ] {
            for state in [State::Growing, State::Pregnant, State::Lactating] {
                check_said(&say.needs_finding(Finding::StageNotKnown(state, gap)));
            }
        }
    }
}

#[test]
fn every_verdict_of_the_limits_is_worded() {
    let part = ForagePart::fraction(0.504);
    let gram = NutrientMass::g;
    let (copper, from) = (Nutrient::Copper, Provenance::new());
    for say in tongues() {
        for verdict in energies() {
            check_said(&say.energy_verdict(verdict));
        }
        assert!(
            say.energy_verdict(energies()[1])
                .sentence
                .contains("64.99 %")
        );
        for finding in every![
            Finding::StageNotKnown(..) => Finding::StageNotKnown(State::Lactating, StageGap::Past),
            Finding::NeverRestricted(_) => Finding::NeverRestricted(State::Growing),
            Finding::WorkNotReckoned => Finding::WorkNotReckoned,
            Finding::EnergyByWeightAndCondition => Finding::EnergyByWeightAndCondition,
            Finding::HorseNeedsStandIn => Finding::HorseNeedsStandIn,
            Finding::TargetNotKnown => Finding::TargetNotKnown,
        ] {
            check_said(&say.needs_finding(finding));
        }
        for nutrient in Nutrient::ALL {
            check(say.nutrient(nutrient));
            check(&say.amount(nutrient, nutrient.amount(12.0)));
        }
        for unit in every![NutrientUnit::Gram => NutrientUnit::Gram, NutrientUnit::Milligram => NutrientUnit::Milligram, NutrientUnit::InternationalUnit => NutrientUnit::InternationalUnit]
        {
            check(say.nutrient_unit(unit));
        }
        assert_eq!(
            say.amount_beside(copper, copper.amount(120.3), copper.amount(120.0)),
            "120.3 mg"
        );
        for verdict in every![
            CapVerdict::Within { .. } => CapVerdict::Within { part },
            CapVerdict::Watch { .. } => CapVerdict::Watch { part },
            CapVerdict::Over { .. } => CapVerdict::Over { part, most: ForagePart::fraction(0.5) },
            CapVerdict::NotKnown => CapVerdict::NotKnown,
        ] {
            check(&say.cap_verdict(verdict));
        }
        for verdict in every![
            DonkeyLossVerdict::Within => DonkeyLossVerdict::Within,
            DonkeyLossVerdict::TooFast { .. } => DonkeyLossVerdict::TooFast { a_month: BodyMass::kg(5.02), most: BodyMass::kg(5.0) },
            DonkeyLossVerdict::NotKnown => DonkeyLossVerdict::NotKnown,
        ] {
            check_said(&say.donkey_loss(verdict));
        }
        for limit in every![
            MealLimit::SugarAndStarch { .. } => MealLimit::SugarAndStarch { meal: gram(30.0), from: from.clone() },
            MealLimit::Starch { .. } => MealLimit::Starch { meal: gram(300.0), day: gram(600.0), from: from.clone() },
        ] {
            check(&say.meal_limit(&limit));
        }
        for verdict in every![
            MealVerdict::Within => MealVerdict::Within,
            MealVerdict::Over { .. } => MealVerdict::Over { holds: gram(30.2), limit: gram(30.0) },
            MealVerdict::NotKnown => MealVerdict::NotKnown,
        ] {
            check(&say.meal_verdict(verdict));
        }
        for verdict in every![
            UpperVerdict::Within => UpperVerdict::Within,
            UpperVerdict::Warn { .. } => UpperVerdict::Warn { from: copper.amount(90.0) },
            UpperVerdict::Over { .. } => UpperVerdict::Over { most: copper.amount(120.0) },
            UpperVerdict::NotKnown => UpperVerdict::NotKnown,
        ] {
            check(&say.upper_verdict(copper, verdict));
        }
        for verdict in every![
            RatioVerdict::Usual { .. } => RatioVerdict::Usual { ratio: 1.8 },
            RatioVerdict::Wide { .. } => RatioVerdict::Wide { ratio: 4.0 },
            RatioVerdict::Narrow { .. } => RatioVerdict::Narrow { ratio: 1.2 },
            RatioVerdict::Remark { .. } => RatioVerdict::Remark { ratio: 9.0 },
            RatioVerdict::TooLow { .. } => RatioVerdict::TooLow { ratio: 0.8 },
            RatioVerdict::TooHigh { .. } => RatioVerdict::TooHigh { ratio: 7.0 },
            RatioVerdict::NotKnown => RatioVerdict::NotKnown,
        ] {
            check(&say.ratio_verdict(verdict));
        }
        for review in every![Review::EveryDays(_) => Review::EveryDays(10), Review::AtVetsWord => Review::AtVetsWord, Review::OnReturn => Review::OnReturn]
        {
            check(&say.review(review));
        }
        assert_eq!(say.review(Review::EveryDays(7)), "Every week");
        assert_eq!(say.review(Review::EveryDays(28)), "Every 4 weeks");
        for weather in every![WaterWeather::NearFreezing => WaterWeather::NearFreezing, WaterWeather::Cool => WaterWeather::Cool, WaterWeather::Mild => WaterWeather::Mild, WaterWeather::Hot => WaterWeather::Hot]
        {
            check(say.water_weather(weather));
        }
        for error in every![
            LimitsError::OutOfRange(_) => LimitsError::OutOfRange(outside()),
            LimitsError::NotInOrder { .. } => LimitsError::NotInOrder { field: "weight_kg", values: [3.0, 2.0, 1.0] },
        ] {
            check(&say.limits_error(&error));
        }
    }
}
