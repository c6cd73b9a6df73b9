//! A lot and its report, typed.

use super::*;

fn typed(values: &[(Analyte, &str)]) -> Typed {
    Typed {
        name: "Lane field".into(),
        class: Some(None),
        dry: "87,5".into(),
        basis: Some(Basis::DryMatter),
        fed: Fed::Dry,
        values: values
            .iter()
            .map(|(analyte, text)| (*analyte, (*text).to_owned()))
            .collect(),
        came: delivery::Typed::default(),
    }
}

fn today() -> LocalDate {
    "2026-05-05".parse().unwrap()
}

fn id() -> LotId {
    LotId("lane".into())
}

#[test]
fn a_report_is_kept_as_it_was_typed_and_read_on_dry_matter() {
    let lot = typed(&[
        (Analyte::Wsc, "9,3"),
        (Analyte::Starch, "1.10"),
        (Analyte::Iron, "120"),
        (Analyte::Zinc, ""),
    ]);
    let Ok(Act::Add(New {
        body: Body::Lot(body),
        ..
    })) = lot.act(&id(), None, today())
    else {
        panic!("adds a lot")
    };
    assert_eq!(body.class, ForageClass::Grass);
    let report = &body.reports[0];
    assert_eq!(report.values.len(), 3);
    assert_eq!(report.values[0].reported.value.digits(), "9.3");
    assert_eq!(report.values[0].reported.typed.as_deref(), Some("9,3"));
    assert_eq!(report.values[2].reported.unit.as_str(), "mg/kg");
    let (read, findings) = body.lot(&RecordId("lane".into())).unwrap();
    let echoed = lot.report().unwrap().unwrap();
    assert_eq!(findings, echoed.1);
    assert_eq!(
        read.reports[0].share(Analyte::Iron),
        echoed.0.share(Analyte::Iron)
    );
}

#[test]
fn what_is_wrong_is_said_at_its_field() {
    let mut lot = typed(&[(Analyte::Wsc, "930"), (Analyte::Copper, "x")]);
    lot.basis = None;
    lot.name = " ".into();
    let wrong = lot.act(&id(), None, today()).unwrap_err();
    assert!(wrong.contains(&Wrong::NoName) && wrong.contains(&Wrong::NoBasis));
    assert!(
        wrong
            .iter()
            .any(|w| matches!(w, Wrong::Line(Analyte::Wsc, _)))
    );
    assert!(
        wrong
            .iter()
            .any(|w| matches!(w, Wrong::Line(Analyte::Copper, _)))
    );
    let mut fed = typed(&[(Analyte::Wsc, "9.3")]);
    fed.basis = Some(Basis::AsFed);
    fed.dry = String::new();
    assert_eq!(
        fed.report(),
        Err(vec![Wrong::Report(ForageError::AsFedWithoutDryMatter)])
    );
}

#[test]
fn a_change_keeps_the_record_and_its_reports() {
    let Ok(Act::Add(New {
        body: Body::Lot(before),
        ..
    })) = typed(&[(Analyte::Wsc, "9.3")]).act(&id(), None, today())
    else {
        panic!("adds a lot")
    };
    let mut again = typed(&[(Analyte::Wsc, "7.9")]);
    again.fed = Fed::Soaked;
    let Ok(Act::Change {
        body: Body::Lot(body),
        id: record,
        ..
    }) = again.act(&id(), Some(&before), today())
    else {
        panic!("changes it")
    };
    assert_eq!((record.0.as_str(), body.reports.len()), ("lane", 2));
    let Some(Act::Change {
        body: Body::Lot(body),
        ..
    }) = without_report(&id(), &body, 0)
    else {
        panic!("takes it off")
    };
    assert_eq!(body.reports.len(), 1);
    assert_eq!(body.reports[0].fed, Fed::Soaked);
    assert!(without_report(&id(), &body, 1).is_none());
}
