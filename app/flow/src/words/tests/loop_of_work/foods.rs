//! Words for the catalogue of foods and for labels.

use crate::words::RationWords;
use crate::words::tests::{check, check_said, every, tongues};
use tussock_core::limits::Nutrient;
use tussock_core::ration::{
    Content, DayStarch, FoodClass, ForageVerdict, LabelField, LabelFinding, LabelUnit, TypicalFood,
};
use tussock_core::units::{NutrientMass, PartOfBody};

#[test]
fn every_food_of_the_catalogue_has_its_name() {
    for say in tongues() {
        let mut names = std::collections::BTreeSet::new();
        for food in TypicalFood::ALL {
            check(say.typical_food(*food));
            assert!(names.insert(say.typical_food(*food)), "{food:?}");
        }
        for class in FoodClass::ALL {
            check(say.food_class(*class));
        }
        for content in every![
            Content::DryMatter => Content::DryMatter, Content::Energy => Content::Energy,
            Content::NeutralFibre => Content::NeutralFibre, Content::SugarStarch => Content::SugarStarch,
            Content::Starch => Content::Starch, Content::Dha => Content::Dha,
            Content::Of(_) => Content::Of(Nutrient::Copper),
        ] {
            check(say.content(content));
        }
    }
}

#[test]
fn everything_found_on_a_label_is_said_with_its_value_and_what_is_allowed() {
    use LabelFinding as F;
    let content = Content::Of(Nutrient::Copper);
    let unit = LabelUnit::Percent;
    let (value, allowed) = (25.0, [0.0, 0.02]);
    let likely = LabelUnit::from_word("mg/kg");
    let (field, whole) = (LabelField::Serving, Content::SugarStarch);
    for say in tongues() {
        for word in LabelUnit::words() {
            check(say.label_unit(LabelUnit::from_word(word).unwrap()));
        }
        for field in every![
            LabelField::DryMatter => LabelField::DryMatter, LabelField::Serving => LabelField::Serving,
            LabelField::Rate => LabelField::Rate,
        ] {
            check(say.label_field(field));
        }
        for finding in every![
            F::Impossible { .. } => F::Impossible { content, value, unit, allowed, likely },
            F::Unlikely { .. } => F::Unlikely { content, value, unit, allowed, likely: None },
            F::UnitOfOtherSort { .. } => F::UnitOfOtherSort { content, unit },
            F::Needs { .. } => F::Needs { content, unit, field },
            F::Field { .. } => F::Field { field, value, allowed },
            F::GivenTwice { .. } => F::GivenTwice { content },
            F::PartOverWhole { .. } => F::PartOverWhole { part: Content::Starch, value, whole, most: 20.0 },
            F::PartsOverWhole { .. } => F::PartsOverWhole { sum: 120.0, most: 95.0 },
        ] {
            check_said(&say.label_finding(&finding));
        }
        for value in [f64::NAN, f64::MAX] {
            let allowed = [0.0, f64::MAX];
            check_said(&say.label_finding(&F::Impossible {
                content,
                value,
                unit,
                allowed,
                likely,
            }));
            check_said(&say.label_finding(&F::Field {
                field,
                value,
                allowed,
            }));
        }
        let said = say.label_finding(&F::Unlikely {
            content,
            value,
            unit,
            allowed,
            likely,
        });
        assert_eq!(said.sentence, "Copper: 25 % is unlikely in such a food");
        assert_eq!(
            said.why.as_deref(),
            Some("Usual is 0 to 0.02 %. Look at the label again: 25 mg/kg would be usual.")
        );
    }
}

#[test]
fn forage_and_starch_of_a_whole_day_are_said() {
    let of_body = PartOfBody::percent(1.499);
    let (start, floor) = (PartOfBody::percent(1.5), PartOfBody::percent(1.0));
    let holds = NutrientMass::g(1000.2);
    for say in tongues() {
        for verdict in every![
            ForageVerdict::Enough { .. } => ForageVerdict::Enough { of_body },
            ForageVerdict::UnderStart { .. } => ForageVerdict::UnderStart { of_body, start },
            ForageVerdict::UnderFloor { .. } => ForageVerdict::UnderFloor { of_body: PartOfBody::percent(0.9), floor },
            ForageVerdict::NotKnown => ForageVerdict::NotKnown,
        ] {
            check_said(&say.forage_verdict(verdict));
        }
        let said = say.forage_verdict(ForageVerdict::UnderStart { of_body, start });
        assert!(said.sentence.contains("1.499 %"), "{}", said.sentence);
        for verdict in every![
            DayStarch::ByMeal => DayStarch::ByMeal, DayStarch::Within { .. } => DayStarch::Within { holds },
            DayStarch::Over { .. } => DayStarch::Over { holds, limit: NutrientMass::g(1000.0) },
            DayStarch::NotKnown => DayStarch::NotKnown,
        ] {
            check(&say.day_starch(verdict));
        }
    }
}
