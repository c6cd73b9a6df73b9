//! Rations made from seeds, the same as in `tests/vectors/rations_highs.py`, number by number.

use tussock_core::ration::solve::{Column, Problem, Row};

/// How many seeds there are.
pub(crate) const COUNT: u64 = 5000;

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

    fn below(&mut self, n: i64) -> i64 {
        let n = u64::try_from(n).expect("a count");
        i64::try_from(self.next() % n).expect("under a count")
    }

    fn one_of(&mut self, numbers: &[i64]) -> i64 {
        let count = i64::try_from(numbers.len()).expect("a few");
        numbers[usize::try_from(self.below(count)).expect("a place")]
    }

    fn one_in(&mut self, n: i64) -> bool {
        self.below(n) == 0
    }
}

/// What a seed is made to be.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Kind {
    Feasible,
    Infeasible,
    Degenerate,
    Doses,
    Foods,
}

pub(crate) fn kind(seed: u64) -> Kind {
    match seed % 5 {
        0 => Kind::Feasible,
        1 => Kind::Infeasible,
        2 => Kind::Degenerate,
        3 => Kind::Doses,
        _ => Kind::Foods,
    }
}

/// In eighths.
struct Food {
    lower: i64,
    upper: Option<i64>,
    cost: i64,
    dose: i64,
    bought: bool,
    amount: i64,
}

/// Terms over the divisor; limits in eighths over it.
struct Limit {
    terms: Vec<i64>,
    lower: Option<i64>,
    upper: Option<i64>,
    divisor: i64,
}

fn food(c: &mut Chance, kind: Kind) -> Food {
    let dose = if kind == Kind::Doses {
        drawn_dose(c)
    } else {
        0
    };
    let step = dose.max(1);
    let amount = if c.one_in(2) {
        0
    } else {
        step * (1 + c.below(if dose > 0 { 8 } else { 60 }))
    };
    let mut lower = 0;
    let mut upper = Some(amount + step * c.below(40));
    if c.one_in(6) {
        lower = step * c.below(amount / step + 1);
    }
    if kind != Kind::Foods && c.one_in(3) {
        upper = None;
    }
    if c.one_in(12) {
        (lower, upper) = (amount, Some(amount));
    }
    let cost = 1 + c.below(400);
    Food {
        lower,
        upper,
        cost,
        dose,
        bought: kind == Kind::Foods && !c.one_in(4),
        amount,
    }
}

/// Two in three foods are given in doses of so many eighths.
fn drawn_dose(c: &mut Chance) -> i64 {
    if c.one_in(3) {
        return 0;
    }
    c.one_of(&[1, 2, 3, 4, 6])
}

fn brought(terms: &[i64], foods: &[Food]) -> i64 {
    terms
        .iter()
        .zip(foods)
        .map(|(t, food)| t * food.amount)
        .sum()
}

fn limit(c: &mut Chance, kind: Kind, foods: &[Food]) -> Limit {
    let largest = c.one_of(&[9, 60, 4000]);
    let divisor = c.one_of(&[1, 16, 1024]);
    let mixed = c.one_in(5);
    let terms: Vec<i64> = foods
        .iter()
        .map(|_| {
            let term = if c.one_in(4) { 0 } else { 1 + c.below(largest) };
            if mixed && c.one_in(2) { -term } else { term }
        })
        .collect();
    let total = brought(&terms, foods);
    let tight = kind == Kind::Degenerate && !c.one_in(3);
    let shape = c.below(3);
    let (below, above) = if tight {
        (0, 0)
    } else {
        let room = 1 + total.abs() / 4;
        (c.below(room), c.below(room))
    };
    Limit {
        terms,
        lower: (shape != 1).then_some(total - below),
        upper: (shape != 0).then_some(total + above),
        divisor,
    }
}

/// A row twice over, and costs that lie along two rows.
fn degenerate(foods: &mut [Food], limits: &mut Vec<Limit>) {
    let (first, last) = (&limits[0], &limits[limits.len() - 1]);
    for ((food, a), b) in foods.iter_mut().zip(&first.terms).zip(&last.terms) {
        food.cost = a.abs() + b.abs();
    }
    let twice = Limit {
        terms: first.terms.iter().map(|term| 2 * term).collect(),
        lower: first.lower.map(|limit| 2 * limit),
        upper: first.upper.map(|limit| 2 * limit),
        divisor: first.divisor,
    };
    limits.push(twice);
}

/// More than all foods can bring, or a floor over a ceiling.
fn infeasible(c: &mut Chance, foods: &mut [Food], limits: &mut Vec<Limit>) {
    let terms: Vec<i64> = foods.iter().map(|_| 1 + c.below(60)).collect();
    let share = 4 + c.below(300);
    let limit = |lower, upper| Limit {
        terms: terms.iter().map(|term| 1000 * term).collect(),
        lower,
        upper,
        divisor: 1024,
    };
    if c.one_in(2) {
        let mut most = 0;
        for (food, term) in foods.iter_mut().zip(&terms) {
            most += term * *food.upper.get_or_insert(food.amount + 8);
        }
        limits.push(limit(Some(most * (1000 + share) + 1000), None));
    } else {
        let total = brought(&terms, foods) + 8;
        limits.push(limit(Some(1000 * total), None));
        limits.push(limit(None, Some((1000 - share) * total)));
    }
}

/// Between two doses of the first food that is given in doses: the amounts would fit, the doses do not.
fn between_doses(foods: &[Food], limits: &mut Vec<Limit>) {
    let first = foods
        .iter()
        .enumerate()
        .find(|(_, food)| food.dose > 0 && food.upper != Some(food.lower));
    if let Some((place, food)) = first {
        let at = 4 * (food.lower / food.dose) + 1;
        limits.push(Limit {
            terms: (0..foods.len())
                .map(|j| if j == place { 4 } else { 0 })
                .collect(),
            lower: Some(food.dose * at),
            upper: Some(food.dose * (at + 2)),
            divisor: 1,
        });
    }
}

/// A whole number over a power of two, exactly.
fn over(value: i64, divisor: i64) -> f64 {
    value as f64 / divisor as f64
}

/// The ration of a seed.
pub(crate) fn ration(seed: u64) -> Problem {
    let mut chance = Chance(seed);
    let c = &mut chance;
    let kind = kind(seed);
    let small = matches!(kind, Kind::Doses | Kind::Foods);
    let columns = 3 + c.below(if small { 10 } else { 28 });
    let rows = 2 + c.below(if small { 8 } else { 28 });
    let mut foods: Vec<Food> = (0..columns).map(|_| food(c, kind)).collect();
    let mut limits: Vec<Limit> = (0..rows).map(|_| limit(c, kind, &foods)).collect();
    match kind {
        Kind::Degenerate => degenerate(&mut foods, &mut limits),
        Kind::Infeasible => infeasible(c, &mut foods, &mut limits),
        Kind::Doses if c.one_in(8) => between_doses(&foods, &mut limits),
        Kind::Feasible | Kind::Doses | Kind::Foods => {}
    }
    let most = (kind == Kind::Foods).then(|| {
        let used = foods.iter().filter(|f| f.bought && f.amount > 0).count();
        if c.one_in(6) {
            used.saturating_sub(1)
        } else {
            used
        }
    });
    let columns = foods
        .iter()
        .enumerate()
        .map(|(j, food)| Column {
            lower: over(food.lower, 8),
            upper: food.upper.map_or(f64::INFINITY, |upper| over(upper, 8)),
            dose: (food.dose > 0).then(|| over(food.dose, 8)),
            bought: food.bought,
            ..Column::new(&format!("food {j}"), over(food.cost, 1))
        })
        .collect();
    let rows = limits
        .iter()
        .enumerate()
        .map(|(i, limit)| {
            let terms = limit.terms.iter().map(|t| over(*t, limit.divisor));
            Row::new(
                &format!("limit {i}"),
                terms.collect(),
                limit
                    .lower
                    .map_or(f64::NEG_INFINITY, |l| over(l, 8 * limit.divisor)),
                limit
                    .upper
                    .map_or(f64::INFINITY, |u| over(u, 8 * limit.divisor)),
            )
        })
        .collect();
    Problem::new(columns, rows, most).unwrap_or_else(|error| panic!("{seed}: {error:?}"))
}
