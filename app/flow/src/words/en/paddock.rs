//! The paddock in English.

use super::English;
use crate::words::PaddockWords;

impl PaddockWords for English {
    fn paddock(&self) -> &'static str {
        "Paddock"
    }
}
