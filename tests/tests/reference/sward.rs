//! The sward, its plants and its strips.

use tussock_core::graze::plants::{
    CalciumToOxalate, Endophyte, Nitrate, Whom, bound_by, calcium_shortfall, calcium_to_oxalate,
    ergovaline, limestone_for, nitrate,
};
use tussock_core::graze::strip::{
    area_for, back_fence, farther_on_a_track, grazed_by_days, lead_move,
};
use tussock_core::graze::sward::published::{REGROWN, RESIDUAL};
use tussock_core::graze::sward::{
    Grazer, GrowthSeason, Measured, Stand, Standing, SwardFinding, SwardKind, asked, density, look,
    offered, readings, regrowth, standing,
};
use tussock_core::limits::Ends;
use tussock_core::units::{
    Area, BodyMass, DryMatter, Length, NutrientMass, PartOfBody, ShareOfDm, SwardDensity, SwardMass,
};
use tussock_tests::reference::{Formulas, Inputs, RowCounts};

pub fn formulas() -> Formulas {
    let mut all = of_sward();
    all.extend(of_strips());
    all.extend(of_plants());
    all
}

pub fn rows() -> RowCounts {
    vec![
        ("blaney_1981", 6),
        ("extension_pasture_density", 8),
        ("kirton_2024", 1),
        ("longland_2021", 4),
        ("nrcs_grazing_stick", 6),
        ("osu_endophyte", 3),
        ("penn_state_agronomy_guide", 21),
        ("strip_examples", 4),
        ("teff_nitrate_trial", 3),
        ("umn_grazing", 2),
        ("weinert_nelson_2021", 1),
    ]
}

fn of_sward() -> Formulas {
    vec![
        ("units.sward_density", |i| {
            let lb = i.number("lb_per_acre_inch")?;
            Ok(SwardDensity::lb_per_acre_inch(lb).to_kg_per_ha_cm())
        }),
        ("sward.available", |i| {
            let density = SwardDensity::kg_per_ha_cm(i.number("density")?);
            let above = cm(i, "height")? - cm(i, "residual")?;
            Ok(density.over(above).to_kg_per_ha())
        }),
        ("sward.available_default", |i| {
            Ok(stands(i)?.available.likely.to_kg_per_ha())
        }),
        ("sward.available_least", |i| {
            Ok(stands(i)?.available.least.to_kg_per_ha())
        }),
        ("sward.available_most", |i| {
            Ok(stands(i)?.available.most.to_kg_per_ha())
        }),
        ("sward.few", |i| {
            #[allow(
                clippy::cast_possible_truncation,
                clippy::cast_sign_loss,
                reason = "a count in the table"
            )]
            let heights = vec![Length::cm(12.0); i.number("readings")? as usize];
            let (_, found) = readings(&heights).map_err(said)?;
            Ok(flag(
                found
                    .iter()
                    .any(|f| matches!(f, SwardFinding::FewReadings { .. })),
            ))
        }),
        ("sward.regrown_days", |i| {
            let season = match i.text("season")? {
                "peak_spring" => GrowthSeason::PeakSpring,
                _ => return Err(i.unknown("season")),
            };
            let density = SwardDensity::kg_per_ha_cm(i.number("density")?);
            regrowth(*RESIDUAL, *REGROWN, density, season)
                .map(|days| days.likely)
                .map_err(said)
        }),
        ("sward.stand", |i| {
            let stand = match i.text("stand")? {
                "fair" => Stand::Fair,
                "good" => Stand::Good,
                "excellent" => Stand::Excellent,
                _ => return Err(i.unknown("stand")),
            };
            Ok(density(SwardKind::MixedWithRyegrass, Some(stand))
                .likely
                .to_kg_per_ha_cm())
        }),
        ("sward.take_off", |i| {
            let found = look(Ends::exactly(cm(i, "height")?), *RESIDUAL);
            Ok(flag(
                found
                    .iter()
                    .any(|f| matches!(f, SwardFinding::TakeOff { .. })),
            ))
        }),
        ("sward.offered", |i| {
            offered(DryMatter::kg(i.number("kg")?), i.number("days")?)
                .map(DryMatter::to_kg)
                .ok_or_else(|| "no day".to_owned())
        }),
    ]
}

fn of_strips() -> Formulas {
    vec![
        ("strip.penn_state_acres", |i| {
            let days = i.number("days")?;
            #[allow(
                clippy::cast_possible_truncation,
                clippy::cast_sign_loss,
                reason = "whole days in the table"
            )]
            let part = grazed_by_days(days as u32).map_err(said)?;
            let cow = DryMatter::kg(BodyMass::lb(25.0).to_kg()) * days;
            area_for(cow, SwardMass::lb_per_acre(i.number("lb")?), part)
                .map(Area::to_acres)
                .map_err(said)
        }),
        ("strip.area", |i| Ok(area(i)?.to_sq_m())),
        ("strip.move", |i| {
            Ok(area(i)?.along(Length::m(i.number("width")?)).to_m())
        }),
        ("strip.herd", |i| {
            let stands = SwardDensity::kg_per_ha_cm(i.number("density")?)
                .over(cm(i, "from")? - cm(i, "to")?);
            let wanted = grass(i)? * i.number("animals")?;
            area_for(wanted, stands, i.number("part")?)
                .map(Area::to_sq_m)
                .map_err(said)
        }),
        ("strip.paddock", |i| {
            let wanted = grass(i)? * i.number("days")?;
            area_for(wanted, mass(i)?, 1.0)
                .map(Area::to_sq_m)
                .map_err(said)
        }),
        ("strip.lead_move", |i| {
            Ok(lead_move(Length::m(i.number("remaining")?)).to_m())
        }),
        ("strip.back_near", |i| {
            Ok(back_fence(Length::m(i.number("onward")?))[0].to_m())
        }),
        ("strip.back_far", |i| {
            Ok(back_fence(Length::m(i.number("onward")?))[1].to_m())
        }),
        ("strip.farther", |_| Ok(farther_on_a_track() * 100.0)),
    ]
}

fn of_plants() -> Formulas {
    vec![
        ("plants.calcium_to_oxalate", |i| match against(i)? {
            CalciumToOxalate::NoOxalate => Err("no oxalate".to_owned()),
            CalciumToOxalate::Enough { ratio } | CalciumToOxalate::Unsafe { ratio } => Ok(ratio),
        }),
        ("plants.unsafe_oxalate", |i| {
            Ok(flag(matches!(against(i)?, CalciumToOxalate::Unsafe { .. })))
        }),
        ("plants.bound", |i| {
            Ok(bound_by(NutrientMass::g(i.number("oxalate_g")?)).to_g())
        }),
        ("plants.calcium_short", |i| {
            let dry = DryMatter::kg(i.number("kg")?);
            calcium_shortfall(dry, share(i, "calcium")?, share(i, "oxalate")?)
                .map(NutrientMass::to_g)
                .map_err(said)
        }),
        ("plants.limestone", |i| {
            Ok(limestone_for(NutrientMass::g(i.number("calcium_g")?)).to_g())
        }),
        ("plants.nitrate", |i| {
            Ok(match nitrate(share(i, "percent")?).map_err(said)? {
                Nitrate::Safe => 0.0,
                Nitrate::Doubtful => 1.0,
                Nitrate::Unsafe => 2.0,
            })
        }),
        ("plants.ergovaline", |i| {
            let whom = match i.text("mare")? {
                "0" => Whom::All,
                "1" => Whom::Broodmares,
                _ => return Err(i.unknown("mare")),
            };
            Ok(match ergovaline(i.number("ppb")?, whom).map_err(said)? {
                Endophyte::Under => 0.0,
                Endophyte::Doubtful => 1.0,
                Endophyte::Over => 2.0,
            })
        }),
    ]
}

fn said(error: impl std::fmt::Debug) -> String {
    format!("{error:?}")
}

fn flag(holds: bool) -> f64 {
    f64::from(u8::from(holds))
}

fn cm(i: &Inputs, key: &str) -> Result<Length, String> {
    i.number(key).map(Length::cm)
}

fn share(i: &Inputs, key: &str) -> Result<ShareOfDm, String> {
    i.number(key).map(ShareOfDm::percent)
}

fn mass(i: &Inputs) -> Result<SwardMass, String> {
    i.number("mass").map(SwardMass::kg_per_ha)
}

/// What stands on mixed pasture with ryegrass where every reading is the same.
fn stands(i: &Inputs) -> Result<Standing, String> {
    let heights = vec![cm(i, "height")?; 30];
    let residual = cm(i, "residual")?;
    let measured = Measured::Heights(&heights);
    standing(measured, SwardKind::MixedWithRyegrass, None, residual).map_err(said)
}

fn area(i: &Inputs) -> Result<Area, String> {
    area_for(DryMatter::kg(i.number("kg")?), mass(i)?, i.number("part")?).map_err(said)
}

fn grass(i: &Inputs) -> Result<DryMatter, String> {
    asked(&[Grazer {
        weight: BodyMass::kg(i.number("weight")?),
        asked: PartOfBody::percent(i.number("percent")?),
    }])
    .map_err(said)
}

fn against(i: &Inputs) -> Result<CalciumToOxalate, String> {
    calcium_to_oxalate(share(i, "calcium")?, share(i, "oxalate")?).map_err(said)
}
