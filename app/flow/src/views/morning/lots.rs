//! The lots: what is left, one opened in place of another, two compared, a night without one.

use super::*;
use crate::forms::delivery::{Per, Typed};
use crate::forms::left_of_lot::{In, count};
use crate::forms::open_lot::{Refused as NotOpened, open};
use crate::views::changeover::{changeovers, others};
use crate::views::compare::pair;
use crate::views::stock::{Since, Stock, Unknown, rows, stock as stock_of, storage};
use crate::views::tonight::night;
use crate::words::{LotsWords, StockWords};
use tussock_core::assess::{Reading, ScaleInstrument, ScaleWeight};
use tussock_core::forage::{Comparison, NoStock, NotInPlace, Side, UseFrom};
use tussock_core::log::bodies::WeightV1;
use tussock_core::units::{BodyMass, DryMatter};

fn lane() -> LotId {
    LotId("lane-field".into())
}

fn lot(id: &str) -> LotId {
    LotId(id.into())
}

impl Yard {
    fn change_lot(&mut self, now: Instant, id: &LotId, change: impl FnOnce(&mut LotV1)) {
        let mut body = crate::views::changeover::body(&self.shelf, id).unwrap();
        change(&mut body);
        let act = Act::Change {
            id: RecordId(id.0.clone()),
            body: Body::Lot(body),
            at: None,
        };
        self.act(now, &act);
    }

    fn came(&mut self, now: Instant, id: &LotId, typed: &Typed) {
        let today = self.today(now).day;
        self.change_lot(now, id, |body| typed.into_lot(body, today).unwrap());
    }

    fn add_lot(&mut self, now: Instant, id: &str, name: &str, class: ForageClass, dry: &str) {
        use crate::forms::hay::Typed;
        let typed = Typed {
            name: name.into(),
            class: Some(Some(class)),
            dry: dry.into(),
            basis: None,
            fed: tussock_core::forage::Fed::Dry,
            values: Vec::new(),
            came: crate::forms::delivery::Typed::default(),
        };
        let act = typed.act(&lot(id), None, self.today(now).day).unwrap();
        self.act(now, &act);
    }

    fn stock(&self, now: Instant, id: &LotId) -> Stock {
        stock_of(&self.shelf, &self.today(now), id, &zone()).unwrap()
    }

    fn left(&self, now: Instant) -> f64 {
        kg(self.stock(now, &lane()).left.unwrap().mass.likely)
    }
}

fn forty_bales() -> Typed {
    Typed {
        unit: Some(In::Bales),
        bought: "40".into(),
        bale_weights: "18 20 22".into(),
        price: "6.50".into(),
        per: Some(Per::Bale),
        currency: "gbp".into(),
        ..Typed::default()
    }
}

#[test]
fn what_is_weighed_out_goes_off_once_whether_it_is_hung_or_not() {
    let mut yard = bramble();
    let now = at(5, "05:40:00");
    assert_eq!(
        yard.stock(now, &lane()).left,
        Err(Unknown::Stock(NoStock::NothingSaid))
    );
    yard.came(now, &lane(), &forty_bales());
    assert_eq!(yard.left(now), 800.0);
    yard.weigh(now, "4.35");
    yard.weigh(now, "4.35");
    assert_eq!(yard.left(now), 792.8);
    // Hanging what was filled takes nothing more off.
    let later = at(5, "18:05:00");
    yard.tick(later, JobKind::HangNet);
    yard.tick(later, JobKind::HangNet);
    assert_eq!(yard.left(later), 792.8);
    // A net that nobody filled goes off when it is hung.
    let today = yard.today(later);
    let mut jobs = today.round.jobs.iter();
    let next = jobs.find(|job| job.kind == JobKind::HangNet).unwrap();
    let act = crate::forms::tub::hung(next, None, Known::Seen, &yard.id()).unwrap();
    yard.act(later, &act);
    assert_eq!(yard.left(later), 789.2);
    let stock = yard.stock(later, &lane());
    assert_eq!(stock.since, Some(Since::Bought));
    let used = stock.a_day.unwrap();
    assert_eq!((kg(used.a_day), used.from), (14.4, UseFrom::Plans));
    assert_eq!(stock.eaters.len(), 1);
    assert_eq!(kg(stock.eaters[0].soaked), 7.2);
    let lasting = stock.lasting.clone().unwrap();
    assert!(lasting.days.least < lasting.days.likely);
    let words = English::default();
    assert_eq!(words.days_left(&stock).as_deref(), Some("54 days"));
    // 6.50 for 20 kg with 88 % dry matter, half of it soaked for an hour, 2 to 5 % wasted.
    let cost = stock.cost.unwrap();
    assert!((cost.per_kg_dry.likely - 39.4).abs() < 0.2, "{cost:?}");
    assert!(cost.per_kg_dry.in_order());
}

#[test]
fn a_count_starts_anew_and_what_is_not_known_is_not_nothing() {
    let mut yard = bramble();
    let now = at(5, "05:40:00");
    let words = English::default();
    let row = |yard: &Yard, now| rows(&yard.shelf, &yard.today(now), &zone()).remove(0);
    assert!(
        words
            .stock_line(&row(&yard, now))
            .starts_with("stock not known, ")
    );
    let ten = count(&lane(), Some(In::Bales), "10", "count").unwrap();
    yard.act(now, &ten);
    assert_eq!(
        yard.stock(now, &lane()).left,
        Err(Unknown::Stock(NoStock::BaleNotWeighed { bales: 10.0 }))
    );
    let only_weights = Typed {
        bale_weights: "18 20 22".into(),
        ..Typed::default()
    };
    yard.came(now, &lane(), &only_weights);
    assert_eq!(yard.left(now), 200.0);
    yard.weigh(at(5, "05:50:00"), "4.35");
    assert_eq!(yard.left(at(5, "05:50:00")), 196.4);
    let less = count(&lane(), Some(In::Weight), "150", "again").unwrap();
    yard.act(at(5, "06:00:00"), &less);
    assert_eq!(yard.left(at(5, "06:00:00")), 150.0);
    let line = words.stock_line(&row(&yard, at(5, "06:00:00")));
    assert!(line.starts_with("150 kg, order by "), "{line}");
    assert!(line.contains("sugar not proven"), "{line}");
    // Days on which a plan fed it and nothing was written down ask for a count.
    let later = at(8, "06:00:00");
    assert_eq!(yard.stock(later, &lane()).not_logged, 2);
    assert_eq!(words.count_because(&yard.stock(later, &lane())).len(), 1);
}

#[test]
fn another_lot_is_opened_with_one_tap_and_holds_as_much_dry_matter() {
    let mut yard = bramble();
    let now = at(5, "05:40:00");
    yard.add_lot(now, "hill", "Hill", ForageClass::Meadow, "80");
    yard.add_lot(now, "bags", "Bags", ForageClass::Haylage, "");
    let today = yard.today(now);
    let plan = yard.shelf.get("plan").unwrap().clone();
    let offered = others(&yard.shelf, &today, "bramble", &lane());
    assert_eq!(offered.len(), 2);
    assert_eq!(offered[1].may, Ok(()));
    assert!(offered[0].may.is_err());
    assert!(matches!(
        open(&yard.shelf, &lane(), &lane(), &lot("bags"), today.day),
        Err(NotOpened::NewPlan(NotInPlace::OtherKind { .. }))
    ));
    // One net was filled from the old lot; it stays what it is.
    yard.weigh(now, "4.35");
    let act = open(&yard.shelf, &lane(), &lane(), &lot("hill"), today.day).unwrap();
    yard.act(at(5, "05:45:00"), &act);
    let day = yard.nets(at(5, "05:45:00"));
    assert!(day.nets[0].lot == lane() && day.nets[0].state == NetState::Weighed(AsFed::kg(3.6)));
    let rest = &day.nets[1..];
    assert!(rest.iter().all(|net| net.lot == lot("hill")));
    // 3.60 kg at 88 % (85 at the least) are 3.96 kg at 80 %: up to a step of the scale.
    assert!(rest.iter().all(|net| kg(net.hay) == 4.0));
    assert_eq!(yard.shelf.get("plan").unwrap(), &plan);
    let standing = changeovers(&yard.shelf, &yard.today(at(5, "05:45:00")), "bramble");
    let said = English::default().in_place_of(&standing[0]).sentence;
    assert_eq!(
        said,
        "From Hill since Tue 5 May, in place of Lane field: change over two to three weeks (common practice), review the plan"
    );
    // The job on the round names the new lot too.
    let jobs = yard.today(at(5, "07:25:00"));
    let hang = jobs
        .round
        .jobs
        .iter()
        .find(|job| job.kind == JobKind::HangNet);
    assert_eq!(hang.unwrap().lot, Some(lot("hill")));
    let back = open(&yard.shelf, &lane(), &lot("hill"), &lane(), today.day).unwrap();
    yard.act(at(5, "05:50:00"), &back);
    let day = yard.nets(at(5, "05:50:00"));
    assert!(
        day.nets
            .iter()
            .all(|net| net.lot == lane() && kg(net.hay) == 3.6)
    );
    assert!(matches!(day.nets[0].state, NetState::Weighed(_)));
}

#[test]
fn a_night_without_hay_says_what_stands_in_for_it() {
    let mut yard = bramble();
    let now = at(5, "05:40:00");
    let seen = |yard: &Yard, now| night(&yard.shelf, &yard.today(now), &lane(), &zone()).unwrap();
    assert_eq!(seen(&yard, now).animals[0].ways, None);
    let weight = Reading::Scale(ScaleWeight {
        mass: BodyMass::kg(300.0),
        instrument: ScaleInstrument::AnimalScale,
    });
    let body = Body::Weight(WeightV1::of(&weight).unwrap());
    let about = Subject::animal(&AnimalId("bramble".into()));
    yard.add(at(4, "21:00:00"), "weight", about, body);
    let first = seen(&yard, now);
    assert!(first.missing_now);
    let ways = first.animals[0].ways.clone().unwrap();
    // 14.4 kg at 88 %, half of it soaked.
    assert!(DryMatter::kg(11.5) < ways.missing && ways.missing < DryMatter::kg(12.67));
    assert!(DryMatter::ZERO < ways.pulp.still_missing);
    for _ in 0..4 {
        yard.weigh(now, "4.35");
    }
    let filled = seen(&yard, now);
    assert!(!filled.missing_now);
    let usual = filled.animals[0].ways.clone().unwrap();
    // The two dry nets of the evening.
    assert!((usual.missing.to_kg() - 7.2 * 0.88).abs() < 1e-6);
    let words = English::default();
    let said = words.night_ways(&filled.animals[0], &usual);
    assert_eq!(said.len(), 3);
    assert!(said[1].1.contains("in 4 feeds"), "{said:?}");
    assert!(said[0].2.contains("not proven"), "{said:?}");
}

#[test]
fn two_lots_are_compared_sugar_first() {
    let mut yard = bramble();
    let now = at(5, "05:40:00");
    yard.came(now, &lane(), &forty_bales());
    yard.add_lot(now, "oats", "Oat hay", ForageClass::Oat, "");
    let cheap = Typed {
        bale_said: "20".into(),
        price: "2".into(),
        ..forty_bales()
    };
    yard.came(now, &lot("oats"), &cheap);
    let found = pair(
        &yard.shelf,
        &yard.today(now),
        &lot("oats"),
        &lane(),
        &zone(),
    )
    .unwrap();
    assert!(matches!(
        found.outcome,
        Ok(Comparison::BySugar {
            better: Side::Second,
            ..
        })
    ));
    let said = English::default().compared(&found);
    assert_eq!(said.sentence, "Lane field, by its sugar");
    let euros = Typed {
        currency: "EUR".into(),
        ..cheap
    };
    yard.came(now, &lot("oats"), &euros);
    let found = pair(
        &yard.shelf,
        &yard.today(now),
        &lot("oats"),
        &lane(),
        &zone(),
    )
    .unwrap();
    assert!(found.outcome.is_err());
    let words = English::default();
    assert!(words.compared(&found).why.unwrap().contains("EUR"));
    assert_eq!(
        pair(&yard.shelf, &yard.today(now), &lane(), &lane(), &zone()),
        None
    );
}

#[test]
fn new_hay_is_watched_and_what_is_stored_badly_is_a_caution() {
    let mut yard = bramble();
    let now = at(5, "05:40:00");
    let typed = Typed {
        moisture: "19".into(),
        bought_on: "1.5.2026".into(),
        stored: vec![tussock_core::forage::StoredBadly::OnGround],
        rod: "55".into(),
        ..forty_bales()
    };
    yard.came(now, &lane(), &typed);
    let body = crate::views::changeover::body(&yard.shelf, &lane()).unwrap();
    let (lot, _) = body.lot(&RecordId("lane-field".into())).unwrap();
    let words = English::default();
    let said: Vec<String> = storage(&lot, yard.today(now).day)
        .iter()
        .map(|note| words.storage_note(note).sentence)
        .collect();
    assert_eq!(
        said,
        [
            "55 °C in the stack on Tue 5 May: measure it every day",
            "Moisture 19 %, too wet: look for heat every day, and for mould before feeding",
            "Look for heat in the stack until Fri 22 May",
            "It stands on the ground: put it on pallets or poles",
        ]
    );
}
