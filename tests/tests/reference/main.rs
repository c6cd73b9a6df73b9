//! The core held against published values and against other programs.
//!
//! To add a check: write its row in `tests/data/<work>.csv` (see `tussock_tests::reference`), offer its formula in
//! `<room>.rs` here, and raise that room's count of rows. A new room adds its `mod` line and its line in `rooms`.
#![allow(
    unreachable_pub,
    reason = "the room modules are doors of one test binary"
)]

mod assess;
mod day;
mod forage;
mod graze;
mod intake;
mod limits;
mod ration;
mod soak;
mod solve;
mod sun;
mod sward;
mod trend;
mod units;
mod work;

use std::collections::BTreeMap;
use tussock_tests::reference::{Formula, Formulas, RowCounts, Table, tables};

/// The bars of the house: so many checks of the trade, from so many publications, so many of them made without the
/// formula under test. Conversions and calendars come on top and do not count.
const CHECKS: usize = 60;
const PUBLICATIONS: usize = 6;
const INDEPENDENT: usize = 30;

/// Each room: its formulas and how many rows it answers for in each table.
fn rooms() -> Vec<(&'static str, Formulas, RowCounts)> {
    vec![
        ("units", units::formulas(), units::rows()),
        ("assess", assess::formulas(), assess::rows()),
        ("limits", limits::formulas(), limits::rows()),
        ("forage", forage::formulas(), forage::rows()),
        ("soak", soak::formulas(), soak::rows()),
        ("ration", ration::formulas(), ration::rows()),
        ("ration/solve", solve::formulas(), solve::rows()),
        ("graze/intake", intake::formulas(), intake::rows()),
        ("graze/sward", sward::formulas(), sward::rows()),
        ("graze", graze::formulas(), graze::rows()),
        ("work", work::formulas(), work::rows()),
        ("day", day::formulas(), day::rows()),
    ]
}

fn formulas() -> BTreeMap<&'static str, Formula> {
    let mut all = BTreeMap::new();
    for (room, offered, _) in rooms() {
        for (name, formula) in offered {
            assert!(
                all.insert(name, formula).is_none(),
                "{room}: the formula {name} is offered twice"
            );
        }
    }
    all
}

fn read() -> Vec<Table> {
    tables().unwrap_or_else(|fault| panic!("{fault}"))
}

#[test]
fn every_row_is_met() {
    let formulas = formulas();
    let mut used = BTreeMap::<&str, usize>::new();
    let mut misses = Vec::new();
    for table in &read() {
        for row in &table.rows {
            let place = format!("{}.csv {}", table.work, row.id);
            match formulas.get_key_value(row.formula.as_str()) {
                None => misses.push(format!("{place}: no formula is named {}", row.formula)),
                Some((name, formula)) => {
                    *used.entry(name).or_default() += 1;
                    if let Err(miss) = row.check(*formula) {
                        misses.push(format!("{place}: {miss}"));
                    }
                }
            }
        }
    }
    for name in formulas.keys().filter(|name| !used.contains_key(*name)) {
        misses.push(format!("the formula {name} has no row"));
    }
    assert!(misses.is_empty(), "{}", misses.join("\n"));
}

#[test]
fn no_row_is_lost() {
    let mut expected = BTreeMap::<&str, usize>::new();
    for (_, _, counts) in rooms() {
        for (file, rows) in counts {
            *expected.entry(file).or_default() += rows;
        }
    }
    let tables = read();
    let found: BTreeMap<&str, usize> = tables
        .iter()
        .map(|table| (table.work.as_str(), table.rows.len()))
        .collect();
    assert_eq!(
        found, expected,
        "rows a table: found, and as the rooms count them"
    );
}

#[test]
fn there_are_enough_checks_and_enough_that_stand_alone() {
    let tables = read();
    let mut by_origin = BTreeMap::<String, usize>::new();
    let mut by_mark = BTreeMap::<&str, usize>::new();
    let (mut independent, mut checks, mut conversions) = (0, 0, 0);
    for table in &tables {
        println!(
            "{:4} rows  {:32} {}",
            table.rows.len(),
            table.work,
            table.citation
        );
        for row in &table.rows {
            *by_origin.entry(format!("{:?}", row.origin)).or_default() += 1;
            *by_mark.entry(row.mark.as_str()).or_default() += 1;
            if row.formula.starts_with("units.") {
                conversions += 1;
            } else {
                checks += 1;
                independent += usize::from(row.origin.is_independent());
            }
        }
    }
    let publications = tables.iter().filter(|t| t.is_publication()).count();
    println!("by origin: {by_origin:?}");
    println!("by mark: {by_mark:?}");
    println!(
        "{checks} checks, {publications} publications, {independent} in print or by another program; \
         {conversions} conversions on top"
    );
    assert!(checks >= CHECKS, "{checks} checks, {CHECKS} needed");
    assert!(
        publications >= PUBLICATIONS,
        "{publications} publications, {PUBLICATIONS} needed"
    );
    assert!(
        independent >= INDEPENDENT,
        "{independent} values in print or by another program, {INDEPENDENT} needed"
    );
}
