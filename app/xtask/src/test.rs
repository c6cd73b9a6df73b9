//! `cargo xtask test`: every check, in the order in which it is cheapest to fail.

use std::path::Path;
use std::process::Command;

use anyhow::{Result, bail};

use crate::compiler::Compiler;
use crate::folders::Folders;
use crate::node::Node;
use crate::progress::Steps;
use crate::tally::{Tally, of_cargo, of_walks};
use crate::{budget, cases, chromium, dist, engines, lint, pave, purity, run};

/// Asks the tests for their long loops.
const LONG: &str = "TUSSOCK_ALL";

/// Runs every check and prints the table of steps, also when one fails; then the counts, alone on a line.
///
/// # Errors
/// The first step that failed.
pub(crate) fn test(folders: &Folders, all: bool) -> Result<()> {
    let mut steps = Steps::new();
    let result = checks(folders, all, &mut steps);
    println!("\n{}", steps.table());
    let tally = result?;
    println!("{} passed, {} failed", tally.passed, tally.failed);
    Ok(())
}

fn checks(folders: &Folders, all: bool, steps: &mut Steps) -> Result<Tally> {
    let compiler = steps.run("find the compiler", || {
        let compiler = pave::pave(&folders.target)?;
        pave::lints(&compiler)?;
        Ok(compiler)
    })?;
    steps.run("format", || lint::format(&compiler))?;
    steps.run("clippy for this machine", || lint::native(&compiler))?;
    steps.run("clippy for the browser", || lint::wasm(&compiler))?;
    let mut tally = steps.run("tests of the crates", || {
        cargo_test(&compiler, all, &["--workspace", "--exclude", "xtask"])
    })?;
    // The build tool's own profile, whose dependencies are built already when cargo called with this compiler.
    tally += steps.run("tests of the build tool", || {
        cargo_test(&compiler, all, &["--package", "xtask", "--profile", "tool"])
    })?;
    steps.run("purity", || purity::prove(&compiler))?;
    let out = folders.dist();
    dist::dist(folders, &compiler, steps, None, &out)?;
    steps.run("size budget", || budget::check(&out))?;
    let cases = steps.run("cases", || cases::prepare(folders, &compiler))?;
    tally += browser(folders, all, steps, &out, &cases)?;
    Ok(tally)
}

fn cargo_test(compiler: &Compiler, all: bool, which: &[&str]) -> Result<Tally> {
    let mut cargo = compiler.native("test");
    loops(&mut cargo, all);
    counted(cargo.arg("--locked").args(which), of_cargo)
}

fn browser(
    folders: &Folders,
    all: bool,
    steps: &mut Steps,
    dist: &Path,
    cases: &Path,
) -> Result<Tally> {
    let node = Node::find(folders)?;
    let e2e = folders.e2e();
    let script = |words: &[&str]| {
        let mut command = node.command();
        command.current_dir(&e2e).args(words);
        command
    };
    steps.run("types of the browser tests", || {
        run::must(&mut script(&[
            "node_modules/typescript/bin/tsc",
            "--noEmit",
        ]))
    })?;
    let chromium = steps.run("browser", || chromium::find(folders, &node))?;
    let engines = steps.run("other engines", engines::find)?;
    steps.run("browser tests", || {
        let mut walks = script(&["node_modules/@playwright/test/cli.js", "test"]);
        loops(&mut walks, all);
        walks
            .env("TUSSOCK_XTASK", &folders.tool)
            .env("TUSSOCK_DIST", dist)
            .env("TUSSOCK_CASES", cases)
            .env(engines::VARIABLE, engines)
            .env("TUSSOCK_OUT", folders.kept("e2e"))
            .env(chromium::VARIABLE, chromium);
        counted(&mut walks, of_walks)
    })
}

fn loops(command: &mut Command, all: bool) {
    if all {
        command.env(LONG, "1");
    } else {
        command.env_remove(LONG);
    }
}

fn counted(command: &mut Command, count: fn(&str) -> Tally) -> Result<Tally> {
    let (output, ended) = run::echoed(command)?;
    judge(count(&output), ended)
}

/// A run in which nothing passed has tested nothing and is a failure.
fn judge(tally: Tally, ended: Result<()>) -> Result<Tally> {
    ended?;
    if tally.failed > 0 {
        bail!("{} tests failed", tally.failed);
    }
    if tally.passed == 0 {
        bail!("no test ran");
    }
    if tally.skipped > 0 {
        eprintln!("    {} skipped", tally.skipped);
    }
    Ok(tally)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_run_of_no_tests_fails() {
        let tally = |passed, failed| Tally {
            passed,
            failed,
            skipped: 0,
        };
        assert!(judge(tally(0, 0), Ok(())).is_err());
        assert!(judge(tally(3, 1), Ok(())).is_err());
        assert!(judge(tally(3, 0), Err(anyhow::anyhow!("exit 1"))).is_err());
        assert_eq!(judge(tally(3, 0), Ok(())).unwrap().passed, 3);
    }

    #[test]
    fn long_loops_are_asked_for_by_name_and_never_by_accident() {
        for (all, expected) in [(true, Some("1".as_ref())), (false, None)] {
            let mut command = Command::new("sh");
            loops(&mut command, all);
            let set = command
                .get_envs()
                .find(|(name, _)| *name == LONG)
                .map(|(_, value)| value);
            assert_eq!(set, Some(expected));
        }
    }
}
