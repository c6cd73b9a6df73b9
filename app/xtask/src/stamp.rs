//! Stamps: a step's inputs and tool versions as one hash, kept beside what it made, so that the next run can
//! leave the step out.

use std::fmt::Write as _;
use std::path::Path;

use anyhow::Result;
use sha2::{Digest as _, Sha256};

use crate::folders::write;

/// The hash of everything a step depends on. Each part is written with its length, so that no two lists of
/// parts give the same bytes.
pub(crate) struct Stamp(Sha256);

impl Stamp {
    /// A stamp of this step by this compiler.
    pub(crate) fn new(step: &str, commit: &str) -> Self {
        Self(Sha256::new())
            .part(step.as_bytes())
            .part(commit.as_bytes())
    }

    /// Adds bytes.
    pub(crate) fn part(mut self, bytes: &[u8]) -> Self {
        self.0.update((bytes.len() as u64).to_le_bytes());
        self.0.update(bytes);
        self
    }

    /// The stamp as text.
    pub(crate) fn text(self) -> String {
        hex(&self.0.finalize())
    }
}

/// Whether the stamp kept at `path` is this one.
pub(crate) fn fresh(path: &Path, stamp: &str) -> bool {
    std::fs::read_to_string(path).is_ok_and(|kept| kept == stamp)
}

/// Keeps a stamp.
///
/// # Errors
/// When the disk refuses.
pub(crate) fn keep(path: &Path, stamp: &str) -> Result<()> {
    write(path, stamp.as_bytes())
}

/// The sha-256 of some bytes.
pub(crate) fn sha256(bytes: &[u8]) -> Vec<u8> {
    Sha256::digest(bytes).to_vec()
}

/// Bytes as lower-case hexadecimal.
pub(crate) fn hex(bytes: &[u8]) -> String {
    bytes.iter().fold(String::new(), |mut text, byte| {
        let _ = write!(text, "{byte:02x}");
        text
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn parts_do_not_run_into_each_other() {
        let stamp = |parts: [&str; 2]| {
            parts
                .iter()
                .fold(Stamp::new("step", "commit"), |stamp, part| {
                    stamp.part(part.as_bytes())
                })
                .text()
        };
        assert_ne!(stamp(["ab", "c"]), stamp(["a", "bc"]));
        assert_eq!(stamp(["ab", "c"]), stamp(["ab", "c"]));
    }

    #[test]
    fn another_compiler_is_another_stamp() {
        assert_ne!(
            Stamp::new("dist", "one").text(),
            Stamp::new("dist", "two").text()
        );
    }

    #[test]
    fn sha256_is_the_published_one() {
        // FIPS 180-2, appendix B.1.
        let expected = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
        assert_eq!(hex(&sha256(b"abc")), expected);
    }
}
