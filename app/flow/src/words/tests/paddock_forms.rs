//! The words of the place, of turnout and of the model of intake.

use super::{check, check_head, check_said, every, tongues};
use crate::forms::grass_place::{Field, Looking, NoFix, Noon, Unread, Wrong as Place};
use crate::forms::grazing::{OFFERED, Used, Wrong, time_text};
use crate::views::grass_model::{Base, trials};
use crate::views::grazing::{Carried, Open};
use crate::words::{GrassModelWords, GrassPlaceWords, GrazingWords};
use tussock_core::animal::{AnimalId, RiskFactor};
use tussock_core::graze::intake::{Shortened, Trial};
use tussock_core::graze::plants::Region;
use tussock_core::limits::Ends;
use tussock_core::plan::PlanError;
use tussock_core::safety::{Refusal, VetUrgency};
use tussock_core::units::{DryMatter, LocalTime, Span};

fn open(of_group: bool, muzzle: bool) -> Open {
    Open {
        asked: Span::minutes(120),
        time: Span::minutes(45),
        why: if muzzle {
            Vec::new()
        } else {
            vec![Shortened::DryMatter]
        },
        set_by: of_group.then(|| "Moss".to_owned()),
        grass: Ends::new(DryMatter::kg(0.2), DryMatter::kg(0.4), DryMatter::kg(0.9)),
        hay_less: DryMatter::kg(0.2),
        muzzle,
    }
}

#[test]
fn the_place_says_what_it_asks_and_what_is_wrong() {
    for say in tongues() {
        check_head(say.where_the_yard_lies());
        for text in [
            say.place_is_for(),
            say.use_this_phones_place(),
            say.clock_asked(),
            say.regions_asked(),
            say.regions_hint(),
            say.save_place(),
            say.skip_place(),
        ] {
            check(text);
        }
        for zone in [
            say.clock_is("Europe/London"),
            say.clock_choice("UTC", true),
            say.clock_choice("UTC", false),
        ] {
            check(&zone);
        }
        for looking in every![
            Looking::NotAsked => Looking::NotAsked, Looking::Now => Looking::Now, Looking::Found => Looking::Found,
            Looking::Failed(_) => Looking::Failed(NoFix::Refused)
        ] {
            assert_eq!(say.looking(looking).is_none(), looking == Looking::NotAsked);
        }
        // Whatever the phone says, there is a way on.
        for why in [NoFix::NotHere, NoFix::Refused, NoFix::NotFound] {
            let said = say.looking(Looking::Failed(why)).unwrap();
            check(said);
            assert!(said.to_lowercase().contains("type it"), "{said}");
        }
        for field in Field::ALL {
            check(say.degree_field(field));
            check(say.degree_hint(field));
            for degrees in [51.2, -33.9, 0.0, -0.001] {
                check(&say.degree_echo(field, degrees));
            }
            let Err(Unread::OutOfRange(_, out)) = field.read("999") else {
                panic!("on the earth")
            };
            for wrong in every![
                Unread::Empty(_) => Unread::Empty(field),
                Unread::NotDegrees(..) => Unread::NotDegrees(field, "here".into()),
                Unread::WrongSide(..) => Unread::WrongSide(field, 'N'),
                Unread::Sixty(..) => Unread::Sixty(field, 75.0),
                Unread::OutOfRange(..) => Unread::OutOfRange(field, out)
            ] {
                check(&say.place_wrong(&Place::Degrees(wrong)));
            }
            let said = say.place_wrong(&Place::Degrees(Unread::OutOfRange(field, out)));
            assert!(
                said.contains("999") && said.contains(say.degree_field(field)),
                "{said}"
            );
        }
        for fits in [true, false] {
            let at = LocalTime::from_hms_opt(20, 14, 0).unwrap();
            check(&say.noon_there(Noon { at, fits }));
        }
        for region in Region::ALL {
            check(say.region_of_hazards(region));
        }
    }
}

#[test]
fn both_halves_of_the_earth_are_told_in_words() {
    let say = crate::words::English::default();
    assert!(
        say.degree_echo(Field::Latitude, 51.2)
            .contains("north of the equator")
    );
    assert!(
        say.degree_echo(Field::Latitude, -33.9)
            .contains("south of the equator")
    );
    assert_eq!(say.degree_echo(Field::Latitude, 0.0), "On the equator");
    assert!(
        say.degree_echo(Field::Longitude, -3.4)
            .starts_with("3.40 degrees west")
    );
}

#[test]
fn turnout_says_what_the_plan_can_carry_and_what_to_do_instead() {
    for say in tongues() {
        check_head(&say.how_it_goes_out("Bramble"));
        for text in [
            say.nobody_to_go_out(),
            say.stays_in_now(),
            say.which_paddock(),
            say.no_one_paddock(),
            say.no_one_paddock_means(),
            say.how_long_out(),
            say.another_time(),
            say.another_time_hint(),
            say.muzzle_asked(),
            say.muzzle_on(true),
            say.muzzle_on(false),
            say.used_asked(),
            say.used_hint(),
            say.used_since(),
            say.used_since_hint(),
            say.carries_head(),
            say.say_how_long_first(),
            say.instead_head(),
            say.never_more_than_carried(),
            say.save_turnout(),
            say.does_not_go_out(),
        ] {
            check(text);
        }
        for minutes in OFFERED {
            check(&say.so_long(minutes));
            check(&time_text(minutes));
        }
        for used in Used::ALL {
            check(say.used(used));
            assert_eq!(Used::of_key(used.key()), Some(used));
        }
        check_said(&say.muzzle_caution());
        for wrong in every![
            Wrong::NoTime => Wrong::NoTime, Wrong::NotATime(_) => Wrong::NotATime("all day".into()),
            Wrong::TimeOutside { .. } => Wrong::TimeOutside { minutes: 1500, most: 1440 }, Wrong::Since => Wrong::Since,
            Wrong::Log(_) => Wrong::NoTime
        ] {
            check(&say.grazing_wrong(&wrong));
        }
        let of = || "Moss".to_owned();
        for carried in every![
            Carried::NoPlan { .. } => Carried::NoPlan { error: PlanError::EmptyGroup, of: Some(of()) },
            Carried::Refused { .. } => Carried::Refused {
                of: of(), why: vec![Refusal::LaminitisNow], vet: Some(VetUrgency::Today)
            },
            Carried::Closed { .. } => Carried::Closed { of: of(), animal: AnimalId("m".into()), why: Vec::new() },
            Carried::NoRoom { .. } => Carried::NoRoom {
                of: of(), asked: Span::hours(2), why: vec![Shortened::HayLeavesNoRoom]
            },
            Carried::OneStaysIn => Carried::OneStaysIn,
            Carried::Open(_) => Carried::Open(Box::new(open(true, false)))
        ] {
            check_said(&say.carried(&carried));
            let instead = say.instead_of_grass(&carried);
            for line in &instead {
                check(line);
            }
            let stops = matches!(
                carried,
                Carried::Refused { .. } | Carried::Closed { .. } | Carried::NoRoom { .. }
            );
            assert_eq!(instead.is_empty(), !stops, "{carried:?}");
        }
        for carried in [
            Carried::Closed {
                of: of(),
                animal: AnimalId("m".into()),
                why: vec![RiskFactor::Laminitis],
            },
            Carried::NoRoom {
                of: of(),
                asked: Span::minutes(5),
                why: Vec::new(),
            },
            Carried::Refused {
                of: of(),
                why: Vec::new(),
                vet: None,
            },
            Carried::Open(Box::new(open(false, true))),
            Carried::Open(Box::new(open(false, false))),
        ] {
            check_said(&say.carried(&carried));
        }
        for (name, value) in say.carried_rows(&open(false, true)) {
            check(name);
            check(&value);
        }
    }
}

#[test]
fn the_model_says_what_it_was_tuned_to_and_where_each_number_stands() {
    for say in tongues() {
        check_head(say.grass_model_head());
        check_said(&say.tuned_to_these());
        for text in [
            say.model_in_words(),
            say.trials_head(),
            say.model_numbers(),
            say.ends_in_words(),
            say.muzzle_numbers(),
            say.muzzle_in_words(),
            say.back_to_the_paddock(),
            say.number_from_where(),
        ] {
            check(text);
        }
        for column in say.trial_columns() {
            check(column);
        }
        for row in trials() {
            let tried = &row.tried;
            check(say.trial(tried.trial));
            check(&say.seen_in_trial(tried));
            check(&say.reckoned_of_trial(tried));
            check(&say.ends_of_trial(tried));
            for text in say.trial_from(&row) {
                check(&text);
            }
            let beyond = say.beyond_the_most(tried);
            assert_eq!(beyond.is_some(), tried.trial == Trial::DayAndNight);
            if let Some(text) = beyond {
                check(&text);
            }
        }
        for base in Base::MODEL.into_iter().chain(Base::MUZZLE) {
            check(say.base(base));
            check(&say.base_value(base));
            for text in say.base_from(base) {
                check(&text);
            }
        }
    }
}
