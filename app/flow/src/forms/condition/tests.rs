//! What becomes of a walk-round.

use super::*;
use ConditionScale::{FiveStep, NineStep};

#[test]
fn half_keys_go_from_what_is_chosen_and_stay_on_the_scale() {
    assert_eq!(touched(NineStep, "", Touch::HalfMore), "");
    assert_eq!(touched(NineStep, "skip", Touch::HalfMore), "skip");
    assert_eq!(touched(NineStep, "6", Touch::HalfMore), "6.5");
    assert_eq!(touched(NineStep, "6.5", Touch::HalfLess), "6");
    assert_eq!(touched(NineStep, "9", Touch::HalfMore), "9");
    assert_eq!(touched(NineStep, "1", Touch::HalfLess), "1");
    assert_eq!(touched(NineStep, "6.5", Touch::Step(3)), "3");
    assert_eq!(touched(NineStep, "6.5", Touch::Skip), "skip");
    assert_eq!(touched(FiveStep, "0", Touch::HalfLess), "0");
    assert_eq!(touched(FiveStep, "5", Touch::HalfMore), "5");
    assert_eq!(touched(FiveStep, "3", Touch::HalfMore), "3.5");
}

#[test]
fn each_scale_has_its_own_keys_and_its_own_neck() {
    assert_eq!(
        steps(NineStep).collect::<Vec<_>>(),
        (1..=9).collect::<Vec<_>>()
    );
    assert_eq!(
        steps(FiveStep).collect::<Vec<_>>(),
        (0..=5).collect::<Vec<_>>()
    );
    assert_eq!(mark(FiveStep, "7"), None);
    assert_eq!(mark(NineStep, "0"), None);
    // A neck of 3 from 1 to 9 stays where it was when somebody changes to 0 to 5.
    let text = |name: &str| if name == "neck" { "3" } else { "" }.to_owned();
    assert_eq!(scored(NineStep, text), [(Site::Neck, 3.0)]);
    assert_eq!(scored(FiveStep, text), []);
    for scale in SCALES {
        assert_eq!(scale_of(text_of_scale(scale)), Some(scale));
    }
}

fn walk(scale: ConditionScale, count: usize) -> Vec<(Site, f64)> {
    let sites: Vec<&str> = scale
        .sites()
        .iter()
        .map(|site| field(scale, *site))
        .collect();
    scored(scale, move |name| {
        let place = sites.iter().position(|site| *site == name).unwrap();
        if place < count { "3.5" } else { SKIPPED }.to_owned()
    })
}

fn written(scale: ConditionScale, count: usize, by: &Scorer) -> Result<Act, Wrong> {
    let (id, yard) = (AnimalId("moss".into()), YardId("y".into()));
    act(&id, scale, &walk(scale, count), by, &yard, "r")
}

#[test]
fn three_sites_are_too_few_and_four_are_kept() {
    assert_eq!(
        written(NineStep, 3, &Scorer::NotSaid),
        Err(Wrong::Assess(AssessError::TooFewSites {
            scored: 3,
            needed: 4
        }))
    );
    let Ok(Act::Add(New {
        body: Body::Condition(body),
        ..
    })) = written(NineStep, 4, &Scorer::NotSaid)
    else {
        panic!("adds a condition")
    };
    assert!(body.condition().is_ok());
}

#[test]
fn from_0_to_5_the_pelvis_is_what_it_starts_from() {
    assert_eq!(
        written(FiveStep, 2, &Scorer::NotSaid),
        Err(Wrong::Assess(AssessError::BaseSiteSkipped(Site::Pelvis)))
    );
    assert!(written(FiveStep, 3, &Scorer::NotSaid).is_ok());
}

#[test]
fn initials_are_typed_once_and_the_score_is_theirs() {
    let said = |texts: &'static [(&str, &str)]| {
        move |name: &str| {
            let found = texts.iter().find(|(field, _)| *field == name);
            found
                .map(|(_, text)| (*text).to_owned())
                .unwrap_or_default()
        }
    };
    let kit = PersonId("kit".into());
    assert_eq!(scorer(said(&[]), None), Ok(Scorer::NotSaid));
    assert_eq!(
        scorer(said(&[]), Some(&kit)),
        Ok(Scorer::Known(kit.clone()))
    );
    assert_eq!(
        scorer(said(&[(WHO, NOT_SAID)]), Some(&kit)),
        Ok(Scorer::NotSaid)
    );
    assert_eq!(
        scorer(said(&[(WHO, NEW), (INITIALS, " ")]), Some(&kit)),
        Err(vec![WhoWrong::Initials, WhoWrong::Role])
    );
    let new = scorer(
        said(&[(WHO, NEW), (INITIALS, "AB "), (ROLE, "consultant")]),
        Some(&kit),
    )
    .unwrap();
    assert_eq!(
        new,
        Scorer::New {
            initials: "AB".into(),
            role: Role::Consultant
        }
    );
    assert_eq!(
        by(said(&[(WHO, NEW)]), Some(&kit)),
        Some(PersonId(NEW.into()))
    );
    assert_eq!(by(said(&[]), Some(&kit)), Some(kit));
    let Ok(Act::By(who, act)) = written(NineStep, 6, &new) else {
        panic!("says who")
    };
    let Act::All(acts) = *act else {
        panic!("the person and the score")
    };
    let Some(Act::Add(New {
        id,
        body: Body::Person(person),
        ..
    })) = acts.first()
    else {
        panic!("writes the person down")
    };
    assert_eq!(id.0, who.0);
    assert_eq!(person.initials.as_ref().map(Name::as_str), Some("AB"));
    for role in ROLES {
        assert_eq!(role_of(text_of_role(role)), Some(role));
    }
}

#[test]
fn a_crest_is_a_whole_score_of_its_scale() {
    assert_eq!(crest("3").map(Crest::score), Some(3));
    assert_eq!(crest("6"), None);
    assert_eq!(crest("2.5"), None);
    assert_eq!(crest(""), None);
}
