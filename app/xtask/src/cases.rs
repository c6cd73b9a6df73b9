//! The cases of the repository, answered by the command and made ready for the browser.
//!
//! One folder holds both: `answer.js` and `answer_bg.wasm`, the core for a page, and beside them what
//! `core/examples/plan.rs` says of each case.

use std::path::{Path, PathBuf};
use std::process::Command;

use anyhow::{Context as _, Result, bail};
use wasm_bindgen_cli_support::Bindgen;

use crate::bundle::Make;
use crate::compiler::{Compiler, WASM};
use crate::folders::{Folders, files_under, write};
use crate::run;

/// What the script of the core is called; a walk imports it.
pub(crate) const SCRIPT: &str = "answer";

/// Builds the core for a page, asks the command for every case, and returns the folder with both.
///
/// # Errors
/// When a tool fails, the command cannot answer, or there is no case.
pub(crate) fn prepare(folders: &Folders, compiler: &Compiler) -> Result<PathBuf> {
    let out = folders.kept("cases");
    if out.exists() {
        std::fs::remove_dir_all(&out)?;
    }
    page(compiler, Make::Dev, &out)?;
    let dir = folders.root.join("core/examples/cases");
    let names = files_under(&dir)?;
    if names.is_empty() {
        bail!("there is no case in {}", dir.display());
    }
    let command = command(compiler)?;
    for name in names {
        let mut command = Command::new(&command);
        command.arg(dir.join(&name));
        write(&out.join(&name), run::read(&mut command)?.as_bytes())?;
    }
    Ok(out)
}

/// The command that answers a case. It is built with the workspace, as the tests were: alone it would take other
/// features of its dependencies and build them a second time.
fn command(compiler: &Compiler) -> Result<PathBuf> {
    let mut cargo = compiler.native("build");
    run::must(cargo.args([
        "--locked",
        "--workspace",
        "--exclude",
        "xtask",
        "--example",
        "plan",
    ]))?;
    Ok(compiler.target.join("debug/examples/plan"))
}

/// Builds the core for a page, as quickly or as small as the app is built.
///
/// # Errors
/// When a tool fails.
pub(crate) fn page(compiler: &Compiler, make: Make, out: &Path) -> Result<()> {
    let mut cargo = compiler.wasm("rustc");
    run::must(cargo.args([
        "--locked",
        "--package",
        "tussock-tests",
        "--lib",
        "--crate-type",
        "cdylib",
        "--profile",
        make.profile(),
    ]))?;
    let dir = compiler.web().join(WASM).join(make.folder());
    let wasm = dir.join("tussock_tests.wasm");
    let bytes = std::fs::read(&wasm).with_context(|| format!("cannot read {}", wasm.display()))?;
    Bindgen::new()
        .input_bytes(SCRIPT, bytes)
        .web(true)?
        .typescript(false)
        .generate_output()
        .context("wasm-bindgen failed")?
        .emit(out)
}
