//! Files compressed beforehand, so that any static server can send them small.

use std::io::Write as _;
use std::path::Path;

use anyhow::{Context as _, Result};
use brotli::enc::BrotliEncoderParams;
use flate2::Compression;
use flate2::write::GzEncoder;

use crate::folders::write;
use crate::site::Files;
use crate::stamp::{hex, sha256};

/// What is compressed by its own format already.
const DENSE: [&str; 6] = ["png", "jpg", "webp", "avif", "woff2", "gz"];

/// A file's brotli and gzip forms, each only where it is smaller than the file.
#[derive(Debug, Default, PartialEq, Eq)]
pub(crate) struct Squeezed {
    /// Brotli, quality 11.
    pub(crate) br: Option<Vec<u8>>,
    /// Gzip, level 9.
    pub(crate) gz: Option<Vec<u8>>,
}

/// The compressed forms of every file that gains by it, as `NAME.br` and `NAME.gz`. Forms made before are kept
/// in `cache` by the content's hash.
///
/// # Errors
/// When the disk refuses.
pub(crate) fn beside(files: &Files, cache: &Path) -> Result<Files> {
    let mut made = Files::new();
    for (name, bytes) in files.iter().filter(|(name, _)| gains(name)) {
        let squeezed = cached(bytes, cache)?;
        made.extend(squeezed.br.map(|bytes| (format!("{name}.br"), bytes)));
        made.extend(squeezed.gz.map(|bytes| (format!("{name}.gz"), bytes)));
    }
    Ok(made)
}

fn gains(name: &str) -> bool {
    let extension = Path::new(name)
        .extension()
        .and_then(|extension| extension.to_str());
    !extension.is_some_and(|extension| DENSE.contains(&extension))
}

/// An empty file in the cache says that the form is not smaller than the content.
fn cached(bytes: &[u8], cache: &Path) -> Result<Squeezed> {
    let key = hex(&sha256(bytes));
    let (br, gz) = (
        cache.join(format!("{key}.br")),
        cache.join(format!("{key}.gz")),
    );
    if let (Ok(br), Ok(gz)) = (std::fs::read(&br), std::fs::read(&gz)) {
        let some = |bytes: Vec<u8>| Some(bytes).filter(|bytes| !bytes.is_empty());
        return Ok(Squeezed {
            br: some(br),
            gz: some(gz),
        });
    }
    let squeezed = squeeze(bytes)?;
    for (path, form) in [(br, &squeezed.br), (gz, &squeezed.gz)] {
        // Renamed when whole: another run may be reading.
        let part = path.with_extension(format!("part-{}", std::process::id()));
        write(&part, form.as_deref().unwrap_or_default())?;
        std::fs::rename(&part, &path)?;
    }
    Ok(squeezed)
}

fn squeeze(bytes: &[u8]) -> Result<Squeezed> {
    let params = BrotliEncoderParams {
        quality: 11,
        lgwin: 22,
        size_hint: bytes.len(),
        ..Default::default()
    };
    let mut br = Vec::new();
    brotli::BrotliCompress(&mut &bytes[..], &mut br, &params).context("brotli failed")?;
    let mut gz = GzEncoder::new(Vec::new(), Compression::best());
    gz.write_all(bytes)?;
    let gz = gz.finish()?;
    let smaller = |form: Vec<u8>| Some(form).filter(|form| form.len() < bytes.len());
    Ok(Squeezed {
        br: smaller(br),
        gz: smaller(gz),
    })
}

#[cfg(test)]
mod tests {
    use std::io::Read as _;

    use super::*;

    #[test]
    fn both_forms_give_the_content_back() {
        let bytes = "hay and more hay, ".repeat(200).into_bytes();
        let squeezed = squeeze(&bytes).unwrap();
        let mut back = Vec::new();
        brotli::BrotliDecompress(&mut squeezed.br.unwrap().as_slice(), &mut back).unwrap();
        assert_eq!(back, bytes);
        back.clear();
        flate2::read::GzDecoder::new(squeezed.gz.unwrap().as_slice())
            .read_to_end(&mut back)
            .unwrap();
        assert_eq!(back, bytes);
    }

    #[test]
    fn what_does_not_get_smaller_is_left_as_it_is() {
        assert_eq!(squeeze(b"x").unwrap(), Squeezed::default());
        assert!(!gains("icons/icon-192.png") && gains("app.wasm") && gains("LICENSE-MIT"));
    }
}
