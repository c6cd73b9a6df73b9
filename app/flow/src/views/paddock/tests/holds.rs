//! What was said holds for whom, where and how long it was said.

use super::*;

#[test]
fn a_choice_is_nobody_elses_and_without_its_muzzle_the_time_is_reckoned_anew() {
    let shelf = noted(&a_yard(&lean("moss")), Noted::FlushOver, -3);
    let shelf = put(&with_room(&shelf), "g", moss(), long(true), at(-1));
    let of = |whose: Option<Subject>, muzzle| {
        let chosen = Chosen {
            whose,
            muzzle: Some(muzzle),
            paddock: None,
        };
        let seen = paddock(&shelf, seven(0), &zone(), &chosen);
        seen.of(Some("moss")).unwrap().clone()
    };
    let with = of(Some(moss()), true);
    let without = of(Some(moss()), false);
    assert!(with.muzzle && !without.muzzle);
    assert!(
        without.plan.time().unwrap() < with.plan.time().unwrap(),
        "{:?} {:?}",
        without.plan,
        with.plan
    );
    let other = of(Some(Subject::animal(&AnimalId("fern".into()))), false);
    assert!(other.muzzle, "fern's choice is not moss's");
    // What is out without the muzzle that was decided is in by what it eats without.
    let how = turnout::Goes {
        muzzle: false,
        ..turnout::Goes::default()
    };
    let out = written(&shelf, &turnout::turn_out(&moss(), how, "out"), seven(0));
    let going = goes_of(&out, seven(0) + Span::minutes(1));
    assert_eq!(going.plan, without.plan);
}

fn long(muzzle: bool) -> Body {
    let Body::Grazing(body) = decided(muzzle) else {
        panic!("a decision")
    };
    Body::Grazing(GrazingV1 {
        minutes: GrazingMinutes::new(600).unwrap(),
        ..body
    })
}

#[test]
fn a_clock_that_was_set_back_hides_nobody_who_is_out() {
    let shelf = a_yard(&lean("moss"));
    let act = turnout::turn_out(&moss(), turnout::Goes::default(), "out");
    let shelf = written(&shelf, &act, seven(0) + Span::hours(2));
    let goes = goes_of(&shelf, seven(0));
    assert!(goes.out.is_some() && !goes.may_go(seven(0)));
    assert_eq!(goes.outings.len(), 1, "so that it can be corrected");
}

#[test]
fn seed_heads_and_a_low_leaf_are_not_forgotten_by_the_next_look() {
    let look = |leaf, seeding| {
        Body::Sward(SwardV1 {
            leaf,
            seeding,
            heights_mm: Vec::new(),
            plate: None,
            note: None,
        })
    };
    let records = |shelf: &Shelf| {
        let records: Vec<&Record> = shelf.records().collect();
        let zone = zone();
        let grass = Grass::of(shelf, &records, seven(0), &zone);
        let seen = grass.sward(Some(&PaddockId("top".into())), grass.day);
        seen.map(|seen| (seen.leaf, seen.seeding))
    };
    let shelf = shelf_of(&[add("moss", &lean("moss"), -60)]);
    let seen = |shelf: &Shelf, id: &str, body, day| put(shelf, id, field(), body, at(day));
    let shelf = seen(&shelf, "s1", look(None, Answer::Yes), -20);
    let low = Some(Leaf::BelowAnkle);
    let shelf = seen(&shelf, "s2", look(low, Answer::NotKnown), -2);
    assert_eq!(records(&shelf), Some((low, Answer::Yes)));
    let gone = seen(&shelf, "s3", look(None, Answer::No), -1);
    assert_eq!(records(&gone), Some((low, Answer::No)));
    let high = Some(Leaf::AboveAnkle);
    let grown = seen(&gone, "s4", look(high, Answer::NotKnown), -1);
    assert_eq!(records(&grown), Some((high, Answer::No)));
}

#[test]
fn a_dry_spell_is_shown_until_somebody_takes_it_off_and_old_frost_is_not_todays() {
    let shelf = a_yard(&animal("moss"));
    let shelf = chips(&shelf, "w2", &[Chip::DrySpell, Chip::HardFrost], 0);
    for day in [1, 5, 14] {
        let seen = paddock(&shelf, seven(day), &zone(), &Chosen::default());
        assert_eq!(seen.weather.chips, [Chip::DrySpell], "day {day}");
        assert!(seen.weather.carried);
        assert!(
            seen.of(None)
                .unwrap()
                .window
                .closed
                .contains(&Closed::Drought)
        );
    }
    let act = |weather: &Weather, chip, on| crate::forms::shed::chip(&y(), weather, chip, on, "c");
    let fifth = paddock(&shelf, seven(5), &zone(), &Chosen::default()).weather;
    let night = written(&shelf, &act(&fifth, Chip::NightOverFive, true), seven(5));
    let seen = paddock(&night, seven(6), &zone(), &Chosen::default());
    assert!(seen.weather.chips.contains(&Chip::DrySpell), "it goes on");
    let off = written(&shelf, &act(&fifth, Chip::DrySpell, false), seven(5));
    let seen = paddock(&off, seven(5), &zone(), &Chosen::default());
    assert!(seen.weather.chips.is_empty());
    assert!(
        !seen
            .of(None)
            .unwrap()
            .window
            .closed
            .contains(&Closed::Drought)
    );
}

#[test]
fn who_is_out_with_its_group_is_out_and_a_group_that_everybody_left_still_is() {
    let shelf =
        crate::views::test_yard::after(&a_yard(&lean("moss")), &[add("fern", &lean("fern"), -30)]);
    let group = |to: Option<&str>| {
        let group = Group {
            id: GroupId("both".into()),
            name: "Both".into(),
            members: ["moss", "fern"]
                .map(|id| Member {
                    animal: AnimalId(id.into()),
                    from: "2026-04-10".parse().unwrap(),
                    to: to.map(|to| to.parse().unwrap()),
                })
                .to_vec(),
        };
        Body::Group(GroupV1::of(&group).unwrap())
    };
    let about = Subject::group(&GroupId("both".into()));
    let shelf = put(&shelf, "both", about.clone(), group(None), at(-20));
    let shelf = put(&shelf, "g", moss(), decided(false), at(-1));
    let act = turnout::turn_out(&about, turnout::Goes::default(), "out");
    let out = written(&shelf, &act, seven(0));
    let half = seven(0) + Span::minutes(30);
    let goes = goes_of(&out, half);
    assert_eq!(goes.out.as_ref().unwrap().with.as_deref(), Some("Both"));
    assert!(!goes.may_go(half));
    let going = goes.out.unwrap();
    let home = written(&out, &turnout::bring_in(&going.id, &going.body, half), half);
    let goes = goes_of(&home, half + Span::minutes(1));
    assert!(goes.out.is_none());
    assert_eq!(goes.had, Span::minutes(30));
    let left = Act::Change {
        id: RecordId("both".into()),
        body: group(Some("2026-05-05")),
        at: None,
    };
    let left = written(&out, &left, half);
    let seen = paddock(&left, seven(1), &zone(), &Chosen::default());
    let goes = seen.of(Some("both")).unwrap();
    assert_eq!(goes.stands, Stands::Late);
}

#[test]
fn what_one_of_a_group_had_alone_is_counted_for_the_group() {
    let shelf =
        crate::views::test_yard::after(&a_yard(&lean("moss")), &[add("fern", &lean("fern"), -30)]);
    let group = Group {
        id: GroupId("both".into()),
        name: "Both".into(),
        members: ["moss", "fern"]
            .map(|id| Member {
                animal: AnimalId(id.into()),
                from: "2026-04-10".parse().unwrap(),
                to: None,
            })
            .to_vec(),
    };
    let about = Subject::group(&group.id);
    let body = Body::Group(GroupV1::of(&group).unwrap());
    let shelf = put(&shelf, "both", about.clone(), body, at(-20));
    let shelf = put(&shelf, "g", about, decided(false), at(-1));
    let half = seven(0) + Span::minutes(30);
    let act = turnout::turn_out(&moss(), turnout::Goes::default(), "alone");
    let shelf = written(&shelf, &act, seven(0));
    let alone = goes_of(&shelf, half).out.unwrap();
    assert_eq!(alone.with, None);
    let act = turnout::bring_in(&alone.id, &alone.body, half);
    let shelf = written(&shelf, &act, half);
    let seen = paddock(&shelf, half, &zone(), &Chosen::default());
    assert_eq!(seen.of(Some("both")).unwrap().had, Span::minutes(30));
    assert_eq!(seen.of(Some("moss")).unwrap().had, Span::minutes(30));
}
