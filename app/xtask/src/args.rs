//! The command line.

use std::path::PathBuf;

use anyhow::{Result, bail};
use lexopt::prelude::*;

/// What `cargo xtask --help` prints.
pub(crate) const HELP: &str = "\
cargo xtask COMMAND

  serve [--port N]     build for development and serve it; without a port the same one each time where it is
                       free, so that what was typed in the browser is there again; port 0 takes any
  dist [--stamp S] [--out DIR]
                       build the folder to host: dist/, or DIR; S makes another build of the same content
  host [--dir DIR] [--port N] [--at /sub/path/]
                       serve a built folder (dist/) under a path
  test [--all]         format, lint, native tests, purity, bundle, size and browser tests;
                       --all adds the long loops
  measure [--solver]   Lighthouse on the built folder, medians of five, and the solver beside HiGHS;
                       --solver leaves Lighthouse out
  --help               this

Writes under target/ (or CARGO_TARGET_DIR), dist/ and e2e/node_modules only. A second run builds only what changed.
";

/// One call of the tool.
#[derive(Debug, PartialEq, Eq)]
pub(crate) enum Call {
    /// Print the help.
    Help,
    /// Build for development and serve.
    Serve {
        /// Where to listen; 0 for any.
        port: Option<u16>,
    },
    /// Build the folder to host.
    Dist {
        /// Makes another build of the same content.
        stamp: Option<String>,
        /// Instead of `dist/`.
        out: Option<PathBuf>,
    },
    /// Serve a built folder.
    Host {
        /// Instead of `dist/`.
        dir: Option<PathBuf>,
        /// Where to listen; 0 for any.
        port: u16,
        /// The path under which the folder stands.
        at: String,
    },
    /// Run every check.
    Test {
        /// The long loops too.
        all: bool,
    },
    /// Measure the built folder and the solver.
    Measure {
        /// The solver alone.
        solver: bool,
    },
}

/// Reads the words after the program's name.
///
/// # Errors
/// On an unknown command or option, or a value that is missing or does not fit.
pub(crate) fn parse<I>(words: I) -> Result<Call>
where
    I: IntoIterator,
    I::Item: Into<std::ffi::OsString>,
{
    let mut parser = lexopt::Parser::from_args(words);
    let mut command = None;
    let (mut port, mut all, mut at, mut solver) = (None, false, None, false);
    let (mut stamp, mut out, mut dir) = (None, None, None);
    while let Some(word) = parser.next()? {
        let name = command.as_deref().unwrap_or_default();
        match (name, word) {
            (_, Short('h') | Long("help")) => return Ok(Call::Help),
            ("", Value(word)) => command = Some(word.string()?),
            ("serve" | "host", Long("port")) => port = Some(parser.value()?.parse()?),
            ("dist", Long("stamp")) => stamp = Some(parser.value()?.string()?),
            ("dist", Long("out")) => out = Some(parser.value()?.into()),
            ("host", Long("dir")) => dir = Some(parser.value()?.into()),
            ("host", Long("at")) => at = Some(parser.value()?.string()?),
            ("test", Long("all")) => all = true,
            ("measure", Long("solver")) => solver = true,
            (_, word) => return Err(word.unexpected().into()),
        }
    }
    Ok(match command.as_deref() {
        None | Some("help") => Call::Help,
        Some("serve") => Call::Serve { port },
        Some("dist") => Call::Dist { stamp, out },
        Some("host") => Call::Host {
            dir,
            port: port.unwrap_or(0),
            at: at.unwrap_or_else(|| "/".to_owned()),
        },
        Some("test") => Call::Test { all },
        Some("measure") => Call::Measure { solver },
        Some(other) => bail!("unknown command `{other}`; see cargo xtask --help"),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(line: &str) -> Result<Call> {
        parse(line.split_whitespace())
    }

    #[test]
    fn each_command_takes_its_options() {
        assert_eq!(
            read("serve --port 8080").unwrap(),
            Call::Serve { port: Some(8080) }
        );
        assert_eq!(read("serve").unwrap(), Call::Serve { port: None });
        assert_eq!(
            read("dist --stamp B --out target/b").unwrap(),
            Call::Dist {
                stamp: Some("B".into()),
                out: Some("target/b".into())
            }
        );
        assert_eq!(
            read("host --dir d --port=1 --at /sub/path/").unwrap(),
            Call::Host {
                dir: Some("d".into()),
                port: 1,
                at: "/sub/path/".into()
            }
        );
        assert_eq!(read("test --all").unwrap(), Call::Test { all: true });
        for (line, solver) in [("measure", false), ("measure --solver", true)] {
            assert_eq!(read(line).unwrap(), Call::Measure { solver });
        }
        for line in ["", "--help", "-h", "help", "dist --help"] {
            assert_eq!(read(line).unwrap(), Call::Help, "{line}");
        }
    }

    #[test]
    fn what_does_not_belong_is_refused() {
        for line in [
            "fly",
            "serve --stamp B",
            "dist --port 1",
            "serve --port x",
            "serve --port 65536",
            "test all",
            "test --solver",
            "host --at",
        ] {
            assert!(read(line).is_err(), "{line}");
        }
    }

    #[test]
    fn the_help_names_every_command() {
        for name in [
            "serve", "dist", "host", "test", "measure", "--help", "--stamp", "--out", "--at",
            "--all", "--solver",
        ] {
            assert!(HELP.contains(name), "{name}");
        }
    }
}
