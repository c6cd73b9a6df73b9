//! Formatting and clippy.

use anyhow::{Context as _, Result};
use serde_json::Value;

use crate::compiler::Compiler;
use crate::run;

/// Checks the formatting of the whole workspace.
///
/// # Errors
/// When a file is not formatted.
pub(crate) fn format(compiler: &Compiler) -> Result<()> {
    run::must(compiler.native("fmt").args(["--all", "--check"]))
}

/// Runs clippy over everything for this machine.
///
/// # Errors
/// On an error, or a warning where the manifest denies them for this clippy.
pub(crate) fn native(compiler: &Compiler) -> Result<()> {
    let mut cargo = compiler.native("clippy");
    cargo.args(["--locked", "--workspace", "--all-targets", "--"]);
    run::must(cargo.args(strictness(compiler)?))
}

/// Runs clippy over the app for the browser, where it sees code that a native run never does.
///
/// # Errors
/// As [`native`].
pub(crate) fn wasm(compiler: &Compiler) -> Result<()> {
    let mut cargo = compiler.wasm("clippy");
    cargo.args(["--locked", "--package", "tussock-app", "--"]);
    run::must(cargo.args(strictness(compiler)?))
}

/// A newer clippy has lints that nobody has read yet; it warns without failing.
fn strictness(compiler: &Compiler) -> Result<&'static [&'static str]> {
    let version = run::read(compiler.native("clippy").arg("--version"))?;
    let mut cargo = compiler.native("metadata");
    let metadata = run::read(cargo.args(["--locked", "--no-deps", "--format-version", "1"]))?;
    if denied(&metadata, &version)? {
        return Ok(&["-D", "warnings"]);
    }
    eprintln!(
        "    {}: its warnings are printed and do not fail",
        version.trim()
    );
    Ok(&[])
}

/// Whether the manifest's `workspace.metadata.tussock.clippy-denied` names the version in an answer such as
/// `clippy 0.1.96 (ac68faa20c 2026-05-25)`.
fn denied(metadata: &str, version: &str) -> Result<bool> {
    let metadata: Value = serde_json::from_str(metadata)?;
    let list = metadata
        .pointer("/metadata/tussock/clippy-denied")
        .and_then(Value::as_array);
    let list = list.context("Cargo.toml has no workspace.metadata.tussock.clippy-denied")?;
    let number = version
        .split_whitespace()
        .nth(1)
        .with_context(|| format!("clippy says `{version}`"))?;
    Ok(list.iter().any(|item| item == number))
}

#[cfg(test)]
mod tests {
    use super::*;

    const METADATA: &str =
        r#"{"packages":[],"metadata":{"tussock":{"clippy-denied":["0.1.95","0.1.96"]}}}"#;

    #[test]
    fn only_named_versions_are_strict() {
        assert!(denied(METADATA, "clippy 0.1.96 (ac68faa20c 2026-05-25)\n").unwrap());
        assert!(denied(METADATA, "clippy 0.1.95").unwrap());
        assert!(!denied(METADATA, "clippy 0.1.97 (0 2026-07-01)").unwrap());
        assert!(!denied(METADATA, "clippy 0.1.9").unwrap());
    }

    #[test]
    fn a_missing_list_is_an_error_and_not_leniency() {
        assert!(denied(r#"{"metadata":null}"#, "clippy 0.1.96").is_err());
        assert!(denied(METADATA, "").is_err());
    }
}
