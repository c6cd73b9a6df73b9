//! What a person sees while steps run: the name of each, then its seconds, and a table of them at the end.

use std::fmt::Write as _;
use std::time::{Duration, Instant};

use anyhow::{Context as _, Result};

/// A stopwatch for the steps; nothing that is built depends on it.
pub(crate) struct Clock(Instant);

impl Clock {
    /// Starts now.
    #[expect(
        clippy::disallowed_methods,
        reason = "the build tool times its own steps"
    )]
    pub(crate) fn start() -> Self {
        Self(Instant::now())
    }

    /// The time since the start.
    pub(crate) fn elapsed(&self) -> Duration {
        self.0.elapsed()
    }
}

/// How a step ended.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum End {
    Passed,
    Failed,
}

/// The steps of one run.
pub(crate) struct Steps {
    clock: Clock,
    rows: Vec<(String, Duration, End)>,
}

impl Steps {
    /// No step yet.
    pub(crate) fn new() -> Self {
        Self {
            clock: Clock::start(),
            rows: Vec::new(),
        }
    }

    /// Runs one step: says its name, then its seconds.
    ///
    /// # Errors
    /// The step's own, with its name in front.
    pub(crate) fn run<T>(&mut self, name: &str, step: impl FnOnce() -> Result<T>) -> Result<T> {
        eprintln!("==> {name}");
        let clock = Clock::start();
        let result = step();
        let took = clock.elapsed();
        let end = if result.is_ok() {
            End::Passed
        } else {
            End::Failed
        };
        let verb = if end == End::Passed {
            "took"
        } else {
            "failed after"
        };
        eprintln!("    {name} {verb} {:.1} s", took.as_secs_f64());
        self.rows.push((name.to_owned(), took, end));
        result.with_context(|| format!("step `{name}` failed"))
    }

    /// Every step with its seconds, which of them failed, and the sum.
    pub(crate) fn table(&self) -> String {
        table(&self.rows, self.clock.elapsed())
    }
}

fn table(rows: &[(String, Duration, End)], whole: Duration) -> String {
    let width = rows
        .iter()
        .map(|(name, ..)| name.chars().count())
        .chain([5])
        .max()
        .unwrap_or(5);
    let mut text = format!("{:<width$}  {:>8}\n", "step", "seconds");
    for (name, took, end) in rows {
        let mark = if *end == End::Failed { "  FAILED" } else { "" };
        let _ = writeln!(text, "{name:<width$}  {:>8.1}{mark}", took.as_secs_f64());
    }
    let _ = writeln!(text, "{:<width$}  {:>8.1}", "total", whole.as_secs_f64());
    text
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_table_has_each_step_and_marks_the_failed_one() {
        let rows = [
            ("fmt".to_owned(), Duration::from_millis(1_240), End::Passed),
            (
                "clippy native".to_owned(),
                Duration::from_secs(61),
                End::Failed,
            ),
        ];
        assert_eq!(
            table(&rows, Duration::from_secs(63)),
            "step            seconds\n\
             fmt                 1.2\n\
             clippy native      61.0  FAILED\n\
             total              63.0\n"
        );
    }

    #[test]
    fn a_failed_step_is_named_in_the_error_and_stands_in_the_table() {
        let mut steps = Steps::new();
        assert_eq!(steps.run("one", || Ok(7)).unwrap(), 7);
        let error = steps
            .run("two", || anyhow::bail!("no"))
            .map(|(): ()| ())
            .unwrap_err();
        assert_eq!(format!("{error:#}"), "step `two` failed: no");
        assert!(steps.table().contains("FAILED"));
    }
}
