//! Where things stand in a clone. Everything written goes under `target/`, `dist/` and `e2e/node_modules`.

use std::path::{Path, PathBuf};

use anyhow::{Context as _, Result};

/// The folders of one clone.
#[derive(Debug, Clone)]
pub(crate) struct Folders {
    /// The clone.
    pub(crate) root: PathBuf,
    /// cargo's target folder.
    pub(crate) target: PathBuf,
    /// This tool's own program, asked for at the start, before a build can put another in its place.
    pub(crate) tool: PathBuf,
}

impl Folders {
    /// Finds the clone that the current folder is in, or else the one that this tool was built from.
    ///
    /// # Errors
    /// When there is none.
    pub(crate) fn find() -> Result<Self> {
        let here = std::env::current_dir()?;
        let root = here
            .ancestors()
            .find(|dir| is_clone(dir))
            .map_or_else(
                || built_from().filter(|dir| is_clone(dir)),
                |dir| Some(dir.to_owned()),
            )
            .context("run this inside a clone of Tussock")?;
        let target = std::env::var_os("CARGO_TARGET_DIR")
            .map_or_else(|| root.join("target"), |dir| here.join(dir));
        Ok(Self {
            root,
            target,
            tool: std::env::current_exe()?,
        })
    }

    /// What is served as it is.
    pub(crate) fn public(&self) -> PathBuf {
        self.root.join("public")
    }

    /// The folder to host.
    pub(crate) fn dist(&self) -> PathBuf {
        self.root.join("dist")
    }

    /// The browser tests and the npm packages.
    pub(crate) fn e2e(&self) -> PathBuf {
        self.root.join("e2e")
    }

    /// What this tool keeps between runs.
    pub(crate) fn kept(&self, name: &str) -> PathBuf {
        self.target.join("tussock").join(name)
    }
}

fn is_clone(dir: &Path) -> bool {
    dir.join("app/xtask/Cargo.toml").exists() && dir.join("Cargo.lock").exists()
}

fn built_from() -> Option<PathBuf> {
    let manifest = PathBuf::from(std::env::var_os("CARGO_MANIFEST_DIR")?);
    Some(manifest.parent()?.parent()?.to_owned())
}

/// Every file under `dir` as a path with `/`, sorted; empty when `dir` is not there.
///
/// # Errors
/// When a folder cannot be read or a name is not UTF-8.
pub(crate) fn files_under(dir: &Path) -> Result<Vec<String>> {
    let mut files = Vec::new();
    if dir.exists() {
        walk(dir, "", &mut files)?;
    }
    files.sort();
    Ok(files)
}

fn walk(dir: &Path, prefix: &str, files: &mut Vec<String>) -> Result<()> {
    for entry in std::fs::read_dir(dir).with_context(|| format!("cannot read {}", dir.display()))? {
        let entry = entry?;
        let name = entry.file_name();
        let name = name
            .to_str()
            .with_context(|| format!("{} is not UTF-8", entry.path().display()))?;
        let path = format!("{prefix}{name}");
        if entry.path().is_dir() {
            walk(&entry.path(), &format!("{path}/"), files)?;
        } else {
            files.push(path);
        }
    }
    Ok(())
}

/// Writes a file and the folders above it.
///
/// # Errors
/// When the disk refuses.
pub(crate) fn write(path: &Path, bytes: &[u8]) -> Result<()> {
    let context = || format!("cannot write {}", path.display());
    if let Some(dir) = path.parent() {
        std::fs::create_dir_all(dir).with_context(context)?;
    }
    std::fs::write(path, bytes).with_context(context)
}
