//! The engines that a short walk is made in beside Chromium: Firefox and WebKit.

use std::path::Path;

use anyhow::Result;

use crate::debian;

/// Tells the browser tests which engines they must find.
pub(crate) const VARIABLE: &str = "TUSSOCK_ENGINES";

/// An engine, the Debian packages that bring it, and a program that is there when they are.
struct Engine {
    name: &'static str,
    packages: &'static [&'static str],
    program: &'static str,
}

const ENGINES: [Engine; 2] = [
    Engine {
        name: "firefox",
        packages: &["firefox-esr"],
        program: "/usr/bin/firefox-esr",
    },
    Engine {
        name: "webkit",
        packages: &["webkit2gtk-driver", "xvfb"],
        program: "/usr/bin/WebKitWebDriver",
    },
];

/// Gets the engines where Debian has them, and names those that are here, separated by commas. An engine that this
/// system cannot have is said and left out.
///
/// # Errors
/// When a package cannot be installed.
pub(crate) fn find() -> Result<String> {
    if debian::here() && debian::root() {
        let packages: Vec<&str> = ENGINES
            .iter()
            .flat_map(|engine| engine.packages.iter().copied())
            .collect();
        debian::install(&packages)?;
    }
    Ok(named(|program| Path::new(program).exists()))
}

fn named(is_there: impl Fn(&str) -> bool) -> String {
    let (here, away): (Vec<&Engine>, Vec<&Engine>) =
        ENGINES.iter().partition(|engine| is_there(engine.program));
    for engine in away {
        eprintln!(
            "    no walk in {}: {} is not here",
            engine.name, engine.program
        );
    }
    let names: Vec<&str> = here.iter().map(|engine| engine.name).collect();
    names.join(",")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_engines_that_are_here_are_asked_for() {
        assert_eq!(named(|_| true), "firefox,webkit");
        assert_eq!(named(|program| program.contains("WebKit")), "webkit");
        assert_eq!(named(|_| false), "");
    }
}
