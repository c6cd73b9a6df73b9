//! The solver on problems whose answers are published, and on two diets that another program answered.

use std::fs;
use tussock_core::ration::solve::{Answer, Column, Problem, Row, Solution, cheapest};
use tussock_tests::reference::{Formulas, Inputs, RowCounts, crate_root};

pub fn formulas() -> Formulas {
    vec![
        ("ration.beale", |i| ask(i, &solved(&beale())?)),
        ("ration.klee_minty", |i| {
            Ok(-solved(&klee_minty(whole(i, "sides")?))?.cost)
        }),
        ("ration.stigler", stigler),
        ("ration.six_feeds", |i| ask(i, &solved(&six_feeds())?)),
    ]
}

pub fn rows() -> RowCounts {
    vec![
        ("beale_1955", 5),
        ("highs", 24),
        ("klee_minty_1972", 3),
        ("stigler_1945", 1),
    ]
}

const NONE: f64 = f64::INFINITY;

fn problem(costs: &[f64], rows: Vec<Row>) -> Problem {
    let columns = costs.iter().map(|cost| Column::new("column", *cost));
    Problem::new(columns.collect(), rows, None).expect("a known problem is let in")
}

fn solved(problem: &Problem) -> Result<Solution, String> {
    match cheapest(problem) {
        Ok(Answer::Cheapest(solution)) => Ok(solution),
        other => Err(format!("{other:?}")),
    }
}

fn whole<T: std::str::FromStr>(i: &Inputs, key: &str) -> Result<T, String> {
    let text = i.text(key)?;
    text.parse().map_err(|_| format!("{text} is no count"))
}

/// The cost, the price of a row, or the amount of a column by its number.
fn ask(i: &Inputs, solution: &Solution) -> Result<f64, String> {
    match i.text("ask")? {
        "cost" => Ok(solution.cost),
        "price" => Ok(solution.sums[whole::<usize>(i, "row")?].price),
        column => {
            let column: usize = column.parse().map_err(|_| column.to_owned())?;
            Ok(solution.amounts[column].value)
        }
    }
}

fn beale() -> Problem {
    let at_most = |terms: [f64; 4], limit| Row::new("row", terms.to_vec(), -NONE, limit);
    problem(
        &[-0.75, 150.0, -0.02, 6.0],
        vec![
            at_most([0.25, -60.0, -0.04, 9.0], 0.0),
            at_most([0.5, -90.0, -0.02, 3.0], 0.0),
            at_most([0.0, 0.0, 1.0, 0.0], 1.0),
        ],
    )
}

/// The greatest of the sum of 2^(n-j) x_j, where twice the sum of 2^(i-j) x_j over j < i and x_i is at most 5^i.
fn klee_minty(sides: i32) -> Problem {
    let power = |of: f64, by: i32| of.powi(by);
    let costs: Vec<f64> = (1..=sides).map(|j| -power(2.0, sides - j)).collect();
    let rows = (1..=sides)
        .map(|i| {
            let terms = (1..=sides).map(|j| match j {
                _ if j < i => power(2.0, i - j + 1),
                _ if j == i => 1.0,
                _ => 0.0,
            });
            Row::new("row", terms.collect(), -NONE, power(5.0, i))
        })
        .collect();
    problem(&costs, rows)
}

const DAYS: f64 = 365.0;

/// 77 foods in dollars a day, nine needs.
fn stigler(i: &Inputs) -> Result<f64, String> {
    let path = crate_root().join("vectors/stigler_1945.csv");
    let text = fs::read_to_string(path).map_err(|e| e.to_string())?;
    let (_, table) = text.split_once('\n').ok_or("no citation")?;
    let mut reader = csv::Reader::from_reader(table.as_bytes());
    let header = reader.headers().map_err(|e| e.to_string())?.clone();
    let nutrients: Vec<&str> = header.iter().skip(1).collect();
    let (mut names, mut values) = (Vec::new(), Vec::new());
    for record in reader.records() {
        let record = record.map_err(|e| e.to_string())?;
        names.push(record[0].replace(' ', "_"));
        let cells = record.iter().skip(1).map(str::parse::<f64>);
        values.push(
            cells
                .collect::<Result<Vec<f64>, _>>()
                .map_err(|e| e.to_string())?,
        );
    }
    let (need, foods) = values.split_first().ok_or("no needs")?;
    let rows = need.iter().enumerate().map(|(k, need)| {
        Row::new(
            nutrients[k],
            foods.iter().map(|f| f[k]).collect(),
            *need,
            NONE,
        )
    });
    let found = solved(&problem(&vec![1.0; foods.len()], rows.collect()))?;
    let place = |list: &[&str], name: &str| {
        list.iter()
            .position(|entry| *entry == name)
            .ok_or_else(|| format!("no {name}"))
    };
    let a_day = match i.text("ask")? {
        "cost" => found.cost,
        "food" => {
            let names: Vec<&str> = names.iter().skip(1).map(String::as_str).collect();
            found.amounts[place(&names, i.text("name")?)?].value
        }
        "price" => found.sums[place(&nutrients, i.text("name")?)?].price,
        other => return Err(format!("no {other}")),
    };
    Ok(a_day * DAYS)
}

/// Six invented feeds: dry matter, Mcal, protein, calcium, phosphorus, sodium in a kilogram; the same in
/// `tests/vectors/classics_highs.py`.
const FEEDS: [[f64; 6]; 6] = [
    [0.9, 1.6, 65.0, 3.0, 1.8, 0.1],
    [0.9, 2.16, 170.0, 12.0, 2.2, 0.7],
    [0.89, 2.85, 118.0, 0.8, 3.4, 0.2],
    [0.89, 3.15, 444.0, 3.5, 6.3, 0.3],
    [0.99, 0.0, 0.0, 380.0, 0.0, 0.0],
    [0.99, 0.0, 0.0, 0.0, 0.0, 390.0],
];

fn six_feeds() -> Problem {
    let column = |k: usize| FEEDS.iter().map(|feed| feed[k]).collect::<Vec<f64>>();
    let at_least = |terms: Vec<f64>, limit| Row::new("row", terms, limit, NONE);
    let ratio = FEEDS.iter().map(|feed| feed[3] - 1.5 * feed[4]).collect();
    let forage = FEEDS
        .iter()
        .enumerate()
        .map(|(k, feed)| if k < 2 { 0.3 * feed[0] } else { -0.7 * feed[0] })
        .collect();
    problem(
        &[0.16, 0.3, 0.35, 0.6, 0.25, 0.3],
        vec![
            at_least(column(1), 23.3),
            at_least(column(2), 768.0),
            at_least(column(3), 35.0),
            at_least(column(4), 21.0),
            at_least(column(5), 13.9),
            Row::new("row", column(0), -NONE, 11.25),
            at_least(ratio, 0.0),
            at_least(forage, 0.0),
        ],
    )
}
