//! Grass: what was logged, what was decided, and what nobody said.

use super::*;
use crate::animal::{Answer, Group, GroupId, Member, PaddockId};
use crate::day::{Serving, Source, Totals};
use crate::graze::intake::{OutFor, eaten};
use crate::graze::sward::Leaf;

impl Told {
    fn out(&mut self, id: &str, day: u64, hour: i64, hours: Option<i64>, muzzle: bool) {
        let body = self.turnout(day, hour, hours, muzzle);
        self.add(id, about(), self.at(day, hour), Known::Seen, &body);
    }

    fn turnout(&self, day: u64, hour: i64, hours: Option<i64>, muzzle: bool) -> Body {
        Body::Turnout(TurnoutV1 {
            paddock: Some(top()),
            muzzle,
            bring_in_by: None,
            came_in: hours.map(|hours| self.at(day, hour + hours)),
            job: None,
        })
    }

    /// Two hours a day from a day on.
    fn decided(&mut self, day: u64) {
        let body = Body::Grazing(GrazingV1 {
            paddock: Some(top()),
            from: self.first + Days::new(day),
            minutes: GrazingMinutes::new(120).unwrap(),
            muzzle: false,
            adapted_since: None,
            out: None,
            stopped: false,
        });
        self.add("grazing", about(), self.at(0, 1), Known::Seen, &body);
    }

    fn leaf(&mut self, day: u64) {
        let body = Body::Sward(SwardV1 {
            leaf: Some(Leaf::Ankle),
            seeding: Answer::No,
            heights_mm: Vec::new(),
            plate: None,
            note: None,
        });
        let at = self.at(day, 5);
        self.add("leaf", About::paddock(&top()), at, Known::Seen, &body);
    }

    fn grass_of(&self, day: u64, of: &Subject) -> Vec<Serving> {
        let mut week = self.week(7, of);
        let day = week.days.remove(usize::try_from(day).unwrap());
        day.servings.into_iter().filter(Serving::is_grass).collect()
    }

    /// What was answered to the job of turning out.
    fn said(&mut self, day: u64, answer: JobAnswer) {
        let text = format!(
            "turn_out/animal:bramble/{}/0.0",
            self.first + Days::new(day)
        );
        let body = Body::Job(JobV1 {
            job: JobKey::new(&text).unwrap(),
            answer,
            note: None,
            not_soaked: None,
        });
        let id = format!("said-{day}");
        self.add(&id, about(), self.at(day, 20), Known::Seen, &body);
    }

    fn weight(&self) -> Ends<BodyMass> {
        let records: Vec<&Record> = self.records.iter().collect();
        let id = AnimalId("bramble".to_owned());
        let now = self.at(0, 0);
        let gathered = gather(&records, &id, now, &self.case.zone, &Wish::default()).unwrap();
        let weight = &gathered.weights.last().unwrap().weight;
        Ends::new(weight.low, weight.value, weight.high)
    }
}

fn top() -> PaddockId {
    PaddockId("top".to_owned())
}

fn model(hours: i64, leaf: bool, muzzle: bool) -> OutFor {
    OutFor {
        kind: Kind::Pony,
        time: Span::hours(hours),
        weeks: Some(0.0),
        muzzle,
        leaf,
    }
}

fn kg(ends: Ends<DryMatter>) -> [f64; 3] {
    [ends.least.to_kg(), ends.likely.to_kg(), ends.most.to_kg()]
}

#[test]
fn a_turnout_is_grass_by_the_model_with_both_ends_and_never_seen() {
    let mut told = Told::issued();
    told.out("out", 0, 6, Some(3), false);
    let weight = told.weight();
    let [grass] = told.grass_of(0, &bramble()).try_into().unwrap();
    assert_eq!(grass.from, Source::Grass(Some(top())));
    assert_eq!(grass.known, HowKnown::Assumed);
    assert_eq!(grass.eaten(), Some(eaten(&model(3, false, false), weight)));
    let least = kg(grass.eaten().unwrap())[0];
    assert!(least.abs() < 1e-12, "nobody saw leaf there");
    told.leaf(0);
    told.out("muzzled", 1, 6, Some(3), true);
    let [grass] = told.grass_of(0, &bramble()).try_into().unwrap();
    assert_eq!(grass.eaten(), Some(eaten(&model(3, true, false), weight)));
    let [muzzled] = told.grass_of(1, &bramble()).try_into().unwrap();
    let (plain, muzzled) = (kg(grass.eaten().unwrap()), kg(muzzled.eaten().unwrap()));
    assert!(0.0 < muzzled[0] && muzzled[0] < plain[0] && muzzled[2] < plain[2]);
}

#[test]
fn grass_stands_apart_from_forage_and_in_what_was_eaten() {
    let mut told = Told::issued();
    told.as_planned(0);
    let before = told.week(1, &bramble()).totals();
    told.leaf(0);
    told.out("out", 0, 6, Some(3), false);
    let week = told.week(1, &bramble());
    let after = week.totals();
    assert_eq!(after.forage, before.forage);
    assert_eq!(after.feed, before.feed);
    assert_eq!(before.grass.dry, Ends::exactly(DryMatter::ZERO));
    let sum = before.eaten.dry.with(after.grass.dry, |a, b| a + b);
    for (a, b) in kg(sum).into_iter().zip(kg(after.eaten.dry)) {
        assert!((a - b).abs() < 1e-9);
    }
    assert_eq!(after.planned, before.planned, "no plan asked for it");
    assert!(!after.eaten.at_least && week.days[0].has_grass());
    let level = week.level(BodyMass::kg(372.0)).unwrap().level;
    assert!(level.least < level.likely && level.likely < level.most);
    assert!(before.offered_known.unwrap().assumed <= after.offered_known.unwrap().assumed);
}

#[test]
fn what_is_out_still_is_not_known_until_it_is_in() {
    let mut told = Told::issued();
    told.as_planned(0);
    told.out("out", 0, 6, None, false);
    let week = told.week(2, &bramble());
    let totals = Totals::of(&[&week.days[0]]);
    assert!(totals.grass.at_least && totals.eaten.at_least);
    assert_eq!(totals.grass.dry, Ends::exactly(DryMatter::ZERO));
    let after = Totals::of(&[&week.days[1]]);
    assert!(after.grass.at_least, "nor the day after");
}

#[test]
fn two_turnouts_of_a_day_are_no_less_than_one_and_no_more_than_two() {
    let mut told = Told::issued();
    told.leaf(0);
    told.out("first", 0, 5, Some(2), false);
    told.out("second", 0, 16, Some(2), false);
    let weight = told.weight();
    let both = told.grass_of(0, &bramble());
    let sum = Totals::of(&[&told.week(1, &bramble()).days[0]]).grass.dry;
    assert_eq!(both.len(), 2);
    let one = kg(eaten(&model(4, true, false), weight));
    let two = kg(eaten(&model(2, true, false), weight));
    let sum = kg(sum);
    assert!((sum[0] - one[0]).abs() < 1e-9 && (sum[1] - one[1]).abs() < 1e-9);
    assert!((sum[2] - 2.0 * two[2]).abs() < 1e-9 && one[2] < sum[2]);
}

#[test]
fn a_day_on_which_it_was_to_go_out_and_nobody_spoke_is_not_known() {
    let mut told = Told::issued();
    assert!(
        told.grass_of(0, &bramble()).is_empty(),
        "nobody decided anything"
    );
    let plan = told.week(7, &bramble()).totals().planned;
    told.decided(1);
    told.out("out", 2, 6, Some(1), false);
    told.said(3, JobAnswer::NotDone);
    told.said(4, JobAnswer::AsPlanned);
    told.said(5, JobAnswer::NotKnown);
    let of = |day| -> Vec<(Option<f64>, HowKnown)> {
        let grass = told.grass_of(day, &bramble());
        let most = |one: &Serving| one.offered.map(|dry| dry.most.to_kg());
        grass
            .iter()
            .map(|one| (most(one), one.how_offered()))
            .collect()
    };
    assert!(of(0).is_empty(), "before its day");
    assert_eq!(of(1), [(None, HowKnown::NotKnown)]);
    assert!(matches!(of(2)[..], [(Some(most), HowKnown::Assumed)] if 0.0 < most));
    assert_eq!(of(3), [(Some(0.0), HowKnown::Seen)]);
    let weight = told.weight();
    let asked = eaten(&model(2, false, false), weight).most.to_kg();
    assert_eq!(of(4), [(Some(asked), HowKnown::Assumed)]);
    assert_eq!(of(5), [(None, HowKnown::NotKnown)]);
    // What was decided is what was planned, once a day, so that a day nobody spoke of weighs something.
    let planned: Vec<bool> = (1..6)
        .map(|day| told.grass_of(day, &bramble())[0].planned.is_some())
        .collect();
    assert_eq!(planned, [true; 5]);
    assert_eq!(
        told.week(7, &bramble()).totals().planned,
        plan,
        "no hay hides in it"
    );
    // Today may still bring it.
    let records: Vec<&Record> = told.records.iter().collect();
    let today = told.first + Days::new(6);
    let now = told.at(6, 9);
    let ledger = ledger_of(&records, &bramble(), (today, today), now, &told.case.zone);
    assert!(!ledger.days[0].has_grass());
}

#[test]
fn of_a_groups_turnout_each_eats_by_its_own_weight_and_the_group_has_the_sum() {
    let mut told = Told::issued();
    let group = |members: &[&str]| {
        Body::Group(
            GroupV1::of(&Group {
                id: GroupId("both".to_owned()),
                name: "Both".to_owned(),
                members: members
                    .iter()
                    .map(|id| Member {
                        animal: AnimalId((*id).to_owned()),
                        from: told.first,
                        to: None,
                    })
                    .collect(),
            })
            .unwrap(),
        )
    };
    let (alone, beside) = (group(&["bramble"]), group(&["bramble", "nobody"]));
    let about = About::group(&GroupId("both".to_owned()));
    told.add("both", about.clone(), told.at(0, 1), Known::Seen, &alone);
    let body = told.turnout(0, 6, Some(3), false);
    told.add("out", about, told.at(0, 6), Known::Seen, &body);
    let both = Subject::Group(GroupId("both".to_owned()));
    let own = told.grass_of(0, &bramble());
    assert_eq!(own.len(), 1, "not shared out of the group's as well");
    assert!(own[0].offered.is_some());
    assert_eq!(told.grass_of(0, &both)[0].offered, own[0].offered);
    // Beside one whose weight nobody knows its own grass is known and the group's is not.
    let place = told
        .records
        .iter()
        .position(|record| record.id.0 == "both")
        .unwrap();
    told.records[place].body = beside.to_value().unwrap();
    assert_eq!(told.grass_of(0, &bramble())[0].offered, own[0].offered);
    assert_eq!(told.grass_of(0, &both)[0].offered, None);
}
