//! What stands before the first screen, and what is fetched behind it, against what they may weigh.

use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::path::Path;

use anyhow::{Context as _, Result, bail};

use crate::cut::LATER;
use crate::folders::files_under;

/// Bytes of the first load: everything that stands before the first screen, compressed with brotli where that is smaller.
const FIRST: u64 = 450_000;
/// Bytes of the wasm among them.
const WASM: u64 = 400_000;
/// Bytes of each part that is fetched behind the first screen.
const PART: u64 = 400_000;
/// Served, but not downloaded by a visit.
const ASIDE: [&str; 3] = ["reset.html", "404.html", "robots.txt"];

/// Prints the size of every file of a built folder.
///
/// # Errors
/// When a limit is passed, or there is no wasm.
pub(crate) fn check(dist: &Path) -> Result<()> {
    let sizes = sizes(dist)?;
    print!("{}", table(&sizes));
    judge(&sizes)
}

/// A served file with its bytes as they are and as they are sent.
#[derive(Debug, PartialEq, Eq)]
struct Size {
    name: String,
    plain: u64,
    sent: u64,
}

fn sizes(dist: &Path) -> Result<Vec<Size>> {
    let length = |name: &str| {
        std::fs::metadata(dist.join(name))
            .map(|file| file.len())
            .with_context(|| format!("cannot read dist/{name}"))
    };
    let names = files_under(dist)?;
    let squeezed = |name: &str, extension: &str| {
        name.strip_suffix(extension)
            .is_some_and(|name| names.iter().any(|other| other == name))
    };
    names
        .iter()
        .filter(|name| {
            !ASIDE.contains(&name.as_str()) && !squeezed(name, ".br") && !squeezed(name, ".gz")
        })
        .map(|name| {
            let br = format!("{name}.br");
            let plain = length(name)?;
            let sent = if names.contains(&br) {
                length(&br)?
            } else {
                plain
            };
            Ok(Size {
                name: name.clone(),
                plain,
                sent,
            })
        })
        .collect()
}

fn table(sizes: &[Size]) -> String {
    let width = sizes
        .iter()
        .map(|size| size.name.len())
        .chain([24])
        .max()
        .unwrap_or(24);
    let mut text = format!("{:<width$}  {:>9}  {:>9}\n", "file", "bytes", "brotli");
    for size in sizes {
        let _ = writeln!(
            text,
            "{:<width$}  {:>9}  {:>9}",
            size.name, size.plain, size.sent
        );
    }
    for (what, bytes, limit) in sums(sizes) {
        let _ = writeln!(text, "{what:<width$}  {:>9}  {bytes:>9}  of {limit}", "");
    }
    for (place, bytes) in waits(sizes) {
        let what = format!("{place} waits for");
        let _ = writeln!(text, "{what:<width$}  {:>9}  {bytes:>9}", "");
    }
    let sent: u64 = sizes.iter().map(|size| size.sent).sum();
    let plain: u64 = sizes.iter().map(|size| size.plain).sum();
    let _ = writeln!(
        text,
        "{:<width$}  {plain:>9}  {sent:>9}",
        "kept on the device"
    );
    text
}

/// Each sum by its name, with its limit: of the first load, and of each part behind it.
fn sums(sizes: &[Size]) -> Vec<(String, u64, u64)> {
    let sum = |counts: &dyn Fn(&Size) -> bool| {
        sizes
            .iter()
            .filter(|size| counts(size))
            .map(|size| size.sent)
            .sum()
    };
    let behind = |size: &Size| part(size).is_some();
    let mut sums = vec![
        ("first load".to_owned(), sum(&|size| !behind(size)), FIRST),
        (
            "wasm of it".to_owned(),
            sum(&|size| !behind(size) && is_wasm(size)),
            WASM,
        ),
    ];
    sums.extend(sizes.iter().filter_map(|size| {
        let part = part(size)?;
        Some((format!("behind it: {part}"), size.sent, PART))
    }));
    sums
}

/// What the screens of each place wait for: its own part, and those that it shares with others.
fn waits(sizes: &[Size]) -> BTreeMap<&str, u64> {
    let mut waits = BTreeMap::new();
    for size in sizes {
        for place in part(size).into_iter().flat_map(|part| part.split('-')) {
            *waits.entry(place).or_default() += size.sent;
        }
    }
    waits
}

/// The places that need a part which is fetched behind the first screen, as its name has them.
fn part(size: &Size) -> Option<&str> {
    let (name, _hash) = size.name.rsplit_once('-')?;
    name.strip_prefix(LATER)
}

fn judge(sizes: &[Size]) -> Result<()> {
    if !sizes.iter().any(is_wasm) {
        bail!("there is no wasm in the folder");
    }
    for (what, bytes, limit) in sums(sizes) {
        if bytes > limit {
            bail!("{what}: {bytes} bytes in brotli, over {limit}");
        }
    }
    Ok(())
}

fn is_wasm(size: &Size) -> bool {
    Path::new(&size.name)
        .extension()
        .is_some_and(|end| end == "wasm")
}

#[cfg(test)]
mod tests {
    use super::*;

    fn size(name: &str, sent: u64) -> Size {
        Size {
            name: name.to_owned(),
            plain: sent * 3,
            sent,
        }
    }

    #[test]
    fn every_limit_holds() {
        let all = |app, script, later| {
            judge(&[
                size("app-1a2b3c4d5e.wasm", app),
                size("app-1a2b3c4d5e.js", script),
                size("later-horses-1a2b3c4d5e.wasm", 400_000),
                size("later-horses-shed-1a2b3c4d5e.wasm", later),
            ])
        };
        assert!(all(400_000, 50_000, 400_000).is_ok());
        let said = |judged: Result<()>| judged.unwrap_err().to_string();
        assert!(said(all(400_000, 50_001, 0)).contains("first load"));
        assert!(said(all(400_001, 0, 0)).contains("wasm of it"));
        assert!(said(all(1, 1, 400_001)).contains("behind it: horses-shed:"));
        assert!(judge(&[size("app.js", 1)]).is_err());
    }

    #[test]
    fn the_table_has_every_file_and_every_sum() {
        let table = table(&[
            size("app.wasm", 10),
            size("later-shed-1a2b3c4d5e.wasm", 7),
            size("later-horses-shed-1a2b3c4d5e.wasm", 4),
            size("index.html", 5),
        ]);
        for part in [
            "app.wasm",
            "index.html",
            "15  of 450000",
            "10  of 400000",
            "behind it: horses-shed",
            "7  of 400000",
            "4  of 400000",
        ] {
            assert!(table.contains(part), "{part} in {table}");
        }
        let waits = |place: &str| {
            let line = table.lines().find(|line| line.starts_with(place));
            line.and_then(|line| line.split_whitespace().last())
        };
        assert_eq!(waits("shed waits for"), Some("11"), "{table}");
        assert_eq!(waits("horses waits for"), Some("4"), "{table}");
    }
}
