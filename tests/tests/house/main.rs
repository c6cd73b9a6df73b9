//! The house's own rules, held over the sources themselves.
//!
//! Each rule is a function from text to faults, so that it is shown to fail on a bad sample beside the run over the
//! repository. The files are read when the test runs.

mod layout;
mod literals;
mod manifests;
mod panics;
mod published;
mod rooms;
mod shop;
mod walk;
mod wire;
mod works;

/// Fails with one fault a line.
fn hold(faults: &[String]) {
    assert!(faults.is_empty(), "\n{}\n", faults.join("\n"));
}
