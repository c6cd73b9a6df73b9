//! Intake at grass. The model was tuned to the trials of these tables: its rows say that the arithmetic is that of the
//! trials, and nothing of other animals on other grass.

use tussock_core::animal::Kind;
use tussock_core::graze::intake::{OutFor, eaten, part_eaten};
use tussock_core::limits::Ends;
use tussock_core::units::{BodyMass, PartOfBody, Span};
use tussock_tests::reference::{Formulas, Inputs, RowCounts};

pub fn formulas() -> Formulas {
    vec![
        ("graze.eaten_percent", |i| {
            Ok(part_eaten(&out(i)?).likely.to_percent())
        }),
        ("graze.least_percent", |i| {
            Ok(part_eaten(&out(i)?).least.to_percent())
        }),
        ("graze.eaten_kg", |i| {
            let body = BodyMass::kg(i.number("kg")?);
            Ok(eaten(&out(i)?, Ends::exactly(body)).likely.to_kg())
        }),
        ("graze.hay_beside_kg", |i| {
            let body = BodyMass::kg(i.number("kg")?);
            let all = PartOfBody::percent(i.number("percent")?).of(body);
            let grass = eaten(&out(i)?, Ends::exactly(body)).likely;
            Ok((all - grass).to_kg())
        }),
        ("graze.left_by_muzzle", |i| {
            let free = OutFor {
                kind: Kind::Pony,
                time: Span::hours(3),
                weeks: None,
                muzzle: false,
                leaf: true,
            };
            let muzzled = part_eaten(&OutFor {
                muzzle: true,
                ..free
            });
            let free = part_eaten(&free);
            match i.text("end")? {
                "least" => Ok(muzzled.least / free.least),
                "most" => Ok(muzzled.most / free.most),
                other => Err(format!("no end {other:?}")),
            }
        }),
    ]
}

pub fn rows() -> RowCounts {
    vec![("ince_2011", 5), ("dowler_thesis", 3), ("longland_2016", 2)]
}

fn out(i: &Inputs) -> Result<OutFor, String> {
    let kind = match i.text("kind")? {
        "pony" => Kind::Pony,
        "horse" => Kind::Horse,
        other => return Err(format!("no kind {other:?}")),
    };
    #[allow(clippy::cast_possible_truncation, reason = "hours of a day")]
    let time = Span::minutes((i.number("hours")? * 60.0) as i64);
    Ok(OutFor {
        kind,
        time,
        weeks: Some(i.number("weeks")?),
        muzzle: false,
        leaf: true,
    })
}
