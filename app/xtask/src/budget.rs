//! What the first visit downloads, against what it may.

use std::fmt::Write as _;
use std::path::Path;

use anyhow::{Context as _, Result, bail};

use crate::folders::files_under;

/// Bytes of everything that the first visit downloads, compressed with brotli where that is smaller.
const WHOLE: u64 = 450_000;
/// Bytes of the wasm among them.
const WASM: u64 = 400_000;
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
    let plain: u64 = sizes.iter().map(|size| size.plain).sum();
    let _ = writeln!(
        text,
        "{:<width$}  {plain:>9}  {:>9}  of {WHOLE}",
        "first visit",
        whole(sizes)
    );
    let _ = writeln!(
        text,
        "{:<width$}  {:>9}  {:>9}  of {WASM}",
        "wasm alone",
        "",
        wasm(sizes)
    );
    text
}

fn judge(sizes: &[Size]) -> Result<()> {
    if wasm(sizes) == 0 {
        bail!("there is no wasm in the folder");
    }
    for (what, bytes, limit) in [
        ("the first visit", whole(sizes), WHOLE),
        ("the wasm", wasm(sizes), WASM),
    ] {
        if bytes > limit {
            bail!("{what} is {bytes} bytes in brotli, over {limit}");
        }
    }
    Ok(())
}

fn whole(sizes: &[Size]) -> u64 {
    sizes.iter().map(|size| size.sent).sum()
}

fn wasm(sizes: &[Size]) -> u64 {
    let modules = sizes.iter().filter(|size| {
        Path::new(&size.name)
            .extension()
            .is_some_and(|end| end == "wasm")
    });
    modules.map(|size| size.sent).sum()
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
    fn both_limits_hold() {
        assert!(judge(&[size("app.wasm", 400_000), size("app.js", 50_000)]).is_ok());
        let whole = judge(&[size("app.wasm", 400_000), size("app.js", 50_001)]).unwrap_err();
        assert!(whole.to_string().contains("first visit"), "{whole}");
        let wasm = judge(&[size("app.wasm", 400_001)]).unwrap_err();
        assert!(wasm.to_string().contains("the wasm"), "{wasm}");
        assert!(judge(&[size("app.js", 1)]).is_err());
    }

    #[test]
    fn the_table_has_every_file_and_both_sums() {
        let table = table(&[size("app.wasm", 10), size("index.html", 5)]);
        assert!(table.contains("app.wasm") && table.contains("index.html"));
        assert!(
            table.contains("15  of 450000") && table.contains("10  of 400000"),
            "{table}"
        );
    }
}
