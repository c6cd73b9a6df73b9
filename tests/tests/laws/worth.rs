//! The worth of a laboratory test against a million seeded draws of hay, laboratory, decision and cost.
//!
//! The draws know nothing of the closed form: a truth is drawn about the belief, a tested value about the truth, the
//! verdict follows from the tested value by the rule of nine in ten, and what is then done is paid day by day.

use tussock_core::forage::{Belief, Doing, Otherwise, Price, TestedPrice, WorthFor, worth_of_test};
use tussock_core::limits::Ends;
use tussock_core::units::{AsFed, Currency, DryFraction, Money, ShareOfDm};

const DRAWS: u32 = 1_000_000;
/// The spread of a tested value about the truth, and how far under the limit nine in ten of the belief lie, in
/// percentage points: written again here, not taken from the code under test.
const LABORATORY: f64 = 1.0;
const NINE_IN_TEN: f64 = 1.281_551_57;

/// A small generator of the xorshift kind (64 bits, shifts 12, 25, 27, with a multiplier), seeded, the same everywhere.
struct Draws(u64);

impl Draws {
    fn next(&mut self) -> u64 {
        self.0 ^= self.0 >> 12;
        self.0 ^= self.0 << 25;
        self.0 ^= self.0 >> 27;
        self.0.wrapping_mul(0x2545_F491_4F6C_DD1D)
    }

    /// Above 0, at most 1.
    fn uniform(&mut self) -> f64 {
        ((self.next() >> 11) + 1) as f64 / (1_u64 << 53) as f64
    }

    /// Two independent draws of the standard normal distribution (Box and Muller).
    fn two_normal(&mut self) -> (f64, f64) {
        let radius = (-2.0 * self.uniform().ln()).sqrt();
        let angle = std::f64::consts::TAU * self.uniform();
        (radius * angle.cos(), radius * angle.sin())
    }
}

struct Yard {
    batch_kg: f64,
    a_day_kg: f64,
    mean: f64,
    spread: f64,
    limit: f64,
    test: i64,
    hay_tonne: i64,
    tested_tonne: Option<i64>,
    minutes: f64,
    hour: Option<i64>,
    enough: bool,
}

const DRY: f64 = 0.88;
const LOST: f64 = 0.06;

const YARDS: [Yard; 4] = [
    // One pony, a winter of hay that is as likely within as not, time worth something, no tested hay to be had.
    Yard {
        batch_kg: 1_000.0,
        a_day_kg: 5.0,
        mean: 10.0,
        spread: 3.0,
        limit: 10.0,
        test: 4_500,
        hay_tonne: 18_000,
        tested_tonne: None,
        minutes: 15.0,
        hour: Some(1_000),
        enough: true,
    },
    // Three ponies, hay of its class, tested hay for half as much again, time not counted.
    Yard {
        batch_kg: 2_400.0,
        a_day_kg: 16.0,
        mean: 12.0,
        spread: 4.5,
        limit: 10.0,
        test: 6_000,
        hay_tonne: 20_000,
        tested_tonne: Some(30_000),
        minutes: 20.0,
        hour: None,
        enough: false,
    },
    // A small batch: the test is most of the cost.
    Yard {
        batch_kg: 120.0,
        a_day_kg: 6.0,
        mean: 9.0,
        spread: 2.0,
        limit: 12.0,
        test: 8_000,
        hay_tonne: 15_000,
        tested_tonne: Some(26_000),
        minutes: 10.0,
        hour: Some(1_500),
        enough: true,
    },
    // Rich hay, dear time: tested hay is the cheaper way wherever the test does not pass it.
    Yard {
        batch_kg: 5_000.0,
        a_day_kg: 25.0,
        mean: 14.0,
        spread: 4.0,
        limit: 12.0,
        test: 5_000,
        hay_tonne: 17_000,
        tested_tonne: Some(21_000),
        minutes: 45.0,
        hour: Some(2_000),
        enough: false,
    },
];

#[test]
fn a_million_draws_cost_what_the_worth_of_a_test_says() {
    let euro = Currency::from_code("EUR").unwrap();
    let money = |minor| Money {
        minor,
        currency: euro,
    };
    let dry = DryFraction::percent(DRY * 100.0).unwrap();
    for (number, yard) in YARDS.iter().enumerate() {
        let worth = worth_of_test(&WorthFor {
            batch: AsFed::kg(yard.batch_kg),
            a_day: AsFed::kg(yard.a_day_kg),
            dry,
            believed: Belief::percent(yard.mean, yard.spread),
            limit: ShareOfDm::percent(yard.limit),
            test: money(yard.test),
            hay: Some(Price::Tonne(money(yard.hay_tonne))),
            tested: yard
                .tested_tonne
                .map(|tonne| TestedPrice::Sold(Price::Tonne(money(tonne)), dry)),
            instead: Otherwise::Saved,
            soak_minutes: yard.minutes,
            hour: yard.hour.map(money),
            washed_out: Ends::exactly(LOST),
            soaking_is_enough: yard.enough,
        })
        .unwrap();

        // As somebody who keeps the books pays it: what hangs dry is 1 - LOST of what must be weighed out.
        let days = yard.batch_kg / yard.a_day_kg;
        let washed_out_kg = yard.a_day_kg / (1.0 - LOST) - yard.a_day_kg;
        let soaking = days
            * (yard.hour.unwrap_or(0) as f64 * yard.minutes / 60.0
                + washed_out_kg * yard.hay_tonne as f64 / 1000.0);
        let buying = yard
            .tested_tonne
            .map(|tonne| yard.batch_kg * (tonne - yard.hay_tonne) as f64 / 1000.0);
        let cheaper = buying.map_or(soaking, |buying| buying.min(soaking));
        let when_over = match buying {
            Some(buying) if !yard.enough => buying,
            _ => cheaper,
        };

        let mut draws = Draws(0x9E37_79B9_7F4A_7C15 ^ number as u64);
        let (mut paid, mut counts) = (0.0, [0_u32; 3]);
        for _ in 0..DRAWS {
            let (first, second) = draws.two_normal();
            let truth = yard.mean + yard.spread * first;
            let tested = truth + LABORATORY * second;
            paid += yard.test as f64;
            if tested + NINE_IN_TEN * LABORATORY <= yard.limit {
                counts[0] += 1;
            } else if tested - NINE_IN_TEN * LABORATORY < yard.limit {
                counts[1] += 1;
                paid += cheaper;
            } else {
                counts[2] += 1;
                paid += when_over;
            }
        }
        let near = |said: f64, drawn: f64, what: &str| {
            let off = (said - drawn).abs() / drawn;
            assert!(
                off < 0.01,
                "yard {number}, {what}: {said} said, {drawn} drawn"
            );
        };
        near(worth.testing.minor, paid / f64::from(DRAWS), "testing");
        near(worth.soaking.minor, soaking, "soaking");
        assert_eq!(worth.buying.is_some(), buying.is_some());
        if let (Some(said), Some(paid)) = (worth.buying, buying) {
            near(said.minor, paid, "buying");
        }
        for (branch, count) in worth.branches.iter().zip(counts) {
            let drawn = f64::from(count) / f64::from(DRAWS);
            assert!(
                (branch.chance - drawn).abs() < 0.002,
                "yard {number}: {branch:?}, {drawn} drawn"
            );
        }
        assert_eq!(worth.branches[0].does, Doing::FeedAsItComes);
        // From the break-even on, the drawn costs of testing are no more than those of the cheaper other way.
        let drawn_pays = paid / f64::from(DRAWS) <= cheaper;
        let says_pays = worth.pays_from.is_some_and(|from| from.days <= worth.days);
        assert_eq!(says_pays, drawn_pays, "yard {number}");
    }
}
