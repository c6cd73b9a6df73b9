//! Words for foods, labels and pasted texts.

use super::{check, check_head, every, tongues};
use crate::forms::food::{Field, LineWrong, Wrong};
use crate::forms::hay::read_for_fields;
use crate::views::foods::{FoodRow, Numbers, typical};
use crate::words::{FoodsWords, HayWords};
use tussock_core::animal::FoodId;
use tussock_core::log::LogError;
use tussock_core::log::bodies::LabelBasis;
use tussock_core::ration::{
    Content, CountedIn, FoodClass, KnownNumber, LabelFinding, TypicalFood, read_label,
};
use tussock_core::sources::{Mark, Work};
use tussock_core::units::parse::ParseError;
use tussock_core::units::printed::BasesSaid;
use tussock_core::units::{Currency, MoneyError, PricePerKg};

#[test]
fn every_head_and_label_of_foods_is_said() {
    for say in tongues() {
        for count in [0, 1, 12] {
            check(&say.foods_count(count));
            check_head(&say.foods_sentence(count));
        }
        for food in TypicalFood::ALL {
            check_head(&say.typical_sentence(*food));
            check(&say.stands_in(*food));
            for row in typical(*food) {
                if let Some(number) = row.number {
                    check(&say.food_number(&number));
                    check(&say.food_number_from(&number));
                }
            }
        }
        for head in [
            say.which_food(),
            say.no_such_food(),
            say.foods(),
            say.take_into_shed(),
            say.save_food(),
        ] {
            check_head(head);
        }
        for text in [
            say.own_foods(),
            say.typical_foods(),
            say.typical_foods_mean(),
            say.typical_caution(),
            say.label_caution(),
            say.label_head(),
            say.label_basis_asked(),
            say.pasted_text(),
            say.pasted_text_hint(),
            say.pasted_not_read(),
            say.paste_report(),
            say.pasted_report(),
        ] {
            check(text);
        }
        for class in FoodClass::ALL {
            check(say.food_class_means(*class));
        }
        for basis in [LabelBasis::AsFed, LabelBasis::DryMatter] {
            check(say.food_basis(basis));
        }
        for field in every![
            Field::Name => Field::Name, Field::Dry => Field::Dry, Field::Serving => Field::Serving,
            Field::Rate => Field::Rate, Field::Scoop => Field::Scoop, Field::Pack => Field::Pack,
            Field::Price => Field::Price, Field::Currency => Field::Currency,
        ] {
            check(say.food_field(field));
            say.food_field_hint(field).into_iter().for_each(check);
        }
    }
}

#[test]
fn a_food_says_what_it_is_what_it_costs_and_whose_its_numbers_are() {
    let gbp = Currency::from_code("GBP").unwrap();
    for say in tongues() {
        for numbers in every![
            Numbers::Label(_) => Numbers::Label(1), Numbers::Typical(_) => Numbers::Typical(TypicalFood::Oats),
            Numbers::NotKnown => Numbers::NotKnown,
            Numbers::Wrong(_) => Numbers::Wrong(LogError::Seal),
        ] {
            check(&say.food_line(&FoodRow {
                id: FoodId("mix".into()),
                name: "Mix".into(),
                class: FoodClass::Balancer,
                price: None,
                numbers,
            }));
        }
        for unit in every![
            CountedIn::PercentAsFed => CountedIn::PercentAsFed, CountedIn::PercentOfDry => CountedIn::PercentOfDry,
            CountedIn::MgPerKgDry => CountedIn::MgPerKgDry, CountedIn::IuPerKgDry => CountedIn::IuPerKgDry,
            CountedIn::McalPerKgDry => CountedIn::McalPerKgDry, CountedIn::GPerKg => CountedIn::GPerKg,
            CountedIn::MgPerKg => CountedIn::MgPerKg, CountedIn::IuPerKg => CountedIn::IuPerKg,
        ] {
            check(&say.food_number(&KnownNumber {
                value: 1.5,
                unit,
                work: Work::Tussock,
                place: "",
                mark: Mark::Ours,
            }));
        }
        let price = PricePerKg {
            minor: 124.75,
            currency: gbp,
        };
        assert_eq!(say.per_kg(price), "1.25 GBP a kg");
    }
}

#[test]
fn everything_wrong_with_a_food_is_said() {
    let empty = || ParseError::Empty;
    for say in tongues() {
        for wrong in every![
            LineWrong::NoContent => LineWrong::NoContent, LineWrong::NoUnit => LineWrong::NoUnit,
            LineWrong::Number(_) => LineWrong::Number(empty()), LineWrong::Log(_) => LineWrong::Log(LogError::Seal),
        ] {
            check(&say.line_wrong(&wrong));
        }
        let finding = LabelFinding::GivenTwice {
            content: Content::Starch,
        };
        for wrong in every![
            Wrong::NoName => Wrong::NoName, Wrong::NoClass => Wrong::NoClass, Wrong::NoBasis => Wrong::NoBasis,
            Wrong::Parse(..) => Wrong::Parse(Field::Pack, empty()),
            Wrong::Money(_) => Wrong::Money(MoneyError::TooLarge),
            Wrong::Line(..) => Wrong::Line(0, LineWrong::NoUnit),
            Wrong::Label(..) => Wrong::Label(Some(0), finding), Wrong::Log(_) => Wrong::Log(LogError::Seal),
        ] {
            check(&say.food_wrong(&wrong));
        }
    }
}

#[test]
fn a_pasted_number_is_said_with_what_is_not_sure_of_it() {
    let text =
        "Calcium (min) 3 % (max) 4 %\nZinc 120 mg\nIron 12\nFluff 3 %\nVitamin E 2,500 IU/kg";
    for say in tongues() {
        let read = read_label(text);
        for found in &read.found {
            check(&say.pasted_read(found));
            say.pasted_doubts(found)
                .iter()
                .for_each(|doubt| check(doubt));
        }
        let zinc = read
            .found
            .iter()
            .find(|found| found.number == "120")
            .unwrap();
        assert_eq!(
            say.pasted_doubts(zinc),
            ["Its unit, mg, does not say how much in what."]
        );
        for found in &read_for_fields("Dry matter 88 %\nWSC 92\nIron 3 mg/100g\nNDF 60 61").found {
            check(&say.report_read(found));
            say.report_doubts(found)
                .iter()
                .for_each(|doubt| check(doubt));
        }
        for (found, waiting) in [(0, 0), (1, 1), (7, 3), (7, 0)] {
            check(&say.pasted_found(waiting, found));
        }
        for (as_fed, dry_matter) in [(true, true), (true, false), (false, true)] {
            let said = say.bases_said(BasesSaid { as_fed, dry_matter });
            check(said.unwrap());
        }
        assert_eq!(say.bases_said(BasesSaid::default()), None);
    }
}
