//! Rations of any size made from seeds: what the solver is timed on.
//!
//! Sizes are those of a day's ration, kilograms of food and what a kilogram brings of each nutrient; no food is meant. A
//! ration that nobody sees is drawn first and every limit is drawn around it, so that something fits.

use serde_json::{Value, json};
use tussock_core::ration::solve::{Column, Problem, Row};

/// Splitmix64 (Steele, Lea and Flood 2014).
struct Chance(u64);

impl Chance {
    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        z ^ (z >> 31)
    }

    /// From nothing to under 1, in steps of which a million make 1.
    fn part(&mut self) -> f64 {
        (self.next() % 1_000_000) as f64 / 1_000_000.0
    }

    fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.part()
    }

    fn one_in(&mut self, n: u64) -> bool {
        self.next().is_multiple_of(n)
    }

    fn one_of(&mut self, numbers: &[f64]) -> f64 {
        let count = numbers.len() as u64;
        let place = usize::try_from(self.next() % count).expect("under a count");
        numbers[place]
    }
}

/// What a limit is of.
#[derive(Clone, Copy)]
enum Of {
    /// Nearly the same in every food: dry matter, energy.
    All(f64),
    /// In every food, in one four times as much as in another.
    Most(f64),
    /// In traces, except in foods that are made for it.
    Trace(f64),
    /// Of one sort of food not more than a share of all.
    Share,
    /// Of one nutrient not more than so many times another.
    Ratio(f64),
}

/// The sizes of a kilogram's contents: kilograms, megajoules, grams, milligrams, international units.
const OF: [Of; 30] = [
    Of::All(0.9),
    Of::All(9.0),
    Of::Most(90.0),
    Of::Most(4.0),
    Of::Most(5.0),
    Of::Most(3.0),
    Of::Most(2.0),
    Of::Trace(1.0),
    Of::Most(15.0),
    Of::Most(5.0),
    Of::Most(2.0),
    Of::Trace(8.0),
    Of::Trace(30.0),
    Of::Most(60.0),
    Of::Most(150.0),
    Of::Trace(0.1),
    Of::Trace(0.2),
    Of::Trace(0.1),
    Of::Trace(4000.0),
    Of::Trace(400.0),
    Of::Trace(30.0),
    Of::Trace(3.0),
    Of::Most(0.2),
    Of::Most(90.0),
    Of::Most(30.0),
    Of::Most(25.0),
    Of::Most(450.0),
    Of::Ratio(5.0),
    Of::Share,
    Of::Share,
];

/// Doses in kilograms.
const DOSES: [f64; 5] = [0.025, 0.05, 0.1, 0.25, 0.5];

impl Of {
    /// What a kilogram of one food brings.
    fn term(self, c: &mut Chance) -> f64 {
        let about = |c: &mut Chance, size: f64| size * c.between(-1.0, 1.0).exp2();
        match self {
            Self::All(size) => size * c.between(0.8, 1.2),
            Self::Most(size) => about(c, size),
            Self::Trace(size) if c.one_in(8) => about(c, size * 40.0),
            Self::Trace(size) => about(c, size),
            Self::Share if c.one_in(3) => 0.7,
            Self::Share => -0.3,
            Self::Ratio(size) => about(c, size) - 2.0 * about(c, size / 2.0),
        }
    }
}

/// One food in so many is forage, fed in kilograms; of the others less is fed.
const FORAGE: usize = 6;

/// A ration of so many foods and limits, of which so many foods are given in whole doses; the same for the same seed.
///
/// # Panics
/// When it is larger than the solver lets in.
pub fn ration(foods: usize, limits: usize, doses: usize, seed: u64) -> Problem {
    let mut chance = Chance(seed);
    let c = &mut chance;
    let mut unseen = Vec::with_capacity(foods);
    let mut columns = Vec::with_capacity(foods);
    for j in 0..foods {
        let forage = j.is_multiple_of(FORAGE);
        // Spread over the foods, so that a third of them is a third of the forage too.
        let dosed = (j + 1) * doses / foods > j * doses / foods;
        let used = forage || c.one_in(3);
        let most = if forage { 12.0 } else { 2.0 };
        let cost = c.between(10.0, if forage { 40.0 } else { 300.0 });
        let column = Column::new(&format!("food {j}"), cost);
        let (amount, column) = if dosed {
            let dose = c.one_of(&DOSES);
            let whole = c.between(1.0, 8.0).round();
            let amount = if used { dose * whole } else { 0.0 };
            (amount, column.between(0.0, dose * 20.0).in_doses(dose))
        } else {
            let amount = if used {
                c.between(0.1, most / 3.0)
            } else {
                0.0
            };
            (amount, column.between(0.0, most))
        };
        unseen.push(amount);
        columns.push(column);
    }
    let rows = OF.iter().cycle().take(limits).enumerate();
    let rows = rows.map(|(i, of)| row(c, i, *of, &unseen)).collect();
    Problem::new(columns, rows, None).unwrap_or_else(|error| panic!("{seed}: {error:?}"))
}

/// A floor, a ceiling or both around what the unseen ration brings.
fn row(c: &mut Chance, i: usize, of: Of, unseen: &[f64]) -> Row {
    let terms: Vec<f64> = unseen.iter().map(|_| of.term(c)).collect();
    let sum: f64 = terms.iter().zip(unseen).map(|(t, amount)| t * amount).sum();
    let size = sum.abs();
    let floor = sum - size * c.between(0.02, 0.2);
    let ceiling = sum + size * c.between(0.02, 0.5);
    let (lower, upper) = match of {
        Of::All(_) => (floor, ceiling),
        Of::Share | Of::Ratio(_) => (f64::NEG_INFINITY, ceiling),
        Of::Most(_) | Of::Trace(_) if c.one_in(4) => (f64::NEG_INFINITY, ceiling),
        Of::Most(_) | Of::Trace(_) if c.one_in(3) => (floor, ceiling),
        Of::Most(_) | Of::Trace(_) => (floor, f64::INFINITY),
    };
    Row::new(&format!("limit {i}"), terms, lower, upper)
}

/// A problem as numbers for another solver, as JSON: costs and bounds of the columns, bounds of the rows, which columns
/// are whole, and the terms row by row. A bound that is `null` has no end. A column in whole doses counts doses. How many
/// foods are bought does not stand in it.
pub fn numbers(problem: &Problem) -> Value {
    let columns = problem.columns();
    let one = |column: &Column| column.dose.unwrap_or(1.0);
    let of_columns = |number: fn(&Column) -> f64, in_doses: fn(f64, f64) -> f64| {
        let numbers = columns
            .iter()
            .map(|column| in_doses(number(column), one(column)));
        numbers.collect::<Vec<f64>>()
    };
    let bound = |bound: f64, dose: f64| {
        let doses = bound / dose;
        // Twenty doses of a tenth are twenty.
        if dose < 1.0 { doses.round() } else { doses }
    };
    let rows = problem.rows();
    let terms = rows.iter().flat_map(|row| {
        let terms = row.terms.iter().zip(columns);
        terms.map(|(term, column)| term * one(column))
    });
    json!({
        "cost": of_columns(|column| column.cost, |cost, dose| cost * dose),
        "lower": of_columns(|column| column.lower, bound),
        "upper": of_columns(|column| column.upper, bound),
        "whole": columns.iter().map(|column| column.dose.is_some()).collect::<Vec<_>>(),
        "rowLower": rows.iter().map(|row| row.lower).collect::<Vec<_>>(),
        "rowUpper": rows.iter().map(|row| row.upper).collect::<Vec<_>>(),
        "terms": terms.collect::<Vec<_>>(),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use tussock_core::ration::solve::{Answer, cheapest};

    fn cost(foods: usize, doses: usize, seed: u64) -> f64 {
        match cheapest(&ration(foods, 30, doses, seed)) {
            Ok(Answer::Cheapest(solution)) => solution.cost,
            other => panic!("{foods} foods, {doses} doses, seed {seed}: {other:?}"),
        }
    }

    #[test]
    fn the_numbers_are_those_of_the_ration() {
        let problem = ration(12, 30, 4, 7);
        let given = numbers(&problem);
        let number = |name: &str, place: usize| given[name][place].as_f64();
        let dosed = problem.columns().iter().position(|c| c.dose.is_some());
        let place = dosed.expect("four are in doses");
        let (column, row) = (&problem.columns()[place], &problem.rows()[1]);
        let dose = column.dose.expect("it is in doses");
        assert_eq!(number("cost", place), Some(column.cost * dose));
        assert_eq!(number("upper", place), Some(20.0));
        assert_eq!(number("terms", 12 + place), Some(row.terms[place] * dose));
        assert_eq!(number("rowLower", 1), Some(row.lower));
        assert_eq!(number("rowLower", 28), None, "a share has no floor");
        let whole = given["whole"].as_array().expect("a list");
        assert_eq!(whole.iter().filter(|whole| **whole == true).count(), 4);
    }

    #[test]
    fn something_fits_and_doses_make_it_dearer() {
        for seed in 0..20 {
            for foods in [10, 30, 200] {
                assert!(cost(foods, 0, seed) > 0.0);
            }
            assert!(cost(30, 5, seed) > 0.0);
        }
    }
}
