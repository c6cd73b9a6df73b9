//! Heights that were read across a paddock.

use super::SwardFinding;
use super::published::{HEIGHT, MEAN_OUT_BY, READINGS_ASKED};
use crate::graze::GrazeError;
use crate::limits::Ends;
use crate::units::Length;

/// Heights summed up.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Readings {
    /// How many.
    pub count: usize,
    /// Their mean.
    pub mean: Length,
    /// How far they lie about it (standard deviation of a sample); `None` of a single one.
    pub spread: Option<Length>,
    /// How far the mean itself may be out (standard error); `None` of a single one.
    pub error: Option<Length>,
}

impl Readings {
    /// The mean with its two ends, two standard errors to each side; never under nothing.
    ///
    /// A single reading knows no spread: it stands for itself, and the finding says how few it is.
    pub fn height(&self) -> Ends<Length> {
        let out = self.error.unwrap_or(Length::ZERO) * *MEAN_OUT_BY;
        Ends::new(
            (self.mean - out).max(Length::ZERO),
            self.mean,
            self.mean + out,
        )
    }
}

/// Sums up heights.
///
/// # Errors
/// No height, or one outside 0 to 200 cm.
pub fn readings(heights: &[Length]) -> Result<(Readings, Vec<SwardFinding>), GrazeError> {
    if heights.is_empty() {
        return Err(GrazeError::NoReadings);
    }
    for height in heights {
        HEIGHT.check(height.to_cm())?;
    }
    let count = heights.len();
    let of = |n: usize| n as f64;
    let mean = heights.iter().copied().sum::<Length>() / of(count);
    let squares: f64 = heights
        .iter()
        .map(|height| (*height - mean).to_cm().powi(2))
        .sum();
    let spread = (count > 1).then(|| Length::cm((squares / of(count - 1)).sqrt()));
    let found = if count < *READINGS_ASKED {
        vec![SwardFinding::FewReadings {
            taken: count,
            asked: *READINGS_ASKED,
        }]
    } else {
        Vec::new()
    };
    Ok((
        Readings {
            count,
            mean,
            spread,
            error: spread.map(|spread| spread / of(count).sqrt()),
        },
        found,
    ))
}
