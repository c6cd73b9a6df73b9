//! The weight of an invented pony, week by week.

use super::*;
use crate::views::test_yard::{Entry, add, animal, at, shelf_of, zone};
use crate::words::{English, WeightWords};
use tussock_core::assess::{ConditionScale, Reading, ScaleInstrument, ScaleWeight, Tape};
use tussock_core::log::Body;
use tussock_core::log::bodies::base::Tenths;
use tussock_core::log::bodies::{ConditionTakenV1, ConditionV1, SiteScoreV1, WeightV1};
use tussock_core::units::Length;

fn moss() -> AnimalId {
    AnimalId("moss".into())
}

fn scale(kg: f64) -> Body {
    let reading = Reading::Scale(ScaleWeight {
        mass: BodyMass::kg(kg),
        instrument: ScaleInstrument::AnimalScale,
    });
    Body::Weight(WeightV1::of(&reading).unwrap())
}

fn tape(cm: f64) -> Body {
    let reading = Reading::Tape(Tape {
        heart_girth: Length::cm(cm),
        length: None,
        height: None,
        neck: None,
        umbilical_girth: None,
    });
    Body::Weight(WeightV1::of(&reading).unwrap())
}

fn seven() -> Body {
    let sites = ConditionScale::NineStep
        .sites()
        .iter()
        .map(|site| SiteScoreV1 {
            site: *site,
            tenths: Tenths::new(70).unwrap(),
        });
    Body::Condition(ConditionV1 {
        taken: ConditionTakenV1::Sites {
            scale: ConditionScale::NineStep,
            sites: sites.collect(),
        },
        job: None,
    })
}

fn seen(weights: &[(i64, Body)], scored: Option<i64>, day: i64) -> Weight {
    let ids: Vec<String> = (0..weights.len()).map(|n| format!("w{n:02}")).collect();
    let mut entries: Vec<Entry<'_>> = vec![add("moss", &animal("moss"), -100)];
    entries.extend(scored.map(|day| ("c", "moss", seven(), day)));
    for (id, (day, body)) in ids.iter().zip(weights) {
        entries.push((id, "moss", body.clone(), *day));
    }
    weight(&shelf_of(&entries), &moss(), at(day), &zone()).unwrap()
}

/// A pony of 300 kg that loses so many kilograms a week, weighed on a scale for eight weeks.
fn weekly(loses: f64) -> Vec<(i64, Body)> {
    (0..=8)
        .map(|week| (week * 7, scale(300.0 - loses * week as f64)))
        .collect()
}

#[test]
fn nobody_weighed_it_and_it_says_so() {
    let seen = seen(&[], None, 1);
    assert_eq!(seen.trend, Err(ProgressError::NoWeighings));
    assert_eq!(
        English::default().weight_sentence(&seen),
        "moss was never weighed"
    );
}

#[test]
fn one_weighing_is_no_trend_and_is_drawn_all_the_same() {
    let seen = seen(&[(0, tape(140.0))], None, 1);
    let trend = seen.trend.as_ref().unwrap();
    assert_eq!((trend.rate, trend.way), (None, Way::Level));
    assert_eq!(trend.chart.strokes.len(), 1);
    assert_eq!(trend.chart.ahead, None);
    assert!(English::default().weight_pace(trend).is_none());
    // Once by a tape: it is measured once more.
    let later = super::weight(
        &shelf_of(&[
            add("moss", &animal("moss"), -100),
            ("w", "moss", tape(140.0), 0),
        ]),
        &moss(),
        at(0),
        &zone(),
    );
    let asks = later.unwrap().trend.unwrap().asks;
    assert_eq!(asks, [Asks::MeasureAgain(Again::Baseline)]);
}

#[test]
fn a_pony_that_loses_two_kilograms_a_week_is_on_course_for_its_target() {
    let seen = seen(&weekly(2.0), Some(0), 57);
    let words = English::default();
    let trend = seen.trend.as_ref().unwrap();
    assert_eq!((trend.way, trend.pace), (Way::Losing, Pace::OnCourse));
    assert_eq!(words.weight_sentence(&seen), "moss: losing 2.0 kg a week");
    assert!(
        words.weight_pace(trend).unwrap().ends_with(": on course"),
        "{:?}",
        words.weight_pace(trend)
    );
    assert!(matches!(trend.forecast, Some(Forecast::Within { .. })));
    assert!(trend.asks.is_empty() && seen.stop.is_none());
    // It is scored every fortnight while it is new.
    assert_eq!(seen.score_from, Some(zone().to_local(at(14)).date));
    // A target stays where it was reckoned: what it loses afterwards does not move it.
    let aim = trend.aim.unwrap();
    let longer: Vec<(i64, Body)> = (0..=12)
        .map(|week| (week * 7, scale(300.0 - 2.0 * week as f64)))
        .collect();
    let later = self::seen(&longer, Some(0), 85).trend.unwrap().aim.unwrap();
    assert!(
        (aim.high - later.high).to_kg().abs() < 1.0,
        "{aim:?} {later:?}"
    );
}

#[test]
fn one_that_stands_still_is_checked_for_what_it_ate_and_one_that_runs_down_is_fed_more() {
    let still = seen(&weekly(0.0), None, 57);
    let asks = still.trend.unwrap().asks;
    assert!(matches!(asks.as_slice(), [Asks::Plateau(_)]), "{asks:?}");
    let fast = seen(&weekly(4.5), None, 57);
    let trend = fast.trend.unwrap();
    assert_eq!(trend.pace, Pace::TooFast);
    assert!(
        trend
            .asks
            .iter()
            .any(|asks| matches!(asks, Asks::FeedMore { .. })),
        "{:?}",
        trend.asks
    );
}

#[test]
fn the_scale_of_the_picture_spans_an_eighth_of_the_weight_and_holds_all_that_is_drawn() {
    let seen = seen(&weekly(1.0), Some(0), 57);
    let chart = seen.trend.unwrap().chart;
    let span = (chart.most - chart.least).to_kg();
    assert!(span >= 0.119 * 292.0, "{span}");
    assert_eq!(chart.strokes.len(), 9);
    for stroke in &chart.strokes {
        assert!(stroke.scale && !stroke.odd);
        assert!((0.0..=chart::WIDE).contains(&stroke.x));
        assert!(0.0 <= stroke.top && stroke.top < stroke.foot && stroke.foot <= chart::HIGH);
    }
    let band = chart.band.unwrap();
    assert!(0.0 <= band.top && band.top + band.high <= chart::HIGH);
    assert!(chart.now < chart::WIDE && chart.ahead.is_some());
    // A pale strand is closed, a cord is not.
    assert!(chart.strand.ends_with('Z') && !chart.cord.ends_with('Z'));
}

#[test]
fn an_odd_reading_is_kept_and_dotted() {
    let mut weights = weekly(1.0);
    weights[4].1 = scale(390.0);
    let seen = seen(&weights, None, 57);
    let trend = seen.trend.unwrap();
    let odd: Vec<bool> = trend.readings.iter().map(|read| read.odd).collect();
    assert_eq!(odd.iter().filter(|odd| **odd).count(), 1);
    let row = English::default().weight_row(&trend.readings[4]);
    assert_eq!(row[1], "390 kg");
    assert_eq!(row[4], "odd: kept, not believed");
    assert_eq!(trend.chart.strokes.iter().filter(|one| one.odd).count(), 1);
}
