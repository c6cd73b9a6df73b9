//! Words for a balance and for the change slip.

use crate::views::balance::{Judged, Look};
use crate::views::slip::Change;
use crate::words::tests::animal::day;
use crate::words::tests::{check, check_said, every, tongues};
use crate::words::{BalanceWords, RationWords, SlipWords};
use tussock_core::limits::{CapVerdict, MealVerdict, Nutrient, RatioVerdict, UpperVerdict};
use tussock_core::log::GivenBy;
use tussock_core::ration::{DayStarch, FoodClass, ForageVerdict, SugarRow, typical_balancer};
use tussock_core::units::{NutrientMass, PartOfBody, ShareOfDm};

#[test]
fn every_state_and_every_change_has_its_own_word() {
    for say in tongues() {
        let looks = every![
            Look::Over => Look::Over, Look::Short => Look::Short, Look::NotKnown => Look::NotKnown,
            Look::Remark => Look::Remark, Look::Within => Look::Within, Look::Told => Look::Told,
        ];
        let mut said: Vec<&str> = looks.into_iter().map(|look| say.look(look)).collect();
        said.extend(Change::ALL.map(|change| say.change(change)));
        for word in &said {
            check(word);
        }
        let own: std::collections::BTreeSet<&str> = said.iter().copied().collect();
        assert_eq!(own.len(), said.len());
    }
}

#[test]
fn the_labels_keep_to_the_rules() {
    for say in tongues() {
        for label in [
            say.a_day(),
            say.ration_against_needs(),
            say.what_it_is_given(),
            say.no_cord(),
            say.only_what_is_written_down(),
            say.energy_name(),
            say.energy_ceiling(),
            say.need_word(),
            say.ceiling_word(),
            say.knots_are_level(),
            say.what_needs_a_look(),
            say.no_nutrient_to_look_at(),
            say.what_else(),
            say.all_numbers(),
            say.numbers_caption(),
            say.no_ration_to_show(),
            say.needs_not_reckoned(),
            say.find_the_cheapest_mend(),
            say.to_the_foods(),
            say.slip_name(),
        ] {
            check(label);
        }
        for head in say.row_heads().into_iter().chain(say.numbers_columns()) {
            check(head);
        }
        for word in say.slip_sum_of() {
            check(word);
        }
        check(&say.within_show(19));
        check(&say.given_by(GivenBy::Draft));
        check_said(&say.balance_is_no_diagnosis());
        for by in [GivenBy::Plan { from: day() }, GivenBy::Draft] {
            check_said(&say.balance_while_refused(by));
        }
        check_said(&say.hays_not_tested(&["Top meadow"], &[Nutrient::Selenium, Nutrient::Iron]));
        check_said(&say.hays_not_tested(&["Top meadow", "Barn"], &[]));
    }
}

#[test]
fn a_food_without_a_name_is_called_by_what_stands_in() {
    for say in tongues() {
        let mut food = typical_balancer();
        assert_eq!(say.food_name(&food), "Typical balancer");
        food.profile = None;
        food.class = FoodClass::MineralMix;
        assert_eq!(say.food_name(&food), say.food_class(food.class));
        food.name = "Blue tub".into();
        assert_eq!(say.food_name(&food), "Blue tub");
    }
}

#[test]
fn what_else_is_judged_is_named_and_said() {
    let unsaid = || SugarRow {
        known: NutrientMass::g(120.0),
        unknown: 0.3,
        judged: None,
    };
    let ratio = RatioVerdict::TooLow { ratio: 0.8 };
    for say in tongues() {
        for judged in [
            Judged::Forage {
                verdict: ForageVerdict::UnderFloor {
                    of_body: PartOfBody::percent(0.9),
                    floor: PartOfBody::percent(1.0),
                },
                of_dry: Some(0.95),
            },
            Judged::Forage {
                verdict: ForageVerdict::UnderStart {
                    of_body: PartOfBody::percent(1.45),
                    start: PartOfBody::percent(1.5),
                },
                of_dry: Some(0.95),
            },
            Judged::Forage {
                verdict: ForageVerdict::NotKnown,
                of_dry: None,
            },
            Judged::Sugar {
                row: unsaid(),
                limited: true,
            },
            Judged::Sugar {
                row: unsaid(),
                limited: false,
            },
            Judged::Buckets {
                count: 2,
                verdict: MealVerdict::Within,
            },
            Judged::DayStarch(DayStarch::NotKnown),
            Judged::CalciumToPhosphorus(ratio),
            Judged::ZincToCopper(ratio),
            Judged::IronToCopper(RatioVerdict::Remark { ratio: 12.0 }),
            Judged::AddedSelenium(UpperVerdict::NotKnown),
            Judged::AddedSelenium(UpperVerdict::Within),
            Judged::Lucerne {
                verdict: CapVerdict::NotKnown,
                mixed: true,
            },
            Judged::Straw(CapVerdict::NotKnown),
            Judged::Fibre {
                fibre: Some(ShareOfDm::percent(55.0)),
                unknown: 0.1,
            },
            Judged::Fibre {
                fibre: None,
                unknown: 1.0,
            },
        ] {
            check(say.judged_name(&judged));
            let said = say.judged_stands(&judged);
            check(&said.sentence);
            if let Some(why) = said.why {
                check(&why);
                assert!(why.ends_with('.'), "{why:?}");
            }
        }
    }
}
