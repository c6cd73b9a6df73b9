//! What stands before the first screen, and what is fetched behind it, against what they may weigh.

use std::fmt::Write as _;
use std::path::Path;

use anyhow::{Context as _, Result, bail};

use crate::folders::files_under;

/// Bytes of the first load: everything that stands before the first screen, compressed with brotli where that is smaller.
const FIRST: u64 = 450_000;
/// Bytes of the wasm among them.
const WASM: u64 = 400_000;
/// Bytes of what is fetched behind the first screen and kept for the rest.
const LATER: u64 = 600_000;
/// The file that is fetched behind it, before its hash.
const BEHIND: &str = "later-";
/// Served, but not downloaded by a visit.
const ASIDE: [&str; 3] = ["reset.html", "404.html", "robots.txt"];

/// Prints the size of every file of a built folder.
///
/// # Errors
/// When one of the two limits is passed, or there is no wasm.
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
    let sent: u64 = sizes.iter().map(|size| size.sent).sum();
    let plain: u64 = sizes.iter().map(|size| size.plain).sum();
    let _ = writeln!(
        text,
        "{:<width$}  {plain:>9}  {sent:>9}",
        "kept on the device"
    );
    text
}

/// Each sum by its name, with its limit.
fn sums(sizes: &[Size]) -> [(&'static str, u64, u64); 3] {
    let sum = |counts: &dyn Fn(&Size) -> bool| {
        sizes
            .iter()
            .filter(|size| counts(size))
            .map(|size| size.sent)
            .sum()
    };
    let behind = |size: &Size| size.name.starts_with(BEHIND);
    [
        ("first load", sum(&|size| !behind(size)), FIRST),
        (
            "wasm of it",
            sum(&|size| !behind(size) && is_wasm(size)),
            WASM,
        ),
        ("fetched behind it", sum(&behind), LATER),
    ]
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
                size("later-1a2b3c4d5e.wasm", later),
            ])
        };
        assert!(all(400_000, 50_000, 600_000).is_ok());
        let said = |judged: Result<()>| judged.unwrap_err().to_string();
        assert!(said(all(400_000, 50_001, 0)).contains("first load"));
        assert!(said(all(400_001, 0, 0)).contains("wasm of it"));
        assert!(said(all(1, 1, 600_001)).contains("fetched behind it"));
        assert!(judge(&[size("app.js", 1)]).is_err());
    }

    #[test]
    fn the_table_has_every_file_and_every_sum() {
        let table = table(&[
            size("app.wasm", 10),
            size("later-1.wasm", 7),
            size("index.html", 5),
        ]);
        for part in [
            "app.wasm",
            "index.html",
            "15  of 450000",
            "10  of 400000",
            "7  of 600000",
        ] {
            assert!(table.contains(part), "{part} in {table}");
        }
    }
}
