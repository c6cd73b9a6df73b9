//! Sums: SHA-256 in lower-case hexadecimal digits.

use super::canonical::{NIBBLE, hex};
use sha2::{Digest, Sha256};

/// The sum of some bytes.
pub(crate) fn sum(bytes: &[u8]) -> String {
    Sha256::digest(bytes)
        .iter()
        .flat_map(|byte| [hex(u32::from(*byte) >> NIBBLE), hex(u32::from(*byte))])
        .collect()
}

/// Whether a text can be a sum.
pub(crate) fn is_sum(text: &str) -> bool {
    // numeric: hexadecimal digits of 256 bits
    let digits = 64;
    text.len() == digits && text.bytes().all(|d| b"0123456789abcdef".contains(&d))
}
