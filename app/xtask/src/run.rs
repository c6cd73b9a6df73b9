//! Running other programs: each is announced, and its failure names it.

use std::io::{BufRead as _, BufReader, Write as _};
use std::process::{Command, ExitStatus, Stdio};
use std::time::Duration;

use anyhow::{Context as _, Result, bail};

use crate::progress::Clock;

/// Runs a program with its output passed through.
///
/// # Errors
/// When it cannot be started or does not succeed.
pub(crate) fn must(command: &mut Command) -> Result<()> {
    let line = announce(command);
    let status = command
        .status()
        .with_context(|| format!("`{line}` cannot be started"))?;
    succeeded(&line, status)
}

/// Runs a program, passes its standard output through line by line and returns it, also when it failed.
///
/// # Errors
/// When it cannot be started or its output cannot be read.
pub(crate) fn echoed(command: &mut Command) -> Result<(String, Result<()>)> {
    let line = announce(command);
    let mut child = command
        .stdout(Stdio::piped())
        .spawn()
        .with_context(|| format!("`{line}` cannot be started"))?;
    let mut text = String::new();
    if let Some(out) = child.stdout.take() {
        let mut stdout = std::io::stdout().lock();
        let mut out = BufReader::new(out);
        let mut bytes = Vec::new();
        while out.read_until(b'\n', &mut bytes)? > 0 {
            // A closed pipe on our side must not end the run of the tests.
            let _ = stdout.write_all(&bytes).and_then(|()| stdout.flush());
            text.push_str(&String::from_utf8_lossy(&bytes));
            bytes.clear();
        }
    }
    let status = child.wait()?;
    Ok((text, succeeded(&line, status)))
}

/// Runs a program quietly and returns its standard output.
///
/// # Errors
/// When it cannot be started or does not succeed; the message has what it wrote to standard error.
pub(crate) fn read(command: &mut Command) -> Result<String> {
    let line = shown(command);
    let output = command
        .stdin(Stdio::null())
        .output()
        .with_context(|| format!("`{line}` cannot be started"))?;
    if !output.status.success() {
        bail!(
            "`{line}` failed: {}",
            String::from_utf8_lossy(&output.stderr).trim_end()
        );
    }
    String::from_utf8(output.stdout)
        .with_context(|| format!("`{line}` answered with something else than text"))
}

/// Runs a program for at most `limit`; true when it succeeded within it.
pub(crate) fn within(command: &mut Command, limit: Duration) -> bool {
    announce(command);
    let Ok(mut child) = command.stdin(Stdio::null()).spawn() else {
        return false;
    };
    let clock = Clock::start();
    loop {
        match child.try_wait() {
            Ok(Some(status)) => return status.success(),
            Ok(None) if clock.elapsed() < limit => std::thread::sleep(Duration::from_millis(50)),
            Ok(None) | Err(_) => {
                let _ = child.kill();
                let _ = child.wait();
                return false;
            }
        }
    }
}

/// Whether a program is there and answers this question with success.
pub(crate) fn answers(command: &mut Command) -> bool {
    command
        .stdin(Stdio::null())
        .stdout(Stdio::null())
        .stderr(Stdio::null())
        .status()
        .is_ok_and(|status| status.success())
}

fn succeeded(line: &str, status: ExitStatus) -> Result<()> {
    if status.success() {
        return Ok(());
    }
    bail!("`{line}` failed ({status})")
}

fn announce(command: &Command) -> String {
    let line = shown(command);
    eprintln!("    $ {line}");
    line
}

fn shown(command: &Command) -> String {
    std::iter::once(command.get_program())
        .chain(command.get_args())
        .map(|word| word.to_string_lossy())
        .collect::<Vec<_>>()
        .join(" ")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_program_that_hangs_is_ended_at_the_limit() {
        let clock = Clock::start();
        assert!(!within(
            Command::new("sleep").arg("30"),
            Duration::from_millis(100)
        ));
        assert!(clock.elapsed() < Duration::from_secs(10));
        assert!(within(
            Command::new("sleep").arg("0"),
            Duration::from_secs(10)
        ));
        assert!(!within(
            &mut Command::new("tussock-no-such-program"),
            Duration::from_secs(1)
        ));
    }

    #[test]
    fn output_is_kept_when_the_program_fails() {
        let (text, ended) = echoed(Command::new("sh").args(["-c", "echo seen; exit 3"])).unwrap();
        assert_eq!(text, "seen\n");
        assert!(ended.unwrap_err().to_string().contains("sh -c"));
    }

    #[test]
    fn a_failure_says_what_the_program_wrote() {
        let error = read(Command::new("sh").args(["-c", "echo why >&2; exit 1"])).unwrap_err();
        assert!(error.to_string().ends_with("failed: why"), "{error}");
        assert_eq!(read(Command::new("echo").arg("yes")).unwrap(), "yes\n");
    }
}
