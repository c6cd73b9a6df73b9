//! What `rustc -vV` says, and commands that use one compiler throughout.

use std::ffi::OsString;
use std::path::{Path, PathBuf};
use std::process::Command;

use anyhow::{Context as _, Result};

/// The target that the browser runs.
pub(crate) const WASM: &str = "wasm32-unknown-unknown";

/// The parts of `rustc -vV` that decide what can be reused.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct Version {
    /// The whole answer, for the log.
    pub(crate) text: String,
    /// The commit the compiler was made from; part of every cache key.
    pub(crate) commit: String,
    /// The major version of its LLVM, which names the linker package.
    pub(crate) llvm: u32,
}

impl Version {
    /// Reads the answer of `rustc -vV`.
    ///
    /// # Errors
    /// When a line is missing.
    pub(crate) fn parse(text: &str) -> Result<Self> {
        let field = |name: &str| {
            text.lines()
                .find_map(|line| line.strip_prefix(name)?.strip_prefix(": "))
                .with_context(|| format!("`rustc -vV` has no line `{name}`"))
        };
        let release = field("release")?;
        let commit = match field("commit-hash")? {
            // A compiler built without its repository is known by its release alone.
            "unknown" => release,
            hash => hash,
        };
        let llvm = field("LLVM version")?;
        let major = llvm.split('.').next().and_then(|major| major.parse().ok());
        Ok(Self {
            text: text.trim_end().to_owned(),
            commit: commit.to_owned(),
            llvm: major.with_context(|| format!("LLVM version `{llvm}` has no major number"))?,
        })
    }

    /// The linker of the LLVM this compiler writes for.
    pub(crate) fn linker(&self) -> String {
        format!("wasm-ld-{}", self.llvm)
    }
}

/// One compiler and its cargo, for everything that is built in a run.
#[derive(Debug, Clone)]
pub(crate) struct Compiler {
    /// The cargo to call.
    pub(crate) cargo: PathBuf,
    /// The compiler it must use.
    pub(crate) rustc: PathBuf,
    /// What that compiler says it is.
    pub(crate) version: Version,
    /// Whether it is Debian's, which has no library for wasm32 and builds one from its sources.
    pub(crate) debian: bool,
    /// Where cargo writes.
    pub(crate) target: PathBuf,
}

impl Compiler {
    /// A cargo command for this machine.
    pub(crate) fn native(&self, subcommand: &str) -> Command {
        let mut command = Command::new(&self.cargo);
        self.settle(&mut command);
        command.arg(subcommand);
        command
    }

    /// A cargo command for the browser, in a target folder of its own: there `RUSTC_BOOTSTRAP` is always the
    /// same, so that build scripts which look at it do not run again on every change of sides.
    pub(crate) fn wasm(&self, subcommand: &str) -> Command {
        let mut command = self.native(subcommand);
        command.env("CARGO_TARGET_DIR", self.web());
        command.args(["--target", WASM]);
        if self.debian {
            command
                .env("RUSTC_BOOTSTRAP", "1")
                .env(
                    "CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_LINKER",
                    self.version.linker(),
                )
                .args(["-Z", "build-std=std,panic_abort"]);
        }
        command
    }

    /// The target folder of the browser's side.
    pub(crate) fn web(&self) -> PathBuf {
        self.target.join("web")
    }

    /// Points a command at this compiler, and hides from it what cargo told us about ourselves.
    fn settle(&self, command: &mut Command) {
        for (name, _) in std::env::vars_os() {
            if name.to_str().is_some_and(about_ourselves) {
                command.env_remove(name);
            }
        }
        command.env("CARGO_TARGET_DIR", &self.target);
        if self.debian {
            command
                .env("RUSTC", &self.rustc)
                .env(
                    "PATH",
                    debian_first(std::env::var_os("PATH"), &cargo_home()),
                )
                // These point into the tool chain that called us.
                .env_remove("LD_LIBRARY_PATH")
                .env_remove("RUSTUP_TOOLCHAIN")
                .env_remove("RUSTC_BOOTSTRAP")
                .env_remove("RUSTDOC");
        }
    }
}

/// Gives a command for the browser flags of its own, nightly ones among them: a compiler that drops one says so.
pub(crate) fn flags(command: &mut Command, flags: &str) {
    command
        .env("CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUSTFLAGS", flags)
        .env("RUSTC_BOOTSTRAP", "1");
}

/// Whether cargo set this variable for xtask itself; build scripts of others must not see it.
fn about_ourselves(name: &str) -> bool {
    name.starts_with("CARGO_PKG_")
        || name.starts_with("CARGO_MANIFEST_")
        || matches!(name, "CARGO_BIN_NAME" | "CARGO_CRATE_NAME" | "CARGO")
}

/// The search path with Debian's programs first. cargo looks for `cargo-clippy` in its own home before the path
/// unless the path names that home, so it is named, last.
fn debian_first(path: Option<OsString>, cargo_home: &Path) -> OsString {
    let mut dirs = vec![PathBuf::from("/usr/bin"), PathBuf::from("/bin")];
    if let Some(path) = path {
        let bin = cargo_home.join("bin");
        dirs.extend(std::env::split_paths(&path).filter(|dir| *dir != bin));
    }
    dirs.push(cargo_home.join("bin"));
    std::env::join_paths(dirs).unwrap_or_else(|_| OsString::from("/usr/bin:/bin"))
}

fn cargo_home() -> PathBuf {
    std::env::var_os("CARGO_HOME").map_or_else(
        || PathBuf::from(std::env::var_os("HOME").unwrap_or_default()).join(".cargo"),
        PathBuf::from,
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    const RUSTC: &str = "rustc 1.96.0 (ac68faa20 2026-05-25) (built from a source tarball)
binary: rustc
commit-hash: ac68faa20c58cbccd01ee7208bf3b6e93a7d7f96
commit-date: 2026-05-25
host: x86_64-unknown-linux-gnu
release: 1.96.0
LLVM version: 22.1.8
";

    fn compiler(debian: bool) -> Compiler {
        Compiler {
            cargo: "/usr/bin/cargo".into(),
            rustc: "/usr/bin/rustc".into(),
            version: Version::parse(RUSTC).unwrap(),
            debian,
            target: "/clone/target".into(),
        }
    }

    /// What a command sets a variable to: `-` when it hides it, nothing when it leaves it as it is.
    fn env(command: &Command, name: &str) -> String {
        let found = command.get_envs().find(|(key, _)| *key == name);
        found.map_or_else(String::new, |(_, value)| {
            value.map_or("-".into(), |value| value.to_string_lossy().into_owned())
        })
    }

    fn args(command: &Command) -> Vec<String> {
        command
            .get_args()
            .map(|arg| arg.to_string_lossy().into_owned())
            .collect()
    }

    #[test]
    fn reads_commit_and_llvm() {
        let version = Version::parse(RUSTC).unwrap();
        assert_eq!(version.commit, "ac68faa20c58cbccd01ee7208bf3b6e93a7d7f96");
        assert_eq!(version.linker(), "wasm-ld-22");
        assert!(Version::parse("rustc 1.96.0").is_err());
    }

    #[test]
    fn an_unknown_commit_is_replaced_by_the_release() {
        let text = RUSTC.replace("ac68faa20c58cbccd01ee7208bf3b6e93a7d7f96", "unknown");
        assert_eq!(Version::parse(&text).unwrap().commit, "1.96.0");
    }

    #[test]
    fn bootstrap_and_linker_are_for_the_wasm_commands_of_debian_only() {
        let native = compiler(true).native("test");
        assert_eq!(env(&native, "RUSTC_BOOTSTRAP"), "-");
        assert_eq!(env(&native, "RUSTC"), "/usr/bin/rustc");
        assert_eq!(args(&native), ["test"]);

        let wasm = compiler(true).wasm("build");
        assert_eq!(env(&wasm, "RUSTC_BOOTSTRAP"), "1");
        assert_eq!(
            env(&wasm, "CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_LINKER"),
            "wasm-ld-22"
        );
        assert_eq!(
            args(&wasm),
            ["build", "--target", WASM, "-Z", "build-std=std,panic_abort"]
        );

        let rustup = compiler(false).wasm("build");
        assert_eq!(env(&rustup, "RUSTC_BOOTSTRAP"), "");
        assert_eq!(env(&rustup, "RUSTC"), "");
        assert_eq!(args(&rustup), ["build", "--target", WASM]);
    }

    #[test]
    fn the_browser_side_has_its_own_target_folder() {
        let wasm = compiler(false).wasm("build");
        assert_eq!(env(&wasm, "CARGO_TARGET_DIR"), "/clone/target/web");
    }

    #[test]
    fn debian_programs_come_before_those_of_rustup() {
        let path = debian_first(
            Some("/home/a/.cargo/bin:/usr/local/bin".into()),
            Path::new("/home/a/.cargo"),
        );
        assert_eq!(path, "/usr/bin:/bin:/usr/local/bin:/home/a/.cargo/bin");
        assert_eq!(debian_first(None, Path::new("/c")), "/usr/bin:/bin:/c/bin");
    }
}
