//! A food, typed.

use super::*;
use tussock_core::animal::YardId;
use tussock_core::limits::Nutrient;
use tussock_core::ration::{Content, LabelUnit, Measure, read_label};

fn line(content: &str, value: &str, unit: &str) -> LineTyped {
    LineTyped {
        content: content.to_owned(),
        value: value.to_owned(),
        unit: unit.to_owned(),
    }
}

fn balancer(lines: Vec<LineTyped>) -> Typed {
    Typed {
        name: " Stable mix ".into(),
        class: Some(FoodClass::Balancer),
        basis: Some(LabelBasis::AsFed),
        lines,
        ..Typed::default()
    }
}

fn id() -> FoodId {
    FoodId("mix".into())
}

fn yard() -> Subject {
    Subject::yard(&YardId("yard".into()))
}

#[test]
fn a_food_is_kept_as_it_was_typed_and_comes_back_into_the_form() {
    let typed = Typed {
        dry: "89,5".into(),
        serving: "50".into(),
        rate: "100".into(),
        scoop: "120 g".into(),
        pack: "20".into(),
        price: "24.95".into(),
        currency: "gbp".into(),
        ..balancer(vec![
            line("calcium", "3,2", "%"),
            line("", "", ""),
            line("zinc", "40", "mg/serving"),
            line("energy", "10.4", "MJ/kg"),
        ])
    };
    let Ok(Act::Add(New {
        body: Body::Food(body),
        subject,
        ..
    })) = typed.act(&yard(), &id(), None)
    else {
        panic!("adds a food")
    };
    assert_eq!(subject.kind(), "yard");
    assert_eq!(body.name.as_str(), "Stable mix");
    assert_eq!(body.label.len(), 3);
    let food = body.food(&RecordId("mix".into())).unwrap().unwrap();
    let zinc = food.per_kg(Nutrient::Zinc).unwrap();
    assert!((Nutrient::Zinc.in_unit(zinc).unwrap() - 800.0).abs() < 1e-9);
    let price = body.price_per_kg().unwrap();
    assert!((price.minor - 124.75).abs() < 1e-9);
    assert_eq!(typed.price_per_kg(), Some(price));
    // The same once more, and the line nobody filled in is gone.
    let again = Typed::of(&body);
    assert_eq!(again.lines.len(), 3);
    assert_eq!(
        (again.rate.as_str(), again.scoop.as_str()),
        ("100", "120 g")
    );
    let Ok(Act::Change {
        body: Body::Food(same),
        ..
    }) = again.act(&yard(), &id(), Some(&body))
    else {
        panic!("changes it")
    };
    assert_eq!(same.food(&RecordId("mix".into())).unwrap().unwrap(), food);
}

#[test]
fn a_swapped_unit_is_found_at_its_line() {
    let typed = balancer(vec![
        line("calcium", "3.2", "%"),
        line("copper", "25", "%"),
        line("starch", "140", "%"),
    ]);
    let checked = typed.checked();
    assert!(checked.of(0).next().is_none());
    assert!(checked.of(1).any(|finding| matches!(
        finding,
        LabelFinding::Unlikely {
            likely: Some(LabelUnit::PerKg(Measure::Milligram)),
            ..
        }
    )));
    // What is unlikely can be saved, what cannot be is not.
    let wrong = typed.body(None).unwrap_err();
    assert!(
        matches!(
            wrong.as_slice(),
            [Wrong::Label(
                Some(2),
                LabelFinding::Impossible {
                    content: Content::Starch,
                    ..
                }
            )]
        ),
        "{wrong:?}"
    );
}

#[test]
fn what_is_wrong_is_said_at_its_field() {
    let typed = Typed {
        name: String::new(),
        class: None,
        basis: None,
        pack: "x".into(),
        price: "5".into(),
        serving: "cups".into(),
        ..balancer(vec![line("", "1,234", ""), line("zinc", "", "mg/kg")])
    };
    let wrong = typed.body(None).unwrap_err();
    for expected in [Wrong::NoName, Wrong::NoClass, Wrong::NoBasis] {
        assert!(wrong.contains(&expected), "{expected:?}");
    }
    assert!(wrong.contains(&Wrong::Line(0, LineWrong::NoContent)));
    assert!(wrong.contains(&Wrong::Line(0, LineWrong::NoUnit)));
    assert!(wrong.iter().any(|wrong| matches!(
        wrong,
        Wrong::Line(0, LineWrong::Number(ParseError::TwoReadings { .. }))
    )));
    assert!(wrong.contains(&Wrong::Line(1, LineWrong::Number(ParseError::Empty))));
    for field in [Field::Pack, Field::Serving, Field::Currency] {
        assert!(wrong.iter().any(|wrong| wrong.field() == Some(field)));
    }
}

#[test]
fn a_serving_in_another_unit_is_kept_in_grams() {
    let typed = Typed {
        serving: "0.05 kg".into(),
        ..balancer(vec![line("zinc", "40", "mg/serving")])
    };
    let serving = typed.body(None).unwrap().serving.unwrap();
    assert_eq!((serving.value.digits(), serving.unit.as_str()), ("50", "g"));
    assert_eq!(serving.typed.as_deref(), Some("0.05 kg"));
}

#[test]
fn lines_come_back_from_a_draft() {
    let lines = vec![
        line("calcium", "3,2", "%"),
        LineTyped::default(),
        line("", "12\t3", "ppm"),
    ];
    let back = lines_of(&lines_text(&lines));
    assert_eq!(back.len(), 3);
    assert_eq!(back[0], lines[0]);
    assert_eq!(back[2].value, "12 3");
    assert_eq!(lines_of(""), []);
}

#[test]
fn what_is_accepted_of_a_text_becomes_a_line() {
    let read = read_label("Copper (as sulphate) 1,200 mg/kg\nVitamin A 3 000 IU");
    let lines: Vec<LineTyped> = read.found.iter().map(LineTyped::accepted).collect();
    assert_eq!(
        lines,
        [
            line("copper", "1.2", "mg/kg"),
            line("copper", "1200", "mg/kg"),
            line("vitamin_a", "3 000", ""),
        ]
    );
}

#[test]
fn a_typical_food_is_taken_with_its_class_and_marked() {
    let act = take(TypicalFood::SoyaHulls, "Soya hulls", &yard(), &id()).unwrap();
    let Act::Add(New {
        body: Body::Food(body),
        ..
    }) = act
    else {
        panic!("adds a food")
    };
    assert_eq!(body.class, FoodClass::Fibre);
    assert!(body.food(&RecordId("mix".into())).unwrap().unwrap().typical);
    let again = Typed::of(&body);
    assert_eq!(again.profile, Some(TypicalFood::SoyaHulls));
    assert_eq!(again.body(Some(&body)).unwrap(), body);
}
