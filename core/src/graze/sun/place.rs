//! Where a yard lies on the earth.

use crate::graze::GrazeError;
use crate::units::Bounds;

/// Degrees north of the equator, -90 to 90; south is negative.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Latitude(f64);

/// Degrees east of Greenwich, -180 to 180; west is negative.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Longitude(f64);

impl Latitude {
    // numeric: from pole to pole
    const BOUNDS: Bounds = Bounds::new("latitude_degrees", -90.0, 90.0);

    /// From degrees; what is not finite or beyond a pole is refused.
    pub fn degrees(value: f64) -> Result<Self, GrazeError> {
        Ok(Self(Self::BOUNDS.check(value)?))
    }

    /// As degrees, north positive.
    pub const fn to_degrees(self) -> f64 {
        self.0
    }

    /// On which side of the equator; the equator itself counts as north.
    pub fn hemisphere(self) -> Hemisphere {
        if self.0 < 0.0 {
            Hemisphere::South
        } else {
            Hemisphere::North
        }
    }
}

impl Longitude {
    // numeric: once round
    const BOUNDS: Bounds = Bounds::new("longitude_degrees", -180.0, 180.0);

    /// From degrees; what is not finite or beyond half a turn is refused.
    pub fn degrees(value: f64) -> Result<Self, GrazeError> {
        Ok(Self(Self::BOUNDS.check(value)?))
    }

    /// As degrees, east positive.
    pub const fn to_degrees(self) -> f64 {
        self.0
    }
}

/// A half of the earth.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Hemisphere {
    /// North of the equator, and on it.
    North,
    /// South of the equator.
    South,
}

/// A place on the earth.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Place {
    /// Degrees north.
    pub latitude: Latitude,
    /// Degrees east.
    pub longitude: Longitude,
}

impl Place {
    /// From degrees north and degrees east.
    pub fn degrees(north: f64, east: f64) -> Result<Self, GrazeError> {
        Ok(Self {
            latitude: Latitude::degrees(north)?,
            longitude: Longitude::degrees(east)?,
        })
    }

    /// On which side of the equator.
    pub fn hemisphere(self) -> Hemisphere {
        self.latitude.hemisphere()
    }
}
