//! The proof that the trade's crate reads no clock, no chance and no browser: nothing in its tree could.

use anyhow::{Result, bail};

use crate::compiler::{Compiler, WASM};
use crate::run;

/// Features of chrono that read a clock.
const CLOCKS: [&str; 3] = ["clock", "now", "wasmbind"];
/// Crates through which core would reach the browser, a clock or chance.
const IMPURE: [&str; 5] = ["js-sys", "web-sys", "getrandom", "web-time", "rand"];

/// Checks both trees as cargo resolves them for the browser.
///
/// # Errors
/// When something impure is in one of them.
pub(crate) fn prove(compiler: &Compiler) -> Result<()> {
    let tree = |args: &[&str]| {
        let mut cargo = compiler.native("tree");
        cargo
            .args(["--locked", "--target", WASM, "--prefix", "none"])
            .args(args);
        run::read(&mut cargo)
    };
    let clocks = clocks(&tree(&["--workspace", "--edges", "normal,features"])?);
    if !clocks.is_empty() {
        bail!(
            "somebody turns on {}; chrono stands in the workspace without a clock",
            clocks.join(", ")
        );
    }
    let core = tree(&["--package", "tussock-core", "--edges", "normal"])?;
    if !core.starts_with("tussock-core ") {
        bail!("cargo tree does not begin with tussock-core");
    }
    let impure = impure(&core);
    if !impure.is_empty() {
        bail!("tussock-core reaches {}", impure.join(", "));
    }
    Ok(())
}

/// The clock features of chrono in a tree with features, each line such as `chrono feature "alloc"`.
fn clocks(tree: &str) -> Vec<String> {
    let mut found: Vec<String> = tree
        .lines()
        .filter_map(|line| line.strip_prefix("chrono feature \"")?.split('"').next())
        .filter(|feature| CLOCKS.contains(feature))
        .map(|feature| format!("chrono/{feature}"))
        .collect();
    found.sort();
    found.dedup();
    found
}

/// The impure crates in a tree, each line such as `serde v1.0.0`.
fn impure(tree: &str) -> Vec<&str> {
    let mut found: Vec<&str> = tree
        .lines()
        .filter_map(|line| line.split(' ').next())
        .filter(|name| IMPURE.contains(name))
        .collect();
    found.sort_unstable();
    found.dedup();
    found
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_clock_is_found_once_and_other_features_are_not() {
        let tree = "tussock-core v0.1.0 (/clone/core)\nchrono feature \"alloc\"\nchrono v0.4.45\n\
                    chrono feature \"wasmbind\"\nchrono feature \"clock\" (*)\nchrono feature \"clock\"\n\
                    web-time feature \"now\"\n";
        assert_eq!(clocks(tree), ["chrono/clock", "chrono/wasmbind"]);
        assert!(clocks("chrono feature \"alloc\"\n").is_empty());
    }

    #[test]
    fn whole_names_only_are_impure() {
        let tree = "tussock-core v0.1.0 (/clone/core)\nrand_core v0.9.0\nrand v0.9.0\njs-sys v0.3.0 (*)\nserde v1.0.0\n";
        assert_eq!(impure(tree), ["js-sys", "rand"]);
        assert!(impure("serde v1.0.0\nrandom v1.0.0\n").is_empty());
    }
}
