use super::*;
use crate::animal::Answer as Said;
use crate::graze::sward::Leaf;
use crate::log::bodies::GrazingMinutes;
use crate::log::bodies::base::Millimetres;
use crate::log::{
    Case, DeviceId, Known, Origin, Record, Stamp, Subject as About, gather, gather_group,
};
use crate::plan::{GrassLine, GroupGrass};
use crate::sources::RecordId;
use crate::units::{Instant, Span};

/// Moss of the repository's cases, whom a test says to be clear, with what was said of grass.
struct Field {
    case: Case,
    records: Vec<Record>,
}

fn moss() -> AnimalId {
    AnimalId("moss".to_owned())
}

fn top() -> PaddockId {
    PaddockId("top-field".to_owned())
}

impl Field {
    fn of(name: &str) -> Self {
        let text = std::fs::read_to_string(format!(
            "{}/examples/cases/{name}.json",
            env!("CARGO_MANIFEST_DIR")
        ))
        .unwrap();
        let case = Case::read(&text).unwrap();
        Self {
            records: case.log.current().cloned().collect(),
            case,
        }
    }

    fn add(&mut self, subject: About, at: Instant, body: &Body) {
        let stamp = Stamp::tick(None, None, at, DeviceId::of_number(9)).unwrap();
        let origin = Origin {
            yard: self.records.first().unwrap().yard.clone(),
            subject,
            at,
            offset_min: 0,
            zone: "UTC".to_owned(),
            by: None,
            known: Known::Seen,
        };
        let id = RecordId(format!("grass-{}", self.records.len()));
        self.records
            .push(Record::new(id, origin, stamp, body).unwrap());
    }

    fn decide(&mut self, subject: About, minutes: i64, days_ago: u64) {
        let today = self.case.zone.to_local(self.case.now).date;
        let from = today - chrono::Days::new(days_ago);
        let body = Body::Grazing(GrazingV1 {
            paddock: Some(top()),
            from,
            minutes: GrazingMinutes::new(minutes).unwrap(),
            muzzle: true,
            adapted_since: None,
            out: None,
            stopped: minutes == 0,
        });
        let at = self.case.now - Span::hours(i64::try_from(days_ago).unwrap() * 24 + 1);
        self.add(subject, at, &body);
    }

    fn see(&mut self, leaf: Leaf, days_ago: i64) {
        let body = Body::Sward(sward(Some(leaf), &[]));
        let at = self.case.now - Span::hours(days_ago * 24);
        self.add(About::paddock(&top()), at, &body);
    }

    fn grazing(&self, animal: &AnimalId) -> Option<Grazing> {
        let records: Vec<&Record> = self.records.iter().collect();
        let (now, zone) = (self.case.now, &self.case.zone);
        gather(&records, animal, now, zone, &self.case.wish)
            .unwrap()
            .grazing
    }
}

fn sward(leaf: Option<Leaf>, heights: &[i64]) -> SwardV1 {
    SwardV1 {
        leaf,
        seeding: Said::No,
        heights_mm: heights
            .iter()
            .map(|mm| Millimetres::new(*mm).unwrap())
            .collect(),
        plate: None,
        note: None,
    }
}

#[test]
fn an_animal_goes_out_by_its_own_decision_else_by_its_groups() {
    let mut field = Field::of("two-cobs-and-a-shetland");
    assert_eq!(field.grazing(&moss()), None);
    let group = crate::animal::GroupId("top-field".to_owned());
    field.decide(About::group(&group), 120, 21);
    let out = field.grazing(&moss()).unwrap();
    assert_eq!(out.time, Span::hours(2));
    assert!((out.weeks.unwrap() - 3.0).abs() < 1e-12);
    field.decide(About::animal(&moss()), 45, 0);
    assert_eq!(field.grazing(&moss()).unwrap().time, Span::minutes(45));
    // Its own says that it stays in: the group's does not bring it out.
    field.decide(About::animal(&moss()), 0, 0);
    assert_eq!(field.grazing(&moss()), None);
    let bramble = AnimalId("bramble".to_owned());
    assert_eq!(field.grazing(&bramble).unwrap().time, Span::hours(2));
}

#[test]
fn leaf_that_nobody_looked_at_these_days_is_none() {
    let mut field = Field::of("two-cobs-and-a-shetland");
    field.decide(About::animal(&moss()), 60, 1);
    assert!(!field.grazing(&moss()).unwrap().leaf);
    field.see(Leaf::AboveAnkle, 4);
    assert!(!field.grazing(&moss()).unwrap().leaf);
    field.see(Leaf::Ankle, 2);
    assert!(field.grazing(&moss()).unwrap().leaf);
    field.see(Leaf::BelowAnkle, 0);
    assert!(!field.grazing(&moss()).unwrap().leaf);
}

#[test]
fn who_says_only_that_it_is_in_seed_says_nothing_of_the_leaf() {
    let mut field = Field::of("two-cobs-and-a-shetland");
    field.decide(About::animal(&moss()), 60, 1);
    field.see(Leaf::Ankle, 1);
    let seed = Body::Sward(sward(None, &[]));
    field.add(About::paddock(&top()), field.case.now, &seed);
    assert!(field.grazing(&moss()).unwrap().leaf);
}

#[test]
fn leaf_under_five_centimetres_is_no_forage_whatever_the_boot_says() {
    assert!(sward(None, &[40, 60, 55]).has_leaf());
    assert!(!sward(None, &[40, 50, 55]).has_leaf());
    assert!(!sward(Some(Leaf::Ankle), &[30, 40]).has_leaf());
    assert!(!sward(None, &[]).has_leaf());
}

#[test]
fn what_was_decided_is_counted_in_the_plan() {
    let mut field = Field::of("two-cobs-and-a-shetland");
    field.decide(About::animal(&moss()), 60, 1);
    let records: Vec<&Record> = field.records.iter().collect();
    let (now, zone) = (field.case.now, &field.case.zone);
    let gathered = gather(&records, &moss(), now, zone, &field.case.wish).unwrap();
    let draft = gathered.draft().unwrap();
    let GrassLine::Counted(day) = draft.grass else {
        panic!("{:?}", draft.grass)
    };
    assert_eq!(day.room.asked, Span::hours(1));
}

#[test]
fn a_decision_that_is_not_written_down_asks_for_the_same_as_one_that_is() {
    let mut field = Field::of("two-cobs-and-a-shetland");
    field.see(Leaf::Ankle, 1);
    field.decide(About::animal(&moss()), 45, 14);
    let records: Vec<&Record> = field.records.iter().collect();
    let body = records.iter().rev().find_map(|r| match Body::read(r) {
        Ok(Body::Grazing(body)) => Some(body),
        _ => None,
    });
    let asked = grazing_by(&records, &body.unwrap(), field.case.now, &field.case.zone);
    assert_eq!(Some(asked), field.grazing(&moss()));
}

/// The grass of the group in the plan for all.
fn grass_of_all(field: &Field) -> GroupGrass {
    let records: Vec<&Record> = field.records.iter().collect();
    let group = records.iter().find_map(|record| match Body::read(record) {
        Ok(Body::Group(body)) => Some(body.group(&record.id)),
        _ => None,
    });
    let (now, zone) = (field.case.now, &field.case.zone);
    let gathered = gather_group(&records, &group.unwrap(), now, zone, &field.case.wish);
    gathered.draft().unwrap().grass
}

#[test]
fn a_group_is_out_as_long_as_the_one_that_may_be_out_least() {
    let mut field = Field::of("two-cobs-and-a-shetland");
    let group = crate::animal::GroupId("top-field".to_owned());
    field.decide(About::group(&group), 120, 21);
    // Their hay is not proven, so the most at risk of them has no room, and all stay in.
    let GroupGrass::Counted(day) = grass_of_all(&field) else {
        panic!("decided for all")
    };
    assert_eq!((day.time, day.hay_less.to_kg()), (Span::ZERO, 0.0));
    assert!(day.set_by.is_some());
}

#[test]
fn where_one_of_a_group_stays_in_by_its_own_grass_is_not_counted_for_all() {
    let mut field = Field::of("two-cobs-and-a-shetland");
    let group = crate::animal::GroupId("top-field".to_owned());
    field.decide(About::group(&group), 120, 21);
    field.decide(About::animal(&moss()), 0, 0);
    assert!(!matches!(grass_of_all(&field), GroupGrass::Counted(_)));
}
