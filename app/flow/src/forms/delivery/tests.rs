//! What came, typed.

use super::*;
use tussock_core::forage::{ForageClass, Held};
use tussock_core::sources::RecordId;

fn today() -> LocalDate {
    "2026-05-05".parse().unwrap()
}

fn body() -> LotV1 {
    LotV1::of_class("Lane field", ForageClass::Meadow).unwrap()
}

fn full() -> Typed {
    Typed {
        unit: Some(In::Bales),
        bought: "120".into(),
        bale: Some(BaleKind::SmallSquare),
        bale_weights: "18.4 19,1; 18.8".into(),
        bale_said: "19".into(),
        slices: "1.9 2.1".into(),
        price: "6.50".into(),
        per: Some(Per::Bale),
        currency: "gbp".into(),
        bought_on: "1.5.2026".into(),
        baled_on: "2025-06-20".into(),
        moisture: "14,5".into(),
        stored: vec![StoredBadly::Uncovered],
        lead: "10".into(),
        rod: "55".into(),
        felt: None,
    }
}

/// What the form holds after it was filled in from what is stored.
fn filled_in(body: &LotV1) -> Typed {
    let fields = Typed::of(body);
    let text = |name: &str| {
        let found = fields.iter().find(|(held, _)| *held == name);
        found.map(|(_, text)| text.clone()).unwrap_or_default()
    };
    Typed {
        unit: In::of(&text("unit")),
        bought: text("bought"),
        bale: of_word(&BALES, &text("bale")),
        bale_weights: text("bale-weights"),
        bale_said: text("bale-said"),
        slices: text("slices"),
        price: text("price"),
        per: of_word(&PER, &text("per")),
        currency: text("currency"),
        bought_on: text("bought-on"),
        baled_on: text("baled-on"),
        moisture: text("moisture"),
        stored: text("stored")
            .split(' ')
            .filter_map(|word| of_word(&STORED, word))
            .collect(),
        lead: text("lead"),
        rod: text("rod"),
        felt: of_word(&FELT, &text("felt")),
    }
}

#[test]
fn what_is_left_out_stays_not_known() {
    let mut lot = body();
    Typed::default().into_lot(&mut lot, today()).unwrap();
    assert_eq!(lot, body());
    let priced = Typed {
        price: "6".into(),
        per: Some(Per::Bale),
        currency: "GBP".into(),
        ..Typed::default()
    };
    priced.into_lot(&mut lot, today()).unwrap();
    // A price for a bale that nobody weighed is kept, and is no price a kilogram.
    assert!(matches!(
        lot.price,
        Some(PriceV1::Bale { weight: None, .. })
    ));
    assert_eq!(lot.lot(&RecordId("lane".into())).unwrap().0.price, None);
}

#[test]
fn all_of_it_is_kept_and_comes_back_to_the_form() {
    let mut lot = body();
    full().into_lot(&mut lot, today()).unwrap();
    let (read, _) = lot.lot(&RecordId("lane".into())).unwrap();
    assert_eq!(read.delivery.bought, Some(Held::Bales(120.0)));
    assert_eq!(read.delivery.bales.len(), 3);
    assert_eq!(read.delivery.heat.len(), 1);
    let again = filled_in(&lot);
    let mut same = lot.clone();
    again.into_lot(&mut same, today()).unwrap();
    let as_typed = |lot: &LotV1| {
        let read = lot.lot(&RecordId("lane".into())).unwrap().0;
        (read.delivery, read.price, read.bought_on)
    };
    // Saved again nothing changes, and the rod of today is not counted twice.
    assert_eq!(as_typed(&same), as_typed(&lot));
}

#[test]
fn each_field_says_what_is_wrong_with_it() {
    let wrong = |typed: Typed| typed.into_lot(&mut body(), today()).unwrap_err();
    let base = Typed::default;
    assert!(matches!(
        wrong(Typed {
            bought: "40".into(),
            ..base()
        })[..],
        [Wrong::Bought(left_of_lot::Wrong::NoUnit)]
    ));
    assert!(matches!(
        wrong(Typed {
            bale_weights: "18 1.9 t".into(),
            ..base()
        })[..],
        [Wrong::Bale(_)]
    ));
    assert!(matches!(
        wrong(Typed {
            bale_weights: "18000".into(),
            ..base()
        })[..],
        [Wrong::Bale(Bad::Forage(_) | Bad::Log(_))]
    ));
    assert!(matches!(
        wrong(Typed {
            price: "6".into(),
            ..base()
        })[..],
        [Wrong::NoPer]
    ));
    assert!(matches!(
        wrong(Typed {
            price: "6".into(),
            per: Some(Per::Tonne),
            ..base()
        })[..],
        [Wrong::Currency(_)]
    ));
    assert!(matches!(
        wrong(Typed {
            price: "-6".into(),
            per: Some(Per::Tonne),
            currency: "GBP".into(),
            ..base()
        })[..],
        [Wrong::Price(_)]
    ));
    assert!(matches!(
        wrong(Typed {
            bought_on: "6.5.2026".into(),
            ..base()
        })[..],
        [Wrong::BoughtOn]
    ));
    assert!(matches!(
        wrong(Typed {
            moisture: "150".into(),
            ..base()
        })[..],
        [Wrong::Moisture(Bad::Forage(_))]
    ));
    assert!(matches!(
        wrong(Typed {
            rod: "hot".into(),
            lead: "soon".into(),
            ..base()
        })[..],
        [Wrong::Lead(_), Wrong::Rod(_)]
    ));
}
