//! The course of a weight from the records of a case and what is written down after it.

use super::*;
use crate::animal::{LotId, VetPermit};
use crate::assess::{Equation, ScaleInstrument, WeightMethod};
use crate::forage::ForageClass;
use crate::log::at_grass::tests::turnout;
use crate::log::bodies::base::{Distance, Millimetres};
use crate::log::bodies::{LotV1, TakeV1, VetWordV1};
use crate::log::how_it_goes::tests::{Yard, bramble};
use crate::log::{Due, Wish, gather};
use crate::round::JobKind;
use crate::safety::{Refusal, VetUrgency};
use crate::units::{BodyMass, Length};

fn scale(kg: f64) -> Body {
    let reading = Reading::Scale(ScaleWeight {
        mass: BodyMass::kg(kg),
        instrument: ScaleInstrument::AnimalScale,
    });
    Body::Weight(WeightV1::of(&reading).unwrap())
}

fn girth(cm: f64) -> WeightV1 {
    let tape = Tape {
        heart_girth: Length::cm(cm),
        length: None,
        height: None,
        neck: None,
        umbilical_girth: None,
    };
    WeightV1::of(&Reading::Tape(tape)).unwrap()
}

/// Without what was weighed before.
fn unweighed() -> Yard {
    let mut yard = Yard::new();
    yard.records
        .retain(|record| !matches!(Body::read(record), Ok(Body::Weight(_))));
    yard
}

fn ask<T>(yard: &Yard, days: i64, ask: impl FnOnce(Course, &Animal) -> T) -> T {
    let now = yard.later(days) + crate::units::Span::hours(6);
    let mut entries: Vec<Entry<'_>> = yard
        .records
        .iter()
        .filter(|record| record.at <= now)
        .map(|record| Entry {
            record,
            body: Body::read(record).unwrap(),
        })
        .collect();
    entries.sort_by_key(|entry| (entry.record.at, entry.record.stamp));
    let holding = Holding::of(&entries);
    course_of(&entries, &bramble(), &holding, &yard.case.zone, ask).unwrap()
}

#[test]
fn a_girth_that_was_taken_three_times_is_so_many_readings_without_the_one_left_out() {
    let mut yard = unweighed();
    let take = |mm: i64, left_out| TakeV1 {
        measure: Measure::HeartGirth,
        reading: Distance {
            mm: Millimetres::new(mm).unwrap(),
            typed: None,
        },
        left_out,
    };
    let mut body = girth(138.5);
    let ReadingV1::Tape { tape } = &mut body.reading else {
        panic!("no tape")
    };
    tape.takes = Some(vec![
        take(1_380, None),
        take(1_450, Some(true)),
        take(1_390, None),
    ]);
    let id = yard.add(1, &Body::Weight(body));
    yard.add(8, &Body::Weight(girth(138.0)));
    let weighings = ask(&yard, 9, |course, _| course.weighings);
    let days: Vec<LocalDate> = weighings.iter().map(|one| one.day).collect();
    assert_eq!(days, [yard.day(1), yard.day(1), yard.day(8)]);
    assert!(weighings[..2].iter().all(|one| one.record == id));
    assert!(weighings[0].weight.value < weighings[1].weight.value);
}

#[test]
fn a_weekly_girth_goes_on_with_the_length_of_the_tape_before_it() {
    let mut yard = unweighed();
    let whole = Tape {
        heart_girth: Length::cm(140.0),
        length: Some((Length::cm(110.0), crate::assess::LengthKind::Wrap)),
        height: None,
        neck: None,
        umbilical_girth: None,
    };
    let reading = Reading::Tape(whole);
    yard.add(0, &Body::Weight(WeightV1::of(&reading).unwrap()));
    yard.add(7, &Body::Weight(girth(139.0)));
    let weighings = ask(&yard, 8, |course, _| course.weighings);
    assert_eq!(weighings[0].weight.method, weighings[1].weight.method);
    assert!(!matches!(
        weighings[1].weight.method,
        WeightMethod::Tape(Equation::GirthAlone)
    ));
}

#[test]
fn plans_say_what_fills_the_gut_otherwise_and_when_amounts_change() {
    let mut yard = unweighed();
    yard.issue(0, 1.5);
    yard.issue(14, 1.5);
    yard.issue(28, 1.25);
    let found = ask(&yard, 40, |course, _| course.changes);
    let first = DatedChange {
        day: yard.day(0),
        change: Change::GutFill(GutFill::FirstPlan),
    };
    let less = DatedChange {
        day: yard.day(28),
        change: Change::Amounts,
    };
    assert_eq!(found, [first, less]);
    // The same lot is straw all at once, and nothing is soaked any more.
    let lot = LotId("straw".to_owned());
    let straw = LotV1::of_class("Barley straw", ForageClass::BarleyStraw).unwrap();
    let mut record = yard.records[0].clone();
    record.id = RecordId(lot.0.clone());
    record.kind = crate::log::Kind::Lot;
    record.body = Body::Lot(straw).to_value().unwrap();
    yard.records.push(record);
    yard.issue(42, 1.25);
    let last = yard.records.last_mut().unwrap();
    let Ok(Body::Plan(mut plan)) = Body::read(last) else {
        panic!("no plan")
    };
    let soaked = plan.amounts.iter().any(|amount| amount.soaked);
    for amount in &mut plan.amounts {
        if amount.lot.is_some() {
            amount.lot = Some(lot.clone());
            amount.soaked = !soaked;
        }
    }
    last.body = Body::Plan(plan).to_value().unwrap();
    let found = ask(&yard, 43, |course, _| course.changes);
    let of_day: Vec<Change> = found
        .iter()
        .filter(|change| change.day == yard.day(42))
        .map(|change| change.change)
        .collect();
    assert_eq!(
        of_day,
        [
            Change::GutFill(GutFill::Soaking),
            Change::GutFill(GutFill::Straw)
        ]
    );
}

#[test]
fn box_rest_begins_and_ends_on_the_days_it_was_said() {
    let mut yard = unweighed();
    yard.change(3, |animal| animal.health.flags.push(VetFlag::BoxRest));
    yard.change(10, |animal| animal.note = Some("Rain.".to_owned()));
    yard.change(12, |animal| {
        animal.health.flags.retain(|flag| *flag != VetFlag::BoxRest);
    });
    let found = ask(&yard, 13, |course, _| course.changes);
    let rest: Vec<LocalDate> = found
        .iter()
        .filter(|change| change.change == Change::GutFill(GutFill::BoxRest))
        .map(|change| change.day)
        .collect();
    assert_eq!(rest, [yard.day(3), yard.day(12)]);
}

#[test]
fn a_pony_that_fell_four_percent_is_measured_again_and_then_for_the_vet() {
    let mut yard = unweighed();
    yard.issue(0, 1.5);
    for (day, kg) in [(7, 300.0), (14, 299.0), (21, 298.0), (28, 286.0)] {
        yard.add(day, &scale(kg));
    }
    let due = |yard: &Yard, days: i64| {
        let records: Vec<&Record> = yard.records.iter().collect();
        let now = yard.later(days) + crate::units::Span::hours(1);
        Due::of(&records, now, &yard.case.zone).round(now, &yard.case.zone)
    };
    let again = |round: &crate::round::Round| {
        let jobs = round.jobs.iter();
        jobs.filter(|job| job.kind == JobKind::Weigh && job.again)
            .count()
    };
    let stopped = |round: &crate::round::Round| {
        let jobs = round.jobs.iter().filter(|job| job.kind == JobKind::Stop);
        jobs.flat_map(|job| job.stops.clone()).collect::<Vec<_>>()
    };
    // One reading rings nobody: measure again now, today.
    let once = due(&yard, 28);
    assert_eq!(again(&once), 1);
    assert!(stopped(&once).is_empty());
    yard.add(28, &scale(286.5));
    let twice = due(&yard, 28);
    assert_eq!(again(&twice), 0);
    let stops = stopped(&twice);
    assert!(
        matches!(
            stops.as_slice(),
            [(Refusal::LosesTooFast(_), VetUrgency::Today)]
        ),
        "{stops:?}"
    );
    // It has no plan but hay at its starting level, and tomorrow it still stands.
    let gathered = |yard: &Yard, days: i64| {
        let records: Vec<&Record> = yard.records.iter().collect();
        let now = yard.later(days) + crate::units::Span::hours(1);
        gather(&records, &bramble(), now, &yard.case.zone, &Wish::default()).unwrap()
    };
    assert_eq!(gathered(&yard, 29).stops().len(), 1);
    // The vet's word takes it away; what is weighed after it may bring it back.
    let on = yard.day(29);
    yard.add(
        29,
        &Body::VetWord(VetWordV1 {
            animal: bramble(),
            permit: VetPermit::LowestLevel(crate::units::PartOfBody::percent(1.5)),
            vet: crate::log::Name::new("The vet").unwrap(),
            practice: String::new(),
            given: on,
            how: String::new(),
            expires: on + chrono::TimeDelta::days(56),
        }),
    );
    assert!(gathered(&yard, 30).stops().is_empty());
    for kg in [272.0, 272.5] {
        yard.add(35, &scale(kg));
    }
    assert_eq!(gathered(&yard, 36).stops().len(), 1);
}

#[test]
fn nobody_weighed_it_and_there_is_no_trend() {
    let yard = unweighed();
    let records: Vec<&Record> = yard.records.iter().collect();
    let found = trend_of(&records, &bramble(), yard.later(1), &yard.case.zone);
    assert_eq!(found.err(), Some(ProgressError::NoWeighings));
}

/// What the turnouts of so many minutes a day, day by day from the first, change by the day after the last.
fn of_turnouts(minutes: &[i64]) -> Vec<(i64, GutFill)> {
    let mut yard = unweighed();
    for (days, minutes) in (0..).zip(minutes) {
        if 0 < *minutes {
            let body = turnout(yard.later(days), Some(*minutes));
            yard.add(days, &Body::Turnout(body));
        }
    }
    let end = i64::try_from(minutes.len()).unwrap();
    yard.add(end, &scale(380.0));
    let changes = ask(&yard, end, |course, _| course.changes);
    let grass = changes.iter().filter_map(|change| match change.change {
        Change::GutFill(fill) => Some(((change.day - yard.day(0)).num_days(), fill)),
        Change::Amounts => None,
    });
    grass.collect()
}

#[test]
fn a_week_of_long_turnout_is_a_change_to_grass_and_its_end_one_to_hay() {
    // Short ones change nothing, nor does one long day.
    assert_eq!(of_turnouts(&[120; 30]), []);
    assert_eq!(of_turnouts(&[60, 60, 600, 60, 60, 60, 60, 60]), []);
    // Onto the grass on the first long day, off it on the day after the last.
    let mut days = vec![60; 10];
    days.extend([300; 14]);
    days.extend([0; 14]);
    assert_eq!(
        of_turnouts(&days),
        [(10, GutFill::HayToGrass), (24, GutFill::GrassToHay)]
    );
    // While a day runs it ends nothing.
    assert_eq!(of_turnouts(&[200; 12]), [(0, GutFill::HayToGrass)]);
}

#[test]
fn turnout_about_the_line_is_no_change_every_other_day() {
    let minutes: Vec<i64> = (0..40)
        .map(|day| if day % 4 < 2 { 200 } else { 150 })
        .collect();
    let found = of_turnouts(&minutes);
    let apart = found.windows(2).all(|two| 7 <= two[1].0 - two[0].0 + 6);
    assert!(found.len() < 6 && apart, "{found:?}");
}

#[test]
fn the_trend_breaks_where_grass_began_and_makes_no_rate_of_it() {
    let mut yard = unweighed();
    // Level on hay, then 9 kg more within a week of grass, and level again.
    for week in 0..12 {
        let kg = if week < 6 { 371.0 } else { 380.0 };
        yard.add(7 * week, &scale(kg));
        yard.add(7 * week, &scale(kg));
    }
    let plain = ask(&yard, 80, |course, _| course.trend(yard.day(80)).unwrap());
    for days in 38..78 {
        let body = turnout(yard.later(days), Some(300));
        yard.add(days, &Body::Turnout(body));
    }
    let broken = ask(&yard, 80, |course, _| course.trend(yard.day(80)).unwrap());
    let rate = |trend: &Trend| trend.rate.as_ref().unwrap().percent.likely.abs();
    assert!(
        rate(&broken) < rate(&plain),
        "{:?} {:?}",
        broken.rate,
        plain.rate
    );
}
