//! The roads to a wasm32 compiler, and which one to take.
//!
//! The choice is a function of what was found alone, because no machine shows every case: the tests walk all of
//! them. Looking is in `survey`, going is in `pave`.

use std::fmt;

/// What was found on this machine.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[expect(
    clippy::struct_excessive_bools,
    reason = "each is one independent finding, and the tests walk all combinations"
)]
pub(crate) struct Found {
    /// The active rustc has the wasm32-unknown-unknown library.
    pub(crate) target: bool,
    /// The active rustc belongs to rustup, so that rustup can add to it.
    pub(crate) rustup: bool,
    /// rustup was already asked in this run.
    pub(crate) rustup_tried: bool,
    /// The machine installs packages with apt.
    pub(crate) debian: bool,
    /// Every Debian package of the tool chain is installed.
    pub(crate) packages: bool,
    /// apt was already asked in this run.
    pub(crate) apt_tried: bool,
    /// We may install packages.
    pub(crate) root: bool,
}

/// What to do next.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Road {
    /// Use the active compiler as it is.
    Installed,
    /// Ask rustup for the target, then look again.
    AddTarget,
    /// Use Debian's compiler and build the standard library from its sources.
    Debian,
    /// Install Debian's compiler, then look again.
    GetDebian,
    /// Nothing leads there; the person has to act.
    Closed(Closed),
}

/// Why no road is open.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Closed {
    /// rustup could not fetch the target and there is no other way here.
    RustupFailed,
    /// Debian packages would do, but only root can install them.
    NeedsRoot,
    /// apt ran and the packages are still not there.
    AptFailed,
    /// Neither rustup nor Debian.
    Nothing,
}

impl fmt::Display for Closed {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::RustupFailed => {
                "no wasm32 target: `rustup target add wasm32-unknown-unknown` did not succeed within 20 seconds; \
                 run it yourself where the network reaches it"
            }
            Self::NeedsRoot => {
                "no wasm32 target: run once as root `apt-get install rustc-web cargo-web rust-web-src \
                 rust-web-clippy rustfmt-web` and lld-N, N being the LLVM major of `/usr/bin/rustc -vV`"
            }
            Self::AptFailed => "no wasm32 target: apt did not install Debian's compiler; see its message above",
            Self::Nothing => {
                "no wasm32 target: install rustup (https://rustup.rs), then run \
                 `rustup target add wasm32-unknown-unknown`"
            }
        })
    }
}

/// The road to take, given what was found.
pub(crate) fn choose(found: Found) -> Road {
    if found.target {
        Road::Installed
    } else if found.rustup && !found.rustup_tried {
        Road::AddTarget
    } else if found.debian && found.packages {
        Road::Debian
    } else if found.debian && found.apt_tried {
        Road::Closed(Closed::AptFailed)
    } else if found.debian && found.root {
        Road::GetDebian
    } else if found.debian {
        Road::Closed(Closed::NeedsRoot)
    } else if found.rustup {
        Road::Closed(Closed::RustupFailed)
    } else {
        Road::Closed(Closed::Nothing)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn all() -> impl Iterator<Item = Found> {
        (0_u8..128).map(|bits| {
            let bit = |n: u8| bits & (1 << n) != 0;
            Found {
                target: bit(0),
                rustup: bit(1),
                rustup_tried: bit(2),
                debian: bit(3),
                packages: bit(4),
                apt_tried: bit(5),
                root: bit(6),
            }
        })
    }

    #[test]
    fn every_combination_follows_the_order_of_the_roads() {
        let mut seen = Vec::new();
        for found in all() {
            let road = choose(found);
            // Said a second time as conditions, each complete in itself, instead of as an order.
            let rustup_open = found.rustup && !found.rustup_tried;
            let past_rustup = !found.target && !rustup_open;
            let expected = [
                (found.target, Road::Installed),
                (!found.target && rustup_open, Road::AddTarget),
                (past_rustup && found.debian && found.packages, Road::Debian),
                (
                    past_rustup
                        && found.debian
                        && !found.packages
                        && !found.apt_tried
                        && found.root,
                    Road::GetDebian,
                ),
                (
                    past_rustup
                        && found.debian
                        && !found.packages
                        && !found.apt_tried
                        && !found.root,
                    Road::Closed(Closed::NeedsRoot),
                ),
                (
                    past_rustup && found.debian && !found.packages && found.apt_tried,
                    Road::Closed(Closed::AptFailed),
                ),
                (
                    past_rustup && !found.debian && found.rustup,
                    Road::Closed(Closed::RustupFailed),
                ),
                (
                    past_rustup && !found.debian && !found.rustup,
                    Road::Closed(Closed::Nothing),
                ),
            ];
            let holding: Vec<_> = expected.iter().filter(|(holds, _)| *holds).collect();
            assert_eq!(holding.len(), 1, "one condition holds for {found:?}");
            assert_eq!(road, holding[0].1, "{found:?}");
            if !seen.contains(&road) {
                seen.push(road);
            }
        }
        assert_eq!(seen.len(), 8, "every road is reached: {seen:?}");
    }

    #[test]
    fn apt_runs_only_as_root_on_debian_and_once() {
        for found in all().filter(|found| choose(*found) == Road::GetDebian) {
            assert!(
                found.debian && found.root && !found.apt_tried && !found.packages,
                "{found:?}"
            );
        }
    }

    /// Whatever rustup and apt answer, the walk ends at a compiler or at a message after at most three looks.
    #[test]
    fn the_walk_always_ends() {
        for start in all() {
            for answers in 0_u8..4 {
                let mut found = start;
                let mut looks = 0;
                loop {
                    looks += 1;
                    assert!(looks <= 3, "still walking from {start:?}");
                    match choose(found) {
                        Road::AddTarget => {
                            found.rustup_tried = true;
                            found.target = answers & 1 != 0;
                        }
                        Road::GetDebian => {
                            found.apt_tried = true;
                            found.packages = answers & 2 != 0;
                        }
                        Road::Installed | Road::Debian | Road::Closed(_) => break,
                    }
                }
            }
        }
    }

    #[test]
    fn each_closed_road_says_one_line() {
        for closed in [
            Closed::RustupFailed,
            Closed::NeedsRoot,
            Closed::AptFailed,
            Closed::Nothing,
        ] {
            let line = closed.to_string();
            assert!(
                !line.contains('\n') && line.starts_with("no wasm32 target: "),
                "{line}"
            );
        }
    }
}
