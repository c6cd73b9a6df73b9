//! Makes the folders that are served: `dist/` for hosting, one under `target/` for development.

use std::path::{Path, PathBuf};

use anyhow::{Context as _, Result, bail};

use crate::compiler::Compiler;
use crate::folders::{Folders, files_under, write};
use crate::node::{self, Node};
use crate::progress::Steps;
use crate::site::{Files, Site, assemble};
use crate::{bundle, squeeze};

/// Builds for hosting into `out`, another build of the same content when `stamp` is given.
///
/// # Errors
/// When a tool fails or `public/` does not hold together.
pub(crate) fn dist(
    folders: &Folders,
    compiler: &Compiler,
    steps: &mut Steps,
    stamp: Option<&str>,
    out: &Path,
) -> Result<Site> {
    let node = steps.run("node and npm packages", || {
        let node = Node::find(folders)?;
        node::install_packages(folders, &node)?;
        Ok(node)
    })?;
    let made = bundle::web(folders, compiler, &node, steps)?;
    steps.run("put the folder together", || {
        let site = assemble(&sources(folders, made)?, stamp)?;
        let mut files = site.files.clone();
        files.extend(squeeze::beside(&site.files, &folders.kept("squeezed"))?);
        place(&files, out)?;
        Ok(site)
    })
}

/// Builds for development and returns the folder: no Node, no wasm-opt, nothing compressed.
///
/// # Errors
/// When a tool fails or `public/` does not hold together.
pub(crate) fn dev(folders: &Folders, compiler: &Compiler, steps: &mut Steps) -> Result<PathBuf> {
    let made = bundle::dev(folders, compiler, steps)?;
    let out = folders.kept("serve");
    steps.run("put the folder together", || {
        place(&assemble(&sources(folders, made)?, None)?.files, &out)
    })?;
    Ok(out)
}

fn sources(folders: &Folders, made: Files) -> Result<Files> {
    let dir = folders.public();
    let mut sources = Files::new();
    for name in files_under(&dir)? {
        let bytes =
            std::fs::read(dir.join(&name)).with_context(|| format!("cannot read public/{name}"))?;
        sources.insert(name, bytes);
    }
    if !sources.contains_key("index.html") {
        bail!("public/index.html is missing");
    }
    for (name, bytes) in made {
        if sources.insert(name.clone(), bytes).is_some() {
            bail!("public/{name} would hide what wasm-bindgen wrote");
        }
    }
    Ok(sources)
}

/// Makes `out` hold these files and nothing else; leaves it alone when it does already.
fn place(files: &Files, out: &Path) -> Result<()> {
    if holds(files, out)? {
        eprintln!("    unchanged: {}", out.display());
        return Ok(());
    }
    if out.exists() {
        std::fs::remove_dir_all(out).with_context(|| format!("cannot empty {}", out.display()))?;
    }
    for (name, bytes) in files {
        write(&out.join(name), bytes)?;
    }
    eprintln!("    {} files in {}", files.len(), out.display());
    Ok(())
}

fn holds(files: &Files, out: &Path) -> Result<bool> {
    let there = files_under(out)?;
    Ok(there.len() == files.len()
        && there.iter().all(|name| {
            let bytes = std::fs::read(out.join(name));
            files
                .get(name)
                .is_some_and(|file| bytes.is_ok_and(|bytes| bytes == *file))
        }))
}
