//! Debian's packages: which are installed, and getting the missing ones.

use std::path::Path;
use std::process::Command;

use anyhow::{Result, bail};

use crate::run;

/// The packages of the tool chain, without the linker, whose name follows from the compiler's LLVM.
pub(crate) const TOOLCHAIN: [&str; 5] = [
    "rustc-web",
    "cargo-web",
    "rust-web-src",
    "rust-web-clippy",
    "rustfmt-web",
];

/// Whether this machine installs packages with apt.
pub(crate) fn here() -> bool {
    Path::new("/etc/debian_version").exists() && Path::new("/usr/bin/apt-get").exists()
}

/// Whether we may install packages.
pub(crate) fn root() -> bool {
    run::read(Command::new("id").arg("-u")).is_ok_and(|id| id.trim() == "0")
}

/// Those of `names` that are not installed.
pub(crate) fn missing<'a>(names: &[&'a str]) -> Vec<&'a str> {
    names
        .iter()
        .filter(|name| !installed(name))
        .copied()
        .collect()
}

fn installed(name: &str) -> bool {
    let mut query = Command::new("dpkg-query");
    query.args(["--show", "--showformat", "${db:Status-Status}", name]);
    run::read(&mut query).is_ok_and(|status| status == "installed")
}

/// Installs packages: prints the apt line first, then runs it. Does nothing when all are there.
///
/// # Errors
/// When something is missing and we are not root on Debian, or apt fails.
pub(crate) fn install(names: &[&str]) -> Result<()> {
    let missing = missing(names);
    if missing.is_empty() {
        return Ok(());
    }
    if !here() || !root() {
        bail!("missing: {}; install it and run again", missing.join(", "));
    }
    eprintln!(
        "    Debian packages are missing. Running: apt-get update && apt-get install -y --no-install-recommends {}",
        missing.join(" ")
    );
    run::must(apt().args(["update", "-q"]))?;
    run::must(
        apt()
            .args(["install", "-y", "-q", "--no-install-recommends"])
            .args(missing),
    )
}

fn apt() -> Command {
    let mut apt = Command::new("apt-get");
    apt.env("DEBIAN_FRONTEND", "noninteractive");
    apt
}

/// The package that holds the wasm linker of this LLVM.
pub(crate) fn linker_package(llvm: u32) -> String {
    format!("lld-{llvm}")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_linker_follows_the_compilers_llvm() {
        assert_eq!(linker_package(22), "lld-22");
    }

    #[test]
    fn what_is_not_installed_is_missing() {
        assert_eq!(
            missing(&["tussock-no-such-package"]),
            ["tussock-no-such-package"]
        );
    }
}
