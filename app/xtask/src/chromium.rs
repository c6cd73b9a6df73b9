//! The browser: the one named, the machine's, Debian's package, or Playwright's own download.

use std::path::{Path, PathBuf};
use std::process::Command;

use anyhow::{Context as _, Result};

use crate::folders::Folders;
use crate::node::Node;
use crate::{debian, run};

/// Names the program, here and to the browser tests.
pub(crate) const VARIABLE: &str = "TUSSOCK_CHROMIUM";
const NAMES: [&str; 4] = [
    "chromium",
    "chromium-browser",
    "google-chrome-stable",
    "google-chrome",
];
const FONTS: &str = "/usr/share/fonts/truetype";

/// Finds the browser, or gets it.
///
/// # Errors
/// When neither is possible; the message says what to install.
pub(crate) fn find(folders: &Folders, node: &Node) -> Result<PathBuf> {
    if let Some(named) = std::env::var_os(VARIABLE) {
        return Ok(named.into());
    }
    if debian::here() && debian::root() {
        let mut wanted = Vec::new();
        if on_path().is_none() {
            wanted.push("chromium");
        }
        if !Path::new(FONTS).exists() {
            wanted.push("fonts-dejavu-core");
        }
        debian::install(&wanted)?;
    }
    if let Some(program) = on_path() {
        return Ok(program);
    }
    playwrights(folders, node)
        .with_context(|| format!("no Chromium: install it, or name it in {VARIABLE}"))
}

fn on_path() -> Option<PathBuf> {
    let path = std::env::var_os("PATH")?;
    let dirs: Vec<PathBuf> = std::env::split_paths(&path).collect();
    NAMES
        .iter()
        .flat_map(|name| dirs.iter().map(move |dir| dir.join(name)))
        .find(|program| program.is_file())
}

fn playwrights(folders: &Folders, node: &Node) -> Result<PathBuf> {
    let e2e = folders.e2e();
    let script = |text: &str| {
        let mut node = node.command();
        node.current_dir(&e2e)
            .args(["--input-type=module", "--eval", text]);
        node
    };
    let place = "import { chromium } from '@playwright/test'; process.stdout.write(chromium.executablePath());";
    let program = PathBuf::from(run::read(&mut script(place))?);
    if !program.is_file() {
        let mut install: Command = node.command();
        install.current_dir(&e2e).args([
            "node_modules/@playwright/test/cli.js",
            "install",
            "chromium",
        ]);
        run::must(&mut install)?;
    }
    Ok(program)
}
