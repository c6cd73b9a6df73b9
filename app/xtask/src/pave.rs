//! Looks at the machine, follows the road that `road` chooses, and comes back with a compiler.

use std::path::{Path, PathBuf};
use std::process::Command;
use std::time::Duration;

use anyhow::{Context as _, Result, bail};

use crate::compiler::{Compiler, Version, WASM};
use crate::road::{Found, Road, choose};
use crate::{debian, run};

/// How long rustup may try; where its downloads are closed off it can hang.
const RUSTUP_LIMIT: Duration = Duration::from_secs(20);
/// How long rustup may take for clippy and rustfmt.
const COMPONENTS_LIMIT: Duration = Duration::from_mins(2);
const DEBIAN_RUSTC: &str = "/usr/bin/rustc";
const DEBIAN_CARGO: &str = "/usr/bin/cargo";

/// Finds or gets a compiler that can build for the browser, and prints what it is.
///
/// # Errors
/// When no road leads to one; the message says what to install.
pub(crate) fn pave(target: &Path) -> Result<Compiler> {
    let mut tried = Tried::default();
    let debian = loop {
        let found = survey(tried);
        match choose(found) {
            Road::Installed => break false,
            Road::Debian => break true,
            Road::AddTarget => {
                eprintln!(
                    "    asking rustup for {WASM}, for at most {} s",
                    RUSTUP_LIMIT.as_secs()
                );
                run::within(
                    Command::new("rustup").args(["target", "add", WASM]),
                    RUSTUP_LIMIT,
                );
                tried.rustup = true;
            }
            Road::GetDebian => {
                if let Err(error) = get_debian() {
                    eprintln!("    {error:#}");
                }
                tried.apt = true;
            }
            Road::Closed(closed) => bail!("{closed}"),
        }
    };
    linker_for_native()?;
    let (cargo, rustc) = if debian {
        (PathBuf::from(DEBIAN_CARGO), PathBuf::from(DEBIAN_RUSTC))
    } else {
        (
            std::env::var_os("CARGO").map_or_else(|| "cargo".into(), PathBuf::from),
            active_rustc(),
        )
    };
    let version = version(&rustc)?;
    println!("{}", version.text);
    Ok(Compiler {
        cargo,
        rustc,
        version,
        debian,
        target: target.to_owned(),
    })
}

/// Makes sure that this compiler's clippy and rustfmt are there.
///
/// # Errors
/// When they are not and rustup cannot add them.
pub(crate) fn lints(compiler: &Compiler) -> Result<()> {
    let there = |tool: &str| run::answers(compiler.native(tool).arg("--version"));
    if there("clippy") && there("fmt") {
        return Ok(());
    }
    if from_rustup() {
        run::within(
            Command::new("rustup").args(["component", "add", "clippy", "rustfmt"]),
            COMPONENTS_LIMIT,
        );
    }
    if !there("clippy") || !there("fmt") {
        bail!("cargo clippy and cargo fmt are needed: run `rustup component add clippy rustfmt`");
    }
    Ok(())
}

#[derive(Debug, Clone, Copy, Default)]
struct Tried {
    rustup: bool,
    apt: bool,
}

fn survey(tried: Tried) -> Found {
    let debian = debian::here();
    Found {
        target: has_target(),
        rustup: from_rustup(),
        rustup_tried: tried.rustup,
        debian,
        packages: debian && debian_ready(),
        apt_tried: tried.apt,
        root: debian::root(),
    }
}

/// The compiler that cargo would take: `RUSTC`, or the first on the path.
fn active_rustc() -> PathBuf {
    std::env::var_os("RUSTC").map_or_else(|| "rustc".into(), PathBuf::from)
}

fn has_target() -> bool {
    let mut ask = Command::new(active_rustc());
    ask.args(["--print", "target-libdir", "--target", WASM]);
    let Ok(dir) = run::read(&mut ask) else {
        return false;
    };
    let Ok(mut files) = std::fs::read_dir(dir.trim_end()) else {
        return false;
    };
    files.any(|file| {
        file.is_ok_and(|file| file.file_name().to_string_lossy().starts_with("libstd-"))
    })
}

/// rustup keeps each tool chain under a folder `toolchains`; a compiler from elsewhere it cannot add to.
fn from_rustup() -> bool {
    let sysroot = run::read(Command::new(active_rustc()).args(["--print", "sysroot"]));
    sysroot.is_ok_and(|dir| {
        Path::new(dir.trim_end())
            .parent()
            .is_some_and(|dir| dir.ends_with("toolchains"))
    }) && run::answers(Command::new("rustup").arg("--version"))
}

fn debian_ready() -> bool {
    debian::missing(&debian::TOOLCHAIN).is_empty()
        && version(Path::new(DEBIAN_RUSTC)).is_ok_and(|version| {
            debian::missing(&[&debian::linker_package(version.llvm)]).is_empty()
        })
}

fn get_debian() -> Result<()> {
    debian::install(&debian::TOOLCHAIN)?;
    let version = version(Path::new(DEBIAN_RUSTC))?;
    debian::install(&[&debian::linker_package(version.llvm)])
}

/// Tests and build scripts are linked by the machine's C compiler.
fn linker_for_native() -> Result<()> {
    if run::answers(Command::new("cc").arg("--version")) {
        return Ok(());
    }
    debian::install(&["gcc", "libc6-dev"])
        .context("no C compiler `cc`, which links programs for this machine")
}

fn version(rustc: &Path) -> Result<Version> {
    Version::parse(&run::read(Command::new(rustc).arg("-vV"))?)
}
