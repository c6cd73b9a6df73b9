//! Counts of tests, read from what the test programs print.

use std::ops::AddAssign;

/// Tests by how they ended.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub(crate) struct Tally {
    /// Passed.
    pub(crate) passed: u64,
    /// Failed.
    pub(crate) failed: u64,
    /// Not run.
    pub(crate) skipped: u64,
}

impl AddAssign for Tally {
    fn add_assign(&mut self, other: Self) {
        self.passed += other.passed;
        self.failed += other.failed;
        self.skipped += other.skipped;
    }
}

/// The sum of the lines `test result: ok. 5 passed; 0 failed; 1 ignored; …` of cargo.
pub(crate) fn of_cargo(output: &str) -> Tally {
    sum(
        output
            .lines()
            .filter_map(|line| line.strip_prefix("test result: ")),
        ';',
    )
}

/// The sum of the lines `browser walks: 5 passed, 0 failed, 1 skipped, …`.
pub(crate) fn of_walks(output: &str) -> Tally {
    sum(
        output
            .lines()
            .filter_map(|line| line.strip_prefix("browser walks: ")),
        ',',
    )
}

fn sum<'a>(lines: impl Iterator<Item = &'a str>, between: char) -> Tally {
    let mut tally = Tally::default();
    for line in lines {
        for item in line.split(between) {
            let mut words = item.split_whitespace().rev();
            let (Some(name), Some(Ok(count))) = (words.next(), words.next().map(str::parse)) else {
                continue;
            };
            tally += match name {
                "passed" => Tally {
                    passed: count,
                    ..Tally::default()
                },
                "failed" => Tally {
                    failed: count,
                    ..Tally::default()
                },
                "ignored" | "skipped" => Tally {
                    skipped: count,
                    ..Tally::default()
                },
                _ => Tally::default(),
            };
        }
    }
    tally
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn cargo_is_summed_over_all_its_programs() {
        let output = "running 5 tests\ntest a ... ok\n\
            test result: ok. 5 passed; 0 failed; 1 ignored; 0 measured; 2 filtered out; finished in 0.16s\n\
            test result: FAILED. 7 passed; 2 failed; 0 ignored; 0 measured; 0 filtered out; finished in 1.00s\n";
        assert_eq!(
            of_cargo(output),
            Tally {
                passed: 12,
                failed: 2,
                skipped: 1
            }
        );
        assert_eq!(of_cargo("no tests"), Tally::default());
    }

    #[test]
    fn the_walks_say_it_on_one_line() {
        let output = "  1/41 passed    1.0 s  phone > weighs\nbrowser walks: 40 passed, 1 failed, 3 skipped, 62 s\n";
        assert_eq!(
            of_walks(output),
            Tally {
                passed: 40,
                failed: 1,
                skipped: 3
            }
        );
    }
}
