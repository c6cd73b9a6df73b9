//! The app as JavaScript and wasm: cargo, then the cut in parts, then wasm-bindgen, then wasm-opt.

use std::path::{Path, PathBuf};

use anyhow::{Context as _, Result, bail};
use wasm_bindgen_cli_support::Bindgen;

use crate::compiler::{Compiler, WASM, flags};
use crate::cut;
use crate::folders::Folders;
use crate::node::Node;
use crate::progress::Steps;
use crate::run;
use crate::site::Files;
use crate::stamp::{Stamp, fresh, keep};

/// How the app is built.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Make {
    /// Quick to build, for working on it.
    Dev,
    /// Small, for hosting.
    Web,
}

impl Make {
    pub(crate) const fn profile(self) -> &'static str {
        match self {
            Self::Dev => "dev",
            Self::Web => "web",
        }
    }

    /// cargo calls the folder of its dev profile something else.
    pub(crate) const fn folder(self) -> &'static str {
        match self {
            Self::Dev => "debug",
            Self::Web => "web",
        }
    }
}

/// What wasm-bindgen calls the module of `app`.
const BOUND_WASM: &str = "app_bg.wasm";

/// What only the build for hosting asks of the compiler, joined by spaces.
///
/// `split` marks where the app may be cut, which the tool finds by the linker's relocations. The rest saves bytes: erased
/// views are one type instead of one for every nesting, and nobody is ever shown the texts of `Debug`.
const WEB_FLAGS: &str = "--cfg=split --cfg=erase_components -Clink-arg=--emit-relocs -Zfmt-debug=none \
    -Zlocation-detail=none";

/// The wasm features that the compiler uses and every browser of the last years has.
const WASM_OPT: [&str; 7] = [
    "-Oz",
    "--enable-bulk-memory",
    "--enable-reference-types",
    "--enable-nontrapping-float-to-int",
    "--enable-sign-ext",
    "--enable-mutable-globals",
    "--enable-multivalue",
];

/// Builds for development and returns `app.js` and `app.wasm`.
///
/// # Errors
/// When a tool fails.
pub(crate) fn dev(folders: &Folders, compiler: &Compiler, steps: &mut Steps) -> Result<Files> {
    let wasm = steps.run("build the app (dev)", || compile(compiler, Make::Dev))?;
    steps.run("wasm-bindgen", || {
        let bound = bind(folders, compiler, Make::Dev, &wasm)?;
        Ok(Files::from([
            ("app.js".to_owned(), read(&bound.join("app.js"))?),
            ("app.wasm".to_owned(), read(&bound.join(BOUND_WASM))?),
        ]))
    })
}

/// Builds for hosting and returns `app.js` and `app.wasm`.
///
/// # Errors
/// When a tool fails.
pub(crate) fn web(
    folders: &Folders,
    compiler: &Compiler,
    node: &Node,
    steps: &mut Steps,
) -> Result<Files> {
    let wasm = steps.run("build the app (web)", || compile(compiler, Make::Web))?;
    let parts = steps.run("cut in parts", || divide(folders, compiler, &wasm))?;
    let bound = steps.run("wasm-bindgen", || {
        bind(folders, compiler, Make::Web, &parts.join(cut::FIRST))
    })?;
    steps.run("wasm-opt", || {
        let optimised =
            |name: &str, from: &Path| read(&optimise(folders, compiler, node, name, from)?);
        let app = String::from_utf8(read(&bound.join("app.js"))?)?;
        let mut files = Files::from([
            ("app.js".to_owned(), cut::joined(&app)?.into_bytes()),
            (
                "app.wasm".to_owned(),
                optimised("app.wasm", &bound.join(BOUND_WASM))?,
            ),
            (cut::JOIN.to_owned(), read(&parts.join(cut::JOIN))?),
        ]);
        for name in cut::later(&parts)? {
            let part = optimised(&name, &parts.join(&name))?;
            files.insert(name, part);
        }
        Ok(files)
    })
}

/// Cuts the wasm when it has changed, and returns the folder of the parts.
fn divide(folders: &Folders, compiler: &Compiler, wasm: &Path) -> Result<PathBuf> {
    let out = folders.kept("cut");
    let bytes = read(wasm)?;
    let stamp = Stamp::new("cut in parts", &compiler.version.commit)
        .part(&read(&folders.root.join("Cargo.lock"))?)
        .part(&bytes);
    unless_fresh(&out, stamp, || cut::cut(&bytes, &out))?;
    Ok(out)
}

/// Makes a folder anew, unless it was made from the same: what a step reads and its tools are in its stamp.
fn unless_fresh(out: &Path, stamp: Stamp, make: impl FnOnce() -> Result<()>) -> Result<()> {
    let (kept, stamp) = (out.join("stamp"), stamp.text());
    if fresh(&kept, &stamp) {
        eprintln!("    unchanged");
        return Ok(());
    }
    if out.exists() {
        std::fs::remove_dir_all(out)?;
    }
    std::fs::create_dir_all(out)?;
    make()?;
    keep(&kept, &stamp)
}

fn compile(compiler: &Compiler, make: Make) -> Result<PathBuf> {
    let mut cargo = compiler.wasm("build");
    if make == Make::Web {
        flags(&mut cargo, WEB_FLAGS);
    }
    cargo.args([
        "--locked",
        "--package",
        "tussock-app",
        "--profile",
        make.profile(),
    ]);
    run::must(&mut cargo)?;
    Ok(compiler
        .web()
        .join(WASM)
        .join(make.folder())
        .join("tussock_app.wasm"))
}

/// Runs wasm-bindgen when what it reads or the lock file, which has its version, has changed, and returns the folder it wrote to.
fn bind(folders: &Folders, compiler: &Compiler, make: Make, wasm: &Path) -> Result<PathBuf> {
    let out = folders.kept("bound").join(make.folder());
    let bytes = read(wasm)?;
    let stamp = Stamp::new("wasm-bindgen, lld exports kept", &compiler.version.commit)
        .part(&read(&folders.root.join("Cargo.lock"))?)
        .part(make.profile().as_bytes())
        .part(&bytes);
    unless_fresh(&out, stamp, || bindings(make, bytes, &out))?;
    Ok(out)
}

fn bindings(make: Make, bytes: Vec<u8>, out: &Path) -> Result<()> {
    let mut output = Bindgen::new()
        .input_bytes("app", bytes)
        .web(true)?
        .typescript(false)
        .omit_default_module_path(true)
        // The later parts reach the first through its table, stack and memory.
        .keep_lld_exports(make == Make::Web)
        .remove_name_section(make == Make::Web)
        .remove_producers_section(make == Make::Web)
        .generate_output()
        .context("wasm-bindgen failed")?;
    let inline = output
        .snippets()
        .iter()
        .filter(|(_, scripts)| !scripts.is_empty())
        .map(|(name, _)| name);
    if let Some(name) = inline
        .chain(output.local_modules().keys())
        .chain(output.npm_dependencies().keys())
        .next()
    {
        bail!(
            "a crate brings JavaScript of its own ({name}); it would need a place in the served folder"
        );
    }
    output.emit(out)
}

/// Runs wasm-opt on what wasm-bindgen wrote, when that or the tool has changed, and returns the file it wrote.
///
/// # Errors
/// When the tool fails.
pub(crate) fn optimise(
    folders: &Folders,
    compiler: &Compiler,
    node: &Node,
    name: &str,
    bound: &Path,
) -> Result<PathBuf> {
    let package = folders.e2e().join("node_modules/binaryen");
    let manifest = read(&package.join("package.json"))?;
    let stamp = Stamp::new("wasm-opt", &compiler.version.commit)
        .part(&manifest)
        .part(WASM_OPT.join(" ").as_bytes())
        .part(&read(bound)?);
    let out = folders.kept("shrunk").join(name);
    let done = out.join(name);
    unless_fresh(&out, stamp, || {
        let mut tool = node.command();
        tool.arg(package.join("bin/wasm-opt"))
            .arg(bound)
            .args(WASM_OPT)
            .arg("-o")
            .arg(&done);
        run::must(&mut tool)
    })?;
    Ok(done)
}

fn read(path: &Path) -> Result<Vec<u8>> {
    std::fs::read(path).with_context(|| format!("cannot read {}", path.display()))
}
