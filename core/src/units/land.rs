//! Land and what stands on it: area, dry matter over an area, and how dense a sward is for its height.

use super::feed::DryMatter;
use super::published::{CM_PER_INCH, CM_PER_M, KG_PER_LB, SQ_M_PER_ACRE, SQ_M_PER_HECTARE};
use super::quantity::{Length, quantity};
use std::fmt;
use std::ops::{Add, Div, Mul, Sub};

quantity!(
    /// An area of land.
    Area, sq_m, to_sq_m, "m2"
);
quantity!(
    /// Dry matter of a sward over an area. It is a mass only together with an [`Area`].
    SwardMass, kg_per_ha, to_kg_per_ha, "kg dry matter/ha"
);
quantity!(
    /// Dry matter of a sward over an area for each centimetre of its height.
    SwardDensity, kg_per_ha_cm, to_kg_per_ha_cm, "kg dry matter/ha/cm"
);
quantity!(
    /// What a sward grows in a day.
    SwardGrowth, kg_per_ha_day, to_kg_per_ha_day, "kg dry matter/ha/day"
);

/// How much land a hectare of kilograms is in acres of pounds.
const KG_HA_PER_LB_ACRE: f64 = KG_PER_LB * SQ_M_PER_HECTARE / SQ_M_PER_ACRE;

impl Area {
    /// From hectares.
    pub const fn hectares(value: f64) -> Self {
        Self::sq_m(value * SQ_M_PER_HECTARE)
    }

    /// As hectares.
    pub const fn to_hectares(self) -> f64 {
        self.to_sq_m() / SQ_M_PER_HECTARE
    }

    /// From international acres.
    pub const fn acres(value: f64) -> Self {
        Self::sq_m(value * SQ_M_PER_ACRE)
    }

    /// As international acres.
    pub const fn to_acres(self) -> f64 {
        self.to_sq_m() / SQ_M_PER_ACRE
    }

    /// A rectangle of two sides.
    pub fn of(length: Length, width: Length) -> Self {
        Self::sq_m(length.to_m() * width.to_m())
    }

    /// How long a rectangle of this area is along a side of the given width; not finite where the width is nothing.
    pub fn along(self, width: Length) -> Length {
        Length::m(self.to_sq_m() / width.to_m())
    }
}

impl Length {
    /// From metres.
    pub const fn m(value: f64) -> Self {
        Self::cm(value * CM_PER_M)
    }

    /// As metres.
    pub const fn to_m(self) -> f64 {
        self.to_cm() / CM_PER_M
    }
}

impl SwardMass {
    /// From pounds of dry matter an international acre.
    pub const fn lb_per_acre(value: f64) -> Self {
        Self::kg_per_ha(value * KG_HA_PER_LB_ACRE)
    }

    /// As pounds of dry matter an international acre.
    pub const fn to_lb_per_acre(self) -> f64 {
        self.to_kg_per_ha() / KG_HA_PER_LB_ACRE
    }

    /// The dry matter that stands on an area.
    pub fn on(self, area: Area) -> DryMatter {
        DryMatter::kg(self.to_kg_per_ha() * area.to_hectares())
    }
}

impl SwardDensity {
    /// From pounds of dry matter an international acre for each inch of height.
    pub const fn lb_per_acre_inch(value: f64) -> Self {
        Self::kg_per_ha_cm(value * KG_HA_PER_LB_ACRE / CM_PER_INCH)
    }

    /// As pounds of dry matter an international acre for each inch of height.
    pub const fn to_lb_per_acre_inch(self) -> f64 {
        self.to_kg_per_ha_cm() * CM_PER_INCH / KG_HA_PER_LB_ACRE
    }

    /// What stands in so much of its height.
    pub fn over(self, height: Length) -> SwardMass {
        SwardMass::kg_per_ha(self.to_kg_per_ha_cm() * height.to_cm())
    }
}

impl SwardGrowth {
    /// In how many days so much grows; not finite where nothing grows.
    pub fn days_for(self, mass: SwardMass) -> f64 {
        mass.to_kg_per_ha() / self.to_kg_per_ha_day()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_acre_is_the_international_one() {
        assert!((Area::acres(1.0).to_sq_m() - 4_046.856_422_4).abs() < 1e-9);
        assert!((Area::hectares(1.0).to_acres() - 2.471_053_814_671_653).abs() < 1e-12);
    }

    #[test]
    fn a_sward_over_an_area_is_a_mass() {
        let mass = SwardDensity::kg_per_ha_cm(132.0).over(Length::cm(7.5));
        assert!((mass.to_kg_per_ha() - 990.0).abs() < 1e-9);
        assert!((mass.on(Area::sq_m(5000.0)).to_kg() - 495.0).abs() < 1e-9);
        assert!((Area::sq_m(36.0).along(Length::m(10.0)).to_m() - 3.6).abs() < 1e-12);
    }
}
