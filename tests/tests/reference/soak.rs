//! Soaking: what it takes, what to weigh, when to throw away.

use crate::forage::{lot, rank};
use tussock_core::animal::RiskLevel;
use tussock_core::forage::{
    Analyte, Basis, Fed, ForageClass, ForageKind, LabReport, RawReport, estimate, judge,
};
use tussock_core::limits::sugar_limits;
use tussock_core::soak::{
    Air, LossBand, LossBasis, Recipe, SoakTimes, SugarLoss, Water, after_soaking,
    concentration_after, concentration_lost, dry_loss, dry_loss_by_fibre, feeds_like, mass_lost,
    model_dry_loss, model_sugar_loss, reading_not_soaked, soaked, sugar_loss, timeline,
    weigh_before_soaking,
};
use tussock_core::sources::Provenance;
use tussock_core::units::{AsFed, DryFraction, DryMatter, Instant, ShareOfDm, Span, Temperature};
use tussock_tests::reference::{Formulas, Inputs, RowCounts};

pub fn formulas() -> Formulas {
    let mut all = of_sugar();
    all.extend(of_dry_matter());
    all.extend(of_time());
    all
}

pub fn rows() -> RowCounts {
    vec![
        ("argo_2015", 12),
        ("bochnia_2021", 5),
        ("glatter_2021", 7),
        ("longland_2011", 10),
        ("longland_2014", 24),
        ("martinson_2012", 7),
        ("moore_colyer_2014", 12),
        ("watts_sirois_2003", 4),
    ]
}

fn of_sugar() -> Formulas {
    vec![
        ("soak.curve_sugar", |i| {
            let water = Temperature::celsius(i.number("celsius")?);
            Ok(model_sugar_loss(hours(i)?, water) * 100.0)
        }),
        ("soak.band_low", |i| Ok(curve_band(i)?.low * 100.0)),
        ("soak.band_high", |i| Ok(curve_band(i)?.high * 100.0)),
        ("soak.band_covers", |i| {
            let recipe = recipe(i)?;
            let band = sugar_loss(recipe.water(), recipe.soak(), None).between_hays;
            let observed = i.number("observed")? / 100.0;
            Ok(f64::from(u8::from(
                band.low <= observed && observed <= band.high,
            )))
        }),
        ("soak.covered_by", covered_by),
        ("soak.curve_within", |i| {
            let water = Temperature::celsius(i.number("celsius")?);
            let off = model_sugar_loss(hours(i)?, water) * 100.0 - i.number("observed")?;
            Ok(f64::from(u8::from(off.abs() <= i.number("points")?)))
        }),
        ("soak.concentration_lost", |i| {
            Ok(concentration_lost(share(i, "before")?, share(i, "after")?) * 100.0)
        }),
        ("soak.mass_lost", |i| {
            Ok(mass_lost(part(i, "concentration")?, part(i, "dry_matter")?) * 100.0)
        }),
        ("soak.concentration_after", |i| {
            concentration_after(
                share(i, "before")?,
                part(i, "mass")?,
                part(i, "dry_matter")?,
            )
            .map(ShareOfDm::to_percent)
            .map_err(|e| format!("{e:?}"))
        }),
        ("soak.after_loss", |i| {
            concentration_after(share(i, "before")?, part(i, "lost")?, 0.0)
                .map(ShareOfDm::to_percent)
                .map_err(|e| format!("{e:?}"))
        }),
        ("soak.nsc_after", |i| {
            let lost = part(i, "lost")?;
            let exactly = LossBand {
                low: lost,
                high: lost,
            };
            likely_after(
                i,
                &SugarLoss {
                    expected: exactly,
                    usual: None,
                    between_hays: exactly,
                    basis: LossBasis::Curve,
                    provenance: Provenance::new(),
                },
            )
        }),
        ("soak.nsc_after_usual", |i| {
            let recipe = recipe(i)?;
            likely_after(i, &sugar_loss(recipe.water(), recipe.soak(), None))
        }),
        ("soak.verdict", |i| {
            let loss = sugar_loss(Water::TapSummer, Span::hours(1), None);
            let lot = lot(ForageClass::Grass, report(i)?);
            let sugar = soaked(estimate(&lot, Fed::Soaked), &loss);
            let limits = sugar_limits(RiskLevel::Proven).ok_or("no limit")?;
            Ok(rank(judge(&sugar, &limits).verdict))
        }),
    ]
}

fn of_dry_matter() -> Formulas {
    vec![
        ("soak.curve_dry", |i| Ok(model_dry_loss(hours(i)?) * 100.0)),
        ("soak.lost_by_fibre", |i| {
            dry_loss_by_fibre(share(i, "before")?, share(i, "after")?)
                .map(|lost| lost * 100.0)
                .map_err(|e| format!("{e:?}"))
        }),
        ("soak.dry_covered", |i| {
            let band = dry_loss(hours(i)?).part;
            let observed = part(i, "observed")?;
            Ok(f64::from(u8::from(
                band.least <= observed && observed <= band.most,
            )))
        }),
        // What is weighed before soaking, in percent of the body, as it is eaten: by the tub's own functions.
        ("soak.eaten_percent", |i| {
            let lost = dry_loss(hours(i)?).part.likely;
            feeds_like(AsFed::kg(i.number("weighed")?), lost)
                .map(AsFed::to_kg)
                .map_err(|e| format!("{e:?}"))
        }),
        // Per 100 kg of body, with dry hay: what is weighed for what is fed.
        ("soak.weighed_percent", |i| {
            weigh(i, i.number("fed")?, 100.0)
        }),
        ("soak.weigh_dry", |i| weigh(i, i.number("target")?, 100.0)),
        ("soak.weigh", |i| {
            weigh(i, i.number("target")?, i.number("dry")?)
        }),
        ("soak.not_soaked", |i| {
            let target = DryMatter::kg(i.number("target")?);
            Ok(reading_not_soaked(target, dry(i.number("dry")?)?).to_kg())
        }),
    ]
}

fn of_time() -> Formulas {
    vec![
        ("soak.throw_away_hours", |i| {
            let line = timeline(recipe(i)?, &started(), air(i)?);
            Ok(line.throw_away.since(line.wetted).to_hours())
        }),
        ("soak.lift_out_minutes", |i| {
            let line = timeline(recipe(i)?, &started(), Air::Mild);
            Ok(line.lift_out.since(line.wetted).to_hours() * 60.0)
        }),
        ("soak.allowed", |i| {
            recipe(i)?
                .check(ForageKind::Hay, air(i)?)
                .map(|_| 1.0)
                .map_err(|e| format!("{e:?}"))
        }),
    ]
}

fn started() -> SoakTimes {
    SoakTimes::started(Instant::from_ms(1_780_000_000_000))
}

fn share(i: &Inputs, key: &str) -> Result<ShareOfDm, String> {
    i.number(key).map(ShareOfDm::percent)
}

fn part(i: &Inputs, key: &str) -> Result<f64, String> {
    Ok(i.number(key)? / 100.0)
}

#[allow(
    clippy::cast_possible_truncation,
    reason = "hours of the table, to the minute"
)]
fn hours(i: &Inputs) -> Result<Span, String> {
    Ok(Span::minutes((i.number("hours")? * 60.0).round() as i64))
}

fn dry(percent: f64) -> Result<DryFraction, String> {
    DryFraction::percent(percent).map_err(|e| e.to_string())
}

fn weigh(i: &Inputs, target: f64, dry_percent: f64) -> Result<f64, String> {
    weigh_before_soaking(DryMatter::kg(target), dry(dry_percent)?, part(i, "lost")?)
        .map(tussock_core::units::AsFed::to_kg)
        .map_err(|e| format!("{e:?}"))
}

fn report(i: &Inputs) -> Result<LabReport, String> {
    LabReport::read(RawReport {
        values: vec![
            (Analyte::Wsc, i.number("wsc")?),
            (Analyte::Starch, i.number("starch")?),
        ],
        ..RawReport::empty(Basis::DryMatter)
    })
    .map(|(report, _)| report)
    .map_err(|e| format!("{e:?}"))
}

fn likely_after(i: &Inputs, loss: &SugarLoss) -> Result<f64, String> {
    let sugar = estimate(&lot(ForageClass::Grass, report(i)?), Fed::Dry);
    after_soaking(&sugar, loss)
        .map(|ends| ends.likely.to_percent())
        .ok_or_else(|| "unknown".to_owned())
}

#[allow(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "whole minutes in the table"
)]
fn recipe(i: &Inputs) -> Result<Recipe, String> {
    let water = match i.text("water")? {
        "tap_winter" => Water::TapWinter,
        "tap_summer" => Water::TapSummer,
        "hand_hot" => Water::HandHot,
        _ => return Err(i.unknown("water")),
    };
    Recipe::minutes(water, i.number("minutes")? as u32).map_err(|e| format!("{e:?}"))
}

fn air(i: &Inputs) -> Result<Air, String> {
    Ok(match i.text("air")? {
        "under_16" => Air::Under16,
        "mild" => Air::Mild,
        "over_20" => Air::Over20,
        "over_25" => Air::Over25,
        _ => return Err(i.unknown("air")),
    })
}

/// Which band of [`sugar_loss`] covers what a trial saw, the narrowest first: 1 what is usual, 2 what is to be expected,
/// 3 what it may be between hays, 0 none.
fn covered_by(i: &Inputs) -> Result<f64, String> {
    let recipe = recipe(i)?;
    let wsc = i.optional_number("wsc")?.map(ShareOfDm::percent);
    let loss = sugar_loss(recipe.water(), recipe.soak(), wsc);
    let observed = part(i, "observed")?;
    let bands = [loss.usual, Some(loss.expected), Some(loss.between_hays)];
    let covers = |band: &Option<LossBand>| {
        band.is_some_and(|band| band.low <= observed && observed <= band.high)
    };
    Ok(bands
        .iter()
        .position(covers)
        .map_or(0.0, |place| (place + 1) as f64))
}

/// The band about a mean of the curve: the long soak of low-sugar hay, whose mean is held at 20 %.
fn curve_band(i: &Inputs) -> Result<LossBand, String> {
    let low_in_sugar = Some(ShareOfDm::percent(10.0));
    let loss = sugar_loss(Water::HandHot, Span::hours(12), low_in_sugar);
    if (i.number("mean")? - 20.0).abs() > 0.0 {
        return Err(i.unknown("mean"));
    }
    Ok(loss.expected)
}
