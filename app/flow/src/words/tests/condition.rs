//! The words of the walk-round, of two scorers and of the crest, and of what the vet is told after a look-over.

use super::{check, check_head, every, tongues};
use crate::forms::condition::{SCALES, WhoWrong};
use crate::forms::look_over::all_normal;
use crate::views::condition::{Before, Early, Given, Person, Two, summary};
use crate::views::cut::cut;
use crate::views::not_eating::not_eating;
use crate::views::test_yard::{add, animal, at, shelf_of, zone};
use crate::words::{AssessWords, ConditionWords, English, LookOverWords, Sign};
use tussock_core::animal::{AnimalId, Answer, PersonId, VetFlag};
use tussock_core::assess::{ConditionScale, ConditionScore, Site, apart};
use tussock_core::log::bodies::Role;

fn given(scale: ConditionScale, initials: Option<&str>, neck: f64, rest: f64) -> Given {
    let sites: Vec<(Site, f64)> = scale
        .sites()
        .iter()
        .map(|site| (*site, if *site == Site::Neck { neck } else { rest }))
        .collect();
    Given {
        on: "2026-05-05".parse().unwrap(),
        by: initials.map(|initials| PersonId(initials.into())),
        initials: initials.map(str::to_owned),
        score: ConditionScore::by_sites(scale, &sites).unwrap().0,
    }
}

fn two(first: Given, second: Given) -> Two {
    Two {
        on: second.on,
        apart: apart(&second.score, &first.score),
        first,
        second,
    }
}

#[test]
fn every_step_of_every_site_has_words_and_a_drawing() {
    for say in tongues() {
        for scale in SCALES {
            for site in scale.sites() {
                check_head(say.site(*site));
                check(say.lay_hand(*site));
                for step in crate::forms::condition::steps(scale) {
                    check(say.step(*site, scale, step).unwrap());
                    assert!(cut(scale, *site, Some(f64::from(step))).is_some());
                }
            }
            check_head(say.to_summary(scale));
            check(&say.score_keys(scale));
            check(&say.choose_a_step(scale));
            check(&say.picture_key(scale, true));
            check(say.scale_with_sites(scale));
            for usual in [true, false] {
                check(&say.scale_from(scale, usual));
            }
            check(&say.scored_by(Some("AB"), scale));
            check(&say.scored_by(None, scale));
        }
    }
}

#[test]
fn two_people_are_told_where_they_differ_and_whose_score_is_whose() {
    use ConditionScale::{FiveStep, NineStep};
    let say = English::default();
    let first = || given(NineStep, Some("AB"), 7.0, 6.0);
    let one = two(first(), given(NineStep, Some("CD"), 6.0, 6.0));
    assert_eq!(say.two_scored(&one), "6, you differ by 1 at the neck");
    assert_eq!(
        say.whose_is_whose(&one),
        "Filled: CD, 6. Outlined: AB, 6.2."
    );
    let same = two(first(), given(NineStep, None, 7.0, 6.0));
    assert_eq!(say.two_scored(&same), "6.2, you agree at every site");
    assert!(say.whose_is_whose(&same).contains("not said who"));
    let many = two(first(), given(NineStep, Some("CD"), 7.5, 6.5));
    assert_eq!(
        say.two_scored(&many),
        "6.7, you differ at 6 sites, by up to half"
    );
    let other = two(first(), given(FiveStep, Some("CD"), 3.0, 3.0));
    for two in [&one, &same, &many, &other] {
        check_head(&say.two_scored(two));
        check(&say.whose_is_whose(two));
    }
}

#[test]
fn the_last_score_of_the_other_scale_is_said_as_a_range() {
    use ConditionScale::{FiveStep, NineStep};
    let say = English::default();
    assert!(
        say.on_the_other_scale(&given(FiveStep, None, 3.0, 3.0))
            .contains("3 of 0 to 5. That stands for about 5 to 6 of 1 to 9")
    );
    assert!(
        say.on_the_other_scale(&given(NineStep, None, 6.0, 6.0))
            .contains("not turned into one of 0 to 5")
    );
    let now = given(FiveStep, None, 4.0, 3.0);
    let last = Before::Other(given(NineStep, None, 6.0, 6.0));
    assert_eq!(
        say.summary(&summary(&now.score, Some(&last))),
        "3.5 of 0 to 5, the first on this scale"
    );
}

#[test]
fn monthly_is_enough_and_it_lags() {
    let early = |days, enough, again| Early {
        last: "2026-05-05".parse().unwrap(),
        days,
        enough,
        again,
    };
    let say = English::default();
    let said = say.scored_early(&early(12, 28, false));
    assert!(said.contains("12 days ago. Monthly is enough: condition lags"));
    assert!(
        say.scored_early(&early(5, 14, false))
            .contains("Two weeks after the first")
    );
    check(&said);
    check(&say.scored_early(&early(0, 28, true)));
}

#[test]
fn what_is_asked_of_a_scorer_and_of_a_crest_is_worded() {
    for say in tongues() {
        for wrong in every![
            WhoWrong::Initials => WhoWrong::Initials, WhoWrong::Role => WhoWrong::Role,
        ] {
            check(say.who_wrong(wrong));
        }
        check(&say.scorer(&Person {
            id: PersonId("ab".into()),
            initials: "AB".into(),
            role: Role::Consultant,
        }));
        for text in [
            say.crest_coat(),
            say.both_count(),
            say.one_scale(),
            say.initials_hint(),
            say.somebody_else_scored(),
        ] {
            check(text);
        }
        check_head(&say.who_and_which_scale("Bramble"));
        check(&say.last_crest(3, "2026-05-05".parse().unwrap()));
    }
}

#[test]
fn the_vet_is_told_the_signs_what_was_said_and_what_was_measured() {
    let mut moss = animal("moss");
    let shelf = shelf_of(&[add("moss", &moss, 0)]);
    let view = not_eating(&shelf, &AnimalId("moss".into()), at(1), &zone()).unwrap();
    moss.health.flags = vec![VetFlag::GotAtGrain { at: at(1) }];
    let mut signs = all_normal();
    Sign::StrongPulse.answer(&mut signs, Answer::Yes);
    for say in tongues() {
        let lines = say.signs_sheet(&view, &signs, &moss.health, [Some(38.4), None, None]);
        let says = |about: &str| {
            let found = lines.iter().find(|line| line.about == about);
            found.map(|line| line.says.clone()).unwrap_or_default()
        };
        assert_eq!(says("Seen"), "A strong pulse at a foot");
        assert_eq!(says("Not looked at"), "Nothing");
        assert_eq!(says("Pulse"), "Not taken");
        assert!(says("Temperature").starts_with("38.4"));
        assert!(!says("Said of it").is_empty());
        for line in &lines {
            check(&line.about);
            check(&line.says);
        }
    }
}
